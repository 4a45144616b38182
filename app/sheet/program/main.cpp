#include <QGuiApplication>
#include <cstdio>

#include "app/sheet/program/command.h"

int main(int argc, char** argv) {
  using namespace ovenwright;
  const auto parsed = sheet::parseOptions(argc, argv);
  if (const auto* status = std::get_if<command::ExitStatus>(&parsed)) return static_cast<int>(*status);
  // Pages are drawn without a display, whatever the session has; the order of fonts in a file does not vary.
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("QT_HASH_SEED", "0");
  // The toolkit's warnings are about sessions and displays that pages do not need.
  qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg) std::fprintf(stderr, "ovenwright: %s\n", qPrintable(text));
  });
  QGuiApplication application(argc, argv);
  return static_cast<int>(sheet::run(std::get<sheet::SheetOptions>(parsed)));
}
