#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QScrollBar>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QTabBar>
#include <QTextDocument>
#include <functional>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/keep/keep_form.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/settings/settings_window.h"
#include "app/desktop/text/language.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/watch/watch_window.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/help_window.h"
#include "app/desktop/window/roomy_area.h"
#include "tests/app/archive/runs.h"
#include "tests/desktop/window/window_fixture.h"

// What holds on every page, in every language: each control has a name, and no text is cut.
namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 60000;  // only a bound against hanging

class EveryPage : public WindowTest, public testing::WithParamInterface<const char*> {
 protected:
  EveryPage() : m_font(QApplication::font()) {
    Appearance::giveRoom();
    auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
    EXPECT_TRUE(archive && archive->add(madeUpRuns(1, 8)));
  }
  ~EveryPage() override {
    m_window.reset();
    QApplication::setFont(m_font);
    useLanguage(QStringLiteral("en"));
  }

  void showWith(int points) {
    m_window.reset();
    QFont font = m_font;
    font.setPointSize(points);
    QApplication::setFont(font);
    useLanguage(QLatin1String(GetParam()));
    m_window = std::make_unique<MainWindow>(m_document.get(), m_settings.get(), m_archive.get());
    m_window->resize(1440, 900);
    m_window->show();
  }

  /// Goes through all pages with two runs open and one kept, and calls `seen` on each with the window that shows it.
  void visit(const std::function<void(QWidget*, const char*)>& seen) {
    const auto look = [&](const char* page) {
      QApplication::processEvents();
      seen(m_window.get(), page);
    };
    if (m_document->logs().empty()) {
      look("empty");
      m_window->openDemoPair();
      settle();
    }
    m_window->showTask(MainWindow::Task::kCheck);
    m_window->checkPage()->stepProblem(1);
    for (const auto& [tab, page] : {std::pair(CheckPage::kLanes, "lanes"), std::pair(CheckPage::kTable, "table"),
                                    std::pair(CheckPage::kBoard, "board")}) {
      m_window->checkPage()->showTab(tab);
      look(page);
    }
    m_window->showImport();
    look("how the log was read");
    m_window->showWindowEditor(0, 0);
    look("window editor");
    m_window->showOvenEditor();
    look("oven editor");
    m_window->showTask(MainWindow::Task::kTune);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_window->tunePage()->session()->isBusy(); }, kLongest_ms));
    look("tune");
    m_window->showTask(MainWindow::Task::kCompare);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_window->comparePage()->session()->isBusy(); }, kLongest_ms));
    look("compare");
    m_window->showTask(MainWindow::Task::kLots);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_window->lotsPage()->isBusy(); }, kLongest_ms));
    look("lots");
    m_window->showTask(MainWindow::Task::kCheck);
  }

  const QFont m_font;
};

/// Parts inside stock widgets, which are heard through these.
bool isPart(const QWidget* widget) {
  return widget->objectName().startsWith(QStringLiteral("qt_")) ||
         qobject_cast<QAbstractItemView*>(widget->parentWidget()) || qobject_cast<QComboBox*>(widget->parentWidget()) ||
         qobject_cast<QAbstractSpinBox*>(widget->parentWidget()) || qobject_cast<QLineEdit*>(widget->parentWidget());
}

QStringList nameless(const QWidget* window) {
  QStringList all;
  for (QWidget* widget : window->findChildren<QWidget*>()) {
    if (!widget->isVisible() || isPart(widget)) continue;
    const bool control = widget->focusPolicy() != Qt::NoFocus || qobject_cast<const QAbstractButton*>(widget) ||
                         qobject_cast<const QComboBox*>(widget) || qobject_cast<const QLineEdit*>(widget) ||
                         qobject_cast<const QAbstractItemView*>(widget);
    if (!control) continue;
    QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
    if (heard && !heard->text(QAccessible::Name).trimmed().isEmpty()) continue;
    all << QStringLiteral("%1 in %2")
               .arg(QLatin1String(widget->metaObject()->className()),
                    QLatin1String(widget->parentWidget()->metaObject()->className()));
  }
  return all;
}

QString plain(QString text) {
  if (Qt::mightBeRichText(text)) {
    QTextDocument document;
    document.setHtml(text);
    text = document.toPlainText();
  }
  return text.remove(u'&');
}

/// Texts that are wider than their widget and cannot be read elsewhere: what is cut on purpose has its tool tip.
QStringList cut(const QWidget* window) {
  QStringList all;
  for (QWidget* widget : window->findChildren<QWidget*>()) {
    if (!widget->isVisible() || isPart(widget)) continue;
    QString text;
    int room = widget->width();
    if (const auto* label = qobject_cast<const QLabel*>(widget)) {
      if (dynamic_cast<const ElidedLabel*>(widget) || label->wordWrap()) continue;
      text = plain(label->text());
      room = label->contentsRect().width();
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
      text = plain(button->text());
    } else if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
      text = box->currentText();
      QStyleOptionComboBox option;
      option.initFrom(box);
      constexpr int kInset_px = 6;  // at which Appearance cuts it
      room = box->style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box).width() -
             kInset_px;
    }
    if (text.isEmpty() || !widget->toolTip().isEmpty() || widget->size().isEmpty()) continue;  // a hint without room
    const int wide = widget->fontMetrics().horizontalAdvance(text);
    if (wide <= room) continue;
    all << QStringLiteral("%1 \"%2\" needs %3, has %4")
               .arg(QLatin1String(widget->metaObject()->className()), text)
               .arg(wide)
               .arg(room);
  }
  return all;
}

/// Whatever can be pressed and is lower than the design's least target.
QStringList smallTargets(const QWidget* window) {
  constexpr int kLeast_px = 24;  // design: targets at least 24 px at 10 pt
  QStringList small;
  for (QWidget* widget : window->findChildren<QWidget*>()) {
    if (!widget->isVisible() || isPart(widget)) continue;
    QSize size = widget->size();
    if (const auto* tabs = qobject_cast<QTabBar*>(widget)) {
      if (tabs->count() > 0) size = tabs->tabRect(0).size();
    } else if (const auto* label = qobject_cast<const QLabel*>(widget)) {
      if (!label->text().contains(QStringLiteral("<a href"))) continue;
      size.setWidth(kLeast_px);  // a link is as wide as its words
    } else if (!qobject_cast<QAbstractButton*>(widget) && !qobject_cast<QComboBox*>(widget) &&
               !qobject_cast<QLineEdit*>(widget) && !qobject_cast<QAbstractSpinBox*>(widget)) {
      continue;
    }
    if (size.height() >= kLeast_px && size.width() >= kLeast_px) continue;
    small << QStringLiteral("%1 %2: %3x%4")
                 .arg(QLatin1String(widget->metaObject()->className()), widget->accessibleName())
                 .arg(size.width())
                 .arg(size.height());
  }
  return small;
}

TEST_P(EveryPage, EveryTargetIsLargeEnough) {
  showWith(10);
  visit([](const QWidget* window, const char* page) {
    EXPECT_EQ(smallTargets(window).join(u'\n').toStdString(), "") << page;
  });
  for (const QAction* menu : m_window->menuBar()->actions())
    EXPECT_GE(m_window->menuBar()->actionGeometry(const_cast<QAction*>(menu)).height(), 24);
}

TEST_P(EveryPage, EveryControlHasAName) {
  showWith(10);
  visit([](const QWidget* window, const char* page) {
    EXPECT_EQ(nameless(window).join(u'\n').toStdString(), "") << page;
  });
  m_window->keepForm()->open();
  EXPECT_EQ(nameless(m_window->keepForm()).join(u'\n').toStdString(), "") << "keep";
  for (QWidget* dialog :
       {static_cast<QWidget*>(m_window->settingsWindow()), static_cast<QWidget*>(m_window->watchWindow())}) {
    dialog->show();
    EXPECT_EQ(nameless(dialog).join(u'\n').toStdString(), "") << dialog->windowTitle().toStdString();
    dialog->hide();
  }
  for (QAction* action : m_window->findChildren<QAction*>())
    if (action->shortcut() == QKeySequence(Qt::Key_F1)) action->trigger();
  auto* help = m_window->findChild<HelpWindow*>();
  ASSERT_NE(help, nullptr);
  EXPECT_EQ(nameless(help).join(u'\n').toStdString(), "") << "help";
}

TEST_P(EveryPage, NoTextIsCut) {
  struct Case {
    int points;
    std::vector<QSize> sizes;
  };
  for (const auto& [points, sizes] : {Case{8, {{1024, 700}, {1280, 800}}},
                                      Case{10, {{1024, 700}, {1279, 800}, {1280, 800}, {1600, 900}, {1920, 1080}}},
                                      Case{20, {{1280, 800}, {1920, 1080}}}}) {
    showWith(points);
    visit([this, points = points, &sizes = sizes](const QWidget* window, const char* page) {
      for (const QSize& size : sizes) {
        m_window->resize(size);
        QTest::qWait(1);
        EXPECT_EQ(cut(window).join(u'\n').toStdString(), "")
            << page << ", " << points << " pt, " << size.width() << 'x' << size.height();
        const auto* area = m_window->findChild<RoomyArea*>();
        EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0)
            << page << ", " << points << " pt, " << size.width() << 'x' << size.height();
      }
    });
  }
}

INSTANTIATE_TEST_SUITE_P(Languages, EveryPage, testing::Values("en", "de", "es", "zh_TW", "zh_CN"),
                         [](const auto& language) { return std::string(language.param); });

}  // namespace
}  // namespace ovenwright::desktop
