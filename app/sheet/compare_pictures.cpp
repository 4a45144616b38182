#include "app/sheet/compare_pictures.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/desktop/compare/compare_scene.h"
#include "app/sheet/legible.h"
#include "app/sheet/lot_tables.h"
#include "core/compare/group.h"

namespace ovenwright::sheet {
namespace {

using desktop::Format;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

/// A run's view, holding its record alive.
desktop::ComparedRun comparedRun(const RunRecord& record) {
  struct Kept {
    RunRecord record;
    desktop::RunView view;
  };
  auto kept =
      std::make_shared<Kept>(Kept{record, desktop::RunView(record.checked(), record.reading(), *record.request)});
  return {{kept, &kept->view}, record.request};
}

std::vector<desktop::ComparedRun> comparedRuns(const std::vector<RunRecord>& records) {
  std::vector<desktop::ComparedRun> runs;
  for (const RunRecord& record : records) runs.push_back(comparedRun(record));
  return runs;
}

std::vector<RunRecord> legibleRuns(const std::vector<RunRecord>& records) {
  std::vector<RunRecord> runs;
  for (const RunRecord& record : records) runs.push_back(legible(record));
  return runs;
}

/// "A: Lot QM-2298"; of a group also how many runs.
QString asideOf(const QString& letter, const std::vector<RunRecord>& runs) {
  QString text = Words::tr("%1: %2").arg(letter, QString());
  const auto same_lot = [&](const RunRecord& run) {
    return !run.labels.lot.isEmpty() && run.labels.lot == runs.front().labels.lot;
  };
  if (runs.size() == 1) return text + titleOf(runs.front());
  if (std::ranges::all_of(runs, same_lot)) text += titleOf(runs.front()) + QStringLiteral(", ");
  return text + Words::tr("%n runs", nullptr, int(runs.size()));
}

/// The names stand in a line under the curves.
desktop::Scene onPaper(desktop::Scene scene) {
  scene.key = desktop::Scene::Key::kNone;
  return scene;
}

QString signedText(double difference, const QString& text) { return difference > 0 ? u'+' + text : text; }

/// A row of setpoints for each side of the zones, one where both are alike in both recipes.
class RecipeTable {
 public:
  RecipeTable(const desktop::CompareStrips& strips, const Format& format) : m_strips(strips), m_format(format) {}

  Table make() {
    const bool a = hasZones(m_strips.a), b = hasZones(m_strips.b);
    const auto& known = a ? m_strips.a : m_strips.b;
    const bool same =
        !a || !b ||
        std::ranges::equal(m_strips.a.cells, m_strips.b.cells, {}, &widgets::ZoneCell::id, &widgets::ZoneCell::id);
    if ((!a && !b) || !same) return {};
    const QString degrees = m_format.unit(Format::Quantity::kTemperature);
    m_table.columns << Column{Words::tr("Recipe, %1").arg(degrees), {}, true, 110};
    for (const auto& cell : known.cells) m_table.columns << Column{cell.name, {}, false, 60};
    m_table.columns << Column{Words::tr("Speed"), m_format.speedUnitText(), false, 80};
    for (const bool top : {true, false}) {
      if (!top && known.together()) break;
      if (a) addRow(m_strips.a, rowName(QStringLiteral("A"), top), top, false);
      if (b) addRow(m_strips.b, rowName(QStringLiteral("B"), top), top, true);
      if (a && b) addChanges(rowName(QStringLiteral("B − A"), top), top);
    }
    return std::move(m_table);
  }

 private:
  static bool hasZones(const widgets::ZoneTable& table) { return table.state == widgets::ZoneTable::State::kZones; }

  QString rowName(const QString& side, bool top) const {
    if (m_strips.a.together()) return side;
    return top ? Words::tr("%1 top", "letter of a run, side of the zones").arg(side)
               : Words::tr("%1 bottom", "letter of a run, side of the zones").arg(side);
  }

  void addRow(const widgets::ZoneTable& strip, const QString& name, bool top, bool bold) {
    QList<Cell> row{Cell{name, {}, false, {}, {}, false}};
    for (const auto& cell : strip.cells) {
      const auto& setpoint = top || cell.cooling ? cell.top_C : cell.bottom_C;
      const bool shown = setpoint && (top || !cell.cooling);
      const bool changed = top ? cell.topChange_C.has_value() : cell.bottomChange_C.has_value();
      row << Cell{shown ? m_format.limit(*setpoint, Format::Quantity::kTemperature) : QString(),
                  {},
                  bold && changed,
                  {},
                  {},
                  false};
    }
    const QString speed = m_format.number(m_format.shownSpeed(strip.speed_mm_per_min), 0);
    const bool faster = bold && m_strips.b.against->speedChange_mm_per_min;
    row << Cell{top ? speed : QString(), {}, faster, {}, {}, false};
    m_table.rows << row;
  }

  void addChanges(const QString& name, bool top) {
    QList<Cell> row{Cell{name, {}, false, {}, {}, false}};
    const auto add = [&](const QString& text) { row << Cell{text, {}, !text.isEmpty(), {}, {}, false}; };
    for (const auto& cell : m_strips.b.cells) {
      const auto& change = top ? cell.topChange_C : cell.bottomChange_C;
      add(change ? signedText(*change, m_format.limit(*change, Format::Quantity::kDifference)) : QString());
    }
    const auto& speed = m_strips.b.against->speedChange_mm_per_min;
    add(speed && top ? signedText(*speed, m_format.number(m_format.shownSpeed(*speed), 0)) : QString());
    m_table.rows << row;
  }

  const desktop::CompareStrips& m_strips;
  const Format& m_format;
  Table m_table;
};

QString differencesText(const compare::Comparison& comparison) {
  if (comparison.of_groups)
    return Words::tr(
        "of the means of the runs. ± is the half width of the 95 % interval of two samples (Welch), from the scatter "
        "of "
        "the runs; n says how many values stand behind each side. Errors that all runs of a group share, such as those "
        "of "
        "its thermocouples, are not in it. In the lanes a mark is a mean, a thin tick a run, a longer one a run that "
        "is out.");
  if (comparison.same_thermocouples)
    return Words::tr(
        "± is the expanded uncertainty U = 2u of the difference (about 95 %). Both runs are taken to be on the same "
        "thermocouples and instrument (channels and board of the same names), whose errors cancel in it. How runs of "
        "the oven differ is not in it.");
  return Words::tr(
      "± is the expanded uncertainty U = 2u of the difference (about 95 %), with the errors of the thermocouples and "
      "the instrument of both runs. How runs of the oven differ is not in it.");
}

}  // namespace

ComparePictures::ComparePictures(const ComparisonRecord& given, const widgets::Theme& theme, const Format& format)
    : record{legibleRuns(given.a), legibleRuns(given.b), given.options, given.overlaid},
      compared(desktop::compareViews(comparedRuns(record.a), comparedRuns(record.b), record.options)),
      lanes(desktop::compareLanes(compared, format)) {
  if (record.overlaid) {
    curves.emplace_back(onPaper(desktop::overlaidScene(compared, {}, format)), format, theme);
  } else {
    for (const std::size_t side : {0, 1})
      curves.emplace_back(onPaper(desktop::compareScene(compared, side, {}, format)), format, theme);
  }
  recipes = RecipeTable(desktop::compareStrips(compared, {}, false, false, format), format).make();
}

QStringList ComparePictures::asides() const {
  return {asideOf(QStringLiteral("A"), record.a), asideOf(QStringLiteral("B"), record.b)};
}

QList<Fact> ComparePictures::facts(const QLocale& locale) const {
  std::vector<RunRecord> all = record.a;
  all.insert(all.end(), record.b.begin(), record.b.end());
  return sharedFacts(all, locale);
}

QList<LogFact> ComparePictures::logs(const QLocale& locale) const {
  if (record.isOfGroups()) return {};
  QList<LogFact> logs{logFactOf(record.a.front(), locale), logFactOf(record.b.front(), locale)};
  logs[0].file.prepend(QStringLiteral("A: "));
  logs[1].file.prepend(QStringLiteral("B: "));
  return logs;
}

QList<CaptionedTable> ComparePictures::tables(const QLocale& locale) const {
  if (!record.isOfGroups()) return {};
  return {{Words::tr("Runs of A"), runsTable(record.a, locale)},
          {Words::tr("Runs of B"), runsTable(record.b, locale)},
          {Words::tr("Logs of A"), logsTable(record.a, locale)},
          {Words::tr("Logs of B"), logsTable(record.b, locale)}};
}

QList<Fact> ComparePictures::notes(const QLocale& locale) const {
  QList<Fact> notes{
      {Words::tr("Differences"), differencesText(compared.comparison)},
      {Words::tr("More margin"),
       record.isOfGroups()
           ? Words::tr("by the means of the runs’ smallest margins; neither, where they differ by less than "
                       "their interval.")
           : Words::tr("neither, where the margins differ by less than their uncertainty.")}};
  // What runs say alike stands once; the first note of a run is about the ± of its values, which do not stand here.
  struct Said {
    Fact note;
    QList<std::size_t> by[2];  // runs of A, of B
  };
  QList<Said> all;
  const std::vector<RunRecord>* sides[] = {&record.a, &record.b};
  for (const std::size_t side : {0, 1})
    for (std::size_t run = 0; run < sides[side]->size(); ++run)
      for (const Fact& note : notesOf((*sides[side])[run], locale).mid(1)) {
        auto same = std::ranges::find_if(
            all, [&](const Said& said) { return said.note.label == note.label && said.note.value == note.value; });
        if (same == all.end()) same = all.insert(all.end(), Said{note, {}});
        same->by[side] << run;
      }
  for (const Said& said : all) {
    QStringList whose;
    for (const std::size_t side : {0, 1}) {
      const QString letter = widgets::sideLetter(side);
      if (std::size_t(said.by[side].size()) == sides[side]->size())
        whose << letter;
      else
        for (const std::size_t run : said.by[side])
          whose << Words::tr("%1 run %2", "letter of a group").arg(letter).arg(run + 1);
    }
    const bool shared = whose == QStringList{QStringLiteral("A"), QStringLiteral("B")};
    notes << (shared
                  ? said.note
                  : Fact{whose.join(QStringLiteral(", ")) + QStringLiteral(", ") + said.note.label, said.note.value});
  }
  return notes;
}

std::vector<compare::JudgedRun> judgedRuns(const std::vector<RunRecord>& records) {
  std::vector<compare::JudgedRun> runs;
  for (const RunRecord& record : records) runs.push_back({&record.checked(), record.request.get()});
  return runs;
}

compare::Comparison comparisonOf(const ComparisonRecord& record) {
  const auto a = judgedRuns(record.a), b = judgedRuns(record.b);
  return record.isOfGroups() ? compare::compare_groups(a, b)
                             : compare::compare_runs(a.front(), b.front(), record.options);
}

}  // namespace ovenwright::sheet
