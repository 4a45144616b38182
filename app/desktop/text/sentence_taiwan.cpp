#include "app/desktop/text/sentence_words.h"

// The verdict sentence in Traditional Chinese as written in Taiwan.
namespace ovenwright::desktop {
namespace {

constexpr PlacementWords kPlacements[] = {
    {"peak", " 峰值溫度為 {value}", "低了 {distance}", "高了 {distance}", "峰值溫度過低", "峰值溫度過高",
     " 峰值溫度至少 {value}", true},
    {"peak_time", " 升到峰值需 {value}", "短了 {distance}", "長了 {distance}", "過早到達峰值", "升到峰值的時間過長",
     " 升到峰值至少需 {value}"},
    {"time_above", " 在 {level} 以上停留 {value}", "短了 {distance}", "長了 {distance}", "在 {level} 以上停留過短",
     "在 {level} 以上停留過長", " 在 {level} 以上至少停留 {value}"},
    {"excursions", " 超過 {level} 共 {value} 次", "少了 {distance} 次", "多了 {distance} 次", "超過 {level} 的次數過少",
     "超過 {level} 的次數過多", " 超過 {level} 至少 {value} 次"},
    {"area", " 在 {level} 以上累積 {value}", "少了 {distance}", "多了 {distance}", "在 {level} 以上累積過少",
     "在 {level} 以上累積過多", " 在 {level} 以上至少累積 {value}"},
    {"soak", " 從 {T1} 到 {T2} 的恆溫時間為 {value}", "短了 {distance}", "長了 {distance}", "恆溫時間過短",
     "恆溫時間過長", " 從 {T1} 到 {T2} 的恆溫時間至少 {value}"},
    {"near_peak", " 在峰值 {offset} 以內停留 {value}", "短了 {distance}", "長了 {distance}", "在峰值附近停留過短",
     "在峰值附近停留過長", " 在峰值 {offset} 以內至少停留 {value}"},
    {"near_reference", " 在 {level} 或以上停留 {value}", "短了 {distance}", "長了 {distance}", "在參考溫度附近停留過短",
     "在參考溫度附近停留過長", " 在 {level} 或以上至少停留 {value}"},
    {"steepest_rise", " 最大升溫斜率為 {value}", "慢了 {distance}", "快了 {distance}", "升溫過慢", "升溫過快",
     " 最大升溫斜率至少 {value}"},
    {"mean_rise", " 從 {T1} 到 {T2} 的平均升溫斜率為 {value}", "慢了 {distance}", "快了 {distance}", "平均升溫過慢",
     "平均升溫過快", " 從 {T1} 到 {T2} 的平均升溫斜率至少 {value}"},
    {"mean_rise_to_peak", " 從 {T1} 到峰值的平均升溫斜率為 {value}", "慢了 {distance}", "快了 {distance}",
     "平均升溫過慢", "平均升溫過快", " 從 {T1} 到峰值的平均升溫斜率至少 {value}"},
    {"steepest_fall", " 最大降溫斜率為 {value}", "慢了 {distance}", "快了 {distance}", "降溫過慢", "降溫過快",
     " 最大降溫斜率至少 {value}"},
    {"mean_fall", " 從 {T1} 到 {T2} 的平均降溫斜率為 {value}", "慢了 {distance}", "快了 {distance}", "平均降溫過慢",
     "平均降溫過快", " 從 {T1} 到 {T2} 的平均降溫斜率至少 {value}"},
    {"mean_fall_from_peak", " 從峰值到 {T2} 的平均降溫斜率為 {value}", "慢了 {distance}", "快了 {distance}",
     "平均降溫過慢", "平均降溫過快", " 從峰值到 {T2} 的平均降溫斜率至少 {value}"},
    {"temperature_at_time", " 在⟨記錄的⟩第 {time} s 為 {value}", "低了 {distance}", "高了 {distance}",
     "在⟨記錄的⟩第 {time} s 溫度過低", "在⟨記錄的⟩第 {time} s 溫度過高", " 在⟨記錄的⟩第 {time} s 至少 {value}", true},
    {"temperature_at_position", " 在距爐口 {position} mm 處為 {value}", "低了 {distance}", "高了 {distance}",
     "在距爐口 {position} mm 處溫度過低", "在距爐口 {position} mm 處溫度過高", " 在距爐口 {position} mm 處至少 {value}",
     true},
    {"temperature_at_zone", " 離開溫區 {zone} 時為 {value}", "低了 {distance}", "高了 {distance}",
     "離開溫區 {zone} 時溫度過低", "離開溫區 {zone} 時溫度過高", " 離開溫區 {zone} 時至少 {value}", true},
    {"exit_temperature", " 離開最後溫區時為 {value}", "低了 {distance}", "高了 {distance}", "離開最後溫區時溫度過低",
     "離開最後溫區時溫度過高", " 離開最後溫區時至少 {value}", true},
    {"wave_preheat", " 進入波峰時為 {value}", "低了 {distance}", "高了 {distance}", "進入波峰時溫度過低",
     "進入波峰時溫度過高", " 進入波峰時至少 {value}", true},
    {"wave_step", " 進入波峰時躍升 {value}", "小了 {distance}", "大了 {distance}", "進入波峰時躍升過小",
     "進入波峰時躍升過大", " 進入波峰時至少躍升 {value}", true},
    {"wave_contact", " 接觸焊料 {value}", "短了 {distance}", "長了 {distance}", "接觸焊料過短", "接觸焊料過長",
     " 至少接觸焊料 {value}"},
    {"wave_longest_contact", " 連續接觸焊料 {value}", "短了 {distance}", "長了 {distance}", "連續接觸焊料過短",
     "連續接觸焊料過長", " 至少連續接觸焊料 {value}"},
};

constexpr BoardWords kBoards[] = {
    {"spread_of_peaks", "峰值溫差", "為 {value}", "至少 {value}", "小了 {distance}", "大了 {distance}", true},
    {"spread_when_hottest", "最熱點到達 {level} 時的溫差", "為 {value}", "至少 {value}", "小了 {distance}",
     "大了 {distance}", true},
    {"largest_spread", "最大溫差", "為 {value}", "至少 {value}", "小了 {distance}", "大了 {distance}", true},
    {"lag", "到達 {level} 的時間差", "為 {value}", "至少 {value}", "短了 {distance}", "長了 {distance}", false},
};

constexpr KeyWords kCauses[] = {
    {"open", "[fault:{placement} 在⟨記錄的⟩第 {from} 至 {to} s 開路]", nullptr},
    {"over_range", "[fault:{placement} 在⟨記錄的⟩第 {from} 至 {to} s 超出量程]", nullptr},
    {"dropout", "[fault:{placement} 在⟨記錄的⟩第 {from} 至 {to} s 掉訊]", nullptr},
    {"not_read", "[fault:{placement} 在⟨記錄的⟩第 {from} 至 {to} s 沒有讀數]", nullptr},
    {"ends_hot_one", "記錄在 {placement} 冷卻之前就結束", nullptr},
    {"ends_hot_more", "記錄在它們冷卻之前就結束", nullptr},
    {"ends_rising_one", "記錄結束時 {placement} 仍在升溫", nullptr},
    {"ends_rising_more", "記錄結束時它們仍在升溫", nullptr},
    {"starts_hot_one", "記錄開始時 {placement} 已經很熱", nullptr},
    {"starts_hot_more", "記錄開始時它們已經很熱", nullptr},
    {"tc", "[board:Tc 未知，{detail}]", nullptr},
    {"no_channel", "[outcome:記錄中沒有通道 {placement}]", nullptr},
    {"other", "[outcome:{detail}]", nullptr},
};

constexpr KeyWords kCuts[] = {
    {"ends_hot", "；記錄在冷卻之前就結束", nullptr},
    {"ends_rising", "；記錄結束時仍在升溫", nullptr},
    {"starts_hot", "；記錄開始時已經很熱", nullptr},
};

constexpr KeyWords kFixed[] = {
    {"met.all", "唯一的要求已滿足。", "{n} 項要求全部滿足。"},
    {"met.rest", "另一項已滿足。", "其餘 {k} 項均已滿足。"},
    {"met.nothing_required", "對這次過爐沒有任何要求。", nullptr},
    {"out", "{n} 項要求中有 {k} 項超限。", nullptr},
    {"out.and_none", "{n} 項要求中有 {k} 項超限：", nullptr},
    {"out.within", "{n} 項要求中有 {k} 項超限，但在不確定度之內。", nullptr},
    {"tight.one", "沒有超限。", nullptr},
    {"tight.more", "沒有超限；{n} 項中有 {k} 項與界限的距離小於其不確定度。", nullptr},
    {"more", "[more:另有 {k} 項]。", nullptr},
    {"more.out", "[more:另有 {k} 項超限]。", nullptr},
    {"more.causes", "[more:另有 {k} 項]屬於其他原因。", nullptr},
    {"bodies", "[board:零件本體的界限未判定：沒有板檔說明哪個是本體。]", nullptr},
    {"sides", "[board:單面的界限未判定：沒有板檔說明測點在哪一面。]", nullptr},
    {"suspect.reversed", "[fault:{placement} 在其他測點升溫時下降：是否極性接反？]", nullptr},
    {"suspect.detached", "[fault:{placement} 領先所有測點：是否已脫落？]", nullptr},
    {"suspect.swapped", "[fault:{placement} 可能與另一測點接錯。]", nullptr},
    {"suspect.stuck", "[fault:{placement} 在⟨記錄的⟩第 {from} 至 {to} s 讀數不變：是否卡住？]", nullptr},
    {"window.better", "[window:{window} 符合這些峰值。]", nullptr},
};

constexpr KeyWords kVerdicts[] = {
    {"pass", "合格", nullptr},
    {"conditional_pass", "有條件合格", nullptr},
    {"undetermined", "無法判定", nullptr},
    {"conditional_fail", "有條件不合格", nullptr},
    {"fail", "不合格", nullptr},
};

constexpr KeyWords kTogether[] = {
    {"two", "{first} 和 {second} ", nullptr},
    {"three", "{first}、{second} 和 {third} ", nullptr},
    {"others", "{first}、{second} 等另外 {others} 個測點", nullptr},
    {"all", "全部{count.word}個測點", nullptr},
    {"all_joints", "全部{count.word}個焊點", nullptr},
    {"all_bodies", "全部{count.word}個本體", nullptr},
};

constexpr KeyWords kNoneOf[] = {
    {"all", "{count.word}個測點中沒有一個", nullptr},
    {"all_joints", "{count.word}個焊點中沒有一個", nullptr},
    {"all_bodies", "{count.word}個本體中沒有一個", nullptr},
};

}  // namespace

const SentenceWords kTaiwanSentence{
    .placements = kPlacements,
    .boards = kBoards,
    .causes = kCauses,
    .cuts = kCuts,
    .fixed = kFixed,
    .verdicts = kVerdicts,
    .together = kTogether,
    .none_of = kNoneOf,
    .counts = {"零", "一", "兩", "三", "四", "五", "六", "七", "八", "九", "十", "十一", "十二"},
    .verdict = "[verdict:%1。]",
    .verdict_assumed = "[verdict:%1][window:（按假定的 {window}）]。",
    .closest = "最接近界限的是：[outcome:%1]，%2。",
    .tightest = "最接近界限的是：[outcome:%1]，%2。",
    .tight = "[outcome:%1]，%2，在不確定度之內。",
    .above_lower = "高於下限 {distance}",
    .below_upper = "低於上限 {distance}",
    .problem = "[outcome:%1，%2]",
    .problem_within = "[outcome:%1]，%2，在不確定度之內",
    .problem_at_least = "[outcome:%1]，至少%2",
    .problem_together = "[outcome:%1%2，差 %3]",
    .by_two = "{distance_1.number} 和 {distance_2}",
    .by_up_to = "最多 {distance}",
    .by_or_more = "%1 或更多",
    .within_their = "，在不確定度之內",
    .zones_set = "，取決於[zones:{zones}]",
    .zones_in = "，位於[zones:{zones}]",
    .zones_set_within = "；取決於[zones:{zones}]",
    .zones_in_within = "；出現在[zones:{zones}]",
    .never_one = "[outcome:{placement} 從未到達 {level}]：",
    .never_more = "[outcome:%1從未到達 {level}]：",
    .never_none = "[outcome:%1到達 {level}]：",
    .never_time = "以上時間 {time}，短了 {time_distance}",
    .never_both_one = "峰值 {peak}，低了 {peak_distance}；{level} 以上 {time}，短了 {time_distance}",
    .never_both_two =
        "峰值 {peak_1.number} 和 {peak_2}，低了 {peak_distance_1.number} 和 {peak_distance_2}；{level} 以上 "
        "{time}，短了 {time_distance}",
    .never_both_more = "峰值最多低了 {peak_distance}；{level} 以上 {time}，短了 {time_distance}",
    .never_zones = "；取決於[zones:{zones}]",
    .no_value = "{requirement}沒有值",
    .no_value_other = "[outcome:{placement} 的 {requirement} 沒有值]：{reason}",
    .no_value_others = "[outcome:%1的 {requirement} 沒有值]：{reason}",
    .no_value_board = "[outcome:%1沒有值]：%2",
    .not_reached_by = "%1 未到達",
    .not_reached_any = "沒有一個測點到達",
    .has_none = {"", "{n} 項要求中有 {k} 項沒有值", nullptr},
    .is_undetermined = {"", "{n} 項要求中有 {k} 項無法判定", nullptr},
    .more_have_none = {"", "另有 {k} 項沒有值", nullptr},
    .more_undetermined = {"", "另有 {k} 項無法判定", nullptr},
    .because = "%1：%2",
    .for_some = "其中 {k} 項，%1",
    .stop = "。",
    .zone = "溫區 %1",
    .zones = "溫區 %1",
    .and_ = "和",
    .comma = "、",
};

}  // namespace ovenwright::desktop
