#pragma once
#include <string>

#include "app/archive/archive.h"

namespace ovenwright {

/// Where a test keeps its archive: a file in a folder of its own, or a database of its own on the tests' server. Gone
/// at the end. The outbox of a server's archive is in the folder too.
class TestPlace {
 public:
  enum class Kind { kFile, kServer };
  explicit TestPlace(Kind kind);
  TestPlace(const TestPlace&) = delete;
  TestPlace& operator=(const TestPlace&) = delete;
  ~TestPlace();

  const std::string& where() const { return m_where; }
  const std::string& folder() const { return m_folder; }
  archive::Options options(const std::string& station = "station A") const;
  /// Opens it, and fails the test where that fails.
  archive::Archive open(const std::string& station = "station A") const;
  /// Statements as an administrator of the database would type them.
  void execute(const std::string& sql) const;
  /// Takes away the triggers that keep a file's records as they are, as one who tampers with it would.
  void unlock() const;
  std::string value(const std::string& sql) const;

 private:
  Kind m_kind;
  std::string m_folder, m_where, m_database;
};

}  // namespace ovenwright
