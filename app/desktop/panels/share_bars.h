#pragma once
#include <QWidget>
#include <vector>

#include "app/desktop/widgets/theme.h"
#include "core/judge/judgement.h"

namespace ovenwright::desktop {

/// Which zones set a result: a hatched bar for each share, its zone before it and its per cent after it.
class ShareBars : public QWidget {
  Q_OBJECT
 public:
  explicit ShareBars(QWidget* parent = nullptr);
  void setShares(std::vector<judge::ZoneShare> shares, const widgets::Theme& theme, const QLocale& locale);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString name(const judge::ZoneShare& share) const;
  QString percent(const judge::ZoneShare& share) const;
  std::vector<judge::ZoneShare> m_shares;
  widgets::Theme m_theme;
  QLocale m_locale;
};

}  // namespace ovenwright::desktop
