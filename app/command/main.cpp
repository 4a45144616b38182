#include "app/command/commands.h"
#include "app/command/output.h"
#include "app/command/pass_on.h"
#include "core/units/memory.h"

int main(int argc, char** argv) {
  using namespace ovenwright;
  using namespace ovenwright::command;
  if (const auto failed = pass_on(argc, argv)) return static_cast<int>(*failed);
  const auto parsed = parse_command_line(argc, argv);
  if (const auto* status = std::get_if<ExitStatus>(&parsed)) return static_cast<int>(*status);
  const auto status = within_memory({}, [&]() -> Result<ExitStatus> {
    return std::visit([](const auto& options) { return command::run(options); }, std::get<Command>(parsed));
  });
  if (status) return static_cast<int>(*status);
  report_error(status.error());
  return static_cast<int>(exit_status(status.error()));
}
