#include "app/archive/archive_data.h"
#include "app/archive/pack.h"
#include "app/archive/store.h"

namespace ovenwright::archive {

Result<ReleasedWindow> Archive::release(const NewFile& window, const std::string& by) {
  const auto database = m_data->reading();
  if (!database) return database.error();
  const ReleasedWindow released{{window.name, window.revision, window.sha256}, now(), by};
  auto transaction = Transaction::begin(**database);
  if (!transaction) return transaction.error();
  const PackedContent content{window.bytes->size(), packed(*window.bytes, Effort::kSmall)};
  if (auto error = insertContent(**database, window.sha256, content)) return *error;
  auto error = (*database)->run(
      QStringLiteral("insert into released_window(sha256, name, revision, released_at, released_by) values(?,?,?,?,?)"),
      {digestBytes(window.sha256), storable(window.name), storable(window.revision.value_or("")),
       QVariant::fromValue(static_cast<qlonglong>(released.releasedAt.time_since_epoch().count())), storable(by)});
  if (!error) error = transaction->commit();
  if (error) {
    m_data->noteServer();
    return *error;
  }
  return released;
}

Result<std::vector<ReleasedWindow>> Archive::releasedWindows() {
  const auto database = m_data->reading();
  if (!database) return database.error();
  std::vector<ReleasedWindow> all;
  auto error =
      (*database)->run(QStringLiteral("select sha256, name, revision, released_at, released_by from released_window "
                                      "order by released_at desc, name"),
                       {}, [&](const QSqlQuery& row) {
                         const std::string revision = row.value(2).toString().toStdString();
                         all.push_back({{row.value(1).toString().toStdString(),
                                         revision.empty() ? std::nullopt : std::optional{revision},
                                         digestHex(row.value(0).toByteArray())},
                                        Moment{std::chrono::milliseconds{row.value(3).toLongLong()}},
                                        row.value(4).toString().toStdString()});
                         return true;
                       });
  if (error) {
    m_data->noteServer();
    return *error;
  }
  return all;
}

}  // namespace ovenwright::archive
