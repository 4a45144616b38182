#include "core/files/identity.h"

#include <filesystem>

#include "core/files/digest.h"
#include "core/files/toml.h"

namespace ovenwright::files {

Identity take_identity(TomlTable& root, const std::string& file, std::string_view text) {
  Identity identity;
  identity.file = file;
  identity.stem = std::filesystem::path{file}.stem().string();
  identity.name = root.text("name").value_or("");
  if (identity.name.empty()) identity.name = identity.stem;
  identity.revision = root.text("revision");
  identity.source = root.text("source");
  identity.sha256 = sha256_hex(text);
  return identity;
}

}  // namespace ovenwright::files
