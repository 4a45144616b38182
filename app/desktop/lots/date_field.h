#pragma once
#include <QDate>
#include <QLineEdit>
#include <QLocale>
#include <optional>

namespace ovenwright::desktop {

/// A date that may be left open: typed as 2026-01-05 or as the locale writes dates, or chosen from a calendar (Down).
class DateField : public QLineEdit {
  Q_OBJECT
 public:
  DateField(const QString& name, QWidget* parent = nullptr);

  /// Absent where it is left open, and while what is typed is no date.
  std::optional<QDate> date() const { return m_date; }
  void setDate(std::optional<QDate> date);
  bool isUnderstood() const { return m_understood; }

 signals:
  void dateChanged();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  void take(const QString& text);
  void showCalendar();

  std::optional<QDate> m_date;
  bool m_understood = true;
};

}  // namespace ovenwright::desktop
