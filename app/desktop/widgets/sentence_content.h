#pragma once
#include <QList>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "app/desktop/widgets/wording.h"
#include "core/judge/judgement.h"
#include "core/judge/sentence.h"

namespace ovenwright::widgets {

/// What a part of the sentence leads to.
struct SentenceLink {
  judge::SentencePart::Link kind = judge::SentencePart::Link::kNone;
  std::vector<std::size_t> outcomes;  ///< indexes into Judgement::all()
  std::vector<std::string> zones;
  QString command;  ///< for states without a judgement: "stop", "show the line", …; chosen by who made it
};

/// A stretch of text of one look.
struct SentenceRun {
  QString text;
  int disc = 0;         ///< numbered disc before it; 0: none
  bool strong = false;  ///< the verdict word
  bool signal = false;
  std::optional<int> link;             ///< index into SentenceContent::links
  std::optional<judge::Verdict> sign;  ///< verdict sign before it
  std::optional<double> progress;      ///< a bar filled to this fraction, in place of text
  bool dispensable = false;            ///< goes first where a low window has no room: it can be seen elsewhere
};

/// The sentence with its second line, and what its parts lead to. Also carries the states without a verdict: nothing
/// open, reading, a log that cannot be read, not judged.
struct SentenceContent {
  /// Pale: the limits alone, while reading; barred: what was asked for did not come about.
  enum class Sign { kVerdict, kPale, kBarred, kNone } signKind = Sign::kNone;
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  bool muted = false;  ///< in secondary text: nothing is open
  QList<SentenceRun> first;
  QList<SentenceRun> second;
  QList<SentenceRun> secondShort;  ///< without signs and zeros, where `second` does not fit on one line
  QList<SentenceLink> links;
  QString spoken;  ///< both lines as plain text

  /// What a link reads as.
  QString linkText(int link) const;
  /// Adds a stretch that is a link, to `first` or to `second`.
  void addLink(QList<SentenceRun>& line, SentenceRun run, SentenceLink link);
  /// Adds a link with a command to the second line, behind what stands there.
  void addCommand(const QString& text, const QString& command);
  /// Adds the parts of a sentence, numbers kept beside their units.
  void addParts(QList<SentenceRun>& line, const judge::Sentence& sentence);
};

/// The verdict sentence and, under it, smallest margin, counts with signs, and informative results.
/// @param entry_s  the board's entry on the log's clock: moments count from it; empty: they count on the log
/// @param telling  whether the run was measured or is predicted
SentenceContent sentenceOf(const judge::Judgement& judgement, std::optional<double> entry_s = std::nullopt,
                           const Wording& wording = Wording(), const judge::Telling& telling = {});

/// A state without a verdict: its title, what it means, the limits of the sign alone.
SentenceContent told(const QString& title, const QString& text);

}  // namespace ovenwright::widgets
