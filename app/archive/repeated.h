#pragma once
#include <optional>
#include <vector>

#include "app/archive/archive.h"
#include "app/archive/database.h"
#include "app/archive/record.h"

namespace ovenwright::archive {

/// Whether two records of one run are one judgement: from the same window, oven, recipe, board and entry, with the same
/// verdict and margin. Labels and reports may differ: who keeps a log names it as they like.
bool isSameJudgement(const Record& a, const Record& b);

/// Finds the place of a record that was just inserted among those of its run, which is the same pass of the same log,
/// whoever kept it: whether it only repeats another one, told to `repeated`, and which judgement is the last. Inside a
/// transaction that writes. Errors: kIo.
std::optional<Error> placeInRun(Database& database, const Record& record, std::vector<Repeated>& repeated);

/// The same for all records of an archive that did not know of repetitions: the first one stays. Errors: kIo.
std::optional<Error> placeAllInRuns(Database& database);

/// Whether lists must leave records out.
Result<bool> hasRepeated(Database& database);
/// The condition that a row of this table is no repetition.
QString isNoRepetition(const QString& table);
/// The condition that a row of `run` is not the last judgement of its run.
QString isSuperseded();

/// Holds what is noted as repeated against the records. `bad` is the id of the first that does not hold, and why; left
/// empty where all hold. Returns how many there are. Errors: kIo.
Result<std::size_t> verifyRepeated(Database& database, std::string& bad, std::string& reason);

}  // namespace ovenwright::archive
