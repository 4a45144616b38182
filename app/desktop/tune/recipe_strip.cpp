#include "app/desktop/tune/recipe_strip.h"

#include <QAccessible>
#include <QContextMenuEvent>
#include <QDoubleValidator>
#include <QHelpEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

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
constexpr double kLargeStep = 5;

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
  return parts.join(QStringLiteral(", "));
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
    } else if (layout.padlock().contains(help->pos()) && m_table.together) {
      tip = tr("Top and bottom move together");
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
  if (!field || !m_table.enabled) {
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

bool RecipeStrip::goOn(int by) {
  const auto order = fieldOrder(m_table);
  const auto at = m_state.current ? std::ranges::find(order, *m_state.current) : order.end();
  std::ptrdiff_t next = at == order.end() ? (by > 0 ? 0 : std::ptrdiff_t(order.size()) - 1) : at - order.begin() + by;
  if (next < 0 || next >= std::ptrdiff_t(order.size())) return false;
  setCurrent(order[std::size_t(next)]);
  return true;
}

void RecipeStrip::keyPressEvent(QKeyEvent* event) {
  const auto& current = m_state.current;
  switch (event->key()) {
    case Qt::Key_Left:
      goOn(-1);
      return;
    case Qt::Key_Right:
      goOn(1);
      return;
    case Qt::Key_Home:
    case Qt::Key_End: {
      const auto order = fieldOrder(m_table);
      setCurrent(event->key() == Qt::Key_Home ? order.front() : order.back());
      return;
    }
    default:
      break;
  }
  if (!m_table.enabled || !current) {
    QWidget::keyPressEvent(event);
    return;
  }
  switch (event->key()) {
    case Qt::Key_Up:
      step(*current, 1);
      return;
    case Qt::Key_Down:
      step(*current, -1);
      return;
    case Qt::Key_PageUp:
      step(*current, kLargeStep);
      return;
    case Qt::Key_PageDown:
      step(*current, -kLargeStep);
      return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      emit backWanted(*current);
      announce();
      return;
    case Qt::Key_L:
      if (event->modifiers().testFlag(Qt::ControlModifier)) {
        if (const auto* column = columnOf(*current); column && !column->cooling) emit lockToggled(column->zone);
      } else {
        emit togetherToggled();
      }
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_F2:
      startTyping({});
      return;
    default:
      break;
  }
  if (event->text().size() == 1 && event->text()[0].isDigit()) {
    startTyping(event->text());
    return;
  }
  QWidget::keyPressEvent(event);
}

void RecipeStrip::contextMenuEvent(QContextMenuEvent* event) {
  const auto layout = layoutNow();
  auto field = layout.fieldAt(event->pos());
  if (!field && event->reason() == QContextMenuEvent::Keyboard) field = m_state.current;
  if (!field || !m_table.enabled) return;
  setCurrent(*field);
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  connect(menu->addAction(tr("&Type a number")), &QAction::triggered, this, [this] { startTyping({}); });
  QAction* back =
      menu->addAction(tr("&Back to what was run: %1")
                          .arg(FieldFormat(m_table.format).withUnit(*field, valueOf(m_table.measured, *field))));
  back->setEnabled(valueOf(m_table.measured, *field) != valueOf(m_table.edited, *field));
  connect(back, &QAction::triggered, this, [this, field] { emit backWanted(*field); });
  if (const auto* column = columnOf(*field); column && !column->cooling) {
    menu->addSeparator();
    QAction* lock = menu->addAction(tr("&Keep zone %1 as it is in a search").arg(column->name));
    lock->setCheckable(true);
    lock->setChecked(column->locked);
    connect(lock, &QAction::triggered, this, [this, zone = column->zone] { emit lockToggled(zone); });
    QAction* together = menu->addAction(tr("Top and bottom &together"));
    together->setCheckable(true);
    together->setChecked(m_table.together);
    connect(together, &QAction::triggered, this, &RecipeStrip::togetherToggled);
  }
  menu->popup(event->globalPos());
}

void RecipeStrip::startTyping(const QString& first) {
  if (!m_state.current || !m_table.enabled) return;
  ++m_gesture;
  const QRectF field = layoutNow().field(*m_state.current);
  QRect where = field.toAlignedRect().adjusted(2, 2, -2, -2);
  if (m_state.current->kind == Kind::kCooling)
    where = QRectF(field.left() + 2, field.center().y() - m_theme.px(11), field.width() - 4, m_theme.px(22))
                .toAlignedRect();
  m_editor->setGeometry(where);
  m_editor->setFont(m_theme.font(layoutNow().fontSize_px(), true));
  m_editor->setAccessibleName(spoken(*m_state.current));
  m_editor->setText(
      first.isEmpty() ? FieldFormat(m_table.format).number(*m_state.current, valueOf(m_table.edited, *m_state.current))
                      : first);
  if (first.isEmpty()) m_editor->selectAll();
  m_editor->show();
  m_editor->setFocus();
}

void RecipeStrip::finishTyping(bool keep) {
  if (m_editor->isHidden()) return;
  const QString text = m_editor->text();
  const bool had_focus = m_editor->hasFocus();
  m_editor->hide();
  if (had_focus) setFocus();
  bool number = false;
  const double typed = m_table.format.locale().toDouble(text, &number);
  if (keep && number && m_state.current)
    emit edited(*m_state.current, FieldFormat(m_table.format).fromShown(*m_state.current, typed), m_gesture);
  ++m_gesture;
}

bool RecipeStrip::eventFilter(QObject* object, QEvent* event) {
  if (object != m_editor) return QWidget::eventFilter(object, event);
  if (event->type() == QEvent::FocusOut) {
    finishTyping(true);
  } else if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    switch (key->key()) {
      case Qt::Key_Return:
      case Qt::Key_Enter:
        finishTyping(true);
        return true;
      case Qt::Key_Escape:
        finishTyping(false);
        return true;
      case Qt::Key_Up:
      case Qt::Key_Down:
        finishTyping(true);
        if (m_state.current) step(*m_state.current, key->key() == Qt::Key_Up ? 1 : -1);
        return true;
      case Qt::Key_Tab:
      case Qt::Key_Backtab:
        finishTyping(true);
        goOn(key->key() == Qt::Key_Tab ? 1 : -1);
        return true;
      default:
        break;
    }
  } else if (event->type() == QEvent::ShortcutOverride) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) {
      event->accept();
      return true;
    }
  }
  return false;
}

void RecipeStrip::focusInEvent(QFocusEvent* event) {
  if (!m_state.current || event->reason() == Qt::TabFocusReason) m_state.current = fieldOrder(m_table).front();
  if (event->reason() == Qt::BacktabFocusReason) m_state.current = fieldOrder(m_table).back();
  update();
  announce();
}

void RecipeStrip::focusOutEvent(QFocusEvent*) { update(); }

bool RecipeStrip::focusNextPrevChild(bool next) {
  if (hasFocus() && goOn(next ? 1 : -1)) return true;
  return QWidget::focusNextPrevChild(next);
}

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
