#include <QApplication>
#include <QScreen>
#include <QScrollBar>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/text/language.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/desktop.h"
#include "app/desktop/window/roomy_area.h"
#include "tests/desktop/window/window_fixture.h"

// The window fits the screen, at every size of text.
namespace ovenwright::desktop {
namespace {

class ScreenTest : public WindowTest {
 protected:
  ScreenTest() : m_font(QApplication::font()) {}
  ~ScreenTest() override {
    m_window.reset();
    QApplication::setFont(m_font);
    useLanguage(QStringLiteral("en"));
  }
  void showWith(int points, const QString& language) {
    m_window.reset();
    QFont font = m_font;
    font.setPointSize(points);
    QApplication::setFont(font);
    useLanguage(language);
    m_window = std::make_unique<MainWindow>(m_document.get(), m_settings.get(), m_archive.get());
    m_window->show();
  }
  const QFont m_font;
};

TEST_F(ScreenTest, TheFirstWindowLiesInsideTheScreen) {
  showWith(10, QStringLiteral("en"));
  const QRect screen = m_window->screen()->availableGeometry();
  EXPECT_TRUE(screen.contains(m_window->geometry().topLeft()));
  EXPECT_LE(m_window->width(), screen.width());
  EXPECT_LT(m_window->height(), screen.height());  // room for a title, which may come or not
}

TEST_F(ScreenTest, SizeIsKept) {
  const QSize smaller = m_window->minimumSize() + QSize(0, 1).boundedTo(m_window->screen()->availableSize());
  m_window->resize(smaller);
  const QSize size = m_window->size();
  m_window->saveState();
  showWith(10, QStringLiteral("en"));
  EXPECT_EQ(m_window->size(), size);
}

TEST_F(ScreenTest, NoSizeOfTextMakesTheWindowLargerThanItsSmallest) {
  for (const int points : {8, 10, 14, 20}) {
    for (const char* language : {"en", "de", "zh_CN"}) {
      SCOPED_TRACE(testing::Message() << points << " pt, " << language);
      showWith(points, QLatin1String(language));
      openDemo();
      const auto smallest = [this] { return m_window->minimumSizeHint(); };
      // The design's smallest window is 1024x700.
      EXPECT_LE(smallest().width(), 1024);
      EXPECT_LE(smallest().height(), 700);
      m_window->showImport();
      QApplication::processEvents();
      EXPECT_LE(smallest().height(), 700);
      m_window->showResult();
    }
  }
}

TEST_F(ScreenTest, WhatDoesNotFitScrollsAndWhatFitsDoesNot) {
  showWith(10, QStringLiteral("en"));
  m_window->resize(1024, 700);
  openDemo();
  const auto* area = m_window->findChild<RoomyArea*>();
  ASSERT_NE(area, nullptr);
  EXPECT_EQ(area->verticalScrollBar()->maximum(), 0);
  EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0);
  // How the log was read is a form: at twice the size it is longer than the window.
  showWith(20, QStringLiteral("de"));
  m_window->resize(1024, 700);
  m_window->showImport();
  QApplication::processEvents();
  area = m_window->findChild<RoomyArea*>();
  EXPECT_GT(area->verticalScrollBar()->maximum(), 0);
}

TEST_F(ScreenTest, LargeTextInASmallWindowFits) {
  struct Case {
    int points;
    QSize size;
  };
  for (const auto& [points, size] : {Case{8, {1024, 700}}, Case{10, {1024, 700}}, Case{14, {1024, 700}},
                                     Case{14, {1280, 800}}, Case{20, {1280, 800}}, Case{20, {1920, 1080}}}) {
    for (const char* language : {"en", "de", "es", "zh_CN"}) {
      SCOPED_TRACE(testing::Message() << points << " pt, " << size.width() << ", " << language);
      m_document->setCurrent(nullptr);
      showWith(points, QLatin1String(language));
      m_window->resize(size);
      QApplication::processEvents();
      const auto* area = m_window->findChild<RoomyArea*>();
      EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << "empty";
      EXPECT_EQ(area->verticalScrollBar()->maximum(), 0) << "empty";
      openDemo();
      QApplication::processEvents();
      EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << "check";
      EXPECT_EQ(area->verticalScrollBar()->maximum(), 0) << "check";
      m_window->showImport();
      QApplication::processEvents();
      EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << "import";
      m_window->showResult();
    }
  }
}

TEST_F(ScreenTest, WhereCurvesAndLanesHaveNoRoomAboveEachOtherTheCurvesAreATab) {
  showWith(10, QStringLiteral("en"));
  m_window->resize(1024, 700);
  openDemo();
  EXPECT_FALSE(m_window->checkPage()->isStacked());
  // The design's least height of the curves.
  EXPECT_GE(m_window->checkPage()->plot()->height(), 190);
  showWith(20, QStringLiteral("en"));
  m_window->resize(1280, 800);
  QApplication::processEvents();
  CheckPage* page = m_window->checkPage();
  ASSERT_TRUE(page->isStacked());
  EXPECT_EQ(page->tab(), CheckPage::kCurves);
  EXPECT_TRUE(page->plot()->isVisible());
  EXPECT_FALSE(page->lanes()->isVisible());
  page->showTab(CheckPage::kLanes);
  EXPECT_FALSE(page->plot()->isVisible());
  EXPECT_TRUE(page->lanes()->isVisible());
  EXPECT_TRUE(page->parts().contains(page->lanes()));
  // Back in a larger window both stand there again.
  m_window->resize(2400, 1600);
  QApplication::processEvents();
  EXPECT_FALSE(page->isStacked());
  EXPECT_TRUE(page->plot()->isVisible());
  EXPECT_TRUE(page->lanes()->isVisible());
  EXPECT_EQ(page->tab(), CheckPage::kLanes);
}

}  // namespace
}  // namespace ovenwright::desktop
