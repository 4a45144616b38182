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
/// Title, text and cures (commands "0", "1", …: indexes into Notice::cures).
widgets::SentenceContent noticeSentence(const Notice& notice);

}  // namespace ovenwright::desktop
