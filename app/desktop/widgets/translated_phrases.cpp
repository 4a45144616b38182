#include "app/desktop/widgets/translated_phrases.h"

#include "app/desktop/text/language.h"
#include "app/desktop/text/said.h"

namespace ovenwright::widgets {
namespace {

using desktop::Format;
/// What an argument with a unit is; none for counts, names, moments and lengths.
std::optional<Format::Quantity> quantityOf(const judge::Argument& argument) {
  if (!argument.unit) return std::nullopt;
  switch (*argument.unit) {
    case Unit::kCelsius:
      return argument.role == judge::Argument::Role::kDifference ? Format::Quantity::kDifference
                                                                 : Format::Quantity::kTemperature;
    case Unit::kSecond:
      return Format::Quantity::kTime;
    case Unit::kCelsiusPerSecond:
      return Format::Quantity::kRate;
    case Unit::kCelsiusSecond:
      return Format::Quantity::kArea;
    case Unit::kCount:
      break;
  }
  return std::nullopt;
}

QString unitOf(const judge::Argument& argument, const Format& format) {
  const auto quantity = quantityOf(argument);
  return quantity ? format.unit(*quantity) : QString();
}

}  // namespace

TranslatedPhrases::TranslatedPhrases(const Wording& wording, std::optional<double> entry_s)
    : m_words(desktop::sentenceWords(desktop::languageInUse())), m_wording(wording), m_entry_s(entry_s) {}

std::string TranslatedPhrases::text(const std::string& id, int count) const {
  if (m_words) {
    const QString text = desktop::sentenceTemplate(*m_words, QString::fromStdString(id), count, !m_entry_s);
    if (!text.isEmpty()) return text.toStdString();
  }
  QString english = QString::fromStdString(Phrases::text(id, count));
  if (m_entry_s) english.remove(QStringLiteral(" on the log"));
  return english.toStdString();
}

std::string TranslatedPhrases::quantity(const judge::Argument& argument) const {
  const QString unit = unitOf(argument, m_wording.format());
  const std::string text = number(argument);
  return unit.isEmpty() ? text : text + ' ' + unit.toStdString();
}

std::string TranslatedPhrases::number(const judge::Argument& argument) const {
  if (argument.name == "requirement") {
    if (const auto* name = std::get_if<std::string>(&argument.value)) return Wording::requirement(*name).toStdString();
  }
  if (argument.name == "reason" || argument.name == "detail") {
    if (const auto* said = std::get_if<std::string>(&argument.value))
      return desktop::inWords(*said, m_wording.format()).toStdString();
  }
  const auto* value = std::get_if<double>(&argument.value);
  if (!value) return Phrases::number(argument);
  const Format& format = m_wording.format();
  const auto quantity = quantityOf(argument);
  if (!quantity) return format.number(*value, argument.digits).toStdString();
  // What is a whole number of °C was written so: in °F it is as short as it can be.
  const bool converted = format.temperatureUnit() == desktop::TemperatureUnit::kFahrenheit;
  if (converted && argument.digits == 0 && argument.unit == Unit::kCelsius)
    return format.limit(*value, *quantity).toStdString();
  return format.number(format.shown(*value, *quantity), argument.digits).toStdString();
}

std::string TranslatedPhrases::with_uncertainty(const judge::Argument& value,
                                                const judge::Argument& uncertainty) const {
  const std::string text = number(value) + " ± " + number(uncertainty);
  const QString unit = unitOf(value, m_wording.format());
  return unit.isEmpty() ? text : text + ' ' + unit.toStdString();
}

std::string TranslatedPhrases::moment(const judge::Argument& argument) const {
  const auto* value = std::get_if<double>(&argument.value);
  if (!value) return Phrases::moment(argument);
  return m_wording.number(*value - m_entry_s.value_or(0), argument.digits).toStdString();
}

std::string TranslatedPhrases::count_word(int count) const {
  const bool has_word = m_words && count >= 0 && std::size_t(count) < m_words->counts.size();
  return has_word ? m_words->counts[std::size_t(count)] : Phrases::count_word(count);
}

std::string TranslatedPhrases::times(const judge::Argument& argument) const {
  if (!m_words) return Phrases::times(argument);
  const QString often = QString::fromStdString(number(argument));
  return often == u"1" ? m_words->once : QString::fromUtf8(m_words->times).arg(often).toStdString();
}

std::string TranslatedPhrases::zones(const std::vector<std::string>& names) const {
  const auto ranges = zone_ranges(names);
  if (!m_words || ranges.empty()) return Phrases::zones(names);
  std::string list = ranges[0];
  for (std::size_t i = 1; i < ranges.size(); ++i)
    list += (i + 1 == ranges.size() ? m_words->and_ : m_words->comma) + ranges[i];
  return QString::fromUtf8(names.size() == 1 ? m_words->zone : m_words->zones)
      .arg(QString::fromStdString(list))
      .toStdString();
}

}  // namespace ovenwright::widgets
