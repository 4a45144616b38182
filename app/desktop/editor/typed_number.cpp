#include "app/desktop/editor/typed_number.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <cmath>

namespace ovenwright::desktop {

TypedNumber numberOf(QString text) {
  text = text.trimmed().replace(u',', u'.').replace(QChar(0x2212), u'-');
  if (text.isEmpty()) return {};
  bool is_number = false;
  const double value = text.toDouble(&is_number);
  return is_number && std::isfinite(value) ? TypedNumber{value} : TypedNumber{{}, false};
}

bool mayPartThousands(const QString& text) {
  static const QRegularExpression parted(QStringLiteral("^[-+\u2212]?[1-9][0-9]{0,2}[.,][0-9]{3}$"));
  return parted.match(text.trimmed()).hasMatch();
}

QString noNumber(const QString& text) {
  return QCoreApplication::translate("TypedNumber", "“%1” is no number").arg(text);
}

QString textOf(const std::optional<double>& number) { return number ? QString::number(*number, 'g', 10) : QString(); }

}  // namespace ovenwright::desktop
