#include "app/desktop/text/compare_words.h"

// The sentences about a comparison in Traditional Chinese as written in Taiwan.
namespace ovenwright::desktop {
namespace {

constexpr CompareWords kWords[] = {
    {"margin.more", "[verdict:{side} 的裕度較大：]{more}，相對於 {less}。", nullptr},
    {"margin.more.means", "[verdict:{side} 的裕度較大：]{more}，相對於 {less}，均為各次的平均。", nullptr},
    {"margin.same", "[verdict:裕度之差未超過其不確定度：]A {a}，B {b}。", nullptr},
    {"margin.same.means", "[verdict:裕度之差未超過其不確定度：]A {a}，B {b}，均為各次的平均。", nullptr},
    {"margin.few", "[verdict:A 的裕度為 {a}，B 為 {b}]，均為各次的平均；區間需要每邊至少兩次。", nullptr},
    {"margin.none.both", "[verdict:A 和 B 都沒有可比較的裕度。]", nullptr},
    {"margin.none.one", "[verdict:{side} 沒有可比較的裕度。]", nullptr},
    {"out.neither", "兩者都沒有超限。", nullptr},
    {"out.none", "{side} 沒有超限。", nullptr},
    {"out.within", "{side} 沒有超限，[more:{k} 項在其不確定度之內]。", nullptr},
    {"out.open", "{side} 沒有超限，[more:{k} 項無法判定]。", nullptr},
    {"out.some", "{side} 有 [more:{k} 項超限]。", nullptr},
    {"runs.neither", "兩者都沒有超限的測溫。", nullptr},
    {"runs.none", "{side} 沒有超限的測溫。", nullptr},
    {"runs.one", "{side} 的一次測溫超限。", nullptr},
    {"runs.some", "{side} 的 {n} 次測溫中有 {k} 次超限。", nullptr},
    {"speed.more", "{side} 每小時多 {share} 的片數。", nullptr},
    {"speed.fewer", "{side} 每小時少 {share} 的片數。", nullptr},
    {"speed.same", "兩者速度均為 {speed}。", nullptr},
    {"differ.nothing", "沒有可比較的結果。", nullptr},
    {"differ.none", "{n} 項結果之差都未超過其不確定度。", nullptr},
    {"differ.trace",
     "{n} 項結果中有 {k} 項之差超過其不確定度，最明顯的是 [outcome:{trace} 的{requirement}]：{a.number} 變為 "
     "{b}（{difference} ± {uncertainty}）。",
     nullptr},
    {"differ.board",
     "{n} 項結果中有 {k} 項之差超過其不確定度，最明顯的是 [outcome:{requirement}]：{a.number} 變為 {b}（{difference} ± "
     "{uncertainty}）。",
     nullptr},
    {"shared", "同一電路板和熱電偶，其共同誤差在差值中抵消。", nullptr},
    {"shared.not", "熱電偶或電路板不同，兩者的誤差都留在差值中。", nullptr},
    {"shared.groups", "{n_a} 次與 {n_b} 次的平均；± 為其 95 % 區間，來自各次之間的離散。", nullptr},
    {"recipes.several.one", "{side} 的各次測溫並非都用同一配方，因此不比較配方。", nullptr},
    {"recipes.several.both", "兩者的各次測溫都並非用同一配方，因此不比較配方。", nullptr},
    {"recipes.same", "配方相同。", nullptr},
    {"recipes.zones", "[zones:{k} 個溫區不同]", nullptr},
    {"recipes.speed", "[zones:速度不同]", nullptr},
    {"recipes.zones_speed", "[zones:{k} 個溫區和速度不同]", nullptr},
};

}  // namespace

const std::span<const CompareWords> kTaiwanComparison = kWords;

}  // namespace ovenwright::desktop
