#pragma once
#include <QObject>
#include <memory>

namespace ovenwright::desktop {

class ArchiveLink;
class Document;
class MainWindow;
class Settings;

/// Holds the main window over the document. Another language shows at once: the window is made anew with the same
/// document, on the page that was shown.
class Desktop : public QObject {
  Q_OBJECT
 public:
  /// In the language of the settings. Both must outlive it.
  /// @param archive  path or URL; empty: archive::defaultArchive()
  Desktop(Document* document, Settings* settings, const QString& archive);
  ~Desktop() override;

  ArchiveLink* archive() { return m_archive.get(); }
  MainWindow* window() { return m_window.get(); }
  void show();
  void speak();  ///< in the language of the settings

 private:
  void make();

  Document* m_document;
  Settings* m_settings;
  std::unique_ptr<ArchiveLink> m_archive;  // outlives the window: another language keeps the connection
  std::unique_ptr<MainWindow> m_window;
};

}  // namespace ovenwright::desktop
