#pragma once
#include <QString>

#include "app/desktop/text/format.h"
#include "app/desktop/tune/tune_session.h"

namespace ovenwright::desktop {

/// What has to be known to write a change note: a recipe, what is predicted of it, and what it was changed from.
struct ChangeNote {
  oven::Oven oven;
  oven::Recipe from, to;
  QString run, board, window;                    ///< as they are called on the screen
  std::shared_ptr<const Prediction> prediction;  ///< of `to`, with its band
};

/// For the one who types it into the oven: each setpoint before and after, what is predicted, cautions, room to sign.
QString changeNoteHtml(const ChangeNote& note, const Format& format);
QString changeNoteText(const ChangeNote& note, const Format& format);
/// Vector, A4, text stays text. Errors: kIo.
Result<bool> writeChangeNotePdf(const ChangeNote& note, const Format& format, const QString& path);

}  // namespace ovenwright::desktop
