#include "core/judge/render.h"

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>

namespace ovenwright::judge {
namespace {

using Link = SentencePart::Link;

const Argument* find(const std::vector<Argument>& arguments, std::string_view name) {
  const auto found = std::ranges::find(arguments, name, &Argument::name);
  return found == arguments.end() ? nullptr : &*found;
}

/// The text of one {field}; empty where the clause has no such argument.
std::optional<std::string> field(std::string_view text, const std::vector<Argument>& arguments,
                                 const Phrases& phrases) {
  const std::size_t dot = text.find('.');
  const std::string_view how = dot == std::string_view::npos ? std::string_view{} : text.substr(dot + 1);
  const Argument* argument = find(arguments, text.substr(0, dot));
  if (!argument) return {};
  if (how == "number") return phrases.number(*argument);
  if (how == "times") return phrases.times(*argument);
  if (how == "word") {
    const auto* count = std::get_if<int>(&argument->value);
    return count ? std::optional(phrases.count_word(*count)) : std::nullopt;
  }
  if (how == "U") {
    const Argument* uncertainty = find(arguments, "uncertainty");
    return uncertainty ? phrases.with_uncertainty(*argument, *uncertainty) : phrases.quantity(*argument);
  }
  if (argument->role == Argument::Role::kMoment) return phrases.moment(*argument);
  return phrases.quantity(*argument);
}

std::string fill(std::string_view text, const std::vector<Argument>& arguments, const Phrases& phrases) {
  std::string filled;
  while (!text.empty()) {
    const std::size_t open = text.find('{'), close = text.find('}', open);
    if (open == std::string_view::npos || close == std::string_view::npos) break;
    filled += text.substr(0, open);
    const auto value = field(text.substr(open + 1, close - open - 1), arguments, phrases);
    filled += value ? *value : std::string(text.substr(open, close + 1 - open));
    text.remove_prefix(close + 1);
  }
  return filled.append(text);
}

std::optional<Link> link_of(std::string_view word) {
  if (word == "outcome") return Link::kOutcome;
  if (word == "zones") return Link::kZones;
  if (word == "window") return Link::kWindowChooser;
  if (word == "more") return Link::kMore;
  if (word == "board") return Link::kBoardChooser;
  if (word == "fault") return Link::kFault;
  if (word == "verdict") return Link::kNone;
  return {};
}

}  // namespace

void append(Sentence& sentence, const Planned& planned, const Phrases& phrases) {
  const std::string whole = phrases.text(planned.clause.id, planned.count);
  std::string_view text = whole;
  int disc = planned.disc;
  const auto add = [&](SentencePart part) {
    if (part.text.empty()) return;
    sentence.text += part.text;
    sentence.parts.push_back(std::move(part));
  };
  const auto add_plain = [&](std::string_view piece) { add({.text = fill(piece, planned.clause.arguments, phrases)}); };
  if (!sentence.parts.empty()) add({.text = " "});
  while (!text.empty()) {
    const std::size_t open = text.find('['), colon = text.find(':', open), close = text.find(']', open);
    if (open == std::string_view::npos || close == std::string_view::npos || colon > close) break;
    const std::string_view word = text.substr(open + 1, colon - open - 1);
    const auto link = link_of(word);
    if (!link) break;
    add_plain(text.substr(0, open));
    SentencePart part{.link = *link};
    part.text = fill(text.substr(colon + 1, close - colon - 1), planned.clause.arguments, phrases);
    part.strong = word == "verdict";
    part.signal = part.strong && planned.signal;
    if (*link == Link::kZones)
      part.zones = planned.zones;
    else if (*link != Link::kNone)
      part.outcomes = planned.outcomes;
    if (*link == Link::kOutcome) part.disc = std::exchange(disc, 0);
    add(std::move(part));
    text.remove_prefix(close + 1);
  }
  add_plain(text);
  sentence.clauses.push_back(planned.clause);
}

}  // namespace ovenwright::judge
