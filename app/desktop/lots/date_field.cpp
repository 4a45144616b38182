#include "app/desktop/lots/date_field.h"

#include <QAction>
#include <QCalendarWidget>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"

namespace ovenwright::desktop {
namespace {

std::optional<QDate> parsed(const QString& text) {
  const QLocale locale;
  QString own = locale.dateFormat(QLocale::ShortFormat);  // its order of day and month, with the whole year
  if (!own.contains(QStringLiteral("yyyy"))) own.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
  if (!own.contains(QStringLiteral("MMM"))) own.replace(QStringLiteral("MM"), QStringLiteral("M"));
  own.replace(QStringLiteral("dd"), QStringLiteral("d"));
  for (const QDate& date : {QDate::fromString(text, Qt::ISODate), locale.toDate(text, QLocale::ShortFormat),
                            locale.toDate(text, QStringLiteral("d.M.yyyy")), locale.toDate(text, own)})
    if (date.isValid() && date.year() >= 1970) return date;
  return std::nullopt;
}

QIcon calendarIcon(const widgets::Theme& theme) {
  const int side = int(theme.px(16));
  QPixmap picture(QSize(side, side) * 2);
  picture.setDevicePixelRatio(2);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.secondary, theme.line(1.4), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  const double middle = side / 2.0, half = side * 0.22;
  painter.drawPolyline(QPolygonF{QPointF(middle - half, middle - half / 2), QPointF(middle, middle + half / 2),
                                 QPointF(middle + half, middle - half / 2)});
  return QIcon(picture);
}

}  // namespace

DateField::DateField(const QString& name, QWidget* parent) : QLineEdit(parent) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  setAccessibleName(name);
  setPlaceholderText(tr("any", "date"));
  setToolTip(tr("A date, as 2026-01-05; Down opens a calendar. Left open, every date counts."));
  const double widest = QFontMetricsF(font()).horizontalAdvance(QStringLiteral("2026-00-00"));
  setFixedWidth(int(widest + theme.px(34)));
  QAction* open = addAction(calendarIcon(theme), TrailingPosition);
  open->setText(tr("Calendar"));
  connect(open, &QAction::triggered, this, &DateField::showCalendar);
  connect(this, &QLineEdit::textEdited, this, &DateField::take);
}

void DateField::setDate(std::optional<QDate> date) {
  setText(date ? date->toString(Qt::ISODate) : QString());
  take(text());
}

void DateField::take(const QString& text) {
  const QString trimmed = text.trimmed();
  const auto date = trimmed.isEmpty() ? std::nullopt : parsed(trimmed);
  m_understood = trimmed.isEmpty() || date;
  const auto theme = widgets::Theme::fromPalette(parentWidget() ? parentWidget()->palette() : palette(), font());
  QPalette ink = palette();
  ink.setColor(QPalette::Text, m_understood || hasFocus() ? theme.text : theme.signal);
  setPalette(ink);
  if (date == m_date) return;
  m_date = date;
  emit dateChanged();
}

void DateField::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  take(text());
}

void DateField::showCalendar() {
  auto* popup = new QWidget(this, Qt::Popup);
  popup->setAttribute(Qt::WA_DeleteOnClose);
  auto* calendar = new QCalendarWidget;
  calendar->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
  calendar->setFirstDayOfWeek(QLocale().firstDayOfWeek());
  calendar->setSelectedDate(m_date.value_or(QDate::currentDate()));
  auto* layout = new QVBoxLayout(popup);
  layout->setContentsMargins(1, 1, 1, 1);
  layout->addWidget(calendar);
  const auto choose = [this, popup](const QDate& date) {
    setDate(date);
    popup->close();
  };
  connect(calendar, &QCalendarWidget::clicked, this, choose);
  connect(calendar, &QCalendarWidget::activated, this, choose);
  popup->move(mapToGlobal(QPoint(0, height())));
  popup->show();
  calendar->setFocus();
}

void DateField::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Down) {
    showCalendar();
  } else {
    QLineEdit::keyPressEvent(event);
  }
}

}  // namespace ovenwright::desktop
