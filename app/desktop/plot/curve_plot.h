#pragma once
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/plot/scene.h"
#include "app/desktop/widgets/theme.h"

class QCustomPlot;
class QTimer;

namespace ovenwright::desktop {

class Backdrop;
struct Canvas;
struct PlacedCallOut;

/// Temperature over time: the window's bands, the curves, what is out on them, and a cursor. Draws a Scene and holds
/// no state but the view (what is zoomed to), the cursor, and which curves are hidden.
class CurvePlot : public QWidget {
  Q_OBJECT
 public:
  explicit CurvePlot(QWidget* parent = nullptr);
  ~CurvePlot() override;

  void setTheme(const widgets::Theme& theme);
  void setFormat(const Format& format);
  /// Another run shows whole; another scene of the run that is shown keeps the view.
  void setScene(Scene scene);
  const Scene& scene() const { return m_scene; }
  /// What the zone strip under the plot needs beside the axes, px.
  void setLeastInsets(double left, double right);
  void setRawSamplesShown(bool shown);
  bool rawSamplesShown() const { return m_rawShown; }
  void setHidden(std::size_t channel, bool hidden);
  bool isHidden(std::size_t channel) const { return channel < m_hidden.size() && m_hidden[channel]; }

  std::optional<double> cursor_s() const { return m_cursor_s; }  ///< log's clock
  void setCursor_s(std::optional<double> time_s);
  /// What the cursor reads, to be spoken: "At 120.0 s, zone 3, 1320 mm: R118 160.2 °C, …"; the chosen channel alone
  /// where one is chosen. Empty without a cursor.
  QString cursorText() const;
  void zoomBy(double factor, std::optional<double> around_s = {});  ///< of time; > 1 shows less
  void showWhole();
  void showStretch(double from_s, double to_s);  ///< with some room around it
  void showSeconds(double from, double to);      ///< from the scene's origin: as another plot shows
  void replotNow();                              ///< else it is drawn when the event loop comes to it
  void panBy(double fraction);                   ///< of the width that is seen

  /// The stretch of time that the axes show, on the log's clock, and where they stand in this widget.
  double viewFrom_s() const;
  double viewTo_s() const;
  QRectF axes() const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  bool eventFilter(QObject* object, QEvent* event) override;

 signals:
  void viewChanged();  ///< another stretch of time, or the axes stand elsewhere
  void outcomeClicked(std::size_t outcome);
  void channelClicked(std::size_t channel);
  void groundClicked();  ///< nothing chosen any more
  void cursorMoved(std::optional<double> time_s);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  class Axis;
  void buildLayers();
  void styleAxes();
  void startMoving();  ///< the view is being moved: drawn plainly until it rests
  QString timeAxisName() const;
  /// Top of the unit of the temperatures, px: over them; where the highest of them leaves no room there, between it and
  /// the next; in a low plot under them.
  double unitTop(double height) const;
  double lastTickEnd() const;  ///< where the text of the last time ends, px
  void replot();
  Canvas canvas() const;
  void stepCursor(int samples);
  void stepZone(int zones);
  void stepChannel(int by);
  void click(const QPointF& at);
  QString toolTipAt(const QPointF& at) const;
  std::optional<std::size_t> channelNear(const QPointF& at) const;

  QCustomPlot* m_plot;
  QTimer* m_rest;  ///< runs while the view is being moved
  std::unique_ptr<widgets::Theme> m_theme;
  std::unique_ptr<Backdrop> m_backdrop;
  Format m_format;
  Scene m_scene;
  std::vector<bool> m_hidden;
  bool m_rawShown = false;
  bool m_whole = true;  // the whole run is seen: another scene of it is shown whole too
  double m_leastLeft = 0, m_leastRight = 0;
  std::optional<double> m_cursor_s;
  std::vector<PlacedCallOut> m_callOuts;  // as they were painted last, to be hit
  QPointF m_pressed;
  bool m_cursorByKeys = false;
};

}  // namespace ovenwright::desktop
