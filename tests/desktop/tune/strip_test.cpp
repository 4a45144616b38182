#include <QAccessible>
#include <QPushButton>
#include <QSignalSpy>
#include <QWheelEvent>
#include <set>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/tune/field_format.h"
#include "app/desktop/tune/suggestions_panel.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "tests/desktop/tune/tune_fixture.h"

namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;

// Undone while another run is the current one, behind another task: the run that it belongs to comes back.
TEST_F(TuneTest, AnEditUndoneBesideAnotherRunIsThatOfItsOwnRun) {
  m_window->openDemoPair();
  settle();
  const auto first = m_document->logs()[0], second = m_document->logs()[1];
  m_document->setCurrent(first);
  m_window->showTask(MainWindow::Task::kTune);
  wait();
  ASSERT_EQ(session()->companions().size(), 1U);
  session()->setLearnsFrom(*session()->companions().front(), true);
  wait();
  m_window->showTask(MainWindow::Task::kCheck);
  m_document->setCurrent(second);
  m_document->undoStack()->undo();
  EXPECT_EQ(m_document->currentPointer(), first);
  m_window->showTask(MainWindow::Task::kTune);
  wait();
  ASSERT_EQ(session()->state(), TuneSession::State::kReady) << shownSentence().toStdString();
  EXPECT_EQ(session()->bench()->log.lock(), first);
  EXPECT_EQ(session()->bench()->model->learned().runs.size(), 1U);
}

TEST_F(TuneTest, ASetpointTypedInFahrenheitIsThatTemperature) {
  openTune();
  page()->setFormat(Format(TemperatureUnit::kFahrenheit, SpeedUnit::kInchesPerMinute, QLocale::c()));
  type({Kind::kTop, 7}, "482");
  EXPECT_NEAR(edited().top_C[7], 250, 1e-9);  // source: definition of the degree Fahrenheit
  EXPECT_TRUE(strip()->spoken({Kind::kTop, 7}).contains(QStringLiteral("482 °F")));
  wait();
}

// Whole °C have a decimal in °F: the arrows give way before a digit is cut.
TEST_F(TuneTest, NumbersFitTheirFieldsInEitherUnit) {
  openTune();
  const auto theme = widgets::Theme::fromPalette(strip()->palette(), strip()->font());
  for (const auto unit : {TemperatureUnit::kCelsius, TemperatureUnit::kFahrenheit}) {
    page()->setFormat(Format(unit, SpeedUnit::kMillimetresPerMinute, QLocale::c()));
    wait();
    const auto layout = strip()->layoutNow();
    const QFontMetricsF metrics(theme.font(layout.fontSize_px(), true));
    for (const auto& field : fieldOrder(strip()->table())) {
      if (field.kind == Kind::kSpeed) continue;
      const QRectF rect = layout.field(field);
      const qreal room = layout.hasArrows(rect) ? layout.arrow(rect, true).left() - rect.left() : rect.width();
      EXPECT_LE(metrics.horizontalAdvance(FieldFormat(strip()->table().format).number(field, valueOf(edited(), field))),
                room);
    }
  }
}

TEST_F(TuneTest, StepsKeysAndUndo) {
  openTune();
  const double before = edited().top_C[8];
  strip()->setFocus();
  strip()->setCurrent({Kind::kTop, 8});
  QTest::keyClick(strip(), Qt::Key_Up);
  QTest::keyClick(strip(), Qt::Key_PageUp);
  EXPECT_EQ(edited().top_C[8], before + 6);
  strip()->setCurrent({Kind::kTop, 7});
  QTest::keyClick(strip(), Qt::Key_Down);
  m_document->undoStack()->undo();
  m_document->undoStack()->undo();  // the steps on one field are one
  EXPECT_EQ(edited().top_C[8], before);
  m_document->undoStack()->redo();
  EXPECT_EQ(edited().top_C[8], before + 6);
  strip()->setCurrent({Kind::kTop, 8});
  QTest::keyClick(strip(), Qt::Key_Delete);
  EXPECT_EQ(edited().top_C[8], before);
  wait();
}

TEST_F(TuneTest, DelBringsBothSidesOfATiedZoneBack) {
  openTune();
  const auto measured = session()->bench()->measured;
  strip()->setFocus();
  strip()->setCurrent({Kind::kTop, 1});
  QTest::keyClick(strip(), Qt::Key_Up);
  QTest::keyClick(strip(), Qt::Key_L);
  QTest::keyClick(strip(), Qt::Key_Up);  // apart by 1 °C
  QTest::keyClick(strip(), Qt::Key_L);
  QTest::keyClick(strip(), Qt::Key_Delete);
  EXPECT_EQ(edited().top_C[1], measured.top_C[1]);
  EXPECT_EQ(edited().bottom_C[1], measured.bottom_C[1]);
  m_document->undoStack()->undo();
  EXPECT_EQ(edited().top_C[1], measured.top_C[1] + 2);
  EXPECT_EQ(edited().bottom_C[1], measured.bottom_C[1] + 1);
  wait();
}

TEST_F(TuneTest, DraggingUpRaisesASetpointInOneStepBack) {
  openTune();
  const RecipeField field{Kind::kTop, 8};
  const double before = edited().top_C[8];
  const QPoint from = strip()->layoutNow().field(field).center().toPoint() - QPoint(8, 0);
  QTest::mousePress(strip(), Qt::LeftButton, {}, from);
  for (int i = 1; i <= 10; ++i) {
    QMouseEvent move(QEvent::MouseMove, from - QPoint(0, 3 * i), strip()->mapToGlobal(from - QPoint(0, 3 * i)),
                     Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(strip(), &move);
  }
  QTest::mouseRelease(strip(), Qt::LeftButton, {}, from - QPoint(0, 30));
  EXPECT_GT(edited().top_C[8], before + 5);
  EXPECT_EQ(edited().top_C[8], edited().bottom_C[8]);
  m_document->undoStack()->undo();
  EXPECT_EQ(edited().top_C[8], before);
  wait();
}

TEST_F(TuneTest, TheNextProblemIsThatOfThePrediction) {
  openTune();
  session()->setField({Kind::kTop, 7}, 244, -1);
  session()->setField({Kind::kTop, 0}, 145, -1);
  session()->setField({Kind::kSpeed, 0}, 772, -1);
  wait();
  const auto& predicted = session()->bench()->prediction->judgement();
  const auto& measured = m_document->view()->judgement();
  m_document->choose(std::nullopt);
  std::set<std::size_t> met;
  for (int i = 0; i < 50; ++i) {
    QTest::keyClick(m_window.get(), Qt::Key_F8);
    ASSERT_TRUE(m_document->chosen());
    EXPECT_NE(predicted.all(*m_document->chosen()).verdict, judge::Verdict::kPass);
    met.insert(*m_document->chosen());
  }
  std::size_t fewer = 0, all = 0;
  for (std::size_t i = 0; i < predicted.all_size(); ++i) {
    all += predicted.all(i).verdict != judge::Verdict::kPass;
    fewer += measured.all(i).verdict != judge::Verdict::kPass;
  }
  EXPECT_EQ(met.size(), all);
  EXPECT_LT(all, fewer);  // so the steps were not those of the measured run
}

TEST_F(TuneTest, ACurveHiddenByKeyStaysHiddenWhileTheRecipeIsEdited) {
  openTune();
  const std::size_t hottest = m_document->view()->hottestFirst().front();
  ASSERT_FALSE(page()->plot()->isHidden(hottest));
  page()->plot()->setFocus();
  QTest::keyClick(page()->plot(), Qt::Key_1, Qt::AltModifier);
  ASSERT_TRUE(page()->plot()->isHidden(hottest));
  session()->setField({Kind::kTop, 9}, 260, -1);
  wait();
  EXPECT_TRUE(page()->plot()->isHidden(hottest));
}

// A page that is scrolled by the wheel goes past the strip: only the strip that is worked on takes it.
TEST_F(TuneTest, TheWheelStepsAFieldOfTheStripThatHasTheKeyboard) {
  openTune();
  const RecipeField field{Kind::kTop, 8};
  const double before = edited().top_C[8];
  const auto turn = [&] {
    const QPointF at = strip()->layoutNow().field(field).center();
    QWheelEvent wheel(at, strip()->mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase,
                      false);
    QApplication::sendEvent(strip(), &wheel);
    return wheel.isAccepted();
  };
  page()->lanes()->setFocus();
  EXPECT_FALSE(turn());
  EXPECT_EQ(edited().top_C[8], before);
  strip()->setFocus();
  EXPECT_TRUE(turn());
  EXPECT_EQ(edited().top_C[8], before + 1);
  wait();
}

// A button that goes dim must not hand the keyboard to its neighbour, where the next press would do another thing.
TEST_F(TuneTest, TheKeyboardStaysWhereThePressWas) {
  openTune();
  session()->setField({Kind::kTop, 8}, 254, -1);
  wait();
  QPushButton* back = nullptr;
  for (auto* button : page()->findChildren<QPushButton*>())
    if (button->text().contains(QStringLiteral("Back to rev"))) back = button;
  ASSERT_NE(back, nullptr);
  back->setFocus();
  QTest::keyClick(back, Qt::Key_Space);
  EXPECT_FALSE(back->isEnabled());
  EXPECT_EQ(QApplication::focusWidget(), strip());
  wait();
  page()->panel()->suggestButton()->setFocus();
  QTest::keyClick(page()->panel()->suggestButton(), Qt::Key_Space);
  ASSERT_TRUE(session()->isSearching());
  EXPECT_TRUE(page()->panel()->isAncestorOf(QApplication::focusWidget()));
  wait();
  EXPECT_TRUE(page()->panel()->isAncestorOf(QApplication::focusWidget()));
}

TEST_F(TuneTest, ALimitOfTheOvenIsSaidWhenItIsHit) {
  openTune();
  QSignalSpy said(page(), &TunePage::noted);
  session()->setField({Kind::kTop, 7}, 299, -1);
  ASSERT_FALSE(said.isEmpty());
  EXPECT_TRUE(said.last()[0].toString().contains(QStringLiteral("262")));
  wait();
}

TEST_F(TuneTest, EditsStayWhileAnotherRunIsLookedAt) {
  openTune();
  session()->setField({Kind::kTop, 9}, 260, -1);
  const auto first = m_document->currentPointer();
  drop({demo("tern_run2.csv")});
  settle();
  wait();
  EXPECT_NE(m_document->currentPointer(), first);
  EXPECT_EQ(edited().top_C[9], 256);
  m_document->setCurrent(first);
  wait();
  EXPECT_EQ(edited().top_C[9], 260);
  EXPECT_TRUE(session()->isSettled());
}

TEST_F(TuneTest, TheStripIsHeardAsATable) {
  openTune();
  auto* heard = QAccessible::queryAccessibleInterface(strip());
  ASSERT_NE(heard, nullptr);
  ASSERT_NE(heard->tableInterface(), nullptr);
  EXPECT_EQ(heard->tableInterface()->columnCount(), 13);  // ten heating zones, two cooling, the speed
  const QString cell = heard->tableInterface()->cellAt(0, 8)->text(QAccessible::Name);
  EXPECT_TRUE(cell.contains(QStringLiteral("Zone 9")) && cell.contains(QStringLiteral("252"))) << cell.toStdString();
  // The design's words; L parts the sides.
  EXPECT_EQ(heard->text(QAccessible::Description), QStringLiteral("Top and bottom together, checked"));
  strip()->setFocus();
  QTest::keyClick(strip(), Qt::Key_L);
  EXPECT_EQ(heard->text(QAccessible::Description), QStringLiteral("Top and bottom together, not checked"));
}

}  // namespace
}  // namespace ovenwright::desktop
