#include <QAction>
#include <QClipboard>
#include <QMimeData>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/check_page.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

TEST_F(WindowTest, StartsEmptyAndSaysSo) {
  EXPECT_EQ(m_document->current(), nullptr);
  EXPECT_TRUE(shownSentence().startsWith(QStringLiteral("No run is open.")));
}

TEST_F(WindowTest, ADroppedLogIsReadAndJudgedAsTheCoreDoes) {
  drop({demo("tern_run2.csv")});
  settle();
  const auto view = m_document->view();
  ASSERT_NE(view, nullptr);
  // The one path from a file to a verdict, taken by hand.
  const auto expected = check::check(demo("tern_run2.csv").toStdString(), m_document->setup());
  ASSERT_TRUE(expected) << expected.error().text();
  const auto& judgement = expected->runs[0].judgement;
  EXPECT_EQ(view->judgement().sentence.text, judgement.sentence.text);
  EXPECT_EQ(view->judgement().verdict, judgement.verdict);
  EXPECT_EQ(view->judgement().margin, judgement.margin);
  ASSERT_EQ(view->judgement().all_size(), judgement.all_size());
  EXPECT_EQ(m_window->sentence()->content().verdict, judgement.verdict);
}

TEST_F(WindowTest, SeveralDroppedLogsAreAllReadAndTheFirstIsShown) {
  drop({demo("tern_run1.csv"), demo("tern_run2.csv"), demo("tern_second_side.txt")});
  settle();
  ASSERT_EQ(m_document->logs().size(), 3u);
  ASSERT_NE(m_document->current(), nullptr);
  EXPECT_EQ(m_document->current()->source.name, QStringLiteral("tern_run1.csv"));
}

TEST_F(WindowTest, APastedLogIsRead) {
  QFile file(demo("tern_run2.csv"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  QApplication::clipboard()->setText(QString::fromUtf8(file.readAll()));
  QTest::keyClick(m_window.get(), Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
  settle();
  ASSERT_NE(m_document->view(), nullptr);
  EXPECT_EQ(m_document->view()->channels().size(), 6u);
}

TEST_F(WindowTest, TheDemoRunFailsInTwoWays) {
  openDemo();
  // Source: profiles/demo/README.md: run 1 fails twice, U12 centre too cold and R118 too steep.
  EXPECT_EQ(m_document->view()->judgement().verdict, judge::Verdict::kFail);
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("U12 centre")));
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("R118")));
}

/// Pixels of a picture of a widget that are nearly of a colour; lines are blended at their edges.
int pixelsOf(CurvePlot* plot, const QColor& color) {
  constexpr int kNearly = 80;  // of 3 · 255
  plot->replotNow();
  const QImage picture = plot->grab().toImage();
  int count = 0;
  for (int y = 0; y < picture.height(); ++y)
    for (int x = 0; x < picture.width(); ++x) {
      const QColor at = picture.pixelColor(x, y);
      count +=
          std::abs(at.red() - color.red()) + std::abs(at.green() - color.green()) + std::abs(at.blue() - color.blue()) <
          kNearly;
    }
  return count;
}

// What cleaning took out is not drawn as a curve, and is there to be seen when it is asked for.
TEST_F(WindowTest, RawSamplesThatWereTakenOutShowOnDemand) {
  QFile file(demo("tern_run2.csv"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  auto lines = file.readAll().split('\n');
  auto cells = lines[300].split(',');
  cells[1] = "50.0";  // one sample of the first thermocouple, far off the line between its neighbours
  lines[300] = cells.join(',');
  drop({write(QStringLiteral("spike.csv"), lines.join('\n'))});
  settle();
  ASSERT_NE(m_document->view(), nullptr);
  const auto& faults = m_document->view()->run().channels[0].faults;
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_EQ(faults[0].kind, run::FaultKind::kSpike);
  auto* plot = m_window->checkPage()->plot();
  m_document->choose(std::nullopt);
  plot->showStretch(faults[0].from_s, faults[0].to_s);
  QApplication::processEvents();
  const QColor signal = widgets::Theme::fromPalette(QApplication::palette(), QApplication::font()).signal;
  const int before = pixelsOf(plot, signal);
  QAction* raw = nullptr;
  for (QAction* action : m_window->findChildren<QAction*>())
    if (action->text() == QStringLiteral("&Raw samples")) raw = action;
  ASSERT_NE(raw, nullptr);
  raw->trigger();
  QApplication::processEvents();
  EXPECT_TRUE(plot->rawSamplesShown());
  EXPECT_GT(pixelsOf(plot, signal), before);
  raw->trigger();
  QApplication::processEvents();
  EXPECT_EQ(pixelsOf(plot, signal), before);
}

struct Bad {
  const char* name;
  QByteArray bytes;
};

TEST_F(WindowTest, BadLogsLeaveTheOpenRunUntouchedAndAreSaidInOneSentence) {
  openDemo();
  const auto before = m_document->view();
  const auto undo_before = m_document->undoStack()->count();
  const Bad all[] = {{"empty.csv", ""},
                     {"header.csv", "Time (s),TC1 (°C)\n"},
                     {"prose.txt", "Nothing but words stands in this file.\nNot a number in it.\n"},
                     {"binary.bin", QByteArray(2000, '\x00')}};
  for (const auto& bad : all) {
    drop({write(QLatin1String(bad.name), bad.bytes)});
    settle();
    EXPECT_EQ(m_document->view(), before) << bad.name;
    EXPECT_EQ(m_document->logs().size(), 1u) << bad.name;
    EXPECT_TRUE(shownSentence().startsWith(QLatin1String(bad.name) + QStringLiteral(" was not read.")))
        << shownSentence().toStdString();
  }
  EXPECT_EQ(m_document->undoStack()->count(), undo_before);
  QTest::keyClick(m_window.get(), Qt::Key_Escape);
  EXPECT_TRUE(shownSentence().startsWith(QStringLiteral("Fail.")));
}

TEST_F(WindowTest, ALogThatWasNotReadIsToldOfAlthoughOthersAreReadAfterIt) {
  drop({write(QStringLiteral("prose.txt"), "Nothing but words stands here.\n"), demo("tern_run1.csv"),
        write(QStringLiteral("empty.csv"), ""), demo("tern_run2.csv")});
  settle();
  EXPECT_EQ(m_document->logs().size(), 2u);
  // Whichever was found bad first is named first.
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("was not read."))) << shownSentence().toStdString();
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("prose.txt"))) << shownSentence().toStdString();
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("empty.csv"))) << shownSentence().toStdString();
  QTest::keyClick(m_window.get(), Qt::Key_Escape);
  EXPECT_FALSE(shownSentence().contains(QStringLiteral("was not read.")));
}

TEST_F(WindowTest, AMissingFileAndAFolderAreErrorsToo) {
  drop({m_folder.filePath(QStringLiteral("gone.csv"))});
  settle();
  EXPECT_TRUE(shownSentence().startsWith(QStringLiteral("gone.csv was not read.")));
  drop({m_folder.path()});
  settle();
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("was not read.")));
  EXPECT_EQ(m_document->current(), nullptr);
}

TEST_F(WindowTest, WhileALogIsReadTheWindowAnswersAndTheOldRunStays) {
  drop({demo("tern_run2.csv")});
  settle();
  const auto before = m_document->view();
  QByteArray bytes("Time (s),TC1 (°C),TC2 (°C)\n");
  constexpr int kRows = 400000;
  for (int i = 0; i < kRows; ++i) {
    const QByteArray time = QByteArray::number(i * 0.001, 'f', 3);
    bytes += time + ",25." + QByteArray::number(i % 10) + ",26.0\n";
  }
  drop({write(QStringLiteral("large.csv"), bytes)});
  // drop() came back although the log is not read: nothing waits for it.
  EXPECT_TRUE(m_document->isBusy());
  EXPECT_EQ(m_document->view(), before);
  int answered = 0;
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &timer, [&] { answered += m_document->isBusy(); });
  timer.start(0);
  settle();
  EXPECT_GT(answered, 0);
  EXPECT_EQ(m_document->logs().size(), 2u);
}

TEST_F(WindowTest, AReadingCanBeStopped) {
  QByteArray bytes("Time (s),TC1 (°C)\n");
  constexpr int kRows = 3000000;
  for (int i = 0; i < kRows; ++i) bytes += QByteArray::number(i) + ",25.0\n";
  drop({write(QStringLiteral("large.csv"), bytes)});
  ASSERT_TRUE(m_document->activity());
  m_document->stop();
  settle();
  EXPECT_FALSE(m_document->failure());
  EXPECT_FALSE(m_document->activity());
}

}  // namespace
}  // namespace ovenwright::desktop
