#include "app/desktop/editor/oven_page.h"

#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/editor/cell_table.h"
#include "app/desktop/editor/requirement_fields.h"
#include "app/desktop/editor/typed_delegate.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/field_grid.h"
#include "app/desktop/window/hairline.h"
#include "core/files/profiles.h"
#include "core/oven/oven_file.h"

namespace ovenwright::desktop {
namespace {

constexpr int kFieldsInRow = 4;
constexpr double kLeastTable_px = 130;  // its head and four rows

}  // namespace

OvenPage::OvenPage(Document* document, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_model(new OvenModel(this)),
      m_revision(new QLineEdit),
      m_table(new CellTable),
      m_curves(new QLabel),
      m_problem(new QLabel),
      m_save(new QPushButton(tr("Save as a new revision"))),
      m_saveAs(new QPushButton(tr("Save elsewhere…"))),
      m_done(new QPushButton(tr("Back to the result"))) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_table->setModel(m_model);
  m_table->setItemDelegate(new TypedDelegate(
      {[this](const QModelIndex& cell) {
         return m_model->headerData(cell.column(), Qt::Horizontal, Qt::DisplayRole).toString();
       },
       nullptr,
       [this](const QModelIndex& cell, const QString& text) { showProblem(m_model->problemWith(cell, text)); }},
      this));
  m_table->setAccessibleName(tr("Zones"));
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setEditTriggers(QAbstractItemView::AllEditTriggers);
  m_table->setFrameShape(QFrame::NoFrame);
  m_table->horizontalHeader()->setHighlightSections(false);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  m_table->verticalHeader()->hide();
  m_table->setMinimumHeight(int(theme.px(kLeastTable_px)));
  m_curves->setWordWrap(true);
  m_problem->setWordWrap(true);
  m_problem->setContentsMargins(int(theme.px(16)), int(theme.px(6)), int(theme.px(16)), 0);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addWidget(head());
  layout->addWidget(m_curves);
  layout->addWidget(new Hairline);
  layout->addWidget(m_table, 1);
  layout->addWidget(m_problem);
  layout->addWidget(foot());

  connect(m_model, &OvenModel::problemChanged, this, [this] { showProblem(m_model->problem()); });
  connect(m_model, &OvenModel::edited, this, &OvenPage::handOn);
  connect(document, &Document::setupChanged, this, [this] {
    if (isVisible()) refresh();
  });
  connect(document, &Document::currentChanged, this, [this] {
    if (isVisible()) showCurves();
  });
  connect(m_revision, &QLineEdit::textChanged, this, [this] { showProblem(m_model->problem()); });
  connect(m_save, &QPushButton::clicked, this, [this] { saveTo(QString::fromStdString(path())); });
  connect(m_saveAs, &QPushButton::clicked, this, &OvenPage::saveAs);
  connect(m_done, &QPushButton::clicked, this, &OvenPage::done);
}

QWidget* OvenPage::head() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  auto* widget = new QWidget;
  auto* grid = new FieldGrid(widget, kFieldsInRow);
  grid->setContentsMargins(inset, int(theme.px(10)), inset, int(theme.px(6)));
  grid->setBetween(int(theme.px(10)), int(theme.px(4)));
  const auto add = [&](const QString& title, std::initializer_list<OvenField> fields) {
    auto* both = new QWidget;
    auto* row = new QHBoxLayout(both);
    row->setContentsMargins({});
    row->setSpacing(int(theme.px(6)));
    for (const OvenField field : fields) {
      auto* line = new QLineEdit;
      line->setAccessibleName(OvenModel::title(field));
      if (row->count() > 0) row->addWidget(new QLabel(QStringLiteral("–")));
      row->addWidget(line, 1);
      m_fields[field] = line;
      connect(line, &QLineEdit::textEdited, this, [this, field](const QString& text) { m_model->type(field, text); });
    }
    grid->addField(title, both, m_fields[*fields.begin()]);
  };
  add(tr("&Name"), {OvenField::kName});
  add(tr("&Ambient, °C"), {OvenField::kAmbient});
  add(tr("&Mouth to first zone, mm"), {OvenField::kEntrance});
  add(tr("Last &zone to end, mm"), {OvenField::kExit});
  add(tr("Set&points, °C"), {OvenField::kLeastSetpoint, OvenField::kMostSetpoint});
  add(tr("&Speed, mm/min"), {OvenField::kLeastSpeed, OvenField::kMostSpeed});
  add(tr("S&tep to next zone, °C"), {OvenField::kStep});
  add(tr("Top to &bottom, °C"), {OvenField::kSides});
  return widget;
}

QWidget* OvenPage::foot() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  auto* widget = new QWidget;
  auto* foot = new FlowRow(widget);
  foot->setContentsMargins(inset, int(theme.px(6)), inset, int(theme.px(8)));
  foot->setSpacing(int(theme.px(8)));
  auto* revision = new QLabel(tr("Rev&ision"));
  revision->setBuddy(m_revision);
  m_revision->setAccessibleName(tr("New revision"));
  m_revision->setMaximumWidth(int(theme.px(90)));
  auto* which = new QWidget;
  auto* which_layout = new QHBoxLayout(which);
  which_layout->setContentsMargins({});
  which_layout->addWidget(revision);
  which_layout->addWidget(m_revision);
  foot->addWidget(which);
  for (QPushButton* button : {m_save, m_saveAs, m_done}) {
    button->setAutoDefault(false);
    foot->addWidget(button);
  }
  return widget;
}

QList<QWidget*> OvenPage::parts() const { return {m_fields.at(OvenField::kName), m_table, m_save}; }

void OvenPage::setFormat(const Format& format) {
  m_format = format;
  if (isVisible()) showCurves();
}

void OvenPage::show(const QStringList& doubts) {
  const auto& oven = m_document->setup().oven;
  if (!oven) return;
  m_doubts = doubts;
  m_doubted = m_document->view();
  // What was left half typed stands there still.
  if (!isHeldBack(m_document->currentPointer())) take(*oven);
  m_revision->setText(nextRevision(oven->identity.revision));
  refresh();
}

bool OvenPage::isHeldBack(const Document::LogPointer& log) const {
  const auto& oven = (log ? log->setup : m_document->setup()).oven;
  return !m_model->problem().isEmpty() && m_of.lock() == log && oven && oven::oven_text(*oven) == m_base;
}

void OvenPage::take(const oven::Oven& oven) {
  m_of = m_document->currentPointer();
  m_base = oven::oven_text(oven);
  m_model->setOven(oven);
}

void OvenPage::goOnFrom(const OvenPage& before) {
  m_of = before.m_of;
  m_base = before.m_base;
  if (const auto& oven = m_document->setup().oven) m_model->setOven(*oven);
  m_model->restore(before.m_model->state());
}

void OvenPage::refresh() {
  const auto& oven = m_document->setup().oven;
  if (!oven) {
    emit done();
    return;
  }
  // Another log, an undo, or another choice of the oven: what is typed here itself is the same already.
  const std::string now = oven::oven_text(*oven);
  const bool is_draft = m_model->problem().isEmpty() && now == oven::oven_text(m_model->draft());
  if (m_of.lock() != m_document->currentPointer() || (now != m_base && !is_draft)) {
    take(*oven);
    m_revision->setText(nextRevision(oven->identity.revision));
  }
  m_base = now;
  for (const auto& [field, line] : m_fields)
    if (!line->hasFocus() || !m_model->says(field, line->text())) line->setText(m_model->text(field));
  showCurves();
  showProblem(m_model->problem());
}

void OvenPage::showCurves() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  m_curves->setContentsMargins(inset, 0, inset, int(theme.px(8)));
  QPalette secondary = m_curves->palette();
  secondary.setColor(QPalette::WindowText, theme.secondary);
  m_curves->setPalette(secondary);
  QStringList said, times;
  const auto view = m_document->view();
  if (view && view->hasZones() && view->oven()->zones.size() == m_model->draft().zones.size()) {
    for (std::size_t zone = 0; zone < view->oven()->zones.size(); ++zone) {
      const auto [from_s, to_s] = view->zoneSpan_s(zone, view->x_mm(std::nullopt));
      times << m_format.seconds(from_s - view->origin_s()) + QStringLiteral(" – ") +
                   m_format.seconds(to_s - view->origin_s());
    }
  }
  m_model->setTimes(times);
  if (view) {
    std::vector<double> first_C;
    for (const auto& channel : view->run().channels)
      if (channel.trace) first_C.push_back(channel.trace->temperature_C().front());
    const auto quantity = Format::Quantity::kTemperature;
    if (const auto [low, high] = std::ranges::minmax_element(first_C); low != first_C.end()) {
      const QString from = m_format.temperature(*low), to = m_format.temperature(*high);
      said << (from == to ? tr("The curves begin at %1 %2.").arg(from, m_format.unit(quantity))
                          : tr("The curves begin at %1 to %2 %3.").arg(from, to, m_format.unit(quantity)));
    }
    if (!view->entry()) {
      said << tr("They do not show when the board entered.");
    } else if (view->entry()->found_from == oven::Entry::Source::kLog) {
      said << tr("With these lengths they put the oven entry at %1 ± %2 s on the log’s clock.")
                  .arg(m_format.seconds(view->entry()->at_s), m_format.number(view->entry()->uncertainty_s, 1));
    } else {
      said << tr("The oven entry was given: %1 s on the log’s clock.").arg(m_format.seconds(view->entry()->at_s));
    }
  }
  if (view != m_doubted.lock()) m_doubts.clear();  // they were about another result
  m_curves->setText(paragraph(said + m_doubts));
  m_curves->setVisible(!m_curves->text().isEmpty());
}

void OvenPage::showProblem(const QString& problem) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const QString revision = m_revision->text().trimmed();
  const auto& had = m_model->draft().identity.revision;
  QString shown = problem;
  if (shown.isEmpty() && revision.isEmpty()) shown = tr("A new revision needs a name.");
  if (shown.isEmpty() && had && revision == QString::fromStdString(*had))
    shown = tr("The oven is at revision %1 already.").arg(revision);
  m_problem->setText(shown.isEmpty() ? tr("Every rule for ovens is met.") : shown);
  QPalette palette = m_problem->palette();
  palette.setColor(QPalette::WindowText, shown.isEmpty() ? theme.secondary : theme.signal);
  m_problem->setPalette(palette);
  m_save->setEnabled(shown.isEmpty());
  m_saveAs->setEnabled(shown.isEmpty());
}

void OvenPage::handOn(const QString& what, int mergeKey) {
  check::Request setup = m_document->setup();
  if (!setup.oven) return;
  setup.oven = m_model->draft();
  setup.oven->identity.sha256.clear();  // no file says this
  m_document->edit(tr("Oven, %1").arg(what), std::move(setup), Document::Rework::kJudge, mergeKey);
}

std::string OvenPage::path() const {
  return files::revision_path(files::Kind::kOven, m_model->draft().identity,
                              m_revision->text().trimmed().toStdString());
}

void OvenPage::saveAs() {
  QDir().mkpath(QString::fromStdString(files::user_folder(files::Kind::kOven)));
  QString path = QFileDialog::getSaveFileName(this, tr("Save the oven"), QString::fromStdString(this->path()),
                                              tr("TOML files (*.toml)"), nullptr, QFileDialog::DontConfirmOverwrite);
  if (path.isEmpty()) return;
  if (!path.endsWith(QStringLiteral(".toml"))) path += QStringLiteral(".toml");
  saveTo(path);
}

void OvenPage::saveTo(const QString& path) {
  auto saved = oven::save_oven(m_model->draft(), m_revision->text().trimmed().toStdString(), path.toStdString());
  if (!saved) {
    emit troubled(tr("The oven was not saved."), saved.error());
    return;
  }
  const QString revision = QString::fromStdString(saved->identity.revision.value_or(""));
  emit noted(tr("Saved as revision %1: %2").arg(revision, path));
  check::Request setup = m_document->setup();
  setup.oven = *saved;
  take(*saved);
  m_document->edit(tr("Save the oven’s revision %1").arg(revision), std::move(setup));
  m_revision->setText(nextRevision(saved->identity.revision));
}

void OvenPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && isVisible()) refresh();
}

}  // namespace ovenwright::desktop
