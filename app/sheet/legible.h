#pragma once
#include <QString>

#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// Characters of a company's name that stand at the head of a sheet.
inline constexpr qsizetype kMostCompany = 80;

/// A name as it can stand on paper: in one line, without control characters and without marks that turn the direction
/// of what follows, cut in the middle where it has more than `most` characters as people count them.
QString legible(const QString& name, qsizetype most = 48);

/// The same run with every name in it legible, for everything that is drawn. CSV, JSON and the tables of HTML keep
/// the names as they are.
RunRecord legible(const RunRecord& record);

}  // namespace ovenwright::sheet
