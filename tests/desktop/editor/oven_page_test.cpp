#include "app/desktop/editor/oven_page.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

#include "app/archive/keep.h"
#include "core/oven/oven_file.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

class OvenPageTest : public WindowTest {
 protected:
  OvenPage* page() { return m_window->findChild<OvenPage*>(); }
  const oven::Oven& oven() { return *m_document->setup().oven; }

  /// The demo's oven, in a file of the test's own with a comment.
  void openOven() {
    openDemo();
    check::Request setup = m_document->setup();
    QFile demo_oven(demo("oven.toml"));
    ASSERT_TRUE(demo_oven.open(QIODevice::ReadOnly));
    m_text = "# measured with the covers off\n" + demo_oven.readAll();
    const auto loaded = oven::load_oven(write(QStringLiteral("line2.toml"), m_text).toStdString());
    ASSERT_TRUE(loaded) << loaded.error().text();
    setup.oven = *loaded;
    m_document->edit({}, setup);
    settle();
    m_window->showOvenEditor();
    ASSERT_EQ(m_window->shownPage(), MainWindow::Page::kOvenEditor);
  }
  void type(OvenField field, const char* text) {
    for (auto* line : page()->findChildren<QLineEdit*>()) {
      if (line->accessibleName() != OvenModel::title(field)) continue;
      line->setFocus();
      line->selectAll();
      QTest::keyClick(line, Qt::Key_Delete);
      QTest::keyClicks(line, QLatin1String(text));
      return;
    }
    FAIL() << "no field " << OvenModel::title(field).toStdString();
  }
  void setCell(int row, OvenModel::Column column, const char* text) {
    auto* model = page()->model();
    model->setData(model->index(row, column), QLatin1String(text), Qt::EditRole);
  }
  QString cell(int row, OvenModel::Column column) {
    return page()->model()->index(row, column).data(Qt::DisplayRole).toString();
  }
  QString said() {
    QStringList said;
    for (const auto* label : page()->findChildren<QLabel*>())
      if (label->isVisible()) said << label->text();
    return said.join(u' ');
  }
  QString field(OvenField field) {
    for (const auto* line : page()->findChildren<QLineEdit*>())
      if (line->accessibleName() == OvenModel::title(field)) return line->text();
    return {};
  }
  /// A second log with the same setup, shown.
  void openSecond() {
    drop({demo("tern_run2.csv")});
    settle();
    ASSERT_EQ(m_document->logs().size(), 2u);
    ASSERT_EQ(m_document->currentPointer(), m_document->logs()[1]);
    m_window->showOvenEditor();
  }
  void showLog(std::size_t log) {
    m_document->setCurrent(m_document->logs()[log]);
    settle();
  }
  bool canSave() {
    for (const auto* button : page()->findChildren<QPushButton*>())
      if (button->text() == u"Save as a new revision") return button->isEnabled();
    return false;
  }

  QByteArray m_text;
};

TEST_F(OvenPageTest, WhatIsTypedIsUsedAtOnceAndIsOneStepBack) {
  openOven();
  type(OvenField::kMostSetpoint, "290");
  EXPECT_EQ((*oven().limits.setpoint_C)[1], 290);
  EXPECT_EQ((*oven().limits.setpoint_C)[0], 50);
  EXPECT_TRUE(oven().identity.sha256.empty());  // no file says this
  m_document->undoStack()->undo();
  EXPECT_EQ((*oven().limits.setpoint_C)[1], 300);
  EXPECT_FALSE(oven().identity.sha256.empty());
  settle();
}

TEST_F(OvenPageTest, WhatIsWrongIsSaidAndNotUsed) {
  openOven();
  type(OvenField::kAmbient, "warm");
  EXPECT_TRUE(said().contains(QStringLiteral("Ambient, °C: “warm” is no number"))) << said().toStdString();
  EXPECT_FALSE(canSave());
  EXPECT_EQ(oven().ambient_C, 25);
  type(OvenField::kAmbient, "23,5");  // as it is written where the decimal sign is a comma
  EXPECT_EQ(oven().ambient_C, 23.5);
  EXPECT_TRUE(canSave());
  type(OvenField::kLeastSpeed, "");
  EXPECT_TRUE(said().contains(QStringLiteral("its other end is missing"))) << said().toStdString();
  EXPECT_TRUE(oven().limits.speed_mm_per_min);
  type(OvenField::kMostSpeed, "");
  EXPECT_FALSE(oven().limits.speed_mm_per_min);  // neither end: no limit
  setCell(2, OvenModel::kLength, "0");
  EXPECT_TRUE(said().contains(QStringLiteral("a length above 0"))) << said().toStdString();
  setCell(2, OvenModel::kLength, "350");
  setCell(2, OvenModel::kZone, "1");
  EXPECT_TRUE(said().contains(QStringLiteral("a second time"))) << said().toStdString();
  EXPECT_EQ(oven().zones[2].name, "3");
  settle();
}

// Positions: the entrance of 300 mm, zone 1 and the gap of 40 mm after it, by the definition in contracts of an oven.
TEST_F(OvenPageTest, AZonesLengthMovesTheZonesAfterIt) {
  openOven();
  EXPECT_EQ(cell(1, OvenModel::kBegins), QStringLiteral("690"));
  const QString times = cell(1, OvenModel::kTimes);
  setCell(0, OvenModel::kLength, "400");
  EXPECT_EQ(cell(1, OvenModel::kBegins), QStringLiteral("740"));
  settle();
  EXPECT_EQ(m_document->view()->oven()->zones[0].length_mm, 400);
  EXPECT_NE(cell(1, OvenModel::kTimes), times);
  EXPECT_FALSE(page()->model()->flags(page()->model()->index(0, OvenModel::kBegins)).testFlag(Qt::ItemIsEditable));
}

TEST_F(OvenPageTest, ItIsSavedAsANewRevisionWithItsComments) {
  openOven();
  type(OvenField::kStep, "45");
  setCell(0, OvenModel::kZone, "1a");
  const QString path = m_folder.filePath(QStringLiteral("ovens/line2_rev4.toml"));
  page()->saveTo(path);
  settle();
  QByteArray want = m_text;
  want.replace("step_between_zones_C = 60", "step_between_zones_C = 45")
      .replace("revision = \"3\"", "revision = \"4\"")
      .replace("name = \"1\"\n", "name = \"1a\"\n");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_EQ(file.readAll(), want);
  EXPECT_EQ(oven().identity.file, path.toStdString());
  EXPECT_EQ(oven().identity.revision, "4");
  EXPECT_FALSE(oven().identity.sha256.empty());
  type(OvenField::kStep, "50");
  page()->saveTo(path);  // there already: stays as it is, and that is said
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("was not saved"))) << shownSentence().toStdString();
  file.seek(0);
  EXPECT_EQ(file.readAll(), want);
  settle();
}

TEST_F(OvenPageTest, ARunIsKeptWithTheOvenAsItWasEdited) {
  openOven();
  type(OvenField::kEntrance, "310");
  settle();
  const auto* log = m_document->current();
  const auto runs =
      archive::keep(log->source.path.toStdString(), m_document->setup(), log->checked->log, {"QM-1", {}, {}, {}});
  ASSERT_TRUE(runs) << runs.error().text();
  ASSERT_TRUE(runs->front().oven);
  const auto kept = oven::parse_oven("kept", *runs->front().oven->bytes);
  ASSERT_TRUE(kept) << kept.error().text();
  EXPECT_EQ(kept->entrance_mm, 310);
}

TEST_F(OvenPageTest, ADraftStaysWithItsLog) {
  openOven();
  openSecond();
  type(OvenField::kEntrance, "280");  // the ovens differ
  settle();
  showLog(0);
  type(OvenField::kEntrance, "310");
  type(OvenField::kAmbient, "warm");
  showLog(1);
  EXPECT_EQ(field(OvenField::kAmbient), QStringLiteral("25"));
  EXPECT_EQ(field(OvenField::kEntrance), QStringLiteral("280"));
  EXPECT_TRUE(canSave());
  type(OvenField::kAmbient, "24");
  settle();
  EXPECT_EQ(oven().ambient_C, 24);
  EXPECT_EQ(oven().entrance_mm, 280);
  EXPECT_EQ(m_document->logs()[0]->setup.oven->entrance_mm, 310);
  EXPECT_EQ(m_document->logs()[0]->setup.oven->ambient_C, 25);
}

TEST_F(OvenPageTest, ADraftStaysWithItsLogWhereTheOvensAreTheSame) {
  openOven();
  openSecond();
  showLog(0);
  type(OvenField::kAmbient, "warm");
  showLog(1);
  EXPECT_EQ(field(OvenField::kAmbient), QStringLiteral("25"));
  EXPECT_TRUE(canSave());
}

TEST_F(OvenPageTest, AnUndoBehindAHalfTypedTextIsFollowed) {
  openOven();
  type(OvenField::kEntrance, "310");
  type(OvenField::kAmbient, "warm");
  m_document->undoStack()->undo();
  settle();
  EXPECT_EQ(oven().entrance_mm, 300);
  EXPECT_EQ(page()->model()->draft().entrance_mm, 300);
  EXPECT_EQ(field(OvenField::kEntrance), QStringLiteral("300"));
  EXPECT_EQ(field(OvenField::kAmbient), QStringLiteral("25"));  // it has the focus still
  EXPECT_TRUE(canSave());
  type(OvenField::kEntrance, "310");
  settle();
  EXPECT_EQ(oven().entrance_mm, 310);
}

TEST_F(OvenPageTest, WhatIsHalfTypedStandsThereStillAfterALookAtTheResult) {
  openOven();
  type(OvenField::kAmbient, "warm");
  m_window->showResult();
  m_window->showOvenEditor();
  EXPECT_EQ(field(OvenField::kAmbient), QStringLiteral("warm"));
  EXPECT_FALSE(canSave());
}

TEST_F(OvenPageTest, AFieldIsClearedWithoutANoughtPutBack) {
  openOven();
  type(OvenField::kEntrance, "");
  settle();
  EXPECT_EQ(field(OvenField::kEntrance), QString());
  EXPECT_EQ(oven().entrance_mm, 0);
}

TEST_F(OvenPageTest, WhatTheModelDoubtsIsSaidOfItsRunAlone) {
  openOven();
  openSecond();
  page()->show({QStringLiteral("The last zone is in doubt.")});
  EXPECT_TRUE(said().contains(QStringLiteral("in doubt")));
  showLog(0);
  EXPECT_FALSE(said().contains(QStringLiteral("in doubt"))) << said().toStdString();
}

TEST_F(OvenPageTest, ABadCellIsNotForgottenWhileAnotherIsTyped) {
  openOven();
  setCell(1, OvenModel::kLength, "long");
  EXPECT_EQ(page()->model()->problemWith(page()->model()->index(2, OvenModel::kLength), QStringLiteral("350")),
            QStringLiteral("“long” is no number"));
}

TEST_F(OvenPageTest, ASignThatMayPartThousandsIsAskedFor) {
  openOven();
  for (const char* text : {"1,000", "1.000", "12.500"}) {
    type(OvenField::kMostSpeed, text);
    EXPECT_TRUE(said().contains(QStringLiteral("can mean thousands or decimals"))) << said().toStdString();
    setCell(0, OvenModel::kLength, text);
    EXPECT_EQ(oven().zones[0].length_mm, 350) << text;
  }
  setCell(0, OvenModel::kLength, "350.5");
  type(OvenField::kMostSpeed, "1000");
  EXPECT_EQ((*oven().limits.speed_mm_per_min)[1], 1000);
  EXPECT_EQ(oven().zones[0].length_mm, 350.5);
  type(OvenField::kExit, "0,125");  // no thousands begin with a nought
  EXPECT_EQ(oven().exit_mm, 0.125);
  settle();
}

TEST_F(OvenPageTest, AnEndThatIsNoNumberIsNamed) {
  openOven();
  type(OvenField::kMostSetpoint, "-");
  EXPECT_TRUE(said().contains(QStringLiteral("Setpoints to, °C: “-” is no number"))) << said().toStdString();
}

TEST(OvenModel, AnEndThatNobodyTypedIsANumberWhateverItsTextCouldMean) {
  auto oven = oven::load_oven(std::string{OVENWRIGHT_PROFILES} + "/demo/oven.toml");
  ASSERT_TRUE(oven) << oven.error().text();
  oven->limits.speed_mm_per_min = {1.125, 1500};  // "1.125" may part thousands where it is typed
  OvenModel model;
  model.setOven(*oven);
  model.type(OvenField::kMostSpeed, {});
  EXPECT_TRUE(model.problem().contains(QStringLiteral("other end is missing"))) << model.problem().toStdString();
  EXPECT_EQ(model.text(OvenField::kLeastSpeed), QStringLiteral("1.125"));
  model.type(OvenField::kMostSpeed, QStringLiteral("1600"));
  EXPECT_EQ(model.problem(), QString());
  EXPECT_EQ((*model.draft().limits.speed_mm_per_min), (std::array{1.125, 1600.0}));
}

TEST_F(OvenPageTest, TabLeavesTheTableBehindItsLastCell) {
  openOven();
  auto* table = page()->findChild<QTableView*>();
  const auto* model = table->model();
  table->setFocus();
  table->setCurrentIndex(model->index(model->rowCount() - 1, model->columnCount() - 2));
  QTest::keyClick(table, Qt::Key_Tab);
  EXPECT_EQ(table->currentIndex().column(), model->columnCount() - 1);
  EXPECT_TRUE(table->hasFocus());
  QTest::keyClick(table, Qt::Key_Tab);
  ASSERT_NE(m_window->focusWidget(), nullptr);
  EXPECT_FALSE(m_window->focusWidget() == table || table->isAncestorOf(m_window->focusWidget()));
  // And backwards before its first, from the line that a cell is typed in.
  table->setFocus();
  table->setCurrentIndex(model->index(0, 0));
  auto* line = qobject_cast<QLineEdit*>(table->indexWidget(model->index(0, 0)));
  ASSERT_NE(line, nullptr);
  QTest::keyClick(line, Qt::Key_Backtab, Qt::ShiftModifier);
  EXPECT_FALSE(m_window->focusWidget() == table || table->isAncestorOf(m_window->focusWidget()));
}

TEST_F(OvenPageTest, WithoutAnOvenThereIsNothingToEdit) {
  drop({demo("tern_run2.csv")});
  settle();
  m_window->showOvenEditor();
  EXPECT_EQ(m_window->shownPage(), MainWindow::Page::kResult);
}

}  // namespace
}  // namespace ovenwright::desktop
