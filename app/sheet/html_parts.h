#pragma once
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <span>
#include <string>

#include "app/desktop/widgets/lane_table.h"
#include "app/desktop/widgets/sentence_content.h"
#include "app/desktop/widgets/theme.h"
#include "app/sheet/facts.h"
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
QString factsHtml(const QList<Fact>& facts, const QList<LogFact>& logs);
QString lanesHtml(const widgets::LaneTable& lanes, const widgets::Theme& theme, qreal width);
/// The heading of a part of the page.
QString captionHtml(const QString& text);
QString tableHtml(const Table& table);
QString notesHtml(const QList<Fact>& notes);
QString cautionsHtml();
QString signatureHtml();

/// The whole page around its articles, with its style, the program and the time; it fetches nothing.
std::string pageHtml(const Style& style, const QString& title, const QString& body);

/// The article that sums several runs up, as the first page of their sheet in PDF.
QString lotArticle(std::span<const RunRecord> runs, const Style& style);

}  // namespace ovenwright::sheet
