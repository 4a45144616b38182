#pragma once
#include <QTimer>
#include <QWidget>

#include "app/desktop/tune/recipe_strip_layout.h"

class QLineEdit;

namespace ovenwright::desktop {

/// The zone strip of Tune: every setpoint and the speed is a field that is typed into, stepped or dragged up and down.
/// Shows a table and tells what is wanted; it changes nothing itself.
class RecipeStrip : public QWidget {
  Q_OBJECT
 public:
  explicit RecipeStrip(QWidget* parent = nullptr);
  ~RecipeStrip() override;

  void setTable(RecipeStripTable table);
  const RecipeStripTable& table() const { return m_table; }
  const RecipeStripState& state() const { return m_state; }
  RecipeStripLayout layoutNow() const { return RecipeStripLayout(m_table, m_axis, m_theme, rect()); }
  qreal leastLeftInset() const { return RecipeStripLayout::leastLeftInset(m_theme); }
  qreal leastRightInset() const { return RecipeStripLayout::leastRightInset(m_theme); }
  /// As on the plot above: see widgets::ZoneStrip.
  void setAxis(double from_s, double to_s, qreal leftInset, qreal rightInset);
  void setCurrent(const RecipeField& field);
  void step(const RecipeField& field, double by);
  QString spoken(const RecipeField& field) const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  /// @param gesture  the same for edits that belong together
  void edited(const ovenwright::desktop::RecipeField& field, double value, int gesture);
  void backWanted(const ovenwright::desktop::RecipeField& field);
  void togetherToggled();
  void lockToggled(const std::string& zone);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* object, QEvent* event) override;

 private:
  void startTyping(const QString& first);
  void finishTyping(bool keep);
  bool goOn(int by);  // to the next or previous field; false at the end
  void announce();
  const StripColumn* columnOf(const RecipeField& field) const;

  RecipeStripTable m_table;
  widgets::StripAxis m_axis;
  widgets::Theme m_theme;
  RecipeStripState m_state;
  QLineEdit* m_editor;
  QTimer m_repeat;  // of an arrow that is held
  int m_repeatBy = 0;
  std::optional<QPointF> m_pressed;
  double m_pressedValue = 0;
  bool m_dragging = false;
  qreal m_wheel = 0;
  int m_gesture = 0;
};

}  // namespace ovenwright::desktop
