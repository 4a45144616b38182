#pragma once
#include <QAbstractTableModel>
#include <QSet>
#include <map>
#include <set>
#include <vector>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/lots/run_row.h"
#include "app/desktop/text/format.h"

namespace ovenwright::desktop {

/// The runs of an archive that pass a filter, page by page as they are scrolled to. Asks through the link and never
/// blocks; what was shown stays until the answer is there.
class RunsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { kMark, kWhen, kLot, kRun, kBoard, kWindow, kRecipe, kVerdict, kMargin, kSmallest, kSheet, kColumns };
  static constexpr int kVerdictRole = Qt::UserRole;  ///< judge::Verdict as int, in every column
  static constexpr int kMarkedRole = Qt::UserRole + 1;
  static constexpr int kHighlightedRole = Qt::UserRole + 2;
  static constexpr std::size_t kPage = 200;

  /// What a click on a heading lists the runs by; absent for what stands in their reports only.
  static std::optional<archive::Order::Key> orderOf(int column);
  static int columnOf(archive::Order::Key key);

  explicit RunsModel(ArchiveLink* archive, QObject* parent = nullptr);

  void setFormat(const Format& format);
  /// Lists anew from the first page.
  void setFilter(archive::Filter filter, archive::Order order);
  void reload();  ///< the same filter; rows that were fetched are fetched again
  const archive::Filter& filter() const { return m_filter; }
  archive::Order order() const { return m_order; }

  /// All that pass the filter; absent until it was counted.
  std::optional<std::size_t> total() const { return m_total; }
  std::optional<std::size_t> totalLots() const { return m_totalLots; }
  /// Fetches every row that is not there yet; allFetched() follows.
  void fetchAll();
  /// Rows that are seen: their details are fetched.
  void showRows(int first, int last);

  const RunRow& row(int row) const { return m_rows[std::size_t(row)]; }
  int rowOf(const std::string& id) const;  ///< −1: not among those that were fetched

  /// Runs that stand out in the list, such as those of a zone.
  void setHighlighted(std::set<std::string> ids);

  bool isMarked(int row) const;
  void setMarked(const std::vector<int>& rows, bool marked);
  void clearMarks();
  static QString toPrintText();  ///< of a marked run in the last column
  /// Ids of marked runs, the oldest first; those of an earlier filter count.
  std::vector<std::string> marked() const;
  std::size_t markedCount() const { return m_marked.size(); }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  bool canFetchMore(const QModelIndex& parent) const override;
  void fetchMore(const QModelIndex& parent) override;

 signals:
  void listed();   ///< the first page of a filter is there
  void counted();  ///< total() or totalLots()
  void marksChanged();
  void allFetched();
  void failed(const ovenwright::Error& error);

 private:
  void list(std::size_t rows);
  void append(const archive::Page& page);
  void count();
  RunRow made(const archive::Summary& summary);
  QString shared(const std::string& text);
  QString text(const RunRow& row, int column) const;
  QString smallestText(const RunRow& row) const;
  QString whenText(const RunRow& row) const;  ///< in full, and where it comes from
  void changed(int first, int last);

  ArchiveLink* m_archive;
  Format m_format;
  archive::Filter m_filter;
  archive::Order m_order = archive::Order::kNewestFirst;
  std::vector<RunRow> m_rows;
  std::optional<archive::Cursor> m_next;
  bool m_listing = false, m_fetching = false, m_fetchesAll = false;
  std::optional<std::size_t> m_total, m_totalLots;
  std::map<std::string, archive::Moment> m_marked;
  std::set<std::string> m_highlighted;
  QSet<QString> m_texts;  // each text once
};

}  // namespace ovenwright::desktop
