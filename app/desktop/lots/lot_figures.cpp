#include "app/desktop/lots/lot_figures.h"

#include <algorithm>

namespace ovenwright::desktop {
namespace {

constexpr std::size_t kAtOnce = 40;  // some 30 ms of work, for which a list waits at most

using Loaded = std::vector<std::shared_ptr<const report::KeptRun>>;

struct Members {
  std::vector<FigureRun> runs;
  std::vector<RunGroup> groups;
  bool cut = false;
};

Result<Members> members(archive::Archive& archive, archive::Filter filter) {
  filter.latestOnly = true;
  const auto page = archive.find(filter, LotFiguresLoader::kMost);
  if (!page) return page.error();
  Members members;
  members.cut = page->next.has_value();
  for (const auto& run : page->runs) {
    const RunGroup its{false, run.board, run.window, run.windowRevision, 0};
    auto group = std::ranges::find(members.groups, its);
    if (group == members.groups.end()) group = members.groups.insert(group, its);
    ++group->runs;
    members.runs.push_back({run.id, run.lot, run.runAt, run.oven, std::size_t(group - members.groups.begin())});
  }
  std::ranges::reverse(members.runs);
  if (members.groups.size() > 1) members.groups.push_back({true, {}, {}, {}, members.runs.size()});
  return members;
}

Result<Loaded> loaded(archive::Archive& archive, const std::vector<std::string>& ids, const ArchiveLink::Stop& stop) {
  Loaded runs;
  for (const auto& id : ids) {
    if (!stop.isWanted()) return Error{ErrorCode::kCancelled, "no longer wanted", {}, {}, {}};
    const auto report = archive.report(id);
    if (!report) return report.error();
    auto run = report::kept_run_with_zones(id, *report);
    if (!run) {
      Error error = run.error();
      error.where.file = id;
      return error;
    }
    runs.push_back(std::make_shared<const report::KeptRun>(*std::move(run)));
  }
  return runs;
}

}  // namespace

LotFiguresLoader::LotFiguresLoader(ArchiveLink* archive, QObject* parent) : QObject(parent), m_archive(archive) {}

void LotFiguresLoader::load(const archive::Filter& filter) {
  m_busy = true;
  m_error.reset();
  m_done = m_total = 0;
  m_archive->drop(this, QStringLiteral("reports"));
  m_archive->drop(this, QStringLiteral("figures"));
  m_archive->ask<Members>(
      this, QStringLiteral("members"),
      [filter](archive::Archive& archive, const ArchiveLink::Stop&) { return members(archive, filter); },
      [this](Result<Members> found) {
        if (!found) {
          fail(found.error());
        } else {
          take(std::move(found->runs), std::move(found->groups), found->cut);
        }
      });
  emit progressChanged();
}

void LotFiguresLoader::take(std::vector<FigureRun> runs, std::vector<RunGroup> groups, bool cut) {
  m_archive->drop(this, QStringLiteral("reports"));  // asked for since, of the list before
  m_archive->drop(this, QStringLiteral("figures"));
  m_runs = std::move(runs);
  m_groups = std::move(groups);
  m_cut = cut;
  m_at = 0;
  if (m_group) {
    const auto chosen = std::ranges::find(m_groups, *m_group);
    if (chosen != m_groups.end()) m_at = std::size_t(chosen - m_groups.begin());
  }
  // What is no longer listed is forgotten, so that a long session stays small.
  std::unordered_map<std::string, std::shared_ptr<const report::KeptRun>> kept;
  for (const auto& run : m_runs)
    if (const auto at = m_loaded.find(run.id); at != m_loaded.end()) kept.insert(*at);
  m_loaded = std::move(kept);
  loadNext();
}

std::vector<std::size_t> LotFiguresLoader::wanted() const {
  std::vector<std::size_t> wanted;
  if (m_groups.empty()) return wanted;
  const bool all = m_groups[m_at].all;
  for (std::size_t i = 0; i < m_runs.size(); ++i)
    if (all || m_allWanted || m_runs[i].group == m_at) wanted.push_back(i);
  return wanted;
}

void LotFiguresLoader::loadNext() {
  m_busy = true;
  const auto all = wanted();
  m_total = all.size();
  m_done = 0;
  std::vector<std::string> ids;
  for (const std::size_t run : all) {
    if (m_loaded.contains(m_runs[run].id)) {
      ++m_done;
    } else if (ids.size() < kAtOnce) {
      ids.push_back(m_runs[run].id);
    }
  }
  emit progressChanged();
  if (ids.empty()) {
    summarise();
    return;
  }
  m_archive->ask<Loaded>(
      this, QStringLiteral("reports"),
      [ids](archive::Archive& archive, const ArchiveLink::Stop& stop) { return loaded(archive, ids, stop); },
      [this](Result<Loaded> runs) {
        if (!runs) {
          fail(runs.error());
          return;
        }
        for (auto& run : *runs) m_loaded.insert_or_assign(run->run.id, std::move(run));
        loadNext();
      });
}

void LotFiguresLoader::summarise() {
  if (m_runs.empty()) {
    m_busy = false;
    m_figures.reset();
    emit changed();
    return;
  }
  auto figures = std::make_shared<LotFigures>();
  figures->groups = m_groups;
  figures->group = m_at;
  figures->cut = m_cut;
  auto runs = std::make_shared<Loaded>(), all = std::make_shared<Loaded>();
  for (const std::size_t i : wanted()) {
    const auto& run = m_runs[i];
    const auto& its = m_loaded.at(run.id);
    if (m_groups[m_at].all || run.group == m_at) {
      figures->runs.push_back(run);
      runs->push_back(its);
    }
    if (!m_allWanted) continue;
    figures->allRuns.push_back(run);
    if (!run.oven.empty() && !std::ranges::count(figures->ovens, run.oven)) figures->ovens.push_back(run.oven);
    all->push_back(its);
  }
  using Made = std::shared_ptr<LotFigures>;
  m_archive->ask<Made>(
      this, QStringLiteral("figures"),
      [figures, runs, all, options = m_options](archive::Archive&, const ArchiveLink::Stop&) -> Result<Made> {
        const auto plain = [](const Loaded& of) {
          std::vector<lot::Run> all_of;
          all_of.reserve(of.size());
          for (const auto& run : of) all_of.push_back(run->run);
          return all_of;
        };
        auto lot = lot::summarise(plain(*runs), options);
        if (!lot) return lot.error();
        figures->lot = *std::move(lot);
        if (!all->empty()) {
          auto sums = lot::summarise(plain(*all), options);
          if (!sums) return sums.error();
          figures->all = *std::move(sums);
          std::vector<lot::RunTraces> traces;
          for (const auto& run : *all) traces.push_back(run->traces);
          figures->zones = lot::zone_traces(traces);
        }
        return figures;
      },
      [this](Result<Made> made) {
        if (!made) {
          fail(made.error());
          return;
        }
        m_busy = false;
        m_figures = *made;
        emit changed();
      });
}

void LotFiguresLoader::fail(const Error& error) {
  m_busy = false;
  m_figures.reset();
  if (!ArchiveLink::isMissing(error)) m_error = error;
  emit changed();
}

void LotFiguresLoader::setGroup(const RunGroup& group) {
  m_group = group;
  const auto chosen = std::ranges::find(m_groups, group);
  if (chosen == m_groups.end() || std::size_t(chosen - m_groups.begin()) == m_at) return;
  m_at = std::size_t(chosen - m_groups.begin());
  loadNext();
}

void LotFiguresLoader::setOptions(const lot::Options& options) {
  m_options = options;
  if (m_total > 0 && m_done == m_total) summarise();
}

void LotFiguresLoader::setAllWanted(bool wanted) {
  if (std::exchange(m_allWanted, wanted) == wanted || !wanted || m_runs.empty()) return;
  loadNext();
}

void LotFiguresLoader::stop() {
  m_archive->drop(this, QStringLiteral("members"));
  m_archive->drop(this, QStringLiteral("reports"));
  m_archive->drop(this, QStringLiteral("figures"));
  m_busy = false;
  emit changed();
}

}  // namespace ovenwright::desktop
