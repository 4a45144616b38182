#include <algorithm>

#include "app/archive/keep.h"
#include "app/desktop/archive/archive_link.h"
#include "app/desktop/compare/archive_picker.h"
#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/compare/group_picker.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/import/reading_panel.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/profile_menus.h"

// Compare in the window: what its links and menus lead to.
namespace ovenwright::desktop {
namespace {

/// What a run of the archive is called once it is open.
QString keptName(const std::string& log, const std::string& id) { return QString::fromStdString(log + ", " + id); }

}  // namespace

void MainWindow::connectCompare() {
  connect(m_compare, &ComparePage::sentenceChanged, this, [this] {
    if (!isCompareShown()) return;
    refreshSentence();
    refreshStatus();
    setWindowTitle(m_compare->title() + QStringLiteral(" – ") + tr("Ovenwright"));
  });
  connect(m_compare, &ComparePage::undone, this, [this] { showTask(Task::kCompare); });
  connect(m_compare, &ComparePage::openWanted, this, &MainWindow::openLogs);
  connect(m_compare, &ComparePage::demoWanted, this, &MainWindow::openDemoPair);
  connect(m_compare, &ComparePage::ovenWanted, this, [this](std::size_t side) {
    showRunOf(side);
    m_choosers->showOven();
  });
  connect(m_compare, &ComparePage::entryWanted, this, [this](std::size_t side) {
    showRunOf(side);
    showImport();
    m_import->readingPanel()->focusEntry();
  });
  connect(m_compare, &ComparePage::resultWanted, this, [this](std::size_t side, std::size_t run, std::size_t outcome) {
    // By its name: the run may be judged against another window on its own page.
    const auto& judged = m_compare->session()->compared()->side(side).judgement().all(outcome);
    const std::string requirement = judged.requirement_name, trace = judged.trace;
    showRunOf(side, run);
    const auto view = m_document->view();
    for (std::size_t i = 0; view && i < view->judgement().all_size(); ++i) {
      const auto& own = view->judgement().all(i);
      if (own.requirement_name == requirement && own.trace == trace) return m_document->choose(i);
    }
  });
  connect(m_compare->bar(), &CompareBar::groupsWanted, this, &MainWindow::pickGroups);
  connect(m_lots, &LotsPage::compareWanted, this, &MainWindow::compareKept);
  QMenu* add = m_compare->bar()->addMenu();
  connect(add->addAction(tr("&Open a log…")), &QAction::triggered, this, &MainWindow::openLogs);
  connect(add->addAction(tr("From the &archive…")), &QAction::triggered, this, &MainWindow::pickForCompare);
  connect(add->addAction(tr("Look at two &demo runs")), &QAction::triggered, this, &MainWindow::openDemoPair);
}

void MainWindow::showRunOf(std::size_t side, std::size_t run) {
  const auto subjects = m_compare->session()->subjects(side);
  if (run >= subjects.size()) return;
  m_document->setCurrent(subjects[run].log, subjects[run].run);
  showTask(Task::kCheck);
}

void MainWindow::pickForCompare() {
  if (!m_picker) {
    m_picker = new ArchivePicker(m_archive, this);
    m_picker->setFormat(m_format);
    connect(m_picker, &ArchivePicker::picked, this, &MainWindow::compareKept);
  }
  m_picker->showAnew();
}

void MainWindow::askGroups(std::vector<GroupMember> members, const std::vector<std::optional<std::size_t>>& sides,
                           std::function<void(const QStringList&, const QStringList&)> then) {
  if (!m_groups) m_groups = new GroupPicker(this);
  m_groups->disconnect(this);
  connect(m_groups, &GroupPicker::picked, this, std::move(then));
  m_groups->ask(std::move(members), sides);
}

void MainWindow::pickGroups() {
  CompareSession* session = m_compare->session();
  const auto runs = session->runs();
  const auto a = session->subjects(0), b = session->subjects(1);
  std::vector<GroupMember> members;
  std::vector<std::optional<std::size_t>> sides;
  for (const auto& subject : runs) {
    const auto& setup = subject.log->setup;
    const auto title = [](const auto& profile) { return profile ? titleOf(profile->identity) : QString(); };
    members.push_back({QString::number(members.size()),
                       runTitle(*subject.log, subject.run),
                       title(setup.recipe),
                       {},
                       title(setup.oven),
                       title(setup.board),
                       subject.log->checked->views[subject.run].judgement().verdict});
    const auto in = [&](const CompareSubjects& side) { return std::ranges::find(side, subject) != side.end(); };
    sides.push_back(in(a) ? std::optional<std::size_t>(0) : in(b) ? std::optional<std::size_t>(1) : std::nullopt);
  }
  if (!session->isOfGroups()) sides.clear();
  askGroups(std::move(members), sides, [session, runs](const QStringList& of_a, const QStringList& of_b) {
    const auto subjects = [&](const QStringList& keys) {
      CompareSubjects all;
      for (const QString& key : keys) all.push_back(runs[key.toUInt()]);
      return all;
    };
    session->chooseGroups(subjects(of_a), subjects(of_b));
  });
}

void MainWindow::compareKept(const std::vector<std::string>& ids) {
  if (ids.size() <= 2) {
    showTask(Task::kCompare);
    openForCompare(ids, {});
    return;
  }
  m_archive->ask<std::vector<GroupMember>>(
      this, QStringLiteral("compare"),
      [ids](archive::Archive& archive, const ArchiveLink::Stop&) -> Result<std::vector<GroupMember>> {
        std::vector<GroupMember> members;
        for (const auto& id : ids) {
          const auto record = archive.load(id);
          if (!record) return record.error();
          const auto& summary = record->summary;
          const auto text = [](const std::string& of) { return QString::fromStdString(of); };
          files::Identity recipe;
          if (record->recipe) {
            recipe.name = record->recipe->name;
            recipe.revision = record->recipe->revision;
            recipe.sha256 = record->recipe->sha256;
          }
          members.push_back({text(id), keptName(summary.logName, id), record->recipe ? titleOf(recipe) : QString(),
                             text(summary.lot), text(summary.oven), text(summary.board), summary.verdict});
        }
        return members;
      },
      [this](Result<std::vector<GroupMember>> members) {
        if (!members) {
          showNotice({tr("The runs were not opened."), errorText(members.error()), {}});
          return;
        }
        askGroups(*members, {}, [this, members = *members](const QStringList& a, const QStringList& b) {
          showTask(Task::kCompare);
          std::vector<std::string> all;
          for (const QString& id : a + b) all.push_back(id.toStdString());
          KeptGroups groups;
          for (const GroupMember& member : members) {
            if (a.contains(member.key)) groups.a << member.name;
            if (b.contains(member.key)) groups.b << member.name;
          }
          openForCompare(all, groups);
        });
      });
}

void MainWindow::openForCompare(const std::vector<std::string>& ids, const std::optional<KeptGroups>& groups) {
  struct Kept {
    std::string id;
    archive::JudgedWith with;
  };
  m_archive->ask<std::vector<Kept>>(
      this, QStringLiteral("compare"),
      [ids](archive::Archive& archive, const ArchiveLink::Stop&) -> Result<std::vector<Kept>> {
        std::vector<Kept> all;
        for (const auto& id : ids) {
          auto record = archive.load(id);
          if (!record) return record.error();
          auto with = archive::judgedWith(archive, *record, {});
          if (!with) return with.error();
          all.push_back({id, *std::move(with)});
        }
        return all;
      },
      [this, groups](Result<std::vector<Kept>> runs) {
        if (!runs) {
          showNotice(noticeOf(tr("The run was not opened."), runs.error()));
          return;
        }
        if (!groups) m_compare->session()->takeOpened();
        for (auto& run : *runs) {
          const auto& bytes = *run.with.log.bytes;
          const QString name = keptName(run.with.log.name, run.id);
          const auto& open = m_document->logs();
          const bool known = std::ranges::any_of(open, [&](const auto& log) { return log->source.name == name; });
          if (groups && known) continue;
          m_document->open({{}, QByteArray(bytes.data(), qsizetype(bytes.size())), name}, std::move(run.with.request));
        }
        if (groups) m_compare->session()->takeGroups(groups->a, groups->b);
      });
}

void MainWindow::openDemoPair() {
  m_compare->session()->takeOpened();
  openDemoRun(QStringLiteral("tern_run1.csv"), "recipe.toml");
  openDemoRun(QStringLiteral("tern_run2.csv"), "recipe_rev8.toml");
}

}  // namespace ovenwright::desktop
