<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN">
<context>
    <name>Measures</name>
    <message>
        <source>The largest temperature in the trace.</source>
        <translation>曲线的最高温度。</translation>
    </message>
    <message>
        <source>Time from the last rise through the level to the peak; idle time before the oven does not count.</source>
        <translation>从最后一次上升通过该温度到峰值的时间；进炉前的等待不计。</translation>
    </message>
    <message>
        <source>Total time with the temperature above the level.</source>
        <translation>温度高于该温度的总时间。</translation>
    </message>
    <message>
        <source>Number of stretches of more than 1 s above the level; stretches that are not parted by a fall to 2 °C under the level or lower count as one.</source>
        <translation>高于该温度且超过 1 s 的段数；其间未降到该温度以下 2 °C 的各段算作一段。</translation>
    </message>
    <message>
        <source>Area between the curve and the level while the curve is above it (heating factor).</source>
        <translation>曲线高于该温度时，曲线与该温度之间的面积（加热因子）。</translation>
    </message>
    <message>
        <source>Total time between the two temperatures up to the peak.</source>
        <translation>到峰值为止，介于两个温度之间的总时间。</translation>
    </message>
    <message>
        <source>Total time at or above the reference (the trace&apos;s own peak, or a temperature) less the offset.</source>
        <translation>温度达到或高于参考值（自身峰值或指定温度）减去偏移的总时间。</translation>
    </message>
    <message>
        <source>Largest slope of a straight line fitted to the samples of a window of the stated length, up to the peak.</source>
        <translation>到峰值为止，对指定长度时间窗内采样点拟合直线的最大斜率。</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them up to the peak.</source>
        <translation>两个温度之差除以到峰值为止介于其间的总时间。</translation>
    </message>
    <message>
        <source>Largest downward slope of a straight line fitted to the samples of a window of the stated length, after the peak, as a positive number.</source>
        <translation>峰值之后，对指定长度时间窗内采样点拟合直线的最大下降斜率，以正数表示。</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them after the peak.</source>
        <translation>两个温度之差除以峰值之后介于其间的总时间。</translation>
    </message>
    <message>
        <source>Temperature at a time of the log, at a position in the oven, or at the end of a zone.</source>
        <translation>记录某一时刻、炉内某一位置或某温区末端的温度。</translation>
    </message>
    <message>
        <source>Temperature when the placement leaves the last zone; where no oven is given, of the last sample.</source>
        <translation>测点离开最后温区时的温度；未指定炉时为最后一个采样点。</translation>
    </message>
    <message>
        <source>Largest minus smallest peak over the board.</source>
        <translation>整板最高峰值减最低峰值。</translation>
    </message>
    <message>
        <source>Largest minus smallest temperature over the board when the first trace rises through the level.</source>
        <translation>第一条曲在线升通过该温度时，整板最高与最低温度之差。</translation>
    </message>
    <message>
        <source>Largest difference over the board at one moment, while the coldest trace is not past its own peak.</source>
        <translation>最冷曲线尚未过峰值之前，整板同一时刻的最大温差。</translation>
    </message>
    <message>
        <source>Time between the first and the last trace&apos;s first rise through the level.</source>
        <translation>第一条与最后一条曲线首次上升通过该温度的时间差。</translation>
    </message>
    <message>
        <source>Temperature where the wave starts.</source>
        <translation>进入波峰时的温度。</translation>
    </message>
    <message>
        <source>First peak in the wave minus the preheat temperature (thermal shock).</source>
        <translation>波峰中第一个峰值减预热温度（热冲击）。</translation>
    </message>
    <message>
        <source>Total time of all contacts with the solder.</source>
        <translation>所有接触焊料的总时间。</translation>
    </message>
    <message>
        <source>Time of the longest single contact with the solder.</source>
        <translation>单次接触焊料的最长时间。</translation>
    </message>
</context>
<context>
    <name>requirement</name>
    <message>
        <source>peak</source>
        <translation>峰值温度</translation>
    </message>
    <message>
        <source>steepest rise</source>
        <translation>最大升温斜率</translation>
    </message>
    <message>
        <source>steepest fall</source>
        <translation>最大降温斜率</translation>
    </message>
    <message>
        <source>spread of peaks</source>
        <translation>峰值温差</translation>
    </message>
    <message>
        <source>soak time</source>
        <translation>恒温时间</translation>
    </message>
    <message>
        <source>time above liquidus</source>
        <translation>液相线以上时间</translation>
    </message>
    <message>
        <source>ramp to soak</source>
        <translation>升至恒温的斜率</translation>
    </message>
    <message>
        <source>excursions above liquidus</source>
        <translation>超过液相线的次数</translation>
    </message>
    <message>
        <source>cooling from liquidus</source>
        <translation>液相线以下降温斜率</translation>
    </message>
    <message>
        <source>top side joints stay solid</source>
        <translation>上面焊点不熔化</translation>
    </message>
    <message>
        <source>step into the wave</source>
        <translation>进波峰温升</translation>
    </message>
    <message>
        <source>preheat temperature</source>
        <translation>预热温度</translation>
    </message>
    <message>
        <source>preheat rise</source>
        <translation>预热升温斜率</translation>
    </message>
    <message>
        <source>main wave contact</source>
        <translation>主波峰接触时间</translation>
    </message>
    <message>
        <source>longest contact</source>
        <translation>最长接触时间</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>接触时间</translation>
    </message>
    <message>
        <source>25 °C to peak</source>
        <translation>25 °C 到峰值</translation>
    </message>
    <message>
        <source>body time near Tc</source>
        <translation>本体接近 Tc 的时间</translation>
    </message>
    <message>
        <source>body time above liquidus</source>
        <translation>本体液相线以上时间</translation>
    </message>
    <message>
        <source>body soak time</source>
        <translation>本体恒温时间</translation>
    </message>
    <message>
        <source>body ramp-up</source>
        <translation>本体升温斜率</translation>
    </message>
    <message>
        <source>body ramp-down</source>
        <translation>本体降温斜率</translation>
    </message>
    <message>
        <source>body peak</source>
        <translation>本体峰值温度</translation>
    </message>
    <message>
        <source>body 25 °C to peak</source>
        <translation>本体 25 °C 到峰值</translation>
    </message>
    <message>
        <source>time near peak</source>
        <translation>峰值附近时间</translation>
    </message>
    <message>
        <source>time above 217</source>
        <translation>217 以上时间</translation>
    </message>
    <message>
        <source>spread at 217</source>
        <translation>217 时温差</translation>
    </message>
    <message>
        <source>peak of bodies</source>
        <translation>本体峰值温度</translation>
    </message>
    <message>
        <source>largest spread in soak</source>
        <translation>恒温区最大温差</translation>
    </message>
    <message>
        <source>lag at 217</source>
        <translation>到达 217 的时间差</translation>
    </message>
</context>
<context>
    <name>risk</name>
    <message>
        <source>The solder may melt only in part: balls and paste that do not run together, poor wetting, a joint that looks dull or grainy and breaks early.</source>
        <translation>焊料可能只部分熔化：锡球与焊膏不融合、润湿不良、焊点暗淡或粗糙并提早断裂。</translation>
    </message>
    <message>
        <source>Laminate, connectors and parts see more heat than they are made for: warping, discolouring, delamination, and a thicker brittle layer in the joint.</source>
        <translation>基板、连接器与元件受热超过其耐受：翘曲、变色、分层，焊点中脆性层变厚。</translation>
    </message>
    <message>
        <source>The board heats faster than its heavy parts can follow: large differences over the board at the peak.</source>
        <translation>板子升温快于大热容元件：峰值时整板温差大。</translation>
    </message>
    <message>
        <source>Flux is spent and surfaces oxidise before the solder melts, and parts stay hot longer than they were classified for.</source>
        <translation>焊料熔化前助焊剂已耗尽、表面氧化，元件受热时间超过其分级。</translation>
    </message>
    <message>
        <source>Too little time for the solder to wet and to run together: weak or open joints, mostly under heavy parts; wetting and voids change with this time.</source>
        <translation>焊料润湿与融合的时间不足：焊点薄弱或开路，多在大热容元件下方；润湿与空洞随此时间变化。</translation>
    </message>
    <message>
        <source>The intermetallic layer grows fast while the solder is liquid, and a thick one is brittle; parts and laminate are stressed by heat.</source>
        <translation>焊料液态时金属间化合物层增长快，过厚则脆；元件与基板承受热应力。</translation>
    </message>
    <message>
        <source>The solder does not melt as often as the process means it to.</source>
        <translation>焊料熔化的次数少于工艺要求。</translation>
    </message>
    <message>
        <source>The solder melts, freezes and melts again in one pass: disturbed joints, and parts that move.</source>
        <translation>一次过炉中焊料熔化、凝固又再熔化：焊点受扰动，元件移位。</translation>
    </message>
    <message>
        <source>Too little heat above the liquidus: incomplete wetting and early failure under vibration.</source>
        <translation>液相线以上热量不足：润湿不完全，振动下提早失效。</translation>
    </message>
    <message>
        <source>Too much heat above the liquidus: a thick intermetallic layer and early failure under vibration.</source>
        <translation>液相线以上热量过多：金属间化合物层过厚，振动下提早失效。</translation>
    </message>
    <message>
        <source>Solvent is still in the paste when it melts and heavy parts lag behind: spatter, voids, large differences over the board.</source>
        <translation>熔化时焊膏中仍有溶剂，大热容元件落后：飞溅、空洞、整板温差大。</translation>
    </message>
    <message>
        <source>Flux is spent and powder and pads oxidise before the solder melts: poor wetting, balls that do not run together.</source>
        <translation>焊料熔化前助焊剂已耗尽，锡粉与焊盘氧化：润湿不良，锡球不融合。</translation>
    </message>
    <message>
        <source>The coldest joints have little time at full temperature: incomplete wetting.</source>
        <translation>最冷的焊点在最高温附近的时间过短：润湿不完全。</translation>
    </message>
    <message>
        <source>Parts stay near their highest temperature longer than they were classified for.</source>
        <translation>元件停留在最高温附近的时间超过其分级。</translation>
    </message>
    <message>
        <source>The board heats slowly: the time is lacking later, or the belt must be slower.</source>
        <translation>板子升温慢：后段时间不足，或须放慢传送带。</translation>
    </message>
    <message>
        <source>Paste slumps and spatters, solder balls form, and ceramic parts can crack; parts are classified up to 3 °C/s.</source>
        <translation>焊膏坍塌、飞溅，产生锡珠，陶瓷元件可能破裂；元件分级至 3 °C/s。</translation>
    </message>
    <message>
        <source>Slow heating: below the melting point flux is spent and surfaces oxidise, above it the solder stays liquid longer.</source>
        <translation>升温过慢：熔点以下助焊剂耗尽、表面氧化，熔点以上焊料液态时间更长。</translation>
    </message>
    <message>
        <source>Joints that were made before melt again: parts shift or drop off, and the joints are disturbed.</source>
        <translation>先前完成的焊点再次熔化：元件移位或脱落，焊点受扰动。</translation>
    </message>
    <message>
        <source>The joint took up too little heat: solder does not wet it or does not rise in the hole.</source>
        <translation>焊点吸收的热量太少：焊料不润湿或不能爬升入孔。</translation>
    </message>
    <message>
        <source>Ceramic parts can crack, the board bends, and the solvent of the flux boils and spatters.</source>
        <translation>陶瓷元件可能开裂，电路板弯曲，助焊剂的溶剂沸腾飞溅。</translation>
    </message>
    <message>
        <source>Parts follow unevenly and are bent or cracked by heat; parts are classified up to 3 °C/s.</source>
        <translation>元件升温不均，受热弯曲或破裂；元件分级至 3 °C/s。</translation>
    </message>
    <message>
        <source>The solder freezes slowly: coarse grain, a thicker intermetallic layer, parts that can still move.</source>
        <translation>焊料凝固慢：晶粒粗大，金属间化合物层较厚，元件仍可能移动。</translation>
    </message>
    <message>
        <source>Thermal shock: cracks in ceramic parts and joints, warped boards; parts are classified up to 6 °C/s.</source>
        <translation>热冲击：陶瓷元件与焊点破裂、板子翘曲；元件分级至 6 °C/s。</translation>
    </message>
    <message>
        <source>The board is colder here than the process means it to be; what follows starts late.</source>
        <translation>板子在此处比工艺要求冷；后续开始得晚。</translation>
    </message>
    <message>
        <source>The board is hotter here than the process means it to be; what follows starts early.</source>
        <translation>板子在此处比工艺要求热；后续开始得早。</translation>
    </message>
    <message>
        <source>The board cools further inside the oven than it needs to.</source>
        <translation>板子在炉内冷却超过所需。</translation>
    </message>
    <message>
        <source>The board leaves hot: solder can still be soft when it is handled, and people can be burnt.</source>
        <translation>板子出炉时仍热：取放时焊料可能仍软，人员可能烫伤。</translation>
    </message>
    <message>
        <source>The peaks lie closer together than the process means them to.</source>
        <translation>各峰值比工艺要求更接近。</translation>
    </message>
    <message>
        <source>One recipe can hardly serve both ends: the coldest joint is too cold or the hottest part too hot. 10 °C is a usual target.</source>
        <translation>一个配方难以兼顾两端：最冷焊点太冷，或最热元件太热。10 °C 为常用目标。</translation>
    </message>
    <message>
        <source>The board is more even here than the process means it to be.</source>
        <translation>板子在此处比工艺要求更均匀。</translation>
    </message>
    <message>
        <source>The solder melts at one end of a part or board while the other is still solid: chip parts stand up, large parts tilt.</source>
        <translation>元件或板子一端焊料已熔而另一端仍为固态：小型芯片立碑，大型元件倾斜。</translation>
    </message>
    <message>
        <source>The board is more even than the process means it to be.</source>
        <translation>板子比工艺要求更均匀。</translation>
    </message>
    <message>
        <source>Uneven heat bends the board and leaves heavy parts behind at the peak.</source>
        <translation>受热不均使板子弯曲，大热容元件在峰值时落后。</translation>
    </message>
    <message>
        <source>The traces melt closer together than the process means them to.</source>
        <translation>各点熔化时间比工艺要求更接近。</translation>
    </message>
    <message>
        <source>The last joints melt long after the first: the first are too long liquid when the last have had enough.</source>
        <translation>最后的焊点比最初的晚很多才熔化：等最后的足够时，最初的液态时间已过长。</translation>
    </message>
    <message>
        <source>Flux is not active and the step into the solder is large: poor hole fill, bridges, cracked ceramics.</source>
        <translation>助焊剂未活化且进入焊料的温升大：通孔填锡不良、桥接、陶瓷破裂。</translation>
    </message>
    <message>
        <source>Flux is spent before the wave, and joints on the top side come near their melting point.</source>
        <translation>助焊剂在波峰前耗尽，上面焊点接近熔点。</translation>
    </message>
    <message>
        <source>The step into the solder is smaller than the process means it to be: flux may be spent by a hot preheat.</source>
        <translation>进入焊料的温升小于工艺要求：预热过热可能耗尽助焊剂。</translation>
    </message>
    <message>
        <source>Thermal shock: ceramic capacitors crack when they enter the solder too cold.</source>
        <translation>热冲击：陶瓷电容太冷进入焊料时会破裂。</translation>
    </message>
    <message>
        <source>Too little contact: holes are not filled, pads not wetted.</source>
        <translation>接触不足：通孔未填满，焊盘未润湿。</translation>
    </message>
    <message>
        <source>Too much contact: copper and pads dissolve, solder bridges, parts take damage.</source>
        <translation>接触过多：铜与焊盘溶蚀、焊料桥接、元件受损。</translation>
    </message>
    <message>
        <source>Too much contact in one wave: copper and pads dissolve, parts take damage.</source>
        <translation>单一波峰接触过多：铜与焊盘溶蚀、元件受损。</translation>
    </message>
    <message>
        <source>The package is hotter than it was classified for: moisture inside can lift its layers apart or crack it.</source>
        <translation>封装温度超过其分级：内部湿气可能使其分层或破裂。</translation>
    </message>
</context>
<context>
    <name>source</name>
    <message>
        <source>common practice, no source</source>
        <translation>业界惯例，无出处</translation>
    </message>
</context>
<context>
    <name>LotRules</name>
    <message>
        <source>1 point beyond 3 sigma</source>
        <translation>1 点超出 3 倍标准差</translation>
    </message>
    <message>
        <source>2 of 3 points in a row beyond 2 sigma on one side</source>
        <translation>连续 3 点中有 2 点在同侧超出 2 倍标准差</translation>
    </message>
    <message>
        <source>4 of 5 points in a row beyond 1 sigma on one side</source>
        <translation>连续 5 点中有 4 点在同侧超出 1 倍标准差</translation>
    </message>
    <message>
        <source>8 points in a row on one side of the centre</source>
        <translation>连续 8 点在中心线同侧</translation>
    </message>
    <message>
        <source>9 points in a row on one side of the centre</source>
        <translation>连续 9 点在中心线同侧</translation>
    </message>
    <message>
        <source>6 points in a row rising or falling</source>
        <translation>连续 6 点上升或下降</translation>
    </message>
    <message>
        <source>14 points in a row alternating up and down</source>
        <translation>连续 14 点交替上下</translation>
    </message>
    <message>
        <source>15 points in a row within 1 sigma of the centre</source>
        <translation>连续 15 点在中心线 1 倍标准差以内</translation>
    </message>
    <message>
        <source>8 points in a row beyond 1 sigma, on both sides</source>
        <translation>连续 8 点在两侧超出 1 倍标准差</translation>
    </message>
</context>
<context>
    <name>phrase</name>
    <message>
        <source>No unit in the file: read as °C. As °F the top would be {0} °C.</source>
        <translation>文件中没有单位：按 °C 读取。若为 °F，最高会是 {0} °C。</translation>
    </message>
    <message>
        <source>No unit in the file: read as thermocouple voltage in mV. As °C the top would be {0} °C.</source>
        <translation>文件中没有单位：按热电偶电压 mV 读取。若为 °C，最高会是 {0} °C。</translation>
    </message>
    <message>
        <source>No unit in the file: read as °F, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>文件中没有单位：按 °F 读取，最高为 {0} °C。若为 °C，则为 {1} °C。</translation>
    </message>
    <message>
        <source>No unit in the file: read as K, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>文件中没有单位：按 K 读取，最高为 {0} °C。若为 °C，则为 {1} °C。</translation>
    </message>
    <message>
        <source>Whole numbers up to {0} are no temperatures of a board: read as tenths of a degree, though no scale is stated.</source>
        <translation>高达 {0} 的整数不是电路板的温度：虽未注明倍率，仍按十分之一度读取。</translation>
    </message>
    <message>
        <source>A factor of {0} is stated, but the numbers are temperatures as they stand: taken as the resolution.</source>
        <translation>注明了倍率 {0}，但数字本身已是温度：视为分辨率。</translation>
    </message>
    <message>
        <source>No type of thermocouple is stated: taken as K, the most common one.</source>
        <translation>未注明热电偶类型：按最常见的 K 型计。</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts near 0 mV: taken as 25 °C.</source>
        <translation>未注明冷端，且记录从接近 0 mV 开始：按 25 °C 计。</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts at the voltage of a room&apos;s temperature: taken as 0 °C.</source>
        <translation>未注明冷端，且记录从室温的电压开始：按 0 °C 计。</translation>
    </message>
    <message>
        <source>The unit of the interval is not stated: read as {0} s.</source>
        <translation>未注明间隔的单位：按 {0} s 读取。</translation>
    </message>
    <message>
        <source>No unit of time is stated: the numbers are read as fractions of a day, which makes the run last {0}.</source>
        <translation>未注明时间单位：数字按一天的分数读取，本次测温历时 {0}。</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as milliseconds, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>未注明时间单位：按毫秒读取，历时 {0}；若为秒，则为 {1}。</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as minutes, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>未注明时间单位：按分钟读取，历时 {0}；若为秒，则为 {1}。</translation>
    </message>
    <message>
        <source>Nothing says what the first column counts: read as seconds.</source>
        <translation>没有注明第一列计的是什么：按秒读取。</translation>
    </message>
    <message>
        <source>Times of two parts are read as hours and minutes, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>两段式时间按时和分读取，历时 {0}；另一种读法则为 {1}。</translation>
    </message>
    <message>
        <source>Times of two parts are read as minutes and seconds, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>两段式时间按分和秒读取，历时 {0}；另一种读法则为 {1}。</translation>
    </message>
    <message>
        <source>The date may be read in more than one order, and nothing in the file settles it: read as {0}. Durations do not depend on it.</source>
        <translation>日期有不止一种读法，文件中没有依据：按 {0} 读取。历时不受影响。</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: the rows are spread evenly, {1} s apart.</source>
        <translation>时间四舍五入到 {0} s，有若干行时间相同：各行平均分布，间隔 {1} s。</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: they are not evenly apart, so those of one time are spread over it.</source>
        <translation>时间四舍五入到 {0} s，有若干行时间相同：间隔不均，同一时间的各行在其中分布。</translation>
    </message>
    <message>
        <source>Numbers such as {0} may have a decimal sign or thousands in them, and nothing in the file settles it: read with &apos;{1}&apos; as the decimal sign.</source>
        <translation>像 {0} 这样的数字可能含小数点或千分位，文件中没有依据：以“{1}”为小数点读取。</translation>
    </message>
    <message>
        <source>More than one encoding is plausible: read as {0}. Numbers do not depend on it.</source>
        <translation>可能的编码不止一种：按 {0} 读取。数字不受影响。</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its voltage, type {1}, is turned about a reference junction at {2} °C. The result is off by twice what the junction differs from that.</source>
        <translation>{0} 的导线接反：其电压（{1} 型）以 {2} °C 的参考端反转。参考端若有偏差，结果的偏差为其两倍。</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its readings are mirrored at {1} °C. The result is off by twice what the reference junction differs from that.</source>
        <translation>{0} 的导线接反：其读数以 {1} °C 为轴镜像。参考端若有偏差，结果的偏差为其两倍。</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as seconds, which makes the run last {0}.</source>
        <translation>未注明时间单位：按秒读取，历时 {0}。</translation>
    </message>
    <message>
        <source>The date goes on from day to day only if read in the order {0}.</source>
        <translation>只有按 {0} 的顺序读取，日期才会逐日前进。</translation>
    </message>
    <message>
        <source>{0} states no unit; read in that of the other channels.</source>
        <translation>{0} 未注明单位；按其他通道的单位读取。</translation>
    </message>
    <message>
        <source>{0} channels state no unit; read in that of the other channels.</source>
        <translation>{0} 个通道未注明单位；按其他通道的单位读取。</translation>
    </message>
    <message>
        <source>No unit is stated and no channel has a reading.</source>
        <translation>未注明单位，且没有任何通道有读数。</translation>
    </message>
    <message>
        <source>Units differ between channels: {0}.</source>
        <translation>各通道的单位不同：{0}。</translation>
    </message>
    <message>
        <source>Rows are {0} s apart by &quot;{1}&quot;.</source>
        <translation>各行间隔 {0} s，依据“{1}”。</translation>
    </message>
    <message>
        <source>The clock passes midnight: times go on.</source>
        <translation>时钟跨过午夜：时间接续。</translation>
    </message>
    <message>
        <source>The clock passes twelve: times go on.</source>
        <translation>时钟跨过十二点：时间接续。</translation>
    </message>
    <message>
        <source>{0} is read with the sign of its voltage turned: its wires are exchanged.</source>
        <translation>{0} 以反转的电压正负号读取：其导线接反。</translation>
    </message>
    <message>
        <source>Read from sheet {0}; also in the file: {1}.</source>
        <translation>读自工作表 {0}；文件中另有：{1}。</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log; also in the file: {0}.</source>
        <translation>读自最像记录的表格；文件中另有：{0}。</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log of {0}.</source>
        <translation>在 {0} 个表格中，读取最像记录的一个。</translation>
    </message>
    <message>
        <source>the archive holds {0} and also {1}, not read</source>
        <translation>压缩包内有 {0}，另有 {1} 未读取</translation>
    </message>
    <message>
        <source>of more than {0} files in the archive only the first {1} were looked at</source>
        <translation>压缩包内超过 {0} 个文件，只查看了前 {1} 个</translation>
    </message>
    <message>
        <source>{0} bytes behind the gzip data were not read</source>
        <translation>gzip 数据之后的 {0} 字节未读取</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;: {1} formulas have no stored result and count as empty; a spreadsheet program stores them when it saves the workbook</source>
        <translation>工作表“{0}”：{1} 个公式没有保存结果，视为空白；电子表格程序保存工作簿时会一并保存</translation>
    </message>
    <message>
        <source>The last row is cut off and was left out.</source>
        <translation>最后一行不完整，已略去。</translation>
    </message>
    <message>
        <source>{0} rows end before the last column: what is missing there counts as no reading.</source>
        <translation>{0} 行在最后一列之前结束：缺少的部分视为没有读数。</translation>
    </message>
    <message>
        <source>1 header or text line in or behind the table was left out.</source>
        <translation>表格中或之后有 1 行标题或文字已略去。</translation>
    </message>
    <message>
        <source>{0} header or text lines in or behind the table were left out.</source>
        <translation>表格中或之后有 {0} 行标题或文字已略去。</translation>
    </message>
    <message>
        <source>1 labelled line in or behind the table was left out.</source>
        <translation>表格中或之后有 1 行带标示的数据已略去。</translation>
    </message>
    <message>
        <source>{0} labelled lines in or behind the table were left out.</source>
        <translation>表格中或之后有 {0} 行带标示的数据已略去。</translation>
    </message>
    <message>
        <source>1 comment or event line in or behind the table was left out.</source>
        <translation>表格中或之后有 1 行注释或事件已略去。</translation>
    </message>
    <message>
        <source>{0} comment or event lines in or behind the table were left out.</source>
        <translation>表格中或之后有 {0} 行注释或事件已略去。</translation>
    </message>
    <message>
        <source>{0} rows of numbers behind the table go back in time and were left out.</source>
        <translation>表格之后有 {0} 行数字时间倒退，已略去。</translation>
    </message>
    <message>
        <source>Decimals are written with a point in {0} and with a comma in {1} columns: each is read by its own.</source>
        <translation>小数在 {0} 列用点，在 {1} 列用逗号：各按其写法读取。</translation>
    </message>
    <message>
        <source>Decimal commas stand without quotes between the commas of the delimiter; the counts of fields allow one reading.</source>
        <translation>小数逗号未加引号，与分隔逗号混在一起；字段数只容许一种读法。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone and stands at its temperature throughout.</source>
        <translation>{0} 保留但不判定：名称像温区，且始终维持其温度。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its unit is &quot;{1}&quot;, none of temperature.</source>
        <translation>{0} 保留但不判定：其单位为“{1}”，不是温度单位。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its values are no temperatures.</source>
        <translation>{0} 保留但不判定：其数值不是温度。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: no unit of temperature stands there and it never changes.</source>
        <translation>{0} 保留但不判定：没有温度单位，且从不改变。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it stays far below the others.</source>
        <translation>{0} 保留但不判定：远低于其他通道。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is a statistic of {1}.</source>
        <translation>{0} 会保留但不评判：它是 {1} 的统计值。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it holds a few small whole numbers, as flags do.</source>
        <translation>{0} 会保留但不评判：它只含少数小整数，如同标志。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone, though it moves as the board does.</source>
        <translation>{0} 会保留但不评判：它的名称像温区，但变化与电路板相同。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a statistic, and is the highest, lowest or mean of the channels.</source>
        <translation>{0} 会保留但不评判：它的名称像统计值，且是各通道的最高、最低或平均值。</translation>
    </message>
    <message>
        <source>zones are by the oven model, which follows this log within {0} °C (root mean square)</source>
        <translation>温区依据炉子模型，与此记录相差 {0} °C 以内（均方根）</translation>
    </message>
    <message>
        <source>zones are a first estimate from setpoints and curves: the oven model does not fit ({0})</source>
        <translation>温区为依设定值与曲线的初步估计：炉子模型不符（{0}）</translation>
    </message>
    <message>
        <source>stands at {0} °C</source>
        <translation>停在 {0} °C</translation>
    </message>
    <message>
        <source>suspected: follows the air more than the other traces do</source>
        <translation>疑似：比其他曲线更跟随空气</translation>
    </message>
    <message>
        <source>suspected: swapped with {0}</source>
        <translation>疑似：与 {0} 互换</translation>
    </message>
    <message>
        <source>all traces step by {0} °C</source>
        <translation>所有曲线跳动 {0} °C</translation>
    </message>
    <message>
        <source>{0} samples, fewer than the 3 of a trace</source>
        <translation>{0} 个采样，少于一条曲线所需的 3 个</translation>
    </message>
    <message>
        <source>no row with a usable time</source>
        <translation>没有任何行有可用的时间</translation>
    </message>
    <message>
        <source>1 row without a time later than the row before</source>
        <translation>有 1 行的时间不晚于前一行</translation>
    </message>
    <message>
        <source>{0} rows without a time later than the row before</source>
        <translation>有 {0} 行的时间不晚于前一行</translation>
    </message>
    <message>
        <source>falls as the others rise</source>
        <translation>在其他测点升温时下降</translation>
    </message>
    <message>
        <source>a log</source>
        <translation>一份记录</translation>
    </message>
    <message>
        <source>a log of many samples</source>
        <translation>含多个采样的记录</translation>
    </message>
    <message>
        <source>a table of times and temperatures</source>
        <translation>时间与温度的表格</translation>
    </message>
    <message>
        <source>a column of temperatures</source>
        <translation>一列温度</translation>
    </message>
    <message>
        <source>a column of times, or an interval</source>
        <translation>一列时间或一个间隔</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>一个时间</translation>
    </message>
    <message>
        <source>a time with a decimal point</source>
        <translation>一个以句点为小数符号的时间</translation>
    </message>
    <message>
        <source>a time with a decimal comma</source>
        <translation>一个以逗号为小数符号的时间</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>一个温度</translation>
    </message>
    <message>
        <source>times</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>times that go on</source>
        <translation>持续前进的时间</translation>
    </message>
    <message>
        <source>time, channel and value</source>
        <translation>时间、通道与数值</translation>
    </message>
    <message>
        <source>seconds above 0</source>
        <translation>大于 0 的秒数</translation>
    </message>
    <message>
        <source>°C, °F, K or mV</source>
        <translation>°C、°F、K 或 mV</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>一个文件</translation>
    </message>
    <message>
        <source>a whole gzip file</source>
        <translation>完整的 gzip 文件</translation>
    </message>
    <message>
        <source>a whole zip archive</source>
        <translation>完整的 zip 文件</translation>
    </message>
    <message>
        <source>a whole .xlsx workbook</source>
        <translation>完整的 .xlsx 工作簿</translation>
    </message>
    <message>
        <source>a zip archive with a log in it</source>
        <translation>内含记录的 zip 文件</translation>
    </message>
    <message>
        <source>a text log, a workbook or an HTML table</source>
        <translation>文本记录、工作簿或 HTML 表格</translation>
    </message>
    <message>
        <source>a workbook (.xlsx, .ods), an HTML table or a text log</source>
        <translation>工作簿（.xlsx、.ods）、HTML 表格或文本记录</translation>
    </message>
    <message>
        <source>one with a table of readings</source>
        <translation>含读数表格者</translation>
    </message>
    <message>
        <source>one that can be read without</source>
        <translation>无需密码即可读取者</translation>
    </message>
    <message>
        <source>numbers with a decimal point, or another delimiter</source>
        <translation>使用小数点的数字，或另一种分隔符</translation>
    </message>
    <message>
        <source>1 cell</source>
        <translation>1 个单元格</translation>
    </message>
    <message>
        <source>{0} cells</source>
        <translation>{0} 个单元格</translation>
    </message>
    <message>
        <source>binary data (byte {0} at offset {1})</source>
        <translation>二进制数据（偏移 {1} 处的字节 {0}）</translation>
    </message>
    <message>
        <source>bytes that {0} does not allow</source>
        <translation>{0} 不允许的字节</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls) or one with a password</source>
        <translation>旧式二进制工作簿（.xls）或有密码的工作簿</translation>
    </message>
    <message>
        <source>a PDF document</source>
        <translation>一份 PDF 文档</translation>
    </message>
    <message>
        <source>about {0} rows of {1} numbers</source>
        <translation>约 {0} 行，每行 {1} 个数字</translation>
    </message>
    <message>
        <source>at most {0} channels</source>
        <translation>最多 {0} 个通道</translation>
    </message>
    <message>
        <source>at most {0} numbers in a log</source>
        <translation>一份记录最多 {0} 个数字</translation>
    </message>
    <message>
        <source>text in {0}</source>
        <translation>{0} 编码的文本</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>空的文件</translation>
    </message>
    <message>
        <source>a header and no rows behind it</source>
        <translation>只有标题行而没有数据行</translation>
    </message>
    <message>
        <source>one sample</source>
        <translation>一个采样</translation>
    </message>
    <message>
        <source>no sample</source>
        <translation>没有采样</translation>
    </message>
    <message>
        <source>the same time in every row</source>
        <translation>每一行的时间都相同</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>一个文件夹</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>损坏</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation>不完整</translation>
    </message>
    <message>
        <source>an HTML document without a table</source>
        <translation>没有表格的 HTML 文档</translation>
    </message>
    <message>
        <source>a workbook with a password</source>
        <translation>有密码的工作簿</translation>
    </message>
    <message>
        <source>{0} channels</source>
        <translation>{0} 个通道</translation>
    </message>
    <message>
        <source>found nothing but blanks, expected a log</source>
        <translation>只有空白，应为一份记录</translation>
    </message>
    <message>
        <source>found no table, expected one of times and temperatures</source>
        <translation>没有表格，应为时间与温度的表格</translation>
    </message>
    <message>
        <source>found no column of temperatures, expected one at least</source>
        <translation>没有温度列，至少应有一列</translation>
    </message>
    <message>
        <source>found no column of times and no stated interval, expected times, or an interval in seconds between rows</source>
        <translation>没有时间列也没有注明间隔，应有时间或各行间隔秒数</translation>
    </message>
    <message>
        <source>found no times in column {0}</source>
        <translation>第 {0} 列没有时间</translation>
    </message>
    <message>
        <source>the log has no temperature channel</source>
        <translation>记录没有温度通道</translation>
    </message>
    <message>
        <source>no row has a usable time</source>
        <translation>没有任何行有可用的时间</translation>
    </message>
    <message>
        <source>cannot be read: {0}</source>
        <translation>无法读取：{0}</translation>
    </message>
    <message>
        <source>there is not enough memory for it</source>
        <translation>内存不足，无法处理</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>没有此文件或文件夹</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>权限不足</translation>
    </message>
    <message>
        <source>The counter of times starts anew at {0}: the rows go on.</source>
        <translation>时间计数在 {0} 处从头开始：各行接续计时。</translation>
    </message>
    <message>
        <source>At line {0} another table begins, of other channels: {1}, {2} rows. It was not read.</source>
        <translation>第 {0} 行开始另一个表格，通道不同：{1}，{2} 行。未读取。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it counts runs, channels or the like.</source>
        <translation>{0} 保留但不判定：它计的是次数、通道数或类似的数目。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it says how sure the column before it is.</source>
        <translation>{0} 保留但不判定：它说明前一列的不确定度。</translation>
    </message>
    <message>
        <source>The table at line {0} has the same times: its channels are read beside those before.</source>
        <translation>第 {0} 行的表格时间相同：其通道与前面的通道一并读取。</translation>
    </message>
    <message>
        <source>What stands behind ± is no part of the readings and was left out.</source>
        <translation>± 之后的内容不属于读数，已略去。</translation>
    </message>
    <message>
        <source>times that start anew in {0} places</source>
        <translation>在 {0} 处从头开始的时间</translation>
    </message>
    <message>
        <source>The clock jumps forward an hour at {0}:00 at night, as where summer time begins: the rows go on without the jump.</source>
        <translation>时钟在夜间 {0}:00 往前跳一小时，如夏令时开始：各行不计跳变，接续。</translation>
    </message>
    <message>
        <source>The clock jumps back an hour to {0}:00 at night, as where summer time ends: the rows go on without the jump.</source>
        <translation>时钟在夜间往回跳一小时到 {0}:00，如夏令时结束：各行不计跳变，接续。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it ends after a few rows, as a table beside the log does.</source>
        <translation>{0} 保留但不判定：几行后即结束，像记录旁的另一个表格。</translation>
    </message>
    <message>
        <source>The header names {0} columns and the rows have {1}: the names are taken from the left.</source>
        <translation>标题行有 {0} 列名称，数据行有 {1} 列：名称自左侧依序对应。</translation>
    </message>
    <message>
        <source>The rows stand with the newest first: read from the last to the first.</source>
        <translation>各行由新到旧排列：自最后一行往前读取。</translation>
    </message>
    <message>
        <source>The rows do not stand in the order of their times: put in order channel by channel.</source>
        <translation>各行未依时间顺序排列：已逐通道排序。</translation>
    </message>
    <message>
        <source>{0} has a reading in one row of {1}: it keeps the times of these.</source>
        <translation>{0} 每 {1} 行有一个读数：保留这些行的时间。</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; stands in {1} cells for readings: taken as no reading.</source>
        <translation>“{0}”出现在 {1} 个读数单元格中：视为没有读数。</translation>
    </message>
    <message>
        <source>a whole JSON document</source>
        <translation>完整的 JSON 文档</translation>
    </message>
    <message>
        <source>a JSON document of readings</source>
        <translation>含读数的 JSON 文档</translation>
    </message>
    <message>
        <source>records, rows or columns of readings</source>
        <translation>读数的记录、行或列</translation>
    </message>
    <message>
        <source>one record a line</source>
        <translation>每行一条记录</translation>
    </message>
    <message>
        <source>the column &quot;{0}&quot; of the header</source>
        <translation>标题行的“{0}”列</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>最多 {0}</translation>
    </message>
    <message>
        <source>{0} cells in a row</source>
        <translation>一行 {0} 个单元格</translation>
    </message>
    <message>
        <source>a JSON document without a table</source>
        <translation>没有表格的 JSON 文档</translation>
    </message>
    <message>
        <source>JSON that is damaged or cut off</source>
        <translation>损坏或不完整的 JSON</translation>
    </message>
    <message>
        <source>dmy</source>
        <translation>日、月、年</translation>
    </message>
    <message>
        <source>mdy</source>
        <translation>月、日、年</translation>
    </message>
    <message>
        <source>ymd</source>
        <translation>年、月、日</translation>
    </message>
    <message>
        <source>there is no archive</source>
        <translation>那里没有存档</translation>
    </message>
    <message>
        <source>the file is empty, no archive</source>
        <translation>文件是空的，不是存档</translation>
    </message>
    <message>
        <source>it is a database of another program, no archive</source>
        <translation>那是另一个程序的数据库，不是存档</translation>
    </message>
    <message>
        <source>the archive has version {0}, this program knows up to {1}: it takes a newer program</source>
        <translation>存档的版本是 {0}，本程序只认得到 {1}：需要较新的程序</translation>
    </message>
    <message>
        <source>the archive is open for reading only</source>
        <translation>存档是以只读方式打开的</translation>
    </message>
    <message>
        <source>there is no archive in the database yet</source>
        <translation>数据库中还没有存档</translation>
    </message>
    <message>
        <source>the server refuses: this user may only read the archive</source>
        <translation>服务器拒绝：此用户只能读取存档</translation>
    </message>
    <message>
        <source>the server does not answer</source>
        <translation>服务器没有响应</translation>
    </message>
    <message>
        <source>the server refuses ({0})</source>
        <translation>服务器拒绝（{0}）</translation>
    </message>
    <message>
        <source>the database reports an error ({0})</source>
        <translation>数据库报告错误（{0}）</translation>
    </message>
    <message>
        <source>the file&apos;s disk does not serve a write-ahead log</source>
        <translation>文件所在的磁盘不支持预写日志（WAL）</translation>
    </message>
    <message>
        <source>the PostgreSQL driver of Qt is not installed</source>
        <translation>未安装 Qt 的 PostgreSQL 驱动程序</translation>
    </message>
    <message>
        <source>there is no record {0}</source>
        <translation>没有记录 {0}</translation>
    </message>
    <message>
        <source>{0} is damaged</source>
        <translation>{0} 已损坏</translation>
    </message>
    <message>
        <source>{0} is missing</source>
        <translation>缺少 {0}</translation>
    </message>
    <message>
        <source>the bytes kept as {0} are damaged</source>
        <translation>以 {0} 保存的字节已损坏</translation>
    </message>
    <message>
        <source>has changed since it was read: judge again</source>
        <translation>读取之后已变更：请重新判定</translation>
    </message>
    <message>
        <source>has changed while it was judged</source>
        <translation>判定期间已变更</translation>
    </message>
    <message>
        <source>the log is no longer read as one run</source>
        <translation>记录文件不再被读成一次测温</translation>
    </message>
    <message>
        <source>no run of the lot is in the archive</source>
        <translation>存档中没有此批次的测温</translation>
    </message>
    <message>
        <source>its name does not match the rule&apos;s expression for lot, serial or operator</source>
        <translation>文件名不符合规则中批次、序列号或操作员的表达式</translation>
    </message>
    <message>
        <source>cannot be written: {0}</source>
        <translation>无法写入：{0}</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>不是文件夹</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>是文件夹</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>磁盘空间不足</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>文件系统只读</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>输入输出错误</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>空缺</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>加引号的文本</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true 或 false</translation>
    </message>
    <message>
        <source>a number or a text in quotes</source>
        <translation>数字或加引号的文本</translation>
    </message>
    <message>
        <source>an array of numbers</source>
        <translation>数字列表</translation>
    </message>
    <message>
        <source>an array of texts</source>
        <translation>文本列表</translation>
    </message>
    <message>
        <source>tables: {0}</source>
        <translation>表格：{0}</translation>
    </message>
    <message>
        <source>a [[rule]]</source>
        <translation>一条规则 [[rule]]</translation>
    </message>
    <message>
        <source>a regular expression</source>
        <translation>正则表达式</translation>
    </message>
    <message>
        <source>the recipe that the oven ran</source>
        <translation>炉所用的配方</translation>
    </message>
    <message>
        <source>the oven that the recipe ran on</source>
        <translation>使用此配方的炉</translation>
    </message>
    <message>
        <source>a file that people edit</source>
        <translation>供人编辑的文件</translation>
    </message>
    <message>
        <source>a file or the name of a window</source>
        <translation>文件或工艺窗口的名称</translation>
    </message>
    <message>
        <source>a file or the name of an oven</source>
        <translation>文件或炉的名称</translation>
    </message>
    <message>
        <source>a file or the name of a recipe</source>
        <translation>文件或配方的名称</translation>
    </message>
    <message>
        <source>a file or the name of a board</source>
        <translation>文件或电路板的名称</translation>
    </message>
    <message>
        <source>a file or the name of a layout</source>
        <translation>文件或读取格式的名称</translation>
    </message>
    <message>
        <source>the log ends while the temperature still rises</source>
        <translation>记录结束时温度仍在上升</translation>
    </message>
    <message>
        <source>the log starts at its highest temperature</source>
        <translation>记录从最高温度开始</translation>
    </message>
    <message>
        <source>for a trace the log ends while the temperature still rises</source>
        <translation>有一条曲线在记录结束时温度仍在上升</translation>
    </message>
    <message>
        <source>for a trace the log starts at its highest temperature</source>
        <translation>有一条曲线在记录开始时就是最高温度</translation>
    </message>
    <message>
        <source>the log starts above {0}</source>
        <translation>记录开始时高于 {0}</translation>
    </message>
    <message>
        <source>the log ends above {0}</source>
        <translation>记录结束时高于 {0}</translation>
    </message>
    <message>
        <source>the log starts at {0}</source>
        <translation>记录从 {0} 开始</translation>
    </message>
    <message>
        <source>the log starts at {0} or above</source>
        <translation>记录开始时不低于 {0}</translation>
    </message>
    <message>
        <source>the log ends at {0} or above</source>
        <translation>记录结束时不低于 {0}</translation>
    </message>
    <message>
        <source>the peak is {0}, not above {1}</source>
        <translation>峰值为 {0}，未高于 {1}</translation>
    </message>
    <message>
        <source>the peak is {0}, it does not reach {1}</source>
        <translation>峰值为 {0}，未达 {1}</translation>
    </message>
    <message>
        <source>no time was spent between the two temperatures</source>
        <translation>两个温度之间没有经过时间</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise; the sample interval is {1}</source>
        <translation>升温段内没有长 {0} 且至少含 3 个采样的区间；采样间隔为 {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall; the sample interval is {1}</source>
        <translation>降温段内没有长 {0} 且至少含 3 个采样的区间；采样间隔为 {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise within the range of temperatures; the sample interval is {1}</source>
        <translation>升温段的温度范围内没有长 {0} 且至少含 3 个采样的区间；采样间隔为 {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall within the range of temperatures; the sample interval is {1}</source>
        <translation>降温段的温度范围内没有长 {0} 且至少含 3 个采样的区间；采样间隔为 {1}</translation>
    </message>
    <message>
        <source>never reaches {0}, counts to the peak</source>
        <translation>从未达到 {0}，计算到峰值为止</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace starts at {2}</source>
        <translation>{0} 在 {1}，曲线从 {2} 开始</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace ends at {2}</source>
        <translation>{0} 在 {1}，曲线到 {2} 结束</translation>
    </message>
    <message>
        <source>the time asked for</source>
        <translation>所要求的时刻</translation>
    </message>
    <message>
        <source>the end of zone {0}</source>
        <translation>温区 {0} 的末端</translation>
    </message>
    <message>
        <source>the end of the last zone</source>
        <translation>最后温区的末端</translation>
    </message>
    <message>
        <source>needs the oven and its recipe</source>
        <translation>需要炉及其配方</translation>
    </message>
    <message>
        <source>the log does not show when the board entered the oven</source>
        <translation>记录未显示电路板何时入炉</translation>
    </message>
    <message>
        <source>the oven has no zone {0}</source>
        <translation>这台炉没有温区 {0}</translation>
    </message>
    <message>
        <source>the oven has no zones</source>
        <translation>这台炉没有温区</translation>
    </message>
    <message>
        <source>no wave seen: no slope of 5 °C/s over 1 s</source>
        <translation>未见波峰：1 s 内没有 5 °C/s 的斜率</translation>
    </message>
    <message>
        <source>the log does not show the start of the wave</source>
        <translation>记录未显示进入波峰的时刻</translation>
    </message>
    <message>
        <source>no peak of 10 °C or more follows the start of the wave</source>
        <translation>进入波峰后没有 10 °C 或以上的峰值</translation>
    </message>
    <message>
        <source>the log ends before the joint has left the solder</source>
        <translation>记录在焊点离开焊料之前就结束</translation>
    </message>
    <message>
        <source>there is no time that all traces cover</source>
        <translation>没有所有曲线共有的时段</translation>
    </message>
    <message>
        <source>the log starts with a trace above {0}</source>
        <translation>记录开始时已有曲线高于 {0}</translation>
    </message>
    <message>
        <source>no trace rises above {0}</source>
        <translation>没有曲线升到 {0} 以上</translation>
    </message>
    <message>
        <source>the log does not show a trace that rises above {0}</source>
        <translation>记录未显示有曲线升到 {0} 以上</translation>
    </message>
    <message>
        <source>not all traces have data at {0}, when the first one reaches {1}</source>
        <translation>在 {0} 第一条曲线到达 {1} 时，并非所有曲线都有数据</translation>
    </message>
    <message>
        <source>a trace starts above {0}</source>
        <translation>有一条曲线开始时高于 {0}</translation>
    </message>
    <message>
        <source>the coldest trace does not reach {0}</source>
        <translation>最冷的曲线未达 {0}</translation>
    </message>
    <message>
        <source>no sample has the coldest trace in the range of temperatures</source>
        <translation>没有任何采样使最冷的曲线落在温度范围内</translation>
    </message>
    <message>
        <source>not every trace rises above {0}</source>
        <translation>并非每条曲线都升到 {0} 以上</translation>
    </message>
    <message>
        <source>the log does not show every trace rise above {0}</source>
        <translation>记录未显示每条曲线都升到 {0} 以上</translation>
    </message>
    <message>
        <source>no trace to compare</source>
        <translation>没有可比较的曲线</translation>
    </message>
    <message>
        <source>one trace only</source>
        <translation>只有一条曲线</translation>
    </message>
    <message>
        <source>a gap in the trace hides it</source>
        <translation>曲线的缺口遮住了它</translation>
    </message>
    <message>
        <source>fewer than 3 samples</source>
        <translation>少于 3 个采样</translation>
    </message>
    <message>
        <source>fewer than 3 good samples: {0}</source>
        <translation>有效采样少于 3 个：{0}</translation>
    </message>
    <message>
        <source>Tc is not known: enter the part&apos;s thickness and volume</source>
        <translation>Tc 未知：请填入元件的厚度与体积</translation>
    </message>
    <message>
        <source>Tc is a limit of bodies</source>
        <translation>Tc 是元件本体的界限</translation>
    </message>
    <message>
        <source>the log does not show it</source>
        <translation>记录未显示</translation>
    </message>
    <message>
        <source>the log does not show them</source>
        <translation>记录未显示它们</translation>
    </message>
    <message>
        <source>enter which part {0} is on in the board file</source>
        <translation>请在板文件中填入 {0} 位于哪个元件</translation>
    </message>
    <message>
        <source>enter the part {0} in the board file</source>
        <translation>请在板文件中填入元件 {0}</translation>
    </message>
    <message>
        <source>enter the package thickness and volume of {0} in the board file</source>
        <translation>请在板文件中填入 {0} 的封装厚度与体积</translation>
    </message>
    <message>
        <source>enter the package thickness of {0} in the board file</source>
        <translation>请在板文件中填入 {0} 的封装厚度</translation>
    </message>
    <message>
        <source>enter the package volume of {0} in the board file</source>
        <translation>请在板文件中填入 {0} 的封装体积</translation>
    </message>
    <message>
        <source>enter the classification, Pb-free or SnPb, in the window {0}</source>
        <translation>请在工艺窗口 {0} 中填入分级：Pb-free 或 SnPb</translation>
    </message>
    <message>
        <source>the board has no placement that these bind: {0}</source>
        <translation>电路板上没有适用下列要求的测点：{0}</translation>
    </message>
    <message>
        <source>{0} is not judged for {1}: enter its side in the board file</source>
        <translation>{0} 未对 {1} 判定：请在板文件中填入其所在面</translation>
    </message>
    <message>
        <source>{0}: {1}, {2}, needs Tc (J-STD-020)</source>
        <translation>{0}：{2} 的{1}需要 Tc（J-STD-020）</translation>
    </message>
    <message>
        <source>{0}, {1}: its lower limit is not below its upper limit, which is Tc: nothing can pass</source>
        <translation>{1} 的{0}：下限不低于上限（即 Tc）：没有任何值能合格</translation>
    </message>
    <message>
        <source>{0}, {1}: its target does not lie inside its limits once Tc is put in, and is not used</source>
        <translation>{1} 的{0}：代入 Tc 后目标不在界限之内，因此不采用</translation>
    </message>
    <message>
        <source>the log has no channel {0}</source>
        <translation>记录中没有通道 {0}</translation>
    </message>
    <message>
        <source>{0}: the log has no channel {1}</source>
        <translation>{0}：记录中没有通道 {1}</translation>
    </message>
    <message>
        <source>{0}: its limits are narrower than 2 U, so nothing can pass under the guarded rule</source>
        <translation>{0}：界限间距小于 2 U，因此在保护带规则下没有任何值能合格</translation>
    </message>
    <message>
        <source>{0}: K class 1 is taken for {1}</source>
        <translation>{0}：{1} 以 K class 1 计</translation>
    </message>
    <message>
        <source>it knows ovens, not waves</source>
        <translation>它只认得炉，不认得波峰</translation>
    </message>
    <message>
        <source>{0} of zone {1} is {2} °C, outside the oven&apos;s {3} to {4} °C</source>
        <translation>温区 {1} 的 {0} 为 {2} °C，超出炉的 {3} 至 {4} °C</translation>
    </message>
    <message>
        <source>{0} steps by {1} °C from zone {2} to {3}, more than the oven&apos;s {4} °C</source>
        <translation>{0} 从温区 {2} 到 {3} 相差 {1} °C，超过炉的 {4} °C</translation>
    </message>
    <message>
        <source>the recipe is for the oven &quot;{0}&quot;, not for &quot;{1}&quot;</source>
        <translation>配方属于炉“{0}”，而非“{1}”</translation>
    </message>
    <message>
        <source>the speed is {0} mm/min, outside the oven&apos;s {1} to {2} mm/min</source>
        <translation>速度为 {0} mm/min，超出炉的 {1} 至 {2} mm/min</translation>
    </message>
    <message>
        <source>top and bottom of zone {0} differ by {1} °C, more than the oven&apos;s {2} °C</source>
        <translation>温区 {0} 上下相差 {1} °C，超过炉的 {2} °C</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, expected {2}</source>
        <translation>“{1}”为 {0}，应为{2}</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot;, expected {1}</source>
        <translation>缺少“{0}”，应为{1}</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>{1} 缺少“{0}”，应为{2}</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>不认得的键“{0}”，是否为“{1}”？</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, expected {1}</source>
        <translation>不认得的键“{0}”，应为{1}</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, did you mean &quot;{2}&quot;?</source>
        <translation>{1} 中有不认得的键“{0}”，是否为“{2}”？</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>{1} 中有不认得的键“{0}”，应为{2}</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>不认得的测量项目“{0}”，是否为“{1}”？</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, expected {1}</source>
        <translation>不认得的测量项目“{0}”，应为{1}</translation>
    </message>
    <message>
        <source>no valid TOML: {0}</source>
        <translation>TOML 无效：{0}</translation>
    </message>
    <message>
        <source>the clock was set back by {0} s: later times are moved on</source>
        <translation>时钟被拨回 {0} s：之后的时间已顺延</translation>
    </message>
    <message>
        <source>found [{0}] and [[{1}]], expected [[{2}]] each time</source>
        <translation>同时有 [{0}] 与 [[{1}]]，应每次都写 [[{2}]]</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; a second time, expected each key once</source>
        <translation>“{0}”重复出现，每个键只能出现一次</translation>
    </message>
    <message>
        <source>found a text without quotes, expected a number, true, false, or a text in quotes</source>
        <translation>文字没有引号，应为数字、true、false 或引号内的文字</translation>
    </message>
    <message>
        <source>found a comma behind a value, expected a decimal point, or the end of the line</source>
        <translation>值后有逗号，应为小数点或行尾</translation>
    </message>
    <message>
        <source>found bytes that are no UTF-8, expected a text in UTF-8</source>
        <translation>有非 UTF-8 的字节，应为 UTF-8 文本</translation>
    </message>
    <message>
        <source>cannot be parsed: {0}</source>
        <translation>无法解析：{0}</translation>
    </message>
    <message>
        <source>is kept as it is: {0}</source>
        <translation>保持原样：{0}</translation>
    </message>
    <message>
        <source>found {0}, expected a file</source>
        <translation>这是{0}，应为一个文件</translation>
    </message>
    <message>
        <source>found more than 4 MB, expected a file that people edit</source>
        <translation>超过 4 MB，应为人工编辑的文件</translation>
    </message>
    <message>
        <source>Tc is a temperature, &quot;{0}&quot; is none</source>
        <translation>Tc 是温度，“{0}”不是</translation>
    </message>
    <message>
        <source>Tc binds the bodies of parts, but &quot;applies_to&quot; leaves them out</source>
        <translation>Tc 适用于元件本体，但“applies_to”未包含本体</translation>
    </message>
    <message>
        <source>found Tc for &quot;{0}&quot;, but the window has no &quot;classification&quot; to take it from</source>
        <translation>“{0}”为 Tc，但工艺窗口没有可据以取值的“classification”</translation>
    </message>
    <message>
        <source>limits crossed: lower {0}, upper {1}</source>
        <translation>界限颠倒：下限 {0}，上限 {1}</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; an upper limit but no target</source>
        <translation>工艺窗口“{0}”为“{1}”设了上限但没有目标</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; a lower limit but no target</source>
        <translation>工艺窗口“{0}”为“{1}”设了下限但没有目标</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no limit, expected &quot;lower&quot;, &quot;upper&quot; or both</source>
        <translation>“{0}”没有界限，应有“lower”、“upper”或两者</translation>
    </message>
    <message>
        <source>has no limit</source>
        <translation>没有界限</translation>
    </message>
    <message>
        <source>found no channel in &quot;applies_to&quot;</source>
        <translation>“applies_to”中没有通道</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on the board as a whole</source>
        <translation>“applies_to”为 {0}，应为{1}：“{2}”是对整块电路板测量的</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on each trace</source>
        <translation>“applies_to”为 {0}，应为{1}：“{2}”是对每条曲线测量的</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; in a window for reflow, expected process = &quot;wave&quot;</source>
        <translation>回流工艺窗口中有“{0}”，应为 process = &quot;wave&quot;</translation>
    </message>
    <message>
        <source>found &quot;tolerance_C&quot; beside &quot;thermocouple&quot;, expected one of the two</source>
        <translation>“tolerance_C”与“thermocouple”并存，只应有其一</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, expected {1}</source>
        <translation>热电偶为“{0}”，应为{1}</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, whose tolerances begin at 600 °C, expected {1}</source>
        <translation>热电偶为“{0}”，其公差从 600 °C 起，应为{1}</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, a class that ends at 40 °C, expected {1}</source>
        <translation>热电偶为“{0}”，此等级只到 40 °C，应为{1}</translation>
    </message>
    <message>
        <source>a type (K, J, T, E, N, R or S) with &quot;class 1&quot; or &quot;class 2&quot; (IEC 60584-1) or &quot;special&quot; or &quot;standard&quot; (ASTM E230), such as &quot;K class 1&quot;</source>
        <translation>类型（K、J、T、E、N、R 或 S）加上“class 1”或“class 2”（IEC 60584-1），或“special”或“standard”（ASTM E230），例如“K class 1”</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no parameter &quot;{1}&quot;</source>
        <translation>“{0}”没有参数“{1}”</translation>
    </message>
    <message>
        <source>{0}: found {1}, expected {2}</source>
        <translation>{0}：为 {1}，应为{2}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs {1}</source>
        <translation>“{0}”需要 {1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs level, or the window a &quot;liquidus_C&quot;</source>
        <translation>“{0}”需要 level，或工艺窗口需有“liquidus_C”</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; was given a parameter that it does not know</source>
        <translation>“{0}”收到不认得的参数</translation>
    </message>
    <message>
        <source>over must be more than 0 s</source>
        <translation>over 必须大于 0 s</translation>
    </message>
    <message>
        <source>offset must not be negative</source>
        <translation>offset 不可为负</translation>
    </message>
    <message>
        <source>&quot;temperature at&quot; needs one of time, position_mm or zone</source>
        <translation>“temperature at”需要 time、position_mm、zone 其中之一</translation>
    </message>
    <message>
        <source>T1 must be above T2</source>
        <translation>T1 必须高于 T2</translation>
    </message>
    <message>
        <source>T1 must be below T2</source>
        <translation>T1 必须低于 T2</translation>
    </message>
    <message>
        <source>found an empty &quot;channel&quot;, expected its name in the log</source>
        <translation>“channel”是空的，应为其在记录中的名称</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>通道“{0}”重复出现，第一次在第 {1} 行</translation>
    </message>
    <message>
        <source>found the part &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>元件“{0}”重复出现，第一次在第 {1} 行</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, did you mean &quot;{2}&quot;?</source>
        <translation>板文件用到通道“{0}”，但“{1}”中没有，是否为“{2}”？</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, expected {2}</source>
        <translation>板文件用到通道“{0}”，但“{1}”中没有，应为{2}</translation>
    </message>
    <message>
        <source>found {0} in &quot;{1}&quot;, expected {2}</source>
        <translation>“{1}”中有 {0}，应为 {2}</translation>
    </message>
    <message>
        <source>found {0} setpoints in &quot;top_C&quot; but {1} in &quot;bottom_C&quot;, expected one for each heating zone in both</source>
        <translation>“top_C”中有 {0} 个设定值，“bottom_C”中却有 {1} 个，两者都应为每个加热区一个</translation>
    </message>
    <message>
        <source>1 setpoint</source>
        <translation>1 个设定值</translation>
    </message>
    <message>
        <source>{0} setpoints</source>
        <translation>{0} 个设定值</translation>
    </message>
    <message>
        <source>{0}, one for each heating zone of &quot;{1}&quot;</source>
        <translation>{0} 个，“{1}”每个加热温区一个</translation>
    </message>
    <message>
        <source>{0}, one for each cooling zone of &quot;{1}&quot;</source>
        <translation>{0} 个，“{1}”每个冷却温区一个</translation>
    </message>
    <message>
        <source>found the zone &quot;{0}&quot; a second time</source>
        <translation>温区“{0}”重复出现</translation>
    </message>
    <message>
        <source>the revision has no name</source>
        <translation>修订没有名称</translation>
    </message>
    <message>
        <source>the window is at revision &quot;{0}&quot; already</source>
        <translation>工艺窗口已是修订“{0}”</translation>
    </message>
    <message>
        <source>a whole number of at least {0}</source>
        <translation>不小于 {0} 的整数</translation>
    </message>
    <message>
        <source>a whole number from {0} to {1}</source>
        <translation>{0} 到 {1} 的整数</translation>
    </message>
    <message>
        <source>a whole number from 1</source>
        <translation>从 1 起的整数</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>数字</translation>
    </message>
    <message>
        <source>two numbers, the lower one first</source>
        <translation>两个数字，较小者在前</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>大于 0 的数字</translation>
    </message>
    <message>
        <source>a number of at least 0</source>
        <translation>不小于 0 的数字</translation>
    </message>
    <message>
        <source>a temperature in °C</source>
        <translation>以 °C 表示的温度</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;</source>
        <translation>以 °C 表示的温度，或“peak”</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;Tc&quot;</source>
        <translation>以 °C 表示的温度，或“Tc”</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;, &quot;Tc&quot;</source>
        <translation>以 °C 表示的温度，或“peak”、“Tc”</translation>
    </message>
    <message>
        <source>a number of seconds</source>
        <translation>秒数</translation>
    </message>
    <message>
        <source>a number of millimetres</source>
        <translation>毫米数</translation>
    </message>
    <message>
        <source>the name of a zone</source>
        <translation>温区名称</translation>
    </message>
    <message>
        <source>a length above 0</source>
        <translation>大于 0 的长度</translation>
    </message>
    <message>
        <source>a length of at least 0</source>
        <translation>不小于 0 的长度</translation>
    </message>
    <message>
        <source>a mass above 0</source>
        <translation>大于 0 的质量</translation>
    </message>
    <message>
        <source>a position in mm</source>
        <translation>以 mm 表示的位置</translation>
    </message>
    <message>
        <source>a speed above 0</source>
        <translation>大于 0 的速度</translation>
    </message>
    <message>
        <source>a volume above 0</source>
        <translation>大于 0 的体积</translation>
    </message>
    <message>
        <source>an area above 0</source>
        <translation>大于 0 的面积</translation>
    </message>
    <message>
        <source>length and width</source>
        <translation>长与宽</translation>
    </message>
    <message>
        <source>the channel&apos;s name in the log, or its number from 1</source>
        <translation>通道在记录中的名称，或从 1 起的编号</translation>
    </message>
    <message>
        <source>its name in the log</source>
        <translation>其在记录中的名称</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>the zone&apos;s name in quotes</source>
        <translation>以引号括起来的温区名称</translation>
    </message>
    <message>
        <source>at least one [[zone]] of kind &quot;heat&quot;</source>
        <translation>至少一个“heat”类的 [[zone]]</translation>
    </message>
    <message>
        <source>one setpoint for each heating zone</source>
        <translation>每个加热温区一个设定值</translation>
    </message>
    <message>
        <source>at least one [[requirement]]</source>
        <translation>至少一个 [[requirement]]</translation>
    </message>
    <message>
        <source>a number, &quot;Tc&quot; or &quot;Tc-5&quot;</source>
        <translation>数字、“Tc”或“Tc-5”</translation>
    </message>
    <message>
        <source>&quot;body&quot;, &quot;all&quot; or a list of channels</source>
        <translation>“body”、“all”或通道清单</translation>
    </message>
    <message>
        <source>&quot;all&quot;, &quot;joint&quot;, &quot;body&quot; or a list of channels</source>
        <translation>“all”、“joint”、“body”或通道清单</translation>
    </message>
    <message>
        <source>classification = &quot;Pb-free&quot; or &quot;SnPb&quot;</source>
        <translation>classification = &quot;Pb-free&quot; 或 &quot;SnPb&quot;</translation>
    </message>
    <message>
        <source>an upper limit above the lower one</source>
        <translation>高于下限的上限</translation>
    </message>
    <message>
        <source>a limit above 0 or a target</source>
        <translation>大于 0 的界限，或目标</translation>
    </message>
    <message>
        <source>a target</source>
        <translation>目标</translation>
    </message>
    <message>
        <source>a target strictly between {0} and {1}</source>
        <translation>严格介于 {0} 与 {1} 之间的目标</translation>
    </message>
    <message>
        <source>a target above {0}</source>
        <translation>高于 {0} 的目标</translation>
    </message>
    <message>
        <source>a target below {0}</source>
        <translation>低于 {0} 的目标</translation>
    </message>
    <message>
        <source>at least one channel</source>
        <translation>至少一个通道</translation>
    </message>
    <message>
        <source>at most the liquidus, {0}</source>
        <translation>不高于液相线 {0}</translation>
    </message>
    <message>
        <source> or </source>
        <translation>或</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>文件已存在</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>文件名过长</translation>
    </message>
    <message>
        <source>Too many open files</source>
        <translation>打开的文件过多</translation>
    </message>
    <message>
        <source>Operation not permitted</source>
        <translation>不允许此操作</translation>
    </message>
    <message>
        <source>a pipe</source>
        <translation>管道</translation>
    </message>
    <message>
        <source>a device</source>
        <translation>设备</translation>
    </message>
    <message>
        <source>found {0}, expected {1} as in the other rows</source>
        <translation>找到{0}，应如其他各行为{1}</translation>
    </message>
    <message>
        <source>found {0}, expected as many fields as names: the comma is the delimiter and seems to be the decimal sign as well, and {1}</source>
        <translation>找到{0}，字段数应与名称数相同：逗号是分隔符号，似乎也是小数点，而且{1}</translation>
    </message>
    <message>
        <source>as many fields as names</source>
        <translation>与名称数相同的字段数</translation>
    </message>
    <message>
        <source>no encoding named &quot;{0}&quot; is known</source>
        <translation>没有名为“{0}”的字符编码</translation>
    </message>
    <message>
        <source>the name of a character encoding</source>
        <translation>字符编码的名称</translation>
    </message>
    <message>
        <source>found {0}, expected text in that encoding</source>
        <translation>找到{0}，应为该编码的文字</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; places a cell out of range, expected {1}</source>
        <translation>工作表“{0}”有单元格超出范围，应为{1}</translation>
    </message>
    <message>
        <source>a cell out of range</source>
        <translation>超出范围的单元格</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; spreads {1} cells over millions of empty or repeated ones, expected a table</source>
        <translation>工作表“{0}”的 {1} 个单元格散布在数百万个空格或重复的单元格中，应为表格</translation>
    </message>
    <message>
        <source>cells too far apart</source>
        <translation>相距过远的单元格</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>表格</translation>
    </message>
    <message>
        <source>found a gzip file that is {0}, expected a whole one</source>
        <translation>gzip 文件{0}，应为完整的文件</translation>
    </message>
    <message>
        <source>found an OpenDocument file without a table, expected a spreadsheet</source>
        <translation>找到没有表格的 OpenDocument 文件，应为电子表格</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>没有表格</translation>
    </message>
    <message>
        <source>a spreadsheet</source>
        <translation>电子表格</translation>
    </message>
    <message>
        <source>found no sheet &quot;{0}&quot;, expected one of: {1}</source>
        <translation>没有工作表“{0}”，应为其中之一：{1}</translation>
    </message>
    <message>
        <source>found {0} and no rows of numbers, expected {1}</source>
        <translation>找到{0}但没有数字行，应为{1}</translation>
    </message>
    <message>
        <source>found the unit {0} and no column of temperatures, expected °C, °F, K or mV</source>
        <translation>单位为 {0} 且没有温度列，应为 °C、°F、K 或 mV</translation>
    </message>
    <message>
        <source>found the unit {0}, expected °C, °F, K or mV</source>
        <translation>单位为 {0}，应为 °C、°F、K 或 mV</translation>
    </message>
    <message>
        <source>found no columns of channel names and values, expected time, channel and value</source>
        <translation>没有通道名称与数值的字段，应有时间、通道与数值</translation>
    </message>
    <message>
        <source>found more than {0} readings, expected a log below the cap on its size</source>
        <translation>读数超过 {0} 个，记录大小应在上限之内</translation>
    </message>
    <message>
        <source>more than {0} readings</source>
        <translation>超过 {0} 个读数</translation>
    </message>
    <message>
        <source>a log below the cap on its size</source>
        <translation>大小在上限之内的记录</translation>
    </message>
    <message>
        <source>found more than {0} names of channels</source>
        <translation>通道名称超过 {0} 个</translation>
    </message>
    <message>
        <source>the name of a channel</source>
        <translation>通道名称</translation>
    </message>
    <message>
        <source>reading was stopped</source>
        <translation>读取已停止</translation>
    </message>
    <message>
        <source>the interval between rows is not above 0</source>
        <translation>各行的间隔不大于 0</translation>
    </message>
    <message>
        <source>found the kind of time &quot;{0}&quot;, expected a known one</source>
        <translation>时间种类为“{0}”，应为已知的种类</translation>
    </message>
    <message>
        <source>a kind of time</source>
        <translation>时间种类</translation>
    </message>
    <message>
        <source>column {0} holds no clock times or dates, expected {1}</source>
        <translation>第 {0} 列没有时刻或日期，应为{1}</translation>
    </message>
    <message>
        <source>column {0} holds no plain numbers, expected {1}</source>
        <translation>第 {0} 列没有纯数字，应为{1}</translation>
    </message>
    <message>
        <source>{0} unpacks to too much, expected {1}</source>
        <translation>{0} 解开后过大，应为{1}</translation>
    </message>
    <message>
        <source>too many unpacked bytes</source>
        <translation>解开后的字节过多</translation>
    </message>
    <message>
        <source>found a workbook without its part {0}, expected a whole .xlsx workbook</source>
        <translation>工作簿缺少其部分 {0}，应为完整的 .xlsx 工作簿</translation>
    </message>
    <message>
        <source>found a document type definition, expected the XML of a workbook</source>
        <translation>找到文件类型定义，应为工作簿的 XML</translation>
    </message>
    <message>
        <source>a document type definition</source>
        <translation>文件类型定义</translation>
    </message>
    <message>
        <source>the XML of a workbook</source>
        <translation>工作簿的 XML</translation>
    </message>
    <message>
        <source>{0} cannot be unpacked: {1}</source>
        <translation>{0} 无法解开：{1}</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到工艺窗口“{0}”，是否为“{1}”？</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, neither as a file nor as a name; `ovenwright windows` lists the names</source>
        <translation>找不到工艺窗口“{0}”，既非文件也非名称；`ovenwright windows` 可列出名称</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到炉“{0}”，是否为“{1}”？</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, neither as a file nor as a name; `ovenwright ovens` lists the names</source>
        <translation>找不到炉“{0}”，既非文件也非名称；`ovenwright ovens` 可列出名称</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到配方“{0}”，是否为“{1}”？</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, neither as a file nor as a name; `ovenwright recipes` lists the names</source>
        <translation>找不到配方“{0}”，既非文件也非名称；`ovenwright recipes` 可列出名称</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到板文件“{0}”，是否为“{1}”？</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, neither as a file nor as a name; `ovenwright boards` lists the names</source>
        <translation>找不到板文件“{0}”，既非文件也非名称；`ovenwright boards` 可列出名称</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到格式“{0}”，是否为“{1}”？</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, neither as a file nor as a name; `ovenwright layouts` lists the names</source>
        <translation>找不到格式“{0}”，既非文件也非名称；`ovenwright layouts` 可列出名称</translation>
    </message>
    <message>
        <source>&quot;{0}&quot;</source>
        <translation>“{0}”</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, did you mean &quot;{2}&quot;?</source>
        <translation>“{1}”为 {0}，是否为“{2}”？</translation>
    </message>
    <message>
        <source>a table: [{0}]</source>
        <translation>表格：[{0}]</translation>
    </message>
    <message>
        <source>tables: [[{0}]]</source>
        <translation>表格数组：[[{0}]]</translation>
    </message>
    <message>
        <source>found 1 run, expected at least {0}</source>
        <translation>有 1 次过炉，应至少有 {0} 次</translation>
    </message>
    <message>
        <source>found {0} runs, expected at least {1}</source>
        <translation>有 {0} 次过炉，应至少有 {1} 次</translation>
    </message>
    <message>
        <source>{0} fields under {1} names</source>
        <translation>{1} 个名称下有 {0} 个字段</translation>
    </message>
    <message>
        <source>no way to join them fits</source>
        <translation>没有任何合并方式相符</translation>
    </message>
    <message>
        <source>the counts allow more than one way to join them</source>
        <translation>数目容许不只一种合并方式</translation>
    </message>
    <message>
        <source>{0} fields of whole numbers, every second one a single digit</source>
        <translation>{0} 个整数字段，每隔一个只有一位数</translation>
    </message>
    <message>
        <source>found {0}, expected numbers: the comma seems to be the delimiter and the decimal sign as well, and no header tells how many columns there are</source>
        <translation>找到{0}，应为数字：逗号似乎既是分隔符号又是小数点，且没有表头说明有几列</translation>
    </message>
    <message>
        <source>at most {0} MiB for a file of this size</source>
        <translation>此大小的文件最多 {0} MiB</translation>
    </message>
    <message>
        <source>one sample, {0} °C</source>
        <translation>1 个采样，{0} °C</translation>
    </message>
    <message>
        <source>{0} samples</source>
        <translation>{0} 个采样</translation>
    </message>
    <message>
        <source>open</source>
        <translation>开路</translation>
    </message>
    <message>
        <source>over-range</source>
        <translation>超出量程</translation>
    </message>
    <message>
        <source>dropout</source>
        <translation>掉线</translation>
    </message>
    <message>
        <source>spike</source>
        <translation>尖峰</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>卡住</translation>
    </message>
    <message>
        <source>reversed polarity</source>
        <translation>极性接反</translation>
    </message>
    <message>
        <source>detached</source>
        <translation>脱落</translation>
    </message>
    <message>
        <source>swapped placement</source>
        <translation>测点接错</translation>
    </message>
    <message>
        <source>cold-junction step</source>
        <translation>冷接点阶跃</translation>
    </message>
    <message>
        <source>clock gap</source>
        <translation>时间间隙</translation>
    </message>
    <message>
        <source>time going back</source>
        <translation>时间倒退</translation>
    </message>
    <message>
        <source>the log</source>
        <translation>记录</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed</source>
        <translation>{0}：{1}，于 {2} s，已移除</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed: {3}</source>
        <translation>{0}：{1}，于 {2} s，已移除：{3}</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in</source>
        <translation>{0}：{1}，于 {2} s，已保留</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in: {3}</source>
        <translation>{0}：{1}，于 {2} s，已保留：{3}</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, removed</source>
        <translation>{0}：{1}，{2} 至 {3} s，已移除</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, removed: {4}</source>
        <translation>{0}：{1}，{2} 至 {3} s，已移除：{4}</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, left in</source>
        <translation>{0}：{1}，{2} 至 {3} s，已保留</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, left in: {4}</source>
        <translation>{0}：{1}，{2} 至 {3} s，已保留：{4}</translation>
    </message>
    <message>
        <source>from &quot;{0}&quot;</source>
        <translation>出自“{0}”</translation>
    </message>
    <message>
        <source>tabs between cells</source>
        <translation>以 Tab 分隔</translation>
    </message>
    <message>
        <source>blanks between cells</source>
        <translation>以空格分隔</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; between cells</source>
        <translation>以“{0}”分隔</translation>
    </message>
    <message>
        <source>fixed width</source>
        <translation>固定列宽</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>小数点为逗号</translation>
    </message>
    <message>
        <source>time as {0}</source>
        <translation>时间为{0}</translation>
    </message>
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
        <translation>时刻 m:s</translation>
    </message>
    <message>
        <source>clock h:m</source>
        <translation>时刻 h:m</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>时刻 h:m:s</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>日期与时间</translation>
    </message>
    <message>
        <source>serial days</source>
        <translation>序列天数</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>自 1970 年起的秒数</translation>
    </message>
    <message>
        <source>index</source>
        <translation>行号</translation>
    </message>
    <message>
        <source>header in line {0}</source>
        <translation>表头在第 {0} 行</translation>
    </message>
    <message>
        <source>no header</source>
        <translation>无表头</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 行</translation>
    </message>
    <message>
        <source>{0} rows</source>
        <translation>{0} 行</translation>
    </message>
    <message>
        <source>{0} skipped</source>
        <translation>略过 {0} 行</translation>
    </message>
    <message>
        <source>one every {0} s</source>
        <translation>每 {0} s 一行</translation>
    </message>
    <message>
        <source>found {0}, expected a drawing alone: a logo runs nothing and fetches nothing</source>
        <translation>找到{0}，应只有图形：标志不得执行或下载任何东西</translation>
    </message>
    <message>
        <source>the element &lt;{0}&gt;</source>
        <translation>元素 &lt;{0}&gt;</translation>
    </message>
    <message>
        <source>the handler {0}</source>
        <translation>处理程序 {0}</translation>
    </message>
    <message>
        <source>a link to {0}</source>
        <translation>指向 {0} 的链接</translation>
    </message>
    <message>
        <source>entities of its own</source>
        <translation>自订实体</translation>
    </message>
    <message>
        <source>a processing instruction</source>
        <translation>处理指令</translation>
    </message>
    <message>
        <source>a style that fetches</source>
        <translation>会下载的样式</translation>
    </message>
    <message>
        <source>is a damaged SVG drawing: {0}</source>
        <translation>是损坏的 SVG 图形：{0}</translation>
    </message>
    <message>
        <source>is a drawing without a size</source>
        <translation>是没有尺寸的图形</translation>
    </message>
    <message>
        <source>is no picture that a sheet can show, expected an SVG drawing, a PNG or a JPEG picture</source>
        <translation>不是报告可显示的图片，应为 SVG 图形、PNG 或 JPEG 图片</translation>
    </message>
    <message>
        <source>has {0} × {1} points: no logo is that large</source>
        <translation>有 {0} × {1} 点：标志不会这么大</translation>
    </message>
    <message>
        <source>is a damaged picture: {0}</source>
        <translation>是损坏的图片：{0}</translation>
    </message>
    <message>
        <source>is larger than 4 MB: no logo is</source>
        <translation>大于 4 MB：标志不会这么大</translation>
    </message>
    <message>
        <source>the record&apos;s body is damaged</source>
        <translation>记录内容已损坏</translation>
    </message>
    <message>
        <source>packed bytes are damaged</source>
        <translation>压缩数据已损坏</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>已停止</translation>
    </message>
    <message>
        <source>was stopped</source>
        <translation>已停止</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot;, expected a regular expression ({1})</source>
        <translation>为“{0}”，应为正则表达式（{1}）</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>磁盘已满</translation>
    </message>
    <message>
        <source>it cannot be written</source>
        <translation>无法写入</translation>
    </message>
    <message>
        <source>it is damaged, or no database</source>
        <translation>已损坏，或不是数据库</translation>
    </message>
    <message>
        <source>the database reports an error</source>
        <translation>数据库回报错误</translation>
    </message>
    <message>
        <source>1 row ends before the last column: what is missing there counts as no reading.</source>
        <translation>1 行在最后一列之前结束：缺少的部分视为没有读数。</translation>
    </message>
    <message>
        <source>1 cell that is no number is left empty: &quot;{0}&quot; in line {1}.</source>
        <translation>1 个非数字的单元格视为空：第 {1} 行的“{0}”。</translation>
    </message>
    <message>
        <source>{0} cells that are no numbers are left empty: the first is &quot;{1}&quot; in line {2}.</source>
        <translation>{0} 个非数字的单元格视为空：第一个是第 {2} 行的“{1}”。</translation>
    </message>
    <message>
        <source>1 row without a time is left out: line {0}.</source>
        <translation>1 行没有时间，已略去：第 {0} 行。</translation>
    </message>
    <message>
        <source>{0} rows without a time are left out: the first is line {1}.</source>
        <translation>{0} 行没有时间，已略去：第一个是第 {1} 行。</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot;</source>
        <translation>工作表“{1}”的单元格 {0}</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot;</source>
        <translation>工作表“{1}”的第 {0} 行</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;</source>
        <translation>工作表“{0}”</translation>
    </message>
    <message>
        <source>row {0} of table {1}</source>
        <translation>表格 {1} 的第 {0} 行</translation>
    </message>
    <message>
        <source>in &quot;{0}&quot;</source>
        <translation>在“{0}”中</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>“{2}”中工作表“{1}”的单元格 {0}</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>“{2}”中工作表“{1}”的第 {0} 行</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; in &quot;{1}&quot;</source>
        <translation>“{1}”中的工作表“{0}”</translation>
    </message>
    <message>
        <source>row {0} of table {1} in &quot;{2}&quot;</source>
        <translation>“{2}”中表格 {1} 的第 {0} 行</translation>
    </message>
    <message>
        <source>an empty zip archive</source>
        <translation>空的 zip 压缩包</translation>
    </message>
    <message>
        <source>a zip archive of other files ({0})</source>
        <translation>内含其他文件的 zip 压缩包（{0}）</translation>
    </message>
    <message>
        <source>found no file &quot;{0}&quot; in the archive, expected one of: {1}</source>
        <translation>压缩包中找不到文件“{0}”，应为下列之一：{1}</translation>
    </message>
    <message>
        <source>found no table &quot;{0}&quot;, expected one of: {1}</source>
        <translation>找不到表格“{0}”，应为下列之一：{1}</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls)</source>
        <translation>旧式二进制工作簿（.xls）</translation>
    </message>
    <message>
        <source>a word processor's document of the old binary kind</source>
        <translation>旧式二进制文字文档</translation>
    </message>
    <message>
        <source>a presentation of the old binary kind</source>
        <translation>旧式二进制演示文稿</translation>
    </message>
    <message>
        <source>a tar archive, which is not unpacked here</source>
        <translation>tar 归档，此处不解包</translation>
    </message>
    <message>
        <source>a workbook without its texts (sharedStrings.xml)</source>
        <translation>缺少文字部分（sharedStrings.xml）的工作簿</translation>
    </message>
    <message>
        <source>a text that the workbook does not hold</source>
        <translation>工作簿中没有的文字</translation>
    </message>
    <message>
        <source>{0} formulas without a stored result</source>
        <translation>{0} 个没有存储结果的公式</translation>
    </message>
    <message>
        <source>readings, which a spreadsheet program stores when it saves the workbook</source>
        <translation>读数（电子表格程序保存工作簿时会一并存入）</translation>
    </message>
    <message>
        <source>it is cut short or damaged, the list of its files is missing</source>
        <translation>文件被截断或损坏，缺少文件列表</translation>
    </message>
    <message>
        <source>the zip archive</source>
        <translation>zip 文件</translation>
    </message>
    <message>
        <source>Not a zip archive</source>
        <translation>不是 zip 文件</translation>
    </message>
    <message>
        <source>Zip archive inconsistent</source>
        <translation>zip 文件内容不一致</translation>
    </message>
    <message>
        <source>Premature end of file</source>
        <translation>文件提前结束</translation>
    </message>
    <message>
        <source>CRC error</source>
        <translation>校验和错误</translation>
    </message>
    <message>
        <source>Compression method not supported</source>
        <translation>不支持的压缩方式</translation>
    </message>
    <message>
        <source>Encryption method not supported</source>
        <translation>不支持的加密方式</translation>
    </message>
    <message>
        <source>No password provided</source>
        <translation>未提供密码</translation>
    </message>
    <message>
        <source>The file says {0}, which makes the top {1} °C: no run. As {2} it would be {3} °C.</source>
        <translation>文件注明 {0}，最高为 {1} °C：不像过炉。若为 {2}，则为 {3} °C。</translation>
    </message>
    <message>
        <source>falls far below its start and never rises above it</source>
        <translation>远低于起始温度，从未升到其上</translation>
    </message>
    <message>
        <source>the server does not answer: none runs there</source>
        <translation>服务器没有回应：该处没有运行中的服务器</translation>
    </message>
    <message>
        <source>the server&apos;s name is not known in the network</source>
        <translation>网络中没有这个服务器名称</translation>
    </message>
    <message>
        <source>the server is starting or stopping</source>
        <translation>服务器正在启动或停止</translation>
    </message>
    <message>
        <source>the server has no connection free</source>
        <translation>服务器没有空闲的连接</translation>
    </message>
    <message>
        <source>the server takes too long to answer</source>
        <translation>服务器响应太慢</translation>
    </message>
    <message>
        <source>the server has no room left on its disk</source>
        <translation>服务器的磁盘没有空间了</translation>
    </message>
    <message>
        <source>the server was left</source>
        <translation>已离开服务器</translation>
    </message>
    <message>
        <source>the server refuses: it wants a password, and the password file has none for it</source>
        <translation>服务器拒绝：它需要密码，而密码文件里没有它的密码</translation>
    </message>
    <message>
        <source>the server refuses: the password of {0} is wrong</source>
        <translation>服务器拒绝：{0} 的密码不正确</translation>
    </message>
    <message>
        <source>the server refuses: it knows no user {0}</source>
        <translation>服务器拒绝：没有用户 {0}</translation>
    </message>
    <message>
        <source>the server refuses: it has no database {0}</source>
        <translation>服务器拒绝：没有数据库 {0}</translation>
    </message>
    <message>
        <source>the server refuses: {0} may not connect from this computer</source>
        <translation>服务器拒绝：{0} 不可从这台计算机连接</translation>
    </message>
    <message>
        <source>the server refuses: it can only be read at present</source>
        <translation>服务器拒绝：目前只能读取</translation>
    </message>
    <message>
        <source>the server refuses: this user may not do this ({0})</source>
        <translation>服务器拒绝：这个用户不可这样做（{0}）</translation>
    </message>
    <message>
        <source>another transaction was in the way</source>
        <translation>另一笔事务占用中</translation>
    </message>
    <message>
        <source>another program holds the archive</source>
        <translation>存档正被另一个程序占用</translation>
    </message>
    <message>
        <source>the disk does not read or write</source>
        <translation>磁盘无法读写</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>无法打开文件</translation>
    </message>
    <message>
        <source>the server&apos;s archive has version {0}, this program needs version {1}: the owner of its tables brings it forward with the command ovenwright archive list</source>
        <translation>服务器上的存档是第 {0} 版，这个程序需要第 {1} 版：由数据表的所有者用命令 ovenwright archive list 升级</translation>
    </message>
    <message>
        <source>the backup {0} cannot be named</source>
        <translation>无法为备份 {0} 命名</translation>
    </message>
    <message>
        <source>there are no bytes {0}</source>
        <translation>没有字节 {0}</translation>
    </message>
    <message>
        <source>{0} does not hold: verify the archive</source>
        <translation>{0} 不完整：请用 archive verify 检查存档</translation>
    </message>
    <message>
        <source>{0} names bytes that are missing: {1}</source>
        <translation>{0} 所指的字节不存在：{1}</translation>
    </message>
    <message>
        <source>it has {0} records of the chain {1}, but {2} were moved to it: it has lost records</source>
        <translation>它有链 {1} 的 {0} 条记录，但曾移入 {2} 条：它丢失了记录</translation>
    </message>
    <message>
        <source>it has another record {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>它的记录 {0} 与 {1} 的不同：其中一个被更改过，或由副本继续写入</translation>
    </message>
    <message>
        <source>it has another note of the printed sheet of {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>它对 {0} 打印表单的注记与 {1} 的不同：其中一个被更改过，或由副本继续写入</translation>
    </message>
    <message>
        <source>it has lost notes of printed sheets that were moved to it, of the chain {0}</source>
        <translation>它丢失了曾移入的打印注记，属于链 {0}</translation>
    </message>
    <message>
        <source>an id of the archive</source>
        <translation>存档的标识</translation>
    </message>
    <message>
        <source>an id of the archive, or the digest of a log or a record from a sheet</source>
        <translation>存档的标识，或表单上的日志或记录摘要</translation>
    </message>
    <message>
        <source>found {0}, expected a closing ]</source>
        <translation>找到{0}，应为右括号 ]</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing ]</source>
        <translation>找到{0}，应为逗号或右括号 ]</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing }</source>
        <translation>找到{0}，应为逗号或右括号 }</translation>
    </message>
    <message>
        <source>found {0}, expected a closing quote</source>
        <translation>找到{0}，应为右引号</translation>
    </message>
    <message>
        <source>found {0}, expected \\ or / in place of \</source>
        <translation>找到{0}，\ 应写成 \\ 或 /</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; behind the key</source>
        <translation>找到{0}，键后应为“=”</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; and a value</source>
        <translation>找到{0}，应为“=”和值</translation>
    </message>
    <message>
        <source>found {0}, expected a value</source>
        <translation>找到{0}，应为值</translation>
    </message>
    <message>
        <source>found {0}, expected the end of the line</source>
        <translation>找到{0}，应为行尾</translation>
    </message>
    <message>
        <source>found {0}, expected a number, true, false, or a text in quotes</source>
        <translation>找到{0}，应为数字、true、false 或引号内的文字</translation>
    </message>
    <message>
        <source>found {0}, expected a key, &quot;=&quot; and a value</source>
        <translation>找到{0}，应为键、“=”和值</translation>
    </message>
    <message>
        <source>the end of the line</source>
        <translation>行尾</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>文件结尾</translation>
    </message>
    <message>
        <source>a control character</source>
        <translation>控制字符</translation>
    </message>
    <message>
        <source>a position on the board, 0 to {0} mm</source>
        <translation>板上的位置，0 到 {0} mm</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot;, the name of one and the number of another, expected {1}</source>
        <translation>通道“{0}”既是一个通道的名称，又是另一个的编号，应{1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; placed by its name as well</source>
        <translation>也按名称标出“{0}”</translation>
    </message>
    <message>
        <source>a number from {0} to {1}</source>
        <translation>{0} 到 {1} 的数字</translation>
    </message>
    <message>
        <source>a factor above 0</source>
        <translation>大于 0 的系数</translation>
    </message>
    <message>
        <source>a column from 1</source>
        <translation>从 1 起的列号</translation>
    </message>
    <message>
        <source>one character, or &quot;fixed width&quot;</source>
        <translation>一个字符，或“fixed width”</translation>
    </message>
    <message>
        <source>found no log &quot;{0}&quot;, expected a file</source>
        <translation>找不到记录“{0}”，应为文件</translation>
    </message>
    <message>
        <source>{0}: cannot be read: {1}</source>
        <translation>{0}：无法读取：{1}</translation>
    </message>
    <message>
        <source>does not show when the board entered the oven: {0}</source>
        <translation>未显示电路板何时入炉：{0}</translation>
    </message>
    <message>
        <source>it begins at {0}, when the board is in the oven already. Log from before the entry, or give the entry with --entry, on the log&apos;s clock</source>
        <translation>它从 {0} 开始，此时电路板已在炉内。请在入炉前开始记录，或按记录的时钟给出入炉时刻</translation>
    </message>
    <message>
        <source>no thermocouple rises by more than {0}. Check that it is the log of a pass through the oven, and that the thermocouples are attached</source>
        <translation>没有热电偶升温超过 {0}。请确认这是过炉的记录，且热电偶已固定</translation>
    </message>
    <message>
        <source>no thermocouple bends upward where the first heated zone would begin. Check that the log, oven and recipe belong together, or give the entry with --entry</source>
        <translation>在第一加热区应开始之处，没有热电偶曲线上扬。请确认记录、炉子与配方相符，或给出入炉时刻</translation>
    </message>
    <message>
        <source>has no thermocouple on the board with a trace: all are faulty, or placed in the air by the board&apos;s file</source>
        <translation>板上没有带曲线的热电偶：全部有故障，或板文件标为在空气中</translation>
    </message>
    <message>
        <source>a temperature from {0} to {1}</source>
        <translation>{0} 到 {1} 的温度</translation>
    </message>
    <message>
        <source>found {0} columns, expected column {1} that the layout names</source>
        <translation>有 {0} 列，应有格式所指的第 {1} 列</translation>
    </message>
</context>
</TS>
