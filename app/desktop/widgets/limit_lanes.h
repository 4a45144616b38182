#pragma once
#include <QAbstractScrollArea>
#include <optional>

#include "app/desktop/widgets/lane_table.h"
#include "app/desktop/widgets/lanes_layout.h"
#include "app/desktop/widgets/lanes_painter.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::widgets {

/// The whole verdict at one glance: a lane for each requirement, both limits at the same two places in every lane, a
/// mark for each thermocouple. Holds what is chosen and pointed at, nothing else.
class LimitLanes : public QAbstractScrollArea {
  Q_OBJECT
 public:
  explicit LimitLanes(QWidget* parent = nullptr);
  ~LimitLanes() override;

  void setTable(LaneTable table);
  const LaneTable& table() const { return m_table; }
  /// Half strength while a new answer is awaited.
  void setDimmed(bool dimmed);

  std::optional<std::size_t> chosenOutcome() const;
  const LanesState& state() const { return m_state; }
  const Theme& theme() const { return m_theme; }
  /// Header and lanes as they stand, for painting, hitting and hearing.
  LanesLayout layoutNow() const;
  /// From a lane's coordinates to those of the viewport.
  QPointF toViewport(const QPointF& lanePoint) const;
  /// Width under which the lanes cannot show their body.
  QSize minimumSizeHint() const override;
  int leastHeight() const;  ///< in which all lanes stand without scrolling, at their smallest pitch
  QSize sizeHint() const override;

  QString rowAsText(std::size_t lane) const;
  QPixmap asPicture() const;

 public slots:
  /// Empty: nothing chosen. Emits no signal.
  void setChosenOutcome(std::optional<std::size_t> outcome);
  /// A thermocouple pointed at elsewhere; empty: none.
  void setHighlightedChannel(std::optional<std::size_t> channel);
  /// As a click on a mark does.
  void choose(const ovenwright::widgets::LaneTable::Position& position);

 signals:
  void chosen(std::size_t outcome);
  void choiceCleared();
  /// Enter on a result, or a second click: its derivation is asked for.
  void activated(std::size_t outcome);
  void channelHovered(std::optional<std::size_t> channel);
  void rowCopied();
  void pictureCopied();

 protected:
  bool viewportEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;
  void scrollContentsBy(int dx, int dy) override;

 private:
  QPointF toLanes(const QPointF& viewportPoint) const;
  void updateScrollBar();
  void reveal(std::size_t lane);
  void hover(std::optional<std::size_t> channel);
  void move(int lanes, int marks);
  void moveToEnd(bool hottest);
  bool showTip(const QPoint& at, const QPoint& global);
  std::size_t markNear(std::size_t lane, const LaneMark& mark) const;

  LaneTable m_table;
  LanesState m_state;
  Theme m_theme;
};

}  // namespace ovenwright::widgets
