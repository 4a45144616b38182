#include "app/desktop/sheets/printed_note.h"

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/settings/settings.h"

namespace ovenwright::desktop {

void notePrinted(ArchiveLink* link, QObject* context, std::vector<std::string> ids, const std::string& by,
                 std::function<void(const Error& error)> failed) {
  link->ask<archive::Moment>(
      context, {},
      [ids = std::move(ids), by](archive::Archive& archive, const ArchiveLink::Stop&) {
        return archive.notePrinted(ids, by);
      },
      [failed = std::move(failed)](Result<archive::Moment> noted) {
        if (!noted) failed(noted.error());
      },
      ArchiveLink::Need::kWrite);
}

QString whoPrints(const Settings& settings) {
  if (const QString name = settings.operatorName(); !name.isEmpty()) return name;
  const QString user = qEnvironmentVariable("USER");
  return user.isEmpty() ? qEnvironmentVariable("USERNAME") : user;
}

}  // namespace ovenwright::desktop
