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

Without a window, `sac305` is assumed and the sheet says so. WINDOW, OVEN, RECIPE, BOARD and LAYOUT are files or names, as
for `ovenwright check`.

Exit status: as `check`, by the worst verdict; 3 where a log could not be read, 4 where a file could not be written.

Examples
  ovenwright sheet run7.csv --window tern_rev3.toml --board tern.toml --serial T-0417 --operator "M. Kade" -o run7.pdf
  ovenwright sheet lot/*.csv --window tern_rev3.toml --lot QM-2298 --each -o QM-2298.pdf
  ovenwright sheet lot/*.csv --window tern_rev3.toml --apart pdf -o sheets
  ovenwright sheet --lot QM-2298 --lot QM-2301 --apart pdf -o sheets)";

const std::vector<std::string> kPapers{"A4", "Letter"};
const std::vector<std::string> kLanguages{"en", "zh_TW", "zh_CN", "de", "es"};
const std::vector<std::string> kKinds{"pdf", "html", "csv", "json"};

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
  command::add_common(*sheet, options.common);
  sheet->get_option("--output")->required();
  sheet->footer(kHelp);
  sheet->final_callback([&options, sheet] {
    if (options.logs.empty() && options.ids.empty() && options.lots.empty())
      throw CLI::RequiredError("LOG, --run or --lot");
    if (options.logs.empty()) {
      for (const char* name :
           {"--window", "--oven", "--recipe", "--board", "--serial", "--operator", "--run-at", "--layout", "--entry"}) {
        if (sheet->count(name) > 0) throw CLI::ValidationError(name, "needs LOG: a run of the archive has its own");
      }
      return;
    }
    if (options.markPrinted) throw CLI::ValidationError("--mark-printed", "is for runs of the archive: --run or --lot");
    if (options.lots.size() > 1) throw CLI::ValidationError("--lot", "found several for logs of one");
    if (options.ids.empty()) return;
    int run = 0;
    if (options.ids.size() > 1 || !CLI::detail::lexical_cast(options.ids.front(), run) || run < 1)
      throw CLI::ValidationError("--run", "found " + options.ids.front() + ", expected the number of a pass");
    options.log.run = run;
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
