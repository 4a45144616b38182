#include "app/command/commands.h"

int main(int argc, char** argv) {
  using namespace ovenwright::command;
  const auto parsed = parse_command_line(argc, argv);
  if (const auto* status = std::get_if<ExitStatus>(&parsed)) return static_cast<int>(*status);
  return static_cast<int>(std::visit([](const auto& options) { return run(options); }, std::get<Command>(parsed)));
}
