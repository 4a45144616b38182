#include "app/desktop/compare/compare_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/desktop/widgets/compare_sentence.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Compare)
};

using widgets::SentenceContent;

}  // namespace

SentenceContent compareSentence(const CompareSession& session, const Format& format) {
  using State = CompareSession::State;
  const auto a = session.subject(0);
  switch (session.state()) {
    case State::kNothing: {
      auto content =
          widgets::told(Words::tr("No run is open."), Words::tr("Compare holds two runs against each other."));
      content.addCommand(Words::tr("Open logs…"), QStringLiteral("open"));
      content.addCommand(Words::tr("Look at two demo runs"), QStringLiteral("demo"));
      return content;
    }
    case State::kOneRun: {
      auto content = widgets::told(Words::tr("One run is open: %1.").arg(runTitle(*a->log, a->run)),
                                   Words::tr("Compare needs a second one."));
      content.addCommand(Words::tr("Open another log…"), QStringLiteral("open"));
      content.addCommand(Words::tr("Add a run…"), QStringLiteral("add"));
      return content;
    }
    case State::kWorking:
      return widgets::told(Words::tr("Comparing."), {});
    case State::kFailed: {
      auto content = widgets::told(Words::tr("These runs cannot be compared."), errorText(*session.error()));
      content.addCommand(Words::tr("Compare against the window of A"), QStringLiteral("window"));
      return content;
    }
    case State::kReady:
      break;
  }
  return widgets::compareSentence(session.compared()->comparison, widgets::Wording(format));
}

QString compareStatus(const Compared& compared) {
  const auto both = std::ranges::count_if(compared.pairs, [](const auto& pair) { return pair.a && pair.b; });
  const QString common = Words::tr("%n thermocouple(s) in common", nullptr, int(both));
  return Words::tr("%1, %2", "runs, thermocouples in common")
      .arg(Words::tr("%n runs", nullptr, int(compared.runs())), common);
}

}  // namespace ovenwright::desktop
