#include "core/log/zip_archive.h"

#include <fmt/format.h>
#include <zip.h>

#include <algorithm>

namespace ovenwright::log {
namespace {

Error damaged(const std::string& what, const std::string& reason) {
  return {ErrorCode::kParse, fmt::format("{} cannot be unpacked: {}", what, reason), {}, reason, "a whole zip archive"};
}

bool same_name(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; };
  return std::ranges::equal(a, b, {}, lower, lower);
}

struct CloseMember {
  void operator()(zip_file_t* file) const { zip_fclose(file); }
};

}  // namespace

bool is_zip(std::string_view bytes) {
  using namespace std::string_view_literals;
  return bytes.starts_with("PK\x03\x04"sv) || bytes.starts_with("PK\x05\x06"sv) || bytes.starts_with("PK\x07\x08"sv);
}

void ZipArchive::Discard::operator()(zip* archive) const { zip_discard(archive); }

Result<ZipArchive> ZipArchive::open(std::string_view bytes) {
  zip_error_t error;
  zip_error_init(&error);
  zip_source_t* const source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
  ZipArchive opened;
  if (source != nullptr) {
    opened.archive_.reset(zip_open_from_source(source, ZIP_RDONLY, &error));
    if (!opened.archive_) zip_source_free(source);
  }
  std::string reason = opened.archive_ ? "" : zip_error_strerror(&error);
  if (zip_error_code_zip(&error) == ZIP_ER_NOZIP)
    reason = "it is cut short or damaged, the list of its files is missing";
  zip_error_fini(&error);
  if (!opened.archive_) return damaged("the zip archive", reason);
  const auto entries = zip_get_num_entries(opened.archive_.get(), 0);
  for (zip_int64_t i = 0; i < entries; ++i) {
    zip_stat_t stat;
    zip_stat_init(&stat);
    const auto index = static_cast<zip_uint64_t>(i);
    if (zip_stat_index(opened.archive_.get(), index, 0, &stat) != 0 || (stat.valid & ZIP_STAT_NAME) == 0) continue;
    Member member{stat.name, index, (stat.valid & ZIP_STAT_SIZE) != 0 ? stat.size : 0,
                  (stat.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && stat.encryption_method != ZIP_EM_NONE};
    std::ranges::replace(member.name, '\\', '/');
    opened.members_.push_back(std::move(member));
  }
  return opened;
}

const ZipArchive::Member* ZipArchive::find(std::string_view name) const {
  const auto found = std::ranges::find_if(members_, [&](const Member& member) { return same_name(member.name, name); });
  return found == members_.end() ? nullptr : &*found;
}

std::optional<Error> ZipArchive::read(const Member& member, UnpackBudget& budget,
                                      const std::function<bool(std::string_view)>& take) const {
  const auto what = fmt::format("\"{}\" in the zip archive", member.name);
  if (member.encrypted) return damaged(what, "it is encrypted with a password");
  const std::unique_ptr<zip_file_t, CloseMember> file{zip_fopen_index(archive_.get(), member.index, 0)};
  if (!file) return damaged(what, zip_error_strerror(zip_get_error(archive_.get())));
  std::vector<char> buffer(128 * 1024);
  while (true) {
    const auto made = zip_fread(file.get(), buffer.data(), buffer.size());
    if (made < 0) return damaged(what, zip_error_strerror(zip_file_get_error(file.get())));
    if (made == 0) return std::nullopt;
    const auto size = static_cast<std::size_t>(made);
    if (!budget.take(size)) return budget.exceeded(what);
    if (!take({buffer.data(), size})) return std::nullopt;
  }
}

Result<std::string> ZipArchive::read_text(const Member& member, UnpackBudget& budget, std::size_t most) const {
  const auto stated = std::min<std::uint64_t>(member.stated_size, most);
  if (stated > budget.left()) return budget.exceeded(fmt::format("\"{}\" in the zip archive", member.name));
  std::string text;
  const auto error = read(member, budget, [&](std::string_view piece) {
    text.append(piece.substr(0, most - text.size()));
    return text.size() < most;
  });
  if (error) return *error;
  return text;
}

}  // namespace ovenwright::log
