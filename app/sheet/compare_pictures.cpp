#include "app/sheet/compare_pictures.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/desktop/compare/compare_scene.h"
#include "app/sheet/legible.h"

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
    : record{legible(given.a), legible(given.b), given.options, given.overlaid},
      compared(desktop::compareViews(comparedRun(record.a), comparedRun(record.b), record.options)),
      lanes(desktop::compareLanes(compared, format)) {
  if (record.overlaid) {
    curves.emplace_back(desktop::overlaidScene(compared, {}, format), format, theme);
  } else {
    for (const std::size_t side : {0, 1})
      curves.emplace_back(desktop::compareScene(compared, side, {}, format), format, theme);
  }
  recipes = RecipeTable(desktop::compareStrips(compared, {}, false, false, format), format).make();
}

QStringList ComparePictures::asides() const {
  return {QStringLiteral("A: ") + titleOf(record.a), QStringLiteral("B: ") + titleOf(record.b)};
}

QList<Fact> ComparePictures::facts(const QLocale& locale) const {
  const RunRecord both[] = {record.a, record.b};
  return sharedFacts(both, locale);
}

QList<LogFact> ComparePictures::logs(const QLocale& locale) const {
  QList<LogFact> logs{logFactOf(record.a, locale), logFactOf(record.b, locale)};
  logs[0].file.prepend(QStringLiteral("A: "));
  logs[1].file.prepend(QStringLiteral("B: "));
  return logs;
}

QList<Fact> ComparePictures::notes(const QLocale& locale) const {
  QList<Fact> notes{{Words::tr("Differences"), differencesText(compared.comparison)},
                    {Words::tr("More margin"), Words::tr("neither, where the margins differ by less than their "
                                                         "uncertainty.")}};
  // What both say alike stands once; the first note of a run is about the ± of its values, which do not stand here.
  const auto of_a = notesOf(record.a, locale).mid(1), of_b = notesOf(record.b, locale).mid(1);
  const auto has = [](const QList<Fact>& list, const Fact& note) {
    return std::ranges::any_of(
        list, [&](const Fact& other) { return other.label == note.label && other.value == note.value; });
  };
  for (const Fact& note : of_a)
    notes << (has(of_b, note) ? note : Fact{QStringLiteral("A, ") + note.label, note.value});
  for (const Fact& note : of_b)
    if (!has(of_a, note)) notes << Fact{QStringLiteral("B, ") + note.label, note.value};
  return notes;
}

}  // namespace ovenwright::sheet
