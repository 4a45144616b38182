#include "app/command/archive_open.h"

#include <QCoreApplication>
#include <clocale>

#include "app/command/output.h"

namespace ovenwright::command {
namespace {

void need_application() {
  if (QCoreApplication::instance() != nullptr) return;  // `sheet` has one that draws
  static int count = 1;
  static char name[] = "ovenwright";
  static char* arguments[] = {name, nullptr};
  static const QCoreApplication application(count, arguments);
  // What drivers print when a server goes away; the errors of the archive say it.
  qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
  std::setlocale(LC_ALL, "C");  // Qt takes the user's locale; files and JSON are written in this one
}

}  // namespace

Result<archive::Archive> open_archive(const std::optional<std::string>& where, archive::Access access) {
  need_application();
  archive::Options options;
  options.access = access;
  return archive::Archive::open(where.value_or(archive::defaultArchive()), options);
}

void report_waiting(const archive::Archive& archive) {
  const auto state = archive.state();
  if (state.waiting == 0) return;
  report_error({ErrorCode::kIo,
                std::to_string(state.waiting) + (state.waiting == 1 ? " record waits" : " records wait") +
                    " in the outbox" + (state.message.empty() ? "" : ": " + state.message),
                {state.where, 0, 0},
                "",
                ""});
}

}  // namespace ovenwright::command
