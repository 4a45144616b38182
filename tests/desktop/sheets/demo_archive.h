#pragma once
#include <QString>
#include <string>
#include <vector>

namespace ovenwright::desktop {

/// Keeps logs of the demo, judged with its window, board, oven and recipe, in the archive file as the command does.
/// The ids in the order of the logs. Runs of the same log are told apart by a line that is put before it.
std::vector<std::string> keepDemo(const QString& archive, const std::string& lot, const std::vector<std::string>& logs,
                                  const QString& folder);

}  // namespace ovenwright::desktop
