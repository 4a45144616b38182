#include "app/desktop/lots/runs_table.h"

#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <numeric>

#include "app/desktop/text/spreadsheet_text.h"
#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {
namespace {

constexpr int kSeen_ms = 30;
constexpr double kRow_px = 26, kPadding_px = 1, kWidest_px = 260, kSmallest_px = 164, kName_px = 126;
constexpr double kLeast_px = 120;  // its head, three rows and the bar at its foot
constexpr int kFitted = 40;        // rows that the columns are fitted to

/// The verdict's sign before its word, the signal colour for what is out, bold for what is no pass.
class RunDelegate : public QStyledItemDelegate {
 public:
  explicit RunDelegate(QObject* parent) : QStyledItemDelegate(parent), m_theme(widgets::Theme::fromPalette({}, {})) {}
  void setTheme(const widgets::Theme& theme) { m_theme = theme; }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QStyleOptionViewItem cell = option;
    if (index.data(RunsModel::kMarkedRole).toBool()) painter->fillRect(option.rect, m_theme.accentSoft);
    cell.state.setFlag(QStyle::State_HasFocus, false);
    QStyledItemDelegate::paint(painter, cell, index);
    painter->setPen(m_theme.hairline);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (index.column() == RunsModel::kMark && index.data(RunsModel::kHighlightedRole).toBool())
      painter->fillRect(QRectF(option.rect.topLeft(), QSizeF(m_theme.px(4), option.rect.height())), m_theme.accent);
    if (option.state.testFlag(QStyle::State_HasFocus) && index.column() == RunsModel::kWhen)
      widgets::paintFocusFrame(*painter, option.rect, m_theme);
  }

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    const auto verdict = judge::Verdict(index.data(RunsModel::kVerdictRole).toInt());
    if (index.column() == RunsModel::kVerdict) {
      const double height = m_theme.px(14);
      const double ratio = option->widget ? option->widget->devicePixelRatioF() : 1;
      QPixmap sign((QSizeF(height * widgets::kSignAspect, height) * ratio).toSize());
      sign.setDevicePixelRatio(ratio);
      sign.fill(Qt::transparent);
      QPainter painter(&sign);
      painter.setRenderHint(QPainter::Antialiasing);
      widgets::paintVerdictSign(painter, QRectF(0, 0, height * widgets::kSignAspect, height), verdict, m_theme);
      painter.end();
      option->features |= QStyleOptionViewItem::HasDecoration;
      option->icon = QIcon(sign);
      option->decorationSize = QSizeF(height * widgets::kSignAspect, height).toSize();
      option->font.setBold(verdict != judge::Verdict::kPass);
    }
    option->palette.setColor(QPalette::Highlight, m_theme.accentSoft);
    option->palette.setColor(QPalette::HighlightedText, m_theme.text);
    const auto ink = [option](const QColor& color) {
      option->palette.setColor(QPalette::Text, color);
      option->palette.setColor(QPalette::HighlightedText, color);
    };
    if (judge::is_out(verdict) && (index.column() == RunsModel::kVerdict || index.column() == RunsModel::kMargin)) {
      ink(m_theme.signal);
    }
    if (index.column() == RunsModel::kSheet) {
      const bool marked = index.data(RunsModel::kMarkedRole).toBool();
      ink(marked ? m_theme.accent : m_theme.secondary);
      option->font.setBold(marked);
    }
  }

 private:
  widgets::Theme m_theme;
};

/// A check box over the marks: all runs of the filter, or none.
class MarkHeader : public QHeaderView {
 public:
  explicit MarkHeader(const RunsModel* model, QWidget* parent) : QHeaderView(Qt::Horizontal, parent), m_model(model) {}

 protected:
  void paintSection(QPainter* painter, const QRect& rect, int section) const override {
    if (section != RunsModel::kMark) {
      painter->save();
      QHeaderView::paintSection(painter, rect, section);
      painter->restore();
      return;
    }
    const auto theme = widgets::Theme::fromPalette(palette(), font());
    painter->fillRect(rect, palette().base());
    painter->setPen(theme.hairline);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    QStyleOptionButton box;
    box.initFrom(this);
    const int side = style()->pixelMetric(QStyle::PM_IndicatorWidth, &box, this);
    box.rect = QRect(0, 0, side, side);
    box.rect.moveCenter(rect.center());
    const std::size_t marked = m_model->markedCount();
    const bool all = marked > 0 && m_model->total() && marked >= *m_model->total();
    box.state = QStyle::State_Enabled | (all          ? QStyle::State_On
                                         : marked > 0 ? QStyle::State_NoChange
                                                      : QStyle::State_Off);
    style()->drawPrimitive(QStyle::PE_IndicatorCheckBox, &box, painter, this);
  }

 private:
  const RunsModel* m_model;
};

}  // namespace

RunsTable::RunsTable(RunsModel* model, QWidget* parent)
    : QTableView(parent), m_model(model), m_sortMenu(new QMenu(tr("So&rt the runs by"), this)) {
  setAccessibleName(tr("Runs of the archive"));
  setHorizontalHeader(new MarkHeader(model, this));
  setModel(model);
  setItemDelegate(new RunDelegate(this));
  auto* header = horizontalHeader();
  header->setSectionsClickable(true);
  header->setSectionsMovable(true);
  header->setHighlightSections(false);
  header->setSortIndicatorShown(true);
  header->setStretchLastSection(true);
  header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  verticalHeader()->hide();
  setSelectionBehavior(SelectRows);
  setSelectionMode(ExtendedSelection);
  setEditTriggers(NoEditTriggers);
  setWordWrap(false);
  setTextElideMode(Qt::ElideMiddle);
  setShowGrid(false);
  setTabKeyNavigation(false);
  setFrameShape(NoFrame);
  setHorizontalScrollMode(ScrollPerPixel);
  m_seen.setSingleShot(true);
  m_seen.setInterval(kSeen_ms);
  connect(&m_seen, &QTimer::timeout, this, &RunsTable::showSeen);
  connect(verticalScrollBar(), &QScrollBar::valueChanged, &m_seen, qOverload<>(&QTimer::start));
  connect(model, &QAbstractItemModel::modelReset, &m_seen, qOverload<>(&QTimer::start));
  connect(model, &QAbstractItemModel::rowsInserted, &m_seen, qOverload<>(&QTimer::start));
  connect(header, &QHeaderView::sectionClicked, this, [this](int section) {
    if (section == RunsModel::kMark) {
      markAll(!(m_model->total() && m_model->markedCount() > 0 && m_model->markedCount() >= *m_model->total()));
    } else {
      sortBy(section);
    }
    showOrder();  // the header moves its arrow by itself, whatever the column
  });
  connect(model, &RunsModel::allFetched, this, [this] {
    const Then then = std::exchange(m_then, Then::kNothing);
    if (then == Then::kSelectAll) QTableView::selectAll();
    if (then == Then::kMarkAll) {
      std::vector<int> rows(std::size_t(m_model->rowCount()));
      std::iota(rows.begin(), rows.end(), 0);
      m_model->setMarked(rows, true);
    }
  });
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, &RunsTable::currentRunChanged);
  buildSortMenu();
  showOrder();
}

void RunsTable::buildSortMenu() {
  auto* group = new QActionGroup(m_sortMenu);
  for (int column = 0; column < RunsModel::kColumns; ++column) {
    if (!RunsModel::orderOf(column)) continue;
    QAction* action = group->addAction(
        m_sortMenu->addAction(m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString()));
    action->setCheckable(true);
    action->setData(column);
    connect(action, &QAction::triggered, this, [this, column] {
      if (RunsModel::columnOf(m_model->order().key) != column) sortBy(column);
    });
  }
  m_sortMenu->addSeparator();
  QAction* turn = m_sortMenu->addAction(tr("The other way &round"));
  connect(turn, &QAction::triggered, this, [this] { sortBy(RunsModel::columnOf(m_model->order().key)); });
}

void RunsTable::sortBy(int column) {
  const auto key = RunsModel::orderOf(column);
  if (!key) return;
  archive::Order order = m_model->order();
  if (order.key == *key) {
    order.descending = !order.descending;
  } else {
    // What is looked for mostly comes first: the newest run, the worst verdict, the smallest margin.
    order = {*key, *key == archive::Order::Key::kTime || *key == archive::Order::Key::kVerdict};
  }
  m_model->setFilter(m_model->filter(), order);
  showOrder();
  scrollToTop();
}

void RunsTable::showOrder() {
  const int column = RunsModel::columnOf(m_model->order().key);
  horizontalHeader()->setSortIndicator(column, m_model->order().descending ? Qt::DescendingOrder : Qt::AscendingOrder);
  for (QAction* action : m_sortMenu->actions())
    if (action->isCheckable()) action->setChecked(action->data().toInt() == column);
}

void RunsTable::setTheme(const widgets::Theme& theme) {
  static_cast<RunDelegate*>(itemDelegate())->setTheme(theme);
  verticalHeader()->setMinimumSectionSize(int(theme.px(24)));
  verticalHeader()->setDefaultSectionSize(int(theme.px(kRow_px)));
  setMinimumHeight(int(theme.px(kLeast_px)));
  viewport()->update();
}

QByteArray RunsTable::columns() const { return m_fitted ? horizontalHeader()->saveState() : QByteArray(); }

void RunsTable::restoreColumns(const QByteArray& state) {
  if (state.isEmpty() || !horizontalHeader()->restoreState(state)) return;
  m_fitted = true;
  showOrder();  // the order is the one of this list, not of the last one
}

void RunsTable::fitColumns() {
  if (m_fitted || m_model->rowCount() == 0) return;
  m_fitted = true;
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const QFontMetricsF plain(theme.bodyFont()), bold(theme.bodyFont(true)), heading(horizontalHeader()->font());
  // What the style leaves beside a text does not follow the font.
  const double padding =
      theme.px(kPadding_px) + 2 * (style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, this) + 1);
  int spare = viewport()->width();
  for (int column = 0; column < m_model->columnCount(); ++column) {
    if (column == RunsModel::kMark) {
      setColumnWidth(column, int(theme.px(38)));
      spare -= columnWidth(column);
      continue;
    }
    double widest = heading.horizontalAdvance(m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
    if (RunsModel::orderOf(column)) widest += theme.px(16);  // the arrow of the order
    for (int row = 0; row < std::min(m_model->rowCount(), kFitted); ++row) {
      const QString text = m_model->index(row, column).data().toString();
      widest = std::max(widest, column == RunsModel::kVerdict ? bold.horizontalAdvance(text) + theme.px(30)
                                                              : plain.horizontalAdvance(text));
    }
    if (column == RunsModel::kSheet) widest = std::max(widest, bold.horizontalAdvance(RunsModel::toPrintText()));
    // What is known once a row is seen is not there yet.
    if (column == RunsModel::kSmallest) widest = std::max(widest, theme.px(kSmallest_px));
    // One long name of a lot or board does not push what decides off the screen; its tool tip has it whole.
    const bool name = column == RunsModel::kLot || column == RunsModel::kBoard;
    const double most = theme.px(name ? kName_px : kWidest_px);
    setColumnWidth(column, int(std::min(widest + padding, most)));
    spare -= int(std::min(widest + padding, most));  // the last one is as wide as what is left
  }
  // What is known once a row is seen can be long: it has the room that nothing else needs.
  if (spare > 0)
    setColumnWidth(RunsModel::kSmallest,
                   std::min(columnWidth(RunsModel::kSmallest) + spare, int(theme.px(kWidest_px))));
}

void RunsTable::showSeen() {
  const int first = rowAt(0);
  if (first < 0) return;
  const int last = rowAt(viewport()->height() - 1);
  m_model->showRows(first, last < 0 ? m_model->rowCount() - 1 : last);
  constexpr int kAhead = 60;  // so that scrolling does not stop at the end of a page
  if (m_model->rowCount() - (last < 0 ? m_model->rowCount() : last) < kAhead) m_model->fetchMore({});
}

void RunsTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  m_seen.start();
}

std::vector<int> RunsTable::selectedRows() const {
  std::vector<int> rows;
  for (const QModelIndex& index : selectionModel()->selectedRows()) rows.push_back(index.row());
  std::ranges::sort(rows);
  return rows;
}

QString RunsTable::asText() const {
  std::vector<int> rows = selectedRows();
  if (rows.size() < 2) {
    rows.resize(std::size_t(m_model->rowCount()));
    std::iota(rows.begin(), rows.end(), 0);
  }
  const auto* header = horizontalHeader();
  const auto line = [header](const auto& cell) {
    QStringList cells;
    for (int at = 0; at < header->count(); ++at) {
      const int column = header->logicalIndex(at);
      if (column != RunsModel::kMark) cells << cell(column);
    }
    return spreadsheetRow(std::move(cells));
  };
  QStringList lines{
      line([this](int column) { return m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(); })};
  for (const int row : rows)
    lines << line([this, row](int column) { return m_model->index(row, column).data().toString(); });
  return lines.join(u'\n') + u'\n';
}

void RunsTable::copy() {
  QApplication::clipboard()->setText(asText());
  emit copied();
}

std::optional<std::string> RunsTable::currentRun() const {
  const QModelIndex index = currentIndex();
  return index.isValid() ? std::optional(m_model->row(index.row()).id) : std::nullopt;
}

void RunsTable::setCurrentRun(const std::string& id) {
  const int row = m_model->rowOf(id);
  if (row >= 0) setCurrentIndex(m_model->index(row, RunsModel::kWhen));
}

void RunsTable::markAll(bool marked) {
  if (!marked) {
    m_model->clearMarks();
    return;
  }
  m_then = Then::kMarkAll;
  m_model->fetchAll();
}

void RunsTable::selectAll() {
  m_then = Then::kSelectAll;
  m_model->fetchAll();
}

void RunsTable::toggleMarks() {
  const auto rows = selectedRows();
  const bool all = std::ranges::all_of(rows, [this](int row) { return m_model->isMarked(row); });
  m_model->setMarked(rows, !all);
}

void RunsTable::openCurrent() {
  if (const auto id = currentRun()) emit openWanted(QString::fromStdString(*id));
}

void RunsTable::keyboardSearch(const QString& typed) {
  const QModelIndex found = m_find.next(*m_model, currentIndex(), typed);
  if (found.isValid() && found != currentIndex()) setCurrentIndex(found);
}

void RunsTable::keyPressEvent(QKeyEvent* event) {
  if (event->matches(QKeySequence::Copy)) {
    copy();
  } else if (event->key() == Qt::Key_Space && !(event->modifiers() & Qt::ControlModifier)) {
    // A blank within a name that is being typed, else it marks.
    if (const QModelIndex found = m_find.next(*m_model, currentIndex(), event->text()); found.isValid())
      setCurrentIndex(found);
    else
      toggleMarks();
  } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    openCurrent();
  } else {
    QTableView::keyPressEvent(event);
  }
}

void RunsTable::contextMenuEvent(QContextMenuEvent* event) {
  QMenu menu(this);
  const bool any = currentIndex().isValid();
  menu.addAction(tr("&Open"), this, &RunsTable::openCurrent)->setEnabled(any);
  menu.addAction(tr("&Mark, or take the mark off"), this, &RunsTable::toggleMarks)->setEnabled(any);
  menu.addAction(tr("&Copy with headings"), this, &RunsTable::copy);
  menu.addSeparator();
  menu.addMenu(m_sortMenu);
  menu.exec(event->globalPos());
}

void RunsTable::mouseDoubleClickEvent(QMouseEvent* event) {
  const QModelIndex index = indexAt(event->pos());
  if (index.isValid() && index.column() != RunsModel::kMark) {
    openCurrent();
  } else {
    QTableView::mouseDoubleClickEvent(event);
  }
}

}  // namespace ovenwright::desktop
