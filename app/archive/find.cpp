#include <QRegularExpression>

#include "app/archive/archive_data.h"
#include "app/archive/repeated.h"
#include "app/archive/rows.h"
#include "app/archive/store.h"

namespace ovenwright::archive {
namespace {

QVariant milliseconds(Moment moment) {
  return QVariant::fromValue(static_cast<qlonglong>(moment.time_since_epoch().count()));
}

/// The conditions of a filter and their values, in order.
struct Conditions {
  QStringList all;
  QVariantList values;
  QString from = QStringLiteral(" from run");
  QString order = QStringLiteral("run");  ///< the table whose order lists have
  bool needRun = false;                   ///< whether one of them is about the run's row
  QString joining;                        ///< what holds both tables together; empty for one

  void addOfRun(const QString& condition, const QVariantList& given) {
    needRun = true;
    add(condition, given);
  }
  void add(const QString& condition, const QVariantList& given) {
    all.append(condition);
    values += given;
  }
  QString fromWhere() const {
    QStringList conditions = all;
    if (!joining.isEmpty()) conditions.prepend(joining);
    return conditions.isEmpty() ? from : from + QStringLiteral(" where ") + conditions.join(QStringLiteral(" and "));
  }
};

QStringList wordsOf(const Filter& filter) {
  return storable(folded(filter.text)).split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts);
}

/// "instr(search.words, ?) > 0 and …", once for each word.
QString containsAll(const QStringList& words, bool server) {
  const auto contains =
      server ? QStringLiteral("strpos(search.words, ?) > 0") : QStringLiteral("instr(search.words, ?) > 0");
  return QStringList(words.size(), contains).join(QStringLiteral(" and "));
}

QVariantList valuesOf(const QStringList& words) { return {words.begin(), words.end()}; }

/// Which of the two is walked, and which looked up, for a search by words.
enum class Walk { kWords, kRuns };

Result<Conditions> conditions(const Filter& filter, Database& database, Walk walk = Walk::kWords) {
  Conditions result;
  const bool server = database.isServer();
  const auto words = wordsOf(filter);
  if (!words.isEmpty() && walk == Walk::kWords) {
    // In this order: SQLite takes a cross join as it stands, and the words are many times smaller than the runs.
    result.from = QStringLiteral(" from search cross join run");
    result.order = QStringLiteral("search");
    result.joining = QStringLiteral("run.chain = search.chain and run.number = search.number");
    result.add(containsAll(words, server), valuesOf(words));
  } else if (!words.isEmpty()) {
    result.add(QStringLiteral("exists (select 1 from search where search.run_at = run.run_at and search.chain = "
                              "run.chain and search.number = run.number and %1)")
                   .arg(containsAll(words, server)),
               valuesOf(words));
  }
  const std::pair<const char*, const std::optional<std::string>*> names[] = {
      {"run.lot = ?", &filter.lot},   {"run.serial = ?", &filter.serial}, {"run.board = ?", &filter.board},
      {"run.oven = ?", &filter.oven}, {"run.recipe = ?", &filter.recipe}, {"run.window_name = ?", &filter.window}};
  for (const auto& [condition, name] : names) {
    if (*name) result.addOfRun(QLatin1String(condition), {column(**name)});
  }
  if (filter.logSha256) result.addOfRun(QStringLiteral("run.log = ?"), {digestBytes(*filter.logSha256)});
  if (!filter.verdicts.empty()) {
    QStringList marks;
    QVariantList verdicts;
    for (const auto verdict : filter.verdicts) {
      marks.append(QStringLiteral("?"));
      verdicts.append(QString::fromLatin1(judge::verdict_name(verdict)));
    }
    result.addOfRun(QStringLiteral("run.verdict in (") + marks.join(QLatin1Char(',')) + QLatin1Char(')'), verdicts);
  }
  if (filter.from) result.add(result.order + QStringLiteral(".run_at >= ?"), {milliseconds(*filter.from)});
  if (filter.to) result.add(result.order + QStringLiteral(".run_at < ?"), {milliseconds(*filter.to)});
  if (filter.latestOnly) {
    result.add(QStringLiteral("not exists (select 1 from superseded where superseded.chain = %1.chain and "
                              "superseded.number = %1.number)")
                   .arg(result.order),
               {});
    return result;
  }
  const auto repeated = hasRepeated(database);  // mostly there are none, and nothing need be asked for each row
  if (!repeated) return repeated.error();
  if (*repeated) result.add(isNoRepetition(result.order), {});
  return result;
}

QVariantList keyOf(const Cursor& cursor) {
  return {milliseconds(cursor.runAt), storable(cursor.chain),
          QVariant::fromValue(static_cast<qlonglong>(cursor.number))};
}

/// A page by time, in the order of the table that is walked, so that the walk ends with the page.
QString timeOrdered(Conditions& wanted, const std::optional<Cursor>& after, bool newest) {
  if (after) {
    wanted.add(QStringLiteral("(%1.run_at, %1.chain, %1.number) %2 (?, ?, ?)")
                   .arg(wanted.order, QLatin1String(newest ? "<" : ">")),
               keyOf(*after));
  }
  return QStringLiteral("select ") + summaryColumns() + wanted.fromWhere() +
         QStringLiteral(" order by %1.run_at %2, %1.chain %2, %1.number %2 limit ?")
             .arg(wanted.order, QLatin1String(newest ? "desc" : "asc"));
}

/// For a page by another key. Where few runs have the words, these are found and then sorted; where many have them it
/// is the other way round, so that a file's list that has an index for its order ends with the page.
Result<Walk> walkFor(Database& database, const Filter& filter) {
  constexpr int kMany = 20'000;
  const auto words = wordsOf(filter);
  if (words.isEmpty() || database.isServer()) return Walk::kWords;
  const auto found = database.value(QStringLiteral("select count(*) from (select 1 from search where %1 limit %2)")
                                        .arg(containsAll(words, false))
                                        .arg(kMany),
                                    valuesOf(words));
  if (!found) return found.error();
  return found->toInt() < kMany ? Walk::kWords : Walk::kRuns;
}

/// What a list is ordered by, of the row named `row`. The same order in both databases: texts by their bytes, and
/// never a null.
QString orderedBy(Order::Key key, const QString& row, bool server) {
  const auto text = [&](const char* column) {
    return row + QLatin1Char('.') + QLatin1String(column) + QLatin1String(server ? " collate \"C\"" : "");
  };
  switch (key) {
    case Order::Key::kTime:
      break;
    case Order::Key::kLot:
      return text("lot");
    case Order::Key::kBoard:
      return text("board");
    case Order::Key::kWindowRevision:
      return text("window_revision");
    case Order::Key::kVerdict: {
      QString rank = QStringLiteral("case ") + row + QStringLiteral(".verdict");
      for (const auto verdict : {judge::Verdict::kPass, judge::Verdict::kConditionalPass, judge::Verdict::kUndetermined,
                                 judge::Verdict::kConditionalFail, judge::Verdict::kFail}) {
        rank += QStringLiteral(" when '%1' then %2").arg(QLatin1String(judge::verdict_name(verdict))).arg(int(verdict));
      }
      return rank + QStringLiteral(" end");
    }
    case Order::Key::kMargin:
      return QStringLiteral("coalesce(%1.margin, -1e308)").arg(row);
  }
  return row + QStringLiteral(".run_at");
}

/// A page by another key: first which runs it has, of their keys alone, then what is shown of these few. Sorting keys
/// of 100 000 runs takes a fraction of what their whole rows would, so that no index is needed for it.
QString keyOrdered(Conditions& wanted, const std::optional<Cursor>& after, const Order& order, bool server) {
  const QString key = orderedBy(order.key, QStringLiteral("run"), server);
  if (after) {
    // What the last run of the page before is ordered by stands in its row, which never changes.
    const QString last = QStringLiteral("(select %1 from run ended where ended.chain = ? and ended.number = ?)")
                             .arg(orderedBy(order.key, QStringLiteral("ended"), server));
    const QVariantList itself = keyOf(*after).mid(1);
    wanted.addOfRun(QStringLiteral("(%1 %2 %3 or (%1 = %3 and (run.run_at, run.chain, run.number) < (?, ?, ?)))")
                        .arg(key, QLatin1String(order.descending ? "<" : ">"), last),
                    itself + itself + keyOf(*after));
  }
  const QString by = QStringLiteral(" order by %1 %2, run.run_at desc, run.chain desc, run.number desc")
                         .arg(key, QLatin1String(order.descending ? "desc" : "asc"));
  return QStringLiteral("select %1 from (select run.chain as chain, run.number as number").arg(summaryColumns()) +
         wanted.fromWhere() + by +
         QStringLiteral(" limit ?) page cross join run where run.chain = page.chain and run.number = page.number") + by;
}

}  // namespace

Result<Page> Archive::find(const Filter& filter, std::size_t limit, const std::optional<Cursor>& after, Order order) {
  const auto database = m_data->listing();
  if (!database) return database.error();
  const bool byTime = order.key == Order::Key::kTime;
  const auto walk = byTime ? Result<Walk>(Walk::kWords) : walkFor(**database, filter);
  if (!walk) {
    m_data->noteServer();
    return walk.error();
  }
  auto made = conditions(filter, **database, *walk);
  if (!made) {
    m_data->noteServer();
    return made.error();
  }
  auto& wanted = *made;
  const std::size_t asked = std::min<std::size_t>(limit, INT32_MAX - 1) + 1;  // one more tells whether there are more
  const QString sql = order.key == Order::Key::kTime ? timeOrdered(wanted, after, order.descending)
                                                     : keyOrdered(wanted, after, order, (*database)->isServer());
  Page page;
  auto error = (*database)->run(sql, wanted.values + QVariantList{static_cast<qlonglong>(asked)}, [&](const auto& row) {
    page.runs.push_back(summaryOf(row));
    return true;
  });
  if (error) {
    m_data->noteServer();
    return *error;
  }
  if (page.runs.size() == asked) {
    page.runs.pop_back();
    if (!page.runs.empty()) {
      const auto key = parseRecordId(page.runs.back().id);
      page.next = Cursor{page.runs.back().runAt, key->chain, key->number};
    }
  }
  if (!after && !page.next) page.total = page.runs.size();
  for (auto& summary : page.runs) {
    if (auto failed = fillShortened(**database, summary)) return *failed;
  }
  return page;
}

Result<std::size_t> Archive::count(const Filter& filter) {
  const auto database = m_data->listing();
  if (!database) return database.error();
  auto made = conditions(filter, **database);
  if (!made) {
    m_data->noteServer();
    return made.error();
  }
  auto& wanted = *made;
  if (!wanted.joining.isEmpty() && !wanted.needRun) {  // the words tell enough: the runs need not be looked at
    wanted.from = QStringLiteral(" from search");
    wanted.joining.clear();
  }
  const auto count = (*database)->value(QStringLiteral("select count(*)") + wanted.fromWhere(), wanted.values);
  if (count) return static_cast<std::size_t>(count->toULongLong());
  m_data->noteServer();
  return count.error();
}

Result<std::vector<LotSummary>> Archive::lots(const Filter& filter) {
  const auto database = m_data->listing();
  if (!database) return database.error();
  auto made = conditions(filter, **database);
  if (!made) {
    m_data->noteServer();
    return made.error();
  }
  auto& wanted = *made;
  wanted.addOfRun(QStringLiteral("run.lot <> ''"), {});
  QString sql = QStringLiteral("select run.lot, count(*), min(run.run_at), max(run.run_at)");
  for (const auto verdict : {judge::Verdict::kPass, judge::Verdict::kConditionalPass, judge::Verdict::kUndetermined,
                             judge::Verdict::kConditionalFail, judge::Verdict::kFail}) {
    sql += QStringLiteral(", cast(sum(case when run.verdict = '%1' then 1 else 0 end) as bigint)")
               .arg(QLatin1String(judge::verdict_name(verdict)));
  }
  sql += wanted.fromWhere() + QStringLiteral(" group by run.lot order by 4 desc, 1");
  std::vector<LotSummary> lots;
  auto error = (*database)->run(sql, wanted.values, [&](const QSqlQuery& row) {
    const auto number = [&row](int at) { return static_cast<std::size_t>(row.value(at).toULongLong()); };
    const auto moment = [&row](int at) { return Moment{std::chrono::milliseconds{row.value(at).toLongLong()}}; };
    lots.push_back({row.value(0).toString().toStdString(), number(1), number(4), number(5), number(6), number(7),
                    number(8), moment(2), moment(3)});
    return true;
  });
  if (error) {
    m_data->noteServer();
    return *error;
  }
  for (auto& lot : lots) {
    if (!isShortened(lot.lot)) continue;
    Summary one;
    auto failed = (*database)->run(
        QStringLiteral("select ") + summaryColumns() + QStringLiteral(" from run where run.lot = ? limit 1"),
        {storable(lot.lot)}, [&](const QSqlQuery& row) {
          one = summaryOf(row);
          return false;
        });
    if (!failed) failed = fillShortened(**database, one);
    if (failed) return *failed;
    lot.lot = one.lot;
  }
  return lots;
}

Result<std::vector<Summary>> Archive::runsOfLot(const std::string& lot) {
  Filter filter;
  filter.lot = lot;
  filter.latestOnly = true;
  auto page = find(filter, SIZE_MAX, std::nullopt, Order::kOldestFirst);
  if (!page) return page.error();
  return std::move(page->runs);
}

}  // namespace ovenwright::archive
