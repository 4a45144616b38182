#include "app/sheet/logo.h"

#include <QBuffer>
#include <QFile>
#include <QImageReader>
#include <QSvgRenderer>
#include <QXmlStreamReader>

namespace ovenwright::sheet {
namespace {

constexpr const char* kExpected = "an SVG drawing, a PNG or a JPEG picture";

Error refused(const std::string& path, const std::string& message) {
  return {ErrorCode::kParse, message, {path, 0, 0}, "", kExpected};
}

/// What a drawing must not have: whoever opens the sheet would run it or fetch it.
std::string forbidden(const QXmlStreamReader& xml) {
  const QString name = xml.name().toString();
  for (const char* element : {"script", "foreignObject", "iframe", "object", "embed", "audio", "video"})
    if (name.compare(QLatin1String(element), Qt::CaseInsensitive) == 0)
      return "the element <" + name.toStdString() + ">";
  for (const auto& attribute : xml.attributes()) {
    const QString key = attribute.name().toString(), value = attribute.value().toString().trimmed();
    if (key.startsWith(QLatin1String("on"), Qt::CaseInsensitive)) return "the handler " + key.toStdString();
    const bool leads = key == QLatin1String("href") || key == QLatin1String("src");
    if (leads && !value.startsWith(u'#') && !value.startsWith(QLatin1String("data:image/")))
      return "a link to " + value.left(80).toStdString();
    if (const auto at = value.indexOf(QLatin1String("url(")); at >= 0) {
      const QString target = value.mid(at + 4).trimmed().remove(u'"').remove(u'\'');
      if (!target.startsWith(u'#') && !target.startsWith(QLatin1String("data:image/")))
        return "a link to " + target.left(80).toStdString();
    }
  }
  return {};
}

std::optional<Error> problemOfDrawing(const QByteArray& bytes, const std::string& path) {
  QXmlStreamReader xml(bytes);
  while (!xml.atEnd()) {
    const auto token = xml.readNext();
    std::string found;
    if (token == QXmlStreamReader::StartElement) found = forbidden(xml);
    if (token == QXmlStreamReader::DTD && !xml.entityDeclarations().isEmpty()) found = "entities of its own";
    if (token == QXmlStreamReader::ProcessingInstruction) found = "a processing instruction";
    if (token == QXmlStreamReader::Characters && xml.text().contains(QLatin1String("@import")))
      found = "a style that fetches";
    if (found.empty()) continue;
    return Error{ErrorCode::kParse,
                 "found " + found + ", expected a drawing alone: a logo runs nothing and fetches nothing",
                 {path, int(xml.lineNumber()), int(xml.columnNumber()) + 1},
                 found,
                 "a drawing alone"};
  }
  if (xml.hasError())
    return Error{ErrorCode::kParse,
                 "is a damaged SVG drawing: " + xml.errorString().toStdString(),
                 {path, int(xml.lineNumber()), int(xml.columnNumber()) + 1},
                 "",
                 kExpected};
  const QSvgRenderer renderer(bytes);
  if (!renderer.isValid() || renderer.defaultSize().isEmpty()) return refused(path, "is a drawing without a size");
  return std::nullopt;
}

std::optional<Error> problemOfPicture(const QByteArray& bytes, const std::string& path) {
  constexpr qint64 kMostPoints = 25'000'000;
  QBuffer buffer;
  buffer.setData(bytes);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer);
  const QByteArray format = reader.format();
  if (format != "png" && format != "jpeg")
    return refused(path, "is no picture that a sheet can show, expected " + std::string{kExpected});
  const QSize size = reader.size();
  if (qint64(size.width()) * size.height() > kMostPoints)
    return refused(path, "has " + std::to_string(size.width()) + " × " + std::to_string(size.height()) +
                             " points: no logo is that large");
  if (reader.read().isNull()) return refused(path, "is a damaged picture: " + reader.errorString().toStdString());
  return std::nullopt;
}

bool isDrawing(const QByteArray& bytes) {
  QXmlStreamReader xml(bytes);
  return xml.readNextStartElement() && xml.name() == QLatin1String("svg");
}

}  // namespace

Result<QByteArray> readLogo(const std::string& path) {
  constexpr qint64 kMost = 4 << 20;  // bytes: it is embedded in every page
  QFile file(QFile::decodeName(path.c_str()));
  if (!file.open(QIODevice::ReadOnly))
    return Error{ErrorCode::kIo, "cannot be read: " + file.errorString().toStdString(), {path, 0, 0}, "", ""};
  const QByteArray bytes = file.read(kMost + 1);
  if (bytes.size() > kMost) return Error{ErrorCode::kIo, "is larger than 4 MB: no logo is", {path, 0, 0}, "", ""};
  if (file.error() != QFile::NoError)
    return Error{ErrorCode::kIo, "cannot be read: " + file.errorString().toStdString(), {path, 0, 0}, "", ""};
  const auto error = isDrawing(bytes) ? problemOfDrawing(bytes, path) : problemOfPicture(bytes, path);
  if (error) return *error;
  return bytes;
}

}  // namespace ovenwright::sheet
