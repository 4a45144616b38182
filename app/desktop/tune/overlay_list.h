#pragma once
#include <QWidget>
#include <vector>

#include "app/desktop/text/format.h"

namespace ovenwright::desktop {

struct TuneBench;
class TuneSession;

/// Which curves are laid over the prediction: the measured run and predictions that were kept, each to be shown, hidden
/// or dropped.
class OverlayList : public QWidget {
  Q_OBJECT
 public:
  explicit OverlayList(TuneSession* session, QWidget* parent = nullptr);

  void refresh(const Format& format);  ///< anew only where others are kept
  void forget();                       ///< what was shown: fonts, colours or units are others

 private:
  void add(int number, const QString& tag, const QString& text);

  TuneSession* m_session;
  const TuneBench* m_bench = nullptr;
  std::vector<int> m_numbers;
};

}  // namespace ovenwright::desktop
