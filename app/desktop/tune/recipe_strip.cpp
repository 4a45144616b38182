#include "app/desktop/tune/recipe_strip.h"

#include <QAccessible>
#include <QDoubleValidator>
#include <QHelpEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/field_format.h"
#include "app/desktop/tune/recipe_strip_accessible.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;
using widgets::Wording;

constexpr double kDrag_px = 3;    // of the mouse for one step
constexpr double kSpeedDrag = 2;  // steps of the speed where a setpoint moves by one
constexpr int kHold_ms = 350, kRepeat_ms = 60;
constexpr double kWheelNotch = 120;

}  // namespace

RecipeStrip::RecipeStrip(QWidget* parent)
    : QWidget(parent), m_theme(widgets::Theme::fromPalette(palette(), font())), m_editor(new QLineEdit(this)) {
  installStripAccessibility();
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(tr("Recipe"));
  setAccessibleDescription(tr("Type a number, or step with the up and down arrows; Delete goes back to what was run."));
  auto* validator = new QDoubleValidator(0, 99999, 2, m_editor);
  validator->setNotation(QDoubleValidator::StandardNotation);
  m_editor->setValidator(validator);
  m_editor->setAlignment(Qt::AlignCenter);
  m_editor->setTextMargins(0, 0, 0, 0);
  m_editor->setFrame(false);
  m_editor->hide();
  m_editor->installEventFilter(this);
  m_repeat.setSingleShot(false);
  connect(&m_repeat, &QTimer::timeout, this, [this] {
    m_repeat.setInterval(kRepeat_ms);
    if (m_state.current) step(*m_state.current, m_repeatBy);
  });
}

RecipeStrip::~RecipeStrip() { m_editor->removeEventFilter(this); }

void RecipeStrip::setTable(RecipeStripTable table) {
  const bool other = table.columns.size() != m_table.columns.size();
  m_table = std::move(table);
  if (other) {
    finishTyping(false);
    m_state.current.reset();
    m_state.hovered.reset();
    QAccessibleTableModelChangeEvent event(this, QAccessibleTableModelChangeEvent::ModelReset);
    QAccessible::updateAccessibility(&event);
  }
  if (m_table.together && m_state.current && m_state.current->kind == Kind::kBottom) m_state.current->kind = Kind::kTop;
  update();
}

void RecipeStrip::setAxis(double from_s, double to_s, qreal leftInset, qreal rightInset) {
  m_axis = {from_s, to_s, leftInset, rightInset};
  update();
}

QSize RecipeStrip::sizeHint() const {
  return {int(m_theme.px(600)), int(std::ceil(RecipeStripLayout::height(m_theme)))};
}
QSize RecipeStrip::minimumSizeHint() const { return {int(m_theme.px(240)), sizeHint().height()}; }

const StripColumn* RecipeStrip::columnOf(const RecipeField& field) const {
  const auto found = std::ranges::find_if(m_table.columns, [&](const StripColumn& column) {
    return column.index == field.index && column.cooling == (field.kind == Kind::kCooling);
  });
  return field.kind == Kind::kSpeed || found == m_table.columns.end() ? nullptr : &*found;
}

QString RecipeStrip::spoken(const RecipeField& field) const {
  const FieldFormat format(m_table.format);
  const double value = valueOf(m_table.edited, field), now = valueOf(m_table.measured, field);
  QStringList parts;
  const StripColumn* column = columnOf(field);
  if (field.kind == Kind::kSpeed) {
    parts << tr("Speed");
  } else {
    parts << Wording::tr("Zone %1").arg(column ? column->name : QString());
    if (field.kind != Kind::kCooling)
      parts << (m_table.together           ? tr("top and bottom together")
                : field.kind == Kind::kTop ? Wording::tr("top")
                                           : Wording::tr("bottom"));
  }
  parts << format.withUnit(field, value);
  if (value != now) parts << tr("was %1", "a setpoint or the speed").arg(format.withUnit(field, now));
  if (column && column->locked) parts << tr("stays in a search");
  return enumerated(parts);
}

void RecipeStrip::announce() {
  if (!m_state.current) return;
  announceField(this, *m_state.current);
}

void RecipeStrip::setCurrent(const RecipeField& field) {
  if (m_state.current == field) return;
  m_state.current = field;
  ++m_gesture;
  update();
  announce();
}

void RecipeStrip::step(const RecipeField& field, double by) {
  if (!m_table.enabled) return;
  emit edited(field, FieldFormat(m_table.format).stepped(field, valueOf(m_table.edited, field), by), m_gesture);
  announce();
}

void RecipeStrip::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  m_state.focused = hasFocus();
  const auto layout = layoutNow();
  paintRecipeStrip(painter, m_table, m_theme, layout, m_state);
}

bool RecipeStrip::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto layout = layoutNow();
    QString tip;
    if (const auto name = layout.nameAt(help->pos()); name && !m_table.columns[*name].cooling) {
      tip = m_table.columns[*name].locked ? tr("A search leaves zone %1 as it is. Press to let it move.")
                                          : tr("Press to keep zone %1 as it is in a search.");
      tip = tip.arg(m_table.columns[*name].name);
    } else if (const auto field = layout.fieldAt(help->pos())) {
      tip = spoken(*field) + u'\n' + tr("Type, step with the arrows or drag up and down.");
    } else if (layout.padlock().contains(help->pos())) {
      tip = m_table.together ? tr("Top and bottom move together") : tr("Top and bottom move apart");
    }
    if (tip.isEmpty()) {
      QToolTip::hideText();
    } else {
      QToolTip::showText(help->globalPos(), Wording::asHtml(tip), this);
    }
    return true;
  }
  return QWidget::event(event);
}

void RecipeStrip::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  finishTyping(true);
  const auto layout = layoutNow();
  if (layout.padlock().adjusted(-4, -8, 4, 8).contains(event->position())) {
    emit togetherToggled();
    return;
  }
  if (const auto name = layout.nameAt(event->position()); name && !m_table.columns[*name].cooling) {
    emit lockToggled(m_table.columns[*name].zone);
    return;
  }
  const auto field = layout.fieldAt(event->position());
  if (!field || !m_table.enabled) return;
  ++m_gesture;
  setCurrent(*field);
  if (const int by = layout.stepAt(*field, event->position())) {
    m_repeatBy = by;
    step(*field, by);
    m_repeat.start(kHold_ms);
    return;
  }
  m_pressed = event->globalPosition();  // the strip may move while the sentence above it grows
  m_pressedValue = valueOf(m_table.edited, *field);
}

void RecipeStrip::mouseMoveEvent(QMouseEvent* event) {
  if (m_pressed && m_state.current && event->buttons().testFlag(Qt::LeftButton)) {
    const double moved = m_pressed->y() - event->globalPosition().y();
    if (!m_dragging && std::abs(moved) < m_theme.px(kDrag_px)) return;
    m_dragging = true;
    const double per = m_state.current->kind == Kind::kSpeed ? kSpeedDrag : 1;
    const double steps = per * std::round(moved / m_theme.px(kDrag_px));
    const double value =
        steps == 0 ? m_pressedValue : FieldFormat(m_table.format).stepped(*m_state.current, m_pressedValue, steps);
    if (value != valueOf(m_table.edited, *m_state.current)) emit edited(*m_state.current, value, m_gesture);
    return;
  }
  const auto layout = layoutNow();
  const auto field = layout.fieldAt(event->position());
  if (field != m_state.hovered) {
    m_state.hovered = field;
    update();
  }
  const auto name = layout.nameAt(event->position());
  if (!m_table.enabled) {
    unsetCursor();
  } else if (field) {
    setCursor(layout.stepAt(*field, event->position()) ? Qt::ArrowCursor : Qt::SizeVerCursor);
  } else if ((name && !m_table.columns[*name].cooling) || layout.padlock().contains(event->position())) {
    setCursor(Qt::PointingHandCursor);
  } else {
    unsetCursor();
  }
}

void RecipeStrip::mouseReleaseEvent(QMouseEvent*) {
  m_repeat.stop();
  m_pressed.reset();
  m_dragging = false;
  ++m_gesture;
}

void RecipeStrip::mouseDoubleClickEvent(QMouseEvent* event) {
  const auto layout = layoutNow();
  const auto field = layout.fieldAt(event->position());
  if (!field || !m_table.enabled) return;
  if (layout.stepAt(*field, event->position())) {
    mousePressEvent(event);
    return;
  }
  setCurrent(*field);
  startTyping({});
}

void RecipeStrip::leaveEvent(QEvent*) {
  m_state.hovered.reset();
  update();
}

void RecipeStrip::wheelEvent(QWheelEvent* event) {
  const auto field = layoutNow().fieldAt(event->position());
  // Only of the strip that is worked on: a page that is scrolled past it must not change a setpoint.
  if (!field || !m_table.enabled || !hasFocus()) {
    event->ignore();
    return;
  }
  event->accept();
  setCurrent(*field);
  m_wheel += event->angleDelta().y() / kWheelNotch;
  const double steps = std::trunc(m_wheel);
  m_wheel -= steps;
  if (steps != 0) step(*field, steps);
}

void RecipeStrip::focusInEvent(QFocusEvent* event) {
  if (!m_state.current || event->reason() == Qt::TabFocusReason) m_state.current = fieldOrder(m_table).front();
  if (event->reason() == Qt::BacktabFocusReason) m_state.current = fieldOrder(m_table).back();
  update();
  announce();
}

void RecipeStrip::focusOutEvent(QFocusEvent*) { update(); }

void RecipeStrip::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  m_theme = widgets::Theme::fromPalette(palette(), font());
  updateGeometry();
  update();
}

void RecipeStrip::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  finishTyping(true);
}

}  // namespace ovenwright::desktop
