#pragma once
#include <optional>

#include "app/archive/database.h"

namespace ovenwright::archive {

/// The newest version of the schema that this program knows.
int newestSchema();

/// Whether a database is an archive, and of which version. Tables and version are the same in SQLite and PostgreSQL.
/// 0: empty, an archive can be made in it.
/// Errors: kIo where it is something else, or of a version newer than this program.
Result<int> schemaVersion(Database& database);

/// Makes the archive's tables, or brings those of an older version forward, in one transaction. Two processes may do it
/// at once: the second finds it done. An older version is copied before: an SQLite file to "FILE.before-version-N", a
/// server's records into the schema ovenwright_before_version_N.
/// Errors: kIo; the archive is then as it was.
std::optional<Error> bringForward(Database& database, int to = newestSchema());

}  // namespace ovenwright::archive
