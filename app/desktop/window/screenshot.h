#pragma once
#include <QObject>
#include <QSize>
#include <QString>

namespace ovenwright::desktop {

class Document;
class MainWindow;

/// A picture of the window for the documentation: puts it into a state, waits until it is drawn, saves, ends the
/// program.
class Screenshot : public QObject {
  Q_OBJECT
 public:
  struct Request {
    QString file;
    QSize size{1440, 900};
    QString state;  ///< one of states(); empty: as it is opened
  };
  static QStringList states();

  Screenshot(Document* document, MainWindow* window, Request request);

 private:
  void whenReady();
  void enterState();
  void stepTune();   // until nothing is learned, predicted or searched any more
  void stepWatch();  // until some logs of the folder are kept
  void stepLots();   // until everything that was asked of the archive is there
  void stepCompare();
  void stepGroups();  // until the groups are compared
  void take();

  Document* m_document;
  MainWindow* m_window;
  Request m_request;
  int m_step = 0;  // of a state that takes several
};

}  // namespace ovenwright::desktop
