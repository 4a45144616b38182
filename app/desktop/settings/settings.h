#pragma once
#include <QByteArray>
#include <QSettings>
#include <QStringList>
#include <utility>
#include <vector>

#include "app/desktop/text/units.h"

namespace ovenwright::lot {
struct Options;
}
namespace ovenwright::sheet {
enum class Paper;
}

namespace ovenwright::desktop {

/// What the desktop remembers between two starts: one file in the user's configuration folder. Every key, its
/// default and its unit stand in settings.cpp and nowhere else. Nothing that decides a verdict is kept here.
class Settings {
 public:
  Settings();

  TemperatureUnit temperatureUnit() const;
  void setTemperatureUnit(TemperatureUnit unit);
  SpeedUnit speedUnit() const;
  void setSpeedUnit(SpeedUnit unit);
  QString language() const;  ///< a code of languages(); empty: as the system says
  void setLanguage(const QString& code);

  /// Paths of logs, the latest first, at most kMostRecent.
  QStringList recentLogs() const;
  void addRecentLog(const QString& path);
  void clearRecentLogs();
  QString openFolder() const;  ///< of the last log that was opened; empty at first
  void setOpenFolder(const QString& folder);

  QByteArray windowGeometry() const;
  void setWindowGeometry(const QByteArray& geometry);
  QByteArray checkSplitter() const;
  void setCheckSplitter(const QByteArray& state);
  QByteArray tableColumns() const;  ///< of the results: order and widths
  void setTableColumns(const QByteArray& state);
  QByteArray importRows() const;  ///< file above channels
  void setImportRows(const QByteArray& state);
  QByteArray importColumns() const;  ///< both beside the choices of the reading
  void setImportColumns(const QByteArray& state);
  QByteArray compareSplitter() const;
  void setCompareSplitter(const QByteArray& state);
  QByteArray tuneSplitter() const;
  void setTuneSplitter(const QByteArray& state);
  bool tunePanelShown() const;
  void setTunePanelShown(bool shown);
  int tunePanelWidth() const;  ///< px at a 13 px font
  void setTunePanelWidth(int px);
  int panelWidth() const;  ///< px at a 13 px font
  void setPanelWidth(int px);
  bool panelShown() const;
  void setPanelShown(bool shown);
  int checkTab() const;
  void setCheckTab(int index);

  QString archive() const;  ///< path or URL of the archive; empty: the one in the user's data folder
  void setArchive(const QString& where);

  lot::Options lotChart() const;  ///< kind of control chart, runs in a subgroup, rules
  void setLotChart(const lot::Options& options);
  QByteArray lotsSplitter() const;
  void setLotsSplitter(const QByteArray& state);
  QByteArray lotsColumns() const;  ///< of the list of runs: order and widths
  void setLotsColumns(const QByteArray& state);
  int lotsTab() const;
  void setLotsTab(int index);
  int lotsPanelWidth() const;  ///< px at a 13 px font
  void setLotsPanelWidth(int px);
  bool lotsPanelShown() const;
  void setLotsPanelShown(bool shown);

  QString company() const;  ///< at the head of sheets; empty: none
  void setCompany(const QString& name);
  QString logo() const;  ///< path of a picture at the head of sheets; empty: none
  void setLogo(const QString& path);
  sheet::Paper paper() const;  ///< until it is chosen, what the system's country uses
  void setPaper(sheet::Paper paper);
  QString operatorName() const;  ///< who keeps runs and marks sheets as printed here; empty: nobody said
  void setOperatorName(const QString& name);
  bool markPrinted() const;  ///< sheets that are printed are noted in the record
  void setMarkPrinted(bool mark);
  bool pageForEachRun() const;  ///< behind the page that sums a lot up
  void setPageForEachRun(bool each);
  QString sheetFolder() const;  ///< of the last sheet that was written
  void setSheetFolder(const QString& folder);

  QString watchedFolder() const;  ///< the last one; never watched without being told to
  void setWatchedFolder(const QString& folder);
  QString watchRules() const;  ///< path of its rules.toml
  void setWatchRules(const QString& path);

  /// The file of the layout that logs of a shape are read with (see LayoutMemory); empty where none is kept.
  QString layoutOfShape(const QString& shape) const;
  void setLayoutOfShape(const QString& shape, const QString& path);  ///< empty: no longer
  std::vector<std::pair<QString, QString>> layoutsByShape() const;

  static constexpr int kMostRecent = 10;

 private:
  QSettings m_file;
};

}  // namespace ovenwright::desktop
