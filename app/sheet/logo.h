#pragma once
#include <QByteArray>
#include <string>

#include "core/units/result.h"

namespace ovenwright::sheet {

/// The bytes of a logo for Style::logo: an SVG drawing, a PNG or a JPEG picture.
/// Errors, each naming the file: kIo where it cannot be read or is larger than 4 MB; kParse where it is no such picture
/// or a damaged one, has more than 25 million points, or is a drawing that runs scripts or fetches other files (with
/// the line and column).
Result<QByteArray> readLogo(const std::string& path);

}  // namespace ovenwright::sheet
