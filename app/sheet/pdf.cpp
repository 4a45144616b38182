#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include "app/sheet/facts.h"
#include "app/sheet/sheet.h"

namespace ovenwright::sheet {

QByteArray toPdf(const Document& document) {
  constexpr int kResolution = 1200;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(kResolution);
    writer.setPageSize(QPageSize(document.paper == Paper::kA4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(document.subject.isEmpty() ? document.title
                                               : document.title + QStringLiteral(", ") + document.subject);
    writer.setCreator(programText());
    QPainter painter(&writer);
    painter.scale(kResolution / kUnitsPerInch, kResolution / kUnitsPerInch);
    for (std::size_t page = 0; page < document.pages.size(); ++page) {
      if (page > 0) writer.newPage();
      paintPage(painter, document, page);
    }
  }
  return bytes;
}

}  // namespace ovenwright::sheet
