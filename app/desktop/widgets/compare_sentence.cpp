#include "app/desktop/widgets/compare_sentence.h"

#include "app/desktop/text/compare_words.h"
#include "app/desktop/text/language.h"
#include "app/desktop/widgets/translated_phrases.h"
#include "core/compare/sentence.h"

namespace ovenwright::widgets {
namespace {

/// The words of a comparison in the user's language and units.
class ComparePhrases final : public TranslatedPhrases, public compare::Phrases {
 public:
  explicit ComparePhrases(const Wording& wording) : TranslatedPhrases(wording, std::nullopt), m_wording(wording) {}

  std::string text(const std::string& id, int count) const override {
    const QString text = desktop::compareTemplate(desktop::languageInUse(), QString::fromStdString(id), count);
    return text.isEmpty() ? compare::Phrases::text(id, count) : text.toStdString();
  }
  std::string margin(double fraction, judge::MarginBound bound) const override {
    return m_wording.margin(fraction, bound).toStdString();
  }
  std::string share(double fraction) const override { return m_wording.percent(fraction).toStdString(); }
  std::string speed(double mm_per_min) const override { return m_wording.format().speed(mm_per_min).toStdString(); }

 private:
  const Wording& m_wording;
};

judge::Verdict verdictOf(const compare::Comparison& comparison) {
  if (!comparison.margins.more) return std::max(comparison.verdict_a, comparison.verdict_b);
  return *comparison.margins.more == compare::Side::kA ? comparison.verdict_a : comparison.verdict_b;
}

}  // namespace

SentenceContent compareSentence(const compare::Comparison& comparison, const Wording& wording) {
  const ComparePhrases phrases(wording);
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kVerdict;
  content.verdict = verdictOf(comparison);
  const auto sentence = compare::compose(comparison, phrases), note = compare::compose_note(comparison, phrases);
  content.addParts(content.first, sentence);
  content.addParts(content.second, note);
  content.secondShort = content.second;
  content.spoken = QString::fromStdString(sentence.text + ' ' + note.text);
  return content;
}

}  // namespace ovenwright::widgets
