#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/log/columns.h"

namespace ovenwright::log {

/// Decides what each column of a table is for: first each by itself, then the times, then what the columns are beside
/// each other. For one call of run().
class Assigner {
 public:
  Assigner(const Table& table, const TableHeader& header, const Facts& facts, const Layout& layout, bool interval_given)
      : table_(table), header_(header), facts_(facts), layout_(layout), interval_given_(interval_given) {}
  Columns run();

 private:
  const ColumnProfile& profile(std::size_t i) const { return table_.profile[i]; }
  const TableHeader::Column& head(std::size_t i) const { return header_.columns[i]; }
  Role& role(std::size_t i) { return columns_.roles[i]; }
  Role first_guess(std::size_t i) const;
  /// Open from the first row to the last: a channel where its header speaks of one.
  Role empty_column(std::size_t i) const;
  Role text_column(std::size_t i) const;
  bool named_like_a_channel(std::size_t i) const;
  Role time_column(std::size_t i) const;
  Role number_column(std::size_t i) const;
  bool compact_date(std::size_t i) const;
  bool numbers_without_words(std::size_t i) const;
  bool forced_time(std::size_t i) const;
  bool whole_below(std::size_t i, double limit) const;
  /// Hour, minute and second in columns of their own, perhaps behind year, month and day.
  void find_parts_of_clock();
  /// One clock for all, or one for each group of channels.
  void settle_times();
  std::vector<std::size_t> with_role(Role wanted) const;
  /// Of several times those that neither rise nor fall throughout are none: "Time base X1" is a part.
  void drop_restless(std::vector<std::size_t>& times);
  /// No header says which column is the time: the ones whose numbers go up from the first row to the last. A count of
  /// rows stands before the time, not behind it.
  std::vector<std::size_t> by_values();
  /// A start and an end, or a duration, that the rows fill in steps of other than a second.
  bool other_step_stated() const;
  bool channels_between(std::size_t from, std::size_t to) const;
  /// Value and time, value and time: each group of channels has its clock behind it, all called the same.
  bool times_behind(const std::vector<std::size_t>& times) const;
  bool alternate(const std::vector<std::size_t>& times) const;
  /// The one that is finest: a time that stands still from row to row is rounded.
  std::size_t best_time(const std::vector<std::size_t>& times) const;
  static double distinct_share(const std::vector<double>& values);
  /// Goes up by one in each of the first rows.
  static bool counts_rows(const ColumnProfile& column);
  /// A nameless count of rows beside a time.
  void drop_row_numbers();
  /// A date, a half of the day and milliseconds belong to a clock beside them; an index is of no use beside a time.
  void drop_companions(std::size_t time);
  void drop_index_and_dates();
  void keep_one_index();
  void settle_forced_times();
  /// Time, channel, value: one column of numbers, and one of names that changes from row to row or starts anew.
  bool is_long() const;
  std::optional<std::size_t> channel_name_column() const;
  void make_long();
  /// Names that no list knows, beside columns that are stated to be temperatures: a column that never moves is none.
  void settle_reserves();
  /// "Z1", "Z3 top", "HZ 4 PV".
  bool called_zone(std::size_t i) const;
  /// Another column is called the same with another number.
  bool in_a_series(std::size_t i) const;
  /// A few whole numbers beside readings with decimals, or under a name such as "Run": they count something.
  bool counts_something(std::size_t i, std::size_t stated) const;
  /// "25.0 ± 0.5" split at blanks: what stands behind the sign.
  void settle_tolerances();
  /// Moves little beside the others.
  bool stands_still(std::size_t i) const;
  void set_aside(std::size_t i, std::string why);
  /// "TC1 min", "TC1 max", "TC1 avg" of each interval: the mean is the channel.
  void settle_statistics();
  /// "U1 max" beside "U1", where the numbers bear it out.
  void settle_statistics_of_channels();
  std::optional<std::size_t> statistic_of(std::size_t i, const std::vector<std::size_t>& channels) const;
  /// "U1 AL" beside "U1": 0 and 1, or a few small whole numbers.
  void settle_flags();
  /// "Battery holder", "Belt clip", "Min chip": set aside by a word, yet it starts, rises and falls as the channels do.
  void take_back_by_curve();
  bool moves_with(std::size_t i, std::size_t channel) const;
  /// One column of degrees that moves little beside thermocouples in volts, where no junction is stated.
  void settle_cold_junction();
  /// Above all channels in nearly every row, below all, or their mean.
  bool sums_up(std::size_t i, const std::vector<std::size_t>& channels) const;
  /// Minima, maxima and the like that a spreadsheet holds to the right of the first rows.
  void settle_tables_beside();
  /// The temperature of the room or of the instrument stays low while the board goes through the oven; zones that are
  /// only called Z1 stand at their temperature from the first row on.
  void settle_ambient();
  void force_channels();
  const Table& table_;
  const TableHeader& header_;
  const Facts& facts_;
  const Layout& layout_;
  const bool interval_given_;
  std::vector<std::string> series_;  ///< names of columns of numbers that speak of nothing else
  std::vector<bool> moves_far_;      ///< of columns of temperatures: as those of a board in an oven do
  std::size_t value_ = 0;
  Columns columns_;
};

}  // namespace ovenwright::log
