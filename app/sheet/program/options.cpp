#include "app/sheet/program/options.h"

#include <CLI/CLI.hpp>
#include <iostream>

#include "app/command/arguments.h"

namespace ovenwright::sheet {
namespace {

constexpr const char* kHelp = R"(
The page that is signed and filed: verdict, curves, limit lanes, results, the window and recipe by revision, what the
uncertainty means, and the log's digest. FILE's ending says what is written: .pdf, .html (one file, nothing fetched),
.csv or .json. Several logs give a page that sums them up; --each adds a page for each run, --apart writes a file for
each log into the folder that -o names. Without LOG the runs come from the archive, by their ids or by lots: then the sheet
names the record, the chain's count and its head digest; --mark-printed notes beside the record that it was printed.
--compare takes two logs and makes one page of both, as `ovenwright compare` holds them against each other; with --a and
--b two groups of archived runs, by their ids or digests, all judged against the window of A's first run or another.

Without a window, `sac305` is assumed and the sheet says so. WINDOW, OVEN, RECIPE, BOARD and LAYOUT are files or names, as
for `ovenwright check`.

Exit status: as `check`, by the worst verdict; 3 where a log could not be read, 4 where a file could not be written.

Examples
  ovenwright sheet run7.csv --window tern_rev3.toml --board tern.toml --serial T-0417 --operator "M. Kade" -o run7.pdf
  ovenwright sheet lot/*.csv --window tern_rev3.toml --lot QM-2298 --each -o QM-2298.pdf
  ovenwright sheet lot/*.csv --window tern_rev3.toml --apart pdf -o sheets
  ovenwright sheet --compare run7.csv run8.csv --oven line2.toml --recipe rev7.toml --recipe rev8.toml -o 7_and_8.pdf
  ovenwright sheet --compare --a 7kq2mv9x-1 7kq2mv9x-2 --b 7kq2mv9x-7 7kq2mv9x-8 -o groups.pdf
  ovenwright sheet --lot QM-2298 --lot QM-2301 --apart pdf -o sheets)";

const std::vector<std::string> kPapers{"A4", "Letter"};
const std::vector<std::string> kLanguages{"en", "zh_TW", "zh_CN", "de", "es"};
const std::vector<std::string> kKinds{"pdf", "html", "csv", "json"};

/// What each of two logs may have of its own, in the place of the options for one.
void addOfEach(CLI::App& sheet, SheetOptions& options) {
  for (const char* name : {"--recipe", "--entry"}) sheet.remove_option(sheet.get_option(name));
  auto* recipe = sheet.add_option("--recipe", options.recipes, "The recipe it ran; with --compare one for each log");
  command::repeatable(recipe->option_text("RECIPE"));
  auto* oven = sheet.get_option("--oven");
  oven->needs(recipe);
  recipe->needs(oven);
  command::repeatable(
      sheet
          .add_option(
              "--entry", options.entries_s,
              "When the leading edge passed the oven's mouth, s on the log's clock; with --compare one for each")
          ->check(command::finite())
          ->option_text("SECONDS"));
}

void addCompare(CLI::App& sheet, SheetOptions& options) {
  auto* compare = sheet.add_flag("--compare", options.compare, "The sheet of two logs held against each other");
  auto* a = sheet.add_option("--a", options.groupA, "Of a comparison: runs of the archive in place of a log, group A")
                ->option_text("ID...")
                ->needs(compare);
  auto* b = sheet.add_option("--b", options.groupB, "Group B")->option_text("ID...")->needs(compare);
  a->needs(b);
  b->needs(a);
  sheet
      .add_flag("--different-thermocouples", options.differentThermocouples,
                "Of a comparison: though the channels have the same names")
      ->needs(compare);
  sheet.add_option("--align", options.align_C, "Of a comparison: line up at this level on the rise, °C")
      ->check(command::finite())
      ->option_text("LEVEL")
      ->needs(compare);
  sheet.add_flag("--overlaid", options.overlaid, "Of a comparison: the curves in one picture")->needs(compare);
}

/// Whether options that one log or two may have stand once, or once for each.
void checkCounts(const SheetOptions& options) {
  const std::size_t most = options.compare ? 2 : 1;
  const auto check = [&](const char* name, std::size_t found) {
    if (found > most)
      throw CLI::ValidationError(name, "found " + std::to_string(found) + ", expected " +
                                           (most == 2 ? "one for both logs or one for each" : "one"));
  };
  check("--recipe", options.recipes.size());
  check("--entry", options.entries_s.size());
  check("--run", options.ids.size());
}

/// The number of a pass.
int passOf(const std::string& text) {
  int run = 0;
  if (!CLI::detail::lexical_cast(text, run) || run < 1)
    throw CLI::ValidationError("--run", "found " + text + ", expected the number of a pass");
  return run;
}

}  // namespace

std::variant<SheetOptions, command::ExitStatus> parseOptions(int argc, char** argv) {
  SheetOptions options;
  CLI::App app("", "ovenwright");
  app.require_subcommand(1);
  CLI::App* sheet = app.add_subcommand("sheet", "Print or export the sheet of runs");
  sheet->add_option("LOG", options.logs, "The logs of the runs")->type_name("");
  command::repeatable(
      sheet->add_option("--window", options.windows, "Process window; may be repeated")->option_text("WINDOW"));
  command::add_setting(*sheet, options.log);
  addOfEach(*sheet, options);
  command::repeatable(
      sheet->add_option("--run", options.ids, "Of a log with several passes, which; without LOG, a run of the archive")
          ->option_text("N|ID"));
  command::repeatable(
      sheet->add_option("--lot", options.lots, "The lot that the logs belong to; without LOG, a lot of the archive")
          ->option_text("LOT"));
  sheet->add_option("--archive", options.archive, "Where runs are kept: a file or a URL")->option_text("ARCHIVE");
  const auto text = [&](const char* name, auto& into, const char* about) {
    sheet->add_option(name, into, about)->option_text("TEXT");
  };
  text("--serial", options.serial, "The board's serial number");
  text("--operator", options.operatorName, "Who made the run");
  sheet->add_option("--run-at", options.runAt, "When the run was made, ISO 8601; without a zone in UTC")
      ->option_text("TIME");
  text("--company", options.company, "Name at the head of each page");
  sheet->add_option("--logo", options.logo, "Picture at the head of each page: SVG, PNG or JPEG")->option_text("FILE");
  sheet->add_option("--paper", options.paper, "Size of the pages")
      ->check(CLI::IsMember(kPapers, CLI::ignore_case).description(""))
      ->option_text("A4|Letter");
  sheet->add_option("--language", options.language, "Of the pages")
      ->check(CLI::IsMember(kLanguages).description(""))
      ->option_text("en|zh_TW|zh_CN|de|es");
  auto* each = sheet->add_flag("--each", options.each, "A page for each run behind the one that sums them up");
  sheet->add_option("--apart", options.apart, "A file for each log, into the folder that -o names")
      ->check(CLI::IsMember(kKinds).description(""))
      ->option_text("pdf|html|csv|json")
      ->excludes(each);
  sheet->add_option("--mark-printed", options.markPrinted, "Note beside the records that BY printed their sheets now")
      ->option_text("BY");
  addCompare(*sheet, options);
  sheet->get_option("--compare")->excludes(each)->excludes("--apart");
  command::add_common(*sheet, options.common);
  sheet->get_option("--output")->required();
  sheet->footer(kHelp);
  sheet->final_callback([&options, sheet] {
    if (!options.groupA.empty()) {
      for (const char* name :
           {"LOG", "--run", "--lot", "--oven", "--recipe", "--board", "--serial", "--operator", "--run-at", "--layout",
            "--table", "--entry", "--different-thermocouples", "--mark-printed"})
        if (sheet->count(name) > 0) throw CLI::ValidationError(name, "found with --a and --b, which name kept runs");
      return;
    }
    if (options.logs.empty() && options.ids.empty() && options.lots.empty())
      throw CLI::RequiredError("LOG, --run or --lot");
    if (options.logs.empty()) {
      if (options.compare) throw CLI::ValidationError("--compare", "needs two logs, or --a and --b");
      for (const char* name : {"--window", "--oven", "--recipe", "--board", "--serial", "--operator", "--run-at",
                               "--layout", "--table", "--entry"}) {
        if (sheet->count(name) > 0) throw CLI::ValidationError(name, "needs LOG: a run of the archive has its own");
      }
      return;
    }
    if (options.markPrinted) throw CLI::ValidationError("--mark-printed", "is for runs of the archive: --run or --lot");
    if (options.lots.size() > 1) throw CLI::ValidationError("--lot", "found several for logs of one");
    checkCounts(options);
    if (options.compare) {
      if (options.logs.size() != 2)
        throw CLI::ValidationError("--compare", "found " + std::to_string(options.logs.size()) + " logs, expected two");
      for (const auto& run : options.ids) options.passes.push_back(passOf(run));
      return;
    }
    if (!options.recipes.empty()) options.log.recipe = options.recipes.front();
    if (!options.entries_s.empty()) options.log.entry_s = options.entries_s.front();
    if (!options.ids.empty()) options.log.run = passOf(options.ids.front());
  });
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() == 0)
      return app.exit(error) == 0 ? command::ExitStatus::kDone : command::ExitStatus::kUsage;
    std::cerr << "ovenwright: " << error.what() << "\nRun `ovenwright sheet --help` for help.\n";
    return command::ExitStatus::kUsage;
  }
  return options;
}

}  // namespace ovenwright::sheet
