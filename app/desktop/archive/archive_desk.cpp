#include "app/desktop/archive/archive_desk.h"

#include <QFile>

namespace ovenwright::desktop {
namespace {

bool exists(const std::string& path) { return QFile::exists(QFile::decodeName(path.c_str())); }

}  // namespace

void ArchiveDesk::setWhere(std::string where, std::shared_ptr<archive::Patience> patience, int answer_s) {
  close();
  m_where = std::move(where);
  m_patience = std::move(patience);
  m_answer_s = answer_s;
}

archive::Options ArchiveDesk::options() const {
  archive::Options options;
  options.answerTimeout_s = m_answer_s;
  options.patience = m_patience;
  return options;
}

std::vector<archive::Repeated> ArchiveDesk::takeRepeated() {
  return m_archive ? m_archive->takeRepeated() : std::vector<archive::Repeated>{};
}

void ArchiveDesk::tryAgain() {
  if (m_archive) m_archive->tryAgain();
}

void ArchiveDesk::close() {
  m_archive.reset();
  m_trouble.reset();
  m_writes = m_missing = m_looked = false;
  m_records = 0;
}

bool ArchiveDesk::isServer() const {
  return m_where.starts_with("postgresql://") || m_where.starts_with("postgres://");
}

Result<archive::Archive*> ArchiveDesk::kept(Result<archive::Archive> opened) {
  m_looked = true;
  m_missing = !opened && ArchiveLink::isMissing(opened.error());
  if (!opened) {
    m_trouble = m_missing ? std::nullopt : std::optional(opened.error());
    return opened.error();
  }
  m_trouble.reset();
  m_archive = *std::move(opened);
  if (const auto records = m_archive->count({})) m_records = *records;
  return &*m_archive;
}

Result<archive::Archive*> ArchiveDesk::open(ArchiveLink::Need need) {
  const bool writes = need == ArchiveLink::Need::kWrite;
  if (m_archive && (m_writes || !writes)) return &*m_archive;
  m_missing = false;
  archive::Options how = options();
  if (writes) {
    auto opened = archive::Archive::open(m_where, how);
    if (!opened && m_archive) return opened.error();  // it can still be read
    m_writes = bool(opened);
    return kept(std::move(opened));
  }
  // An outbox that is there already says that this machine writes to the server: then what waits is told of, and a
  // server that is away is no error. Else nothing is made only for looking.
  const std::string outbox = isServer() ? archive::defaultOutbox(m_where) : std::string{};
  if (!outbox.empty() && exists(outbox)) {
    if (auto opened = archive::Archive::open(m_where, how)) {
      m_writes = true;
      return kept(std::move(opened));
    }
  } else if (!isServer() && !exists(m_where)) {
    m_looked = m_missing = true;
    m_trouble.reset();
    return Error{ErrorCode::kIo, "there is no archive", {m_where, 0, 0}, {}, {}};
  }
  how.access = archive::Access::kReadOnly;
  return kept(archive::Archive::open(m_where, how));
}

void ArchiveDesk::look() {
  const auto archive = open(ArchiveLink::Need::kRead);
  if (!archive) return;
  const auto sent = (*archive)->sendWaiting();
  m_trouble = sent ? std::nullopt : std::optional(sent.error());
  if (const auto records = (*archive)->count({})) m_records = *records;
}

ArchiveStatus ArchiveDesk::status() {
  using Reach = ArchiveStatus::Reach;
  ArchiveStatus status;
  status.records = m_records;
  status.error = m_trouble;
  if (m_archive) {
    status.state = m_archive->state();
    const bool away = status.state.kind == archive::State::Kind::kServerAway;
    status.reach = away ? Reach::kAway : Reach::kOpen;
    if (away || (!status.error && status.state.refused))
      status.error = Error{ErrorCode::kIo, status.state.message, {m_where, 0, 0}, {}, {}};
    return status;
  }
  status.state.where = m_where;
  if (isServer()) status.state.kind = archive::State::Kind::kServerAway;
  status.reach = m_missing ? Reach::kNone : m_trouble ? Reach::kTrouble : Reach::kNotLooked;
  return status;
}

}  // namespace ovenwright::desktop
