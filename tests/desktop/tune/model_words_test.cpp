#include "app/desktop/tune/model_words.h"

#include <gtest/gtest.h>

#include "app/desktop/text/language.h"
#include "core/tune/words.h"

namespace ovenwright::desktop {
namespace {

class ModelWords : public testing::Test {
 protected:
  ~ModelWords() override { useLanguage(QStringLiteral("en")); }
};

// What the core says, by the core itself where it has a function for it; in each language nothing of it stays English.
TEST_F(ModelWords, WhatIsSaidOfASearchAndAFitIsTranslated) {
  using tune::Aim;
  std::vector<std::string> texts = {
      tune::guarded_note(),
      tune::present_recipe_note(Aim::kFastest),
      tune::present_recipe_note(Aim::kCoolest),
      tune::missed_margin_note(Aim::kFastest, 0.4, 0.2),
      tune::missed_margin_note(Aim::kCoolest, 0.4, 0.5),
      "zone 8 seems 12 °C colder than its setpoint: check the recipe, the zone and its thermocouple",
      "U12 centre follows the air: its bead may be detached, or it belongs to kind \"air\"",
      "the curves fit a belt 11 % ± 3 % slower than the recipe's 810 mm/min, or zones so much longer: check the speed, "
      "the belt and the zone lengths in the oven's file"};
  for (const char* code : {"de", "es", "zh_TW", "zh_CN"}) {
    useLanguage(QLatin1String(code));
    for (const auto& text : texts) {
      EXPECT_NE(modelText(text).toLower().toStdString(), QString::fromStdString(text).toLower().toStdString()) << code;
      EXPECT_FALSE(modelText(text).contains(u"%1")) << modelText(text).toStdString();
    }
  }
  useLanguage(QStringLiteral("de"));
  EXPECT_EQ(
      modelText(tune::missed_margin_note(Aim::kFastest, 0.4, 0.2)),
      QStringLiteral("Am schnellsten: es wurde kein Rezept gefunden, das eine Reserve von 40 % behält; die größte "
                     "ist 20 %."));
}

TEST_F(ModelWords, AnUnknownTextStaysAsItIs) {
  useLanguage(QStringLiteral("de"));
  EXPECT_EQ(modelText("something else"), QStringLiteral("Something else."));
}

}  // namespace
}  // namespace ovenwright::desktop
