#pragma once
#include <QString>
#include <functional>
#include <string>
#include <vector>

#include "core/units/result.h"

class QObject;

namespace ovenwright::desktop {

class ArchiveLink;
class Settings;

/// Notes in the record that the sheets of these runs were printed.
/// @param failed  called where that could not be noted, unless `context` is gone by then
void notePrinted(ArchiveLink* link, QObject* context, std::vector<std::string> ids, const std::string& by,
                 std::function<void(const Error& error)> failed);

/// Who notes it: the operator of the settings, until there is one the user of this computer.
QString whoPrints(const Settings& settings);

}  // namespace ovenwright::desktop
