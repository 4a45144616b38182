#include "tests/desktop/window/window_fixture.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QMimeData>

#include "app/desktop/widgets/sentence.h"
#include "core/window/window_file.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 30000;  // only a bound against hanging

}  // namespace

WindowTest::WindowTest() {
  qputenv("OVENWRIGHT_PROFILES", OVENWRIGHT_PROFILES);
  qputenv("XDG_DATA_HOME", m_folder.filePath(QStringLiteral("data")).toUtf8());
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_folder.filePath(QStringLiteral("config")));
  m_settings = std::make_unique<Settings>();
  m_archive = std::make_unique<ArchiveLink>(m_folder.filePath(QStringLiteral("archive.sqlite")));
  m_document = std::make_unique<Document>();
  check::Request setup;
  auto general = window::find("sac305");
  EXPECT_TRUE(general) << general.error().text();
  setup.windows.push_back(*general);
  setup.window_assumed = true;
  m_document->setInitialSetup(setup);
  m_window = std::make_unique<MainWindow>(m_document.get(), m_settings.get(), m_archive.get());
  m_window->resize(1440, 900);
  m_window->show();
  EXPECT_TRUE(QTest::qWaitForWindowExposed(m_window.get()));
}

WindowTest::~WindowTest() {
  m_window.reset();
  m_document.reset();
}

QString WindowTest::demo(const char* name) {
  return QStringLiteral(OVENWRIGHT_PROFILES "/demo/") + QLatin1String(name);
}

void WindowTest::drop(const QStringList& files) {
  QMimeData data;
  QList<QUrl> urls;
  for (const QString& file : files) urls << QUrl::fromLocalFile(file);
  data.setUrls(urls);
  const QPoint at = m_window->rect().center();
  QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(m_window.get(), &enter);
  EXPECT_TRUE(enter.isAccepted());
  QDropEvent let_go(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(m_window.get(), &let_go);
  EXPECT_TRUE(let_go.isAccepted());
}

void WindowTest::settle() {
  EXPECT_TRUE(QTest::qWaitFor([this] { return !m_document->isBusy(); }, kLongest_ms));
  QApplication::processEvents();
}

void WindowTest::openDemo() {
  m_window->openDemo();
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
}

QString WindowTest::shownSentence() const { return m_window->sentence()->content().spoken; }

QString WindowTest::write(const QString& name, const QByteArray& bytes) {
  const QString path = m_folder.filePath(name);
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
  return path;
}

}  // namespace ovenwright::desktop
