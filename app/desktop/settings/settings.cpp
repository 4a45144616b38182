#include "app/desktop/settings/settings.h"

#include <QLocale>

#include "app/sheet/record.h"
#include "core/lot/lot.h"

namespace ovenwright::desktop {
namespace {

template <class T>
struct Key {
  const char* name;
  T fallback;
};

// Files hold words, not numbers of enumerators, so that a file outlives a change of their order.
const Key<QString> kTemperatureUnit{"units/temperature", QStringLiteral("degC")};  // degC, degF
const Key<QString> kSpeedUnit{"units/speed", QStringLiteral("mm_per_min")};        // mm_per_min, cm_per_min, in_per_min
const Key<QString> kLanguage{"language", {}};
const Key<QStringList> kRecentLogs{"files/recent_logs", {}};
const Key<QString> kOpenFolder{"files/open_folder", {}};
const Key<QByteArray> kWindowGeometry{"window/geometry", {}};
const Key<QByteArray> kCheckSplitter{"check/splitter", {}};
const Key<QByteArray> kTableColumns{"check/table_columns", {}};
const Key<QByteArray> kImportRows{"import/rows", {}};
const Key<QByteArray> kImportColumns{"import/columns", {}};
const Key<QByteArray> kCompareSplitter{"compare/splitter", {}};
const Key<QByteArray> kTuneSplitter{"tune/splitter", {}};
const Key<bool> kTunePanelShown{"tune/panel_shown", true};
const Key<int> kTunePanelWidth{"tune/panel_width", 372};  // px at a 13 px font
const Key<int> kPanelWidth{"check/panel_width", 352};     // px at a 13 px font
const Key<bool> kPanelShown{"check/panel_shown", true};
const Key<int> kCheckTab{"check/tab", 0};
const Key<QString> kArchive{"archive/where", {}};                                // path, or postgresql://…
const Key<QString> kLotChart{"lots/chart", QStringLiteral("individuals")};       // individuals, xbar_r, xbar_s, ewma
const Key<QString> kLotRules{"lots/rules", QStringLiteral("western_electric")};  // western_electric, nelson
const Key<int> kSubgroup{"lots/subgroup", 5};
const Key<QByteArray> kLotsSplitter{"lots/splitter", {}};
const Key<QByteArray> kLotsColumns{"lots/columns", {}};
const Key<int> kLotsTab{"lots/tab", 0};
const Key<int> kLotsPanelWidth{"lots/panel_width", 432};  // px at a 13 px font
const Key<bool> kLotsPanelShown{"lots/panel_shown", true};
const Key<QString> kCompany{"sheet/company", {}};
const Key<QString> kLogo{"sheet/logo", {}};    // path
const Key<QString> kPaper{"sheet/paper", {}};  // A4, Letter; empty: as the system's country
const Key<QString> kSheetFolder{"sheet/folder", {}};
const Key<QString> kOperator{"keep/operator", {}};
const Key<bool> kMarkPrinted{"sheet/mark_printed", true};
const Key<bool> kPageForEachRun{"sheet/page_for_each_run", false};
const Key<QString> kWatchedFolder{"watch/folder", {}};
const Key<QString> kWatchRules{"watch/rules", {}};          // path
constexpr const char* kLayoutOfShape = "layout_of_shape/";  // + shape: path of the layout's file

template <class T>
T read(const QSettings& file, const Key<T>& key) {
  return file.value(QLatin1String(key.name), QVariant::fromValue(key.fallback)).template value<T>();
}

template <class T>
void write(QSettings& file, const Key<T>& key, const T& value) {
  file.setValue(QLatin1String(key.name), QVariant::fromValue(value));
}

}  // namespace

Settings::Settings()
    : m_file(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("ovenwright"), QStringLiteral("desktop")) {}

TemperatureUnit Settings::temperatureUnit() const {
  return read(m_file, kTemperatureUnit) == u"degF" ? TemperatureUnit::kFahrenheit : TemperatureUnit::kCelsius;
}

void Settings::setTemperatureUnit(TemperatureUnit unit) {
  write(m_file, kTemperatureUnit,
        unit == TemperatureUnit::kFahrenheit ? QStringLiteral("degF") : kTemperatureUnit.fallback);
}

SpeedUnit Settings::speedUnit() const {
  const QString word = read(m_file, kSpeedUnit);
  if (word == u"cm_per_min") return SpeedUnit::kCentimetresPerMinute;
  if (word == u"in_per_min") return SpeedUnit::kInchesPerMinute;
  return SpeedUnit::kMillimetresPerMinute;
}

void Settings::setSpeedUnit(SpeedUnit unit) {
  QString word = kSpeedUnit.fallback;
  if (unit == SpeedUnit::kCentimetresPerMinute) word = QStringLiteral("cm_per_min");
  if (unit == SpeedUnit::kInchesPerMinute) word = QStringLiteral("in_per_min");
  write(m_file, kSpeedUnit, word);
}

QString Settings::language() const { return read(m_file, kLanguage); }
void Settings::setLanguage(const QString& code) { write(m_file, kLanguage, code); }

QStringList Settings::recentLogs() const { return read(m_file, kRecentLogs); }

void Settings::addRecentLog(const QString& path) {
  QStringList paths = recentLogs();
  paths.removeAll(path);
  paths.prepend(path);
  while (paths.size() > kMostRecent) paths.removeLast();
  write(m_file, kRecentLogs, paths);
}

void Settings::clearRecentLogs() { m_file.remove(QLatin1String(kRecentLogs.name)); }
QString Settings::openFolder() const { return read(m_file, kOpenFolder); }
void Settings::setOpenFolder(const QString& folder) { write(m_file, kOpenFolder, folder); }
QByteArray Settings::windowGeometry() const { return read(m_file, kWindowGeometry); }
void Settings::setWindowGeometry(const QByteArray& geometry) { write(m_file, kWindowGeometry, geometry); }
QByteArray Settings::checkSplitter() const { return read(m_file, kCheckSplitter); }
void Settings::setCheckSplitter(const QByteArray& state) { write(m_file, kCheckSplitter, state); }
QByteArray Settings::tableColumns() const { return read(m_file, kTableColumns); }
void Settings::setTableColumns(const QByteArray& state) { write(m_file, kTableColumns, state); }
QByteArray Settings::importRows() const { return read(m_file, kImportRows); }
void Settings::setImportRows(const QByteArray& state) { write(m_file, kImportRows, state); }
QByteArray Settings::importColumns() const { return read(m_file, kImportColumns); }
void Settings::setImportColumns(const QByteArray& state) { write(m_file, kImportColumns, state); }
QByteArray Settings::compareSplitter() const { return read(m_file, kCompareSplitter); }
void Settings::setCompareSplitter(const QByteArray& state) { write(m_file, kCompareSplitter, state); }
QByteArray Settings::tuneSplitter() const { return read(m_file, kTuneSplitter); }
void Settings::setTuneSplitter(const QByteArray& state) { write(m_file, kTuneSplitter, state); }
bool Settings::tunePanelShown() const { return read(m_file, kTunePanelShown); }
void Settings::setTunePanelShown(bool shown) { write(m_file, kTunePanelShown, shown); }
int Settings::tunePanelWidth() const { return read(m_file, kTunePanelWidth); }
void Settings::setTunePanelWidth(int px) { write(m_file, kTunePanelWidth, px); }
int Settings::panelWidth() const { return read(m_file, kPanelWidth); }
void Settings::setPanelWidth(int px) { write(m_file, kPanelWidth, px); }
bool Settings::panelShown() const { return read(m_file, kPanelShown); }
void Settings::setPanelShown(bool shown) { write(m_file, kPanelShown, shown); }
int Settings::checkTab() const { return read(m_file, kCheckTab); }
void Settings::setCheckTab(int index) { write(m_file, kCheckTab, index); }

QByteArray Settings::lotsColumns() const { return read(m_file, kLotsColumns); }
void Settings::setLotsColumns(const QByteArray& state) { write(m_file, kLotsColumns, state); }
int Settings::lotsTab() const { return read(m_file, kLotsTab); }
void Settings::setLotsTab(int index) { write(m_file, kLotsTab, index); }
int Settings::lotsPanelWidth() const { return read(m_file, kLotsPanelWidth); }
void Settings::setLotsPanelWidth(int px) { write(m_file, kLotsPanelWidth, px); }
bool Settings::lotsPanelShown() const { return read(m_file, kLotsPanelShown); }
void Settings::setLotsPanelShown(bool shown) { write(m_file, kLotsPanelShown, shown); }

QString Settings::archive() const { return read(m_file, kArchive); }
void Settings::setArchive(const QString& where) { write(m_file, kArchive, where); }

lot::Options Settings::lotChart() const {
  lot::Options options;
  const QString kind = read(m_file, kLotChart);
  if (kind == u"xbar_r") options.chart = lot::ChartKind::kXbarR;
  if (kind == u"xbar_s") options.chart = lot::ChartKind::kXbarS;
  if (kind == u"ewma") options.chart = lot::ChartKind::kEwma;
  if (read(m_file, kLotRules) == u"nelson") options.rules = lot::RuleSet::kNelson;
  const int subgroup = read(m_file, kSubgroup);
  if (subgroup >= 2 && subgroup <= 25) options.subgroup = std::size_t(subgroup);
  return options;
}

void Settings::setLotChart(const lot::Options& options) {
  QString kind = kLotChart.fallback;
  if (options.chart == lot::ChartKind::kXbarR) kind = QStringLiteral("xbar_r");
  if (options.chart == lot::ChartKind::kXbarS) kind = QStringLiteral("xbar_s");
  if (options.chart == lot::ChartKind::kEwma) kind = QStringLiteral("ewma");
  write(m_file, kLotChart, kind);
  write(m_file, kLotRules, options.rules == lot::RuleSet::kNelson ? QStringLiteral("nelson") : kLotRules.fallback);
  write(m_file, kSubgroup, int(options.subgroup));
}

QByteArray Settings::lotsSplitter() const { return read(m_file, kLotsSplitter); }
void Settings::setLotsSplitter(const QByteArray& state) { write(m_file, kLotsSplitter, state); }

QString Settings::company() const { return read(m_file, kCompany); }
void Settings::setCompany(const QString& name) { write(m_file, kCompany, name); }
QString Settings::logo() const { return read(m_file, kLogo); }
void Settings::setLogo(const QString& path) { write(m_file, kLogo, path); }

sheet::Paper Settings::paper() const {
  const QString word = read(m_file, kPaper);
  if (word == u"Letter") return sheet::Paper::kLetter;
  if (word == u"A4") return sheet::Paper::kA4;
  const bool letter = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
  return letter ? sheet::Paper::kLetter : sheet::Paper::kA4;
}

void Settings::setPaper(sheet::Paper paper) {
  write(m_file, kPaper, paper == sheet::Paper::kLetter ? QStringLiteral("Letter") : QStringLiteral("A4"));
}

QString Settings::operatorName() const { return read(m_file, kOperator); }
void Settings::setOperatorName(const QString& name) { write(m_file, kOperator, name); }
bool Settings::markPrinted() const { return read(m_file, kMarkPrinted); }
void Settings::setMarkPrinted(bool mark) { write(m_file, kMarkPrinted, mark); }
bool Settings::pageForEachRun() const { return read(m_file, kPageForEachRun); }
void Settings::setPageForEachRun(bool each) { write(m_file, kPageForEachRun, each); }
QString Settings::watchedFolder() const { return read(m_file, kWatchedFolder); }
void Settings::setWatchedFolder(const QString& folder) { write(m_file, kWatchedFolder, folder); }
QString Settings::watchRules() const { return read(m_file, kWatchRules); }
void Settings::setWatchRules(const QString& path) { write(m_file, kWatchRules, path); }
QString Settings::sheetFolder() const { return read(m_file, kSheetFolder); }
void Settings::setSheetFolder(const QString& folder) { write(m_file, kSheetFolder, folder); }

QString Settings::layoutOfShape(const QString& shape) const {
  return m_file.value(QLatin1String(kLayoutOfShape) + shape).toString();
}

void Settings::setLayoutOfShape(const QString& shape, const QString& path) {
  const QString key = QLatin1String(kLayoutOfShape) + shape;
  if (path.isEmpty()) {
    m_file.remove(key);
  } else {
    m_file.setValue(key, path);
  }
}

std::vector<std::pair<QString, QString>> Settings::layoutsByShape() const {
  std::vector<std::pair<QString, QString>> all;
  for (const QString& key : m_file.allKeys()) {
    const QLatin1String group(kLayoutOfShape);
    if (key.startsWith(group)) all.emplace_back(key.mid(group.size()), m_file.value(key).toString());
  }
  return all;
}

}  // namespace ovenwright::desktop
