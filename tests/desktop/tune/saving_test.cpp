#include <QProcess>

#include "app/desktop/widgets/sentence.h"
#include "core/oven/oven_file.h"
#include "app/desktop/window/profile_menus.h"
#include "tests/desktop/tune/tune_fixture.h"

namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;

TEST_F(TuneTest, TheRecipeIsSavedAsANewFileThatReadsBack) {
  openTune();
  session()->setField({Kind::kTop, 9}, 260, -1);
  wait();
  const QString path = m_folder.filePath(QStringLiteral("new.toml"));
  page()->saveRecipeTo(path);
  const auto saved = oven::load_recipe(path.toStdString());
  ASSERT_TRUE(saved) << saved.error().text();
  EXPECT_TRUE(sameNumbers(*saved, edited()));
  EXPECT_EQ(saved->identity.revision, "8");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const QByteArray first = file.readAll();
  EXPECT_TRUE(first.contains("instrumented run"));
  session()->setField({Kind::kTop, 9}, 262, -1);
  page()->saveRecipeTo(path);  // there already: stays as it is, and that is said
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("was not saved"))) << shownSentence().toStdString();
  file.seek(0);
  EXPECT_EQ(file.readAll(), first);
  wait();
}

TEST_F(TuneTest, ASavedRecipeKeepsTheCommentsOfTheOneThatRan) {
  QFile original(demo("recipe.toml"));
  ASSERT_TRUE(original.open(QIODevice::ReadOnly));
  const QString commented = write(QStringLiteral("rev7.toml"), original.readAll() + "# ask the line's leader first\n");
  m_window->resize(1440, 900);
  openDemo();
  m_window->profiles()->chooseOven(demo("oven.toml"), commented);
  settle();
  m_window->showTask(MainWindow::Task::kTune);
  wait();
  ASSERT_EQ(session()->state(), TuneSession::State::kReady);
  session()->setField({Kind::kTop, 9}, 260, -1);
  const QString path = m_folder.filePath(QStringLiteral("rev8.toml"));
  page()->saveRecipeTo(path);
  QFile saved(path);
  ASSERT_TRUE(saved.open(QIODevice::ReadOnly));
  const QByteArray text = saved.readAll();
  EXPECT_TRUE(text.contains("# ask the line's leader first\n")) << text.toStdString();
  EXPECT_TRUE(text.contains("top_C    = [159, 153, 156, 165, 182, 192, 202, 234, 252, 260]")) << text.toStdString();
  EXPECT_TRUE(text.contains("revision = \"8\""));
  wait();
}

TEST_F(TuneTest, TheChangeNoteHoldsChangesAndCautionsAsText) {
  openTune();
  session()->setField({Kind::kTop, 7}, 244, -1);
  session()->setField({Kind::kSpeed, 0}, 772, -1);
  wait();
  const QString pdf = m_folder.filePath(QStringLiteral("note.pdf")),
                txt = m_folder.filePath(QStringLiteral("note.txt"));
  page()->saveNoteTo(pdf, true);
  page()->saveNoteTo(txt, false);
  QProcess process;
  process.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
  ASSERT_TRUE(process.waitForFinished(kLongest_ms));
  const QString read = QString::fromUtf8(process.readAllStandardOutput()).simplified();
  for (const char* words : {"Zone 8, top and bottom", "234 °C", "244 °C", "+10", "772 mm/min", "qualified person",
                            "instrumented run", "Hot surfaces", "data sheet is the authority", "Date"})
    EXPECT_TRUE(read.contains(QString::fromUtf8(words))) << words << " not in " << read.toStdString();
  QFile text(txt);
  ASSERT_TRUE(text.open(QIODevice::ReadOnly));
  const QString plain = QString::fromUtf8(text.readAll()).simplified();
  for (const char* words : {"Zone 8, top and bottom 234 °C 244 °C +10", "instrumented run", "Hot surfaces",
                            "data sheet is the authority", "misfit"})
    EXPECT_TRUE(plain.contains(QString::fromUtf8(words))) << words << " not in " << plain.toStdString();
}

// What the operator has to know before the numbers stands above them.
TEST_F(TuneTest, TheChangeNoteBeginsWithWhatIsInDoubt) {
  openTune();
  const auto note = [&] {
    wait();
    const QString path = m_folder.filePath(QStringLiteral("note.txt"));
    page()->saveNoteTo(path, false);
    QFile text(path);
    EXPECT_TRUE(text.open(QIODevice::ReadOnly));
    return QString::fromUtf8(text.readAll()).simplified();
  };
  session()->setField({Kind::kTop, 9}, 258, -1);
  QString text = note();
  EXPECT_TRUE(text.startsWith(QStringLiteral("Change note This recipe is not predicted to pass.")))
      << text.toStdString();
  EXPECT_TRUE(text.contains(QStringLiteral("New recipe: LF main board, rev 8"))) << text.toStdString();
  EXPECT_FALSE(text.contains(QStringLiteral("set apart"))) << text.toStdString();
  session()->suggest();
  wait();
  session()->takeOver({}, session()->bench()->report->suggestions.front().recipe);
  text = note();
  ASSERT_LT(*session()->bench()->prediction->forecast.pass_probability, 0.9);
  EXPECT_TRUE(text.startsWith(QStringLiteral("Change note It is not sure to pass: chance of passing")))
      << text.toStdString();
  TuneEdit apart = session()->bench()->edit;
  apart.together = false;
  session()->change({}, apart);
  session()->setField({Kind::kTop, 7}, edited().top_C[7] + 4, -1);
  text = note();
  EXPECT_TRUE(text.contains(QStringLiteral("To check first: Top and bottom are set apart"))) << text.toStdString();
}

// Source: 244 °C = 471.2 °F, a difference of 10 °C = 18 °F, 772 mm/min / 25.4 = 30.39 in/min (exact definitions).
TEST_F(TuneTest, TheChangeNoteIsInTheUnitsThatWereChosen) {
  openTune();
  session()->setField({Kind::kTop, 7}, 244, -1);
  session()->setField({Kind::kSpeed, 0}, 772, -1);
  wait();
  page()->setFormat(Format(TemperatureUnit::kFahrenheit, SpeedUnit::kInchesPerMinute, QLocale::c()));
  const QString pdf = m_folder.filePath(QStringLiteral("note.pdf"));
  page()->saveNoteTo(pdf, true);
  QProcess process;
  process.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
  ASSERT_TRUE(process.waitForFinished(kLongest_ms));
  const QString read = QString::fromUtf8(process.readAllStandardOutput()).simplified();
  const QString txt = m_folder.filePath(QStringLiteral("note.txt"));
  page()->saveNoteTo(txt, false);
  QFile text(txt);
  ASSERT_TRUE(text.open(QIODevice::ReadOnly));
  const QString plain = QString::fromUtf8(text.readAll()).simplified();
  for (const char* words : {"471.2 °F (244 °C)", "+18", "30.4 in/min (772 mm/min)"}) {
    EXPECT_TRUE(read.contains(QString::fromUtf8(words))) << words << " not in " << read.toStdString();
    EXPECT_TRUE(plain.contains(QString::fromUtf8(words))) << words << " not in " << plain.toStdString();
  }
  wait();
}

}  // namespace
}  // namespace ovenwright::desktop
