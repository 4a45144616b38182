#include <QApplication>
#include <QCloseEvent>

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
