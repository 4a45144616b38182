#include "app/desktop/text/compare_words.h"

// The sentences about a comparison in Simplified Chinese.
namespace ovenwright::desktop {
namespace {

constexpr CompareWords kWords[] = {
    {"margin.more", "[verdict:{side} 的裕量较大：]{more}，相对于 {less}。", nullptr},
    {"margin.more.means", "[verdict:{side} 的裕量较大：]{more}，相对于 {less}，均为各次的平均。", nullptr},
    {"margin.same", "[verdict:裕量之差未超过其不确定度：]A {a}，B {b}。", nullptr},
    {"margin.same.means", "[verdict:裕量之差未超过其不确定度：]A {a}，B {b}，均为各次的平均。", nullptr},
    {"margin.few", "[verdict:A 的裕量为 {a}，B 为 {b}]，均为各次的平均；区间需要每边至少两次。", nullptr},
    {"margin.none.both", "[verdict:A 和 B 都没有可比较的裕量。]", nullptr},
    {"margin.none.one", "[verdict:{side} 没有可比较的裕量。]", nullptr},
    {"out.neither", "两者都没有超限。", nullptr},
    {"out.none", "{side} 没有超限。", nullptr},
    {"out.within", "{side} 没有超限，[more:{k} 项在其不确定度之内]。", nullptr},
    {"out.open", "{side} 没有超限，[more:{k} 项无法判定]。", nullptr},
    {"out.some", "{side} 有 [more:{k} 项超限]。", nullptr},
    {"runs.neither", "两者都没有超限的测温。", nullptr},
    {"runs.none", "{side} 没有超限的测温。", nullptr},
    {"runs.one", "{side} 的一次测温超限。", nullptr},
    {"runs.some", "{side} 的 {n} 次测温中有 {k} 次超限。", nullptr},
    {"speed.more", "{side} 每小时多 {share} 的片数。", nullptr},
    {"speed.fewer", "{side} 每小时少 {share} 的片数。", nullptr},
    {"speed.same", "两者速度均为 {speed}。", nullptr},
    {"differ.nothing", "没有可比较的结果。", nullptr},
    {"differ.none", "{n} 项结果之差都未超过其不确定度。", nullptr},
    {"differ.trace",
     "{n} 项结果中有 {k} 项之差超过其不确定度，最明显的是 [outcome:{trace} 的{requirement}]：{a.number} 变为 "
     "{b}（{difference} ± {uncertainty}）。",
     nullptr},
    {"differ.board",
     "{n} 项结果中有 {k} 项之差超过其不确定度，最明显的是 [outcome:{requirement}]：{a.number} 变为 {b}（{difference} ± "
     "{uncertainty}）。",
     nullptr},
    {"shared", "同一电路板和热电偶，其共同误差在差值中抵消。", nullptr},
    {"shared.not", "热电偶或电路板不同，两者的误差都留在差值中。", nullptr},
    {"shared.groups", "{n_a} 次与 {n_b} 次的平均；± 为其 95 % 区间，来自各次之间的离散。", nullptr},
    {"recipes.several.one", "{side} 的各次测温并非都用同一配方，因此不比较配方。", nullptr},
    {"recipes.several.both", "两者的各次测温都并非用同一配方，因此不比较配方。", nullptr},
    {"recipes.same", "配方相同。", nullptr},
    {"recipes.zones", "[zones:{k} 个温区不同]", nullptr},
    {"recipes.speed", "[zones:速度不同]", nullptr},
    {"recipes.zones_speed", "[zones:{k} 个温区和速度不同]", nullptr},
};

}  // namespace

const std::span<const CompareWords> kMainlandComparison = kWords;

}  // namespace ovenwright::desktop
