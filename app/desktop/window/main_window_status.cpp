#include <QHBoxLayout>
#include <QStatusBar>
#include <algorithm>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/import/reading_choices.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/text/language.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/main_window.h"

// The status line: what was read and how, and by which rule it is judged.
namespace ovenwright::desktop {
namespace {

constexpr double kStatus_px = 24;

}  // namespace

void MainWindow::buildStatusBar() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_readAs->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
  // Its links take the whole height: a status bar would add 3 px above and 2 px below them.
  statusBar()->setContentsMargins(int(theme.px(10)), -3, int(theme.px(10)), -2);
  for (QLabel* link : {m_readAs, m_watching, m_where}) {
    link->setMinimumHeight(int(theme.px(kStatus_px)));
    link->setContentsMargins(0, 0, 0, int(theme.px(4)));  // rich text stands lower than plain text beside it
  }
  statusBar()->setMinimumHeight(int(theme.px(kStatus_px)));
  // One widget: the bar hides it while a message stands there, whatever is shown and hidden within.
  auto* told = new QWidget;
  auto* told_layout = new QHBoxLayout(told);
  told_layout->setContentsMargins({});
  told_layout->addWidget(m_status);
  told_layout->addWidget(m_readAs);
  statusBar()->addWidget(told);
  statusBar()->addPermanentWidget(m_rule);
  statusBar()->setSizeGripEnabled(false);
}

void MainWindow::refreshStatus() {
  if (areLotsShown()) {
    m_readAs->hide();
    m_rule->hide();
    m_statusLong = m_statusShort = m_lots->statusText();
    fitStatus();
    return;
  }
  if (isCompareShown()) {
    m_readAs->hide();
    m_rule->setVisible(m_compare->session()->compared() != nullptr);
    m_statusLong = m_statusShort = m_compare->statusText();
    setRule(m_compare->isGuarded());
    fitStatus();
    return;
  }
  const auto view = m_document->view();
  m_readAs->setVisible(view != nullptr);
  m_rule->setVisible(view != nullptr);
  if (!view) {
    m_statusLong = m_statusShort = tr("Ready");
    fitStatus();
    return;
  }
  if (m_task == Task::kTune && !m_shown) {
    m_readAs->hide();
    const bool ready = m_tune->session()->state() == TuneSession::State::kReady;
    m_statusLong = m_statusShort = ready ? tr("Prediction follows each edit") : tr("Nothing is predicted yet");
    showRule(*view);
    fitStatus();
    return;
  }
  const auto& read_as = view->reading().read_as;
  QString text = tr("%1: %2 rows, every %3 s, %n channel(s)", nullptr, int(view->channels().size()))
                     .arg(m_document->current()->source.name, m_format.count(read_as.rows),
                          m_format.locale().toString(view->run().sample_interval_s, 'g', 4));
  m_statusShort = text;
  if (view->entry()) {
    const QString at = m_format.seconds(view->entry()->at_s);
    text += QStringLiteral("; ") + (view->entry()->found_from == oven::Entry::Source::kLog
                                        ? tr("oven entry found at %1 s").arg(at)
                                        : tr("oven entry given at %1 s").arg(at));
  }
  m_statusLong = text;
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
  if (!read_as.assumed.empty()) read << tr("%n assumed", "things about the reading", int(read_as.assumed.size()));
  const QString words = tr("Read as: %1").arg(enumerated(read));
  m_readAs->setWords(words, true);
  showRule(*view);
  fitStatus();
}

void MainWindow::setRule(bool guarded) {
  m_ruleLong = guarded ? tr("Decision rule: guarded, w = U") : tr("Decision rule: simple");
  m_ruleShort = guarded ? tr("Guarded, w = U") : tr("Simple rule");
}

void MainWindow::fitStatus() {
  const auto fits = [this](const QString& status, const QString& rule) {
    const auto room = [](const ElidedLabel* label, const QString& words) {
      return label->fontMetrics().horizontalAdvance(words) + 3 * label->fontMetrics().averageCharWidth();
    };
    int wanted = room(m_status, status);
    if (!m_rule->isHidden()) wanted += room(m_rule, rule);
    for (const ElidedLabel* label : {m_readAs, m_watching, m_where})
      if (!label->isHidden()) wanted += room(label, label->words());
    return wanted < width() - statusBar()->contentsMargins().left() - statusBar()->contentsMargins().right();
  };
  const bool all = fits(m_statusLong, m_ruleLong), most = all || fits(m_statusLong, m_ruleShort);
  const bool some = most || fits(m_statusShort, m_ruleShort);
  m_rule->setWords(all ? m_ruleLong : some ? m_ruleShort : QString());  // the panel says it too
  m_status->setWords(most ? m_statusLong : m_statusShort);
  m_status->setTip(most ? QString() : m_statusLong);
  m_rule->setTip(all ? QString() : m_ruleLong);
}

void MainWindow::showRule(const RunView& view) {
  const auto& windows = view.judgement().windows;
  const bool guarded = std::ranges::any_of(
      windows, [](const auto& window) { return window.decision_rule == window::DecisionRule::kGuarded; });
  setRule(guarded);
}

}  // namespace ovenwright::desktop
