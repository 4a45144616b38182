#pragma once
#include <optional>
#include <string>
#include <vector>

namespace ovenwright::log {

enum class Form { kWide, kLong, kRows };

/// layout.toml of contracts.md: how to read logs of one shape. Every field may be absent: then it is found from
/// the content. What a log was read with is a Layout with every field filled.
struct Layout {
  struct TimeColumns {
    std::vector<int> columns;  ///< from 1; two where date and time stand apart
    std::optional<std::string>
        kind;  ///< "seconds", "tenths (hundredths) of a second", "milliseconds", "microseconds", "minutes",
               ///< "hours", "days", "clock m:s", "clock h:m", "clock h:m:s", "date and time", "serial days", "seconds
               ///< since 1970", "milliseconds since 1970", "microseconds since 1970", "nanoseconds since 1970", "index"
    std::optional<double> interval_s;  ///< for "index"
  };
  struct ChannelColumn {
    int column = 0;  ///< from 1; in form "rows" the row, in form "long" unused
    std::string name;
    int time_column = 0;  ///< where every channel has its own clock, else 0
    bool use = true;
    bool reversed = false;            ///< its wires are exchanged: read with its sign turned (turn_reversed)
    std::optional<std::string> unit;  ///< where it differs from the layout's: "degC", "degF", "K", "mV"
  };
  std::optional<std::string> name, encoding, delimiter, decimal, date_order, unit, thermocouple_type;
  std::optional<std::string> member;  ///< of an archive, the file in it; of a nest of them "inner.zip/run7.csv"
  std::optional<std::string> sheet;   ///< of a workbook; of a page with several tables the table's number, from 1
  std::optional<int> header_line;     ///< 0: no header
  std::optional<double> cold_junction_C, scale;
  std::optional<int> cold_junction_column;
  std::optional<Form> form;
  /// Cells that are neither numbers nor words for no reading count as no reading, and rows without a time are left out,
  /// where they are refused otherwise. Never found by itself.
  bool leave_empty = false;
  TimeColumns time;
  std::vector<ChannelColumn> channels;
};

}  // namespace ovenwright::log
