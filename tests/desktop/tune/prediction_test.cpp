#include <QSignalSpy>
#include <nlohmann/json.hpp>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/wording.h"
#include "core/oven/oven_file.h"
#include "tests/desktop/tune/tune_fixture.h"

namespace ovenwright::desktop {
namespace {

using Json = nlohmann::json;
using Kind = RecipeField::Kind;

TEST_F(TuneTest, LanesOfATypedSetpointAreThoseOfTheCommand) {
  openTune();
  type({Kind::kTop, 7}, "244");
  type({Kind::kSpeed, 0}, "772");
  wait();
  EXPECT_EQ(edited().top_C[7], 244);
  EXPECT_EQ(edited().bottom_C[7], 244);
  ASSERT_TRUE(session()->isSettled());

  const QString recipe = write(QStringLiteral("new.toml"), QByteArray::fromStdString(oven::recipe_text(edited())));
  const Json report = command(demoArguments(QStringLiteral("predict")) << QStringLiteral("--new-recipe") << recipe);
  ASSERT_TRUE(report.is_object());
  Json results = report["judged"]["results"];
  for (const Json& result : report["judged"]["board_results"]) results.push_back(result);
  const auto& prediction = *session()->bench()->prediction;
  ASSERT_EQ(results.size(), prediction.judgement().all_size());
  constexpr double kPrinted = 1e-9;  // numbers are printed so that they read back the same
  for (std::size_t i = 0; i < results.size(); ++i) {
    const auto& outcome = prediction.judgement().all(i);
    ASSERT_EQ(results[i]["requirement"], outcome.requirement_name);
    ASSERT_TRUE(outcome.value.value);
    EXPECT_NEAR(results[i]["value"].get<double>(), *outcome.value.value, kPrinted);
    EXPECT_NEAR(results[i]["prediction_half_width"].get<double>(), prediction.forecast.half_width[i], kPrinted);
    EXPECT_EQ(results[i]["verdict"], judge::verdict_name(outcome.verdict));
  }
  // Where a mark stands is its margin: 1 − |s| on the side of a limit.
  int marks = 0;
  for (const auto& lane : page()->lanes()->table().lanes)
    for (const auto& mark : lane.marks) {
      const Json& result = results[mark.outcome];
      if (!mark.s || result["margin"].is_null()) continue;
      const bool upper_side = *mark.s >= 0;
      if (upper_side ? result["upper"].is_null() : result["lower"].is_null()) continue;
      EXPECT_NEAR(1 - std::abs(*mark.s), result["margin"].get<double>(), kPrinted) << mark.place.toStdString();
      ++marks;
    }
  EXPECT_GT(marks, 30);
  EXPECT_EQ(report["judged"]["verdict"], judge::verdict_name(m_window->sentence()->content().verdict));
}

// A second run of the board makes the prediction that of the command from both runs, and is undone like any edit.
TEST_F(TuneTest, ItLearnsFromAnotherRunThatIsOpen) {
  m_window->openDemoPair();
  settle();
  const auto& logs = m_document->logs();
  ASSERT_EQ(logs.size(), 2U);
  const auto first = logs[0]->source.name.contains(u"run1") ? logs[0] : logs[1];
  m_document->setCurrent(first);
  m_window->showTask(MainWindow::Task::kTune);
  wait();
  ASSERT_EQ(session()->state(), TuneSession::State::kReady) << shownSentence().toStdString();
  ASSERT_EQ(session()->companions().size(), 1U);
  EXPECT_EQ(session()->bench()->model->learned().runs.size(), 1U);
  const double alone = *session()->bench()->prediction->forecast.margin_uncertainty;

  session()->setLearnsFrom(*session()->companions().front(), true);
  wait();
  ASSERT_EQ(session()->state(), TuneSession::State::kReady) << shownSentence().toStdString();
  EXPECT_EQ(session()->bench()->model->learned().runs.size(), 2U);
  type({Kind::kTop, 7}, "244");
  wait();
  const QString recipe = write(QStringLiteral("new.toml"), QByteArray::fromStdString(oven::recipe_text(edited())));
  const Json report = command(
      {QStringLiteral("predict"), demo("tern_run2.csv"), demo("tern_run1.csv"), QStringLiteral("--recipe"),
       demo("recipe_rev8.toml"), QStringLiteral("--recipe"), demo("recipe.toml"), QStringLiteral("--window"),
       demo("window.toml"), QStringLiteral("--board"), demo("board.toml"), QStringLiteral("--oven"), demo("oven.toml"),
       QStringLiteral("--new-recipe"), recipe, QStringLiteral("--format"), QStringLiteral("json")});
  ASSERT_TRUE(report.is_object());
  constexpr double kPrinted = 1e-9;  // numbers are printed so that they read back the same
  EXPECT_NEAR(*session()->bench()->prediction->judgement().margin, report["judged"]["margin"].get<double>(), kPrinted);

  m_document->undoStack()->undo();
  m_document->undoStack()->undo();
  wait();
  EXPECT_EQ(session()->bench()->model->learned().runs.size(), 1U);
  EXPECT_NEAR(*session()->bench()->prediction->forecast.margin_uncertainty, alone, kPrinted);
}

// Whiskers, sentence and curves keep the prediction's error while the band of the new recipe is worked out.
TEST_F(TuneTest, WhileAnEditGoesOnTheErrorOfTheRecipeBeforeStands) {
  openTune();
  const auto banded = session()->bench()->prediction;
  ASSERT_TRUE(banded->hasBand());
  session()->setField({Kind::kTop, 8}, 254, 1);
  ASSERT_TRUE(QTest::qWaitFor([&] { return session()->bench()->prediction != banded; }, kLongest_ms));
  const auto& bench = *session()->bench();
  ASSERT_FALSE(bench.prediction->hasBand());  // its values come first
  EXPECT_EQ(bench.halfWidths(), banded->forecast.half_width);
  const auto told = tune::with_prediction_error(bench.prediction->judgement(), banded->forecast.half_width);
  int whiskers = 0;
  for (const auto& lane : page()->lanes()->table().lanes)
    for (const auto& mark : lane.marks) {
      const auto& outcome = told.all(mark.outcome);
      if (!mark.s || !outcome.value.expanded_uncertainty) continue;
      const double bare = *bench.prediction->judgement().all(mark.outcome).value.expanded_uncertainty;
      EXPECT_GT(*outcome.value.expanded_uncertainty, bare) << outcome.requirement_name;
      const QString value = widgets::Wording(Format::inDefaultLocale()).value(outcome);
      EXPECT_TRUE(mark.tip.contains(value)) << mark.tip.toStdString() << " without " << value.toStdString();
      ++whiskers;
    }
  EXPECT_GT(whiskers, 30);
  EXPECT_FALSE(page()->plot()->scene().errorBand_C.empty());
  wait();
  EXPECT_TRUE(session()->isSettled());
  EXPECT_EQ(session()->bench()->halfWidths(), session()->bench()->prediction->forecast.half_width);
}

// What was worked on is of the zones by their place: a name is no reason to lose it, limits hold it.
TEST_F(TuneTest, ARenamedZoneKeepsTheRecipeAndNewLimitsHoldIt) {
  openTune();
  TuneEdit edit = session()->bench()->edit;
  edit.lockedZones = {m_document->setup().oven->zones[2].name};
  session()->change(QStringLiteral("lock"), edit);
  session()->setField({Kind::kTop, 8}, 254, -1);
  check::Request setup = m_document->setup();
  setup.oven->zones[2].name = "third";
  setup.oven->identity.sha256.clear();
  m_document->edit({}, setup);
  settle();
  EXPECT_EQ(edited().top_C[8], 254);
  EXPECT_EQ(session()->bench()->edit.lockedZones, std::vector<std::string>{"third"});
  const double measured = std::ranges::max(session()->bench()->measured.top_C);
  session()->setField({Kind::kTop, 9}, measured + 5, -1);
  ASSERT_GT(edited().top_C[9], measured);
  setup = m_document->setup();
  (*setup.oven->limits.setpoint_C)[1] = measured;
  m_document->edit({}, setup);
  settle();
  EXPECT_EQ(edited().top_C[9], measured);
  EXPECT_EQ(edited().top_C[8], 254);
  wait();
}

// An edited oven has the same name as the one before it and is in no file: it is another oven all the same.
TEST_F(TuneTest, AnEditedOvenIsLearnedAnewAndTheRecipeStays) {
  openTune();
  session()->setField({Kind::kTop, 8}, 254, -1);
  wait();
  const auto before = session()->bench()->model;
  for (const double step_C : {40.0, 30.0}) {
    check::Request setup = m_document->setup();
    setup.oven->limits.step_between_zones_C = step_C;
    setup.oven->identity.sha256.clear();
    m_document->edit({}, setup);
    settle();
    wait();
    ASSERT_EQ(session()->state(), TuneSession::State::kReady) << shownSentence().toStdString();
    EXPECT_NE(session()->bench()->model, before);
    EXPECT_EQ(session()->bench()->oven.limits.step_between_zones_C, step_C);
    EXPECT_EQ(edited().top_C[8], 254);
  }
  m_document->undoStack()->undo();
  m_document->undoStack()->undo();
  settle();
  wait();
  EXPECT_EQ(session()->bench()->model, before);
}

TEST_F(TuneTest, TheLatestEditWins) {
  openTune();
  QSignalSpy arrived(session(), &TuneSession::predictionChanged);
  for (int i = 1; i <= 40; ++i) session()->setField({Kind::kTop, 9}, 256 + i % 20, -1);
  session()->setField({Kind::kTop, 9}, 260, -1);
  EXPECT_EQ(arrived.count(), 0);  // nothing was waited for
  wait();
  EXPECT_TRUE(session()->isSettled());
  EXPECT_EQ(session()->bench()->prediction->recipe.top_C[9], 260);
  EXPECT_LT(arrived.count(), 10);
}

TEST_F(TuneTest, LearningCanBeStoppedAndBegunAgain) {
  openDemo();
  m_window->showTask(MainWindow::Task::kTune);
  EXPECT_EQ(session()->state(), TuneSession::State::kLearning);
  session()->stop();
  wait();
  if (session()->state() == TuneSession::State::kStopped) session()->learnAgain();
  wait();
  EXPECT_EQ(session()->state(), TuneSession::State::kReady);
}

TEST_F(TuneTest, WithoutAnOvenItSaysWhatIsNeeded) {
  drop({demo("tern_run2.csv")});
  settle();
  m_window->showTask(MainWindow::Task::kTune);
  EXPECT_EQ(session()->state(), TuneSession::State::kNeedsOven);
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("oven and the recipe"))) << shownSentence().toStdString();
}

TEST_F(TuneTest, TheTableThatIsCopiedIsThePrediction) {
  openTune();
  session()->setField({Kind::kTop, 9}, session()->bench()->measured.top_C[9] + 4, -1);
  wait();
  const QStringList rows = page()->copyText().split(u'\n', Qt::SkipEmptyParts);
  const auto& lanes = page()->lanes()->table().lanes;
  ASSERT_EQ(rows.size(), qsizetype(lanes.size()) + 1);
  for (std::size_t i = 0; i < lanes.size(); ++i) EXPECT_EQ(rows[qsizetype(i) + 1], lanes[i].rowText);
  EXPECT_EQ(rows[0].count(u'\t'), rows[1].count(u'\t'));
}

TEST_F(TuneTest, PredictionsAreKeptShownAndDropped) {
  openTune();
  session()->setField({Kind::kTop, 9}, 260, -1);
  wait();
  session()->keepPrediction();
  EXPECT_EQ(page()->plot()->scene().behind.size(), 2u);  // the measured run and the one that was kept
  session()->setShown(1, false);
  EXPECT_EQ(page()->plot()->scene().behind.size(), 1u);
  session()->setShown(0, false);
  EXPECT_TRUE(page()->plot()->scene().behind.empty());
  session()->setShown(1, true);
  m_document->undoStack()->undo();
  EXPECT_TRUE(session()->bench()->edit.kept.empty());
  wait();
}

}  // namespace
}  // namespace ovenwright::desktop
