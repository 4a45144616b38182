<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_TW">
<context>
    <name>Measures</name>
    <message>
        <source>The largest temperature in the trace.</source>
        <translation>曲線的最高溫度。</translation>
    </message>
    <message>
        <source>Time from the last rise through the level to the peak; idle time before the oven does not count.</source>
        <translation>從最後一次上升通過該溫度到峰值的時間；進爐前的等待不計。</translation>
    </message>
    <message>
        <source>Total time with the temperature above the level.</source>
        <translation>溫度高於該溫度的總時間。</translation>
    </message>
    <message>
        <source>Number of stretches of more than 1 s above the level; stretches that are not parted by a fall to 2 °C under the level or lower count as one.</source>
        <translation>高於該溫度且超過 1 s 的段數；其間未降到該溫度以下 2 °C 的各段算作一段。</translation>
    </message>
    <message>
        <source>Area between the curve and the level while the curve is above it (heating factor).</source>
        <translation>曲線高於該溫度時，曲線與該溫度之間的面積（加熱因子）。</translation>
    </message>
    <message>
        <source>Total time between the two temperatures up to the peak.</source>
        <translation>到峰值為止，介於兩個溫度之間的總時間。</translation>
    </message>
    <message>
        <source>Total time at or above the reference (the trace&apos;s own peak, or a temperature) less the offset.</source>
        <translation>溫度達到或高於參考值（自身峰值或指定溫度）減去偏移的總時間。</translation>
    </message>
    <message>
        <source>Largest slope of a straight line fitted to the samples of a window of the stated length, up to the peak.</source>
        <translation>到峰值為止，對指定長度時間窗內取樣點擬合直線的最大斜率。</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them up to the peak.</source>
        <translation>兩個溫度之差除以到峰值為止介於其間的總時間。</translation>
    </message>
    <message>
        <source>Largest downward slope of a straight line fitted to the samples of a window of the stated length, after the peak, as a positive number.</source>
        <translation>峰值之後，對指定長度時間窗內取樣點擬合直線的最大下降斜率，以正數表示。</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them after the peak.</source>
        <translation>兩個溫度之差除以峰值之後介於其間的總時間。</translation>
    </message>
    <message>
        <source>Temperature at a time of the log, at a position in the oven, or at the end of a zone.</source>
        <translation>記錄某一時刻、爐內某一位置或某溫區末端的溫度。</translation>
    </message>
    <message>
        <source>Temperature when the placement leaves the last zone; where no oven is given, of the last sample.</source>
        <translation>測點離開最後溫區時的溫度；未指定爐時為最後一個取樣點。</translation>
    </message>
    <message>
        <source>Largest minus smallest peak over the board.</source>
        <translation>整板最高峰值減最低峰值。</translation>
    </message>
    <message>
        <source>Largest minus smallest temperature over the board when the first trace rises through the level.</source>
        <translation>第一條曲線上升通過該溫度時，整板最高與最低溫度之差。</translation>
    </message>
    <message>
        <source>Largest difference over the board at one moment, while the coldest trace is not past its own peak.</source>
        <translation>最冷曲線尚未過峰值之前，整板同一時刻的最大溫差。</translation>
    </message>
    <message>
        <source>Time between the first and the last trace&apos;s first rise through the level.</source>
        <translation>第一條與最後一條曲線首次上升通過該溫度的時間差。</translation>
    </message>
    <message>
        <source>Temperature where the wave starts.</source>
        <translation>進入波峰時的溫度。</translation>
    </message>
    <message>
        <source>First peak in the wave minus the preheat temperature (thermal shock).</source>
        <translation>波峰中第一個峰值減預熱溫度（熱衝擊）。</translation>
    </message>
    <message>
        <source>Total time of all contacts with the solder.</source>
        <translation>所有接觸焊料的總時間。</translation>
    </message>
    <message>
        <source>Time of the longest single contact with the solder.</source>
        <translation>單次接觸焊料的最長時間。</translation>
    </message>
</context>
<context>
    <name>requirement</name>
    <message>
        <source>peak</source>
        <translation>峰值溫度</translation>
    </message>
    <message>
        <source>steepest rise</source>
        <translation>最大升溫斜率</translation>
    </message>
    <message>
        <source>steepest fall</source>
        <translation>最大降溫斜率</translation>
    </message>
    <message>
        <source>spread of peaks</source>
        <translation>峰值溫差</translation>
    </message>
    <message>
        <source>soak time</source>
        <translation>恆溫時間</translation>
    </message>
    <message>
        <source>time above liquidus</source>
        <translation>液相線以上時間</translation>
    </message>
    <message>
        <source>ramp to soak</source>
        <translation>升至恆溫的斜率</translation>
    </message>
    <message>
        <source>excursions above liquidus</source>
        <translation>超過液相線的次數</translation>
    </message>
    <message>
        <source>cooling from liquidus</source>
        <translation>液相線以下降溫斜率</translation>
    </message>
    <message>
        <source>top side joints stay solid</source>
        <translation>上面焊點不熔化</translation>
    </message>
    <message>
        <source>step into the wave</source>
        <translation>進波峰溫升</translation>
    </message>
    <message>
        <source>preheat temperature</source>
        <translation>預熱溫度</translation>
    </message>
    <message>
        <source>preheat rise</source>
        <translation>預熱升溫斜率</translation>
    </message>
    <message>
        <source>main wave contact</source>
        <translation>主波峰接觸時間</translation>
    </message>
    <message>
        <source>longest contact</source>
        <translation>最長接觸時間</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>接觸時間</translation>
    </message>
    <message>
        <source>25 °C to peak</source>
        <translation>25 °C 到峰值</translation>
    </message>
    <message>
        <source>body time near Tc</source>
        <translation>本體接近 Tc 的時間</translation>
    </message>
    <message>
        <source>body time above liquidus</source>
        <translation>本體液相線以上時間</translation>
    </message>
    <message>
        <source>body soak time</source>
        <translation>本體恆溫時間</translation>
    </message>
    <message>
        <source>body ramp-up</source>
        <translation>本體升溫斜率</translation>
    </message>
    <message>
        <source>body ramp-down</source>
        <translation>本體降溫斜率</translation>
    </message>
    <message>
        <source>body peak</source>
        <translation>本體峰值溫度</translation>
    </message>
    <message>
        <source>body 25 °C to peak</source>
        <translation>本體 25 °C 到峰值</translation>
    </message>
    <message>
        <source>time near peak</source>
        <translation>峰值附近時間</translation>
    </message>
    <message>
        <source>time above 217</source>
        <translation>217 以上時間</translation>
    </message>
    <message>
        <source>spread at 217</source>
        <translation>217 時溫差</translation>
    </message>
    <message>
        <source>peak of bodies</source>
        <translation>本體峰值溫度</translation>
    </message>
    <message>
        <source>largest spread in soak</source>
        <translation>恆溫區最大溫差</translation>
    </message>
    <message>
        <source>lag at 217</source>
        <translation>到達 217 的時間差</translation>
    </message>
</context>
<context>
    <name>risk</name>
    <message>
        <source>The solder may melt only in part: balls and paste that do not run together, poor wetting, a joint that looks dull or grainy and breaks early.</source>
        <translation>焊料可能只部分熔化：錫球與錫膏不融合、潤濕不良、焊點暗淡或粗糙並提早斷裂。</translation>
    </message>
    <message>
        <source>Laminate, connectors and parts see more heat than they are made for: warping, discolouring, delamination, and a thicker brittle layer in the joint.</source>
        <translation>基板、連接器與零件受熱超過其耐受：翹曲、變色、分層，焊點中脆性層變厚。</translation>
    </message>
    <message>
        <source>The board heats faster than its heavy parts can follow: large differences over the board at the peak.</source>
        <translation>板子升溫快於大熱容零件：峰值時整板溫差大。</translation>
    </message>
    <message>
        <source>Flux is spent and surfaces oxidise before the solder melts, and parts stay hot longer than they were classified for.</source>
        <translation>焊料熔化前助焊劑已耗盡、表面氧化，零件受熱時間超過其分級。</translation>
    </message>
    <message>
        <source>Too little time for the solder to wet and to run together: weak or open joints, mostly under heavy parts; wetting and voids change with this time.</source>
        <translation>焊料潤濕與融合的時間不足：焊點薄弱或開路，多在大熱容零件下方；潤濕與空洞隨此時間變化。</translation>
    </message>
    <message>
        <source>The intermetallic layer grows fast while the solder is liquid, and a thick one is brittle; parts and laminate are stressed by heat.</source>
        <translation>焊料液態時介金屬層增長快，過厚則脆；零件與基板承受熱應力。</translation>
    </message>
    <message>
        <source>The solder does not melt as often as the process means it to.</source>
        <translation>焊料熔化的次數少於製程要求。</translation>
    </message>
    <message>
        <source>The solder melts, freezes and melts again in one pass: disturbed joints, and parts that move.</source>
        <translation>一次過爐中焊料熔化、凝固又再熔化：焊點受擾動，零件移位。</translation>
    </message>
    <message>
        <source>Too little heat above the liquidus: incomplete wetting and early failure under vibration.</source>
        <translation>液相線以上熱量不足：潤濕不完全，振動下提早失效。</translation>
    </message>
    <message>
        <source>Too much heat above the liquidus: a thick intermetallic layer and early failure under vibration.</source>
        <translation>液相線以上熱量過多：介金屬層過厚，振動下提早失效。</translation>
    </message>
    <message>
        <source>Solvent is still in the paste when it melts and heavy parts lag behind: spatter, voids, large differences over the board.</source>
        <translation>熔化時錫膏中仍有溶劑，大熱容零件落後：飛濺、空洞、整板溫差大。</translation>
    </message>
    <message>
        <source>Flux is spent and powder and pads oxidise before the solder melts: poor wetting, balls that do not run together.</source>
        <translation>焊料熔化前助焊劑已耗盡，錫粉與焊墊氧化：潤濕不良，錫球不融合。</translation>
    </message>
    <message>
        <source>The coldest joints have little time at full temperature: incomplete wetting.</source>
        <translation>最冷的焊點在最高溫附近的時間過短：潤濕不完全。</translation>
    </message>
    <message>
        <source>Parts stay near their highest temperature longer than they were classified for.</source>
        <translation>零件停留在最高溫附近的時間超過其分級。</translation>
    </message>
    <message>
        <source>The board heats slowly: the time is lacking later, or the belt must be slower.</source>
        <translation>板子升溫慢：後段時間不足，或須放慢輸送帶。</translation>
    </message>
    <message>
        <source>Paste slumps and spatters, solder balls form, and ceramic parts can crack; parts are classified up to 3 °C/s.</source>
        <translation>錫膏坍塌、飛濺，產生錫珠，陶瓷零件可能破裂；零件分級至 3 °C/s。</translation>
    </message>
    <message>
        <source>The solder is slow to reach its peak: more time above the liquidus, flux spent.</source>
        <translation>焊料到峰值較慢：液相線以上時間更長，助焊劑耗盡。</translation>
    </message>
    <message>
        <source>Parts follow unevenly and are bent or cracked by heat; parts are classified up to 3 °C/s.</source>
        <translation>零件升溫不均，受熱彎曲或破裂；零件分級至 3 °C/s。</translation>
    </message>
    <message>
        <source>The solder freezes slowly: coarse grain, a thicker intermetallic layer, parts that can still move.</source>
        <translation>焊料凝固慢：晶粒粗大，介金屬層較厚，零件仍可能移動。</translation>
    </message>
    <message>
        <source>Thermal shock: cracks in ceramic parts and joints, warped boards; parts are classified up to 6 °C/s.</source>
        <translation>熱衝擊：陶瓷零件與焊點破裂、板子翹曲；零件分級至 6 °C/s。</translation>
    </message>
    <message>
        <source>The board is colder here than the process means it to be; what follows starts late.</source>
        <translation>板子在此處比製程要求冷；後續開始得晚。</translation>
    </message>
    <message>
        <source>The board is hotter here than the process means it to be; what follows starts early.</source>
        <translation>板子在此處比製程要求熱；後續開始得早。</translation>
    </message>
    <message>
        <source>The board cools further inside the oven than it needs to.</source>
        <translation>板子在爐內冷卻超過所需。</translation>
    </message>
    <message>
        <source>The board leaves hot: solder can still be soft when it is handled, and people can be burnt.</source>
        <translation>板子出爐時仍熱：取放時焊料可能仍軟，人員可能燙傷。</translation>
    </message>
    <message>
        <source>The peaks lie closer together than the process means them to.</source>
        <translation>各峰值比製程要求更接近。</translation>
    </message>
    <message>
        <source>One recipe can hardly serve both ends: the coldest joint is too cold or the hottest part too hot. 10 °C is a usual target.</source>
        <translation>一個配方難以兼顧兩端：最冷焊點太冷，或最熱零件太熱。10 °C 為常用目標。</translation>
    </message>
    <message>
        <source>The board is more even here than the process means it to be.</source>
        <translation>板子在此處比製程要求更均勻。</translation>
    </message>
    <message>
        <source>The solder melts at one end of a part or board while the other is still solid: chip parts stand up, large parts tilt.</source>
        <translation>零件或板子一端焊料已熔而另一端仍為固態：小型晶片立碑，大型零件傾斜。</translation>
    </message>
    <message>
        <source>The board is more even than the process means it to be.</source>
        <translation>板子比製程要求更均勻。</translation>
    </message>
    <message>
        <source>Uneven heat bends the board and leaves heavy parts behind at the peak.</source>
        <translation>受熱不均使板子彎曲，大熱容零件在峰值時落後。</translation>
    </message>
    <message>
        <source>The traces melt closer together than the process means them to.</source>
        <translation>各點熔化時間比製程要求更接近。</translation>
    </message>
    <message>
        <source>The last joints melt long after the first: the first are too long liquid when the last have had enough.</source>
        <translation>最後的焊點比最初的晚很多才熔化：等最後的足夠時，最初的液態時間已過長。</translation>
    </message>
    <message>
        <source>Flux is not active and the step into the solder is large: poor hole fill, bridges, cracked ceramics.</source>
        <translation>助焊劑未活化且進入焊料的溫升大：通孔填錫不良、橋接、陶瓷破裂。</translation>
    </message>
    <message>
        <source>Flux is spent before the wave, and joints on the top side come near their melting point.</source>
        <translation>助焊劑在波峰前耗盡，上面焊點接近熔點。</translation>
    </message>
    <message>
        <source>The step into the solder is smaller than the process means it to be: flux may be spent by a hot preheat.</source>
        <translation>進入焊料的溫升小於製程要求：預熱過熱可能耗盡助焊劑。</translation>
    </message>
    <message>
        <source>Thermal shock: ceramic capacitors crack when they enter the solder too cold.</source>
        <translation>熱衝擊：陶瓷電容太冷進入焊料時會破裂。</translation>
    </message>
    <message>
        <source>Too little contact: holes are not filled, pads not wetted.</source>
        <translation>接觸不足：通孔未填滿，焊墊未潤濕。</translation>
    </message>
    <message>
        <source>Too much contact: copper and pads dissolve, solder bridges, parts take damage.</source>
        <translation>接觸過多：銅與焊墊溶蝕、焊料橋接、零件受損。</translation>
    </message>
    <message>
        <source>Too much contact in one wave: copper and pads dissolve, parts take damage.</source>
        <translation>單一波峰接觸過多：銅與焊墊溶蝕、零件受損。</translation>
    </message>
    <message>
        <source>The package is hotter than it was classified for: moisture inside can lift its layers apart or crack it.</source>
        <translation>封裝溫度超過其分級：內部濕氣可能使其分層或破裂。</translation>
    </message>
</context>
<context>
    <name>source</name>
    <message>
        <source>common practice, no source</source>
        <translation>業界慣例，無出處</translation>
    </message>
</context>
<context>
    <name>LotRules</name>
    <message>
        <source>1 point beyond 3 sigma</source>
        <translation>1 點超出 3 倍標準差</translation>
    </message>
    <message>
        <source>2 of 3 points in a row beyond 2 sigma on one side</source>
        <translation>連續 3 點中有 2 點在同側超出 2 倍標準差</translation>
    </message>
    <message>
        <source>4 of 5 points in a row beyond 1 sigma on one side</source>
        <translation>連續 5 點中有 4 點在同側超出 1 倍標準差</translation>
    </message>
    <message>
        <source>8 points in a row on one side of the centre</source>
        <translation>連續 8 點在中心線同側</translation>
    </message>
    <message>
        <source>9 points in a row on one side of the centre</source>
        <translation>連續 9 點在中心線同側</translation>
    </message>
    <message>
        <source>6 points in a row rising or falling</source>
        <translation>連續 6 點上升或下降</translation>
    </message>
    <message>
        <source>14 points in a row alternating up and down</source>
        <translation>連續 14 點交替上下</translation>
    </message>
    <message>
        <source>15 points in a row within 1 sigma of the centre</source>
        <translation>連續 15 點在中心線 1 倍標準差以內</translation>
    </message>
    <message>
        <source>8 points in a row beyond 1 sigma, on both sides</source>
        <translation>連續 8 點在兩側超出 1 倍標準差</translation>
    </message>
</context>
</TS>
