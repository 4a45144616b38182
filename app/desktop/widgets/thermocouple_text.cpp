#include "app/desktop/widgets/thermocouple_text.h"

#include <QCoreApplication>

namespace ovenwright::widgets {

QString thermocoupleText(const QString& written) {
  const QString type = written.section(u' ', 0, 0), kind = written.section(u' ', 1);
  if (kind == u"class 1") return QCoreApplication::translate("Thermocouple", "%1 class 1").arg(type);
  if (kind == u"class 2") return QCoreApplication::translate("Thermocouple", "%1 class 2").arg(type);
  if (kind == u"special") return QCoreApplication::translate("Thermocouple", "%1 special", "tolerance").arg(type);
  if (kind == u"standard") return QCoreApplication::translate("Thermocouple", "%1 standard", "tolerance").arg(type);
  return written;
}

}  // namespace ovenwright::widgets
