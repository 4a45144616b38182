#pragma once
#include <vector>

#include "app/sheet/page.h"

namespace ovenwright::desktop {

/// Sheets that are looked at and printed one behind the other: one for each lot.
struct SheetPages {
  struct At {
    const sheet::Document& sheet;
    std::size_t page;
  };

  std::vector<sheet::Document> sheets;

  int count() const {
    std::size_t pages = 0;
    for (const auto& sheet : sheets) pages += sheet.pages.size();
    return int(pages);
  }
  /// @param page  from 0, below count()
  At at(int page) const {
    auto left = std::size_t(page);
    auto sheet = sheets.begin();
    for (; left >= sheet->pages.size(); ++sheet) left -= sheet->pages.size();
    return {*sheet, left};
  }
};

}  // namespace ovenwright::desktop
