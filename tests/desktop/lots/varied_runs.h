#pragma once
#include <string>
#include <vector>

#include "app/archive/record.h"

namespace ovenwright {

/// `count` runs of one lot made from the demo's: every value of run i moved by a small amount of its own, by a rule
/// without chance; an hour apart from 2026-03-01T08:00Z on.
std::vector<archive::NewRun> variedDemoRuns(int count, const std::string& lot);

}  // namespace ovenwright
