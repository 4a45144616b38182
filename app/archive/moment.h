#pragma once
#include <chrono>
#include <string>

#include "core/units/result.h"

namespace ovenwright::archive {

/// A moment in UTC, to the millisecond.
using Moment = std::chrono::sys_time<std::chrono::milliseconds>;

Moment now();
/// ISO 8601 in UTC: "2026-03-14T08:15:00.000Z".
std::string momentText(Moment moment);
/// Whether a date without a time of day means its first moment or the first of the next day.
enum class DateEdge { kStart, kEnd };
/// Reads ISO 8601: "2026-03-14", "2026-03-14T08:15:00Z", "2026-03-14T08:15:00+08:00"; a time without a zone is UTC.
/// Errors: kBadArgument with what was found.
Result<Moment> parseMoment(const std::string& text, DateEdge edge = DateEdge::kStart);

}  // namespace ovenwright::archive
