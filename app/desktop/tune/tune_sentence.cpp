#include <QCoreApplication>
#include <algorithm>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/model_words.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Tune)
};

using widgets::SentenceContent;
using widgets::SentenceRun;

const QString kGap = QStringLiteral("    ");

SentenceRun plain(const QString& text, bool strong = false) {
  SentenceRun run;
  run.text = text;
  run.strong = strong;
  return run;
}

SentenceContent predicted(const TuneSession& session, const Format& format) {
  const auto& bench = *session.bench();
  const auto& prediction = *bench.prediction;
  const auto& judgement = prediction.judgement();
  const auto& entry = prediction.checked.entry;
  SentenceContent content = widgets::sentenceOf(tune::with_prediction_error(judgement, bench.halfWidths()),
                                                entry ? std::optional(entry->at_s) : std::nullopt,
                                                widgets::Wording(format), {.predicted = true});
  content.second.clear();
  content.secondShort.clear();
  const auto& now = bench.model->measured().judgement();
  if (judgement.margin) {
    content.second << plain(Words::tr("Smallest margin") + u' ')
                   << plain(marginText(judgement, prediction.forecast, format), true);
    content.secondShort = content.second;
    if (now.margin) content.second << plain(Words::tr(", now %1").arg(format.percent(*now.margin)));
  }
  const auto add = [](QList<SentenceRun>& line, QString chance) {
    if (chance.isEmpty()) return;
    chance[0] = chance[0].toUpper();
    line << plain(kGap + chance);
  };
  add(content.second, chanceText(prediction.forecast, format));
  add(content.secondShort, shortChanceText(prediction.forecast, format));
  if (sameNumbers(bench.edit.recipe, bench.measured))
    content.second << plain(kGap + Words::tr("The recipe is the one that was run."));
  for (const auto& run : content.second) content.spoken = paragraph({content.spoken, run.text.trimmed()});
  return content;
}

}  // namespace

SentenceContent tuneSentence(const TuneSession& session, const Format& format) {
  using State = TuneSession::State;
  SentenceContent content;
  const auto* bench = session.bench();
  switch (session.state()) {
    case State::kNothing:
      return content;
    case State::kNeedsOven:
      content = widgets::told(Words::tr("Tune needs the oven and the recipe of this run."),
                              Words::tr("From them and the curves it learns how this board heats."));
      content.addCommand(Words::tr("Choose an oven and recipe"), QStringLiteral("oven"));
      break;
    case State::kNeedsEntry:
      content = widgets::told(Words::tr("Tune needs the moment when the board entered the oven."),
                              Words::tr("The curves do not show it."));
      content.addCommand(Words::tr("Say when the board entered"), QStringLiteral("entry"));
      content.addCommand(Words::tr("Choose another oven and recipe"), QStringLiteral("oven"));
      break;
    case State::kLearning: {
      content = widgets::told(Words::tr("Learning how this board heats in this oven."), {});
      SentenceRun bar;
      bar.progress = session.learningDone();
      content.second << bar;
      content.addCommand(Words::tr("Stop"), QStringLiteral("stop"));
      break;
    }
    case State::kStopped:
      content = widgets::told(Words::tr("Learning was stopped."), {});
      content.addCommand(Words::tr("Learn again"), QStringLiteral("learn"));
      break;
    case State::kFailed:
      content = widgets::told(Words::tr("This run cannot be learned from."), errorText(*bench->error));
      content.addCommand(Words::tr("Choose another oven and recipe"), QStringLiteral("oven"));
      content.addCommand(Words::tr("Say when the board entered"), QStringLiteral("entry"));
      break;
    case State::kNotUsable: {
      const auto& fit = bench->model->fit();
      content = widgets::told(Words::tr("The model does not fit this run, so nothing is predicted or suggested."),
                              modelText(fit.message));
      content.addCommand(Words::tr("Choose another oven and recipe"), QStringLiteral("oven"));
      content.addCommand(Words::tr("Say when the board entered"), QStringLiteral("entry"));
      break;
    }
    case State::kReady:
      if (bench->prediction) return predicted(session, format);
      content = bench->notPredicted
                    ? widgets::told(Words::tr("This recipe was not predicted."), errorText(*bench->notPredicted))
                    : widgets::told(Words::tr("Predicting."), {});
      break;
  }
  content.secondShort = content.second;
  return content;
}

}  // namespace ovenwright::desktop
