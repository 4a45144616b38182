#pragma once
#include <QFutureWatcher>
#include <QObject>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/desktop/sheets/sheet_pages.h"
#include "app/sheet/record.h"
#include "core/units/result.h"

namespace ovenwright::desktop {

class ArchiveLink;

/// Kept runs with the sheets made of them: one for each lot, in the order of its first run.
struct LotSheets {
  std::vector<std::vector<sheet::RunRecord>> lots;
  std::shared_ptr<const SheetPages> pages;
};

/// Makes the sheets of kept runs: they are fetched and judged on the archive's thread, laid out off the GUI thread. A
/// new wish drops the one before.
class LotSheetJob : public QObject {
  Q_OBJECT
 public:
  struct Wish {
    std::vector<std::string> ids;  ///< in order of time
    sheet::Style style;
    bool each = false;  ///< behind the page that sums up, the sheet of each run
  };

  /// The link must outlive it.
  explicit LotSheetJob(ArchiveLink* link, QObject* parent = nullptr);
  /// Cancels, then waits.
  ~LotSheetJob() override;

  void start(Wish wish);
  /// Lays runs that were fetched already out anew, as for another paper.
  void layOut(std::vector<std::vector<sheet::RunRecord>> lots, sheet::Style style, bool each);
  void cancel();
  bool isRunning() const { return m_fetching || m_layingOut; }

 signals:
  void progressed(int judged, int of);
  void made(std::shared_ptr<const ovenwright::desktop::LotSheets> sheets);
  void failed(const ovenwright::Error& error);

 private:
  using Outcome = Result<std::shared_ptr<const LotSheets>>;

  ArchiveLink* m_link;
  bool m_fetching = false, m_layingOut = false;
  int m_wish = 0;  // counts them: progress of an older one is not told
  QFutureWatcher<Outcome> m_watcher;
};

}  // namespace ovenwright::desktop
