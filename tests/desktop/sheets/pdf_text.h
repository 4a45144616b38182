#pragma once
#include <QString>

namespace ovenwright::desktop {

/// The text of a PDF in reading order, every run of blanks and line ends as one blank; from pdftotext, so from outside
/// our code.
QString pdfText(const QString& file);
/// What pdfinfo says behind a key, such as "Pages".
QString pdfInfo(const QString& file, const QString& key);

}  // namespace ovenwright::desktop
