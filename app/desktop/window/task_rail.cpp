#include "app/desktop/window/task_rail.h"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {
namespace {

constexpr double kWidth_px = 104, kInset_px = 20, kInsetLow_px = 12, kRow_px = 38, kRowLow_px = 32;
constexpr int kType_px = 15, kTypeLow_px = 13;

/// A task: on the panel's ground with an accent bar where it is the one that is shown.
class RailDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  bool low = false;

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto theme = widgets::Theme::fromPalette(option.palette, QApplication::font());
    return {QStyledItemDelegate::sizeHint(option, index).width(), int(theme.px(low ? kRowLow_px : kRow_px))};
  }
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto theme = widgets::Theme::fromPalette(QApplication::palette(), QApplication::font());
    const bool shown = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    if (shown) {
      painter->fillRect(option.rect, theme.panel);
      painter->fillRect(QRectF(option.rect.left(), option.rect.top(), theme.px(3), option.rect.height()), theme.accent);
    }
    painter->setPen(shown ? theme.text : theme.secondary);
    painter->setFont(theme.font(low ? kTypeLow_px : kType_px, shown));
    painter->drawText(QRectF(option.rect).adjusted(theme.px(low ? kInsetLow_px : kInset_px), 0, 0, 0), Qt::AlignVCenter,
                      index.data().toString());
    if (option.state.testFlag(QStyle::State_HasFocus)) widgets::paintFocusFrame(*painter, option.rect, theme);
    painter->restore();
  }
};

}  // namespace

TaskRail::TaskRail(const QStringList& tasks, QWidget* parent)
    : QWidget(parent), m_list(new QListWidget), m_note(new QLabel(tr("Drop a log anywhere in this window"))) {
  setAutoFillBackground(true);
  m_list->addItems(tasks);
  m_list->setCurrentRow(0);
  m_list->setItemDelegate(new RailDelegate(m_list));
  m_list->setAccessibleName(tr("Tasks"));
  m_list->setFrameShape(QFrame::NoFrame);
  m_list->setFocusPolicy(Qt::StrongFocus);
  m_note->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(m_list, 1);
  layout->addWidget(m_note);
  connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0) emit taskPressed(row);
  });
  style();
}

void TaskRail::setTask(int task) { m_list->setCurrentRow(task); }

void TaskRail::setLow(bool low) {
  if (m_low == low) return;
  m_low = low;
  style();
}

void TaskRail::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

void TaskRail::style() {
  if (m_styling) return;  // a palette of its own is a change too
  m_styling = true;
  const auto theme = widgets::Theme::fromPalette(QApplication::palette(), QApplication::font());
  QPalette ground = QApplication::palette();
  for (const auto role : {QPalette::Window, QPalette::Base}) ground.setColor(role, theme.rail);
  ground.setColor(QPalette::WindowText, theme.secondary);
  setPalette(ground);
  m_list->setPalette(ground);
  static_cast<RailDelegate*>(m_list->itemDelegate())->low = m_low;
  m_list->setFont(theme.font(m_low ? kTypeLow_px : kType_px));
  m_list->doItemsLayout();
  m_note->setFont(theme.font(m_low ? 11 : 12));
  const double inset = theme.px(m_low ? kInsetLow_px : kInset_px);
  m_note->setContentsMargins(int(m_low ? inset : theme.px(16)), 0, int(theme.px(8)), int(theme.px(12)));
  layout()->setContentsMargins(0, int(theme.px(8)), 0, 0);
  // As wide as the longest name of a task needs.
  double widest = m_low ? 0 : theme.px(kWidth_px);
  const QFontMetricsF names(theme.font(m_low ? kTypeLow_px : kType_px, true));
  for (int task = 0; task < m_list->count(); ++task)
    widest = std::max(widest, names.horizontalAdvance(m_list->item(task)->text()) + inset + theme.px(kInsetLow_px));
  setFixedWidth(int(widest));
  m_styling = false;
}

}  // namespace ovenwright::desktop
