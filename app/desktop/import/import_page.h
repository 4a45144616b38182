#pragma once
#include <QWidget>

#include "app/desktop/document/document.h"
#include "app/desktop/import/fault_lines.h"
#include "app/desktop/text/format.h"

class QLabel;
class QSplitter;

namespace ovenwright::desktop {

class ChannelsPanel;
class ElidedLabel;
class FileTable;
class LayoutMemory;
class ReadingPanel;
class Settings;

/// How a log was read: what stands in the file, its channels, and every choice the reader made, to be put right.
class ImportPage : public QWidget {
  Q_OBJECT
 public:
  ImportPage(Document* document, LayoutMemory* memory, Settings* settings, QWidget* parent = nullptr);
  void saveState();
  void setFormat(const Format& format);
  ReadingPanel* readingPanel() { return m_reading; }
  /// The focus to where an assumption (a key of the layout) can be put right.
  void focusAbout(const QString& about);
  /// The focus to what can be done about a channel's faults.
  void focusChannel(std::size_t channel);
  QList<QWidget*> parts() const;
  /// A log that could not be read: its lines, and how else it could be read. Null: the log that is shown.
  bool isFailureShown() const { return m_failure.has_value(); }
  void showFailure(const std::optional<Document::Failure>& failure);

 signals:
  void boardWanted();
  void showWanted(std::size_t channel, double from_s, double to_s);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void refresh();
  void columnMenu(int column, const QPoint& at);

  Document* m_document;
  Settings* m_settings;
  Format m_format;
  std::optional<Document::Failure> m_failure;
  ElidedLabel *m_fileNote, *m_channelsNote;
  FileTable* m_file;
  ChannelsPanel* m_channels;
  ReadingPanel* m_reading;
  QSplitter *m_rows, *m_columns;
  std::weak_ptr<const RunView> m_linesOf;  ///< whose lines those are; a log that is closed is not held
  FaultLines m_lines;
  bool m_wasShown = false;
};

}  // namespace ovenwright::desktop
