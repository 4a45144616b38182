#pragma once
#include <QString>
#include <span>

namespace ovenwright::desktop {

/// A template of the sentences about a comparison by its id, for one and for more; fields and links as in
/// core/compare/phrases.h.
struct CompareWords {
  const char* id;
  const char* one;
  const char* more;  ///< null: as for one
};

/// The template in a language; empty for English, whose templates are core's, and where the id is not known.
QString compareTemplate(const QString& language, const QString& id, int count);

extern const std::span<const CompareWords> kGermanComparison, kSpanishComparison, kTaiwanComparison,
    kMainlandComparison;

}  // namespace ovenwright::desktop
