#pragma once
#include <QObject>

#include "app/desktop/compare/compare_job.h"
#include "app/desktop/document/document.h"

namespace ovenwright::desktop {

/// Holds what is compared and how it came out; compares anew, once Compare is looked at, whenever one of the two has
/// another result. Views draw it; choices go through change(), undoably.
class CompareSession : public QObject {
  Q_OBJECT
 public:
  enum class State { kNothing, kOneRun, kWorking, kFailed, kReady };

  explicit CompareSession(Document* document, QObject* parent = nullptr);
  ~CompareSession() override;

  Document* document() const { return m_document; }
  void setActive(bool active);  ///< whether Compare is looked at
  State state() const;
  bool isBusy() const { return m_job.isBusy() || m_document->isBusy(); }
  /// The answer that stands is that to the present choice.
  bool isSettled() const;
  /// The last answer; of an older choice until the next arrives. Null without one.
  const std::shared_ptr<const ComparedLogs>& compared() const { return m_compared; }
  const std::optional<Error>& error() const { return m_error; }

  const CompareChoice& choice() const { return m_choice; }
  /// What stands for a side now, chosen or as the runs come: a run or a group; empty where there is none.
  CompareSubjects subjects(std::size_t side) const;
  std::optional<CompareSubject> subject(std::size_t side) const;  ///< the first of them
  bool isOfGroups() const { return subjects(0).size() + subjects(1).size() > 2; }
  std::vector<CompareSubject> runs() const;  ///< all that are open
  /// Puts another choice in the place of the present one, undoably. Edits with the same mergeKey >= 0 that follow each
  /// other are one step.
  void change(const QString& text, CompareChoice choice, int mergeKey = -1);
  void choose(std::size_t side, const CompareSubject& subject);  ///< the other side gives way where it has the same run
  void chooseGroups(CompareSubjects a, CompareSubjects b);
  void swap();
  /// The logs that are opened from now on until the document is at rest: the first becomes B, of two the other A.
  void takeOpened();
  /// The logs of these names, open already or opened from now on, become the groups once the document is at rest.
  void takeGroups(const QStringList& a, const QStringList& b);

 signals:
  void choiceChanged();
  void comparedChanged();  ///< another answer, or none any more
  void stateChanged();
  void undone();  ///< a choice came or went by undo or redo

 private:
  friend class CompareCommand;
  void apply(const CompareChoice& choice);
  void take(const QString& name);
  void finishGroups();
  bool areJudged() const;  // all of both sides, as they are set now
  void refresh();
  bool isOpen(const CompareSubject& subject) const;
  std::optional<CompareInput> input() const;

  Document* m_document;
  CompareChoice m_choice;
  CompareJob m_job;
  std::optional<CompareInput> m_asked;  // what m_compared or m_error is the answer to, or is to be
  std::shared_ptr<const ComparedLogs> m_compared;
  std::optional<Error> m_error;
  bool m_active = false, m_taking = false;
  std::vector<Document::LogPointer> m_taken;  // in the order they were opened
  QStringList m_groups[2];                    // names of logs that become groups; empty: none are waited for
};

}  // namespace ovenwright::desktop
