#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "app/archive/record.h"
#include "core/check/check.h"

namespace ovenwright::archive {

/// The runs of a judged log as records to be kept, with the bytes of everything they were judged with. `path` is the
/// log's file. Where the labels have no time of run it is that of the log's own clock, in this computer's time zone
/// unless the log names one, else that of its file.
/// Errors: kIo where the log, the oven, the board or its picture cannot be read any more or is not what was judged.
Result<std::vector<NewRun>> keep(const std::string& path, const check::Request& request, const check::CheckedLog& log,
                                 const Labels& labels);
/// The same for a log whose bytes are at hand, such as a pasted text. `known` are files whose bytes are at hand too.
Result<std::vector<NewRun>> keep(NewFile log, Moment fileTime, const check::Request& request,
                                 const check::CheckedLog& checked, const Labels& labels,
                                 std::span<const NewFile> known = {});

/// A window with its bytes: those of its file where they are still what it was read from, else its text written anew.
NewFile windowFile(const window::ProcessWindow& window, std::span<const NewFile> known = {});

class Archive;

/// The picture that a board of judgedWith() holds in place of a path: a data URL with its name and bytes. Empty for a
/// path.
std::optional<NewFile> pictureInside(const std::string& picture);

/// What a kept run was judged with, from the bytes that its record names. The board's picture is pictureInside().
struct JudgedWith {
  NewFile log;
  check::Request request;
  std::vector<NewFile> known;        ///< every file that was fetched
  std::vector<NewFile> attachments;  ///< such as the board's picture
};
/// With `windows` in place of its own where there are some.
/// Errors: those of Archive::content(); of the parsers where a kept file is no longer understood.
Result<JudgedWith> judgedWith(Archive& archive, const Record& record,
                              const std::vector<window::ProcessWindow>& windows);

/// A kept run judged anew from its own bytes, as a record to be added beside the old one: against the windows it had,
/// or against others.
/// Errors: those of Archive::load() and content(); of the parsers where a kept file is no longer understood.
Result<NewRun> judgeAgain(Archive& archive, const std::string& id, const std::vector<window::ProcessWindow>& windows);

}  // namespace ovenwright::archive
