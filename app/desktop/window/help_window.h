#pragma once
#include <QWidget>

class QTextBrowser;

namespace ovenwright::desktop {

/// Short help beside the window: what each part shows and which keys work in it.
class HelpWindow : public QWidget {
  Q_OBJECT
 public:
  explicit HelpWindow(QWidget* parent);
  void showAbout(const QString& part);  ///< "sentence", "plot", "strip", "lanes", "table", "import", "window", "keys"

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QTextBrowser* m_text;
};

/// Name, version, licence and the cautions.
QString aboutText();

}  // namespace ovenwright::desktop
