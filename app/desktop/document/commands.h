#pragma once
#include <QUndoCommand>

#include "app/desktop/document/document.h"

namespace ovenwright::desktop {

/// Replaces what a log is judged with. Both sides keep their result, so undo and redo show it at once.
class SetupCommand : public QUndoCommand {
 public:
  /// `log` null: the setup that the next log gets.
  SetupCommand(Document* document, Document::LogPointer log, const QString& text, check::Request setup,
               Document::Rework rework, int mergeKey);
  void redo() override;
  void undo() override;
  int id() const override { return m_mergeKey; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  Document* m_document;
  Document::LogPointer m_log;
  LogState m_before, m_after;
  Document::Rework m_rework;
  int m_mergeKey;
};

/// Takes a log out of the document; undo brings it back with its result.
class CloseCommand : public QUndoCommand {
 public:
  CloseCommand(Document* document, Document::LogPointer log, const QString& text);
  void redo() override;
  void undo() override;

 private:
  Document* m_document;
  Document::LogPointer m_log;
  std::size_t m_at;
};

}  // namespace ovenwright::desktop
