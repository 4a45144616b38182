#pragma once
#include <QStringList>
#include <QWidget>
#include <optional>
#include <utility>
#include <vector>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::widgets {

/// One value of one run.
struct ChartPoint {
  double x = 0;  ///< number of the run, or its time
  double value = 0;
  std::size_t run = 0;     ///< whose it is, for whoever made the chart
  std::size_t series = 0;  ///< index into RunChartContent::series
  bool signal = false;     ///< it completes a signal: a square around it
  QString tip;             ///< what it is in words
};

/// A line across a panel with its name at the right.
struct ChartLine {
  enum class Kind { kCentre, kControl, kLimit } kind = Kind::kCentre;
  double value = 0;
  QString name;
};

/// One chart over the runs: points of a series are joined in their order.
struct ChartPanel {
  QString title;  ///< over it; may be empty
  std::vector<ChartPoint> points;
  std::vector<ChartLine> lines;
  std::optional<double> lower, upper;  ///< what lies beyond is on the ground of "outside"
  double share = 1;                    ///< of the height
};

/// Panels one under another on a common axis of runs; values in the shown unit.
struct RunChartContent {
  std::vector<ChartPanel> panels;
  std::vector<std::pair<double, QString>> ticks;  ///< of the common axis, in order; those without room are left out
  QStringList series;                             ///< names; a key stands where there are two or more
  QString key;                                    ///< what a square says; empty: none
};

/// Where everything of a chart lies.
class RunChartLayout {
 public:
  RunChartLayout(const RunChartContent& content, const Theme& theme, const QRectF& area);
  struct Panel {
    QRectF title, plot;
    double low = 0, high = 1;  ///< at the bottom and at the top of the plot
    std::vector<double> ticks;
    int digits = 0;  ///< of the ticks
  };
  const std::vector<Panel>& panels() const { return m_panels; }
  QPointF at(std::size_t panel, double x, double value) const;
  qreal x(double x) const;
  QRectF ticks() const { return m_ticks; }
  QRectF key() const { return m_key; }

 private:
  QRectF m_key, m_ticks;
  std::vector<Panel> m_panels;
  double m_from = 0, m_to = 1;
};

/// @param chosen  panel and point that are looked at
using ChosenPoint = std::optional<std::pair<std::size_t, std::size_t>>;
void paintRunChart(QPainter& painter, const QRectF& area, const RunChartContent& content, const Theme& theme,
                   const ChosenPoint& chosen = std::nullopt);

/// The chart as a widget: hover and left and right read a run, a double click or Enter asks for it.
class RunChart : public QWidget {
  Q_OBJECT
 public:
  explicit RunChart(QWidget* parent = nullptr);
  void setContent(RunChartContent content);
  const RunChartContent& content() const { return m_content; }
  QString chosenText() const;  ///< the point that is looked at in words; empty: none
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  void runWanted(std::size_t run);
  void runChosen(std::size_t run);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  ChosenPoint nearest(const QPointF& at) const;
  void choose(const ChosenPoint& point, bool byKey);

  Theme m_theme;
  RunChartContent m_content;
  ChosenPoint m_chosen;
};

}  // namespace ovenwright::widgets
