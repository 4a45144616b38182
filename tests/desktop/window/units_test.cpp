#include "app/desktop/settings/settings.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/desktop/window/check_page.h"
#include "tests/desktop/window/window_fixture.h"

// The units that were chosen hold for all parts of the screen.
namespace ovenwright::desktop {
namespace {

QAction* actionOf(QWidget* window, const QString& text) {
  for (QAction* action : window->findChildren<QAction*>())
    if (action->text() == text) return action;
  return nullptr;
}

TEST_F(WindowTest, FahrenheitAndInchesHoldForSentenceLanesStripAndBoard) {
  openDemo();
  auto* page = m_window->checkPage();
  page->showTab(CheckPage::kBoard);
  ASSERT_NE(actionOf(m_window.get(), QStringLiteral("°F")), nullptr);
  actionOf(m_window.get(), QStringLiteral("°F"))->trigger();
  actionOf(m_window.get(), QStringLiteral("in/min"))->trigger();
  QString shown = shownSentence();
  for (const auto& lane : page->lanes()->table().lanes) {
    shown += lane.rowText + lane.note;
    for (const auto& mark : lane.marks) shown += mark.tip + mark.spoken;
  }
  shown.remove(QStringLiteral("25 °C to peak"));  // a name of the window's own
  EXPECT_FALSE(shown.contains(QStringLiteral("°C"))) << shown.toStdString();
  EXPECT_TRUE(shown.contains(QStringLiteral("°F")));
  // Source: definition of the degree Fahrenheit: the window's 235 to 250 °C are 455 to 482 °F.
  EXPECT_TRUE(shown.contains(QStringLiteral("limits 455 to 482"))) << shown.toStdString();
  const auto strip = widgets::stripNote(page->strip()->table());
  ASSERT_FALSE(strip.isEmpty());
  EXPECT_EQ(strip[0], QStringLiteral("31.9 in/min"));  // 810 / 25.4, the international inch
}

}  // namespace
}  // namespace ovenwright::desktop
