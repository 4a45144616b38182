#include <QFileDialog>
#include <QFileInfo>

#include "app/desktop/editor/requirement_fields.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/tune/change_note.h"
#include "app/desktop/tune/recipe_file.h"
#include "app/desktop/tune/tune_page.h"
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
  m_session->markSaved();
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
  oven::Recipe to = bench->edit.recipe;
  to.identity = {};
  to.identity.name = bench->measured.identity.name;
  to.identity.revision = nextRevision(bench->measured.identity.revision).toStdString();
  tune::Forecast forecast = bench->prediction->forecast;
  forecast.judgement = bench->prediction->judgement();
  report::ChangeNote note;
  note.oven = &bench->oven;
  note.from = &bench->measured;
  note.to = &to;
  note.predicted = {&forecast, 1};
  if (view->board()) note.boards = {view->board()->identity.name};
  note.measured = &view->judgement();
  note.learned_from = report::note_runs(bench->model->learned());
  note.fit = &bench->model->fit();
  note.sides_untold = to.top_C != to.bottom_C && !bench->model->toldSidesApart();
  if (bench->report)
    for (const auto& suggestion : bench->report->suggestions)
      if (sameNumbers(suggestion.recipe, to)) note.reason = suggestion.sentence;
  std::optional<Error> error;
  if (pdf) {
    if (const auto written = writeChangeNotePdf(note, m_format, path); !written) error = written.error();
  } else if (const auto written = files::write_file(path.toStdString(), changeNoteText(note, m_format).toStdString(),
                                                    files::Existing::kReplace);
             !written) {
    error = written.error();
  }
  if (error) {
    emit troubled(tr("The change note was not saved."), *error);
    return;
  }
  emit noted(tr("The change note is saved as %1.").arg(QFileInfo(path).fileName()));
}

}  // namespace ovenwright::desktop
