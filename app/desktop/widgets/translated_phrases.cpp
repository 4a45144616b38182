#include "app/desktop/widgets/translated_phrases.h"

namespace ovenwright::widgets {
namespace {

constexpr const char* kContext = "sentence";

/// The translation of a key; empty where there is none.
QString translated(const std::string& key, int count = -1) {
  const QString text = QCoreApplication::translate(kContext, key.c_str(), nullptr, count);
  return text == QString::fromStdString(key) ? QString() : text;
}

}  // namespace

std::string TranslatedPhrases::text(const std::string& id, int count) const {
  if (m_entry_s) {
    if (const QString text = translated(id + ".entry", count); !text.isEmpty()) return text.toStdString();
  }
  if (const QString text = translated(id, count); !text.isEmpty()) return text.toStdString();
  QString english = QString::fromStdString(Phrases::text(id, count));
  if (m_entry_s) english.remove(QStringLiteral(" on the log"));
  return english.toStdString();
}

std::string TranslatedPhrases::number(const judge::Argument& argument) const {
  if (const auto* value = std::get_if<double>(&argument.value))
    return m_wording.number(*value, argument.digits).toStdString();
  return Phrases::number(argument);
}

std::string TranslatedPhrases::moment(const judge::Argument& argument) const {
  const auto* value = std::get_if<double>(&argument.value);
  if (!value) return Phrases::moment(argument);
  return m_wording.number(*value - m_entry_s.value_or(0), argument.digits).toStdString();
}

std::string TranslatedPhrases::count_word(int count) const {
  const std::string english = Phrases::count_word(count);
  const QString word = translated(english);
  return word.isEmpty() ? english : word.toStdString();
}

std::string TranslatedPhrases::zones(const std::vector<std::string>& names) const {
  const auto ranges = zone_ranges(names);
  if (ranges.empty()) return {};
  QString list = QString::fromStdString(ranges[0]);
  for (std::size_t i = 1; i < ranges.size(); ++i) {
    const QString next = QString::fromStdString(ranges[i]);
    list = i + 1 == ranges.size() ? Wording::tr("%1 and %2", "the last of a list").arg(list, next)
                                  : Wording::tr("%1, %2", "two of a list").arg(list, next);
  }
  return (names.size() == 1 ? Wording::tr("zone %1") : Wording::tr("zones %1")).arg(list).toStdString();
}

}  // namespace ovenwright::widgets
