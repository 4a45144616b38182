#pragma once
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/archive/moment.h"
#include "core/judge/judgement.h"

namespace ovenwright::archive {

/// A file that is given to be kept: its bytes are shared between the runs of one log or one window.
struct NewFile {
  std::string name;
  std::optional<std::string> revision;
  std::shared_ptr<const std::string> bytes;
  std::string sha256;  ///< of the bytes
};

/// A file as it was when a run was judged: a window, oven, recipe, board, layout, or the log itself.
struct KeptFile {
  std::string name;
  std::optional<std::string> revision;
  std::string sha256;  ///< Archive::content() gives the bytes
};

/// Where the time of a run comes from. The numbers stand in archives.
enum class RunAtFrom {
  kFileTime = 0,  ///< of the log's file: nothing better was known
  kGiven = 1,     ///< somebody said it
  kLogClock = 2   ///< a date that stands in the log itself
};
const char* runAtFromName(RunAtFrom from);  ///< "file time", "given", "log clock"

/// What was said about a run when it was added. Texts are data: any characters, any length.
struct Labels {
  std::string lot, serial, operatorName;
  std::optional<Moment> runAt;  ///< absent: the time by the log's own clock, else that of its file
};

/// One run of a log with its evidence, to be kept; keep() makes them from a judged log.
struct NewRun {
  NewFile log;
  int part = 1, parts = 1;  ///< which pass of how many the log holds
  std::vector<NewFile> windows;
  std::optional<NewFile> oven, recipe, board, layout;
  std::vector<NewFile> attachments;  ///< such as the board's picture
  std::optional<double> entry_s;     ///< where it was given, not found
  std::vector<int> keepSpikes;       ///< channels whose spikes were left as they are
  bool windowAssumed = false;
  std::string report;   ///< what `check` prints of this run as JSON, ovenwright.check/1
  std::string text;     ///< the same for people
  std::string program;  ///< "ovenwright 0.1.0"
  Labels labels;
  std::optional<Moment> startedAt;  ///< by the log's own clock; absent: no date stands in it
  Moment fileTime{};                ///< of the log's file
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::optional<double> margin;
  std::string judgedFrom;  ///< id of the record of the same run that this is a new judgement of; else empty
};

/// The time that is kept of a run, and where it comes from.
struct RunTime {
  Moment at{};
  RunAtFrom from = RunAtFrom::kFileTime;
};
RunTime runTime(const NewRun& run);

/// A record as it stands in a list.
struct Summary {
  std::string id;  ///< chain and number in it: "7kq2mv9x-1042"; stays the same in every archive the record is moved to
  Moment runAt{}, addedAt{};
  RunAtFrom runAtFrom = RunAtFrom::kFileTime;
  std::string lot, serial, board, oven, recipe;
  std::string window, windowRevision;  ///< names of several windows are joined by " + "
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::optional<double> margin;
  std::string logSha256, logName;
  int part = 1, parts = 1;
  std::string operatorName;
  std::string judgedFrom;           ///< id of the older record that this is a new judgement of; else empty
  std::string origin;               ///< id of the first record of this run: its own, or where the new judgements began
  std::optional<Moment> printedAt;  ///< when its sheet was last noted as printed; absent: never
};

/// That the sheet of a record was printed.
struct PrintedNote {
  std::string id;  ///< of the record
  Moment at{};
  std::string by;       ///< who said so
  std::string station;  ///< name of the machine
};

/// Everything a record says. Archive::content() gives the bytes of the files it names, report() and text() what was
/// printed.
struct Record {
  Summary summary;
  KeptFile log;
  std::uint64_t logBytes = 0;
  std::vector<KeptFile> windows;
  std::optional<KeptFile> oven, recipe, board, layout;
  std::vector<KeptFile> attachments;
  std::optional<double> entry_s;
  std::vector<int> keepSpikes;
  bool windowAssumed = false;
  std::string reportSha256, textSha256;
  std::string program;
  std::string chain, station;  ///< place of origin: the chain's id and the name of the machine it began on
  std::uint64_t number = 0;    ///< in its chain, from 1
  std::string previous;        ///< digest of the record before it; 64 zeros for the first
  std::string digest;          ///< SHA-256 of `previous`, a line feed, and the record's body
  std::string repeats;  ///< id of the record of the same run and judgement that lists show in its place; or empty
};

/// A window that lots may be judged by.
struct ReleasedWindow {
  KeptFile window;
  Moment releasedAt{};
  std::string releasedBy;
};

/// The end of one chain: what a sheet prints, so that a cut tail shows against paper.
struct Head {
  std::string chain, station;
  std::uint64_t count = 0;
  std::string digest;  ///< of its last record
};

}  // namespace ovenwright::archive
