#include "app/command/command_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>

#include "app/command/archive_line.h"
#include "app/command/arguments.h"
#include "app/command/help_texts.h"
#include "core/files/nearest.h"
#include "core/units/version.h"

namespace ovenwright::command {
namespace {

constexpr const char* kAbout =
    "Ovenwright reads the log of a board that went through a reflow oven or over a wave with thermocouples on it, and\n"
    "says whether every joint and part stayed inside its process window, how sure that is, and where it went wrong.";

void add_learn(CLI::App& app, LearnOptions& learn) {
  auto* logs = app.add_option("LOG", learn.logs, "Logs of measured runs")->option_text(" ");
  auto* recipe =
      app.add_option("--recipe", learn.recipes, "The recipe of each log, in their order")->option_text("RECIPE");
  repeatable(recipe);
  app.add_option("--oven", learn.oven, "The oven the logs come from")->option_text("OVEN");
  app.add_option("--board", learn.board, "What the thermocouples sit on")->option_text("BOARD");
  repeatable(app.add_option("--window", learn.windows, "Process window; may be repeated")->option_text("WINDOW"));
  app.add_option("--layout", learn.layout, "How to read the logs, where finding out by itself fails")
      ->option_text("LAYOUT");
  add_table(app, learn.table);
  add_leave_empty(app, learn.leave_empty);
  app.add_option("--run", learn.run, "Of a log with several passes, only this one, from 1")
      ->check(whole(1))
      ->option_text("N");
  app.add_option("--entry", learn.entry_s, "When the leading edge passed the oven's mouth, s on the log's clock")
      ->check(finite())
      ->option_text("SECONDS");
  app.add_option("--runs", learn.runs, "A list of runs, in place of LOG, --recipe and --board")
      ->option_text("RUNS.toml")
      ->excludes(logs)
      ->excludes(recipe);
  app.final_callback([&learn] {
    if (learn.runs) return;
    if (learn.logs.empty()) throw CLI::RequiredError("LOG or --runs");
    if (!learn.oven) throw CLI::RequiredError("--oven");
    if (learn.recipes.size() != learn.logs.size())
      throw CLI::ValidationError("--recipe", "found " + std::to_string(learn.recipes.size()) + " for " +
                                                 std::to_string(learn.logs.size()) + " logs: one for each");
  });
}

const char* list_about(files::Kind kind) {
  switch (kind) {
    case files::Kind::kWindow:
      return "List the process windows, or print one";
    case files::Kind::kOven:
      return "List the ovens, or print one";
    case files::Kind::kBoard:
      return "List the boards, or print one";
    case files::Kind::kRecipe:
      return "List the recipes, or print one";
    case files::Kind::kLayout:
      return "List the layouts, or print one";
  }
  return "";
}

/// ", did you mean "--window"?" for an option that does not exist; empty for anything else.
std::string meant_option(const CLI::App& app, const std::string& message) {
  const auto dash = message.find("--");
  if (dash == std::string::npos) return {};
  const std::string word = message.substr(dash, message.find_first_of(" ,=:", dash) - dash);
  std::vector<std::string> names;
  for (const auto* option : app.get_options()) {
    for (const auto& name : option->get_lnames()) names.push_back("--" + name);
  }
  const std::vector<std::string_view> views(names.begin(), names.end());
  if (std::ranges::find(views, word) != views.end()) return {};
  const auto meant = files::nearest(word, views);
  return meant.empty() ? "" : ", did you mean \"" + std::string{meant} + "\"?";
}

/// All commands with where their options go.
class Parser {
 public:
  Parser() : app_{kAbout, "ovenwright"} {
    app_.set_version_flag("--version", std::string{"ovenwright "} + kVersion, "Print the version and exit");
    app_.get_help_ptr()->description("Print this help and exit");
    app_.require_subcommand(1);
    app_.footer(std::string{kExamples} + kAboutStatus);
    add_check();
    add_measure();
    add_predict();
    add_tune();
    add_compare();
    add_lot();
    app_.add_subcommand("sheet", "Print or export the sheet of runs");  // another program's: pass_on.h
    add_start();
    archive_.add_to(app_);
    for (std::size_t i = 0; i < std::size(kKinds); ++i) add_list(kKinds[i], lists_[i]);
  }

  std::variant<Command, ExitStatus> parse(int argc, char** argv) {
    try {
      app_.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
      return explained(error);
    }
    if (check_command_->parsed()) return Command{std::move(check_)};
    if (measure_command_->parsed()) return Command{std::move(measure_)};
    if (predict_command_->parsed()) return Command{std::move(predict_)};
    if (tune_command_->parsed()) return Command{std::move(tune_)};
    if (compare_command_->parsed()) return Command{std::move(compare_)};
    if (lot_command_->parsed()) return Command{std::move(lot_)};
    if (start_command_->parsed()) return Command{std::move(start_)};
    if (auto command = archive_.parsed()) return *std::move(command);
    for (std::size_t i = 0; i < std::size(kKinds); ++i) {
      if (list_commands_[i]->parsed()) return Command{std::move(lists_[i])};
    }
    return ExitStatus::kUsage;
  }

 private:
  static constexpr std::string_view kCommands[] = {"check",   "measure", "predict", "tune",    "start",
                                                   "compare", "lot",     "sheet",   "archive", "watch",
                                                   "windows", "ovens",   "boards",  "recipes"};
  static constexpr files::Kind kKinds[] = {files::Kind::kWindow, files::Kind::kOven, files::Kind::kBoard,
                                           files::Kind::kRecipe};

  void add_check() {
    check_command_ = app_.add_subcommand("check", "Judge logs against process windows");
    check_command_->add_option("LOG", check_.logs, "The logs to judge")->required()->type_name("");
    repeatable(check_command_->add_option("--window", check_.windows, "Process window; may be repeated")
                   ->option_text("WINDOW"));
    add_log(*check_command_, check_.log);
    add_common(*check_command_, check_.common);
    check_command_->footer(std::string{kCheckHelp} + "\n" + kAboutStatus);
  }

  void add_measure() {
    measure_command_ = app_.add_subcommand("measure", "Measure a log, without a window");
    auto* log = measure_command_->add_option("LOG", measure_.log_file, "The log to measure")->option_text(" ");
    repeatable(measure_command_->add_option("--measure", measure_.measures, "A measure; may be repeated")
                   ->option_text("'NAME, key=value'"));
    measure_command_->add_flag("--list", measure_.list, "List the measures and their parameters")
        ->option_text(" ")
        ->excludes(log);
    add_log(*measure_command_, measure_.log);
    add_common(*measure_command_, measure_.common);
    measure_command_->footer(std::string{kMeasureHelp} + "\n" + kMeasureStatus);
    measure_command_->final_callback([this] {
      if (measure_.log_file.empty() && !measure_.list) throw CLI::RequiredError("LOG or --list");
    });
  }

  void add_predict() {
    predict_command_ = app_.add_subcommand("predict", "Predict another recipe from measured runs");
    add_learn(*predict_command_, predict_.learn);
    predict_command_->add_option("--new-recipe", predict_.new_recipe, "The recipe to predict")
        ->required()
        ->option_text("RECIPE");
    predict_command_->add_option("--traces", predict_.traces, "Write the predicted curves into this file")
        ->option_text("FILE.csv");
    add_common(*predict_command_, predict_.common);
    predict_command_->footer(std::string{kPredictHelp} + "\n" + kAboutStatus);
  }

  void add_tune() {
    tune_command_ = app_.add_subcommand("tune", "Suggest recipes that are predicted to pass");
    add_learn(*tune_command_, tune_.learn);
    tune_command_->add_flag("--keep-speed", tune_.keep_speed, "Leave the conveyor's speed");
    tune_command_
        ->add_option("--min-speed", tune_.min_speed_mm_per_min, "The slowest conveyor that keeps the line's takt")
        ->check(above_zero())
        ->option_text("MM_PER_MIN");
    repeatable(tune_command_->add_option("--lock", tune_.locked_zones, "Leave this zone's setpoints; may be repeated")
                   ->option_text("ZONE"));
    tune_command_->add_flag("--split-sides", tune_.split_sides,
                            "Move top and bottom apart; needs runs that split them");
    tune_command_->add_option("--at-margin", tune_.at_margin, "The margin that fastest and coolest keep, a fraction")
        ->option_text("M");
    tune_command_
        ->add_option("--write-recipes", tune_.write_recipes, "Write the suggestions as recipe files into this folder")
        ->option_text("DIR");
    auto* note =
        tune_command_
            ->add_option("--note", tune_.note, "Write the change note of the first suggestion, to sign, into this file")
            ->option_text("FILE");
    tune_command_->add_option("--note-for", tune_.note_for, "The suggestion that the note is of, by its aim")
        ->check(CLI::IsMember({"least change", "most margin", "fastest", "coolest"}).description(""))
        ->option_text("AIM")
        ->needs(note);
    add_common(*tune_command_, tune_.common);
    tune_command_->footer(std::string{kTuneHelp} + "\n" + kAboutStatus);
  }

  void add_compare() {
    compare_command_ = app_.add_subcommand("compare", "Hold two logs against each other");
    auto* logs = compare_command_->add_option("LOG", compare_.logs, "The two logs, A and B")
                     ->expected(2)
                     ->option_text("LOG_A LOG_B");
    auto* ids_a = compare_command_->add_option("--a", compare_.ids_a, "Archived runs in place of a log: group A")
                      ->option_text("ID...")
                      ->excludes(logs);
    auto* ids_b = compare_command_->add_option("--b", compare_.ids_b, "Group B")->option_text("ID...")->excludes(logs);
    ids_a->needs(ids_b);
    ids_b->needs(ids_a);
    add_archive(*compare_command_, compare_.archive)->needs(ids_a);
    auto* window = compare_command_->add_option("--window", compare_.windows, "Process window; may be repeated")
                       ->option_text("WINDOW");
    repeatable(window);
    auto* board =
        compare_command_->add_option("--board", compare_.board, "What the thermocouples sit on")->option_text("BOARD");
    auto* oven = compare_command_->add_option("--oven", compare_.oven, "The oven the logs come from; needs --recipe")
                     ->option_text("OVEN");
    auto* recipe = compare_command_->add_option("--recipe", compare_.recipes, "The recipe of both, or of A and of B")
                       ->option_text("RECIPE");
    oven->needs(recipe);
    recipe->needs(oven);
    auto* layout =
        compare_command_
            ->add_option("--layout", compare_.layout, "How to read the logs, where finding out by itself fails")
            ->option_text("LAYOUT");
    auto* table =
        compare_command_
            ->add_option("--table", compare_.tables, "Of files with several tables, which: its name or number")
            ->option_text("TABLE");
    auto* run = compare_command_->add_option("--run", compare_.runs, "Of logs with several passes, which, from 1")
                    ->check(whole(1))
                    ->option_text("N");
    auto* entry = compare_command_
                      ->add_option("--entry", compare_.entries_s,
                                   "When the leading edge passed the oven's mouth, s on the log's clock")
                      ->check(finite())
                      ->option_text("SECONDS");
    for (auto* option : {recipe, table, run, entry}) repeatable(option);
    auto* align = compare_command_
                      ->add_option("--align", compare_.align_C,
                                   "Line up where the first trace rises above this, °C, not at the entry")
                      ->check(finite())
                      ->option_text("LEVEL");
    auto* different = compare_command_->add_flag("--different-thermocouples", compare_.different_thermocouples,
                                                 "Though channels and board have the same names");
    add_leave_empty(*compare_command_, compare_.leave_empty);
    // Groups were judged when they were archived, and keep what they were judged with.
    for (auto* option : {window, board, oven, recipe, layout, table, run, entry, align, different})
      option->excludes(ids_a);
    add_common(*compare_command_, compare_.common);
    compare_command_->footer(kCompareHelp);
    compare_command_->final_callback([this] {
      if (compare_.logs.empty() && compare_.ids_a.empty()) throw CLI::RequiredError("LOG_A LOG_B, or --a and --b");
      const auto at_most_two = [](const char* name, std::size_t given) {
        if (given > 2)
          throw CLI::ValidationError(name, "found " + std::to_string(given) + " of them, expected one or two");
      };
      at_most_two("--recipe", compare_.recipes.size());
      at_most_two("--table", compare_.tables.size());
      at_most_two("--run", compare_.runs.size());
      at_most_two("--entry", compare_.entries_s.size());
    });
  }

  static CLI::Option* add_archive(CLI::App& app, std::optional<std::string>& archive) {
    return app.add_option("--archive", archive, "A file or postgresql://user@host:port/database")
        ->option_text("ARCHIVE");
  }

  void add_lot() {
    lot_command_ = app_.add_subcommand("lot", "Statistics and control charts of a lot");
    lot_command_->add_option("LOT", lot_.lot, "The lot, as `archive add --lot` named it")->required()->type_name("");
    add_archive(*lot_command_, lot_.archive);
    using lot::ChartKind;
    using lot::RuleSet;
    const std::vector<std::pair<std::string, ChartKind>> charts{{"individuals", ChartKind::kIndividuals},
                                                                {"xbar-r", ChartKind::kXbarR},
                                                                {"xbar-s", ChartKind::kXbarS},
                                                                {"ewma", ChartKind::kEwma}};
    lot_command_->add_option("--chart", lot_.statistics.chart, "The control charts; individuals unless said")
        ->transform(one_word(words_of(charts)))
        ->option_text("individuals|xbar-r|xbar-s|ewma");
    lot_command_
        ->add_option("--subgroup", lot_.statistics.subgroup,
                     "Runs in a subgroup of an X-bar chart, 2 to 25; 5 unless said")
        ->check(whole(2, 25))
        ->option_text("N");
    const std::vector<std::pair<std::string, RuleSet>> rules{{"western-electric", RuleSet::kWesternElectric},
                                                             {"nelson", RuleSet::kNelson}};
    lot_command_->add_option("--rules", lot_.statistics.rules, "What counts as a signal; western-electric unless said")
        ->transform(one_word(words_of(rules)))
        ->option_text("western-electric|nelson");
    add_common(*lot_command_, lot_.common);
    lot_command_->footer(kLotHelp);
  }

  void add_start() {
    start_command_ = app_.add_subcommand("start", "Suggest a first recipe for a board that never ran");
    start_command_->add_option("--board", start_.board, "Its size, mass and parts")->required()->option_text("BOARD");
    start_command_->add_option("--oven", start_.oven, "The oven it is to run in")->required()->option_text("OVEN");
    repeatable(start_command_->add_option("--window", start_.windows, "Process window; may be repeated")
                   ->required()
                   ->option_text("WINDOW"));
    start_command_->add_option("--runs", start_.runs, "A list of earlier runs of other boards in this oven")
        ->option_text("RUNS.toml");
    start_command_->add_option("--write-recipe", start_.write_recipe, "Write the recipe into this file")
        ->option_text("FILE.toml");
    add_common(*start_command_, start_.common);
    start_command_->footer(std::string{kStartHelp} + "\n" + kAboutStatus);
  }

  void add_list(files::Kind kind, ListOptions& options) {
    auto* command = app_.add_subcommand(files::kind_folder(kind), list_about(kind));
    options.kind = kind;
    command->add_option("NAME", options.name, "Print the file of this name instead")->type_name("");
    add_common(*command, options.common);
    command->footer(std::string{"\nYours are in "} + files::user_folder(kind) + ".");
    list_commands_.push_back(command);
  }

  ExitStatus explained(const CLI::ParseError& error) {
    const CLI::App* at = &app_;
    std::string name = "ovenwright";
    while (!at->get_subcommands().empty()) {
      at = at->get_subcommands().front();
      name += " " + at->get_name();
    }
    if (error.get_exit_code() == 0) return app_.exit(error) == 0 ? ExitStatus::kDone : ExitStatus::kUsage;
    const auto unknown = app_.remaining();
    std::string message = error.what();
    // "--belt: 1 required FLOAT missing"
    const auto of = message.find(": 1 required ");
    if (of != std::string::npos && message.ends_with(" missing"))
      message.replace(of, std::string::npos, ": expected a value");
    if (at == &app_ && !unknown.empty() && !unknown.front().starts_with('-')) {
      message = "found the command \"" + unknown.front() + "\"" + files::suggestion(unknown.front(), kCommands);
    } else {
      message += meant_option(*at, message);
    }
    std::cerr << "ovenwright: " << message << "\n"
              << "Run `" << name << " --help` for help.\n";
    return ExitStatus::kUsage;
  }

  CLI::App app_;
  CheckOptions check_;
  MeasureOptions measure_;
  PredictOptions predict_;
  TuneOptions tune_;
  CompareOptions compare_;
  LotOptions lot_;
  StartOptions start_;
  ArchiveLine archive_;
  ListOptions lists_[std::size(kKinds)];
  CLI::App* check_command_ = nullptr;
  CLI::App* measure_command_ = nullptr;
  CLI::App* predict_command_ = nullptr;
  CLI::App* tune_command_ = nullptr;
  CLI::App* compare_command_ = nullptr;
  CLI::App* lot_command_ = nullptr;
  CLI::App* start_command_ = nullptr;
  std::vector<CLI::App*> list_commands_;
};

}  // namespace

std::variant<Command, ExitStatus> parse_command_line(int argc, char** argv) { return Parser{}.parse(argc, argv); }

}  // namespace ovenwright::command
