#pragma once
#include <QString>
#include <QVariant>

#include "app/archive/database.h"
#include "app/archive/record.h"

namespace ovenwright::archive {

/// The columns of a run that summaryOf() takes, in its order, from the table named or aliased `run`.
QString summaryColumns();
/// Texts that are too long for a column are still shortened: see isShortened() and fillShortened().
Summary summaryOf(const QSqlQuery& row);
bool isShortened(const std::string& column);
/// Takes the texts of a record from its body where one of the columns was shortened.
std::optional<Error> fillShortened(Database& database, Summary& summary);
/// Whether a row of a list says what the record's body says.
bool agrees(const Summary& row, const Summary& body);

}  // namespace ovenwright::archive
