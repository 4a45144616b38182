#include "app/desktop/widgets/sentence.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/text/language.h"
#include "tests/desktop/widgets/longer_text.h"
#include "tests/desktop/widgets/samples.h"

namespace ovenwright::widgets {
namespace {

TEST(SentenceContent, SecondLineCountsRequiredResults) {
  const SentenceContent content = sentenceOf(samples::tern());
  QString line;
  for (const SentenceRun& run : content.second) line += run.text;
  EXPECT_EQ(line.simplified(), QString::fromUtf8("Smallest margin −39 % 41 pass 2 conditional pass 0 conditional fail "
                                                 "2 fail 0 undetermined 1 informative result over its limit"));
  QString shorter;
  for (const SentenceRun& run : content.secondShort) shorter += run.text;
  EXPECT_EQ(shorter.simplified(), QString::fromUtf8("Smallest margin −39 % 41 pass 2 conditional pass 2 fail "
                                                    "1 informative result over its limit"));
}

TEST(SentenceContent, AResultWithoutValueIsLeftOutOfTheMargin) {
  const SentenceContent content = sentenceOf(samples::everyState());
  // 15 results, one informative, three without a value.
  EXPECT_EQ(content.second[0].text, "Smallest margin of the other 11 ");
}

/// One fault that leaves every measure of a thermocouple without a value.
judge::Judgement openChannel() {
  samples::JudgementBuilder builder;
  builder.add("peak", samples::peak(), Unit::kCelsius, {{240, 2, 235, 250, {}}, {std::nullopt, 0, 235, 250, {}}});
  judge::Cause& cause = builder.judgement().results[1].cause;
  cause.kind = judge::Cause::Kind::kFault;
  cause.channel = 1;
  cause.placement = "TC2";
  cause.from_s = 330.1;
  cause.to_s = 349.6;
  builder.judgement().verdict = judge::Verdict::kUndetermined;
  return builder.judgement();
}

QString firstLine(const SentenceContent& content) {
  QString text;
  for (const SentenceRun& run : content.first) text += run.text;
  return text.replace(QChar(QChar::Nbsp), u' ');  // numbers stay beside their units
}

TEST(SentenceContent, MomentsCountFromTheEntryWhereItIsKnown) {
  EXPECT_EQ(
      firstLine(sentenceOf(openChannel())).toStdString(),
      "Undetermined. 1 of 2 requirements has no value: TC2 was open from 330.1 to 349.6 s on the log. The other one is "
      "met.");
  EXPECT_EQ(
      firstLine(sentenceOf(openChannel(), 10.1)).toStdString(),
      "Undetermined. 1 of 2 requirements has no value: TC2 was open from 320.0 to 339.5 s. The other one is met.");
}

TEST(SentenceContent, IsSaidInTheLanguageInUseWithTheSameLinks) {
  const SentenceContent english = sentenceOf(samples::tern());
  desktop::useLanguage(QStringLiteral("de"));
  const SentenceContent german = sentenceOf(samples::tern());
  desktop::useLanguage(QStringLiteral("en"));
  QLocale::setDefault(QLocale::c());
  EXPECT_EQ(
      firstLine(german).toStdString(),
      "Nicht bestanden. 2 von 45 Anforderungen sind verletzt. U12 centre erreicht eine Spitze von 232,1 °C, 2,9 °C zu "
      "wenig, bestimmt durch Zonen 8–10. R118 steigt mit 2,73 °C/s, 0,23 °C/s zu steil, in Zone 1.");
  ASSERT_EQ(german.links.size(), english.links.size());
  for (qsizetype i = 0; i < german.links.size(); ++i) {
    EXPECT_EQ(german.links[i].outcomes, english.links[i].outcomes);
    EXPECT_EQ(german.links[i].zones, english.links[i].zones);
  }
}

TEST(SentenceContent, NumbersAreThoseOfTheLocale) {
  QLocale::setDefault(QLocale(QLocale::German));
  const QString text = firstLine(sentenceOf(samples::tern()));
  QLocale::setDefault(QLocale::c());
  EXPECT_TRUE(text.contains(QString::fromUtf8("232,1 °C, 2,9 °C short"))) << text.toStdString();
}

class Shown : public testing::Test {
 protected:
  Shown() {
    auto* layout = new QVBoxLayout(&window);
    layout->addWidget(&before);
    layout->addWidget(&sentence);
    layout->addWidget(&after);
    sentence.setContent(sentenceOf(samples::tern()));
    window.resize(984, 200);
    window.show();
    QApplication::setActiveWindow(&window);
  }
  ~Shown() override {
    for (QWidget* child :
         {static_cast<QWidget*>(&before), static_cast<QWidget*>(&sentence), static_cast<QWidget*>(&after)})
      child->setParent(nullptr);
  }
  QWidget window;
  QPushButton before, after;
  Sentence sentence;
};

TEST_F(Shown, TabGoesThroughTheLinksAndOn) {
  before.setFocus();
  for (const int link : {0, 1, 2, 3, 4, 5, 6}) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    ASSERT_TRUE(sentence.hasFocus()) << link;
    EXPECT_EQ(sentence.focusedLink(), link);
  }
  QTest::keyClick(&sentence, Qt::Key_Tab);
  EXPECT_TRUE(after.hasFocus());
  QTest::keyClick(&after, Qt::Key_Backtab);
  ASSERT_TRUE(sentence.hasFocus());
  EXPECT_EQ(sentence.focusedLink(), 6);
}

TEST_F(Shown, TheFocusStaysOnALinkThatStays) {
  before.setFocus();
  for (int i = 0; i < 3; ++i) QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  ASSERT_EQ(sentence.focusedLink(), 2);
  sentence.setContent(sentenceOf(samples::tern()));  // as after every choice
  EXPECT_EQ(sentence.focusedLink(), 2);
  sentence.setContent(sentenceOf(samples::everyState()));
  EXPECT_EQ(sentence.focusedLink(), 0);
}

TEST_F(Shown, EnterFollowsALink) {
  std::vector<std::size_t> outcomes;
  QObject::connect(&sentence, &Sentence::activated, [&](const SentenceLink& link) { outcomes = link.outcomes; });
  sentence.setFocus();
  sentence.focusLink(0);
  QTest::keyClick(&sentence, Qt::Key_Return);
  EXPECT_EQ(outcomes, std::vector<std::size_t>{samples::kTernPeak});
}

TEST_F(Shown, ClickFollowsALinkWhereverItsLineIs) {
  std::vector<std::string> zones;
  QObject::connect(&sentence, &Sentence::activated, [&](const SentenceLink& link) { zones = link.zones; });
  for (const QRectF& rect : sentence.layoutNow().linkRects(1)) {
    zones.clear();
    QTest::mouseClick(&sentence, Qt::LeftButton, {}, rect.center().toPoint());
    EXPECT_EQ(zones, (std::vector<std::string>{"8", "9", "10"}));
  }
  zones.clear();
  QTest::mouseClick(&sentence, Qt::LeftButton, {}, QPoint(100, 25));  // the verdict word leads nowhere
  EXPECT_TRUE(zones.empty());
}

TEST_F(Shown, IsATextWithItsLinksForScreenReaders) {
  QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&sentence);
  ASSERT_TRUE(face);
  EXPECT_EQ(face->role(), QAccessible::StaticText);
  EXPECT_TRUE(face->text(QAccessible::Name)
                  .startsWith(QString::fromUtf8("Fail. 2 of 45 requirements are out. Result 1: U12 centre peaks at "
                                                "232.1 °C, 2.9 °C short, set by zones 8–10.")))
      << face->text(QAccessible::Name).toStdString();
  ASSERT_EQ(face->childCount(), 7);
  QAccessibleInterface* link = face->child(2);
  EXPECT_EQ(link->role(), QAccessible::Link);
  EXPECT_EQ(link->text(QAccessible::Name), QString::fromUtf8("R118 rises at 2.73 °C/s, 0.23 °C/s too steep"));
  EXPECT_FALSE(link->rect().isEmpty());
  EXPECT_EQ(link->parent(), face);
  bool followed = false;
  QObject::connect(&sentence, &Sentence::activated, [&](const SentenceLink&) { followed = true; });
  link->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_TRUE(followed);
  link->actionInterface()->doAction(QAccessibleActionInterface::setFocusAction());
  EXPECT_TRUE(link->state().focused);
  EXPECT_EQ(face->focusChild(), link);
}

TEST(SentenceLayout, FitsItsWidthAtEveryFont) {
  for (const bool longer : {false, true}) {
    std::optional<samples::LongerText> text;
    if (longer) text.emplace();
    const SentenceContent content = sentenceOf(samples::tern());
    for (const int points : {8, 10, 20}) {
      const Theme theme = Theme::light(QFont(QStringLiteral("DejaVu Sans"), points));
      for (const qreal width : {700.0, 920.0, 1400.0}) {
        const SentenceLayout layout(content, theme, width);
        for (int link = 0; link < layout.linkCount(); ++link)
          for (const QRectF& rect : layout.linkRects(link)) {
            EXPECT_GE(rect.left(), 0);
            EXPECT_LE(rect.right(), width) << points << ' ' << width;
            EXPECT_LE(rect.bottom(), layout.height());
          }
      }
    }
  }
}

// The block is 72 px with one line, 96 px with two.
TEST(SentenceLayout, HasTheHeightOfTheDesign) {
  SentenceContent content = sentenceOf(samples::tern());
  const Theme theme = Theme::light(QFont(QStringLiteral("DejaVu Sans"), 10));
  EXPECT_NEAR(SentenceLayout(content, theme, 2000).height(), 72, 3);
  EXPECT_NEAR(SentenceLayout(content, theme, 984).height(), 96, 3);
}

// Wherever the lines end, the disc of a problem stands before its text: 24 wide, its left rim beside the number.
TEST(SentenceLayout, ADiscIsNeverLeftAtTheEndOfALine) {
  const SentenceContent content = sentenceOf(samples::tern());
  const Theme theme = Theme::light(QFont(QStringLiteral("DejaVu Sans"), 10));
  for (int width = 300; width < 1500; width += 7) {
    const SentenceLayout layout(content, theme, width);
    QImage image(width, int(layout.height()), QImage::Format_RGB32);
    image.fill(theme.panel);
    QPainter painter(&image);
    layout.paint(painter, {});
    painter.end();
    for (const SentenceRun& run : content.first) {
      if (run.disc == 0) continue;
      ASSERT_TRUE(run.link);
      const QRectF text = layout.linkRects(*run.link).front();
      const QPoint rim(int(text.left() - theme.px(21.5)), int(text.center().y()));
      EXPECT_EQ(image.pixelColor(rim), theme.signal) << run.disc << " at a width of " << width;
    }
  }
}

// Plate check_small: two lines and the second one in the height of one, in a window 1024 wide.
TEST(SentenceLayout, InALowWindowItsTypeFallsUntilItFits) {
  const SentenceContent content = sentenceOf(samples::tern());
  const Theme theme = Theme::light(QFont(QStringLiteral("DejaVu Sans"), 10));
  const SentenceLayout low(content, theme, 920, theme.px(72));
  EXPECT_LE(low.height(), theme.px(73));
  EXPECT_EQ(low.linkOrder().size(), SentenceLayout(content, theme, 920).linkOrder().size());
  // Where even that is not enough it is as low as it gets, and every problem is still a link.
  const SentenceLayout narrow(content, theme, 500, theme.px(72));
  EXPECT_LT(narrow.height(), SentenceLayout(content, theme, 500).height());
  const auto& order = narrow.linkOrder();
  for (int link = 0; link < content.links.size(); ++link) {
    const bool informative = content.linkText(link).contains(QStringLiteral("informative"));
    EXPECT_EQ(std::ranges::count(order, link), informative ? 0 : 1) << content.linkText(link).toStdString();
  }
}

TEST(SentenceLayout, InALowWindowItFitsItsWidthToo) {
  const SentenceContent content = sentenceOf(samples::tern());
  for (const int points : {8, 14, 20}) {
    const Theme theme = Theme::light(QFont(QStringLiteral("DejaVu Sans"), points));
    const SentenceLayout layout(content, theme, 1000, theme.px(72));
    for (int link = 0; link < layout.linkCount(); ++link)
      for (const QRectF& rect : layout.linkRects(link)) {
        EXPECT_LE(rect.right(), 1000) << points;
        EXPECT_LE(rect.bottom(), layout.height()) << points;
      }
  }
}

}  // namespace
}  // namespace ovenwright::widgets
