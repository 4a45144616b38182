#include <QMenu>
#include <QTableView>
#include <QUndoStack>
#include <algorithm>

#include "app/desktop/document/layout_memory.h"
#include "app/desktop/editor/window_page.h"
#include "app/desktop/import/layout_edit.h"
#include "app/desktop/window/profile_menus.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

TEST_F(WindowTest, AnotherWindowJudgesAnewAndUndoBringsTheOldResultBack) {
  openDemo();
  const auto first = m_document->view();
  const QString first_sentence = shownSentence();
  m_window->profiles()->chooseWindow(QStringLiteral("sac305"));
  settle();
  const auto second = m_document->view();
  ASSERT_NE(second, nullptr);
  EXPECT_EQ(second->judgement().windows[0].identity.stem, "sac305");
  EXPECT_NE(second->judgement().all_size(), 0u);
  m_document->undoStack()->undo();
  EXPECT_EQ(m_document->view(), first);  // at once, not worked out again
  EXPECT_EQ(shownSentence(), first_sentence);
  m_document->undoStack()->redo();
  EXPECT_EQ(m_document->view(), second);
}

TEST_F(WindowTest, EachEditIsOneStepBack) {
  openDemo();
  m_window->profiles()->chooseBoard({});
  settle();
  EXPECT_FALSE(m_document->view()->board());
  m_window->profiles()->chooseOven({}, {});
  settle();
  EXPECT_FALSE(m_document->view()->hasZones());
  check::Request setup = m_document->setup();
  setup.entry_s = 7.5;
  m_document->edit(QStringLiteral("Oven entry"), setup);
  settle();
  while (m_document->undoStack()->canUndo()) m_document->undoStack()->undo();
  settle();
  EXPECT_TRUE(m_document->view()->board());
  EXPECT_TRUE(m_document->view()->oven());
  EXPECT_FALSE(m_document->setup().entry_s);
}

TEST_F(WindowTest, ATypedNumberIsOneStepWhateverItsDigits) {
  openDemo();
  for (const double entry_s : {1.0, 12.0, 12.5}) {
    check::Request setup = m_document->setup();
    setup.entry_s = entry_s;
    m_document->edit(QStringLiteral("Oven entry"), setup, Document::Rework::kJudge, 1);
  }
  settle();
  EXPECT_EQ(m_document->undoStack()->count(), 1);
  EXPECT_DOUBLE_EQ(m_document->view()->entry()->at_s, 12.5);
  m_document->undoStack()->undo();
  settle();
  EXPECT_FALSE(m_document->setup().entry_s);
}

TEST_F(WindowTest, AWindowThatBreaksARuleIsAStepBackTooAndTheEditorShowsWhatIsJudged) {
  openDemo();
  m_window->showWindowEditor();
  auto* model = m_window->findChild<WindowPage*>()->findChild<QTableView*>()->model();
  const auto rowOf = [&](const char* name) {
    for (int row = 0; row < model->rowCount(); ++row)
      if (model->index(row, 0).data().toString() == QLatin1String(name)) return row;
    return -1;
  };
  const auto lower = [&](const char* name) { return model->index(rowOf(name), int(RequirementField::kLower)); };
  const auto judged = [&](const char* name) {
    for (const auto& requirement : m_document->setup().windows[0].requirements)
      if (requirement.name == name) return requirement.lower ? std::get<double>(*requirement.lower) : 0.0;
    return -1.0;
  };
  auto* steps = m_document->undoStack();
  // Source: profiles/demo/window.toml, both from 235 °C; an upper limit alone on a temperature needs a target.
  model->setData(lower("peak"), QStringLiteral("230"), Qt::EditRole);
  settle();
  ASSERT_EQ(steps->count(), 1);
  model->setData(lower("peak of bodies"), QString(), Qt::EditRole);
  EXPECT_EQ(steps->count(), 2);
  EXPECT_EQ(judged("peak of bodies"), 235);  // the run is judged by the last sound window
  steps->undo();
  settle();
  EXPECT_EQ(lower("peak of bodies").data().toString(), QStringLiteral("235"));
  EXPECT_EQ(lower("peak").data().toString(), QStringLiteral("230"));
  EXPECT_EQ(judged("peak"), 230);
  steps->undo();
  settle();
  EXPECT_EQ(lower("peak").data().toString(), QStringLiteral("235"));
  EXPECT_EQ(judged("peak"), 235);
  steps->redo();
  steps->redo();
  settle();
  EXPECT_EQ(lower("peak of bodies").data().toString(), QString());
  EXPECT_EQ(judged("peak"), 230);
  // What mends it is one step, back to what was typed before.
  model->setData(lower("peak of bodies"), QStringLiteral("236"), Qt::EditRole);
  settle();
  EXPECT_EQ(steps->count(), 3);
  EXPECT_EQ(judged("peak of bodies"), 236);
  m_window->showTask(MainWindow::Task::kCheck);
  steps->undo();
  settle();
  EXPECT_EQ(judged("peak of bodies"), 235);
  EXPECT_EQ(lower("peak of bodies").data().toString(), QString());
  EXPECT_TRUE(m_window->findChild<WindowPage*>()->isVisible());  // where the step can be seen
  steps->redo();
  settle();
  EXPECT_EQ(lower("peak of bodies").data().toString(), QStringLiteral("236"));
  EXPECT_EQ(judged("peak of bodies"), 236);
}

TEST_F(WindowTest, AStepOfADraftIsOfItsLog) {
  openDemo();
  drop({demo("tern_run2.csv")});
  settle();
  ASSERT_EQ(m_document->logs().size(), 2u);
  m_document->setCurrent(m_document->logs()[0]);
  m_window->showWindowEditor();
  auto* model = m_window->findChild<WindowPage*>()->findChild<QTableView*>()->model();
  const auto lower = [&] {
    for (int row = 0; row < model->rowCount(); ++row)
      if (model->index(row, 0).data().toString() == u"peak of bodies")
        return model->index(row, int(RequirementField::kLower));
    return QModelIndex();
  };
  auto* steps = m_document->undoStack();
  model->setData(lower(), QString(), Qt::EditRole);  // an upper limit alone needs a target
  ASSERT_EQ(steps->count(), 1);
  m_document->setCurrent(m_document->logs()[1]);
  settle();
  m_window->showWindowEditor();
  EXPECT_EQ(lower().data().toString(), QStringLiteral("235"));  // the draft is not this log's
  steps->undo();
  settle();
  EXPECT_EQ(m_document->currentPointer(), m_document->logs()[0]);
  m_document->setCurrent(m_document->logs()[1]);
  settle();
  m_window->showWindowEditor();
  steps->redo();
  settle();
  EXPECT_EQ(m_document->currentPointer(), m_document->logs()[0]);
  EXPECT_EQ(lower().data().toString(), QString());
  // The other log's draft is another step.
  m_document->setCurrent(m_document->logs()[1]);
  m_window->showWindowEditor();
  model->setData(lower(), QString(), Qt::EditRole);
  EXPECT_EQ(steps->count(), 2);
  settle();
}

TEST_F(WindowTest, AGivenUnitIsReadAtOnceAndCanBeTakenBack) {
  drop({demo("tern_run2.csv")});
  settle();
  const double hottest = *m_document->view()->channels()[0].look.peak_C;
  editLayout(m_document.get(), QStringLiteral("Unit"), [](log::Layout& layout) { layout.unit = "degF"; });
  settle();
  // Source: definition of the degree Fahrenheit.
  EXPECT_NEAR(*m_document->view()->channels()[0].look.peak_C, (hottest - 32) / 1.8, 1e-6);
  m_document->undoStack()->undo();
  EXPECT_EQ(*m_document->view()->channels()[0].look.peak_C, hottest);
}

TEST_F(WindowTest, AReadingThatFailsKeepsTheOldResultAndOffersUndo) {
  drop({demo("tern_run2.csv")});
  settle();
  const auto before = m_document->view();
  editLayout(m_document.get(), QStringLiteral("Header"), [](log::Layout& layout) {
    layout.delimiter = "|";
    layout.time.columns = {7};
  });
  settle();
  if (m_document->current()->error) {
    EXPECT_EQ(m_document->view(), before);
    EXPECT_TRUE(shownSentence().contains(QStringLiteral("Undo this change")));
  }
  m_document->undoStack()->undo();
  settle();
  EXPECT_FALSE(m_document->current()->error);
}

TEST_F(WindowTest, ClosingALogCanBeUndone) {
  openDemo();
  const auto view = m_document->view();
  m_document->close(m_document->currentPointer());
  EXPECT_EQ(m_document->current(), nullptr);
  EXPECT_TRUE(shownSentence().startsWith(QStringLiteral("No run is open.")));
  m_document->undoStack()->undo();
  EXPECT_EQ(m_document->view(), view);
}

TEST_F(WindowTest, AKeptLayoutIsUsedForTheNextLogOfThatShape) {
  const QByteArray text("Time (s);TC1;TC2\n0;212;213\n10;300;310\n20;400;410\n30;430;440\n40;300;310\n50;212;213\n");
  drop({write(QStringLiteral("one.csv"), text)});
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  editLayout(m_document.get(), QStringLiteral("Unit"), [](log::Layout& layout) { layout.unit = "degF"; });
  settle();
  LayoutMemory memory(m_settings.get());
  log::Layout layout = m_document->view()->reading().layout;
  layout.name = "my logger";
  const auto kept = memory.keep(m_document->view()->reading(), layout);
  ASSERT_TRUE(kept) << kept.error().text();
  m_document->setRememberedLayouts(memory.snapshot());
  drop({write(QStringLiteral("two.csv"), text)});
  settle();
  ASSERT_EQ(m_document->current()->source.name, QStringLiteral("two.csv"));
  EXPECT_NEAR(*m_document->view()->channels()[0].look.peak_C, (430 - 32) / 1.8, 1e-6);
}

TEST_F(WindowTest, WhatIsChosenFromAFileStandsInItsMenu) {
  openDemo();  // its window, board and oven lie in none of the folders
  for (auto* menu : {m_window->profiles()->windows(), m_window->profiles()->boards()}) {
    emit menu->aboutToShow();
    const auto actions = menu->actions();
    EXPECT_EQ(std::ranges::count_if(actions, [](const auto* action) { return action->isChecked(); }), 1)
        << menu->title().toStdString();
  }
  auto* ovens = m_window->profiles()->ovens();
  emit ovens->aboutToShow();
  const auto recipes = ovens->findChildren<QMenu*>();
  EXPECT_TRUE(std::ranges::any_of(recipes, [](const auto* menu) {
    const auto actions = menu->actions();
    return std::ranges::any_of(actions, [](const auto* action) { return action->isChecked(); });
  }));
}

TEST_F(WindowTest, ABadWindowChangesNothingAndIsSaidInOneSentence) {
  openDemo();
  const auto before = m_document->view();
  const QString path = write(QStringLiteral("bad.toml"),
                             "name = \"Bad\"\n[[requirement]]\nname = \"peak\"\nmeasure = \"peak\"\nuper = 250\n");
  m_window->profiles()->chooseWindow(path);
  settle();
  EXPECT_EQ(m_document->view(), before);
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("bad.toml, line 5")) ||
              shownSentence().contains(QStringLiteral("bad.toml")))
      << shownSentence().toStdString();
}

}  // namespace
}  // namespace ovenwright::desktop
