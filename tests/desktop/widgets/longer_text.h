#pragma once
#include <QCoreApplication>
#include <QTranslator>

namespace ovenwright::widgets::samples {

/// While it lives, every translated text is 40 % longer, as German is.
class LongerText : public QTranslator {
 public:
  LongerText() { QCoreApplication::installTranslator(this); }
  ~LongerText() override { QCoreApplication::removeTranslator(this); }
  bool isEmpty() const override { return false; }
  QString translate(const char*, const char* source, const char*, int) const override {
    const QString text = QString::fromUtf8(source);
    return text + QString(int((text.size() * 2 + 4) / 5), u'm');
  }
};

}  // namespace ovenwright::widgets::samples
