#pragma once
#include "app/desktop/compare/compare_session.h"
#include "app/desktop/text/format.h"
#include "app/desktop/widgets/sentence_content.h"

namespace ovenwright::desktop {

/// What stands in the place of the verdict while Compare is looked at. Links of states without an answer carry
/// commands: "open", "add", "demo", "window".
widgets::SentenceContent compareSentence(const CompareSession& session, const Format& format);

/// "2 runs, 6 thermocouples in common"
QString compareStatus(const Compared& compared);

}  // namespace ovenwright::desktop
