#pragma once
#include <QUndoCommand>

#include "app/desktop/tune/tune_session.h"

namespace ovenwright::desktop {

/// Replaces what was edited in Tune on one run.
class TuneCommand : public QUndoCommand {
 public:
  TuneCommand(TuneSession* session, std::shared_ptr<TuneBench> bench, const QString& text, TuneEdit after,
              int mergeKey);
  void redo() override;
  void undo() override;
  int id() const override { return m_mergeKey < 0 ? -1 : kFirstId + m_mergeKey; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  static constexpr int kFirstId = 1000000;  // apart from those of the document's commands on the same stack

  TuneSession* m_session;
  std::shared_ptr<TuneBench> m_bench;
  TuneEdit m_before, m_after;
  int m_mergeKey;
  bool m_first = true;
};

}  // namespace ovenwright::desktop
