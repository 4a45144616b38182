#include "app/desktop/archive/archive_link.h"

#include <QFileInfo>
#include <QTimer>
#include <chrono>

#include "app/archive/patience.h"
#include "app/desktop/archive/archive_desk.h"
#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

constexpr int kSlowness_ms = 250;

qint64 now_ms() {
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now().time_since_epoch())
      .count();
}

bool same(const ArchiveStatus& a, const ArchiveStatus& b) {
  const auto text = [](const ArchiveStatus& status) { return status.error ? status.error->text() : std::string{}; };
  return a.reach == b.reach && a.slow == b.slow && a.state.refused == b.state.refused && a.records == b.records &&
         a.state.kind == b.state.kind && a.state.where == b.state.where && a.state.waiting == b.state.waiting &&
         a.state.message == b.state.message && text(a) == text(b);
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
    : QObject(parent),
      m_busySince(std::make_shared<std::atomic<qint64>>(0)),
      m_slowness(new QTimer(this)),
      m_desk(new ArchiveDesk),
      m_again(new QTimer(this)) {
  m_desk->moveToThread(&m_thread);
  connect(&m_thread, &QThread::finished, m_desk, &QObject::deleteLater);
  m_thread.setObjectName(QStringLiteral("archive"));
  connect(m_again, &QTimer::timeout, this, &ArchiveLink::look);
  m_slowness->setInterval(kSlowness_ms);
  connect(m_slowness, &QTimer::timeout, this, &ArchiveLink::watchPatience);
  setPlace(placeOf(where));
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
  if (m_thread.wait(m_pace.close_ms)) return;
  m_patience->leave();
  m_thread.wait();
}

void ArchiveLink::setPace(const Pace& pace) { m_pace = pace; }

void ArchiveLink::setPlace(const QString& place) {
  m_where = place;
  // Of an archive that is no longer asked, one who waits is not let wait for long.
  if (m_patience) QTimer::singleShot(m_pace.close_ms, [left = m_patience] { left->leave(); });
  m_patience = std::make_shared<archive::Patience>();
  QMetaObject::invokeMethod(
      m_desk,
      [desk = m_desk, where = place.toStdString(), patience = m_patience, answer_s = m_pace.answer_s] {
        desk->setWhere(where, patience, answer_s);
      },
      Qt::QueuedConnection);
  if (isServer()) {
    m_slowness->start();
  } else {
    m_slowness->stop();
  }
}

void ArchiveLink::watchPatience() {
  const qint64 since = *m_busySince;
  const bool slow = since != 0 && now_ms() - since > m_pace.slow_ms;
  if (slow == m_status.slow) return;
  m_status.slow = slow;
  emit statusChanged();
}

bool ArchiveLink::isServer() const { return isServerUrl(m_where); }
bool ArchiveLink::isAt(const QString& where) const { return placeOf(where) == m_where; }

bool ArchiveLink::isMissing(const Error& error) {
  return error.code == ErrorCode::kIo &&
         (error.message == "there is no archive" || error.message == "there is no archive in the database yet");
}

void ArchiveLink::setWhere(const QString& where) {
  const QString place = placeOf(where);
  if (place == m_where) return;
  for (auto& [of, stop] : m_asked) *stop.m_stopped = true;
  m_asked.clear();
  ++m_era;
  m_again->stop();
  m_status = {};
  setPlace(place);
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
                     then = std::move(then)](const Told& told) {
    if (era == m_era) take(told);
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
        *m_busySince = now_ms();
        const auto worked = within_memory({}, [&]() -> Result<bool> {
          work(m_desk->open(need), stop);
          return true;
        });
        if (!worked) work(worked.error(), stop);
        QMetaObject::invokeMethod(
            this, [done, told = told()] { done(told); }, Qt::QueuedConnection);
        *m_busySince = 0;
      },
      Qt::QueuedConnection);
}

void ArchiveLink::drop(QObject* context, const QString& kind) {
  const auto asked = m_asked.find({context, kind});
  if (asked == m_asked.end()) return;
  *asked->second.m_stopped = true;
  m_asked.erase(asked);
}

ArchiveLink::Told ArchiveLink::told() { return {m_desk->status(), m_desk->takeRepeated()}; }

void ArchiveLink::take(const Told& told) {
  take(told.status);
  if (!told.repeated.empty()) emit repeated(told.repeated);
}

void ArchiveLink::take(const ArchiveStatus& status) {
  if (same(status, m_status)) return;
  using Reach = ArchiveStatus::Reach;
  const bool was_away = m_status.reach == Reach::kAway || m_status.reach == Reach::kTrouble;
  const bool is_back = was_away && status.reach == Reach::kOpen;
  m_status = status;
  const bool waits = isServer() || status.state.waiting > 0;
  const bool soon = status.reach != Reach::kOpen || status.state.waiting > 0;
  const int every_ms = soon ? m_pace.againAway_ms : m_pace.again_ms;
  if (waits && (!m_again->isActive() || m_again->interval() != every_ms)) m_again->start(every_ms);
  if (!waits) m_again->stop();
  emit statusChanged();
  if (is_back) emit changed();
}

void ArchiveLink::look() {
  const auto done = [this, era = m_era](const Told& told) {
    if (era == m_era) take(told);
  };
  QMetaObject::invokeMethod(
      m_desk,
      [this, done] {
        *m_busySince = now_ms();
        m_desk->look();
        QMetaObject::invokeMethod(
            this, [done, told = told()] { done(told); }, Qt::QueuedConnection);
        *m_busySince = 0;
      },
      Qt::QueuedConnection);
}

void ArchiveLink::tryAgain() {
  QMetaObject::invokeMethod(
      m_desk, [desk = m_desk] { desk->tryAgain(); }, Qt::QueuedConnection);
  look();
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
