#pragma once
#include <optional>
#include <string>
#include <vector>

#include "app/desktop/text/sentence_words.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/phrases.h"

namespace ovenwright::widgets {

/// The words of the verdict sentence in the user's language and locale, moments counted from the board's entry where
/// it is known.
///
/// The templates of the language in use stand in app/desktop/text; what it does not know is English.
class TranslatedPhrases : public virtual judge::Phrases {
 public:
  TranslatedPhrases(const Wording& wording, std::optional<double> entry_s);

  std::string text(const std::string& id, int count) const override;
  std::string quantity(const judge::Argument& argument) const override;
  std::string number(const judge::Argument& argument) const override;
  std::string with_uncertainty(const judge::Argument& value, const judge::Argument& uncertainty) const override;
  std::string moment(const judge::Argument& argument) const override;
  std::string count_word(int count) const override;
  std::string times(const judge::Argument& argument) const override;
  std::string zones(const std::vector<std::string>& names) const override;

 private:
  const desktop::SentenceWords* m_words;  // null: English
  Wording m_wording;
  std::optional<double> m_entry_s;
};

}  // namespace ovenwright::widgets
