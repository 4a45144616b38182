#include "app/sheet/facts.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>
#include <cmath>

#include "app/desktop/text/format.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/text/said.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/desktop/widgets/thermocouple_text.h"
#include "app/desktop/widgets/wording.h"
#include "core/report/text_parts.h"
#include "core/units/version.h"

namespace ovenwright::sheet {
namespace {

using desktop::Format;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

QString q(const std::string& text) { return QString::fromStdString(text); }

QString identityText(const files::Identity& identity) {
  QString text = q(identity.name);
  if (identity.revision) text = Words::tr("%1, revision %2").arg(text, q(*identity.revision));
  if (!identity.sha256.empty()) text += QStringLiteral(" (") + shortDigest(q(identity.sha256)) + u')';
  return text;
}

QString classText(const QString& thermocouple) {
  const QString text = widgets::thermocoupleText(thermocouple);
  return thermocouple.contains(QStringLiteral(" class ")) ? text + QStringLiteral(" (IEC 60584-1)") : text;
}

QString budgetText(const window::UncertaintyBudget& budget, const QLocale& locale) {
  const auto degrees = [&](double half_C) {
    const bool tenths = std::abs(half_C * 10 - std::round(half_C * 10)) < 1e-9;
    return QStringLiteral("± %1 °C").arg(tenths ? locale.toString(half_C, 'f', 1) : locale.toString(half_C, 'g', 6));
  };
  const QString thermocouple = budget.tolerance_C ? Words::tr("thermocouple %1").arg(degrees(*budget.tolerance_C))
                                                  : classText(q(budget.thermocouple));
  return Words::tr("%1, instrument %2, U = 2u").arg(thermocouple, degrees(budget.instrument_C));
}

/// One fact for all windows where they say the same, else one for each that says it differently.
template <class Text>
void addByWindow(QList<Fact>& facts, const QString& label, const std::vector<window::ProcessWindow>& windows,
                 Text text) {
  QStringList texts;
  for (const auto& window : windows)
    if (const QString one = text(window); !texts.contains(one)) texts << one;
  for (const auto& window : windows) {
    if (texts.size() < 2) break;
    facts << Fact{label, Words::tr("%1: %2").arg(q(window.identity.name), text(window))};
  }
  if (texts.size() == 1) facts << Fact{label, texts.front()};
}

QString entryText(const oven::Entry& entry, const Format& format) {
  const QString found =
      entry.found_from == oven::Entry::Source::kLog ? Words::tr("found from the curves") : Words::tr("given");
  return Words::tr("%1 ± %2 s on the log's clock, %3")
      .arg(format.seconds(entry.at_s), format.seconds(entry.uncertainty_s), found);
}

/// "Peak: R118 250, U3 body 245": the limits of a lane that are not the same for all.
void addLimitsByPart(QStringList& lines, const RunRecord& record) {
  const auto& judgement = record.checked().judgement;
  const auto channels =
      widgets::channelsOf(record.checked().run, record.request->board ? &*record.request->board : nullptr);
  for (const auto& lane : widgets::laneTable(judgement, channels).lanes) {
    const auto add = [&](const QString& tip, const QString& side) {
      if (!tip.isEmpty())
        lines
            << lane.title + QStringLiteral(", ") + side + QStringLiteral(": ") +
                   QString(tip).replace(QStringLiteral(": "), QStringLiteral(" ")).replace(u'\n', QStringLiteral(", "));
    };
    add(lane.lowerTip, Words::tr("lower limit by part"));
    add(lane.upperTip, Words::tr("upper limit by part"));
  }
}

/// Requirements that have one source are named together.
QString sourcesText(const judge::Judgement& judgement) {
  QList<std::pair<QString, QStringList>> bySource;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (outcome.source.empty()) continue;
    const QString source = QCoreApplication::translate("source", outcome.source.c_str()),
                  name = widgets::Wording::title(outcome.requirement_name);
    auto found = std::ranges::find(bySource, source, &std::pair<QString, QStringList>::first);
    if (found == bySource.end()) found = bySource.insert(bySource.end(), {source, {}});
    if (!found->second.contains(name)) found->second << name;
  }
  QStringList texts;
  for (const auto& [source, names] : bySource) texts << Words::tr("%1: %2").arg(desktop::enumerated(names), source);
  return texts.join(QStringLiteral(". "));
}

/// A digest in groups that can be read and typed.
QString grouped(QString digest) {
  constexpr qsizetype kGroup = 16;
  for (qsizetype at = kGroup; at < digest.size(); at += kGroup + 1) digest.insert(at, u' ');
  return digest;
}

bool isChinese(const QLocale& locale) { return locale.language() == QLocale::Chinese; }

/// Sentences and parts of them as one list: full stops only at its end.
QString listed(QStringList items, const QLocale& locale) {
  for (QString& item : items)
    if (items.size() > 1 && (item.endsWith(u'.') || item.endsWith(QChar(0x3002)))) item.chop(1);
  return items.join(isChinese(locale) ? QStringLiteral("；") : QStringLiteral("; "));
}

/// What core says, in the sheet's language.
QStringList inWords(const std::vector<std::string>& english, const QLocale& locale) {
  QStringList texts;
  for (const auto& one : english) texts << desktop::inWords(one, locale);
  return texts;
}

QString readAsText(const RunRecord& record, const QLocale& locale) {
  const QStringList pieces = inWords(report::read_as_pieces(record.reading(), record.checked().run), locale);
  QStringList items{pieces.join(isChinese(locale) ? QStringLiteral("，") : QStringLiteral(", "))};
  items << inWords(record.reading().read_as.notes, locale);
  return listed(items, locale);
}

/// With its place in a file, as errors have it.
QString warningText(const Warning& warning, const QLocale& locale) {
  const QString whole = q(warning.text()), message = q(warning.message);
  return whole.chopped(message.size()) + desktop::inWords(warning.message, locale);
}

QString chainText(const ArchivePlace& place, const QString& head) {
  return Words::tr("%1: %n records, head %2", nullptr, int(place.records)).arg(place.station, head);
}

/// The chains that the runs' records stand in: of one the whole head digest, of several their short forms.
QList<Fact> chainFacts(std::span<const RunRecord> runs) {
  QList<Fact> facts;
  for (const bool whole : {true, false}) {
    facts.clear();
    for (const RunRecord& record : runs) {
      if (!record.archive) continue;
      const QString& head = record.archive->headDigest;
      const QString text = chainText(*record.archive, whole ? grouped(head) : shortDigest(head));
      if (std::ranges::find(facts, text, &Fact::value) == facts.end()) facts << Fact{Words::tr("Chain"), text};
    }
    if (facts.size() < 2) break;
  }
  return facts;
}

}  // namespace

QString dateText(const QDateTime& moment, const QLocale& locale) {
  QString pattern = QStringLiteral("d MMMM yyyy");
  if (locale.language() == QLocale::German) pattern = QStringLiteral("d. MMMM yyyy");
  if (locale.language() == QLocale::Spanish) pattern = QStringLiteral("d 'de' MMMM 'de' yyyy");
  if (locale.language() == QLocale::Chinese) pattern = QStringLiteral("yyyy年M月d日");
  return locale.toString(moment.date(), pattern);
}

QString momentText(const QDateTime& moment, const QLocale& locale) {
  const QDateTime utc = moment.toUTC();
  const QString gap = locale.language() == QLocale::Chinese ? QStringLiteral(" ") : QStringLiteral(", ");
  return dateText(utc, locale) + gap + utc.toString(QStringLiteral("HH:mm")) + QStringLiteral(" UTC");
}

QString shortMomentText(const QDateTime& moment, const QLocale& locale) {
  QString pattern = QStringLiteral("d MMM yyyy HH:mm");
  if (locale.language() == QLocale::German) pattern = QStringLiteral("dd.MM.yyyy HH:mm");
  if (locale.language() == QLocale::Chinese) pattern = QStringLiteral("yyyy-MM-dd HH:mm");
  return locale.toString(moment.toUTC(), pattern);
}

QString shortDigest(const QString& digest) {
  constexpr qsizetype kEnds = 4;
  return digest.size() <= 2 * kEnds ? digest : digest.left(kEnds) + QChar(0x2026) + digest.right(kEnds);
}

QString programText() { return QStringLiteral("Ovenwright ") + QString::fromLatin1(kVersion); }

QString decisionRuleText(window::DecisionRule rule) {
  return rule == window::DecisionRule::kGuarded ? Words::tr("Guarded, w = U (ILAC-G8:09/2019)")
                                                : Words::tr("Simple: inside the limits, limits included");
}

QString cautionsTitle() { return Words::tr("Cautions"); }

QStringList cautions() {
  return {
      Words::tr(
          "A suggested or changed recipe is a prediction: a qualified person confirms it with an instrumented run "
          "before production, inside the ratings of the paste, the parts, the board and the oven."),
      Words::tr("Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets "
                "stand above anything shown here."),
      Words::tr("Windows shipped with the program are general; the paste’s own data sheet is the authority.")};
}

QList<Fact> factsOf(const RunRecord& record, const QLocale& locale) {
  const auto& request = *record.request;
  const auto& judgement = record.checked().judgement;
  const Format format({}, {}, locale);
  QList<Fact> facts;
  const auto add = [&](const QString& label, const QString& value) {
    if (!value.isEmpty()) facts << Fact{label, value};
  };
  for (const auto& window : judgement.windows) {
    const QString text = identityText(window.identity);
    add(Words::tr("Window"), judgement.window_assumed ? Words::tr("%1, assumed").arg(text) : text);
  }
  addByWindow(facts, Words::tr("Decision rule"), judgement.windows,
              [](const auto& window) { return decisionRuleText(window.decision_rule); });
  addByWindow(facts, Words::tr("Uncertainty"), judgement.windows,
              [&](const auto& window) { return budgetText(window.uncertainty, locale); });
  if (request.oven) add(Words::tr("Oven"), identityText(request.oven->identity));
  if (request.recipe) {
    add(Words::tr("Recipe"),
        identityText(request.recipe->identity) + QStringLiteral(", ") + format.speed(request.recipe->speed_mm_per_min));
  }
  if (request.board) add(Words::tr("Board"), identityText(request.board->identity));
  add(Words::tr("Serial number"), record.labels.serial);
  add(Words::tr("Operator"), record.labels.operatorName);
  if (record.labels.runAt.isValid()) {
    const QString when = momentText(record.labels.runAt, locale);
    add(Words::tr("Run at"),
        record.labels.runAtFrom == Labels::From::kFileTime   ? Words::tr("%1, time of the log’s file").arg(when)
        : record.labels.runAtFrom == Labels::From::kLogClock ? Words::tr("%1, by the log’s own clock").arg(when)
                                                             : Words::tr("%1, as given").arg(when));
  }
  if (record.checked().entry) add(Words::tr("Oven entry"), entryText(*record.checked().entry, format));
  if (record.archive) {
    const auto& place = *record.archive;
    add(Words::tr("Record"), Words::tr("%1, number %2 of its chain").arg(place.id, locale.toString(place.number)));
    add(Words::tr("Chain"), chainText(place, grouped(place.headDigest)));
    if (place.program.compare(programText(), Qt::CaseInsensitive) != 0) add(Words::tr("Recorded by"), place.program);
    if (place.verdict != judgement.verdict)
      add(Words::tr("Recorded verdict"),
          Words::tr("%1; this sheet was judged anew").arg(widgets::Wording::verdict(place.verdict)));
  }
  return facts;
}

const char* runAtFromName(const Labels& labels) {
  if (!labels.runAt.isValid()) return "";
  switch (labels.runAtFrom) {
    case Labels::From::kGiven:
      return "given";
    case Labels::From::kLogClock:
      return "log clock";
    case Labels::From::kFileTime:
      break;
  }
  return "file time";
}

QList<Fact> sharedFacts(std::span<const RunRecord> runs, const QLocale& locale) {
  // What belongs to one run alone stands in the table of runs, and each chain by itself: none may be left out.
  const QStringList own{Words::tr("Serial number"), Words::tr("Run at"), Words::tr("Oven entry"), Words::tr("Record"),
                        Words::tr("Chain")};
  QStringList labels;
  QList<QStringList> values;
  for (const RunRecord& record : runs) {
    for (const Fact& fact : factsOf(record, locale)) {
      if (own.contains(fact.label)) continue;
      auto at = labels.indexOf(fact.label);
      if (at < 0) {
        at = labels.size();
        labels << fact.label;
        values << QStringList{};
      }
      if (!values[at].contains(fact.value)) values[at] << fact.value;
    }
  }
  constexpr qsizetype kMostNamed = 3;
  QList<Fact> facts;
  for (qsizetype i = 0; i < labels.size(); ++i) {
    const QString value = values[i].size() <= kMostNamed ? values[i].join(QStringLiteral("; "))
                                                         : Words::tr("%n different", nullptr, int(values[i].size()));
    facts << Fact{labels[i], value};
  }
  return facts + chainFacts(runs);
}

LogFact logFactOf(const RunRecord& record, const QLocale& locale) {
  const auto& file = record.reading().file;
  QString name = QFileInfo(q(file.file)).fileName();
  if (!file.member.empty()) name += QStringLiteral(" (") + q(file.member) + u')';
  return {Words::tr("%1; %2 bytes").arg(name, locale.toString(qulonglong(file.bytes))), grouped(q(file.sha256))};
}

QString titleOf(const RunRecord& record) {
  if (!record.labels.lot.isEmpty()) return Words::tr("Lot %1").arg(record.labels.lot);
  return QFileInfo(q(record.reading().file.file)).fileName();
}

QString subjectOf(const RunRecord& record) {
  if (!record.request->board) return Words::tr("Thermal profile");
  return Words::tr("Thermal profile, %1").arg(q(record.request->board->identity.name));
}

QStringList asidesOf(const RunRecord& record, const QLocale& locale) {
  QStringList asides;
  const auto& run = record.checked().run;
  if (run.parts > 1) asides << Words::tr("Run %1 of %2 in the log").arg(run.part).arg(run.parts);
  if (record.labels.runAt.isValid()) asides << dateText(record.labels.runAt, locale);
  return asides;
}

QList<Fact> notesOf(const RunRecord& record, const QLocale& locale) {
  const auto& judgement = record.checked().judgement;
  const auto& run = record.checked().run;
  QList<Fact> notes;
  const auto add = [&](const QString& label, const QString& text) {
    if (!text.isEmpty()) notes << Fact{label, text};
  };
  const bool guarded = std::ranges::any_of(
      judgement.windows, [](const auto& window) { return window.decision_rule == window::DecisionRule::kGuarded; });
  add(Words::tr("Uncertainty"),
      Words::tr(
          "behind ± stands the expanded uncertainty U = 2u (about 95 %), from thermocouple, instrument, noise and "
          "sampling (JCGM 100). How a bead is attached, and how runs of the oven differ, is not in it."));
  if (guarded)
    add(Words::tr("Guarded"),
        Words::tr("pass: clear of the limits by U or more; conditional: within U of a limit, inside "
                  "(pass) or outside (fail); fail: outside by more than U."));
  QStringList limits;
  addLimitsByPart(limits, record);
  add(Words::tr("Limits"), limits.join(QStringLiteral(". ")));
  add(Words::tr("Sources"), sourcesText(judgement));
  add(Words::tr("Read as"), readAsText(record, locale));
  std::vector<std::string> assumed;
  for (const auto& assumption : record.reading().read_as.assumed) assumed.push_back(assumption.text);
  add(Words::tr("Assumed"), listed(inWords(assumed, locale), locale));
  add(Words::tr("Faults, on the log’s clock"), listed(inWords(report::fault_items(run), locale), locale));
  QStringList warnings;
  for (const auto& suspicion : judgement.suspicions)
    warnings << Words::tr("%1 may be wrong: %2")
                    .arg(q(suspicion.placement), desktop::inWords(run::fault_name(suspicion.fault), locale));
  warnings << inWords(judgement.warnings, locale);
  for (const auto& warning : record.reading().warnings) warnings << warningText(warning, locale);
  add(Words::tr("To note"), listed(warnings, locale));
  return notes;
}

}  // namespace ovenwright::sheet
