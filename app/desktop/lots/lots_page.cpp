#include "app/desktop/lots/lots_page.h"

#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/desktop/compare/compare_model.h"
#include "app/desktop/lots/archive_words.h"
#include "app/desktop/lots/figures_pane.h"
#include "app/desktop/lots/filter_bar.h"
#include "app/desktop/lots/lot_sheet_panel.h"
#include "app/desktop/lots/runs_model.h"
#include "app/desktop/lots/runs_table.h"
#include "app/desktop/lots/table_file.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/sentence_states.h"
#include "app/desktop/window/side_panel.h"

namespace ovenwright::desktop {
namespace {

constexpr int kTableShare = 43, kFiguresShare = 57;
enum Content { kList, kMessage };

}  // namespace

LotsPage::LotsPage(ArchiveLink* archive, Settings* settings, QWidget* parent)
    : QWidget(parent),
      m_archive(archive),
      m_settings(settings),
      m_left(new QWidget),
      m_filter(new FilterBar),
      m_model(new RunsModel(archive, this)),
      m_table(new RunsTable(m_model)),
      m_content(new QStackedWidget),
      m_message(new widgets::Sentence),
      m_figures(new FiguresPane(archive, settings)),
      m_rows(new HairlineSplitter(Qt::Vertical)),
      m_panel(new LotSheetPanel(archive, settings)),
      m_columns(new HairlineSplitter(Qt::Horizontal, this)),
      m_where(archive->where()) {
  build();
  connectParts();
  style();
  refreshNotice();
}

LotsPage::~LotsPage() = default;

void LotsPage::build() {
  auto* message = new QWidget;
  message->setAutoFillBackground(true);
  message->setBackgroundRole(QPalette::Base);
  auto* message_layout = new QVBoxLayout(message);
  message_layout->setContentsMargins({});
  message_layout->addWidget(m_message);
  message_layout->addStretch(1);
  m_rows->addWidget(m_table);
  m_rows->addWidget(m_figures);
  m_rows->setStretchFactor(0, kTableShare);
  m_rows->setStretchFactor(1, kFiguresShare);
  m_rows->setSizes({kTableShare * 10, kFiguresShare * 10});
  m_rows->restoreState(m_settings->lotsSplitter());
  m_content->addWidget(m_rows);
  m_content->addWidget(message);
  auto* left_layout = new QVBoxLayout(m_left);
  left_layout->setContentsMargins({});
  left_layout->setSpacing(0);
  left_layout->addWidget(m_content, 1);
  m_columns->addWidget(m_left);
  m_columns->addWidget(m_panel);
  m_columns->setStretchFactor(0, 1);
  m_columns->setStretchFactor(1, 0);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addWidget(m_filter);
  layout->addWidget(new Hairline);
  layout->addWidget(m_columns, 1);
  m_side = new SidePanel(this, m_columns, m_panel, m_columns, m_settings->lotsPanelWidth());
  m_side->setWanted(m_settings->lotsPanelShown());
  m_table->restoreColumns(m_settings->lotsColumns());
  m_figures->showTab(FiguresPane::Tab(std::clamp(m_settings->lotsTab(), 0, int(FiguresPane::kZones))));
  connect(m_side, &SidePanel::placed, this, [this] { m_filter->setPanelLinkShown(m_side->needsLink()); });
}

void LotsPage::connectParts() {
  connect(m_archive, &ArchiveLink::statusChanged, this, [this] {
    refreshNotice();
    emit statusChanged();
  });
  connect(m_archive, &ArchiveLink::changed, this, [this] {
    if (std::exchange(m_where, m_archive->where()) != m_archive->where()) m_model->clearMarks();
    if (isVisible()) reload();
  });
  connect(m_message, &widgets::Sentence::activated, this, [this](const widgets::SentenceLink& link) {
    if (!m_notice) return;
    if (const auto act = m_notice->cures.at(std::size_t(link.command.toInt())).act) act();
  });
  connect(m_filter, &FilterBar::changed, this, [this] {
    m_busy = true;
    m_failure.reset();
    m_current = m_table->currentRun();
    m_model->setFilter(m_filter->filter(), m_model->order());
    m_figures->load(m_filter->filter());
  });
  connect(m_filter, &FilterBar::panelWanted, this, [this] { setPanelShown(!isPanelShown()); });
  connect(m_filter, &FilterBar::exportWanted, this, &LotsPage::exportTable);
  connect(m_filter, &FilterBar::compareWanted, this, [this] { emit compareWanted(m_model->marked()); });
  connect(m_model, &RunsModel::failed, this, [this](const Error& error) { m_failure = error; });
  connect(m_model, &RunsModel::listed, this, [this] {
    m_busy = false;
    m_table->fitColumns();
    if (m_current) m_table->setCurrentRun(*m_current);
    refreshMarks();
    refreshNotice();
  });
  connect(m_model, &RunsModel::counted, this, [this] {
    m_filter->setCount(m_model->total(), m_model->totalLots(), m_format);
    m_filter->setExportEnabled(m_model->total().value_or(0) > 0);
    m_table->horizontalHeader()->viewport()->update();
    emit statusChanged();
  });
  connect(m_model, &RunsModel::marksChanged, this, &LotsPage::refreshMarks);
  connect(m_table, &RunsTable::currentRunChanged, this, &LotsPage::refreshMarks);
  connect(m_table, &RunsTable::openWanted, this, &LotsPage::openWanted);
  connect(m_figures, &FiguresPane::openWanted, this, &LotsPage::openWanted);
  connect(m_figures, &FiguresPane::runChosen, this,
          [this](const QString& id) { m_table->setCurrentRun(id.toStdString()); });
  connect(m_figures, &FiguresPane::zoneRunsChosen, this, [this](const std::vector<std::string>& ids) {
    m_model->setHighlighted({ids.begin(), ids.end()});
    if (!ids.empty()) m_table->setCurrentRun(ids.back());
  });
  connect(m_table, &RunsTable::copied, this,
          [this] { emit noted(tr("The table is on the clipboard, with headings.")); });
  connect(m_panel, &LotSheetPanel::noted, this, &LotsPage::noted);
  connect(m_panel, &LotSheetPanel::troubled, this, &LotsPage::troubled);
}

void LotsPage::setFormat(const Format& format) {
  m_format = format;
  m_model->setFormat(format);
  m_figures->setFormat(format);
  m_filter->setCount(m_model->total(), m_model->totalLots(), m_format);
}

void LotsPage::reload() {
  m_busy = true;
  m_failure.reset();
  m_current = m_table->currentRun();
  m_model->reload();
  m_figures->load(m_filter->filter());
  m_archive->look();
  refreshNames();
}

void LotsPage::refreshNames() {
  m_archive->lots(this, {}, [this](Result<std::vector<archive::LotSummary>> lots) {
    if (lots) m_filter->setLots(*lots);
  });
  using Names = std::vector<std::string>;
  for (const auto which : {archive::Archive::Name::kBoard, archive::Archive::Name::kOven})
    m_archive->ask<Names>(
        this, QStringLiteral("names %1").arg(int(which)),
        [which](archive::Archive& archive, const ArchiveLink::Stop&) { return archive.names(which); },
        [this, which](Result<Names> names) {
          if (!names) return;
          if (which == archive::Archive::Name::kBoard) {
            m_filter->setBoards(*names);
          } else {
            m_filter->setOvens(*names);
          }
        });
}

void LotsPage::refreshMarks() {
  auto ids = m_model->marked();
  const auto current = m_table->currentRun();
  if (ids.empty() && current) ids.push_back(*current);
  m_panel->setRecords(std::move(ids));
  const std::size_t marked = m_model->markedCount();
  m_filter->setCompareEnabled(marked >= 2 && marked <= kMostCompared,
                              marked < 2               ? tr("Mark two runs, or more for two groups")
                              : marked > kMostCompared ? tr("%1 runs at most can be compared").arg(kMostCompared)
                              : marked == 2
                                  ? tr("Hold the two marked runs against each other, the older as A")
                                  : tr("Put the marked runs into two groups and hold these against each other"));
  emit statusChanged();
}

void LotsPage::refreshNotice() {
  const auto again = [this] {
    m_archive->tryAgain();
    reload();
  };
  m_notice = archiveNotice(m_archive->status(), again);
  if (!m_notice && m_failure) m_notice = failureNotice(*m_failure, again);
  if (!m_notice && !m_busy && m_model->rowCount() == 0 && m_archive->status().records > 0)
    m_notice = nothingFoundNotice([this] { m_filter->clear(); });
  if (m_notice) m_message->setContent(noticeSentence(*m_notice));
  m_content->setCurrentIndex(m_notice ? kMessage : kList);
}

QString LotsPage::statusText() const {
  if (m_notice) return m_notice->title;
  if (!m_model->total()) return {};
  const auto count = [this](std::size_t n) { return m_format.count(n); };
  const QString shown = tr("%n run(s) in the list", nullptr, int(*m_model->total()))
                            .replace(QString::number(*m_model->total()), count(*m_model->total()));
  const std::size_t marked = m_model->markedCount();
  if (marked == 0) return shown;
  return shown + QStringLiteral(", ") +
         tr("%n marked", nullptr, int(marked)).replace(QString::number(marked), count(marked));
}

QString LotsPage::archiveText() const { return desktop::archiveText(m_archive->status(), m_format); }

bool LotsPage::isBusy() const { return m_busy || m_figures->loader()->isBusy(); }
void LotsPage::saveState() {
  m_settings->setLotsSplitter(m_rows->saveState());
  m_settings->setLotsColumns(m_table->columns());
  m_settings->setLotsTab(m_figures->tab());
  m_settings->setLotsPanelWidth(int(m_side->width_px()));
  m_settings->setLotsPanelShown(m_side->isWanted());
}

void LotsPage::find() { m_filter->focusText(); }
void LotsPage::copy() { m_table->copy(); }
QPixmap LotsPage::picture() const { return m_figures->picture(); }

void LotsPage::exportTable() {
  QString name = QStringLiteral("runs.csv");
  if (const auto& lot = m_filter->filter().lot) {
    QString stem = QString::fromStdString(*lot);
    for (QChar& c : stem)
      if (!c.isLetterOrNumber() && c != u'-') c = u'_';
    name = stem.left(60) + QStringLiteral(".csv");
  }
  const QString path = QFileDialog::getSaveFileName(this, tr("Export the table"),
                                                    m_settings->openFolder() + u'/' + name, tr("CSV (*.csv)"));
  if (!path.isEmpty()) exportTableTo(path);
}

void LotsPage::exportTableTo(const QString& path) {
  m_archive->ask<std::size_t>(
      this, QStringLiteral("export"),
      [filter = m_filter->filter(), order = m_model->order(), path](archive::Archive& archive,
                                                                    const ArchiveLink::Stop&) {
        return writeTable(archive, filter, order, QFile::encodeName(path).toStdString());
      },
      [this, path](Result<std::size_t> written) {
        if (!written) {
          emit troubled(tr("The table was not exported."), written.error());
          return;
        }
        emit noted(tr("%n run(s) exported as %1.", nullptr, int(*written)).arg(QFileInfo(path).fileName()));
      });
}

QList<QWidget*> LotsPage::parts() const {
  QList<QWidget*> parts{m_filter};
  if (m_notice) {
    parts << m_message;
  } else {
    parts << m_table << m_figures;
  }
  if (isPanelShown()) parts << m_panel;
  return parts;
}

bool LotsPage::isPanelShown() const { return m_side->isShown(); }

void LotsPage::setPanelShown(bool shown) {
  m_side->setShown(shown);
  emit panelShownChanged(shown);
}

void LotsPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  reload();
}

void LotsPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  m_side->place();
  QMetaObject::invokeMethod(m_side, &SidePanel::place, Qt::QueuedConnection);  // once the rest is laid out
}

void LotsPage::style() { m_table->setTheme(widgets::Theme::fromPalette(palette(), font())); }

void LotsPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
