#pragma once
#include <string>
#include <vector>

#include "app/archive/archive.h"
#include "app/archive/keep.h"

namespace ovenwright {

/// A run made up for tests: small texts in place of a log and its reports, all of them told apart by `number`.
archive::NewRun madeUpRun(int number, const std::string& lot = "QM-1001");
std::vector<archive::NewRun> madeUpRuns(int from, int count, const std::string& lot = "QM-1001");

/// A demo log judged by its own window, oven, recipe and board.
std::vector<archive::NewRun> demoRuns(const archive::Labels& labels);

/// The bytes of a file.
std::string contents(const std::string& path);

}  // namespace ovenwright
