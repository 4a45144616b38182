#pragma once
#include <QPixmap>
#include <optional>
#include <vector>

#include "app/desktop/plot/paint.h"

namespace ovenwright::desktop {

/// The curves behind a plot's own as they were painted last: they stay while a prediction in front of them follows each
/// edit.
class Backdrop {
 public:
  /// @param size  of the whole plot, in the coordinates of the canvas
  void paint(QPainter& painter, const QSize& size, const Canvas& canvas, const Scene& scene,
             const std::vector<bool>& hidden);
  void forget() { m_picture = {}; }  ///< colours or fonts are others

 private:
  /// What the picture depends on.
  struct Subject {
    QSize size_px;
    QRectF area;
    Mapping mapping;
    std::vector<Scene::Behind> behind;
    std::vector<std::size_t> styles;  ///< of the plot's own channels
    std::vector<bool> hidden;
    std::optional<std::size_t> strong;
    bool operator==(const Subject&) const = default;
  };
  Subject m_subject;
  QPixmap m_picture;
};

}  // namespace ovenwright::desktop
