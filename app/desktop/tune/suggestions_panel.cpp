#include "app/desktop/tune/suggestions_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/tune/learned_from.h"
#include "app/desktop/tune/model_words.h"
#include "app/desktop/tune/overlay_list.h"
#include "app/desktop/tune/search_settings.h"
#include "app/desktop/tune/suggestion_card.h"
#include "app/desktop/tune/themed_label.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
SuggestionsPanel::SuggestionsPanel(TuneSession* session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_heading(new QLabel(tr("Suggestions"), this)),
      m_again(new QPushButton(tr("Search again…"), this)),
      m_scroll(new QScrollArea(this)),
      m_settings(new SearchSettings(session)),
      m_doubts(new QWidget),
      m_waiting(new QLabel),
      m_progress(new QProgressBar),
      m_report(new QWidget),
      m_overlays(new OverlayList(session)),
      m_model(new LearnedFrom(session)) {
  setAccessibleName(m_heading->text());
  m_doubts->hide();
  m_again->setFlat(true);
  m_again->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Ignored);  // its row is as high without it
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
  body_layout->addWidget(m_doubts);
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
  connect(suggestButton(), &QPushButton::clicked, this, [this] {
    m_settingsWanted = false;
    m_session->suggest();
  });
  connect(m_stop, &QPushButton::clicked, session, &TuneSession::stop);
  connect(session, &TuneSession::stateChanged, this, &SuggestionsPanel::refresh);
  connect(session, &TuneSession::editChanged, this, [this] {
    refreshSettings();
    refreshShown();
    m_overlays->refresh(m_format);
  });
  connect(session, &TuneSession::searchChanged, this, [this] {
    refreshReport();
    refreshSettings();
  });
  style();
  refresh();
}

SuggestionsPanel::~SuggestionsPanel() = default;

QPushButton* SuggestionsPanel::suggestButton() { return m_settings->suggestButton(); }

void SuggestionsPanel::setFormat(const Format& format) {
  m_format = format;
  m_settings->setFormat(format);
  m_shownReport.reset();
  m_shownBench = nullptr;
  m_overlays->forget();
  m_model->forget();
  m_shownModel.reset();
  refresh();
}

void SuggestionsPanel::showSettings() {
  m_settingsWanted = true;
  refreshSettings();
  m_scroll->ensureWidgetVisible(m_settings);
  suggestButton()->setFocus();
}

void SuggestionsPanel::refresh() {
  refreshReport();
  refreshSettings();
  m_overlays->refresh(m_format);
  refreshModel();
}

void SuggestionsPanel::refreshSettings() {
  const auto* bench = m_session->bench();
  const bool ready = m_session->state() == TuneSession::State::kReady;
  const bool searching = m_session->isSearching();
  // What has the keyboard is about to go: it stays in this panel.
  const bool asked = suggestButton()->hasFocus(), waited = m_stop->hasFocus();
  m_settings->setVisible(ready && !searching && (m_settingsWanted || !bench->report));
  m_again->setVisible(ready && !searching && bench->report && m_settings->isHidden());
  m_waiting->setVisible(!ready);
  m_waiting->setText(m_session->state() == TuneSession::State::kNotUsable
                         ? tr("Nothing is suggested from a model that does not fit.")
                         : tr("Suggestions can be asked for once it is known how this board heats in this oven."));
  m_progress->setVisible(searching);
  m_stop->setVisible(searching);
  m_progress->setValue(int(100 * m_session->searchDone()));
  m_settings->refresh();
  if (searching && asked) m_stop->setFocus(Qt::OtherFocusReason);
  if (!searching && waited) (m_again->isHidden() ? suggestButton() : m_again)->setFocus(Qt::OtherFocusReason);
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
    say(report.infeasible->ruled_out ? tr("No recipe passes") : tr("Not known: a recipe that passes may exist"), 15,
        true, theme.text);
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

void SuggestionsPanel::refreshModel() {
  const auto* bench = m_session->bench();
  const auto model = bench ? bench->model : nullptr;
  m_model->refresh(m_format);
  if (model == m_shownModel) return;
  m_shownModel = model;
  fillDoubts(model ? model->fit() : heat::FitReport{});
}

void SuggestionsPanel::fillDoubts(const heat::FitReport& fit) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  QVBoxLayout* layout = emptied(m_doubts);
  layout->setSpacing(int(theme.px(3)));
  m_doubts->setVisible(!fit.warnings.empty());
  if (fit.warnings.empty()) return;
  layout->addWidget(themedLabel(theme, tr("To check first"), 13, true, theme.text, m_doubts));
  for (const auto& warning : fit.warnings)
    layout->addWidget(themedLabel(theme, modelText(warning), 13, false, theme.text, m_doubts));
  if (fit.contradicted)
    layout->addWidget(themedLabel(theme, tr("No chance of passing is stated while the log contradicts the files."), 13,
                                  false, theme.text, m_doubts));
}

void SuggestionsPanel::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  m_heading->setFont(theme.font(13, true));
  layout()->itemAt(0)->layout()->setContentsMargins(inset, int(theme.px(8)), int(theme.px(6)), int(theme.px(8)));
  QPalette link = m_again->palette();
  link.setColor(QPalette::ButtonText, theme.accent);
  m_again->setPalette(link);
  auto* body = m_scroll->widget()->layout();
  body->setContentsMargins(int(theme.px(14)), int(theme.px(10)), int(theme.px(14)), int(theme.px(12)));
  body->setSpacing(int(theme.px(10)));
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
  m_shownBench = nullptr;
  m_overlays->forget();
  m_model->forget();
  m_shownModel.reset();
  refresh();
}

}  // namespace ovenwright::desktop
