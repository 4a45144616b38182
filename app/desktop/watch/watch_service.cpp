#include "app/desktop/watch/watch_service.h"

#include <QFile>
#include <QThread>
#include <QTimer>
#include <memory>

#include "app/archive/patience.h"
#include "app/desktop/archive/archive_link.h"
#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLook_ms = 500;
constexpr int kClose_ms = 3'000;  // how long a server is waited for when the program closes

}  // namespace

/// The service's side on its thread: one archive, one watch.
class WatchWorker : public QObject {
 public:
  WatchWorker(WatchService* service, int turn) : m_service(service), m_turn(turn), m_timer(this) {
    m_timer.setInterval(kLook_ms);
    connect(&m_timer, &QTimer::timeout, this, &WatchWorker::look);
  }

  void begin(const std::string& where, const std::string& folder, const std::string& rules,
             std::shared_ptr<archive::Patience> patience) {
    auto read = archive::loadWatchRules(rules);
    if (!read) return fail(read.error());
    archive::Options options;
    options.patience = std::move(patience);
    auto opened = archive::Archive::open(where, options);
    if (!opened) return fail(opened.error());
    m_archive = std::make_unique<archive::Archive>(*std::move(opened));
    m_watch = std::make_unique<archive::FolderWatch>(folder, *std::move(read), *m_archive);
    m_timer.start();
    look();
  }

 private:
  /// One log at a time: each is told when it is judged, and no other begins once it was stopped.
  void look() {
    if (QThread::currentThread()->isInterruptionRequested()) return;
    WatchService::Look seen;
    auto watched = within_memory({}, [&] { return m_watch->look(1); });
    if (watched) {
      seen.watched = *std::move(watched);
    } else {
      seen.trouble = watched.error();
    }
    if (const auto sent = m_archive->sendWaiting(); !sent && !seen.trouble) seen.trouble = sent.error();
    seen.repeated = m_archive->takeRepeated();
    seen.waiting = m_watch->isWaiting();
    seen.refused = m_watch->isRefused();
    const bool more = !seen.watched.empty();
    tell([this, seen = std::move(seen)] { m_service->take(seen); });
    if (more) QTimer::singleShot(0, this, &WatchWorker::look);
  }

  void fail(const Error& error) {
    tell([this, error] { m_service->stopped(error); });
  }

  /// On the service's thread, unless it was stopped since.
  void tell(std::function<void()> what) {
    QMetaObject::invokeMethod(
        m_service,
        [service = m_service, turn = m_turn, what = std::move(what)] {
          if (service->m_turn == turn) what();
        },
        Qt::QueuedConnection);
  }

  WatchService* m_service;
  int m_turn;
  QTimer m_timer;
  std::unique_ptr<archive::Archive> m_archive;
  std::unique_ptr<archive::FolderWatch> m_watch;  // behind the archive that it uses
};

WatchService* WatchService::of(ArchiveLink* link) {
  if (auto* there = link->findChild<WatchService*>(QString(), Qt::FindDirectChildrenOnly)) return there;
  return new WatchService(link);
}

WatchService::WatchService(ArchiveLink* link) : QObject(link), m_link(link) {
  connect(link, &ArchiveLink::changed, this, [this] {  // another archive: go on into that one
    if (m_running && m_link->where() != m_where) start(m_folder, m_rules);
  });
}

WatchService::~WatchService() {
  for (const auto& [thread, patience] : m_threads) {
    if (!thread) continue;
    QObject::disconnect(thread, &QThread::finished, thread, nullptr);
    thread->requestInterruption();
    thread->quit();
    if (!thread->wait(kClose_ms)) {
      patience->leave();
      thread->wait();
    }
    delete thread;
  }
}

void WatchService::start(const QString& folder, const QString& rules) {
  stop();
  m_folder = folder;
  m_rules = rules;
  m_where = m_link->where();
  m_running = true;
  m_waiting = m_refused = false;
  m_trouble.reset();
  auto* thread = new QThread;
  thread->setObjectName(QStringLiteral("watch"));
  const auto path = [](const QString& text) { return QFile::encodeName(text).toStdString(); };
  auto* worker = new WatchWorker(this, m_turn);
  worker->moveToThread(thread);
  const auto patience = std::make_shared<archive::Patience>();
  connect(thread, &QThread::started, worker,
          [worker, where = m_where.toStdString(), folder = path(folder), rules = path(rules), patience] {
            worker->begin(where, folder, rules, patience);
          });
  connect(thread, &QThread::finished, worker, &QObject::deleteLater);
  std::erase_if(m_threads, [](const Watching& one) { return !one.thread; });
  m_threads.push_back({thread, patience});
  thread->start();
  emit stateChanged();
}

void WatchService::stop() {
  ++m_turn;
  if (!m_running) return;
  m_running = m_waiting = m_refused = false;
  if (QThread* thread = m_threads.back().thread) {
    connect(thread, &QThread::finished, thread, &QObject::deleteLater);
    thread->requestInterruption();
    thread->quit();
  }
  emit stateChanged();
}

void WatchService::stopped(const Error& error) {
  stop();
  m_trouble = error;
  emit stateChanged();
}

void WatchService::take(const Look& look) {
  bool added = false;
  for (const auto& one : look.watched) {
    m_lines.push_back({QDateTime::currentDateTime(), one});
    if (one.error) {
      ++m_failed;
    } else if (!one.already) {
      ++m_kept;
      added = true;
    }
  }
  if (m_lines.size() > kMostLines) m_lines.erase(m_lines.begin(), m_lines.end() - kMostLines);
  const auto text = [](const std::optional<Error>& error) { return error ? error->text() : std::string(); };
  const bool other = look.waiting != m_waiting || look.refused != m_refused || text(look.trouble) != text(m_trouble);
  m_waiting = look.waiting;
  m_refused = look.refused;
  m_trouble = look.trouble;
  if (!look.repeated.empty()) emit m_link->repeated(look.repeated);
  if (!look.watched.empty()) emit linesAdded(int(look.watched.size()));
  if (other || !look.watched.empty()) emit stateChanged();
  if (!added) return;
  m_link->look();
  emit m_link->changed();
}

}  // namespace ovenwright::desktop
