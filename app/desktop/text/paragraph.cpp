#include "app/desktop/text/paragraph.h"

#include "app/desktop/text/language.h"

namespace ovenwright::desktop {

QString paragraph(const QStringList& sentences) {
  constexpr QChar kFullStop(0x3002), kQuestion(0xff1f), kExclamation(0xff01);
  QString text;
  for (const QString& sentence : sentences) {
    if (sentence.isEmpty()) continue;
    const QChar last = text.isEmpty() ? QChar(u' ') : text.back();
    if (last != u' ' && last != kFullStop && last != kQuestion && last != kExclamation) text += u' ';
    text += sentence;
  }
  return text;
}

QString enumerated(const QStringList& things) {
  return things.join(languageInUse().startsWith(u"zh") ? QStringLiteral("、") : QStringLiteral(", "));
}

}  // namespace ovenwright::desktop
