#include "app/command/archive_line.h"

#include <CLI/CLI.hpp>

#include "app/command/arguments.h"

namespace ovenwright::command {
namespace {

constexpr const char* kArchiveHelp = R"(
Judged runs kept with their evidence: the raw log byte for byte, window, oven, recipe and board as they were, the results
and the program's version. Nothing is overwritten: a new judgement of an old run is a new record beside it. Each station's
records form a chain of digests, so that `archive verify` finds one that was changed or is missing.

An ARCHIVE is a file, made when it is missing, or postgresql://user@host:port/database; by default a file in the user's
data folder. No password goes into it: the server library's own password file (~/.pgpass) and service file serve. While a
server is away, records wait in an outbox on this machine and go there when it is back.

Examples
  ovenwright archive add lot/*.csv --lot QM-2201 --window tern_rev3.toml --board tern.toml
  ovenwright archive list --lot QM-2201
  ovenwright archive show 7kq2mv9x-1042
  ovenwright archive verify --head 3f1c…
  ovenwright archive move --to postgresql://line2@records/ovenwright

`ovenwright archive COMMAND --help` tells more of each.)";

constexpr const char* kAddHelp = R"(
Judges each log as `check` does and keeps it. The line for a run is printed once it is on disk for good, never before. A
log that the archive has already is not kept twice. The time of a run is that of the log's file unless --run-at says it.

Exit status: as of `check`; 4 where the archive cannot be written.

Examples
  ovenwright archive add lot/*.csv --lot QM-2201 --window tern_rev3.toml --board tern.toml
  ovenwright archive add run7.csv --lot QM-2201 --serial 0007 --operator 'R. Quill' --run-at 2026-03-14T08:15:00Z)";

constexpr const char* kRecord = "The record, by its id or by a digest from its sheet";

constexpr const char* kExportHelp = R"(
The raw logs, byte for byte as they came, each with the verdict of the day and the one judged again from these bytes with
the window, oven, recipe and board that were kept with them. An ID is a record's id, or a digest that stands on its sheet,
of the log or of the record: whole, its beginning, or its short form.

Example
  ovenwright archive export 81c0…9e2d -o audit)";

constexpr const char* kVerifyHelp = R"(
Holds every record against its digest and its chain, and names the first that does not hold. --head takes a digest from a
printed sheet, whole or short: it must be one of the records, or records that the sheet was printed from are missing.

Exit status: 0 where all hold, 1 where not.)";

constexpr const char* kMoveHelp = R"(
All records into another archive, from a file to a server or back; ids and chains are kept. May be stopped and started
again at any moment; what is there already is not moved twice. The archive they come from stays as it is.)";

constexpr const char* kWatchHelp = R"help(
Judges and keeps every log that appears in a folder, by the first rule that matches its name. A file that is still being
written is waited for; one that cannot be read is named, left where it is, and tried again when it has changed. One line of
JSON for each, printed once the run is on disk for good.

  [[rule]]
  files = "QM-*.csv"
  lot = "(QM-[0-9]+)"       # an expression on the name, group 1; without a group a plain text; so operator and serial
  window = "sac305"
  oven = "line 2"           # oven and recipe, board and layout are optional
  recipe = "lf_main_rev7"
  board = "tern"

Examples
  ovenwright watch /srv/logger --rules line2.toml
  ovenwright watch downloads --rules line2.toml --archive line2.sqlite --once)help";

}  // namespace

struct ArchiveLine::Parts {
  ArchiveAddOptions add;
  ArchiveListOptions list;
  ArchiveShowOptions show;
  ArchiveJudgeOptions judge;
  ArchiveExportOptions extract;
  ArchiveVerifyOptions verify;
  ArchiveMoveOptions move;
  ArchiveReleaseOptions release;
  WatchOptions watch;
  CLI::App *add_command = nullptr, *list_command = nullptr, *show_command = nullptr, *judge_command = nullptr,
           *export_command = nullptr, *verify_command = nullptr, *move_command = nullptr, *release_command = nullptr,
           *watch_command = nullptr;

  /// A command with --archive and what every command takes.
  template <class Options>
  static CLI::App* command(CLI::App& app, const char* name, const char* about, Options& options) {
    auto* command = app.add_subcommand(name, about);
    command->add_option("--archive", options.archive, "A file or postgresql://user@host:port/database")
        ->option_text("ARCHIVE");
    add_common(*command, options.common);
    return command;
  }

  void add_add(CLI::App& app) {
    add_command = command(app, "add", "Judge logs and keep them", add);
    add_command->add_option("LOG", add.logs, "The logs to judge and keep")->required()->type_name("");
    add_command->add_option("--lot", add.lot, "The lot that the boards belong to")->required()->option_text("LOT");
    add_command->add_option("--serial", add.serial, "The board's serial number")->option_text("S");
    add_command->add_option("--operator", add.operator_name, "Who ran it")->option_text("NAME");
    add_command->add_option("--run-at", add.run_at, "When it ran, ISO 8601; without a zone in UTC")
        ->option_text("TIME");
    repeatable(
        add_command->add_option("--window", add.windows, "Process window; may be repeated")->option_text("WINDOW"));
    add_log(*add_command, add.log);
    add_command->footer(kAddHelp);
  }

  void add_list(CLI::App& app) {
    list_command = command(app, "list", "List records, the newest run first", list);
    list_command->add_option("--lot", list.lot, "Of this lot")->option_text("LOT");
    list_command->add_option("--board", list.board, "Of this board, by its name")->option_text("NAME");
    list_command->add_option("--oven", list.oven, "Of this oven, by its name")->option_text("NAME");
    list_command->add_option("--recipe", list.recipe, "Of this recipe, by its name")->option_text("NAME");
    list_command->add_option("--verdict", list.verdict, "With this verdict")->option_text("VERDICT");
    list_command->add_option("--from", list.from, "Run at this time or later")->option_text("TIME");
    list_command->add_option("--to", list.to, "Run before this time, or on this day at the latest")
        ->option_text("TIME");
    list_command->add_option("--text", list.text, "With all these words somewhere in its names")->option_text("WORDS");
  }

  void add_rest(CLI::App& app) {
    show_command = command(app, "show", "Print what `check` printed on the day", show);
    show_command->add_option("ID", show.id, kRecord)->required()->type_name("");
    judge_command = command(app, "judge", "Judge kept runs anew, beside the old judgement", judge);
    judge_command->add_option("ID", judge.ids, kRecord)->required()->type_name("");
    repeatable(judge_command->add_option("--window", judge.windows, "In place of the old ones; may be repeated")
                   ->option_text("WINDOW"));
    export_command = command(app, "export", "Write raw logs into a folder, as they came", extract);
    export_command->add_option("ID", extract.ids, kRecord)->required()->type_name("");
    export_command->footer(kExportHelp);
    auto* folder = export_command->get_option("--output");
    folder->required()->description("The folder, made where it is missing")->option_text("DIR");
    verify_command = command(app, "verify", "Hold every record against its digests and its chain", verify);
    verify_command->add_option("--head", verify.head, "A head digest from a printed sheet")->option_text("DIGEST");
    verify_command->footer(kVerifyHelp);
    move_command = command(app, "move", "Move all records into another archive", move);
    move_command->add_option("--to", move.to, "The other archive")->required()->option_text("ARCHIVE");
    move_command->footer(kMoveHelp);
    release_command =
        command(app, "release", "Note that lots may be judged by a window, or list what was noted", release);
    auto* by = release_command->add_option("--by", release.by, "Who releases it")->option_text("NAME");
    release_command->add_option("WINDOW", release.windows, "The windows; without one, list")->type_name("")->needs(by);
  }

  void add_watch(CLI::App& app) {
    watch_command = command(app, "watch", "Judge and keep logs as they appear in a folder", watch);
    watch_command->add_option("DIR", watch.folder, "The folder")->required()->type_name("");
    watch_command->add_option("--rules", watch.rules, "How logs are judged, by their names")
        ->required()
        ->option_text("RULES.toml");
    watch_command->add_flag("--once", watch.once, "Take what is there, then end");
    watch_command->footer(kWatchHelp);
  }
};

ArchiveLine::ArchiveLine() : parts_(std::make_unique<Parts>()) {}
ArchiveLine::~ArchiveLine() = default;

void ArchiveLine::add_to(CLI::App& app) {
  auto* archive = app.add_subcommand("archive", "Keep judged runs with their evidence, and find them again");
  archive->get_help_ptr()->description("Print this help and exit");
  archive->require_subcommand(1);
  archive->footer(kArchiveHelp);
  parts_->add_add(*archive);
  parts_->add_list(*archive);
  parts_->add_rest(*archive);
  parts_->add_watch(app);
}

std::optional<Command> ArchiveLine::parsed() {
  auto& parts = *parts_;
  if (parts.add_command->parsed()) return Command{std::move(parts.add)};
  if (parts.list_command->parsed()) return Command{std::move(parts.list)};
  if (parts.show_command->parsed()) return Command{std::move(parts.show)};
  if (parts.judge_command->parsed()) return Command{std::move(parts.judge)};
  if (parts.export_command->parsed()) return Command{std::move(parts.extract)};
  if (parts.verify_command->parsed()) return Command{std::move(parts.verify)};
  if (parts.move_command->parsed()) return Command{std::move(parts.move)};
  if (parts.release_command->parsed()) return Command{std::move(parts.release)};
  if (parts.watch_command->parsed()) return Command{std::move(parts.watch)};
  return std::nullopt;
}

}  // namespace ovenwright::command
