#include "app/desktop/document/commands.h"

#include <algorithm>

namespace ovenwright::desktop {

SetupCommand::SetupCommand(Document* document, Document::LogPointer log, const QString& text, check::Request setup,
                           Document::Rework rework, int mergeKey)
    : QUndoCommand(text), m_document(document), m_log(std::move(log)), m_rework(rework), m_mergeKey(mergeKey) {
  m_before.setup = document->setup();
  if (m_log && m_log->settled) m_before.checked = m_log->checked;
  m_after.setup = std::move(setup);
}

void SetupCommand::redo() { m_document->apply(m_log, m_after, m_rework); }

void SetupCommand::undo() {
  if (m_log && m_log->settled) m_after.checked = m_log->checked;
  m_document->apply(m_log, m_before, m_rework);
}

bool SetupCommand::mergeWith(const QUndoCommand* other) {
  const auto* next = static_cast<const SetupCommand*>(other);  // same id, so same class
  if (next->m_log != m_log) return false;
  m_after = next->m_after;
  if (next->m_rework == Document::Rework::kRead) m_rework = next->m_rework;
  return true;
}

CloseCommand::CloseCommand(Document* document, Document::LogPointer log, const QString& text)
    : QUndoCommand(text), m_document(document), m_log(std::move(log)) {
  const auto& logs = document->logs();
  m_at = std::size_t(std::ranges::find(logs, m_log) - logs.begin());
}

void CloseCommand::redo() { m_document->remove(m_log); }

void CloseCommand::undo() {
  m_document->insert(m_log, m_at);
  m_document->setCurrent(m_log, m_log->run);
}

}  // namespace ovenwright::desktop
