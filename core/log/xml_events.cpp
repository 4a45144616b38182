#include "core/log/xml_events.h"

#include <fmt/format.h>
#include <libxml/parser.h>

#include <algorithm>
#include <exception>
#include <limits>

namespace ovenwright::log {
namespace {

// An attribute takes five places of libxml2's array: local name, prefix, namespace, begin and end of the value.
constexpr int kPlaces = 5;

std::string_view view(const xmlChar* text) {
  return text == nullptr ? std::string_view{} : std::string_view{reinterpret_cast<const char*>(text)};
}

}  // namespace

std::optional<std::string_view> XmlAttributes::find(std::string_view name, std::string_view space) const {
  for (int i = 0; i < count_; ++i) {
    const auto* const attribute = attributes_ + i * kPlaces;
    if (view(attribute[0]) != name || view(attribute[2]).find(space) == std::string_view::npos) continue;
    return std::string_view{reinterpret_cast<const char*>(attribute[3]),
                            static_cast<std::size_t>(attribute[4] - attribute[3])};
  }
  return std::nullopt;
}

std::pair<std::string_view, std::string_view> XmlAttributes::at(int i) const {
  const auto* const attribute = attributes_ + i * kPlaces;
  return {view(attribute[0]),
          {reinterpret_cast<const char*>(attribute[3]), static_cast<std::size_t>(attribute[4] - attribute[3])}};
}

struct XmlParser::State {
  explicit State(XmlHandler& to) : handler(to) {}
  XmlHandler& handler;
  xmlSAXHandler events{};
  xmlParserCtxtPtr context = nullptr;
  std::string complaint;  ///< libxml2's first
  int line = 0;

  /// No exception may pass through the C library.
  template <class Event>
  void guard(Event event) noexcept {
    if (!handler.error) {
      try {
        event();
      } catch (const std::exception& e) {
        handler.error = Error{ErrorCode::kParse, e.what(), {}, {}, {}};
      }
    }
    if (handler.error) xmlStopParser(context);
  }
};

XmlParser::XmlParser(XmlHandler& handler) : state_(std::make_unique<State>(handler)) {
  static const bool initialised = (xmlInitParser(), true);  // once, before any thread parses
  (void)initialised;
  auto& events = state_->events;
  events.initialized = XML_SAX2_MAGIC;
  events.startElementNs = [](void* state, const xmlChar* name, const xmlChar*, const xmlChar*, int, const xmlChar**,
                             int count, int, const xmlChar** attributes) {
    auto& self = *static_cast<State*>(state);
    self.guard([&] { self.handler.start(view(name), {attributes, count}); });
  };
  events.endElementNs = [](void* state, const xmlChar* name, const xmlChar*, const xmlChar*) {
    auto& self = *static_cast<State*>(state);
    self.guard([&] { self.handler.end(view(name)); });
  };
  events.characters = [](void* state, const xmlChar* text, int length) {
    auto& self = *static_cast<State*>(state);
    self.guard([&] { self.handler.text({reinterpret_cast<const char*>(text), static_cast<std::size_t>(length)}); });
  };
  events.ignorableWhitespace = events.characters;
  events.cdataBlock = events.characters;
  events.internalSubset = [](void* state, const xmlChar*, const xmlChar*, const xmlChar*) {
    auto& self = *static_cast<State*>(state);
    self.guard([&] {
      self.handler.error = Error{ErrorCode::kParse,
                                 "found a document type definition, expected the XML of a workbook",
                                 {},
                                 "a document type definition",
                                 "the XML of a workbook"};
    });
  };
  events.serror = [](void* state, xmlErrorPtr error) {
    auto& self = *static_cast<State*>(state);
    if (!self.complaint.empty() || error == nullptr || error->message == nullptr || error->level < XML_ERR_ERROR)
      return;
    self.complaint = error->message;
    while (self.complaint.ends_with('\n')) self.complaint.pop_back();
    self.line = error->line;
  };
  state_->context = xmlCreatePushParserCtxt(&events, state_.get(), nullptr, 0, nullptr);
  if (state_->context != nullptr) xmlCtxtUseOptions(state_->context, XML_PARSE_NONET);
}

XmlParser::~XmlParser() {
  if (state_->context == nullptr) return;
  xmlFreeDoc(state_->context->myDoc);
  xmlFreeParserCtxt(state_->context);
}

bool XmlParser::feed(std::string_view piece) {
  constexpr std::size_t kMost = std::numeric_limits<int>::max();
  auto* const context = state_->context;
  while (context != nullptr && !piece.empty() && context->wellFormed && !state_->handler.error) {
    const auto part = piece.substr(0, kMost);
    xmlParseChunk(context, part.data(), static_cast<int>(part.size()), 0);
    piece.remove_prefix(part.size());
  }
  return context != nullptr && context->wellFormed && !state_->handler.error;
}

std::optional<Error> XmlParser::finish(std::string_view part) {
  if (state_->context != nullptr && !state_->handler.error) xmlParseChunk(state_->context, nullptr, 0, 1);
  auto& error = state_->handler.error;
  if (!error && (state_->context == nullptr || !state_->context->wellFormed)) {
    const auto found = state_->complaint.empty() ? "damaged XML" : fmt::format("damaged XML ({})", state_->complaint);
    error = Error{ErrorCode::kParse,
                  fmt::format("{}:{}: found {}, expected the XML of a workbook", part, state_->line, found),
                  {},
                  found,
                  "the XML of a workbook"};
  }
  return error;
}

}  // namespace ovenwright::log
