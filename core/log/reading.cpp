#include "core/log/reading.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <charconv>
#include <cmath>
#include <future>

#include "core/files/digest.h"
#include "core/log/grid.h"
#include "core/log/interpret.h"
#include "core/log/log_file.h"
#include "core/log/place_in_file.h"
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

/// One sheet of a workbook, or one table of a page, out of all.
struct ChosenSheet {
  std::size_t index = 0;
  std::vector<ListedTable> tables;  ///< those that could be logs
  std::string rivals;               ///< the note, where another that is shown looks nearly as much like one
};

Error no_such_sheet(const std::string& name, const std::string& wanted, const std::string& names) {
  return {
      ErrorCode::kParse, "found no sheet \"" + wanted + "\", expected one of: " + names, {name, 0, 0}, wanted, names};
}

/// What the others are, for the notes.
std::string other_sheets_note(const std::vector<Grid>& grids, const Grid& best) {
  std::string others;
  for (const Grid& grid : grids) {
    if (&grid == &best || grid.name.empty()) continue;
    others += (others.empty() ? "" : ", ") + grid.name;
  }
  if (others.empty()) return say(Phrase::kOneOfTables, {std::to_string(grids.size())});
  return best.name.empty() ? say(Phrase::kOneTable, {others}) : say(Phrase::kOneSheet, {best.name, others});
}

/// The sheet that was asked for, or the one that looks most like a log; the others in `notes`.
Result<ChosenSheet> chosen_sheet(const std::string& name, const std::vector<Grid>& grids, const Options& options,
                                 std::vector<std::string>& notes) {
  if (grids.empty())
    return Error{ErrorCode::kParse,
                 "found no table, expected one of times and temperatures",
                 {name, 0, 0},
                 "",
                 "a table of times and temperatures"};
  constexpr std::size_t kFewestRows = 5;
  const std::string wanted = options.layout ? options.layout->sheet.value_or("") : "";
  std::optional<std::size_t> asked, best;
  double best_likeness = -1, next_likeness = 0;
  std::string names;
  ChosenSheet chosen;
  for (std::size_t i = 0; i < grids.size(); ++i) {
    const Grid& grid = grids[i];
    const std::string key = sheet_key(grids, i);
    names += (names.empty() ? "" : ", ") + (key.empty() ? "a table without a name" : key);
    if (!asked && !wanted.empty() && key == wanted) asked = i;
    // What a workbook hides is an old copy or a calculation, unless nothing else is a log.
    const auto [likeness, rows] = likeness_to_a_log(grid);
    if ((likeness > 0 && rows >= kFewestRows) || asked == i) chosen.tables.push_back({"", key, 0, rows, false});
    const bool best_hidden = best && grids[*best].hidden;
    const bool shown_before_hidden = best_hidden && !grid.hidden && likeness > 0;
    const bool hidden_behind_shown = best && grid.hidden && !best_hidden && best_likeness > 0;
    if (shown_before_hidden || (likeness > best_likeness && !hidden_behind_shown)) {
      if (best && !best_hidden) next_likeness = std::max(next_likeness, best_likeness);
      best = i;
      best_likeness = likeness;
    } else if (!grid.hidden) {
      next_likeness = std::max(next_likeness, likeness);
    }
  }
  if (!wanted.empty() && !asked) return no_such_sheet(name, wanted, names);
  chosen.index = asked.value_or(*best);
  const std::string read = sheet_key(grids, chosen.index);
  for (auto& table : chosen.tables) table.read = table.sheet == read;
  if (asked || grids.size() == 1) return chosen;
  notes.push_back(other_sheets_note(grids, grids[chosen.index]));
  if (next_likeness > 0 && 2 * next_likeness >= best_likeness) chosen.rivals = notes.back();
  return chosen;
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

/// All tables of the file: the files of an archive, in place of the one that was read its sheets, in place of the
/// sheet that was read the tables that stand in it under each other.
std::vector<ListedTable> all_tables(const Content& content, std::vector<ListedTable> sheets,
                                    const std::vector<ListedTable>& inner) {
  if (sheets.empty()) sheets.push_back({"", "", 0, 0, true});
  const auto read = std::ranges::find(sheets, true, &ListedTable::read);
  if (!inner.empty() && read != sheets.end()) {
    const std::string sheet = read->sheet;
    const auto place = sheets.insert(sheets.erase(read), inner.begin(), inner.end());
    std::for_each(place, place + static_cast<std::ptrdiff_t>(inner.size()), [&](auto& table) { table.sheet = sheet; });
  }
  for (auto& table : sheets) table.member = content.member;
  std::vector<ListedTable> all;
  for (const auto& member : content.members) {
    if (member == content.member) {
      all.insert(all.end(), sheets.begin(), sheets.end());
    } else {
      all.push_back({member, "", 0, 0, false});
    }
  }
  return content.members.empty() ? sheets : all;
}

bool no_readings(const Reading& reading) {
  return std::ranges::all_of(reading.channels, [](const run::RawChannel& channel) {
    return std::ranges::none_of(channel.temperature_C, [](double t) { return std::isfinite(t); });
  });
}

Error no_results(const std::string& name, const Grid& grid) {
  const std::string found = fmt::format("{} formulas without a stored result", grid.formulas_without_result);
  const std::string expected = "readings, which a spreadsheet program stores when it saves the workbook";
  return {ErrorCode::kParse, fmt::format("found {}, expected {}", found, expected), {name, 0, 0}, found, expected};
}

/// Reads one table of the file. `tables` takes all that there are, also where that one cannot be read.
Result<Reading> of_content(const std::string& name, std::string_view bytes, const Options& options,
                           std::vector<ListedTable>& tables) {
  if (bytes.empty())
    return Error{ErrorCode::kParse, "found an empty file, expected a log", {name, 0, 0}, "an empty file", "a log"};
  std::vector<std::string> notes;
  const auto content = open_container(
      name, bytes, options.most_unpacked_bytes, notes,
      [&](std::string_view head, double whole_bytes) { return too_many_numbers(head, whole_bytes, options); },
      options.layout ? options.layout->member.value_or("") : "");
  if (!content) return named(content.error(), name);
  PlaceInFile part{content->member, "", content->kind};
  std::string rivals = content->rivals;
  std::vector<ListedTable> sheets;
  auto reading = [&]() -> Result<Reading> {
    if (content->kind == "text") {
      const std::string_view text = content->plain ? bytes : std::string_view{content->bytes};
      if (text.empty())
        return Error{ErrorCode::kParse, "found an empty file, expected a log", {name, 0, 0}, "an empty file", "a log"};
      return of_text(name, text, options);
    }
    const auto chosen = chosen_sheet(name, content->grids, options, notes);
    if (!chosen) return chosen.error();
    if (!chosen->rivals.empty()) rivals = chosen->rivals;
    sheets = chosen->tables;
    const Grid& grid = content->grids[chosen->index];
    part.sheet = sheet_key(content->grids, chosen->index);
    auto made = interpret_grid(name, grid, options);
    if (made && grid.formulas_without_result > 0 && no_readings(*made)) return no_results(name, grid);
    if (made) {
      made->layout.sheet = part.sheet;
      made->read_as.encoding = made->layout.encoding.emplace("UTF-8");
    }
    return made;
  }();
  tables = all_tables(*content, std::move(sheets), reading ? reading->read_as.tables : std::vector<ListedTable>{});
  if (!reading) return placed_in_file(reading.error(), part);
  if (!content->member.empty()) reading->layout.member = content->member;
  reading->file.member = content->member.empty() ? std::move(part.sheet) : content->member;
  reading->read_as.tables = tables.size() > 1 ? tables : std::vector<ListedTable>{};
  // Another run may stand there: that is more than a note.
  if (!rivals.empty()) reading->warnings.push_back({rivals, {name, 0, 0}});
  reading->read_as.notes.insert(reading->read_as.notes.begin(), notes.begin(), notes.end());
  if (options.layout) turn_reversed(*reading, *options.layout);
  return reading;
}

/// The one table that goes by this name, or has this number.
Result<ListedTable> wanted_table(const std::string& name, const std::vector<ListedTable>& tables,
                                 const std::string& wanted) {
  std::string names;
  std::size_t number = 0;
  const ListedTable* in_part = nullptr;
  std::size_t in_parts = 0;
  for (const auto& table : tables) {
    const std::string whole = table.name();
    if (whole == wanted && !whole.empty()) return table;
    const bool member = table.member == wanted || table.member.ends_with("/" + wanted);
    if (!wanted.empty() && (member || table.sheet == wanted)) {
      in_part = &table;
      ++in_parts;
    }
    const std::string digits = std::to_string(++number);
    names += fmt::format("{}{}{}", names.empty() ? "" : ", ", digits, whole.empty() ? "" : " (" + whole + ")");
  }
  if (in_parts == 1) return *in_part;
  // Of the workbooks that were not read the sheets are not listed.
  for (const auto& table : tables) {
    if (!table.member.empty() && wanted.starts_with(table.member + "/"))
      return ListedTable{table.member, wanted.substr(table.member.size() + 1), 0, 0, false};
  }
  number = 0;
  std::from_chars(wanted.data(), wanted.data() + wanted.size(), number);
  if (std::to_string(number) == wanted && number >= 1 && number <= tables.size()) return tables[number - 1];
  return Error{ErrorCode::kBadArgument,
               fmt::format("found no table \"{}\", expected one of: {}", wanted, names),
               {name, 0, 0},
               wanted,
               names};
}

/// The table that Options::table asks for: found among those that are there when nothing is asked for.
Result<Reading> of_table(const std::string& name, std::string_view bytes, const Options& options) {
  std::vector<ListedTable> tables;
  auto reading = of_content(name, bytes, options, tables);
  if (!options.table || (!reading && tables.empty())) return reading;
  const auto wanted = wanted_table(name, tables, *options.table);
  if (!wanted) return wanted.error();
  if (wanted->read && reading) return reading;
  Options own = options;
  if (!own.layout) own.layout.emplace();
  const auto given = [](const std::string& text) { return text.empty() ? std::nullopt : std::optional(text); };
  own.layout->member = given(wanted->member);
  own.layout->sheet = given(wanted->sheet);
  if (wanted->header_line > 0) own.layout->header_line = wanted->header_line;
  std::vector<ListedTable> here;
  reading = of_content(name, bytes, own, here);
  if (!reading) return reading;
  // Numbers stay those by which a table is asked for; what was seen only now stands behind them.
  for (auto& table : tables) {
    const auto same = std::ranges::find(here, table.name(), &ListedTable::name);
    table.read = table.name() == wanted->name();
    if (same != here.end()) here.erase(same);
  }
  std::erase_if(here, [&](const ListedTable& table) { return table.member != wanted->member; });
  tables.insert(tables.end(), here.begin(), here.end());
  reading->read_as.tables = tables.size() > 1 ? std::move(tables) : std::vector<ListedTable>{};
  return reading;
}

Result<Reading> of_bytes(const std::string& name, std::string_view bytes, const Options& options) {
  constexpr std::size_t kWorthAThread = 4U << 20;
  const bool aside = options.digest && bytes.size() >= kWorthAThread && options.threads != 1;
  std::atomic<bool> not_wanted = false;
  // Where the system has no thread to give it is made at the end.
  auto digest = std::async(aside ? std::launch::async | std::launch::deferred : std::launch::deferred,
                           [&, bytes] { return files::sha256_hex(bytes, not_wanted); });
  auto reading = of_table(name, bytes, options);
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

std::string ListedTable::name() const {
  std::string text = member;
  const auto add = [&text](const std::string& part) { text += (text.empty() || part.empty() ? "" : "/") + part; };
  add(sheet);
  add(header_line > 0 ? "line " + std::to_string(header_line) : "");
  return text;
}

Result<Reading> read_bytes(const std::string& name, std::string_view bytes, const Options& options) {
  return within_memory(name, [&] { return of_bytes(name, bytes, options); });
}

std::vector<ListedTable> tables_of(const std::string& name, std::string_view bytes, const Options& options) {
  std::vector<ListedTable> tables;
  // What was found before an error counts all the same.
  static_cast<void>(within_memory(name, [&] { return of_content(name, bytes, options, tables); }));
  return tables.size() > 1 ? std::move(tables) : std::vector<ListedTable>{};
}

Result<Reading> read(const std::string& path, const Options& options) {
  const auto file = within_memory(path, [&] { return LogBytes::open(path); });
  if (!file) return file.error();
  return read_bytes(path, (*file)->bytes(), options);
}

}  // namespace ovenwright::log
