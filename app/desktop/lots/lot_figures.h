#pragma once
#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

#include "app/desktop/archive/archive_link.h"
#include "core/lot/lot.h"
#include "core/lot/zones.h"
#include "core/report/kept_run.h"

namespace ovenwright::desktop {

/// Runs whose statistics belong together: one board by one window and its revision; or all that are listed.
struct RunGroup {
  bool all = false;
  std::string board, window, revision;
  std::size_t runs = 0;
  friend bool operator==(const RunGroup& a, const RunGroup& b) {
    return a.all == b.all && a.board == b.board && a.window == b.window && a.revision == b.revision;
  }
};

/// A run of the figures: where a point of a chart leads to.
struct FigureRun {
  std::string id, lot;
  archive::Moment runAt{};
  std::string oven;
  std::size_t group = 0;  ///< index into LotFigures::groups
};

/// The statistics of the listed runs of one group, as `ovenwright lot` works them out.
struct LotFigures {
  std::vector<RunGroup> groups;  ///< of what is listed, that of the newest run first; with several, all of them last
  std::size_t group = 0;         ///< the one that `lot` is of
  std::vector<FigureRun> runs;   ///< in order of time; Point and Signal of `lot` point into it
  lot::Lot lot;
  bool cut = false;  ///< only the newest kMost runs of the list were taken
  /// The same of all groups where they were asked for: of each of `allRuns` its result of the chosen series.
  std::vector<FigureRun> allRuns;
  lot::Lot all;
  lot::ZoneTraces zones;           ///< of allRuns, which its runs point into
  std::vector<std::string> ovens;  ///< of allRuns, each once, without none
};

/// Loads the reports of the listed runs off the GUI thread, in pieces, so that lists are answered in between, and works
/// the statistics out. What is shown stays until the new figures are there.
class LotFiguresLoader : public QObject {
  Q_OBJECT
 public:
  /// More runs than this are not loaded: the newest count.
  static constexpr std::size_t kMost = 2000;

  explicit LotFiguresLoader(ArchiveLink* archive, QObject* parent = nullptr);

  void load(const archive::Filter& filter);
  void setGroup(const RunGroup& group);
  void setOptions(const lot::Options& options);
  const lot::Options& options() const { return m_options; }
  /// Whether allRuns are wanted as well.
  void setAllWanted(bool wanted);
  void stop();

  /// Null until the first are there, and where nothing is listed.
  std::shared_ptr<const LotFigures> figures() const { return m_figures; }
  bool isBusy() const { return m_busy; }
  std::size_t done() const { return m_done; }    ///< runs that are loaded
  std::size_t total() const { return m_total; }  ///< runs that will be
  const std::optional<Error>& error() const { return m_error; }

 signals:
  void progressChanged();
  void changed();

 private:
  void take(std::vector<FigureRun> runs, std::vector<RunGroup> groups, bool cut);
  void loadNext();
  void summarise();
  void fail(const Error& error);
  std::vector<std::size_t> wanted() const;

  ArchiveLink* m_archive;
  lot::Options m_options;
  std::vector<FigureRun> m_runs;
  std::vector<RunGroup> m_groups;
  std::optional<RunGroup> m_group;  // as it was chosen
  std::size_t m_at = 0;             // its index
  bool m_cut = false, m_allWanted = false, m_busy = false;
  std::size_t m_done = 0, m_total = 0;
  std::unordered_map<std::string, std::shared_ptr<const report::KeptRun>> m_loaded;  // by id
  std::shared_ptr<const LotFigures> m_figures;
  std::optional<Error> m_error;
};

}  // namespace ovenwright::desktop
