#pragma once
#include <string>
#include <vector>

#include "tests/command/process.h"

namespace ovenwright {

/// `ovenwright sheet` on a log of the demo with everything it can be told, into `file`.
Finished demo_sheet(const std::string& file, const std::vector<std::string>& more = {});
/// What a shell command prints; empty where it fails.
std::string printed(const std::string& command);
/// The text of a PDF in reading order, every run of blanks and line ends as one blank.
std::string pdf_text(const std::string& file);
/// What pdfinfo says behind a key, such as "Pages".
std::string pdf_info(const std::string& file, const std::string& key);
void write(const std::string& path, const std::string& bytes);
/// A log of `names.size()` channels whose curves go through a made-up oven, hottest first.
std::string made_log(const std::vector<std::string>& names);

/// A page without its pictures: they are looked at, and their digits are those of the fonts that are installed.
std::string without_pictures(std::string text);

}  // namespace ovenwright
