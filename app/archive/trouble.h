#pragma once
#include <QString>
#include <string>

namespace ovenwright::archive {

/// What kind of trouble the last call met; the message of its Error says it in words.
enum class Trouble {
  kNone,
  kAway,      ///< the server does not answer, or went away
  kRefused,   ///< it does not let this user in, or not do this
  kClash,     ///< another transaction was in the way: worth another try
  kBusy,      ///< the file is in use by another process
  kFull,      ///< no room on the disk
  kReadOnly,  ///< the file or its disk cannot be written
  kDamaged,   ///< no database, or a broken one
  kOther
};

/// What kind of trouble, and the sentence on it for people: one of the patterns of core/units/phrase.h.
struct NamedTrouble {
  Trouble trouble;
  std::string what;
};

/// @param state  PostgreSQL's SQLSTATE; empty where a connection was not let in, or broke
/// @param text   what the server or its library said
NamedTrouble serverTrouble(const QString& state, const QString& text);
/// @param code  SQLite's extended result code
NamedTrouble fileTrouble(int code, const QString& text);

}  // namespace ovenwright::archive
