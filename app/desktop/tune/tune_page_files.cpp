#include <QFileDialog>
#include <QFileInfo>

#include "app/desktop/editor/requirement_fields.h"
#include "app/desktop/tune/change_note.h"
#include "app/desktop/tune/recipe_file.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/window/profile_menus.h"
#include "core/files/profiles.h"
#include "core/files/text_file.h"

// What the Tune page writes to files.
namespace ovenwright::desktop {

void TunePage::saveRecipe() {
  const auto* bench = m_session->bench();
  if (!bench) return;
  const QString revision = nextRevision(bench->measured.identity.revision);
  const QString folder = QString::fromStdString(files::user_folder(files::Kind::kRecipe));
  QDir().mkpath(folder);
  QString stem = QString::fromStdString(bench->measured.identity.name).toLower().replace(u' ', u'_');
  if (stem.isEmpty()) stem = QStringLiteral("recipe");
  QString path = folder + u'/' + stem + QStringLiteral("_rev") + revision + QStringLiteral(".toml");
  for (int n = 2; QFileInfo::exists(path); ++n)
    path =
        folder + u'/' + stem + QStringLiteral("_rev") + revision + u'_' + QString::number(n) + QStringLiteral(".toml");
  path = QFileDialog::getSaveFileName(this, tr("Save as a recipe"), path, tr("TOML files (*.toml)"), nullptr,
                                      QFileDialog::DontConfirmOverwrite);
  if (path.isEmpty()) return;
  if (!path.endsWith(QStringLiteral(".toml"))) path += QStringLiteral(".toml");
  saveRecipeTo(path);
}

void TunePage::saveRecipeTo(const QString& path) {
  const auto* bench = m_session->bench();
  if (!bench) return;
  const auto saved =
      desktop::saveRecipe(bench->measured, bench->edit.recipe, nextRevision(bench->measured.identity.revision), path);
  if (!saved) {
    emit troubled(tr("The recipe was not saved."), saved.error());
    return;
  }
  emit noted(
      tr("Saved as %1. It is a prediction: confirm it with an instrumented run.").arg(QFileInfo(path).fileName()));
}

void TunePage::saveNote(bool pdf) {
  const auto* bench = m_session->bench();
  if (!bench) return;
  const QString name = QString::fromStdString(bench->measured.identity.name).toLower().replace(u' ', u'_') +
                       (pdf ? QStringLiteral("_change.pdf") : QStringLiteral("_change.txt"));
  const QString path =
      QFileDialog::getSaveFileName(this, tr("Save the change note"), m_settings->openFolder() + u'/' + name,
                                   pdf ? tr("PDF (*.pdf)") : tr("Text (*.txt)"));
  if (!path.isEmpty()) saveNoteTo(path, pdf);
}

void TunePage::saveNoteTo(const QString& path, bool pdf) {
  const auto* bench = m_session->bench();
  const auto view = m_document->view();
  if (!bench || !view || !m_session->isSettled()) return;
  ChangeNote note{bench->oven, bench->measured, bench->edit.recipe, QString(), QString(), QString(), bench->prediction};
  note.run = m_document->current()->source.name;
  if (view->board()) note.board = titleOf(view->board()->identity);
  note.window = titleOf(view->judgement().windows);
  Result<bool> written = true;
  if (pdf) {
    written = writeChangeNotePdf(note, m_format, path);
  } else if (const auto text = files::write_file(path.toStdString(), changeNoteText(note, m_format).toStdString(),
                                                 files::Existing::kReplace);
             !text) {
    written = text.error();
  }
  if (!written) {
    emit troubled(tr("The change note was not saved."), written.error());
    return;
  }
  emit noted(tr("The change note is saved as %1.").arg(QFileInfo(path).fileName()));
}

}  // namespace ovenwright::desktop
