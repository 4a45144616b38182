#include "app/desktop/tune/tune_command.h"

namespace ovenwright::desktop {

TuneCommand::TuneCommand(TuneSession* session, std::shared_ptr<TuneBench> bench, const QString& text, TuneEdit after,
                         int mergeKey)
    : QUndoCommand(text),
      m_session(session),
      m_bench(std::move(bench)),
      m_before(m_bench->edit),
      m_after(std::move(after)),
      m_mergeKey(mergeKey) {}

void TuneCommand::redo() {
  m_session->apply(m_bench, m_after);
  if (!m_first) emit m_session->undone();
  m_first = false;
}

void TuneCommand::undo() {
  m_session->apply(m_bench, m_before);
  emit m_session->undone();
}

bool TuneCommand::mergeWith(const QUndoCommand* other) {
  const auto* next = static_cast<const TuneCommand*>(other);  // same id, so same class
  if (next->m_bench != m_bench) return false;
  m_after = next->m_after;
  setText(next->text());
  return true;
}

}  // namespace ovenwright::desktop
