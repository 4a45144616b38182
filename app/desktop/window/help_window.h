#pragma once
#include <QWidget>

class QTextBrowser;

namespace ovenwright::desktop {

/// Short help beside the window: what each part shows and which keys work in it.
class HelpWindow : public QWidget {
  Q_OBJECT
 public:
  explicit HelpWindow(QWidget* parent);
  /// "start", "sentence", "plot", "strip", "tune", "lanes", "table", "board", "panel", "import", "window", "keys"
  void showAbout(const QString& part);
  QString part() const { return m_part; }  ///< that was asked for last

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QTextBrowser* m_text;
  QString m_part;
};

/// Name, version, licence and the cautions.
QString aboutText();

}  // namespace ovenwright::desktop
