#include "core/report/spreadsheet.h"

#include <algorithm>
#include <array>

namespace ovenwright::report {
namespace {

// The last four are the wide forms of the first four.
constexpr std::array<std::string_view, 10> kFormulaStarts{"=", "+",      "-",      "@",      "|",
                                                          "%", "\uff1d", "\uff0b", "\uff0d", "\uff20"};
// The last three are the fixed blank, the wide blank and the byte order mark.
constexpr std::array<std::string_view, 6> kPassedOver{" ", "\"", "'", "\u00a0", "\u3000", "\ufeff"};
constexpr std::string_view kSeparators = ",;\t\r\n";

template <std::size_t N>
std::size_t length_of_one(const std::array<std::string_view, N>& all, std::string_view text) {
  const auto found = std::ranges::find_if(all, [&](std::string_view one) { return text.starts_with(one); });
  return found == all.end() ? 0 : found->size();
}

/// Whether what begins here is a formula, behind blanks.
bool begins_formula(std::string_view text) {
  for (std::size_t length = 1; length > 0; text.remove_prefix(length)) length = length_of_one(kPassedOver, text);
  return length_of_one(kFormulaStarts, text) > 0;
}

}  // namespace

std::string no_formula(std::string_view text) {
  std::string safe;
  bool at_start = true;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (at_start && begins_formula(text.substr(i))) safe += '\'';
    safe += text[i];
    at_start = kSeparators.find(text[i]) != std::string_view::npos;
  }
  return safe;
}

bool reads_as_number(std::string_view text) {
  for (const std::string_view sign : {"+", "-", "\u2212"}) {
    if (!text.starts_with(sign)) continue;
    text.remove_prefix(sign.size());
    break;
  }
  if (text.empty() || text.front() < '0' || text.front() > '9') return false;
  if (text.ends_with('%')) text.remove_suffix(1);
  return text.find_first_not_of("0123456789., \u2009\u00a0") == std::string_view::npos;
}

std::string csv_cell(std::string_view text) {
  const std::string safe = no_formula(text);
  if (safe.find_first_of(",;\"\t\r\n") == std::string::npos) return safe;
  std::string quoted = "\"";
  for (const char c : safe) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

}  // namespace ovenwright::report
