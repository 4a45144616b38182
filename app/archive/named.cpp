// Records by what stands on paper: an id or a digest.
#include <algorithm>

#include "app/archive/archive_data.h"
#include "app/archive/repeated.h"
#include "app/archive/typed_digest.h"

namespace ovenwright::archive {

std::optional<TypedDigest> typedDigest(std::string text) {
  constexpr std::size_t kFewest = 8, kWhole = 64;
  std::erase_if(text, [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; });
  for (char& c : text) {
    if (c >= 'A' && c <= 'F') c = static_cast<char>(c - 'A' + 'a');
  }
  TypedDigest digest{text, {}};
  for (const std::string gap : {"\u2026", "..."}) {
    const auto at = text.find(gap);
    if (at == std::string::npos) continue;
    digest = {text.substr(0, at), text.substr(at + gap.size())};
    break;
  }
  const auto isHex = [](const std::string& part) {
    return part.find_first_not_of("0123456789abcdef") == std::string::npos;
  };
  const std::size_t digits = digest.begins.size() + digest.ends.size();
  if (!isHex(digest.begins) || !isHex(digest.ends) || digits < kFewest || digits > kWhole) return std::nullopt;
  return digest;
}

Result<std::vector<std::string>> Archive::idsOf(const std::string& name) {
  if (parseRecordId(name)) return std::vector{name};
  std::vector<std::string> ids;
  const auto digest = typedDigest(name);
  for (Database* database : digest ? m_data->places() : std::vector<Database*>{}) {
    const QString hex =
        database->isServer() ? QStringLiteral("encode(run.log, 'hex')") : QStringLiteral("lower(hex(run.log))");
    const QString like = QString::fromStdString(digest->begins + "%" + digest->ends);
    auto error = database->run(QStringLiteral("select run.chain, run.number from run join record on record.chain = "
                                              "run.chain and record.number = run.number where ") +
                                   hex +
                                   QStringLiteral(" like ? and %1 or record.digest like ? order by run.added_at, "
                                                  "run.chain, run.number")
                                       .arg(isNoRepetition(QStringLiteral("run"))),
                               {like, like}, [&](const QSqlQuery& row) {
                                 const auto id =
                                     recordId(row.value(0).toString().toStdString(), row.value(1).toULongLong());
                                 if (std::ranges::find(ids, id) == ids.end()) ids.push_back(id);
                                 return true;
                               });
    if (error) {
      m_data->noteServer();
      return *error;
    }
  }
  if (!ids.empty()) return ids;
  if (m_data->isServer && !m_data->server) return m_data->awayError();
  return Error{ErrorCode::kBadArgument,
               digest ? "there is no record of the log or record " + name
                      : "there is no record " + name +
                            ": an id ends in its number, a digest has eight digits at least, and one in groups is "
                            "given in quotes",
               {m_data->where, 0, 0},
               name,
               "an id of the archive, or the digest of a log or a record from a sheet"};
}

}  // namespace ovenwright::archive
