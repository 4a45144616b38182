#pragma once
#include <QWidget>
#include <array>

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
  /// The focus to what can be done about a channel's faults.
  void focusChannel(std::size_t channel);

 signals:
  void boardWanted();
  void showWanted(std::size_t channel, double from_s, double to_s);  ///< a fault, on the curves

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  /// What gives way where there is little room: faults go under their rows, then the courses go.
  enum class Room { kAll, kFaultsUnder, kNoCourses };
  enum Column { kUse, kName, kPlacement, kKind, kCourse, kRange, kFaults };

  void fill(Room room);  ///< or with less where that does not fit
  void build(Room room);
  Room roomFor(int width) const;
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
  Room m_room = Room::kAll;
  std::array<int, 2> m_least{};  // width that all columns need, and that they need with the faults under the rows
  widgets::Theme m_theme;
  Format m_format;
};

}  // namespace ovenwright::desktop
