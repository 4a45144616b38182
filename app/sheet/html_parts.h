#pragma once
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <span>

#include "app/desktop/widgets/sentence_content.h"
#include "app/sheet/record.h"
#include "app/sheet/table.h"

class QPainter;

namespace ovenwright::sheet {

// What sheets in HTML are put together from.

/// Text as HTML: never markup, never turning the direction of what stands around it.
QString html(const QString& text);
/// What `paint` draws, as an SVG element.
QString svg(const QSizeF& size, const QString& name, const std::function<void(QPainter&, const QRectF&)>& paint);
QString headerHtml(const Style& style, const QString& title, const QString& subject, const QStringList& asides);
QString sentenceHtml(const widgets::SentenceContent& content);
QString tableHtml(const Table& table);
QString cautionsHtml();
QString signatureHtml();

/// The article that sums several runs up, as the first page of their sheet in PDF.
QString lotArticle(std::span<const RunRecord> runs, const Style& style);

}  // namespace ovenwright::sheet
