// The server of an archive: reached, away, refusing.
#include "app/archive/archive_data.h"
#include "app/archive/copy.h"
#include "app/archive/schema.h"

namespace ovenwright::archive {

Result<Database*> Archive::Data::reading() {
  if (!isServer) return file.get();
  if (auto error = connect()) return *error;
  if (!server) return awayError();
  return server.get();
}

Result<Database*> Archive::Data::listing() {
  auto database = reading();
  if (!database && isServer && !server && file) return file.get();
  return database;
}

/// A connection that nobody used for a while may have gone without a word: a server that was restarted, a network that
/// forgot it. Then a new one is made, and nobody hears of it.
void Archive::Data::freshen() {
  if (server && used.isValid() && used.hasExpired(kMayBeGone_ms)) {
    if (!server->value(QStringLiteral("select 1"))) noteServer();
  }
  used.start();
}

bool Archive::Data::hasAdded() {
  if (!file || options.access == Access::kReadOnly) return false;
  const auto begun = file->value(QStringLiteral("select 1 from chain limit 1"));
  return begun && !begun->isNull();
}

std::optional<Error> Archive::Data::connect() {
  if (!isServer) return std::nullopt;
  freshen();
  if (server || !tryLater.hasExpired()) return std::nullopt;
  refused = false;
  mayAdd = true;
  auto trouble = Trouble::kNone;
  auto error = reachServer(trouble);
  if (!error) return std::nullopt;
  server.reset();
  message = error->message;
  tryLater.setRemainingTime(options.retryAfter_ms);
  if (trouble == Trouble::kAway) return std::nullopt;
  refused = true;
  // A station goes on, and what it keeps waits until that is mended.
  return hasAdded() ? std::nullopt : error;
}

std::optional<Error> Archive::Data::reachServer(Trouble& trouble) {
  auto opened =
      Database::openServer(where, {options.connectTimeout_s, options.answerTimeout_s, options.patience}, trouble);
  if (!opened) return opened.error();
  server = *std::move(opened);
  const auto failed = [&](Error error) {
    trouble = server->trouble();
    return error;
  };
  const auto version = schemaVersion(*server);
  if (!version) return failed(version.error());
  if (*version < newestSchema()) {
    if (options.access == Access::kReadOnly && *version == 0)
      return failed(server->error("there is no archive in the database yet"));
    if (auto error = bringForward(*server)) return failed(*error);
  }
  message.clear();
  if (options.access == Access::kReadOnly) return std::nullopt;
  const auto adds =
      server->value(QStringLiteral("select has_table_privilege('ovenwright.record', 'insert') or "
                                   "has_table_privilege('ovenwright.released_window', 'insert')"));
  if (!adds) return failed(adds.error());
  if (!adds->toBool()) {
    mayAdd = false;
    refused = true;
    auto error = server->error("the server refuses: this user may only read the archive");
    if (!hasAdded()) return error;
    message = error.message;
    return std::nullopt;
  }
  auto error = noteKeptLogs(*file, *server);
  if (error && server->trouble() == Trouble::kAway) return failed(*error);
  return error;
}

std::vector<Database*> Archive::Data::places() {
  std::vector<Database*> all;
  for (Database* one : {server.get(), file.get()}) {
    if (one) all.push_back(one);
  }
  return all;
}

void Archive::Data::noteServer() {
  if (!server || server->trouble() != Trouble::kAway) return;
  message = server->reason();
  server.reset();
  // One that was silent for so long is not waited for again at once.
  if (used.hasExpired(options.answerTimeout_s * 1000)) tryLater.setRemainingTime(options.retryAfter_ms);
}

void Archive::tryAgain() { m_data->tryLater.setRemainingTime(0); }

}  // namespace ovenwright::archive
