#pragma once
#include <span>
#include <string_view>

#include "core/log/words.h"

namespace ovenwright::log {

/// `whole`: not inside a longer run of letters. German and the scripts without blanks join words, so long words count
/// wherever they stand.
struct WordEntry {
  std::string_view text;
  Words words;
  bool whole = false;
};

/// Words above columns: times, dates, row numbers, temperatures, and what is none of these.
std::span<const WordEntry> words_of_columns();
/// Words of zones, statistics, labels of header rows and lines of metadata.
std::span<const WordEntry> words_of_metadata();
/// The most needed of both in further languages.
std::span<const WordEntry> words_of_further_languages();

}  // namespace ovenwright::log
