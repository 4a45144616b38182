#include "app/desktop/import/reading_panel.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/desktop/document/layout_memory.h"
#include "app/desktop/import/layout_edit.h"
#include "app/desktop/import/reading_choices.h"
#include "app/desktop/import/reading_row.h"
#include "app/desktop/text/said.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/notice.h"
#include "core/log/layout_file.h"

namespace ovenwright::desktop {
namespace {

constexpr int kEntryMergeKey = 1;
const QString kEntry = QStringLiteral("entry");
const QString kTable = QStringLiteral("table");

/// The row that an assumption is about; the layout's key.
QString rowOf(const log::Assumption& assumption) {
  const QString key = QString::fromStdString(assumption.about).replace(u' ', u'_');
  return key == u"header" ? QStringLiteral("header_line") : key;
}

/// Cells of each line of the table that is shown; 0 where they differ or none is.
int cellsOfEveryRow(const log::Reading& reading) {
  std::size_t cells = 0;
  for (const auto& line : reading.shown) {
    if (int(line.line) <= reading.layout.header_line.value_or(0)) continue;
    if (cells > 0 && line.cells.size() != cells) return 0;
    cells = line.cells.size();
  }
  return int(cells);
}

}  // namespace

ReadingPanel::ReadingPanel(Document* document, LayoutMemory* memory, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_memory(memory),
      m_heading(new QLabel(tr("How the log was read"))),
      m_changed(new QLabel),
      m_cells(new QLabel),
      m_entry(new QDoubleSpinBox),
      m_remember(new QCheckBox(tr("Read logs laid out like this the same way"))),
      m_name(new QLineEdit),
      m_use(new QPushButton(tr("Use this reading"))),
      m_back(new QPushButton(tr("Back to what was found"))),
      m_export(new QPushButton(tr("Export the layout…"))) {
  setAccessibleName(tr("How the log was read"));
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  auto* head = new QHBoxLayout;
  head->setContentsMargins(inset, int(theme.px(7)), inset, int(theme.px(7)));
  m_heading->setFont(theme.font(13, true));
  m_changed->setFont(theme.font(12));
  m_changed->setWordWrap(true);
  m_changed->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  head->addWidget(m_heading);
  head->addWidget(m_changed, 1);

  auto* body = new QWidget;
  m_rowsLayout = new QVBoxLayout(body);
  m_rowsLayout->setContentsMargins({});
  m_rowsLayout->setSpacing(0);
  addRow(kTable, tr("Table"));
  addRow(QStringLiteral("encoding"), tr("Encoding"));
  addRow(QStringLiteral("delimiter"), tr("Separator"));
  addRow(QStringLiteral("decimal"), tr("Decimal sign"));
  addRow(QStringLiteral("header_line"), tr("Header"));
  addRow(QStringLiteral("time"), tr("Time"));
  addRow(QStringLiteral("date_order"), tr("Order of the date"));
  addRow(QStringLiteral("unit"), tr("Unit"));
  addRow(QStringLiteral("scale"), tr("Scale"));
  addRow(QStringLiteral("thermocouple_type"), tr("Thermocouple"));
  addRow(QStringLiteral("cold_junction"), tr("Cold junction"));
  ReadingRow* entry = addRow(kEntry, tr("Oven entry"));
  m_entry->setRange(-1e6, 1e6);
  m_entry->setDecimals(1);
  m_entry->setSuffix(tr(" s"));
  m_entry->setKeyboardTracking(false);
  m_entry->setAccessibleName(tr("Oven entry, seconds on the log’s clock"));
  connect(m_entry, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    if (!m_filling) setEntry(value, true);
  });
  entry->addField(m_entry);
  m_cells->setWordWrap(true);
  m_cells->setContentsMargins(inset, int(theme.px(10)), inset, int(theme.px(10)));
  m_rowsLayout->addWidget(m_cells);
  m_rowsLayout->addStretch(1);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setAccessibleName(tr("What was found and assumed"));
  scroll->setWidget(body);

  auto* foot = new QVBoxLayout;
  foot->setContentsMargins(inset, inset, inset, inset);
  foot->setSpacing(int(theme.px(8)));
  auto* name_row = new QHBoxLayout;
  auto* name_label = new QLabel(tr("Layout &name"));
  name_label->setBuddy(m_name);
  m_name->setAccessibleName(tr("Layout name"));
  name_row->addWidget(name_label);
  name_row->addWidget(m_name, 1);
  auto* buttons = new QHBoxLayout;
  for (QPushButton* button : {m_use, m_back}) {
    button->setAutoDefault(false);
    buttons->addWidget(button);
  }
  buttons->addStretch(1);
  m_export->setAutoDefault(false);
  foot->addWidget(m_remember);
  foot->addLayout(name_row);
  foot->addLayout(buttons);
  foot->addWidget(m_export, 0, Qt::AlignLeft);
  connect(m_use, &QPushButton::clicked, this, &ReadingPanel::useReading);
  connect(m_back, &QPushButton::clicked, this, &ReadingPanel::backToFound);
  connect(m_export, &QPushButton::clicked, this, &ReadingPanel::exportLayout);

  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addLayout(head);
  layout->addWidget(scroll, 1);
  layout->addLayout(foot);
}

ReadingRow* ReadingPanel::addRow(const QString& about, const QString& title) {
  auto* row = new ReadingRow(about, title);
  m_rowsLayout->addWidget(row);
  connect(row, &ReadingRow::chosen, this, [this, about](const QString& value) { choose(about, value); });
  m_rows.push_back(row);
  return row;
}

ReadingRow* ReadingPanel::row(const QString& about) const {
  const auto found = std::ranges::find(m_rows, about, &ReadingRow::about);
  return found == m_rows.end() ? nullptr : *found;
}

void ReadingPanel::fill(const QString& about, const Choices& choices, const QString& now, const QString& remark) {
  row(about)->fill(choices, now, remark);
}

void ReadingPanel::refresh(const widgets::Theme& theme, const Format& format) {
  const auto view = m_document->view();
  if (!view) return;
  m_failed.reset();
  setFailing(false);
  m_filling = true;
  const auto& reading = view->reading();
  const auto& layout = reading.layout;
  const auto text = [](const std::optional<std::string>& value) { return QString::fromStdString(value.value_or("")); };
  const int header = layout.header_line.value_or(0);
  const QString before =
      header > 1 ? tr("The %n line(s) before it are kept as notes.", nullptr, header - 1) : QString();
  m_tables = reading.read_as.tables;
  fill(kTable, tableChoices(m_tables, format.locale()), tableValue(m_tables),
       tr("%n other(s) in the file may be a log as well.", nullptr, std::max(0, int(m_tables.size()) - 1)));
  fill(QStringLiteral("encoding"), encodingChoices(), text(layout.encoding),
       layout.encoding == "UTF-8" ? tr("No byte contradicts it.") : QString());
  const int in_each_row = cellsOfEveryRow(reading);
  fill(QStringLiteral("delimiter"), delimiterChoices(), text(layout.delimiter),
       in_each_row > 0 ? tr("Every row that is shown has %n cell(s).", nullptr, in_each_row) : QString());
  fill(QStringLiteral("decimal"), decimalChoices(), text(layout.decimal), {});
  fill(QStringLiteral("header_line"), headerChoices(reading), headerValue(layout), before);
  fill(QStringLiteral("time"), timeChoices(reading), timeValue(layout),
       tr("%1 s a row.").arg(format.locale().toString(view->run().sample_interval_s, 'g', 4)));
  fill(QStringLiteral("date_order"), dateOrderChoices(), text(layout.date_order), {});
  fill(QStringLiteral("unit"), unitChoices(), text(layout.unit), {});
  fill(QStringLiteral("scale"), scaleChoices(), scaleValue(layout), {});
  Choices types = thermocoupleChoices();
  if (!layout.thermocouple_type) types.insert(types.begin(), {QString(), tr("Not stated")});
  fill(QStringLiteral("thermocouple_type"), types, text(layout.thermocouple_type), {});
  const QString junction = layout.cold_junction_C ? QString::number(*layout.cold_junction_C) : QString();
  fill(QStringLiteral("cold_junction"), coldJunctionChoices(format, layout), junction, {});
  const bool given = m_document->setup().entry_s.has_value();
  QString entry_remark = tr("Not found. Without an oven, times stay on the log’s own clock.");
  if (view->oven()) entry_remark = tr("Not found in this log: it can be given.");
  if (view->entry()) {
    entry_remark = given ? tr("Given. The plot and the zone strip count from it.")
                         : tr("Found from the curves, ± %1 s. The plot and the zone strip count from it.")
                               .arg(format.number(view->entry()->uncertainty_s, 1));
  }
  fill(kEntry, {{QStringLiteral("found"), tr("Found from the log")}, {QStringLiteral("given"), tr("Given")}},
       given ? QStringLiteral("given") : QStringLiteral("found"), entry_remark);
  m_entry->setEnabled(view->oven().has_value());
  m_entry->setValue(view->entry() ? view->entry()->at_s : m_document->setup().entry_s.value_or(0));

  const auto& assumptions = reading.read_as.assumed;
  // What most logs have nothing to do with is shown where it counts.
  const bool turned = std::ranges::any_of(layout.channels, &log::Layout::ChannelColumn::reversed);
  const bool volts = std::ranges::any_of(layout.channels, [&](const log::Layout::ChannelColumn& channel) {
    return channel.unit.value_or(layout.unit.value_or("")) == "mV";
  });
  for (ReadingRow* row : m_rows) {
    const auto assumed = std::ranges::find(assumptions, row->about(), rowOf);
    const bool is_assumed = assumed != assumptions.end();
    row->setAssumed(is_assumed ? std::optional(inWords(assumed->text, format.locale())) : std::nullopt, theme);
    if (row->about() == kTable) row->setVisible(m_tables.size() > 1);
    if (row->about() == u"date_order")
      row->setVisible(layout.date_order.has_value() && layout.time.kind && *layout.time.kind == "date and time");
    // The cells of a workbook or a page have no separator.
    if (row->about() == u"delimiter") row->setVisible(is_assumed || !layout.delimiter.value_or("").empty());
    if (row->about() == u"scale") row->setVisible(is_assumed || layout.scale.value_or(1) != 1);
    if (row->about() == u"thermocouple_type" || row->about() == u"cold_junction")
      row->setVisible(is_assumed || volts || turned);
  }
  QStringList cells;
  for (const auto& channel : reading.channels) {
    const auto none = std::ranges::count_if(channel.temperature_C, [](double t) { return !std::isfinite(t); });
    if (none > 0)
      cells << tr("%1: %n cell(s) without a reading", nullptr, int(none)).arg(QString::fromStdString(channel.name));
  }
  for (const auto& assumption : assumptions)
    if (!row(rowOf(assumption))) cells << tr("Assumed: %1").arg(inWords(assumption.text, format.locale()));
  for (const auto& note : reading.read_as.notes) cells << sentenceCase(inWords(note, format.locale()));
  m_cells->setText(cells.join(u'\n'));
  m_cells->setVisible(!cells.isEmpty());
  Appearance::ink(m_cells, theme.secondary);
  const bool changed = m_document->setup().log.layout.has_value();
  m_changed->setText(changed ? tr("changed by you") : QString());
  Appearance::ink(m_changed, theme.secondary);
  m_back->setEnabled(changed || given);
  const QString kept = m_memory->nameFor(reading);
  m_remember->setChecked(!kept.isEmpty() || (m_remember->isChecked() && changed));
  if (m_name->text().isEmpty() && !kept.isEmpty()) m_name->setText(QFileInfo(kept).completeBaseName());
  Appearance::fillWithAccent(m_use, theme);
  m_filling = false;
}

void ReadingPanel::setFailing(bool failing) {
  for (QWidget* widget : std::initializer_list<QWidget*>{m_remember, m_name, m_use, m_back, m_export})
    widget->setEnabled(!failing);
  row(kEntry)->setVisible(!failing);
}

void ReadingPanel::refreshFailure(const Document::Failure& failure, const widgets::Theme& theme) {
  m_filling = true;
  m_failed = failure.log;
  const log::Layout fixed = failure.log->setup.log.layout.value_or(log::Layout{});
  const auto text = [](const std::optional<std::string>& value) { return QString::fromStdString(value.value_or("")); };
  const auto choices = [](Choices from) {
    from.insert(from.begin(), {QString(), tr("Found from the content")});
    return from;
  };
  log::Reading blank;  // without lines to choose from: the first twelve, and the first column for the time
  constexpr std::size_t kLines = 12;
  for (std::size_t line = 1; line <= kLines; ++line) blank.shown.push_back({line, {}});
  blank.layout.time.columns = {1};
  m_tables = failure.tables;
  fill(kTable, tableChoices(m_tables, QLocale()), tableValue(m_tables), {});
  fill(QStringLiteral("encoding"), choices(encodingChoices()), text(fixed.encoding), {});
  fill(QStringLiteral("delimiter"), choices(delimiterChoices()), text(fixed.delimiter), {});
  fill(QStringLiteral("decimal"), choices(decimalChoices()), text(fixed.decimal), {});
  fill(QStringLiteral("header_line"), choices(headerChoices(blank)), fixed.header_line ? headerValue(fixed) : QString(),
       {});
  fill(QStringLiteral("time"), choices(timeChoices(blank)), fixed.time.kind ? timeValue(fixed) : QString(), {});
  fill(QStringLiteral("date_order"), choices(dateOrderChoices()), text(fixed.date_order), {});
  fill(QStringLiteral("unit"), choices(unitChoices()), text(fixed.unit), {});
  for (ReadingRow* row : m_rows) {
    row->setAssumed(std::nullopt, theme);
    const bool needs_a_reading =
        row->about() == u"scale" || row->about() == u"thermocouple_type" || row->about() == u"cold_junction";
    row->setVisible(!needs_a_reading && (row->about() != kTable || m_tables.size() > 1));
  }
  setFailing(true);
  m_changed->setText(tr("not read yet"));
  m_cells->hide();
  m_filling = false;
}

void ReadingPanel::choose(const QString& about, const QString& value) {
  if (m_filling) return;
  const auto apply = [&](log::Layout& layout) {
    const auto number = std::size_t(value.toInt());
    if (about != kTable) return applyChoice(layout, about, value);
    if (number >= 1 && number <= m_tables.size()) applyTable(layout, m_tables[number - 1]);
  };
  if (m_failed) {
    check::Request setup = m_failed->setup;
    if (!setup.log.layout) setup.log.layout.emplace();
    apply(*setup.log.layout);
    m_document->open(m_failed->source, std::move(setup));
    return;
  }
  if (about == kEntry) {
    setEntry(value == u"given" ? std::optional(m_entry->value()) : std::nullopt, false);
    return;
  }
  editLayout(m_document, tr("%1: %2").arg(row(about)->title(), row(about)->chosenText()), apply);
}

void ReadingPanel::setEntry(std::optional<double> entry_s, bool typed) {
  if (m_document->setup().entry_s == entry_s) return;
  check::Request setup = m_document->setup();
  setup.entry_s = entry_s;
  m_document->edit(tr("Oven entry"), std::move(setup), Document::Rework::kJudge, typed ? kEntryMergeKey : -1);
}

log::Layout ReadingPanel::namedLayout() const {
  log::Layout layout = m_document->view()->reading().layout;
  const QString name = m_name->text().trimmed();
  if (!name.isEmpty()) layout.name = name.toStdString();
  return layout;
}

void ReadingPanel::useReading() {
  const auto view = m_document->view();
  if (!view) return;
  if (m_remember->isChecked()) {
    if (m_name->text().trimmed().isEmpty())
      m_name->setText(QFileInfo(m_document->current()->source.name).completeBaseName());
    if (const auto kept = m_memory->keep(view->reading(), namedLayout()); !kept) {
      emit troubled(tr("The layout was not kept."), kept.error());
      return;
    }
    m_document->setRememberedLayouts(m_memory->snapshot());
    emit noted(tr("Logs of this shape are read by the layout %1.").arg(m_name->text().trimmed()));
  } else if (!m_memory->nameFor(view->reading()).isEmpty()) {
    m_memory->forget(view->reading());
    m_document->setRememberedLayouts(m_memory->snapshot());
  }
  emit done();
}

void ReadingPanel::backToFound() {
  check::Request setup = m_document->setup();
  setup.log.layout.reset();
  setup.entry_s.reset();
  setup.keep_spikes.clear();
  m_document->edit(tr("Back to what was found"), std::move(setup), Document::Rework::kRead);
}

void ReadingPanel::exportLayout() {
  if (!m_document->view()) return;
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Export the layout"), m_name->text() + QStringLiteral(".toml"), tr("TOML files (*.toml)"));
  if (path.isEmpty()) return;
  log::Layout layout = namedLayout();
  // The name of a file in an archive is that of one log, unless it was chosen.
  const auto& chosen = m_document->setup().log.layout;
  if (!chosen || !chosen->member) layout.member.reset();
  if (const auto saved = log::save_layout(layout, path.toStdString()); !saved) {
    emit troubled(tr("The layout was not exported."), saved.error());
    return;
  }
  emit noted(tr("The layout is in %1.").arg(path));
}

void ReadingPanel::focusEntry() { focusAbout(kEntry); }

void ReadingPanel::focusAbout(const QString& about) {
  if (ReadingRow* wanted = row(about)) wanted->setFocus(Qt::OtherFocusReason);
}

}  // namespace ovenwright::desktop
