#include "app/desktop/lots/figures_pane.h"

#include <QActionGroup>
#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

#include "app/desktop/lots/lot_words.h"
#include "app/desktop/lots/zones_pane.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/lot_lane.h"
#include "app/desktop/widgets/run_chart.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {
namespace {

constexpr int kSubgroups[] = {2, 3, 4, 5, 6, 8, 10};
constexpr double kGroup_px = 190, kMeasure_px = 205, kLeastWidth_px = 320;
constexpr double kLow_px = 400;        // below this height the figures stand in two columns, where the lane keeps
constexpr double kLaneLeast_px = 260;  // this width beside them
constexpr int kValues = 5;             // of the figures are values, the others indices
enum Body { kFigures, kEmpty, kByZone };

}  // namespace

FiguresPane::FiguresPane(ArchiveLink* archive, Settings* settings, QWidget* parent)
    : QWidget(parent),
      m_settings(settings),
      m_loader(new LotFiguresLoader(archive, this)),
      m_tabs(new QTabBar),
      m_group(new QComboBox),
      m_measure(new QComboBox),
      m_groupLabel(new QLabel(tr("Runs of"))),
      m_measureLabel(new QLabel(tr("Measure"))),
      m_options(new QPushButton),
      m_sentence(new QLabel),
      m_body(new QStackedWidget),
      m_empty(new QLabel),
      m_zones(new ZonesPane),
      m_chart(new widgets::RunChart),
      m_lane(new widgets::LotLane),
      m_noScale(new QLabel(tr("No limit to hold the runs against"))),
      m_rows(new QGridLayout),
      m_note(new QLabel),
      m_progress(new QProgressBar),
      m_stop(new QPushButton(tr("Stop"))),
      m_loading(new QWidget) {
  m_loader->setOptions(settings->lotChart());
  build();
  buildOptions();
  connectParts();
  style();
  refresh();
}

QWidget* FiguresPane::buildHead() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* head = new QWidget;
  auto* layout = new FlowRow(head);
  layout->setContentsMargins(int(theme.px(16)), int(theme.px(4)), int(theme.px(12)), 0);
  layout->setSpacing(int(theme.px(8)));
  layout->setSplit(1);  // the choosers at the right
  m_tabs->addTab(tr("Control chart"));
  m_tabs->addTab(tr("Trend"));
  m_tabs->addTab(tr("Zones"));
  m_tabs->setDrawBase(false);
  m_tabs->setExpanding(false);
  m_tabs->setUsesScrollButtons(false);  // the choosers give way first
  m_tabs->setAccessibleName(tr("Statistics of the runs"));
  layout->addWidget(m_tabs);
  for (const auto& [label, box, widest] :
       {std::tuple(m_groupLabel, m_group, kGroup_px), std::tuple(m_measureLabel, m_measure, kMeasure_px)}) {
    label->setFont(theme.font(12));
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setBuddy(box);
    box->setAccessibleName(label->text());
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    box->setMinimumContentsLength(8);
    box->setMaximumWidth(int(theme.px(widest)));
    box->setMaxVisibleItems(24);
    auto* both = new QWidget;
    auto* both_layout = new QHBoxLayout(both);
    both_layout->setContentsMargins({});
    both_layout->setSpacing(int(theme.px(6)));
    both_layout->addWidget(label);
    both_layout->addWidget(box);
    layout->addWidget(both);
  }
  m_options->setText(tr("Chart"));
  m_options->setToolTip(tr("Kind of chart and rules"));
  m_options->setAutoDefault(false);
  layout->addWidget(m_options);
  return head;
}

void FiguresPane::build() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_sentence->setWordWrap(true);
  m_sentence->setTextFormat(Qt::PlainText);
  m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_chart->setMinimumHeight(int(theme.px(110)));

  auto* numbers = new QWidget;
  numbers->setLayout(m_rows);
  m_rows->setContentsMargins({});
  m_rows->setHorizontalSpacing(int(theme.px(18)));
  m_rows->setVerticalSpacing(1);
  m_note->setWordWrap(true);
  m_note->setTextFormat(Qt::PlainText);

  auto* lane_column = new QVBoxLayout;
  lane_column->addWidget(m_lane);
  lane_column->addWidget(m_noScale);
  lane_column->addWidget(m_note);
  lane_column->addStretch(1);
  m_lower = new QBoxLayout(QBoxLayout::LeftToRight);
  m_lower->setContentsMargins(int(theme.px(16)), int(theme.px(6)), int(theme.px(16)), int(theme.px(8)));
  m_lower->setSpacing(int(theme.px(20)));
  m_lower->addLayout(lane_column, 1);
  m_lower->addWidget(numbers, 0, Qt::AlignTop);

  auto* figures = new QWidget;
  auto* figures_layout = new QVBoxLayout(figures);
  figures_layout->setContentsMargins({});
  figures_layout->setSpacing(0);
  auto* chart = new QVBoxLayout;
  chart->setContentsMargins(int(theme.px(16)), 0, int(theme.px(8)), int(theme.px(2)));
  chart->addWidget(m_chart);
  figures_layout->addWidget(m_sentence);
  figures_layout->addLayout(chart, 1);
  figures_layout->addWidget(new Hairline);
  figures_layout->addLayout(m_lower);

  m_empty->setWordWrap(true);
  m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_body->addWidget(figures);
  m_body->addWidget(m_empty);
  m_body->addWidget(m_zones);
  m_body->setAutoFillBackground(true);
  m_body->setBackgroundRole(QPalette::Base);

  auto* loading = new QHBoxLayout(m_loading);
  loading->setContentsMargins(int(theme.px(16)), int(theme.px(4)), int(theme.px(12)), int(theme.px(4)));
  m_progress->setAccessibleName(tr("Loading the runs"));
  m_stop->setAutoDefault(false);
  loading->addWidget(m_progress, 1);
  loading->addWidget(m_stop);
  m_loading->hide();

  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  m_head = buildHead();
  layout->addWidget(m_head);
  layout->addWidget(new Hairline);
  layout->addWidget(m_loading);
  layout->addWidget(m_body, 1);
}

void FiguresPane::buildOptions() {
  auto* menu = new QMenu(m_options);
  const auto choose = [this](QMenu* into, QActionGroup* group, const QString& text, bool now,
                             std::function<void(lot::Options&)> set) {
    QAction* action = group->addAction(into->addAction(text));
    action->setCheckable(true);
    action->setChecked(now);
    connect(action, &QAction::triggered, this, [this, set] {
      lot::Options options = m_loader->options();
      set(options);
      m_settings->setLotChart(options);
      m_loader->setOptions(options);
    });
  };
  const auto& now = m_loader->options();
  auto* kinds = new QActionGroup(menu);
  using lot::ChartKind;
  for (const auto& [kind, text] :
       {std::pair(ChartKind::kIndividuals, tr("&Individuals and moving range")),
        std::pair(ChartKind::kXbarR, tr("X-bar and &R")), std::pair(ChartKind::kXbarS, tr("X-bar and &S")),
        std::pair(ChartKind::kEwma, tr("&EWMA"))})
    choose(menu, kinds, text, now.chart == kind, [kind = kind](lot::Options& options) { options.chart = kind; });
  QMenu* subgroup = menu->addMenu(tr("Runs in a s&ubgroup"));
  auto* sizes = new QActionGroup(menu);
  for (const int size : kSubgroups)
    choose(subgroup, sizes, QString::number(size), now.subgroup == std::size_t(size),
           [size](lot::Options& options) { options.subgroup = std::size_t(size); });
  menu->addSeparator();
  auto* rules = new QActionGroup(menu);
  for (const auto set : {lot::RuleSet::kWesternElectric, lot::RuleSet::kNelson})
    choose(menu, rules, ruleSetText(set), now.rules == set, [set](lot::Options& options) { options.rules = set; });
  m_options->setMenu(menu);
}

void FiguresPane::connectParts() {
  connect(m_loader, &LotFiguresLoader::changed, this, &FiguresPane::refresh);
  connect(m_loader, &LotFiguresLoader::progressChanged, this, &FiguresPane::refreshProgress);
  connect(m_stop, &QPushButton::clicked, m_loader, &LotFiguresLoader::stop);
  connect(m_tabs, &QTabBar::currentChanged, this, [this](int tab) {
    m_loader->setAllWanted(tab != kControl);
    if (tab != kZones) m_zones->chooseNothing();
    refreshSeries();
  });
  connect(m_group, &QComboBox::activated, this, [this](int index) {
    if (const auto figures = m_loader->figures()) m_loader->setGroup(figures->groups[std::size_t(index)]);
  });
  connect(m_measure, &QComboBox::activated, this, [this](int index) {
    const auto figures = m_loader->figures();
    if (!figures) return;
    m_subject = subjectText(figures->lot.series[std::size_t(index)]);
    refreshSeries();
  });
  const auto id = [this](std::size_t run) {
    const auto* its = runOf(run);
    return its ? QString::fromStdString(its->id) : QString();
  };
  connect(m_zones, &ZonesPane::runsChosen, this, &FiguresPane::zoneRunsChosen);
  connect(m_chart, &widgets::RunChart::runWanted, this, [this, id](std::size_t run) { emit openWanted(id(run)); });
  connect(m_chart, &widgets::RunChart::runChosen, this, [this, id](std::size_t run) { emit runChosen(id(run)); });
}

const FigureRun* FiguresPane::runOf(std::size_t run) const {
  const auto figures = m_loader->figures();
  if (!figures) return nullptr;
  const auto& runs = m_tabs->currentIndex() == kTrend ? figures->allRuns : figures->runs;
  return run < runs.size() ? &runs[run] : nullptr;
}

const lot::Series* FiguresPane::series() const {
  const auto figures = m_loader->figures();
  const int index = m_measure->currentIndex();
  if (!figures || index < 0 || std::size_t(index) >= figures->lot.series.size()) return nullptr;
  return &figures->lot.series[std::size_t(index)];
}

void FiguresPane::chooseSeries(const QString& subject) {
  m_subject = subject;
  refresh();
}

FiguresPane::Tab FiguresPane::tab() const { return Tab(m_tabs->currentIndex()); }

void FiguresPane::showTab(Tab tab) { m_tabs->setCurrentIndex(tab); }
QString FiguresPane::sentence() const {
  return m_body->currentIndex() == kByZone ? m_zones->sentence() : m_sentence->text();
}
QPixmap FiguresPane::picture() const { return m_body->currentWidget()->grab(); }

void FiguresPane::setFormat(const Format& format) {
  m_format = format;
  refresh();
}

void FiguresPane::refresh() {
  refreshProgress();
  refreshChoosers();
  refreshSeries();
}

void FiguresPane::refreshProgress() {
  // A few runs are there at once; a bar is for those that take a while.
  constexpr std::size_t kSome = 80;
  const bool shown = m_loader->isBusy() && m_loader->total() > kSome && m_loader->done() < m_loader->total();
  m_loading->setVisible(shown);
  if (!shown) return;
  m_progress->setRange(0, int(m_loader->total()));
  m_progress->setValue(int(m_loader->done()));
  m_progress->setFormat(tr("%1 of %2 runs").arg(m_format.count(m_loader->done()), m_format.count(m_loader->total())));
}

void FiguresPane::refreshChoosers() {
  const auto figures = m_loader->figures();
  m_group->clear();
  m_measure->clear();
  for (QWidget* part : std::initializer_list<QWidget*>{m_group, m_measure, m_groupLabel, m_measureLabel, m_options})
    part->setEnabled(figures != nullptr);
  if (!figures) return;
  for (const auto& group : figures->groups) {
    m_group->addItem(groupText(group, figures->groups, m_format));
    m_group->setItemData(m_group->count() - 1, QString::fromStdString(group.window).toHtmlEscaped(), Qt::ToolTipRole);
  }
  m_group->setCurrentIndex(int(figures->group));
  int chosen = figures->lot.weakest ? int(*figures->lot.weakest) : 0;
  for (std::size_t i = 0; i < figures->lot.series.size(); ++i) {
    m_measure->addItem(subjectText(figures->lot.series[i]));
    if (m_measure->itemText(int(i)) == m_subject) chosen = int(i);
  }
  if (m_measure->count() > 0) m_measure->setCurrentIndex(chosen);
}

void FiguresPane::refreshSeries() {
  const auto figures = m_loader->figures();
  const auto* one = series();
  const bool zones = m_tabs->currentIndex() == kZones;
  for (QWidget* part : {m_group->parentWidget(), m_measure->parentWidget(), static_cast<QWidget*>(m_options)})
    part->setVisible(!zones);
  m_body->setCurrentIndex(!one ? kEmpty : zones ? kByZone : kFigures);
  const bool has_all = one && !figures->allRuns.empty();
  m_zones->setFigures(zones && has_all ? figures : nullptr, m_format);
  keepHeight();
  if (!one) {
    const auto& error = m_loader->error();
    m_empty->setText(error                ? tr("The statistics cannot be worked out. %1").arg(errorText(*error))
                     : m_loader->isBusy() ? QString()
                                          : tr("No run is listed to work statistics out from."));
    return;
  }
  const bool trend = m_tabs->currentIndex() == kTrend;
  QString sentence = chartSentence(*figures, *one, m_loader->options(), m_format);
  if (figures->cut)
    sentence = paragraph(
        {sentence, tr("Only the newest %1 runs of the list count.").arg(m_format.count(LotFiguresLoader::kMost))});
  if (trend) sentence = tr("Trend of %1.").arg(subjectText(*one));
  m_sentence->setText(sentence);
  m_chart->setContent(trend && has_all ? trendChart(*figures, *one, m_format)
                      : trend          ? widgets::RunChartContent{}
                                       : controlCharts(*figures, *one, m_format));
  m_chart->setAccessibleName(trend ? tr("Trend of %1").arg(subjectText(*one))
                                   : tr("Control chart of %1").arg(subjectText(*one)));
  m_chart->setAccessibleDescription(sentence);
  auto lane = lotLane(*one, m_format);
  m_lane->setVisible(lane.hasScale());
  m_noScale->setVisible(!lane.hasScale());
  m_lane->setContent(std::move(lane));
  const auto rows = statisticsRows(*one, m_format);
  while (m_figures.size() < rows.size()) {
    auto* name = new QLabel;
    auto* value = new QLabel;
    value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_figures << std::pair(name, value);
    m_rowsDown = 0;
  }
  m_shownRows = int(rows.size());
  for (qsizetype i = 0; i < m_figures.size(); ++i) {
    m_figures[i].first->setVisible(i < rows.size());
    m_figures[i].second->setVisible(i < rows.size());
    if (i >= rows.size()) continue;
    m_figures[i].first->setText(rows[i].first);
    m_figures[i].second->setText(rows[i].second);
    m_figures[i].second->setAccessibleName(rows[i].first + QStringLiteral(": ") + rows[i].second);
  }
  placeRows();
  const QString note = noteText(*one);
  m_note->setText(note);
  m_note->setVisible(!note.isEmpty());
  keepHeight();
}

/// A splitter asks no height for a width, so what the chart and the lines that wrap need now is told to it.
void FiguresPane::keepHeight() {
  if (m_body->currentIndex() != kFigures) {
    setMinimumHeight(0);
    return;
  }
  m_rows->activate();   // the figures as they stand now
  const int lines = 4;  // between the parts, and under the chart
  const int least = m_head->layout()->heightForWidth(width()) + m_sentence->heightForWidth(width()) +
                    m_chart->minimumHeight() + m_lower->minimumHeightForWidth(width()) + lines;
  if (least != minimumHeight()) setMinimumHeight(least);
}

QSize FiguresPane::minimumSizeHint() const {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  return {int(theme.px(kLeastWidth_px)), QWidget::minimumSizeHint().height()};
}

void FiguresPane::placeRows() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  int widths[2][2] = {};  // of the names and values of both columns
  for (int i = 0; i < m_shownRows; ++i) {
    auto& [names, values] = widths[i < kValues ? 0 : 1];
    names = std::max(names, m_figures[i].first->sizeHint().width());
    values = std::max(values, m_figures[i].second->sizeHint().width());
  }
  const double beside = widths[0][0] + widths[0][1] + widths[1][0] + widths[1][1] + 3 * m_rows->horizontalSpacing() +
                        theme.px(2 * 16 + 20);  // insets, and between lane and figures
  const bool two = height() < theme.px(kLow_px) && m_shownRows > kValues &&
                   width() >= beside + std::max<double>(theme.px(kLaneLeast_px), m_lane->minimumSizeHint().width());
  // Where both have no room beside each other, as with large text, the figures stand under the lane.
  const int least =
      std::max(widths[0][0], widths[1][0]) + std::max(widths[0][1], widths[1][1]) + m_rows->horizontalSpacing();
  const bool stacked = width() < least + m_lane->minimumSizeHint().width() + theme.px(2 * 16 + 20);
  m_lower->setDirection(stacked ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  const int down = two ? std::max(kValues, m_shownRows - kValues) : std::max(1, m_shownRows);
  if (down == m_rowsDown) return;
  m_rowsDown = down;
  for (int i = 0; i < int(m_figures.size()); ++i) {
    const int row = i % down, column = 2 * (i / down);
    m_rows->addWidget(m_figures[i].first, row, column);
    m_rows->addWidget(m_figures[i].second, row, column + 1);
  }
}

bool FiguresPane::event(QEvent* event) {
  const bool taken = QWidget::event(event);
  if (event->type() == QEvent::LayoutRequest) keepHeight();  // a part wants another height
  return taken;
}

void FiguresPane::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  placeRows();
  keepHeight();
}

void FiguresPane::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_sentence->setFont(theme.font(15));
  m_sentence->setContentsMargins(int(theme.px(16)), int(theme.px(8)), int(theme.px(16)), int(theme.px(4)));
  m_empty->setContentsMargins(int(theme.px(16)), int(theme.px(12)), int(theme.px(16)), int(theme.px(12)));
  for (QLabel* label : {m_note, m_noScale}) {
    label->setFont(theme.font(12));
    QPalette quiet = label->palette();
    quiet.setColor(QPalette::WindowText, theme.secondary);
    label->setPalette(quiet);
  }
}

void FiguresPane::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
