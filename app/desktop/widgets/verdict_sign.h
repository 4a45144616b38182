#pragma once
#include <QWidget>
#include <optional>

#include "app/desktop/widgets/theme.h"
#include "core/judge/judgement.h"

namespace ovenwright::widgets {

/// The verdict sign as a widget, a lane in miniature; its word stands beside it and is its accessible name.
class VerdictSign : public QWidget {
  Q_OBJECT
 public:
  explicit VerdictSign(QWidget* parent = nullptr);
  void setVerdict(std::optional<judge::Verdict> verdict, bool informative = false);
  /// Height as designed for a body text of 13 px.
  void setDesignHeight(qreal height_px);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  Theme m_theme;
  std::optional<judge::Verdict> m_verdict;
  bool m_informative = false;
  qreal m_height_px = 16;
};

}  // namespace ovenwright::widgets
