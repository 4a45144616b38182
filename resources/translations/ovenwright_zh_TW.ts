<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_TW">
<context>
    <name>Archive</name>
    <message>
        <source>this computer</source>
        <translation>這台電腦</translation>
    </message>
    <message>
        <source>Open a log, check it, and keep the run under its lot; ovenwright archive add and ovenwright watch do the same for many logs.</source>
        <translation>開啟記錄、檢查後將該次測溫存入其批次；ovenwright archive add 與 ovenwright watch 可處理多個記錄。</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>再試一次</translation>
    </message>
    <message>
        <source>No run is kept yet.</source>
        <translation>尚未保存任何測溫。</translation>
    </message>
    <message>
        <source>The archive&apos;s server does not answer.</source>
        <translation>存檔的伺服器沒有回應。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) wait on this computer and are sent when it is back.</source>
        <translation>
            <numerusform>%n 次測溫在這台電腦等待，恢復後即傳送。</numerusform>
        </translation>
    </message>
    <message>
        <source>Runs that are kept meanwhile wait on this computer.</source>
        <translation>期間保存的測溫會在這台電腦等待。</translation>
    </message>
    <message>
        <source>The archive cannot be read.</source>
        <translation>無法讀取存檔。</translation>
    </message>
    <message>
        <source>No run passes the filter.</source>
        <translation>沒有測溫符合篩選條件。</translation>
    </message>
    <message>
        <source>Show all runs</source>
        <translation>顯示所有測溫</translation>
    </message>
    <message>
        <source>Archive: %1</source>
        <translation>存檔：%1</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n 次測溫</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1, %2</source>
        <translation>存檔：%1，%2</translation>
    </message>
    <message numerus="yes">
        <source>%n waiting to be sent</source>
        <translation>
            <numerusform>%n 筆等待傳送</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 away</source>
        <translation>存檔：%1 無回應</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 away, %n record(s) wait here</source>
        <translation>
            <numerusform>存檔：%1 無回應，%n 筆在此等候</numerusform>
        </translation>
    </message>
    <message>
        <source>The archive&apos;s server is slow to answer.</source>
        <translation>存檔的伺服器回應緩慢。</translation>
    </message>
    <message>
        <source>The list comes as soon as it does; the other pages work meanwhile.</source>
        <translation>一有回應就會顯示清單；其他頁面仍可使用。</translation>
    </message>
    <message>
        <source>Archive: %1 is slow to answer</source>
        <translation>存檔：%1 回應緩慢</translation>
    </message>
    <message>
        <source>Archive: %1 refuses</source>
        <translation>存檔：%1 拒絕</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 refuses, %n record(s) wait here</source>
        <translation>
            <numerusform>存檔：%1 拒絕，%n 筆在此等候</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 cannot be read</source>
        <translation>存檔：無法讀取 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n refused by the server and kept here</source>
        <translation>
            <numerusform>%n 筆被伺服器拒絕，保存在此</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3 in lot %4: the lists show that one.</source>
        <translation>%1 的記錄已由 %2 保存為 %3（批次 %4）：清單顯示該筆。</translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3: the lists show that one.</source>
        <translation>%1 的記錄已由 %2 保存為 %3：清單顯示該筆。</translation>
    </message>
    <message numerus="yes">
        <source>So are %n more.</source>
        <translation>
            <numerusform>另有 %n 筆亦同。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ChangeNote</name>
    <message>
        <source>Zone %1</source>
        <translation>溫區 %1</translation>
    </message>
    <message>
        <source>Zone %1, top and bottom</source>
        <translation>溫區 %1，上和下</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>溫區 %1，上</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>溫區 %1，下</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>Predicted: %1</source>
        <translation>預測：%1</translation>
    </message>
    <message>
        <source>smallest margin %1</source>
        <translation>最小裕度 %1</translation>
    </message>
    <message>
        <source>Tightest: %1.</source>
        <translation>最接近界限：%1。</translation>
    </message>
    <message>
        <source>Changed on the oven by</source>
        <translation>在爐上變更者</translation>
    </message>
    <message>
        <source>Confirmed with an instrumented run by</source>
        <translation>實際測溫確認者</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>核准者</translation>
    </message>
    <message>
        <source>Written %1 by Ovenwright %2.</source>
        <translation>%1 由 Ovenwright %2 產生。</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>爐</translation>
    </message>
    <message>
        <source>Recipe that was run</source>
        <translation>實際使用的配方</translation>
    </message>
    <message>
        <source>Learned from the run</source>
        <translation>學習所用的測溫</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Process window</source>
        <translation>製程窗口</translation>
    </message>
    <message>
        <source>Change note</source>
        <translation>變更單</translation>
    </message>
    <message>
        <source>This recipe is not predicted to pass. It is for a test run only, not for production.</source>
        <translation>預測此配方不會合格。僅供測試，不可用於量產。</translation>
    </message>
    <message>
        <source>Setpoint</source>
        <translation>設定溫度</translation>
    </message>
    <message>
        <source>now</source>
        <translation>目前</translation>
    </message>
    <message>
        <source>new</source>
        <translation>新</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>差</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>實測：%1</translation>
    </message>
    <message>
        <source>Before it is used</source>
        <translation>使用之前</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>日期</translation>
    </message>
    <message>
        <source>The model follows these logs with a misfit of %1 (root mean square).</source>
        <translation>模型與這些記錄的偏差為 %1（均方根）。</translation>
    </message>
    <message>
        <source>To check first: %1</source>
        <translation>請先確認：%1</translation>
    </message>
    <message>
        <source>New recipe</source>
        <translation>新配方</translation>
    </message>
    <message>
        <source>Top and bottom are set apart, and no run that was learned from had them apart: what each side does alone is not known.</source>
        <translation>上下設定不同，而所學習的測溫都是上下相同：各側單獨的作用不得而知。</translation>
    </message>
    <message>
        <source>It is not known how sure it is to pass. Make a test run of it first.</source>
        <translation>是否合格的把握不得而知。請先以此配方做一次測試。</translation>
    </message>
    <message>
        <source>It is not sure to pass: %1. Make a test run of it first.</source>
        <translation>不一定會合格：%1。請先以此配方做一次測試。</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>a list</comment>
        <translation>%1。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
</context>
<context>
    <name>Compare</name>
    <message>
        <source>s, not lined up</source>
        <translation>s（未對齊）</translation>
    </message>
    <message>
        <source>s from %1</source>
        <comment>a temperature</comment>
        <translation>s（自 %1 起）</translation>
    </message>
    <message>
        <source>s from oven entry</source>
        <translation>s（自進爐）</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>A solid, B dashed</source>
        <translation>A 實線，B 虛線</translation>
    </message>
    <message>
        <source>No run is open.</source>
        <translation>未開啟任何記錄。</translation>
    </message>
    <message>
        <source>Compare holds two runs against each other.</source>
        <translation>比較功能將兩次測量相互對照。</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>開啟記錄…</translation>
    </message>
    <message>
        <source>Look at two demo runs</source>
        <translation>看兩個示範記錄</translation>
    </message>
    <message>
        <source>One run is open: %1.</source>
        <translation>已開啟一次：%1。</translation>
    </message>
    <message>
        <source>Compare needs a second one.</source>
        <translation>比較還需要另一次。</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>開啟另一個記錄…</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>新增一次…</translation>
    </message>
    <message>
        <source>Comparing.</source>
        <translation>正在比較。</translation>
    </message>
    <message>
        <source>These runs cannot be compared.</source>
        <translation>這兩次無法比較。</translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>以 A 的製程窗口比較</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n 次測溫</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thermocouple(s) in common</source>
        <translation>
            <numerusform>%n 個共同的熱電偶</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>runs, thermocouples in common</comment>
        <translation>%1，%2</translation>
    </message>
</context>
<context>
    <name>CurvePlot</name>
    <message>
        <source>Hottest to coldest, peak %1</source>
        <translation>由熱到冷，峰值 %1</translation>
    </message>
    <message>
        <source>At %1 s</source>
        <translation>第 %1 s</translation>
    </message>
    <message>
        <source>At %1 s, zone %2, %3 mm</source>
        <translation>第 %1 s，溫區 %2，%3 mm</translation>
    </message>
    <message>
        <source>At %1 s, %2 mm</source>
        <translation>第 %1 s，%2 mm</translation>
    </message>
    <message>
        <source>Predicted peak, %1</source>
        <translation>預測峰值，%1</translation>
    </message>
    <message>
        <source>error band, 95 %</source>
        <translation>誤差帶，95 %</translation>
    </message>
</context>
<context>
    <name>DropFrame</name>
    <message numerus="yes">
        <source>Drop to read %n log(s)</source>
        <translation>
            <numerusform>放開以讀取 %n 個記錄</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LotLane</name>
    <message>
        <source>lower limit</source>
        <translation>下限</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>上限</translation>
    </message>
    <message numerus="yes">
        <source>each of the %n run(s)</source>
        <translation>
            <numerusform>%n 次測溫各一</numerusform>
        </translation>
    </message>
    <message>
        <source>mean and ± 3 s</source>
        <translation>平均與 ± 3 s</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>平均</translation>
    </message>
    <message>
        <source>95 % of runs, with 95 % confidence</source>
        <translation>95 % 的測溫，信賴水準 95 %</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % 的測溫</translation>
    </message>
</context>
<context>
    <name>LotWords</name>
    <message>
        <source>d MMMM</source>
        <comment>date of this year</comment>
        <translation>M月d日</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date</comment>
        <translation>yyyy年M月d日</translation>
    </message>
    <message>
        <source>d MMM yyyy HH:mm</source>
        <comment>date and time</comment>
        <translation>yyyy年M月d日 HH:mm</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>day on an axis</comment>
        <translation>M月d日</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>when, value</comment>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>lot, when, value</comment>
        <translation>%1，%2：%3</translation>
    </message>
    <message>
        <source>Moving range</source>
        <translation>移動全距</translation>
    </message>
    <message>
        <source>Range in the subgroup</source>
        <translation>子組全距</translation>
    </message>
    <message>
        <source>Standard deviation in the subgroup</source>
        <translation>子組標準差</translation>
    </message>
    <message>
        <source>Mean of the subgroup</source>
        <translation>子組平均</translation>
    </message>
    <message>
        <source>Weighted moving average (EWMA)</source>
        <translation>加權移動平均 (EWMA)</translation>
    </message>
    <message>
        <source>beyond the limits</source>
        <translation>超出界限</translation>
    </message>
    <message>
        <source>%1 upper</source>
        <translation>%1 上限</translation>
    </message>
    <message>
        <source>%1 centre</source>
        <translation>%1 中心</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 下限</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>界限 %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>requirement, placement</comment>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>All %1 runs</source>
        <translation>全部 %1 次測溫</translation>
    </message>
    <message>
        <source>no board</source>
        <translation>無電路板</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>board, revision of the window</comment>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>Western Electric rules</source>
        <translation>Western Electric 規則</translation>
    </message>
    <message>
        <source>Nelson rules</source>
        <translation>Nelson 規則</translation>
    </message>
    <message numerus="yes">
        <source>%1: such a chart takes two subgroups of %n runs.</source>
        <translation>
            <numerusform>%1：此圖需要兩個各 %n 次測溫的子組。</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: a control chart takes two runs with a value.</source>
        <translation>%1：管制圖需要兩次有數值的測溫。</translation>
    </message>
    <message numerus="yes">
        <source>%1: the weighted average stays within its limits over %n runs.</source>
        <translation>
            <numerusform>%1：%n 次測溫的加權平均保持在界限內。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no signal in %n runs by the %2.</source>
        <translation>
            <numerusform>%1：依 %2，%n 次測溫中沒有訊號。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已連續 %n 個子組高於中心線。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已連續 %n 個子組低於中心線。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已連續 %n 次測溫高於中心線。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已連續 %n 次測溫低於中心線。</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 signals on %2: %3.</source>
        <translation>%1 於 %2 出現訊號：%3。</translation>
    </message>
    <message numerus="yes">
        <source>%1 signals, last on %2: %3; %n signals in all.</source>
        <translation>
            <numerusform>%1 出現訊號，最近於 %2：%3；共 %n 個訊號。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are few: whether the values are normal does not show, and the limits of the index are wide.</source>
        <translation>
            <numerusform>%n 次測溫偏少：無法看出數值是否為常態，指標的區間也較寬。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) without a value</source>
        <translation>
            <numerusform>%n 次測溫沒有數值</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) with a bound only</source>
        <translation>
            <numerusform>%n 次測溫只有界值</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>an index takes %n runs</source>
        <translation>
            <numerusform>指標需要 %n 次測溫</numerusform>
        </translation>
    </message>
    <message>
        <source>a count is not normally distributed</source>
        <translation>計數並非常態分布</translation>
    </message>
    <message>
        <source>no limit is known, or the limits changed</source>
        <translation>沒有已知界限，或界限已變更</translation>
    </message>
    <message>
        <source>all values are equal</source>
        <translation>所有數值相同</translation>
    </message>
    <message>
        <source>No index: %1.</source>
        <translation>沒有指標：%1。</translation>
    </message>
    <message>
        <source>%1 (95 %: %2 to %3)</source>
        <comment>index and its interval</comment>
        <translation>%1（95 %：%2 至 %3）</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>smallest, largest</comment>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>測溫次數</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>平均</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>標準差</translation>
    </message>
    <message>
        <source>Smallest, largest</source>
        <translation>最小、最大</translation>
    </message>
    <message>
        <source>Ppk</source>
        <translation>Ppk</translation>
    </message>
    <message>
        <source>Cpk, short term</source>
        <translation>Cpk（短期）</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, value</comment>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>lower limit %1</source>
        <translation>下限 %1</translation>
    </message>
    <message>
        <source>upper limit %1</source>
        <translation>上限 %1</translation>
    </message>
    <message>
        <source>Signal by the %1, at the run that completes it</source>
        <translation>依%1的訊號，位於使其成立的測溫</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) measured by another definition, which has an entry of its own.</source>
        <translation>
            <numerusform>%n 次測溫以其他定義量測，另有項目。</numerusform>
        </translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <comment>tolerance interval</comment>
        <translation>95 % 的測溫</translation>
    </message>
    <message>
        <source>Pp</source>
        <translation>Pp</translation>
    </message>
    <message>
        <source>Cp, short term</source>
        <translation>Cp，短期</translation>
    </message>
</context>
<context>
    <name>Model</name>
    <message>
        <source>no model fits this log</source>
        <translation>沒有模型符合這份記錄</translation>
    </message>
    <message>
        <source>the log does not follow this oven and recipe (misfit %1 °C): check that recipe, speed, oven and entry belong to this log</source>
        <translation>記錄與這座爐和配方不符（偏差 %1 °C）：請確認配方、速度、爐和入爐時刻屬於這份記錄</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C hotter than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>溫區 %1 似乎比設定值高 %2 °C：請檢查配方、溫區及其熱電偶</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C colder than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>溫區 %1 似乎比設定值低 %2 °C：請檢查配方、溫區及其熱電偶</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zone %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>記錄在溫區 %1 與這份配方不符：請確認配方和爐屬於這份記錄，且設定值沒有調換</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zones %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>記錄在溫區 %1 與這份配方不符：請確認配方和爐屬於這份記錄，且設定值沒有調換</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s later than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>曲線顯示入爐比給定時刻晚 %1 s ± %2 s：請檢查入爐時刻、速度和爐的入口長度</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s earlier than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>曲線顯示入爐比給定時刻早 %1 s ± %2 s：請檢查入爐時刻、速度和爐的入口長度</translation>
    </message>
    <message>
        <source>no thermocouple rises above %1 °C: the log does not show a board going through an oven</source>
        <translation>沒有熱電偶升到 %1 °C 以上：記錄沒有顯示電路板過爐</translation>
    </message>
    <message>
        <source>the log ends %1 s before the board has left zone %2 by this recipe&apos;s speed: check the speed, the entry and the oven, or log until the board has cooled</source>
        <translation>按這份配方的速度，記錄在電路板離開溫區 %2 之前 %1 s 就結束了：請檢查速度、入爐時刻和爐，或記錄到電路板冷卻為止</translation>
    </message>
    <message>
        <source>the log ends at %1 °C: how the board cools is little known; log until it has cooled</source>
        <translation>記錄在 %1 °C 結束：電路板如何冷卻所知甚少；請記錄到冷卻為止</translation>
    </message>
    <message>
        <source>%1 follows the air: its bead may be detached, or it belongs to kind &quot;air&quot;</source>
        <translation>%1 隨空氣變化：測點可能脫落，或屬於「空氣」類</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows it down is not known from this log</source>
        <translation>%1 未達 %2 °C：這份記錄看不出熔化使其升溫減慢多少</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows them down is not known from this log</source>
        <translation>%1 均未達 %2 °C：這份記錄看不出熔化使其升溫減慢多少</translation>
    </message>
    <message>
        <source>every thermocouple follows the air, so nothing is known of a board: check that the beads are attached</source>
        <translation>所有熱電偶都隨空氣變化，因此對電路板一無所知：請檢查測點是否固定</translation>
    </message>
    <message>
        <source>one thermocouple only: what is predicted holds for its place, not for the hottest and coldest of the board</source>
        <translation>只有一個熱電偶：預測只對其位置有效，不代表電路板最熱和最冷處</translation>
    </message>
    <message>
        <source>%1 is %2 mm long, so it lies in several zones at once (zone %3 has %4 mm): each of its places is predicted by itself, and the confirming run has to show them all</source>
        <translation>%1 長 %2 mm，因此同時位於多個溫區（溫區 %3 長 %4 mm）：各處分別預測，確認過爐時須全部量到</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % faster than the recipe&apos;s %3 mm/min, or zones so much shorter: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>曲線顯示鏈帶比配方的 %3 mm/min 快 %1 % ± %2 %，或溫區相應較短：請檢查速度、鏈帶和爐檔案中的溫區長度</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % slower than the recipe&apos;s %3 mm/min, or zones so much longer: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>曲線顯示鏈帶比配方的 %3 mm/min 慢 %1 % ± %2 %，或溫區相應較長：請檢查速度、鏈帶和爐檔案中的溫區長度</translation>
    </message>
    <message>
        <source>No suggestion: the window requires nothing that can be predicted for this board.</source>
        <translation>沒有建議：製程窗口對這塊電路板沒有任何可預測的要求。</translation>
    </message>
    <message>
        <source>No recipe was found that passes by the guarded rule of the window: what is suggested is inside the limits, and within its uncertainty of one.</source>
        <translation>沒有找到按保護帶規則合格的配方：建議的配方在界限之內，但與某一界限的距離小於其不確定度。</translation>
    </message>
    <message>
        <source>Fastest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>最快：在目前配方附近沒有找到能保留 %1 % 裕度的配方。</translation>
    </message>
    <message>
        <source>Coolest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>最低溫：在目前配方附近沒有找到能保留 %1 % 裕度的配方。</translation>
    </message>
    <message>
        <source>Fastest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>最快：沒有找到能保留 %1 % 裕度的配方；最多為 %2 %。</translation>
    </message>
    <message>
        <source>Coolest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>最低溫：沒有找到能保留 %1 % 裕度的配方；最多為 %2 %。</translation>
    </message>
    <message>
        <source>Least change: no recipe closer to the present one was found that passes.</source>
        <translation>變更最少：沒有找到更接近目前配方而合格的配方。</translation>
    </message>
    <message>
        <source>Fastest: none was found that passes about as likely as the other suggestions.</source>
        <translation>最快：找不到合格機率與其他建議相近的配方。</translation>
    </message>
    <message>
        <source>Coolest: none was found that passes about as likely as the other suggestions.</source>
        <translation>最低溫：找不到合格機率與其他建議相近的配方。</translation>
    </message>
    <message>
        <source>Fastest: the present recipe is that already.</source>
        <translation>最快：目前的配方已是如此。</translation>
    </message>
    <message>
        <source>Coolest: the present recipe is that already.</source>
        <translation>最低溫：目前的配方已是如此。</translation>
    </message>
    <message>
        <source>No next run is named: of the changes of recipe that were tried none is known to keep every body inside its limits and every peak below its upper limit.</source>
        <translation>未提出下一次過爐：在試過的配方變動中，沒有一個確知能讓每個元件本體都在界限內、每個峰值都低於其上限。</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Line %1, column %2: </source>
        <translation>第 %1 列，第 %2 欄：</translation>
    </message>
    <message>
        <source>Line %1: </source>
        <translation>第 %1 列：</translation>
    </message>
    <message>
        <source>found “%1”, expected %2</source>
        <translation>讀到「%1」，應為 %2</translation>
    </message>
    <message>
        <source>found %1, expected %2</source>
        <translation>讀到%1，應為%2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>開啟檔案</translation>
    </message>
    <message>
        <source>Open its folder</source>
        <translation>開啟所在資料夾</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
</context>
<context>
    <name>ReadingChoices</name>
    <message>
        <source>seconds</source>
        <translation>秒</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>毫秒</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>分鐘</translation>
    </message>
    <message>
        <source>clock m:s</source>
        <translation>時鐘 分:秒</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>時鐘 時:分:秒</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>日期和時間</translation>
    </message>
    <message>
        <source>serial days</source>
        <translation>序號日期</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>自 1970 年起的秒數</translation>
    </message>
    <message>
        <source>number of the row</source>
        <translation>資料的順序</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>逗號</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>分號</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>定位字元</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>直線</translation>
    </message>
    <message>
        <source>Blanks</source>
        <translation>空格</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>句點</translation>
    </message>
    <message>
        <source>mV</source>
        <translation>mV</translation>
    </message>
    <message>
        <source>Day, month, year</source>
        <translation>日、月、年</translation>
    </message>
    <message>
        <source>Month, day, year</source>
        <translation>月、日、年</translation>
    </message>
    <message>
        <source>Year, month, day</source>
        <translation>年、月、日</translation>
    </message>
    <message>
        <source>None</source>
        <translation>無</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>第 %1 列</translation>
    </message>
    <message>
        <source>Columns %1</source>
        <translation>第 %1 欄</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>第 %1 欄</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>As they stand</source>
        <translation>依原數值</translation>
    </message>
    <message>
        <source>Tenths</source>
        <translation>十分之一</translation>
    </message>
    <message>
        <source>Hundredths</source>
        <translation>百分之一</translation>
    </message>
    <message>
        <source>Type %1</source>
        <translation>%1 型</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>自動判定</translation>
    </message>
    <message>
        <source>Table %1</source>
        <translation>表格 %1</translation>
    </message>
    <message>
        <source>%1, %2 rows</source>
        <translation>%1，%2 列</translation>
    </message>
</context>
<context>
    <name>RecipeFile</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>changed from %1; a prediction, to be confirmed with an instrumented run</source>
        <translation>由 %1 變更；屬於預測，須以實際測溫確認</translation>
    </message>
</context>
<context>
    <name>RecipeLimits</name>
    <message>
        <source>The speed stays at %1: the oven goes no faster.</source>
        <translation>速度維持 %1：爐無法更快。</translation>
    </message>
    <message>
        <source>The speed stays at %1: the oven goes no slower.</source>
        <translation>速度維持 %1：爐無法更慢。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows a step of %3 to zone %4.</source>
        <translation>溫區 %1 維持 %2：爐允許與溫區 %4 相差 %3。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows %3 between top and bottom.</source>
        <translation>溫區 %1 維持 %2：爐允許上下相差 %3。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no more.</source>
        <translation>溫區 %1 維持 %2：爐不允許更高。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no less.</source>
        <translation>溫區 %1 維持 %2：爐不允許更低。</translation>
    </message>
</context>
<context>
    <name>Scene</name>
    <message>
        <source>%1 (TL)</source>
        <comment>temperature of the liquidus</comment>
        <translation>%1（TL）</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2，%3</translation>
    </message>
    <message>
        <source>%1 %2 %3, limit %4</source>
        <translation>%1 %2 %3，界限 %4</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
</context>
<context>
    <name>SentenceStates</name>
    <message>
        <source>No run is open. The result will stand here as one sentence.</source>
        <translation>尚未開啟測溫記錄。結果會以一句話顯示在這裡。</translation>
    </message>
    <message>
        <source>Each part of it leads to the place on the curve, the limit and the oven zones it came from.</source>
        <translation>句中每一部分都可連到曲線上的位置、界限和相關溫區。</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>正在讀取 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n 則警告</numerusform>
        </translation>
    </message>
    <message>
        <source>The numbers are no run in the unit that the file states.</source>
        <translation>依檔案註明的單位，數值不像過爐。</translation>
    </message>
    <message>
        <source>The file holds several tables: one was chosen.</source>
        <translation>檔案含有多個表格：已選取其中一個。</translation>
    </message>
    <message>
        <source>The unit was assumed in reading the log.</source>
        <translation>讀取時單位為假定。</translation>
    </message>
    <message>
        <source>The time was assumed in reading the log.</source>
        <translation>讀取時時間為假定。</translation>
    </message>
    <message>
        <source>The order of the date was assumed in reading the log.</source>
        <translation>讀取時日期順序為假定。</translation>
    </message>
    <message>
        <source>The decimal sign was assumed in reading the log.</source>
        <translation>讀取時小數符號為假定。</translation>
    </message>
    <message>
        <source>The type of thermocouple was assumed in reading the log.</source>
        <translation>讀取時熱電偶類型為假定。</translation>
    </message>
    <message>
        <source>The cold junction was assumed in reading the log.</source>
        <translation>讀取時冷接點溫度為假定。</translation>
    </message>
    <message>
        <source>Something was assumed in reading the log.</source>
        <translation>讀取時有假定之處。</translation>
    </message>
    <message numerus="yes">
        <source>%1 rows in %n channel(s).</source>
        <translation>
            <numerusform>%n 個通道共 %1 列。</numerusform>
        </translation>
    </message>
    <message>
        <source>Times count from oven entry, %1 s after the first row.</source>
        <translation>時間自進爐起算，即第一列之後 %1 s。</translation>
    </message>
    <message>
        <source>Nothing has been changed in the file. Corrections take effect at once and can be undone.</source>
        <translation>檔案未作任何更動。更正立即生效，也可復原。</translation>
    </message>
    <message>
        <source>A thermocouple was turned round in reading the log.</source>
        <translation>讀取時有一支熱電偶被反轉。</translation>
    </message>
    <message>
        <source>The encoding was assumed in reading the log.</source>
        <translation>讀取時編碼為假定。</translation>
    </message>
    <message>
        <source>The scale of the numbers was assumed in reading the log.</source>
        <translation>讀取時數字的倍率為假定。</translation>
    </message>
    <message>
        <source>Reading %1: %2 rows so far.</source>
        <translation>正在讀取 %1：目前 %2 列。</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>s from oven entry</source>
        <translation>s（自進爐）</translation>
    </message>
    <message>
        <source>s on the log&apos;s clock</source>
        <translation>s（記錄的時鐘）</translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>thermocouple %1</source>
        <translation>熱電偶 %1</translation>
    </message>
    <message>
        <source>%1, instrument %2, U = 2u</source>
        <translation>%1，儀器 %2，U = 2u</translation>
    </message>
    <message>
        <source>found from the curves</source>
        <translation>由曲線找到</translation>
    </message>
    <message>
        <source>given</source>
        <translation>自行指定</translation>
    </message>
    <message>
        <source>%1 ± %2 s on the log&apos;s clock, %3</source>
        <translation>記錄的時鐘 %1 ± %2 s，%3</translation>
    </message>
    <message>
        <source>lower limit by part</source>
        <translation>下限依零件</translation>
    </message>
    <message>
        <source>upper limit by part</source>
        <translation>上限依零件</translation>
    </message>
    <message>
        <source>Guarded, w = U (ILAC-G8:09/2019)</source>
        <translation>採用保護帶，w = U（ILAC-G8:09/2019）</translation>
    </message>
    <message>
        <source>Simple: inside the limits, limits included</source>
        <translation>簡單：在界限內即可，含界限值</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>注意事項</translation>
    </message>
    <message>
        <source>A suggested or changed recipe is a prediction: a qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>建議或變更的配方屬於預測：量產前須由合格人員以實際測溫確認，且不得超出錫膏、零件、電路板與爐的額定值。</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>高溫表面、運轉中的輸送帶、助焊劑煙霧：現場安全規定、當地法規與原廠資料表優先於此處顯示的任何內容。</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>隨附的製程窗口為一般值，請以錫膏的資料表為準。</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>製程窗口</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1，假定</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>判定規則</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>不確定度</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>爐</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>序號</translation>
    </message>
    <message>
        <source>Operator</source>
        <translation>操作人員</translation>
    </message>
    <message>
        <source>Run at</source>
        <translation>測溫時間</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>進爐時刻</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>存檔編號</translation>
    </message>
    <message>
        <source>%1, number %2 of its chain</source>
        <translation>%1，鏈中第 %2 筆</translation>
    </message>
    <message>
        <source>Chain</source>
        <translation>存檔鏈</translation>
    </message>
    <message>
        <source>%1; %2 bytes</source>
        <translation>%1；%2 位元組</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>批號 %1</translation>
    </message>
    <message>
        <source>Thermal profile</source>
        <translation>溫度曲線</translation>
    </message>
    <message>
        <source>Thermal profile, %1</source>
        <translation>溫度曲線，%1</translation>
    </message>
    <message>
        <source>Run %1 of %2 in the log</source>
        <translation>記錄中第 %1 次（共 %2 次）</translation>
    </message>
    <message>
        <source>behind ± stands the expanded uncertainty U = 2u (about 95 %), from thermocouple, instrument, noise and sampling (JCGM 100). How a bead is attached, and how runs of the oven differ, is not in it.</source>
        <translation>± 之後為擴充不確定度 U = 2u（約 95 %），來自熱電偶、儀器、雜訊與取樣（JCGM 100）。不含測點固定方式與各次過爐的差異。</translation>
    </message>
    <message>
        <source>Guarded</source>
        <translation>採用保護帶</translation>
    </message>
    <message>
        <source>pass: clear of the limits by U or more; conditional: within U of a limit, inside (pass) or outside (fail); fail: outside by more than U.</source>
        <translation>合格：距界限 U 以上；有條件：距界限小於 U，在內（合格）或在外（不合格）；不合格：超出界限大於 U。</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>界限</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>來源</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>讀取方式</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>假定</translation>
    </message>
    <message>
        <source>Faults, on the log’s clock</source>
        <translation>異常（記錄的時鐘）</translation>
    </message>
    <message>
        <source>%1 may be wrong: %2</source>
        <translation>%1 可能有誤：%2</translation>
    </message>
    <message>
        <source>To note</source>
        <translation>備註</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>記錄</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>檢查者、日期</translation>
    </message>
    <message>
        <source>Released by, date</source>
        <translation>核准者、日期</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>附註</translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>溫度對時間</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>界限圖</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>第 %1 頁，共 %2 頁</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>熱電偶</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>最小</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>裕度</translation>
    </message>
    <message>
        <source>On the next page</source>
        <translation>見下一頁</translation>
    </message>
    <message>
        <source>Made %1 from the archive</source>
        <translation>%1 由存檔製作</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>%1 製作</translation>
    </message>
    <message>
        <source>limit lanes</source>
        <translation>界限圖</translation>
    </message>
    <message>
        <source>results by thermocouple</source>
        <translation>各熱電偶結果</translation>
    </message>
    <message>
        <source>limits, sources and how the log was read</source>
        <translation>界限、來源與記錄讀取方式</translation>
    </message>
    <message>
        <source>%1, continued from page 1: %2</source>
        <translation>%1，續第 1 頁：%2</translation>
    </message>
    <message>
        <source>Limits, sources and how the log was read</source>
        <translation>界限、來源與記錄讀取方式</translation>
    </message>
    <message>
        <source>%1 upper</source>
        <translation>%1 上限</translation>
    </message>
    <message>
        <source>%1 centre</source>
        <translation>%1 中線</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 下限</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>界限 %1</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation>記錄程式</translation>
    </message>
    <message>
        <source>Recorded verdict</source>
        <translation>記錄的判定</translation>
    </message>
    <message>
        <source>%1; this sheet was judged anew</source>
        <translation>%1；本表為重新判定</translation>
    </message>
    <message numerus="yes">
        <source>%n different</source>
        <translation>
            <numerusform>%n 個不同值</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>全部 %n 次測溫合格。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>%n 次測溫中 %1 次合格。</numerusform>
        </translation>
    </message>
    <message>
        <source>Smallest margin %1</source>
        <translation>最小裕度 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n 次測溫</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: run by run, the least capable of all</source>
        <translation>%1：逐次測溫，能力最低的一項</translation>
    </message>
    <message>
        <source>Statistics</source>
        <translation>統計</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>測溫</translation>
    </message>
    <message>
        <source>Statistics by requirement and placement</source>
        <translation>依要求與測點的統計</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>記錄檔</translation>
    </message>
    <message>
        <source>Limits, sources and how the first log was read</source>
        <translation>界限、來源與第一個記錄檔的讀取方式</translation>
    </message>
    <message>
        <source>%1, run %2</source>
        <translation>%1，第 %2 次</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>測溫</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕度</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>最小裕度所在</translation>
    </message>
    <message>
        <source>SHA-256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>至多 %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>至少 %1</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>平均</translation>
    </message>
    <message>
        <source>St. dev.</source>
        <translation>標準差</translation>
    </message>
    <message>
        <source>Smallest, largest</source>
        <translation>最小、最大</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95 % 區間</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % 的測溫</translation>
    </message>
    <message>
        <source>95 % confidence</source>
        <translation>95 % 信賴</translation>
    </message>
    <message>
        <source>Signals</source>
        <translation>訊號</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1，記錄檔的時間</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1，依所給時間</translation>
    </message>
    <message>
        <source>Least capable: %1, Ppk %2 (95 % limits %3 to %4) over %5 runs.</source>
        <translation>能力最低：%1，Ppk %2（95 % 界限 %3 至 %4），共 %5 次測溫。</translation>
    </message>
    <message>
        <source>The runs are few: what they show is uncertain.</source>
        <translation>測溫次數少：所示結果不確定。</translation>
    </message>
    <message numerus="yes">
        <source>%n signals of the control charts.</source>
        <translation>
            <numerusform>管制圖有 %n 個訊號。</numerusform>
        </translation>
    </message>
    <message>
        <source>No index: it takes %1 runs at least.</source>
        <translation>無指數：至少需要 %1 次測溫。</translation>
    </message>
    <message>
        <source>%1 of %2 results have no index, as a value or a limit is missing or all values are equal.</source>
        <translation>%2 項結果中有 %1 項沒有指數，因為缺少數值或限值，或所有數值相同。</translation>
    </message>
    <message>
        <source>Not measured alike in all runs, with a row for each definition: %1.</source>
        <translation>並非每次都以相同方式測量，每種定義各占一列：%1。</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n records, head %2</source>
        <translation>
            <numerusform>%1：%n 筆，鏈首 %2</numerusform>
        </translation>
    </message>
    <message>
        <source>On</source>
        <translation>位置</translation>
    </message>
    <message>
        <source>board</source>
        <translation>整板</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>比較</translation>
    </message>
    <message>
        <source>Recipe, %1</source>
        <translation>配方，%1</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>%1 top</source>
        <comment>letter of a run, side of the zones</comment>
        <translation>%1 上</translation>
    </message>
    <message>
        <source>%1 bottom</source>
        <comment>letter of a run, side of the zones</comment>
        <translation>%1 下</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty U = 2u of the difference (about 95 %). Both runs are taken to be on the same thermocouples and instrument (channels and board of the same names), whose errors cancel in it. How runs of the oven differ is not in it.</source>
        <translation>± 為差值的擴充不確定度 U = 2u（約 95 %）。兩次視為使用相同的熱電偶和儀器（通道與電路板同名），其誤差在差值中抵消。爐子各次之間的差異不包含在內。</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty U = 2u of the difference (about 95 %), with the errors of the thermocouples and the instrument of both runs. How runs of the oven differ is not in it.</source>
        <translation>± 為差值的擴充不確定度 U = 2u（約 95 %），包含兩次的熱電偶和儀器誤差。爐子各次之間的差異不包含在內。</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>差值</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>裕度較大</translation>
    </message>
    <message>
        <source>neither, where the margins differ by less than their uncertainty.</source>
        <translation>裕度之差小於其不確定度時，兩者皆否。</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1，依記錄檔內的時鐘</translation>
    </message>
    <message>
        <source>of the means of the runs. ± is the half width of the 95 % interval of two samples (Welch), from the scatter of the runs; n says how many values stand behind each side. Errors that all runs of a group share, such as those of its thermocouples, are not in it. In the lanes a mark is a mean, a thin tick a run, a longer one a run that is out.</source>
        <translation>各次平均之差。± 為兩樣本（Welch）95 % 區間的半寬，來自各次之間的離散；n 為每邊的數值個數。一組中各次共有的誤差（例如其熱電偶的誤差）不包含在內。在軌道中，標記為平均，細線為一次測溫，較長者為超限的一次。</translation>
    </message>
    <message>
        <source>Runs of A</source>
        <translation>A 的測溫</translation>
    </message>
    <message>
        <source>Runs of B</source>
        <translation>B 的測溫</translation>
    </message>
    <message>
        <source>Logs of A</source>
        <translation>A 的記錄檔</translation>
    </message>
    <message>
        <source>Logs of B</source>
        <translation>B 的記錄檔</translation>
    </message>
    <message>
        <source>by the means of the runs’ smallest margins; neither, where they differ by less than their interval.</source>
        <translation>依各次最小裕度的平均；相差小於其區間者，不分高下。</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <comment>letter of a group</comment>
        <translation>%1 第 %2 次</translation>
    </message>
    <message>
        <source>what the differences hold</source>
        <translation>差異所含的內容</translation>
    </message>
    <message>
        <source>runs and logs of both groups</source>
        <translation>兩組的測溫與記錄檔</translation>
    </message>
    <message>
        <source>margin, %1</source>
        <comment>of a run</comment>
        <translation>裕度，%1</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>第 %1 次</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>第 %1 次測溫</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>紀錄</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>a verdict</comment>
        <translation>%1。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
</context>
<context>
    <name>Sparkline</name>
    <message>
        <source>Course of %1</source>
        <translation>%1 的曲線</translation>
    </message>
</context>
<context>
    <name>Thermocouple</name>
    <message>
        <source>%1 class 1</source>
        <translation>%1 型 1 級</translation>
    </message>
    <message>
        <source>%1 class 2</source>
        <translation>%1 型 2 級</translation>
    </message>
    <message>
        <source>%1 special</source>
        <comment>tolerance</comment>
        <translation>%1 型特殊級</translation>
    </message>
    <message>
        <source>%1 standard</source>
        <comment>tolerance</comment>
        <translation>%1 型標準級</translation>
    </message>
</context>
<context>
    <name>Tune</name>
    <message>
        <source>Smallest margin</source>
        <translation>最小裕度</translation>
    </message>
    <message>
        <source>, now %1</source>
        <translation>，目前 %1</translation>
    </message>
    <message>
        <source>The recipe is the one that was run.</source>
        <translation>配方與實際使用的相同。</translation>
    </message>
    <message>
        <source>Tune needs the oven and the recipe of this run.</source>
        <translation>調整需要此次測溫的爐和配方。</translation>
    </message>
    <message>
        <source>From them and the curves it learns how this board heats.</source>
        <translation>由此和曲線學習這塊板子如何受熱。</translation>
    </message>
    <message>
        <source>Choose an oven and recipe</source>
        <translation>選擇爐和配方</translation>
    </message>
    <message>
        <source>Tune needs the moment when the board entered the oven.</source>
        <translation>調整需要板子進爐的時刻。</translation>
    </message>
    <message>
        <source>The curves do not show it.</source>
        <translation>曲線上看不出來。</translation>
    </message>
    <message>
        <source>Say when the board entered</source>
        <translation>指定進爐時刻</translation>
    </message>
    <message>
        <source>Choose another oven and recipe</source>
        <translation>選擇其他爐和配方</translation>
    </message>
    <message>
        <source>Learning how this board heats in this oven.</source>
        <translation>正在學習這塊板子在此爐中如何受熱。</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Learning was stopped.</source>
        <translation>學習已停止。</translation>
    </message>
    <message>
        <source>Learn again</source>
        <translation>重新學習</translation>
    </message>
    <message>
        <source>This run cannot be learned from.</source>
        <translation>無法由此次測溫學習。</translation>
    </message>
    <message>
        <source>The model does not fit this run, so nothing is predicted or suggested.</source>
        <translation>模型與此次測溫不符，因此不作預測或建議。</translation>
    </message>
    <message>
        <source>Predicting.</source>
        <translation>正在預測。</translation>
    </message>
    <message>
        <source>Least change</source>
        <translation>變更最少</translation>
    </message>
    <message>
        <source>Most margin</source>
        <translation>裕度最大</translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation>最快</translation>
    </message>
    <message>
        <source>Coolest</source>
        <translation>最低溫</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>two aims that come to one recipe</comment>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>Zone %1  %2</source>
        <translation>溫區 %1  %2</translation>
    </message>
    <message>
        <source>Zone %1 top  %2</source>
        <translation>溫區 %1 上  %2</translation>
    </message>
    <message>
        <source>Zone %1 bottom  %2</source>
        <translation>溫區 %1 下  %2</translation>
    </message>
    <message>
        <source>Zones %1–%2  %3</source>
        <translation>溫區 %1–%2  %3</translation>
    </message>
    <message numerus="yes">
        <source>%n zones</source>
        <translation>
            <numerusform>%n 個溫區</numerusform>
        </translation>
    </message>
    <message>
        <source>zone %1 %2</source>
        <translation>溫區 %1 %2</translation>
    </message>
    <message>
        <source>speed %1</source>
        <translation>速度 %1</translation>
    </message>
    <message>
        <source>cooling</source>
        <translation>冷卻</translation>
    </message>
    <message>
        <source>as it was run</source>
        <translation>與實際相同</translation>
    </message>
    <message>
        <source>%1 more boards an hour</source>
        <translation>每小時多 %1 片</translation>
    </message>
    <message>
        <source>%1 fewer boards an hour</source>
        <translation>每小時少 %1 片</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>placement, requirement, value</comment>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>requirement of the board, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>chance of passing %1</source>
        <translation>合格機率 %1</translation>
    </message>
    <message>
        <source>A qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>量產前須由合格人員以實際測溫確認，且不得超出錫膏、零件、電路板與爐的額定值。</translation>
    </message>
    <message>
        <source>Suggested setpoints are predictions: a qualified person confirms them with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>建議的設定溫度屬於預測：量產前須由合格人員以實際測溫確認，且不得超出錫膏、零件、電路板與爐的額定值。</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>高溫表面、運轉中的輸送帶、助焊劑煙霧：現場安全規定、當地法規與原廠資料表優先於此處顯示的任何內容。</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>隨附的製程窗口為一般值，請以錫膏的資料表為準。</translation>
    </message>
    <message>
        <source>The errors of one board’s traces are mostly one error: if one reads high, all may.</source>
        <translation>同一塊板各曲線的誤差多半是同一個誤差：一條偏高，可能全都偏高。</translation>
    </message>
    <message>
        <source>the board</source>
        <translation>整板</translation>
    </message>
    <message>
        <source>%1 at %2: its upper limit alone would have to give %3</source>
        <translation>%2 的 %1：單就上限須放寬 %3</translation>
    </message>
    <message>
        <source>%1 at %2: its lower limit alone would have to give %3</source>
        <translation>%2 的 %1：單就下限須放寬 %3</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>requirement, placement</comment>
        <translation>%2 的 %1</translation>
    </message>
    <message>
        <source>Speed  %1 %2</source>
        <comment>from and to, unit</comment>
        <translation>速度  %1 %2</translation>
    </message>
    <message>
        <source>Another run of this recipe is expected to narrow the doubt about %1 from ± %2 to ± %3.</source>
        <translation>以此配方再測一次，預期可將 %1 的不確定範圍由 ± %2 縮小到 ± %3。</translation>
    </message>
    <message>
        <source>A run with %1 is expected to narrow the doubt about %2 from ± %3 to ± %4.</source>
        <translation>以 %1 測一次，預期可將 %2 的不確定範圍由 ± %3 縮小到 ± %4。</translation>
    </message>
    <message>
        <source>The peaks of %1 and %2 are %3 apart at the best recipe, and the window leaves %4: that is more than setpoints and speed can bring together.</source>
        <translation>在最佳配方下，%1 與 %2 的峰值相差 %3，而窗口只容 %4：設定溫度與速度無法拉近到這個程度。</translation>
    </message>
    <message>
        <source>chance unknown: the log ends hot</source>
        <translation>機率未知：記錄結束時仍熱</translation>
    </message>
    <message>
        <source>No recipe of this oven is predicted to hold every requirement: the best margin that the model finds is %1, and its error does not rule a pass out.</source>
        <translation>預測此爐沒有配方能滿足全部要求：模型找到的最佳裕度為 %1，但其誤差不排除合格的可能。</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>超過 99 %</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>低於 1 %</translation>
    </message>
    <message>
        <source>chance of passing %1, of staying inside the limits %2</source>
        <translation>合格機率 %1，落在限值內的機率 %2</translation>
    </message>
    <message>
        <source>chance %1</source>
        <translation>機率 %1</translation>
    </message>
    <message>
        <source>chance %1, inside limits %2</source>
        <translation>機率 %1，限值內 %2</translation>
    </message>
    <message>
        <source>It is not sure to pass: of those found it is the likeliest.</source>
        <translation>不一定會合格：這是所找到的配方中最可能合格的。</translation>
    </message>
    <message>
        <source>The next run worth making stands below.</source>
        <translation>下方列出最值得進行的下一次測溫。</translation>
    </message>
    <message>
        <source>No recipe of this oven holds every requirement: the best margin that the model finds is %1, and its error leaves no room for a pass.</source>
        <translation>這座爐沒有任何配方能滿足所有要求：模型找到的最佳裕度為 %1，其誤差也不足以使之合格。</translation>
    </message>
    <message>
        <source>zones %1 cooler on average</source>
        <translation>溫區平均低 %1</translation>
    </message>
    <message>
        <source>This recipe was not predicted.</source>
        <translation>未能預測此配方。</translation>
    </message>
</context>
<context>
    <name>TypedNumber</name>
    <message>
        <source>“%1” is no number</source>
        <translation>「%1」不是數字</translation>
    </message>
</context>
<context>
    <name>WindowEditor</name>
    <message>
        <source>“%1” is no limit: expected a number, or Tc, Tc-5</source>
        <translation>「%1」不是界限：應為數字，或 Tc、Tc-5</translation>
    </message>
    <message>
        <source>“%1” is no parameter: expected a name, = and a value</source>
        <translation>「%1」不是參數：應為名稱、= 和值</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>量測項目</translation>
    </message>
    <message>
        <source>Parameters</source>
        <translation>參數</translation>
    </message>
    <message>
        <source>Applies to</source>
        <translation>適用於</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>板面</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>下限</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>目標</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>Required</source>
        <translation>必要</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>來源</translation>
    </message>
    <message>
        <source>“%1” is no measure</source>
        <translation>「%1」不是量測項目</translation>
    </message>
</context>
<context>
    <name>Wording</name>
    <message>
        <source>Top</source>
        <translation>上</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>下</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>溫區 %1</translation>
    </message>
    <message>
        <source>top</source>
        <translation>上</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>下</translation>
    </message>
    <message>
        <source>no setpoint</source>
        <translation>無設定溫度</translation>
    </message>
    <message>
        <source>result %1 traces here</source>
        <translation>結果 %1 源自這裡</translation>
    </message>
    <message>
        <source>a result that is out traces here</source>
        <translation>有超限結果源自這裡</translation>
    </message>
    <message>
        <source>into the oven</source>
        <translation>進爐方向</translation>
    </message>
    <message>
        <source>%1 × %2 mm</source>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>front rail</source>
        <translation>前軌</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>依零件</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>part and its upper limit</comment>
        <translation>%1 上限 %2</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <comment>part and its lower limit</comment>
        <translation>%1 下限 %2</translation>
    </message>
    <message>
        <source>Tc</source>
        <translation>Tc</translation>
    </message>
    <message>
        <source>lower limit %1</source>
        <translation>下限 %1</translation>
    </message>
    <message>
        <source>upper limit %1</source>
        <translation>上限 %1</translation>
    </message>
    <message>
        <source>informative</source>
        <translation>僅供參考</translation>
    </message>
    <message>
        <source>cannot pass as guarded</source>
        <translation>採用保護帶時不可能合格</translation>
    </message>
    <message>
        <source>board</source>
        <translation>整板</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕度</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>數值</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>下限</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>margin %1</source>
        <comment>scale above the lanes</comment>
        <translation>裕度 %1</translation>
    </message>
    <message>
        <source>Smallest margin</source>
        <translation>最小裕度</translation>
    </message>
    <message numerus="yes">
        <source>%n pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 項合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 項有條件合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 項有條件不合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 項不合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n undetermined</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 項無法判定</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Smallest margin of the other %n</source>
        <comment>results that have a value</comment>
        <translation>
            <numerusform>其餘 %n 項的最小裕度</numerusform>
        </translation>
    </message>
    <message>
        <source>1 informative result over its limit</source>
        <translation>1 項參考結果超出界限</translation>
    </message>
    <message numerus="yes">
        <source>%n informative results over their limits</source>
        <translation>
            <numerusform>%n 項參考結果超出界限</numerusform>
        </translation>
    </message>
    <message>
        <source>Result %1: </source>
        <comment>read aloud before a problem</comment>
        <translation>結果 %1：</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>未到達</translation>
    </message>
    <message>
        <source>undetermined</source>
        <translation>無法判定</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>最多 %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>至少 %1</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>不足 %1</translation>
    </message>
    <message>
        <source>%1 too hot</source>
        <translation>高 %1</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>低 %1</translation>
    </message>
    <message>
        <source>%1 too long</source>
        <translation>長 %1</translation>
    </message>
    <message>
        <source>%1 too slow</source>
        <translation>慢 %1</translation>
    </message>
    <message>
        <source>%1 too steep</source>
        <translation>快 %1</translation>
    </message>
    <message>
        <source>%1 too small</source>
        <translation>小 %1</translation>
    </message>
    <message>
        <source>%1 too large</source>
        <translation>大 %1</translation>
    </message>
    <message>
        <source>%1 too much</source>
        <translation>多 %1</translation>
    </message>
    <message>
        <source>%1 too few</source>
        <translation>少 %1</translation>
    </message>
    <message>
        <source>%1 too many</source>
        <translation>多 %1</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>合格</translation>
    </message>
    <message>
        <source>conditional pass</source>
        <translation>有條件合格</translation>
    </message>
    <message>
        <source>conditional fail</source>
        <translation>有條件不合格</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>不合格</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>合格</translation>
    </message>
    <message>
        <source>Conditional pass</source>
        <translation>有條件合格</translation>
    </message>
    <message>
        <source>Undetermined</source>
        <translation>無法判定</translation>
    </message>
    <message>
        <source>Conditional fail</source>
        <translation>有條件不合格</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>不合格</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>峰值</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <comment>a span of temperatures</comment>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>from %1</source>
        <comment>a temperature</comment>
        <translation>自 %1</translation>
    </message>
    <message>
        <source>within %1 of %2</source>
        <translation>距 %2 在 %1 以內</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>%1 以內</translation>
    </message>
    <message>
        <source>over %1 s</source>
        <translation>每 %1 s</translation>
    </message>
    <message>
        <source>at %1 s</source>
        <translation>第 %1 s</translation>
    </message>
    <message>
        <source>at %1 mm</source>
        <translation>%1 mm 處</translation>
    </message>
    <message>
        <source>end of zone %1</source>
        <translation>溫區 %1 末端</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>requirement, placement: value</comment>
        <translation>%1，%2：%3</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>裕度 %1</translation>
    </message>
    <message>
        <source>minus </source>
        <comment>read aloud before a number</comment>
        <translation>負 </translation>
    </message>
    <message>
        <source>limits %1 to %2</source>
        <translation>界限 %1 至 %2</translation>
    </message>
    <message>
        <source>at least %1 allowed</source>
        <translation>允許至少 %1</translation>
    </message>
    <message>
        <source>at most %1 allowed</source>
        <translation>允許最多 %1</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>無界限</translation>
    </message>
    <message>
        <source>%1 plus or minus %2</source>
        <translation>%1 正負 %2</translation>
    </message>
    <message>
        <source>%1 percent</source>
        <translation>百分之 %1</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>溫區</translation>
    </message>
    <message>
        <source>Choose an oven and recipe to see the zones</source>
        <translation>選擇爐和配方即可看到溫區</translation>
    </message>
    <message>
        <source>Say when the board entered the oven to see the zones</source>
        <translation>指定板子進爐的時刻即可看到溫區</translation>
    </message>
    <message>
        <source>Times as met</source>
        <translation>時間依</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>the placement that meets the zones</comment>
        <translation>%1</translation>
    </message>
    <message>
        <source>the board’s middle</source>
        <translation>板子中央</translation>
    </message>
    <message>
        <source>the leading edge</source>
        <translation>板子前緣</translation>
    </message>
    <message>
        <source>now</source>
        <comment>the recipe that was run</comment>
        <translation>目前</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>目前 %1</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <translation>實測：%1</translation>
    </message>
    <message>
        <source>Top and bottom</source>
        <translation>上和下</translation>
    </message>
    <message>
        <source>B is %1 higher</source>
        <translation>B 高 %1</translation>
    </message>
    <message>
        <source>B is %1 lower</source>
        <translation>B 低 %1</translation>
    </message>
    <message>
        <source>B less A %1</source>
        <comment>read aloud</comment>
        <translation>B 減 A %1</translation>
    </message>
    <message>
        <source>same</source>
        <comment>neither of two has more margin</comment>
        <translation>相同</translation>
    </message>
    <message>
        <source>more margin</source>
        <translation>裕度較大</translation>
    </message>
    <message>
        <source>A, smallest margin</source>
        <translation>A，最小裕度</translation>
    </message>
    <message>
        <source>B, smallest margin</source>
        <translation>B，最小裕度</translation>
    </message>
    <message>
        <source>Largest change, A to B</source>
        <translation>最大變化，A 到 B</translation>
    </message>
    <message>
        <source>Set, %1</source>
        <comment>setpoints, with their unit</comment>
        <translation>設定，%1</translation>
    </message>
    <message>
        <source>no run has a value</source>
        <translation>沒有一次有數值</translation>
    </message>
    <message numerus="yes">
        <source>%1 in the mean of %n runs</source>
        <translation>
            <numerusform>%n 次的平均為 %1</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>自 %1 至 %2</translation>
    </message>
    <message>
        <source>%1 of %2 out</source>
        <translation>%2 次中 %1 次超限</translation>
    </message>
    <message>
        <source>A, mean margin</source>
        <translation>A，平均裕度</translation>
    </message>
    <message>
        <source>B, mean margin</source>
        <translation>B，平均裕度</translation>
    </message>
    <message>
        <source>Not all of these runs had the same recipe, so no zones stand here</source>
        <translation>這些測溫並非都用同一配方，因此此處不列溫區</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A，裕度</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B，裕度</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Shows a thermocouple log and whether it stayed inside its process window.</source>
        <translation>顯示熱電偶記錄，以及它是否保持在製程窗口內。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ArchivePicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>比較(&amp;C)</translation>
    </message>
    <message>
        <source>Runs of the archive</source>
        <translation>存檔中的各次</translation>
    </message>
    <message>
        <source>Lot, board or words</source>
        <translation>批次、電路板或文字</translation>
    </message>
    <message>
        <source>Find runs by lot, board or words</source>
        <translation>以批次、電路板或文字尋找</translation>
    </message>
    <message>
        <source>No run of the archive has these words.</source>
        <translation>存檔中沒有符合的項目。</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are marked: %1 at most.</source>
        <translation>
            <numerusform>已標記 %n 次：至多 %1 次。</numerusform>
        </translation>
    </message>
    <message>
        <source>The chosen run becomes B. Space marks: of two marked runs the older becomes A; more are put into two groups.</source>
        <translation>選取者成為 B。空白鍵標記：標記兩次時，較早者為 A；更多則分為兩組。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChannelsPanel</name>
    <message>
        <source>Joint</source>
        <translation>焊點</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>本體</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>空氣</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>開路</translation>
    </message>
    <message>
        <source>Over range</source>
        <translation>超出量程</translation>
    </message>
    <message>
        <source>Dropout</source>
        <translation>掉訊</translation>
    </message>
    <message>
        <source>Spike</source>
        <translation>尖峰</translation>
    </message>
    <message>
        <source>Stuck</source>
        <translation>讀數卡住</translation>
    </message>
    <message>
        <source>Reversed polarity</source>
        <translation>極性接反</translation>
    </message>
    <message>
        <source>Detached, suspected</source>
        <translation>疑似脫落</translation>
    </message>
    <message>
        <source>Swapped placement, suspected</source>
        <translation>疑似測點接錯</translation>
    </message>
    <message>
        <source>Cold-junction step</source>
        <translation>冷接點跳變</translation>
    </message>
    <message>
        <source>Gap in time</source>
        <translation>時間中斷</translation>
    </message>
    <message>
        <source>Time going back</source>
        <translation>時間倒退</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>通道</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>使用</translation>
    </message>
    <message>
        <source>In the log</source>
        <translation>記錄中</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>測點</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>類型</translation>
    </message>
    <message>
        <source>Course (dotted: oven entry)</source>
        <translation>曲線（點線：進爐）</translation>
    </message>
    <message>
        <source>Range, %1</source>
        <translation>範圍，%1</translation>
    </message>
    <message>
        <source>Fault found, and what was done</source>
        <translation>發現的異常與處理</translation>
    </message>
    <message>
        <source>Use %1</source>
        <translation>使用 %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>未使用</translation>
    </message>
    <message>
        <source>Placement of %1</source>
        <translation>%1 的測點</translation>
    </message>
    <message>
        <source>none</source>
        <translation>無</translation>
    </message>
    <message>
        <source>Choose a board</source>
        <translation>選擇電路板</translation>
    </message>
    <message>
        <source>Choose a board for %1</source>
        <translation>為 %1 選擇電路板</translation>
    </message>
    <message>
        <source>Kind of %1</source>
        <translation>%1 的類型</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>沒有讀數</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>%1 at %2 s</source>
        <translation>%1，第 %2 s</translation>
    </message>
    <message>
        <source>%1 from %2 to %3 s</source>
        <translation>%1，第 %2 至 %3 s</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>已移除</translation>
    </message>
    <message>
        <source>Flagged, values as in the file</source>
        <translation>已標記，數值與檔案相同</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>顯示</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>保留</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>另有 %n 項</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove spikes again</source>
        <translation>重新移除尖峰</translation>
    </message>
    <message>
        <source>Use a channel</source>
        <translation>使用通道</translation>
    </message>
    <message>
        <source>Leave a channel out</source>
        <translation>不用通道</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>指定 %1 的測點</translation>
    </message>
    <message>
        <source>Placements of this log</source>
        <translation>此記錄的測點</translation>
    </message>
    <message>
        <source>Keep spikes</source>
        <translation>保留尖峰</translation>
    </message>
    <message>
        <source>Remove spikes</source>
        <translation>移除尖峰</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s)</source>
        <translation>
            <numerusform>%n 個取樣點</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Turn its sign</source>
        <translation>反轉正負號</translation>
    </message>
    <message>
        <source>Its sign is turned</source>
        <translation>正負號已反轉</translation>
    </message>
    <message>
        <source>As in the file</source>
        <translation>依檔案原樣</translation>
    </message>
    <message>
        <source>Turn the sign of %1</source>
        <translation>反轉 %1 的正負號</translation>
    </message>
    <message>
        <source>%1 as in the file</source>
        <translation>%1 依檔案原樣</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CheckPage</name>
    <message>
        <source>Each mark is a thermocouple, hottest on top. Whisker: ± U. Dotted: guard band.</source>
        <translation>每個標記為一支熱電偶，最熱在上。橫線：± U。點區：保護帶。</translation>
    </message>
    <message>
        <source>&amp;Limit lanes</source>
        <translation>界限圖(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Table</source>
        <translation>表格(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>電路板(&amp;B)</translation>
    </message>
    <message>
        <source>Limit lanes, table, board</source>
        <translation>界限圖、表格、電路板</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>篩選</translation>
    </message>
    <message>
        <source>Filter the table</source>
        <translation>篩選表格</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>這個數值如何得出</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>顯示(&amp;S)</translation>
    </message>
    <message>
        <source>Requirement shown on the board</source>
        <translation>在電路板上顯示的要求</translation>
    </message>
    <message numerus="yes">
        <source>Temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>溫度對時間，%n 支熱電偶</numerusform>
        </translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>溫度對時間</translation>
    </message>
    <message>
        <source>C&amp;urves</source>
        <translation>曲線(&amp;U)</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChooserBar</name>
    <message>
        <source>%1, run %2 of %3</source>
        <translation>%1，第 %2 次（共 %3 次）</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>測溫(&amp;R)</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>測溫</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>製程窗口</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>爐和配方</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>開啟記錄(&amp;O)…</translation>
    </message>
    <message>
        <source>&amp;Close %1</source>
        <translation>關閉 %1(&amp;C)</translation>
    </message>
    <message>
        <source>None open</source>
        <translation>未開啟</translation>
    </message>
    <message>
        <source>None</source>
        <translation>無</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChooserButton</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CloseUp</name>
    <message>
        <source>Where on the curve</source>
        <translation>曲線上的位置</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareBar</name>
    <message>
        <source>S&amp;wap</source>
        <translation>互換(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Add a run…</source>
        <translation>新增一次(&amp;A)…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>列印(&amp;P)…</translation>
    </message>
    <message>
        <source>A</source>
        <comment>the first of two runs</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>B</source>
        <comment>the second of two runs</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>製程窗口</translation>
    </message>
    <message>
        <source>Line up at</source>
        <translation>對齊於</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>曲線</translation>
    </message>
    <message>
        <source>Level to line up at</source>
        <translation>對齊的溫度</translation>
    </message>
    <message>
        <source>A becomes B, and B becomes A</source>
        <translation>A 變 B，B 變 A</translation>
    </message>
    <message>
        <source>The sheet of this comparison</source>
        <translation>此比較的報告單</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a run and its verdict</comment>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>those of A</source>
        <translation>A 的製程窗口</translation>
    </message>
    <message>
        <source>Compare against %1</source>
        <translation>以 %1 比較</translation>
    </message>
    <message>
        <source>As A was judged: %1</source>
        <translation>與 A 的判定相同：%1</translation>
    </message>
    <message>
        <source>Line up at the oven entry</source>
        <translation>於進爐時對齊</translation>
    </message>
    <message>
        <source>Line up at a level</source>
        <translation>於某溫度對齊</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>進爐</translation>
    </message>
    <message>
        <source>A level on the rise</source>
        <translation>升溫中的某溫度</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>並排</translation>
    </message>
    <message>
        <source>Curves side by side</source>
        <translation>曲線並排</translation>
    </message>
    <message>
        <source>Overlaid</source>
        <translation>重疊</translation>
    </message>
    <message>
        <source>Curves overlaid</source>
        <translation>曲線重疊</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no run</comment>
        <translation>無</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no window</comment>
        <translation>無</translation>
    </message>
    <message>
        <source>Level on the rise</source>
        <translation>升溫中的溫度</translation>
    </message>
    <message>
        <source>%1 on the rise, no entry</source>
        <translation>升溫至 %1，無進爐時刻</translation>
    </message>
    <message>
        <source>&amp;Several runs…</source>
        <translation>多次測溫…(&amp;S)</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n 次測溫</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1，版次 %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ComparePage</name>
    <message>
        <source>Zone strip of %1</source>
        <translation>%1 的溫區條</translation>
    </message>
    <message>
        <source>Limit lanes, A over B</source>
        <translation>界限圖，A 在 B 上</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple of each run.</source>
        <translation>每項要求一列，每次的每支熱電偶一格。</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>開啟記錄…</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>新增一次…</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>看兩個示範記錄(&amp;D)</translation>
    </message>
    <message>
        <source>Compare needs two runs</source>
        <translation>比較需要兩次測量</translation>
    </message>
    <message numerus="yes">
        <source>%1: temperature over time, %n thermocouples</source>
        <comment>letter of a run</comment>
        <translation>
            <numerusform>%1：溫度對時間，%n 支熱電偶</numerusform>
        </translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>以 A 的製程窗口比較</translation>
    </message>
    <message>
        <source>Nothing is compared yet</source>
        <translation>尚未比較</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>備註</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>下限</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>A, smallest margin at</source>
        <translation>A，最小裕度位置</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A，裕度</translation>
    </message>
    <message>
        <source>A, verdict</source>
        <translation>A，判定</translation>
    </message>
    <message>
        <source>B, smallest margin at</source>
        <translation>B，最小裕度位置</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B，裕度</translation>
    </message>
    <message>
        <source>B, verdict</source>
        <translation>B，判定</translation>
    </message>
    <message>
        <source>Largest change at</source>
        <translation>最大變化位置</translation>
    </message>
    <message>
        <source>B − A</source>
        <translation>B − A</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>單位</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>裕度較大</translation>
    </message>
    <message>
        <source>Open two logs, or drop them here: the first is A, the second B. A log with several passes is several runs. Curves, recipes and every requirement then stand side by side, with the uncertainty of each difference. Of more logs, or of runs marked in Lots, A and B may be groups.</source>
        <translation>開啟兩個記錄，或拖放到此處：第一個為 A，第二個為 B。含多次通過的記錄即為多次。曲線、配方和每項要求便會並排，並附每個差值的不確定度。若有更多記錄，或在批次中標記的測溫，A 與 B 也可以是組。</translation>
    </message>
    <message>
        <source>Values of A</source>
        <translation>A 的數值個數</translation>
    </message>
    <message>
        <source>Values of B</source>
        <translation>B 的數值個數</translation>
    </message>
    <message>
        <source>Compare: %1 and %2</source>
        <translation>比較：%1 與 %2</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比較</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareSession</name>
    <message>
        <source>Compare %1 as A</source>
        <translation>以 %1 為 A 比較</translation>
    </message>
    <message>
        <source>Compare %1 as B</source>
        <translation>以 %1 為 B 比較</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>互換 A 與 B</translation>
    </message>
    <message>
        <source>Compare with %1</source>
        <translation>與 %1 比較</translation>
    </message>
    <message>
        <source>Compare two groups</source>
        <translation>比較兩組</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CurvePlot</name>
    <message>
        <source>s from oven entry</source>
        <translation>s（自進爐）</translation>
    </message>
    <message>
        <source>s on the log’s clock</source>
        <translation>s（記錄的時鐘）</translation>
    </message>
    <message>
        <source>%1: %2 %3 at %4 s (%5 s on the log’s clock)</source>
        <translation>%1：%2 %3，第 %4 s（記錄的時鐘 %5 s）</translation>
    </message>
    <message>
        <source>s</source>
        <comment>seconds, at the time axis</comment>
        <translation>s</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::DateField</name>
    <message>
        <source>any</source>
        <comment>date</comment>
        <translation>不限</translation>
    </message>
    <message>
        <source>A date, as 2026-01-05; Down opens a calendar. Left open, every date counts.</source>
        <translation>日期，如 2026-01-05；按向下鍵開啟月曆。留空則不限日期。</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>月曆</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::DerivationPanel</name>
    <message>
        <source>no limit on this side of the target %1</source>
        <translation>目標 %1 的這一側沒有界限</translation>
    </message>
    <message>
        <source>inside: %1</source>
        <translation>界限內：%1</translation>
    </message>
    <message>
        <source>outside: %1</source>
        <translation>界限外：%1</translation>
    </message>
    <message>
        <source>at %1 s</source>
        <translation>第 %1 s</translation>
    </message>
    <message>
        <source>from %1 to %2 s</source>
        <translation>第 %1 至 %2 s</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>這個數值如何得出</translation>
    </message>
    <message>
        <source>Previous result</source>
        <translation>上一個結果</translation>
    </message>
    <message>
        <source>Next result</source>
        <translation>下一個結果</translation>
    </message>
    <message>
        <source>Choose a mark in the limit lanes, a part of the sentence or a row of the table: its place on the curve, its limits and its arithmetic stand here.</source>
        <translation>請在界限圖選一個標記、句中的一部分或表格的一列：這裡會顯示它在曲線上的位置、界限和計算。</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1／%2</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1, board</source>
        <translation>%1，整板</translation>
    </message>
    <message>
        <source>Definition</source>
        <translation>定義</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>界限</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>至少 %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>最多 %1</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>Informative: it does not decide the verdict.</source>
        <translation>僅供參考：不影響判定。</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕度</translation>
    </message>
    <message>
        <source>Uncertainty, %1</source>
        <translation>不確定度，%1</translation>
    </message>
    <message>
        <source>Thermocouple %1</source>
        <translation>熱電偶 %1</translation>
    </message>
    <message>
        <source>Instrument %1</source>
        <translation>儀器 %1</translation>
    </message>
    <message>
        <source>Noise of this trace</source>
        <translation>此曲線的雜訊</translation>
    </message>
    <message>
        <source>Sampling</source>
        <translation>取樣</translation>
    </message>
    <message>
        <source>Combined, then U = 2u</source>
        <translation>合成後 U = 2u</translation>
    </message>
    <message>
        <source>under 0.1 %</source>
        <translation>低於 0.1 %</translation>
    </message>
    <message>
        <source>over 99.9 %</source>
        <translation>高於 99.9 %</translation>
    </message>
    <message>
        <source>What being outside risks</source>
        <translation>超限的風險</translation>
    </message>
    <message>
        <source>Which zones set this result</source>
        <translation>哪些溫區決定此結果</translation>
    </message>
    <message>
        <source>Other zones together</source>
        <translation>其他溫區合計</translation>
    </message>
    <message>
        <source>Try a change in Tune</source>
        <translation>在「調整」中試改</translation>
    </message>
    <message>
        <source>Inside with probability</source>
        <translation>在界限內的機率</translation>
    </message>
    <message>
        <source>Rule: guarded, w = U</source>
        <translation>規則：採用保護帶，w = U</translation>
    </message>
    <message>
        <source>Rule: simple</source>
        <translation>規則：簡單</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Document</name>
    <message>
        <source>pasted text</source>
        <translation>貼上的文字</translation>
    </message>
    <message>
        <source>Close %1</source>
        <translation>關閉 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::EmptyPage</name>
    <message>
        <source>Sketch of the result</source>
        <translation>結果示意圖</translation>
    </message>
    <message>
        <source>Curves, zone strip and limit lanes stand here once a log is read.</source>
        <translation>讀取記錄後，這裡會顯示曲線、溫區條和界限圖。</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>曲線</translation>
    </message>
    <message>
        <source>The window’s bands stand behind them; stretches that are out are marked.</source>
        <translation>曲線後面是製程窗口的區帶；超限的部分會標出。</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>溫區條</translation>
    </message>
    <message>
        <source>Where the board was at each moment.</source>
        <translation>板子在每一刻的位置。</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>界限圖</translation>
    </message>
    <message>
        <source>Every requirement, every thermocouple, with both limits always in the same place.</source>
        <translation>每項要求、每支熱電偶，上下限永遠在同一位置。</translation>
    </message>
    <message>
        <source>The verdict rests on the thermocouples, the window and the placement you give it: a qualified person confirms it before production. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>判定取決於您提供的熱電偶、製程窗口和測點：量產前須由合格人員確認。高溫表面、運轉中的輸送帶、助焊劑煙霧：現場安全規定、當地法規與原廠資料表優先於此處顯示的任何內容。</translation>
    </message>
    <message>
        <source>Drop a thermocouple log here</source>
        <translation>把熱電偶記錄拖放到這裡</translation>
    </message>
    <message>
        <source>Any text log, workbook or HTML table: comma, semicolon, tab or fixed columns; °C or °F; decimal point or comma. The file is read as it is and never changed.</source>
        <translation>任何文字記錄、活頁簿或 HTML 表格：逗號、分號、定位字元或固定欄寬；°C 或 °F；小數點或小數逗號。檔案照原樣讀取，絕不更動。</translation>
    </message>
    <message>
        <source>Open a log…</source>
        <translation>開啟記錄…</translation>
    </message>
    <message>
        <source>Paste a log</source>
        <translation>貼上記錄</translation>
    </message>
    <message>
        <source>Look at the demo run</source>
        <translation>看示範記錄</translation>
    </message>
    <message>
        <source>It will be judged against</source>
        <translation>判定依據</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>製程窗口</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general. The paste’s own data sheet is the authority.</source>
        <translation>隨附的製程窗口為一般值，請以錫膏的資料表為準。</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>爐和配方</translation>
    </message>
    <message>
        <source>Optional. Needed for the zone strip and for the zones behind a result.</source>
        <translation>選用。溫區條與結果對應的溫區需要它。</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Optional. Says what each thermocouple sits on.</source>
        <translation>選用。說明每支熱電偶的位置。</translation>
    </message>
    <message>
        <source>None chosen</source>
        <translation>未選擇</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FiguresPane</name>
    <message>
        <source>Runs of</source>
        <translation>測溫屬於</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>量測項目</translation>
    </message>
    <message>
        <source>No limit to hold the runs against</source>
        <translation>沒有可供比較的界限</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Control chart</source>
        <translation>管制圖</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>趨勢</translation>
    </message>
    <message>
        <source>Statistics of the runs</source>
        <translation>測溫統計</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>圖表</translation>
    </message>
    <message>
        <source>Kind of chart and rules</source>
        <translation>圖表類型與規則</translation>
    </message>
    <message>
        <source>Loading the runs</source>
        <translation>正在載入測溫</translation>
    </message>
    <message>
        <source>&amp;Individuals and moving range</source>
        <translation>個別值與移動全距 (&amp;I)</translation>
    </message>
    <message>
        <source>X-bar and &amp;R</source>
        <translation>X-bar 與 R (&amp;R)</translation>
    </message>
    <message>
        <source>X-bar and &amp;S</source>
        <translation>X-bar 與 S (&amp;S)</translation>
    </message>
    <message>
        <source>&amp;EWMA</source>
        <translation>EWMA (&amp;E)</translation>
    </message>
    <message>
        <source>Runs in a s&amp;ubgroup</source>
        <translation>每個子組的測溫次數 (&amp;U)</translation>
    </message>
    <message>
        <source>%1 of %2 runs</source>
        <translation>%1 / %2 次測溫</translation>
    </message>
    <message>
        <source>The statistics cannot be worked out. %1</source>
        <translation>無法計算統計。%1</translation>
    </message>
    <message>
        <source>No run is listed to work statistics out from.</source>
        <translation>清單中沒有可供統計的測溫。</translation>
    </message>
    <message>
        <source>Only the newest %1 runs of the list count.</source>
        <translation>只計入清單中最新的 %1 次測溫。</translation>
    </message>
    <message>
        <source>Trend of %1</source>
        <translation>%1 的趨勢</translation>
    </message>
    <message>
        <source>Control chart of %1</source>
        <translation>%1 的管制圖</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>溫區</translation>
    </message>
    <message>
        <source>Trend of %1.</source>
        <translation>%1 的趨勢。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileModel</name>
    <message numerus="yes">
        <source>%n row(s) more</source>
        <translation>
            <numerusform>另有 %n 列</numerusform>
        </translation>
    </message>
    <message>
        <source>Time</source>
        <translation>時間</translation>
    </message>
    <message>
        <source>kept as such</source>
        <translation>僅保留</translation>
    </message>
    <message>
        <source>Channel %1</source>
        <translation>通道 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileTable</name>
    <message>
        <source>What stands in the file</source>
        <translation>檔案內容</translation>
    </message>
    <message>
        <source>Press a heading to take its column for something else</source>
        <translation>按標題可改變該欄的用途</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FilterBar</name>
    <message>
        <source>From</source>
        <translation>從</translation>
    </message>
    <message>
        <source>To</source>
        <translation>至</translation>
    </message>
    <message>
        <source>C&amp;lear</source>
        <translation>清除 (&amp;L)</translation>
    </message>
    <message>
        <source>E&amp;xport table…</source>
        <translation>匯出表格 (&amp;X)…</translation>
    </message>
    <message>
        <source>any</source>
        <comment>lot</comment>
        <translation>不限</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批號</translation>
    </message>
    <message>
        <source>serial, log, operator…</source>
        <translation>序號、記錄、操作員…</translation>
    </message>
    <message>
        <source>Words that stand anywhere in lot, serial number, board, oven, recipe, window, operator, log or record (Ctrl+F)</source>
        <translation>出現在批號、序號、電路板、爐、配方、製程窗口、操作員、記錄或紀錄任何位置的字詞 (Ctrl+F)</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>尋找</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>All</source>
        <comment>verdicts</comment>
        <translation>全部</translation>
    </message>
    <message>
        <source>Out of the window</source>
        <translation>超出製程窗口</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>爐</translation>
    </message>
    <message>
        <source>to</source>
        <comment>a date</comment>
        <translation>至</translation>
    </message>
    <message>
        <source>Every run of the archive</source>
        <translation>存檔的所有測溫</translation>
    </message>
    <message>
        <source>All runs of the list as a CSV file</source>
        <translation>將清單所有測溫存為 CSV 檔</translation>
    </message>
    <message>
        <source>All boards</source>
        <translation>所有電路板</translation>
    </message>
    <message>
        <source>All ovens</source>
        <translation>所有爐</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n 次測溫</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>46 runs in 31 lots</comment>
        <translation>%1，共 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n 批</numerusform>
        </translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>批次報表</translation>
    </message>
    <message>
        <source>The panel at the right (F9)</source>
        <translation>右側面板 (F9)</translation>
    </message>
    <message>
        <source>Co&amp;mpare</source>
        <translation>比較(&amp;M)</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::GroupPicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>比較(&amp;C)</translation>
    </message>
    <message>
        <source>Two groups of runs</source>
        <translation>兩組測溫</translation>
    </message>
    <message>
        <source>&amp;Divide by</source>
        <translation>分組依據(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;A</source>
        <translation>&amp;A</translation>
    </message>
    <message>
        <source>&amp;B</source>
        <translation>&amp;B</translation>
    </message>
    <message>
        <source>Into A go the runs of</source>
        <translation>歸入 A 的測溫</translation>
    </message>
    <message>
        <source>Into B go the runs of</source>
        <translation>歸入 B 的測溫</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>測溫</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批號</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>爐</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>Runs and the group of each</source>
        <translation>各次測溫及其組別</translation>
    </message>
    <message>
        <source>%1 in A</source>
        <translation>%1 在 A</translation>
    </message>
    <message>
        <source>%1 in B</source>
        <translation>%1 在 B</translation>
    </message>
    <message>
        <source>The marks below</source>
        <translation>下方的勾選</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n runs</source>
        <comment>a recipe, lot, oven or board</comment>
        <translation>
            <numerusform>%1：%n 次</numerusform>
        </translation>
    </message>
    <message>
        <source>not said</source>
        <translation>未註明</translation>
    </message>
    <message numerus="yes">
        <source>A has %n runs</source>
        <translation>
            <numerusform>A 有 %n 次</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>B has %n runs.</source>
        <translation>
            <numerusform>B 有 %n 次。</numerusform>
        </translation>
    </message>
    <message>
        <source>Each needs one at least.</source>
        <translation>每組至少需要一次。</translation>
    </message>
    <message>
        <source>An interval for the differences needs two on each side.</source>
        <translation>差異的區間需要每邊至少兩次。</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what A has, what B has</comment>
        <translation>%1，%2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::HelpWindow</name>
    <message>
        <source>Getting a log in</source>
        <translation>載入記錄</translation>
    </message>
    <message>
        <source>Drop a file anywhere in the window, open it (Ctrl+O), or paste its text (Ctrl+Shift+V). It is read by its content; what was assumed stands in the status line and under Run, How the log was read, where it can be put right. The file itself is never changed.</source>
        <translation>把檔案拖放到視窗任何位置、開啟它（Ctrl+O）或貼上其文字（Ctrl+Shift+V）。程式依內容讀取；假定之處顯示於狀態列與「測溫 &gt; 記錄如何讀取」，可在那裡更正。檔案本身絕不更動。</translation>
    </message>
    <message>
        <source>Sentence</source>
        <translation>結論句</translation>
    </message>
    <message>
        <source>The verdict first. Each underlined part leads to where it comes from: Tab goes through the parts, Enter follows one. F8 and Shift+F8 go to the next and previous result that is not a pass; Esc chooses nothing.</source>
        <translation>先看判定。每個底線部分都連到它的出處：Tab 逐一移動，Enter 前往。F8 與 Shift+F8 前往下一個、上一個未合格的結果；Esc 取消選擇。</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>曲線</translation>
    </message>
    <message>
        <source>Bands are the window’s; a stretch with a halo and barbs went out of it. The cursor reads all curves at a time and the place in the oven. Wheel zooms time, Ctrl+wheel temperature, drag moves, double click shows the whole run. Keys: left and right one sample, with Ctrl one zone, with Shift the view; up and down another thermocouple; + − 0 zoom and whole run; Alt+1 to 9 show or hide a curve, hottest first.</source>
        <translation>區帶來自製程窗口；帶光暈與短線的部分超出了窗口。游標讀出同一時刻所有曲線與爐內位置。滾輪縮放時間，Ctrl+滾輪縮放溫度，拖曳平移，連按兩下顯示整段。按鍵：左右移一個取樣點，加 Ctrl 移一個溫區，加 Shift 平移；上下換熱電偶；+ − 0 縮放與全部；Alt+1 到 9 顯示或隱藏曲線，最熱優先。</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>溫區條</translation>
    </message>
    <message>
        <source>Where the board was at each moment, with top and bottom setpoints. Hatched: a result outside its limits traces back here with 10 % or more.</source>
        <translation>板子在每一刻的位置，以及上下設定溫度。斜線：超限結果有 10 % 以上源自這裡。</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>界限圖</translation>
    </message>
    <message>
        <source>One lane for each requirement, both limits at the same places in all of them, so that the same distance is the same margin. A mark is a thermocouple, the whisker its ± U, dots the guard band. Up and down another lane, left and right another thermocouple, Home and End hottest and coldest, Enter how the number came about, Ctrl+C the row as text, Ctrl+Shift+C the picture.</source>
        <translation>每項要求一行，上下限位置全部對齊，因此距離相同即裕度相同。標記是熱電偶，橫線是 ± U，點區是保護帶。上下換要求，左右換熱電偶，Home 與 End 為最熱與最冷，Enter 看數值如何得出，Ctrl+C 複製文字，Ctrl+Shift+C 複製圖片。</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>表格</translation>
    </message>
    <message>
        <source>A click on a heading sorts. Ctrl+F filters. Ctrl+C copies the chosen rows, or all, with headings for a spreadsheet.</source>
        <translation>按標題可排序。Ctrl+F 篩選。Ctrl+C 將選取或全部資料連同標題複製到試算表。</translation>
    </message>
    <message>
        <source>How the log was read</source>
        <translation>記錄如何讀取</translation>
    </message>
    <message>
        <source>Each line at the right was found in the file or assumed. Choose another reading and everything follows at once; Ctrl+Z takes it back. A reading can be kept for logs of the same shape.</source>
        <translation>右側每一項都是在檔案中找到或假定的。改選其他讀法後立即生效；Ctrl+Z 復原。讀法可保留給相同格式的記錄。</translation>
    </message>
    <message>
        <source>Editing a window</source>
        <translation>編輯製程窗口</translation>
    </message>
    <message>
        <source>Limits are checked while they are typed and the run is judged anew. Saving makes a new revision in a new file; nothing is overwritten.</source>
        <translation>輸入時即檢查界限並重新判定。儲存會在新檔案建立新版次；不覆寫任何內容。</translation>
    </message>
    <message>
        <source>Keys everywhere</source>
        <translation>通用按鍵</translation>
    </message>
    <message>
        <source>F6, Shift+F6 next and previous part · F9 panel at the right · Ctrl+Z, Ctrl+Shift+Z undo and redo · Ctrl+O open · Ctrl+Shift+V paste a log · Ctrl+W close the log · Ctrl+PgUp, Ctrl+PgDown previous and next run · F1 this help.</source>
        <translation>F6、Shift+F6 下一個、上一個部分 · F9 右側面板 · Ctrl+Z、Ctrl+Shift+Z 復原與取消復原 · Ctrl+O 開啟 · Ctrl+Shift+V 貼上記錄 · Ctrl+W 關閉記錄 · Ctrl+PgUp、Ctrl+PgDown 上一次、下一次測溫 · F1 說明。</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>說明</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;Analyser for reflow thermal profiles. Free software under the GNU General Public License, version 3 or later; it comes without any warranty.&lt;/p&gt;&lt;p&gt;What it shows is computed from the log, the window and the placement you give it. A qualified person confirms every change of setpoints with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here. Windows shipped with the program are general; the paste’s own data sheet is the authority.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;回焊溫度曲線分析。自由軟體，依 GNU 通用公共授權條款第 3 版或更新版本發布；不附任何擔保。&lt;/p&gt;&lt;p&gt;顯示內容由您提供的記錄、製程窗口和測點計算而得。每次變更設定溫度，量產前須由合格人員以實際測溫確認，且不得超出錫膏、零件、電路板與爐的額定值。高溫表面、運轉中的輸送帶、助焊劑煙霧：現場安全規定、當地法規與原廠資料表優先於此處顯示的任何內容。隨附的製程窗口為一般值，請以錫膏的資料表為準。&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>調整</translation>
    </message>
    <message>
        <source>The recipe that was run, to be changed: what the curves and lanes then show is predicted from how this board heats in this oven, with its error band. Type into a field, step with up and down (PgUp, PgDn by 5), turn the wheel, or drag up and down; Tab, left and right go from field to field, Del goes back to what was run, L parts top and bottom or ties them, Ctrl+L keeps a zone as it is in a search. Every edit can be undone. A suggestion is a prediction: a qualified person confirms it with an instrumented run.</source>
        <translation>實際使用的配方，可供變更：之後的曲線與界限圖依此板在此爐中的受熱情形預測，並附誤差帶。在欄位輸入、以上下鍵步進（PgUp、PgDn 每次 5）、轉動滾輪或上下拖曳；Tab、左右鍵換欄位，Del 回到實際使用值，L 分開或連動上下，Ctrl+L 搜尋時固定該溫區。每次變更都可復原。建議屬於預測：須由合格人員以實際測溫確認。</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Where each thermocouple sits, with its result of the requirement that is chosen beside Show. Left and right, or up and down, go to another thermocouple, Enter shows how its number came about.</source>
        <translation>每支熱電偶的位置，以及其在「顯示」旁所選要求的結果。左右或上下鍵移到另一支熱電偶，Enter 顯示其數字的由來。</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>這個數值如何得出</translation>
    </message>
    <message>
        <source>The chosen result step by step: definition, limits with their source, margin, uncertainty by cause, the decision, and the zones that it traces back to. The arrows at the top go to the result before and after.</source>
        <translation>逐步說明所選結果：定義、界限及其來源、裕度、各項不確定度、判定，以及所追溯的溫區。上方箭頭移到前一個與後一個結果。</translation>
    </message>
    <message>
        <source>Keeping a run</source>
        <translation>存入測溫</translation>
    </message>
    <message>
        <source>Run, Keep in the record (Ctrl+K) keeps the run that is shown, or all open logs, for good: the raw log, window, oven, recipe and board as they are, and the result. A record stands in a lot; a pass of a log is kept once. The status line says at its right where records go, a press on it chooses another archive.</source>
        <translation>「測溫」選單的「存入檔案」(Ctrl+K) 永久保存顯示中的測溫或所有開啟的記錄：原始記錄、製程窗口、爐子、配方和電路板的現狀，以及結果。每筆存檔屬於一個批號；一份記錄的一次通過只存一次。狀態列右側顯示存於何處，按一下可選擇其他存檔。</translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>批次報告單</translation>
    </message>
    <message>
        <source>The sheet of the marked runs as it will be printed, one for each lot; Page Up and Page Down turn its pages. What was printed or saved as PDF can be marked as printed beside its records. Several lots writes a file for each lot into a folder and replaces none without asking.</source>
        <translation>勾選的測溫列印出來的報告單，每個批號一張；Page Up 和 Page Down 翻頁。已列印或另存 PDF 的可在存檔旁標記為已列印。「多個批號」為每個批號在資料夾中寫入一個檔案，未經詢問不會取代任何檔案。</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比較</translation>
    </message>
    <message>
        <source>Two runs on one clock, lined up at the oven entry or where the first thermocouple rises through a level. A log that is dropped here becomes B. Setpoints that differ are framed in B, the differences stand under them. Each lane has both runs, A over B; its last columns say the smallest margin of each, the largest change with its uncertainty, and which has more margin: neither, where they differ by less than their uncertainty. Enter on a mark leads to the run’s own page.</source>
        <translation>兩次測量共用一個時鐘，於進爐時或第一支熱電偶升過某溫度時對齊。拖放到此處的記錄成為 B。不同的設定值在 B 中加框，差值列於其下。每條界限圖含兩次，A 在 B 上；最後幾欄列出各自的最小裕度、最大變化及其不確定度，以及何者裕度較大：差異小於其不確定度時兩者皆否。在標記上按 Enter 可前往該次自己的頁面。</translation>
    </message>
    <message>
        <source>Every run that was kept, the newest first; a click on a heading sorts by it, a second one the other way round, and so does View, Sort the runs by, or the menu key. The fields above say which runs are listed, Ctrl+F finds words. Space marks the chosen runs for the sheet, Ctrl+A takes all, Ctrl+C copies with headings, Enter opens a run on Check with everything it was judged with. Below, a measure over the runs of one board and window revision: left and right go from run to run, a square is a run that completes a signal.</source>
        <translation>所有已保存的測溫，最新的在前；按一下標題可依其排序，再按一下則反向，也可用「檢視」的「測溫排序依據」或功能表鍵。上方欄位決定列出哪些測溫，Ctrl+F 可尋找字詞。空白鍵將選取的測溫標記以製作報表，Ctrl+A 全選，Ctrl+C 連同標題複製，Enter 以當時判定所用的一切在「檢查」開啟該次測溫。下方為同一電路板與窗口版次各次測溫的某個量測項目：左右鍵在測溫間移動，方框為使訊號成立的測溫。</translation>
    </message>
    <message>
        <source>Editing an oven</source>
        <translation>編輯爐</translation>
    </message>
    <message>
        <source>Where the zones lie and what the oven allows, checked while it is typed; the zone strip and the oven entry follow at once, and Tune learns anew. Two ends of a limit stand together or not at all. Saving makes a new revision in a new file with the comments of the old one; nothing is overwritten. Zones come and go in the file itself.</source>
        <translation>各溫區的位置與爐允許的範圍，輸入時即檢查；溫區條與入爐時刻立即跟著改變，「調整」會重新學習。一個限值的兩端要一起填或都不填。儲存時會在新檔案中建立新版次，並保留舊檔案的註解；不會覆寫任何檔案。要增減溫區，請直接編輯檔案。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ImportPage</name>
    <message>
        <source>What stands in the file</source>
        <translation>檔案內容</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>通道</translation>
    </message>
    <message>
        <source>Known once the log can be read</source>
        <translation>記錄可讀取後才知道</translation>
    </message>
    <message>
        <source>%1, %2 bytes, SHA-256 %3…%4</source>
        <translation>%1，%2 位元組，SHA-256 %3…%4</translation>
    </message>
    <message>
        <source>Placements come from the board %1</source>
        <translation>測點來自電路板 %1</translation>
    </message>
    <message>
        <source>Take column %1 for the time</source>
        <translation>以第 %1 欄為時間</translation>
    </message>
    <message>
        <source>Take column %1 for a thermocouple</source>
        <translation>以第 %1 欄為熱電偶</translation>
    </message>
    <message>
        <source>Do not judge column %1</source>
        <translation>不判定第 %1 欄</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::KeepForm</name>
    <message>
        <source>Keep</source>
        <translation>存檔</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>關閉</translation>
    </message>
    <message>
        <source>Keep in the record</source>
        <translation>存入檔案</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批號</translation>
    </message>
    <message>
        <source>Board serial</source>
        <translation>電路板序號</translation>
    </message>
    <message>
        <source>O&amp;perator</source>
        <translation>操作人員(&amp;P)</translation>
    </message>
    <message>
        <source>Time of run</source>
        <translation>測溫時間</translation>
    </message>
    <message>
        <source>Wh&amp;at</source>
        <translation>內容(&amp;A)</translation>
    </message>
    <message>
        <source>this run</source>
        <translation>這次測溫</translation>
    </message>
    <message numerus="yes">
        <source>all %n runs of this log</source>
        <translation>
            <numerusform>這份記錄的全部 %n 次測溫</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all %n open logs</source>
        <translation>
            <numerusform>全部 %n 份開啟的記錄</numerusform>
        </translation>
    </message>
    <message>
        <source>each log’s own</source>
        <translation>各記錄自己的時間</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>依輸入</translation>
    </message>
    <message>
        <source>from the log’s clock</source>
        <translation>取自記錄的時鐘</translation>
    </message>
    <message>
        <source>from its file: no date stands in the log</source>
        <translation>取自檔案：記錄中沒有日期</translation>
    </message>
    <message>
        <source>now: no date stands in the text</source>
        <translation>現在：文字中沒有日期</translation>
    </message>
    <message>
        <source>Into %1</source>
        <translation>存入 %1</translation>
    </message>
    <message>
        <source>There is no result for the present setup</source>
        <translation>目前的設定沒有結果</translation>
    </message>
    <message>
        <source>Which lot is it? A record stands in a lot.</source>
        <translation>是哪一批？每筆存檔都屬於一個批號。</translation>
    </message>
    <message>
        <source>Keeping…</source>
        <translation>正在存檔…</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, as %2.</source>
        <translation>%1 的這次通過已存檔，編號 %2。</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, in lot %2, as %3.</source>
        <translation>%1 的這次通過已存於批號 %2，編號 %3。</translation>
    </message>
    <message>
        <source>Kept as %1 in lot %2.</source>
        <translation>已存為 %1，批號 %2。</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are kept in lot %1, as %2 to %3.</source>
        <translation>
            <numerusform>%n 次測溫已存於批號 %1，編號 %2 至 %3。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are kept already.</source>
        <translation>
            <numerusform>另有 %n 次已存檔。</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was kept: %1</source>
        <translation>沒有存檔：%1</translation>
    </message>
    <message>
        <source>Keeping… The archive’s server is slow to answer.</source>
        <translation>保存中… 存檔的伺服器回應緩慢。</translation>
    </message>
    <message>
        <source>The server does not have it yet: it waits on this computer.</source>
        <translation>伺服器尚未收到：正在這台電腦上等候。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LearnedFrom</name>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>Model fitted to</source>
        <translation>模型擬合於</translation>
    </message>
    <message>
        <source>Largest misfit</source>
        <translation>最大偏差</translation>
    </message>
    <message>
        <source>Learn from other runs too</source>
        <translation>同時從其他測溫學習</translation>
    </message>
    <message>
        <source>run with %1</source>
        <comment>name of a recipe</comment>
        <translation>以 %1 運行</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotSheetPanel</name>
    <message>
        <source>Lot sheet</source>
        <translation>批次報表</translation>
    </message>
    <message>
        <source>Mark runs in the list to put them on a sheet.</source>
        <translation>在清單中標記測溫以放入報表。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n 次測溫</numerusform>
        </translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>列印…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>另存 PDF…</translation>
    </message>
    <message>
        <source>HTML…</source>
        <translation>HTML…</translation>
    </message>
    <message>
        <source>Several lots…</source>
        <translation>多個批號…</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>在存檔中標記為已列印</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>每次測溫一頁</translation>
    </message>
    <message>
        <source>The sheet could not be made.</source>
        <translation>無法製作報告單。</translation>
    </message>
    <message>
        <source>The sheet was not written.</source>
        <translation>報告單未寫入。</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>報告單已存於 %1</translation>
    </message>
    <message>
        <source>The sheet is not marked as printed.</source>
        <translation>報告單未標記為已列印。</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation>上一頁</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>下一頁</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>進度</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>After printing and saving as PDF, by %1</source>
        <translation>列印及另存 PDF 之後，由 %1</translation>
    </message>
    <message>
        <source>The sheet could not be made: %1</source>
        <translation>無法製作報告單：%1</translation>
    </message>
    <message numerus="yes">
        <source>%n lots</source>
        <translation>
            <numerusform>%n 個批號</numerusform>
        </translation>
    </message>
    <message>
        <source>No lot</source>
        <translation>沒有批號</translation>
    </message>
    <message>
        <source>The sheet is made…</source>
        <translation>正在製作報告單…</translation>
    </message>
    <message>
        <source>%1 of %2 runs are judged</source>
        <translation>已判定 %1/%2 次測溫</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>lot, runs, pages</comment>
        <translation>%1，%2，%3</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n 頁</numerusform>
        </translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>第 %1 頁，共 %2 頁</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>無法列印報告單</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>報告單已送至印表機</translation>
    </message>
    <message>
        <source>Save the lot sheet</source>
        <translation>儲存批次報告單</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>One HTML file (*.html)</source>
        <translation>單一 HTML 檔 (*.html)</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 是開啟中的記錄：報告單絕不取代記錄</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotsPage</name>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>表格已連同標題複製到剪貼簿。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) in the list</source>
        <translation>
            <numerusform>清單中 %n 次測溫</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n marked</source>
        <translation>
            <numerusform>已標記 %n 次</numerusform>
        </translation>
    </message>
    <message>
        <source>Export the table</source>
        <translation>匯出表格</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>The table was not exported.</source>
        <translation>表格未匯出。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) exported as %1.</source>
        <translation>
            <numerusform>已將 %n 次測溫匯出為 %1。</numerusform>
        </translation>
    </message>
    <message>
        <source>Mark two runs, or more for two groups</source>
        <translation>標記兩次測溫，或更多以分為兩組</translation>
    </message>
    <message>
        <source>%1 runs at most can be compared</source>
        <translation>至多可比較 %1 次測溫</translation>
    </message>
    <message>
        <source>Hold the two marked runs against each other, the older as A</source>
        <translation>將兩次標記的測溫互相比較，較早者為 A</translation>
    </message>
    <message>
        <source>Put the marked runs into two groups and hold these against each other</source>
        <translation>將標記的測溫分為兩組並互相比較</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>檔案(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>開啟記錄(&amp;O)…</translation>
    </message>
    <message>
        <source>&amp;Paste a log</source>
        <translation>貼上記錄(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Recent logs</source>
        <translation>最近的記錄(&amp;R)</translation>
    </message>
    <message>
        <source>Look at the &amp;demo run</source>
        <translation>看示範記錄(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Close this log</source>
        <translation>關閉此記錄(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>結束(&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>編輯(&amp;E)</translation>
    </message>
    <message>
        <source>Copy the &amp;table</source>
        <translation>複製表格(&amp;T)</translation>
    </message>
    <message>
        <source>Copy the &amp;picture</source>
        <translation>複製圖片(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Find in the table</source>
        <translation>在表格中尋找(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>檢視(&amp;V)</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>放大(&amp;I)</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>縮小(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Whole run</source>
        <translation>整段曲線(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Raw samples</source>
        <translation>原始取樣點(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Next result that is not a pass</source>
        <translation>下一個未合格的結果(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Previous result that is not a pass</source>
        <translation>上一個未合格的結果(&amp;P)</translation>
    </message>
    <message>
        <source>Choose nothin&amp;g</source>
        <translation>取消選擇(&amp;G)</translation>
    </message>
    <message>
        <source>Next pa&amp;rt</source>
        <translation>下一個部分(&amp;X)</translation>
    </message>
    <message>
        <source>Previous p&amp;art</source>
        <translation>上一個部分(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>溫度單位(&amp;T)</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>&amp;Speed in</source>
        <translation>速度單位(&amp;S)</translation>
    </message>
    <message>
        <source>mm/min</source>
        <translation>mm/min</translation>
    </message>
    <message>
        <source>cm/min</source>
        <translation>cm/min</translation>
    </message>
    <message>
        <source>in/min</source>
        <translation>in/min</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>語言(&amp;L)</translation>
    </message>
    <message>
        <source>As the &amp;system says</source>
        <translation>依系統(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>測溫(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Next run</source>
        <translation>下一次測溫(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Previous run</source>
        <translation>上一次測溫(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;How the log was read</source>
        <translation>記錄如何讀取(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Edit the window</source>
        <translation>編輯製程窗口(&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Oven</source>
        <translation>爐(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>說明(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Help on what has the focus</source>
        <translation>目前焦點的說明(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;About Ovenwright</source>
        <translation>關於 Ovenwright(&amp;A)</translation>
    </message>
    <message>
        <source>About Ovenwright</source>
        <translation>關於 Ovenwright</translation>
    </message>
    <message>
        <source>&amp;Forget these</source>
        <translation>清除清單(&amp;F)</translation>
    </message>
    <message>
        <source>Open logs</source>
        <translation>開啟記錄</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>所有檔案 (*)</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>沒有貼上任何內容。</translation>
    </message>
    <message>
        <source>The clipboard holds no text and no file.</source>
        <translation>剪貼簿中沒有文字或檔案。</translation>
    </message>
    <message>
        <source>The demo run cannot be opened.</source>
        <translation>無法開啟示範記錄。</translation>
    </message>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>表格連同標題已複製到剪貼簿。</translation>
    </message>
    <message>
        <source>The picture is on the clipboard.</source>
        <translation>圖片已複製到剪貼簿。</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>復原</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>取消復原</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>檢查</translation>
    </message>
    <message>
        <source>Ovenwright</source>
        <translation>Ovenwright</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>就緒</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 rows, every %3 s, %n channel(s)</source>
        <translation>
            <numerusform>%1：%2 列，每 %3 s，%n 個通道</numerusform>
        </translation>
    </message>
    <message>
        <source>oven entry found at %1 s</source>
        <translation>找到進爐時刻 %1 s</translation>
    </message>
    <message>
        <source>oven entry given at %1 s</source>
        <translation>指定進爐時刻 %1 s</translation>
    </message>
    <message>
        <source>decimal %1</source>
        <translation>小數符號：%1</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>讀取方式：%1</translation>
    </message>
    <message>
        <source>Decision rule: guarded, w = U</source>
        <translation>判定規則：採用保護帶，w = U</translation>
    </message>
    <message>
        <source>Decision rule: simple</source>
        <translation>判定規則：簡單</translation>
    </message>
    <message>
        <source>Please note.</source>
        <comment>before warnings</comment>
        <translation>請注意。</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>關閉訊息</translation>
    </message>
    <message>
        <source>%1 was not read.</source>
        <translation>%1 無法讀取。</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be read: %1.</source>
        <translation>
            <numerusform>另有 %n 個無法讀取：%1。</numerusform>
        </translation>
    </message>
    <message>
        <source>Read it without the board</source>
        <translation>不用電路板檔讀取</translation>
    </message>
    <message>
        <source>Read it without the oven</source>
        <translation>不用爐讀取</translation>
    </message>
    <message>
        <source>Show the line</source>
        <translation>顯示該列</translation>
    </message>
    <message>
        <source>Read it another way</source>
        <translation>改用其他讀法</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>再試一次</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>開啟其他記錄…</translation>
    </message>
    <message>
        <source>Not judged.</source>
        <translation>未判定。</translation>
    </message>
    <message>
        <source>Undo this change</source>
        <translation>復原此變更</translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation>檢查(&amp;C)</translation>
    </message>
    <message>
        <source>T&amp;une</source>
        <translation>調整(&amp;U)</translation>
    </message>
    <message>
        <source>Panel at the rig&amp;ht</source>
        <translation>右側面板(&amp;H)</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>調整</translation>
    </message>
    <message>
        <source>Prediction follows each edit</source>
        <translation>預測隨每次變更更新</translation>
    </message>
    <message>
        <source>Nothing is predicted yet</source>
        <translation>尚無預測</translation>
    </message>
    <message>
        <source>&amp;Lots</source>
        <translation>批次 (&amp;L)</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>The run was not opened.</source>
        <translation>未開啟該次測溫。</translation>
    </message>
    <message>
        <source>Se&amp;ttings…</source>
        <translation>設定(&amp;T)…</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>監看資料夾(&amp;F)…</translation>
    </message>
    <message>
        <source>&amp;Keep in the record…</source>
        <translation>存入檔案(&amp;K)…</translation>
    </message>
    <message>
        <source>Keep…</source>
        <translation>存檔…</translation>
    </message>
    <message>
        <source>%1: choose where runs are kept</source>
        <translation>%1：選擇測溫存於何處</translation>
    </message>
    <message numerus="yes">
        <source>Watching %1: %n kept</source>
        <translation>
            <numerusform>正在監看 %1：已存 %n 次</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n 份未判定</numerusform>
        </translation>
    </message>
    <message>
        <source>C&amp;ompare</source>
        <translation>比較(&amp;O)</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比較</translation>
    </message>
    <message>
        <source>From the &amp;archive…</source>
        <translation>來自存檔(&amp;A)…</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>看兩個示範記錄(&amp;D)</translation>
    </message>
    <message>
        <source>The runs were not opened.</source>
        <translation>未能開啟這些測溫。</translation>
    </message>
    <message>
        <source>Leave these cells empty</source>
        <translation>將這些儲存格視為空白</translation>
    </message>
    <message>
        <source>Leave these rows out</source>
        <translation>略去這些列</translation>
    </message>
    <message numerus="yes">
        <source>%n assumed</source>
        <comment>things about the reading</comment>
        <translation>
            <numerusform>%n 項假定</numerusform>
        </translation>
    </message>
    <message>
        <source>Guarded, w = U</source>
        <translation>採用保護帶，w = U</translation>
    </message>
    <message>
        <source>Simple rule</source>
        <translation>簡單規則</translation>
    </message>
    <message>
        <source>&amp;Edit the oven</source>
        <translation>編輯爐(&amp;E)</translation>
    </message>
    <message>
        <source>The row is on the clipboard.</source>
        <translation>該列已在剪貼簿中。</translation>
    </message>
    <message>
        <source>The rows are on the clipboard, with headings.</source>
        <translation>各列已連同標題在剪貼簿中。</translation>
    </message>
    <message>
        <source>No oven is chosen: there is none to edit.</source>
        <translation>尚未選擇爐：沒有可編輯的爐。</translation>
    </message>
    <message>
        <source>the window %1</source>
        <translation>製程窗口 %1</translation>
    </message>
    <message>
        <source>the oven %1</source>
        <translation>爐 %1</translation>
    </message>
    <message>
        <source>the recipe %1 in Tune</source>
        <translation>調整中的配方 %1</translation>
    </message>
    <message>
        <source>Not closed yet.</source>
        <translation>尚未關閉。</translation>
    </message>
    <message>
        <source>Changes that are not saved: %1.</source>
        <translation>尚未儲存的變更：%1。</translation>
    </message>
    <message>
        <source>Show the changes</source>
        <translation>顯示變更</translation>
    </message>
    <message>
        <source>Close without saving</source>
        <translation>不儲存並關閉</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenModel</name>
    <message>
        <source>Name</source>
        <translation>名稱</translation>
    </message>
    <message>
        <source>Ambient, °C</source>
        <translation>環境溫度，°C</translation>
    </message>
    <message>
        <source>Mouth to first zone, mm</source>
        <translation>爐口到第一溫區，mm</translation>
    </message>
    <message>
        <source>Last zone to end, mm</source>
        <translation>最後溫區到出口，mm</translation>
    </message>
    <message>
        <source>Setpoints from, °C</source>
        <translation>設定溫度下限，°C</translation>
    </message>
    <message>
        <source>Setpoints to, °C</source>
        <translation>設定溫度上限，°C</translation>
    </message>
    <message>
        <source>Speed from, mm/min</source>
        <translation>速度下限，mm/min</translation>
    </message>
    <message>
        <source>Speed to, mm/min</source>
        <translation>速度上限，mm/min</translation>
    </message>
    <message>
        <source>Step to next zone, °C</source>
        <translation>相鄰溫區溫差，°C</translation>
    </message>
    <message>
        <source>Top to bottom, °C</source>
        <translation>上下溫差，°C</translation>
    </message>
    <message>
        <source>%1: its other end is missing</source>
        <translation>%1：缺少另一端</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>heats</source>
        <translation>加熱</translation>
    </message>
    <message>
        <source>cools</source>
        <translation>冷卻</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>區</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>種類</translation>
    </message>
    <message>
        <source>Begins at, mm</source>
        <translation>起點，mm</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>長度，mm</translation>
    </message>
    <message>
        <source>Gap after it, mm</source>
        <translation>其後間隔，mm</translation>
    </message>
    <message>
        <source>Board there, s</source>
        <translation>電路板在此，s</translation>
    </message>
    <message>
        <source>From the oven’s mouth, out of the lengths and gaps before it</source>
        <translation>從爐口算起，由前面的長度與間隔得出</translation>
    </message>
    <message>
        <source>From the oven entry, at the speed of the recipe</source>
        <translation>從入爐算起，依配方速度</translation>
    </message>
    <message>
        <source>“%1” can mean thousands or decimals: type thousands without a sign, decimals with one or two digits</source>
        <translation>「%1」可能是千分位，也可能是小數：千位數請不加分隔符號，小數請輸入一或兩位</translation>
    </message>
    <message>
        <source>Zone %1: name %2</source>
        <translation>溫區 %1：名稱 %2</translation>
    </message>
    <message>
        <source>Zone %1: length %2 mm</source>
        <translation>溫區 %1：長度 %2 mm</translation>
    </message>
    <message>
        <source>Zone %1: gap after it %2 mm</source>
        <translation>溫區 %1：其後間隔 %2 mm</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenPage</name>
    <message>
        <source>Zones</source>
        <translation>區</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名稱(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Ambient, °C</source>
        <translation>環境溫度，°C(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Mouth to first zone, mm</source>
        <translation>爐口到第一溫區，mm(&amp;M)</translation>
    </message>
    <message>
        <source>Last &amp;zone to end, mm</source>
        <translation>最後溫區到出口，mm(&amp;Z)</translation>
    </message>
    <message>
        <source>Set&amp;points, °C</source>
        <translation>設定溫度，°C(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Speed, mm/min</source>
        <translation>速度，mm/min(&amp;S)</translation>
    </message>
    <message>
        <source>S&amp;tep to next zone, °C</source>
        <translation>相鄰溫區溫差，°C(&amp;T)</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>新版本</translation>
    </message>
    <message>
        <source>The curves begin at %1 to %2 %3.</source>
        <translation>曲線從 %1 到 %2 %3 開始。</translation>
    </message>
    <message>
        <source>They do not show when the board entered.</source>
        <translation>曲線看不出電路板何時入爐。</translation>
    </message>
    <message>
        <source>With these lengths they put the oven entry at %1 ± %2 s on the log’s clock.</source>
        <translation>依這些長度，入爐時刻是記錄的時鐘 %1 ± %2 s。</translation>
    </message>
    <message>
        <source>The oven entry was given: %1 s on the log’s clock.</source>
        <translation>入爐時刻由使用者給定：記錄的時鐘 %1 s。</translation>
    </message>
    <message>
        <source>A new revision needs a name.</source>
        <translation>新版次需要名稱。</translation>
    </message>
    <message>
        <source>The oven is at revision %1 already.</source>
        <translation>爐已是版次 %1。</translation>
    </message>
    <message>
        <source>Every rule for ovens is met.</source>
        <translation>符合爐的所有規則。</translation>
    </message>
    <message>
        <source>Oven, %1</source>
        <translation>爐，%1</translation>
    </message>
    <message>
        <source>Save the oven</source>
        <translation>儲存爐</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML 檔案 (*.toml)</translation>
    </message>
    <message>
        <source>The oven was not saved.</source>
        <translation>爐未儲存。</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>已儲存為版次 %1：%2</translation>
    </message>
    <message>
        <source>Save the oven’s revision %1</source>
        <translation>儲存爐的版次 %1</translation>
    </message>
    <message>
        <source>Save as a new revision</source>
        <translation>儲存為新版次</translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation>儲存到其他位置…</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>回到結果</translation>
    </message>
    <message>
        <source>Top to &amp;bottom, °C</source>
        <translation>上下溫差，°C(&amp;B)</translation>
    </message>
    <message>
        <source>Rev&amp;ision</source>
        <translation>版次(&amp;I)</translation>
    </message>
    <message>
        <source>The curves begin at %1 %2.</source>
        <translation>曲線從 %1 %2 開始。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OverlayList</name>
    <message>
        <source>Laid over the prediction</source>
        <translation>疊加於預測之上</translation>
    </message>
    <message>
        <source>The run as it was measured</source>
        <translation>實測曲線</translation>
    </message>
    <message>
        <source>%1; margin %2</source>
        <translation>%1；裕度 %2</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>捨棄預測 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::PageView</name>
    <message>
        <source>Preview of the sheet</source>
        <translation>報告單預覽</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ProfileMenus</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1，已變更</translation>
    </message>
    <message>
        <source>None</source>
        <translation>無</translation>
    </message>
    <message>
        <source>&amp;Window</source>
        <translation>製程窗口(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>電路板(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Oven and recipe</source>
        <translation>爐和配方(&amp;O)</translation>
    </message>
    <message>
        <source>Judge &amp;also against</source>
        <translation>同時依據(&amp;A)</translation>
    </message>
    <message>
        <source>No longer against %1</source>
        <translation>不再依據 %1</translation>
    </message>
    <message>
        <source>&amp;Edit this window</source>
        <translation>編輯此製程窗口(&amp;E)</translation>
    </message>
    <message>
        <source>Open a window &amp;file…</source>
        <translation>開啟製程窗口檔案(&amp;F)…</translation>
    </message>
    <message>
        <source>Open a window</source>
        <translation>開啟製程窗口</translation>
    </message>
    <message>
        <source>Open a board &amp;file…</source>
        <translation>開啟電路板檔案(&amp;F)…</translation>
    </message>
    <message>
        <source>Open a board</source>
        <translation>開啟電路板</translation>
    </message>
    <message>
        <source>Open a recipe &amp;file…</source>
        <translation>開啟配方檔案(&amp;F)…</translation>
    </message>
    <message>
        <source>Open a recipe</source>
        <translation>開啟配方</translation>
    </message>
    <message>
        <source>Open an oven &amp;file and a recipe…</source>
        <translation>開啟爐檔案和配方(&amp;F)…</translation>
    </message>
    <message>
        <source>Open an oven</source>
        <translation>開啟爐</translation>
    </message>
    <message>
        <source>Open a recipe of this oven</source>
        <translation>開啟此爐的配方</translation>
    </message>
    <message>
        <source>TOML files (*.toml);;All files (*)</source>
        <translation>TOML 檔案 (*.toml);;所有檔案 (*)</translation>
    </message>
    <message>
        <source>%1, line %2: </source>
        <translation>%1，第 %2 列：</translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>開啟檔案</translation>
    </message>
    <message>
        <source>Not judged anew: this window cannot be used.</source>
        <translation>未重新判定：此製程窗口無法使用。</translation>
    </message>
    <message>
        <source>Judge also against %1</source>
        <translation>同時依據 %1</translation>
    </message>
    <message>
        <source>Choose the window %1</source>
        <translation>選擇製程窗口 %1</translation>
    </message>
    <message>
        <source>No longer judge against %1</source>
        <translation>不再依據 %1 判定</translation>
    </message>
    <message>
        <source>Choose no board</source>
        <translation>不選電路板</translation>
    </message>
    <message>
        <source>This board cannot be used.</source>
        <translation>此電路板無法使用。</translation>
    </message>
    <message>
        <source>Choose the board %1</source>
        <translation>選擇電路板 %1</translation>
    </message>
    <message>
        <source>Choose no oven</source>
        <translation>不選爐</translation>
    </message>
    <message>
        <source>This oven cannot be used.</source>
        <translation>此爐無法使用。</translation>
    </message>
    <message>
        <source>This recipe cannot be used.</source>
        <translation>此配方無法使用。</translation>
    </message>
    <message>
        <source>This recipe does not fit the oven.</source>
        <translation>此配方不適用於該爐。</translation>
    </message>
    <message>
        <source>Choose the recipe %1</source>
        <translation>選擇配方 %1</translation>
    </message>
    <message>
        <source>&amp;Edit this oven</source>
        <translation>編輯這座爐(&amp;E)</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingPanel</name>
    <message>
        <source>How the log was read</source>
        <translation>記錄如何讀取</translation>
    </message>
    <message>
        <source>Read logs laid out like this the same way</source>
        <translation>相同格式的記錄都照此讀取</translation>
    </message>
    <message>
        <source>Use this reading</source>
        <translation>採用此讀法</translation>
    </message>
    <message>
        <source>Back to what was found</source>
        <translation>恢復自動判讀</translation>
    </message>
    <message>
        <source>Export the layout…</source>
        <translation>匯出版面…</translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>文字編碼</translation>
    </message>
    <message>
        <source>Separator</source>
        <translation>分隔符號</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>小數符號</translation>
    </message>
    <message>
        <source>Header</source>
        <translation>標題列</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>時間</translation>
    </message>
    <message>
        <source>Order of the date</source>
        <translation>日期順序</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>單位</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>進爐時刻</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Oven entry, seconds on the log’s clock</source>
        <translation>進爐時刻（記錄的時鐘，秒）</translation>
    </message>
    <message>
        <source>What was found and assumed</source>
        <translation>找到與假定的內容</translation>
    </message>
    <message>
        <source>Layout &amp;name</source>
        <translation>版面名稱(&amp;N)</translation>
    </message>
    <message>
        <source>Layout name</source>
        <translation>版面名稱</translation>
    </message>
    <message numerus="yes">
        <source>The %n line(s) before it are kept as notes.</source>
        <translation>
            <numerusform>其前 %n 列保留為附註。</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 s a row.</source>
        <translation>每列 %1 s。</translation>
    </message>
    <message>
        <source>Not found. Without an oven, times stay on the log’s own clock.</source>
        <translation>未找到。沒有爐時，時間依記錄本身的時鐘。</translation>
    </message>
    <message>
        <source>Not found in this log: it can be given.</source>
        <translation>此記錄中未找到：可自行指定。</translation>
    </message>
    <message>
        <source>Given. The plot and the zone strip count from it.</source>
        <translation>已指定。曲線與溫區條由此起算。</translation>
    </message>
    <message>
        <source>Found from the curves, ± %1 s. The plot and the zone strip count from it.</source>
        <translation>由曲線找到，± %1 s。曲線與溫區條由此起算。</translation>
    </message>
    <message>
        <source>Found from the log</source>
        <translation>從記錄找到</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>自行指定</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n cell(s) without a reading</source>
        <translation>
            <numerusform>%1：%n 格沒有讀數</numerusform>
        </translation>
    </message>
    <message>
        <source>changed by you</source>
        <translation>由您變更</translation>
    </message>
    <message>
        <source>Found from the content</source>
        <translation>依內容判斷</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>尚未讀取</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>The layout was not kept.</source>
        <translation>版面未能保留。</translation>
    </message>
    <message>
        <source>Logs of this shape are read by the layout %1.</source>
        <translation>相同格式的記錄將以版面 %1 讀取。</translation>
    </message>
    <message>
        <source>Export the layout</source>
        <translation>匯出版面</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML 檔案 (*.toml)</translation>
    </message>
    <message>
        <source>The layout was not exported.</source>
        <translation>版面未能匯出。</translation>
    </message>
    <message>
        <source>The layout is in %1.</source>
        <translation>版面已存於 %1。</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>倍率</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>熱電偶</translation>
    </message>
    <message>
        <source>Cold junction</source>
        <translation>冷接點</translation>
    </message>
    <message>
        <source>No byte contradicts it.</source>
        <translation>沒有位元組與之矛盾。</translation>
    </message>
    <message numerus="yes">
        <source>Every row that is shown has %n cell(s).</source>
        <translation>
            <numerusform>顯示的每一列有 %n 個儲存格。</numerusform>
        </translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>未註明</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>假設：%1</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>表格</translation>
    </message>
    <message numerus="yes">
        <source>%n other(s) in the file may be a log as well.</source>
        <translation>
            <numerusform>檔案中另有 %n 個表格也可能是記錄。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingRow</name>
    <message>
        <source>assumed</source>
        <translation>假定</translation>
    </message>
    <message>
        <source>assumed; %1</source>
        <translation>假定；%1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RecipeStrip</name>
    <message>
        <source>Recipe</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>Type a number, or step with the up and down arrows; Delete goes back to what was run.</source>
        <translation>輸入數字，或以上下鍵步進；Delete 回到實際使用值。</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>top and bottom together</source>
        <translation>上下連動</translation>
    </message>
    <message>
        <source>stays in a search</source>
        <translation>搜尋時固定</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is. Press to let it move.</source>
        <translation>搜尋時溫區 %1 保持不變。按一下可讓它變動。</translation>
    </message>
    <message>
        <source>Press to keep zone %1 as it is in a search.</source>
        <translation>按一下可在搜尋時固定溫區 %1。</translation>
    </message>
    <message>
        <source>Type, step with the arrows or drag up and down.</source>
        <translation>輸入、用方向鍵步進或上下拖曳。</translation>
    </message>
    <message>
        <source>Top and bottom move together</source>
        <translation>上下一起變動</translation>
    </message>
    <message>
        <source>&amp;Type a number</source>
        <translation>輸入數字(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Back to what was run: %1</source>
        <translation>回到實際使用值：%1(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Keep zone %1 as it is in a search</source>
        <translation>搜尋時固定溫區 %1(&amp;K)</translation>
    </message>
    <message>
        <source>Top and bottom &amp;together</source>
        <translation>上下連動(&amp;T)</translation>
    </message>
    <message>
        <source>was %1</source>
        <comment>a setpoint or the speed</comment>
        <translation>原為 %1</translation>
    </message>
    <message>
        <source>Top and bottom move apart</source>
        <translation>上下分開變動</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ResultsModel</name>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>測點</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>數值</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>單位</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>下限</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕度</translation>
    </message>
    <message>
        <source>Probability inside</source>
        <translation>合格機率</translation>
    </message>
    <message>
        <source>From, s</source>
        <translation>起，s</translation>
    </message>
    <message>
        <source>To, s</source>
        <translation>迄，s</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>溫區</translation>
    </message>
    <message>
        <source>Source of the limit</source>
        <translation>界限的來源</translation>
    </message>
    <message>
        <source>board</source>
        <translation>整板</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ResultsTable</name>
    <message>
        <source>Results</source>
        <translation>結果</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsModel</name>
    <message>
        <source>Mark</source>
        <translation>標記</translation>
    </message>
    <message>
        <source>When</source>
        <translation>時間</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批號</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>測溫</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Window rev</source>
        <translation>窗口版次</translation>
    </message>
    <message>
        <source>Recipe rev</source>
        <translation>配方版次</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕度</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>最小裕度所在</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>報表</translation>
    </message>
    <message>
        <source>%1 has no value</source>
        <comment>placement and requirement</comment>
        <translation>%1 沒有數值</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <comment>date and time of a run of this year</comment>
        <translation>M月d日 HH:mm</translation>
    </message>
    <message>
        <source>d MMM yyyy HH:mm</source>
        <comment>date and time of a run</comment>
        <translation>yyyy年M月d日 HH:mm</translation>
    </message>
    <message>
        <source>to print</source>
        <comment>a marked run</comment>
        <translation>待列印</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>已標記</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>未標記</translation>
    </message>
    <message>
        <source>printed</source>
        <comment>the sheet of a run</comment>
        <translation>已列印</translation>
    </message>
    <message>
        <source>Printed on %1</source>
        <translation>列印於 %1</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this: it is read from each record once its row is seen.</source>
        <translation>清單無法依此排序：此內容要到該列顯示時才從紀錄讀取。</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this.</source>
        <translation>清單無法依此排序。</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1，依所給時間</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1，依記錄檔內的時鐘</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1，記錄檔的時間</translation>
    </message>
    <message>
        <source>%1, of the chosen zone</source>
        <comment>time of a run</comment>
        <translation>%1，屬於所選溫區</translation>
    </message>
    <message>
        <source>The result that decides the margin of the run, as it was judged when it was kept.</source>
        <translation>決定該次測溫裕度的結果，以保存時的判定為準。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsTable</name>
    <message>
        <source>Runs of the archive</source>
        <translation>存檔的測溫</translation>
    </message>
    <message>
        <source>So&amp;rt the runs by</source>
        <translation>測溫排序依據(&amp;R)</translation>
    </message>
    <message>
        <source>The other way &amp;round</source>
        <translation>反向(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>開啟(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Mark, or take the mark off</source>
        <translation>標記或取消標記(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Copy with headings</source>
        <translation>連同標題複製(&amp;C)</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Screenshot</name>
    <message>
        <source>a large log</source>
        <translation>一份大型記錄</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SearchSettings</name>
    <message>
        <source>Keep the s&amp;peed</source>
        <translation>保持速度(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Margin to keep, %</source>
        <translation>須保留的裕度，%(&amp;M)</translation>
    </message>
    <message>
        <source>Margin to keep, %</source>
        <translation>須保留的裕度，%</translation>
    </message>
    <message>
        <source>What the fastest and the coolest must keep; else half of the best, at most 20 %</source>
        <translation>最快與最低溫方案須保留的裕度；否則為最佳值的一半，最多 20 %</translation>
    </message>
    <message>
        <source>S&amp;uggest recipes</source>
        <translation>建議配方(&amp;U)</translation>
    </message>
    <message>
        <source>Keep the speed in a search</source>
        <translation>搜尋時保持速度</translation>
    </message>
    <message>
        <source>Let a search change the speed</source>
        <translation>允許搜尋改變速度</translation>
    </message>
    <message>
        <source>Least speed of a search</source>
        <translation>搜尋的最低速度</translation>
    </message>
    <message>
        <source>Margin that a search keeps</source>
        <translation>搜尋須保留的裕度</translation>
    </message>
    <message>
        <source>Lea&amp;st speed, %1</source>
        <translation>最低速度，%1(&amp;S)</translation>
    </message>
    <message>
        <source>Least speed, %1</source>
        <translation>最低速度，%1</translation>
    </message>
    <message>
        <source>Every zone may move; press a zone’s name in the strip to keep it.</source>
        <translation>每個溫區都可變動；按溫區條上的名稱可固定它。</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is.</source>
        <translation>搜尋時溫區 %1 保持不變。</translation>
    </message>
    <message>
        <source>A search leaves zones %1 as they are.</source>
        <translation>搜尋時溫區 %1 保持不變。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SettingsWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>選擇(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Use this archive</source>
        <translation>使用此存檔(&amp;U)</translation>
    </message>
    <message>
        <source>No password: it would be shown and kept in plain text here. It belongs into the password file or a service file of the server’s library (.pgpass).</source>
        <translation>不要寫密碼：密碼會在這裡以明文顯示和儲存。請放在伺服器程式庫的密碼檔或服務檔 (.pgpass)。</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>設定</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>關閉</translation>
    </message>
    <message>
        <source>Archive: where runs are kept</source>
        <translation>存檔：測溫存於何處</translation>
    </message>
    <message>
        <source>File of the archive</source>
        <translation>存檔的檔案</translation>
    </message>
    <message>
        <source>Address of the server</source>
        <translation>伺服器位址</translation>
    </message>
    <message>
        <source>This c&amp;omputer</source>
        <translation>這台電腦(&amp;O)</translation>
    </message>
    <message>
        <source>A &amp;file</source>
        <translation>一個檔案(&amp;F)</translation>
    </message>
    <message>
        <source>A PostgreSQL &amp;server</source>
        <translation>PostgreSQL 伺服器(&amp;S)</translation>
    </message>
    <message>
        <source>Sheets and records</source>
        <translation>報告單與存檔</translation>
    </message>
    <message>
        <source>none</source>
        <translation>無</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>選擇(&amp;H)…</translation>
    </message>
    <message>
        <source>Choose a logo</source>
        <translation>選擇標誌</translation>
    </message>
    <message>
        <source>Choose the archive’s file</source>
        <translation>選擇存檔的檔案</translation>
    </message>
    <message>
        <source>Com&amp;pany, at the head of each sheet</source>
        <translation>公司，位於每張報告單頁首(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Logo beside it</source>
        <translation>旁邊的標誌(&amp;L)</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>紙張(&amp;A)</translation>
    </message>
    <message>
        <source>Op&amp;erator, who keeps and prints here</source>
        <translation>在此存檔與列印的操作人員(&amp;E)</translation>
    </message>
    <message>
        <source>Which file? It is made when the first run is kept.</source>
        <translation>哪個檔案？存入第一次測溫時會建立。</translation>
    </message>
    <message>
        <source>This is the address of a server.</source>
        <translation>這是伺服器位址。</translation>
    </message>
    <message>
        <source>Say the whole path, so that it is the same file wherever the program starts.</source>
        <translation>請寫完整路徑，無論程式從何處啟動都是同一個檔案。</translation>
    </message>
    <message>
        <source>%1 is a folder: an archive is a file.</source>
        <translation>%1 是資料夾：存檔是一個檔案。</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>沒有資料夾 %1。</translation>
    </message>
    <message>
        <source>Which server? As in postgresql://user@host:5432/database.</source>
        <translation>哪個伺服器？例如 postgresql://user@host:5432/database。</translation>
    </message>
    <message>
        <source>Found %1, expected an address such as postgresql://user@host:5432/database.</source>
        <translation>找到 %1，應為如 postgresql://user@host:5432/database 的位址。</translation>
    </message>
    <message>
        <source>The address holds a password, which would be shown and kept in plain text: it belongs into the password file or a service file of the server’s library.</source>
        <translation>位址含有密碼，會以明文顯示和儲存：請放在伺服器程式庫的密碼檔或服務檔。</translation>
    </message>
    <message>
        <source>In use. %1</source>
        <translation>使用中。%1</translation>
    </message>
    <message>
        <source>In use. It is made when the first run is kept.</source>
        <translation>使用中。存入第一次測溫時會建立。</translation>
    </message>
    <message>
        <source>In use, but: %1</source>
        <translation>使用中，但是：%1</translation>
    </message>
    <message>
        <source>Not in use yet.</source>
        <translation>尚未使用。</translation>
    </message>
    <message>
        <source>Archives (*.sqlite);;All files (*)</source>
        <translation>存檔 (*.sqlite);;所有檔案 (*)</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>選擇</translation>
    </message>
    <message>
        <source>Logo at the head of each sheet</source>
        <translation>每張報告單頁首的標誌</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png *.jpg *.jpeg)</source>
        <translation>圖片 (*.svg *.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>Not on the sheets: %1</source>
        <translation>不列入報告單：%1</translation>
    </message>
    <message>
        <source>The program was started with it: next time it is %1 again, unless you use this one.</source>
        <translation>程式是以此存檔啟動的：若不按下使用，下次仍為 %1。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SeveralLots</name>
    <message>
        <source>&amp;All shown</source>
        <translation>全選所示(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>全不選(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>選擇(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>停止(&amp;S)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>關閉</translation>
    </message>
    <message>
        <source>&amp;Replace them</source>
        <translation>取代(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Leave them out</source>
        <translation>略過(&amp;L)</translation>
    </message>
    <message>
        <source>Change the folder</source>
        <translation>更換資料夾</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>每次測溫一頁</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>在存檔中標記為已列印</translation>
    </message>
    <message>
        <source>Sheets of several lots</source>
        <translation>多個批號的報告單</translation>
    </message>
    <message>
        <source>%1 of %2: lot %3</source>
        <translation>%1/%2：批號 %3</translation>
    </message>
    <message>
        <source>Lot %1 is not marked as printed: %2</source>
        <translation>批號 %1 未標記為已列印：%2</translation>
    </message>
    <message>
        <source>The lots are listed…</source>
        <translation>正在列出批號…</translation>
    </message>
    <message>
        <source>Find a lot</source>
        <translation>尋找批號</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>批號</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批號</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>測溫</translation>
    </message>
    <message>
        <source>Last run</source>
        <translation>最近測溫</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>One HTML file</source>
        <translation>單一 HTML 檔</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>表格 (CSV)</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>由 %1</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>進度</translation>
    </message>
    <message>
        <source>In the &amp;folder</source>
        <translation>資料夾(&amp;F)</translation>
    </message>
    <message>
        <source>A file for each lot, as</source>
        <translation>每批一檔，格式</translation>
    </message>
    <message>
        <source>The archive has no lot yet.</source>
        <translation>存檔中還沒有批號。</translation>
    </message>
    <message>
        <source>Folder of the sheets</source>
        <translation>報告單的資料夾</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>沒有資料夾 %1。</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 是開啟中的記錄：報告單絕不取代記錄</translation>
    </message>
    <message numerus="yes">
        <source>%n of these files are in the folder already.</source>
        <translation>
            <numerusform>其中 %n 個檔案已在資料夾中。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheets are written.</source>
        <translation>
            <numerusform>已寫入 %1/%n 張報告單。</numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>已停止。</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be made.</source>
        <translation>
            <numerusform>另有 %n 張無法製作。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Write %n sheet(s)</source>
        <translation>
            <numerusform>寫入 %n 張報告單(&amp;W)</numerusform>
        </translation>
    </message>
    <message>
        <source>Write sheets</source>
        <translation>寫入報告單</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ShareBars</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Shares of the zones</source>
        <translation>各溫區的比重</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>溫區 %1</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>溫區 %1，上</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>溫區 %1，下</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SheetFilesJob</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SheetMenu</name>
    <message>
        <source>Pr&amp;int the sheet…</source>
        <translation>列印報告單(&amp;P)…</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>預覽列印(&amp;V)…</translation>
    </message>
    <message>
        <source>&amp;Export the sheet…</source>
        <translation>匯出報告單(&amp;E)…</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>報告單已送至印表機</translation>
    </message>
    <message>
        <source>Export the sheet</source>
        <translation>匯出報告單</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;One HTML file (*.html);;Table (*.csv);;JSON (*.json)</source>
        <translation>PDF (*.pdf);;單一 HTML 檔 (*.html);;表格 (*.csv);;JSON (*.json)</translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .html, .csv or .json</source>
        <translation>%1：報告單只能寫成 .pdf、.html、.csv 或 .json</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>報告單已存於 %1</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>無法列印報告單</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 是已開啟的記錄：報告單絕不會取代記錄</translation>
    </message>
    <message>
        <source>The sheet has no logo. %1</source>
        <translation>報告單沒有標誌。%1</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>報告單…</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionCard</name>
    <message>
        <source>The recipe that was run stays.</source>
        <translation>沿用實際使用的配方。</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>顯示</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>顯示中</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>裕度 %1</translation>
    </message>
    <message>
        <source>Tightest: %1</source>
        <translation>最接近界限：%1</translation>
    </message>
    <message>
        <source>Takes its recipe over into the strip</source>
        <translation>將其配方帶入溫區條</translation>
    </message>
    <message>
        <source>%1, shown</source>
        <translation>%1，顯示中</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>顯示 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionsPanel</name>
    <message>
        <source>Suggestions</source>
        <translation>建議</translation>
    </message>
    <message>
        <source>Search again…</source>
        <translation>重新搜尋…</translation>
    </message>
    <message>
        <source>Suggestions can be asked for once it is known how this board heats in this oven.</source>
        <translation>得知這塊板子在此爐中如何受熱後，即可要求建議。</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Stop the search</source>
        <translation>停止搜尋</translation>
    </message>
    <message>
        <source>Progress of the search</source>
        <translation>搜尋進度</translation>
    </message>
    <message>
        <source>Undetermined: the search was stopped before it had looked everywhere.</source>
        <translation>無法判定：搜尋尚未完成即已停止。</translation>
    </message>
    <message>
        <source>No recipe passes</source>
        <translation>沒有合格的配方</translation>
    </message>
    <message>
        <source>What stands against each other:</source>
        <translation>互相衝突的項目：</translation>
    </message>
    <message>
        <source>Show the best there is</source>
        <translation>顯示目前最佳</translation>
    </message>
    <message>
        <source>Nothing better was found: the recipe that was run can stay.</source>
        <translation>未找到更好的：可沿用實際使用的配方。</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>顯示：%1</translation>
    </message>
    <message>
        <source>The next run worth making</source>
        <translation>最值得進行的下一次測溫</translation>
    </message>
    <message>
        <source>Show its recipe</source>
        <translation>顯示其配方</translation>
    </message>
    <message>
        <source>Show the next run worth making</source>
        <translation>顯示最值得進行的下一次測溫</translation>
    </message>
    <message>
        <source>These are predictions.</source>
        <translation>以上皆為預測。</translation>
    </message>
    <message>
        <source>Nothing is suggested from a model that does not fit.</source>
        <translation>模型不符時不作任何建議。</translation>
    </message>
    <message>
        <source>To check first</source>
        <translation>請先確認</translation>
    </message>
    <message>
        <source>No chance of passing is stated while the log contradicts the files.</source>
        <translation>記錄與檔案不符時，不給出合格機率。</translation>
    </message>
    <message>
        <source>Not known: a recipe that passes may exist</source>
        <translation>尚不確定：可能存在合格的配方</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TaskRail</name>
    <message>
        <source>Drop a log anywhere in this window</source>
        <translation>把記錄拖放到視窗任何位置</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>工作</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TunePage</name>
    <message>
        <source>Top and bottom &amp;together</source>
        <translation>上下連動(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;All curves</source>
        <translation>所有曲線(&amp;A)</translation>
    </message>
    <message>
        <source>a split needs a run that splits them</source>
        <translation>分開設定需要一次上下分開的測溫</translation>
    </message>
    <message>
        <source>&amp;Keep this prediction</source>
        <translation>保留此預測(&amp;K)</translation>
    </message>
    <message>
        <source>&amp;Back to what was run</source>
        <translation>回到實際使用值(&amp;B)</translation>
    </message>
    <message>
        <source>Change &amp;note…</source>
        <translation>變更單(&amp;N)…</translation>
    </message>
    <message>
        <source>&amp;Save as a recipe…</source>
        <translation>儲存為配方(&amp;S)…</translation>
    </message>
    <message>
        <source>Suggestions</source>
        <translation>建議</translation>
    </message>
    <message>
        <source>Its curves stay, to be laid over others</source>
        <translation>保留其曲線，以便與其他疊加</translation>
    </message>
    <message>
        <source>Save as &amp;PDF…</source>
        <translation>儲存為 PDF(&amp;P)…</translation>
    </message>
    <message>
        <source>Save as &amp;text…</source>
        <translation>儲存為文字(&amp;T)…</translation>
    </message>
    <message>
        <source>Top and bottom together</source>
        <translation>上下連動</translation>
    </message>
    <message>
        <source>Top and bottom apart</source>
        <translation>上下分開</translation>
    </message>
    <message>
        <source>Let a search move zone %1</source>
        <translation>允許搜尋變動溫區 %1</translation>
    </message>
    <message>
        <source>Keep zone %1 in a search</source>
        <translation>搜尋時固定溫區 %1</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>實測</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>letter of a prediction, what it changes</comment>
        <translation>%1：%2</translation>
    </message>
    <message numerus="yes">
        <source>Predicted and measured temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>預測與實測溫度對時間，%n 支熱電偶</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Back to rev %1</source>
        <translation>回到版次 %1(&amp;B)</translation>
    </message>
    <message>
        <source>Save as a recipe</source>
        <translation>儲存為配方</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML 檔案 (*.toml)</translation>
    </message>
    <message>
        <source>The recipe was not saved.</source>
        <translation>配方未能儲存。</translation>
    </message>
    <message>
        <source>Saved as %1. It is a prediction: confirm it with an instrumented run.</source>
        <translation>已儲存為 %1。此為預測：請以實際測溫確認。</translation>
    </message>
    <message>
        <source>Save the change note</source>
        <translation>儲存變更單</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>文字 (*.txt)</translation>
    </message>
    <message>
        <source>The change note was not saved.</source>
        <translation>變更單未能儲存。</translation>
    </message>
    <message>
        <source>The change note is saved as %1.</source>
        <translation>變更單已儲存為 %1。</translation>
    </message>
    <message>
        <source>the run had both sides alike: what each does alone is not known</source>
        <translation>該次量測上下溫區相同：單側的效果無從得知</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>備註</translation>
    </message>
    <message>
        <source>Top and bottom together, checked</source>
        <translation>上下連動，已勾選</translation>
    </message>
    <message>
        <source>Top and bottom together, not checked</source>
        <translation>上下連動，未勾選</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TuneSession</name>
    <message>
        <source>Back to the recipe that was run</source>
        <translation>回到實際使用的配方</translation>
    </message>
    <message>
        <source>Keep the prediction %1</source>
        <translation>保留預測 %1</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>捨棄預測 %1</translation>
    </message>
    <message>
        <source>Speed to %1</source>
        <translation>速度設為 %1</translation>
    </message>
    <message>
        <source>Zone %1 to %2</source>
        <translation>溫區 %1 設為 %2</translation>
    </message>
    <message>
        <source>Learn from %1 too</source>
        <translation>同時從 %1 學習</translation>
    </message>
    <message>
        <source>Do not learn from %1</source>
        <translation>不從 %1 學習</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WatchWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>選擇(&amp;C)…</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>選擇(&amp;H)…</translation>
    </message>
    <message>
        <source>&amp;Watch</source>
        <translation>監看(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>停止(&amp;S)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>關閉</translation>
    </message>
    <message>
        <source>Each log that appears in the folder is judged and kept by the first rule that matches its name. Files stay where they are; one that is still being written is waited for. Nothing is watched before you say so, and watching goes on when this window is closed.</source>
        <translation>資料夾中出現的每份記錄都依第一條符合檔名的規則判定並存檔。檔案留在原處；仍在寫入的檔案會等待。您沒有指示之前不會監看，關閉此視窗後仍繼續監看。</translation>
    </message>
    <message>
        <source>Watch a folder</source>
        <translation>監看資料夾</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>選擇：%1</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>資料夾(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Rules</source>
        <translation>規則(&amp;R)</translation>
    </message>
    <message>
        <source>rules.toml: which lot, window, board, oven and recipe belong to which file names</source>
        <translation>rules.toml：哪些檔名對應哪個批號、製程窗口、電路板、爐子和配方</translation>
    </message>
    <message>
        <source>Logs that came</source>
        <translation>收到的記錄</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>時間</translation>
    </message>
    <message>
        <source>File</source>
        <translation>檔案</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕度</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>處理結果</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>要監看的資料夾</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>規則</translation>
    </message>
    <message>
        <source>Rules (*.toml);;All files (*)</source>
        <translation>規則 (*.toml);;所有檔案 (*)</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>未判定</translation>
    </message>
    <message>
        <source>kept already, as %1</source>
        <translation>已存檔，編號 %1</translation>
    </message>
    <message>
        <source>kept as %1</source>
        <translation>存為 %1</translation>
    </message>
    <message>
        <source>Watching %1.</source>
        <translation>正在監看 %1。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) kept</source>
        <translation>
            <numerusform>已存 %n 次測溫</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) not judged.</source>
        <translation>
            <numerusform>%n 個檔案未判定。</numerusform>
        </translation>
    </message>
    <message>
        <source>Some files wait until the archive can take them.</source>
        <translation>有些檔案在等待存檔可以收納。</translation>
    </message>
    <message>
        <source>Some files are still being written.</source>
        <translation>有些檔案仍在寫入。</translation>
    </message>
    <message>
        <source>The server is away: what is kept waits on this computer.</source>
        <translation>伺服器無回應：存檔內容在這台電腦等候。</translation>
    </message>
    <message>
        <source>Nothing is watched: %1</source>
        <translation>沒有監看：%1</translation>
    </message>
    <message>
        <source>Nothing is watched.</source>
        <translation>沒有監看。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WindowModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Remove a requirement</source>
        <translation>移除要求</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1：%2 %3</translation>
    </message>
    <message>
        <source>Add a requirement</source>
        <translation>新增一項要求</translation>
    </message>
    <message>
        <source>Liquidus</source>
        <translation>液相線</translation>
    </message>
    <message>
        <source>Solidus</source>
        <translation>固相線</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>儀器</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WindowPage</name>
    <message>
        <source>Add a requirement</source>
        <translation>新增要求</translation>
    </message>
    <message>
        <source>Remove this requirement</source>
        <translation>移除此要求</translation>
    </message>
    <message>
        <source>Save as a new revision</source>
        <translation>儲存為新版次</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>返回結果</translation>
    </message>
    <message>
        <source>Requirements</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>新版次</translation>
    </message>
    <message>
        <source>Re&amp;vision</source>
        <translation>版次(&amp;V)</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>簡單</translation>
    </message>
    <message>
        <source>guarded, w = U</source>
        <translation>採用保護帶，w = U</translation>
    </message>
    <message>
        <source>none</source>
        <translation>無</translation>
    </message>
    <message>
        <source>Window being edited</source>
        <translation>編輯中的製程窗口</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名稱(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Alloy</source>
        <translation>合金(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Liquidus, °C</source>
        <translation>液相線，°C(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Solidus, °C</source>
        <translation>固相線，°C(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Decision rule</source>
        <translation>判定規則(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Classification for Tc</source>
        <translation>Tc 的分級(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Thermocouple</source>
        <translation>熱電偶(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Instrument, ± °C</source>
        <translation>儀器，± °C(&amp;I)</translation>
    </message>
    <message>
        <source>Name of the window</source>
        <translation>製程窗口名稱</translation>
    </message>
    <message>
        <source>Alloy</source>
        <translation>合金</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>熱電偶</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>判定規則</translation>
    </message>
    <message>
        <source>Classification for Tc</source>
        <translation>Tc 的分級</translation>
    </message>
    <message>
        <source>±%1 °C</source>
        <translation>±%1 °C</translation>
    </message>
    <message>
        <source>Every rule for windows is met.</source>
        <translation>符合製程窗口的所有規則。</translation>
    </message>
    <message>
        <source>The window was not saved.</source>
        <translation>製程窗口未能儲存。</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>已儲存為版次 %1：%2</translation>
    </message>
    <message>
        <source>Save revision %1</source>
        <translation>儲存版次 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ZonesPane</name>
    <message>
        <source>Results outside by zone</source>
        <translation>各溫區的超限結果</translation>
    </message>
    <message numerus="yes">
        <source>Runs of %n ovens are listed: choose one above, so that each zone is one zone.</source>
        <translation>
            <numerusform>清單中有 %n 台爐的測溫：請在上方選一台，溫區才不會混在一起。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No required result of the %n run(s) listed is outside its limits.</source>
        <translation>
            <numerusform>清單中 %n 次測溫沒有任何必要結果超出界限。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n required result(s) are outside, and none traces to a zone: the runs have no oven and recipe, or no zone moves what is outside.</source>
        <translation>
            <numerusform>有 %n 個必要結果超限，但都無法歸到溫區：這些測溫沒有爐與配方，或沒有溫區會影響超限的項目。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Zone %1 leads: %2 of the %n result(s) outside trace to it, in %3 of %4 runs, the last on %5.</source>
        <translation>
            <numerusform>溫區 %1 最多：%n 個超限結果中有 %2 個歸於此區，見於 %4 次測溫中的 %3 次，最近一次在 %5。</numerusform>
        </translation>
    </message>
    <message>
        <source>Results outside</source>
        <translation>超限結果</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>測溫次數</translation>
    </message>
    <message>
        <source>Last on</source>
        <translation>最近一次</translation>
    </message>
    <message>
        <source>none</source>
        <translation>無</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>溫區 %1</translation>
    </message>
    <message>
        <source>A result traces to the zones that move it most, whatever moved it: these are counts of what was judged, no measure of drift.</source>
        <translation>結果歸於最能影響它的溫區，不論實際原因為何：這裡是判定結果的計數，並非漂移的量測。</translation>
    </message>
    <message numerus="yes">
        <source>The %n run(s) of zone %1 have a bar at their left in the list.</source>
        <translation>
            <numerusform>溫區 %1 的 %n 次測溫在清單左側以直條標示。</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a zone to find its runs in the list.</source>
        <translation>選一個溫區即可在清單中找到其測溫。</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>zone, row, number</comment>
        <translation>%1，%2：%3</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::BoardPicture</name>
    <message>
        <source>Board</source>
        <translation>電路板</translation>
    </message>
    <message>
        <source>Choose a board to see where each thermocouple sits</source>
        <translation>選擇電路板即可看到每支熱電偶的位置</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::LimitLanes</name>
    <message>
        <source>Limit lanes</source>
        <translation>界限圖</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple.</source>
        <translation>每項要求一列，每支熱電偶一格。</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>requirement and its note</comment>
        <translation>%1，%2</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::LotLane</name>
    <message>
        <source>Lane of the lot</source>
        <translation>批次軌道</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::ZoneStrip</name>
    <message>
        <source>Zone strip</source>
        <translation>溫區條</translation>
    </message>
    <message>
        <source>no setpoint</source>
        <translation>無設定溫度</translation>
    </message>
    <message>
        <source>top %1, bottom %2</source>
        <translation>上 %1，下 %2</translation>
    </message>
    <message>
        <source>Zone %1: %2</source>
        <translation>溫區 %1：%2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3 s from oven entry, %4 to %5 s on the log</source>
        <comment>a placement in a zone</comment>
        <translation>%1 自進爐第 %2 至 %3 s，記錄第 %4 至 %5 s</translation>
    </message>
    <message>
        <source>B less A: %1</source>
        <comment>the difference of two setpoints</comment>
        <translation>B 減 A：%1</translation>
    </message>
    <message>
        <source>B less A: top %1, bottom %2</source>
        <translation>B 減 A：上 %1，下 %2</translation>
    </message>
</context>
</TS>
