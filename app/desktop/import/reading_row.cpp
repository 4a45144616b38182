#include "app/desktop/import/reading_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "app/desktop/window/appearance.h"

namespace ovenwright::desktop {

ReadingRow::ReadingRow(const QString& about, const QString& title)
    : m_about(about), m_title(title), m_name(new QLabel(title)), m_remark(new QLabel), m_choices(new QComboBox) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  setAutoFillBackground(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(int(theme.px(16)), int(theme.px(8)), int(theme.px(16)), int(theme.px(8)));
  layout->setSpacing(int(theme.px(2)));
  m_choices->setAccessibleName(title);
  // As wide as the panel allows; the list that opens is as wide as it needs.
  m_choices->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_choices->setMinimumContentsLength(8);
  m_choices->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  m_name->setBuddy(m_choices);
  m_name->setTextFormat(Qt::RichText);
  setFocusProxy(m_choices);
  auto* line = new QHBoxLayout;
  line->addWidget(m_name, 2);
  line->addWidget(m_choices, 3);
  layout->addLayout(line);
  m_remark->setFont(theme.font(12));
  m_remark->setWordWrap(true);
  layout->addWidget(m_remark);
  connect(m_choices, &QComboBox::activated, this,
          [this](int index) { emit chosen(m_choices->itemData(index).toString()); });
}

QString ReadingRow::chosenText() const { return m_choices->currentText(); }

void ReadingRow::addField(QWidget* field) {
  static_cast<QVBoxLayout*>(layout())->insertWidget(1, field, 0, Qt::AlignRight);
}

void ReadingRow::fill(const std::vector<std::pair<QString, QString>>& choices, const QString& now,
                      const QString& remark) {
  m_choices->clear();
  for (const auto& [value, text] : choices) m_choices->addItem(text, value);
  int index = m_choices->findData(now);
  if (index < 0 && !now.isEmpty()) {
    m_choices->insertItem(0, now, now);
    index = 0;
  }
  m_choices->setCurrentIndex(index);
  m_choices->setToolTip(m_choices->currentText());
  m_remark->setText(remark);
  m_remark->setVisible(!remark.isEmpty());
}

void ReadingRow::setAssumed(const std::optional<QString>& assumed, const widgets::Theme& theme) {
  m_assumed = assumed.has_value();
  QPalette ground;
  ground.setColor(QPalette::Window, m_assumed ? theme.accentSoft : theme.window);
  setPalette(ground);
  m_name->setText(
      m_assumed ? QStringLiteral("%1<br><b style=\"color:%2\">%3</b>").arg(m_title, theme.accent.name(), tr("assumed"))
                : m_title);
  if (assumed) {
    m_remark->setText(*assumed);
    m_remark->setVisible(true);
  }
  m_choices->setAccessibleDescription(m_assumed ? tr("assumed; %1").arg(m_remark->text()) : m_remark->text());
  Appearance::ink(m_remark, theme.secondary);
  update();
}

void ReadingRow::paintEvent(QPaintEvent*) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  QPainter painter(this);
  painter.fillRect(QRect(0, height() - 1, width(), 1), theme.hairline);
  if (m_assumed) painter.fillRect(QRectF(0, 0, theme.px(3), height()), theme.accent);
}

}  // namespace ovenwright::desktop
