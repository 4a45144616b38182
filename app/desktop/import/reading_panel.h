#pragma once
#include <QWidget>
#include <vector>

#include "app/desktop/document/document.h"
#include "app/desktop/text/format.h"
#include "app/desktop/widgets/theme.h"

class QCheckBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace ovenwright::desktop {

class LayoutMemory;
class ReadingRow;

/// How the log was read: each thing that was found or assumed, with what else it could be. A choice takes effect at
/// once and can be undone.
class ReadingPanel : public QWidget {
  Q_OBJECT
 public:
  ReadingPanel(Document* document, LayoutMemory* memory, QWidget* parent = nullptr);
  void refresh(const widgets::Theme& theme, const Format& format);
  /// For a log that could not be read: each choice reads it again in another way.
  void refreshFailure(const Document::Failure& failure, const widgets::Theme& theme);
  void focusEntry();
  void focusAbout(const QString& about);  ///< "unit", "decimal", …: the layout's key

 signals:
  void done();                      ///< the reading is right: back to the result
  void noted(const QString& text);  ///< for the status line
  void troubled(const QString& title, const ovenwright::Error& error);

 private:
  ReadingRow* addRow(const QString& about, const QString& title);
  ReadingRow* row(const QString& about) const;  ///< null: none is about that
  void fill(const QString& about, const std::vector<std::pair<QString, QString>>& choices, const QString& now,
            const QString& remark);
  void choose(const QString& about, const QString& value);
  void setEntry(std::optional<double> entry_s, bool typed);
  void setFailing(bool failing);
  void useReading();
  void backToFound();
  void exportLayout();
  log::Layout namedLayout() const;

  Document* m_document;
  LayoutMemory* m_memory;
  QVBoxLayout* m_rowsLayout;
  std::vector<ReadingRow*> m_rows;
  QLabel *m_heading, *m_changed, *m_cells;
  QDoubleSpinBox* m_entry;
  QCheckBox* m_remember;
  QLineEdit* m_name;
  QPushButton *m_use, *m_back, *m_export;
  Document::LogPointer m_failed;  // the log that the choices are for, in place of the shown one
  std::vector<log::ListedTable> m_tables;  // of the shown log or of the one that failed
  bool m_filling = false;
};

}  // namespace ovenwright::desktop
