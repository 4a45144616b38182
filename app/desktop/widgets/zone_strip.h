#pragma once
#include <QWidget>
#include <optional>

#include "app/desktop/widgets/theme.h"
#include "app/desktop/widgets/zone_strip_painter.h"

namespace ovenwright::widgets {

/// Under the time axis: each zone where the board was at that time, with its setpoints; zones to which a result that is
/// out traces back are hatched. One line, a link, where there is no oven or no entry.
class ZoneStrip : public QWidget {
  Q_OBJECT
 public:
  explicit ZoneStrip(QWidget* parent = nullptr);
  ~ZoneStrip() override;

  void setTable(ZoneTable table);
  const ZoneTable& table() const { return m_table; }
  const Theme& theme() const { return m_theme; }
  const ZoneStripState& state() const { return m_state; }
  ZoneStripLayout layoutNow() const;
  /// The one line, where it stands.
  QRectF lineRect() const;
  /// What the plot's insets must be at least for the row names and the note to fit.
  qreal leastLeftInset() const;
  qreal leastRightInset() const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 public slots:
  /// The plot's axis range, since the board's entry, and the insets of its axis rectangle.
  void setAxis(double from_s, double to_s, qreal leftInset, qreal rightInset);
  /// As a click on a zone or on the line does.
  void activate(std::size_t cell);
  void activateLine();

 signals:
  void zoneActivated(const QString& zone);
  void zoneHovered(const QString& zone);  ///< empty: none
  void ovenWanted();
  void entryWanted();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void hover(std::optional<std::size_t> cell);
  QString tip(std::size_t cell) const;
  QString changeTip(const ZoneCell& cell) const;

  ZoneTable m_table;
  StripAxis m_axis;
  ZoneStripState m_state;
  Theme m_theme;
};

}  // namespace ovenwright::widgets
