#include "app/command/pass_on.h"

#include <unistd.h>

#include <filesystem>
#include <string_view>
#include <system_error>

#include "app/command/output.h"

namespace ovenwright::command {

std::optional<ExitStatus> pass_on(int argc, char** argv) {
  if (argc < 2 || std::string_view(argv[1]) != "sheet") return std::nullopt;
  namespace fs = std::filesystem;
  std::error_code failed;
  const fs::path folder = fs::read_symlink("/proc/self/exe", failed).parent_path();
  for (const fs::path& place : {folder, folder / OVENWRIGHT_LIBEXEC_FROM_BIN}) {
    const fs::path program = place / "ovenwright-sheet";
    if (!fs::exists(program, failed)) continue;
    ::execv(program.c_str(), argv);
    report_error({ErrorCode::kIo, "cannot be run", {program.string(), 0, 0}, "", ""});
    return ExitStatus::kUnwritable;
  }
  report_error({ErrorCode::kIo,
                "ovenwright-sheet is missing beside it: sheets are drawn by that program",
                {folder.string(), 0, 0},
                "",
                ""});
  return ExitStatus::kUnwritable;
}

}  // namespace ovenwright::command
