#include "app/desktop/lots/archive_words.h"
#include "app/desktop/text/paragraph.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QUrl>

namespace ovenwright::desktop {
namespace {

using Reach = ArchiveStatus::Reach;

/// Path, or URL: never a password, which an archive's URL cannot hold.
QString whereText(const ArchiveStatus& status) { return QString::fromStdString(status.state.where); }

/// "this computer", the file's name, or the server's.
QString shortName(const ArchiveStatus& status) {
  if (status.state.kind == archive::State::Kind::kFile) {
    if (status.state.where == archive::defaultArchive()) return QCoreApplication::translate("Archive", "this computer");
    return QFileInfo(QFile::decodeName(status.state.where.c_str())).fileName();
  }
  const QString host = QUrl(whereText(status)).host();
  return host.isEmpty() ? whereText(status) : host;
}

}  // namespace

std::optional<Notice> archiveNotice(const ArchiveStatus& status, const std::function<void()>& again) {
  const auto text = [](const char* words) { return QCoreApplication::translate("Archive", words); };
  const QString how =
      text(QT_TRANSLATE_NOOP("Archive",
                             "Open a log, check it, and keep the run under its lot; ovenwright archive add and "
                             "ovenwright watch do the same for many logs."));
  const Notice::Cure retry{text(QT_TRANSLATE_NOOP("Archive", "Try again")), again};
  switch (status.reach) {
    case Reach::kNotLooked:
      if (!status.slow) return std::nullopt;
      return Notice{
          text(QT_TRANSLATE_NOOP("Archive", "The archive's server is slow to answer.")),
          text(QT_TRANSLATE_NOOP("Archive", "The list comes as soon as it does; the other pages work meanwhile.")),
          {}};
    case Reach::kNone:
      return Notice{text(QT_TRANSLATE_NOOP("Archive", "No run is kept yet.")), how, {}};
    case Reach::kOpen:
      if (status.records > 0) return std::nullopt;
      return Notice{text(QT_TRANSLATE_NOOP("Archive", "No run is kept yet.")), how, {}};
    case Reach::kAway:
      return Notice{
          status.error ? errorText(*status.error)
                       : text(QT_TRANSLATE_NOOP("Archive", "The archive's server does not answer.")),
          status.state.waiting > 0
              ? QCoreApplication::translate("Archive", "%n run(s) wait on this computer and are sent when it is back.",
                                            nullptr, int(status.state.waiting))
              : text(QT_TRANSLATE_NOOP("Archive", "Runs that are kept meanwhile wait on this computer.")),
          {retry}};
    case Reach::kTrouble:
      return Notice{text(QT_TRANSLATE_NOOP("Archive", "The archive cannot be read.")),
                    whereText(status) + QStringLiteral(": ") + (status.error ? errorText(*status.error) : QString()),
                    {retry}};
  }
  return std::nullopt;
}

Notice failureNotice(const Error& error, const std::function<void()>& again) {
  const QString where = QString::fromStdString(error.where.file);
  return {QCoreApplication::translate("Archive", "The archive cannot be read."),
          (where.isEmpty() ? QString() : where + QStringLiteral(": ")) + errorText(error),
          {{QCoreApplication::translate("Archive", "Try again"), again}}};
}

Notice nothingFoundNotice(const std::function<void()>& clear) {
  return {QCoreApplication::translate("Archive", "No run passes the filter."),
          {},
          {{QCoreApplication::translate("Archive", "Show all runs"), clear}}};
}

QString archiveText(const ArchiveStatus& status, const Format& format) {
  if (status.slow)
    return QCoreApplication::translate("Archive", "Archive: %1 is slow to answer").arg(shortName(status));
  if (status.reach == Reach::kNotLooked) return {};
  if (status.reach == Reach::kAway && status.state.refused) {
    if (status.state.waiting == 0)
      return QCoreApplication::translate("Archive", "Archive: %1 refuses").arg(shortName(status));
    return QCoreApplication::translate("Archive", "Archive: %1 refuses, %n record(s) wait here", nullptr,
                                       int(status.state.waiting))
        .arg(shortName(status));
  }
  if (status.reach == Reach::kAway) {
    if (status.state.waiting == 0)
      return QCoreApplication::translate("Archive", "Archive: %1 away").arg(shortName(status));
    return QCoreApplication::translate("Archive", "Archive: %1 away, %n record(s) wait here", nullptr,
                                       int(status.state.waiting))
        .arg(shortName(status));
  }
  if (status.reach == Reach::kTrouble)
    return QCoreApplication::translate("Archive", "Archive: %1 cannot be read").arg(shortName(status));
  if (status.reach != Reach::kOpen) return QCoreApplication::translate("Archive", "Archive: %1").arg(shortName(status));
  const QString runs = QCoreApplication::translate("Archive", "%n run(s)", nullptr, int(status.records))
                           .replace(QString::number(status.records), format.count(status.records));
  QString text = QCoreApplication::translate("Archive", "Archive: %1, %2").arg(shortName(status), runs);
  if (status.state.waiting > 0 && status.state.refused)
    text += QStringLiteral(", ") + QCoreApplication::translate("Archive", "%n refused by the server and kept here",
                                                               nullptr, int(status.state.waiting));
  else if (status.state.waiting > 0)
    text += QStringLiteral(", ") +
            QCoreApplication::translate("Archive", "%n waiting to be sent", nullptr, int(status.state.waiting));
  return text;
}

QString repeatedText(const std::vector<archive::Repeated>& records) {
  if (records.empty()) return {};
  const auto& one = records.front();
  const auto text = [](const std::string& words) { return QString::fromStdString(words); };
  QString said =
      (one.lot.empty() ? QCoreApplication::translate(
                             "Archive", "%1 is of a log that %2 had kept already, as %3: the lists show that one.")
                             .arg(text(one.id), text(one.station), text(one.of))
                       : QCoreApplication::translate("Archive",
                                                     "%1 is of a log that %2 had kept already, as %3 in lot %4: the "
                                                     "lists show that one.")
                             .arg(text(one.id), text(one.station), text(one.of), text(one.lot)));
  const int more = int(records.size()) - 1;  // not inside the call, where lupdate would miss the text
  if (more > 0) said = paragraph({said, QCoreApplication::translate("Archive", "So are %n more.", nullptr, more)});
  return said;
}

}  // namespace ovenwright::desktop
