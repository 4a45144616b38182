#pragma once
#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>
#include <map>
#include <memory>

#include "app/desktop/widgets/sentence_content.h"
#include "app/desktop/widgets/sentence_layout.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::widgets {

/// The verdict as a sentence, each part a link: Tab goes through the links, Enter follows.
class Sentence : public QWidget {
  Q_OBJECT
 public:
  explicit Sentence(QWidget* parent = nullptr);
  ~Sentence() override;

  /// Announced to screen readers where the verdict changed, at most once in 2 s.
  void setContent(SentenceContent content);
  /// Where the window is low: see SentenceLayout. 0: as high as the text needs.
  void setMostHeight(qreal height);
  const SentenceContent& content() const { return m_content; }
  const SentenceLayout& layoutNow() const;

  int focusedLink() const { return m_focusedLink; }  ///< index into the content's links; −1: none
  void focusLink(int link);

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 public slots:
  void activate(int link);

 signals:
  void activated(const ovenwright::widgets::SentenceLink& link);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void changeEvent(QEvent* event) override;

 private:
  void relayout();
  const SentenceLayout& layoutFor(int width) const;
  void announce();
  int stepped(int from, bool next) const;

  SentenceContent m_content;
  Theme m_theme;
  /// By width: a window that is laid out asks for several.
  mutable std::map<int, std::unique_ptr<SentenceLayout>> m_layouts;
  qreal m_mostHeight = 0;
  int m_focusedLink = -1;
  bool m_focusShown = false;  ///< once the keyboard is used: a window that just opened frames nothing
  int m_pressedLink = -1;
  QTimer m_announceLater;
  QElapsedTimer m_announced;
};

}  // namespace ovenwright::widgets
