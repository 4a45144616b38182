#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "app/desktop/widgets/theme.h"

class QComboBox;
class QLabel;

namespace ovenwright::desktop {

/// One thing that was found or assumed in reading a log: what else it could be, and what is said of it. An accent bar
/// at the left where it was assumed.
class ReadingRow : public QWidget {
  Q_OBJECT
 public:
  /// @param about  the layout's key: "unit", "decimal", …
  ReadingRow(const QString& about, const QString& title);
  QString about() const { return m_about; }
  QString title() const { return m_title; }
  QString chosenText() const;
  void addField(QWidget* field);  ///< under the choices
  /// @param choices  value and text of each; `now`, which may be none of them, is the one that holds
  void fill(const std::vector<std::pair<QString, QString>>& choices, const QString& now, const QString& remark);
  /// @param assumed  what is said of an assumption, in place of the remark; empty: it was found
  void setAssumed(const std::optional<QString>& assumed, const widgets::Theme& theme);

 signals:
  void chosen(const QString& value);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString m_about, m_title;
  QLabel *m_name, *m_remark;
  QComboBox* m_choices;
  bool m_assumed = false;
};

}  // namespace ovenwright::desktop
