#pragma once
#include <QString>
#include <QStringList>

namespace ovenwright::desktop {

/// Sentences one behind the other. A full stop of full width has its blank within: Chinese gets none beside it.
QString paragraph(const QStringList& sentences);

}  // namespace ovenwright::desktop
