#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTabBar>
#include <QToolButton>
#include <QXmlStreamReader>
#include <algorithm>
#include <set>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/text/language.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/desktop.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

/// English texts that are different in a language and are no word of it.
std::set<QString> onlyEnglish(const QString& language) {
  QFile file(QStringLiteral(OVENWRIGHT_TRANSLATIONS "/ovenwright_%1.ts").arg(language));
  EXPECT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  std::set<QString> english, own;
  QString source;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == u"source") source = xml.readElementText();
    if (xml.name() != u"translation") continue;
    const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements).trimmed();
    own.insert(text);
    if (text != source) english.insert(source);
  }
  for (const QString& text : own) english.erase(text);
  return english;
}

QStringList textsOf(const QWidget* window) {
  QStringList texts;
  for (const QAction* action : window->findChildren<QAction*>()) texts << action->text();
  for (const QWidget* widget : window->findChildren<QWidget*>()) {
    texts << widget->accessibleName() << widget->toolTip();
    if (const auto* label = qobject_cast<const QLabel*>(widget)) texts << label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) texts << button->text();
    if (const auto* edit = qobject_cast<const QLineEdit*>(widget)) texts << edit->placeholderText();
    if (const auto* menu = qobject_cast<const QMenu*>(widget)) texts << menu->title();
    if (const auto* tabs = qobject_cast<const QTabBar*>(widget))
      for (int i = 0; i < tabs->count(); ++i) texts << tabs->tabText(i);
    if (const auto* box = qobject_cast<const QComboBox*>(widget))
      for (int i = 0; i < box->count(); ++i) texts << box->itemText(i);
  }
  return texts;
}

class LanguageTest : public WindowTest {
 protected:
  ~LanguageTest() override { useLanguage(QStringLiteral("en")); }
};

TEST_F(LanguageTest, AnotherLanguageShowsAtOnceAndKeepsWhatIsOpen) {
  m_window.reset();
  m_settings->setLanguage(QStringLiteral("en"));
  Desktop desktop(m_document.get(), m_settings.get(), m_settings->archive());
  desktop.show();
  desktop.window()->openDemo();
  settle();
  const auto view = m_document->view();
  const auto chosen = m_document->chosen();
  ASSERT_TRUE(desktop.window()->sentence()->content().spoken.startsWith(QStringLiteral("Fail.")));
  struct Case {
    const char* code;
    QString starts, number;
  };
  // Source: the verdict's words in resources/translations; the decimal signs are the locales' (CLDR).
  for (const auto& [code, starts, number] : {Case{"de", QStringLiteral("Nicht bestanden."), QStringLiteral("232,")},
                                             Case{"es", QStringLiteral("No cumple."), QStringLiteral("232,")},
                                             Case{"zh_TW", QStringLiteral("不合格。"), QStringLiteral("232.")},
                                             Case{"zh_CN", QStringLiteral("不合格。"), QStringLiteral("232.")},
                                             Case{"en", QStringLiteral("Fail."), QStringLiteral("232.")}}) {
    m_settings->setLanguage(QLatin1String(code));
    desktop.speak();
    const QString spoken = desktop.window()->sentence()->content().spoken;
    EXPECT_TRUE(spoken.startsWith(starts)) << spoken.toStdString();
    EXPECT_TRUE(spoken.contains(number)) << spoken.toStdString();
    EXPECT_EQ(m_document->view(), view);
    EXPECT_EQ(m_document->chosen(), chosen);
  }
}

TEST_F(LanguageTest, WhatIsHalfTypedStandsThereStillInAnotherLanguage) {
  m_window.reset();
  m_settings->setLanguage(QStringLiteral("en"));
  Desktop desktop(m_document.get(), m_settings.get(), m_settings->archive());
  desktop.show();
  desktop.window()->openDemo();
  settle();
  const auto shown = [&](const QString& text) {
    const auto lines = desktop.window()->findChildren<QLineEdit*>();
    const bool typed =
        std::ranges::any_of(lines, [&](const auto* line) { return line->isVisible() && line->text() == text; });
    const auto labels = desktop.window()->findChildren<QLabel*>();
    const bool told = std::ranges::any_of(
        labels, [&](const auto* label) { return label->isVisible() && label->text().contains(text); });
    return typed && told;
  };
  const auto type = [&](const QString& field, const QString& text) {
    for (auto* line : desktop.window()->findChildren<QLineEdit*>()) {
      if (!line->isVisible() || line->accessibleName() != field) continue;
      line->setText(text);
      emit line->textEdited(text);
      return;
    }
    FAIL() << field.toStdString();
  };
  desktop.window()->showOvenEditor();
  type(QStringLiteral("Ambient, °C"), QStringLiteral("2o"));
  desktop.window()->showWindowEditor();
  type(QStringLiteral("Solidus, °C"), QStringLiteral("21x"));
  ASSERT_TRUE(shown(QStringLiteral("21x")));
  m_settings->setLanguage(QStringLiteral("de"));
  desktop.speak();
  EXPECT_EQ(desktop.window()->shownPage(), MainWindow::Page::kWindowEditor);
  EXPECT_TRUE(shown(QStringLiteral("21x")));
  m_document->undoStack()->undo();  // the step of undo is that of the page in the language of the day
  EXPECT_FALSE(shown(QStringLiteral("21x")));
  desktop.window()->showOvenEditor();
  EXPECT_TRUE(shown(QStringLiteral("2o")));
}

TEST_F(LanguageTest, NoTabIsCut) {
  // Qt takes the width of a key in brackets, as Chinese has it, to be less than it draws.
  m_window.reset();
  for (const auto& language : languages()) {
    m_settings->setLanguage(language.code);
    Desktop desktop(m_document.get(), m_settings.get(), m_settings->archive());
    desktop.show();
    if (!m_document->view()) {
      desktop.window()->openDemo();
      settle();
    }
    for (const int width : {1024, 1280, 1440}) {
      desktop.window()->resize(width, 800);
      QTest::qWait(1);
      for (const auto* tabs : desktop.window()->checkPage()->findChildren<QTabBar*>()) {
        EXPECT_EQ(tabs->elideMode(), Qt::ElideNone);
        EXPECT_GE(tabs->width(), tabs->sizeHint().width()) << language.code.toStdString() << ' ' << width;
      }
    }
  }
}

TEST_F(LanguageTest, NothingOnScreenStaysEnglish) {
  m_window.reset();
  m_settings->setLanguage(QStringLiteral("de"));
  Desktop desktop(m_document.get(), m_settings.get(), m_settings->archive());
  desktop.show();
  const auto english = onlyEnglish(QStringLiteral("de"));
  const auto check = [&](const char* what) {
    for (const QString& text : textsOf(desktop.window()))
      EXPECT_FALSE(english.contains(text)) << what << ": " << text.toStdString();
  };
  check("empty");
  desktop.window()->openDemo();
  settle();
  desktop.window()->checkPage()->stepProblem(1);
  check("result");
  desktop.window()->showTask(MainWindow::Task::kCompare);
  check("compare, one run");
  desktop.window()->openDemoPair();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !desktop.window()->comparePage()->session()->isBusy(); }, 60000));
  check("compare");
  desktop.window()->showTask(MainWindow::Task::kCheck);
  desktop.window()->showImport();
  check("how the log was read");
  desktop.window()->showWindowEditor();
  check("window editor");
}

}  // namespace
}  // namespace ovenwright::desktop
