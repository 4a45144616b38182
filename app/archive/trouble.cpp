#include "app/archive/trouble.h"

namespace ovenwright::archive {
namespace {

/// The name in quotation marks behind `words`, such as of a user.
QString quotedBehind(const QString& text, QLatin1String words) {
  const auto at = text.indexOf(words);
  const auto begin = at < 0 ? -1 : text.indexOf(QLatin1Char('"'), at);
  const auto end = begin < 0 ? -1 : text.indexOf(QLatin1Char('"'), begin + 1);
  return end < 0 ? QString() : text.mid(begin + 1, end - begin - 1);
}

/// A connection that was not let in, or broke, has no state: its text tells more, where the server speaks English.
NamedTrouble connectionTrouble(const QString& text) {
  const auto has = [&text](const char* words) { return text.contains(QLatin1String(words)); };
  const auto user = [&text](const char* words) { return quotedBehind(text, QLatin1String(words)).toStdString(); };
  if (has("starting up") || has("shutting down") || has("recovery") || has("terminating connection"))
    return {Trouble::kAway, "the server is starting or stopping"};
  if (has("too many") || has("remaining connection slots"))
    return {Trouble::kAway, "the server has no connection free"};
  if (has("no password supplied"))
    return {Trouble::kRefused, "the server refuses: it wants a password, and the password file has none for it"};
  if (has("password authentication failed"))
    return {Trouble::kRefused, "the server refuses: the password of " + user("for user") + " is wrong"};
  if (has("role \"") && has("does not exist"))
    return {Trouble::kRefused, "the server refuses: it knows no user " + user("role \"")};
  if (has("database \"") && has("does not exist"))
    return {Trouble::kRefused, "the server refuses: it has no database " + user("database \"")};
  if (has("pg_hba.conf"))
    return {Trouble::kRefused, "the server refuses: " + user("user") + " may not connect from this computer"};
  if (has("FATAL")) return {Trouble::kRefused, "the server refuses (" + text.simplified().toStdString() + ")"};
  if (has("could not translate host name")) return {Trouble::kAway, "the server's name is not known in the network"};
  if (has("refused") || has("No such file")) return {Trouble::kAway, "the server does not answer: none runs there"};
  return {Trouble::kAway, "the server does not answer"};
}

}  // namespace

// https://www.postgresql.org/docs/15/errcodes-appendix.html
NamedTrouble serverTrouble(const QString& state, const QString& text) {
  if (state.isEmpty()) return connectionTrouble(text);
  const auto is = [&state](const char* begin) { return state.startsWith(QLatin1String(begin)); };
  const std::string detail = " (" + text.simplified().toStdString() + ")";
  if (is("57P")) return {Trouble::kAway, "the server is starting or stopping"};
  if (is("53300")) return {Trouble::kAway, "the server has no connection free"};
  if (is("08")) return {Trouble::kAway, "the server does not answer"};
  if (is("57014")) return {Trouble::kAway, "the server takes too long to answer"};
  if (is("25006")) return {Trouble::kRefused, "the server refuses: it can only be read at present"};
  if (is("28") || is("42501")) return {Trouble::kRefused, "the server refuses: this user may not do this" + detail};
  if (is("40001") || is("40P01")) return {Trouble::kClash, "another transaction was in the way"};
  if (is("55P03")) return {Trouble::kBusy, "another program holds the archive"};
  if (is("53")) return {Trouble::kFull, "the server has no room left on its disk"};
  return {Trouble::kOther, "the database reports an error" + detail};
}

NamedTrouble fileTrouble(int code, const QString& text) {
  constexpr int kNoRoomForShared = 4874;  // SQLITE_IOERR_SHMSIZE
  if (code == kNoRoomForShared) return {Trouble::kFull, "the disk is full"};
  switch (code & 0xff) {  // https://www.sqlite.org/rescode.html
    case 5:               // SQLITE_BUSY
    case 6:               // SQLITE_LOCKED
      return {Trouble::kBusy, "another program holds the archive"};
    case 8:  // SQLITE_READONLY
      return {Trouble::kReadOnly, "it cannot be written"};
    case 10:  // SQLITE_IOERR
      return {Trouble::kOther, "the disk does not read or write"};
    case 11:  // SQLITE_CORRUPT
    case 26:  // SQLITE_NOTADB
      return {Trouble::kDamaged, "it is damaged, or no database"};
    case 13:  // SQLITE_FULL
      return {Trouble::kFull, "the disk is full"};
    case 14:  // SQLITE_CANTOPEN
      return {Trouble::kOther, "the file cannot be opened"};
    default:
      return {Trouble::kOther, "the database reports an error (" + text.simplified().toStdString() + ")"};
  }
}

}  // namespace ovenwright::archive
