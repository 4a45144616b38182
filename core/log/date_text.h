#pragma once
#include "core/log/text_scanner.h"
#include "core/log/time_text.h"

namespace ovenwright::log {

/// Takes a date in any of the forms below; `year_to_come`: the year stands behind the clock. False, and nothing taken,
/// without one.
bool take_date(Scanner& scan, TimeText& time, bool& year_to_come);
/// "2031-03-12", "12.03.2031", "3/12/31", "2031年3月12日", "20310312".
bool date_of_numbers(Scanner& scan, TimeText& time);
/// The year behind a clock.
bool year_at_last(Scanner& scan, TimeText& time);
void skip_weekday(Scanner& scan);

}  // namespace ovenwright::log
