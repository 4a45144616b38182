#include "app/desktop/tune/suggestion_card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/tune/themed_label.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/widgets/verdict_sign.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

constexpr double kUsualWidth_px = 344;  // of the panel less its insets
constexpr double kHeadGaps_px = 40;     // insets and spaces of the first row

}  // namespace

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
  auto* title = label(m_title, 15, true, m_theme.text);
  title->setWordWrap(false);  // to be measured
  auto* sign = new widgets::VerdictSign(this);
  sign->setVerdict(judgement.verdict);
  QString margin = marginText(judgement, forecast, format);
  if (!margin.isEmpty()) margin = tr("margin %1").arg(margin);
  auto* margin_label = label(margin, 12, false, m_theme.text);
  margin_label->setWordWrap(false);
  m_show->setAutoDefault(false);
  const QFontMetrics metrics(m_show->font());
  m_show->setFixedWidth(std::max(metrics.horizontalAdvance(tr("Show")), metrics.horizontalAdvance(tr("Shown"))) +
                        int(m_theme.px(16)));
  // One row where title and margin fit it; else the margin has a row of its own.
  auto* head = new QHBoxLayout;
  head->setSpacing(int(m_theme.px(6)));
  auto* second = new QHBoxLayout;
  second->setSpacing(int(m_theme.px(6)));
  const int needed = title->sizeHint().width() + sign->sizeHint().width() + margin_label->sizeHint().width() +
                     m_show->width() + int(m_theme.px(kHeadGaps_px));
  auto* beside = needed <= m_theme.px(kUsualWidth_px) ? head : second;
  title->setWordWrap(beside == second);
  head->addWidget(title, 1);
  beside->addWidget(sign);
  beside->addWidget(margin_label);
  if (beside == second) second->addStretch(1);
  head->addWidget(m_show);

  const QString dot = QStringLiteral(" · ");
  QString verdict = widgets::Wording::verdictTitle(judgement.verdict);
  if (const QString chance = shortChanceText(forecast, format); !chance.isEmpty()) verdict += dot + chance;
  QString reasons = tr("Tightest: %1").arg(tightestText(judgement, format));
  if (const QString boards = throughputText(bench.measured, suggestion.recipe, format); !boards.isEmpty())
    reasons += dot + boards;
  if (suggestion.aim == tune::Aim::kCoolest || std::ranges::count(suggestion.also, tune::Aim::kCoolest) > 0)
    if (const QString cooler = coolerText(bench.measured, suggestion.recipe, format); !cooler.isEmpty())
      reasons += dot + cooler;

  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(int(m_theme.px(12)), int(m_theme.px(6)), int(m_theme.px(10)), int(m_theme.px(8)));
  layout->setSpacing(int(m_theme.px(2)));
  layout->addLayout(head);
  layout->addLayout(second);
  const QString changes = changesOnCard(bench.oven, bench.measured, suggestion.recipe, format);
  layout->addWidget(label(changes.isEmpty() ? tr("The recipe that was run stays.") : changes, 13, false, m_theme.text));
  for (const QString& text : {verdict, reasons}) layout->addWidget(label(text, 12, false, m_theme.secondary));
  if (suggestion.doubtful) layout->addWidget(label(doubtText(*bench.report), 12, true, m_theme.text));
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
