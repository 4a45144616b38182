#pragma once
#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace ovenwright::log {

/// Cells of a table that did not come from delimited text: one sheet of a workbook, one HTML table. Numbers stand
/// as the shortest text that reads back the same with '.', date-times as ISO 8601 ("2031-03-12T09:14:22.5"),
/// times of day and durations as h:mm:ss.fff, truth values as TRUE and FALSE, empty cells as "". Rows end with their
/// last cell that is not empty, so they differ in length; the value of merged cells stands in the first of them. Cells
/// of HTML stand as they are shown, so numbers in them may have any decimal mark.
struct Grid {
  std::string name;                            ///< of the sheet; empty for HTML
  std::vector<std::vector<std::string>> rows;  ///< row i stands at line first_line + i
  std::size_t first_line = 1;
  /// A row of names that the file does not have: it shares the line of the row below it.
  std::optional<std::size_t> made_row;
  std::size_t line_of(std::size_t row) const { return first_line + row - (made_row && row > *made_row ? 1 : 0); }
  bool hidden = false;                      ///< a sheet that the workbook does not show
  std::size_t formulas_without_result = 0;  ///< cells that stand empty because their results were never stored
};

/// What a sheet is picked by: its name; where several tables of a page have none its number from 1; else "".
std::string sheet_key(const std::vector<Grid>& grids, std::size_t i);

/// What a container was found to hold.
struct Content {
  std::string kind;    ///< "text", "xlsx", "ods", "html", "json", "xml" (a workbook or records in one XML document)
  std::string member;  ///< name inside a zip; empty otherwise
  std::string bytes;   ///< for "text" out of a zip or gz; for plain text it stays empty and the caller's bytes count
  bool plain = false;  ///< the caller's bytes are the text themselves
  std::vector<std::string> members;  ///< of an archive those that could be logs, by their paths in its order
  std::string rivals;                ///< the note, where another member of the zip looks nearly as much like a log
  std::vector<Grid> grids;           ///< for the others, in the order of the file
};

/// Looks at the head of a text that is about to be unpacked, with the size that the whole will about have; an error
/// stops the unpacking. May be empty.
using HeadCheck = std::function<std::optional<Error>(std::string_view head, double whole_bytes)>;

/// Opens zip, gz, xlsx, ods, workbooks in one XML document, html and JSON by content, also within each other; anything
/// else is plain text. A zip with several members that could be logs: the one that looks most like a log, the others
/// named in `notes`; or `member`, where that is not empty. To find it, members that have to be opened to be known are
/// looked into, up to 20 in all archives of the file together, and nothing within one that is only looked into. An HTML
/// document without a table but with preformatted text is that text.
///
/// Errors: kParse (damaged archive or workbook, encrypted member, no log in an archive, unpacked size over the cap or
/// over 200 times the packed size and 64 MiB), and what `check` gives for a text out of a zip or gz. `name` stands in
/// their place. All looks together may unpack as much again; what they do not reach is judged by its head. No bytes
/// make it throw, but want of memory does; memory is bounded by the cells and text kept. Thread-safe.
Result<Content> open_container(const std::string& name, std::string_view bytes, std::size_t most_unpacked_bytes,
                               std::vector<std::string>& notes, const HeadCheck& check = {},
                               std::string_view member = {});

/// Text as UTF-8 with the name of the encoding that was found ("UTF-8", "UTF-16LE", "windows-1252", "GB18030", "Big5",
/// "Shift_JIS", …). `known_encoding` forces one. Valid UTF-8 without BOM is not copied: `utf8` stays empty and
/// `unchanged` is set.
struct Decoded {
  std::string encoding;
  std::string utf8;
  bool unchanged = false;
  std::size_t skip = 0;  ///< bytes of a BOM to skip where unchanged
  bool certain = true;   ///< false where another encoding was as plausible
};
/// Order of the search: byte order mark, zeros on one side of byte pairs (UTF-16 without a mark), strict UTF-8, then
/// the encoding in which the text makes most sense. Zeros and end-of-file marks behind the text are left out, likewise
/// a character of UTF-8 that the end cuts short. Other bytes that an encoding does not allow become U+FFFD; the result
/// is always well-formed UTF-8. Errors: kParse (binary content; bytes that the forced encoding does not allow, with
/// their line); kBadArgument (no such encoding). Cost: one pass over the bytes, 64 at a time where they are ASCII;
/// thread-safe.
Result<Decoded> decode(std::string_view bytes, const std::string& known_encoding = {}, unsigned threads = 1);

}  // namespace ovenwright::log
