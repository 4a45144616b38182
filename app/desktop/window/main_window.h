#pragma once
#include <QMainWindow>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/document/document.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/text/format.h"
#include "app/desktop/window/notice.h"

class QLabel;
class QMimeData;
class QStackedWidget;
class QTimer;

namespace ovenwright::widgets {
class Sentence;
struct SentenceLink;
}  // namespace ovenwright::widgets

namespace ovenwright::desktop {

class ArchiveLink;
class ArchivePicker;
class CheckPage;
class ChooserBar;
class ComparePage;
class CurvePlot;
class DropFrame;
class ElidedLabel;
class EmptyPage;
class GroupPicker;
class HelpWindow;
class ImportPage;
class KeepForm;
class LayoutMemory;
class LotsPage;
class ProfileMenus;
class RoomyArea;
class Settings;
class SettingsWindow;
class TaskRail;
class TunePage;
class WatchWindow;
class OvenPage;
class WindowPage;
struct GroupMember;

/// The one window: rail of tasks, bar of choosers, sentence, the page of the task, status line. Logs can be dropped on
/// it anywhere, at any time.
class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  MainWindow(Document* document, Settings* settings, ArchiveLink* archive);
  ~MainWindow() override;

  ProfileMenus* profiles() { return m_profiles; }
  /// The tasks of the rail, in its order.
  enum class Task { kCheck, kTune, kCompare, kLots };
  Task task() const { return m_task; }
  void showTask(Task task);
  CheckPage* checkPage() { return m_check; }
  TunePage* tunePage() { return m_tune; }
  ComparePage* comparePage() { return m_compare; }
  LotsPage* lotsPage() { return m_lots; }
  KeepForm* keepForm() { return m_keepForm; }
  GroupPicker* groupPicker() { return m_groups; }  ///< null until it was wanted
  SettingsWindow* settingsWindow();
  WatchWindow* watchWindow();
  widgets::Sentence* sentence() { return m_sentence; }
  void openDemo();
  void openDemoPair();  ///< two runs, to be compared
  void showNotice(const Notice& notice);
  void showImport();  ///< how the log was read
  void showWindowEditor(std::size_t window = 0, int requirement = -1);
  void showOvenEditor();  ///< where the run has an oven
  void showResult();      ///< back from any of them
  enum class Page { kResult, kImport, kWindowEditor, kOvenEditor };
  Page shownPage() const;
  void showPage(Page page);
  void goOnFrom(const MainWindow& before);  ///< with what is half typed, in another language
  void showDropFrame(int logs);

  void saveState();  ///< size, splitters, tabs

 signals:
  void languageChosen();  ///< another one stands in the settings: this window keeps its texts
  void taskChanged();
  void pageChanged();  ///< another task, an editor, or how the log was read

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool event(QEvent* event) override;

 private:
  void buildLayout();
  void buildActions();               // actions.cpp
  void buildKeep();                  // main_window_keep.cpp
  void refreshWhere();               // likewise: where records go
  void connectLots();                // main_window_lots.cpp
  void openKept(const QString& id);  // likewise: a run of the archive
  void placeHead();                  // likewise
  bool areLotsShown() const { return m_task == Task::kLots && !m_shown; }
  void placeOnScreen();   ///< as it was left; at first inside the screen, whatever its size
  void connectCompare();  // main_window_compare.cpp
  void showRunOf(std::size_t side, std::size_t run = 0);
  void pickForCompare();
  /// Runs of the archive, by the names they are opened under, that are to be compared as groups.
  struct KeptGroups {
    QStringList a, b;
  };
  void pickGroups();  ///< of what is open
  void compareKept(const std::vector<std::string>& ids);
  void askGroups(std::vector<GroupMember> members, const std::vector<std::optional<std::size_t>>& sides,
                 std::function<void(const QStringList&, const QStringList&)> then);
  void openForCompare(const std::vector<std::string>& ids, const std::optional<KeptGroups>& groups);
  bool isCompareShown() const { return m_task == Task::kCompare && !m_shown; }
  void openDemoRun(const QString& log, const char* recipe_name);
  void fillRecent();
  void openLogs();
  /// An edit that stands in no file: what it is of, what it says, and where it is seen.
  struct Unsaved {
    QString name;
    std::string text;
    Document::LogPointer log;
    std::function<void()> show;
  };
  /// Of a log, else of all that is open.
  std::vector<Unsaved> unsavedEdits(const Document::LogPointer& of = nullptr);  // main_window_close.cpp
  /// In the sentence's place; false where there is nothing to ask.
  bool askAboutUnsaved(std::vector<Unsaved> unsaved, std::function<void()> closeAnyway);
  void closeLog();  ///< the one that is shown
  void paste();
  void openMime(const QMimeData& dropped);  // main_window_drop.cpp
  CurvePlot* plot();                        // of the task that is shown
  void copyText();
  void copyPicture();
  void stepPart(int by);
  void setFormat();
  void fitHead();    ///< in a low window sentence and rail are smaller
  void fitStatus();  // main_window_status.cpp: what can be found elsewhere goes first
  void refreshSentence();
  void buildStatusBar();
  void refreshStatus();
  void showRule(const RunView& view);
  void setRule(bool guarded);
  void refreshPage();
  void followLink(const widgets::SentenceLink& link);
  void showFailure();
  std::optional<std::size_t> suspectOf(const widgets::SentenceLink& link) const;
  void dropNotice();
  QStringList warnings() const;  ///< of the log, the recipe and the window, each a sentence
  Notice failureNotice(const Document::Failure& failure);
  void note(const QString& text);  // in the status line for 5 s
  QAction* addAction(QMenu* menu, const QString& text, const QKeySequence& keys, std::function<void()> act);

  Document* m_document;
  Settings* m_settings;
  ArchiveLink* m_archive;
  Format m_format;
  ProfileMenus* m_profiles;
  QAction *m_undo, *m_redo, *m_keep;
  ChooserBar* m_choosers;
  QWidget *m_chooserBlock, *m_sentenceBlock;
  widgets::Sentence* m_sentence;
  TaskRail* m_rail;
  ElidedLabel *m_status, *m_readAs, *m_rule, *m_watching, *m_where;
  QString m_statusLong, m_statusShort, m_ruleLong, m_ruleShort;
  RoomyArea* m_area;  ///< around all but rail, menus and status line
  QStackedWidget* m_pages;
  EmptyPage* m_empty;
  CheckPage* m_check;
  TunePage* m_tune;
  ComparePage* m_compare;
  ArchivePicker* m_picker = nullptr;  // made when it is first wanted
  GroupPicker* m_groups = nullptr;    // likewise
  LotsPage* m_lots;
  Task m_task = Task::kCheck;
  std::unique_ptr<LayoutMemory> m_layouts;
  ImportPage* m_import;
  WindowPage* m_editor;
  OvenPage* m_ovenEditor;
  QWidget* m_shown = nullptr;  // in place of the result: one of these three
  KeepForm* m_keepForm = nullptr;
  SettingsWindow* m_settingsWindow = nullptr;  // made when it is wanted
  WatchWindow* m_watchWindow = nullptr;        // likewise
  DropFrame* m_dropFrame;
  HelpWindow* m_help = nullptr;
  QMenu* m_recent = nullptr;
  QTimer* m_slow;  // runs out when a reading takes long enough to be told of
  std::optional<Notice> m_notice;
  bool m_leaving = false;  // without saving
};

}  // namespace ovenwright::desktop
