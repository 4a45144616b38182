// Records on their way: from an outbox to its server, from one archive into another.
#include <algorithm>
#include <utility>

#include "app/archive/archive_data.h"
#include "app/archive/copy.h"
#include "app/archive/notes.h"
#include "app/archive/store.h"

namespace ovenwright::archive {

Result<std::size_t> Archive::sendWaiting() {
  auto& data = *m_data;
  if (!data.isServer || !data.file || data.options.access == Access::kReadOnly) return std::size_t{0};
  if (auto error = data.connect()) return *error;
  if (!data.server) return std::size_t{0};
  std::size_t sent = 0;
  const auto error = data.mayAdd ? data.send(sent) : std::nullopt;
  if (!error) {
    if (data.mayAdd) data.message.clear();
    data.refused = !data.mayAdd;
    return sent;
  }
  if (data.server->trouble() == Trouble::kAway) {
    data.noteServer();
    return sent;
  }
  data.message = error->message;
  data.refused = true;
  return *error;
}

std::optional<Error> Archive::Data::send(std::size_t& sent) {
  const auto all = chains(*file);
  if (!all) return all.error();
  for (const auto& chain : *all) {
    if (chain.count == chain.moved) continue;
    auto error = copyChain(*file, *server, chain.id, repeated, [&](std::uint64_t copied) {
      sent += copied;
      return true;
    });
    if (!error) error = removeMoved(*file, *server, chain.id);
    if (error) return error;
  }
  if (auto error = copyNotes(*file, *server)) return error;
  return removeMovedNotes(*file, *server);
}

std::vector<Repeated> Archive::takeRepeated() { return std::exchange(m_data->repeated, {}); }

Result<std::size_t> Archive::moveTo(Archive& other, const std::function<bool(double)>& progress) {
  const auto source = m_data->reading();
  if (!source) return source.error();
  const auto to = other.m_data->reading();
  if (!to) return to.error();
  const auto there = chains(**to);
  if (!there) return there.error();
  // What waits for a server follows what it has: the outbox goes on where the server's chain ends.
  std::vector<std::pair<Database*, Chain>> all;
  std::uint64_t records = 0, done = 0;
  for (Database* from : m_data->places()) {
    const auto some = chains(*from);
    if (!some) return some.error();
    for (const auto& chain : *some) {
      all.emplace_back(from, chain);
      const auto same = std::ranges::find(*there, chain.id, &Chain::id);
      const std::uint64_t has = same == there->end() ? 0 : same->count;
      records += chain.count - std::min(chain.count, std::max(chain.moved, has));
    }
  }
  for (const auto& [from, chain] : all) {
    if (chain.count == chain.moved) continue;
    auto error = copyChain(*from, **to, chain.id, other.m_data->repeated, [&](std::uint64_t copied) {
      done += copied;
      return !progress || progress(std::min(1.0, static_cast<double>(done) / static_cast<double>(records)));
    });
    if (error) return *error;
  }
  for (Database* from : m_data->places()) {
    auto error = copyNotes(*from, **to);
    if (!error && from == *source) error = copyReleases(*from, **to);
    if (error) return *error;
  }
  return static_cast<std::size_t>(done);
}

}  // namespace ovenwright::archive
