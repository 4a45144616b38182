#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <filesystem>
#include <set>

#include "app/desktop/text/compare_words.h"
#include "app/desktop/text/language.h"
#include "app/desktop/text/said.h"
#include "app/desktop/text/sentence_words.h"
#include "core/compare/phrases.h"
#include "core/judge/phrases.h"
#include "core/judge/risk.h"
#include "core/measure/definition.h"
#include "core/units/phrase.h"
#include "core/window/window_file.h"

// Every language says everything: what is missing is named.
namespace ovenwright::desktop {
namespace {

std::multiset<QString> matches(const QString& text, const char* pattern) {
  std::multiset<QString> found;
  for (auto it = QRegularExpression(QLatin1String(pattern)).globalMatch(text); it.hasNext();)
    found.insert(it.next().captured());
  return found;
}

class Translations : public testing::TestWithParam<const char*> {
 protected:
  ~Translations() override { useLanguage(QStringLiteral("en")); }
  static QString code() { return QLatin1String(GetParam()); }
  static bool translated(const char* context, const std::string& text) {
    return QCoreApplication::translate(context, text.c_str()).toStdString() != text;
  }
};

TEST_P(Translations, EveryTextOfTheDesktopIsTranslatedWithItsPlaces) {
  QFile file(QStringLiteral(OVENWRIGHT_TRANSLATIONS "/ovenwright_%1.ts").arg(code()));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  QString source;
  int messages = 0;
  const auto check = [&](const QString& translation) {
    EXPECT_FALSE(translation.isEmpty()) << source.toStdString();
    // A form of a plural may say its number as a word.
    for (const QString& place : matches(source, "%[1-9]"))
      EXPECT_TRUE(translation.contains(place)) << source.toStdString() << " → " << translation.toStdString();
    EXPECT_EQ(matches(translation, "%[1-9]"), matches(source, "%[1-9]")) << source.toStdString();
  };
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == u"source") source = xml.readElementText();
    if (xml.name() == u"numerusform") check(xml.readElementText());
    if (xml.name() != u"translation") continue;
    ++messages;
    EXPECT_FALSE(xml.attributes().hasAttribute(QStringLiteral("type"))) << "unfinished: " << source.toStdString();
    const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements).trimmed();
    if (!source.contains(QStringLiteral("%n"))) check(text);
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  EXPECT_GT(messages, 0);
}

TEST_P(Translations, EverySentenceHasTheFieldsAndLinksOfTheEnglishOne) {
  const SentenceWords* words = sentenceWords(code());
  if (!words) return;  // English is core's
  const judge::Phrases english;
  for (const std::string& id : judge::sentence_ids()) {
    for (const int count : {1, 2}) {
      const QString text = sentenceTemplate(*words, QString::fromStdString(id), count, true);
      const QString said = QString::fromStdString(english.text(id, count));
      ASSERT_FALSE(text.isEmpty()) << id;
      EXPECT_FALSE(text.contains(QRegularExpression(QStringLiteral("%[1-9]|⟨|⟩")))) << id << ": " << text.toStdString();
      EXPECT_EQ(matches(text, "\\[[a-z]+:"), matches(said, "\\[[a-z]+:")) << id << ": " << text.toStdString();
      // The same fields; a language may need one of them twice, or say a count that English leaves out.
      const auto fields = matches(text, "\\{[^}]+\\}"), wanted = matches(said, "\\{[^}]+\\}");
      EXPECT_EQ(std::set<QString>(fields.begin(), fields.end()), std::set<QString>(wanted.begin(), wanted.end()))
          << id << ": " << text.toStdString();
    }
  }
}

TEST_P(Translations, EverySentenceOfAComparisonHasTheFieldsAndLinksOfTheEnglishOne) {
  if (code() == u"en") return;
  const compare::Phrases english;
  for (const std::string& id : compare::sentence_ids()) {
    for (const int count : {1, 2}) {
      const QString text = compareTemplate(code(), QString::fromStdString(id), count);
      const QString said = QString::fromStdString(english.text(id, count));
      ASSERT_FALSE(text.isEmpty()) << id;
      EXPECT_EQ(matches(text, "\\[[a-z]+:"), matches(said, "\\[[a-z]+:")) << id << ": " << text.toStdString();
      EXPECT_EQ(matches(text, "\\{[^}]+\\}"), matches(said, "\\{[^}]+\\}")) << id << ": " << text.toStdString();
    }
  }
}

TEST_P(Translations, DefinitionsRisksAndUsualRequirementsAreTranslated) {
  if (code() == u"en") return;
  useLanguage(code());
  for (const auto& description : measure::descriptions()) {
    EXPECT_TRUE(translated("Measures", description.definition)) << description.definition;
    for (const auto& setting : {judge::RiskSetting{}, judge::RiskSetting{.against_tc = true},
                                judge::RiskSetting{.wave = true}, judge::RiskSetting{.stays_solid = true}}) {
      for (const auto direction : {judge::Direction::kLow, judge::Direction::kHigh}) {
        const auto risk = judge::risk_of(description.measure, direction, setting);
        EXPECT_TRUE(translated("risk", risk.text)) << risk.text;
      }
    }
  }
  for (const auto& entry : std::filesystem::directory_iterator(OVENWRIGHT_PROFILES "/windows")) {
    const auto window = window::load(entry.path().string());
    ASSERT_TRUE(window) << window.error().text();
    for (const auto& requirement : window->requirements)
      EXPECT_TRUE(translated("requirement", requirement.name)) << entry.path().filename() << ": " << requirement.name;
  }
}

TEST_P(Translations, WhatTheReaderSaysIsTranslatedWithItsPlaces) {
  if (code() == u"en") return;
  useLanguage(code());
  for (const auto pattern : patterns()) {
    const std::string english(pattern);
    const QString text = QCoreApplication::translate("phrase", english.c_str());
    EXPECT_TRUE(translated("phrase", english) || pattern == "°C, °F, K or mV") << english;
    EXPECT_EQ(matches(text, "\\{[0-9]\\}"), matches(QString::fromStdString(english), "\\{[0-9]\\}")) << english;
  }
}

TEST_P(Translations, ASentenceOfTheReaderIsSaidWithItsNumbers) {
  useLanguage(code());
  const QLocale locale(code());
  const QString text = inWords(say(Phrase::kSpreadEvenly, {"1", "0.25"}), locale);
  // Source: the decimal signs of the locales (CLDR).
  const bool comma = code() == u"de" || code() == u"es";
  EXPECT_TRUE(text.contains(comma ? QStringLiteral("0,25 s") : QStringLiteral("0.25 s"))) << text.toStdString();
  EXPECT_EQ(text.startsWith(QStringLiteral("Times are rounded")), code() == u"en") << text.toStdString();
  // What stood in the log is not touched, and what is not known stays as it was.
  EXPECT_TRUE(inWords(say(Phrase::kSwappedWith, {"{0} TC 1.5"}), locale).contains(QStringLiteral("{0} TC 1.5")));
  EXPECT_EQ(inWords("never said", locale), QStringLiteral("never said"));
}

INSTANTIATE_TEST_SUITE_P(All, Translations, testing::Values("en", "de", "es", "zh_TW", "zh_CN"),
                         [](const auto& language) { return std::string(language.param); });

}  // namespace
}  // namespace ovenwright::desktop
