#pragma once
#include <QWidget>
#include <functional>

#include "app/desktop/text/format.h"
#include "app/desktop/tune/tune_session.h"

class QCheckBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace ovenwright::desktop {

/// What a search for recipes may move and must keep. Each change is an edit of the session, undone like any other.
class SearchSettings : public QWidget {
  Q_OBJECT
 public:
  explicit SearchSettings(TuneSession* session, QWidget* parent = nullptr);

  void setFormat(const Format& format);
  QPushButton* suggestButton() { return m_suggest; }
  void refresh();

 private:
  void change(const QString& text, const std::function<void(TuneEdit&)>& edit, int mergeKey = -1);
  void setLeastSpeed(int mergeKey);
  void setMargin(int mergeKey);
  void style();
  void changeEvent(QEvent* event) override;

  TuneSession* m_session;
  Format m_format;
  QCheckBox *m_keepSpeed, *m_useLeastSpeed, *m_useMargin;
  QDoubleSpinBox* m_leastSpeed;
  QSpinBox* m_margin;
  QLabel* m_locked;
  QPushButton* m_suggest;
};

}  // namespace ovenwright::desktop
