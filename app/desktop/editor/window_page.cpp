#include "app/desktop/editor/window_page.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QUndoStack>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/editor/cell_table.h"
#include "app/desktop/editor/typed_delegate.h"
#include "app/desktop/editor/typed_number.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/field_grid.h"
#include "app/desktop/window/profile_menus.h"
#include "core/window/window_file.h"

namespace ovenwright::desktop {
namespace {

constexpr double kLeastTable_px = 130;  // its head and four rows

/// A change from or to a window that breaks a rule: the document has none of these, so the page keeps them.
class DraftStep : public QUndoCommand {
 public:
  DraftStep(std::shared_ptr<QPointer<WindowPage>> page, const Document::LogPointer& log, std::size_t window,
            WindowModel::State before, WindowModel::State after, const QString& what, int merge_key)
      : QUndoCommand(what),
        m_page(std::move(page)),
        m_log(log),
        m_isOfLog(log != nullptr),
        m_window(window),
        m_before(std::move(before)),
        m_after(std::move(after)),
        m_mergeKey(merge_key) {}

  void undo() override { restore(m_before); }
  void redo() override {
    if (std::exchange(m_typed, false)) return;  // it stands there already
    restore(m_after);
  }
  int id() const override { return m_mergeKey < 0 ? -1 : kFirstId + m_mergeKey; }
  bool mergeWith(const QUndoCommand* other) override {
    const auto* next = static_cast<const DraftStep*>(other);  // same id, so same class
    if (next->m_page != m_page || next->m_window != m_window || next->m_log.lock() != m_log.lock()) return false;
    m_after = next->m_after;
    return true;
  }

 private:
  void restore(const WindowModel::State& state) {
    const auto log = m_log.lock();
    if (!*m_page || m_isOfLog != bool(log) || !(*m_page)->restore(log, m_window, state)) setObsolete(true);
  }

  static constexpr int kFirstId = 1000;          // beside the ids of the document's commands
  std::shared_ptr<QPointer<WindowPage>> m_page;  // in the language of the day
  std::weak_ptr<OpenLog> m_log;                  // whose window it is
  bool m_isOfLog;                                // false: of the setup with no log open
  std::size_t m_window;
  WindowModel::State m_before, m_after;
  int m_mergeKey;
  bool m_typed = true;
};

}  // namespace

WindowPage::WindowPage(Document* document, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_model(new WindowModel(this)),
      m_self(std::make_shared<QPointer<WindowPage>>(this)),
      m_which(new QComboBox),
      m_rule(new QComboBox),
      m_classification(new QComboBox),
      m_name(new QLineEdit),
      m_alloy(new QLineEdit),
      m_liquidus(new QLineEdit),
      m_solidus(new QLineEdit),
      m_thermocouple(new QLineEdit),
      m_instrument(new QLineEdit),
      m_revision(new QLineEdit),
      m_table(new CellTable),
      m_problem(new QLabel),
      m_add(new QPushButton(tr("Add a requirement"))),
      m_remove(new QPushButton(tr("Remove this requirement"))),
      m_save(new QPushButton(tr("Save as a new revision"))),
      m_done(new QPushButton(tr("Back to the result"))) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  m_table->setModel(m_model);
  m_table->setItemDelegate(new TypedDelegate(
      {[](const QModelIndex& cell) { return fieldTitle(RequirementField(cell.column())); },
       [](const QModelIndex& cell) { return fieldChoices(RequirementField(cell.column())); },
       [this](const QModelIndex& cell, const QString& text) { showProblem(m_model->problemWith(cell, text)); }},
      this));
  m_table->setAccessibleName(tr("Requirements"));
  m_table->setSelectionBehavior(QAbstractItemView::SelectItems);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setEditTriggers(QAbstractItemView::AllEditTriggers);
  m_table->setFrameShape(QFrame::NoFrame);
  m_table->horizontalHeader()->setStretchLastSection(true);
  m_table->horizontalHeader()->setHighlightSections(false);
  m_table->verticalHeader()->hide();
  m_table->setMinimumHeight(int(theme.px(kLeastTable_px)));
  m_problem->setWordWrap(true);
  m_revision->setAccessibleName(tr("New revision"));
  m_revision->setMaximumWidth(int(theme.px(90)));

  m_problem->setContentsMargins(inset, int(theme.px(6)), inset, 0);
  auto* buttons = new QWidget;
  auto* foot = new FlowRow(buttons);
  foot->setContentsMargins(inset, int(theme.px(6)), inset, int(theme.px(8)));
  foot->setSpacing(int(theme.px(8)));
  foot->setSplit(2);  // what ends the editing stands at the right
  for (QPushButton* button : {m_add, m_remove}) foot->addWidget(button);
  auto* revision = new QLabel(tr("Re&vision"));
  revision->setBuddy(m_revision);
  auto* which = new QWidget;
  auto* which_layout = new QHBoxLayout(which);
  which_layout->setContentsMargins({});
  which_layout->addWidget(revision);
  which_layout->addWidget(m_revision);
  for (QWidget* part : std::initializer_list<QWidget*>{which, m_save, m_done}) foot->addWidget(part);
  for (QPushButton* button : {m_add, m_remove, m_save, m_done}) button->setAutoDefault(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addWidget(head());
  layout->addWidget(m_table, 1);
  layout->addWidget(m_problem);
  layout->addWidget(buttons);

  connect(m_model, &WindowModel::problemChanged, this, [this] { showProblem(m_model->problem()); });
  connect(m_model, &WindowModel::edited, this, &WindowPage::handOn);
  connect(document, &Document::setupChanged, this, [this] {
    if (isVisible()) refresh();
  });
  connect(m_which, &QComboBox::activated, this, [this](int index) { show(std::size_t(index)); });
  connect(m_add, &QPushButton::clicked, this, [this] {
    m_model->addRequirement();
    m_table->setCurrentIndex(m_model->index(m_model->rowCount() - 1, int(RequirementField::kLower)));
    m_table->setFocus();
  });
  connect(m_remove, &QPushButton::clicked, this, [this] { m_model->removeRequirement(m_table->currentIndex().row()); });
  connect(m_save, &QPushButton::clicked, this, &WindowPage::save);
  connect(m_done, &QPushButton::clicked, this, &WindowPage::done);
}

QWidget* WindowPage::head() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* widget = new QWidget;
  constexpr int kFieldsInRow = 5;
  auto* grid = new FieldGrid(widget, kFieldsInRow);
  const int inset = int(theme.px(16));
  grid->setContentsMargins(inset, int(theme.px(10)), inset, int(theme.px(10)));
  grid->setBetween(int(theme.px(10)), int(theme.px(4)));
  m_rule->addItems({tr("simple"), tr("guarded, w = U")});
  m_classification->addItems({tr("none"), QStringLiteral("Pb-free"), QStringLiteral("SnPb")});
  const auto add = [&](const QString& title, QWidget* field) {
    QString name = title;
    field->setAccessibleName(name.remove(u'&'));
    grid->addField(title, field);
  };
  add(tr("Window being edited"), m_which);
  add(tr("&Name"), m_name);
  add(tr("&Alloy"), m_alloy);
  add(tr("&Liquidus, °C"), m_liquidus);
  add(tr("&Solidus, °C"), m_solidus);
  add(tr("&Decision rule"), m_rule);
  add(tr("&Classification for Tc"), m_classification);
  add(tr("&Thermocouple"), m_thermocouple);
  add(tr("&Instrument, ± °C"), m_instrument);
  enum MergeKey { kName = 10, kAlloy, kLiquidus, kSolidus, kThermocouple, kInstrument };
  const auto line = [this](QLineEdit* field, const QString& what, int key,
                           std::function<void(window::ProcessWindow&, const QString&)> set) {
    connect(field, &QLineEdit::textEdited, this, [this, what, key, set](const QString& text) {
      m_model->change(
          what, [&](window::ProcessWindow& window) { set(window, text); }, key);
    });
  };
  line(m_name, tr("Name of the window"), kName,
       [](auto& window, const QString& text) { window.identity.name = text.toStdString(); });
  line(m_alloy, tr("Alloy"), kAlloy, [](auto& window, const QString& text) {
    window.alloy = text.isEmpty() ? std::nullopt : std::optional(text.toStdString());
  });
  const auto number = [this](QLineEdit* field, WindowNumber of, int key) {
    connect(field, &QLineEdit::textEdited, this,
            [this, of, key](const QString& text) { m_model->type(of, text, key); });
  };
  number(m_liquidus, WindowNumber::kLiquidus, kLiquidus);
  number(m_solidus, WindowNumber::kSolidus, kSolidus);
  number(m_instrument, WindowNumber::kInstrument, kInstrument);
  line(m_thermocouple, tr("Thermocouple"), kThermocouple, [](auto& window, const QString& text) {
    window.uncertainty.thermocouple = text.toStdString();
    window.uncertainty.tolerance_C.reset();
    window.uncertainty.defaulted = false;
  });
  connect(m_rule, &QComboBox::activated, this, [this](int index) {
    m_model->change(tr("Decision rule"), [index](window::ProcessWindow& window) {
      window.decision_rule = index == 1 ? window::DecisionRule::kGuarded : window::DecisionRule::kSimple;
    });
  });
  connect(m_classification, &QComboBox::activated, this, [this](int index) {
    m_model->change(tr("Classification for Tc"), [index](window::ProcessWindow& window) {
      window.classification.reset();
      if (index == 1) window.classification = window::Classification::kLeadFree;
      if (index == 2) window.classification = window::Classification::kTinLead;
    });
  });
  return widget;
}

QList<QWidget*> WindowPage::parts() const { return {m_name, m_table, m_save}; }

void WindowPage::show(std::size_t window, int requirement) {
  const auto& windows = m_document->setup().windows;
  if (window >= windows.size()) return;
  // What was left half typed stands there still.
  const bool goes_on = isHeldBack(m_document->currentPointer(), window);
  m_index = window;
  if (!goes_on) take(windows[m_index]);
  refresh();
  m_table->resizeColumnsToContents();
  if (requirement < 0) return;
  m_table->setCurrentIndex(m_model->index(requirement, int(RequirementField::kLower)));
  m_table->setFocus();
}

bool WindowPage::isHeldBack(const Document::LogPointer& log, std::size_t window) const {
  const auto& windows = (log ? log->setup : m_document->setup()).windows;
  return !m_model->problem().isEmpty() && m_of.lock() == log && window == m_index && window < windows.size() &&
         window::window_text(windows[window]) == m_base;
}

void WindowPage::take(const window::ProcessWindow& window) {
  m_of = m_document->currentPointer();
  m_base = window::window_text(window);
  m_model->setWindow(window);
}

bool WindowPage::restore(const Document::LogPointer& log, std::size_t window, const WindowModel::State& state) {
  const auto& logs = m_document->logs();
  const bool is_open = log ? std::ranges::find(logs, log) != logs.end() : !m_document->current();
  if (!is_open || window >= (log ? log->setup : m_document->setup()).windows.size()) return false;
  if (log) m_document->setCurrent(log, log->run);
  const auto& windows = m_document->setup().windows;
  m_of = log;
  m_index = window;
  m_base = window::window_text(windows[window]);
  m_model->restore(state);
  refresh();
  emit restored();
  return true;
}

void WindowPage::goOnFrom(const WindowPage& before) {
  m_self = before.m_self;
  *m_self = this;
  m_of = before.m_of;
  m_index = before.m_index;
  m_base = before.m_base;
  m_model->restore(before.m_model->state());
}

void WindowPage::refresh() {
  const auto& windows = m_document->setup().windows;
  if (windows.empty()) {
    emit done();
    return;
  }
  m_index = std::min(m_index, windows.size() - 1);
  // Another log, an undo, or another choice of the window: what is typed here itself is the same already.
  const std::string now = window::window_text(windows[m_index]);
  const bool is_draft = now == window::window_text(m_model->draft());
  if (m_of.lock() != m_document->currentPointer() || (now != m_base && !is_draft)) take(windows[m_index]);
  m_base = now;
  const auto& draft = m_model->draft();
  m_which->clear();
  for (const auto& window : windows) m_which->addItem(titleOf(window.identity));
  m_which->setCurrentIndex(int(m_index));
  // What is typed stands as it is typed where it means what the draft says.
  const auto put = [](QLineEdit* field, const QString& text) {
    if (!field->hasFocus() || field->text() != text) field->setText(text);
  };
  const auto putNumber = [this, put](QLineEdit* field, WindowNumber number) {
    const QString text = m_model->text(number);
    const TypedNumber has = numberOf(field->text()), wants = numberOf(text);
    const bool same = has.isSound && wants.isSound && has.value == wants.value;
    if (!field->hasFocus() || !same) put(field, text);
  };
  put(m_name, QString::fromStdString(draft.identity.name));
  put(m_alloy, QString::fromStdString(draft.alloy.value_or("")));
  putNumber(m_liquidus, WindowNumber::kLiquidus);
  putNumber(m_solidus, WindowNumber::kSolidus);
  putNumber(m_instrument, WindowNumber::kInstrument);
  put(m_thermocouple, draft.uncertainty.tolerance_C ? tr("±%1 °C").arg(textOf(draft.uncertainty.tolerance_C))
                                                    : QString::fromStdString(draft.uncertainty.thermocouple));
  m_rule->setCurrentIndex(draft.decision_rule == window::DecisionRule::kGuarded ? 1 : 0);
  m_classification->setCurrentIndex(!draft.classification                                        ? 0
                                    : *draft.classification == window::Classification::kLeadFree ? 1
                                                                                                 : 2);
  if (m_revision->text().isEmpty()) m_revision->setText(nextRevision(draft.identity.revision));
  showProblem(m_model->problem());
}

void WindowPage::showProblem(const QString& problem) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_problem->setText(problem.isEmpty() ? tr("Every rule for windows is met.") : problem);
  QPalette palette = m_problem->palette();
  palette.setColor(QPalette::WindowText, problem.isEmpty() ? theme.secondary : theme.signal);
  m_problem->setPalette(palette);
  m_save->setEnabled(problem.isEmpty());
}

void WindowPage::handOn(const QString& what, int mergeKey) {
  check::Request setup = m_document->setup();
  if (m_index >= setup.windows.size()) return;
  const bool sound = m_model->problem().isEmpty(), was_sound = windowProblem(m_model->before()).isEmpty();
  auto* steps = m_document->undoStack();
  const bool both = sound && !was_sound;  // one step, back to what was typed before
  if (both) steps->beginMacro(what);
  if (!sound || !was_sound)
    steps->push(new DraftStep(m_self, m_document->currentPointer(), m_index, m_model->before(), m_model->state(), what,
                              mergeKey));
  if (sound) judgeBy(std::move(setup), what, both ? -1 : mergeKey);
  if (both) steps->endMacro();
}

void WindowPage::judgeBy(check::Request setup, const QString& what, int mergeKey) {
  window::ProcessWindow changed = m_model->draft();
  changed.identity.sha256.clear();  // no file says this
  setup.windows[m_index] = std::move(changed);
  setup.window_assumed = false;
  m_document->edit(what, std::move(setup), Document::Rework::kJudge, mergeKey);
}

void WindowPage::save() {
  const std::string revision = m_revision->text().trimmed().toStdString();
  auto saved = window::save_revision(m_model->draft(), revision, window::revision_path(m_model->draft(), revision));
  if (!saved) {
    emit troubled(tr("The window was not saved."), saved.error());
    return;
  }
  emit noted(
      tr("Saved as revision %1: %2").arg(m_revision->text().trimmed(), QString::fromStdString(saved->identity.file)));
  check::Request setup = m_document->setup();
  setup.windows[m_index] = *saved;
  setup.window_assumed = false;
  take(*saved);
  m_document->edit(tr("Save revision %1").arg(m_revision->text().trimmed()), std::move(setup));
  m_revision->setText(nextRevision(saved->identity.revision));
}

void WindowPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && isVisible()) refresh();
}

}  // namespace ovenwright::desktop
