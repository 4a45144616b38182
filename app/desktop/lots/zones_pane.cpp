#include "app/desktop/lots/zones_pane.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/lots/lot_words.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"

namespace ovenwright::desktop {
namespace {

using lot::TracedZone;

/// A requirement on a trace that traces to some zone, in the order of the table's rows.
struct Subject {
  std::string requirement, trace;
  std::size_t runs = 0;  ///< of all zones, for the order
};

std::vector<Subject> subjectsOf(const lot::ZoneTraces& traces) {
  std::vector<Subject> all;
  for (const auto& zone : traces.zones)
    for (const auto& one : zone.subjects) {
      const auto at = std::ranges::find_if(
          all, [&](const Subject& other) { return other.requirement == one.requirement && other.trace == one.trace; });
      if (at == all.end()) {
        all.push_back({one.requirement, one.trace, one.runs});
      } else {
        at->runs += one.runs;
      }
    }
  std::ranges::stable_sort(all, std::ranges::greater{}, &Subject::runs);
  return all;
}

std::size_t runsWith(const TracedZone& zone, const Subject& subject) {
  std::size_t runs = 0;  // two windows may use one name for a requirement
  for (const auto& one : zone.subjects)
    if (one.requirement == subject.requirement && one.trace == subject.trace) runs += one.runs;
  return runs;
}

/// What the rows are, as words beside them.
class RowNames : public QHeaderView {
 public:
  explicit RowNames(QWidget* parent) : QHeaderView(Qt::Vertical, parent) {}

 protected:
  void paintSection(QPainter* painter, const QRect& rect, int section) const override {
    const auto theme = widgets::Theme::fromPalette(palette(), font());
    painter->save();
    painter->fillRect(rect, theme.panel);
    painter->setPen(theme.text);
    const QString words = model()->headerData(section, Qt::Vertical, Qt::DisplayRole).toString();
    painter->drawText(rect.adjusted(0, 0, -int(theme.px(6)), 0), Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(font()).elidedText(words, Qt::ElideMiddle, rect.width() - int(theme.px(6))));
    painter->restore();
  }
  void paintEvent(QPaintEvent* event) override {
    QPainter(viewport()).fillRect(viewport()->rect(), palette().base());
    QHeaderView::paintEvent(event);
  }
};

}  // namespace

ZonesPane::ZonesPane(QWidget* parent)
    : QWidget(parent), m_sentence(new QLabel), m_note(new QLabel), m_table(new QTableWidget) {
  m_sentence->setWordWrap(true);
  m_sentence->setTextFormat(Qt::PlainText);
  m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_note->setWordWrap(true);
  m_note->setTextFormat(Qt::PlainText);
  m_table->setAccessibleName(tr("Results outside by zone"));
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setSelectionBehavior(QAbstractItemView::SelectColumns);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setTabKeyNavigation(false);
  m_table->setFrameShape(QFrame::NoFrame);
  m_table->setWordWrap(false);
  m_table->setShowGrid(false);
  m_table->horizontalHeader()->setHighlightSections(false);
  m_table->setVerticalHeader(new RowNames(m_table));
  m_table->verticalHeader()->setHighlightSections(false);
  m_table->verticalHeader()->setSectionsClickable(false);
  m_table->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  connect(m_table, &QTableWidget::itemSelectionChanged, this, &ZonesPane::choose);
  auto* layout = new QVBoxLayout(this);
  layout->setSpacing(0);
  layout->addWidget(m_sentence);
  layout->addWidget(m_table, 100);  // up to what it holds
  layout->addWidget(m_note);
  layout->addStretch(1);
  style();
}

QString ZonesPane::sentence() const { return m_sentence->text(); }

QString ZonesPane::sentenceOf(const LotFigures& figures) const {
  const auto& traces = figures.zones;
  const int runs = int(figures.allRuns.size());
  if (figures.ovens.size() > 1)
    return tr("Runs of %n ovens are listed: choose one above, so that each zone is one zone.", nullptr,
              int(figures.ovens.size()));
  if (traces.outside == 0)
    return tr("No required result of the %n run(s) listed is outside its limits.", nullptr, runs);
  if (!traces.leading)
    return tr(
        "%n required result(s) are outside, and none traces to a zone: the runs have no oven and recipe, or no "
        "zone moves what is outside.",
        nullptr, int(traces.outside));
  const auto& zone = traces.zones[*traces.leading];
  return tr("Zone %1 leads: %2 of the %n result(s) outside trace to it, in %3 of %4 runs, the last on %5.", nullptr,
            int(traces.outside))
      .arg(QString::fromStdString(zone.zone), m_format.count(zone.results), m_format.count(zone.runs.size()),
           m_format.count(figures.allRuns.size()), dayText(figures.allRuns[zone.runs.back()].runAt, m_format));
}

void ZonesPane::setFigures(std::shared_ptr<const LotFigures> figures, const Format& format) {
  m_format = format;
  const std::string before = m_chosen && m_figures ? m_figures->zones.zones[*m_chosen].zone : std::string();
  m_figures = std::move(figures);
  m_filling = true;
  m_chosen.reset();
  m_table->clear();
  m_table->setRowCount(0);
  m_table->setColumnCount(0);
  m_sentence->setText(m_figures ? sentenceOf(*m_figures) : QString());
  if (m_figures && m_figures->ovens.size() < 2) fill(*m_figures);
  m_filling = false;
  m_table->setAccessibleDescription(m_sentence->text());
  for (int column = 0; column < m_table->columnCount(); ++column)
    if (m_figures->zones.zones[std::size_t(column)].zone == before) m_table->selectColumn(column);
  refreshNote();
  if (!before.empty() && !m_chosen) emit runsChosen({});
}

void ZonesPane::fill(const LotFigures& figures) {
  const auto& zones = figures.zones.zones;
  if (zones.empty()) return;
  const auto subjects = subjectsOf(figures.zones);
  QStringList rows{tr("Results outside"), tr("Runs")}, columns;
  for (const auto& subject : subjects) rows << subjectText(subject.requirement, subject.trace);
  rows << tr("Last on");
  for (const auto& zone : zones) columns << tr("Zone %1").arg(QString::fromStdString(zone.zone));
  m_table->setRowCount(int(rows.size()));
  m_table->setColumnCount(int(columns.size()));
  m_table->setVerticalHeaderLabels(rows);
  m_table->setHorizontalHeaderLabels(columns);
  for (int column = 0; column < int(zones.size()); ++column) {
    const auto& zone = zones[std::size_t(column)];
    const bool leads = figures.zones.leading == std::size_t(column);
    QFont font = m_table->font();
    font.setBold(leads);
    QStringList cells{m_format.count(zone.results), m_format.count(zone.runs.size())};
    for (const auto& subject : subjects) {
      const std::size_t runs = runsWith(zone, subject);
      cells << (runs > 0 ? m_format.count(runs) : QString());
    }
    cells << shortDayText(figures.allRuns[zone.runs.back()].runAt, m_format);
    for (int row = 0; row < int(cells.size()); ++row) {
      auto* item = new QTableWidgetItem(cells[row]);
      item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      item->setFont(font);
      item->setData(Qt::AccessibleTextRole,
                    tr("%1, %2: %3", "zone, row, number")
                        .arg(columns[column], rows[row], cells[row].isEmpty() ? tr("none") : cells[row]));
      m_table->setItem(row, column, item);
    }
    auto* heading = m_table->horizontalHeaderItem(column);
    heading->setFont(font);
    heading->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  }
  for (int row = 0; row < int(rows.size()); ++row)
    m_table->verticalHeaderItem(row)->setToolTip(rows[row].toHtmlEscaped());
  m_table->resizeColumnsToContents();
  const int frame = 2 * m_table->frameWidth();
  const auto *across = m_table->horizontalHeader(), *down = m_table->verticalHeader();
  m_table->setMaximumSize(down->sizeHint().width() + across->length() + frame,
                          across->sizeHint().height() + down->length() + frame);
}

void ZonesPane::choose() {
  if (m_filling || !m_figures) return;
  const auto chosen = m_table->selectionModel()->selectedColumns();
  m_chosen = chosen.isEmpty() ? std::nullopt : std::optional(std::size_t(chosen.front().column()));
  refreshNote();
  std::vector<std::string> ids;
  if (m_chosen)
    for (const std::size_t run : m_figures->zones.zones[*m_chosen].runs) ids.push_back(m_figures->allRuns[run].id);
  emit runsChosen(ids);
}

void ZonesPane::chooseNothing() { m_table->clearSelection(); }

void ZonesPane::refreshNote() {
  const bool any = m_table->columnCount() > 0;
  QString text;
  if (any)
    text =
        tr("A result traces to the zones that move it most, whatever moved it: these are counts of what was judged, "
           "no measure of drift.");
  if (m_chosen) {
    const auto& zone = m_figures->zones.zones[*m_chosen];
    text = paragraph(
        {text, tr("The %n run(s) of zone %1 have a bar at their left in the list.", nullptr, int(zone.runs.size()))
                   .arg(QString::fromStdString(zone.zone))});
  } else if (any) {
    text = paragraph({text, tr("Choose a zone to find its runs in the list.")});
  }
  m_note->setText(text);
  m_table->setVisible(any);
}

void ZonesPane::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  m_sentence->setFont(theme.font(15));
  m_sentence->setContentsMargins(0, int(theme.px(8)), 0, int(theme.px(6)));
  m_note->setFont(theme.font(12));
  m_note->setContentsMargins(0, int(theme.px(6)), 0, 0);
  Appearance::ink(m_note, theme.secondary);
  m_table->verticalHeader()->setDefaultSectionSize(int(theme.px(24)));
  m_table->horizontalHeader()->setMinimumSectionSize(int(theme.px(62)));
  m_table->verticalHeader()->setMaximumWidth(int(theme.px(300)));
  layout()->setContentsMargins(inset, 0, inset, int(theme.px(8)));
  QPalette colors = m_table->palette();
  colors.setColor(QPalette::Highlight, theme.accentSoft);
  colors.setColor(QPalette::HighlightedText, theme.text);
  m_table->setPalette(colors);
}

void ZonesPane::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
