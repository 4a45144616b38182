#include "app/desktop/widgets/sentence_content.h"

#include <array>

#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

struct Counts {
  std::array<std::vector<std::size_t>, 5> byVerdict;  ///< required results
  std::vector<std::size_t> informativeOut;
  std::size_t withoutMargin = 0, required = 0;
};

Counts countsOf(const judge::Judgement& judgement) {
  Counts counts;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const judge::Outcome& outcome = judgement.all(i);
    if (outcome.required) {
      ++counts.required;
      counts.byVerdict[static_cast<std::size_t>(outcome.verdict)].push_back(i);
      if (!outcome.value.value) ++counts.withoutMargin;
    } else if (judge::is_out(outcome.verdict)) {
      counts.informativeOut.push_back(i);
    }
  }
  return counts;
}

/// The smallest margin of the required results that have one.
const judge::Outcome* tightest(const judge::Judgement& judgement) {
  const judge::Outcome* smallest = nullptr;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const judge::Outcome& outcome = judgement.all(i);
    if (outcome.required && outcome.margin && (!smallest || *outcome.margin < *smallest->margin)) smallest = &outcome;
  }
  return smallest;
}

QString countText(judge::Verdict verdict, int n) {
  switch (verdict) {
    case judge::Verdict::kPass:
      return Wording::tr("%n pass", "results", n);
    case judge::Verdict::kConditionalPass:
      return Wording::tr("%n conditional pass", "results", n);
    case judge::Verdict::kConditionalFail:
      return Wording::tr("%n conditional fail", "results", n);
    case judge::Verdict::kFail:
      return Wording::tr("%n fail", "results", n);
    case judge::Verdict::kUndetermined:
      return Wording::tr("%n undetermined", "results", n);
  }
  return {};
}

const QString kGap = QStringLiteral("    ");

void addSecondLine(SentenceContent& content, const judge::Judgement& judgement) {
  const Counts counts = countsOf(judgement);
  const auto both = [&content](const SentenceRun& run) {
    content.second.append(run);
    content.secondShort.append(run);
  };
  if (const judge::Outcome* smallest = tightest(judgement)) {
    const QString label = counts.withoutMargin == 0
                              ? Wording::tr("Smallest margin")
                              : Wording::tr("Smallest margin of the other %n", "results that have a value",
                                            int(counts.required - counts.withoutMargin));
    SentenceRun before, value;
    before.text = label + u' ';
    value.text = Wording().margin(*smallest);
    value.strong = true;
    both(before);
    both(value);
  }
  using judge::Verdict;
  for (const Verdict verdict :
       {Verdict::kPass, Verdict::kConditionalPass, Verdict::kConditionalFail, Verdict::kFail, Verdict::kUndetermined}) {
    const auto& outcomes = counts.byVerdict[static_cast<std::size_t>(verdict)];
    SentenceRun run;
    run.text = countText(verdict, int(outcomes.size()));
    if (!outcomes.empty() && verdict != Verdict::kPass) {
      run.link = int(content.links.size());
      content.links.append({judge::SentencePart::Link::kMore, outcomes, {}, {}});
    }
    SentenceRun gap;
    gap.text = kGap;
    content.second.append(gap);
    if (!outcomes.empty()) {
      content.secondShort.append(gap);
      content.secondShort.append(run);
    }
    run.sign = verdict;
    content.second.append(run);
  }
  if (!counts.informativeOut.empty()) {
    SentenceRun gap, run;
    gap.text = kGap;
    run.text = counts.informativeOut.size() == 1
                   ? Wording::tr("1 informative result over its limit")
                   : Wording::tr("%n informative results over their limits", "", int(counts.informativeOut.size()));
    run.link = int(content.links.size());
    content.links.append({judge::SentencePart::Link::kMore, counts.informativeOut, {}, {}});
    both(gap);
    both(run);
  }
}

QString spokenLine(const QList<SentenceRun>& line) {
  QString text;
  for (const SentenceRun& run : line) {
    if (run.disc > 0) text += Wording::tr("Result %1: ", "read aloud before a problem").arg(run.disc);
    text += run.text == kGap ? QStringLiteral(", ") : run.text;
  }
  return text.simplified();
}

}  // namespace

void SentenceContent::addLink(QList<SentenceRun>& line, SentenceRun run, SentenceLink link) {
  run.link = int(links.size());
  links.append(std::move(link));
  line.append(std::move(run));
}

QString SentenceContent::linkText(int link) const {
  for (const auto* line : {&first, &second})
    for (const SentenceRun& run : *line)
      if (run.link == link) return run.text;
  return {};
}

SentenceContent sentenceOf(const judge::Judgement& judgement) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kVerdict;
  content.verdict = judgement.verdict;
  for (const judge::SentencePart& part : judgement.sentence.parts) {
    SentenceRun run;
    run.text = QString::fromStdString(part.text);
    run.disc = part.disc;
    run.strong = part.strong;
    run.signal = part.signal;
    if (part.link == judge::SentencePart::Link::kNone)
      content.first.append(run);
    else
      content.addLink(content.first, run, {part.link, part.outcomes, part.zones, {}});
  }
  addSecondLine(content, judgement);
  content.spoken = spokenLine(content.first) + u' ' + spokenLine(content.second);
  return content;
}

}  // namespace ovenwright::widgets
