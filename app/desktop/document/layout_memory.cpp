#include "app/desktop/document/layout_memory.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QMap>

#include "app/desktop/settings/settings.h"
#include "core/files/profiles.h"
#include "core/log/layout_file.h"

namespace ovenwright::desktop {
namespace {

QString fileStem(const QString& name) {
  QString stem;
  for (const QChar letter : name.toLower()) stem += letter.isLetterOrNumber() ? letter : u'_';
  return stem;
}

}  // namespace

QString LayoutMemory::shapeOf(const log::Reading& reading) {
  const auto& layout = reading.layout;
  QCryptographicHash hash(QCryptographicHash::Sha256);
  const auto add = [&hash](const std::string& text) {
    hash.addData(QByteArray::fromStdString(text));
    hash.addData(QByteArray(1, '\0'));
  };
  add(layout.delimiter.value_or(""));
  add(std::to_string(int(layout.form.value_or(log::Form::kWide))));
  add(std::to_string(layout.header_line.value_or(0)));
  for (const auto& line : reading.shown) {
    if (int(line.line) != layout.header_line.value_or(0)) continue;
    for (const auto& cell : line.cells) add(cell);
  }
  if (layout.header_line.value_or(0) == 0) add(std::to_string(reading.channels.size()));
  constexpr int kDigits = 16;
  return QString::fromLatin1(hash.result().toHex().left(kDigits));
}

QString LayoutMemory::nameFor(const log::Reading& reading) const { return m_settings->layoutOfShape(shapeOf(reading)); }

Result<std::string> LayoutMemory::keep(const log::Reading& reading, log::Layout layout) {
  const QString name = QString::fromStdString(layout.name.value_or("")).trimmed();
  if (name.isEmpty()) return Error{ErrorCode::kBadArgument, "a layout needs a name to be kept", {}, "", "a name"};
  const QDir folder(QString::fromStdString(files::user_folder(files::Kind::kLayout)));
  if (!folder.mkpath(QStringLiteral("."))) {
    return Error{ErrorCode::kIo,
                 "the folder for layouts cannot be made",
                 {folder.path().toStdString()},
                 "",
                 "a folder that can be written"};
  }
  layout.member.reset();  // of this file alone: the shape finds it in others
  const std::string text = log::layout_text(layout);
  QString path = folder.filePath(fileStem(name) + QStringLiteral(".toml"));
  for (int number = 2; QFile::exists(path); ++number) {
    QFile same(path);
    if (same.open(QIODevice::ReadOnly) && same.readAll().toStdString() == text) break;
    path = folder.filePath(QStringLiteral("%1_%2.toml").arg(fileStem(name)).arg(number));
  }
  if (!QFile::exists(path)) {
    if (auto saved = log::save_layout(layout, path.toStdString()); !saved) return saved.error();
  }
  m_settings->setLayoutOfShape(shapeOf(reading), path);
  return path.toStdString();
}

void LayoutMemory::forget(const log::Reading& reading) { m_settings->setLayoutOfShape(shapeOf(reading), {}); }

std::function<std::optional<log::Layout>(const log::Reading&)> LayoutMemory::snapshot() const {
  QMap<QString, log::Layout> kept;
  for (const auto& [shape, path] : m_settings->layoutsByShape()) {
    if (auto layout = log::load_layout(path.toStdString())) kept.insert(shape, std::move(*layout));
  }
  return [kept = std::move(kept)](const log::Reading& reading) -> std::optional<log::Layout> {
    if (kept.isEmpty()) return std::nullopt;
    const auto found = kept.constFind(shapeOf(reading));
    if (found == kept.constEnd()) return std::nullopt;
    log::Layout layout = *found;
    // The table that has the shape, whatever it is called here.
    layout.member = reading.layout.member;
    layout.sheet = reading.layout.sheet;
    return layout;
  };
}

}  // namespace ovenwright::desktop
