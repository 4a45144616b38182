#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <optional>

#include "core/log/grid.h"
#include "core/log/gzip.h"
#include "core/log/html_tables.h"
#include "core/log/json_tables.h"
#include "core/log/size_check.h"
#include "core/log/unpack_budget.h"
#include "core/log/workbook.h"
#include "core/log/zip_archive.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

constexpr int kDeepest = 3;  ///< a log in a gz in a zip in a zip is opened; deeper nests are no logs

struct Opening {
  UnpackBudget budget;
  std::vector<std::string>& notes;
  const HeadCheck& check;
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

/// How much the head of a member looks like a log: the number of lines with two numbers or more, or a middling number
/// for what has to be opened first; nothing for what is no text.
std::optional<int> likeness(std::string_view head) {
  constexpr int kContainer = 20;
  if (is_zip(head) || is_gzip(head) || is_html(head) || is_flat_ods(head) || is_xml_spreadsheet(head) || is_json(head))
    return kContainer;
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

/// The member that looks most like a log; of equals the largest.
Result<Content> open_member(const ZipArchive& archive, Opening& opening, int depth) {
  constexpr std::size_t kMostMembers = 1000, kHead = 64 * 1024;
  struct Rated {
    const ZipArchive::Member* member = nullptr;
    int likeness = 0;
  };
  std::vector<Rated> rated;
  std::optional<Error> first_error;
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
  if (rated.empty()) return first_error ? *first_error : no_log("a zip archive without any");
  std::ranges::stable_sort(rated, [](const Rated& a, const Rated& b) {
    return a.likeness != b.likeness ? a.likeness > b.likeness : a.member->stated_size > b.member->stated_size;
  });
  const auto& chosen = *rated.front().member;
  std::vector<std::string> others;
  constexpr std::size_t kMostNamed = 10;
  for (const auto& member : archive.members()) {
    if (&member == &chosen || member.folder() || is_debris(member.name)) continue;
    if (others.size() == kMostNamed) {
      others.push_back("and more");
      break;
    }
    others.push_back(member.name);
  }
  std::string note;
  if (!others.empty()) {
    note = say(Phrase::kArchive, {chosen.name, fmt::format("{}", fmt::join(others, ", "))});
    opening.notes.push_back(note);
  }
  if (opening.check && chosen.stated_size > kWorthACheck) {
    const auto head = archive.read_text(chosen, opening.budget, kCheckedHead);
    if (!head) return head.error();
    if (auto refused = opening.check(*head, static_cast<double>(chosen.stated_size))) return *refused;
  }
  auto bytes = archive.read_text(chosen, opening.budget);
  if (!bytes) return bytes.error();
  auto content = open_unpacked(*std::move(bytes), opening, depth + 1);
  const bool alike = rated.size() > 1 && rated[1].likeness > 2 && 2 * rated[1].likeness >= rated[0].likeness;
  if (content && alike) content->rivals = note;
  if (content) content->member = content->member.empty() ? chosen.name : chosen.name + "/" + content->member;
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
  if (is_json(bytes)) return open_json(bytes, opening);
  Content content;
  content.kind = "text";
  content.plain = true;
  return content;
}

}  // namespace

Result<Content> open_container(const std::string& name, std::string_view bytes, std::size_t most_unpacked_bytes,
                               std::vector<std::string>& notes, const HeadCheck& check) {
  Opening opening{UnpackBudget{bytes.size(), most_unpacked_bytes}, notes, check};
  auto content = open(bytes, opening, 0);
  if (content) return content;
  auto error = content.error();
  error.where.file = name;
  return error;
}

}  // namespace ovenwright::log
