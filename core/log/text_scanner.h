#pragma once
#include <cstddef>
#include <string_view>

namespace ovenwright::log {

inline bool is_digit(char c) { return c >= '0' && c <= '9'; }
inline bool is_letter(char c) { return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

/// Walks over a lower-case text.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  bool done() const { return at_ >= text_.size(); }
  std::size_t mark() const { return at_; }
  void back(std::size_t mark) { at_ = mark; }
  char peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
  void blanks() {
    while (peek() == ' ' || peek() == '\t') ++at_;
  }
  bool take(char c) {
    if (peek() != c || done()) return false;
    ++at_;
    return true;
  }
  bool take(std::string_view word) {
    if (!text_.substr(at_).starts_with(word)) return false;
    at_ += word.size();
    return true;
  }
  /// A word that no letter goes on.
  bool take_word(std::string_view word) {
    const auto start = at_;
    if (!take(word)) return false;
    if (is_letter(peek()) && is_letter(word.back()) && static_cast<unsigned char>(word.back()) < 0x80) {
      at_ = start;
      return false;
    }
    return true;
  }
  /// Up to nine digits; `digits` takes their number, 0 where none stand here.
  int number(int& digits) {
    digits = 0;
    int value = 0;
    while (is_digit(peek()) && digits < 9) {
      value = value * 10 + (peek() - '0');
      ++digits;
      ++at_;
    }
    if (is_digit(peek())) digits = 0;
    return value;
  }
  std::string_view letters() {
    const auto start = at_;
    while (is_letter(peek())) ++at_;
    return text_.substr(start, at_ - start);
  }

 private:
  std::string_view text_;
  std::size_t at_ = 0;
};

}  // namespace ovenwright::log
