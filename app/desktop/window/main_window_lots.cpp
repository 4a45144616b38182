#include "app/archive/keep.h"
#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/main_window.h"

// The Lots page in the window: it has its own head in place of the choosers and the verdict. A run of the archive is
// opened with everything it was judged with.
namespace ovenwright::desktop {
namespace {

struct KeptRun {
  archive::Record record;
  archive::JudgedWith with;
};

}  // namespace

void MainWindow::connectLots() {
  connect(m_lots, &LotsPage::statusChanged, this, &MainWindow::refreshStatus);
  connect(m_lots, &LotsPage::noted, this, &MainWindow::note);
  connect(m_lots, &LotsPage::troubled, this,
          [this](const QString& title, const Error& error) { showNotice(noticeOf(title, error)); });
  connect(m_lots, &LotsPage::openWanted, this, &MainWindow::openKept);
  // A log that is dropped here is to be seen.
  connect(m_document, &Document::opened, this, [this] {
    if (areLotsShown()) showTask(Task::kCheck);
  });
}

void MainWindow::openKept(const QString& id) {
  m_archive->ask<KeptRun>(
      this, QStringLiteral("open"),
      [id = id.toStdString()](archive::Archive& archive, const ArchiveLink::Stop&) -> Result<KeptRun> {
        auto record = archive.load(id);
        if (!record) return record.error();
        auto with = archive::judgedWith(archive, *record, {});
        if (!with) return with.error();
        return KeptRun{*std::move(record), *std::move(with)};
      },
      [this, id](Result<KeptRun> run) {
        if (!run) {
          Notice notice = noticeOf(tr("The run was not opened."), run.error());
          notice.cures.insert(notice.cures.begin(), {tr("Try again"), [this, id] { openKept(id); }});
          showNotice(notice);
          return;
        }
        const auto& bytes = *run->with.log.bytes;
        const QString name = QString::fromStdString(run->with.log.name);
        m_document->open({{}, QByteArray(bytes.data(), qsizetype(bytes.size())), name + QStringLiteral(", ") + id},
                         std::move(run->with.request));
      });
}

void MainWindow::placeHead() {
  const bool lots = areLotsShown();
  m_chooserBlock->setVisible(!lots);
  m_choosers->setVisible(!isCompareShown());
  m_compare->bar()->setVisible(isCompareShown());
  m_sentenceBlock->setVisible(!lots || m_notice || m_document->activity());
}

}  // namespace ovenwright::desktop
