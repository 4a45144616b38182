#include "app/desktop/window/sentence_states.h"

#include <QCoreApplication>

#include "app/desktop/text/paragraph.h"
#include "core/units/phrase.h"

namespace ovenwright::desktop {
namespace {

using widgets::SentenceContent;
using widgets::SentenceLink;
using widgets::SentenceRun;

SentenceRun plain(const QString& text, bool strong = false) {
  SentenceRun run;
  run.text = text;
  run.strong = strong;
  return run;
}

SentenceLink command(const QString& name) {
  SentenceLink link;
  link.command = name;
  return link;
}

QString assumedText(const log::Assumption& assumption) {
  const std::string& about = assumption.about;
  const auto text = [](const char* words) { return QCoreApplication::translate("SentenceStates", words); };
  if (isDoubt(assumption.text))
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The numbers are no run in the unit that the file states."));
  if (about == "header")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The file holds several tables: one was chosen."));
  if (about == "unit") return text(QT_TRANSLATE_NOOP("SentenceStates", "The unit was assumed in reading the log."));
  if (about == "time") return text(QT_TRANSLATE_NOOP("SentenceStates", "The time was assumed in reading the log."));
  if (about == "date order")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The order of the date was assumed in reading the log."));
  if (about == "decimal")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The decimal sign was assumed in reading the log."));
  if (about == "thermocouple type")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The type of thermocouple was assumed in reading the log."));
  if (about == "cold junction")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The cold junction was assumed in reading the log."));
  if (about == "reversed")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "A thermocouple was turned round in reading the log."));
  if (about == "encoding")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The encoding was assumed in reading the log."));
  if (about == "scale")
    return text(QT_TRANSLATE_NOOP("SentenceStates", "The scale of the numbers was assumed in reading the log."));
  return text(QT_TRANSLATE_NOOP("SentenceStates", "Something was assumed in reading the log."));
}

void addAssumption(SentenceContent& content, const log::Assumption& assumption) {
  const QString words = assumedText(assumption);
  // The blank before it, where the language has one there.
  const QString before = content.first.isEmpty() ? QString() : content.first.last().text;
  content.first << plain(paragraph({before, words}).mid(before.size()).chopped(words.size()));
  content.addLink(content.first, plain(words), command(kAbout + QString::fromStdString(assumption.about)));
  content.spoken = paragraph({content.spoken, words});
}

}  // namespace

SentenceContent emptySentence() {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kVerdict;
  content.muted = true;
  content.first << plain(
      QCoreApplication::translate("SentenceStates", "No run is open. The result will stand here as one sentence."));
  content.second << plain(QCoreApplication::translate(
      "SentenceStates", "Each part of it leads to the place on the curve, the limit and the oven zones it came from."));
  content.second[0].dispensable = true;
  content.secondShort = content.second;
  content.spoken = paragraph({content.first[0].text, content.second[0].text});
  return content;
}

SentenceContent readingSentence(const Document::Activity& activity, const Format& format) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kPale;
  const QString words = QCoreApplication::translate("SentenceStates", "Reading %1: %2 rows so far.")
                            .replace(QStringLiteral("%2"), format.count(activity.rows));
  content.first << plain(words.section(QStringLiteral("%1"), 0, 0)) << plain(activity.name, true)
                << plain(words.section(QStringLiteral("%1"), 1));
  SentenceRun bar;
  bar.progress = activity.done;
  content.second << bar << plain(QStringLiteral("   "));
  content.addLink(content.second, plain(QCoreApplication::translate("SentenceStates", "Stop")),
                  command(QStringLiteral("stop")));
  content.secondShort = content.second;
  content.spoken = QCoreApplication::translate("SentenceStates", "Reading %1").arg(activity.name);  // not at every row
  return content;
}

bool isDoubt(const std::string& text) {
  const auto found = said(text);
  return found && found->pattern == english(Phrase::kStatedUnit);
}

void addWarnings(SentenceContent& content, int count) {
  const SentenceRun gap = plain(QStringLiteral("    "));
  SentenceRun run = plain(QCoreApplication::translate("SentenceStates", "%n warning(s)", nullptr, count));
  run.link = int(content.links.size());
  content.links.append(command(kWarnings));
  for (auto* line : {&content.second, &content.secondShort}) *line << gap << run;
  content.spoken += QStringLiteral(", ") + run.text;
}

void addDoubts(SentenceContent& content, const RunView& view) {
  for (const auto& assumption : view.reading().read_as.assumed)
    if (isDoubt(assumption.text)) addAssumption(content, assumption);
}

void addReading(SentenceContent& content, const RunView& view, const Format& format) {
  const auto& read_as = view.reading().read_as;
  for (const auto& assumption : read_as.assumed) addAssumption(content, assumption);
  QStringList lines{QCoreApplication::translate("SentenceStates", "%1 rows in %n channel(s).", nullptr,
                                                int(view.reading().channels.size()))
                        .arg(format.count(read_as.rows))};
  if (view.entry()) {
    const double first_s = view.run().from_s;
    lines << QCoreApplication::translate("SentenceStates", "Times count from oven entry, %1 s after the first row.")
                 .arg(format.seconds(view.entry()->at_s - first_s));
  }
  lines << QCoreApplication::translate("SentenceStates",
                                       "Nothing has been changed in the file. Corrections take effect "
                                       "at once and can be undone.");
  const QString all = paragraph(lines);
  SentenceRun more = plain(all.mid(lines.front().size()));
  more.dispensable = true;  // in a low window
  content.second = {plain(lines.front()), more};
  content.secondShort = content.second;
  content.spoken = paragraph({content.spoken, all});
}

SentenceContent noticeSentence(const Notice& notice) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kBarred;
  content.spoken = paragraph({notice.title, notice.text});
  content.first << plain(notice.title, true) << plain(content.spoken.mid(notice.title.size()));
  for (std::size_t i = 0; i < notice.cures.size(); ++i) {
    if (i > 0) content.second << plain(QStringLiteral("    "));
    content.addLink(content.second, plain(notice.cures[i].label), command(QString::number(i)));
    content.spoken += u' ' + notice.cures[i].label + u'.';
  }
  content.secondShort = content.second;
  return content;
}

}  // namespace ovenwright::desktop
