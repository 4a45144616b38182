#include <QApplication>
#include <QScreen>
#include <QScrollBar>

#include "app/desktop/text/language.h"
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
  showWith(20, QStringLiteral("de"));
  m_window->resize(1024, 700);
  QApplication::processEvents();
  area = m_window->findChild<RoomyArea*>();
  EXPECT_GT(area->verticalScrollBar()->maximum(), 0);
}

}  // namespace
}  // namespace ovenwright::desktop
