#include "app/desktop/tune/suggestion_card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/tune/tune_words.h"
#include "app/desktop/widgets/verdict_sign.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {

QLabel* themedLabel(const widgets::Theme& theme, const QString& text, int size_px, bool bold, const QColor& color,
                    QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setFont(theme.font(size_px, bold));
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  QPalette palette = label->palette();
  palette.setColor(QPalette::WindowText, color);
  label->setPalette(palette);
  return label;
}

SuggestionCard::SuggestionCard(const TuneBench& bench, const tune::Suggestion& suggestion, const Format& format,
                               QWidget* parent)
    : QFrame(parent),
      m_recipe(suggestion.recipe),
      m_title(aimTitle(suggestion)),
      m_theme(widgets::Theme::fromPalette(palette(), font())),
      m_show(new QPushButton(this)) {
  const auto& forecast = suggestion.predicted.front();
  const auto& judgement = forecast.judgement;
  const auto label = [&](const QString& text, int size_px, bool bold, const QColor& color) {
    return themedLabel(m_theme, text, size_px, bold, color, this);
  };
  auto* head = new QHBoxLayout;
  head->setSpacing(int(m_theme.px(6)));
  head->addWidget(label(m_title, 15, true, m_theme.text), 1);
  head->addWidget(m_show);
  m_show->setAutoDefault(false);
  const QFontMetrics metrics(m_show->font());
  m_show->setFixedWidth(std::max(metrics.horizontalAdvance(tr("Show")), metrics.horizontalAdvance(tr("Shown"))) +
                        int(m_theme.px(22)));

  auto* verdict = new QHBoxLayout;
  verdict->setSpacing(int(m_theme.px(6)));
  auto* sign = new widgets::VerdictSign(this);
  sign->setVerdict(judgement.verdict);
  QStringList words{widgets::Wording::verdictTitle(judgement.verdict)};
  if (const QString margin = marginText(judgement, forecast, format); !margin.isEmpty())
    words << tr("margin %1").arg(margin);
  if (const QString chance = chanceText(forecast, format); !chance.isEmpty()) words << chance;
  verdict->addWidget(sign, 0, Qt::AlignTop);
  verdict->addWidget(label(words.join(QStringLiteral(", ")), 12, false, m_theme.text), 1);

  QStringList reasons{tr("Tightest: %1").arg(tightestText(judgement, format))};
  if (const QString boards = throughputText(bench.measured, suggestion.recipe, format); !boards.isEmpty())
    reasons << boards;

  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(int(m_theme.px(12)), int(m_theme.px(6)), int(m_theme.px(10)), int(m_theme.px(8)));
  layout->setSpacing(int(m_theme.px(2)));
  layout->addLayout(head);
  layout->addLayout(verdict);
  const QString changes = changesOnCard(bench.oven, bench.measured, suggestion.recipe, format);
  layout->addWidget(
      label(changes.isEmpty() ? tr("The recipe that was run stays.") : changes, 13, false, m_theme.text));
  layout->addWidget(label(reasons.join(u'\n'), 12, false, m_theme.secondary));
  connect(m_show, &QPushButton::clicked, this, &SuggestionCard::showWanted);
  setShown(false);
}

void SuggestionCard::setShown(bool shown) {
  m_shown = shown;
  m_show->setText(shown ? tr("Shown") : tr("Show"));
  m_show->setEnabled(!shown);
  m_show->setToolTip(shown ? QString() : tr("Takes its recipe over into the strip"));
  m_show->setAccessibleName((shown ? tr("%1, shown") : tr("Show %1")).arg(m_title));
  update();
}

void SuggestionCard::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(m_theme.panel);
  painter.setPen(QPen(m_shown ? m_theme.accent : m_theme.frame, m_theme.line(m_shown ? 2 : 1)));
  const qreal half = painter.pen().widthF() / 2;
  painter.drawRoundedRect(QRectF(rect()).adjusted(half, half, -half, -half), m_theme.px(3), m_theme.px(3));
}

}  // namespace ovenwright::desktop
