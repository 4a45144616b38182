#pragma once
#include <optional>
#include <string>
#include <vector>

#include "app/desktop/widgets/wording.h"
#include "core/judge/phrases.h"

namespace ovenwright::widgets {

/// The words of the verdict sentence in the user's language and locale, moments counted from the board's entry where
/// it is known.
///
/// A template is translated by its id in the context "sentence"; of a template that names a moment there are two, the
/// one with ".entry" at its id for moments since entry. What is not translated is English.
class TranslatedPhrases : public judge::Phrases {
 public:
  TranslatedPhrases(const Wording& wording, std::optional<double> entry_s) : m_wording(wording), m_entry_s(entry_s) {}

  std::string text(const std::string& id, int count) const override;
  std::string number(const judge::Argument& argument) const override;
  std::string moment(const judge::Argument& argument) const override;
  std::string count_word(int count) const override;
  std::string zones(const std::vector<std::string>& names) const override;

 private:
  Wording m_wording;
  std::optional<double> m_entry_s;
};

}  // namespace ovenwright::widgets
