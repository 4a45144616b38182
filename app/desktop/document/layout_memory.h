#pragma once
#include <QString>
#include <functional>
#include <optional>

#include "core/log/reading.h"
#include "core/units/result.h"

namespace ovenwright::desktop {

class Settings;

/// Layouts that the user keeps for logs of one shape: the same separator, form and headings. The layouts are files in
/// the user's data folder, as the command reads them by name; which shape goes with which is in the settings.
class LayoutMemory {
 public:
  explicit LayoutMemory(Settings* settings) : m_settings(settings) {}

  /// A short digest of what logs of one instrument have in common.
  static QString shapeOf(const log::Reading& reading);

  /// The name under which logs of this shape are read, empty where none is kept.
  QString nameFor(const log::Reading& reading) const;
  /// Writes the layout under its name and reads logs of this shape by it from now on. A layout of that name that is
  /// different gives way to a new file of the next number. Errors: kBadArgument without a name; kIo.
  Result<std::string> keep(const log::Reading& reading, log::Layout layout);
  void forget(const log::Reading& reading);

  /// For jobs: may be asked in any thread; knows what is kept now.
  std::function<std::optional<log::Layout>(const log::Reading&)> snapshot() const;

 private:
  Settings* m_settings;
};

}  // namespace ovenwright::desktop
