#pragma once
#include <optional>

#include "app/sheet/record.h"
#include "core/units/result.h"

class QString;

namespace ovenwright::desktop {

class Document;
class Settings;

/// What stands on every sheet and how it is printed, from the settings, made now.
/// @param noLogo  set where the logo of the settings cannot be used: the sheet has none then
sheet::Style sheetStyle(const Settings& settings, std::optional<Error>* noLogo = nullptr);

/// Whether the path is the file of a log that is open: a sheet never takes a log's place.
bool isOpenLog(const Document& document, const QString& path);

}  // namespace ovenwright::desktop
