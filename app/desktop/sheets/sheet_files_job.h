#pragma once
#include <QFutureWatcher>
#include <QObject>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "app/sheet/files.h"
#include "core/files/text_file.h"
#include "core/units/result.h"

namespace ovenwright::desktop {

class ArchiveLink;

/// Writes the sheets of many lots into a folder, a file for each, one after the other: so the archive answers others in
/// between. Stops at the first file that cannot be written, since the next one could not be either.
class SheetFilesJob : public QObject {
  Q_OBJECT
 public:
  struct Item {
    QString lot;
    std::vector<std::string> ids;  ///< its runs in order of time; empty: all that the archive has
  };
  struct Wish {
    std::vector<Item> items;
    QStringList paths;  ///< the file of each item: see paths()
    sheet::FileKind kind = sheet::FileKind::kPdf;
    sheet::Style style;
    bool each = false;
    files::Existing existing = files::Existing::kKeep;
    std::optional<std::string> notedBy;  ///< who, where what is written is noted in the record as printed
  };
  struct Outcome {
    int written = 0, of = 0;
    bool cancelled = false;
    QStringList notMade;           ///< a sentence for each lot whose sheet could not be made
    std::optional<Error> stopped;  ///< why writing stopped
  };

  explicit SheetFilesJob(ArchiveLink* link, QObject* parent = nullptr);
  /// Cancels, then waits for the file that is being written.
  ~SheetFilesJob() override;

  /// A safe path for the file of each item.
  static QStringList paths(const std::vector<Item>& items, const QString& folder, sheet::FileKind kind);

  void start(Wish wish);
  void cancel();  ///< the file that is being written is finished
  bool isRunning() const { return m_running; }

 signals:
  void progressed(int done, int of, const QString& lot);
  void finished(const ovenwright::desktop::SheetFilesJob::Outcome& outcome);
  /// The file is there; that it was printed could not be noted.
  void notNoted(const QString& lot, const ovenwright::Error& error);

 private:
  void next();
  void write(std::vector<sheet::RunRecord> runs);
  void notMade(const Error& error);
  void finish();

  ArchiveLink* m_link;
  Wish m_wish;
  Outcome m_outcome;
  std::size_t m_at = 0;
  std::vector<std::string> m_ids;  // of the present item
  bool m_running = false;
  bool m_isWriting = false;  // until m_writing has told that it finished, which is later than it finishes
  QFutureWatcher<std::optional<Error>> m_writing;
};

}  // namespace ovenwright::desktop
