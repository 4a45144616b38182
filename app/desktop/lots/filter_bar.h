#pragma once
#include <QTimer>
#include <QWidget>
#include <optional>
#include <vector>

#include "app/archive/filter.h"
#include "app/desktop/text/format.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QStringListModel;
class QToolButton;

namespace ovenwright::desktop {

class DateField;
class FlowRow;

/// Which runs of the archive are listed: lot, board, oven, dates, verdict and words. Dates are those of this place.
class FilterBar : public QWidget {
  Q_OBJECT
 public:
  explicit FilterBar(QWidget* parent = nullptr);

  const archive::Filter& filter() const { return m_filter; }
  /// As if it was entered; changed() follows where it differs.
  void setFilter(const archive::Filter& filter);
  void clear();
  void setLots(const std::vector<archive::LotSummary>& lots);  ///< offered while a lot is typed
  void setBoards(const std::vector<std::string>& boards);
  void setOvens(const std::vector<std::string>& ovens);
  /// Absent: not counted yet.
  void setCount(std::optional<std::size_t> runs, std::optional<std::size_t> lots, const Format& format);
  void setExportEnabled(bool enabled);
  void setCompareEnabled(bool enabled, const QString& why);  ///< why: as the button's tool tip
  void focusText();                                          ///< the field for words
  void setPanelLinkShown(bool shown);                        ///< a link that opens and closes the panel at the right

 signals:
  void changed();
  void exportWanted();
  void compareWanted();
  void panelWanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  QWidget* labelled(const QString& label, QWidget* field);
  void setNames(QComboBox* box, const std::vector<std::string>& names);
  void take();
  void style();

  archive::Filter m_filter;
  QLineEdit* m_lot;
  QStringListModel* m_lots;
  QComboBox *m_board, *m_oven, *m_verdict;
  DateField *m_from, *m_to;
  QLineEdit* m_text;
  QLabel* m_count;
  QPushButton *m_clear, *m_compare, *m_export;
  QToolButton* m_panelLink;
  FlowRow* m_row;
  QTimer m_typing;  // runs out when typing pauses
  bool m_quiet = false;
};

}  // namespace ovenwright::desktop
