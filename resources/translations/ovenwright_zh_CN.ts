<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN">
<context>
    <name>Archive</name>
    <message>
        <source>this computer</source>
        <translation>此电脑</translation>
    </message>
    <message>
        <source>Open a log, check it, and keep the run under its lot; ovenwright archive add and ovenwright watch do the same for many logs.</source>
        <translation>打开记录、检查后将该次测温存入其批次；ovenwright archive add 和 ovenwright watch 可处理多个记录。</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>再试一次</translation>
    </message>
    <message>
        <source>No run is kept yet.</source>
        <translation>尚未保存任何测温。</translation>
    </message>
    <message>
        <source>The archive&apos;s server does not answer.</source>
        <translation>存档的服务器没有响应。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) wait on this computer and are sent when it is back.</source>
        <translation>
            <numerusform>%n 次测温在此电脑等待，恢复后即发送。</numerusform>
        </translation>
    </message>
    <message>
        <source>Runs that are kept meanwhile wait on this computer.</source>
        <translation>期间保存的测温会在此电脑等待。</translation>
    </message>
    <message>
        <source>The archive cannot be read.</source>
        <translation>无法读取存档。</translation>
    </message>
    <message>
        <source>No run passes the filter.</source>
        <translation>没有测温符合筛选条件。</translation>
    </message>
    <message>
        <source>Show all runs</source>
        <translation>显示所有测温</translation>
    </message>
    <message>
        <source>Archive: %1</source>
        <translation>存档：%1</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n 次测温</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1, %2</source>
        <translation>存档：%1，%2</translation>
    </message>
    <message numerus="yes">
        <source>%n waiting to be sent</source>
        <translation>
            <numerusform>%n 条等待发送</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 away</source>
        <translation>存档：%1 无响应</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 away, %n record(s) wait here</source>
        <translation>
            <numerusform>存档：%1 无响应，%n 条在此等候</numerusform>
        </translation>
    </message>
    <message>
        <source>The archive&apos;s server is slow to answer.</source>
        <translation>存档的服务器响应缓慢。</translation>
    </message>
    <message>
        <source>The list comes as soon as it does; the other pages work meanwhile.</source>
        <translation>一有响应就会显示列表；其他页面仍可使用。</translation>
    </message>
    <message>
        <source>Archive: %1 is slow to answer</source>
        <translation>存档：%1 响应缓慢</translation>
    </message>
    <message>
        <source>Archive: %1 refuses</source>
        <translation>存档：%1 拒绝</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 refuses, %n record(s) wait here</source>
        <translation>
            <numerusform>存档：%1 拒绝，%n 条在此等候</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 cannot be read</source>
        <translation>存档：无法读取 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n refused by the server and kept here</source>
        <translation>
            <numerusform>%n 条被服务器拒绝，保存在此</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3 in lot %4: the lists show that one.</source>
        <translation>%1 的记录已由 %2 保存为 %3（批次 %4）：列表显示该条。</translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3: the lists show that one.</source>
        <translation>%1 的记录已由 %2 保存为 %3：列表显示该条。</translation>
    </message>
    <message numerus="yes">
        <source>So are %n more.</source>
        <translation>
            <numerusform>另有 %n 条亦同。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ChangeNote</name>
    <message>
        <source>Zone %1</source>
        <translation>温区 %1</translation>
    </message>
    <message>
        <source>Zone %1, top and bottom</source>
        <translation>温区 %1，上和下</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>温区 %1，上</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>温区 %1，下</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>Predicted: %1</source>
        <translation>预测：%1</translation>
    </message>
    <message>
        <source>smallest margin %1</source>
        <translation>最小裕量 %1</translation>
    </message>
    <message>
        <source>Tightest: %1.</source>
        <translation>最接近界限：%1。</translation>
    </message>
    <message>
        <source>Changed on the oven by</source>
        <translation>在炉上变更者</translation>
    </message>
    <message>
        <source>Confirmed with an instrumented run by</source>
        <translation>实际测温确认者</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>核准者</translation>
    </message>
    <message>
        <source>Written %1 by Ovenwright %2.</source>
        <translation>%1 由 Ovenwright %2 产生。</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>炉</translation>
    </message>
    <message>
        <source>Recipe that was run</source>
        <translation>实际使用的配方</translation>
    </message>
    <message>
        <source>Learned from the run</source>
        <translation>学习所用的测温</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
    </message>
    <message>
        <source>Process window</source>
        <translation>工艺窗口</translation>
    </message>
    <message>
        <source>Change note</source>
        <translation>变更单</translation>
    </message>
    <message>
        <source>This recipe is not predicted to pass. It is for a test run only, not for production.</source>
        <translation>预测此配方不会合格。仅供测试，不可用于量产。</translation>
    </message>
    <message>
        <source>Setpoint</source>
        <translation>设定温度</translation>
    </message>
    <message>
        <source>now</source>
        <translation>当前</translation>
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
        <translation>实测：%1</translation>
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
        <translation>模型与这些记录的偏差为 %1（均方根）。</translation>
    </message>
    <message>
        <source>To check first: %1</source>
        <translation>请先确认：%1</translation>
    </message>
    <message>
        <source>New recipe</source>
        <translation>新配方</translation>
    </message>
    <message>
        <source>Top and bottom are set apart, and no run that was learned from had them apart: what each side does alone is not known.</source>
        <translation>上下设定不同，而所学习的测温都是上下相同：各侧单独的作用不得而知。</translation>
    </message>
    <message>
        <source>It is not known how sure it is to pass. Make a test run of it first.</source>
        <translation>是否合格的把握不得而知。请先用此配方做一次测试。</translation>
    </message>
    <message>
        <source>It is not sure to pass: %1. Make a test run of it first.</source>
        <translation>不一定会合格：%1。请先用此配方做一次测试。</translation>
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
        <translation>s（未对齐）</translation>
    </message>
    <message>
        <source>s from %1</source>
        <comment>a temperature</comment>
        <translation>s（自 %1 起）</translation>
    </message>
    <message>
        <source>s from oven entry</source>
        <translation>s（自进炉）</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>A solid, B dashed</source>
        <translation>A 实线，B 虚线</translation>
    </message>
    <message>
        <source>No run is open.</source>
        <translation>未打开任何记录。</translation>
    </message>
    <message>
        <source>Compare holds two runs against each other.</source>
        <translation>比较功能将两次测量相互对照。</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>打开记录…</translation>
    </message>
    <message>
        <source>Look at two demo runs</source>
        <translation>看两个示范记录</translation>
    </message>
    <message>
        <source>One run is open: %1.</source>
        <translation>已打开一次：%1。</translation>
    </message>
    <message>
        <source>Compare needs a second one.</source>
        <translation>比较还需要另一次。</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>打开另一个记录…</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>添加一次…</translation>
    </message>
    <message>
        <source>Comparing.</source>
        <translation>正在比较。</translation>
    </message>
    <message>
        <source>These runs cannot be compared.</source>
        <translation>这两次无法比较。</translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>以 A 的工艺窗口比较</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n 次测温</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thermocouple(s) in common</source>
        <translation>
            <numerusform>%n 个共同的热电偶</numerusform>
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
        <translation>由热到冷，峰值 %1</translation>
    </message>
    <message>
        <source>At %1 s</source>
        <translation>第 %1 s</translation>
    </message>
    <message>
        <source>At %1 s, zone %2, %3 mm</source>
        <translation>第 %1 s，温区 %2，%3 mm</translation>
    </message>
    <message>
        <source>At %1 s, %2 mm</source>
        <translation>第 %1 s，%2 mm</translation>
    </message>
    <message>
        <source>Predicted peak, %1</source>
        <translation>预测峰值，%1</translation>
    </message>
    <message>
        <source>error band, 95 %</source>
        <translation>误差带，95 %</translation>
    </message>
</context>
<context>
    <name>DropFrame</name>
    <message numerus="yes">
        <source>Drop to read %n log(s)</source>
        <translation>
            <numerusform>放开以读取 %n 个记录</numerusform>
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
            <numerusform>%n 次测温各一</numerusform>
        </translation>
    </message>
    <message>
        <source>mean and ± 3 s</source>
        <translation>平均与 ± 3 s</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>平均</translation>
    </message>
    <message>
        <source>95 % of runs, with 95 % confidence</source>
        <translation>95 % 的测温，置信水平 95 %</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % 的测温</translation>
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
        <translation>移动极差</translation>
    </message>
    <message>
        <source>Range in the subgroup</source>
        <translation>子组极差</translation>
    </message>
    <message>
        <source>Standard deviation in the subgroup</source>
        <translation>子组标准差</translation>
    </message>
    <message>
        <source>Mean of the subgroup</source>
        <translation>子组平均</translation>
    </message>
    <message>
        <source>Weighted moving average (EWMA)</source>
        <translation>加权移动平均 (EWMA)</translation>
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
        <translation>全部 %1 次测温</translation>
    </message>
    <message>
        <source>no board</source>
        <translation>无电路板</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>board, revision of the window</comment>
        <translation>%1，版次 %2</translation>
    </message>
    <message>
        <source>Western Electric rules</source>
        <translation>Western Electric 规则</translation>
    </message>
    <message>
        <source>Nelson rules</source>
        <translation>Nelson 规则</translation>
    </message>
    <message numerus="yes">
        <source>%1: such a chart takes two subgroups of %n runs.</source>
        <translation>
            <numerusform>%1：此图需要两个各 %n 次测温的子组。</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: a control chart takes two runs with a value.</source>
        <translation>%1：控制图需要两次有数值的测温。</translation>
    </message>
    <message numerus="yes">
        <source>%1: the weighted average stays within its limits over %n runs.</source>
        <translation>
            <numerusform>%1：%n 次测温的加权平均保持在界限内。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no signal in %n runs by the %2.</source>
        <translation>
            <numerusform>%1：依 %2，%n 次测温中没有信号。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已连续 %n 个子组高于中心线。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已连续 %n 个子组低于中心线。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已连续 %n 次测温高于中心线。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 自 %2 起已连续 %n 次测温低于中心线。</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 signals on %2: %3.</source>
        <translation>%1 于 %2 出现信号：%3。</translation>
    </message>
    <message numerus="yes">
        <source>%1 signals, last on %2: %3; %n signals in all.</source>
        <translation>
            <numerusform>%1 出现信号，最近于 %2：%3；共 %n 个信号。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are few: whether the values are normal does not show, and the limits of the index are wide.</source>
        <translation>
            <numerusform>%n 次测温偏少：无法看出数值是否为正态，指数的区间也较宽。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) without a value</source>
        <translation>
            <numerusform>%n 次测温没有数值</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) with a bound only</source>
        <translation>
            <numerusform>%n 次测温只有界值</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>an index takes %n runs</source>
        <translation>
            <numerusform>指数需要 %n 次测温</numerusform>
        </translation>
    </message>
    <message>
        <source>a count is not normally distributed</source>
        <translation>计数并非正态分布</translation>
    </message>
    <message>
        <source>no limit is known, or the limits changed</source>
        <translation>没有已知界限，或界限已更改</translation>
    </message>
    <message>
        <source>all values are equal</source>
        <translation>所有数值相同</translation>
    </message>
    <message>
        <source>No index: %1.</source>
        <translation>没有指数：%1。</translation>
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
        <translation>测温次数</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>平均</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>标准差</translation>
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
        <translation>依%1的信号，位于使其成立的测温</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) measured by another definition, which has an entry of its own.</source>
        <translation>
            <numerusform>%n 次测温以其他定义测量，另有项目。</numerusform>
        </translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <comment>tolerance interval</comment>
        <translation>95 % 的测温</translation>
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
        <translation>没有模型符合这份记录</translation>
    </message>
    <message>
        <source>the log does not follow this oven and recipe (misfit %1 °C): check that recipe, speed, oven and entry belong to this log</source>
        <translation>记录与这台炉和配方不符（偏差 %1 °C）：请确认配方、速度、炉和入炉时刻属于这份记录</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C hotter than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>温区 %1 似乎比设定值高 %2 °C：请检查配方、温区及其热电偶</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C colder than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>温区 %1 似乎比设定值低 %2 °C：请检查配方、温区及其热电偶</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zone %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>记录在温区 %1 与这份配方不符：请确认配方和炉属于这份记录，且设定值没有调换</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zones %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>记录在温区 %1 与这份配方不符：请确认配方和炉属于这份记录，且设定值没有调换</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s later than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>曲线显示入炉比给定时刻晚 %1 s ± %2 s：请检查入炉时刻、速度和炉的入口长度</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s earlier than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>曲线显示入炉比给定时刻早 %1 s ± %2 s：请检查入炉时刻、速度和炉的入口长度</translation>
    </message>
    <message>
        <source>no thermocouple rises above %1 °C: the log does not show a board going through an oven</source>
        <translation>没有热电偶升到 %1 °C 以上：记录没有显示电路板过炉</translation>
    </message>
    <message>
        <source>the log ends %1 s before the board has left zone %2 by this recipe&apos;s speed: check the speed, the entry and the oven, or log until the board has cooled</source>
        <translation>按这份配方的速度，记录在电路板离开温区 %2 之前 %1 s 就结束了：请检查速度、入炉时刻和炉，或记录到电路板冷却为止</translation>
    </message>
    <message>
        <source>the log ends at %1 °C: how the board cools is little known; log until it has cooled</source>
        <translation>记录在 %1 °C 结束：电路板如何冷却所知甚少；请记录到冷却为止</translation>
    </message>
    <message>
        <source>%1 follows the air: its bead may be detached, or it belongs to kind &quot;air&quot;</source>
        <translation>%1 随空气变化：测点可能脱落，或属于“空气”类</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows it down is not known from this log</source>
        <translation>%1 未达 %2 °C：这份记录看不出熔化使其升温减慢多少</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows them down is not known from this log</source>
        <translation>%1 均未达 %2 °C：这份记录看不出熔化使其升温减慢多少</translation>
    </message>
    <message>
        <source>every thermocouple follows the air, so nothing is known of a board: check that the beads are attached</source>
        <translation>所有热电偶都随空气变化，因此对电路板一无所知：请检查测点是否固定</translation>
    </message>
    <message>
        <source>one thermocouple only: what is predicted holds for its place, not for the hottest and coldest of the board</source>
        <translation>只有一个热电偶：预测只对其位置有效，不代表电路板最热和最冷处</translation>
    </message>
    <message>
        <source>%1 is %2 mm long, so it lies in several zones at once (zone %3 has %4 mm): each of its places is predicted by itself, and the confirming run has to show them all</source>
        <translation>%1 长 %2 mm，因此同时位于多个温区（温区 %3 长 %4 mm）：各处分别预测，确认过炉时须全部量到</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % faster than the recipe&apos;s %3 mm/min, or zones so much shorter: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>曲线显示链带比配方的 %3 mm/min 快 %1 % ± %2 %，或温区相应较短：请检查速度、链带和炉文件中的温区长度</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % slower than the recipe&apos;s %3 mm/min, or zones so much longer: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>曲线显示链带比配方的 %3 mm/min 慢 %1 % ± %2 %，或温区相应较长：请检查速度、链带和炉文件中的温区长度</translation>
    </message>
    <message>
        <source>No suggestion: the window requires nothing that can be predicted for this board.</source>
        <translation>没有建议：工艺窗口对这块电路板没有任何可预测的要求。</translation>
    </message>
    <message>
        <source>No recipe was found that passes by the guarded rule of the window: what is suggested is inside the limits, and within its uncertainty of one.</source>
        <translation>没有找到按保护带规则合格的配方：建议的配方在界限之内，但与某一界限的距离小于其不确定度。</translation>
    </message>
    <message>
        <source>Fastest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>最快：在目前配方附近没有找到能保留 %1 % 裕量的配方。</translation>
    </message>
    <message>
        <source>Coolest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>最低温：在目前配方附近没有找到能保留 %1 % 裕量的配方。</translation>
    </message>
    <message>
        <source>Fastest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>最快：没有找到能保留 %1 % 裕量的配方；最多为 %2 %。</translation>
    </message>
    <message>
        <source>Coolest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>最低温：没有找到能保留 %1 % 裕量的配方；最多为 %2 %。</translation>
    </message>
    <message>
        <source>Least change: no recipe closer to the present one was found that passes.</source>
        <translation>变更最少：没有找到更接近目前配方而合格的配方。</translation>
    </message>
    <message>
        <source>Fastest: none was found that passes about as likely as the other suggestions.</source>
        <translation>最快：没有找到合格概率与其他建议相近的配方。</translation>
    </message>
    <message>
        <source>Coolest: none was found that passes about as likely as the other suggestions.</source>
        <translation>最低温：没有找到合格概率与其他建议相近的配方。</translation>
    </message>
    <message>
        <source>Fastest: the present recipe is that already.</source>
        <translation>最快：目前的配方已是如此。</translation>
    </message>
    <message>
        <source>Coolest: the present recipe is that already.</source>
        <translation>最低温：目前的配方已是如此。</translation>
    </message>
    <message>
        <source>No next run is named: of the changes of recipe that were tried none is known to keep every body inside its limits and every peak below its upper limit.</source>
        <translation>未提出下一次过炉：在试过的配方变动中，没有一个确知能让每个元件本体都在界限内、每个峰值都低于其上限。</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Line %1, column %2: </source>
        <translation>第 %1 行，第 %2 列：</translation>
    </message>
    <message>
        <source>Line %1: </source>
        <translation>第 %1 行：</translation>
    </message>
    <message>
        <source>found “%1”, expected %2</source>
        <translation>读到“%1”，应为 %2</translation>
    </message>
    <message>
        <source>found %1, expected %2</source>
        <translation>读到%1，应为%2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>打开文件</translation>
    </message>
    <message>
        <source>Open its folder</source>
        <translation>打开所在文件夹</translation>
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
        <translation>分钟</translation>
    </message>
    <message>
        <source>clock m:s</source>
        <translation>时钟 分:秒</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>时钟 时:分:秒</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>日期和时间</translation>
    </message>
    <message>
        <source>serial days</source>
        <translation>序号日期</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>自 1970 年起的秒数</translation>
    </message>
    <message>
        <source>number of the row</source>
        <translation>数据的顺序</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>逗号</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>分号</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>制表符</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>直线</translation>
    </message>
    <message>
        <source>Blanks</source>
        <translation>空格</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>句点</translation>
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
        <translation>无</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>第 %1 行</translation>
    </message>
    <message>
        <source>Columns %1</source>
        <translation>第 %1 列</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>第 %1 列</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>As they stand</source>
        <translation>按原数值</translation>
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
        <translation>自动判定</translation>
    </message>
    <message>
        <source>Table %1</source>
        <translation>表格 %1</translation>
    </message>
    <message>
        <source>%1, %2 rows</source>
        <translation>%1，%2 行</translation>
    </message>
</context>
<context>
    <name>RecipeFile</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>changed from %1; a prediction, to be confirmed with an instrumented run</source>
        <translation>由 %1 变更；属于预测，须以实际测温确认</translation>
    </message>
</context>
<context>
    <name>RecipeLimits</name>
    <message>
        <source>The speed stays at %1: the oven goes no faster.</source>
        <translation>速度维持 %1：炉无法更快。</translation>
    </message>
    <message>
        <source>The speed stays at %1: the oven goes no slower.</source>
        <translation>速度维持 %1：炉无法更慢。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows a step of %3 to zone %4.</source>
        <translation>温区 %1 维持 %2：炉允许与温区 %4 相差 %3。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows %3 between top and bottom.</source>
        <translation>温区 %1 维持 %2：炉允许上下相差 %3。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no more.</source>
        <translation>温区 %1 维持 %2：炉不允许更高。</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no less.</source>
        <translation>温区 %1 维持 %2：炉不允许更低。</translation>
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
        <translation>尚未打开测温记录。结果会以一句话显示在这里。</translation>
    </message>
    <message>
        <source>Each part of it leads to the place on the curve, the limit and the oven zones it came from.</source>
        <translation>句中每一部分都可连到曲在线的位置、界限和相关温区。</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>正在读取 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n 则警告</numerusform>
        </translation>
    </message>
    <message>
        <source>The numbers are no run in the unit that the file states.</source>
        <translation>按文件注明的单位，数值不像过炉。</translation>
    </message>
    <message>
        <source>The file holds several tables: one was chosen.</source>
        <translation>文件含有多个表格：已选取其中一个。</translation>
    </message>
    <message>
        <source>The unit was assumed in reading the log.</source>
        <translation>读取时单位为假定。</translation>
    </message>
    <message>
        <source>The time was assumed in reading the log.</source>
        <translation>读取时时间为假定。</translation>
    </message>
    <message>
        <source>The order of the date was assumed in reading the log.</source>
        <translation>读取时日期顺序为假定。</translation>
    </message>
    <message>
        <source>The decimal sign was assumed in reading the log.</source>
        <translation>读取时小数符号为假定。</translation>
    </message>
    <message>
        <source>The type of thermocouple was assumed in reading the log.</source>
        <translation>读取时热电偶类型为假定。</translation>
    </message>
    <message>
        <source>The cold junction was assumed in reading the log.</source>
        <translation>读取时冷端温度为假定。</translation>
    </message>
    <message>
        <source>Something was assumed in reading the log.</source>
        <translation>读取时有假定之处。</translation>
    </message>
    <message numerus="yes">
        <source>%1 rows in %n channel(s).</source>
        <translation>
            <numerusform>%n 个通道共 %1 行。</numerusform>
        </translation>
    </message>
    <message>
        <source>Times count from oven entry, %1 s after the first row.</source>
        <translation>时间自进炉起算，即第一行之后 %1 s。</translation>
    </message>
    <message>
        <source>Nothing has been changed in the file. Corrections take effect at once and can be undone.</source>
        <translation>文件未作任何更动。更正立即生效，也可撤销。</translation>
    </message>
    <message>
        <source>A thermocouple was turned round in reading the log.</source>
        <translation>读取时有一支热电偶被反转。</translation>
    </message>
    <message>
        <source>The encoding was assumed in reading the log.</source>
        <translation>读取时编码为假定。</translation>
    </message>
    <message>
        <source>The scale of the numbers was assumed in reading the log.</source>
        <translation>读取时数字的倍率为假定。</translation>
    </message>
    <message>
        <source>Reading %1: %2 rows so far.</source>
        <translation>正在读取 %1：当前 %2 行。</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>s from oven entry</source>
        <translation>s（自进炉）</translation>
    </message>
    <message>
        <source>s on the log&apos;s clock</source>
        <translation>s（记录的时钟）</translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>thermocouple %1</source>
        <translation>热电偶 %1</translation>
    </message>
    <message>
        <source>%1, instrument %2, U = 2u</source>
        <translation>%1，仪器 %2，U = 2u</translation>
    </message>
    <message>
        <source>found from the curves</source>
        <translation>由曲线找到</translation>
    </message>
    <message>
        <source>given</source>
        <translation>自行指定</translation>
    </message>
    <message>
        <source>%1 ± %2 s on the log&apos;s clock, %3</source>
        <translation>记录的时钟 %1 ± %2 s，%3</translation>
    </message>
    <message>
        <source>lower limit by part</source>
        <translation>下限依元件</translation>
    </message>
    <message>
        <source>upper limit by part</source>
        <translation>上限依元件</translation>
    </message>
    <message>
        <source>Guarded, w = U (ILAC-G8:09/2019)</source>
        <translation>采用保护带，w = U（ILAC-G8:09/2019）</translation>
    </message>
    <message>
        <source>Simple: inside the limits, limits included</source>
        <translation>简单：在界限内即可，含界限值</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>注意事项</translation>
    </message>
    <message>
        <source>A suggested or changed recipe is a prediction: a qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>建议或变更的配方属于预测：量产前须由合格人员以实际测温确认，且不得超出焊膏、元件、电路板与炉的额定值。</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>高温表面、运转中的传送带、助焊剂烟雾：现场安全规定、当地法规与原厂数据表优先于此处显示的任何内容。</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>随附的工艺窗口为一般值，请以焊膏的数据表为准。</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>工艺窗口</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1，假定</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>判定规则</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>不确定度</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>炉</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>序号</translation>
    </message>
    <message>
        <source>Operator</source>
        <translation>操作人员</translation>
    </message>
    <message>
        <source>Run at</source>
        <translation>测温时间</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>进炉时刻</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>存档编号</translation>
    </message>
    <message>
        <source>%1, number %2 of its chain</source>
        <translation>%1，链中第 %2 笔</translation>
    </message>
    <message>
        <source>Chain</source>
        <translation>存档链</translation>
    </message>
    <message>
        <source>%1; %2 bytes</source>
        <translation>%1；%2 位元组</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>批号 %1</translation>
    </message>
    <message>
        <source>Thermal profile</source>
        <translation>温度曲线</translation>
    </message>
    <message>
        <source>Thermal profile, %1</source>
        <translation>温度曲线，%1</translation>
    </message>
    <message>
        <source>Run %1 of %2 in the log</source>
        <translation>记录中第 %1 次（共 %2 次）</translation>
    </message>
    <message>
        <source>behind ± stands the expanded uncertainty U = 2u (about 95 %), from thermocouple, instrument, noise and sampling (JCGM 100). How a bead is attached, and how runs of the oven differ, is not in it.</source>
        <translation>± 之后为扩充不确定度 U = 2u（约 95 %），来自热电偶、仪器、噪声与采样（JCGM 100）。不含测点固定方式与各次过炉的差异。</translation>
    </message>
    <message>
        <source>Guarded</source>
        <translation>采用保护带</translation>
    </message>
    <message>
        <source>pass: clear of the limits by U or more; conditional: within U of a limit, inside (pass) or outside (fail); fail: outside by more than U.</source>
        <translation>合格：距界限 U 以上；有条件：距界限小于 U，在内（合格）或在外（不合格）；不合格：超出界限大于 U。</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>界限</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>来源</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>读取方式</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>假定</translation>
    </message>
    <message>
        <source>Faults, on the log’s clock</source>
        <translation>异常（记录的时钟）</translation>
    </message>
    <message>
        <source>%1 may be wrong: %2</source>
        <translation>%1 可能有误：%2</translation>
    </message>
    <message>
        <source>To note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>记录</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>检查者、日期</translation>
    </message>
    <message>
        <source>Released by, date</source>
        <translation>核准者、日期</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>附注</translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>温度对时间</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>界限图</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>第 %1 页，共 %2 页</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>热电偶</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>最小</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>裕量</translation>
    </message>
    <message>
        <source>On the next page</source>
        <translation>见下一页</translation>
    </message>
    <message>
        <source>Made %1 from the archive</source>
        <translation>%1 由存档制作</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>%1 制作</translation>
    </message>
    <message>
        <source>limit lanes</source>
        <translation>界限图</translation>
    </message>
    <message>
        <source>results by thermocouple</source>
        <translation>各热电偶结果</translation>
    </message>
    <message>
        <source>limits, sources and how the log was read</source>
        <translation>界限、来源与记录读取方式</translation>
    </message>
    <message>
        <source>%1, continued from page 1: %2</source>
        <translation>%1，续第 1 页：%2</translation>
    </message>
    <message>
        <source>Limits, sources and how the log was read</source>
        <translation>界限、来源与记录读取方式</translation>
    </message>
    <message>
        <source>%1 upper</source>
        <translation>%1 上限</translation>
    </message>
    <message>
        <source>%1 centre</source>
        <translation>%1 中线</translation>
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
        <translation>记录程序</translation>
    </message>
    <message>
        <source>Recorded verdict</source>
        <translation>记录的判定</translation>
    </message>
    <message>
        <source>%1; this sheet was judged anew</source>
        <translation>%1；本表为重新判定</translation>
    </message>
    <message numerus="yes">
        <source>%n different</source>
        <translation>
            <numerusform>%n 个不同值</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>全部 %n 次测温合格。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>%n 次测温中 %1 次合格。</numerusform>
        </translation>
    </message>
    <message>
        <source>Smallest margin %1</source>
        <translation>最小裕量 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n 次测温</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: run by run, the least capable of all</source>
        <translation>%1：逐次测温，能力最低的一项</translation>
    </message>
    <message>
        <source>Statistics</source>
        <translation>统计</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>测温</translation>
    </message>
    <message>
        <source>Statistics by requirement and placement</source>
        <translation>按要求与测点的统计</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>记录文件</translation>
    </message>
    <message>
        <source>Limits, sources and how the first log was read</source>
        <translation>界限、来源与第一个记录文件的读取方式</translation>
    </message>
    <message>
        <source>%1, run %2</source>
        <translation>%1，第 %2 次</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>测温</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕量</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>最小裕量所在</translation>
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
        <translation>标准差</translation>
    </message>
    <message>
        <source>Smallest, largest</source>
        <translation>最小、最大</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95 % 区间</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % 的测温</translation>
    </message>
    <message>
        <source>95 % confidence</source>
        <translation>95 % 置信</translation>
    </message>
    <message>
        <source>Signals</source>
        <translation>信号</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1，记录文件的时间</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1，按所给时间</translation>
    </message>
    <message>
        <source>Least capable: %1, Ppk %2 (95 % limits %3 to %4) over %5 runs.</source>
        <translation>能力最低：%1，Ppk %2（95 % 界限 %3 至 %4），共 %5 次测温。</translation>
    </message>
    <message>
        <source>The runs are few: what they show is uncertain.</source>
        <translation>测温次数少：所示结果不确定。</translation>
    </message>
    <message numerus="yes">
        <source>%n signals of the control charts.</source>
        <translation>
            <numerusform>控制图有 %n 个信号。</numerusform>
        </translation>
    </message>
    <message>
        <source>No index: it takes %1 runs at least.</source>
        <translation>无指数：至少需要 %1 次测温。</translation>
    </message>
    <message>
        <source>%1 of %2 results have no index, as a value or a limit is missing or all values are equal.</source>
        <translation>%2 项结果中有 %1 项没有指数，因为缺少数值或限值，或所有数值相同。</translation>
    </message>
    <message>
        <source>Not measured alike in all runs, with a row for each definition: %1.</source>
        <translation>并非每次都以相同方式测量，每种定义各占一行：%1。</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n records, head %2</source>
        <translation>
            <numerusform>%1：%n 笔，链首 %2</numerusform>
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
        <translation>比较</translation>
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
        <translation>± 为差值的扩展不确定度 U = 2u（约 95 %）。两次视为使用相同的热电偶和仪器（通道与电路板同名），其误差在差值中抵消。炉子各次之间的差异不包含在内。</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty U = 2u of the difference (about 95 %), with the errors of the thermocouples and the instrument of both runs. How runs of the oven differ is not in it.</source>
        <translation>± 为差值的扩展不确定度 U = 2u（约 95 %），包含两次的热电偶和仪器误差。炉子各次之间的差异不包含在内。</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>差值</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>裕量较大</translation>
    </message>
    <message>
        <source>neither, where the margins differ by less than their uncertainty.</source>
        <translation>裕量之差小于其不确定度时，两者皆否。</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1，按记录文件内的时钟</translation>
    </message>
    <message>
        <source>of the means of the runs. ± is the half width of the 95 % interval of two samples (Welch), from the scatter of the runs; n says how many values stand behind each side. Errors that all runs of a group share, such as those of its thermocouples, are not in it. In the lanes a mark is a mean, a thin tick a run, a longer one a run that is out.</source>
        <translation>各次平均之差。± 为两样本（Welch）95 % 区间的半宽，来自各次之间的离散；n 为每边的数值个数。一组中各次共有的误差（例如其热电偶的误差）不包含在内。在轨道中，标记为平均，细线为一次测温，较长者为超限的一次。</translation>
    </message>
    <message>
        <source>Runs of A</source>
        <translation>A 的测温</translation>
    </message>
    <message>
        <source>Runs of B</source>
        <translation>B 的测温</translation>
    </message>
    <message>
        <source>Logs of A</source>
        <translation>A 的记录文件</translation>
    </message>
    <message>
        <source>Logs of B</source>
        <translation>B 的记录文件</translation>
    </message>
    <message>
        <source>by the means of the runs’ smallest margins; neither, where they differ by less than their interval.</source>
        <translation>依各次最小裕量的平均；相差小于其区间者，不分高下。</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <comment>letter of a group</comment>
        <translation>%1 第 %2 次</translation>
    </message>
    <message>
        <source>what the differences hold</source>
        <translation>差异所含的内容</translation>
    </message>
    <message>
        <source>runs and logs of both groups</source>
        <translation>两组的测温与记录文件</translation>
    </message>
    <message>
        <source>margin, %1</source>
        <comment>of a run</comment>
        <translation>裕量，%1</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>第 %1 次</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>第 %1 次测温</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>记录</translation>
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
        <translation>%1 的曲线</translation>
    </message>
</context>
<context>
    <name>Thermocouple</name>
    <message>
        <source>%1 class 1</source>
        <translation>%1 型 1 级</translation>
    </message>
    <message>
        <source>%1 class 2</source>
        <translation>%1 型 2 级</translation>
    </message>
    <message>
        <source>%1 special</source>
        <comment>tolerance</comment>
        <translation>%1 型特殊级</translation>
    </message>
    <message>
        <source>%1 standard</source>
        <comment>tolerance</comment>
        <translation>%1 型标准级</translation>
    </message>
</context>
<context>
    <name>Tune</name>
    <message>
        <source>Smallest margin</source>
        <translation>最小裕量</translation>
    </message>
    <message>
        <source>, now %1</source>
        <translation>，当前 %1</translation>
    </message>
    <message>
        <source>The recipe is the one that was run.</source>
        <translation>配方与实际使用的相同。</translation>
    </message>
    <message>
        <source>Tune needs the oven and the recipe of this run.</source>
        <translation>调整需要此次测温的炉和配方。</translation>
    </message>
    <message>
        <source>From them and the curves it learns how this board heats.</source>
        <translation>由此和曲线学习这块板子如何受热。</translation>
    </message>
    <message>
        <source>Choose an oven and recipe</source>
        <translation>选择炉和配方</translation>
    </message>
    <message>
        <source>Tune needs the moment when the board entered the oven.</source>
        <translation>调整需要板子进炉的时刻。</translation>
    </message>
    <message>
        <source>The curves do not show it.</source>
        <translation>曲在线看不出来。</translation>
    </message>
    <message>
        <source>Say when the board entered</source>
        <translation>指定进炉时刻</translation>
    </message>
    <message>
        <source>Choose another oven and recipe</source>
        <translation>选择其他炉和配方</translation>
    </message>
    <message>
        <source>Learning how this board heats in this oven.</source>
        <translation>正在学习这块板子在此炉中如何受热。</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Learning was stopped.</source>
        <translation>学习已停止。</translation>
    </message>
    <message>
        <source>Learn again</source>
        <translation>重新学习</translation>
    </message>
    <message>
        <source>This run cannot be learned from.</source>
        <translation>无法由此次测温学习。</translation>
    </message>
    <message>
        <source>The model does not fit this run, so nothing is predicted or suggested.</source>
        <translation>模型与此次测温不符，因此不作预测或建议。</translation>
    </message>
    <message>
        <source>Predicting.</source>
        <translation>正在预测。</translation>
    </message>
    <message>
        <source>Least change</source>
        <translation>变更最少</translation>
    </message>
    <message>
        <source>Most margin</source>
        <translation>裕量最大</translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation>最快</translation>
    </message>
    <message>
        <source>Coolest</source>
        <translation>最低温</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>two aims that come to one recipe</comment>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>Zone %1  %2</source>
        <translation>温区 %1  %2</translation>
    </message>
    <message>
        <source>Zone %1 top  %2</source>
        <translation>温区 %1 上  %2</translation>
    </message>
    <message>
        <source>Zone %1 bottom  %2</source>
        <translation>温区 %1 下  %2</translation>
    </message>
    <message>
        <source>Zones %1–%2  %3</source>
        <translation>温区 %1–%2  %3</translation>
    </message>
    <message numerus="yes">
        <source>%n zones</source>
        <translation>
            <numerusform>%n 个温区</numerusform>
        </translation>
    </message>
    <message>
        <source>zone %1 %2</source>
        <translation>温区 %1 %2</translation>
    </message>
    <message>
        <source>speed %1</source>
        <translation>速度 %1</translation>
    </message>
    <message>
        <source>cooling</source>
        <translation>冷却</translation>
    </message>
    <message>
        <source>as it was run</source>
        <translation>与实际相同</translation>
    </message>
    <message>
        <source>%1 more boards an hour</source>
        <translation>每小时多 %1 片</translation>
    </message>
    <message>
        <source>%1 fewer boards an hour</source>
        <translation>每小时少 %1 片</translation>
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
        <translation>合格概率 %1</translation>
    </message>
    <message>
        <source>A qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>量产前须由合格人员以实际测温确认，且不得超出焊膏、元件、电路板与炉的额定值。</translation>
    </message>
    <message>
        <source>Suggested setpoints are predictions: a qualified person confirms them with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>建议的设定温度属于预测：量产前须由合格人员以实际测温确认，且不得超出焊膏、元件、电路板与炉的额定值。</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>高温表面、运转中的传送带、助焊剂烟雾：现场安全规定、当地法规与原厂数据表优先于此处显示的任何内容。</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>随附的工艺窗口为一般值，请以焊膏的数据表为准。</translation>
    </message>
    <message>
        <source>The errors of one board’s traces are mostly one error: if one reads high, all may.</source>
        <translation>同一块板各曲线的误差多半是同一个误差：一条偏高，可能全都偏高。</translation>
    </message>
    <message>
        <source>the board</source>
        <translation>整板</translation>
    </message>
    <message>
        <source>%1 at %2: its upper limit alone would have to give %3</source>
        <translation>%2 的 %1：单就上限须放宽 %3</translation>
    </message>
    <message>
        <source>%1 at %2: its lower limit alone would have to give %3</source>
        <translation>%2 的 %1：单就下限须放宽 %3</translation>
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
        <translation>以此配方再测一次，预期可将 %1 的不确定范围由 ± %2 缩小到 ± %3。</translation>
    </message>
    <message>
        <source>A run with %1 is expected to narrow the doubt about %2 from ± %3 to ± %4.</source>
        <translation>以 %1 测一次，预期可将 %2 的不确定范围由 ± %3 缩小到 ± %4。</translation>
    </message>
    <message>
        <source>The peaks of %1 and %2 are %3 apart at the best recipe, and the window leaves %4: that is more than setpoints and speed can bring together.</source>
        <translation>在最佳配方下，%1 与 %2 的峰值相差 %3，而窗口只容 %4：设定温度与速度无法拉近到这个程度。</translation>
    </message>
    <message>
        <source>chance unknown: the log ends hot</source>
        <translation>概率未知：记录结束时仍热</translation>
    </message>
    <message>
        <source>No recipe of this oven is predicted to hold every requirement: the best margin that the model finds is %1, and its error does not rule a pass out.</source>
        <translation>预测此炉没有配方能满足全部要求：模型找到的最佳裕量为 %1，但其误差不排除合格的可能。</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>超过 99 %</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>低于 1 %</translation>
    </message>
    <message>
        <source>chance of passing %1, of staying inside the limits %2</source>
        <translation>合格概率 %1，落在限值内的概率 %2</translation>
    </message>
    <message>
        <source>chance %1</source>
        <translation>概率 %1</translation>
    </message>
    <message>
        <source>chance %1, inside limits %2</source>
        <translation>概率 %1，限值内 %2</translation>
    </message>
    <message>
        <source>It is not sure to pass: of those found it is the likeliest.</source>
        <translation>不一定会合格：这是所找到的配方中最可能合格的。</translation>
    </message>
    <message>
        <source>The next run worth making stands below.</source>
        <translation>下方列出最值得进行的下一次测温。</translation>
    </message>
    <message>
        <source>No recipe of this oven holds every requirement: the best margin that the model finds is %1, and its error leaves no room for a pass.</source>
        <translation>这台炉没有任何配方能满足所有要求：模型找到的最佳裕量为 %1，其误差也不足以使之合格。</translation>
    </message>
    <message>
        <source>zones %1 cooler on average</source>
        <translation>温区平均低 %1</translation>
    </message>
    <message>
        <source>This recipe was not predicted.</source>
        <translation>未能预测此配方。</translation>
    </message>
</context>
<context>
    <name>TypedNumber</name>
    <message>
        <source>“%1” is no number</source>
        <translation>“%1”不是数字</translation>
    </message>
</context>
<context>
    <name>WindowEditor</name>
    <message>
        <source>“%1” is no limit: expected a number, or Tc, Tc-5</source>
        <translation>“%1”不是界限：应为数字，或 Tc、Tc-5</translation>
    </message>
    <message>
        <source>“%1” is no parameter: expected a name, = and a value</source>
        <translation>“%1”不是参数：应为名称、= 和值</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>测量项目</translation>
    </message>
    <message>
        <source>Parameters</source>
        <translation>参数</translation>
    </message>
    <message>
        <source>Applies to</source>
        <translation>适用于</translation>
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
        <translation>目标</translation>
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
        <translation>来源</translation>
    </message>
    <message>
        <source>“%1” is no measure</source>
        <translation>“%1”不是测量项目</translation>
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
        <translation>温区 %1</translation>
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
        <translation>无设定温度</translation>
    </message>
    <message>
        <source>result %1 traces here</source>
        <translation>结果 %1 源自这里</translation>
    </message>
    <message>
        <source>a result that is out traces here</source>
        <translation>有超限结果源自这里</translation>
    </message>
    <message>
        <source>into the oven</source>
        <translation>进炉方向</translation>
    </message>
    <message>
        <source>%1 × %2 mm</source>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>front rail</source>
        <translation>前轨</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>依元件</translation>
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
        <translation>仅供参考</translation>
    </message>
    <message>
        <source>cannot pass as guarded</source>
        <translation>采用保护带时不可能合格</translation>
    </message>
    <message>
        <source>board</source>
        <translation>整板</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕量</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>数值</translation>
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
        <translation>裕量 %1</translation>
    </message>
    <message>
        <source>Smallest margin</source>
        <translation>最小裕量</translation>
    </message>
    <message numerus="yes">
        <source>%n pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 项合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 项有条件合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 项有条件不合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 项不合格</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n undetermined</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n 项无法判定</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Smallest margin of the other %n</source>
        <comment>results that have a value</comment>
        <translation>
            <numerusform>其余 %n 项的最小裕量</numerusform>
        </translation>
    </message>
    <message>
        <source>1 informative result over its limit</source>
        <translation>1 项参考结果超出界限</translation>
    </message>
    <message numerus="yes">
        <source>%n informative results over their limits</source>
        <translation>
            <numerusform>%n 项参考结果超出界限</numerusform>
        </translation>
    </message>
    <message>
        <source>Result %1: </source>
        <comment>read aloud before a problem</comment>
        <translation>结果 %1：</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>未到达</translation>
    </message>
    <message>
        <source>undetermined</source>
        <translation>无法判定</translation>
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
        <translation>长 %1</translation>
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
        <translation>有条件合格</translation>
    </message>
    <message>
        <source>conditional fail</source>
        <translation>有条件不合格</translation>
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
        <translation>有条件合格</translation>
    </message>
    <message>
        <source>Undetermined</source>
        <translation>无法判定</translation>
    </message>
    <message>
        <source>Conditional fail</source>
        <translation>有条件不合格</translation>
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
        <translation>距 %2 在 %1 以内</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>%1 以内</translation>
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
        <translation>%1 mm 处</translation>
    </message>
    <message>
        <source>end of zone %1</source>
        <translation>温区 %1 末端</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>requirement, placement: value</comment>
        <translation>%1，%2：%3</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>裕量 %1</translation>
    </message>
    <message>
        <source>minus </source>
        <comment>read aloud before a number</comment>
        <translation>负 </translation>
    </message>
    <message>
        <source>limits %1 to %2</source>
        <translation>界限 %1 至 %2</translation>
    </message>
    <message>
        <source>at least %1 allowed</source>
        <translation>允许至少 %1</translation>
    </message>
    <message>
        <source>at most %1 allowed</source>
        <translation>允许最多 %1</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>无界限</translation>
    </message>
    <message>
        <source>%1 plus or minus %2</source>
        <translation>%1 正负 %2</translation>
    </message>
    <message>
        <source>%1 percent</source>
        <translation>百分之 %1</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>温区</translation>
    </message>
    <message>
        <source>Choose an oven and recipe to see the zones</source>
        <translation>选择炉和配方即可看到温区</translation>
    </message>
    <message>
        <source>Say when the board entered the oven to see the zones</source>
        <translation>指定板子进炉的时刻即可看到温区</translation>
    </message>
    <message>
        <source>Times as met</source>
        <translation>时间依</translation>
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
        <translation>板子前缘</translation>
    </message>
    <message>
        <source>now</source>
        <comment>the recipe that was run</comment>
        <translation>当前</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>当前 %1</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <translation>实测：%1</translation>
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
        <translation>B 减 A %1</translation>
    </message>
    <message>
        <source>same</source>
        <comment>neither of two has more margin</comment>
        <translation>相同</translation>
    </message>
    <message>
        <source>more margin</source>
        <translation>裕量较大</translation>
    </message>
    <message>
        <source>A, smallest margin</source>
        <translation>A，最小裕量</translation>
    </message>
    <message>
        <source>B, smallest margin</source>
        <translation>B，最小裕量</translation>
    </message>
    <message>
        <source>Largest change, A to B</source>
        <translation>最大变化，A 到 B</translation>
    </message>
    <message>
        <source>Set, %1</source>
        <comment>setpoints, with their unit</comment>
        <translation>设定，%1</translation>
    </message>
    <message>
        <source>no run has a value</source>
        <translation>没有一次有数值</translation>
    </message>
    <message numerus="yes">
        <source>%1 in the mean of %n runs</source>
        <translation>
            <numerusform>%n 次的平均为 %1</numerusform>
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
        <translation>A，平均裕量</translation>
    </message>
    <message>
        <source>B, mean margin</source>
        <translation>B，平均裕量</translation>
    </message>
    <message>
        <source>Not all of these runs had the same recipe, so no zones stand here</source>
        <translation>这些测温并非都用同一配方，因此此处不列温区</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A，裕量</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B，裕量</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Shows a thermocouple log and whether it stayed inside its process window.</source>
        <translation>显示热电偶记录，以及它是否保持在工艺窗口内。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ArchivePicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>比较(&amp;C)</translation>
    </message>
    <message>
        <source>Runs of the archive</source>
        <translation>存档中的各次</translation>
    </message>
    <message>
        <source>Lot, board or words</source>
        <translation>批次、电路板或文字</translation>
    </message>
    <message>
        <source>Find runs by lot, board or words</source>
        <translation>以批次、电路板或文字查找</translation>
    </message>
    <message>
        <source>No run of the archive has these words.</source>
        <translation>存档中没有符合的项目。</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are marked: %1 at most.</source>
        <translation>
            <numerusform>已标记 %n 次：至多 %1 次。</numerusform>
        </translation>
    </message>
    <message>
        <source>The chosen run becomes B. Space marks: of two marked runs the older becomes A; more are put into two groups.</source>
        <translation>选取者成为 B。空格键标记：标记两次时，较早者为 A；更多则分为两组。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChannelsPanel</name>
    <message>
        <source>Joint</source>
        <translation>焊点</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>本体</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>空气</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>开路</translation>
    </message>
    <message>
        <source>Over range</source>
        <translation>超出量程</translation>
    </message>
    <message>
        <source>Dropout</source>
        <translation>丢失信号</translation>
    </message>
    <message>
        <source>Spike</source>
        <translation>尖峰</translation>
    </message>
    <message>
        <source>Stuck</source>
        <translation>读数卡住</translation>
    </message>
    <message>
        <source>Reversed polarity</source>
        <translation>极性接反</translation>
    </message>
    <message>
        <source>Detached, suspected</source>
        <translation>疑似脱落</translation>
    </message>
    <message>
        <source>Swapped placement, suspected</source>
        <translation>疑似测点接错</translation>
    </message>
    <message>
        <source>Cold-junction step</source>
        <translation>冷端跳变</translation>
    </message>
    <message>
        <source>Gap in time</source>
        <translation>时间中断</translation>
    </message>
    <message>
        <source>Time going back</source>
        <translation>时间倒退</translation>
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
        <translation>记录中</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>测点</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>类型</translation>
    </message>
    <message>
        <source>Course (dotted: oven entry)</source>
        <translation>曲线（点线：进炉）</translation>
    </message>
    <message>
        <source>Range, %1</source>
        <translation>范围，%1</translation>
    </message>
    <message>
        <source>Fault found, and what was done</source>
        <translation>发现的异常与处理</translation>
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
        <translation>%1 的测点</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Choose a board</source>
        <translation>选择电路板</translation>
    </message>
    <message>
        <source>Choose a board for %1</source>
        <translation>为 %1 选择电路板</translation>
    </message>
    <message>
        <source>Kind of %1</source>
        <translation>%1 的类型</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>没有读数</translation>
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
        <translation>已标记，数值与文件相同</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>显示</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>保留</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>另有 %n 项</numerusform>
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
        <translation>指定 %1 的测点</translation>
    </message>
    <message>
        <source>Placements of this log</source>
        <translation>此记录的测点</translation>
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
            <numerusform>%n 个采样点</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Turn its sign</source>
        <translation>反转正负号</translation>
    </message>
    <message>
        <source>Its sign is turned</source>
        <translation>正负号已反转</translation>
    </message>
    <message>
        <source>As in the file</source>
        <translation>按文件原样</translation>
    </message>
    <message>
        <source>Turn the sign of %1</source>
        <translation>反转 %1 的正负号</translation>
    </message>
    <message>
        <source>%1 as in the file</source>
        <translation>%1 按文件原样</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CheckPage</name>
    <message>
        <source>Each mark is a thermocouple, hottest on top. Whisker: ± U. Dotted: guard band.</source>
        <translation>每个标记为一支热电偶，最热在上。横线：± U。点区：保护带。</translation>
    </message>
    <message>
        <source>&amp;Limit lanes</source>
        <translation>界限图(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Table</source>
        <translation>表格(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>电路板(&amp;B)</translation>
    </message>
    <message>
        <source>Limit lanes, table, board</source>
        <translation>界限图、表格、电路板</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>筛选</translation>
    </message>
    <message>
        <source>Filter the table</source>
        <translation>筛选表格</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>这个数值如何得出</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>显示(&amp;S)</translation>
    </message>
    <message>
        <source>Requirement shown on the board</source>
        <translation>在电路板上显示的要求</translation>
    </message>
    <message numerus="yes">
        <source>Temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>温度对时间，%n 支热电偶</numerusform>
        </translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>温度对时间</translation>
    </message>
    <message>
        <source>C&amp;urves</source>
        <translation>曲线(&amp;U)</translation>
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
        <translation>测温(&amp;R)</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>测温</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>工艺窗口</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>炉和配方</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>打开记录(&amp;O)…</translation>
    </message>
    <message>
        <source>&amp;Close %1</source>
        <translation>关闭 %1(&amp;C)</translation>
    </message>
    <message>
        <source>None open</source>
        <translation>未打开</translation>
    </message>
    <message>
        <source>None</source>
        <translation>无</translation>
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
        <translation>曲在线的位置</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareBar</name>
    <message>
        <source>S&amp;wap</source>
        <translation>互换(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Add a run…</source>
        <translation>添加一次(&amp;A)…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>打印(&amp;P)…</translation>
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
        <translation>工艺窗口</translation>
    </message>
    <message>
        <source>Line up at</source>
        <translation>对齐于</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>曲线</translation>
    </message>
    <message>
        <source>Level to line up at</source>
        <translation>对齐的温度</translation>
    </message>
    <message>
        <source>A becomes B, and B becomes A</source>
        <translation>A 变 B，B 变 A</translation>
    </message>
    <message>
        <source>The sheet of this comparison</source>
        <translation>此比较的报告单</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a run and its verdict</comment>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>those of A</source>
        <translation>A 的工艺窗口</translation>
    </message>
    <message>
        <source>Compare against %1</source>
        <translation>以 %1 比较</translation>
    </message>
    <message>
        <source>As A was judged: %1</source>
        <translation>与 A 的判定相同：%1</translation>
    </message>
    <message>
        <source>Line up at the oven entry</source>
        <translation>于进炉时对齐</translation>
    </message>
    <message>
        <source>Line up at a level</source>
        <translation>于某温度对齐</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>进炉</translation>
    </message>
    <message>
        <source>A level on the rise</source>
        <translation>升温中的某温度</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>并排</translation>
    </message>
    <message>
        <source>Curves side by side</source>
        <translation>曲线并排</translation>
    </message>
    <message>
        <source>Overlaid</source>
        <translation>重叠</translation>
    </message>
    <message>
        <source>Curves overlaid</source>
        <translation>曲线重叠</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no run</comment>
        <translation>无</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no window</comment>
        <translation>无</translation>
    </message>
    <message>
        <source>Level on the rise</source>
        <translation>升温中的温度</translation>
    </message>
    <message>
        <source>%1 on the rise, no entry</source>
        <translation>升温至 %1，无进炉时刻</translation>
    </message>
    <message>
        <source>&amp;Several runs…</source>
        <translation>多次测温…(&amp;S)</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n 次测温</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1，版本 %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ComparePage</name>
    <message>
        <source>Zone strip of %1</source>
        <translation>%1 的温区条</translation>
    </message>
    <message>
        <source>Limit lanes, A over B</source>
        <translation>界限图，A 在 B 上</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple of each run.</source>
        <translation>每项要求一行，每次的每支热电偶一格。</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>打开记录…</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>添加一次…</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>看两个示范记录(&amp;D)</translation>
    </message>
    <message>
        <source>Compare needs two runs</source>
        <translation>比较需要两次测量</translation>
    </message>
    <message numerus="yes">
        <source>%1: temperature over time, %n thermocouples</source>
        <comment>letter of a run</comment>
        <translation>
            <numerusform>%1：温度对时间，%n 支热电偶</numerusform>
        </translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>以 A 的工艺窗口比较</translation>
    </message>
    <message>
        <source>Nothing is compared yet</source>
        <translation>尚未比较</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
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
        <translation>A，最小裕量位置</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A，裕量</translation>
    </message>
    <message>
        <source>A, verdict</source>
        <translation>A，判定</translation>
    </message>
    <message>
        <source>B, smallest margin at</source>
        <translation>B，最小裕量位置</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B，裕量</translation>
    </message>
    <message>
        <source>B, verdict</source>
        <translation>B，判定</translation>
    </message>
    <message>
        <source>Largest change at</source>
        <translation>最大变化位置</translation>
    </message>
    <message>
        <source>B − A</source>
        <translation>B − A</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>单位</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>裕量较大</translation>
    </message>
    <message>
        <source>Open two logs, or drop them here: the first is A, the second B. A log with several passes is several runs. Curves, recipes and every requirement then stand side by side, with the uncertainty of each difference. Of more logs, or of runs marked in Lots, A and B may be groups.</source>
        <translation>打开两个记录，或拖放到此处：第一个为 A，第二个为 B。含多次通过的记录即为多次。曲线、配方和每项要求便会并排，并附每个差值的不确定度。若有更多记录，或在批次中标记的测温，A 与 B 也可以是组。</translation>
    </message>
    <message>
        <source>Values of A</source>
        <translation>A 的数值个数</translation>
    </message>
    <message>
        <source>Values of B</source>
        <translation>B 的数值个数</translation>
    </message>
    <message>
        <source>Compare: %1 and %2</source>
        <translation>比较：%1 与 %2</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比较</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareSession</name>
    <message>
        <source>Compare %1 as A</source>
        <translation>以 %1 为 A 比较</translation>
    </message>
    <message>
        <source>Compare %1 as B</source>
        <translation>以 %1 为 B 比较</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>互换 A 与 B</translation>
    </message>
    <message>
        <source>Compare with %1</source>
        <translation>与 %1 比较</translation>
    </message>
    <message>
        <source>Compare two groups</source>
        <translation>比较两组</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CurvePlot</name>
    <message>
        <source>s from oven entry</source>
        <translation>s（自进炉）</translation>
    </message>
    <message>
        <source>s on the log’s clock</source>
        <translation>s（记录的时钟）</translation>
    </message>
    <message>
        <source>%1: %2 %3 at %4 s (%5 s on the log’s clock)</source>
        <translation>%1：%2 %3，第 %4 s（记录的时钟 %5 s）</translation>
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
        <translation>日期，如 2026-01-05；按向下键打开日历。留空则不限日期。</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>日历</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::DerivationPanel</name>
    <message>
        <source>no limit on this side of the target %1</source>
        <translation>目标 %1 的这一侧没有界限</translation>
    </message>
    <message>
        <source>inside: %1</source>
        <translation>界限内：%1</translation>
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
        <translation>这个数值如何得出</translation>
    </message>
    <message>
        <source>Previous result</source>
        <translation>上一个结果</translation>
    </message>
    <message>
        <source>Next result</source>
        <translation>下一个结果</translation>
    </message>
    <message>
        <source>Choose a mark in the limit lanes, a part of the sentence or a row of the table: its place on the curve, its limits and its arithmetic stand here.</source>
        <translation>请在界限图选一个标记、句中的一部分或表格的一行：这里会显示它在曲在线的位置、界限和计算。</translation>
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
        <translation>定义</translation>
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
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>Informative: it does not decide the verdict.</source>
        <translation>仅供参考：不影响判定。</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕量</translation>
    </message>
    <message>
        <source>Uncertainty, %1</source>
        <translation>不确定度，%1</translation>
    </message>
    <message>
        <source>Thermocouple %1</source>
        <translation>热电偶 %1</translation>
    </message>
    <message>
        <source>Instrument %1</source>
        <translation>仪器 %1</translation>
    </message>
    <message>
        <source>Noise of this trace</source>
        <translation>此曲线的噪声</translation>
    </message>
    <message>
        <source>Sampling</source>
        <translation>采样</translation>
    </message>
    <message>
        <source>Combined, then U = 2u</source>
        <translation>合成后 U = 2u</translation>
    </message>
    <message>
        <source>under 0.1 %</source>
        <translation>低于 0.1 %</translation>
    </message>
    <message>
        <source>over 99.9 %</source>
        <translation>高于 99.9 %</translation>
    </message>
    <message>
        <source>What being outside risks</source>
        <translation>超限的风险</translation>
    </message>
    <message>
        <source>Which zones set this result</source>
        <translation>哪些温区决定此结果</translation>
    </message>
    <message>
        <source>Other zones together</source>
        <translation>其他温区合计</translation>
    </message>
    <message>
        <source>Try a change in Tune</source>
        <translation>在“调整”中试改</translation>
    </message>
    <message>
        <source>Inside with probability</source>
        <translation>在界限内的概率</translation>
    </message>
    <message>
        <source>Rule: guarded, w = U</source>
        <translation>规则：采用保护带，w = U</translation>
    </message>
    <message>
        <source>Rule: simple</source>
        <translation>规则：简单</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Document</name>
    <message>
        <source>pasted text</source>
        <translation>粘贴的文字</translation>
    </message>
    <message>
        <source>Close %1</source>
        <translation>关闭 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::EmptyPage</name>
    <message>
        <source>Sketch of the result</source>
        <translation>结果示意图</translation>
    </message>
    <message>
        <source>Curves, zone strip and limit lanes stand here once a log is read.</source>
        <translation>读取记录后，这里会显示曲线、温区条和界限图。</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>曲线</translation>
    </message>
    <message>
        <source>The window’s bands stand behind them; stretches that are out are marked.</source>
        <translation>曲线后面是工艺窗口的区带；超限的部分会标出。</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>温区条</translation>
    </message>
    <message>
        <source>Where the board was at each moment.</source>
        <translation>板子在每一刻的位置。</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>界限图</translation>
    </message>
    <message>
        <source>Every requirement, every thermocouple, with both limits always in the same place.</source>
        <translation>每项要求、每支热电偶，上下限永远在同一位置。</translation>
    </message>
    <message>
        <source>The verdict rests on the thermocouples, the window and the placement you give it: a qualified person confirms it before production. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>判定取决于您提供的热电偶、工艺窗口和测点：量产前须由合格人员确认。高温表面、运转中的传送带、助焊剂烟雾：现场安全规定、当地法规与原厂数据表优先于此处显示的任何内容。</translation>
    </message>
    <message>
        <source>Drop a thermocouple log here</source>
        <translation>把热电偶记录拖放到这里</translation>
    </message>
    <message>
        <source>Any text log, workbook or HTML table: comma, semicolon, tab or fixed columns; °C or °F; decimal point or comma. The file is read as it is and never changed.</source>
        <translation>任何文字记录、工作簿或 HTML 表格：逗号、分号、制表符或固定列宽；°C 或 °F；小数点或小数逗号。文件照原样读取，绝不更动。</translation>
    </message>
    <message>
        <source>Open a log…</source>
        <translation>打开记录…</translation>
    </message>
    <message>
        <source>Paste a log</source>
        <translation>粘贴记录</translation>
    </message>
    <message>
        <source>Look at the demo run</source>
        <translation>看示范记录</translation>
    </message>
    <message>
        <source>It will be judged against</source>
        <translation>判定依据</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>工艺窗口</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general. The paste’s own data sheet is the authority.</source>
        <translation>随附的工艺窗口为一般值，请以焊膏的数据表为准。</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>炉和配方</translation>
    </message>
    <message>
        <source>Optional. Needed for the zone strip and for the zones behind a result.</source>
        <translation>选用。温区条与结果对应的温区需要它。</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
    </message>
    <message>
        <source>Optional. Says what each thermocouple sits on.</source>
        <translation>选用。说明每支热电偶的位置。</translation>
    </message>
    <message>
        <source>None chosen</source>
        <translation>未选择</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FiguresPane</name>
    <message>
        <source>Runs of</source>
        <translation>测温属于</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>测量项目</translation>
    </message>
    <message>
        <source>No limit to hold the runs against</source>
        <translation>没有可供比较的界限</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Control chart</source>
        <translation>控制图</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>趋势</translation>
    </message>
    <message>
        <source>Statistics of the runs</source>
        <translation>测温统计</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>图表</translation>
    </message>
    <message>
        <source>Kind of chart and rules</source>
        <translation>图表类型与规则</translation>
    </message>
    <message>
        <source>Loading the runs</source>
        <translation>正在加载测温</translation>
    </message>
    <message>
        <source>&amp;Individuals and moving range</source>
        <translation>单值与移动极差 (&amp;I)</translation>
    </message>
    <message>
        <source>X-bar and &amp;R</source>
        <translation>X-bar 与 R (&amp;R)</translation>
    </message>
    <message>
        <source>X-bar and &amp;S</source>
        <translation>X-bar 与 S (&amp;S)</translation>
    </message>
    <message>
        <source>&amp;EWMA</source>
        <translation>EWMA (&amp;E)</translation>
    </message>
    <message>
        <source>Runs in a s&amp;ubgroup</source>
        <translation>每个子组的测温次数 (&amp;U)</translation>
    </message>
    <message>
        <source>%1 of %2 runs</source>
        <translation>%1 / %2 次测温</translation>
    </message>
    <message>
        <source>The statistics cannot be worked out. %1</source>
        <translation>无法计算统计。%1</translation>
    </message>
    <message>
        <source>No run is listed to work statistics out from.</source>
        <translation>列表中没有可供统计的测温。</translation>
    </message>
    <message>
        <source>Only the newest %1 runs of the list count.</source>
        <translation>只计入列表中最新的 %1 次测温。</translation>
    </message>
    <message>
        <source>Trend of %1</source>
        <translation>%1 的趋势</translation>
    </message>
    <message>
        <source>Control chart of %1</source>
        <translation>%1 的控制图</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>温区</translation>
    </message>
    <message>
        <source>Trend of %1.</source>
        <translation>%1 的趋势。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileModel</name>
    <message numerus="yes">
        <source>%n row(s) more</source>
        <translation>
            <numerusform>另有 %n 行</numerusform>
        </translation>
    </message>
    <message>
        <source>Time</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>kept as such</source>
        <translation>仅保留</translation>
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
        <translation>文件内容</translation>
    </message>
    <message>
        <source>Press a heading to take its column for something else</source>
        <translation>按标题可改变该列的用途</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FilterBar</name>
    <message>
        <source>From</source>
        <translation>从</translation>
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
        <translation>导出表格 (&amp;X)…</translation>
    </message>
    <message>
        <source>any</source>
        <comment>lot</comment>
        <translation>不限</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>serial, log, operator…</source>
        <translation>序号、记录、操作员…</translation>
    </message>
    <message>
        <source>Words that stand anywhere in lot, serial number, board, oven, recipe, window, operator, log or record (Ctrl+F)</source>
        <translation>出现在批号、序号、电路板、炉、配方、工艺窗口、操作员、记录或记录任何位置的字词 (Ctrl+F)</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>查找</translation>
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
        <translation>超出工艺窗口</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>炉</translation>
    </message>
    <message>
        <source>to</source>
        <comment>a date</comment>
        <translation>至</translation>
    </message>
    <message>
        <source>Every run of the archive</source>
        <translation>存档的所有测温</translation>
    </message>
    <message>
        <source>All runs of the list as a CSV file</source>
        <translation>将列表所有测温存为 CSV 文件</translation>
    </message>
    <message>
        <source>All boards</source>
        <translation>所有电路板</translation>
    </message>
    <message>
        <source>All ovens</source>
        <translation>所有炉</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n 次测温</numerusform>
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
        <translation>批次报表</translation>
    </message>
    <message>
        <source>The panel at the right (F9)</source>
        <translation>右侧面板 (F9)</translation>
    </message>
    <message>
        <source>Co&amp;mpare</source>
        <translation>比较(&amp;M)</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::GroupPicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>比较(&amp;C)</translation>
    </message>
    <message>
        <source>Two groups of runs</source>
        <translation>两组测温</translation>
    </message>
    <message>
        <source>&amp;Divide by</source>
        <translation>分组依据(&amp;D)</translation>
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
        <translation>归入 A 的测温</translation>
    </message>
    <message>
        <source>Into B go the runs of</source>
        <translation>归入 B 的测温</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>测温</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>炉</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
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
        <translation>各次测温及其组别</translation>
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
        <translation>下方的勾选</translation>
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
        <translation>未注明</translation>
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
        <translation>每组至少需要一次。</translation>
    </message>
    <message>
        <source>An interval for the differences needs two on each side.</source>
        <translation>差异的区间需要每边至少两次。</translation>
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
        <translation>载入记录</translation>
    </message>
    <message>
        <source>Drop a file anywhere in the window, open it (Ctrl+O), or paste its text (Ctrl+Shift+V). It is read by its content; what was assumed stands in the status line and under Run, How the log was read, where it can be put right. The file itself is never changed.</source>
        <translation>把文件拖放到窗口任何位置、打开它（Ctrl+O）或粘贴其文字（Ctrl+Shift+V）。程序依内容读取；假定之处显示于状态行与“测温 &gt; 记录如何读取”，可在那里更正。文件本身绝不更动。</translation>
    </message>
    <message>
        <source>Sentence</source>
        <translation>结论句</translation>
    </message>
    <message>
        <source>The verdict first. Each underlined part leads to where it comes from: Tab goes through the parts, Enter follows one. F8 and Shift+F8 go to the next and previous result that is not a pass; Esc chooses nothing.</source>
        <translation>先看判定。每个底线部分都连到它的出处：Tab 逐一移动，Enter 前往。F8 与 Shift+F8 前往下一个、上一个未合格的结果；Esc 取消选择。</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>曲线</translation>
    </message>
    <message>
        <source>Bands are the window’s; a stretch with a halo and barbs went out of it. The cursor reads all curves at a time and the place in the oven. Wheel zooms time, Ctrl+wheel temperature, drag moves, double click shows the whole run. Keys: left and right one sample, with Ctrl one zone, with Shift the view; up and down another thermocouple; + − 0 zoom and whole run; Alt+1 to 9 show or hide a curve, hottest first.</source>
        <translation>区带来自工艺窗口；带光晕与短线的部分超出了窗口。光标读出同一时刻所有曲线与炉内位置。滚轮缩放时间，Ctrl+滚轮缩放温度，拖曳平移，连双击显示整段。按键：左右移一个采样点，加 Ctrl 移一个温区，加 Shift 平移；上下换热电偶；+ − 0 缩放与全部；Alt+1 到 9 显示或隐藏曲线，最热优先。</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>温区条</translation>
    </message>
    <message>
        <source>Where the board was at each moment, with top and bottom setpoints. Hatched: a result outside its limits traces back here with 10 % or more.</source>
        <translation>板子在每一刻的位置，以及上下设定温度。斜线：超限结果有 10 % 以上源自这里。</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>界限图</translation>
    </message>
    <message>
        <source>One lane for each requirement, both limits at the same places in all of them, so that the same distance is the same margin. A mark is a thermocouple, the whisker its ± U, dots the guard band. Up and down another lane, left and right another thermocouple, Home and End hottest and coldest, Enter how the number came about, Ctrl+C the row as text, Ctrl+Shift+C the picture.</source>
        <translation>每项要求一行，上下限位置全部对齐，因此距离相同即裕量相同。标记是热电偶，横线是 ± U，点区是保护带。上下换要求，左右换热电偶，Home 与 End 为最热与最冷，Enter 看数值如何得出，Ctrl+C 复制文字，Ctrl+Shift+C 复制图片。</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>表格</translation>
    </message>
    <message>
        <source>A click on a heading sorts. Ctrl+F filters. Ctrl+C copies the chosen rows, or all, with headings for a spreadsheet.</source>
        <translation>按标题可排序。Ctrl+F 筛选。Ctrl+C 将选取或全部数据连同标题复制到电子表格。</translation>
    </message>
    <message>
        <source>How the log was read</source>
        <translation>记录如何读取</translation>
    </message>
    <message>
        <source>Each line at the right was found in the file or assumed. Choose another reading and everything follows at once; Ctrl+Z takes it back. A reading can be kept for logs of the same shape.</source>
        <translation>右侧每一项都是在文件中找到或假定的。改选其他读法后立即生效；Ctrl+Z 撤销。读法可保留给相同格式的记录。</translation>
    </message>
    <message>
        <source>Editing a window</source>
        <translation>编辑工艺窗口</translation>
    </message>
    <message>
        <source>Limits are checked while they are typed and the run is judged anew. Saving makes a new revision in a new file; nothing is overwritten.</source>
        <translation>输入时即检查界限并重新判定。保存会在新文件建立新版本；不覆写任何内容。</translation>
    </message>
    <message>
        <source>Keys everywhere</source>
        <translation>通用按键</translation>
    </message>
    <message>
        <source>F6, Shift+F6 next and previous part · F9 panel at the right · Ctrl+Z, Ctrl+Shift+Z undo and redo · Ctrl+O open · Ctrl+Shift+V paste a log · Ctrl+W close the log · Ctrl+PgUp, Ctrl+PgDown previous and next run · F1 this help.</source>
        <translation>F6、Shift+F6 下一个、上一个部分 · F9 右侧面板 · Ctrl+Z、Ctrl+Shift+Z 撤销与重做 · Ctrl+O 打开 · Ctrl+Shift+V 粘贴记录 · Ctrl+W 关闭记录 · Ctrl+PgUp、Ctrl+PgDown 上一次、下一次测温 · F1 说明。</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>说明</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;Analyser for reflow thermal profiles. Free software under the GNU General Public License, version 3 or later; it comes without any warranty.&lt;/p&gt;&lt;p&gt;What it shows is computed from the log, the window and the placement you give it. A qualified person confirms every change of setpoints with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here. Windows shipped with the program are general; the paste’s own data sheet is the authority.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;回流焊温度曲线分析。自由软件，依 GNU 通用公共许可证第 3 版或更新版本发布；不附任何担保。&lt;/p&gt;&lt;p&gt;显示内容由您提供的记录、工艺窗口和测点计算而得。每次变更设定温度，量产前须由合格人员以实际测温确认，且不得超出焊膏、元件、电路板与炉的额定值。高温表面、运转中的传送带、助焊剂烟雾：现场安全规定、当地法规与原厂数据表优先于此处显示的任何内容。随附的工艺窗口为一般值，请以焊膏的数据表为准。&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>调整</translation>
    </message>
    <message>
        <source>The recipe that was run, to be changed: what the curves and lanes then show is predicted from how this board heats in this oven, with its error band. Type into a field, step with up and down (PgUp, PgDn by 5), turn the wheel, or drag up and down; Tab, left and right go from field to field, Del goes back to what was run, L parts top and bottom or ties them, Ctrl+L keeps a zone as it is in a search. Every edit can be undone. A suggestion is a prediction: a qualified person confirms it with an instrumented run.</source>
        <translation>实际使用的配方，可供变更：之后的曲线与界限图依此板在此炉中的受热情形预测，并附误差带。在字段输入、以上下键步进（PgUp、PgDn 每次 5）、转动滚轮或上下拖曳；Tab、左右键换字段，Del 回到实际使用值，L 分开或联动上下，Ctrl+L 搜寻时固定该温区。每次变更都可撤销。建议属于预测：须由合格人员以实际测温确认。</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
    </message>
    <message>
        <source>Where each thermocouple sits, with its result of the requirement that is chosen beside Show. Left and right, or up and down, go to another thermocouple, Enter shows how its number came about.</source>
        <translation>每支热电偶的位置，以及其在“显示”旁所选要求的结果。左右或上下键移到另一支热电偶，Enter 显示其数字的由来。</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>这个数值如何得出</translation>
    </message>
    <message>
        <source>The chosen result step by step: definition, limits with their source, margin, uncertainty by cause, the decision, and the zones that it traces back to. The arrows at the top go to the result before and after.</source>
        <translation>逐步说明所选结果：定义、界限及其来源、裕量、各项不确定度、判定，以及所追溯的温区。上方箭头移到前一个与后一个结果。</translation>
    </message>
    <message>
        <source>Keeping a run</source>
        <translation>存入测温</translation>
    </message>
    <message>
        <source>Run, Keep in the record (Ctrl+K) keeps the run that is shown, or all open logs, for good: the raw log, window, oven, recipe and board as they are, and the result. A record stands in a lot; a pass of a log is kept once. The status line says at its right where records go, a press on it chooses another archive.</source>
        <translation>「测温」菜单的「存入档案」(Ctrl+K) 永久保存显示中的测温或所有打开的记录：原始记录、工艺窗口、炉子、配方和电路板的现状，以及结果。每条存档属于一个批号；一份记录的一次通过只存一次。状态栏右侧显示存于何处，按一下可选择其他存档。</translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>批次报告单</translation>
    </message>
    <message>
        <source>The sheet of the marked runs as it will be printed, one for each lot; Page Up and Page Down turn its pages. What was printed or saved as PDF can be marked as printed beside its records. Several lots writes a file for each lot into a folder and replaces none without asking.</source>
        <translation>勾选的测温打印出来的报告单，每个批号一张；Page Up 和 Page Down 翻页。已打印或另存 PDF 的可在存档旁标记为已打印。「多个批号」为每个批号在文件夹中写入一个文件，未经询问不会替换任何文件。</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比较</translation>
    </message>
    <message>
        <source>Two runs on one clock, lined up at the oven entry or where the first thermocouple rises through a level. A log that is dropped here becomes B. Setpoints that differ are framed in B, the differences stand under them. Each lane has both runs, A over B; its last columns say the smallest margin of each, the largest change with its uncertainty, and which has more margin: neither, where they differ by less than their uncertainty. Enter on a mark leads to the run’s own page.</source>
        <translation>两次测量共用一个时钟，于进炉时或第一支热电偶升过某温度时对齐。拖放到此处的记录成为 B。不同的设定值在 B 中加框，差值列于其下。每条界限图含两次，A 在 B 上；最后几栏列出各自的最小裕量、最大变化及其不确定度，以及何者裕量较大：差异小于其不确定度时两者皆否。在标记上按 Enter 可前往该次自己的页面。</translation>
    </message>
    <message>
        <source>Every run that was kept, the newest first; a click on a heading sorts by it, a second one the other way round, and so does View, Sort the runs by, or the menu key. The fields above say which runs are listed, Ctrl+F finds words. Space marks the chosen runs for the sheet, Ctrl+A takes all, Ctrl+C copies with headings, Enter opens a run on Check with everything it was judged with. Below, a measure over the runs of one board and window revision: left and right go from run to run, a square is a run that completes a signal.</source>
        <translation>所有已保存的测温，最新的在前；单击标题可按其排序，再单击则反向，也可用“查看”的“测温排序依据”或菜单键。上方字段决定列出哪些测温，Ctrl+F 可查找字词。空格键将选取的测温标记以制作报表，Ctrl+A 全选，Ctrl+C 连同标题复制，Enter 以当时判定所用的一切在“检查”打开该次测温。下方为同一电路板与窗口版次各次测温的某个测量项目：左右键在测温间移动，方框为使信号成立的测温。</translation>
    </message>
    <message>
        <source>Editing an oven</source>
        <translation>编辑炉</translation>
    </message>
    <message>
        <source>Where the zones lie and what the oven allows, checked while it is typed; the zone strip and the oven entry follow at once, and Tune learns anew. Two ends of a limit stand together or not at all. Saving makes a new revision in a new file with the comments of the old one; nothing is overwritten. Zones come and go in the file itself.</source>
        <translation>各温区的位置与炉允许的范围，输入时即检查；温区条与入炉时刻立即跟着改变，“调整”会重新学习。一个限值的两端要一起填或都不填。保存时会在新文件中建立新版本，并保留旧文件的注释；不会覆盖任何文件。要增减温区，请直接编辑文件。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ImportPage</name>
    <message>
        <source>What stands in the file</source>
        <translation>文件内容</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>通道</translation>
    </message>
    <message>
        <source>Known once the log can be read</source>
        <translation>记录可读取后才知道</translation>
    </message>
    <message>
        <source>%1, %2 bytes, SHA-256 %3…%4</source>
        <translation>%1，%2 字节，SHA-256 %3…%4</translation>
    </message>
    <message>
        <source>Placements come from the board %1</source>
        <translation>测点来自电路板 %1</translation>
    </message>
    <message>
        <source>Take column %1 for the time</source>
        <translation>以第 %1 列为时间</translation>
    </message>
    <message>
        <source>Take column %1 for a thermocouple</source>
        <translation>以第 %1 列为热电偶</translation>
    </message>
    <message>
        <source>Do not judge column %1</source>
        <translation>不判定第 %1 列</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::KeepForm</name>
    <message>
        <source>Keep</source>
        <translation>存档</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    <message>
        <source>Keep in the record</source>
        <translation>存入档案</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>Board serial</source>
        <translation>电路板序号</translation>
    </message>
    <message>
        <source>O&amp;perator</source>
        <translation>操作人员(&amp;P)</translation>
    </message>
    <message>
        <source>Time of run</source>
        <translation>测温时间</translation>
    </message>
    <message>
        <source>Wh&amp;at</source>
        <translation>内容(&amp;A)</translation>
    </message>
    <message>
        <source>this run</source>
        <translation>这次测温</translation>
    </message>
    <message numerus="yes">
        <source>all %n runs of this log</source>
        <translation>
            <numerusform>这份记录的全部 %n 次测温</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all %n open logs</source>
        <translation>
            <numerusform>全部 %n 份打开的记录</numerusform>
        </translation>
    </message>
    <message>
        <source>each log’s own</source>
        <translation>各记录自己的时间</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>按输入</translation>
    </message>
    <message>
        <source>from the log’s clock</source>
        <translation>取自记录的时钟</translation>
    </message>
    <message>
        <source>from its file: no date stands in the log</source>
        <translation>取自文件：记录中没有日期</translation>
    </message>
    <message>
        <source>now: no date stands in the text</source>
        <translation>现在：文本中没有日期</translation>
    </message>
    <message>
        <source>Into %1</source>
        <translation>存入 %1</translation>
    </message>
    <message>
        <source>There is no result for the present setup</source>
        <translation>当前设置没有结果</translation>
    </message>
    <message>
        <source>Which lot is it? A record stands in a lot.</source>
        <translation>是哪一批？每条存档都属于一个批号。</translation>
    </message>
    <message>
        <source>Keeping…</source>
        <translation>正在存档…</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, as %2.</source>
        <translation>%1 的这次通过已存档，编号 %2。</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, in lot %2, as %3.</source>
        <translation>%1 的这次通过已存于批号 %2，编号 %3。</translation>
    </message>
    <message>
        <source>Kept as %1 in lot %2.</source>
        <translation>已存为 %1，批号 %2。</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are kept in lot %1, as %2 to %3.</source>
        <translation>
            <numerusform>%n 次测温已存于批号 %1，编号 %2 至 %3。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are kept already.</source>
        <translation>
            <numerusform>另有 %n 次已存档。</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was kept: %1</source>
        <translation>没有存档：%1</translation>
    </message>
    <message>
        <source>Keeping… The archive’s server is slow to answer.</source>
        <translation>保存中… 存档的服务器响应缓慢。</translation>
    </message>
    <message>
        <source>The server does not have it yet: it waits on this computer.</source>
        <translation>服务器尚未收到：正在这台计算机上等候。</translation>
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
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>Model fitted to</source>
        <translation>模型拟合于</translation>
    </message>
    <message>
        <source>Largest misfit</source>
        <translation>最大偏差</translation>
    </message>
    <message>
        <source>Learn from other runs too</source>
        <translation>同时从其他测温学习</translation>
    </message>
    <message>
        <source>run with %1</source>
        <comment>name of a recipe</comment>
        <translation>以 %1 运行</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotSheetPanel</name>
    <message>
        <source>Lot sheet</source>
        <translation>批次报表</translation>
    </message>
    <message>
        <source>Mark runs in the list to put them on a sheet.</source>
        <translation>在列表中标记测温以放入报表。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n 次测温</numerusform>
        </translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>打印…</translation>
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
        <translation>多个批号…</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>在存档中标记为已打印</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>每次测温一页</translation>
    </message>
    <message>
        <source>The sheet could not be made.</source>
        <translation>无法制作报告单。</translation>
    </message>
    <message>
        <source>The sheet was not written.</source>
        <translation>报告单未写入。</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>报告单已保存在 %1</translation>
    </message>
    <message>
        <source>The sheet is not marked as printed.</source>
        <translation>报告单未标记为已打印。</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation>上一页</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>下一页</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>进度</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>After printing and saving as PDF, by %1</source>
        <translation>打印及另存 PDF 之后，由 %1</translation>
    </message>
    <message>
        <source>The sheet could not be made: %1</source>
        <translation>无法制作报告单：%1</translation>
    </message>
    <message numerus="yes">
        <source>%n lots</source>
        <translation>
            <numerusform>%n 个批号</numerusform>
        </translation>
    </message>
    <message>
        <source>No lot</source>
        <translation>没有批号</translation>
    </message>
    <message>
        <source>The sheet is made…</source>
        <translation>正在制作报告单…</translation>
    </message>
    <message>
        <source>%1 of %2 runs are judged</source>
        <translation>已判定 %1/%2 次测温</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>lot, runs, pages</comment>
        <translation>%1，%2，%3</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n 页</numerusform>
        </translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>第 %1 页，共 %2 页</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>无法打印报告单</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>报告单已发送到打印机</translation>
    </message>
    <message>
        <source>Save the lot sheet</source>
        <translation>保存批次报告单</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>One HTML file (*.html)</source>
        <translation>单个 HTML 文件 (*.html)</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 是打开的记录：报告单绝不取代记录</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotsPage</name>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>表格已连同标题复制到剪贴板。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) in the list</source>
        <translation>
            <numerusform>列表中 %n 次测温</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n marked</source>
        <translation>
            <numerusform>已标记 %n 次</numerusform>
        </translation>
    </message>
    <message>
        <source>Export the table</source>
        <translation>导出表格</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>The table was not exported.</source>
        <translation>表格未导出。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) exported as %1.</source>
        <translation>
            <numerusform>已将 %n 次测温导出为 %1。</numerusform>
        </translation>
    </message>
    <message>
        <source>Mark two runs, or more for two groups</source>
        <translation>标记两次测温，或更多以分为两组</translation>
    </message>
    <message>
        <source>%1 runs at most can be compared</source>
        <translation>至多可比较 %1 次测温</translation>
    </message>
    <message>
        <source>Hold the two marked runs against each other, the older as A</source>
        <translation>将两次标记的测温互相比较，较早者为 A</translation>
    </message>
    <message>
        <source>Put the marked runs into two groups and hold these against each other</source>
        <translation>将标记的测温分为两组并互相比较</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>文件(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>打开记录(&amp;O)…</translation>
    </message>
    <message>
        <source>&amp;Paste a log</source>
        <translation>粘贴记录(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Recent logs</source>
        <translation>最近的记录(&amp;R)</translation>
    </message>
    <message>
        <source>Look at the &amp;demo run</source>
        <translation>看示范记录(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Close this log</source>
        <translation>关闭此记录(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>结束(&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>编辑(&amp;E)</translation>
    </message>
    <message>
        <source>Copy the &amp;table</source>
        <translation>复制表格(&amp;T)</translation>
    </message>
    <message>
        <source>Copy the &amp;picture</source>
        <translation>复制图片(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Find in the table</source>
        <translation>在表格中查找(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>查看(&amp;V)</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>放大(&amp;I)</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>缩小(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Whole run</source>
        <translation>整段曲线(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Raw samples</source>
        <translation>原始采样点(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Next result that is not a pass</source>
        <translation>下一个未合格的结果(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Previous result that is not a pass</source>
        <translation>上一个未合格的结果(&amp;P)</translation>
    </message>
    <message>
        <source>Choose nothin&amp;g</source>
        <translation>取消选择(&amp;G)</translation>
    </message>
    <message>
        <source>Next pa&amp;rt</source>
        <translation>下一个部分(&amp;X)</translation>
    </message>
    <message>
        <source>Previous p&amp;art</source>
        <translation>上一个部分(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>温度单位(&amp;T)</translation>
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
        <translation>速度单位(&amp;S)</translation>
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
        <translation>语言(&amp;L)</translation>
    </message>
    <message>
        <source>As the &amp;system says</source>
        <translation>依系统(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>测温(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Next run</source>
        <translation>下一次测温(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Previous run</source>
        <translation>上一次测温(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;How the log was read</source>
        <translation>记录如何读取(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Edit the window</source>
        <translation>编辑工艺窗口(&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Oven</source>
        <translation>炉(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>说明(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Help on what has the focus</source>
        <translation>当前焦点的说明(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;About Ovenwright</source>
        <translation>关于 Ovenwright(&amp;A)</translation>
    </message>
    <message>
        <source>About Ovenwright</source>
        <translation>关于 Ovenwright</translation>
    </message>
    <message>
        <source>&amp;Forget these</source>
        <translation>清除清单(&amp;F)</translation>
    </message>
    <message>
        <source>Open logs</source>
        <translation>打开记录</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>所有文件 (*)</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>没有粘贴任何内容。</translation>
    </message>
    <message>
        <source>The clipboard holds no text and no file.</source>
        <translation>剪贴板中没有文字或文件。</translation>
    </message>
    <message>
        <source>The demo run cannot be opened.</source>
        <translation>无法打开示范记录。</translation>
    </message>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>表格连同标题已复制到剪贴板。</translation>
    </message>
    <message>
        <source>The picture is on the clipboard.</source>
        <translation>图片已复制到剪贴板。</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>撤销</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>重做</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>检查</translation>
    </message>
    <message>
        <source>Ovenwright</source>
        <translation>Ovenwright</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>就绪</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 rows, every %3 s, %n channel(s)</source>
        <translation>
            <numerusform>%1：%2 行，每 %3 s，%n 个通道</numerusform>
        </translation>
    </message>
    <message>
        <source>oven entry found at %1 s</source>
        <translation>找到进炉时刻 %1 s</translation>
    </message>
    <message>
        <source>oven entry given at %1 s</source>
        <translation>指定进炉时刻 %1 s</translation>
    </message>
    <message>
        <source>decimal %1</source>
        <translation>小数符号：%1</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>读取方式：%1</translation>
    </message>
    <message>
        <source>Decision rule: guarded, w = U</source>
        <translation>判定规则：采用保护带，w = U</translation>
    </message>
    <message>
        <source>Decision rule: simple</source>
        <translation>判定规则：简单</translation>
    </message>
    <message>
        <source>Please note.</source>
        <comment>before warnings</comment>
        <translation>请注意。</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>关闭消息</translation>
    </message>
    <message>
        <source>%1 was not read.</source>
        <translation>%1 无法读取。</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be read: %1.</source>
        <translation>
            <numerusform>另有 %n 个无法读取：%1。</numerusform>
        </translation>
    </message>
    <message>
        <source>Read it without the board</source>
        <translation>不用电路板文件读取</translation>
    </message>
    <message>
        <source>Read it without the oven</source>
        <translation>不用炉读取</translation>
    </message>
    <message>
        <source>Show the line</source>
        <translation>显示该行</translation>
    </message>
    <message>
        <source>Read it another way</source>
        <translation>改用其他读法</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>再试一次</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>打开其他记录…</translation>
    </message>
    <message>
        <source>Not judged.</source>
        <translation>未判定。</translation>
    </message>
    <message>
        <source>Undo this change</source>
        <translation>撤销此变更</translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation>检查(&amp;C)</translation>
    </message>
    <message>
        <source>T&amp;une</source>
        <translation>调整(&amp;U)</translation>
    </message>
    <message>
        <source>Panel at the rig&amp;ht</source>
        <translation>右侧面板(&amp;H)</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>调整</translation>
    </message>
    <message>
        <source>Prediction follows each edit</source>
        <translation>预测随每次变更更新</translation>
    </message>
    <message>
        <source>Nothing is predicted yet</source>
        <translation>尚无预测</translation>
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
        <translation>未打开该次测温。</translation>
    </message>
    <message>
        <source>Se&amp;ttings…</source>
        <translation>设置(&amp;T)…</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>监看文件夹(&amp;F)…</translation>
    </message>
    <message>
        <source>&amp;Keep in the record…</source>
        <translation>存入档案(&amp;K)…</translation>
    </message>
    <message>
        <source>Keep…</source>
        <translation>存档…</translation>
    </message>
    <message>
        <source>%1: choose where runs are kept</source>
        <translation>%1：选择测温存于何处</translation>
    </message>
    <message numerus="yes">
        <source>Watching %1: %n kept</source>
        <translation>
            <numerusform>正在监看 %1：已存 %n 次</numerusform>
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
        <translation>比较(&amp;O)</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比较</translation>
    </message>
    <message>
        <source>From the &amp;archive…</source>
        <translation>来自存档(&amp;A)…</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>看两个示范记录(&amp;D)</translation>
    </message>
    <message>
        <source>The runs were not opened.</source>
        <translation>未能打开这些测温。</translation>
    </message>
    <message>
        <source>Leave these cells empty</source>
        <translation>将这些单元格视为空</translation>
    </message>
    <message>
        <source>Leave these rows out</source>
        <translation>略去这些行</translation>
    </message>
    <message numerus="yes">
        <source>%n assumed</source>
        <comment>things about the reading</comment>
        <translation>
            <numerusform>%n 项假定</numerusform>
        </translation>
    </message>
    <message>
        <source>Guarded, w = U</source>
        <translation>采用保护带，w = U</translation>
    </message>
    <message>
        <source>Simple rule</source>
        <translation>简单规则</translation>
    </message>
    <message>
        <source>&amp;Edit the oven</source>
        <translation>编辑炉(&amp;E)</translation>
    </message>
    <message>
        <source>The row is on the clipboard.</source>
        <translation>该行已在剪贴板中。</translation>
    </message>
    <message>
        <source>The rows are on the clipboard, with headings.</source>
        <translation>各行已连同标题在剪贴板中。</translation>
    </message>
    <message>
        <source>No oven is chosen: there is none to edit.</source>
        <translation>尚未选择炉：没有可编辑的炉。</translation>
    </message>
    <message>
        <source>the window %1</source>
        <translation>工艺窗口 %1</translation>
    </message>
    <message>
        <source>the oven %1</source>
        <translation>炉 %1</translation>
    </message>
    <message>
        <source>the recipe %1 in Tune</source>
        <translation>调整中的配方 %1</translation>
    </message>
    <message>
        <source>Not closed yet.</source>
        <translation>尚未关闭。</translation>
    </message>
    <message>
        <source>Changes that are not saved: %1.</source>
        <translation>尚未保存的变更：%1。</translation>
    </message>
    <message>
        <source>Show the changes</source>
        <translation>显示变更</translation>
    </message>
    <message>
        <source>Close without saving</source>
        <translation>不保存并关闭</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenModel</name>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>Ambient, °C</source>
        <translation>环境温度，°C</translation>
    </message>
    <message>
        <source>Mouth to first zone, mm</source>
        <translation>炉口到第一温区，mm</translation>
    </message>
    <message>
        <source>Last zone to end, mm</source>
        <translation>最后温区到出口，mm</translation>
    </message>
    <message>
        <source>Setpoints from, °C</source>
        <translation>设定温度下限，°C</translation>
    </message>
    <message>
        <source>Setpoints to, °C</source>
        <translation>设定温度上限，°C</translation>
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
        <translation>相邻温区温差，°C</translation>
    </message>
    <message>
        <source>Top to bottom, °C</source>
        <translation>上下温差，°C</translation>
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
        <translation>加热</translation>
    </message>
    <message>
        <source>cools</source>
        <translation>冷却</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>区</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>种类</translation>
    </message>
    <message>
        <source>Begins at, mm</source>
        <translation>起点，mm</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>长度，mm</translation>
    </message>
    <message>
        <source>Gap after it, mm</source>
        <translation>其后间隔，mm</translation>
    </message>
    <message>
        <source>Board there, s</source>
        <translation>电路板在此，s</translation>
    </message>
    <message>
        <source>From the oven’s mouth, out of the lengths and gaps before it</source>
        <translation>从炉口算起，由前面的长度与间隔得出</translation>
    </message>
    <message>
        <source>From the oven entry, at the speed of the recipe</source>
        <translation>从入炉算起，按配方速度</translation>
    </message>
    <message>
        <source>“%1” can mean thousands or decimals: type thousands without a sign, decimals with one or two digits</source>
        <translation>“%1”可能是千分位，也可能是小数：千位数请不加分隔符，小数请输入一位或两位</translation>
    </message>
    <message>
        <source>Zone %1: name %2</source>
        <translation>温区 %1：名称 %2</translation>
    </message>
    <message>
        <source>Zone %1: length %2 mm</source>
        <translation>温区 %1：长度 %2 mm</translation>
    </message>
    <message>
        <source>Zone %1: gap after it %2 mm</source>
        <translation>温区 %1：其后间隔 %2 mm</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenPage</name>
    <message>
        <source>Zones</source>
        <translation>区</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Ambient, °C</source>
        <translation>环境温度，°C(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Mouth to first zone, mm</source>
        <translation>炉口到第一温区，mm(&amp;M)</translation>
    </message>
    <message>
        <source>Last &amp;zone to end, mm</source>
        <translation>最后温区到出口，mm(&amp;Z)</translation>
    </message>
    <message>
        <source>Set&amp;points, °C</source>
        <translation>设定温度，°C(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Speed, mm/min</source>
        <translation>速度，mm/min(&amp;S)</translation>
    </message>
    <message>
        <source>S&amp;tep to next zone, °C</source>
        <translation>相邻温区温差，°C(&amp;T)</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>新版本</translation>
    </message>
    <message>
        <source>The curves begin at %1 to %2 %3.</source>
        <translation>曲线从 %1 到 %2 %3 开始。</translation>
    </message>
    <message>
        <source>They do not show when the board entered.</source>
        <translation>曲线看不出电路板何时入炉。</translation>
    </message>
    <message>
        <source>With these lengths they put the oven entry at %1 ± %2 s on the log’s clock.</source>
        <translation>按这些长度，入炉时刻是记录的时钟 %1 ± %2 s。</translation>
    </message>
    <message>
        <source>The oven entry was given: %1 s on the log’s clock.</source>
        <translation>入炉时刻由用户给定：记录的时钟 %1 s。</translation>
    </message>
    <message>
        <source>A new revision needs a name.</source>
        <translation>新版本需要名称。</translation>
    </message>
    <message>
        <source>The oven is at revision %1 already.</source>
        <translation>炉已是版本 %1。</translation>
    </message>
    <message>
        <source>Every rule for ovens is met.</source>
        <translation>符合炉的所有规则。</translation>
    </message>
    <message>
        <source>Oven, %1</source>
        <translation>炉，%1</translation>
    </message>
    <message>
        <source>Save the oven</source>
        <translation>保存炉</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML 文件 (*.toml)</translation>
    </message>
    <message>
        <source>The oven was not saved.</source>
        <translation>炉未保存。</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>已保存为版本 %1：%2</translation>
    </message>
    <message>
        <source>Save the oven’s revision %1</source>
        <translation>保存炉的版本 %1</translation>
    </message>
    <message>
        <source>Save as a new revision</source>
        <translation>保存为新版本</translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation>保存到其他位置…</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>返回结果</translation>
    </message>
    <message>
        <source>Top to &amp;bottom, °C</source>
        <translation>上下温差，°C(&amp;B)</translation>
    </message>
    <message>
        <source>Rev&amp;ision</source>
        <translation>版本(&amp;I)</translation>
    </message>
    <message>
        <source>The curves begin at %1 %2.</source>
        <translation>曲线从 %1 %2 开始。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OverlayList</name>
    <message>
        <source>Laid over the prediction</source>
        <translation>叠加于预测之上</translation>
    </message>
    <message>
        <source>The run as it was measured</source>
        <translation>实测曲线</translation>
    </message>
    <message>
        <source>%1; margin %2</source>
        <translation>%1；裕量 %2</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>舍弃预测 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::PageView</name>
    <message>
        <source>Preview of the sheet</source>
        <translation>报告单预览</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ProfileMenus</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1，已变更</translation>
    </message>
    <message>
        <source>None</source>
        <translation>无</translation>
    </message>
    <message>
        <source>&amp;Window</source>
        <translation>工艺窗口(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>电路板(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Oven and recipe</source>
        <translation>炉和配方(&amp;O)</translation>
    </message>
    <message>
        <source>Judge &amp;also against</source>
        <translation>同时依据(&amp;A)</translation>
    </message>
    <message>
        <source>No longer against %1</source>
        <translation>不再依据 %1</translation>
    </message>
    <message>
        <source>&amp;Edit this window</source>
        <translation>编辑此工艺窗口(&amp;E)</translation>
    </message>
    <message>
        <source>Open a window &amp;file…</source>
        <translation>打开工艺窗口文件(&amp;F)…</translation>
    </message>
    <message>
        <source>Open a window</source>
        <translation>打开工艺窗口</translation>
    </message>
    <message>
        <source>Open a board &amp;file…</source>
        <translation>打开电路板文件(&amp;F)…</translation>
    </message>
    <message>
        <source>Open a board</source>
        <translation>打开电路板</translation>
    </message>
    <message>
        <source>Open a recipe &amp;file…</source>
        <translation>打开配方文件(&amp;F)…</translation>
    </message>
    <message>
        <source>Open a recipe</source>
        <translation>打开配方</translation>
    </message>
    <message>
        <source>Open an oven &amp;file and a recipe…</source>
        <translation>打开炉文件和配方(&amp;F)…</translation>
    </message>
    <message>
        <source>Open an oven</source>
        <translation>打开炉</translation>
    </message>
    <message>
        <source>Open a recipe of this oven</source>
        <translation>打开此炉的配方</translation>
    </message>
    <message>
        <source>TOML files (*.toml);;All files (*)</source>
        <translation>TOML 文件 (*.toml);;所有文件 (*)</translation>
    </message>
    <message>
        <source>%1, line %2: </source>
        <translation>%1，第 %2 行：</translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>打开文件</translation>
    </message>
    <message>
        <source>Not judged anew: this window cannot be used.</source>
        <translation>未重新判定：此工艺窗口无法使用。</translation>
    </message>
    <message>
        <source>Judge also against %1</source>
        <translation>同时依据 %1</translation>
    </message>
    <message>
        <source>Choose the window %1</source>
        <translation>选择工艺窗口 %1</translation>
    </message>
    <message>
        <source>No longer judge against %1</source>
        <translation>不再依据 %1 判定</translation>
    </message>
    <message>
        <source>Choose no board</source>
        <translation>不选电路板</translation>
    </message>
    <message>
        <source>This board cannot be used.</source>
        <translation>此电路板无法使用。</translation>
    </message>
    <message>
        <source>Choose the board %1</source>
        <translation>选择电路板 %1</translation>
    </message>
    <message>
        <source>Choose no oven</source>
        <translation>不选炉</translation>
    </message>
    <message>
        <source>This oven cannot be used.</source>
        <translation>此炉无法使用。</translation>
    </message>
    <message>
        <source>This recipe cannot be used.</source>
        <translation>此配方无法使用。</translation>
    </message>
    <message>
        <source>This recipe does not fit the oven.</source>
        <translation>此配方不适用于该炉。</translation>
    </message>
    <message>
        <source>Choose the recipe %1</source>
        <translation>选择配方 %1</translation>
    </message>
    <message>
        <source>&amp;Edit this oven</source>
        <translation>编辑这座炉(&amp;E)</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingPanel</name>
    <message>
        <source>How the log was read</source>
        <translation>记录如何读取</translation>
    </message>
    <message>
        <source>Read logs laid out like this the same way</source>
        <translation>相同格式的记录都照此读取</translation>
    </message>
    <message>
        <source>Use this reading</source>
        <translation>采用此读法</translation>
    </message>
    <message>
        <source>Back to what was found</source>
        <translation>恢复自动判读</translation>
    </message>
    <message>
        <source>Export the layout…</source>
        <translation>导出格式…</translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>文字编码</translation>
    </message>
    <message>
        <source>Separator</source>
        <translation>分隔符号</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>小数符号</translation>
    </message>
    <message>
        <source>Header</source>
        <translation>标题行</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>Order of the date</source>
        <translation>日期顺序</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>单位</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>进炉时刻</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Oven entry, seconds on the log’s clock</source>
        <translation>进炉时刻（记录的时钟，秒）</translation>
    </message>
    <message>
        <source>What was found and assumed</source>
        <translation>找到与假定的内容</translation>
    </message>
    <message>
        <source>Layout &amp;name</source>
        <translation>格式名称(&amp;N)</translation>
    </message>
    <message>
        <source>Layout name</source>
        <translation>格式名称</translation>
    </message>
    <message numerus="yes">
        <source>The %n line(s) before it are kept as notes.</source>
        <translation>
            <numerusform>其前 %n 行保留为附注。</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 s a row.</source>
        <translation>每行 %1 s。</translation>
    </message>
    <message>
        <source>Not found. Without an oven, times stay on the log’s own clock.</source>
        <translation>未找到。没有炉时，时间依记录本身的时钟。</translation>
    </message>
    <message>
        <source>Not found in this log: it can be given.</source>
        <translation>此记录中未找到：可自行指定。</translation>
    </message>
    <message>
        <source>Given. The plot and the zone strip count from it.</source>
        <translation>已指定。曲线与温区条由此起算。</translation>
    </message>
    <message>
        <source>Found from the curves, ± %1 s. The plot and the zone strip count from it.</source>
        <translation>由曲线找到，± %1 s。曲线与温区条由此起算。</translation>
    </message>
    <message>
        <source>Found from the log</source>
        <translation>从记录找到</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>自行指定</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n cell(s) without a reading</source>
        <translation>
            <numerusform>%1：%n 格没有读数</numerusform>
        </translation>
    </message>
    <message>
        <source>changed by you</source>
        <translation>由您变更</translation>
    </message>
    <message>
        <source>Found from the content</source>
        <translation>依内容判断</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>尚未读取</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>The layout was not kept.</source>
        <translation>格式未能保留。</translation>
    </message>
    <message>
        <source>Logs of this shape are read by the layout %1.</source>
        <translation>相同格式的记录将以格式 %1 读取。</translation>
    </message>
    <message>
        <source>Export the layout</source>
        <translation>导出格式</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML 文件 (*.toml)</translation>
    </message>
    <message>
        <source>The layout was not exported.</source>
        <translation>格式未能导出。</translation>
    </message>
    <message>
        <source>The layout is in %1.</source>
        <translation>格式已存于 %1。</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>倍率</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>热电偶</translation>
    </message>
    <message>
        <source>Cold junction</source>
        <translation>冷端</translation>
    </message>
    <message>
        <source>No byte contradicts it.</source>
        <translation>没有字节与之矛盾。</translation>
    </message>
    <message numerus="yes">
        <source>Every row that is shown has %n cell(s).</source>
        <translation>
            <numerusform>显示的每一行有 %n 个单元格。</numerusform>
        </translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>未注明</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>假设：%1</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>表格</translation>
    </message>
    <message numerus="yes">
        <source>%n other(s) in the file may be a log as well.</source>
        <translation>
            <numerusform>文件中另有 %n 个表格也可能是记录。</numerusform>
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
        <translation>输入数字，或以上下键步进；Delete 回到实际使用值。</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>top and bottom together</source>
        <translation>上下联动</translation>
    </message>
    <message>
        <source>stays in a search</source>
        <translation>搜寻时固定</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is. Press to let it move.</source>
        <translation>搜寻时温区 %1 保持不变。按一下可让它变动。</translation>
    </message>
    <message>
        <source>Press to keep zone %1 as it is in a search.</source>
        <translation>按一下可在搜寻时固定温区 %1。</translation>
    </message>
    <message>
        <source>Type, step with the arrows or drag up and down.</source>
        <translation>输入、用方向键步进或上下拖曳。</translation>
    </message>
    <message>
        <source>Top and bottom move together</source>
        <translation>上下一起变动</translation>
    </message>
    <message>
        <source>&amp;Type a number</source>
        <translation>输入数字(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Back to what was run: %1</source>
        <translation>回到实际使用值：%1(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Keep zone %1 as it is in a search</source>
        <translation>搜寻时固定温区 %1(&amp;K)</translation>
    </message>
    <message>
        <source>Top and bottom &amp;together</source>
        <translation>上下联动(&amp;T)</translation>
    </message>
    <message>
        <source>was %1</source>
        <comment>a setpoint or the speed</comment>
        <translation>原为 %1</translation>
    </message>
    <message>
        <source>Top and bottom move apart</source>
        <translation>上下分开变动</translation>
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
        <translation>测点</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>数值</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>单位</translation>
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
        <translation>裕量</translation>
    </message>
    <message>
        <source>Probability inside</source>
        <translation>合格概率</translation>
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
        <translation>温区</translation>
    </message>
    <message>
        <source>Source of the limit</source>
        <translation>界限的来源</translation>
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
        <translation>结果</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsModel</name>
    <message>
        <source>Mark</source>
        <translation>标记</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>测温</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>电路板</translation>
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
        <translation>裕量</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>最小裕量所在</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>报表</translation>
    </message>
    <message>
        <source>%1 has no value</source>
        <comment>placement and requirement</comment>
        <translation>%1 没有数值</translation>
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
        <translation>待打印</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>已标记</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>未标记</translation>
    </message>
    <message>
        <source>printed</source>
        <comment>the sheet of a run</comment>
        <translation>已打印</translation>
    </message>
    <message>
        <source>Printed on %1</source>
        <translation>打印于 %1</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this: it is read from each record once its row is seen.</source>
        <translation>列表无法按此排序：此内容要到该行显示时才从记录读取。</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this.</source>
        <translation>列表无法按此排序。</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1，按所给时间</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1，按记录文件内的时钟</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1，记录文件的时间</translation>
    </message>
    <message>
        <source>%1, of the chosen zone</source>
        <comment>time of a run</comment>
        <translation>%1，属于所选温区</translation>
    </message>
    <message>
        <source>The result that decides the margin of the run, as it was judged when it was kept.</source>
        <translation>决定该次测温裕量的结果，以保存时的判定为准。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsTable</name>
    <message>
        <source>Runs of the archive</source>
        <translation>存档的测温</translation>
    </message>
    <message>
        <source>So&amp;rt the runs by</source>
        <translation>测温排序依据(&amp;R)</translation>
    </message>
    <message>
        <source>The other way &amp;round</source>
        <translation>反向(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>打开(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Mark, or take the mark off</source>
        <translation>标记或取消标记(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Copy with headings</source>
        <translation>连同标题复制(&amp;C)</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Screenshot</name>
    <message>
        <source>a large log</source>
        <translation>一份大型记录</translation>
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
        <translation>须保留的裕量，%(&amp;M)</translation>
    </message>
    <message>
        <source>Margin to keep, %</source>
        <translation>须保留的裕量，%</translation>
    </message>
    <message>
        <source>What the fastest and the coolest must keep; else half of the best, at most 20 %</source>
        <translation>最快与最低温方案须保留的裕量；否则为最佳值的一半，最多 20 %</translation>
    </message>
    <message>
        <source>S&amp;uggest recipes</source>
        <translation>建议配方(&amp;U)</translation>
    </message>
    <message>
        <source>Keep the speed in a search</source>
        <translation>搜寻时保持速度</translation>
    </message>
    <message>
        <source>Let a search change the speed</source>
        <translation>允许搜寻改变速度</translation>
    </message>
    <message>
        <source>Least speed of a search</source>
        <translation>搜寻的最低速度</translation>
    </message>
    <message>
        <source>Margin that a search keeps</source>
        <translation>搜寻须保留的裕量</translation>
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
        <translation>每个温区都可变动；按温区条上的名称可固定它。</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is.</source>
        <translation>搜索时温区 %1 保持不变。</translation>
    </message>
    <message>
        <source>A search leaves zones %1 as they are.</source>
        <translation>搜索时温区 %1 保持不变。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SettingsWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>选择(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Use this archive</source>
        <translation>使用此存档(&amp;U)</translation>
    </message>
    <message>
        <source>No password: it would be shown and kept in plain text here. It belongs into the password file or a service file of the server’s library (.pgpass).</source>
        <translation>不要写密码：密码会在这里以明文显示和保存。请放在服务器程序库的密码文件或服务文件 (.pgpass)。</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>设置</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    <message>
        <source>Archive: where runs are kept</source>
        <translation>存档：测温存于何处</translation>
    </message>
    <message>
        <source>File of the archive</source>
        <translation>存档的文件</translation>
    </message>
    <message>
        <source>Address of the server</source>
        <translation>服务器地址</translation>
    </message>
    <message>
        <source>This c&amp;omputer</source>
        <translation>这台电脑(&amp;O)</translation>
    </message>
    <message>
        <source>A &amp;file</source>
        <translation>一个文件(&amp;F)</translation>
    </message>
    <message>
        <source>A PostgreSQL &amp;server</source>
        <translation>PostgreSQL 服务器(&amp;S)</translation>
    </message>
    <message>
        <source>Sheets and records</source>
        <translation>报告单与存档</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>选择(&amp;H)…</translation>
    </message>
    <message>
        <source>Choose a logo</source>
        <translation>选择标志</translation>
    </message>
    <message>
        <source>Choose the archive’s file</source>
        <translation>选择存档的文件</translation>
    </message>
    <message>
        <source>Com&amp;pany, at the head of each sheet</source>
        <translation>公司，位于每张报告单页首(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Logo beside it</source>
        <translation>旁边的标志(&amp;L)</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>纸张(&amp;A)</translation>
    </message>
    <message>
        <source>Op&amp;erator, who keeps and prints here</source>
        <translation>在此存档与打印的操作人员(&amp;E)</translation>
    </message>
    <message>
        <source>Which file? It is made when the first run is kept.</source>
        <translation>哪个文件？存入第一次测温时会建立。</translation>
    </message>
    <message>
        <source>This is the address of a server.</source>
        <translation>这是服务器地址。</translation>
    </message>
    <message>
        <source>Say the whole path, so that it is the same file wherever the program starts.</source>
        <translation>请写完整路径，无论程序从何处启动都是同一个文件。</translation>
    </message>
    <message>
        <source>%1 is a folder: an archive is a file.</source>
        <translation>%1 是文件夹：存档是一个文件。</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>没有文件夹 %1。</translation>
    </message>
    <message>
        <source>Which server? As in postgresql://user@host:5432/database.</source>
        <translation>哪个服务器？例如 postgresql://user@host:5432/database。</translation>
    </message>
    <message>
        <source>Found %1, expected an address such as postgresql://user@host:5432/database.</source>
        <translation>找到 %1，应为如 postgresql://user@host:5432/database 的地址。</translation>
    </message>
    <message>
        <source>The address holds a password, which would be shown and kept in plain text: it belongs into the password file or a service file of the server’s library.</source>
        <translation>地址含有密码，会以明文显示和保存：请放在服务器程序库的密码文件或服务文件。</translation>
    </message>
    <message>
        <source>In use. %1</source>
        <translation>使用中。%1</translation>
    </message>
    <message>
        <source>In use. It is made when the first run is kept.</source>
        <translation>使用中。存入第一次测温时会建立。</translation>
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
        <translation>存档 (*.sqlite);;所有文件 (*)</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>选择</translation>
    </message>
    <message>
        <source>Logo at the head of each sheet</source>
        <translation>每张报告单页首的标志</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png *.jpg *.jpeg)</source>
        <translation>图片 (*.svg *.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>Not on the sheets: %1</source>
        <translation>不列入报告单：%1</translation>
    </message>
    <message>
        <source>The program was started with it: next time it is %1 again, unless you use this one.</source>
        <translation>程序是以此存档启动的：若不点使用，下次仍为 %1。</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SeveralLots</name>
    <message>
        <source>&amp;All shown</source>
        <translation>全选所示(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>全不选(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>选择(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>停止(&amp;S)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    <message>
        <source>&amp;Replace them</source>
        <translation>替换(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Leave them out</source>
        <translation>跳过(&amp;L)</translation>
    </message>
    <message>
        <source>Change the folder</source>
        <translation>更换文件夹</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>每次测温一页</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>在存档中标记为已打印</translation>
    </message>
    <message>
        <source>Sheets of several lots</source>
        <translation>多个批号的报告单</translation>
    </message>
    <message>
        <source>%1 of %2: lot %3</source>
        <translation>%1/%2：批号 %3</translation>
    </message>
    <message>
        <source>Lot %1 is not marked as printed: %2</source>
        <translation>批号 %1 未标记为已打印：%2</translation>
    </message>
    <message>
        <source>The lots are listed…</source>
        <translation>正在列出批号…</translation>
    </message>
    <message>
        <source>Find a lot</source>
        <translation>查找批号</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>测温</translation>
    </message>
    <message>
        <source>Last run</source>
        <translation>最近测温</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>One HTML file</source>
        <translation>单个 HTML 文件</translation>
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
        <translation>进度</translation>
    </message>
    <message>
        <source>In the &amp;folder</source>
        <translation>文件夹(&amp;F)</translation>
    </message>
    <message>
        <source>A file for each lot, as</source>
        <translation>每批一个文件，格式</translation>
    </message>
    <message>
        <source>The archive has no lot yet.</source>
        <translation>存档中还没有批号。</translation>
    </message>
    <message>
        <source>Folder of the sheets</source>
        <translation>报告单的文件夹</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>没有文件夹 %1。</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 是打开的记录：报告单绝不取代记录</translation>
    </message>
    <message numerus="yes">
        <source>%n of these files are in the folder already.</source>
        <translation>
            <numerusform>其中 %n 个文件已在文件夹中。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheets are written.</source>
        <translation>
            <numerusform>已写入 %1/%n 张报告单。</numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>已停止。</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be made.</source>
        <translation>
            <numerusform>另有 %n 张无法制作。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Write %n sheet(s)</source>
        <translation>
            <numerusform>写入 %n 张报告单(&amp;W)</numerusform>
        </translation>
    </message>
    <message>
        <source>Write sheets</source>
        <translation>写入报告单</translation>
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
        <translation>各温区的比重</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>温区 %1</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>温区 %1，上</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>温区 %1，下</translation>
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
        <translation>打印报告单(&amp;P)…</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>打印预览(&amp;V)…</translation>
    </message>
    <message>
        <source>&amp;Export the sheet…</source>
        <translation>导出报告单(&amp;E)…</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>报告单已发送到打印机</translation>
    </message>
    <message>
        <source>Export the sheet</source>
        <translation>导出报告单</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;One HTML file (*.html);;Table (*.csv);;JSON (*.json)</source>
        <translation>PDF (*.pdf);;单个 HTML 文件 (*.html);;表格 (*.csv);;JSON (*.json)</translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .html, .csv or .json</source>
        <translation>%1：报告单只能写成 .pdf、.html、.csv 或 .json</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>报告单已保存在 %1</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>无法打印报告单</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 是已打开的记录：报告单绝不会取代记录</translation>
    </message>
    <message>
        <source>The sheet has no logo. %1</source>
        <translation>报告单没有标志。%1</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>报告单…</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionCard</name>
    <message>
        <source>The recipe that was run stays.</source>
        <translation>沿用实际使用的配方。</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>显示</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>显示中</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>裕量 %1</translation>
    </message>
    <message>
        <source>Tightest: %1</source>
        <translation>最接近界限：%1</translation>
    </message>
    <message>
        <source>Takes its recipe over into the strip</source>
        <translation>将其配方带入温区条</translation>
    </message>
    <message>
        <source>%1, shown</source>
        <translation>%1，显示中</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>显示 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionsPanel</name>
    <message>
        <source>Suggestions</source>
        <translation>建议</translation>
    </message>
    <message>
        <source>Search again…</source>
        <translation>重新搜寻…</translation>
    </message>
    <message>
        <source>Suggestions can be asked for once it is known how this board heats in this oven.</source>
        <translation>得知这块板子在此炉中如何受热后，即可要求建议。</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Stop the search</source>
        <translation>停止搜寻</translation>
    </message>
    <message>
        <source>Progress of the search</source>
        <translation>搜寻进度</translation>
    </message>
    <message>
        <source>Undetermined: the search was stopped before it had looked everywhere.</source>
        <translation>无法判定：搜寻尚未完成即已停止。</translation>
    </message>
    <message>
        <source>No recipe passes</source>
        <translation>没有合格的配方</translation>
    </message>
    <message>
        <source>What stands against each other:</source>
        <translation>互相冲突的项目：</translation>
    </message>
    <message>
        <source>Show the best there is</source>
        <translation>显示当前最佳</translation>
    </message>
    <message>
        <source>Nothing better was found: the recipe that was run can stay.</source>
        <translation>未找到更好的：可沿用实际使用的配方。</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>显示：%1</translation>
    </message>
    <message>
        <source>The next run worth making</source>
        <translation>最值得进行的下一次测温</translation>
    </message>
    <message>
        <source>Show its recipe</source>
        <translation>显示其配方</translation>
    </message>
    <message>
        <source>Show the next run worth making</source>
        <translation>显示最值得进行的下一次测温</translation>
    </message>
    <message>
        <source>These are predictions.</source>
        <translation>以上皆为预测。</translation>
    </message>
    <message>
        <source>Nothing is suggested from a model that does not fit.</source>
        <translation>模型不符时不作任何建议。</translation>
    </message>
    <message>
        <source>To check first</source>
        <translation>请先确认</translation>
    </message>
    <message>
        <source>No chance of passing is stated while the log contradicts the files.</source>
        <translation>记录与文件不符时，不给出合格概率。</translation>
    </message>
    <message>
        <source>Not known: a recipe that passes may exist</source>
        <translation>尚不确定：可能存在合格的配方</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TaskRail</name>
    <message>
        <source>Drop a log anywhere in this window</source>
        <translation>把记录拖放到窗口任何位置</translation>
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
        <translation>上下联动(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;All curves</source>
        <translation>所有曲线(&amp;A)</translation>
    </message>
    <message>
        <source>a split needs a run that splits them</source>
        <translation>分开设定需要一次上下分开的测温</translation>
    </message>
    <message>
        <source>&amp;Keep this prediction</source>
        <translation>保留此预测(&amp;K)</translation>
    </message>
    <message>
        <source>&amp;Back to what was run</source>
        <translation>回到实际使用值(&amp;B)</translation>
    </message>
    <message>
        <source>Change &amp;note…</source>
        <translation>变更单(&amp;N)…</translation>
    </message>
    <message>
        <source>&amp;Save as a recipe…</source>
        <translation>保存为配方(&amp;S)…</translation>
    </message>
    <message>
        <source>Suggestions</source>
        <translation>建议</translation>
    </message>
    <message>
        <source>Its curves stay, to be laid over others</source>
        <translation>保留其曲线，以便与其他叠加</translation>
    </message>
    <message>
        <source>Save as &amp;PDF…</source>
        <translation>保存为 PDF(&amp;P)…</translation>
    </message>
    <message>
        <source>Save as &amp;text…</source>
        <translation>保存为文字(&amp;T)…</translation>
    </message>
    <message>
        <source>Top and bottom together</source>
        <translation>上下联动</translation>
    </message>
    <message>
        <source>Top and bottom apart</source>
        <translation>上下分开</translation>
    </message>
    <message>
        <source>Let a search move zone %1</source>
        <translation>允许搜寻变动温区 %1</translation>
    </message>
    <message>
        <source>Keep zone %1 in a search</source>
        <translation>搜寻时固定温区 %1</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>实测</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>letter of a prediction, what it changes</comment>
        <translation>%1：%2</translation>
    </message>
    <message numerus="yes">
        <source>Predicted and measured temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>预测与实测温度对时间，%n 支热电偶</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Back to rev %1</source>
        <translation>回到版本 %1(&amp;B)</translation>
    </message>
    <message>
        <source>Save as a recipe</source>
        <translation>保存为配方</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML 文件 (*.toml)</translation>
    </message>
    <message>
        <source>The recipe was not saved.</source>
        <translation>配方未能保存。</translation>
    </message>
    <message>
        <source>Saved as %1. It is a prediction: confirm it with an instrumented run.</source>
        <translation>已保存为 %1。此为预测：请以实际测温确认。</translation>
    </message>
    <message>
        <source>Save the change note</source>
        <translation>保存变更单</translation>
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
        <translation>变更单未能保存。</translation>
    </message>
    <message>
        <source>The change note is saved as %1.</source>
        <translation>变更单已保存为 %1。</translation>
    </message>
    <message>
        <source>the run had both sides alike: what each does alone is not known</source>
        <translation>该次测量上下温区相同：单侧的效果无从得知</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>Top and bottom together, checked</source>
        <translation>上下联动，已勾选</translation>
    </message>
    <message>
        <source>Top and bottom together, not checked</source>
        <translation>上下联动，未勾选</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TuneSession</name>
    <message>
        <source>Back to the recipe that was run</source>
        <translation>回到实际使用的配方</translation>
    </message>
    <message>
        <source>Keep the prediction %1</source>
        <translation>保留预测 %1</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>舍弃预测 %1</translation>
    </message>
    <message>
        <source>Speed to %1</source>
        <translation>速度设为 %1</translation>
    </message>
    <message>
        <source>Zone %1 to %2</source>
        <translation>温区 %1 设为 %2</translation>
    </message>
    <message>
        <source>Learn from %1 too</source>
        <translation>同时从 %1 学习</translation>
    </message>
    <message>
        <source>Do not learn from %1</source>
        <translation>不从 %1 学习</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WatchWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>选择(&amp;C)…</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>选择(&amp;H)…</translation>
    </message>
    <message>
        <source>&amp;Watch</source>
        <translation>监看(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>停止(&amp;S)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    <message>
        <source>Each log that appears in the folder is judged and kept by the first rule that matches its name. Files stay where they are; one that is still being written is waited for. Nothing is watched before you say so, and watching goes on when this window is closed.</source>
        <translation>文件夹中出现的每份记录都按第一条符合文件名的规则判定并存档。文件留在原处；仍在写入的文件会等待。您没有指示之前不会监看，关闭此窗口后仍继续监看。</translation>
    </message>
    <message>
        <source>Watch a folder</source>
        <translation>监看文件夹</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>选择：%1</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>文件夹(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Rules</source>
        <translation>规则(&amp;R)</translation>
    </message>
    <message>
        <source>rules.toml: which lot, window, board, oven and recipe belong to which file names</source>
        <translation>rules.toml：哪些文件名对应哪个批号、工艺窗口、电路板、炉子和配方</translation>
    </message>
    <message>
        <source>Logs that came</source>
        <translation>收到的记录</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>File</source>
        <translation>文件</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>裕量</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>处理结果</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>要监看的文件夹</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>规则</translation>
    </message>
    <message>
        <source>Rules (*.toml);;All files (*)</source>
        <translation>规则 (*.toml);;所有文件 (*)</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>未判定</translation>
    </message>
    <message>
        <source>kept already, as %1</source>
        <translation>已存档，编号 %1</translation>
    </message>
    <message>
        <source>kept as %1</source>
        <translation>存为 %1</translation>
    </message>
    <message>
        <source>Watching %1.</source>
        <translation>正在监看 %1。</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) kept</source>
        <translation>
            <numerusform>已存 %n 次测温</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) not judged.</source>
        <translation>
            <numerusform>%n 个文件未判定。</numerusform>
        </translation>
    </message>
    <message>
        <source>Some files wait until the archive can take them.</source>
        <translation>有些文件在等待存档可以收纳。</translation>
    </message>
    <message>
        <source>Some files are still being written.</source>
        <translation>有些文件仍在写入。</translation>
    </message>
    <message>
        <source>The server is away: what is kept waits on this computer.</source>
        <translation>服务器无响应：存档内容在这台电脑等候。</translation>
    </message>
    <message>
        <source>Nothing is watched: %1</source>
        <translation>没有监看：%1</translation>
    </message>
    <message>
        <source>Nothing is watched.</source>
        <translation>没有监看。</translation>
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
        <translation>新增一项要求</translation>
    </message>
    <message>
        <source>Liquidus</source>
        <translation>液相线</translation>
    </message>
    <message>
        <source>Solidus</source>
        <translation>固相线</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>仪器</translation>
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
        <translation>保存为新版本</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>返回结果</translation>
    </message>
    <message>
        <source>Requirements</source>
        <translation>要求</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>新版本</translation>
    </message>
    <message>
        <source>Re&amp;vision</source>
        <translation>版本(&amp;V)</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>简单</translation>
    </message>
    <message>
        <source>guarded, w = U</source>
        <translation>采用保护带，w = U</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Window being edited</source>
        <translation>编辑中的工艺窗口</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Alloy</source>
        <translation>合金(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Liquidus, °C</source>
        <translation>液相线，°C(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Solidus, °C</source>
        <translation>固相线，°C(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Decision rule</source>
        <translation>判定规则(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Classification for Tc</source>
        <translation>Tc 的分级(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Thermocouple</source>
        <translation>热电偶(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Instrument, ± °C</source>
        <translation>仪器，± °C(&amp;I)</translation>
    </message>
    <message>
        <source>Name of the window</source>
        <translation>工艺窗口名称</translation>
    </message>
    <message>
        <source>Alloy</source>
        <translation>合金</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>热电偶</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>判定规则</translation>
    </message>
    <message>
        <source>Classification for Tc</source>
        <translation>Tc 的分级</translation>
    </message>
    <message>
        <source>±%1 °C</source>
        <translation>±%1 °C</translation>
    </message>
    <message>
        <source>Every rule for windows is met.</source>
        <translation>符合工艺窗口的所有规则。</translation>
    </message>
    <message>
        <source>The window was not saved.</source>
        <translation>工艺窗口未能保存。</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>已保存为版本 %1：%2</translation>
    </message>
    <message>
        <source>Save revision %1</source>
        <translation>保存版本 %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ZonesPane</name>
    <message>
        <source>Results outside by zone</source>
        <translation>各温区的超限结果</translation>
    </message>
    <message numerus="yes">
        <source>Runs of %n ovens are listed: choose one above, so that each zone is one zone.</source>
        <translation>
            <numerusform>列表中有 %n 台炉的测温：请在上方选一台，温区才不会混在一起。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No required result of the %n run(s) listed is outside its limits.</source>
        <translation>
            <numerusform>列表中 %n 次测温没有任何必要结果超出界限。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n required result(s) are outside, and none traces to a zone: the runs have no oven and recipe, or no zone moves what is outside.</source>
        <translation>
            <numerusform>有 %n 个必要结果超限，但都无法归到温区：这些测温没有炉与配方，或没有温区会影响超限的项目。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Zone %1 leads: %2 of the %n result(s) outside trace to it, in %3 of %4 runs, the last on %5.</source>
        <translation>
            <numerusform>温区 %1 最多：%n 个超限结果中有 %2 个归于此区，见于 %4 次测温中的 %3 次，最近一次在 %5。</numerusform>
        </translation>
    </message>
    <message>
        <source>Results outside</source>
        <translation>超限结果</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>测温次数</translation>
    </message>
    <message>
        <source>Last on</source>
        <translation>最近一次</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>温区 %1</translation>
    </message>
    <message>
        <source>A result traces to the zones that move it most, whatever moved it: these are counts of what was judged, no measure of drift.</source>
        <translation>结果归于最能影响它的温区，不论实际原因为何：这里是判定结果的计数，并非漂移的测量。</translation>
    </message>
    <message numerus="yes">
        <source>The %n run(s) of zone %1 have a bar at their left in the list.</source>
        <translation>
            <numerusform>温区 %1 的 %n 次测温在列表左侧以竖条标示。</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a zone to find its runs in the list.</source>
        <translation>选一个温区即可在列表中找到其测温。</translation>
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
        <translation>电路板</translation>
    </message>
    <message>
        <source>Choose a board to see where each thermocouple sits</source>
        <translation>选择电路板即可看到每支热电偶的位置</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::LimitLanes</name>
    <message>
        <source>Limit lanes</source>
        <translation>界限图</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple.</source>
        <translation>每项要求一行，每支热电偶一格。</translation>
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
        <translation>批次轨道</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::ZoneStrip</name>
    <message>
        <source>Zone strip</source>
        <translation>温区条</translation>
    </message>
    <message>
        <source>no setpoint</source>
        <translation>无设定温度</translation>
    </message>
    <message>
        <source>top %1, bottom %2</source>
        <translation>上 %1，下 %2</translation>
    </message>
    <message>
        <source>Zone %1: %2</source>
        <translation>温区 %1：%2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3 s from oven entry, %4 to %5 s on the log</source>
        <comment>a placement in a zone</comment>
        <translation>%1 自进炉第 %2 至 %3 s，记录第 %4 至 %5 s</translation>
    </message>
    <message>
        <source>B less A: %1</source>
        <comment>the difference of two setpoints</comment>
        <translation>B 减 A：%1</translation>
    </message>
    <message>
        <source>B less A: top %1, bottom %2</source>
        <translation>B 减 A：上 %1，下 %2</translation>
    </message>
</context>
</TS>
