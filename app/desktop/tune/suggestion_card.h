#pragma once
#include <QFrame>

#include "app/desktop/text/format.h"
#include "app/desktop/tune/tune_session.h"
#include "app/desktop/widgets/theme.h"

class QPushButton;

namespace ovenwright::desktop {

/// One suggestion: its aim, predicted verdict and margin, what it changes, what is tightest, boards an hour.
class SuggestionCard : public QFrame {
  Q_OBJECT
 public:
  SuggestionCard(const TuneBench& bench, const tune::Suggestion& suggestion, const Format& format,
                 QWidget* parent = nullptr);
  const oven::Recipe& recipe() const { return m_recipe; }
  void setShown(bool shown);  ///< its recipe stands in the strip

 signals:
  void showWanted();

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  oven::Recipe m_recipe;
  QString m_title;
  widgets::Theme m_theme;
  QPushButton* m_show;
  bool m_shown = false;
};

}  // namespace ovenwright::desktop
