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
        <source>The solder is slow to reach its peak: more time above the liquidus, flux spent.</source>
        <translation>焊料到峰值较慢：液相线以上时间更长，助焊剂耗尽。</translation>
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
</TS>
