#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "app/archive/record.h"

namespace ovenwright::archive {

/// Which records are meant; an absent field lets all pass. Names match whole and exactly.
struct Filter {
  std::optional<std::string> lot, serial, board, oven, recipe, window;
  std::optional<std::string> logSha256;
  std::vector<judge::Verdict> verdicts;  ///< any of these; empty: all
  std::optional<Moment> from, to;        ///< time of run: from <= it < to
  /// Words that must all be found, each anywhere, whatever the case, in lot, serial, board, oven, recipe, window,
  /// operator, the log's name or the id.
  std::string text;
  bool latestOnly = false;  ///< of a run that was judged several times, only the last judgement
};

/// The order of a list. Runs that are equal in it stand by time of run, the newest first, and then by chain and number,
/// so that there is one order and every database gives it.
struct Order {
  enum class Key {
    kTime,            ///< of the run
    kLot,             ///< texts in the order of their bytes: capitals before small letters, QM-10 before QM-9
    kBoard,           ///< likewise
    kWindowRevision,  ///< likewise
    kVerdict,         ///< from pass to fail: judge::Verdict
    kMargin           ///< runs without one before the smallest
  } key = Key::kTime;
  bool descending = true;
  bool operator==(const Order&) const = default;

  static const Order kNewestFirst, kOldestFirst;
};
inline constexpr Order Order::kNewestFirst{Key::kTime, true};
inline constexpr Order Order::kOldestFirst{Key::kTime, false};

/// Where a page of a list ended; the next one begins behind it, whatever was added in between.
struct Cursor {
  Moment runAt{};
  std::string chain;
  std::uint64_t number = 0;
};

struct Page {
  std::vector<Summary> runs;
  std::optional<Cursor> next;        ///< absent: this was the last page
  std::optional<std::size_t> total;  ///< where the first page is the last: what count() would say
};

/// A lot as it stands in a list of lots.
struct LotSummary {
  std::string lot;
  std::size_t records = 0;
  std::size_t pass = 0, conditionalPass = 0, undetermined = 0, conditionalFail = 0, fail = 0;
  Moment firstRunAt{}, lastRunAt{};
};

}  // namespace ovenwright::archive
