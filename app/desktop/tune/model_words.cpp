#include "app/desktop/tune/model_words.h"

#include "app/desktop/text/model_text.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {

QString modelText(const std::string& english) { return sentenceCase(modelInWords(english)); }

}  // namespace ovenwright::desktop
