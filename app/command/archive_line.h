#pragma once
#include <memory>
#include <optional>

#include "app/command/command_line.h"

namespace CLI {
class App;
}

namespace ovenwright::command {

/// The commands `archive …` and `watch` with where their options go.
class ArchiveLine {
 public:
  ArchiveLine();
  ArchiveLine(const ArchiveLine&) = delete;
  ArchiveLine& operator=(const ArchiveLine&) = delete;
  ~ArchiveLine();
  void add_to(CLI::App& app);
  /// The one of these commands that was typed.
  std::optional<Command> parsed();

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace ovenwright::command
