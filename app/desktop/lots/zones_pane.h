#pragma once
#include <QWidget>
#include <memory>
#include <optional>

#include "app/desktop/lots/lot_figures.h"
#include "app/desktop/text/format.h"

class QLabel;
class QTableWidget;

namespace ovenwright::desktop {

/// Which zones the results outside of the listed runs trace back to: a column for each zone, as in the zone strip, rows
/// for how many results and runs, and for what they are of. Counts what was judged; it says nothing on drift.
class ZonesPane : public QWidget {
  Q_OBJECT
 public:
  explicit ZonesPane(QWidget* parent = nullptr);

  /// Null: nothing is listed, or not loaded yet.
  void setFigures(std::shared_ptr<const LotFigures> figures, const Format& format);
  QString sentence() const;
  QTableWidget* table() { return m_table; }
  void chooseNothing();

 signals:
  /// The runs of the zone that is chosen, the oldest first; none: no zone is.
  void runsChosen(const std::vector<std::string>& ids);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QString sentenceOf(const LotFigures& figures) const;
  void fill(const LotFigures& figures);
  void choose();
  void refreshNote();
  void style();

  std::shared_ptr<const LotFigures> m_figures;
  Format m_format;
  QLabel *m_sentence, *m_note;
  QTableWidget* m_table;
  std::optional<std::size_t> m_chosen;  // index into the zones
  bool m_filling = false;
};

}  // namespace ovenwright::desktop
