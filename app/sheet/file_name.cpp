#include "app/sheet/export.h"

namespace ovenwright::sheet {

QString safeFileName(const QString& text) {
  constexpr qsizetype kMost = 80;
  QString name;
  for (const QChar unit : text.left(4 * kMost)) {
    const bool plain =
        (unit >= u'a' && unit <= u'z') || (unit >= u'A' && unit <= u'Z') || (unit >= u'0' && unit <= u'9');
    if (plain || unit == u'-' || unit == u'.' || unit == u'_')
      name += unit;
    else if (!name.endsWith(u'_'))
      name += u'_';
  }
  while (name.startsWith(u'.') || name.startsWith(u'-') || name.startsWith(u'_')) name.remove(0, 1);
  name.truncate(kMost);
  while (name.endsWith(u'.') || name.endsWith(u'_')) name.chop(1);
  static const QStringList kKept{"con", "prn", "aux", "nul"};
  const QString stem = name.section(u'.', 0, 0).toLower();
  const bool port = stem.size() == 4 && (stem.startsWith(u"com") || stem.startsWith(u"lpt")) && stem[3].isDigit();
  if (kKept.contains(stem) || port) name.prepend(u'_');
  return name.isEmpty() ? QStringLiteral("sheet") : name;
}

}  // namespace ovenwright::sheet
