#pragma once
#include "app/desktop/widgets/sentence_content.h"
#include "app/sheet/facts.h"
#include "app/sheet/page.h"

namespace ovenwright::sheet {

/// Pieces of a page that several kinds of sheets share; each is a block of full width.

/// Company and logo at the left over the title, what the sheet is about at the right, a line under it.
Block headingBlock(const Style& style, const QString& title, const QString& subject, const QStringList& asides,
                   const widgets::Theme& theme, qreal width);
Block sentenceBlock(const widgets::SentenceContent& content, const widgets::Theme& theme, qreal width);
/// Label and value in two columns, then each log in a line of its own with its digest.
Block factsBlock(const QList<Fact>& facts, const QList<LogFact>& logs, const widgets::Theme& theme, qreal width);
/// A bold line over what follows.
Block captionBlock(const QString& text, const widgets::Theme& theme);
/// One paragraph in small print, its label first.
Block noteBlock(const Fact& note, const widgets::Theme& theme, qreal width);
/// The same notes as one paragraph, where room is short.
QList<Fact> inOneParagraph(const QList<Fact>& notes);
/// The cautions in full with a bar at their left; `picture` stands beside them where there is one.
Block cautionsBlock(const widgets::Theme& theme, qreal width,
                    std::function<void(QPainter&, const QRectF&)> picture = {});
/// Lines to sign on.
Block signatureBlock(const widgets::Theme& theme);
/// Cautions and signatures at the foot of the page that the flow is on, which is the one that is signed; the flow keeps
/// off them.
void addFoot(Document& document, Flow& flow, const widgets::Theme& theme,
             std::function<void(QPainter&, const QRectF&)> picture);
/// "Made 12 March 2026 10:42 from the archive"
QString madeText(const Style& style, bool fromArchive);

}  // namespace ovenwright::sheet
