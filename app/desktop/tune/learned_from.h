#pragma once
#include <QString>
#include <QWidget>
#include <vector>

#include "app/desktop/text/format.h"

namespace ovenwright::desktop {

class TuneSession;

/// Which runs the model is learned from, and how well it follows them: the run that is shown, and others of the board
/// that are open, each with the recipe it is taken to have run with, to be taken in or left out.
class LearnedFrom : public QWidget {
  Q_OBJECT
 public:
  explicit LearnedFrom(TuneSession* session, QWidget* parent = nullptr);

  void refresh(const Format& format);  ///< anew only where there is something else to show
  void forget() { m_shown.clear(); }   ///< what was shown: fonts, colours or units are others

 private:
  struct Choice {
    int number = 0;  ///< of the log
    QString log, recipe;
    bool learns = false;
  };
  void fill(const QString& names, const QString& misfit, const std::vector<Choice>& choices);

  TuneSession* m_session;
  QString m_shown;
};

}  // namespace ovenwright::desktop
