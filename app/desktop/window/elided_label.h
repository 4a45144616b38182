#pragma once
#include <QLabel>

namespace ovenwright::desktop {

/// A line of text that is cut with "…" where there is no room for it, all of it in the tool tip then. It may be a link.
class ElidedLabel : public QLabel {
 public:
  explicit ElidedLabel(QWidget* parent = nullptr);
  void setWords(const QString& words, bool link = false);
  QString words() const { return m_words; }
  void setTip(const QString& tip);  ///< in place of the words
  /// Where less than this share of the words has room, none of them stand there.
  void setLeastShare(double share) { m_leastShare = share; }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void fit();

  QString m_words, m_tip;
  bool m_link = false;
  double m_leastShare = 0;
};

}  // namespace ovenwright::desktop
