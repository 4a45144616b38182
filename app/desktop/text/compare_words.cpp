#include "app/desktop/text/compare_words.h"

#include <algorithm>

namespace ovenwright::desktop {

QString compareTemplate(const QString& language, const QString& id, int count) {
  std::span<const CompareWords> words;
  if (language == u"de") words = kGermanComparison;
  if (language == u"es") words = kSpanishComparison;
  if (language == u"zh_TW") words = kTaiwanComparison;
  if (language == u"zh_CN") words = kMainlandComparison;
  const auto found = std::ranges::find_if(words, [&](const CompareWords& row) { return id == QLatin1String(row.id); });
  if (found == words.end()) return {};
  return QString::fromUtf8(count == 1 || !found->more ? found->one : found->more);
}

}  // namespace ovenwright::desktop
