#pragma once
#include <QString>

#include "app/desktop/text/format.h"
#include "core/report/change_note.h"

namespace ovenwright::desktop {

/// For the one who types it into the oven: each setpoint before and after, what is predicted, cautions, room to sign.
/// Vector, A4, text stays text, in the language of the screen. Errors: kIo.
Result<bool> writeChangeNotePdf(const report::ChangeNote& note, const Format& format, const QString& path);

/// The same as plain text of at most 96 columns, where names and digests allow. Lines break at blanks alone, so those
/// of Chinese, which has few, can be longer.
QString changeNoteText(const report::ChangeNote& note, const Format& format);

}  // namespace ovenwright::desktop
