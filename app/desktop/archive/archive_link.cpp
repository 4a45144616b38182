#include "app/desktop/archive/archive_link.h"

#include <QFileInfo>
#include <QTimer>

#include "app/desktop/archive/archive_desk.h"

namespace ovenwright::desktop {
namespace {

constexpr int kAgain_ms = 30'000;

bool same(const ArchiveStatus& a, const ArchiveStatus& b) {
  const auto text = [](const ArchiveStatus& status) { return status.error ? status.error->text() : std::string{}; };
  return a.reach == b.reach && a.records == b.records && a.state.kind == b.state.kind &&
         a.state.where == b.state.where && a.state.waiting == b.state.waiting && a.state.message == b.state.message &&
         text(a) == text(b);
}

bool isServerUrl(const QString& where) {
  return where.startsWith(QStringLiteral("postgresql://")) || where.startsWith(QStringLiteral("postgres://"));
}

/// A file by its whole path: it is the same one wherever the program goes on from.
QString placeOf(const QString& where) {
  if (where.isEmpty()) return QString::fromStdString(archive::defaultArchive());
  return isServerUrl(where) ? where : QFileInfo(where).absoluteFilePath();
}

}  // namespace

ArchiveLink::ArchiveLink(const QString& where, QObject* parent)
    : QObject(parent), m_where(placeOf(where)), m_desk(new ArchiveDesk), m_again(new QTimer(this)) {
  m_desk->moveToThread(&m_thread);
  m_desk->setWhere(m_where.toStdString());
  connect(&m_thread, &QThread::finished, m_desk, &QObject::deleteLater);
  m_thread.setObjectName(QStringLiteral("archive"));
  m_again->setInterval(kAgain_ms);
  connect(m_again, &QTimer::timeout, this, &ArchiveLink::look);
  m_thread.start();
}

ArchiveLink::~ArchiveLink() {
  for (auto& [of, stop] : m_asked) *stop.m_stopped = true;
  // Behind all requests: what was given to be kept is kept, and the connection is closed on the thread that opened it.
  QMetaObject::invokeMethod(
      m_desk,
      [this] {
        m_desk->close();
        m_thread.quit();
      },
      Qt::QueuedConnection);
  m_thread.wait();
}

bool ArchiveLink::isServer() const { return isServerUrl(m_where); }
bool ArchiveLink::isAt(const QString& where) const { return placeOf(where) == m_where; }

bool ArchiveLink::isMissing(const Error& error) {
  return error.code == ErrorCode::kIo && error.message == "there is no archive";
}

void ArchiveLink::setWhere(const QString& where) {
  const QString place = placeOf(where);
  if (place == m_where) return;
  for (auto& [of, stop] : m_asked) *stop.m_stopped = true;
  m_asked.clear();
  ++m_era;
  m_again->stop();
  m_where = place;
  m_status = {};
  QMetaObject::invokeMethod(
      m_desk, [this, place] { m_desk->setWhere(place.toStdString()); }, Qt::QueuedConnection);
  emit statusChanged();
  emit changed();
}

void ArchiveLink::post(QObject* context, const QString& kind, Need need, Work work, std::function<void()> then) {
  const bool writes = need == Need::kWrite;
  Stop stop;
  const auto asked = std::pair{static_cast<const QObject*>(context), kind};
  if (!writes) {
    drop(context, kind);
    m_asked.emplace(asked, stop);
  }
  const auto done = [this, writes, stop, asked, era = m_era, guard = QPointer<QObject>(context),
                     then = std::move(then)](const ArchiveStatus& status) {
    if (era == m_era) take(status);
    const auto mine = m_asked.find(asked);
    if (mine != m_asked.end() && mine->second.m_stopped == stop.m_stopped) m_asked.erase(mine);
    if (stop.isWanted() && guard) then();
    if (!writes) return;
    look();
    emit changed();
  };
  QMetaObject::invokeMethod(
      m_desk,
      [this, need, stop, work = std::move(work), done] {
        if (!stop.isWanted()) return;
        work(m_desk->open(need), stop);
        QMetaObject::invokeMethod(
            this, [done, status = m_desk->status()] { done(status); }, Qt::QueuedConnection);
      },
      Qt::QueuedConnection);
}

void ArchiveLink::drop(QObject* context, const QString& kind) {
  const auto asked = m_asked.find({context, kind});
  if (asked == m_asked.end()) return;
  *asked->second.m_stopped = true;
  m_asked.erase(asked);
}

void ArchiveLink::take(const ArchiveStatus& status) {
  if (same(status, m_status)) return;
  using Reach = ArchiveStatus::Reach;
  const bool was_away = m_status.reach == Reach::kAway || m_status.reach == Reach::kTrouble;
  const bool is_back = was_away && status.reach == Reach::kOpen;
  m_status = status;
  const bool waits = isServer() || status.state.waiting > 0;
  if (waits && !m_again->isActive()) m_again->start();
  if (!waits) m_again->stop();
  emit statusChanged();
  if (is_back) emit changed();
}

void ArchiveLink::look() {
  const auto done = [this, era = m_era](const ArchiveStatus& status) {
    if (era == m_era) take(status);
  };
  QMetaObject::invokeMethod(
      m_desk,
      [this, done] {
        m_desk->look();
        QMetaObject::invokeMethod(
            this, [done, status = m_desk->status()] { done(status); }, Qt::QueuedConnection);
      },
      Qt::QueuedConnection);
}

void ArchiveLink::find(QObject* context, archive::Filter filter, std::size_t limit,
                       std::optional<archive::Cursor> after, archive::Order order, Then<archive::Page> then) {
  ask<archive::Page>(
      context, QStringLiteral("find"),
      [=](archive::Archive& archive, const Stop&) { return archive.find(filter, limit, after, order); },
      std::move(then));
}

void ArchiveLink::count(QObject* context, archive::Filter filter, Then<std::size_t> then) {
  ask<std::size_t>(
      context, QStringLiteral("count"), [=](archive::Archive& archive, const Stop&) { return archive.count(filter); },
      std::move(then));
}

void ArchiveLink::lots(QObject* context, archive::Filter filter, Then<std::vector<archive::LotSummary>> then) {
  ask<std::vector<archive::LotSummary>>(
      context, QStringLiteral("lots"), [=](archive::Archive& archive, const Stop&) { return archive.lots(filter); },
      std::move(then));
}

void ArchiveLink::runsOfLot(QObject* context, const std::string& lot, Then<std::vector<archive::Summary>> then) {
  ask<std::vector<archive::Summary>>(
      context, QStringLiteral("runs of lot"),
      [=](archive::Archive& archive, const Stop&) { return archive.runsOfLot(lot); }, std::move(then));
}

void ArchiveLink::load(QObject* context, const std::string& id, Then<archive::Record> then) {
  ask<archive::Record>(
      context, QStringLiteral("load"), [=](archive::Archive& archive, const Stop&) { return archive.load(id); },
      std::move(then));
}

void ArchiveLink::rawLog(QObject* context, const std::string& id, Then<std::string> then) {
  ask<std::string>(
      context, QStringLiteral("raw log"), [=](archive::Archive& archive, const Stop&) { return archive.rawLog(id); },
      std::move(then));
}

void ArchiveLink::add(QObject* context, std::vector<archive::NewRun> runs, Then<std::vector<archive::Added>> then) {
  const auto kept = std::make_shared<const std::vector<archive::NewRun>>(std::move(runs));
  ask<std::vector<archive::Added>>(
      context, {}, [kept](archive::Archive& archive, const Stop&) { return archive.add(*kept); }, std::move(then),
      Need::kWrite);
}

}  // namespace ovenwright::desktop
