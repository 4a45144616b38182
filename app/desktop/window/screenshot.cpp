#include "app/desktop/window/screenshot.h"

#include <QApplication>
#include <QDialog>
#include <QFileInfo>
#include <QPixmap>
#include <QTimer>
#include <QTreeWidget>
#include <cstdio>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/compare/group_picker.h"
#include "app/desktop/document/document.h"
#include "app/desktop/keep/keep_form.h"
#include "app/desktop/lots/figures_pane.h"
#include "app/desktop/lots/filter_bar.h"
#include "app/desktop/lots/lot_sheet_panel.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/lots/runs_model.h"
#include "app/desktop/lots/runs_table.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings_window.h"
#include "app/desktop/tune/suggestion_card.h"
#include "app/desktop/tune/suggestions_panel.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/watch/watch_window.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/sentence_states.h"

namespace ovenwright::desktop {
namespace {

constexpr int kPoll_ms = 30, kDrawn_ms = 350;
constexpr int kNotWritten = 4;

}  // namespace

QStringList Screenshot::states() {
  return {QStringLiteral("chosen"),
          QStringLiteral("lanes"),
          QStringLiteral("table"),
          QStringLiteral("board"),
          QStringLiteral("import"),
          QStringLiteral("window"),
          QStringLiteral("oven"),
          QStringLiteral("reading"),
          QStringLiteral("drop"),
          QStringLiteral("cursor"),
          QStringLiteral("zoomed"),
          QStringLiteral("raw"),
          QStringLiteral("panel"),
          QStringLiteral("tune"),
          QStringLiteral("tune-edited"),
          QStringLiteral("tune-suggestions"),
          QStringLiteral("tune-shown"),
          QStringLiteral("tune-settings"),
          QStringLiteral("tune-kept"),
          QStringLiteral("tune-panel"),
          QStringLiteral("compare"),
          QStringLiteral("compare-chosen"),
          QStringLiteral("compare-overlaid"),
          QStringLiteral("compare-level"),
          QStringLiteral("compare-marked"),
          QStringLiteral("compare-one"),
          QStringLiteral("compare-groups"),
          QStringLiteral("compare-groups-chosen"),
          QStringLiteral("compare-groups-overlaid"),
          QStringLiteral("compare-groups-picker"),
          QStringLiteral("compare-empty"),
          QStringLiteral("lots"),
          QStringLiteral("lots-trend"),
          QStringLiteral("lots-zones"),
          QStringLiteral("lots-sorted"),
          QStringLiteral("lots-open"),
          QStringLiteral("lots-panel"),
          QStringLiteral("lots-several"),
          QStringLiteral("keep"),
          QStringLiteral("settings"),
          QStringLiteral("watch")};
}

Screenshot::Screenshot(Document* document, MainWindow* window, Request request)
    : QObject(window), m_document(document), m_window(window), m_request(std::move(request)) {
  m_window->resize(m_request.size);
  QTimer::singleShot(kPoll_ms, this, &Screenshot::whenReady);
}

void Screenshot::whenReady() {
  if (m_document->isBusy()) {
    QTimer::singleShot(kPoll_ms, this, &Screenshot::whenReady);
    return;
  }
  if (m_request.state.startsWith(QStringLiteral("tune"))) {
    stepTune();
    return;
  }
  if (m_request.state.startsWith(QStringLiteral("lots"))) {
    stepLots();
    return;
  }
  if (m_request.state == u"watch") {
    stepWatch();
    return;
  }
  if (m_request.state.startsWith(QStringLiteral("compare-groups"))) {
    stepGroups();
    return;
  }
  if (m_request.state.startsWith(QStringLiteral("compare"))) {
    stepCompare();
    return;
  }
  enterState();
  QTimer::singleShot(kDrawn_ms, this, &Screenshot::take);
}

void Screenshot::enterState() {
  const QString& state = m_request.state;
  CheckPage* page = m_window->checkPage();
  const auto view = m_document->view();
  if (state == u"chosen" || state == u"panel") page->stepProblem(1);
  if (state == u"panel") page->setPanelShown(true);
  if (state == u"lanes") page->showTab(CheckPage::kLanes);
  if (state == u"table") page->showTab(CheckPage::kTable);
  if (state == u"board") page->showTab(CheckPage::kBoard);
  if (state == u"import") m_window->showImport();
  if (state == u"window") m_window->showWindowEditor();
  if (state == u"oven") m_window->showOvenEditor();
  if (state == u"keep") m_window->keepForm()->open();
  if (state == u"settings") m_window->settingsWindow()->showArchive();
  if (state == u"reading")
    m_window->sentence()->setContent(readingSentence({tr("a large log"), 0.62, 41200}, Format::inDefaultLocale()));
  if (state == u"drop") m_window->showDropFrame(3);
  if (state == u"zoomed") page->plot()->zoomBy(4, view ? std::optional(0.75 * view->run().to_s) : std::nullopt);
  if (state == u"raw") page->plot()->setRawSamplesShown(true);
  if (state == u"cursor" && view) page->plot()->setCursor_s(0.6 * view->run().to_s);
}

void Screenshot::stepTune() {
  TunePage* page = m_window->tunePage();
  TuneSession* session = page->session();
  const QString& state = m_request.state;
  if (session->isBusy()) {
    QTimer::singleShot(kPoll_ms, this, &Screenshot::stepTune);
    return;
  }
  const auto* bench = session->bench();
  const bool ready = session->state() == TuneSession::State::kReady;
  const auto edit = [&] {
    session->setField({RecipeField::Kind::kTop, 0}, bench->measured.top_C[0] - 14, -1);
    session->setField({RecipeField::Kind::kTop, 7}, bench->measured.top_C[7] + 10, -1);
    session->setField({RecipeField::Kind::kSpeed, 0}, bench->measured.speed_mm_per_min - 38, -1);
  };
  const bool searches = state == u"tune-suggestions" || state == u"tune-shown" || state == u"tune-settings";
  if (m_step == 0) {
    m_window->showTask(MainWindow::Task::kTune);
  } else if (m_step == 1 && ready && (state == u"tune-edited" || state == u"tune-kept")) {
    edit();
  } else if (m_step == 1 && ready && searches) {
    session->suggest();
  } else if (m_step == 1 && state == u"tune-panel") {
    page->setPanelShown(true);
  } else if (m_step == 2 && state == u"tune-shown" && bench && bench->report && !bench->report->suggestions.empty()) {
    session->takeOver({}, bench->report->suggestions.front().recipe);
  } else if (m_step == 2 && state == u"tune-settings") {
    page->panel()->showSettings();
  } else if (m_step == 2 && ready && state == u"tune-kept") {
    session->keepPrediction();
    session->setField({RecipeField::Kind::kTop, 9}, bench->measured.top_C[9] + 4, -1);
    page->setAllCurvesShown(true);
  } else if (m_step > 2) {
    QTimer::singleShot(kDrawn_ms, this, &Screenshot::take);
    return;
  }
  ++m_step;
  QTimer::singleShot(kPoll_ms, this, &Screenshot::stepTune);
}

void Screenshot::stepLots() {
  LotsPage* page = m_window->lotsPage();
  const QString& state = m_request.state;
  if (m_step > 0 && (page->isBusy() || m_document->isBusy() || page->panel()->isMaking())) {
    QTimer::singleShot(kPoll_ms, this, &Screenshot::stepLots);
    return;
  }
  if (m_step == 0) {
    m_window->showTask(MainWindow::Task::kLots);
  } else if (m_step == 1 && page->model()->rowCount() > 3) {
    page->model()->setMarked({2, 3}, true);
    if (state == u"lots-trend") page->figures()->showTab(FiguresPane::kTrend);
    if (state == u"lots-zones") page->figures()->showTab(FiguresPane::kZones);
    if (state == u"lots-sorted") page->table()->sortBy(RunsModel::kMargin);
    if (state == u"lots-panel") page->setPanelShown(true);
    if (state == u"lots-several") page->panel()->showSeveralLots();
    if (state == u"lots-open") emit page->openWanted(QString::fromStdString(page->model()->row(0).id));
  } else if (m_step > 2) {
    QTimer::singleShot(2 * kDrawn_ms, this, &Screenshot::take);
    return;
  }
  ++m_step;
  QTimer::singleShot(kDrawn_ms, this, &Screenshot::stepLots);
}

void Screenshot::stepWatch() {
  // The folder of the log that is open, with the rules that stand in it.
  constexpr int kLines = 3;
  WatchWindow* watch = m_window->watchWindow();
  if (m_step++ == 0 && m_document->current()) {
    const QString folder = QFileInfo(m_document->current()->source.path).absolutePath();
    watch->setFolder(folder);
    watch->setRules(folder + QStringLiteral("/rules.toml"));
    watch->show();
    watch->start();
  }
  const bool enough = watch->lines()->topLevelItemCount() >= kLines;
  QTimer::singleShot(kDrawn_ms, this, enough ? &Screenshot::take : &Screenshot::stepWatch);
}

void Screenshot::stepCompare() {
  ComparePage* page = m_window->comparePage();
  CompareSession* session = page->session();
  const QString& state = m_request.state;
  if (session->isBusy()) {
    QTimer::singleShot(kPoll_ms, this, &Screenshot::stepCompare);
    return;
  }
  if (m_step == 0) {
    m_window->showTask(MainWindow::Task::kCompare);
    // Of no log the two of the demo, so that they have the recipes they were run with.
    if (state == u"compare-one")
      m_window->openDemo();
    else if (m_document->logs().empty() && state != u"compare-empty")
      m_window->openDemoPair();
  } else if (m_step == 1) {
    CompareChoice choice = session->choice();
    if (state == u"compare-overlaid") choice.curves = CompareCurves::kOverlaid;
    if (state == u"compare-level") choice.align_C = 217;
    if (state == u"compare-overlaid" || state == u"compare-level") session->change({}, choice);
  } else if (m_step == 2) {
    if (state == u"compare-chosen") page->stepProblem(1);
    if (state == u"compare-marked") {
      widgets::SentenceLink zones;
      zones.zones = {std::string()};
      page->follow(zones);
    }
  } else {
    QTimer::singleShot(kDrawn_ms, this, &Screenshot::take);
    return;
  }
  ++m_step;
  QTimer::singleShot(kPoll_ms, this, &Screenshot::stepCompare);
}

void Screenshot::stepGroups() {
  // The newest runs of the archive's main side, divided by their recipe.
  constexpr int kMost = 24;
  LotsPage* lots = m_window->lotsPage();
  ComparePage* page = m_window->comparePage();
  CompareSession* session = page->session();
  const QString& state = m_request.state;
  const auto again = [this] { QTimer::singleShot(kPoll_ms, this, &Screenshot::stepGroups); };
  if (m_step == 0) {
    m_window->showTask(MainWindow::Task::kLots);
  } else if (m_step == 1) {
    if (lots->isBusy() || lots->model()->rowCount() == 0) return again();
    std::vector<int> rows;
    const QString board = lots->model()->row(0).board;
    for (int row = 0; row < lots->model()->rowCount() && int(rows.size()) < kMost; ++row)
      if (lots->model()->row(row).board == board) rows.push_back(row);
    lots->model()->setMarked(rows, true);
    emit lots->filterBar()->compareWanted();
  } else if (m_step == 2) {
    GroupPicker* picker = m_window->groupPicker();
    if (!picker || !picker->isVisible()) return again();
    if (state != u"compare-groups-picker") picker->take();
  } else if (m_step == 3 && state != u"compare-groups-picker") {
    if (!session->isSettled()) return again();
    CompareChoice choice = session->choice();
    choice.curves = CompareCurves::kOverlaid;
    if (state == u"compare-groups-overlaid") session->change({}, choice);
    if (state == u"compare-groups-chosen") page->stepProblem(1);
  } else {
    QTimer::singleShot(kDrawn_ms, this, &Screenshot::take);
    return;
  }
  ++m_step;
  again();
}

void Screenshot::take() {
  QWidget* shown = m_window;  // or the window that stands beside it
  for (auto* dialog : m_window->findChildren<QDialog*>())
    if (dialog->isVisible()) shown = dialog;
  if (!shown->grab().save(m_request.file)) {
    std::fprintf(stderr, "ovenwright-desktop: %s cannot be written\n", qPrintable(m_request.file));
    QApplication::exit(kNotWritten);
    return;
  }
  QApplication::exit(0);
}

}  // namespace ovenwright::desktop
