#include "app/desktop/lots/filter_bar.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QDateTime>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStringListModel>
#include <QToolButton>

#include "app/desktop/lots/date_field.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

constexpr int kTyping_ms = 150;
constexpr double kLot_px = 106, kText_px = 100, kNames_px = 170, kVerdict_px = 92;
constexpr judge::Verdict kVerdicts[] = {judge::Verdict::kPass, judge::Verdict::kConditionalPass,
                                        judge::Verdict::kUndetermined, judge::Verdict::kConditionalFail,
                                        judge::Verdict::kFail};
constexpr int kAll = -1, kOut = -2;  // data of the verdicts' chooser that are no verdict

archive::Moment startOf(const QDate& date) {
  return archive::Moment{std::chrono::milliseconds{date.startOfDay().toMSecsSinceEpoch()}};
}

std::optional<QDate> dateOf(const std::optional<archive::Moment>& moment, int days) {
  if (!moment) return std::nullopt;
  return QDateTime::fromMSecsSinceEpoch(moment->time_since_epoch().count()).toLocalTime().date().addDays(days);
}

bool same(const archive::Filter& a, const archive::Filter& b) {
  return a.lot == b.lot && a.board == b.board && a.oven == b.oven && a.verdicts == b.verdicts && a.from == b.from &&
         a.to == b.to && a.text == b.text;
}

std::optional<std::string> nameOf(const QComboBox* box) {
  const QString name = box->currentData().toString();
  return name.isEmpty() ? std::nullopt : std::optional(name.toStdString());
}

}  // namespace

FilterBar::FilterBar(QWidget* parent)
    : QWidget(parent),
      m_lot(new QLineEdit),
      m_lots(new QStringListModel(this)),
      m_board(new QComboBox),
      m_oven(new QComboBox),
      m_verdict(new QComboBox),
      m_from(new DateField(tr("From"))),
      m_to(new DateField(tr("To"))),
      m_text(new QLineEdit),
      m_count(new QLabel),
      m_clear(new QPushButton(tr("C&lear"))),
      m_compare(new QPushButton(tr("Co&mpare"))),
      m_export(new QPushButton(tr("E&xport table…"))),
      m_panelLink(new QToolButton),
      m_row(new FlowRow(this)) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_lot->setPlaceholderText(tr("any", "lot"));
  m_lot->setAccessibleName(tr("Lot"));
  m_lot->setFixedWidth(int(theme.px(kLot_px)));
  m_lot->setClearButtonEnabled(true);
  auto* completer = new QCompleter(m_lots, m_lot);
  completer->setFilterMode(Qt::MatchContains);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  completer->setMaxVisibleItems(12);
  m_lot->setCompleter(completer);
  m_text->setPlaceholderText(tr("serial, log, operator…"));
  m_text->setToolTip(
      tr("Words that stand anywhere in lot, serial number, board, oven, recipe, window, operator, log "
         "or record (Ctrl+F)"));
  m_text->setAccessibleName(tr("Find"));
  m_text->setMinimumWidth(int(theme.px(kText_px)));
  m_text->setClearButtonEnabled(true);
  m_verdict->setAccessibleName(tr("Verdict"));
  m_verdict->addItem(tr("All", "verdicts"), kAll);
  for (const auto verdict : kVerdicts) m_verdict->addItem(widgets::Wording::verdictTitle(verdict), int(verdict));
  m_verdict->addItem(tr("Out of the window"), kOut);
  m_verdict->view()->setMinimumWidth(m_verdict->sizeHint().width());
  m_verdict->setMaximumWidth(int(theme.px(kVerdict_px)));
  for (QComboBox* box : {m_board, m_oven}) box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  m_board->setAccessibleName(tr("Board"));
  m_oven->setAccessibleName(tr("Oven"));
  setNames(m_board, {});
  setNames(m_oven, {});
  m_row->addWidget(labelled(tr("Lot"), m_lot));
  m_row->addWidget(labelled(tr("Board"), m_board));
  m_row->addWidget(labelled(tr("Oven"), m_oven));
  m_row->addWidget(labelled(tr("From"), m_from));
  m_row->addWidget(labelled(tr("to", "a date"), m_to));
  m_row->addWidget(labelled(tr("Verdict"), m_verdict));
  m_row->addWidget(m_text);
  m_row->addWidget(m_count);
  m_row->addWidget(m_clear);
  m_row->addWidget(m_compare);
  m_row->addWidget(m_export);
  m_row->addWidget(m_panelLink);
  m_panelLink->setText(tr("Lot sheet"));
  m_panelLink->setToolTip(tr("The panel at the right (F9)"));
  m_panelLink->setAutoRaise(true);
  m_row->setSplit(8);  // the buttons at the right
  for (QPushButton* button : {m_clear, m_compare, m_export}) button->setAutoDefault(false);
  m_clear->setToolTip(tr("Every run of the archive"));
  m_export->setToolTip(tr("All runs of the list as a CSV file"));
  m_typing.setSingleShot(true);
  m_typing.setInterval(kTyping_ms);
  connect(&m_typing, &QTimer::timeout, this, &FilterBar::take);
  connect(m_text, &QLineEdit::textChanged, &m_typing, qOverload<>(&QTimer::start));
  // A lot is a whole name: it counts once it is one that there is, or when Enter says so.
  connect(m_lot, &QLineEdit::textChanged, this, [this](const QString& text) {
    if (text.isEmpty() || m_lots->stringList().contains(text)) m_typing.start();
  });
  connect(m_lot, &QLineEdit::returnPressed, this, &FilterBar::take);
  connect(completer, qOverload<const QString&>(&QCompleter::activated), this, &FilterBar::take, Qt::QueuedConnection);
  for (QComboBox* box : {m_board, m_oven, m_verdict})
    connect(box, qOverload<int>(&QComboBox::currentIndexChanged), this, &FilterBar::take);
  connect(m_from, &DateField::dateChanged, this, &FilterBar::take);
  connect(m_to, &DateField::dateChanged, this, &FilterBar::take);
  connect(m_clear, &QPushButton::clicked, this, &FilterBar::clear);
  connect(m_export, &QPushButton::clicked, this, &FilterBar::exportWanted);
  connect(m_compare, &QPushButton::clicked, this, &FilterBar::compareWanted);
  connect(m_panelLink, &QToolButton::clicked, this, &FilterBar::panelWanted);
  style();
  take();
}

QWidget* FilterBar::labelled(const QString& label, QWidget* field) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* both = new QWidget;
  auto* layout = new QHBoxLayout(both);
  layout->setContentsMargins(0, 0, int(theme.px(6)), 0);
  layout->setSpacing(int(theme.px(6)));
  auto* text = new QLabel(label);
  text->setFont(theme.font(12));
  text->setForegroundRole(QPalette::PlaceholderText);
  text->setBuddy(field);
  layout->addWidget(text);
  layout->addWidget(field);
  return both;
}

void FilterBar::setNames(QComboBox* box, const std::vector<std::string>& names) {
  const QString chosen = box->currentData().toString();
  const bool quiet = std::exchange(m_quiet, true);
  box->clear();
  box->addItem(box == m_board ? tr("All boards") : tr("All ovens"), QString());
  for (const auto& name : names) box->addItem(QString::fromStdString(name), QString::fromStdString(name));
  if (!chosen.isEmpty() && box->findData(chosen) < 0) box->addItem(chosen, chosen);
  box->setCurrentIndex(std::max(0, box->findData(chosen)));
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  box->setMaximumWidth(int(theme.px(kNames_px)));
  m_quiet = quiet;
  m_row->invalidate();
}

void FilterBar::setBoards(const std::vector<std::string>& boards) { setNames(m_board, boards); }
void FilterBar::setOvens(const std::vector<std::string>& ovens) { setNames(m_oven, ovens); }

void FilterBar::setLots(const std::vector<archive::LotSummary>& lots) {
  QStringList names;
  for (const auto& lot : lots) names << QString::fromStdString(lot.lot);
  m_lots->setStringList(names);
}

void FilterBar::take() {
  if (m_quiet) return;
  m_typing.stop();
  archive::Filter filter;
  if (const QString lot = m_lot->text().trimmed(); !lot.isEmpty()) filter.lot = lot.toStdString();
  filter.board = nameOf(m_board);
  filter.oven = nameOf(m_oven);
  const int verdict = m_verdict->currentData().toInt();
  if (verdict == kOut) filter.verdicts = {judge::Verdict::kConditionalFail, judge::Verdict::kFail};
  if (verdict >= 0) filter.verdicts = {judge::Verdict(verdict)};
  if (m_from->date()) filter.from = startOf(*m_from->date());
  if (m_to->date()) filter.to = startOf(m_to->date()->addDays(1));
  filter.text = m_text->text().trimmed().toStdString();
  m_clear->setEnabled(!same(filter, {}));
  if (same(filter, m_filter)) return;
  m_filter = std::move(filter);
  emit changed();
}

void FilterBar::setFilter(const archive::Filter& filter) {
  m_quiet = true;
  m_lot->setText(QString::fromStdString(filter.lot.value_or("")));
  for (const auto& [box, name] : {std::pair(m_board, filter.board), std::pair(m_oven, filter.oven)}) {
    const QString text = QString::fromStdString(name.value_or(""));
    if (box->findData(text) < 0) box->addItem(text, text);
    box->setCurrentIndex(box->findData(text));
  }
  int verdict = kAll;
  if (filter.verdicts.size() == 1) verdict = int(filter.verdicts.front());
  if (filter.verdicts.size() > 1) verdict = kOut;
  m_verdict->setCurrentIndex(m_verdict->findData(verdict));
  m_from->setDate(dateOf(filter.from, 0));
  m_to->setDate(dateOf(filter.to, -1));
  m_text->setText(QString::fromStdString(filter.text));
  m_quiet = false;
  take();
}

void FilterBar::clear() { setFilter({}); }

void FilterBar::setCount(std::optional<std::size_t> runs, std::optional<std::size_t> lots, const Format& format) {
  QString text;
  if (runs) {
    text = tr("%n run(s)", nullptr, int(*runs)).replace(QString::number(*runs), format.count(*runs));
    if (lots && *lots > 0)
      text = tr("%1 in %2", "46 runs in 31 lots")
                 .arg(text, tr("%n lot(s)", nullptr, int(*lots)).replace(QString::number(*lots), format.count(*lots)));
  }
  m_count->setText(text);
  m_row->invalidate();
}

void FilterBar::setCompareEnabled(bool enabled, const QString& why) {
  m_compare->setEnabled(enabled);
  m_compare->setToolTip(why);
}

void FilterBar::setExportEnabled(bool enabled) { m_export->setEnabled(enabled); }

void FilterBar::focusText() {
  m_text->setFocus(Qt::ShortcutFocusReason);
  m_text->selectAll();
}

void FilterBar::setPanelLinkShown(bool shown) {
  m_panelLink->setVisible(shown);
  m_row->invalidate();
}

void FilterBar::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_row->setContentsMargins(int(theme.px(16)), int(theme.px(6)), int(theme.px(12)), int(theme.px(6)));
  m_row->setSpacing(int(theme.px(6)));
  QPalette link = m_panelLink->palette();
  link.setColor(QPalette::ButtonText, theme.accent);
  m_panelLink->setPalette(link);
  m_count->setContentsMargins(int(theme.px(4)), 0, int(theme.px(8)), 0);
}

void FilterBar::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
