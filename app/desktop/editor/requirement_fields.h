#pragma once
#include <QString>
#include <optional>

#include "core/window/window.h"

namespace ovenwright::desktop {

/// The fields of a requirement as the editor shows and takes them: one column each.
enum class RequirementField {
  kName,
  kMeasure,
  kParameters,
  kAppliesTo,
  kSide,
  kLower,
  kTarget,
  kUpper,
  kRequired,
  kSource,
  kCount
};

QString fieldTitle(RequirementField field);
QString fieldText(const window::Requirement& requirement, RequirementField field);
/// What a field can be, where it is a choice; empty where it is typed.
QStringList fieldChoices(RequirementField field);
/// Puts typed text into the requirement. Numbers may have a decimal comma. Empty where that went well, else one
/// sentence saying what was expected; the requirement then stays as it was.
QString setField(window::Requirement& requirement, RequirementField field, const QString& text);

/// The revision after a revision: "2" after "1", "D" after "C", "rev8" after "rev7"; "2" after none.
QString nextRevision(const std::optional<std::string>& revision);

}  // namespace ovenwright::desktop
