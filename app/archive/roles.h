#pragma once

namespace ovenwright::archive {

/// What gives the roles of a server their grants, as the owner of the archive runs it: resources/archive/roles.sql.
const char* rolesSql();

}  // namespace ovenwright::archive
