#include "app/command/commands.h"
#include "app/command/pass_on.h"

int main(int argc, char** argv) {
  using namespace ovenwright::command;
  if (const auto failed = pass_on(argc, argv)) return static_cast<int>(*failed);
  const auto parsed = parse_command_line(argc, argv);
  if (const auto* status = std::get_if<ExitStatus>(&parsed)) return static_cast<int>(*status);
  return static_cast<int>(std::visit([](const auto& options) { return run(options); }, std::get<Command>(parsed)));
}
