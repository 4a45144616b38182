#pragma once
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/units/result.h"

namespace ovenwright::log {

/// The attributes of the element that begins, valid during XmlHandler::start().
class XmlAttributes {
 public:
  XmlAttributes(const unsigned char* const* attributes, int count) : attributes_(attributes), count_(count) {}
  /// By local name; where `space` is given its namespace must hold that text. Absent: empty optional.
  std::optional<std::string_view> find(std::string_view name, std::string_view space = {}) const;
  /// The same, empty where absent.
  std::string_view get(std::string_view name, std::string_view space = {}) const {
    return find(name, space).value_or("");
  }
  int size() const { return count_; }
  /// The local name and the value of the i-th, from 0.
  std::pair<std::string_view, std::string_view> at(int i) const;

 private:
  const unsigned char* const* attributes_;
  int count_;
};

/// Receives the elements of a document in their order; names are local, without prefix.
class XmlHandler {
 public:
  virtual ~XmlHandler() = default;
  virtual void start(std::string_view name, const XmlAttributes& attributes) = 0;
  virtual void end(std::string_view name) = 0;
  virtual void text(std::string_view) {}
  /// Set to stop the parser.
  std::optional<Error> error;
};

/// Parses a document of a workbook while it is unpacked, so that memory is spent on the cells alone. A document type
/// definition is refused, and with it every entity but the five of XML; nothing is fetched. Namespace-aware, any
/// encoding that the document declares.
class XmlParser {
 public:
  explicit XmlParser(XmlHandler& handler);
  ~XmlParser();
  XmlParser(const XmlParser&) = delete;
  XmlParser& operator=(const XmlParser&) = delete;
  /// False where the rest need not be given: the handler stopped, or the document is damaged.
  bool feed(std::string_view piece);
  /// The handler's error, or kParse where the document is not well-formed; `part` names it.
  std::optional<Error> finish(std::string_view part);

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace ovenwright::log
