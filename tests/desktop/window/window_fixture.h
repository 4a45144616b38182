#pragma once
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/document/document.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/window/main_window.h"

namespace ovenwright::desktop {

/// The real main window, off screen, on the demo's files, with settings and data folders of its own.
class WindowTest : public testing::Test {
 protected:
  WindowTest();
  ~WindowTest() override;

  static QString demo(const char* name);
  /// As a file dragged onto the window and let go there.
  void drop(const QStringList& files);
  /// Until nothing is read or judged any more.
  void settle();
  /// The demo's first run with its window, board, oven and recipe.
  void openDemo();
  QString shownSentence() const;
  QString write(const QString& name, const QByteArray& bytes);  ///< a file in the test's own folder; its path

  QTemporaryDir m_folder;
  std::unique_ptr<Settings> m_settings;
  std::unique_ptr<ArchiveLink> m_archive;  ///< of a file in the folder that is not there at first
  std::unique_ptr<Document> m_document;
  std::unique_ptr<MainWindow> m_window;
};

}  // namespace ovenwright::desktop
