#include "core/units/phrase.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>

#include "core/log/reading.h"

// What core says of a log can be found again, so that another language says it too.
namespace ovenwright {
namespace {

TEST(Phrase, WhatWasSaidIsFoundAgainWithItsArguments) {
  for (int i = 0; i <= static_cast<int>(kLastPhrase); ++i) {
    const auto phrase = static_cast<Phrase>(i);
    SCOPED_TRACE(std::string(english(phrase)));
    ASSERT_FALSE(english(phrase).empty());
    const auto places = std::ranges::count(english(phrase), '{');
    const std::string text = say(phrase, {"R118 top", "12.5 min", "25", "7", "-3"});
    const auto found = said(text);
    ASSERT_TRUE(found) << text;
    EXPECT_EQ(found->pattern, english(phrase));
    const std::vector<std::string> all{"R118 top", "12.5 min", "25", "7", "-3"};
    EXPECT_EQ(found->arguments, std::vector<std::string>(all.begin(), all.begin() + places)) << text;
  }
}

TEST(Phrase, PatternsDiffer) {
  const auto all = patterns();
  EXPECT_EQ(std::set(all.begin(), all.end()).size(), all.size());
}

TEST(Phrase, OtherTextsAreNone) {
  EXPECT_FALSE(said(""));
  EXPECT_FALSE(said("U12 centre"));
  EXPECT_FALSE(said("stands at  °C"));  // nothing in the place
}

/// Everything that is assumed, noted or refused of the logs that are kept for tests.
TEST(Phrase, KnowsWhatTheReaderSaysOfEveryKeptLog) {
  std::set<std::string> unknown;
  const auto look = [&unknown](const std::string& text) {
    if (!text.empty() && !said(text)) unknown.insert(text);
  };
  for (const auto& entry : std::filesystem::directory_iterator(OVENWRIGHT_TEST_DATA "/layouts")) {
    const auto reading = log::read(entry.path().string());
    if (!reading) {
      const auto& error = reading.error();
      if (error.found.empty() || error.expected.empty()) {
        look(error.message);
      } else {
        look(error.expected);
      }
      continue;
    }
    for (const auto& assumption : reading->read_as.assumed) look(assumption.text);
    for (const auto& note : reading->read_as.notes) look(note);
    for (const auto& warning : reading->warnings) look(warning.message);
  }
  std::string list;
  for (const auto& text : unknown) list += text + "\n";
  EXPECT_EQ(list, "");
}

}  // namespace
}  // namespace ovenwright
