#pragma once
#include <QWidget>
#include <memory>

#include "app/desktop/document/run_view.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

/// The course of one channel in a line of text's height, its faults marked and the oven entry dotted.
class Sparkline : public QWidget {
 public:
  explicit Sparkline(QWidget* parent = nullptr)
      : QWidget(parent), m_theme(widgets::Theme::fromPalette(palette(), font())) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  }
  void show(std::shared_ptr<const RunView> view, std::size_t channel, bool pale, const widgets::Theme& theme);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint() / 2; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::shared_ptr<const RunView> m_view;
  std::size_t m_channel = 0;
  bool m_pale = false;
  widgets::Theme m_theme;
};

}  // namespace ovenwright::desktop
