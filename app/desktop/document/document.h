#pragma once
#include <QObject>
#include <QStringList>
#include <QUndoStack>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/document/open_log.h"

namespace ovenwright::desktop {

/// The logs that are open, what each is judged with, and which result is looked at. Owns the undo stack: every edit
/// goes through edit(). Views draw it and never change it by another way.
class Document : public QObject {
  Q_OBJECT
 public:
  using LogPointer = std::shared_ptr<OpenLog>;
  enum class Rework { kJudge, kRead };  ///< what an edit asks for: judge the same samples anew, or read the file anew

  /// How far the reading of the log that will be shown is.
  struct Activity {
    QString name;
    double done = 0;
    qulonglong rows = 0;
  };
  /// A log that could not be read: it is not in logs(), and the open ones are as they were.
  struct Failure {
    LogPointer log;
    Error error;
    QStringList others;  ///< names of further ones that could not be read after it
    std::vector<log::ListedTable> tables = {};  ///< of `log`, to read another of them
  };

  explicit Document(QObject* parent = nullptr);
  ~Document() override;

  /// Reads and judges every file; the first that can be read is shown when it is done. What is shown stays until then.
  void openFiles(const QStringList& paths);
  void openPasted(const QByteArray& text);
  /// With a setup of its own in place of the one new logs get (the demo run, a failed log read another way).
  void open(const Source& source, check::Request setup);

  const std::vector<LogPointer>& logs() const { return m_logs; }
  OpenLog* current() const { return m_current.get(); }
  LogPointer currentPointer() const { return m_current; }
  /// The run that is shown; null with none open.
  std::shared_ptr<const RunView> view() const { return m_current ? m_current->view() : nullptr; }
  void setCurrent(const LogPointer& log, std::size_t run = 0);

  /// What the log that is shown is judged with; with none open, what the next one will be.
  const check::Request& setup() const { return m_current ? m_current->setup : m_setup; }
  /// Puts `setup` in place of the present one, undoably. Edits with the same mergeKey >= 0 that follow each other
  /// are one step (a number while it is typed).
  void edit(const QString& text, check::Request setup, Rework rework = Rework::kJudge, int mergeKey = -1);
  /// Before anything was opened: what logs are judged with, not undoable.
  void setInitialSetup(check::Request setup) { m_setup = std::move(setup); }
  void close(const LogPointer& log);  ///< undoable

  QUndoStack* undoStack() { return &m_undo; }

  /// The result that is looked at: an index into Judgement::all().
  std::optional<std::size_t> chosen() const { return m_chosen; }
  void choose(std::optional<std::size_t> outcome);
  /// The channel that is looked at, by a result or by itself: an index into the run's channels.
  std::optional<std::size_t> chosenChannel() const { return m_chosenChannel; }
  void chooseChannel(std::optional<std::size_t> channel);

  std::optional<Activity> activity() const;
  void stop();  ///< cancels the reading that activity() tells of
  const std::optional<Failure>& failure() const { return m_failure; }
  void dismissFailure();
  bool isBusy() const;

  /// Given to every job: see CheckJob::Input::remembered.
  void setRememberedLayouts(std::function<std::optional<log::Layout>(const log::Reading&)> remembered);

 signals:
  void logsChanged();     ///< the list, its order or a verdict in it
  void currentChanged();  ///< another run is shown, or the shown one has a new result
  void setupChanged();    ///< what the shown log is judged with
  void chosenChanged();
  void activityChanged();
  void failureChanged();
  void opened(const QString& name);

 private:
  friend class SetupCommand;
  friend class CloseCommand;
  void apply(const LogPointer& log, const LogState& state, Rework rework);
  void insert(const LogPointer& log, std::size_t at);
  void remove(const LogPointer& log);
  void start(const LogPointer& log, Rework rework);
  void abandonJob(OpenLog& log);
  void finish(const LogPointer& log, std::shared_ptr<const Checked> checked);
  void fail(const LogPointer& log, const Error& error, const std::vector<log::ListedTable>& tables);
  void chooseFirstProblem();  ///< of the sentence, so that a run that is out shows at once how
  void keepChoice();          ///< on the result of the same requirement and channel, where a new judgement has one
  void forgetPending(const LogPointer& log);

  int m_opened = 0;
  std::vector<LogPointer> m_logs;     // in the order they were opened, whatever took longest to read
  std::vector<LogPointer> m_pending;  // being read for the first time, in the order they were opened
  LogPointer m_show;                  // the one of m_pending to show when it is done
  LogPointer m_current;
  check::Request m_setup;
  std::optional<std::size_t> m_chosen, m_chosenChannel;
  std::string m_chosenName;  // of the chosen result's requirement
  std::optional<Failure> m_failure;
  Activity m_activity;
  std::function<std::optional<log::Layout>(const log::Reading&)> m_remembered;
  QUndoStack m_undo;
};

}  // namespace ovenwright::desktop
