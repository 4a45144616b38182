#pragma once
#include <string>
#include <string_view>

#include "core/board/board.h"
#include "core/units/result.h"

namespace ovenwright::board {

/// Reads board.toml. A channel may be written as its name or as its number; a part that a placement names need not be
/// described. Errors: kIo; kParse with line and column for an unknown key, a wrong type, a length or mass that is not
/// above 0, a channel placed twice, a part described twice.
Result<Board> load(const std::string& path);
/// The same from text; `file` stands in messages and gives the folder of the picture.
Result<Board> parse(const std::string& file, std::string_view text);
/// A file, or a name looked up as files::find_profile does.
Result<Board> find(const std::string& name_or_path);

}  // namespace ovenwright::board
