#include "app/desktop/window/sentence_states.h"

#include <QCoreApplication>

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(SentenceStates)
};

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

}  // namespace

SentenceContent emptySentence() {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kVerdict;
  content.muted = true;
  content.first << plain(Words::tr("No run is open. The result will stand here as one sentence."));
  content.second << plain(
      Words::tr("Each part of it leads to the place on the curve, the limit and the oven zones it came from."));
  content.secondShort = content.second;
  content.spoken = content.first[0].text + u' ' + content.second[0].text;
  return content;
}

SentenceContent readingSentence(const Document::Activity& activity, const Format& format) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kPale;
  const QString rows = Words::tr("%1 rows so far").arg(format.count(activity.rows));
  content.first << plain(Words::tr("Reading ")) << plain(activity.name, true)
                << plain(QStringLiteral(": ") + rows + u'.');
  SentenceRun bar;
  bar.progress = activity.done;
  content.second << bar << plain(QStringLiteral("   "));
  content.addLink(content.second, plain(Words::tr("Stop")), command(QStringLiteral("stop")));
  content.secondShort = content.second;
  content.spoken = Words::tr("Reading %1").arg(activity.name);  // not at every row
  return content;
}

SentenceContent noticeSentence(const Notice& notice) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kVerdict;
  content.first << plain(notice.title, true) << plain(u' ' + notice.text);
  content.spoken = notice.title + u' ' + notice.text;
  for (std::size_t i = 0; i < notice.cures.size(); ++i) {
    if (i > 0) content.second << plain(QStringLiteral("    "));
    content.addLink(content.second, plain(notice.cures[i].label), command(QString::number(i)));
    content.spoken += u' ' + notice.cures[i].label + u'.';
  }
  content.secondShort = content.second;
  return content;
}

}  // namespace ovenwright::desktop
