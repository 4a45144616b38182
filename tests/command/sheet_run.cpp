#include "tests/command/sheet_run.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace ovenwright {

Finished demo_sheet(const std::string& file, const std::vector<std::string>& more) {
  ::setenv("SOURCE_DATE_EPOCH", "1773312120", 1);  // 2026-03-12T10:42:00Z
  std::vector<std::string> arguments{"sheet",      "profiles/demo/tern_run1.csv",
                                     "--window",   "profiles/demo/window.toml",
                                     "--oven",     "profiles/demo/oven.toml",
                                     "--recipe",   "profiles/demo/recipe.toml",
                                     "--board",    "profiles/demo/board.toml",
                                     "--lot",      "QM-2298",
                                     "--serial",   "T-0417",
                                     "--operator", "M. Kade",
                                     "--company",  "Quillmarsh Assembly, Line 2",
                                     "--run-at",   "2026-03-11T13:22:00Z",
                                     "-o",         file};
  arguments.insert(arguments.end(), more.begin(), more.end());
  return ovenwright_program(arguments);
}

std::string printed(const std::string& command) {
  std::FILE* pipe = ::popen(command.c_str(), "r");
  if (pipe == nullptr) return {};
  std::string text;
  char part[4096];
  for (std::size_t n = 0; (n = std::fread(part, 1, sizeof part, pipe)) > 0;) text.append(part, n);
  return ::pclose(pipe) == 0 ? text : std::string();
}

std::string pdf_text(const std::string& file) {
  std::istringstream words{printed("pdftotext -layout '" + file + "' -")};
  std::string text;
  for (std::string word; words >> word;) text += (text.empty() ? "" : " ") + word;
  return text;
}

std::string pdf_info(const std::string& file, const std::string& key) {
  std::istringstream lines{printed("pdfinfo '" + file + "'")};
  for (std::string line; std::getline(lines, line);) {
    if (!line.starts_with(key + ":")) continue;
    const auto at = line.find_first_not_of(' ', key.size() + 1);
    return at == std::string::npos ? std::string() : line.substr(at);
  }
  return {};
}

void write(const std::string& path, const std::string& bytes) { std::ofstream{path, std::ios::binary} << bytes; }

std::string made_log(const std::vector<std::string>& names) {
  std::string log = "Time (s)";
  for (const auto& name : names) log += "," + name;
  log += "\n";
  const auto step = [](double x) { return 1 / (1 + std::exp(-x)); };
  for (int i = 0; i <= 400; ++i) {
    log += std::to_string(i);
    for (std::size_t channel = 0; channel < names.size(); ++channel) {
      const double late = 0.3 * double(channel);
      const double value = 25 + 125 * step((i - 70 - late) / 16) + 45 * step((i - 150 - late) / 22) +
                           (73 - 0.2 * double(channel)) * step((i - 213 - late) / 10) -
                           225 * step((i - 274 - late) / 13);
      char cell[32];
      std::snprintf(cell, sizeof cell, ",%.1f", value);
      log += cell;
    }
    log += "\n";
  }
  return log;
}

std::string without_pictures(std::string text) {
  for (std::size_t at = 0; (at = text.find("<svg", at)) != std::string::npos; at += 11)
    text.replace(at, text.find("</svg>", at) + 6 - at, "<svg></svg>");
  return text;
}

}  // namespace ovenwright
