#include "app/desktop/window/notice.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QUrl>

#include "app/desktop/text/language.h"
#include "app/desktop/text/said.h"
#include "core/units/phrase.h"

namespace ovenwright::desktop {

Notice noticeOf(const QString& title, const Error& error) {
  Notice notice{title, errorText(error), {}};
  const QFileInfo file(QString::fromStdString(error.where.file));
  const auto open = [&](const QString& label, const QString& path) {
    notice.cures.push_back({label, [path] { QDesktopServices::openUrl(QUrl::fromLocalFile(path)); }});
  };
  if (error.where.file.empty()) return notice;
  if (file.isFile() && file.suffix() == u"toml")
    open(QCoreApplication::translate("Notice", "Open the file"), file.absoluteFilePath());
  if (file.absoluteDir().exists()) open(QCoreApplication::translate("Notice", "Open its folder"), file.absolutePath());
  return notice;
}

QString sentenceCase(QString text) {
  if (text.isEmpty()) return text;
  text[0] = text[0].toUpper();
  const QString ends = QStringLiteral(".?!。？！");
  if (ends.contains(text.back())) return text;
  return text + (languageInUse().startsWith(u"zh") ? QChar(0x3002) : QChar(u'.'));
}

namespace {

/// What stands in brackets behind an error's message: where in the file its lines count.
QString placeInFile(const std::string& message) {
  static const QRegularExpression brackets(QStringLiteral(
      " \\(((?:cell [A-Z]+[0-9]+ of |row [0-9]+ of |sheet |in |table )[^()]*(?:\\([^()]*\\)[^()]*)*)\\)$"));
  const auto match = brackets.match(QString::fromStdString(message));
  return match.hasMatch() ? match.captured(1) : QString();
}

}  // namespace

QString errorText(const Error& whole) {
  Error error = whole;
  const QString inside = placeInFile(whole.message);
  if (!inside.isEmpty()) {
    constexpr std::size_t kBrackets = 3;  // and the blank before them
    error.message.resize(error.message.size() - inside.toUtf8().size() - kBrackets);
  }
  QString place;
  if (error.where.line > 0 && error.where.column > 0) {
    place = QCoreApplication::translate("Notice", "Line %1, column %2: ").arg(error.where.line).arg(error.where.column);
  } else if (error.where.line > 0) {
    place = QCoreApplication::translate("Notice", "Line %1: ").arg(error.where.line);
  }
  QString what;
  if (said(error.message)) {
    what = inWords(error.message, QLocale());
  } else if (!error.found.empty() && !error.expected.empty()) {
    // What was found is quoted where it stands in the file, not where it is a description.
    const bool described = said(error.found).has_value();
    what = (described ? QCoreApplication::translate("Notice", "found %1, expected %2")
                      : QCoreApplication::translate("Notice", "found “%1”, expected %2"))
               .arg(inWords(error.found, QLocale()), inWords(error.expected, QLocale()));
  } else {
    what = inWords(error.message, QLocale());
  }
  if (!inside.isEmpty()) what = withBrackets(what, inWords(inside.toStdString(), QLocale()));
  return place.isEmpty() ? sentenceCase(what) : place + sentenceCase(what).replace(0, 1, what.left(1));
}

QString withBrackets(const QString& what, const QString& inside) {
  return QCoreApplication::translate("Notice", "%1 (%2)").arg(what, inside);
}

QString errorWithFile(const Error& error) {
  if (error.where.file.empty()) return errorText(error);
  return QCoreApplication::translate("Notice", "%1: %2")
      .arg(QString::fromStdString(error.where.file), errorText(error));
}

}  // namespace ovenwright::desktop
