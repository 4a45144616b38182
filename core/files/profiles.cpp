#include "core/files/profiles.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <system_error>

#include "core/files/nearest.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"

namespace ovenwright::files {
namespace {

namespace fs = std::filesystem;

std::string environment(const char* name) {
  const char* value = std::getenv(name);  // NOLINT(concurrency-mt-unsafe): nothing here sets the environment
  return value == nullptr ? "" : value;
}

/// Paths of the .toml files in a folder, sorted; none where there is no such folder.
Result<std::vector<fs::path>> toml_files(const std::string& folder) {
  std::vector<fs::path> found;
  if (folder.empty()) return found;
  std::error_code failed;
  fs::directory_iterator entries{folder, failed};
  if (failed == std::errc::no_such_file_or_directory || failed == std::errc::not_a_directory) return found;
  for (; !failed && entries != fs::directory_iterator{}; entries.increment(failed)) {
    if (entries->path().extension() == ".toml") found.push_back(entries->path());
  }
  if (failed) return Error{ErrorCode::kIo, "cannot be read: " + failed.message(), {folder, 0, 0}, "", ""};
  std::ranges::sort(found);
  return found;
}

Listed look_at(const fs::path& path, bool users) {
  Listed listed{path.stem().string(), path.stem().string(), {}, {}, path.string(), users, {}};
  const auto text = read_text(listed.file);
  auto parsed = text ? TomlFile::parse(listed.file, *text) : Result<TomlFile>{text.error()};
  if (!parsed) {
    listed.trouble = parsed.error().text();
    return listed;
  }
  auto root = parsed->root();
  if (auto name = root.text("name")) listed.title = *name;
  listed.revision = root.text("revision");
  listed.source = root.text("source");
  return listed;
}

/// The file of a name in one folder; empty where there is none.
Result<std::string> find_in(const std::string& folder, const std::string& name) {
  const auto paths = toml_files(folder);
  if (!paths) return paths.error();
  for (const auto& path : *paths) {
    if (path.stem() == name) return path.string();
  }
  std::optional<Listed> best;
  for (const auto& path : *paths) {
    Listed listed = look_at(path, false);
    if (listed.title != name || listed.trouble) continue;
    if (!best || natural_less(best->revision.value_or(""), listed.revision.value_or(""))) best = std::move(listed);
  }
  return best ? best->file : std::string{};
}

}  // namespace

const char* kind_folder(Kind kind) {
  switch (kind) {
    case Kind::kWindow:
      return "windows";
    case Kind::kOven:
      return "ovens";
    case Kind::kRecipe:
      return "recipes";
    case Kind::kBoard:
      return "boards";
    case Kind::kLayout:
      return "layouts";
  }
  return "";
}

const char* kind_word(Kind kind) {
  switch (kind) {
    case Kind::kWindow:
      return "window";
    case Kind::kOven:
      return "oven";
    case Kind::kRecipe:
      return "recipe";
    case Kind::kBoard:
      return "board";
    case Kind::kLayout:
      return "layout";
  }
  return "";
}

std::string user_folder(Kind kind) {
  std::string data = environment("XDG_DATA_HOME");
  if (data.empty() || data.front() != '/') {  // the specification has relative paths ignored
    const std::string home = environment("HOME");
    if (home.empty()) return {};
    data = home + "/.local/share";
  }
  return data + "/ovenwright/" + kind_folder(kind);
}

std::string shipped_folder(Kind kind) {
  std::string profiles = environment("OVENWRIGHT_PROFILES");
  if (profiles.empty()) {
    std::error_code failed;
    const fs::path program = fs::read_symlink("/proc/self/exe", failed);
    const fs::path share = program.parent_path().parent_path() / OVENWRIGHT_SHARE / "profiles";
    profiles = !failed && fs::is_directory(share, failed) ? share.string() : OVENWRIGHT_SOURCE_PROFILES;
  }
  return profiles + "/" + kind_folder(kind);
}

Result<std::vector<Listed>> list_profiles(Kind kind) {
  std::vector<Listed> all;
  for (const bool users : {true, false}) {
    const auto paths = toml_files(users ? user_folder(kind) : shipped_folder(kind));
    if (!paths) return paths.error();
    for (const auto& path : *paths) all.push_back(look_at(path, users));
  }
  return all;
}

Result<std::string> find_profile(Kind kind, const std::string& name_or_path) {
  const bool path = name_or_path.find('/') != std::string::npos || name_or_path.ends_with(".toml");
  if (path) return name_or_path;
  for (const auto& folder : {user_folder(kind), shipped_folder(kind)}) {
    auto found = find_in(folder, name_or_path);
    if (!found || !found->empty()) return found;
  }
  std::error_code failed;
  if (fs::is_regular_file(name_or_path, failed)) return name_or_path;

  std::vector<std::string_view> names;
  const auto all = list_profiles(kind);
  if (all) {
    for (const auto& listed : *all) {
      names.push_back(listed.stem);
      if (listed.title != listed.stem) names.push_back(listed.title);
    }
  }
  const std::string word = kind_word(kind);
  const std::string_view meant = nearest(name_or_path, names);
  return Error{ErrorCode::kIo,
               "found no " + word + " \"" + name_or_path + "\"" +
                   (meant.empty() ? ", neither as a file nor as a name; `ovenwright " + std::string{kind_folder(kind)} +
                                        "` lists the names"
                                  : ", did you mean \"" + std::string{meant} + "\"?"),
               {name_or_path, 0, 0},
               name_or_path,
               meant.empty() ? "a file or the name of " + std::string{kind == Kind::kOven ? "an " : "a "} + word
                             : std::string{meant}};
}

Error told_at(Error error, const Place& place) {
  if (error.code != ErrorCode::kIo || error.where.line > 0) return error;
  const bool of_the_name = error.found == error.where.file;  // find_profile() names it
  if (!of_the_name) error.message = error.where.file + ": " + error.message;
  error.where = place;
  return error;
}

std::string revision_path(Kind kind, const Identity& identity, const std::string& revision) {
  std::string stem = identity.stem.empty() ? identity.name : identity.stem;
  if (const auto& old = identity.revision; old && stem.ends_with("_rev" + *old)) {
    stem.resize(stem.size() - old->size() - 4);
  }
  std::string name = stem + "_rev" + revision;
  for (char& c : name) {
    if (static_cast<unsigned char>(c) < 0x20 || std::string_view{"/\\:*?\"<>| "}.find(c) != std::string_view::npos)
      c = '_';
  }
  return user_folder(kind) + "/" + name + ".toml";
}

Result<std::string> write_revision(Kind kind, const Identity& identity, const std::string& revision,
                                   const std::string& path, const std::string& text) {
  if (revision.empty() || identity.revision == revision) {
    return Error{ErrorCode::kBadArgument,
                 revision.empty()
                     ? "the revision has no name"
                     : std::string{"the "} + kind_word(kind) + " is at revision \"" + revision + "\" already",
                 {path, 0, 0},
                 revision,
                 "a new revision"};
  }
  const auto folder = fs::path{path}.parent_path();
  std::error_code failed;
  if (!folder.empty()) fs::create_directories(folder, failed);
  if (failed) return Error{ErrorCode::kIo, "cannot be written: " + failed.message(), {path, 0, 0}, "", ""};
  return write_file(path, text, Existing::kKeep);
}

bool natural_less(const std::string& a, const std::string& b) {
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  std::size_t i = 0, j = 0;
  while (i < a.size() && j < b.size()) {
    if (digit(a[i]) && digit(b[j])) {
      std::size_t i_end = i, j_end = j;
      while (i_end < a.size() && digit(a[i_end])) ++i_end;
      while (j_end < b.size() && digit(b[j_end])) ++j_end;
      while (i + 1 < i_end && a[i] == '0') ++i;
      while (j + 1 < j_end && b[j] == '0') ++j;
      if (i_end - i != j_end - j) return i_end - i < j_end - j;
      const int order = a.compare(i, i_end - i, b, j, j_end - j);
      if (order != 0) return order < 0;
      i = i_end;
      j = j_end;
    } else if (a[i] != b[j]) {
      return a[i] < b[j];
    } else {
      ++i;
      ++j;
    }
  }
  return a.size() - i < b.size() - j;
}

}  // namespace ovenwright::files
