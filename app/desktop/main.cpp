#include <QApplication>
#include <QCommandLineParser>
#include <QFont>
#include <QIcon>
#include <QSettings>
#include <QStandardPaths>
#include <cstdio>
#include <map>
#include <optional>

#include "app/desktop/settings/settings.h"
#include "app/desktop/text/language.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/desktop.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/screenshot.h"
#include "core/board/board_file.h"
#include "core/oven/oven_file.h"
#include "core/units/version.h"
#include "core/window/window_file.h"

using namespace ovenwright;
using namespace ovenwright::desktop;

namespace {

constexpr int kUsage = 2;

[[noreturn]] void refuse(const std::string& message) {
  std::fprintf(stderr, "ovenwright-desktop: %s\n", message.c_str());
  std::exit(kUsage);
}

template <class T>
T valueOrRefuse(Result<T> result) {
  if (!result) refuse(result.error().text());
  return std::move(*result);
}

}  // namespace

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  QApplication::setApplicationName(QStringLiteral("ovenwright-desktop"));
  QApplication::setApplicationVersion(QLatin1String(kVersion));
  QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/ovenwright.svg")));
  QApplication::setDesktopFileName(QStringLiteral("ovenwright-desktop"));

  QCommandLineParser options;
  options.setApplicationDescription(
      QApplication::translate("main", "Shows a thermocouple log and whether it stayed inside its process window."));
  options.addHelpOption();
  options.addVersionOption();
  const QCommandLineOption window(QStringLiteral("window"), QStringLiteral("Judge against WINDOW: a file or a name."),
                                  QStringLiteral("WINDOW"));
  const QCommandLineOption board(QStringLiteral("board"), QStringLiteral("What the thermocouples sit on."),
                                 QStringLiteral("BOARD"));
  const QCommandLineOption oven(QStringLiteral("oven"), QStringLiteral("The oven; needs --recipe."),
                                QStringLiteral("OVEN"));
  const QCommandLineOption recipe(QStringLiteral("recipe"), QStringLiteral("The recipe; needs --oven."),
                                  QStringLiteral("RECIPE"));
  const QCommandLineOption archive(QStringLiteral("archive"),
                                   QStringLiteral("The archive, whatever the settings say: a file, or "
                                                  "postgresql://user@host:port/database."),
                                   QStringLiteral("ARCHIVE"));
  const QCommandLineOption demo(QStringLiteral("demo"), QStringLiteral("Open the demo run."));
  const QCommandLineOption screenshot(
      QStringLiteral("screenshot"), QStringLiteral("For documentation: save a picture of the window to FILE and end."),
      QStringLiteral("FILE"));
  const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("With --screenshot: the window's size."),
                                QStringLiteral("WxH"), QStringLiteral("1440x900"));
  const QCommandLineOption theme(QStringLiteral("theme"),
                                 QStringLiteral("Light, dark or of high contrast, whatever the system says."),
                                 QStringLiteral("light|dark|contrast"));
  const QCommandLineOption state(
      QStringLiteral("state"),
      QStringLiteral("With --screenshot: what is shown: ") + Screenshot::states().join(QStringLiteral(", ")) + u'.',
      QStringLiteral("STATE"));
  QStringList codes;
  for (const Language& each : languages()) codes << each.code;
  const QCommandLineOption language(
      QStringLiteral("language"),
      QStringLiteral("The language, whatever the system says: ") + codes.join(QStringLiteral(", ")) + u'.',
      QStringLiteral("CODE"));
  const QCommandLineOption points(QStringLiteral("font"), QStringLiteral("With --screenshot: size of the text."),
                                  QStringLiteral("POINTS"));
  options.addOptions({language, points, window, board, oven, recipe, archive, demo, screenshot, size, theme, state});
  options.addPositionalArgument(QStringLiteral("LOG"), QStringLiteral("Logs to open."), QStringLiteral("[LOG...]"));
  options.process(application);
  if (options.isSet(oven) != options.isSet(recipe)) refuse("--oven and --recipe go together");

  std::optional<Screenshot::Request> picture;
  if (options.isSet(screenshot)) {
    const QStringList sides = options.value(size).split(u'x');
    picture = Screenshot::Request{options.value(screenshot), QSize(sides[0].toInt(), sides.value(1).toInt()),
                                  options.value(state)};
    if (picture->size.isEmpty()) refuse("--size expects a width and a height, as in 1440x900");
    if (!picture->state.isEmpty() && !Screenshot::states().contains(picture->state)) {
      refuse("--state expects one of " + Screenshot::states().join(QStringLiteral(", ")).toStdString());
    }
    // A picture shows defaults, whatever was chosen on this machine.
    QStandardPaths::setTestModeEnabled(true);
    QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("ovenwright"), QStringLiteral("desktop"))
        .clear();
  }
  using Kind = widgets::Theme::Kind;
  const std::map<QString, Kind> kinds{{QStringLiteral("light"), Kind::kLight},
                                      {QStringLiteral("dark"), Kind::kDark},
                                      {QStringLiteral("contrast"), Kind::kHighContrast}};
  if (options.isSet(theme) && !kinds.contains(options.value(theme))) refuse("--theme expects light, dark or contrast");

  Settings settings;
  if (options.isSet(language)) {
    if (!codes.contains(options.value(language)))
      refuse("--language expects one of " + codes.join(QStringLiteral(", ")).toStdString());
    settings.setLanguage(options.value(language));
  }
  if (options.isSet(points) || picture) {
    constexpr double kDesign_pt = 10;  // what sizes are designed for, whatever this machine's font is
    QFont font = QApplication::font();
    font.setPointSizeF(options.isSet(points) ? options.value(points).toDouble() : kDesign_pt);
    if (font.pointSizeF() <= 0) refuse("--font expects a number of points");
    QApplication::setFont(font);
  }
  Document document;
  check::Request setup;
  if (options.isSet(window)) {
    for (const QString& name : options.values(window))
      setup.windows.push_back(valueOrRefuse(window::find(name.toStdString())));
  } else if (auto general = window::find("sac305")) {
    setup.windows.push_back(std::move(*general));
    setup.window_assumed = true;
  }
  if (options.isSet(board)) setup.board = valueOrRefuse(board::find(options.value(board).toStdString()));
  if (options.isSet(oven)) {
    setup.oven = valueOrRefuse(oven::find_oven(options.value(oven).toStdString()));
    setup.recipe = valueOrRefuse(oven::find_recipe(options.value(recipe).toStdString()));
    if (auto fits = oven::check_recipe(*setup.recipe, *setup.oven); !fits) refuse(fits.error().text());
  }
  document.setInitialSetup(std::move(setup));

  Appearance::giveRoom();
  if (options.isSet(theme)) {
    Appearance::force(kinds.at(options.value(theme)));
  } else {
    Appearance::followSystem();
  }
  Desktop desktop(&document, &settings, options.isSet(archive) ? options.value(archive) : settings.archive());
  desktop.show();
  if (options.isSet(demo)) desktop.window()->openDemo();
  if (!options.positionalArguments().isEmpty()) document.openFiles(options.positionalArguments());
  if (picture) new Screenshot(&document, desktop.window(), *picture);
  return QApplication::exec();
}
