#include "app/archive/keep.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QUrl>
#include <algorithm>
#include <array>

#include "app/archive/archive.h"
#include "app/archive/log_labels.h"
#include "core/board/board_file.h"
#include "core/files/digest.h"
#include "core/log/layout_file.h"
#include "core/log/log_file.h"
#include "core/oven/oven_file.h"
#include "core/report/json.h"
#include "core/report/text.h"
#include "core/units/version.h"
#include "core/window/window_file.h"

namespace ovenwright::archive {
namespace {

NewFile newFile(std::string name, std::optional<std::string> revision, std::string bytes) {
  std::string sha256 = files::sha256_hex(bytes);
  return {std::move(name), std::move(revision), std::make_shared<const std::string>(std::move(bytes)),
          std::move(sha256)};
}

Result<NewFile> readFile(const std::string& path, const std::string& name) {
  const auto bytes = log::LogBytes::open(path);
  if (!bytes) return bytes.error();
  return newFile(name, std::nullopt, std::string{(*bytes)->bytes()});
}

/// The bytes of a profile's file where they are at hand or still those it was read from; empty where they are not, or
/// where it was made in memory.
std::optional<NewFile> unchanged(const files::Identity& identity, std::span<const NewFile> known) {
  const auto at = std::ranges::find(known, identity.sha256, &NewFile::sha256);
  if (at != known.end()) return *at;
  if (identity.file.empty()) return std::nullopt;
  auto file = readFile(identity.file, identity.name);
  if (!file || file->sha256 != identity.sha256) return std::nullopt;
  file->revision = identity.revision;
  return *std::move(file);
}

/// A profile with its bytes; `written` gives its text where the file no longer has it.
template <class Profile, class Written>
NewFile profile(const Profile& value, const Written& written, std::span<const NewFile> known) {
  if (auto file = unchanged(value.identity, known)) return *std::move(file);
  return newFile(value.identity.name, value.identity.revision, written(value));
}

/// The same for what has no other text than its file.
template <class Profile>
Result<std::optional<NewFile>> fileOnly(const std::optional<Profile>& value, std::span<const NewFile> known) {
  if (!value) return std::optional<NewFile>{};
  auto file = unchanged(value->identity, known);
  if (file) return file;
  return Error{ErrorCode::kIo, "has changed since it was read: judge again", {value->identity.file, 0, 0}, {}, {}};
}

std::string fileName(const std::string& path) {
  return QFileInfo(QFile::decodeName(path.c_str())).fileName().toStdString();
}

/// What stands before a picture's bytes in a data URL (RFC 2397); its name follows.
constexpr const char* kPictureStart = "data:;name=";

std::string pictureUrl(const NewFile& picture) {
  return (QByteArray(kPictureStart) + QUrl::toPercentEncoding(QString::fromStdString(picture.name)) + ";base64," +
          QByteArray::fromStdString(*picture.bytes).toBase64())
      .toStdString();
}

}  // namespace

std::optional<NewFile> pictureInside(const std::string& picture) {
  if (!picture.starts_with(kPictureStart)) return std::nullopt;
  const QByteArray url = QByteArray::fromStdString(picture);
  const qsizetype name = qstrlen(kPictureStart), end = url.indexOf(';', name), bytes = url.indexOf(',', name) + 1;
  return newFile(QUrl::fromPercentEncoding(url.mid(name, end - name)).toStdString(), std::nullopt,
                 QByteArray::fromBase64(url.mid(bytes)).toStdString());
}

NewFile windowFile(const window::ProcessWindow& window, std::span<const NewFile> known) {
  const auto written = [](const window::ProcessWindow& value) { return window::window_text(value); };
  return profile(window, written, known);
}

Result<std::vector<NewRun>> keep(const std::string& path, const check::Request& request, const check::CheckedLog& log,
                                 const Labels& labels) {
  auto file = readFile(path, fileName(path));
  if (!file) return file.error();
  const QDateTime time = QFileInfo(QFile::decodeName(path.c_str())).lastModified();
  return keep(*std::move(file), Moment{std::chrono::milliseconds{time.toMSecsSinceEpoch()}}, request, log, labels);
}

Result<std::vector<NewRun>> keep(NewFile log, Moment fileTime, const check::Request& request,
                                 const check::CheckedLog& checked, const Labels& labels,
                                 std::span<const NewFile> known) {
  if (log.sha256 != checked.reading.file.sha256)
    return Error{ErrorCode::kIo, "has changed while it was judged", {checked.reading.file.file, 0, 0}, {}, {}};
  NewRun run;
  run.log = std::move(log);
  run.fileTime = fileTime;
  run.labels = labels;
  run.windowAssumed = request.window_assumed;
  run.entry_s = request.entry_s;
  run.keepSpikes = request.keep_spikes;
  run.program = std::string{"ovenwright "} + kVersion;
  for (const auto& window : request.windows) run.windows.push_back(windowFile(window, known));
  const auto written = [](const oven::Recipe& value) { return oven::recipe_text(value); };
  if (request.recipe) run.recipe = profile(*request.recipe, written, known);
  run.layout =
      newFile(checked.reading.layout.name.value_or(""), std::nullopt, log::layout_text(checked.reading.layout));
  if (request.oven && request.oven->identity.sha256.empty()) {  // edited, and in no file yet
    run.oven = profile(
        *request.oven, [](const oven::Oven& value) { return oven::oven_text(value); }, known);
  } else {
    auto oven = fileOnly(request.oven, known);
    if (!oven) return oven.error();
    run.oven = *std::move(oven);
  }
  auto board = fileOnly(request.board, known);
  if (!board) return board.error();
  run.board = *std::move(board);
  if (request.board && request.board->picture) {
    const std::string& path = *request.board->picture;
    auto kept = pictureInside(path);
    auto picture = kept ? Result<NewFile>(*std::move(kept)) : readFile(path, fileName(path));
    if (!picture) return picture.error();
    run.attachments.push_back(*std::move(picture));
  }
  const LogLabels said = labelsOf(checked.reading);
  std::vector<NewRun> runs;
  for (const auto& one : checked.runs) {
    run.part = one.run.part;
    run.parts = one.run.parts;
    run.startedAt = startOf(said, one.run.from_s);
    run.verdict = one.judgement.verdict;
    run.margin = one.judgement.margin;
    run.report = report::check_json(std::array{report::check_run_json(checked.reading, one, request)}, {});
    run.text = report::check_run_text(checked.reading, one, request, report::Detail::kAll);
    runs.push_back(run);
  }
  return runs;
}

Result<JudgedWith> judgedWith(Archive& archive, const Record& record,
                              const std::vector<window::ProcessWindow>& windows) {
  JudgedWith with;
  const auto fetch = [&](const KeptFile& file) -> Result<NewFile> {
    auto bytes = archive.content(file.sha256);
    if (!bytes) return bytes.error();
    with.known.push_back(newFile(file.name, file.revision, *std::move(bytes)));
    return with.known.back();
  };
  auto log = fetch(record.log);
  if (!log) return log.error();
  with.log = *std::move(log);
  check::Request& request = with.request;
  request.entry_s = record.entry_s;
  request.keep_spikes = record.keepSpikes;
  if (record.summary.parts > 1) request.run = record.summary.part;
  // A file as it was, parsed; its name stands in messages.
  const auto take = [&fetch](const auto& file, auto parse, auto& into) -> std::optional<Error> {
    const auto kept = fetch(file);
    if (!kept) return kept.error();
    auto parsed = parse(file.name, *kept->bytes);
    if (!parsed) return parsed.error();
    into = *std::move(parsed);
    return std::nullopt;
  };
  request.windows = windows;
  request.window_assumed = windows.empty() && record.windowAssumed;
  for (const auto& window : windows.empty() ? record.windows : std::vector<KeptFile>{}) {
    window::ProcessWindow parsed;
    if (auto error = take(window, window::parse, parsed)) return *error;
    request.windows.push_back(std::move(parsed));
  }
  std::optional<Error> error;
  if (record.oven) error = take(*record.oven, oven::parse_oven, request.oven);
  if (!error && record.recipe) error = take(*record.recipe, oven::parse_recipe, request.recipe);
  if (!error && record.board) error = take(*record.board, board::parse, request.board);
  if (!error && record.layout) error = take(*record.layout, log::parse_layout, request.log.layout);
  if (error) return *error;
  for (const auto& file : record.attachments) {
    auto kept = fetch(file);
    if (!kept) return kept.error();
    with.attachments.push_back(*std::move(kept));
  }
  if (request.board) {  // the picture as it was kept, not what may stand at its path today
    request.board->picture.reset();
    if (!with.attachments.empty()) request.board->picture = pictureUrl(with.attachments.front());
  }
  return with;
}

Result<NewRun> judgeAgain(Archive& archive, const std::string& id, const std::vector<window::ProcessWindow>& windows) {
  const auto record = archive.load(id);
  if (!record) return record.error();
  auto with = judgedWith(archive, *record, windows);
  if (!with) return with.error();
  auto reading = log::read_bytes(with->log.name, *with->log.bytes, with->request.log);
  if (!reading) return reading.error();
  const auto checked = check::check(*std::move(reading), with->request);
  if (!checked) return checked.error();
  const auto& summary = record->summary;
  Labels labels{summary.lot, summary.serial, summary.operatorName, std::nullopt};
  if (summary.runAtFrom == RunAtFrom::kGiven) labels.runAt = summary.runAt;
  auto runs = keep(std::move(with->log), summary.runAt, with->request, *checked, labels, with->known);
  if (!runs) return runs.error();
  if (runs->size() != 1)
    return Error{ErrorCode::kUndetermined, "the log is no longer read as one run", {id, 0, 0}, {}, {}};
  auto run = std::move(runs->front());
  run.judgedFrom = id;
  run.attachments = std::move(with->attachments);
  run.startedAt.reset();  // the run has the time that it had
  if (summary.runAtFrom == RunAtFrom::kLogClock) run.startedAt = summary.runAt;
  return run;
}

}  // namespace ovenwright::archive
