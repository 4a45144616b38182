#include "app/command/commands.h"
#include "app/command/output.h"
#include "core/files/text_file.h"
#include "core/report/json.h"
#include "core/report/text.h"

namespace ovenwright::command {

ExitStatus run(const ListOptions& options) {
  if (options.name) {
    const auto file = files::find_profile(options.kind, *options.name);
    const auto text = file ? files::read_text(*file) : Result<std::string>{file.error()};
    if (text) return write_output(options.common, *text, ExitStatus::kDone);
    report_error(text.error());
    return exit_status(text.error());
  }
  const auto listed = files::list_profiles(options.kind);
  if (!listed) {
    report_error(listed.error());
    return exit_status(listed.error());
  }
  const bool json = options.common.format == Format::kJson;
  return write_output(options.common,
                      json ? report::list_json(options.kind, *listed) : report::list_text(options.kind, *listed),
                      ExitStatus::kDone);
}

}  // namespace ovenwright::command
