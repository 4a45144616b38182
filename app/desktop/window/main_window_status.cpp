#include <algorithm>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/import/reading_choices.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/text/language.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/main_window.h"

// The status line: what was read and how, and by which rule it is judged.
namespace ovenwright::desktop {
namespace {

/// A word of a list inside a sentence: nouns keep their capital in German.
QString insideSentence(const QString& word) { return languageInUse() == u"de" ? word : word.toLower(); }

}  // namespace

void MainWindow::refreshStatus() {
  if (areLotsShown()) {
    m_readAs->hide();
    m_rule->hide();
    m_status->setWords(m_lots->statusText());
    return;
  }
  if (isCompareShown()) {
    m_readAs->hide();
    m_rule->setVisible(m_compare->session()->compared() != nullptr);
    m_status->setWords(m_compare->statusText());
    m_rule->setWords(ruleText(m_compare->isGuarded()));
    return;
  }
  const auto view = m_document->view();
  m_readAs->setVisible(view != nullptr);
  m_rule->setVisible(view != nullptr);
  if (!view) {
    m_status->setWords(tr("Ready"));
    return;
  }
  if (m_task == Task::kTune && !m_shown) {
    m_readAs->hide();
    const bool ready = m_tune->session()->state() == TuneSession::State::kReady;
    m_status->setWords(ready ? tr("Prediction follows each edit") : tr("Nothing is predicted yet"));
    showRule(*view);
    return;
  }
  const auto& read_as = view->reading().read_as;
  QString text = tr("%1: %2 rows, every %3 s, %n channel(s)", nullptr, int(view->channels().size()))
                     .arg(m_document->current()->source.name, m_format.count(read_as.rows),
                          m_format.locale().toString(view->run().sample_interval_s, 'g', 4));
  if (view->entry()) {
    const QString at = m_format.seconds(view->entry()->at_s);
    text += QStringLiteral("; ") + (view->entry()->found_from == oven::Entry::Source::kLog
                                        ? tr("oven entry found at %1 s").arg(at)
                                        : tr("oven entry given at %1 s").arg(at));
  }
  m_status->setWords(text);
  QStringList read;
  const auto word = [&read](const Choices& choices, const std::string& value, const QString& pattern) {
    const auto known = std::ranges::find(choices, QString::fromStdString(value), &Choices::value_type::first);
    if (!value.empty())
      read << pattern.arg(known == choices.end() ? QString::fromStdString(value) : insideSentence(known->second));
  };
  word(delimiterChoices(), read_as.delimiter, QStringLiteral("%1"));
  word(decimalChoices(), read_as.decimal, tr("decimal %1"));
  const auto units = unitChoices();
  const auto unit = std::ranges::find(units, QString::fromStdString(read_as.unit), &Choices::value_type::first);
  read << (unit == units.end() ? QString::fromStdString(read_as.unit) : unit->second);
  const QString words = tr("Read as: %1").arg(read.join(QStringLiteral(", ")));
  m_readAs->setWords(words, true);
  showRule(*view);
}

QString MainWindow::ruleText(bool guarded) {
  return guarded ? tr("Decision rule: guarded, w = U") : tr("Decision rule: simple");
}

void MainWindow::showRule(const RunView& view) {
  const auto& windows = view.judgement().windows;
  const bool guarded = std::ranges::any_of(
      windows, [](const auto& window) { return window.decision_rule == window::DecisionRule::kGuarded; });
  m_rule->setWords(ruleText(guarded));
}

}  // namespace ovenwright::desktop
