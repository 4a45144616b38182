#pragma once
#include <QWidget>
#include <memory>
#include <optional>

#include "app/desktop/plot/scene.h"
#include "app/desktop/widgets/theme.h"

class QHBoxLayout;
class QLabel;
class QScrollArea;
class QToolButton;
class QVBoxLayout;

namespace ovenwright::desktop {

/// "How this number came about": one result with its place on the curve, definition, limits and their source, the
/// arithmetic of its margin, its uncertainty, the decision, the risk and the zones.
class DerivationPanel : public QWidget {
  Q_OBJECT
 public:
  explicit DerivationPanel(QWidget* parent = nullptr);
  ~DerivationPanel() override;

  /// @param chosen  an index into Judgement::all(); none says what would stand here
  void show(const Scene& scene, std::optional<std::size_t> chosen, const widgets::Theme& theme, const Format& format);
  /// Over other parts: with a line at its left edge.
  void setFloating(bool floating);

 protected:
  void paintEvent(QPaintEvent* event) override;

 signals:
  void stepped(int by);                                            ///< to the next or previous result
  void windowWanted(std::size_t window, std::size_t requirement);  ///< the limit's place in its window
  void tuneWanted();                                               ///< from the zones that set the result

 private:
  class Builder;
  void showNothing(const widgets::Theme& theme);

  QLabel *m_heading, *m_position;
  QToolButton *m_previous, *m_next;
  QScrollArea* m_scroll;
  QHBoxLayout* m_head;
  bool m_floating = false;
};

/// "(232.1 − 235) ÷ (242.5 − 235)": how the margin came about; empty where there is none.
QString marginArithmetic(const judge::Outcome& outcome, const Format& format);
/// "2.9 > 2.1: fail": the decision rule with its numbers; empty where there is nothing to decide with.
QString decisionArithmetic(const judge::Outcome& outcome, window::DecisionRule rule, const Format& format);

}  // namespace ovenwright::desktop
