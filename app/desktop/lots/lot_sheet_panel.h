#pragma once
#include <QWidget>
#include <string>
#include <vector>

#include "core/units/result.h"

class QLabel;

namespace ovenwright::desktop {

class ArchiveLink;
class Settings;

/// At the right of the Lots page: the sheet of the marked runs.
class LotSheetPanel : public QWidget {
  Q_OBJECT
 public:
  LotSheetPanel(ArchiveLink* archive, Settings* settings, QWidget* parent = nullptr);

  /// Ids of the marked runs, the oldest run first; where none is marked, of the run that is looked at.
  void setRecords(std::vector<std::string> ids);
  const std::vector<std::string>& records() const { return m_ids; }

 signals:
  void noted(const QString& text);  ///< for the status line
  void troubled(const QString& title, const ovenwright::Error& error);

 private:
  ArchiveLink* m_archive;
  Settings* m_settings;
  std::vector<std::string> m_ids;
  QLabel* m_count;
};

}  // namespace ovenwright::desktop
