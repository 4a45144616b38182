#include "app/command/arguments.h"

#include <CLI/CLI.hpp>
#include <cmath>

#include "core/files/nearest.h"
#include "core/units/version.h"

namespace ovenwright::command {

void add_common(CLI::App& app, Common& common) {
  app.set_version_flag("--version", std::string{"ovenwright "} + kVersion, "Print the version and exit");
  app.get_help_ptr()->description("Print this help and exit");
  const std::vector<std::pair<std::string, Format>> formats{{"text", Format::kText}, {"json", Format::kJson}};
  app.add_option("--format", common.format, "text for people, json for programs")
      ->transform(one_word(words_of(formats)))
      ->option_text("text|json");
  app.add_option("-o,--output", common.output, "Write the output into this file, whole or not at all")
      ->option_text("FILE");
  app.add_flag("-q,--quiet", common.quiet, "Only the sentence; no warnings");
}

CLI::Validator finite() {
  return {[](const std::string& text) {
            double number = 0;
            const bool read = CLI::detail::lexical_cast(text, number) && std::isfinite(number);
            return read ? std::string{} : "found \"" + text + "\", expected a number";
          },
          ""};
}

CLI::Validator above_zero() {
  return {[](const std::string& text) {
            double number = 0;
            const bool read = CLI::detail::lexical_cast(text, number) && std::isfinite(number) && number > 0;
            return read ? std::string{} : "found \"" + text + "\", expected a number above 0";
          },
          ""};
}

CLI::Validator whole(int least, int most) {
  return {[least, most](const std::string& text) {
            int number = 0;
            const bool read =
                CLI::detail::lexical_cast(text, number) && number >= least && (most == 0 || number <= most);
            const std::string to = most == 0 ? "" : " to " + std::to_string(most);
            return read ? std::string{}
                        : "found \"" + text + "\", expected a whole number from " + std::to_string(least) + to;
          },
          ""};
}

CLI::Validator one_word(std::vector<std::pair<std::string, int>> words) {
  return {[words = std::move(words)](std::string& text) {
            std::vector<std::string_view> known;
            for (const auto& [word, value] : words) {
              if (word == text) {
                text = std::to_string(value);
                return std::string{};
              }
              known.push_back(word);
            }
            return "found \"" + text + "\", expected " + files::listed(known);
          },
          ""};
}

void add_leave_empty(CLI::App& app, bool& leave_empty) {
  app.add_flag("--leave-empty", leave_empty,
               "Read on where cells are no numbers or rows have no time: they count as no reading, and are told of");
}

void add_table(CLI::App& app, std::optional<std::string>& table) {
  app.add_option("--table", table, "Of a file with several tables (sheets, packed files), this one: its name or number")
      ->option_text("TABLE");
}

void add_setting(CLI::App& app, LogOptions& log) {
  app.add_option("--board", log.board, "What the thermocouples sit on")->option_text("BOARD");
  auto* oven = app.add_option("--oven", log.oven, "The oven the log comes from; needs --recipe")->option_text("OVEN");
  auto* recipe = app.add_option("--recipe", log.recipe, "The recipe it ran; needs --oven")->option_text("RECIPE");
  oven->needs(recipe);
  recipe->needs(oven);
  app.add_option("--layout", log.layout, "How to read the log, where finding out by itself fails")
      ->option_text("LAYOUT");
  add_table(app, log.table);
  add_leave_empty(app, log.leave_empty);
  app.add_option("--entry", log.entry_s, "When the leading edge passed the oven's mouth, s on the log's clock")
      ->check(finite())
      ->option_text("SECONDS");
}

void add_log(CLI::App& app, LogOptions& log) {
  add_setting(app, log);
  app.add_option("--run", log.run, "Of a log with several passes, only this one, from 1")
      ->check(whole(1))
      ->option_text("N");
}

void repeatable(CLI::Option* option) { option->allow_extra_args(false); }

}  // namespace ovenwright::command
