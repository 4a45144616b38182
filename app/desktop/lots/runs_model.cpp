#include "app/desktop/lots/runs_model.h"

#include <QDateTime>
#include <algorithm>

#include "app/desktop/lots/run_details.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/decide.h"

namespace ovenwright::desktop {
namespace {

const QString kNothing = QStringLiteral("–");

QDateTime local(archive::Moment moment) {
  return QDateTime::fromMSecsSinceEpoch(moment.time_since_epoch().count()).toLocalTime();
}

constexpr std::pair<RunsModel::Column, archive::Order::Key> kOrders[] = {
    {RunsModel::kWhen, archive::Order::Key::kTime},       {RunsModel::kLot, archive::Order::Key::kLot},
    {RunsModel::kBoard, archive::Order::Key::kBoard},     {RunsModel::kWindow, archive::Order::Key::kWindowRevision},
    {RunsModel::kVerdict, archive::Order::Key::kVerdict}, {RunsModel::kMargin, archive::Order::Key::kMargin}};

}  // namespace

std::optional<archive::Order::Key> RunsModel::orderOf(int column) {
  const auto* at = std::ranges::find(kOrders, column, [](const auto& each) { return int(each.first); });
  return at == std::end(kOrders) ? std::nullopt : std::optional(at->second);
}

int RunsModel::columnOf(archive::Order::Key key) {
  return std::ranges::find(kOrders, key, [](const auto& each) { return each.second; })->first;
}

RunsModel::RunsModel(ArchiveLink* archive, QObject* parent) : QAbstractTableModel(parent), m_archive(archive) {}

void RunsModel::setFormat(const Format& format) {
  m_format = format;
  if (!m_rows.empty()) changed(0, int(m_rows.size()) - 1);
  emit headerDataChanged(Qt::Horizontal, 0, kColumns - 1);
}

void RunsModel::setFilter(archive::Filter filter, archive::Order order) {
  m_filter = std::move(filter);
  m_order = order;
  m_total.reset();
  m_totalLots.reset();
  list(kPage);
  count();
}

void RunsModel::reload() {
  list(std::max(kPage, m_rows.size()));
  count();
}

void RunsModel::list(std::size_t rows) {
  m_listing = true;
  m_fetching = m_fetchesAll = false;
  m_archive->drop(this, QStringLiteral("more"));
  m_archive->drop(this, QStringLiteral("details"));
  m_archive->find(this, m_filter, rows, std::nullopt, m_order, [this](Result<archive::Page> page) {
    m_listing = false;
    beginResetModel();
    m_rows.clear();
    m_next.reset();
    if (page) append(*page);
    endResetModel();
    if (!page && !ArchiveLink::isMissing(page.error())) emit failed(page.error());
    emit listed();
  });
}

void RunsModel::append(const archive::Page& page) {
  m_rows.reserve(m_rows.size() + page.runs.size());
  for (const auto& run : page.runs) m_rows.push_back(made(run));
  m_next = page.next;
}

void RunsModel::count() {
  m_archive->count(this, m_filter, [this](Result<std::size_t> total) {
    m_total = total ? std::optional(*total) : std::nullopt;
    emit counted();
  });
  m_archive->lots(this, m_filter, [this](Result<std::vector<archive::LotSummary>> lots) {
    m_totalLots = lots ? std::optional(lots->size()) : std::nullopt;
    emit counted();
  });
}

QString RunsModel::shared(const std::string& text) {
  if (text.empty()) return {};
  return *m_texts.insert(QString::fromStdString(text));
}

RunRow RunsModel::made(const archive::Summary& summary) {
  RunRow row;
  row.id = summary.id;
  row.runAt = summary.runAt;
  row.runAtFrom = summary.runAtFrom;
  row.lot = shared(summary.lot);
  row.board = shared(summary.board);
  row.window = shared(summary.window);
  row.windowRevision = shared(summary.windowRevision);
  row.recipe = shared(summary.recipe);
  row.oven = shared(summary.oven);
  row.verdict = summary.verdict;
  row.margin = summary.margin;
  row.printedAt = summary.printedAt;
  return row;
}

int RunsModel::rowOf(const std::string& id) const {
  const auto at = std::ranges::find(m_rows, id, &RunRow::id);
  return at == m_rows.end() ? -1 : int(at - m_rows.begin());
}

bool RunsModel::canFetchMore(const QModelIndex& parent) const {
  return !parent.isValid() && m_next && !m_fetching && !m_listing;
}

void RunsModel::fetchMore(const QModelIndex& parent) {
  if (!canFetchMore(parent)) return;
  m_fetching = true;
  const std::size_t rows = m_fetchesAll ? SIZE_MAX : kPage;
  m_archive->ask<archive::Page>(
      this, QStringLiteral("more"),
      [filter = m_filter, rows, after = m_next, order = m_order](archive::Archive& archive, const ArchiveLink::Stop&) {
        return archive.find(filter, rows, after, order);
      },
      [this](Result<archive::Page> page) {
        m_fetching = false;
        if (!page) {
          m_fetchesAll = false;
          m_next.reset();
          emit failed(page.error());
          return;
        }
        if (page->runs.empty()) {
          m_next = page->next;
        } else {
          const int first = int(m_rows.size());
          beginInsertRows({}, first, first + int(page->runs.size()) - 1);
          append(*page);
          endInsertRows();
        }
        if (!m_fetchesAll) return;
        if (m_next) {
          fetchMore({});
        } else {
          m_fetchesAll = false;
          emit allFetched();
        }
      });
}

void RunsModel::fetchAll() {
  if (!m_next) {
    emit allFetched();
    return;
  }
  m_fetchesAll = true;
  fetchMore({});
}

void RunsModel::showRows(int first, int last) {
  std::vector<std::string> ids;
  for (int row = std::max(first, 0); row <= last && row < int(m_rows.size()); ++row)
    if (!m_rows[std::size_t(row)].details) ids.push_back(m_rows[std::size_t(row)].id);
  if (ids.empty()) return;
  m_archive->ask<std::vector<RunDetails>>(
      this, QStringLiteral("details"),
      [ids](archive::Archive& archive, const ArchiveLink::Stop& stop) { return runDetails(archive, ids, stop); },
      [this, ids, first](Result<std::vector<RunDetails>> details) {
        if (!details) return;  // the columns stay empty; what is wrong with the archive is said where it was listed
        int low = int(m_rows.size()), high = -1;
        std::size_t row = std::size_t(std::max(first, 0));
        for (std::size_t i = 0; i < ids.size(); ++i) {
          while (row < m_rows.size() && m_rows[row].id != ids[i]) ++row;
          if (row == m_rows.size()) break;
          m_rows[row].details = std::make_unique<const RunDetails>(std::move((*details)[i]));
          low = std::min(low, int(row));
          high = std::max(high, int(row));
        }
        if (high >= low) changed(low, high);
      });
}

void RunsModel::changed(int first, int last) { emit dataChanged(index(first, 0), index(last, kColumns - 1)); }

void RunsModel::setHighlighted(std::set<std::string> ids) {
  if (ids == m_highlighted) return;
  m_highlighted = std::move(ids);
  if (!m_rows.empty()) changed(0, int(m_rows.size()) - 1);
}

bool RunsModel::isMarked(int row) const { return m_marked.contains(m_rows[std::size_t(row)].id); }

void RunsModel::setMarked(const std::vector<int>& rows, bool marked) {
  if (rows.empty()) return;
  for (const int row : rows) {
    const auto& run = m_rows[std::size_t(row)];
    if (marked) {
      m_marked.emplace(run.id, run.runAt);
    } else {
      m_marked.erase(run.id);
    }
  }
  const auto [low, high] = std::ranges::minmax(rows);
  changed(low, high);
  emit headerDataChanged(Qt::Horizontal, kMark, kMark);
  emit marksChanged();
}

void RunsModel::clearMarks() {
  if (m_marked.empty()) return;
  m_marked.clear();
  if (!m_rows.empty()) changed(0, int(m_rows.size()) - 1);
  emit headerDataChanged(Qt::Horizontal, kMark, kMark);
  emit marksChanged();
}

std::vector<std::string> RunsModel::marked() const {
  std::vector<std::pair<archive::Moment, std::string>> byTime;
  for (const auto& [id, at] : m_marked) byTime.emplace_back(at, id);
  std::ranges::sort(byTime);
  std::vector<std::string> ids;
  for (auto& [at, id] : byTime) ids.push_back(std::move(id));
  return ids;
}

int RunsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }
int RunsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColumns; }

QVariant RunsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return int((section == kMargin ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role == Qt::ToolTipRole) {
    const QString unsorted = tr("The list cannot be sorted by this: it is read from each record once its row is seen.");
    if (section == kSmallest)
      return QString(tr("The result that decides the margin of the run, as it was judged when it was kept.") + u'\n' +
                     unsorted);
    if (section == kRun || section == kRecipe) return unsorted;
    if (section == kSheet) return tr("The list cannot be sorted by this.");
  }
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case kMark:
      return tr("Mark");
    case kWhen:
      return tr("When");
    case kLot:
      return tr("Lot");
    case kRun:
      return tr("Run");
    case kBoard:
      return tr("Board");
    case kWindow:
      return tr("Window rev");
    case kRecipe:
      return tr("Recipe rev");
    case kVerdict:
      return tr("Verdict");
    case kMargin:
      return tr("Margin");
    case kSmallest:
      return tr("Smallest margin at");
    case kSheet:
      return tr("Sheet");
    default:
      return {};
  }
}

QString RunsModel::smallestText(const RunRow& row) const {
  if (!row.details || row.details->requirement.empty()) return {};
  const RunDetails& details = *row.details;
  const QString requirement = widgets::Wording::requirement(details.requirement);
  const QString subject =
      details.trace.empty() ? requirement : QString::fromStdString(details.trace) + u' ' + requirement;
  if (!details.value) return tr("%1 has no value", "placement and requirement").arg(subject);
  const auto quantity = Format::quantity(details.measure);
  const QString value = m_format.number(m_format.shown(*details.value, quantity), judge::usual_digits(details.measure));
  return subject + (details.at_least ? QStringLiteral(" ≥ ") : QStringLiteral(" ")) + value;
}

QString RunsModel::whenText(const RunRow& row) const {
  const QString when = m_format.locale().toString(local(row.runAt), QLocale::LongFormat);
  switch (row.runAtFrom) {
    case archive::RunAtFrom::kGiven:
      return tr("%1, as given").arg(when);
    case archive::RunAtFrom::kLogClock:
      return tr("%1, by the log’s own clock").arg(when);
    case archive::RunAtFrom::kFileTime:
      break;
  }
  return tr("%1, time of the log’s file").arg(when);
}

QString RunsModel::toPrintText() { return tr("to print", "a marked run"); }

QString RunsModel::text(const RunRow& row, int column) const {
  switch (column) {
    case kWhen: {
      const QDateTime at = local(row.runAt);
      const bool thisYear = at.date().year() == QDate::currentDate().year();
      return m_format.locale().toString(at, thisYear ? tr("d MMM HH:mm", "date and time of a run of this year")
                                                     : tr("d MMM yyyy HH:mm", "date and time of a run"));
    }
    case kLot:
      return row.lot;
    case kRun:
      return row.details && row.details->runOfLot > 0 ? m_format.count(qulonglong(row.details->runOfLot)) : QString();
    case kBoard:
      return row.board;
    case kWindow:
      return row.windowRevision.isEmpty() ? kNothing : row.windowRevision;
    case kRecipe:
      if (!row.details) return {};
      return row.details->recipeRevision.empty() ? kNothing : QString::fromStdString(row.details->recipeRevision);
    case kVerdict:
      return widgets::Wording::verdictTitle(row.verdict);
    case kMargin:
      return row.margin ? m_format.percent(*row.margin) : kNothing;
    case kSmallest:
      return smallestText(row);
    case kSheet:
      if (m_marked.contains(row.id)) return toPrintText();
      return row.printedAt ? tr("printed", "the sheet of a run") : QString();
    default:
      return {};
  }
}

QVariant RunsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const RunRow& row = m_rows[std::size_t(index.row())];
  switch (role) {
    case Qt::DisplayRole:
      return text(row, index.column());
    case Qt::CheckStateRole:
      return index.column() == kMark ? QVariant(isMarked(index.row()) ? Qt::Checked : Qt::Unchecked) : QVariant();
    case kVerdictRole:
      return int(row.verdict);
    case kHighlightedRole:
      return m_highlighted.contains(row.id);
    case kMarkedRole:
      return isMarked(index.row());
    case Qt::TextAlignmentRole:
      return int((index.column() == kMargin ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case Qt::ToolTipRole:
      if (index.column() == kWindow) return row.window.toHtmlEscaped();
      if (index.column() == kRecipe)
        return (row.oven.isEmpty() ? row.recipe : row.recipe + QStringLiteral(", ") + row.oven).toHtmlEscaped();
      if (index.column() == kWhen) return whenText(row);
      if (index.column() == kSheet && row.printedAt)
        return tr("Printed on %1").arg(m_format.locale().toString(local(*row.printedAt), QLocale::LongFormat));
      return text(row, index.column()).toHtmlEscaped();
    case Qt::AccessibleTextRole: {
      if (index.column() == kMark) return isMarked(index.row()) ? tr("marked") : tr("not marked");
      QString cell = text(row, index.column());
      if (index.column() == kWhen && m_highlighted.contains(row.id))
        cell = tr("%1, of the chosen zone", "time of a run").arg(cell);
      return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() + QStringLiteral(": ") + cell;
    }
    default:
      return {};
  }
}

bool RunsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || index.column() != kMark || role != Qt::CheckStateRole) return false;
  setMarked({index.row()}, value.toInt() == Qt::Checked);
  return true;
}

Qt::ItemFlags RunsModel::flags(const QModelIndex& index) const {
  auto flags = QAbstractTableModel::flags(index);
  if (index.isValid() && index.column() == kMark) flags |= Qt::ItemIsUserCheckable;
  return flags;
}

}  // namespace ovenwright::desktop
