#include <QApplication>
#include <QAction>
#include <QCloseEvent>
#include <QLineEdit>
#include <algorithm>

#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/sentence.h"
#include "tests/desktop/window/window_fixture.h"

// Closing loses no edit that stands in no file, without having said so.
namespace ovenwright::desktop {
namespace {

class CloseTest : public WindowTest {
 protected:
  bool closes() {
    QCloseEvent event;
    QApplication::sendEvent(m_window.get(), &event);
    return event.isAccepted();
  }
  void editWindow() {
    check::Request setup = m_document->setup();
    setup.windows[0].identity.sha256.clear();
    setup.windows[0].liquidus_C = 218;
    m_document->edit(QStringLiteral("Liquidus"), setup);
    settle();
  }
  /// Types into a field of the editor that is shown.
  void type(const QString& field, const QString& text) {
    for (auto* line : m_window->findChildren<QLineEdit*>()) {
      if (!line->isVisible() || line->accessibleName() != field) continue;
      line->selectAll();
      QTest::keyClicks(line, text);
      return;
    }
    FAIL() << field.toStdString();
  }
  bool isOpen(const QString& name) const {
    return std::ranges::any_of(m_document->logs(), [&](const auto& log) { return log->source.name == name; });
  }
  /// Follows the link of the notice whose words are these.
  void follow(const QString& words) {
    auto* sentence = m_window->sentence();
    const auto content = sentence->content();
    for (int i = 0; i < content.links.size(); ++i)
      if (content.linkText(i) == words) {
        emit sentence->activated(content.links[i]);
        return;
      }
    FAIL() << words.toStdString() << " is no link of: " << shownSentence().toStdString();
  }
};

TEST_F(CloseTest, WithNothingEditedItCloses) {
  EXPECT_TRUE(closes());
  openDemo();
  EXPECT_TRUE(closes());
}

TEST_F(CloseTest, AnEditedWindowIsToldOf) {
  openDemo();
  editWindow();
  EXPECT_FALSE(closes());
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("the window Tern SAC305"))) << shownSentence().toStdString();
  follow(QStringLiteral("Show the changes"));
  EXPECT_EQ(m_window->shownPage(), MainWindow::Page::kWindowEditor);
  m_document->undoStack()->undo();
  settle();
  EXPECT_TRUE(closes());
}

TEST_F(CloseTest, ALogWithEditsIsNotClosedWithoutAQuestion) {
  openDemo();
  const QString name = m_document->current()->source.name;
  editWindow();
  const auto close_log = [this] {
    for (auto* action : m_window->findChildren<QAction*>())
      if (action->text() == QStringLiteral("&Close this log")) action->trigger();
  };
  close_log();
  EXPECT_TRUE(isOpen(name));
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("the window Tern SAC305"))) << shownSentence().toStdString();
  follow(QStringLiteral("Close without saving"));
  EXPECT_FALSE(isOpen(name));
  m_document->undoStack()->undo();  // of the closing
  m_document->undoStack()->undo();  // of the edit
  settle();
  close_log();
  EXPECT_FALSE(isOpen(name));
}

TEST_F(CloseTest, WhatIsHalfTypedIsToldOf) {
  openDemo();
  m_window->show();
  m_window->showWindowEditor();
  type(QStringLiteral("Solidus, °C"), QStringLiteral("21x"));
  m_window->showOvenEditor();
  type(QStringLiteral("Ambient, °C"), QStringLiteral("2o"));
  m_window->showResult();
  EXPECT_FALSE(closes());
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("the window Tern SAC305"))) << shownSentence().toStdString();
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("the oven "))) << shownSentence().toStdString();
  follow(QStringLiteral("Show the changes"));
  EXPECT_EQ(m_window->shownPage(), MainWindow::Page::kWindowEditor);
  const auto lines = m_window->findChildren<QLineEdit*>();
  EXPECT_TRUE(std::ranges::any_of(
      lines, [](const auto* line) { return line->isVisible() && line->text() == QStringLiteral("21x"); }));
}

TEST_F(CloseTest, TwoEditsOfOneNameAreBothToldOf) {
  m_window->openDemoPair();
  settle();
  const auto logs = m_document->logs();
  ASSERT_EQ(logs.size(), 2u);
  for (const auto& log : logs) {
    m_document->setCurrent(log);
    check::Request setup = m_document->setup();
    setup.windows[0].identity.sha256.clear();
    setup.windows[0].liquidus_C = 217.5;
    m_document->edit(QStringLiteral("Liquidus"), setup);
    settle();
  }
  EXPECT_FALSE(closes());
  EXPECT_FALSE(shownSentence().contains(logs[0]->source.name));  // one edit in both
  m_document->undoStack()->undo();
  settle();
  editWindow();
  EXPECT_FALSE(closes());
  for (const auto& log : logs)
    EXPECT_TRUE(shownSentence().contains(QStringLiteral("the window Tern SAC305 (") + log->source.name))
        << shownSentence().toStdString();
}

TEST_F(CloseTest, ItClosesWithoutSavingWhenThatIsChosen) {
  openDemo();
  editWindow();
  EXPECT_FALSE(closes());
  follow(QStringLiteral("Close without saving"));
  EXPECT_FALSE(m_window->isVisible());
}

TEST_F(CloseTest, ARecipeInTuneIsToldOfUntilItIsSaved) {
  openDemo();
  m_window->showTask(MainWindow::Task::kTune);
  auto* session = m_window->tunePage()->session();
  ASSERT_TRUE(QTest::qWaitFor([session] { return !session->isBusy(); }, 60000));
  EXPECT_TRUE(closes());
  session->setField({RecipeField::Kind::kTop, 0}, session->bench()->measured.top_C[0] - 5, -1);
  m_window->show();
  EXPECT_FALSE(closes());
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("in Tune"))) << shownSentence().toStdString();
  m_window->tunePage()->saveRecipeTo(m_folder.filePath(QStringLiteral("changed.toml")));
  EXPECT_TRUE(closes());
}

}  // namespace
}  // namespace ovenwright::desktop
