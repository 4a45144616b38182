#include "app/desktop/window/notice.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace ovenwright::desktop {
namespace {}  // namespace

QString sentenceCase(QString text) {
  if (text.isEmpty()) return text;
  text[0] = text[0].toUpper();
  return text.endsWith(u'.') ? text : text + u'.';
}

QString errorText(const Error& error) {
  QString place;
  if (error.where.line > 0 && error.where.column > 0) {
    place = QCoreApplication::translate("Notice", "Line %1, column %2: ").arg(error.where.line).arg(error.where.column);
  } else if (error.where.line > 0) {
    place = QCoreApplication::translate("Notice", "Line %1: ").arg(error.where.line);
  }
  QString what;
  if (!error.found.empty() && !error.expected.empty()) {
    what = QCoreApplication::translate("Notice", "found “%1”, expected %2")
               .arg(QString::fromStdString(error.found), QString::fromStdString(error.expected));
  } else {
    what = QString::fromStdString(error.message);
  }
  return place.isEmpty() ? sentenceCase(what) : place + sentenceCase(what).replace(0, 1, what.left(1));
}

}  // namespace ovenwright::desktop
