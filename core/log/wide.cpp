#include "core/log/wide.h"

#include <fmt/format.h>

#include <algorithm>
#include <condition_variable>
#include <cstring>
#include <mutex>
#include <thread>

#include "core/log/byte_masks.h"
#include "core/log/fast_rows.h"
#include "core/log/row_reader.h"
#include "core/log/size_check.h"
#include "core/run/large_pages.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kPieceBytes = 1U << 18;
constexpr std::size_t kPieceRows = 1U << 14;     // where rows are not counted beforehand
constexpr std::size_t kWorthAThread = 3U << 20;  // bytes of text for each

bool plain_clock(const TimePlan& clock) {
  return clock.column >= 0 && clock.kind != TimeKind::kClock && clock.kind != TimeKind::kMoment;
}

/// Numbers of a stretch of the table before they are put behind those of the stretches before it.
struct Piece {
  std::vector<std::vector<double>> times, values;
  std::size_t rows = 0;
  std::size_t lines = 0;  ///< of shared text
  bool quoted = false;    ///< a quote stands in it: of no use, a line end may be part of a quoted cell
  std::size_t room() const { return times.front().size(); }
  void make_room(std::size_t wanted) {
    for (auto* arrays : {&times, &values}) {
      for (auto& array : *arrays) array.resize(std::max(array.size(), wanted));
    }
  }
};

/// Reads a table piece by piece. Threads take pieces of text in turn, at line ends, and put their numbers in place in
/// the order of the file, so that nothing has to be counted beforehand and no number is moved twice.
class WideReader {
 public:
  WideReader(RowSource& rows, const Dialect* dialect, const Table& table, const WidePlan& plan, const std::string& file,
             std::size_t most_numbers, const Progress& progress)
      : rows_(rows),
        dialect_(dialect),
        table_(table),
        plan_(plan),
        file_(file),
        most_numbers_(most_numbers),
        progress_(progress),
        text_(rows.text()),
        cursor_(table.first_row.offset),
        first_line_(table.first_row.line) {}

  Result<WideResult> run(unsigned threads) {
    result_.times.resize(plan_.clocks.size());
    result_.values.resize(arrays_of_values());
    const double kept = static_cast<double>(std::max<std::size_t>(1, plan_.numbers.size()));
    // An estimate that is off by a little must not refuse a log; what is really too much is stopped when it gets there.
    constexpr double kEstimateMargin = 1.1;
    if (table_.rows * kept > static_cast<double>(most_numbers_) * kEstimateMargin) return too_large(table_.rows);
    reserve();
    if (!text_.empty()) share(threads);
    if (!stopped_) read_alone();
    if (cancelled_) return Error{ErrorCode::kCancelled, "reading was stopped", {file_, 0, 0}, "", ""};
    if (too_many_) return too_large(static_cast<double>(result_.rows));
    leave_out_tail();
    bool drop_last = false;
    if (auto error = settle(accounts_, result_.rows, plan_, file_, result_, drop_last)) return *error;
    if (drop_last) {
      for (auto* arrays : {&result_.times, &result_.values}) {
        for (auto& array : *arrays) array.pop_back();
      }
      --result_.rows;
    }
    return std::move(result_);
  }

 private:
  Error too_large(double rows) const {
    Error error = too_many_numbers_error(rows, static_cast<double>(plan_.numbers.size()), most_numbers_);
    error.where.file = file_;
    return error;
  }

  void reserve() {
    constexpr double kSlack = 1.01;
    const auto rows = static_cast<std::size_t>(table_.rows * kSlack) + 64;
    std::vector<const std::vector<double>*> reserved;
    for (auto* arrays : {&result_.times, &result_.values}) {
      for (auto& array : *arrays) {
        array.reserve(rows);
        reserved.push_back(&array);
      }
    }
    run::ask_for_large_pages(reserved);
  }

  Piece new_piece() const {
    Piece piece;
    piece.times.resize(plan_.clocks.size());
    piece.values.resize(arrays_of_values());
    return piece;
  }

  std::size_t arrays_of_values() const { return plan_.numbers.size() + (plan_.keep_lines ? 1 : 0); }

  // ---- text up to the first piece with a quote, by all threads ----

  void share(unsigned threads) {
    const std::size_t length = text_.size() - std::min(text_.size(), table_.first_row.offset);
    const std::size_t most = threads > 0 ? threads : std::max(1U, std::thread::hardware_concurrency());
    const std::size_t workers = std::clamp<std::size_t>(length / kWorthAThread, 1, most);
    std::vector<std::jthread> others;
    for (std::size_t i = 1; i < workers; ++i) others.emplace_back([this] { work(false); });
    work(true);
  }

  /// A worker's loop. The caller's own thread reports.
  void work(bool reports) {
    Piece piece = new_piece();
    while (true) {
      std::unique_lock lock(mutex_);
      const std::size_t from = cursor_;
      if (stopped_ || !take_piece()) return;
      const std::size_t to = cursor_, ticket = tickets_++;
      lock.unlock();
      RowReader reader(plan_, piece.times, piece.values);
      read_text(piece, reader, from, to);
      lock.lock();
      turn_.wait(lock, [&] { return appended_ == ticket || stopped_; });
      if (stopped_) return;
      if (piece.quoted && !quote_met_) {
        quote_met_ = true;
        cursor_ = from;
      }
      if (!quote_met_) {
        reader.account.shift(first_line_ - 1);
        if (plan_.keep_lines)
          for (std::size_t i = 0; i < piece.rows; ++i) piece.values.back()[i] += static_cast<double>(first_line_ - 1);
        result_.last_piece = {from, first_line_};
        append(piece, std::move(reader.account));
      }
      ++appended_;
      if (reports && !quote_met_) report(to);
      turn_.notify_all();
    }
  }

  /// Moves the cursor behind the next piece; false where none is left, or a quote was met.
  bool take_piece() {
    if (cursor_ >= text_.size() || quote_met_) return false;
    std::size_t to = std::min(text_.size(), cursor_ + kPieceBytes);
    if (to < text_.size()) {
      const auto line_end = text_.find('\n', to);
      to = line_end == std::string_view::npos ? text_.size() : line_end + 1;
    }
    cursor_ = to;
    return true;
  }

  std::vector<double*> fast_targets(Piece& piece) const {
    if (dialect_ == nullptr || dialect_->split != Dialect::Split::kDelimiter || dialect_->delimiter == plan_.decimal)
      return {};
    if (plan_.keep_lines) return {};
    if (plan_.columns == 0 || !std::all_of(plan_.clocks.begin(), plan_.clocks.end(), plain_clock)) return {};
    std::vector<double*> targets(plan_.columns, nullptr);
    for (std::size_t c = 0; c < plan_.clocks.size(); ++c) {
      targets[static_cast<std::size_t>(plan_.clocks[c].column)] = piece.times[c].data();
    }
    for (std::size_t i = 0; i < plan_.numbers.size(); ++i) {
      targets[static_cast<std::size_t>(plan_.numbers[i].column)] = piece.values[i].data();
    }
    return targets;
  }

  /// Lines count from 1 here: those of the pieces before are not known yet.
  void read_text(Piece& piece, RowReader& reader, std::size_t from, std::size_t to) const {
    piece.rows = 0;
    piece.quoted = false;
    const double rows_per_byte = table_.rows / static_cast<double>(std::max<std::size_t>(1, text_.size()));
    piece.make_room(static_cast<std::size_t>(1.1 * rows_per_byte * static_cast<double>(to - from)) + 64);
    FastRows fast(fast_targets(piece), dialect_->delimiter, plan_.decimal);
    TextRows rows(text_, *dialect_);
    Row row;
    std::size_t line = 1;
    const char* p = text_.data() + from;
    const char* const end = text_.data() + to;
    while (p < end) {
      if (piece.rows == piece.room()) {
        piece.make_room(2 * piece.room());
        fast = FastRows(fast_targets(piece), dialect_->delimiter, plan_.decimal);
      }
      if (fast.usable()) {
        const std::size_t read =
            fast.read(p, text_.data(), end, text_.data() + text_.size(), piece.rows, piece.room() - piece.rows);
        if (read > 0) reader.note_rows(line, line + read - 1, piece.rows);
        piece.rows += read;
        line += read;
        if (p >= end) break;
        if (piece.rows == piece.room()) continue;
      }
      rows.seek({static_cast<std::size_t>(p - text_.data()), line});
      if (!rows.next(row)) break;
      if (row.text.find('"') != std::string_view::npos) {
        piece.quoted = true;
        return;
      }
      if (reader.take(row, piece.rows)) ++piece.rows;
      line += row.lines;
      p = text_.data() + rows.position().offset;
    }
    piece.lines = line - 1;
  }

  // ---- a grid, or the text from the first quote on ----

  void read_alone() {
    if (!text_.empty() && cursor_ >= text_.size()) return;
    const std::size_t most = std::min<std::size_t>(kPieceRows, static_cast<std::size_t>(table_.rows) + 64);
    Piece piece = new_piece();
    piece.make_room(most);
    Row row;
    rows_.seek(text_.empty() ? table_.first_row : Position{cursor_, first_line_});
    bool more = true;
    while (more && !stopped_) {
      RowReader reader(plan_, piece.times, piece.values);
      piece.rows = 0;
      for (std::size_t i = 0; i < most && more; ++i) {
        more = rows_.next(row);
        if (more && reader.take(row, piece.rows)) ++piece.rows;
      }
      append(piece, std::move(reader.account));
      report(rows_.position().offset);
    }
  }

  // ---- both ----

  void append(const Piece& piece, RowReader::Account account) {
    const std::size_t kept = std::max<std::size_t>(1, plan_.numbers.size());
    first_line_ += piece.lines;
    for (const std::size_t at : account.breaks) breaks_.push_back(result_.rows + at);
    accounts_.push_back(std::move(account));
    if ((result_.rows + piece.rows) * kept > most_numbers_) {
      result_.rows += piece.rows;
      too_many_ = stopped_ = true;
      return;
    }
    const auto put = [&piece](std::vector<double>& target, const std::vector<double>& from) {
      target.insert(target.end(), from.begin(), from.begin() + static_cast<std::ptrdiff_t>(piece.rows));
    };
    for (std::size_t c = 0; c < piece.times.size(); ++c) put(result_.times[c], piece.times[c]);
    for (std::size_t i = 0; i < piece.values.size(); ++i) put(result_.values[i], piece.values[i]);
    result_.rows += piece.rows;
  }

  /// A few rows behind a gap whose times go back are another table: levels, zones, results.
  void leave_out_tail() {
    constexpr std::size_t kMostRows = 12;
    const auto& times = result_.times.front();
    std::size_t rows = result_.rows;
    for (std::size_t i = breaks_.size(); i-- > 0;) {
      const std::size_t at = breaks_[i];
      if (at == 0 || at >= rows || rows - at > kMostRows || 10 * (rows - at) > at || !(times[at] < times[at - 1]))
        break;
      rows = at;
    }
    if (rows == result_.rows) return;
    result_.skipped += result_.rows - rows;
    result_.notes.push_back(say(Phrase::kRowsBehind, {std::to_string(result_.rows - rows)}));
    for (auto* arrays : {&result_.times, &result_.values}) {
      for (auto& array : *arrays) array.resize(rows);
    }
    result_.rows = rows;
  }

  void report(std::size_t offset) {
    if (!progress_ || stopped_) return;
    const double all = text_.empty() ? std::max(1.0, table_.rows) : static_cast<double>(text_.size());
    if (!progress_(std::min(1.0, static_cast<double>(offset) / all), result_.rows)) cancelled_ = stopped_ = true;
  }

  RowSource& rows_;
  const Dialect* dialect_;
  const Table& table_;
  const WidePlan& plan_;
  const std::string& file_;
  const std::size_t most_numbers_;
  const Progress& progress_;
  const std::string_view text_;

  std::mutex mutex_;  // guards all below while threads share the text
  std::condition_variable turn_;
  std::size_t cursor_;
  std::size_t first_line_;  ///< of the piece that is appended next
  std::size_t tickets_ = 0, appended_ = 0;
  bool quote_met_ = false;  ///< the text from the cursor on is read row by row
  bool stopped_ = false, cancelled_ = false, too_many_ = false;
  WideResult result_;
  std::vector<RowReader::Account> accounts_;
  std::vector<std::size_t> breaks_;  ///< rows that a blank or other line stands before
};

}  // namespace

std::size_t count_line_ends(std::string_view text) {
  std::size_t ends = 0, i = 0;
#if defined(__SSE2__)
  // Sixteen counters of a byte each, added up before one can overflow.
  const __m128i feed = _mm_set1_epi8('\n'), carriage = _mm_set1_epi8('\r'), zero = _mm_setzero_si128();
  while (i + 16 <= text.size()) {
    __m128i counters = zero;
    for (int k = 0; k < 255 && i + 16 <= text.size(); ++k, i += 16) {
      const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(text.data() + i));
      counters = _mm_sub_epi8(counters, _mm_or_si128(_mm_cmpeq_epi8(bytes, feed), _mm_cmpeq_epi8(bytes, carriage)));
    }
    const __m128i sums = _mm_sad_epu8(counters, zero);
    ends += static_cast<std::size_t>(_mm_cvtsi128_si32(sums)) + static_cast<std::size_t>(_mm_extract_epi16(sums, 4));
  }
#endif
  for (; i < text.size(); ++i) ends += text[i] == '\n' || text[i] == '\r' ? 1 : 0;
  return ends;
}

Result<WideResult> read_wide(RowSource& rows, const Dialect* dialect, const Table& table, const WidePlan& plan,
                             const std::string& file, unsigned threads, std::size_t most_numbers,
                             const Progress& progress) {
  return WideReader(rows, dialect, table, plan, file, most_numbers, progress).run(threads);
}

}  // namespace ovenwright::log
