#include "app/archive/archive_data.h"
#include "app/archive/rows.h"

namespace ovenwright::archive {
namespace {

QString columnOf(Archive::Name which) {
  switch (which) {
    case Archive::Name::kBoard:
      return QStringLiteral("board");
    case Archive::Name::kOven:
      break;
  }
  return QStringLiteral("oven");
}

}  // namespace

Result<std::vector<std::string>> Archive::names(Name which) {
  const auto database = m_data->reading();
  if (!database) return database.error();
  // From one name to the next in the index, not over all runs: there are few names and many runs.
  const auto next =
      QStringLiteral("select run.%1 from run where run.%1 > ? order by run.%1 limit 1").arg(columnOf(which));
  const auto first_run = QStringLiteral("select ") + summaryColumns() +
                         QStringLiteral(" from run where run.%1 = ? limit 1").arg(columnOf(which));
  std::vector<std::string> names;
  QVariant last = QStringLiteral("");
  for (;;) {
    const auto found = (*database)->value(next, {last});
    if (!found) {
      m_data->noteServer();
      return found.error();
    }
    if (found->isNull()) return names;
    last = *found;
    std::string name = last.toString().toStdString();
    if (isShortened(name)) {
      Summary one;
      auto failed = (*database)->run(first_run, {last}, [&one](const QSqlQuery& row) {
        one = summaryOf(row);
        return false;
      });
      if (!failed) failed = fillShortened(**database, one);
      if (failed) return *failed;
      name = which == Name::kBoard ? one.board : one.oven;
    }
    names.push_back(std::move(name));
  }
}

}  // namespace ovenwright::archive
