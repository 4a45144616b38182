#pragma once
#include <string>
#include <utility>
#include <variant>

namespace ovenwright {

enum class ErrorCode { kIo, kParse, kBadArgument, kUndetermined, kNoConvergence, kCancelled };

/// Where in a file something stands. Lines and columns count from 1; 0: not applicable.
/// In a delimited log `column` is the number of the cell in its row, in a TOML file the character.
struct Place {
  std::string file;
  int line = 0;
  int column = 0;
};

/// Why something could not be done. `message` is a whole English sentence part without the place;
/// `found` and `expected` stand for themselves where a reader met something else than it needed.
struct Error {
  ErrorCode code = ErrorCode::kBadArgument;
  std::string message;
  Place where;
  std::string found, expected;

  /// "run7.csv:18:3: found "n/a", expected a temperature": place, then message.
  std::string text() const;
};

/// What does not stop the work but must be said, beside the value.
struct Warning {
  std::string message;
  Place where;

  std::string text() const;  ///< as Error::text()
};

/// A T or an Error. Access is always checked (std::bad_variant_access is a caller's bug); spelt like std::expected.
template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : v_(std::in_place_index<0>, std::move(value)) {}
  Result(Error e) : v_(std::in_place_index<1>, std::move(e)) {}
  explicit operator bool() const noexcept { return v_.index() == 0; }
  bool has_value() const noexcept { return v_.index() == 0; }
  const T& operator*() const& { return std::get<0>(v_); }
  T& operator*() & { return std::get<0>(v_); }
  T&& operator*() && { return std::get<0>(std::move(v_)); }
  const T* operator->() const { return &std::get<0>(v_); }
  T* operator->() { return &std::get<0>(v_); }
  const Error& error() const { return std::get<1>(v_); }

 private:
  std::variant<T, Error> v_;
};

}  // namespace ovenwright
