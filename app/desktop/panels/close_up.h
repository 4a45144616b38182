#pragma once
#include <QWidget>
#include <memory>

#include "app/desktop/plot/scene.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

/// The small picture of where a result was taken on its curve, with its limits.
class CloseUp : public QWidget {
  Q_OBJECT
 public:
  explicit CloseUp(QWidget* parent = nullptr);
  /// @param outcome  an index into Judgement::all() of the scene's run
  void show(Scene scene, std::size_t outcome, const widgets::Theme& theme, const Format& format);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Scene m_scene;
  std::size_t m_outcome = 0;
  widgets::Theme m_theme;
  Format m_format;
};

}  // namespace ovenwright::desktop
