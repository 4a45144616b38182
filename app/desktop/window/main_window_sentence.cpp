#include <QFileInfo>
#include <QTimer>
#include <algorithm>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/document/document.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/import/reading_panel.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/text/said.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/sentence_states.h"

// What stands in the sentence's place: a reading under way, what did not work, the verdict, what was predicted; and
// what its links do.
namespace ovenwright::desktop {
namespace {

/// "5 cells": how many; 0 where it says something else.
int cellsIn(const std::string& words) {
  const QString text = QString::fromStdString(words);
  return text.endsWith(QStringLiteral(" cells")) || text == u"1 cell" ? text.section(u' ', 0, 0).toInt() : 0;
}

/// What it is called to read on without the cells or rows that a log was refused for; none where that cures nothing.
std::optional<QString> leftEmpty(const Error& error, const check::Request& setup) {
  if (setup.log.layout && setup.log.layout->leave_empty) return std::nullopt;
  if (error.where.line <= 0) return std::nullopt;
  const bool lacks_cells = cellsIn(error.found) > 0 && cellsIn(error.found) < cellsIn(error.expected);
  if (error.expected == "a temperature" || lacks_cells) return MainWindow::tr("Leave these cells empty");
  if (error.expected == "a time") return MainWindow::tr("Leave these rows out");
  return std::nullopt;
}

}  // namespace

void MainWindow::refreshSentence() {
  const auto activity = m_document->activity();
  if (activity && !m_slow->isActive() && m_slow->property("running").toBool()) {
    m_sentence->setContent(readingSentence(*activity, m_format));
  } else if (m_notice) {
    m_sentence->setContent(noticeSentence(*m_notice));
  } else if (isCompareShown()) {
    m_sentence->setContent(m_compare->sentence());
  } else if (const auto view = m_document->view(); view && m_task == Task::kTune && !m_shown) {
    m_sentence->setContent(m_tune->sentence());
  } else if (view) {
    auto content =
        widgets::sentenceOf(view->judgement(), view->entry() ? std::optional(view->entry()->at_s) : std::nullopt,
                            widgets::Wording(m_format));
    if (m_shown == m_import && !m_import->isFailureShown())
      addReading(content, *view, m_format);
    else
      addDoubts(content, *view);
    if (const int warnings = int(this->warnings().size()); warnings > 0) addWarnings(content, warnings);
    m_sentence->setContent(std::move(content));
  } else if (!activity) {
    m_sentence->setContent(emptySentence());
  }
  placeHead();
}

QStringList MainWindow::warnings() const {
  QStringList all;
  const auto view = m_document->view();
  if (!view) return all;
  for (const auto& warning : m_document->current()->checked->log.reading.warnings)
    if (!isDoubt(warning.message)) all << sentenceCase(inWords(warning.message, m_format.locale()));
  for (const auto& warning : view->judgement().warnings) all << sentenceCase(inWords(warning, m_format.locale()));
  all.removeDuplicates();
  return all;
}

void MainWindow::followLink(const widgets::SentenceLink& link) {
  using Link = judge::SentencePart::Link;
  if (link.command == u"stop") {
    m_document->stop();
    // At once, whatever the job still does before it sees it.
    m_slow->setProperty("running", false);
    if (!m_document->view()) m_sentence->setContent(emptySentence());
    refreshSentence();
    return;
  }
  if (link.command.startsWith(kAbout)) {
    if (m_shown != m_import) showImport();
    m_import->focusAbout(link.command.mid(kAbout.size()));
    return;
  }
  if (link.command == kWarnings) {
    showNotice({tr("Please note.", "before warnings"), paragraph(warnings()), {}});
    return;
  }
  if (!link.command.isEmpty() && m_notice) {
    const auto act = m_notice->cures.at(std::size_t(link.command.toInt())).act;
    m_notice.reset();
    m_document->dismissFailure();
    refreshSentence();
    emit pageChanged();  // Esc has nothing to take away any more
    if (act) act();
    return;
  }
  if (isCompareShown()) {
    m_compare->follow(link);
    return;
  }
  if (m_task == Task::kTune && !link.command.isEmpty()) {
    m_tune->follow(link);
    return;
  }
  switch (link.kind) {
    case Link::kWindowChooser:
      m_choosers->showWindow();
      return;
    case Link::kBoardChooser:
      m_choosers->showBoard();
      return;
    case Link::kFault:
      if (const auto channel = suspectOf(link)) {
        showImport();
        m_import->focusChannel(*channel);
        return;
      }
      break;
    case Link::kOutcome:
    case Link::kZones:
    case Link::kMore:
    case Link::kNone:
      break;
  }
  if (!link.outcomes.empty()) m_document->choose(link.outcomes.front());
}

/// The channel of a fault that was left in, as it is a person's to say what it is.
std::optional<std::size_t> MainWindow::suspectOf(const widgets::SentenceLink& link) const {
  const auto view = m_document->view();
  if (!view || link.outcomes.empty()) return std::nullopt;
  const auto channel = view->judgement().all(link.outcomes.front()).channel;
  if (!channel) return std::nullopt;
  const bool suspect = std::ranges::any_of(view->run().channels[*channel].faults, [](const run::Fault& fault) {
    return fault.action == run::FaultAction::kFlagged;
  });
  return suspect ? channel : std::nullopt;
}

void MainWindow::dropNotice() {
  if (!m_document->failure()) m_notice.reset();  // a log that was not read is told of until it is dismissed
}

void MainWindow::showNotice(const Notice& notice) {
  m_notice = notice;
  m_notice->cures.push_back({tr("Dismiss"), {}});
  refreshSentence();
  emit pageChanged();  // Esc has something to take away
}

Notice MainWindow::failureNotice(const Document::Failure& failure) {
  Notice notice{tr("%1 was not read.").arg(failure.log->source.name), errorText(failure.error), {}};
  if (!failure.others.isEmpty()) {
    notice.text = paragraph(
        {notice.text,
         tr("%n more could not be read: %1.", nullptr, int(failure.others.size())).arg(enumerated(failure.others))});
  }
  const auto again = [this, failure](const QString& label, check::Request setup) {
    return Notice::Cure{label,
                        [this, failure, setup = std::move(setup)] { m_document->open(failure.log->source, setup); }};
  };
  const auto& error = failure.error;
  const auto& setup = failure.log->setup;
  // The title names the log: a place in another file has that file's name before it.
  const bool elsewhere = !error.where.file.empty() && error.where.line > 0 &&
                         QString::fromStdString(error.where.file) != failure.log->source.path;
  if (elsewhere) {
    Error named = error;
    named.where.file = QFileInfo(QString::fromStdString(error.where.file)).fileName().toStdString();
    notice.text.replace(0, errorText(error).size(), errorWithFile(named));
  }
  const bool about_board = setup.board && error.where.file == setup.board->identity.file && !error.where.file.empty();
  const bool about_recipe =
      setup.recipe && error.where.file == setup.recipe->identity.file && !error.where.file.empty();
  if (about_board) {
    check::Request without = setup;
    without.board.reset();
    notice.cures.push_back(again(tr("Read it without the board"), std::move(without)));
  } else if (about_recipe) {
    check::Request without = setup;
    without.oven.reset();
    without.recipe.reset();
    notice.cures.push_back(again(tr("Read it without the oven"), std::move(without)));
  } else if (error.code == ErrorCode::kParse) {
    if (const auto label = leftEmpty(error, setup)) {
      check::Request lenient = setup;
      if (!lenient.log.layout) lenient.log.layout.emplace();
      lenient.log.layout->leave_empty = true;
      notice.cures.push_back(again(*label, std::move(lenient)));
    }
    const auto show = [this, failure] {
      m_import->showFailure(failure);
      m_shown = m_import;
      refreshPage();
    };
    if (error.where.line > 0) notice.cures.push_back({tr("Show the line"), show});
    notice.cures.push_back({tr("Read it another way"), show});
  } else {
    notice.cures.push_back(again(tr("Try again"), setup));
    notice.cures.push_back({tr("Open another log…"), [this] { openLogs(); }});
  }
  return notice;
}

void MainWindow::showFailure() {
  const auto& failure = m_document->failure();
  const auto* current = m_document->current();
  if (failure) {
    showNotice(failureNotice(*failure));
    if (m_shown == m_import && m_import->isFailureShown()) m_import->showFailure(failure);
  } else if (current && current->error) {
    Notice notice{tr("Not judged."), errorText(*current->error), {}};
    notice.cures.push_back({tr("Undo this change"), [this] { m_document->undoStack()->undo(); }});
    showNotice(notice);
  } else {
    m_notice.reset();
    refreshSentence();
  }
}

}  // namespace ovenwright::desktop
