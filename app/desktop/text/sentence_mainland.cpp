#include "app/desktop/text/sentence_words.h"

// The verdict sentence in Simplified Chinese as written in mainland China.
namespace ovenwright::desktop {
namespace {

constexpr PlacementWords kPlacements[] = {
    {"peak", " 峰值温度为 {value}", "低了 {distance}", "高了 {distance}", "峰值温度过低", "峰值温度过高",
     " 峰值温度至少 {value}", true},
    {"peak_time", " 升到峰值需 {value}", "短了 {distance}", "长了 {distance}", "过早到达峰值", "升到峰值的时间过长",
     " 升到峰值至少需 {value}"},
    {"time_above", " 在 {level} 以上停留 {value}", "短了 {distance}", "长了 {distance}", "在 {level} 以上停留过短",
     "在 {level} 以上停留过长", " 在 {level} 以上至少停留 {value}"},
    {"excursions", " 超过 {level} 共 {value} 次", "少了 {distance} 次", "多了 {distance} 次", "超过 {level} 的次数过少",
     "超过 {level} 的次数过多", " 超过 {level} 至少 {value} 次"},
    {"area", " 在 {level} 以上累积 {value}", "少了 {distance}", "多了 {distance}", "在 {level} 以上累积过少",
     "在 {level} 以上累积过多", " 在 {level} 以上至少累积 {value}"},
    {"soak", " 从 {T1} 到 {T2} 的恒温时间为 {value}", "短了 {distance}", "长了 {distance}", "恒温时间过短",
     "恒温时间过长", " 从 {T1} 到 {T2} 的恒温时间至少 {value}"},
    {"near_peak", " 在峰值 {offset} 以内停留 {value}", "短了 {distance}", "长了 {distance}", "在峰值附近停留过短",
     "在峰值附近停留过长", " 在峰值 {offset} 以内至少停留 {value}"},
    {"near_reference", " 在 {level} 或以上停留 {value}", "短了 {distance}", "长了 {distance}", "在参考温度附近停留过短",
     "在参考温度附近停留过长", " 在 {level} 或以上至少停留 {value}"},
    {"steepest_rise", " 最大升温斜率为 {value}", "慢了 {distance}", "快了 {distance}", "升温过慢", "升温过快",
     " 最大升温斜率至少 {value}"},
    {"mean_rise", " 从 {T1} 到 {T2} 的平均升温斜率为 {value}", "慢了 {distance}", "快了 {distance}", "平均升温过慢",
     "平均升温过快", " 从 {T1} 到 {T2} 的平均升温斜率至少 {value}"},
    {"mean_rise_to_peak", " 从 {T1} 到峰值的平均升温斜率为 {value}", "慢了 {distance}", "快了 {distance}",
     "平均升温过慢", "平均升温过快", " 从 {T1} 到峰值的平均升温斜率至少 {value}"},
    {"steepest_fall", " 最大降温斜率为 {value}", "慢了 {distance}", "快了 {distance}", "降温过慢", "降温过快",
     " 最大降温斜率至少 {value}"},
    {"mean_fall", " 从 {T1} 到 {T2} 的平均降温斜率为 {value}", "慢了 {distance}", "快了 {distance}", "平均降温过慢",
     "平均降温过快", " 从 {T1} 到 {T2} 的平均降温斜率至少 {value}"},
    {"mean_fall_from_peak", " 从峰值到 {T2} 的平均降温斜率为 {value}", "慢了 {distance}", "快了 {distance}",
     "平均降温过慢", "平均降温过快", " 从峰值到 {T2} 的平均降温斜率至少 {value}"},
    {"temperature_at_time", " 在⟨记录的⟩第 {time} s 为 {value}", "低了 {distance}", "高了 {distance}",
     "在⟨记录的⟩第 {time} s 温度过低", "在⟨记录的⟩第 {time} s 温度过高", " 在⟨记录的⟩第 {time} s 至少 {value}", true},
    {"temperature_at_position", " 在距炉口 {position} mm 处为 {value}", "低了 {distance}", "高了 {distance}",
     "在距炉口 {position} mm 处温度过低", "在距炉口 {position} mm 处温度过高", " 在距炉口 {position} mm 处至少 {value}",
     true},
    {"temperature_at_zone", " 离开温区 {zone} 时为 {value}", "低了 {distance}", "高了 {distance}",
     "离开温区 {zone} 时温度过低", "离开温区 {zone} 时温度过高", " 离开温区 {zone} 时至少 {value}", true},
    {"exit_temperature", " 离开最后温区时为 {value}", "低了 {distance}", "高了 {distance}", "离开最后温区时温度过低",
     "离开最后温区时温度过高", " 离开最后温区时至少 {value}", true},
    {"wave_preheat", " 进入波峰时为 {value}", "低了 {distance}", "高了 {distance}", "进入波峰时温度过低",
     "进入波峰时温度过高", " 进入波峰时至少 {value}", true},
    {"wave_step", " 进入波峰时跃升 {value}", "小了 {distance}", "大了 {distance}", "进入波峰时跃升过小",
     "进入波峰时跃升过大", " 进入波峰时至少跃升 {value}", true},
    {"wave_contact", " 接触焊料 {value}", "短了 {distance}", "长了 {distance}", "接触焊料过短", "接触焊料过长",
     " 至少接触焊料 {value}"},
    {"wave_longest_contact", " 连续接触焊料 {value}", "短了 {distance}", "长了 {distance}", "连续接触焊料过短",
     "连续接触焊料过长", " 至少连续接触焊料 {value}"},
};

constexpr BoardWords kBoards[] = {
    {"spread_of_peaks", "峰值温差", "为 {value}", "至少 {value}", "小了 {distance}", "大了 {distance}", true},
    {"spread_when_hottest", "最热点到达 {level} 时的温差", "为 {value}", "至少 {value}", "小了 {distance}",
     "大了 {distance}", true},
    {"largest_spread", "最大温差", "为 {value}", "至少 {value}", "小了 {distance}", "大了 {distance}", true},
    {"lag", "到达 {level} 的时间差", "为 {value}", "至少 {value}", "短了 {distance}", "长了 {distance}", false},
};

constexpr KeyWords kCauses[] = {
    {"open", "[fault:{placement} 在⟨记录的⟩第 {from} 至 {to} s 开路]", nullptr},
    {"over_range", "[fault:{placement} 在⟨记录的⟩第 {from} 至 {to} s 超出量程]", nullptr},
    {"dropout", "[fault:{placement} 在⟨记录的⟩第 {from} 至 {to} s 丢失信号]", nullptr},
    {"not_read", "[fault:{placement} 在⟨记录的⟩第 {from} 至 {to} s 没有读数]", nullptr},
    {"ends_hot_one", "记录在 {placement} 冷却之前就结束", nullptr},
    {"ends_hot_more", "记录在它们冷却之前就结束", nullptr},
    {"ends_rising_one", "记录结束时 {placement} 仍在升温", nullptr},
    {"ends_rising_more", "记录结束时它们仍在升温", nullptr},
    {"starts_hot_one", "记录开始时 {placement} 已经很热", nullptr},
    {"starts_hot_more", "记录开始时它们已经很热", nullptr},
    {"tc", "[board:Tc 未知，{detail}]", nullptr},
    {"no_channel", "[outcome:记录中没有通道 {placement}]", nullptr},
    {"other", "[outcome:{detail}]", nullptr},
};

constexpr KeyWords kCuts[] = {
    {"ends_hot", "；记录在冷却之前就结束", nullptr},
    {"ends_rising", "；记录结束时仍在升温", nullptr},
    {"starts_hot", "；记录开始时已经很热", nullptr},
};

constexpr KeyWords kFixed[] = {
    {"met.all", "唯一的要求已满足。", "{n} 项要求全部满足。"},
    {"met.rest", "另一项已满足。", "其余 {k} 项均已满足。"},
    {"met.nothing_required", "对这次过炉没有任何要求。", nullptr},
    {"out", "{n} 项要求中有 {k} 项超限。", nullptr},
    {"out.and_none", "{n} 项要求中有 {k} 项超限：", nullptr},
    {"out.within", "{n} 项要求中有 {k} 项超限，但在不确定度之内。", nullptr},
    {"tight.one", "没有超限。", nullptr},
    {"tight.more", "没有超限；{n} 项中有 {k} 项与界限的距离小于其不确定度。", nullptr},
    {"more", "[more:另有 {k} 项]。", nullptr},
    {"more.out", "[more:另有 {k} 项超限]。", nullptr},
    {"more.causes", "[more:另有 {k} 项]属于其他原因。", nullptr},
    {"bodies", "[board:元件本体的界限未判定：没有板文件说明哪个是本体。]", nullptr},
    {"sides", "[board:单面的界限未判定：没有板文件说明测点在哪一面。]", nullptr},
    {"suspect.reversed", "[fault:{placement} 在其他测点升温时下降：是否极性接反？]", nullptr},
    {"suspect.detached", "[fault:{placement} 领先所有测点：是否已脱落？]", nullptr},
    {"suspect.swapped", "[fault:{placement} 可能与另一测点接错。]", nullptr},
    {"suspect.stuck", "[fault:{placement} 在⟨记录的⟩第 {from} 至 {to} s 读数不变：是否卡住？]", nullptr},
    {"window.better", "[window:{window} 符合这些峰值。]", nullptr},
};

constexpr KeyWords kVerdicts[] = {
    {"pass", "合格", nullptr},
    {"conditional_pass", "有条件合格", nullptr},
    {"undetermined", "无法判定", nullptr},
    {"conditional_fail", "有条件不合格", nullptr},
    {"fail", "不合格", nullptr},
};

constexpr KeyWords kTogether[] = {
    {"two", "{first} 和 {second} ", nullptr},
    {"three", "{first}、{second} 和 {third} ", nullptr},
    {"others", "{first}、{second} 等另外 {others} 个测点", nullptr},
    {"all", "全部{count.word}个测点", nullptr},
    {"all_joints", "全部{count.word}个焊点", nullptr},
    {"all_bodies", "全部{count.word}个本体", nullptr},
};

constexpr KeyWords kNoneOf[] = {
    {"all", "{count.word}个测点中没有一个", nullptr},
    {"all_joints", "{count.word}个焊点中没有一个", nullptr},
    {"all_bodies", "{count.word}个本体中没有一个", nullptr},
};

}  // namespace

const SentenceWords kMainlandSentence{
    .placements = kPlacements,
    .boards = kBoards,
    .causes = kCauses,
    .cuts = kCuts,
    .fixed = kFixed,
    .verdicts = kVerdicts,
    .together = kTogether,
    .none_of = kNoneOf,
    .counts = {"零", "一", "两", "三", "四", "五", "六", "七", "八", "九", "十", "十一", "十二"},
    .verdict = "[verdict:%1。]",
    .verdict_assumed = "[verdict:%1][window:（按假定的 {window}）]。",
    .closest = "最接近界限的是：[outcome:%1]，%2。",
    .tightest = "最接近界限的是：[outcome:%1]，%2。",
    .tight = "[outcome:%1]，%2，在不确定度之内。",
    .above_lower = "高于下限 {distance}",
    .below_upper = "低于上限 {distance}",
    .problem = "[outcome:%1，%2]",
    .problem_within = "[outcome:%1]，%2，在不确定度之内",
    .problem_at_least = "[outcome:%1]，至少%2",
    .problem_together = "[outcome:%1%2，差 %3]",
    .by_two = "{distance_1.number} 和 {distance_2}",
    .by_up_to = "最多 {distance}",
    .by_or_more = "%1 或更多",
    .within_their = "，在不确定度之内",
    .zones_set = "，取决于[zones:{zones}]",
    .zones_in = "，位于[zones:{zones}]",
    .zones_set_within = "；取决于[zones:{zones}]",
    .zones_in_within = "；出现在[zones:{zones}]",
    .never_one = "[outcome:{placement} 从未到达 {level}]：",
    .never_more = "[outcome:%1从未到达 {level}]：",
    .never_none = "[outcome:%1到达 {level}]：",
    .never_time = "以上时间 {time}，短了 {time_distance}",
    .never_both_one = "峰值 {peak}，低了 {peak_distance}；{level} 以上 {time}，短了 {time_distance}",
    .never_both_two =
        "峰值 {peak_1.number} 和 {peak_2}，低了 {peak_distance_1.number} 和 {peak_distance_2}；{level} 以上 "
        "{time}，短了 {time_distance}",
    .never_both_more = "峰值最多低了 {peak_distance}；{level} 以上 {time}，短了 {time_distance}",
    .never_zones = "；取决于[zones:{zones}]",
    .no_value = "{requirement}没有值",
    .no_value_other = "[outcome:{placement} 的 {requirement} 没有值]：{reason}",
    .no_value_others = "[outcome:%1的 {requirement} 没有值]：{reason}",
    .no_value_board = "[outcome:%1没有值]：%2",
    .not_reached_by = "%1 未到达",
    .not_reached_any = "没有一个测点到达",
    .has_none = {"", "{n} 项要求中有 {k} 项没有值", nullptr},
    .is_undetermined = {"", "{n} 项要求中有 {k} 项无法判定", nullptr},
    .more_have_none = {"", "另有 {k} 项没有值", nullptr},
    .more_undetermined = {"", "另有 {k} 项无法判定", nullptr},
    .because = "%1：%2",
    .for_some = "其中 {k} 项，%1",
    .stop = "。",
    .zone = "温区 %1",
    .zones = "温区 %1",
    .and_ = "和",
    .comma = "、",
};

}  // namespace ovenwright::desktop
