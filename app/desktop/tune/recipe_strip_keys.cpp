#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <algorithm>

#include "app/desktop/tune/field_format.h"
#include "app/desktop/tune/recipe_strip.h"

// Keys of the strip, its menu, and the field that is typed into.
namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;

constexpr double kLargeStep = 5;

}  // namespace

bool RecipeStrip::goOn(int by) {
  const auto order = fieldOrder(m_table);
  const auto at = m_state.current ? std::ranges::find(order, *m_state.current) : order.end();
  std::ptrdiff_t next = at == order.end() ? (by > 0 ? 0 : std::ptrdiff_t(order.size()) - 1) : at - order.begin() + by;
  if (next < 0 || next >= std::ptrdiff_t(order.size())) return false;
  setCurrent(order[std::size_t(next)]);
  return true;
}

bool RecipeStrip::focusNextPrevChild(bool next) {
  if (hasFocus() && goOn(next ? 1 : -1)) return true;
  return QWidget::focusNextPrevChild(next);
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

}  // namespace ovenwright::desktop
