#include "app/desktop/text/paragraph.h"

#include <gtest/gtest.h>

#include "app/desktop/text/language.h"

namespace ovenwright::desktop {
namespace {

// Source: the full stop of full width, U+3002, is set in a square with its blank within (Requirements for Chinese Text
// Layout, W3C, 3.1.2).
TEST(Paragraph, SentencesHaveABlankBetweenThemButAfterAFullStopOfFullWidth) {
  EXPECT_EQ(paragraph({QStringLiteral("One."), QStringLiteral("Two.")}), QStringLiteral("One. Two."));
  EXPECT_EQ(paragraph({QStringLiteral("一。"), QStringLiteral("二？"), QStringLiteral("三。")}),
            QStringLiteral("一。二？三。"));
  EXPECT_EQ(paragraph({QStringLiteral("One."), {}, QStringLiteral("Two.")}), QStringLiteral("One. Two."));
  EXPECT_EQ(paragraph({}), QString());
}

// Source: the sign between things that are listed is U+3001 (Requirements for Chinese Text Layout, W3C, 3.1.2).
TEST(Paragraph, ThingsAreListedWithTheSignOfTheLanguage) {
  const QStringList things{QStringLiteral("a"), QStringLiteral("b")};
  useLanguage(QStringLiteral("zh_TW"));
  EXPECT_EQ(enumerated(things), QStringLiteral("a、b"));
  useLanguage(QStringLiteral("en"));
  EXPECT_EQ(enumerated(things), QStringLiteral("a, b"));
}

}  // namespace
}  // namespace ovenwright::desktop
