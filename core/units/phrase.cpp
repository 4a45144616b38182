#include "core/units/phrase.h"

#include <array>

#include "core/units/phrase_tables.h"

namespace ovenwright {
namespace {

/// What errors say was found and expected, and whole messages of those that found nothing.
constexpr std::array<std::string_view, 146> kWordsOfErrors{
    "a log",
    "a log of many samples",
    "a table of times and temperatures",
    "a whole JSON document",
    "a JSON document of readings",
    "records, rows or columns of readings",
    "one record a line",
    "the column \"{0}\" of the header",
    "at most {0}",
    "{0} cells in a row",
    "a JSON document without a table",
    "JSON that is damaged or cut off",
    "a column of temperatures",
    "a column of times, or an interval",
    "a time",
    "a time with a decimal point",
    "a time with a decimal comma",
    "a temperature",
    "times",
    "times that go on",
    "times that start anew in {0} places",
    "time, channel and value",
    "seconds above 0",
    "°C, °F, K or mV",
    "a file",
    "a whole gzip file",
    "a whole zip archive",
    "a whole .xlsx workbook",
    "a zip archive with a log in it",
    "a text log, a workbook or an HTML table",
    "a workbook (.xlsx, .ods), an HTML table or a text log",
    "one with a table of readings",
    "one that can be read without",
    "numbers with a decimal point, or another delimiter",
    "1 cell",
    "{0} cells",
    "binary data (byte {0} at offset {1})",
    "bytes that {0} does not allow",
    "a workbook of the old binary kind (.xls) or one with a password",
    "a PDF document",
    "about {0} rows of {1} numbers",
    "at most {0} channels",
    "at most {0} numbers in a log",
    "text in {0}",
    "an empty file",
    "a header and no rows behind it",
    "one sample",
    "no sample",
    "the same time in every row",
    "a folder",
    "damaged",
    "cut short",
    "an empty zip archive",
    "an HTML document without a table",
    "a workbook with a password",
    "{0} channels",
    "found nothing but blanks, expected a log",
    "found no table, expected one of times and temperatures",
    "found no column of temperatures, expected one at least",
    "found no column of times and no stated interval, expected times, or an interval in seconds between rows",
    "found no times in column {0}",
    "the log has no temperature channel",
    "no row has a usable time",
    "cannot be read: {0}",
    "there is not enough memory for it",
    // Of the archive and of folders that are watched.
    "there is no archive",
    "the file is empty, no archive",
    "it is a database of another program, no archive",
    "the archive has version {0}, this program knows up to {1}: it takes a newer program",
    "the server does not answer: none runs there",
    "the server's name is not known in the network",
    "the server is starting or stopping",
    "the server has no connection free",
    "the server takes too long to answer",
    "the server has no room left on its disk",
    "the server was left",
    "the server refuses: it wants a password, and the password file has none for it",
    "the server refuses: the password of {0} is wrong",
    "the server refuses: it knows no user {0}",
    "the server refuses: it has no database {0}",
    "the server refuses: {0} may not connect from this computer",
    "the server refuses: it can only be read at present",
    "the server refuses: this user may not do this ({0})",
    "another transaction was in the way",
    "another program holds the archive",
    "the disk is full",
    "it cannot be written",
    "it is damaged, or no database",
    "the disk does not read or write",
    "the file cannot be opened",
    "the server's archive has version {0}, this program needs version {1}: the owner of its tables brings it forward "
    "with the command ovenwright archive list",
    "the backup {0} cannot be named",
    "there are no bytes {0}",
    "{0} does not hold: verify the archive",
    "{0} names bytes that are missing: {1}",
    "packed bytes are damaged",
    "the record's body is damaged",
    "it has {0} records of the chain {1}, but {2} were moved to it: it has lost records",
    "it has another record {0} than {1}: one of the two was changed or continued from a copy",
    "it has another note of the printed sheet of {0} than {1}: one of the two was changed or continued from a copy",
    "it has lost notes of printed sheets that were moved to it, of the chain {0}",
    "stopped",
    "an id of the archive",
    "an id of the archive, or the digest of a log or a record from a sheet",
    "the archive is open for reading only",
    "there is no archive in the database yet",
    "the server refuses: this user may only read the archive",
    "the server does not answer",
    "the server refuses ({0})",
    "the database reports an error ({0})",
    "the file's disk does not serve a write-ahead log",
    "the PostgreSQL driver of Qt is not installed",
    "there is no record {0}",
    "{0} is damaged",
    "{0} is missing",
    "the bytes kept as {0} are damaged",
    "has changed since it was read: judge again",
    "has changed while it was judged",
    "the log is no longer read as one run",
    "no run of the lot is in the archive",
    "its name does not match the rule's expression for lot, serial or operator",
    "cannot be written: {0}",
    "No such file or directory",
    "Permission denied",
    "Not a directory",
    "Is a directory",
    "No space left on device",
    "Read-only file system",
    "Input/output error",
    "nothing",
    "a text in quotes",
    "true or false",
    "a number or a text in quotes",
    "an array of numbers",
    "an array of texts",
    "tables: {0}",
    "a [[rule]]",
    "a regular expression",
    "the recipe that the oven ran",
    "the oven that the recipe ran on",
    "a file that people edit",
    "a file or the name of a window",
    "a file or the name of an oven",
    "a file or the name of a recipe",
    "a file or the name of a board",
    "a file or the name of a layout",
};

/// Words between the places, in order: one more than there are places.
std::vector<std::string_view> pieces_of(std::string_view pattern) {
  std::vector<std::string_view> pieces;
  std::size_t from = 0;
  for (std::size_t at = pattern.find('{'); at != std::string_view::npos; at = pattern.find('{', from)) {
    pieces.push_back(pattern.substr(from, at - from));
    from = at + 3;  // places are single digits
  }
  pieces.push_back(pattern.substr(from));
  return pieces;
}

/// What stands in the places of the pattern; empty where the text is not of it. Places stand in rising order.
std::optional<std::vector<std::string>> arguments_of(std::string_view text, std::string_view pattern) {
  const auto pieces = pieces_of(pattern);
  if (pieces.size() == 1) return text == pattern ? std::optional(std::vector<std::string>{}) : std::nullopt;
  if (!text.starts_with(pieces.front()) || text.size() < pieces.front().size() + pieces.back().size() ||
      !text.ends_with(pieces.back()))
    return std::nullopt;
  text.remove_prefix(pieces.front().size());
  text.remove_suffix(pieces.back().size());
  std::vector<std::string> arguments;
  for (std::size_t i = 1; i + 1 < pieces.size(); ++i) {
    const auto at = text.find(pieces[i]);
    if (at == std::string_view::npos) return std::nullopt;
    arguments.emplace_back(text.substr(0, at));
    text.remove_prefix(at + pieces[i].size());
  }
  arguments.emplace_back(text);
  for (const auto& argument : arguments)
    if (argument.empty()) return std::nullopt;
  return arguments;
}

}  // namespace

std::string_view english(Phrase phrase) {
  switch (phrase) {
    case Phrase::kUnitCelsius:
      return "No unit in the file: read as °C. As °F the top would be {0} °C.";
    case Phrase::kUnitMillivolts:
      return "No unit in the file: read as thermocouple voltage in mV. As °C the top would be {0} °C.";
    case Phrase::kUnitFahrenheit:
      return "No unit in the file: read as °F, which makes the top {0} °C. As °C it would be {1} °C.";
    case Phrase::kUnitKelvin:
      return "No unit in the file: read as K, which makes the top {0} °C. As °C it would be {1} °C.";
    case Phrase::kTenths:
      return "Whole numbers up to {0} are no temperatures of a board: read as tenths of a degree, though no scale is "
             "stated.";
    case Phrase::kResolution:
      return "A factor of {0} is stated, but the numbers are temperatures as they stand: taken as the resolution.";
    case Phrase::kTypeK:
      return "No type of thermocouple is stated: taken as K, the most common one.";
    case Phrase::kJunctionRoom:
      return "No cold junction is stated, and the log starts near 0 mV: taken as 25 °C.";
    case Phrase::kJunctionZero:
      return "No cold junction is stated, and the log starts at the voltage of a room's temperature: taken as 0 °C.";
    case Phrase::kIntervalUnit:
      return "The unit of the interval is not stated: read as {0} s.";
    case Phrase::kFractionsOfADay:
      return "No unit of time is stated: the numbers are read as fractions of a day, which makes the run last {0}.";
    case Phrase::kMilliseconds:
      return "No unit of time is stated: read as milliseconds, which makes the run last {0}; as seconds it would last "
             "{1}.";
    case Phrase::kMinutes:
      return "No unit of time is stated: read as minutes, which makes the run last {0}; as seconds it would last {1}.";
    case Phrase::kFirstColumn:
      return "Nothing says what the first column counts: read as seconds.";
    case Phrase::kHoursMinutes:
      return "Times of two parts are read as hours and minutes, which makes the run last {0}; the other way it would "
             "last {1}.";
    case Phrase::kMinutesSeconds:
      return "Times of two parts are read as minutes and seconds, which makes the run last {0}; the other way it would "
             "last {1}.";
    case Phrase::kDateOrder:
      return "The date may be read in more than one order, and nothing in the file settles it: read as {0}. Durations "
             "do not depend on it.";
    case Phrase::kSpreadEvenly:
      return "Times are rounded to {0} s and several rows carry the same: the rows are spread evenly, {1} s apart.";
    case Phrase::kSpreadWithin:
      return "Times are rounded to {0} s and several rows carry the same: they are not evenly apart, so those of one "
             "time are spread over it.";
    case Phrase::kDecimal:
      return "Numbers such as {0} may have a decimal sign or thousands in them, and nothing in the file settles it: "
             "read with '{1}' as the decimal sign.";
    case Phrase::kEncoding:
      return "More than one encoding is plausible: read as {0}. Numbers do not depend on it.";
    case Phrase::kTurnedByVoltage:
      return "The wires of {0} are exchanged: its voltage, type {1}, is turned about a reference junction at {2} °C. "
             "The result is off by twice what the junction differs from that.";
    case Phrase::kMirrored:
      return "The wires of {0} are exchanged: its readings are mirrored at {1} °C. The result is off by twice what the "
             "reference junction differs from that.";
    case Phrase::kStatedUnit:
      return "The file says {0}, which makes the top {1} °C: no run. As {2} it would be {3} °C.";
    case Phrase::kSummerBegins:
      return "The clock jumps forward an hour at {0}:00 at night, as where summer time begins: the rows go on without "
             "the jump.";
    case Phrase::kSummerEnds:
      return "The clock jumps back an hour to {0}:00 at night, as where summer time ends: the rows go on without the "
             "jump.";
    case Phrase::kCounterStartsAnew:
      return "The counter of times starts anew at {0}: the rows go on.";
    case Phrase::kOtherTable:
      return "At line {0} another table begins, of other channels: {1}, {2} rows. It was not read.";
    case Phrase::kSeconds:
      return "No unit of time is stated: read as seconds, which makes the run last {0}.";
    case Phrase::kDateGoesOn:
      return "The date goes on from day to day only if read in the order {0}.";
    case Phrase::kOneWithoutUnit:
      return "{0} states no unit; read in that of the other channels.";
    case Phrase::kSomeWithoutUnit:
      return "{0} channels state no unit; read in that of the other channels.";
    case Phrase::kNoReading:
      return "No unit is stated and no channel has a reading.";
    case Phrase::kUnitsDiffer:
      return "Units differ between channels: {0}.";
    case Phrase::kRowsApart:
      return "Rows are {0} s apart by \"{1}\".";
    case Phrase::kMidnight:
      return "The clock passes midnight: times go on.";
    case Phrase::kTwelve:
      return "The clock passes twelve: times go on.";
    case Phrase::kVoltageTurned:
      return "{0} is read with the sign of its voltage turned: its wires are exchanged.";
    case Phrase::kOneSheet:
      return "Read from sheet {0}; also in the file: {1}.";
    case Phrase::kOneTable:
      return "Read from the table that looks most like a log; also in the file: {0}.";
    case Phrase::kOneOfTables:
      return "Read from the table that looks most like a log of {0}.";
    case Phrase::kArchive:
      return "the archive holds {0} and also {1}, not read";
    case Phrase::kManyMembers:
      return "of more than {0} files in the archive only the first {1} were looked at";
    case Phrase::kBehindGzip:
      return "{0} bytes behind the gzip data were not read";
    case Phrase::kFormulas:
      return "sheet \"{0}\": {1} formulas have no stored result and count as empty; a spreadsheet program stores them "
             "when it saves the workbook";
    case Phrase::kCutRow:
      return "The last row is cut off and was left out.";
    case Phrase::kShortRows:
      return "{0} rows end before the last column: what is missing there counts as no reading.";
    case Phrase::kOneShortRow:
      return "1 row ends before the last column: what is missing there counts as no reading.";
    case Phrase::kOneLeftEmpty:
      return "1 cell that is no number is left empty: \"{0}\" in line {1}.";
    case Phrase::kLeftEmpty:
      return "{0} cells that are no numbers are left empty: the first is \"{1}\" in line {2}.";
    case Phrase::kOneRowLeftOut:
      return "1 row without a time is left out: line {0}.";
    case Phrase::kRowsLeftOut:
      return "{0} rows without a time are left out: the first is line {1}.";
    case Phrase::kOneHeaderLine:
      return "1 header or text line in or behind the table was left out.";
    case Phrase::kHeaderLines:
      return "{0} header or text lines in or behind the table were left out.";
    case Phrase::kOneLabelledLine:
      return "1 labelled line in or behind the table was left out.";
    case Phrase::kLabelledLines:
      return "{0} labelled lines in or behind the table were left out.";
    case Phrase::kOneCommentLine:
      return "1 comment or event line in or behind the table was left out.";
    case Phrase::kCommentLines:
      return "{0} comment or event lines in or behind the table were left out.";
    case Phrase::kRowsBehind:
      return "{0} rows of numbers behind the table go back in time and were left out.";
    case Phrase::kMixedDecimals:
      return "Decimals are written with a point in {0} and with a comma in {1} columns: each is read by its own.";
    case Phrase::kDecimalCommas:
      return "Decimal commas stand without quotes between the commas of the delimiter; the counts of fields allow one "
             "reading.";
    case Phrase::kAsideZone:
      return "{0} is kept but not judged: it is named like a zone and stands at its temperature throughout.";
    case Phrase::kAsideUnit:
      return "{0} is kept but not judged: its unit is \"{1}\", none of temperature.";
    case Phrase::kAsideValues:
      return "{0} is kept but not judged: its values are no temperatures.";
    case Phrase::kAsideConstant:
      return "{0} is kept but not judged: no unit of temperature stands there and it never changes.";
    case Phrase::kAsideCool:
      return "{0} is kept but not judged: it stays far below the others.";
    case Phrase::kAsideBeside:
      return "{0} is kept but not judged: it ends after a few rows, as a table beside the log does.";
    case Phrase::kAsideCounts:
      return "{0} is kept but not judged: it counts runs, channels or the like.";
    case Phrase::kAsideTolerance:
      return "{0} is kept but not judged: it says how sure the column before it is.";
    case Phrase::kMoreNames:
      return "The header names {0} columns and the rows have {1}: the names are taken from the left.";
    case Phrase::kNewestFirst:
      return "The rows stand with the newest first: read from the last to the first.";
    case Phrase::kPutInOrder:
      return "The rows do not stand in the order of their times: put in order channel by channel.";
    case Phrase::kOneRowIn:
      return "{0} has a reading in one row of {1}: it keeps the times of these.";
    case Phrase::kJoinedTable:
      return "The table at line {0} has the same times: its channels are read beside those before.";
    case Phrase::kTolerances:
      return "What stands behind ± is no part of the readings and was left out.";
    case Phrase::kOwnWord:
      return "\"{0}\" stands in {1} cells for readings: taken as no reading.";
    case Phrase::kZonesByModel:
      return "zones are by the oven model, which follows this log within {0} °C (root mean square)";
    case Phrase::kZonesByCurves:
      return "zones are a first estimate from setpoints and curves: the oven model does not fit ({0})";
    case Phrase::kStandsAt:
      return "stands at {0} °C";
    case Phrase::kFollowsAir:
      return "suspected: follows the air more than the other traces do";
    case Phrase::kSwappedWith:
      return "suspected: swapped with {0}";
    case Phrase::kStep:
      return "all traces step by {0} °C";
    case Phrase::kTooFewSamples:
      return "{0} samples, fewer than the 3 of a trace";
    case Phrase::kNoUsableTime:
      return "no row with a usable time";
    case Phrase::kOneRowNoTime:
      return "1 row without a time later than the row before";
    case Phrase::kRowsNoTime:
      return "{0} rows without a time later than the row before";
    case Phrase::kFallsAsOthersRise:
      return "falls as the others rise";
    case Phrase::kFallsThroughout:
      return "falls far below its start and never rises above it";
    default:
      return english_of_result(phrase);
  }
}

std::string say(Phrase phrase, std::initializer_list<std::string> arguments) {
  const auto pieces = pieces_of(english(phrase));
  std::string text{pieces.front()};
  auto argument = arguments.begin();
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    if (argument != arguments.end()) text += *argument++;
    text += pieces[i];
  }
  return text;
}

std::vector<std::string_view> patterns() {
  std::vector<std::string_view> all;
  for (int i = 0; i <= static_cast<int>(kLastPhrase); ++i) all.push_back(english(static_cast<Phrase>(i)));
  all.insert(all.end(), kWordsOfErrors.begin(), kWordsOfErrors.end());
  const auto files = words_of_files();
  all.insert(all.end(), files.begin(), files.end());
  return all;
}

std::optional<Said> said(std::string_view text) {
  std::optional<Said> best;
  for (const auto pattern : patterns()) {
    if (best && best->pattern.size() >= pattern.size()) continue;
    if (auto arguments = arguments_of(text, pattern)) best = Said{pattern, *std::move(arguments)};
  }
  return best;
}

}  // namespace ovenwright
