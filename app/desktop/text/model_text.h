#pragma once
#include <QString>
#include <string>

namespace ovenwright::desktop {

/// What the model and the search say of a fit or a search (heat::FitReport's message and warnings, tune::Report's
/// notes), in the user's language, as part of a sentence; a text that is not known stays English.
QString modelInWords(const std::string& english);

}  // namespace ovenwright::desktop
