#pragma once
#include <QString>
#include <optional>

namespace ovenwright::desktop {

/// What a text typed as a number means: with a point or a comma as its decimal sign.
struct TypedNumber {
  std::optional<double> value;  ///< absent where nothing is typed
  bool isSound = true;          ///< false: it is no number
};
TypedNumber numberOf(QString text);

/// Whether the sign within may part thousands as well as decimals: "1,000", where it stands before the last three of
/// four to six digits.
bool mayPartThousands(const QString& text);

/// "“x” is no number", in the language of the screen.
QString noNumber(const QString& text);

/// A number as it is typed; empty where there is none.
QString textOf(const std::optional<double>& number);

}  // namespace ovenwright::desktop
