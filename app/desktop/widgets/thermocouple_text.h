#pragma once
#include <QString>

namespace ovenwright::widgets {

/// "K class 1", as windows and boards name a type and its tolerance class, in the user's language.
QString thermocoupleText(const QString& written);

}  // namespace ovenwright::widgets
