#pragma once
#include <cstdint>
#include <functional>

#include "app/archive/archive.h"
#include "app/archive/store.h"

namespace ovenwright::archive {

/// Copies what `to` does not have of a chain, in order, in transactions of some records each; the bytes that the
/// records name go first. May be stopped at any moment and started again.
/// @param repeated  is told which of them only repeat records that `to` had
/// @param copied  called after every transaction with the number of records it brought; false stops with kCancelled
/// Errors: kIo; kBadArgument where both have a record of one number with different digests; kIo where `to` has fewer
/// records than were moved out of `from`, and where a record of `from` does not hold.
std::optional<Error> copyChain(Database& from, Database& to, const std::string& chain, std::vector<Repeated>& repeated,
                               const std::function<bool(std::uint64_t copied)>& copied);

/// Removes from an outbox what `to` has; which logs that were stays noted there. Errors: kIo.
std::optional<Error> removeMoved(Database& outbox, Database& to, const std::string& chain);

/// Notes in an outbox which logs the server keeps, those of other stations too, so that none is added again while it is
/// away. Cost: what came to the server since the last time, in transactions of some thousand records each.
/// Errors: kIo.
std::optional<Error> noteKeptLogs(Database& outbox, Database& server);

/// Copies the releases of windows that `to` does not have, with the windows' bytes. Errors: kIo.
std::optional<Error> copyReleases(Database& from, Database& to);

}  // namespace ovenwright::archive
