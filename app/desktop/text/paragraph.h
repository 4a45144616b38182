#pragma once
#include <QString>
#include <QStringList>

namespace ovenwright::desktop {

/// Sentences one behind the other. A full stop of full width has its blank within: Chinese gets none beside it.
QString paragraph(const QStringList& sentences);

/// Things one beside the other, with the sign that the language in use has between them: "a, b", "甲、乙".
QString enumerated(const QStringList& things);

}  // namespace ovenwright::desktop
