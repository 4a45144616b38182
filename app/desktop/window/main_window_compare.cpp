#include "app/archive/keep.h"
#include "app/desktop/archive/archive_link.h"
#include "app/desktop/compare/archive_picker.h"
#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/import/reading_panel.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/main_window.h"

// Compare in the window: what its links and menus lead to.
namespace ovenwright::desktop {

void MainWindow::connectCompare() {
  connect(m_compare, &ComparePage::sentenceChanged, this, [this] {
    if (!isCompareShown()) return;
    refreshSentence();
    refreshStatus();
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
  connect(m_compare, &ComparePage::resultWanted, this, [this](std::size_t side, std::size_t outcome) {
    // By its name: the run may be judged against another window on its own page.
    const auto& judged = m_compare->session()->compared()->side(side).checked().judgement.all(outcome);
    const std::string requirement = judged.requirement_name, trace = judged.trace;
    showRunOf(side);
    const auto view = m_document->view();
    for (std::size_t i = 0; view && i < view->judgement().all_size(); ++i) {
      const auto& own = view->judgement().all(i);
      if (own.requirement_name == requirement && own.trace == trace) return m_document->choose(i);
    }
  });
  QMenu* add = m_compare->bar()->addMenu();
  connect(add->addAction(tr("&Open a log…")), &QAction::triggered, this, &MainWindow::openLogs);
  connect(add->addAction(tr("From the &archive…")), &QAction::triggered, this, &MainWindow::pickForCompare);
  connect(add->addAction(tr("Look at two &demo runs")), &QAction::triggered, this, &MainWindow::openDemoPair);
}

void MainWindow::showRunOf(std::size_t side) {
  const auto subject = m_compare->session()->subject(side);
  if (!subject) return;
  m_document->setCurrent(subject->log, subject->run);
  showTask(Task::kCheck);
}

void MainWindow::pickForCompare() {
  if (!m_picker) {
    m_picker = new ArchivePicker(m_archive, this);
    m_picker->setFormat(m_format);
    connect(m_picker, &ArchivePicker::picked, this, &MainWindow::openForCompare);
  }
  m_picker->showAnew();
}

void MainWindow::openForCompare(const std::vector<std::string>& ids) {
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
      [this](Result<std::vector<Kept>> runs) {
        if (!runs) {
          showNotice({tr("The run was not opened."), errorText(runs.error()), {}});
          return;
        }
        m_compare->session()->takeOpened();
        for (auto& run : *runs) {
          const auto& bytes = *run.with.log.bytes;
          const QString name = QString::fromStdString(run.with.log.name + ", " + run.id);
          m_document->open({{}, QByteArray(bytes.data(), qsizetype(bytes.size())), name}, std::move(run.with.request));
        }
      });
}

void MainWindow::openDemoPair() {
  m_compare->session()->takeOpened();
  openDemoRun(QStringLiteral("tern_run1.csv"), "recipe.toml");
  openDemoRun(QStringLiteral("tern_run2.csv"), "recipe_rev8.toml");
}

}  // namespace ovenwright::desktop
