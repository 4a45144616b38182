#include "app/desktop/compare/compare_command.h"

namespace ovenwright::desktop {

CompareCommand::CompareCommand(CompareSession* session, const QString& text, CompareChoice after, int mergeKey)
    : QUndoCommand(text),
      m_session(session),
      m_before(session->choice()),
      m_after(std::move(after)),
      m_mergeKey(mergeKey) {}

void CompareCommand::redo() {
  m_session->apply(m_after);
  if (!m_first) emit m_session->undone();
  m_first = false;
}

void CompareCommand::undo() {
  m_session->apply(m_before);
  emit m_session->undone();
}

bool CompareCommand::mergeWith(const QUndoCommand* other) {
  const auto* next = static_cast<const CompareCommand*>(other);  // same id, so same class
  m_after = next->m_after;
  setText(next->text());
  return true;
}

}  // namespace ovenwright::desktop
