#include "app/desktop/panels/derivation_panel.h"

#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/desktop/panels/close_up.h"
#include "app/desktop/panels/share_bars.h"
#include "app/desktop/text/said.h"
#include "app/desktop/widgets/thermocouple_text.h"
#include "app/desktop/widgets/verdict_sign.h"
#include "app/desktop/widgets/wording.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {
namespace {

constexpr int kTermDigits = 2;
constexpr double kHeading_px = 33, kTarget_px = 24;

QString moment(const RunView& view, const judge::Outcome& outcome, const Format& format) {
  if (!outcome.value.from_s) return {};
  const double from = *outcome.value.from_s, to = outcome.value.to_s.value_or(from);
  const QString first = format.seconds(from - view.origin_s());
  return from == to ? DerivationPanel::tr("at %1 s").arg(first)
                    : DerivationPanel::tr("from %1 to %2 s").arg(first, format.seconds(to - view.origin_s()));
}

bool isOut(const judge::Outcome& outcome) {
  return outcome.verdict == judge::Verdict::kFail || outcome.verdict == judge::Verdict::kConditionalFail;
}

}  // namespace

/// Puts the sections of the panel one under the other.
class DerivationPanel::Builder {
 public:
  Builder(DerivationPanel* panel, const widgets::Theme& theme) : m_theme(theme), m_body(new QWidget), m_panel(panel) {
    m_layout = new QVBoxLayout(m_body);
    const int inset = int(theme.px(16));
    m_layout->setContentsMargins(inset, int(theme.px(6)), inset, int(theme.px(8)));
    m_layout->setSpacing(int(theme.px(2)));
  }

  QWidget* finish() {
    m_layout->addStretch(1);
    return m_body;
  }

  QLabel* text(const QString& words, int size_px = 13, bool bold = false, const QColor& color = {}) {
    auto* label = new QLabel(words, m_body);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setFont(m_theme.font(size_px, bold));
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    label->setFocusPolicy(Qt::NoFocus);
    if (color.isValid()) Appearance::ink(label, color);
    return label;
  }
  void add(QWidget* widget) { m_layout->addWidget(widget); }
  void add(QLayout* layout) { m_layout->addLayout(layout); }
  void heading(const QString& words) {
    rule();
    add(text(words, 12, false, m_theme.secondary));
  }
  void rule() {
    auto* line = new QFrame(m_body);
    line->setFixedHeight(1);
    line->setAutoFillBackground(true);
    QPalette palette = line->palette();
    palette.setColor(QPalette::Window, m_theme.hairline);
    line->setPalette(palette);
    m_layout->addSpacing(int(m_theme.px(5)));
    m_layout->addWidget(line);
    m_layout->addSpacing(int(m_theme.px(3)));
  }
  /// Two sections beside each other: a heading over a line of text.
  void pair(const QString& heading, const QString& words, const QString& other_heading, const QString& other_words) {
    rule();
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(int(m_theme.px(12)));
    grid->setVerticalSpacing(int(m_theme.px(2)));
    int column = 0;
    for (const auto& [over, under] : {std::pair(heading, words), std::pair(other_heading, other_words)}) {
      grid->addWidget(text(over, 12, false, m_theme.secondary), 0, column, Qt::AlignTop);
      QLabel* value = text(under);
      value->setWordWrap(column > 0);  // "under 0.1 % (JCGM 106)" stays in one line
      grid->addWidget(value, 1, column, Qt::AlignTop);
      grid->setColumnStretch(column++, 1);
    }
    add(grid);
  }
  void row(const QString& name, const QString& number, bool bold = false) {
    auto* layout = new QHBoxLayout;
    layout->addWidget(text(name), 1);
    QLabel* value = text(number, 13, bold);
    value->setWordWrap(false);
    layout->setSpacing(int(m_theme.px(12)));
    layout->addWidget(value, 0, Qt::AlignTop);
    add(layout);
  }
  QLabel* link(const QString& words) {
    auto* label = new QLabel(m_body);
    label->setTextFormat(Qt::RichText);
    label->setText(QStringLiteral("<a href=\"#\">%1</a>").arg(words.toHtmlEscaped()));
    label->setFont(m_theme.font(13));
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    label->setAccessibleName(words);
    label->setMinimumHeight(int(m_theme.px(kTarget_px)));
    return label;
  }

  const widgets::Theme& m_theme;
  QWidget* m_body;
  DerivationPanel* m_panel;

 private:
  QVBoxLayout* m_layout;
};

namespace {

QLabel* heading(const QString& words, QWidget* parent) {
  auto* label = new ElidedLabel(parent);
  label->setWords(words);
  return label;
}

}  // namespace

DerivationPanel::DerivationPanel(QWidget* parent)
    : QWidget(parent),
      m_heading(heading(tr("How this number came about"), this)),
      m_position(new QLabel(this)),
      m_previous(new QToolButton(this)),
      m_next(new QToolButton(this)),
      m_scroll(new QScrollArea(this)),
      m_head(new QHBoxLayout) {
  setAccessibleName(tr("How this number came about"));
  m_previous->setArrowType(Qt::LeftArrow);
  m_next->setArrowType(Qt::RightArrow);
  m_previous->setAccessibleName(tr("Previous result"));
  m_next->setAccessibleName(tr("Next result"));
  for (QToolButton* button : {m_previous, m_next}) {
    button->setAutoRaise(true);
    button->setToolTip(button->accessibleName());
  }
  connect(m_previous, &QToolButton::clicked, this, [this] { emit stepped(-1); });
  connect(m_next, &QToolButton::clicked, this, [this] { emit stepped(1); });
  m_scroll->setWidgetResizable(true);
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_scroll->setAccessibleName(accessibleName());
  m_head->addWidget(m_heading, 1);
  m_head->addWidget(m_position);
  m_head->addWidget(m_previous);
  m_head->addWidget(m_next);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addLayout(m_head);
  layout->addWidget(new Hairline);
  layout->addWidget(m_scroll, 1);
}

DerivationPanel::~DerivationPanel() = default;

void DerivationPanel::setFloating(bool floating) {
  m_floating = floating;
  layout()->setContentsMargins(floating ? 1 : 0, 0, 0, 0);
  update();
}

void DerivationPanel::paintEvent(QPaintEvent* event) {
  QWidget::paintEvent(event);
  if (!m_floating) return;
  QPainter painter(this);
  painter.fillRect(QRect(0, 0, 1, height()), widgets::Theme::fromPalette(palette(), font()).frame);
}

void DerivationPanel::showNothing(const widgets::Theme& theme) {
  Builder build(this, theme);
  build.add(
      build.text(tr("Choose a mark in the limit lanes, a part of the sentence or a row of the table: its place on the "
                    "curve, its limits and its arithmetic stand here."),
                 13, false, theme.secondary));
  m_scroll->setWidget(build.finish());
}

void DerivationPanel::show(const Scene& scene, std::optional<std::size_t> chosen, const widgets::Theme& theme,
                           const Format& format) {
  const int inset = int(theme.px(16));
  m_heading->setFont(theme.font(13, true));
  m_heading->setContentsMargins(inset, 0, 0, 0);
  m_heading->setMinimumHeight(int(theme.px(kHeading_px)));
  m_head->setSpacing(int(theme.px(4)));
  m_position->setFont(theme.font(12));
  const bool any = scene.view && scene.view->judgement().all_size() > 0;
  m_previous->setEnabled(any);
  m_next->setEnabled(any);
  m_position->clear();
  if (!scene.view || !chosen) {
    showNothing(theme);
    return;
  }
  const RunView& view = *scene.view;
  const auto& judgement = view.judgement();
  const auto& outcome = judgement.all(*chosen);
  const auto& window = judgement.windows[outcome.window];
  const auto quantity = Format::quantity(outcome.measure.measure);
  const auto difference = Format::difference(quantity);
  const widgets::Wording wording(format);
  const bool out = isOut(outcome) && outcome.required;
  m_position->setText(tr("%1 of %2").arg(*chosen + 1).arg(judgement.all_size()));

  Builder build(this, theme);
  auto* title = new QHBoxLayout;
  auto* sign = new widgets::VerdictSign(build.m_body);
  sign->setVerdict(outcome.verdict, !outcome.required);
  title->addWidget(sign);
  title->addSpacing(int(theme.px(8)));
  const QString name = widgets::Wording::title(outcome.requirement_name);
  title->addWidget(
      build.text(outcome.channel ? tr("%1 at %2").arg(name, view.name(outcome)) : tr("%1, board").arg(name), 15, true),
      1);
  build.add(title);
  auto* value = new QHBoxLayout;
  value->setSpacing(int(theme.px(6)));
  const QString number =
      outcome.value.value ? wording.value(outcome) + u' ' + format.unit(quantity) : wording.value(outcome);
  QLabel* big = build.text(number, 21, true, out ? theme.signal : theme.text);
  big->setWordWrap(false);
  value->addWidget(big);
  QString beside;
  if (outcome.value.expanded_uncertainty) {
    beside = QStringLiteral("± %1 %2  ").arg(wording.uncertainty(outcome), format.unit(quantity));
  }
  const QString when = moment(view, outcome, format);
  const bool interval =
      outcome.value.from_s && outcome.value.to_s.value_or(*outcome.value.from_s) != *outcome.value.from_s;
  value->addWidget(build.text(interval ? beside : beside + when, 13, false, theme.secondary), 1, Qt::AlignBottom);
  build.add(value);
  if (interval) build.add(build.text(when, 13, false, theme.secondary));
  for (const std::string& remark : {outcome.value.reason, outcome.value.note}) {
    if (!remark.empty()) build.add(build.text(sentenceCase(inWords(remark, format)), 13, false, theme.secondary));
  }
  if (outcome.value.from_s) {
    auto* close_up = new CloseUp(build.m_body);
    close_up->show(scene, *chosen, theme, format);
    build.add(close_up);
  }

  build.heading(tr("Definition"));
  build.add(build.text(QCoreApplication::translate("Measures", measure::describe(outcome.measure.measure).definition)));

  build.heading(tr("Limits"));
  QString limits;
  if (outcome.lower && outcome.upper) {
    limits = tr("%1 to %2").arg(format.limit(*outcome.lower, quantity), format.limit(*outcome.upper, quantity));
  } else if (outcome.lower) {
    limits = tr("at least %1").arg(format.limit(*outcome.lower, quantity));
  } else if (outcome.upper) {
    limits = tr("at most %1").arg(format.limit(*outcome.upper, quantity));
  }
  auto* limit_row = new QHBoxLayout;
  limit_row->setSpacing(int(theme.px(12)));
  QLabel* limit_text = build.text(limits + u' ' + format.unit(quantity));
  limit_text->setWordWrap(false);
  limit_row->addWidget(limit_text);
  QString window_name = QString::fromStdString(window.identity.name);
  if (window.identity.revision)
    window_name = tr("%1, rev %2").arg(window_name, QString::fromStdString(*window.identity.revision));
  QLabel* link = build.link(window_name);
  connect(link, &QLabel::linkActivated, this,
          [this, w = outcome.window, r = outcome.requirement] { emit windowWanted(w, r); });
  limit_row->addWidget(link, 1);
  build.add(limit_row);
  if (!outcome.required)
    build.add(build.text(tr("Informative: it does not decide the verdict."), 12, false, theme.secondary));
  if (!outcome.source.empty())
    build.add(build.text(QCoreApplication::translate("source", outcome.source.c_str()), 12, false, theme.secondary));

  const QString arithmetic = marginArithmetic(outcome, format);
  if (!arithmetic.isEmpty()) {
    build.heading(tr("Margin"));
    auto* margin = new QHBoxLayout;
    QLabel* left = build.text(arithmetic + QStringLiteral(" ="));
    left->setWordWrap(false);
    margin->addWidget(left);
    margin->addWidget(build.text(wording.margin(outcome), 13, true, out ? theme.signal : theme.text), 1);
    build.add(margin);
  }

  if (outcome.value.expanded_uncertainty) {
    const auto& terms = outcome.value.terms;
    const auto term = [&](double u) { return format.number(format.shown(u, difference), kTermDigits); };
    const auto plusMinus = [&](double half_C) {
      return u'±' + format.distance(half_C, Format::Quantity::kDifference, 1) + u' ' +
             format.unit(Format::Quantity::kDifference);
    };
    const auto& budget = window.uncertainty;
    const double tolerance = budget.tolerance_C.value_or(0);
    build.heading(tr("Uncertainty, %1").arg(format.unit(quantity)));
    const auto* placement = view.board() && outcome.channel
                                ? view.board()->placement(outcome.trace, view.run().channels[*outcome.channel].number)
                                : nullptr;
    const QString thermocouple = placement && placement->thermocouple
                                     ? widgets::thermocoupleText(QString::fromStdString(*placement->thermocouple))
                                 : budget.tolerance_C
                                     ? plusMinus(tolerance)
                                     : widgets::thermocoupleText(QString::fromStdString(budget.thermocouple));
    build.row(tr("Thermocouple %1").arg(thermocouple), term(terms.thermocouple));
    build.row(tr("Instrument %1").arg(plusMinus(budget.instrument_C)), term(terms.instrument));
    build.row(tr("Noise of this trace"), term(terms.noise));
    if (terms.sampling > 0) build.row(tr("Sampling"), term(terms.sampling));
    const double expanded = *outcome.value.expanded_uncertainty;
    build.row(tr("Combined, then U = 2u"),
              QStringLiteral("%1 → %2").arg(term(expanded / 2), wording.uncertainty(outcome)), true);
  }

  const QString decision = decisionArithmetic(outcome, window.decision_rule, format);
  if (!decision.isEmpty()) {
    const QString rule =
        window.decision_rule == window::DecisionRule::kGuarded ? tr("Rule: guarded, w = U") : tr("Rule: simple");
    if (outcome.conformance_probability) {
      const double probability = *outcome.conformance_probability;
      const QString percent = probability < 0.001   ? tr("under 0.1 %")
                              : probability > 0.999 ? tr("over 99.9 %")
                                                    : format.number(100 * probability, 1) + QStringLiteral(" %");
      build.pair(tr("Inside with probability"), percent + QStringLiteral(" (JCGM 106)"), rule, decision);
    } else {
      build.heading(rule);
      build.add(build.text(decision));
    }
  }
  if (!outcome.zone_shares.empty()) {
    // Those that count are hatched on the strip too; the rest is one line.
    std::vector<judge::ZoneShare> shares;
    double rest = 1;
    for (const auto& share : outcome.zone_shares) {
      if (std::ranges::find(outcome.zones, share.zone) == outcome.zones.end()) continue;
      shares.push_back(share);
      rest -= share.share;
    }
    build.heading(tr("Which zones set this result"));
    auto* bars = new ShareBars(build.m_body);
    bars->setShares(std::move(shares), theme, format.locale());
    build.add(bars);
    constexpr double kWorthSaying = 0.005;
    if (rest > kWorthSaying) build.row(tr("Other zones together"), format.percent(rest));
    QLabel* tune = build.link(tr("Try a change in Tune"));
    connect(tune, &QLabel::linkActivated, this, &DerivationPanel::tuneWanted);
    build.add(tune);
  }
  if (!outcome.risk.empty()) {
    build.heading(tr("What being outside risks"));
    build.add(build.text(QCoreApplication::translate("risk", outcome.risk.c_str())));
    if (!outcome.risk_source.empty())
      build.add(
          build.text(QCoreApplication::translate("source", outcome.risk_source.c_str()), 12, false, theme.secondary));
  }
  m_scroll->setWidget(build.finish());
}

}  // namespace ovenwright::desktop
