#pragma once
#include <optional>
#include <string>

namespace ovenwright::archive {

/// A digest as it stands on paper and is typed off it: whole or its beginning, in groups, in capitals, or in the short
/// form with the middle left out, "81c0…9e2d".
struct TypedDigest {
  std::string begins, ends;
  bool fits(const std::string& digest) const { return digest.starts_with(begins) && digest.ends_with(ends); }
};
/// Empty where the text is no digest, or has fewer than the eight digits that sheets print at least.
std::optional<TypedDigest> typedDigest(std::string text);

}  // namespace ovenwright::archive
