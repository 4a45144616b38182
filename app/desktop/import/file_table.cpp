#include "app/desktop/import/file_table.h"

#include <QAbstractButton>
#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include "app/desktop/import/plain_header.h"

namespace ovenwright::desktop {
namespace {

/// Header in bold, gaps in quiet text, cells that were taken out framed in the signal colour.
class CellDelegate : public QStyledItemDelegate {
 public:
  CellDelegate(QObject* parent, const widgets::Theme& theme) : QStyledItemDelegate(parent), m_theme(theme) {}
  void setTheme(const widgets::Theme& theme) { m_theme = theme; }

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    option->font.setBold(index.data(FileModel::kHeaderRole).toBool());
    if (index.data(FileModel::kGapRole).toBool()) option->palette.setColor(QPalette::Text, m_theme.secondary);
    if (index.data(FileModel::kFaultRole).toBool()) option->palette.setColor(QPalette::Text, m_theme.signal);
  }
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const QSize size = QStyledItemDelegate::sizeHint(option, index);
    return index.data(FileModel::kWholeRole).toBool() ? QSize(0, size.height()) : size;
  }
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QStyledItemDelegate::paint(painter, option, index);
    if (!index.data(FileModel::kFaultRole).toBool()) return;
    painter->save();
    painter->setPen(QPen(m_theme.signal, m_theme.line(1)));
    painter->drawRect(QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5));
    painter->restore();
  }

 private:
  widgets::Theme m_theme;
};

}  // namespace

void FileModel::setRun(std::shared_ptr<const RunView> view, FaultLines faults) {
  beginResetModel();
  m_view = std::move(view);
  m_lines.clear();
  if (m_view) m_lines = m_view->reading().shown;
  for (auto& line : faults.lines)
    if (std::ranges::find(m_lines, line.line, &log::ShownLine::line) == m_lines.end())
      m_lines.push_back(std::move(line));
  std::ranges::sort(m_lines, {}, &log::ShownLine::line);
  m_faults = std::move(faults.cells);
  m_failing = 0;
  arrange();
  endResetModel();
}

void FileModel::setPlainLines(std::vector<log::ShownLine> lines, std::size_t failing_line) {
  beginResetModel();
  m_view.reset();
  m_lines = std::move(lines);
  m_faults.clear();
  m_failing = failing_line;
  arrange();
  endResetModel();
}

void FileModel::arrange() {
  m_rows.clear();
  m_columns = 0;
  std::size_t last = 0;
  for (const auto& line : m_lines) {
    if (line.line > last + 1 && last > 0) m_rows.push_back({nullptr, line.line - last - 1});
    m_rows.push_back({&line, 0});
    last = line.line;
    m_columns = std::max(m_columns, int(line.cells.size()));
  }
}

int FileModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }
int FileModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_columns; }

FileModel::Role FileModel::role(int column) const {
  if (!m_view) return Role::kOther;
  const auto& layout = m_view->reading().layout;
  if (std::ranges::find(layout.time.columns, column + 1) != layout.time.columns.end()) return Role::kTime;
  const auto channel = std::ranges::find(layout.channels, column + 1, &log::Layout::ChannelColumn::column);
  return channel != layout.channels.end() && channel->use ? Role::kChannel : Role::kOther;
}

QString FileModel::cell(int row, int column) const {
  const auto& shown = m_rows[std::size_t(row)];
  if (!shown.line) return column == 0 ? tr("%n row(s) more", nullptr, int(shown.missing)) : QString();
  return std::size_t(column) < shown.line->cells.size() ? QString::fromStdString(shown.line->cells[std::size_t(column)])
                                                        : QString();
}

QVariant FileModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto& row = m_rows[std::size_t(index.row())];
  const int header_line = m_view ? m_view->reading().layout.header_line.value_or(0) : 0;
  switch (role) {
    case Qt::DisplayRole:
      return cell(index.row(), index.column());
    case kHeaderRole:
      return row.line && int(row.line->line) == header_line;
    case kGapRole:
      return row.line == nullptr;
    case kWholeRole:
      return m_columns > 1 && (!row.line || row.line->cells.size() == 1);
    case kFaultRole:
      return row.line && ((row.line->line == m_failing && m_failing > 0) ||
                          std::ranges::any_of(m_faults, [&](const FaultLines::Cell& cell) {
                            return cell.line == row.line->line && cell.column == index.column();
                          }));
    case Qt::TextAlignmentRole: {
      const bool time = m_view && this->role(index.column()) == Role::kTime;
      const bool table = row.line && m_view && int(row.line->line) >= std::max(1, header_line);
      return int((table && !time ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    default:
      return {};
  }
}

QVariant FileModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical) {
    if (role != Qt::DisplayRole) return {};
    const auto* line = m_rows[std::size_t(section)].line;
    return line ? QVariant(qulonglong(line->line)) : QVariant(QString());
  }
  if (role == kColumnRole) return int(this->role(section));
  if (role != Qt::DisplayRole || !m_view) return {};
  switch (this->role(section)) {
    case Role::kTime:
      return tr("Time");
    case Role::kOther:
      return tr("kept as such");
    case Role::kChannel:
      break;
  }
  int number = 0;
  for (int column = 0; column <= section; ++column) number += this->role(column) == Role::kChannel;
  return tr("Channel %1").arg(number);
}

FileTable::FileTable(QWidget* parent)
    : QTableView(parent),
      m_model(new FileModel(this)),
      m_columns(new PlainHeader(Qt::Horizontal, this)),
      m_lines(new PlainHeader(Qt::Vertical, this)) {
  setAccessibleName(tr("What stands in the file"));
  setHorizontalHeader(m_columns);
  setVerticalHeader(m_lines);
  setModel(m_model);
  setItemDelegate(new CellDelegate(this, widgets::Theme::fromPalette(palette(), font())));
  setShowGrid(false);
  setFrameShape(NoFrame);
  setEditTriggers(NoEditTriggers);
  setWordWrap(false);
  setTabKeyNavigation(false);
  setCornerButtonEnabled(false);
  m_corner = findChild<QAbstractButton*>();
  if (m_corner) m_corner->installEventFilter(this);
  horizontalHeader()->setSectionsClickable(true);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setToolTip(tr("Press a heading to take its column for something else"));
  connect(horizontalHeader(), &QHeaderView::sectionClicked, this, [this](int section) {
    const int x = horizontalHeader()->sectionViewportPosition(section);
    emit columnPressed(section + 1, horizontalHeader()->mapToGlobal(QPoint(x, horizontalHeader()->height())));
  });
}

bool FileTable::eventFilter(QObject* object, QEvent* event) {
  if (object != m_corner || event->type() != QEvent::Paint) return QTableView::eventFilter(object, event);
  QPainter(m_corner).fillRect(m_corner->rect(), palette().color(QPalette::Window));
  return true;
}

void FileTable::fitColumns() {
  clearSpans();
  for (int row = 0; row < m_model->rowCount(); ++row)
    if (m_model->index(row, 0).data(FileModel::kWholeRole).toBool()) setSpan(row, 0, 1, m_model->columnCount());
  resizeColumnsToContents();
}

void FileTable::setTheme(const widgets::Theme& theme) {
  static_cast<CellDelegate*>(itemDelegate())->setTheme(theme);
  verticalHeader()->setDefaultSectionSize(int(theme.px(20)));
  for (PlainHeader* header : {m_columns, m_lines}) header->setTheme(theme);
  viewport()->update();
}

}  // namespace ovenwright::desktop
