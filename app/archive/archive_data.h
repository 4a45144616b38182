#pragma once
#include <QDeadlineTimer>
#include <QElapsedTimer>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "app/archive/archive.h"
#include "app/archive/body.h"
#include "app/archive/database.h"

namespace ovenwright::archive {

/// For how long a connection that nobody uses is trusted.
constexpr int kMayBeGone_ms = 3'000;

/// What an open archive holds: the file, or the outbox and, while it answers, the server.
struct Archive::Data {
  std::string where;
  Options options;
  bool isServer = false;
  std::unique_ptr<Database> file;    ///< the archive, or the outbox; absent for a server that is only read
  std::unique_ptr<Database> server;  ///< absent while it is away
  std::string message;               ///< why; or why what waits is refused
  bool refused = false;              ///< it answers, and refuses
  bool mayAdd = true;                ///< by the server's grants
  QDeadlineTimer tryLater;           ///< until then the server is not tried again
  QElapsedTimer used;                ///< since the server answered last
  std::vector<Repeated> repeated;    ///< for takeRepeated()
  std::set<std::string>
      known;  ///< digests of bytes that an archive file is known to hold; an outbox is emptied by others too

  /// The database that is read. Errors: kIo where the server is away.
  Result<Database*> reading();
  /// The database that lists are taken from: while the server is away the outbox.
  Result<Database*> listing();
  /// Connects to the server where it is not, unless that was tried a moment ago. Errors: kIo where it refuses, or is no
  /// archive, and this machine has never added to it; being away is none.
  std::optional<Error> connect();
  /// Whether this machine has added to the server before.
  bool hasAdded();
  /// Where a record may be: the archive, or the server and the outbox.
  std::vector<Database*> places();
  /// The id of the record that keeps this pass of this log already. An error counts as none: adding will meet it again.
  std::optional<std::string> existing(const NewRun& run);
  struct Found {
    Parcel parcel;
    std::string digest, previous, repeats;
  };
  /// A record with what was printed. Errors: kBadArgument where there is none of this id; kIo.
  Result<Found> parcel(const std::string& id);
  /// Takes the server for away after an error that says so.
  void noteServer();
  /// Sends what waits to the server, which answers. Errors: kIo.
  std::optional<Error> send(std::size_t& sent);
  /// What is to be said where the server is needed and away.
  Error awayError() const { return {ErrorCode::kIo, message, {where, 0, 0}, {}, {}}; }

 private:
  std::optional<Error> reachServer(Trouble& trouble);
  void freshen();
};

}  // namespace ovenwright::archive
