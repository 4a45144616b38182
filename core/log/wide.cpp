#include "core/log/wide.h"

#include <fmt/format.h>

#include <algorithm>
#include <condition_variable>
#include <cstring>
#include <map>
#include <memory>
#include <mutex>
#include <optional>

#include "core/log/byte_masks.h"
#include "core/log/fast_rows.h"
#include "core/log/row_reader.h"
#include "core/log/size_check.h"
#include "core/run/large_pages.h"
#include "core/units/parallel.h"
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
  RowReader::Account account;
  std::size_t from = 0, to = 0;  ///< of shared text
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

/// Reads a table piece by piece. Threads take pieces of text in turn, at line ends; whoever has read the one that comes
/// next puts its numbers in place, and those of the pieces behind it that others have read meanwhile. So no thread
/// waits for another unless it is far ahead, nothing has to be counted beforehand, and no number is moved twice.
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
    pages_.emplace(reserved);
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
    constexpr std::size_t kPiecesForEach = 4;
    const std::size_t length = text_.size() - std::min(text_.size(), table_.first_row.offset);
    const std::size_t workers = std::clamp<std::size_t>(length / kWorthAThread, 1, threads > 0 ? threads : all_cores());
    for (std::size_t i = 0; i < kPiecesForEach * workers; ++i) free_.push_back(std::make_unique<Piece>(new_piece()));
    on_threads(static_cast<unsigned>(workers), [this](unsigned k) {
      try {
        work(k == 0);
      } catch (...) {  // its piece does not come: nobody waits for it
        const std::scoped_lock lock(mutex_);
        stop();
        throw;
      }
    });
  }

  /// A worker's loop. The caller's own thread reports.
  void work(bool reports) {
    std::unique_lock lock(mutex_);
    while (true) {
      freed_.wait(lock, [this] { return stopped_ || !free_.empty(); });
      if (stopped_ || quote_met_ || cursor_ >= text_.size()) return;
      auto piece = std::move(free_.back());  // the one used last, which the processor still holds
      free_.pop_back();
      const std::size_t number = taken_++;
      take_text(*piece);
      lock.unlock();
      pages_->before_row(static_cast<std::size_t>(rows_per_byte() * static_cast<double>(piece->to)));
      read_text(*piece);
      lock.lock();
      done_.emplace(number, std::move(piece));
      if (!placing_) place(lock);
      if (!reports || stopped_ || !progress_) continue;
      const std::size_t offset = placed_to_, rows = result_.rows;
      lock.unlock();
      const bool goes_on = report(offset, rows);
      lock.lock();
      if (!goes_on) stop();
    }
  }

  /// Puts the pieces that come next in place, as far as they are read. Only one thread at a time.
  void place(std::unique_lock<std::mutex>& lock) {
    placing_ = true;
    while (!stopped_ && !done_.empty() && done_.begin()->first == next_) {
      auto piece = std::move(done_.begin()->second);
      done_.erase(done_.begin());
      ++next_;
      if (piece->quoted && !quote_met_) {
        quote_met_ = true;
        cursor_ = piece->from;
      }
      if (!quote_met_ && count_text(*piece)) {
        placed_to_ = piece->to;
        lock.unlock();
        put_in_place(*piece);
        lock.lock();
      }
      free_.push_back(std::move(piece));
      freed_.notify_one();
    }
    placing_ = false;
  }

  /// The same as count(), with lines as those of the file.
  bool count_text(Piece& piece) {
    piece.account.shift(first_line_ - 1);
    if (plan_.keep_lines)
      for (std::size_t i = 0; i < piece.rows; ++i) piece.values.back()[i] += static_cast<double>(first_line_ - 1);
    result_.last_piece = {piece.from, first_line_};
    first_line_ += piece.lines;
    return count(piece);
  }

  void stop() {
    stopped_ = true;
    freed_.notify_all();
  }

  /// The next piece of text, and the cursor behind it.
  void take_text(Piece& piece) {
    piece.from = cursor_;
    std::size_t to = std::min(text_.size(), cursor_ + kPieceBytes);
    if (to < text_.size()) {
      const auto line_end = text_.find('\n', to);
      to = line_end == std::string_view::npos ? text_.size() : line_end + 1;
    }
    piece.to = cursor_ = to;
  }

  double rows_per_byte() const { return table_.rows / static_cast<double>(std::max<std::size_t>(1, text_.size())); }

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
  void read_text(Piece& piece) const {
    const std::size_t from = piece.from, to = piece.to;
    RowReader reader(plan_, piece.times, piece.values);
    piece.rows = 0;
    piece.quoted = false;
    piece.make_room(static_cast<std::size_t>(1.1 * rows_per_byte() * static_cast<double>(to - from)) + 64);
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
    piece.account = std::move(reader.account);
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
      piece.account = std::move(reader.account);
      if (count(piece)) put_in_place(piece);
      if (!stopped_ && progress_ && !report(rows_.position().offset, result_.rows)) stop();
    }
  }

  // ---- both ----

  /// Adds a piece to what was read; false where that is too much.
  bool count(Piece& piece) {
    const std::size_t columns = std::max<std::size_t>(1, plan_.numbers.size());
    for (const std::size_t at : piece.account.breaks) breaks_.push_back(result_.rows + at);
    accounts_.push_back(std::move(piece.account));
    result_.rows += piece.rows;
    too_many_ = result_.rows * columns > most_numbers_;
    if (too_many_) stop();
    return !too_many_;
  }

  /// The numbers of a piece behind those of the pieces before it.
  void put_in_place(const Piece& piece) {
    // More rows than were reserved for: the arrays move.
    const auto& first = result_.times.front();
    if (first.size() + piece.rows > first.capacity()) pages_->stop();
    const auto put = [&piece](std::vector<double>& target, const std::vector<double>& from) {
      target.insert(target.end(), from.begin(), from.begin() + static_cast<std::ptrdiff_t>(piece.rows));
    };
    for (std::size_t c = 0; c < piece.times.size(); ++c) put(result_.times[c], piece.times[c]);
    for (std::size_t i = 0; i < piece.values.size(); ++i) put(result_.values[i], piece.values[i]);
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

  /// False where reading is to stop.
  bool report(std::size_t offset, std::size_t rows) {
    const double all = text_.empty() ? std::max(1.0, table_.rows) : static_cast<double>(text_.size());
    cancelled_ = !progress_(std::min(1.0, static_cast<double>(offset) / all), rows);
    return !cancelled_;
  }

  RowSource& rows_;
  const Dialect* dialect_;
  const Table& table_;
  const WidePlan& plan_;
  const std::string& file_;
  const std::size_t most_numbers_;
  const Progress& progress_;
  const std::string_view text_;

  std::mutex mutex_;  // guards what follows while threads share the text, but for the arrays: these are the placer's
  std::condition_variable freed_;
  std::size_t cursor_;
  std::vector<std::unique_ptr<Piece>> free_;
  std::map<std::size_t, std::unique_ptr<Piece>> done_;  ///< read, but not in place; by their number
  std::size_t taken_ = 0, next_ = 0, placed_to_ = 0;
  bool placing_ = false;
  bool quote_met_ = false;  ///< the text from the cursor on is read row by row
  bool stopped_ = false, cancelled_ = false, too_many_ = false;
  std::size_t first_line_;  ///< of the piece that comes next
  WideResult result_;
  std::optional<run::PagesAhead> pages_;
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
