#include "app/archive/watch.h"

#include <algorithm>
#include <system_error>
#include <utility>

#include "app/archive/keep.h"

namespace ovenwright::archive {
namespace {

namespace fs = std::filesystem;

/// What the rule says of a file by its name.
Result<Labels> labelsOf(const WatchRule& rule, const std::string& name) {
  Labels labels;
  const std::pair<const std::optional<NamePart>*, std::string*> parts[] = {
      {&rule.lot, &labels.lot}, {&rule.serial, &labels.serial}, {&rule.operatorName, &labels.operatorName}};
  for (const auto& [part, into] : parts) {
    if (!*part) continue;
    auto text = (*part)->of(name);
    if (!text)
      return Error{
          ErrorCode::kParse, "its name does not match the rule's expression for lot, serial or operator", {}, name, {}};
    *into = *std::move(text);
  }
  return labels;
}

/// The records that the archive has of this log.
Result<std::vector<Summary>> keptBefore(Archive& archive, const std::string& sha256) {
  Filter filter;
  filter.logSha256 = sha256;
  filter.latestOnly = true;
  auto page = archive.find(filter, 100, std::nullopt, Order::kOldestFirst);
  if (!page) return page.error();
  return std::move(page->runs);
}

}  // namespace

FolderWatch::FolderWatch(std::string folder, std::vector<WatchRule> rules, Archive& archive,
                         std::chrono::milliseconds settle)
    : m_folder(std::move(folder)), m_rules(std::move(rules)), m_archive(archive), m_settle(settle) {}

bool FolderWatch::isWaiting() const {
  return std::ranges::any_of(m_seen, [](const auto& one) { return !one.second.done; });
}

bool FolderWatch::isRefused() const {
  return std::ranges::any_of(m_seen, [](const auto& one) { return !one.second.done && one.second.told; });
}

Result<std::vector<Watched>> FolderWatch::look(std::size_t most) {
  std::error_code failed;
  std::map<std::string, Seen> present;
  std::vector<std::pair<fs::path, const WatchRule*>> files;
  const auto now = std::chrono::steady_clock::now();
  for (fs::directory_iterator at(m_folder, failed), end; !failed && at != end; at.increment(failed)) {
    const std::string name = at->path().filename().string();
    if (name.starts_with('.')) continue;
    const auto rule = std::ranges::find_if(m_rules, [&](const WatchRule& one) { return one.matches(name); });
    std::error_code gone;
    if (rule == m_rules.end() || !at->is_regular_file(gone)) continue;
    Seen seen{at->file_size(gone), at->last_write_time(gone), now, false, false};
    if (gone) continue;
    const auto before = m_seen.find(name);
    if (before != m_seen.end() && sameFile(before->second, seen)) seen = before->second;
    present.emplace(name, seen);
    files.emplace_back(at->path(), &*rule);
  }
  if (failed) return Error{ErrorCode::kIo, "cannot be read: " + failed.message(), {m_folder, 0, 0}, {}, {}};
  m_seen = std::move(present);
  std::ranges::sort(files);
  std::vector<Watched> all;
  for (const auto& [path, rule] : files) {
    auto& seen = m_seen.at(path.filename().string());
    if (seen.done || now - seen.since < m_settle) continue;
    auto some = take(path, *rule, seen);
    all.insert(all.end(), some.begin(), some.end());
    if (all.size() >= most) break;
  }
  return all;
}

std::vector<Watched> FolderWatch::take(const fs::path& path, const WatchRule& rule, Seen& seen) {
  const std::string file = path.string();
  const auto failure = [&](Error error) {
    if (error.where.file.empty()) error.where.file = file;
    return std::vector{Watched{file, std::move(error), {}, false, judge::Verdict::kUndetermined, std::nullopt, {}, {}}};
  };
  // Whatever is wrong with the log: not again until it changes. With the archive: again, but told once.
  const auto archiveFailure = [&](const Error& error) {
    seen.done = false;
    return std::exchange(seen.told, true) ? std::vector<Watched>{} : failure(error);
  };
  seen.done = true;
  const auto labels = labelsOf(rule, path.filename().string());
  if (!labels) return failure(labels.error());
  const auto request = rule.request();
  if (!request) return failure(request.error());
  const auto checked = check::check(file, *request);
  if (!checked) return failure(checked.error());
  std::vector<Watched> watched;
  const auto before = keptBefore(m_archive, checked->reading.file.sha256);
  if (!before && m_archive.state().kind != State::Kind::kServerAway) return archiveFailure(before.error());
  if (before && before->size() >= checked->runs.size()) {  // else add() leaves out the passes that are kept
    for (const auto& run : *before) {
      watched.push_back(
          {file, std::nullopt, run.id, true, run.verdict, run.margin, run.lot, RunTime{run.runAt, run.runAtFrom}});
    }
    return watched;
  }
  const auto runs = keep(file, *request, *checked, *labels);
  if (!runs) return failure(runs.error());
  const auto added = m_archive.add(*runs);
  if (!added) return archiveFailure(added.error());
  for (std::size_t i = 0; i < runs->size(); ++i) {
    const NewRun& run = (*runs)[i];
    watched.push_back({file, std::nullopt, (*added)[i].id, (*added)[i].already, run.verdict, run.margin, run.labels.lot,
                       runTime(run)});
  }
  return watched;
}

}  // namespace ovenwright::archive
