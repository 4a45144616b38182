#include "app/desktop/widgets/sentence_content.h"

#include <QRegularExpression>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/translated_phrases.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/decide_run.h"

namespace ovenwright::widgets {
namespace {

/// Required results of a verdict.
std::vector<std::size_t> resultsOf(const judge::Judgement& judgement, judge::Verdict verdict) {
  std::vector<std::size_t> results;
  for (std::size_t i = 0; i < judgement.all_size(); ++i)
    if (judgement.all(i).required && judgement.all(i).verdict == verdict) results.push_back(i);
  return results;
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

SentenceRun textRun(const QString& text, bool strong = false) {
  SentenceRun run;
  run.text = text;
  run.strong = strong;
  return run;
}

class SecondLine {
 public:
  SecondLine(SentenceContent& content, const judge::Judgement& judgement, const Wording& wording)
      : m_content(content), m_judgement(judgement), m_wording(wording), m_summary(judge::summarise(judgement)) {}

  void add() {
    addMargins();
    using judge::Verdict;
    for (const Verdict verdict :
         {Verdict::kPass, Verdict::kConditionalPass, Verdict::kConditionalFail, Verdict::kFail, Verdict::kUndetermined})
      addCount(verdict);
    addInformative();
  }

 private:
  void both(const SentenceRun& run) {
    m_content.second.append(run);
    m_content.secondShort.append(run);
  }

  void addMargins() {
    if (m_summary.smallest.empty()) return;
    const QString label = m_summary.of_the_other ? Wording::tr("Smallest margin of the other %n",
                                                               "results that have a value", *m_summary.of_the_other)
                                                 : Wording::tr("Smallest margin");
    both(textRun(label + u' '));
    for (std::size_t i = 0; i < m_summary.smallest.size(); ++i) {
      const judge::Outcome& outcome = m_judgement.all(m_summary.smallest[i].outcome);
      const QString name = Wording::requirement(outcome.requirement_name);
      if (i > 0) both(textRun(QStringLiteral("; ") + name + u' '));
      both(textRun(m_wording.margin(outcome), true));
      if (i == 0 && m_summary.smallest.size() > 1) both(textRun(QStringLiteral(" (") + name + u')'));
    }
  }

  void addCount(judge::Verdict verdict) {
    auto results = resultsOf(m_judgement, verdict);
    // A count is one piece where a line ends.
    SentenceRun run = textRun(countText(verdict, int(results.size())).replace(u' ', QChar(QChar::Nbsp)));
    const bool any = !results.empty();
    if (any && verdict != judge::Verdict::kPass) run.link = addTarget(std::move(results));
    if (any) {
      SentenceRun gap = textRun(kGap);
      gap.dispensable = run.dispensable = verdict == judge::Verdict::kPass;
      m_content.secondShort.append(gap);
      m_content.secondShort.append(run);
    }
    run.sign = verdict;
    m_content.second.append(textRun(kGap));
    m_content.second.append(run);
  }

  void addInformative() {
    if (m_summary.informative_out.empty()) return;
    SentenceRun run =
        textRun(m_summary.informative_out.size() == 1 ? Wording::tr("1 informative result over its limit")
                                                      : Wording::tr("%n informative results over their limits", "",
                                                                    int(m_summary.informative_out.size())));
    run.link = addTarget(m_summary.informative_out);
    run.dispensable = true;
    SentenceRun gap = textRun(kGap);
    gap.dispensable = true;
    both(gap);
    both(run);
  }

  int addTarget(std::vector<std::size_t> results) {
    m_content.links.append({judge::SentencePart::Link::kMore, std::move(results), {}, {}});
    return int(m_content.links.size()) - 1;
  }

  SentenceContent& m_content;
  const judge::Judgement& m_judgement;
  const Wording& m_wording;
  const judge::Summary m_summary;
};

/// Numbers stay beside their units, and the last zone beside the word before it, where a line ends.
QString keptTogether(QString text, bool zones) {
  static const QRegularExpression number_and_unit(QStringLiteral("([0-9]) (?=[°±]|s\\b)"));
  text.replace(QStringLiteral("± "), QStringLiteral("±\u00a0"));
  text.replace(number_and_unit, QStringLiteral("\\1\u00a0"));
  static const QRegularExpression percent(QStringLiteral("([0-9]) %"));
  text.replace(percent, QStringLiteral("\\1\u202f%"));
  if (const qsizetype blank = text.lastIndexOf(u' '); zones && blank > 0) text[blank] = QChar(QChar::Nbsp);
  return text;
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

void SentenceContent::addCommand(const QString& text, const QString& command) {
  SentenceLink link;
  link.command = command;
  for (auto* line : {&second, &secondShort})
    if (!line->isEmpty()) line->append(textRun(kGap));
  SentenceRun run = textRun(text);
  run.link = int(links.size());
  links.append(std::move(link));
  second.append(run);
  secondShort.append(run);
}

void SentenceContent::addParts(QList<SentenceRun>& line, const judge::Sentence& sentence) {
  for (const judge::SentencePart& part : sentence.parts) {
    SentenceRun run;
    run.text = keptTogether(QString::fromStdString(part.text), part.link == judge::SentencePart::Link::kZones);
    // A full stop or colon of this width has its blank within.
    constexpr char16_t kWideStop = 0x3002, kWideColon = 0xFF1A;
    const QChar before = line.isEmpty() || line.last().text.isEmpty() ? QChar() : line.last().text.back();
    if (run.text == u" " && (before == kWideStop || before == kWideColon)) continue;
    run.disc = part.disc;
    run.strong = part.strong;
    run.signal = part.signal;
    if (part.link == judge::SentencePart::Link::kNone)
      line.append(run);
    else
      addLink(line, run, {part.link, part.outcomes, part.zones, {}});
  }
}

QString SentenceContent::linkText(int link) const {
  for (const auto* line : {&first, &second})
    for (const SentenceRun& run : *line)
      if (run.link == link) return QString(run.text).replace(QChar(QChar::Nbsp), u' ');
  return {};
}

SentenceContent told(const QString& title, const QString& text) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kPale;
  content.first << textRun(title, true);
  content.spoken = desktop::paragraph({title, text});
  if (!text.isEmpty()) content.first << textRun(content.spoken.mid(title.size()));
  return content;
}

SentenceContent sentenceOf(const judge::Judgement& judgement, std::optional<double> entry_s, const Wording& wording,
                           const judge::Telling& telling) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kVerdict;
  content.verdict = judgement.verdict;
  const judge::Sentence sentence = judge::compose(judgement, TranslatedPhrases(wording, entry_s), telling);
  content.addParts(content.first, sentence);
  SecondLine(content, judgement, wording).add();
  content.spoken = desktop::paragraph({spokenLine(content.first), spokenLine(content.second)});
  return content;
}

}  // namespace ovenwright::widgets
