#pragma once
#include <QWidget>

#include "app/desktop/document/document.h"
#include "app/desktop/text/format.h"
#include "app/desktop/widgets/theme.h"

class QGridLayout;

namespace ovenwright::desktop {

/// The channels that were found: whether each is used, what it sits on, its course, its range, its faults and what was
/// done about them. Every change is an undoable edit of the document.
class ChannelsPanel : public QWidget {
  Q_OBJECT
 public:
  explicit ChannelsPanel(Document* document, QWidget* parent = nullptr);
  void refresh(const widgets::Theme& theme, const Format& format);

 signals:
  void boardWanted();
  void showWanted(std::size_t channel, double from_s, double to_s);  ///< a fault, on the curves

 private:
  void addRow(int row, const log::Layout::ChannelColumn* column, std::optional<std::size_t> channel);
  void addFaults(int row, std::size_t channel, const log::Layout::ChannelColumn* column);
  void use(int column, bool on);
  void turn(const log::Layout::ChannelColumn& column, bool on);  // wires exchanged: read with the sign turned
  void place(std::size_t channel, int placement);                // index into the board's placements, −1: none
  void setKind(std::size_t channel, board::Kind kind);
  void keepSpikes(int number, bool keep);

  Document* m_document;
  QWidget* m_body = nullptr;
  QGridLayout* m_grid = nullptr;
  widgets::Theme m_theme;
  Format m_format;
};

}  // namespace ovenwright::desktop
