#include "app/desktop/table/results_table.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QSortFilterProxyModel>
#include <QStyledItemDelegate>

#include "app/desktop/table/results_model.h"
#include "app/desktop/text/spreadsheet_text.h"
#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {
namespace {

/// The verdict's sign before its word, and the signal colour for what is out.
class VerdictDelegate : public QStyledItemDelegate {
 public:
  explicit VerdictDelegate(QObject* parent)
      : QStyledItemDelegate(parent), m_theme(widgets::Theme::fromPalette({}, {})) {}
  void setTheme(const widgets::Theme& theme) { m_theme = theme; }

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    const auto verdict = judge::Verdict(index.data(ResultsModel::kVerdictRole).toInt());
    const bool informative = index.data(ResultsModel::kInformativeRole).toBool();
    if (index.column() == ResultsModel::kVerdict) {
      const double height = m_theme.px(14);
      const double ratio = option->widget ? option->widget->devicePixelRatioF() : 1;
      QPixmap sign((QSizeF(height * widgets::kSignAspect, height) * ratio).toSize());
      sign.setDevicePixelRatio(ratio);
      sign.fill(Qt::transparent);
      QPainter painter(&sign);
      painter.setRenderHint(QPainter::Antialiasing);
      widgets::paintVerdictSign(painter, QRectF(0, 0, height * widgets::kSignAspect, height), verdict, m_theme,
                                informative);
      painter.end();
      option->features |= QStyleOptionViewItem::HasDecoration;
      option->icon = QIcon(sign);
      option->decorationSize = QSizeF(height * widgets::kSignAspect, height).toSize();
    }
    // The chosen row lies in the soft accent, so that the signal stands out on it as elsewhere.
    option->palette.setColor(QPalette::Highlight, m_theme.accentSoft);
    option->palette.setColor(QPalette::HighlightedText, m_theme.text);
    const bool out = verdict == judge::Verdict::kFail || verdict == judge::Verdict::kConditionalFail;
    if (out && !informative && (index.column() == ResultsModel::kVerdict || index.column() == ResultsModel::kMargin)) {
      option->palette.setColor(QPalette::Text, m_theme.signal);
      option->palette.setColor(QPalette::HighlightedText, m_theme.signal);
      option->font.setBold(true);
    }
    if (informative) option->palette.setColor(QPalette::Text, m_theme.secondary);
  }

 private:
  widgets::Theme m_theme;
};

/// Rows any of whose cells holds the text.
class AnyColumnFilter : public QSortFilterProxyModel {
 public:
  using QSortFilterProxyModel::QSortFilterProxyModel;

 protected:
  bool lessThan(const QModelIndex& left, const QModelIndex& right) const override {
    const QVariant a = left.data(ResultsModel::kSortRole), b = right.data(ResultsModel::kSortRole);
    if (a.isNull() != b.isNull()) return b.isNull();  // what has no value comes last
    if (a.metaType().id() == QMetaType::QString) return QString::localeAwareCompare(a.toString(), b.toString()) < 0;
    return a.toDouble() < b.toDouble();
  }
};

}  // namespace

ResultsTable::ResultsTable(QWidget* parent)
    : QTableView(parent), m_model(new ResultsModel(this)), m_sorted(new AnyColumnFilter(this)) {
  setAccessibleName(tr("Results"));
  m_sorted->setSourceModel(m_model);
  m_sorted->setFilterKeyColumn(-1);
  m_sorted->setFilterCaseSensitivity(Qt::CaseInsensitive);
  setModel(m_sorted);
  setItemDelegate(new VerdictDelegate(this));
  setSortingEnabled(true);
  m_sorted->sort(-1);
  horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
  horizontalHeader()->setStretchLastSection(true);
  horizontalHeader()->setSectionsMovable(true);
  horizontalHeader()->setHighlightSections(false);
  verticalHeader()->hide();
  setSelectionBehavior(SelectRows);
  setSelectionMode(ExtendedSelection);
  setEditTriggers(NoEditTriggers);
  setWordWrap(false);
  setShowGrid(false);
  setTabKeyNavigation(false);
  setFrameShape(NoFrame);
  const auto outcome = [this](const QModelIndex& index) { return std::size_t(m_sorted->mapToSource(index).row()); };
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this, outcome](const QModelIndex& index) {
    if (index.isValid() && !m_quiet) emit chosen(outcome(index));
  });
  connect(this, &QTableView::activated, this,
          [this, outcome](const QModelIndex& index) { emit activatedOutcome(outcome(index)); });
}

void ResultsTable::setRun(std::shared_ptr<const RunView> view, const Format& format) {
  m_quiet = true;
  m_marking = false;
  const bool first = m_model->rowCount() == 0;
  m_model->setRun(std::move(view), format);
  m_quiet = false;
  if (first && !m_restored) resizeColumnsToContents();
}

QByteArray ResultsTable::columns() const { return horizontalHeader()->saveState(); }

void ResultsTable::restoreColumns(const QByteArray& state) {
  m_restored = !state.isEmpty() && horizontalHeader()->restoreState(state);
  horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);  // another run is shown in its window's order
}

void ResultsTable::setTheme(const widgets::Theme& theme) {
  static_cast<VerdictDelegate*>(itemDelegate())->setTheme(theme);
  verticalHeader()->setDefaultSectionSize(int(theme.px(24)));
  viewport()->update();
}

void ResultsTable::setFilter(const QString& text) { m_sorted->setFilterFixedString(text); }

void ResultsTable::setChosen(std::optional<std::size_t> outcome) {
  m_quiet = true;
  if (outcome) {
    const QModelIndex index = m_sorted->mapFromSource(m_model->index(int(*outcome), 0));
    if (index.isValid() && index.row() != currentIndex().row()) {
      setCurrentIndex(index);
      scrollTo(index);
    }
  } else {
    m_marking = false;
    selectionModel()->clear();
  }
  m_quiet = false;
}

QString ResultsTable::asText() const {
  std::vector<int> rows;
  for (const QModelIndex& index : selectionModel()->selectedRows()) rows.push_back(index.row());
  std::ranges::sort(rows);
  if (rows.size() < 2) {
    rows.clear();
    for (int row = 0; row < m_sorted->rowCount(); ++row) rows.push_back(row);
  }
  const auto* header = horizontalHeader();
  const auto line = [&](const auto& cell) {
    QStringList cells;
    for (int at = 0; at < header->count(); ++at) cells << cell(header->logicalIndex(at));
    return spreadsheetRow(std::move(cells));
  };
  QStringList lines{
      line([this](int column) { return m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(); })};
  for (const int row : rows) {
    lines << line([this, row](int column) { return m_sorted->index(row, column).data().toString(); });
  }
  return lines.join(u'\n') + u'\n';
}

void ResultsTable::copy() {
  QApplication::clipboard()->setText(asText());
  emit copied();
}

void ResultsTable::keyboardSearch(const QString& typed) {
  const QModelIndex found = m_find.next(*m_sorted, currentIndex(), typed);
  if (found.isValid() && found != currentIndex()) setCurrentIndex(found);
}

void ResultsTable::keyPressEvent(QKeyEvent* event) {
  if (event->matches(QKeySequence::Copy)) {
    copy();
    return;
  }
  if (event->key() == Qt::Key_Space && event->modifiers() == Qt::NoModifier && currentIndex().isValid()) {
    // A blank within a name that is being typed.
    if (const QModelIndex found = m_find.next(*m_sorted, currentIndex(), event->text()); found.isValid()) {
      setCurrentIndex(found);
      return;
    }
    using enum QItemSelectionModel::SelectionFlag;
    // The first one marks the row that is chosen anyway.
    selectionModel()->select(currentIndex(), (m_marking ? Toggle : ClearAndSelect) | Rows);
    m_marking = true;
    return;
  }
  QTableView::keyPressEvent(event);
}

void ResultsTable::mousePressEvent(QMouseEvent* event) {
  m_marking = false;
  QTableView::mousePressEvent(event);
}

QItemSelectionModel::SelectionFlags ResultsTable::selectionCommand(const QModelIndex& index,
                                                                   const QEvent* event) const {
  const bool key = event && event->type() == QEvent::KeyPress;
  if (m_marking && key && static_cast<const QKeyEvent*>(event)->modifiers() == Qt::NoModifier)
    return QItemSelectionModel::NoUpdate;
  return QTableView::selectionCommand(index, event);
}

}  // namespace ovenwright::desktop
