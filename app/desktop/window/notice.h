#pragma once
#include <QString>
#include <functional>
#include <vector>

#include "core/units/result.h"

namespace ovenwright::desktop {

/// Something that did not work, said as one sentence in the place of the verdict, with what cures it. Never a box.
struct Notice {
  struct Cure {
    QString label;
    std::function<void()> act;
  };
  QString title;  ///< "qm2304_3.csv was not read."
  QString text;   ///< "Line 18, column 3: found “n/a”, expected a temperature."
  std::vector<Cure> cures;
};

/// A notice of an error whose cures lead to the file that it is about, or to the folder where it would be.
Notice noticeOf(const QString& title, const Error& error);

/// With a capital at its start and a full stop at its end.
QString sentenceCase(QString text);

/// The error as the second part of a notice: place, what was found and expected, else the message; nothing was changed.
QString errorText(const Error& error);
/// The same behind the name of the file that it is about, where there is one.
QString errorWithFile(const Error& error);
/// "what (inside)", with the brackets of the language in use.
QString withBrackets(const QString& what, const QString& inside);

}  // namespace ovenwright::desktop
