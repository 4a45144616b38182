#pragma once
#include <optional>
#include <string_view>

#include "core/log/grid.h"
#include "core/log/unpack_budget.h"

namespace ovenwright::log {

/// Whether the bytes begin like an XML document.
bool is_xml(std::string_view bytes);

/// The table in an XML document of any names: an element for each row, its values in elements or attributes within it,
/// or a list of channels with their values; found as in JSON, of which it has the same shapes (json_tables.h). An
/// element that holds a text and is named by one attribute (`<t name="U1">25.3</t>`) goes by that name.
///
/// Nothing where no table is found, where the document is damaged or has a type definition, and where its rows are
/// elements of attributes on lines of their own: that is text whose lines name their values, with lines to tell of.
/// Never throws. Cost: the document is held in memory, at about ten times its size.
std::optional<Grid> read_xml_records(std::string_view bytes, UnpackBudget& budget);

}  // namespace ovenwright::log
