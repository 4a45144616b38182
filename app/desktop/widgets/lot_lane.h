#pragma once
#include <QWidget>
#include <array>
#include <optional>
#include <vector>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::widgets {

/// One requirement over the runs of a lot, as the lane shows it; numbers and texts in the shown unit.
struct LotLaneContent {
  std::optional<double> lower, upper;
  std::optional<double> target;  ///< as the margin takes it
  std::vector<double> values;    ///< of all runs
  std::optional<double> mean;
  std::optional<double> sd;                        ///< of all runs; absent with one
  std::optional<std::array<double, 2>> tolerance;  ///< 95 % of runs, with 95 % confidence
  QString lowerText, upperText;                    ///< the limits as the window writes them; empty without one
  QString description;                             ///< its numbers in words
  bool hasScale() const;                           ///< there is a limit and a target to hold values against
};

/// Header, body with the limits at the usual places, and three tracks: every run as a thin tick; the mean on a bar of
/// ± 3 s; the tolerance interval as a whisker with caps. What lies off the scale is drawn to the edge.
void paintLotLane(QPainter& painter, const QRectF& area, const LotLaneContent& content, const Theme& theme);
/// The height that it is made for.
qreal lotLaneHeight(const Theme& theme);

/// The lane as a widget: one picture, its numbers as description.
class LotLane : public QWidget {
  Q_OBJECT
 public:
  explicit LotLane(QWidget* parent = nullptr);
  void setContent(LotLaneContent content);
  const LotLaneContent& content() const { return m_content; }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  Theme m_theme;
  LotLaneContent m_content;
};

}  // namespace ovenwright::widgets
