#include "app/desktop/text/sentence_words.h"

#include <QRegularExpression>
#include <QStringList>
#include <algorithm>

namespace ovenwright::desktop {
namespace {

QString text(const char* words) { return QString::fromUtf8(words); }

template <class Row>
const Row* find(std::span<const Row> rows, const QString& key) {
  const auto found = std::ranges::find_if(rows, [&](const Row& row) { return key == QLatin1String(row.key); });
  return found == rows.end() ? nullptr : &*found;
}

QString one(std::span<const KeyWords> rows, const QString& key) {
  const auto* row = find(rows, key);
  return row ? text(row->one) : QString();
}

QString counted(const KeyWords& words, int count) { return text(count == 1 || !words.more ? words.one : words.more); }

/// The first {value} with its uncertainty.
QString withU(QString words) {
  const QString value = QStringLiteral("{value}");
  const qsizetype at = words.indexOf(value);
  return at < 0 ? words : words.replace(at, value.size(), QStringLiteral("{value.U}"));
}

/// Puts the sentences of one language together.
class Composer {
 public:
  Composer(const SentenceWords& words, QString id, int count) : m_words(words), m_id(id.split(u'.')), m_count(count) {}

  QString compose() const {
    const QString& kind = m_id[0];
    if (const auto* fixed = find(m_words.fixed, m_id.join(u'.'))) return counted(*fixed, m_count);
    const bool predicted = kind == u"predicted";  // its other sentences are fixed
    const qsizetype at = predicted ? 1 : 0;
    if (m_id.value(at) == u"verdict" && m_id.size() > at + 1) {
      const QString word = one(m_words.verdicts, (predicted ? QStringLiteral("predicted_") : QString()) + m_id[at + 1]);
      return text(has("assumed") ? m_words.verdict_assumed : m_words.verdict).arg(word);
    }
    if (kind == u"problem" && m_id.size() >= 4) return problem();
    if (kind == u"never" && m_id.size() >= 3) return never();
    if (kind == u"not_reached" && m_id.size() >= 3) return notReached();
    if (kind == u"none" || kind == u"more_none" || kind == u"for") return none();
    if (m_id.size() >= 3) return inside();
    return {};
  }

 private:
  bool has(const char* word) const { return m_id.contains(QLatin1String(word)); }
  QString end() const { return text(m_words.stop); }

  QString statement(bool at_least) const {
    if (const auto* row = find(m_words.placements, m_id[1]))
      return QStringLiteral("{placement}") + text(at_least ? row->at_least : row->does);
    if (const auto* board = find(m_words.boards, m_id[1]))
      return text(board->noun) + text(at_least ? board->at_least : board->does);
    return {};
  }

  QString inside() const {
    const QString said = withU(statement(has("at_least")));
    const QString limit = text(m_id[2] == u"low" ? m_words.above_lower : m_words.below_upper);
    const char* pattern = m_id[0] == u"closest"    ? m_words.closest
                          : m_id[0] == u"tightest" ? m_words.tightest
                                                   : m_words.tight;
    return text(pattern).arg(said, limit);
  }

  QString problem() const {
    const auto* row = find(m_words.placements, m_id[1]);
    const auto* board = find(m_words.boards, m_id[1]);
    if (!row && !board) return {};
    const bool low = m_id[2] == u"low", within = has("within"), at_least = has("at_least");
    const QString far = row ? text(low ? row->low : row->high) : text(low ? board->low : board->high);
    QString sentence;
    if (m_id[3] != u"one") {
      if (!row) return {};
      QString by = text(m_id[3] == u"two" ? m_words.by_two : m_words.by_up_to);
      if (at_least) by = text(m_words.by_or_more).arg(by);
      sentence = text(m_words.problem_together)
                     .arg(one(m_words.together, m_id[3]), text(low ? row->low_together : row->high_together), by);
      if (within) sentence += text(m_words.within_their);
    } else if (at_least) {
      sentence = text(m_words.problem_at_least).arg(within ? withU(statement(true)) : statement(true), far);
      if (within) sentence += text(m_words.within_their);
    } else if (within) {
      sentence = text(m_words.problem_within).arg(withU(statement(false)), far);
    } else {
      sentence = text(m_words.problem).arg(statement(false), far);
    }
    if (has("zones")) {
      const bool level = row ? row->level : board->level;
      sentence += text(level ? (within ? m_words.zones_set_within : m_words.zones_set)
                             : (within ? m_words.zones_in_within : m_words.zones_in));
    }
    for (const auto& cut : m_words.cuts)
      if (has(cut.key)) sentence += text(cut.one);
    return sentence + end();
  }

  /// "U12 centre never reaches 217 °C", with its colon.
  QString neverReaches(const QString& who) const {
    if (who == u"one") return text(m_words.never_one);
    if (const QString none = one(m_words.none_of, who); !none.isEmpty()) return text(m_words.never_none).arg(none);
    return text(m_words.never_more).arg(one(m_words.together, who));
  }

  QString never() const {
    const QString& who = m_id[1];
    QString sentence = neverReaches(who);
    if (m_id[2] != u"both") {
      sentence += text(m_words.never_time);
    } else {
      sentence += text(who == u"one"   ? m_words.never_both_one
                       : who == u"two" ? m_words.never_both_two
                                       : m_words.never_both_more);
    }
    if (has("zones")) sentence += text(m_words.never_zones);
    return sentence + end();
  }

  QString notReached() const {
    const QString& who = m_id[2];
    if (m_id[1] == u"level") return neverReaches(who) + text(m_words.no_value) + end();
    if (m_id[1] == u"other") {
      return (who == u"one" ? text(m_words.no_value_other)
                            : text(m_words.no_value_others).arg(one(m_words.together, who))) +
             end();
    }
    const auto* board = find(m_words.boards, m_id[1]);
    if (!board) return {};
    QString why = QStringLiteral("{reason}");
    if (who == u"one") why = text(m_words.not_reached_by).arg(QStringLiteral("{placement}"));
    if (who == u"all") why = text(m_words.not_reached_any);
    if (const QString together = one(m_words.together, who); !together.isEmpty() && who != u"all")
      why = text(m_words.not_reached_by).arg(together);
    return text(m_words.no_value_board).arg(text(board->noun), why) + end();
  }

  /// Every cause leads to what it is the cause of.
  static QString linked(const QString& cause) {
    return cause.contains(u'[') ? cause : QStringLiteral("[outcome:%1]").arg(cause);
  }

  QString none() const {
    if (m_id.size() < 2) return {};
    if (m_id[0] == u"for") {
      const auto* cause = find(m_words.causes, m_id[1]);
      return cause ? text(m_words.for_some).arg(linked(counted(*cause, m_count))) + end() : QString();
    }
    if (m_id.size() < 3) return {};
    const bool value = m_id[1] == u"value", more = m_id[0] == u"more_none";
    QString lacks = counted(more ? (value ? m_words.more_have_none : m_words.more_undetermined)
                                 : (value ? m_words.has_none : m_words.is_undetermined),
                            m_count);
    const auto* cause = find(m_words.causes, m_id[2]);
    const QString why = cause ? text(cause->one) : QString();
    if (more && !why.contains(u'[')) lacks = QStringLiteral("[outcome:%1]").arg(lacks);
    if (m_id[2] == u"several") return lacks + end();
    return cause ? text(m_words.because).arg(lacks, more ? why : linked(why)) + end() : QString();
  }

  const SentenceWords& m_words;
  QStringList m_id;
  int m_count;
};

}  // namespace

const SentenceWords* sentenceWords(const QString& language) {
  if (language == u"de") return &kGermanSentence;
  if (language == u"es") return &kSpanishSentence;
  if (language == u"zh_TW") return &kTaiwanSentence;
  if (language == u"zh_CN") return &kMainlandSentence;
  return nullptr;
}

QString sentenceTemplate(const SentenceWords& words, const QString& id, int count, bool on_log) {
  QString sentence = Composer(words, id, count).compose();
  static const QRegularExpression only_on_log(QStringLiteral("⟨([^⟩]*)⟩"));
  return sentence.replace(only_on_log, on_log ? QStringLiteral("\\1") : QString());
}

}  // namespace ovenwright::desktop
