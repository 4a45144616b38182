#include "app/archive/body.h"

#include <QString>
#include <array>
#include <charconv>
#include <nlohmann/json.hpp>
#include <string_view>

#include "app/archive/database.h"
#include "app/archive/pack.h"
#include "core/files/digest.h"
#include "core/judge/verdict_named.h"

namespace ovenwright::archive {
namespace {

using Json = nlohmann::ordered_json;

constexpr const char* kSchema = "ovenwright.record/1";

Json text(const std::string& value) { return storable(value).toStdString(); }
Json textOrNull(const std::optional<std::string>& value) { return value ? text(*value) : Json(nullptr); }

Json filePart(const KeptFile& file) {
  return {{"name", text(file.name)}, {"revision", textOrNull(file.revision)}, {"sha256", file.sha256}};
}
Json filePart(const std::optional<KeptFile>& file) { return file ? filePart(*file) : Json(nullptr); }
Json filesPart(const std::vector<KeptFile>& files) {
  Json all = Json::array();
  for (const auto& file : files) all.push_back(filePart(file));
  return all;
}

KeptFile file(const Json& part) {
  KeptFile file{part.at("name").get<std::string>(), std::nullopt, part.at("sha256").get<std::string>()};
  if (!part.at("revision").is_null()) file.revision = part.at("revision").get<std::string>();
  return file;
}
std::optional<KeptFile> fileOrNone(const Json& part) {
  if (part.is_null()) return std::nullopt;
  return file(part);
}
std::vector<KeptFile> files(const Json& parts) {
  std::vector<KeptFile> all;
  for (const auto& part : parts) all.push_back(file(part));
  return all;
}

std::string joined(const std::vector<KeptFile>& windows, bool revisions) {
  std::string all;
  for (const auto& window : windows) {
    if (&window != &windows.front()) all += " + ";
    all += revisions ? window.revision.value_or("") : window.name;
  }
  return all;
}

Error noBody() { return {ErrorCode::kIo, "the record's body is damaged", {}, {}, {}}; }

/// Throws nlohmann's exceptions where something is missing or of another type.
std::optional<Record> record(const Json& body) {
  if (body.at("schema") != kSchema) return std::nullopt;
  Record record;
  auto& summary = record.summary;
  record.chain = body.at("chain").get<std::string>();
  record.number = body.at("number").get<std::uint64_t>();
  record.station = body.at("station").get<std::string>();
  summary.id = recordId(record.chain, record.number);
  record.program = body.at("program").get<std::string>();
  const auto added = parseMoment(body.at("added_at").get<std::string>());
  const auto run = parseMoment(body.at("run_at").get<std::string>());
  const auto judged = judge::verdict_named(body.at("verdict").get<std::string>());
  if (!added || !run || !judged) return std::nullopt;
  summary.addedAt = *added;
  summary.runAt = *run;
  if (body.at("run_at_given").get<bool>()) summary.runAtFrom = RunAtFrom::kGiven;
  if (body.value("run_at_from", "") == runAtFromName(RunAtFrom::kLogClock)) summary.runAtFrom = RunAtFrom::kLogClock;
  summary.lot = body.at("lot").get<std::string>();
  summary.serial = body.at("serial").get<std::string>();
  summary.operatorName = body.at("operator").get<std::string>();
  summary.verdict = *judged;
  if (!body.at("margin").is_null()) summary.margin = body.at("margin").get<double>();
  const auto& log = body.at("log");
  record.log = {log.at("name").get<std::string>(), std::nullopt, log.at("sha256").get<std::string>()};
  record.logBytes = log.at("bytes").get<std::uint64_t>();
  summary.logName = record.log.name;
  summary.logSha256 = record.log.sha256;
  summary.part = log.at("part").get<int>();
  summary.parts = log.at("of").get<int>();
  record.windows = files(body.at("windows"));
  record.windowAssumed = body.at("window_assumed").get<bool>();
  summary.window = joined(record.windows, false);
  summary.windowRevision = joined(record.windows, true);
  record.oven = fileOrNone(body.at("oven"));
  record.recipe = fileOrNone(body.at("recipe"));
  record.board = fileOrNone(body.at("board"));
  record.layout = fileOrNone(body.at("layout"));
  if (record.oven) summary.oven = record.oven->name;
  if (record.recipe) summary.recipe = record.recipe->name;
  if (record.board) summary.board = record.board->name;
  record.attachments = files(body.at("attachments"));
  if (!body.at("entry_s").is_null()) record.entry_s = body.at("entry_s").get<double>();
  record.keepSpikes = body.at("keep_spikes").get<std::vector<int>>();
  summary.judgedFrom = body.at("judged_from").get<std::string>();
  summary.origin = body.at("origin").get<std::string>();
  record.reportSha256 = body.at("report_sha256").get<std::string>();
  record.textSha256 = body.at("text_sha256").get<std::string>();
  return record;
}

/// Reads a decimal length and the line's end behind it off the front of `bytes`.
std::optional<std::size_t> takeLength(std::string_view& bytes) {
  std::size_t length = 0;
  const auto [end, problem] = std::from_chars(bytes.data(), bytes.data() + bytes.size(), length);
  if (problem != std::errc{} || end == bytes.data() + bytes.size() || *end != '\n') return std::nullopt;
  bytes.remove_prefix(static_cast<std::size_t>(end - bytes.data()) + 1);
  return length;
}

}  // namespace

std::string noPrevious() { return std::string(64, '0'); }

std::string recordId(const std::string& chain, std::uint64_t number) { return chain + "-" + std::to_string(number); }

std::optional<RecordKey> parseRecordId(const std::string& id) {
  const auto dash = id.rfind('-');
  if (dash == std::string::npos || dash == 0) return std::nullopt;
  RecordKey key{id.substr(0, dash), 0};
  const char* const begin = id.data() + dash + 1;
  const char* const last = id.data() + id.size();
  const auto [end, problem] = std::from_chars(begin, last, key.number);
  if (problem != std::errc{} || end != last || key.number == 0 || key.number > INT64_MAX) return std::nullopt;
  return key;
}

std::string bodyText(const Record& record) {
  const auto& summary = record.summary;
  Json body = {{"schema", kSchema},
               {"chain", record.chain},
               {"number", record.number},
               {"station", text(record.station)},
               {"program", text(record.program)},
               {"added_at", momentText(summary.addedAt)},
               {"run_at", momentText(summary.runAt)},
               {"run_at_given", summary.runAtFrom != RunAtFrom::kFileTime},
               {"lot", text(summary.lot)},
               {"serial", text(summary.serial)},
               {"operator", text(summary.operatorName)},
               {"verdict", judge::verdict_name(summary.verdict)},
               {"margin", summary.margin ? Json(*summary.margin) : Json(nullptr)},
               {"log",
                {{"name", text(record.log.name)},
                 {"sha256", record.log.sha256},
                 {"bytes", record.logBytes},
                 {"part", summary.part},
                 {"of", summary.parts}}},
               {"windows", filesPart(record.windows)},
               {"window_assumed", record.windowAssumed},
               {"oven", filePart(record.oven)},
               {"recipe", filePart(record.recipe)},
               {"board", filePart(record.board)},
               {"layout", filePart(record.layout)},
               {"attachments", filesPart(record.attachments)},
               {"entry_s", record.entry_s ? Json(*record.entry_s) : Json(nullptr)},
               {"keep_spikes", record.keepSpikes},
               {"judged_from", summary.judgedFrom},
               {"origin", summary.origin},
               {"report_sha256", record.reportSha256},
               {"text_sha256", record.textSha256}};
  // Only there where `run_at_given` does not tell it, so that bodies of other records have the words they always had.
  if (summary.runAtFrom == RunAtFrom::kLogClock) body["run_at_from"] = runAtFromName(summary.runAtFrom);
  return body.dump();
}

Result<Record> parseBody(const std::string& body) {
  const auto parsed = Json::parse(body, nullptr, false);
  if (!parsed.is_object()) return noBody();
  try {
    auto found = record(parsed);
    if (!found) return noBody();
    return *std::move(found);
  } catch (const Json::exception&) {
    return noBody();
  }
}

std::string chainDigest(const std::string& previous, const std::string& body) {
  return files::sha256_hex(previous + "\n" + body);
}

QByteArray packedParcel(const Parcel& parcel) {
  std::string bytes;
  for (const auto* part : {&parcel.body, &parcel.report}) bytes += std::to_string(part->size()) + "\n";
  return packed(bytes + parcel.body + parcel.report + parcel.text, Effort::kFast);
}

Result<Parcel> unpackedParcel(const QByteArray& frame) {
  const auto bytes = unpacked(frame);
  if (!bytes) return bytes.error();
  std::string_view rest = *bytes;
  const auto body = takeLength(rest);
  const auto report = body ? takeLength(rest) : std::nullopt;
  if (!report || *body > rest.size() || *report > rest.size() - *body) return noBody();
  return Parcel{std::string{rest.substr(0, *body)}, std::string{rest.substr(*body, *report)},
                std::string{rest.substr(*body + *report)}};
}

std::string folded(const std::string& text) {
  return storable(text).normalized(QString::NormalizationForm_KC).toCaseFolded().toStdString();
}

std::string searchText(const Summary& summary) {
  std::string all;
  for (const auto* part : {&summary.id, &summary.lot, &summary.serial, &summary.board, &summary.oven, &summary.recipe,
                           &summary.window, &summary.operatorName, &summary.logName}) {
    if (!part->empty()) all += folded(*part) + "\n";
  }
  return all;
}

}  // namespace ovenwright::archive
