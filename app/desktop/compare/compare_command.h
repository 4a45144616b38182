#pragma once
#include <QUndoCommand>

#include "app/desktop/compare/compare_session.h"

namespace ovenwright::desktop {

/// Replaces what was chosen in Compare.
class CompareCommand : public QUndoCommand {
 public:
  CompareCommand(CompareSession* session, const QString& text, CompareChoice after, int mergeKey);
  void redo() override;
  void undo() override;
  int id() const override { return m_mergeKey < 0 ? -1 : kFirstId + m_mergeKey; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  static constexpr int kFirstId = 2000000;  // apart from those of other commands on the same stack

  CompareSession* m_session;
  CompareChoice m_before, m_after;
  int m_mergeKey;
  bool m_first = true;
};

}  // namespace ovenwright::desktop
