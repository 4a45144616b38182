#pragma once
#include <QLineEdit>
#include <QProcess>
#include <QtTest>
#include <nlohmann/json.hpp>

#include "app/desktop/tune/recipe_strip.h"
#include "app/desktop/tune/tune_page.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {

/// The demo's first run on the Tune screen, and what the command says of it.
class TuneTest : public WindowTest {
 protected:
  static constexpr int kLongest_ms = 300000;  // only a bound against hanging

  TunePage* page() { return m_window->tunePage(); }
  TuneSession* session() { return page()->session(); }
  RecipeStrip* strip() { return page()->strip(); }
  const oven::Recipe& edited() { return session()->bench()->edit.recipe; }

  void wait() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return !session()->isBusy(); }, kLongest_ms));
    QApplication::processEvents();
  }
  void openTune() {
    openDemo();
    m_window->showTask(MainWindow::Task::kTune);
    wait();
    ASSERT_EQ(session()->state(), TuneSession::State::kReady) << shownSentence().toStdString();
  }
  /// What the command says, as a process.
  static nlohmann::json command(QStringList arguments) {
    QProcess process;
    process.setProgram(QStringLiteral(OVENWRIGHT_PROGRAM));
    process.setArguments(std::move(arguments));
    process.start();
    EXPECT_TRUE(process.waitForFinished(kLongest_ms));
    const QByteArray out = process.readAllStandardOutput();
    return nlohmann::json::parse(out.toStdString(), nullptr, false);
  }
  static QStringList demoArguments(const QString& verb) {
    return {verb,
            demo("tern_run1.csv"),
            QStringLiteral("--window"),
            demo("window.toml"),
            QStringLiteral("--board"),
            demo("board.toml"),
            QStringLiteral("--oven"),
            demo("oven.toml"),
            QStringLiteral("--recipe"),
            demo("recipe.toml"),
            QStringLiteral("--format"),
            QStringLiteral("json")};
  }
  void type(const RecipeField& field, const char* keys) {
    strip()->setFocus();
    strip()->setCurrent(field);
    QTest::keyClicks(strip(), QLatin1String(keys, 1));
    auto* editor = strip()->findChild<QLineEdit*>();
    ASSERT_TRUE(editor->isVisible());
    QTest::keyClicks(editor, QLatin1String(keys + 1));
    QTest::keyClick(editor, Qt::Key_Return);
  }
};

}  // namespace ovenwright::desktop
