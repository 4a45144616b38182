// archive list, show, export, verify and move: what reads records.
#include <algorithm>
#include <array>
#include <filesystem>
#include <system_error>

#include "app/archive/keep.h"
#include "app/command/archive_open.h"
#include "app/command/archive_print.h"
#include "app/command/commands.h"
#include "app/command/output.h"
#include "core/files/text_file.h"
#include "core/log/log_file.h"

namespace ovenwright::command {
namespace {

ExitStatus fail(const Error& error, ExitStatus status) {
  report_error(error);
  return status;
}

constexpr std::array kVerdicts{judge::Verdict::kPass, judge::Verdict::kConditionalPass, judge::Verdict::kUndetermined,
                               judge::Verdict::kConditionalFail, judge::Verdict::kFail};

/// Errors: kBadArgument for a date or a verdict that is none.
Result<archive::Filter> filter_of(const ArchiveListOptions& options) {
  archive::Filter filter;
  filter.lot = options.lot;
  filter.board = options.board;
  filter.oven = options.oven;
  filter.recipe = options.recipe;
  filter.text = options.text.value_or("");
  if (options.verdict) {
    const auto verdict = std::ranges::find(kVerdicts, *options.verdict, judge::verdict_name);
    if (verdict == kVerdicts.end()) {
      return Error{ErrorCode::kBadArgument,
                   "found the verdict \"" + *options.verdict +
                       "\", expected pass, conditional pass, undetermined, conditional fail or fail",
                   {},
                   *options.verdict,
                   "a verdict"};
    }
    filter.verdicts = {*verdict};
  }
  if (options.from) {
    const auto from = archive::parseMoment(*options.from);
    if (!from) return from.error();
    filter.from = *from;
  }
  if (options.to) {
    const auto to = archive::parseMoment(*options.to, archive::DateEdge::kEnd);
    if (!to) return to.error();
    filter.to = *to;
  }
  return filter;
}

/// A name that stays inside its folder, whatever a log was called.
std::string safe_name(const std::string& name) {
  std::string safe;
  for (const char sign : name.substr(0, 200)) {
    safe += sign == '/' || static_cast<unsigned char>(sign) < 0x20 || sign == 0x7f ? '_' : sign;
  }
  if (safe.empty() || safe.front() == '.') safe.insert(safe.begin(), '_');
  return safe;
}

/// Writes a log into a folder: under its own name, or with its id before it where a file of that name says something
/// else. A file that is there with these bytes is left.
Result<std::string> write_log(const std::string& folder, const archive::Record& record, const std::string& bytes) {
  const std::string name = safe_name(record.log.name);
  for (const auto& path : {folder + "/" + name, folder + "/" + record.summary.id + "_" + name}) {
    const auto there = log::LogBytes::open(path);
    if (there && (*there)->bytes() == bytes) return path;
    if (!there && !std::filesystem::exists(path)) return files::write_file(path, bytes, files::Existing::kKeep);
  }
  return Error{ErrorCode::kIo, "files of this name are there already", {folder + "/" + name, 0, 0}, "", ""};
}

}  // namespace

ExitStatus run(const ArchiveListOptions& options) {
  const auto filter = filter_of(options);
  if (!filter) return fail(filter.error(), ExitStatus::kUsage);
  auto archive = open_archive(options.archive, archive::Access::kReadOnly);
  if (!archive) return fail(archive.error(), ExitStatus::kUnreadable);
  constexpr std::size_t kPage = 5000;
  std::vector<archive::Summary> runs;
  std::optional<archive::Cursor> next;
  do {
    auto page = archive->find(*filter, kPage, next);
    if (!page) return fail(page.error(), ExitStatus::kUnreadable);
    std::ranges::move(page->runs, std::back_inserter(runs));
    next = page->next;
  } while (next);
  auto status = ExitStatus::kDone;
  std::string away;
  if (const auto state = archive->state(); state.kind == archive::State::Kind::kServerAway) {
    const Error error{ErrorCode::kIo,
                      state.message + ": listed is what waits in the outbox of this machine alone",
                      {state.where, 0, 0},
                      "",
                      ""};
    status = fail(error, ExitStatus::kUnreadable);
    away = ",\n\"errors\": " + errors_json({&error, 1});
  }
  if (options.common.format == Format::kText) return write_output(options.common, list_text(runs, runs.size()), status);
  std::string json = "{\"schema\": \"ovenwright.archive/1\",\n\"runs\": [";
  for (const auto& run : runs) json += (&run == &runs.front() ? "\n " : ",\n ") + summary_json(run);
  json += std::string{runs.empty() ? "]" : "\n]"} + ",\n\"total\": " + std::to_string(runs.size()) + away + "}\n";
  return write_output(options.common, json, status);
}

ExitStatus run(const ArchiveShowOptions& options) {
  auto archive = open_archive(options.archive, archive::Access::kReadOnly);
  if (!archive) return fail(archive.error(), ExitStatus::kUnreadable);
  const auto id = one_id(*archive, options.id);
  if (!id) return fail(id.error(), ExitStatus::kUnreadable);
  const bool json = options.common.format == Format::kJson;
  const auto printed = json ? archive->report(*id) : archive->text(*id);
  if (!printed) return fail(printed.error(), ExitStatus::kUnreadable);
  if (json) return write_output(options.common, *printed, ExitStatus::kDone);
  const auto record = archive->load(*id);
  if (!record) return fail(record.error(), ExitStatus::kUnreadable);
  const auto released = archive->releasedWindows();
  if (!released) return fail(released.error(), ExitStatus::kUnreadable);
  const auto notes = archive->printedNotes(*id);
  if (!notes) return fail(notes.error(), ExitStatus::kUnreadable);
  return write_output(options.common,
                      options.common.quiet ? *printed : *printed + record_text(*record, *released, *notes),
                      ExitStatus::kDone);
}

ExitStatus run(const ArchiveExportOptions& options) {
  auto archive = open_archive(options.archive, archive::Access::kReadOnly);
  if (!archive) return fail(archive.error(), ExitStatus::kUnreadable);
  const std::string& folder = *options.common.output;
  std::error_code failed;
  std::filesystem::create_directories(folder, failed);
  if (failed)
    return fail({ErrorCode::kIo, "cannot be made: " + failed.message(), {folder, 0, 0}, "", ""},
                ExitStatus::kUnwritable);
  std::string text, json;
  auto status = ExitStatus::kDone;
  for (const auto& asked : options.ids) {
    const auto id = one_id(*archive, asked);
    const auto record = id ? archive->load(*id) : Result<archive::Record>(id.error());
    const auto bytes = record ? archive->content(record->log.sha256) : Result<std::string>(record.error());
    if (!bytes) {
      status = fail(bytes.error(), ExitStatus::kUnreadable);
      continue;
    }
    const auto path = write_log(folder, *record, *bytes);
    if (!path) return fail(path.error(), ExitStatus::kUnwritable);
    const auto again = archive::judgeAgain(*archive, *id, {});
    if (!again) status = fail(again.error(), ExitStatus::kUnreadable);
    const std::string kept = judge::verdict_name(record->summary.verdict);
    const auto now = again ? std::optional<std::string>(judge::verdict_name(again->verdict)) : std::nullopt;
    text += *id + ": " + *path + ", SHA-256 " + record->log.sha256 + "; " + kept + " on the day, " +
            (now ? *now + " judged again from these bytes\n" : "cannot be judged again\n");
    json += (json.empty() ? "\n " : ",\n ") + ("{\"id\": " + json_text(*id) + ", \"file\": " + json_text(*path)) +
            ", \"sha256\": " + json_text(record->log.sha256) + ", \"bytes\": " + std::to_string(bytes->size()) +
            ", \"verdict\": " + json_text(kept) + ", \"verdict_again\": " + json_text(now) + "}";
  }
  Common printed = options.common;
  printed.output.reset();
  if (printed.format == Format::kText) return write_output(printed, text, status);
  return write_output(
      printed, "{\"schema\": \"ovenwright.archive/1\",\n\"exported\": [" + json + (json.empty() ? "]}\n" : "\n]}\n"),
      status);
}

ExitStatus run(const ArchiveVerifyOptions& options) {
  auto archive = open_archive(options.archive, archive::Access::kReadOnly);
  if (!archive) return fail(archive.error(), ExitStatus::kUnreadable);
  const auto found = archive->verify(options.head, told_progress(options.common, "verified"));
  if (!found)
    return fail(found.error(),
                found.error().code == ErrorCode::kBadArgument ? ExitStatus::kUsage : ExitStatus::kUnreadable);
  const auto status = found->holds() ? ExitStatus::kDone : ExitStatus::kOut;
  if (options.common.format == Format::kJson) {
    const auto or_none = [](const std::string& text) {
      return text.empty() ? std::optional<std::string>{} : std::optional{text};
    };
    return write_output(
        options.common,
        "{\"schema\": \"ovenwright.archive/1\",\n\"holds\": " + std::string{found->holds() ? "true" : "false"} +
            ",\n\"records\": " + std::to_string(found->records) + ",\n\"notes\": " + std::to_string(found->notes) +
            ",\n\"repeated\": " + std::to_string(found->repeated) +
            ",\n\"first_bad\": " + json_text(or_none(found->firstBad)) +
            ",\n\"reason\": " + json_text(or_none(found->reason)) + ",\n\"heads\": " + heads_json(found->heads) + "}\n",
        status);
  }
  if (!found->holds()) {
    return write_output(options.common,
                        "The archive does not hold: " +
                            (found->firstBad.empty() ? "" : "record " + found->firstBad + ": ") + found->reason + ".\n",
                        status);
  }
  std::string text = "The archive holds: " + std::to_string(found->records) +
                     (found->records == 1 ? " record" : " records") + " with their evidence, in unbroken chains.\n";
  if (found->repeated > 0) {
    text += std::to_string(found->repeated) + (found->repeated == 1 ? " of them is" : " of them are") +
            " of a log that another station had kept already: lists show that one's record.\n";
  }
  if (!options.common.quiet && !found->heads.empty()) text += "\n" + heads_text(found->heads);
  return write_output(options.common, text, status);
}

ExitStatus run(const ArchiveMoveOptions& options) {
  auto from = open_archive(options.archive, archive::Access::kReadOnly);
  if (!from) return fail(from.error(), ExitStatus::kUnreadable);
  auto to = open_archive(options.to, archive::Access::kReadWrite);
  if (!to) return fail(to.error(), ExitStatus::kUnwritable);
  if (to->state().kind == archive::State::Kind::kServerAway)
    return fail({ErrorCode::kIo, to->state().message, {options.to, 0, 0}, "", ""}, ExitStatus::kUnwritable);
  const auto moved = from->moveTo(*to, told_progress(options.common, "moved"));
  if (!moved) return fail(moved.error(), ExitStatus::kUnwritable);
  report_waiting(*to);
  const auto heads = to->heads();
  if (!heads) return fail(heads.error(), ExitStatus::kUnwritable);
  if (options.common.format == Format::kJson) {
    return write_output(options.common,
                        "{\"schema\": \"ovenwright.archive/1\",\n\"moved\": " + std::to_string(*moved) +
                            ",\n\"heads\": " + heads_json(*heads) + "}\n",
                        ExitStatus::kDone);
  }
  return write_output(options.common,
                      "Moved " + std::to_string(*moved) + (*moved == 1 ? " record" : " records") +
                          "; the archive they came from stays as it is.\n\n" + heads_text(*heads),
                      ExitStatus::kDone);
}

}  // namespace ovenwright::command
