#pragma once
#include <optional>
#include <string_view>

#include "core/log/text_scanner.h"
#include "core/log/time_text.h"

namespace ovenwright::log {

/// Takes a time of day or a duration: "9:14:22.5", "9h14m22s", "上午 09:14", "1 day, 2:03:04". False, and nothing
/// taken, without one.
bool take_clock(Scanner& scan, TimeText& time);
/// "z", "utc", "+08:00", "gmt+8", "-0530".
void take_offset(Scanner& scan, TimeText& time);
/// "09.14.22" as a clock.
std::optional<TimeText> dotted_clock(std::string_view text);

}  // namespace ovenwright::log
