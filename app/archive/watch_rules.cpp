#include "app/archive/watch_rules.h"

#include <fnmatch.h>

#include <filesystem>
#include <system_error>

#include "core/board/board_file.h"
#include "core/files/profiles.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"
#include "core/log/layout_file.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

namespace ovenwright::archive {
namespace {

namespace fs = std::filesystem;

void takeNamePart(files::TomlTable& table, const char* key, std::optional<NamePart>& into) {
  const auto text = table.text(key);
  if (!text) return;
  auto part = NamePart::make(*text);
  if (part) {
    into = *std::move(part);
  } else {
    table.fail(key, part.error().message, *text, part.error().expected);
  }
}

/// A window, oven, recipe, board or layout of a rule: a file beside the rules is found from wherever the program runs.
std::optional<WatchRule::Named> profile(files::TomlTable& table, const char* key, const fs::path& folder) {
  const auto name = table.text(key);
  if (!name) return std::nullopt;
  std::error_code failed;
  const fs::path beside = folder / *name;
  const bool isFile = !fs::path(*name).is_absolute() &&
                      (name->find('/') != std::string::npos || name->ends_with(".toml")) && fs::exists(beside, failed);
  return WatchRule::Named{isFile ? beside.string() : *name, table.place(key)};
}

WatchRule rule(files::TomlTable& table, const fs::path& folder) {
  WatchRule rule;
  rule.files = table.needed_text("files");
  takeNamePart(table, "lot", rule.lot);
  takeNamePart(table, "serial", rule.serial);
  takeNamePart(table, "operator", rule.operatorName);
  rule.window = profile(table, "window", folder);
  rule.oven = profile(table, "oven", folder);
  rule.recipe = profile(table, "recipe", folder);
  rule.board = profile(table, "board", folder);
  rule.layout = profile(table, "layout", folder);
  if (rule.oven && !table.has("recipe")) table.missing("recipe", "the recipe that the oven ran");
  if (rule.recipe && !table.has("oven")) table.missing("oven", "the oven that the recipe ran on");
  return rule;
}

}  // namespace

Result<NamePart> NamePart::make(const std::string& text) {
  NamePart part;
  part.m_text = QString::fromStdString(text);
  QRegularExpression expression(part.m_text);
  if (!expression.isValid()) {
    return Error{
        ErrorCode::kParse,
        "found \"" + text + "\", expected a regular expression (" + expression.errorString().toStdString() + ")",
        {},
        text,
        "a regular expression"};
  }
  if (expression.captureCount() > 0) part.m_expression = std::move(expression);
  return part;
}

std::optional<std::string> NamePart::of(const std::string& fileName) const {
  if (!m_expression) return m_text.toStdString();
  const auto match = m_expression->match(QString::fromStdString(fileName));
  if (!match.hasMatch()) return std::nullopt;
  return match.captured(1).toStdString();
}

bool WatchRule::matches(const std::string& fileName) const {
  return ::fnmatch(files.c_str(), fileName.c_str(), 0) == 0;
}

Result<check::Request> WatchRule::request() const {
  check::Request request;
  request.window_assumed = !window;
  auto found = window::find(window ? window->name : "sac305");
  if (!found) return window ? files::told_at(found.error(), window->at) : found.error();
  request.windows.push_back(*std::move(found));
  const auto take = [](const auto& named, auto find, auto& into) -> std::optional<Error> {
    if (!named) return std::nullopt;
    auto read = find(named->name);
    if (!read) return files::told_at(read.error(), named->at);
    into = *std::move(read);
    return std::nullopt;
  };
  auto error = take(oven, oven::find_oven, request.oven);
  if (!error) error = take(recipe, oven::find_recipe, request.recipe);
  if (!error) error = take(board, board::find, request.board);
  if (!error) error = take(layout, log::find_layout, request.log.layout);
  if (error) return *error;
  if (request.oven) {
    if (const auto fits = oven::check_recipe(*request.recipe, *request.oven); !fits) return fits.error();
  }
  return request;
}

Result<std::vector<WatchRule>> loadWatchRules(const std::string& path) {
  const auto text = files::read_text(path);
  if (!text) return text.error();
  auto file = files::TomlFile::parse(path, *text);
  if (!file) return file.error();
  auto root = file->root();
  std::vector<WatchRule> rules;
  std::error_code failed;
  const fs::path folder = fs::absolute(path, failed).parent_path();
  for (auto& table : root.tables("rule")) rules.push_back(rule(table, folder));
  if (!root.has("rule")) root.missing("rule", "a [[rule]]");
  if (auto error = file->finish()) return *error;
  for (const auto& rule : rules) {
    if (const auto request = rule.request(); !request) return request.error();
  }
  return rules;
}

}  // namespace ovenwright::archive
