#include "app/archive/rows.h"

#include <array>

#include "app/archive/body.h"
#include "app/archive/store.h"
#include "core/judge/verdict_named.h"

namespace ovenwright::archive {
namespace {

/// The texts of a summary that stand in columns as names do.
std::array<std::string Summary::*, 9> names() {
  return {&Summary::lot,    &Summary::serial,         &Summary::board,   &Summary::oven,        &Summary::recipe,
          &Summary::window, &Summary::windowRevision, &Summary::logName, &Summary::operatorName};
}

Moment moment(const QVariant& value) { return Moment{std::chrono::milliseconds{value.toLongLong()}}; }
std::string text(const QVariant& value) { return value.toString().toStdString(); }

}  // namespace

QString summaryColumns() {
  return QStringLiteral(
      "run.chain, run.number, run.run_at, run.added_at, run.lot, run.serial, run.board, run.oven, run.recipe, "
      "run.window_name, run.window_revision, run.verdict, run.margin, run.log, run.log_name, run.part, run.parts, "
      "run.operator, run.judged_from, run.origin, run.run_at_given, (select max(note.printed_at) from note where "
      "note.record_chain = "
      "run.chain and note.record_number = run.number)");
}

Summary summaryOf(const QSqlQuery& row) {
  Summary summary;
  summary.id = recordId(text(row.value(0)), row.value(1).toULongLong());
  summary.runAt = moment(row.value(2));
  summary.addedAt = moment(row.value(3));
  summary.lot = text(row.value(4));
  summary.serial = text(row.value(5));
  summary.board = text(row.value(6));
  summary.oven = text(row.value(7));
  summary.recipe = text(row.value(8));
  summary.window = text(row.value(9));
  summary.windowRevision = text(row.value(10));
  summary.verdict = judge::verdict_named(text(row.value(11))).value_or(judge::Verdict::kUndetermined);
  if (!row.value(12).isNull()) summary.margin = row.value(12).toDouble();
  summary.logSha256 = digestHex(row.value(13).toByteArray());
  summary.logName = text(row.value(14));
  summary.part = row.value(15).toInt();
  summary.parts = row.value(16).toInt();
  summary.operatorName = text(row.value(17));
  summary.judgedFrom = text(row.value(18));
  summary.origin = text(row.value(19));
  const int from = row.value(20).toInt();
  summary.runAtFrom = from == 0 ? RunAtFrom::kFileTime : from == 1 ? RunAtFrom::kGiven : RunAtFrom::kLogClock;
  if (!row.value(21).isNull()) summary.printedAt = moment(row.value(21));
  return summary;
}

bool isShortened(const std::string& name) {
  // As column() writes it: the digest's 16 digits behind an ellipsis.
  constexpr std::string_view kMark = "\u2026 ";
  return name.size() >= kMark.size() + 16 && name.compare(name.size() - 16 - kMark.size(), kMark.size(), kMark) == 0;
}

std::optional<Error> fillShortened(Database& database, Summary& summary) {
  bool shortened = false;
  for (const auto name : names()) shortened = shortened || isShortened(summary.*name);
  if (!shortened) return std::nullopt;
  const auto key = parseRecordId(summary.id);
  const auto stored = key ? storedRecord(database, key->chain, key->number)
                          : Result<std::optional<StoredRecord>>(std::optional<StoredRecord>{});
  if (!stored) return stored.error();
  if (!*stored) return database.error(summary.id + " is missing");
  const auto parcel = unpackedParcel((*stored)->parcel);
  const auto record = parcel ? parseBody(parcel->body) : Result<Record>(parcel.error());
  if (!record) return database.error(summary.id + " is damaged");
  for (const auto name : names()) summary.*name = record->summary.*name;
  return std::nullopt;
}

bool agrees(const Summary& row, const Summary& body) {
  for (const auto name : names()) {
    if (row.*name != column(body.*name).toStdString()) return false;
  }
  return row.id == body.id && row.runAt == body.runAt && row.runAtFrom == body.runAtFrom &&
         row.addedAt == body.addedAt && row.verdict == body.verdict && row.margin == body.margin &&
         row.logSha256 == body.logSha256 && row.part == body.part && row.parts == body.parts &&
         row.judgedFrom == body.judgedFrom && row.origin == body.origin;
}

}  // namespace ovenwright::archive
