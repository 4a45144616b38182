#pragma once
#include <QObject>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/desktop/archive/archive_link.h"

namespace ovenwright::desktop {

/// The archive's side of ArchiveLink: lives on the archive's thread and owns the connection.
class ArchiveDesk : public QObject {
 public:
  /// Another archive from now on.
  void setWhere(std::string where, std::shared_ptr<archive::Patience> patience, int answer_s);
  /// Opens it where it is not open; a reader makes nothing.
  Result<archive::Archive*> open(ArchiveLink::Need need);
  void look();  ///< sends what waits, counts the records
  /// As of the last open() or look(), and what the archive itself knows now.
  ArchiveStatus status();
  /// Sent records that turned out to be of runs which others had kept already, since the last call.
  std::vector<archive::Repeated> takeRepeated();
  /// The server is tried again at the next request, however short ago it was found away.
  void tryAgain();
  void close();

 private:
  bool isServer() const;
  Result<archive::Archive*> kept(Result<archive::Archive> opened);

  archive::Options options() const;

  std::string m_where;
  std::shared_ptr<archive::Patience> m_patience;
  int m_answer_s = 0;
  std::optional<archive::Archive> m_archive;
  bool m_writes = false;  // the connection can
  std::optional<Error> m_trouble;
  bool m_missing = false, m_looked = false;
  std::size_t m_records = 0;
};

}  // namespace ovenwright::desktop
