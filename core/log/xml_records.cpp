#include "core/log/xml_records.h"

#include <algorithm>
#include <array>
#include <exception>
#include <nlohmann/json.hpp>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/log/file_signature.h"
#include "core/log/json_tables.h"
#include "core/log/text.h"
#include "core/log/xml_events.h"

namespace ovenwright::log {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostBytes = std::size_t{32} << 20;
constexpr std::size_t kDeepest = 60, kMostNames = 4000;

/// Builds the document as the JSON that says the same.
class Records : public XmlHandler {
 public:
  void start(std::string_view name, const XmlAttributes& attributes) override {
    if (open_.size() >= kDeepest) return stop();
    Element element;
    element.name = name;
    for (int i = 0; i < attributes.size(); ++i) {
      const auto [key, value] = attributes.at(i);
      add(element, std::string{key}, std::string{value});
    }
    ++elements;
    if (attributes.size() > 0) ++with_attributes;
    open_.push_back(std::move(element));
  }

  void end(std::string_view) override {
    if (open_.empty()) return;
    Element element = std::move(open_.back());
    open_.pop_back();
    const std::string text{trim(element.text)};
    std::string key = element.name;
    if (element.value.is_null()) {
      element.value = text;
      values_in_elements = values_in_elements || !text.empty();
    } else if (!text.empty()) {
      values_in_elements = true;
      if (const auto* own = only_name(element.value)) {
        key = *own;
        element.value = text;
      } else {
        add(element, "value", text);
      }
    }
    if (open_.empty()) {
      document = std::move(element.value);
    } else {
      add(open_.back(), key, std::move(element.value));
    }
  }

  void text(std::string_view piece) override {
    if (!open_.empty()) open_.back().text += piece;
  }

  Json document;
  std::size_t elements = 0, with_attributes = 0;
  bool values_in_elements = false;

 private:
  struct Element {
    std::string name, text;
    Json value;
    std::unordered_map<std::string, std::size_t> places;  ///< of the names in the value, which searches one by one
  };

  void stop() { error = Error{ErrorCode::kParse, "no records", {}, {}, {}}; }

  /// What comes a second time under a name makes a list of both.
  void add(Element& into, const std::string& key, Json value) {
    if (into.value.is_null()) into.value = Json::object();
    auto& members = into.value.get_ref<Json::object_t&>();
    const auto [place, fresh] = into.places.emplace(key, members.size());
    if (fresh) {
      if (members.size() >= kMostNames) return stop();
      members.emplace_back(key, std::move(value));
      return;
    }
    Json& there = (members.begin() + static_cast<std::ptrdiff_t>(place->second))->second;
    if (there.is_array()) {
      there.push_back(std::move(value));
    } else {
      there = Json::array({std::move(there), std::move(value)});
    }
  }

  static const std::string* only_name(const Json& value) {
    static constexpr std::array<std::string_view, 7> kNames{"name", "id", "channel", "label", "key", "ch", "Name"};
    if (value.size() != 1 || !value.front().is_string()) return nullptr;
    const bool names = std::ranges::find(kNames, value.begin().key()) != kNames.end();
    return names ? value.front().get_ptr<const std::string*>() : nullptr;
  }

  std::vector<Element> open_;
};

}  // namespace

bool is_xml(std::string_view bytes) {
  const std::string head = markup_head(bytes);
  return head.starts_with("<?xml") || (head.size() > 1 && head[0] == '<' && head[1] >= 'a' && head[1] <= 'z');
}

std::optional<Grid> read_xml_records(std::string_view bytes, UnpackBudget& budget) {
  if (bytes.size() > kMostBytes || !budget.take(bytes.size())) return std::nullopt;
  try {
    Records records;
    XmlParser parser(records);
    parser.feed(bytes);
    if (parser.finish("")) return std::nullopt;
    const auto lines = static_cast<std::size_t>(std::ranges::count(bytes, '\n'));
    if (!records.values_in_elements && 2 * lines >= records.with_attributes) return std::nullopt;
    // A list at the top of the JSON is what its reader knows.
    const Json document = Json::object({{"document", std::move(records.document)}});
    auto grid = read_json(document.dump(-1, ' ', false, Json::error_handler_t::replace), budget);
    return grid ? std::optional(*std::move(grid)) : std::nullopt;
  } catch (const std::exception&) {
    return std::nullopt;
  }
}

}  // namespace ovenwright::log
