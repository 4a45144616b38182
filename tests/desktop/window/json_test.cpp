#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QPushButton>
#include <QTableView>
#include <QUndoStack>

#include "app/desktop/editor/window_page.h"
#include "app/desktop/table/results_model.h"
#include "app/desktop/table/results_table.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/profile_menus.h"
#include "tests/desktop/window/window_fixture.h"

// What stands on screen is what the command says of the same log.
namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 30000;  // only a bound against hanging

class JsonTest : public WindowTest {
 protected:
  /// The first run of `ovenwright check --format json`.
  static QJsonObject check(const QStringList& arguments) {
    QProcess command;
    command.start(QStringLiteral(OVENWRIGHT_PROGRAM),
                  QStringList{QStringLiteral("check"), QStringLiteral("--format"), QStringLiteral("json")} + arguments);
    EXPECT_TRUE(command.waitForFinished(kLongest_ms));
    const auto document = QJsonDocument::fromJson(command.readAllStandardOutput());
    EXPECT_TRUE(document.isObject()) << command.readAllStandardError().toStdString();
    return document[QStringLiteral("runs")][0].toObject();
  }

  static QStringList demoArguments() {
    return {QStringLiteral("--window"), demo("window.toml"), QStringLiteral("--board"),  demo("board.toml"),
            QStringLiteral("--oven"),   demo("oven.toml"),   QStringLiteral("--recipe"), demo("recipe.toml")};
  }

  /// The first line without the numbers of its discs.
  QString firstLine() const {
    QString text;
    for (const auto& run : m_window->sentence()->content().first) text += run.text;
    text.replace(QChar(QChar::Nbsp), u' ');
    return text;
  }

  /// Sentence, lanes and table of the run that is shown against a run of the command.
  void compare(const QJsonObject& run) {
    EXPECT_EQ(firstLine(), run[QStringLiteral("sentence")].toString());
    QJsonArray results = run[QStringLiteral("results")].toArray();
    for (const auto& result : run[QStringLiteral("board_results")].toArray()) results.append(result);

    const auto* model = m_window->checkPage()->table()->model();
    ASSERT_EQ(model->rowCount(), results.size());
    const auto number = [](const QModelIndex& cell) {
      const QVariant value = cell.data(ResultsModel::kSortRole);
      return value.isValid() ? QJsonValue(value.toDouble()) : QJsonValue();
    };
    const std::pair<int, QString> numbers[] = {{ResultsModel::kValue, QStringLiteral("value")},
                                               {ResultsModel::kUncertainty, QStringLiteral("expanded_uncertainty")},
                                               {ResultsModel::kLower, QStringLiteral("lower")},
                                               {ResultsModel::kUpper, QStringLiteral("upper")},
                                               {ResultsModel::kMargin, QStringLiteral("margin")},
                                               {ResultsModel::kProbability, QStringLiteral("conformance_probability")},
                                               {ResultsModel::kFrom, QStringLiteral("from_s")},
                                               {ResultsModel::kTo, QStringLiteral("to_s")}};
    for (int row = 0; row < model->rowCount(); ++row) {
      // The table may be sorted: a row is found by what it is about, and nothing else is about that.
      const auto text = [&](int column) { return model->index(row, column).data().toString(); };
      int found = 0;
      for (const auto& each : results) {
        const auto result = each.toObject();
        const QJsonValue trace = result[QStringLiteral("trace")];
        if ((trace.isNull() ? QStringLiteral("board") : trace.toString()) != text(ResultsModel::kPlacement)) continue;
        if (!text(ResultsModel::kRequirement)
                 .startsWith(result[QStringLiteral("requirement")].toString(), Qt::CaseInsensitive))
          continue;
        bool same = result[QStringLiteral("verdict")].toString() == text(ResultsModel::kVerdict);
        for (const auto& [column, key] : numbers) same &= result[key] == number(model->index(row, column));
        QStringList zones;
        for (const auto& zone : result[QStringLiteral("zones")].toArray()) zones << zone.toString();
        for (const auto& zone : zones) same &= zones.size() > 2 || text(ResultsModel::kZones).contains(zone);
        same &= zones.isEmpty() == text(ResultsModel::kZones).isEmpty();
        found += same;
      }
      EXPECT_EQ(found, 1) << "row " << row << ": " << text(ResultsModel::kRequirement).toStdString() << " of "
                          << text(ResultsModel::kPlacement).toStdString();
    }

    const auto& lanes = m_window->checkPage()->lanes()->table().lanes;
    std::size_t marks = 0;
    for (const auto& lane : lanes) {
      for (const auto& mark : lane.marks) {
        marks += 1 + mark.covered.size();
        const auto result = results.at(qsizetype(mark.outcome)).toObject();
        const QString verdict = result[QStringLiteral("verdict")].toString();
        EXPECT_TRUE(mark.spoken.endsWith(verdict)) << mark.spoken.toStdString() << " is " << verdict.toStdString();
        const bool signal = verdict.endsWith(QStringLiteral("fail")) && result[QStringLiteral("required")].toBool();
        EXPECT_EQ(mark.signal, signal) << mark.spoken.toStdString();
        // The lane shows the margin as 1 − |s|; a side without limit has all of it.
        const QJsonValue margin = result[QStringLiteral("margin")];
        if (margin.isDouble() && mark.s && margin.toDouble() < 1) {
          EXPECT_NEAR(1 - std::abs(*mark.s), margin.toDouble(), 1e-9) << mark.spoken.toStdString();
        }
      }
    }
    EXPECT_EQ(marks, std::size_t(results.size()));
  }
};

TEST_F(JsonTest, TheDroppedDemoRunShowsWhatTheCommandSays) {
  openDemo();
  compare(check(demoArguments() + QStringList{demo("tern_run1.csv")}));
}

TEST_F(JsonTest, AnotherWindowAndUndoShowWhatTheCommandSays) {
  openDemo();
  m_window->profiles()->chooseWindow(QStringLiteral("sac305"));
  settle();
  QStringList arguments = demoArguments();
  arguments[1] = QStringLiteral("sac305");
  compare(check(arguments + QStringList{demo("tern_run1.csv")}));
  QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier);
  settle();
  compare(check(demoArguments() + QStringList{demo("tern_run1.csv")}));
}

// Each change of the window on screen is what the command says of the file that it is saved into.
TEST_F(JsonTest, AWindowEditedOnScreenAndSavedShowsWhatTheCommandSays) {
  openDemo();
  m_window->showWindowEditor();
  auto* page = m_window->findChild<WindowPage*>();
  auto* model = page->findChild<QTableView*>()->model();
  for (int row = 0; row < model->rowCount(); ++row)
    if (model->index(row, 0).data().toString() == QStringLiteral("peak"))
      model->setData(model->index(row, int(RequirementField::kLower)), QStringLiteral("231.5"), Qt::EditRole);
  settle();
  const QString unsaved = firstLine();
  for (auto* button : page->findChildren<QPushButton*>())
    if (button->text() == QStringLiteral("Save as a new revision")) button->click();
  settle();
  const auto& saved = m_document->setup().windows[0].identity;
  EXPECT_NE(QString::fromStdString(saved.file), demo("window.toml"));  // nothing is overwritten
  EXPECT_NE(saved.revision, std::optional<std::string>("C"));
  QStringList arguments = demoArguments();
  arguments[1] = QString::fromStdString(saved.file);
  const auto run = check(arguments + QStringList{demo("tern_run1.csv")});
  compare(run);
  EXPECT_EQ(unsaved, run[QStringLiteral("sentence")].toString());
  m_document->undoStack()->setIndex(0);
  settle();
  compare(check(demoArguments() + QStringList{demo("tern_run1.csv")}));
}

TEST_F(JsonTest, ALogOfAnyShapeShowsWhatTheCommandSays) {
  drop({demo("tern_run2.csv")});
  settle();
  compare(check({demo("tern_run2.csv")}));
}

}  // namespace
}  // namespace ovenwright::desktop
