#include "core/log/xlsx_parts.h"

#include <charconv>
#include <map>

namespace ovenwright::log {
namespace {

int number(std::string_view text, int otherwise) {
  int value = otherwise;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

struct Relationship {
  std::string id, type, target;
};

/// A target as a path in the archive: relative to the folder of the part that names it, or absolute.
std::string resolve(const std::string& folder, std::string_view target) {
  std::string path = target.starts_with('/') ? std::string{target.substr(1)} : folder + std::string{target};
  for (auto up = path.find("/../"); up != std::string::npos; up = path.find("/../")) {
    const auto parent = up == 0 ? std::string::npos : path.rfind('/', up - 1);
    path.erase(parent == std::string::npos ? 0 : parent + 1, up + 4 - (parent == std::string::npos ? 0 : parent + 1));
  }
  return path;
}

std::string folder_of(const std::string& part) {
  const auto slash = part.rfind('/');
  return slash == std::string::npos ? "" : part.substr(0, slash + 1);
}

class Relationships : public XmlHandler {
 public:
  void start(std::string_view name, const XmlAttributes& attributes) override {
    if (name != "Relationship") return;
    all.push_back({std::string{attributes.get("Id")}, std::string{attributes.get("Type")},
                   std::string{attributes.get("Target")}});
  }
  void end(std::string_view) override {}
  std::vector<Relationship> all;
};

class WorkbookPart : public XmlHandler {
 public:
  struct Entry {
    std::string name, relationship;
    bool hidden = false;
  };
  void start(std::string_view name, const XmlAttributes& attributes) override {
    if (name == "sheet")
      entries.push_back({std::string{attributes.get("name")}, std::string{attributes.get("id")},
                         attributes.get("state").find("idden") != std::string_view::npos});  // also "veryHidden"
    if (name == "workbookPr") {
      const auto value = attributes.get("date1904");
      from_1904 = value == "1" || value == "true";
    }
  }
  void end(std::string_view) override {}
  std::vector<Entry> entries;
  bool from_1904 = false;
};

class StylesPart : public XmlHandler {
 public:
  void start(std::string_view name, const XmlAttributes& attributes) override {
    if (name == "numFmt") {
      formats_[number(attributes.get("numFmtId"), -1)] = number_kind(attributes.get("formatCode"));
    } else if (name == "cellXfs") {
      in_cells_ = true;
    } else if (name == "xf" && in_cells_) {
      const int id = number(attributes.get("numFmtId"), 0);
      const auto own = formats_.find(id);
      kinds.push_back(own == formats_.end() ? builtin_number_kind(id) : own->second);
    }
  }
  void end(std::string_view name) override {
    if (name == "cellXfs") in_cells_ = false;
  }
  std::vector<NumberKind> kinds;

 private:
  std::map<int, NumberKind> formats_;
  bool in_cells_ = false;
};

class SharedStringsPart : public XmlHandler {
 public:
  void start(std::string_view name, const XmlAttributes&) override { item_.start(name); }
  void end(std::string_view name) override {
    item_.end(name);
    if (name == "si") strings.push_back(item_.take());
  }
  void text(std::string_view piece) override { item_.text(piece); }
  std::vector<std::string> strings;

 private:
  StringItem item_;
};

/// "_x000D_" stands for the character with that code; only codes of one byte occur in tables.
std::string decode_escapes(std::string text) {
  for (auto at = text.find("_x00"); at != std::string::npos && at + 7 <= text.size(); at = text.find("_x00", at + 1)) {
    unsigned code = 0;
    const char* const digits = text.data() + at + 4;
    const auto [end, error] = std::from_chars(digits, digits + 2, code, 16);
    if (error != std::errc{} || end != digits + 2 || text[at + 6] != '_' || code == 0 || code >= 0x80) continue;
    text.replace(at, 7, 1, static_cast<char>(code));
  }
  return text;
}

Error missing(const std::string& part) {
  return {ErrorCode::kParse,
          "found a workbook without its part " + part + ", expected a whole .xlsx workbook",
          {},
          "no " + part,
          "a whole .xlsx workbook"};
}

Result<std::vector<Relationship>> relationships(const ZipArchive& archive, const std::string& part,
                                                UnpackBudget& budget) {
  const auto folder = folder_of(part);
  const auto* const member = archive.find(folder + "_rels/" + part.substr(folder.size()) + ".rels");
  Relationships handler;
  if (member != nullptr) {
    if (auto error = parse_part(archive, *member, budget, handler)) return *error;
  }
  return std::move(handler.all);
}

/// The part that a relationship whose type ends so leads to, else where writers put it by habit.
const ZipArchive::Member* related(const ZipArchive& archive, const std::vector<Relationship>& all,
                                  const std::string& folder, std::string_view type, const std::string& habit) {
  for (const auto& relationship : all) {
    if (!relationship.type.ends_with(type)) continue;
    if (const auto* const member = archive.find(resolve(folder, relationship.target))) return member;
  }
  return archive.find(habit);
}

}  // namespace

void StringItem::start(std::string_view name) {
  if (name == "rPh") ++phonetic_;
  in_text_ = name == "t";
}

void StringItem::end(std::string_view name) {
  if (name == "rPh") --phonetic_;
  in_text_ = false;
}

void StringItem::text(std::string_view piece) {
  if (in_text_ && phonetic_ == 0) text_ += piece;
}

std::string StringItem::take() { return decode_escapes(std::exchange(text_, {})); }

std::optional<Error> parse_part(const ZipArchive& archive, const ZipArchive::Member& member, UnpackBudget& budget,
                                XmlHandler& handler) {
  XmlParser parser{handler};
  if (auto error = archive.read(member, budget, [&](std::string_view piece) { return parser.feed(piece); }))
    return error;
  return parser.finish(member.name);
}

Result<XlsxParts> read_xlsx_parts(const ZipArchive& archive, UnpackBudget& budget) {
  const auto top = relationships(archive, "", budget);
  if (!top) return top.error();
  const auto* const workbook = related(archive, *top, "", "/officeDocument", "xl/workbook.xml");
  if (workbook == nullptr) return missing("xl/workbook.xml");
  WorkbookPart entries;
  if (auto error = parse_part(archive, *workbook, budget, entries)) return *error;
  const auto folder = folder_of(workbook->name);
  const auto links = relationships(archive, workbook->name, budget);
  if (!links) return links.error();

  XlsxParts parts;
  parts.from_1904 = entries.from_1904;
  for (std::size_t i = 0; i < entries.entries.size(); ++i) {
    const auto& entry = entries.entries[i];
    const ZipArchive::Member* member = nullptr;
    bool other_kind = false;
    for (const auto& link : *links) {
      if (link.id != entry.relationship) continue;
      other_kind = !link.type.ends_with("/worksheet");  // a chart or a dialogue
      member = archive.find(resolve(folder, link.target));
    }
    if (other_kind) continue;
    if (member == nullptr) member = archive.find(folder + "worksheets/sheet" + std::to_string(i + 1) + ".xml");
    if (member == nullptr) return missing("of sheet \"" + entry.name + "\"");
    parts.sheets.push_back({entry.name, member->name, entry.hidden});
  }
  if (const auto* const styles = related(archive, *links, folder, "/styles", folder + "styles.xml")) {
    StylesPart handler;
    if (auto error = parse_part(archive, *styles, budget, handler)) return *error;
    parts.styles = std::move(handler.kinds);
  }
  if (const auto* const strings = related(archive, *links, folder, "/sharedStrings", folder + "sharedStrings.xml")) {
    SharedStringsPart handler;
    if (auto error = parse_part(archive, *strings, budget, handler)) return *error;
    parts.shared_strings = std::move(handler.strings);
  }
  return parts;
}

}  // namespace ovenwright::log
