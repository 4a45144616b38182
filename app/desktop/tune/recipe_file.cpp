#include "app/desktop/tune/recipe_file.h"

#include <QCoreApplication>

#include "app/desktop/tune/tune_words.h"
#include "core/files/text_file.h"
#include "core/oven/oven_file.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(RecipeFile)
};

}  // namespace

Result<std::string> saveRecipe(const oven::Recipe& measured, oven::Recipe edited, const QString& revision,
                               const QString& path) {
  QString from = QString::fromStdString(measured.identity.name);
  if (measured.identity.revision)
    from = Words::tr("%1, rev %2").arg(from, QString::fromStdString(*measured.identity.revision));
  edited.identity = {};
  edited.identity.name = measured.identity.name;
  edited.identity.revision = revision.toStdString();
  edited.identity.source =
      Words::tr("changed from %1; a prediction, to be confirmed with an instrumented run").arg(from).toStdString();
  std::vector<std::string> cautions;
  for (const QString& caution : cautionsInFull()) cautions.push_back(caution.toStdString());
  return files::write_file(path.toStdString(), oven::changed_recipe_text(edited, measured.identity, cautions),
                           files::Existing::kKeep);
}

}  // namespace ovenwright::desktop
