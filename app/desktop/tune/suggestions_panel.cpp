#include "app/desktop/tune/suggestions_panel.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/desktop/tune/model_words.h"
#include "app/desktop/tune/suggestion_card.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLeastSpeedKey = 1, kMarginKey = 2;  // of a number while it is typed
constexpr int kMergeKeys = 900000000;              // apart from the gestures of the strip

/// Takes everything out of a widget that is filled anew.
QVBoxLayout* emptied(QWidget* widget) {
  qDeleteAll(widget->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
  delete widget->layout();
  auto* layout = new QVBoxLayout(widget);
  layout->setContentsMargins({});
  return layout;
}

}  // namespace

SuggestionsPanel::SuggestionsPanel(TuneSession* session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_heading(new QLabel(tr("Suggestions"), this)),
      m_again(new QPushButton(tr("Search again…"), this)),
      m_scroll(new QScrollArea(this)),
      m_settings(buildSettings()),
      m_waiting(new QLabel),
      m_progress(new QProgressBar),
      m_report(new QWidget),
      m_overlays(new QWidget),
      m_model(new QWidget) {
  setAccessibleName(m_heading->text());
  m_again->setFlat(true);
  m_again->setAutoDefault(false);
  m_stop = new QPushButton(tr("Stop"));
  m_stop->setAutoDefault(false);
  m_stop->setAccessibleName(tr("Stop the search"));
  m_progress->setAccessibleName(tr("Progress of the search"));
  m_progress->setRange(0, 100);
  m_progress->setTextVisible(false);
  auto* head = new QHBoxLayout;
  head->addWidget(m_heading, 1);
  head->addWidget(m_again);
  auto* running = new QHBoxLayout;
  running->addWidget(m_progress, 1);
  running->addWidget(m_stop);
  auto* body = new QWidget;
  body->setObjectName(QStringLiteral("body"));
  auto* body_layout = new QVBoxLayout(body);
  body_layout->addWidget(m_waiting);
  body_layout->addWidget(m_settings);
  body_layout->addLayout(running);
  body_layout->addWidget(m_report);
  body_layout->addWidget(m_overlays);
  body_layout->addWidget(m_model);
  body_layout->addStretch(1);
  m_scroll->setWidget(body);
  m_scroll->setWidgetResizable(true);
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_scroll->setAccessibleName(m_heading->text());
  m_scroll->setFocusPolicy(Qt::NoFocus);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addLayout(head);
  layout->addWidget(new Hairline);
  layout->addWidget(m_scroll, 1);
  connect(m_again, &QPushButton::clicked, this, &SuggestionsPanel::showSettings);
  connect(m_suggest, &QPushButton::clicked, this, [this] {
    m_settingsWanted = false;
    m_session->suggest();
  });
  connect(m_stop, &QPushButton::clicked, session, &TuneSession::stop);
  connect(session, &TuneSession::stateChanged, this, &SuggestionsPanel::refresh);
  connect(session, &TuneSession::editChanged, this, [this] {
    refreshSettings();
    refreshShown();
    fillOverlays();
  });
  connect(session, &TuneSession::searchChanged, this, [this] {
    refreshReport();
    refreshSettings();
  });
  style();
  refresh();
}

SuggestionsPanel::~SuggestionsPanel() = default;

QWidget* SuggestionsPanel::buildSettings() {
  auto* settings = new QWidget(this);
  m_keepSpeed = new QCheckBox(tr("Keep the s&peed"), settings);
  m_useLeastSpeed = new QCheckBox(settings);
  m_leastSpeed = new QDoubleSpinBox(settings);
  m_useMargin = new QCheckBox(tr("&Margin to keep, %"), settings);
  m_useMargin->setToolTip(tr("What the fastest and the coolest must keep; else half of the best, at most 20 %"));
  m_margin = new QSpinBox(settings);
  m_margin->setRange(0, 90);
  m_margin->setAccessibleName(tr("Margin to keep, %"));
  m_locked = new QLabel(settings);
  m_locked->setWordWrap(true);
  m_suggest = new QPushButton(tr("S&uggest recipes"), settings);
  m_suggest->setAutoDefault(false);
  auto* grid = new QGridLayout(settings);
  grid->setContentsMargins({});
  grid->setColumnStretch(0, 1);
  grid->addWidget(m_keepSpeed, 0, 0, 1, 2);
  grid->addWidget(m_useLeastSpeed, 1, 0);
  grid->addWidget(m_leastSpeed, 1, 1);
  grid->addWidget(m_useMargin, 2, 0);
  grid->addWidget(m_margin, 2, 1);
  grid->addWidget(m_locked, 3, 0, 1, 2);
  grid->addWidget(m_suggest, 4, 0, 1, 2);
  connect(m_keepSpeed, &QCheckBox::toggled, this, [this](bool on) {
    change(on ? tr("Keep the speed in a search") : tr("Let a search change the speed"),
           [on](TuneEdit& edit) { edit.keepSpeed = on; });
  });
  const auto set_speed = [this](int key) {
    change(
        tr("Least speed of a search"),
        [this](TuneEdit& edit) {
          edit.leastSpeed_mm_per_min = m_useLeastSpeed->isChecked()
                                           ? std::optional<double>(m_format.fromShownSpeed(m_leastSpeed->value()))
                                           : std::nullopt;
        },
        key);
  };
  connect(m_useLeastSpeed, &QCheckBox::toggled, this, [set_speed] { set_speed(-1); });
  connect(m_leastSpeed, &QDoubleSpinBox::valueChanged, this, [set_speed] { set_speed(kMergeKeys + kLeastSpeedKey); });
  const auto set_margin = [this](int key) {
    change(
        tr("Margin that a search keeps"),
        [this](TuneEdit& edit) {
          edit.marginToKeep =
              m_useMargin->isChecked() ? std::optional<double>(m_margin->value() / 100.0) : std::nullopt;
        },
        key);
  };
  connect(m_useMargin, &QCheckBox::toggled, this, [set_margin] { set_margin(-1); });
  connect(m_margin, &QSpinBox::valueChanged, this, [set_margin] { set_margin(kMergeKeys + kMarginKey); });
  return settings;
}

void SuggestionsPanel::change(const QString& text, const std::function<void(TuneEdit&)>& edit, int mergeKey) {
  const auto* bench = m_session->bench();
  if (!bench) return;
  TuneEdit next = bench->edit;
  edit(next);
  m_session->change(text, std::move(next), mergeKey);
}

void SuggestionsPanel::setFormat(const Format& format) {
  m_format = format;
  constexpr double kMostSpeed_mm_per_min = 9999;
  const bool millimetres = format.shownSpeed(1) == 1;
  const QSignalBlocker quiet(m_leastSpeed);
  m_leastSpeed->setDecimals(millimetres ? 0 : 1);
  m_leastSpeed->setRange(0, format.shownSpeed(kMostSpeed_mm_per_min));
  m_leastSpeed->setSingleStep(millimetres ? 10 : 1);
  m_useLeastSpeed->setText(tr("Lea&st speed, %1").arg(format.speedUnitText()));
  m_leastSpeed->setAccessibleName(tr("Least speed, %1").arg(format.speedUnitText()));
  m_shownReport.reset();
  m_shownBench = m_overlaysBench = nullptr;
  m_shownModel.reset();
  refresh();
}

void SuggestionsPanel::showSettings() {
  m_settingsWanted = true;
  refreshSettings();
  m_scroll->ensureWidgetVisible(m_settings);
  m_suggest->setFocus();
}

void SuggestionsPanel::refresh() {
  refreshReport();
  refreshSettings();
  fillOverlays();
  fillModel();
}

void SuggestionsPanel::refreshSettings() {
  const auto* bench = m_session->bench();
  const bool ready = m_session->state() == TuneSession::State::kReady;
  const bool searching = m_session->isSearching();
  m_settings->setVisible(ready && !searching && (m_settingsWanted || !bench->report));
  m_again->setVisible(ready && !searching && bench->report && m_settings->isHidden());
  m_waiting->setVisible(!ready);
  m_waiting->setText(m_session->state() == TuneSession::State::kNotUsable
                         ? tr("Nothing is suggested from a model that does not fit.")
                         : tr("Suggestions can be asked for once it is known how this board heats in this oven."));
  m_progress->setVisible(searching);
  m_stop->setVisible(searching);
  m_progress->setValue(int(100 * m_session->searchDone()));
  if (!bench) return;
  const TuneEdit& edit = bench->edit;
  const QSignalBlocker quiet[] = {QSignalBlocker(m_keepSpeed), QSignalBlocker(m_useLeastSpeed),
                                  QSignalBlocker(m_leastSpeed), QSignalBlocker(m_useMargin), QSignalBlocker(m_margin)};
  m_keepSpeed->setChecked(edit.keepSpeed);
  m_useLeastSpeed->setChecked(edit.leastSpeed_mm_per_min.has_value());
  m_useLeastSpeed->setEnabled(!edit.keepSpeed);
  m_leastSpeed->setEnabled(!edit.keepSpeed && edit.leastSpeed_mm_per_min);
  m_leastSpeed->setValue(m_format.shownSpeed(edit.leastSpeed_mm_per_min.value_or(bench->measured.speed_mm_per_min)));
  m_useMargin->setChecked(edit.marginToKeep.has_value());
  m_margin->setEnabled(edit.marginToKeep.has_value());
  constexpr int kUsualMargin = 20;
  m_margin->setValue(edit.marginToKeep ? int(std::lround(100 * *edit.marginToKeep)) : kUsualMargin);
  QStringList locked;
  for (const auto& zone : edit.lockedZones) locked << QString::fromStdString(zone);
  m_locked->setText(locked.isEmpty() ? tr("Every zone may move; press a zone’s name in the strip to keep it.")
                                     : tr("Zones that stay: %1").arg(locked.join(QStringLiteral(", "))));
}

void SuggestionsPanel::refreshReport() {
  const auto* bench = m_session->bench();
  const auto report = bench ? bench->report : nullptr;
  if (report == m_shownReport && bench == m_shownBench) return;
  m_shownReport = report;
  m_shownBench = bench;
  m_cards.clear();
  QVBoxLayout* layout = emptied(m_report);
  if (report) fillReport(layout);
  m_report->setVisible(report != nullptr);
  refreshShown();
}

void SuggestionsPanel::fillReport(QVBoxLayout* layout) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto& bench = *m_session->bench();
  const auto& report = *bench.report;
  layout->setSpacing(int(theme.px(8)));
  const auto say = [&](const QString& text, int size_px, bool bold, const QColor& color) {
    layout->addWidget(themedLabel(theme, text, size_px, bold, color, m_report));
  };
  if (report.cut_short)
    say(tr("Undetermined: the search was stopped before it had looked everywhere."), 13, false, theme.text);
  if (report.infeasible) {
    say(tr("No recipe passes"), 15, true, theme.text);
    say(infeasibleText(*report.infeasible, m_format), 13, false, theme.text);
    if (!report.infeasible->conflicts.empty()) say(tr("What stands against each other:"), 12, false, theme.secondary);
    for (const QString& conflict : conflictTexts(*report.infeasible, m_format)) say(conflict, 13, false, theme.text);
    auto* best = new QPushButton(tr("Show the best there is"), m_report);
    best->setAutoDefault(false);
    connect(best, &QPushButton::clicked, this,
            [this, recipe = report.infeasible->best] { m_session->takeOver(tr("Show the best there is"), recipe); });
    layout->addWidget(best, 0, Qt::AlignLeft);
  } else if (report.suggestions.empty() && !report.cut_short && !report.next_run) {
    say(tr("Nothing better was found: the recipe that was run can stay."), 13, false, theme.text);
  }
  for (const auto& suggestion : report.suggestions) {
    auto* card = new SuggestionCard(bench, suggestion, m_format, m_report);
    connect(card, &SuggestionCard::showWanted, this, [this, held = bench.report, &suggestion] {
      m_session->takeOver(tr("Show: %1").arg(aimTitle(suggestion)), suggestion.recipe);
    });
    layout->addWidget(card);
    m_cards.push_back(card);
  }
  for (const auto& note : report.notes) say(modelText(note), 12, false, theme.secondary);
  if (report.next_run) {
    say(tr("The next run worth making"), 15, true, theme.text);
    say(nextRunText(*report.next_run, m_format), 13, false, theme.text);
    auto* show = new QPushButton(tr("Show its recipe"), m_report);
    show->setAutoDefault(false);
    connect(show, &QPushButton::clicked, this, [this, recipe = report.next_run->recipe] {
      m_session->takeOver(tr("Show the next run worth making"), recipe);
    });
    layout->addWidget(show, 0, Qt::AlignLeft);
  }
  auto* caution =
      themedLabel(theme, tr("These are predictions.") + u' ' + cautionText(), 12, false, theme.secondary, m_report);
  caution->setContentsMargins(int(theme.px(10)), 0, 0, 0);
  auto* row = new QHBoxLayout;
  row->setSpacing(0);
  auto* bar = new QFrame(m_report);
  bar->setFixedWidth(int(theme.px(3)));
  bar->setAutoFillBackground(true);
  QPalette ink = bar->palette();
  ink.setColor(QPalette::Window, theme.quiet);
  bar->setPalette(ink);
  row->addWidget(bar);
  row->addWidget(caution, 1);
  layout->addLayout(row);
}

void SuggestionsPanel::refreshShown() {
  const auto* bench = m_session->bench();
  if (!bench) return;
  for (auto* card : m_cards) {
    const auto& recipe = card->recipe();
    card->setShown(recipe.top_C == bench->edit.recipe.top_C && recipe.bottom_C == bench->edit.recipe.bottom_C &&
                   recipe.speed_mm_per_min == bench->edit.recipe.speed_mm_per_min);
  }
}

void SuggestionsPanel::fillOverlays() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto* bench = m_session->bench();
  m_overlays->setVisible(bench && m_session->state() == TuneSession::State::kReady);
  std::vector<int> numbers;
  for (std::size_t i = 0; bench && i < bench->edit.kept.size(); ++i) numbers.push_back(bench->edit.kept[i].number);
  if (bench == m_overlaysBench && numbers == m_overlaysNumbers) return;
  m_overlaysBench = bench;
  m_overlaysNumbers = std::move(numbers);
  QVBoxLayout* layout = emptied(m_overlays);
  if (!bench) return;
  layout->setSpacing(int(theme.px(3)));
  layout->addWidget(new Hairline(m_overlays));
  layout->addWidget(themedLabel(theme, tr("Laid over the prediction"), 12, false, theme.secondary, m_overlays));
  const auto add = [&](int number, const QString& tag, const QString& text) {
    auto* row = new QHBoxLayout;
    auto* shown = new QCheckBox(tag, m_overlays);
    shown->setChecked(m_session->isShown(number));
    connect(shown, &QCheckBox::toggled, this, [this, number](bool on) { m_session->setShown(number, on); });
    row->addWidget(shown, text.isEmpty() ? 1 : 0);
    if (!text.isEmpty()) {
      shown->setAccessibleName(tag + QStringLiteral(", ") + text);
      row->addWidget(themedLabel(theme, text, 12, false, theme.text, m_overlays), 1);
      auto* drop = new QToolButton(m_overlays);
      drop->setText(QStringLiteral("×"));
      drop->setAutoRaise(true);
      drop->setAccessibleName(tr("Drop the prediction %1").arg(tag));
      drop->setToolTip(drop->accessibleName());
      connect(
          drop, &QToolButton::clicked, m_session, [this, number] { m_session->dropKept(number); },
          Qt::QueuedConnection);
      row->addWidget(drop);
    }
    layout->addLayout(row);
  };
  add(0, tr("The run as it was measured"), {});
  for (const auto& kept : bench->edit.kept) {
    const QString margin = marginText(kept.prediction->judgement(), kept.prediction->forecast, m_format);
    const QString changes = changesInShort(bench->oven, bench->measured, kept.prediction->recipe, m_format);
    add(kept.number, kept.tag(), margin.isEmpty() ? changes : tr("%1; margin %2").arg(changes, margin));
  }
}

void SuggestionsPanel::fillModel() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto* bench = m_session->bench();
  const auto model = bench ? bench->model : nullptr;
  if (model == m_shownModel) return;
  m_shownModel = model;
  QVBoxLayout* layout = emptied(m_model);
  m_model->setVisible(model != nullptr);
  if (!model) return;
  layout->setSpacing(int(theme.px(3)));
  layout->addWidget(new Hairline(m_model));
  const auto& fit = model->fit();
  const auto row = [&](const QString& name, const QString& value) {
    auto* line = new QHBoxLayout;
    line->addWidget(themedLabel(theme, name, 12, false, theme.secondary, m_model), 2, Qt::AlignTop);
    line->addWidget(themedLabel(theme, value, 12, false, theme.text, m_model), 3);
    layout->addLayout(line);
  };
  row(tr("Model fitted to"), QString::fromStdString(model->learned().runs.front().source.log));
  const auto worst = std::ranges::max_element(fit.placements, {}, &heat::PlacementFit::max_error_C);
  if (worst != fit.placements.end())
    row(tr("Largest misfit"),
        tr("%1, %2").arg(m_format.valueWithUnit(worst->max_error_C, Format::Quantity::kDifference),
                         QString::fromStdString(worst->name)));
  for (const auto& warning : fit.warnings)
    layout->addWidget(themedLabel(theme, modelText(warning), 12, false, theme.text, m_model));
}

void SuggestionsPanel::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  m_heading->setFont(theme.font(13, true));
  m_heading->setContentsMargins(inset, int(theme.px(8)), 0, int(theme.px(8)));
  QPalette link = m_again->palette();
  link.setColor(QPalette::ButtonText, theme.accent);
  m_again->setPalette(link);
  auto* body = m_scroll->widget()->layout();
  body->setContentsMargins(int(theme.px(14)), int(theme.px(10)), int(theme.px(14)), int(theme.px(12)));
  body->setSpacing(int(theme.px(10)));
  m_locked->setFont(theme.font(12));
  m_waiting->setWordWrap(true);
  QPalette quiet = m_waiting->palette();
  quiet.setColor(QPalette::WindowText, theme.secondary);
  m_waiting->setPalette(quiet);
}

void SuggestionsPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  style();
  m_shownReport.reset();
  m_shownBench = m_overlaysBench = nullptr;
  m_shownModel.reset();
  refresh();
}

}  // namespace ovenwright::desktop
