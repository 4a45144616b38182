#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <optional>

#include "core/log/grid.h"
#include "core/log/gzip.h"
#include "core/log/html_tables.h"
#include "core/log/interpret.h"
#include "core/log/json_tables.h"
#include "core/log/mime_page.h"
#include "core/log/place_in_file.h"
#include "core/log/size_check.h"
#include "core/log/unpack_budget.h"
#include "core/log/workbook.h"
#include "core/log/xml_records.h"
#include "core/log/zip_archive.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

constexpr int kDeepest = 3;  ///< a log in a gz in a zip in a zip is opened; deeper nests are no logs

/// What may still be spent on looking into members to choose among them, all archives of a file together.
struct Looks {
  UnpackBudget budget;
  std::ptrdiff_t members = 20;  ///< that are opened
};

struct Opening {
  UnpackBudget& budget;
  std::vector<std::string>& notes;
  HeadCheck check;
  std::string_view member;  ///< the path that is asked for from here on; empty: the one that looks most like a log
  Looks* looks = nullptr;   ///< none while a member is only looked into: there nothing more is
};

Result<Content> open(std::string_view bytes, Opening& opening, int depth);

/// What came out of an archive: its bytes move into the content where they are the text themselves.
Result<Content> open_unpacked(std::string bytes, Opening& opening, int depth) {
  auto content = open(bytes, opening, depth);
  if (content && content->plain) {
    content->plain = false;
    content->bytes = std::move(bytes);
  }
  return content;
}

constexpr int kContainer = 20;  ///< the likeness of what has to be opened to be known

/// The lines with two numbers or more; nothing for what is no text.
std::optional<int> rows_of_numbers(std::string_view head) {
  const auto decoded = decode(head);
  if (!decoded) return std::nullopt;
  const std::string_view text = decoded->unchanged ? head.substr(decoded->skip) : std::string_view{decoded->utf8};
  int rows = 0, numbers = 0;
  bool in_token = false;
  for (const char c : text) {
    if (c == '\n' || c == '\r') {
      rows += numbers >= 2;
      numbers = 0;
      in_token = false;
    } else if (c == ',' || c == ';' || c == '\t' || c == '|' || c == ' ' || c == '"' || c == '+' || c == '-') {
      in_token = false;
    } else {
      numbers += !in_token && c >= '0' && c <= '9';
      in_token = true;
    }
  }
  return rows;
}

/// How much the head of a member looks like a log: the lines with two numbers or more, or a middling number for what
/// has to be opened first; nothing for what is no text.
std::optional<int> likeness(std::string_view head) {
  if (is_zip(head) || is_gzip(head) || is_html(head) || is_flat_ods(head) || is_xml_spreadsheet(head) ||
      is_json(head) || is_xml(head) || is_mime_page(head))
    return kContainer;
  return rows_of_numbers(head);
}

/// The rows of the best table of a member that has to be opened, as many as the head of a text shows at the most;
/// nothing for one that cannot be opened. What is large is not opened to be looked at.
std::optional<int> rows_within(const ZipArchive& archive, const ZipArchive::Member& member, Looks& looks, int depth) {
  constexpr std::uint64_t kMostBytes = std::uint64_t{16} << 20;
  constexpr std::size_t kMostRows = 4000;
  if (member.stated_size > kMostBytes) return kContainer;
  std::vector<std::string> notes;
  Opening aside{looks.budget, notes, {}, {}};
  const auto bytes = archive.read_text(member, aside.budget);
  if (!bytes) return kContainer;  // its own error, if it is the one that is chosen
  const auto content = open(*bytes, aside, depth + 1);
  if (!content && looks.budget.refused()) return kContainer;  // not known, then
  if (!content) return std::nullopt;
  if (content->kind == "text") return rows_of_numbers(content->plain ? std::string_view{*bytes} : content->bytes);
  std::size_t rows = 0;
  for (const Grid& grid : content->grids) {
    const auto alike = likeness_to_a_log(grid);
    if (alike.cells > 0) rows = std::max(rows, alike.rows);
  }
  return static_cast<int>(std::min(rows, kMostRows));
}

/// Names that archivers and file managers add of themselves.
bool is_debris(std::string_view name) {
  const auto slash = name.rfind('/');
  const auto base = slash == std::string_view::npos ? name : name.substr(slash + 1);
  return name.starts_with("__MACOSX/") || base.starts_with('.') || base == "Thumbs.db" || base == "desktop.ini";
}

Error no_log(std::string_view found) {
  return {ErrorCode::kParse,
          fmt::format("found {}, expected a zip archive with a log in it", found),
          {},
          std::string{found},
          "a zip archive with a log in it"};
}

/// The files of an archive, the first ten of many, without `but`.
std::string listed_members(const ZipArchive& archive, const ZipArchive::Member* but) {
  constexpr std::size_t kMostNamed = 10;
  std::vector<std::string> names;
  for (const auto& member : archive.members()) {
    if (&member == but || member.folder() || is_debris(member.name)) continue;
    if (names.size() == kMostNamed) {
      names.push_back("and more");
      break;
    }
    names.push_back(member.name);
  }
  return fmt::format("{}", fmt::join(names, ", "));
}

std::string others_note(const ZipArchive& archive, const ZipArchive::Member& chosen) {
  const std::string others = listed_members(archive, &chosen);
  return others.empty() ? others : say(Phrase::kArchive, {chosen.name, others});
}

/// What stands in an archive without a log.
std::string what_is_in(const ZipArchive& archive) {
  const std::string names = listed_members(archive, nullptr);
  return names.empty() ? "an empty zip archive" : "a zip archive of other files (" + names + ")";
}

/// An error about a member says which.
Error in_member(const Error& error, const ZipArchive::Member& member) {
  return placed_in_file(error, {member.name, {}, {}});
}

/// Of a path such as "inner.zip/run7.csv" the member that it begins with, and the rest of it.
std::optional<std::string_view> rest_of_path(std::string_view path, std::string_view member) {
  if (!path.starts_with(member)) return std::nullopt;
  path.remove_prefix(member.size());
  if (path.empty()) return path;
  return path.front() == '/' ? std::optional(path.substr(1)) : std::nullopt;
}

Error no_such_member(std::string_view wanted, const std::vector<std::string>& members) {
  const auto expected =
      members.empty() ? std::string{"a file in the archive"} : fmt::format("{}", fmt::join(members, ", "));
  return {ErrorCode::kParse,
          fmt::format("found no file \"{}\" in the archive, expected one of: {}", wanted, expected),
          {},
          std::string{wanted},
          expected};
}

/// A member that may be a log, and how much it looks like one.
struct Rated {
  const ZipArchive::Member* member = nullptr;
  int likeness = 0;
};

/// All members that may be logs, in the order of the archive. `first_error` takes why one cannot be read.
std::vector<Rated> rated_members(const ZipArchive& archive, Opening& opening, int depth,
                                 std::optional<Error>& first_error) {
  constexpr std::size_t kMostMembers = 1000, kHead = 64 * 1024;
  std::vector<Rated> rated;
  std::size_t looked_at = 0;
  for (const auto& member : archive.members()) {
    if (member.folder() || is_debris(member.name)) continue;
    if (++looked_at > kMostMembers) {
      const std::string most = std::to_string(kMostMembers);
      opening.notes.push_back(say(Phrase::kManyMembers, {most, most}));
      break;
    }
    const auto head = archive.read_text(member, opening.budget, kHead);
    if (!head) {
      if (!first_error) first_error = head.error();
    } else if (const auto alike = likeness(*head); alike && !head->empty()) {
      rated.push_back({&member, *alike});
    }
  }
  const auto to_open = std::ranges::count(rated, kContainer, &Rated::likeness);
  if (rated.size() == 1 || !opening.member.empty()) return rated;
  if (opening.looks == nullptr || to_open > opening.looks->members) return rated;
  opening.looks->members -= to_open;
  std::erase_if(rated, [&](Rated& one) {
    if (one.likeness != kContainer) return false;
    const auto rows = rows_within(archive, *one.member, *opening.looks, depth);
    one.likeness = rows.value_or(0);
    return !rows;
  });
  return rated;
}

/// The member that a path begins with; the rest of the path stays in `path`.
const ZipArchive::Member* member_of_path(const ZipArchive& archive, std::string_view& path) {
  for (const auto& member : archive.members()) {
    const auto rest = member.folder() ? std::nullopt : rest_of_path(path, member.name);
    if (!rest) continue;
    path = *rest;
    return &member;
  }
  return nullptr;
}

Result<Content> open_chosen(const ZipArchive& archive, const ZipArchive::Member& chosen, Opening& opening, int depth) {
  if (opening.check && chosen.stated_size > kWorthACheck) {
    const auto head = archive.read_text(chosen, opening.budget, kCheckedHead);
    if (!head) return head.error();
    if (auto refused = opening.check(*head, static_cast<double>(chosen.stated_size)))
      return in_member(*refused, chosen);
  }
  auto bytes = archive.read_text(chosen, opening.budget);
  if (!bytes) return bytes.error();
  auto content = open_unpacked(*std::move(bytes), opening, depth + 1);
  if (!content) return in_member(content.error(), chosen);
  return content;
}

/// The member that is asked for, else the one that looks most like a log; of equals the largest.
Result<Content> open_member(const ZipArchive& archive, Opening& opening, int depth) {
  constexpr int kFewestRows = 3;
  std::optional<Error> first_error;
  auto rated = rated_members(archive, opening, depth, first_error);
  std::vector<std::string> members;
  for (const Rated& one : rated) {
    if (one.likeness >= kFewestRows) members.push_back(one.member->name);
  }
  const ZipArchive::Member* chosen = nullptr;
  std::string note, rivals;
  if (!opening.member.empty()) {
    chosen = member_of_path(archive, opening.member);
    if (chosen == nullptr) return no_such_member(opening.member, members);
  } else {
    if (rated.empty()) return first_error ? *first_error : no_log(what_is_in(archive));
    std::ranges::stable_sort(rated, [](const Rated& a, const Rated& b) {
      return a.likeness != b.likeness ? a.likeness > b.likeness : a.member->stated_size > b.member->stated_size;
    });
    chosen = rated.front().member;
    note = others_note(archive, *chosen);
    if (!note.empty()) opening.notes.push_back(note);
    const bool alike = rated.size() > 1 && rated[1].likeness > 2 && 2 * rated[1].likeness >= rated[0].likeness;
    if (alike) rivals = note;
  }
  auto content = open_chosen(archive, *chosen, opening, depth);
  if (!content) return content;
  if (!rivals.empty()) content->rivals = rivals;
  content->member = content->member.empty() ? chosen->name : chosen->name + "/" + content->member;
  // Those of an archive within this one stand in its place.
  for (auto& inner : content->members) inner = chosen->name + "/" + inner;
  if (content->members.empty()) content->members.push_back(chosen->name);
  const auto here = std::ranges::find(members, chosen->name);
  const auto place = here == members.end() ? members.end() : members.erase(here);
  content->members.insert(content->members.begin(), members.begin(), place);
  content->members.insert(content->members.end(), place, members.end());
  return content;
}

Result<Content> content_of(const char* kind, Result<std::vector<Grid>> grids) {
  if (!grids) return grids.error();
  Content content;
  content.kind = kind;
  content.grids = *std::move(grids);
  return content;
}

Result<Content> open_zip(std::string_view bytes, Opening& opening, int depth) {
  const auto archive = ZipArchive::open(bytes);
  if (!archive) return archive.error();
  const bool xlsx = is_xlsx(*archive);
  if (!xlsx && !is_ods(*archive)) return open_member(*archive, opening, depth);
  auto grids = xlsx ? read_xlsx(*archive, opening.budget, opening.notes) : read_ods(*archive, opening.budget);
  return content_of(xlsx ? "xlsx" : "ods", std::move(grids));
}

Result<Content> open_html(std::string_view bytes, Opening& opening) {
  auto tables = read_html(bytes, opening.budget);
  if (!tables) return tables.error();
  Content content;
  if (tables->grids.empty() && !tables->preformatted.empty()) {
    content.kind = "text";
    content.bytes = std::move(tables->preformatted);
    return content;
  }
  if (tables->grids.empty()) {
    return Error{ErrorCode::kParse,
                 "found an HTML document without a table, expected one with a table of readings",
                 {},
                 "an HTML document without a table",
                 "one with a table of readings"};
  }
  if (tables->cut_off) opening.notes.push_back(say(Phrase::kCutRow));
  content.kind = "html";
  content.grids = std::move(tables->grids);
  return content;
}

Result<Content> open_json(std::string_view bytes, Opening& opening) {
  auto grid = read_json(bytes, opening.budget);
  if (!grid) return grid.error();
  Content content;
  content.kind = "json";
  content.grids.push_back(*std::move(grid));
  return content;
}

Result<Content> open(std::string_view bytes, Opening& opening, int depth) {
  if (depth > kDeepest) return no_log("archives nested too deep");
  if (is_zip(bytes)) return open_zip(bytes, opening, depth);
  if (is_gzip(bytes)) {
    auto unpacked = gunzip(bytes, opening.budget, opening.notes, opening.check);
    if (!unpacked) return unpacked.error();
    return open_unpacked(*std::move(unpacked), opening, depth + 1);
  }
  if (is_flat_ods(bytes)) return content_of("ods", read_flat_ods(bytes, opening.budget));
  if (is_xml_spreadsheet(bytes)) return content_of("xml", read_xml_spreadsheet(bytes, opening.budget));
  if (is_html(bytes)) return open_html(bytes, opening);
  if (is_mime_page(bytes)) {
    if (const auto html = html_of_mime_page(bytes)) return open_html(*html, opening);
  }
  if (is_json(bytes)) return open_json(bytes, opening);
  Content content;
  if (is_xml(bytes)) {
    if (auto grid = read_xml_records(bytes, opening.budget)) {
      content.kind = "xml";
      content.grids.push_back(*std::move(grid));
      return content;
    }
  }
  content.kind = "text";
  content.plain = true;
  return content;
}

}  // namespace

std::string sheet_key(const std::vector<Grid>& grids, std::size_t i) {
  if (!grids[i].name.empty() || grids.size() == 1) return grids[i].name;
  return std::to_string(i + 1);
}

Result<Content> open_container(const std::string& name, std::string_view bytes, std::size_t most_unpacked_bytes,
                               std::vector<std::string>& notes, const HeadCheck& check, std::string_view member) {
  UnpackBudget budget{bytes.size(), most_unpacked_bytes};
  Looks looks{budget};
  Opening opening{budget, notes, check, member, &looks};
  auto content = open(bytes, opening, 0);
  if (content) return content;
  auto error = content.error();
  error.where.file = name;
  return error;
}

}  // namespace ovenwright::log
