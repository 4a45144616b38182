#include "core/log/reading.h"

#include <algorithm>
#include <atomic>
#include <future>

#include "core/files/digest.h"
#include "core/log/grid.h"
#include "core/log/interpret.h"
#include "core/log/log_file.h"
#include "core/log/reversed.h"
#include "core/log/size_check.h"
#include "core/units/memory.h"
#include "core/units/parallel.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

Error named(Error error, const std::string& name) {
  error.where.file = name;
  return error;
}

/// The sheet that was asked for, or the one that looks most like a log; the others in `notes`.
/// @param rivals  takes the note where another that is shown looks nearly as much like one
Result<const Grid*> chosen_sheet(const std::string& name, const std::vector<Grid>& grids, const Options& options,
                                 std::vector<std::string>& notes, std::string& rivals) {
  const std::string wanted = options.layout ? options.layout->sheet.value_or("") : "";
  const Grid* best = nullptr;
  double best_likeness = -1, next_likeness = 0;
  std::string names;
  for (const Grid& grid : grids) {
    names += (names.empty() ? "" : ", ") + (grid.name.empty() ? "a table without a name" : grid.name);
    if (!wanted.empty()) {
      if (grid.name == wanted) return &grid;
      continue;
    }
    // What a workbook hides is an old copy or a calculation, unless nothing else is a log.
    const double likeness = likeness_to_a_log(grid);
    const bool shown_before_hidden = best != nullptr && best->hidden && !grid.hidden && likeness > 0;
    const bool hidden_behind_shown = best != nullptr && grid.hidden && !best->hidden && best_likeness > 0;
    if (shown_before_hidden || (likeness > best_likeness && !hidden_behind_shown)) {
      if (best != nullptr && !best->hidden) next_likeness = std::max(next_likeness, best_likeness);
      best = &grid;
      best_likeness = likeness;
    } else if (!grid.hidden) {
      next_likeness = std::max(next_likeness, likeness);
    }
  }
  if (best == nullptr && !wanted.empty()) {
    return Error{
        ErrorCode::kParse, "found no sheet \"" + wanted + "\", expected one of: " + names, {name, 0, 0}, wanted, names};
  }
  if (best == nullptr)
    return Error{ErrorCode::kParse,
                 "found no table, expected one of times and temperatures",
                 {name, 0, 0},
                 "",
                 "a table of times and temperatures"};
  if (grids.size() > 1) {
    std::string others;
    for (const Grid& grid : grids) {
      if (&grid == best || grid.name.empty()) continue;
      others += (others.empty() ? "" : ", ") + grid.name;
    }
    if (others.empty()) {
      notes.push_back(say(Phrase::kOneOfTables, {std::to_string(grids.size())}));
    } else {
      notes.push_back(best->name.empty() ? say(Phrase::kOneTable, {others})
                                         : say(Phrase::kOneSheet, {best->name, others}));
    }
  }
  if (next_likeness > 0 && 2 * next_likeness >= best_likeness && !best->name.empty()) rivals = notes.back();
  return best;
}

Result<Reading> of_text(const std::string& name, std::string_view bytes, const Options& options) {
  if (bytes.size() > kWorthACheck) {
    if (auto error = too_many_numbers(bytes.substr(0, kCheckedHead), static_cast<double>(bytes.size()), options))
      return named(*error, name);
  }
  const unsigned threads = options.threads > 0 ? options.threads : all_cores();
  const auto decoded = decode(bytes, options.layout ? options.layout->encoding.value_or("") : "", threads);
  if (!decoded) return named(decoded.error(), name);
  const std::string_view text = decoded->unchanged ? bytes.substr(decoded->skip) : std::string_view{decoded->utf8};
  auto reading = interpret_text(name, text, options);
  if (!reading) return reading;
  reading->read_as.encoding = reading->layout.encoding.emplace(decoded->encoding);
  if (!decoded->certain) {
    reading->read_as.assumed.push_back(
        {"encoding", say(Phrase::kEncoding, {decoded->encoding}), decoded->encoding, ""});
  }
  return reading;
}

Result<Reading> of_content(const std::string& name, std::string_view bytes, const Options& options) {
  if (bytes.empty())
    return Error{ErrorCode::kParse, "found an empty file, expected a log", {name, 0, 0}, "an empty file", "a log"};
  std::vector<std::string> notes;
  const auto content = open_container(
      name, bytes, options.most_unpacked_bytes, notes,
      [&](std::string_view head, double whole_bytes) { return too_many_numbers(head, whole_bytes, options); });
  if (!content) return named(content.error(), name);
  std::string part = content->member;
  std::string rivals = content->rivals;
  auto reading = [&]() -> Result<Reading> {
    if (content->kind == "text") {
      const std::string_view text = content->plain ? bytes : std::string_view{content->bytes};
      if (text.empty())
        return Error{ErrorCode::kParse, "found an empty file, expected a log", {name, 0, 0}, "an empty file", "a log"};
      return of_text(name, text, options);
    }
    const auto grid = chosen_sheet(name, content->grids, options, notes, rivals);
    if (!grid) return grid.error();
    if (part.empty()) part = (*grid)->name;
    auto made = interpret_grid(name, **grid, options);
    if (made) {
      made->layout.sheet = (*grid)->name;
      made->read_as.encoding = made->layout.encoding.emplace("UTF-8");
    }
    return made;
  }();
  if (!reading) return reading;
  reading->file.member = std::move(part);
  // Another run may stand there: that is more than a note.
  if (!rivals.empty()) reading->warnings.push_back({rivals, {name, 0, 0}});
  reading->read_as.notes.insert(reading->read_as.notes.begin(), notes.begin(), notes.end());
  if (options.layout) turn_reversed(*reading, *options.layout);
  return reading;
}

Result<Reading> of_bytes(const std::string& name, std::string_view bytes, const Options& options) {
  constexpr std::size_t kWorthAThread = 4U << 20;
  const bool aside = options.digest && bytes.size() >= kWorthAThread && options.threads != 1;
  std::atomic<bool> not_wanted = false;
  // Where the system has no thread to give it is made at the end.
  auto digest = std::async(aside ? std::launch::async | std::launch::deferred : std::launch::deferred,
                           [&, bytes] { return files::sha256_hex(bytes, not_wanted); });
  auto reading = of_content(name, bytes, options);
  if (!reading) {
    not_wanted = true;
    return reading;
  }
  reading->file.file = name;
  reading->file.bytes = bytes.size();
  if (options.digest) reading->file.sha256 = digest.get();
  if (options.progress && !options.progress(1, reading->read_as.rows))
    return Error{ErrorCode::kCancelled, "reading was stopped", {name, 0, 0}, "", ""};
  return reading;
}

}  // namespace

Result<Reading> read_bytes(const std::string& name, std::string_view bytes, const Options& options) {
  return within_memory(name, [&] { return of_bytes(name, bytes, options); });
}

Result<Reading> read(const std::string& path, const Options& options) {
  const auto file = within_memory(path, [&] { return LogBytes::open(path); });
  if (!file) return file.error();
  return read_bytes(path, (*file)->bytes(), options);
}

}  // namespace ovenwright::log
