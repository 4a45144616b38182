#include "app/desktop/sheets/sheet_style.h"

#include <QFile>
#include <algorithm>
#include <filesystem>
#include <system_error>

#include "app/desktop/document/document.h"
#include "app/desktop/settings/settings.h"
#include "app/sheet/logo.h"

namespace ovenwright::desktop {

sheet::Style sheetStyle(const Settings& settings, std::optional<Error>* noLogo) {
  sheet::Style style;
  style.company = settings.company();
  style.locale = QLocale();
  style.printedAt = QDateTime::currentDateTime();
  style.paper = settings.paper();
  if (settings.logo().isEmpty()) return style;
  auto logo = sheet::readLogo(QFile::encodeName(settings.logo()).toStdString());
  if (logo) {
    style.logo = *std::move(logo);
  } else if (noLogo) {
    *noLogo = logo.error();
  }
  return style;
}

bool isOpenLog(const Document& document, const QString& path) {
  return std::ranges::any_of(document.logs(), [&](const Document::LogPointer& log) {
    std::error_code failed;
    return std::filesystem::equivalent(QFile::encodeName(log->source.path).toStdString(),
                                       QFile::encodeName(path).toStdString(), failed);
  });
}

}  // namespace ovenwright::desktop
