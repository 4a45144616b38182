#pragma once
#include "app/desktop/document/document.h"
#include "app/desktop/text/format.h"
#include "app/desktop/widgets/sentence_content.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {

/// What stands in the sentence's place while there is no verdict to say.
widgets::SentenceContent emptySentence();
/// Rows so far, a bar and Stop (command "stop").
widgets::SentenceContent readingSentence(const Document::Activity& activity, const Format& format);
/// Adds a link to the second line that leads to the warnings.
inline const QString kWarnings = QStringLiteral("warnings");
void addWarnings(widgets::SentenceContent& content, int count);
/// On the page that shows how a log was read: a link to each thing that was assumed (command "about " and the layout's
/// key), and in the second line what was read instead of the counts.
inline const QString kAbout = QStringLiteral("about ");
void addReading(widgets::SentenceContent& content, const RunView& view, const Format& format);
/// Whether a text of the reading says that the file states what its numbers contradict: it is taken as stated.
bool isDoubt(const std::string& text);
/// On the other pages: a link to what the file states and its numbers contradict.
void addDoubts(widgets::SentenceContent& content, const RunView& view);
/// Title, text and cures (commands "0", "1", …: indexes into Notice::cures).
widgets::SentenceContent noticeSentence(const Notice& notice);

}  // namespace ovenwright::desktop
