#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "app/archive/archive.h"
#include "app/archive/watch.h"

namespace ovenwright::command {

/// A name from a log or a file on one line of a terminal.
std::string shown(const std::string& name);

/// A run as it was added, one line of JSON.
struct AddedLine {
  std::string id, log, sha256;
  bool already = false;
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::optional<double> margin;
  std::string judged_from;  ///< empty: a first judgement
  archive::RunTime time;
};
std::string added_json(const AddedLine& line);
/// "kept 7kq2mv9x-12: a.csv, pass, margin 31 %, run at 2026-03-11T09:14:22Z (by the log's own clock)", or "already
/// 7kq2mv9x-12: a.csv".
std::string added_text(const AddedLine& line);

/// A line of `watch`, ended by a newline.
std::string watched_json(const archive::Watched& watched);

/// `[…]`: errors as `check` reports them.
std::string errors_json(std::span<const Error> errors);

/// One entry of `runs` of `archive list`.
std::string summary_json(const archive::Summary& summary);
std::string list_text(std::span<const archive::Summary> runs, std::size_t total);

/// What stands below a kept report for people: where and when it was kept, its digests, which of its windows were
/// released, and when its sheet was printed.
std::string record_text(const archive::Record& record, std::span<const archive::ReleasedWindow> released,
                        std::span<const archive::PrintedNote> printed);

/// The windows that were released, the newest release first.
std::string released_json(std::span<const archive::ReleasedWindow> released);
std::string released_text(std::span<const archive::ReleasedWindow> released);

/// "heads": […], and the same for people.
std::string heads_json(std::span<const archive::Head> heads);
std::string heads_text(std::span<const archive::Head> heads);

/// A text as JSON, or null where there is none.
std::string json_text(const std::string& text);
std::string json_text(const std::optional<std::string>& text);

}  // namespace ovenwright::command
