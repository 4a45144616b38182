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
        <source>Slow heating: below the melting point flux is spent and surfaces oxidise, above it the solder stays liquid longer.</source>
        <translation>升溫過慢：熔點以下助焊劑耗盡、表面氧化，熔點以上焊料液態時間更長。</translation>
    </message>
    <message>
        <source>Joints that were made before melt again: parts shift or drop off, and the joints are disturbed.</source>
        <translation>先前完成的焊點再次熔化：零件移位或脫落，焊點受擾動。</translation>
    </message>
    <message>
        <source>The joint took up too little heat: solder does not wet it or does not rise in the hole.</source>
        <translation>焊點吸收的熱量太少：焊料不潤濕或不能爬升入孔。</translation>
    </message>
    <message>
        <source>Ceramic parts can crack, the board bends, and the solvent of the flux boils and spatters.</source>
        <translation>陶瓷零件可能開裂，電路板彎曲，助焊劑的溶劑沸騰飛濺。</translation>
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
<context>
    <name>phrase</name>
    <message>
        <source>No unit in the file: read as °C. As °F the top would be {0} °C.</source>
        <translation>檔案中沒有單位：以 °C 讀取。若為 °F，最高會是 {0} °C。</translation>
    </message>
    <message>
        <source>No unit in the file: read as thermocouple voltage in mV. As °C the top would be {0} °C.</source>
        <translation>檔案中沒有單位：以熱電偶電壓 mV 讀取。若為 °C，最高會是 {0} °C。</translation>
    </message>
    <message>
        <source>No unit in the file: read as °F, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>檔案中沒有單位：以 °F 讀取，最高為 {0} °C。若為 °C，則為 {1} °C。</translation>
    </message>
    <message>
        <source>No unit in the file: read as K, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>檔案中沒有單位：以 K 讀取，最高為 {0} °C。若為 °C，則為 {1} °C。</translation>
    </message>
    <message>
        <source>Whole numbers up to {0} are no temperatures of a board: read as tenths of a degree, though no scale is stated.</source>
        <translation>高達 {0} 的整數不是電路板的溫度：雖未註明倍率，仍以十分之一度讀取。</translation>
    </message>
    <message>
        <source>A factor of {0} is stated, but the numbers are temperatures as they stand: taken as the resolution.</source>
        <translation>註明了倍率 {0}，但數字本身已是溫度：視為解析度。</translation>
    </message>
    <message>
        <source>No type of thermocouple is stated: taken as K, the most common one.</source>
        <translation>未註明熱電偶類型：以最常見的 K 型計。</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts near 0 mV: taken as 25 °C.</source>
        <translation>未註明冷接點，且記錄從接近 0 mV 開始：以 25 °C 計。</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts at the voltage of a room&apos;s temperature: taken as 0 °C.</source>
        <translation>未註明冷接點，且記錄從室溫的電壓開始：以 0 °C 計。</translation>
    </message>
    <message>
        <source>The unit of the interval is not stated: read as {0} s.</source>
        <translation>未註明間隔的單位：以 {0} s 讀取。</translation>
    </message>
    <message>
        <source>No unit of time is stated: the numbers are read as fractions of a day, which makes the run last {0}.</source>
        <translation>未註明時間單位：數字以一天的分數讀取，此次測溫歷時 {0}。</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as milliseconds, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>未註明時間單位：以毫秒讀取，歷時 {0}；若為秒，則為 {1}。</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as minutes, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>未註明時間單位：以分鐘讀取，歷時 {0}；若為秒，則為 {1}。</translation>
    </message>
    <message>
        <source>Nothing says what the first column counts: read as seconds.</source>
        <translation>沒有註明第一欄計的是什麼：以秒讀取。</translation>
    </message>
    <message>
        <source>Times of two parts are read as hours and minutes, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>兩段式時間以時和分讀取，歷時 {0}；另一種讀法則為 {1}。</translation>
    </message>
    <message>
        <source>Times of two parts are read as minutes and seconds, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>兩段式時間以分和秒讀取，歷時 {0}；另一種讀法則為 {1}。</translation>
    </message>
    <message>
        <source>The date may be read in more than one order, and nothing in the file settles it: read as {0}. Durations do not depend on it.</source>
        <translation>日期有不只一種讀法，檔案中沒有依據：以 {0} 讀取。歷時不受影響。</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: the rows are spread evenly, {1} s apart.</source>
        <translation>時間四捨五入到 {0} s，有數列時間相同：各列平均分布，間隔 {1} s。</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: they are not evenly apart, so those of one time are spread over it.</source>
        <translation>時間四捨五入到 {0} s，有數列時間相同：間隔不均，同一時間的各列在其中分布。</translation>
    </message>
    <message>
        <source>Numbers such as {0} may have a decimal sign or thousands in them, and nothing in the file settles it: read with &apos;{1}&apos; as the decimal sign.</source>
        <translation>像 {0} 這樣的數字可能含小數點或千分位，檔案中沒有依據：以「{1}」為小數點讀取。</translation>
    </message>
    <message>
        <source>More than one encoding is plausible: read as {0}. Numbers do not depend on it.</source>
        <translation>可能的編碼不只一種：以 {0} 讀取。數字不受影響。</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its voltage, type {1}, is turned about a reference junction at {2} °C. The result is off by twice what the junction differs from that.</source>
        <translation>{0} 的導線接反：其電壓（{1} 型）以 {2} °C 的參考接點反轉。參考接點若有偏差，結果的偏差為其兩倍。</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its readings are mirrored at {1} °C. The result is off by twice what the reference junction differs from that.</source>
        <translation>{0} 的導線接反：其讀數以 {1} °C 為軸鏡射。參考接點若有偏差，結果的偏差為其兩倍。</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as seconds, which makes the run last {0}.</source>
        <translation>未註明時間單位：以秒讀取，歷時 {0}。</translation>
    </message>
    <message>
        <source>The date goes on from day to day only if read in the order {0}.</source>
        <translation>只有以 {0} 的順序讀取，日期才會逐日前進。</translation>
    </message>
    <message>
        <source>{0} states no unit; read in that of the other channels.</source>
        <translation>{0} 未註明單位；以其他通道的單位讀取。</translation>
    </message>
    <message>
        <source>{0} channels state no unit; read in that of the other channels.</source>
        <translation>{0} 個通道未註明單位；以其他通道的單位讀取。</translation>
    </message>
    <message>
        <source>No unit is stated and no channel has a reading.</source>
        <translation>未註明單位，且沒有任何通道有讀數。</translation>
    </message>
    <message>
        <source>Units differ between channels: {0}.</source>
        <translation>各通道的單位不同：{0}。</translation>
    </message>
    <message>
        <source>Rows are {0} s apart by &quot;{1}&quot;.</source>
        <translation>各列間隔 {0} s，依據「{1}」。</translation>
    </message>
    <message>
        <source>The clock passes midnight: times go on.</source>
        <translation>時鐘跨過午夜：時間接續。</translation>
    </message>
    <message>
        <source>The clock passes twelve: times go on.</source>
        <translation>時鐘跨過十二點：時間接續。</translation>
    </message>
    <message>
        <source>{0} is read with the sign of its voltage turned: its wires are exchanged.</source>
        <translation>{0} 以反轉的電壓正負號讀取：其導線接反。</translation>
    </message>
    <message>
        <source>Read from sheet {0}; also in the file: {1}.</source>
        <translation>讀自工作表 {0}；檔案中另有：{1}。</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log; also in the file: {0}.</source>
        <translation>讀自最像記錄的表格；檔案中另有：{0}。</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log of {0}.</source>
        <translation>在 {0} 個表格中，讀取最像記錄的一個。</translation>
    </message>
    <message>
        <source>the archive holds {0} and also {1}, not read</source>
        <translation>壓縮檔內有 {0}，另有 {1} 未讀取</translation>
    </message>
    <message>
        <source>of more than {0} files in the archive only the first {1} were looked at</source>
        <translation>壓縮檔內超過 {0} 個檔案，只查看了前 {1} 個</translation>
    </message>
    <message>
        <source>{0} bytes behind the gzip data were not read</source>
        <translation>gzip 資料之後的 {0} 位元組未讀取</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;: {1} formulas have no stored result and count as empty; a spreadsheet program stores them when it saves the workbook</source>
        <translation>工作表「{0}」：{1} 個公式沒有儲存結果，視為空白；試算表程式儲存活頁簿時會一併儲存</translation>
    </message>
    <message>
        <source>The last row is cut off and was left out.</source>
        <translation>最後一列不完整，已略去。</translation>
    </message>
    <message>
        <source>{0} rows end before the last column: what is missing there counts as no reading.</source>
        <translation>{0} 列在最後一欄之前結束：缺少的部分視為沒有讀數。</translation>
    </message>
    <message>
        <source>1 header or text line in or behind the table was left out.</source>
        <translation>表格中或之後有 1 行標題或文字已略去。</translation>
    </message>
    <message>
        <source>{0} header or text lines in or behind the table were left out.</source>
        <translation>表格中或之後有 {0} 行標題或文字已略去。</translation>
    </message>
    <message>
        <source>1 labelled line in or behind the table was left out.</source>
        <translation>表格中或之後有 1 行帶標示的資料已略去。</translation>
    </message>
    <message>
        <source>{0} labelled lines in or behind the table were left out.</source>
        <translation>表格中或之後有 {0} 行帶標示的資料已略去。</translation>
    </message>
    <message>
        <source>1 comment or event line in or behind the table was left out.</source>
        <translation>表格中或之後有 1 行註解或事件已略去。</translation>
    </message>
    <message>
        <source>{0} comment or event lines in or behind the table were left out.</source>
        <translation>表格中或之後有 {0} 行註解或事件已略去。</translation>
    </message>
    <message>
        <source>{0} rows of numbers behind the table go back in time and were left out.</source>
        <translation>表格之後有 {0} 列數字時間倒退，已略去。</translation>
    </message>
    <message>
        <source>Decimals are written with a point in {0} and with a comma in {1} columns: each is read by its own.</source>
        <translation>小數在 {0} 欄用點，在 {1} 欄用逗號：各依其寫法讀取。</translation>
    </message>
    <message>
        <source>Decimal commas stand without quotes between the commas of the delimiter; the counts of fields allow one reading.</source>
        <translation>小數逗號未加引號，與分隔逗號混在一起；欄位數只容許一種讀法。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone and stands at its temperature throughout.</source>
        <translation>{0} 保留但不判定：名稱像溫區，且始終維持其溫度。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its unit is &quot;{1}&quot;, none of temperature.</source>
        <translation>{0} 保留但不判定：其單位為「{1}」，不是溫度單位。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its values are no temperatures.</source>
        <translation>{0} 保留但不判定：其數值不是溫度。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: no unit of temperature stands there and it never changes.</source>
        <translation>{0} 保留但不判定：沒有溫度單位，且從不改變。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it stays far below the others.</source>
        <translation>{0} 保留但不判定：遠低於其他通道。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is a statistic of {1}.</source>
        <translation>{0} 會保留但不評判：它是 {1} 的統計值。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it holds a few small whole numbers, as flags do.</source>
        <translation>{0} 會保留但不評判：它只含少數小整數，如同旗標。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone, though it moves as the board does.</source>
        <translation>{0} 會保留但不評判：它的名稱像溫區，但變化與電路板相同。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a statistic, and is the highest, lowest or mean of the channels.</source>
        <translation>{0} 會保留但不評判：它的名稱像統計值，且是各通道的最高、最低或平均值。</translation>
    </message>
    <message>
        <source>zones are by the oven model, which follows this log within {0} °C (root mean square)</source>
        <translation>溫區依據爐子模型，與此記錄相差 {0} °C 以內（均方根）</translation>
    </message>
    <message>
        <source>zones are a first estimate from setpoints and curves: the oven model does not fit ({0})</source>
        <translation>溫區為依設定值與曲線的初步估計：爐子模型不符（{0}）</translation>
    </message>
    <message>
        <source>stands at {0} °C</source>
        <translation>停在 {0} °C</translation>
    </message>
    <message>
        <source>suspected: follows the air more than the other traces do</source>
        <translation>疑似：比其他曲線更跟隨空氣</translation>
    </message>
    <message>
        <source>suspected: swapped with {0}</source>
        <translation>疑似：與 {0} 互換</translation>
    </message>
    <message>
        <source>all traces step by {0} °C</source>
        <translation>所有曲線跳動 {0} °C</translation>
    </message>
    <message>
        <source>{0} samples, fewer than the 3 of a trace</source>
        <translation>{0} 個取樣，少於一條曲線所需的 3 個</translation>
    </message>
    <message>
        <source>no row with a usable time</source>
        <translation>沒有任何列有可用的時間</translation>
    </message>
    <message>
        <source>1 row without a time later than the row before</source>
        <translation>有 1 列的時間不晚於前一列</translation>
    </message>
    <message>
        <source>{0} rows without a time later than the row before</source>
        <translation>有 {0} 列的時間不晚於前一列</translation>
    </message>
    <message>
        <source>falls as the others rise</source>
        <translation>在其他測點升溫時下降</translation>
    </message>
    <message>
        <source>a log</source>
        <translation>一份記錄</translation>
    </message>
    <message>
        <source>a log of many samples</source>
        <translation>含多個取樣的記錄</translation>
    </message>
    <message>
        <source>a table of times and temperatures</source>
        <translation>時間與溫度的表格</translation>
    </message>
    <message>
        <source>a column of temperatures</source>
        <translation>一欄溫度</translation>
    </message>
    <message>
        <source>a column of times, or an interval</source>
        <translation>一欄時間或一個間隔</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>一個時間</translation>
    </message>
    <message>
        <source>a time with a decimal point</source>
        <translation>一個以句點為小數符號的時間</translation>
    </message>
    <message>
        <source>a time with a decimal comma</source>
        <translation>一個以逗號為小數符號的時間</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>一個溫度</translation>
    </message>
    <message>
        <source>times</source>
        <translation>時間</translation>
    </message>
    <message>
        <source>times that go on</source>
        <translation>持續前進的時間</translation>
    </message>
    <message>
        <source>time, channel and value</source>
        <translation>時間、通道與數值</translation>
    </message>
    <message>
        <source>seconds above 0</source>
        <translation>大於 0 的秒數</translation>
    </message>
    <message>
        <source>°C, °F, K or mV</source>
        <translation>°C、°F、K 或 mV</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>一個檔案</translation>
    </message>
    <message>
        <source>a whole gzip file</source>
        <translation>完整的 gzip 檔</translation>
    </message>
    <message>
        <source>a whole zip archive</source>
        <translation>完整的 zip 檔</translation>
    </message>
    <message>
        <source>a whole .xlsx workbook</source>
        <translation>完整的 .xlsx 活頁簿</translation>
    </message>
    <message>
        <source>a zip archive with a log in it</source>
        <translation>內含記錄的 zip 檔</translation>
    </message>
    <message>
        <source>a text log, a workbook or an HTML table</source>
        <translation>文字記錄、活頁簿或 HTML 表格</translation>
    </message>
    <message>
        <source>a workbook (.xlsx, .ods), an HTML table or a text log</source>
        <translation>活頁簿（.xlsx、.ods）、HTML 表格或文字記錄</translation>
    </message>
    <message>
        <source>one with a table of readings</source>
        <translation>含讀數表格者</translation>
    </message>
    <message>
        <source>one that can be read without</source>
        <translation>不需密碼即可讀取者</translation>
    </message>
    <message>
        <source>numbers with a decimal point, or another delimiter</source>
        <translation>使用小數點的數字，或另一種分隔符號</translation>
    </message>
    <message>
        <source>1 cell</source>
        <translation>1 個儲存格</translation>
    </message>
    <message>
        <source>{0} cells</source>
        <translation>{0} 個儲存格</translation>
    </message>
    <message>
        <source>binary data (byte {0} at offset {1})</source>
        <translation>二進位資料（位移 {1} 處的位元組 {0}）</translation>
    </message>
    <message>
        <source>bytes that {0} does not allow</source>
        <translation>{0} 不容許的位元組</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls) or one with a password</source>
        <translation>舊式二進位活頁簿（.xls）或有密碼的活頁簿</translation>
    </message>
    <message>
        <source>a PDF document</source>
        <translation>一份 PDF 文件</translation>
    </message>
    <message>
        <source>about {0} rows of {1} numbers</source>
        <translation>約 {0} 列，每列 {1} 個數字</translation>
    </message>
    <message>
        <source>at most {0} channels</source>
        <translation>最多 {0} 個通道</translation>
    </message>
    <message>
        <source>at most {0} numbers in a log</source>
        <translation>一份記錄最多 {0} 個數字</translation>
    </message>
    <message>
        <source>text in {0}</source>
        <translation>{0} 編碼的文字</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>空的檔案</translation>
    </message>
    <message>
        <source>a header and no rows behind it</source>
        <translation>只有標題列而沒有資料列</translation>
    </message>
    <message>
        <source>one sample</source>
        <translation>一個取樣</translation>
    </message>
    <message>
        <source>no sample</source>
        <translation>沒有取樣</translation>
    </message>
    <message>
        <source>the same time in every row</source>
        <translation>每一列的時間都相同</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>一個資料夾</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>損壞</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation>不完整</translation>
    </message>
    <message>
        <source>an HTML document without a table</source>
        <translation>沒有表格的 HTML 文件</translation>
    </message>
    <message>
        <source>a workbook with a password</source>
        <translation>有密碼的活頁簿</translation>
    </message>
    <message>
        <source>{0} channels</source>
        <translation>{0} 個通道</translation>
    </message>
    <message>
        <source>found nothing but blanks, expected a log</source>
        <translation>只有空白，應為一份記錄</translation>
    </message>
    <message>
        <source>found no table, expected one of times and temperatures</source>
        <translation>沒有表格，應為時間與溫度的表格</translation>
    </message>
    <message>
        <source>found no column of temperatures, expected one at least</source>
        <translation>沒有溫度欄，至少應有一欄</translation>
    </message>
    <message>
        <source>found no column of times and no stated interval, expected times, or an interval in seconds between rows</source>
        <translation>沒有時間欄也沒有註明間隔，應有時間或各列間隔秒數</translation>
    </message>
    <message>
        <source>found no times in column {0}</source>
        <translation>第 {0} 欄沒有時間</translation>
    </message>
    <message>
        <source>the log has no temperature channel</source>
        <translation>記錄沒有溫度通道</translation>
    </message>
    <message>
        <source>no row has a usable time</source>
        <translation>沒有任何列有可用的時間</translation>
    </message>
    <message>
        <source>cannot be read: {0}</source>
        <translation>無法讀取：{0}</translation>
    </message>
    <message>
        <source>there is not enough memory for it</source>
        <translation>記憶體不足，無法處理</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>沒有此檔案或資料夾</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>權限不足</translation>
    </message>
    <message>
        <source>The counter of times starts anew at {0}: the rows go on.</source>
        <translation>時間計數在 {0} 處從頭開始：各列接續計時。</translation>
    </message>
    <message>
        <source>At line {0} another table begins, of other channels: {1}, {2} rows. It was not read.</source>
        <translation>第 {0} 行開始另一個表格，通道不同：{1}，{2} 列。未讀取。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it counts runs, channels or the like.</source>
        <translation>{0} 保留但不判定：它計的是次數、通道數或類似的數目。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it says how sure the column before it is.</source>
        <translation>{0} 保留但不判定：它說明前一欄的不確定度。</translation>
    </message>
    <message>
        <source>The table at line {0} has the same times: its channels are read beside those before.</source>
        <translation>第 {0} 行的表格時間相同：其通道與前面的通道一併讀取。</translation>
    </message>
    <message>
        <source>What stands behind ± is no part of the readings and was left out.</source>
        <translation>± 之後的內容不屬於讀值，已略去。</translation>
    </message>
    <message>
        <source>times that start anew in {0} places</source>
        <translation>在 {0} 處從頭開始的時間</translation>
    </message>
    <message>
        <source>The clock jumps forward an hour at {0}:00 at night, as where summer time begins: the rows go on without the jump.</source>
        <translation>時鐘在夜間 {0}:00 往前跳一小時，如夏令時間開始：各列不計跳變，接續。</translation>
    </message>
    <message>
        <source>The clock jumps back an hour to {0}:00 at night, as where summer time ends: the rows go on without the jump.</source>
        <translation>時鐘在夜間往回跳一小時到 {0}:00，如夏令時間結束：各列不計跳變，接續。</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it ends after a few rows, as a table beside the log does.</source>
        <translation>{0} 保留但不判定：幾列後即結束，像記錄旁的另一個表格。</translation>
    </message>
    <message>
        <source>The header names {0} columns and the rows have {1}: the names are taken from the left.</source>
        <translation>標題列有 {0} 欄名稱，資料列有 {1} 欄：名稱自左側依序對應。</translation>
    </message>
    <message>
        <source>The rows stand with the newest first: read from the last to the first.</source>
        <translation>各列由新到舊排列：自最後一列往前讀取。</translation>
    </message>
    <message>
        <source>The rows do not stand in the order of their times: put in order channel by channel.</source>
        <translation>各列未依時間順序排列：已逐通道排序。</translation>
    </message>
    <message>
        <source>{0} has a reading in one row of {1}: it keeps the times of these.</source>
        <translation>{0} 每 {1} 列有一個讀數：保留這些列的時間。</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; stands in {1} cells for readings: taken as no reading.</source>
        <translation>「{0}」出現在 {1} 個讀數儲存格中：視為沒有讀數。</translation>
    </message>
    <message>
        <source>a whole JSON document</source>
        <translation>完整的 JSON 文件</translation>
    </message>
    <message>
        <source>a JSON document of readings</source>
        <translation>含讀數的 JSON 文件</translation>
    </message>
    <message>
        <source>records, rows or columns of readings</source>
        <translation>讀數的資料錄、列或欄</translation>
    </message>
    <message>
        <source>one record a line</source>
        <translation>每行一筆資料錄</translation>
    </message>
    <message>
        <source>the column &quot;{0}&quot; of the header</source>
        <translation>標題列的「{0}」欄</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>最多 {0}</translation>
    </message>
    <message>
        <source>{0} cells in a row</source>
        <translation>一列 {0} 個儲存格</translation>
    </message>
    <message>
        <source>a JSON document without a table</source>
        <translation>沒有表格的 JSON 文件</translation>
    </message>
    <message>
        <source>JSON that is damaged or cut off</source>
        <translation>損壞或不完整的 JSON</translation>
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
        <translation>那裡沒有存檔</translation>
    </message>
    <message>
        <source>the file is empty, no archive</source>
        <translation>檔案是空的，不是存檔</translation>
    </message>
    <message>
        <source>it is a database of another program, no archive</source>
        <translation>那是另一個程式的資料庫，不是存檔</translation>
    </message>
    <message>
        <source>the archive has version {0}, this program knows up to {1}: it takes a newer program</source>
        <translation>存檔的版本是 {0}，本程式只認得到 {1}：需要較新的程式</translation>
    </message>
    <message>
        <source>the archive is open for reading only</source>
        <translation>存檔是以唯讀方式開啟的</translation>
    </message>
    <message>
        <source>there is no archive in the database yet</source>
        <translation>資料庫中還沒有存檔</translation>
    </message>
    <message>
        <source>the server refuses: this user may only read the archive</source>
        <translation>伺服器拒絕：此使用者只能讀取存檔</translation>
    </message>
    <message>
        <source>the server does not answer</source>
        <translation>伺服器沒有回應</translation>
    </message>
    <message>
        <source>the server refuses ({0})</source>
        <translation>伺服器拒絕（{0}）</translation>
    </message>
    <message>
        <source>the database reports an error ({0})</source>
        <translation>資料庫回報錯誤（{0}）</translation>
    </message>
    <message>
        <source>the file&apos;s disk does not serve a write-ahead log</source>
        <translation>檔案所在的磁碟不支援預寫日誌（WAL）</translation>
    </message>
    <message>
        <source>the PostgreSQL driver of Qt is not installed</source>
        <translation>未安裝 Qt 的 PostgreSQL 驅動程式</translation>
    </message>
    <message>
        <source>there is no record {0}</source>
        <translation>沒有紀錄 {0}</translation>
    </message>
    <message>
        <source>{0} is damaged</source>
        <translation>{0} 已損壞</translation>
    </message>
    <message>
        <source>{0} is missing</source>
        <translation>缺少 {0}</translation>
    </message>
    <message>
        <source>the bytes kept as {0} are damaged</source>
        <translation>以 {0} 保存的位元組已損壞</translation>
    </message>
    <message>
        <source>has changed since it was read: judge again</source>
        <translation>讀取之後已變更：請重新判定</translation>
    </message>
    <message>
        <source>has changed while it was judged</source>
        <translation>判定期間已變更</translation>
    </message>
    <message>
        <source>the log is no longer read as one run</source>
        <translation>記錄檔不再被讀成一次測溫</translation>
    </message>
    <message>
        <source>no run of the lot is in the archive</source>
        <translation>存檔中沒有此批號的測溫</translation>
    </message>
    <message>
        <source>its name does not match the rule&apos;s expression for lot, serial or operator</source>
        <translation>檔名不符合規則中批號、序號或操作員的運算式</translation>
    </message>
    <message>
        <source>cannot be written: {0}</source>
        <translation>無法寫入：{0}</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>不是資料夾</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>是資料夾</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>磁碟空間不足</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>檔案系統唯讀</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>輸入輸出錯誤</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>空無</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>加引號的文字</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true 或 false</translation>
    </message>
    <message>
        <source>a number or a text in quotes</source>
        <translation>數字或加引號的文字</translation>
    </message>
    <message>
        <source>an array of numbers</source>
        <translation>數字清單</translation>
    </message>
    <message>
        <source>an array of texts</source>
        <translation>文字清單</translation>
    </message>
    <message>
        <source>tables: {0}</source>
        <translation>表格：{0}</translation>
    </message>
    <message>
        <source>a [[rule]]</source>
        <translation>一條規則 [[rule]]</translation>
    </message>
    <message>
        <source>a regular expression</source>
        <translation>規則運算式</translation>
    </message>
    <message>
        <source>the recipe that the oven ran</source>
        <translation>爐所用的配方</translation>
    </message>
    <message>
        <source>the oven that the recipe ran on</source>
        <translation>使用此配方的爐</translation>
    </message>
    <message>
        <source>a file that people edit</source>
        <translation>供人編輯的檔案</translation>
    </message>
    <message>
        <source>a file or the name of a window</source>
        <translation>檔案或製程窗口的名稱</translation>
    </message>
    <message>
        <source>a file or the name of an oven</source>
        <translation>檔案或爐的名稱</translation>
    </message>
    <message>
        <source>a file or the name of a recipe</source>
        <translation>檔案或配方的名稱</translation>
    </message>
    <message>
        <source>a file or the name of a board</source>
        <translation>檔案或電路板的名稱</translation>
    </message>
    <message>
        <source>a file or the name of a layout</source>
        <translation>檔案或讀取格式的名稱</translation>
    </message>
    <message>
        <source>the log ends while the temperature still rises</source>
        <translation>記錄結束時溫度仍在上升</translation>
    </message>
    <message>
        <source>the log starts at its highest temperature</source>
        <translation>記錄從最高溫度開始</translation>
    </message>
    <message>
        <source>for a trace the log ends while the temperature still rises</source>
        <translation>有一條曲線在記錄結束時溫度仍在上升</translation>
    </message>
    <message>
        <source>for a trace the log starts at its highest temperature</source>
        <translation>有一條曲線在記錄開始時就是最高溫度</translation>
    </message>
    <message>
        <source>the log starts above {0}</source>
        <translation>記錄開始時高於 {0}</translation>
    </message>
    <message>
        <source>the log ends above {0}</source>
        <translation>記錄結束時高於 {0}</translation>
    </message>
    <message>
        <source>the log starts at {0}</source>
        <translation>記錄從 {0} 開始</translation>
    </message>
    <message>
        <source>the log starts at {0} or above</source>
        <translation>記錄開始時不低於 {0}</translation>
    </message>
    <message>
        <source>the log ends at {0} or above</source>
        <translation>記錄結束時不低於 {0}</translation>
    </message>
    <message>
        <source>the peak is {0}, not above {1}</source>
        <translation>峰值為 {0}，未高於 {1}</translation>
    </message>
    <message>
        <source>the peak is {0}, it does not reach {1}</source>
        <translation>峰值為 {0}，未達 {1}</translation>
    </message>
    <message>
        <source>no time was spent between the two temperatures</source>
        <translation>兩個溫度之間沒有經過時間</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise; the sample interval is {1}</source>
        <translation>升溫段內沒有長 {0} 且至少含 3 個取樣的區間；取樣間隔為 {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall; the sample interval is {1}</source>
        <translation>降溫段內沒有長 {0} 且至少含 3 個取樣的區間；取樣間隔為 {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise within the range of temperatures; the sample interval is {1}</source>
        <translation>升溫段的溫度範圍內沒有長 {0} 且至少含 3 個取樣的區間；取樣間隔為 {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall within the range of temperatures; the sample interval is {1}</source>
        <translation>降溫段的溫度範圍內沒有長 {0} 且至少含 3 個取樣的區間；取樣間隔為 {1}</translation>
    </message>
    <message>
        <source>never reaches {0}, counts to the peak</source>
        <translation>從未達到 {0}，計算到峰值為止</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace starts at {2}</source>
        <translation>{0} 在 {1}，曲線從 {2} 開始</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace ends at {2}</source>
        <translation>{0} 在 {1}，曲線到 {2} 結束</translation>
    </message>
    <message>
        <source>the time asked for</source>
        <translation>所要求的時刻</translation>
    </message>
    <message>
        <source>the end of zone {0}</source>
        <translation>溫區 {0} 的末端</translation>
    </message>
    <message>
        <source>the end of the last zone</source>
        <translation>最後溫區的末端</translation>
    </message>
    <message>
        <source>needs the oven and its recipe</source>
        <translation>需要爐及其配方</translation>
    </message>
    <message>
        <source>the log does not show when the board entered the oven</source>
        <translation>記錄未顯示電路板何時入爐</translation>
    </message>
    <message>
        <source>the oven has no zone {0}</source>
        <translation>這座爐沒有溫區 {0}</translation>
    </message>
    <message>
        <source>the oven has no zones</source>
        <translation>這座爐沒有溫區</translation>
    </message>
    <message>
        <source>no wave seen: no slope of 5 °C/s over 1 s</source>
        <translation>未見波峰：1 s 內沒有 5 °C/s 的斜率</translation>
    </message>
    <message>
        <source>the log does not show the start of the wave</source>
        <translation>記錄未顯示進入波峰的時刻</translation>
    </message>
    <message>
        <source>no peak of 10 °C or more follows the start of the wave</source>
        <translation>進入波峰後沒有 10 °C 或以上的峰值</translation>
    </message>
    <message>
        <source>the log ends before the joint has left the solder</source>
        <translation>記錄在焊點離開焊料之前就結束</translation>
    </message>
    <message>
        <source>there is no time that all traces cover</source>
        <translation>沒有所有曲線共有的時段</translation>
    </message>
    <message>
        <source>the log starts with a trace above {0}</source>
        <translation>記錄開始時已有曲線高於 {0}</translation>
    </message>
    <message>
        <source>no trace rises above {0}</source>
        <translation>沒有曲線升到 {0} 以上</translation>
    </message>
    <message>
        <source>the log does not show a trace that rises above {0}</source>
        <translation>記錄未顯示有曲線升到 {0} 以上</translation>
    </message>
    <message>
        <source>not all traces have data at {0}, when the first one reaches {1}</source>
        <translation>在 {0} 第一條曲線到達 {1} 時，並非所有曲線都有數據</translation>
    </message>
    <message>
        <source>a trace starts above {0}</source>
        <translation>有一條曲線開始時高於 {0}</translation>
    </message>
    <message>
        <source>the coldest trace does not reach {0}</source>
        <translation>最冷的曲線未達 {0}</translation>
    </message>
    <message>
        <source>no sample has the coldest trace in the range of temperatures</source>
        <translation>沒有任何取樣使最冷的曲線落在溫度範圍內</translation>
    </message>
    <message>
        <source>not every trace rises above {0}</source>
        <translation>並非每條曲線都升到 {0} 以上</translation>
    </message>
    <message>
        <source>the log does not show every trace rise above {0}</source>
        <translation>記錄未顯示每條曲線都升到 {0} 以上</translation>
    </message>
    <message>
        <source>no trace to compare</source>
        <translation>沒有可比較的曲線</translation>
    </message>
    <message>
        <source>one trace only</source>
        <translation>只有一條曲線</translation>
    </message>
    <message>
        <source>a gap in the trace hides it</source>
        <translation>曲線的缺口遮住了它</translation>
    </message>
    <message>
        <source>fewer than 3 samples</source>
        <translation>少於 3 個取樣</translation>
    </message>
    <message>
        <source>fewer than 3 good samples: {0}</source>
        <translation>有效取樣少於 3 個：{0}</translation>
    </message>
    <message>
        <source>Tc is not known: enter the part&apos;s thickness and volume</source>
        <translation>Tc 未知：請填入零件的厚度與體積</translation>
    </message>
    <message>
        <source>Tc is a limit of bodies</source>
        <translation>Tc 是零件本體的界限</translation>
    </message>
    <message>
        <source>the log does not show it</source>
        <translation>記錄未顯示</translation>
    </message>
    <message>
        <source>the log does not show them</source>
        <translation>記錄未顯示它們</translation>
    </message>
    <message>
        <source>enter which part {0} is on in the board file</source>
        <translation>請在板檔中填入 {0} 位於哪個零件</translation>
    </message>
    <message>
        <source>enter the part {0} in the board file</source>
        <translation>請在板檔中填入零件 {0}</translation>
    </message>
    <message>
        <source>enter the package thickness and volume of {0} in the board file</source>
        <translation>請在板檔中填入 {0} 的封裝厚度與體積</translation>
    </message>
    <message>
        <source>enter the package thickness of {0} in the board file</source>
        <translation>請在板檔中填入 {0} 的封裝厚度</translation>
    </message>
    <message>
        <source>enter the package volume of {0} in the board file</source>
        <translation>請在板檔中填入 {0} 的封裝體積</translation>
    </message>
    <message>
        <source>enter the classification, Pb-free or SnPb, in the window {0}</source>
        <translation>請在製程窗口 {0} 中填入分級：Pb-free 或 SnPb</translation>
    </message>
    <message>
        <source>the board has no placement that these bind: {0}</source>
        <translation>電路板上沒有適用下列要求的測點：{0}</translation>
    </message>
    <message>
        <source>{0} is not judged for {1}: enter its side in the board file</source>
        <translation>{0} 未對 {1} 判定：請在板檔中填入其所在面</translation>
    </message>
    <message>
        <source>{0}: {1}, {2}, needs Tc (J-STD-020)</source>
        <translation>{0}：{2} 的{1}需要 Tc（J-STD-020）</translation>
    </message>
    <message>
        <source>{0}, {1}: its lower limit is not below its upper limit, which is Tc: nothing can pass</source>
        <translation>{1} 的{0}：下限不低於上限（即 Tc）：沒有任何值能合格</translation>
    </message>
    <message>
        <source>{0}, {1}: its target does not lie inside its limits once Tc is put in, and is not used</source>
        <translation>{1} 的{0}：代入 Tc 後目標不在界限之內，因此不採用</translation>
    </message>
    <message>
        <source>the log has no channel {0}</source>
        <translation>記錄中沒有通道 {0}</translation>
    </message>
    <message>
        <source>{0}: the log has no channel {1}</source>
        <translation>{0}：記錄中沒有通道 {1}</translation>
    </message>
    <message>
        <source>{0}: its limits are narrower than 2 U, so nothing can pass under the guarded rule</source>
        <translation>{0}：界限間距小於 2 U，因此在保護帶規則下沒有任何值能合格</translation>
    </message>
    <message>
        <source>{0}: K class 1 is taken for {1}</source>
        <translation>{0}：{1} 以 K class 1 計</translation>
    </message>
    <message>
        <source>it knows ovens, not waves</source>
        <translation>它只認得爐，不認得波峰</translation>
    </message>
    <message>
        <source>{0} of zone {1} is {2} °C, outside the oven&apos;s {3} to {4} °C</source>
        <translation>溫區 {1} 的 {0} 為 {2} °C，超出爐的 {3} 至 {4} °C</translation>
    </message>
    <message>
        <source>{0} steps by {1} °C from zone {2} to {3}, more than the oven&apos;s {4} °C</source>
        <translation>{0} 從溫區 {2} 到 {3} 相差 {1} °C，超過爐的 {4} °C</translation>
    </message>
    <message>
        <source>the recipe is for the oven &quot;{0}&quot;, not for &quot;{1}&quot;</source>
        <translation>配方屬於爐「{0}」，而非「{1}」</translation>
    </message>
    <message>
        <source>the speed is {0} mm/min, outside the oven&apos;s {1} to {2} mm/min</source>
        <translation>速度為 {0} mm/min，超出爐的 {1} 至 {2} mm/min</translation>
    </message>
    <message>
        <source>top and bottom of zone {0} differ by {1} °C, more than the oven&apos;s {2} °C</source>
        <translation>溫區 {0} 上下相差 {1} °C，超過爐的 {2} °C</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, expected {2}</source>
        <translation>「{1}」為 {0}，應為{2}</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot;, expected {1}</source>
        <translation>缺少「{0}」，應為{1}</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>{1} 缺少「{0}」，應為{2}</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>不認得的鍵「{0}」，是否為「{1}」？</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, expected {1}</source>
        <translation>不認得的鍵「{0}」，應為{1}</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, did you mean &quot;{2}&quot;?</source>
        <translation>{1} 中有不認得的鍵「{0}」，是否為「{2}」？</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>{1} 中有不認得的鍵「{0}」，應為{2}</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>不認得的量測項目「{0}」，是否為「{1}」？</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, expected {1}</source>
        <translation>不認得的量測項目「{0}」，應為{1}</translation>
    </message>
    <message>
        <source>no valid TOML: {0}</source>
        <translation>TOML 無效：{0}</translation>
    </message>
    <message>
        <source>the clock was set back by {0} s: later times are moved on</source>
        <translation>時鐘被撥回 {0} s：之後的時間已順延</translation>
    </message>
    <message>
        <source>found [{0}] and [[{1}]], expected [[{2}]] each time</source>
        <translation>同時有 [{0}] 與 [[{1}]]，應每次都寫 [[{2}]]</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; a second time, expected each key once</source>
        <translation>「{0}」重複出現，每個鍵只能出現一次</translation>
    </message>
    <message>
        <source>found a text without quotes, expected a number, true, false, or a text in quotes</source>
        <translation>文字沒有引號，應為數字、true、false 或引號內的文字</translation>
    </message>
    <message>
        <source>found a comma behind a value, expected a decimal point, or the end of the line</source>
        <translation>值後有逗號，應為小數點或行尾</translation>
    </message>
    <message>
        <source>found bytes that are no UTF-8, expected a text in UTF-8</source>
        <translation>有非 UTF-8 的位元組，應為 UTF-8 文字</translation>
    </message>
    <message>
        <source>cannot be parsed: {0}</source>
        <translation>無法解析：{0}</translation>
    </message>
    <message>
        <source>is kept as it is: {0}</source>
        <translation>保持原樣：{0}</translation>
    </message>
    <message>
        <source>found {0}, expected a file</source>
        <translation>這是{0}，應為一個檔案</translation>
    </message>
    <message>
        <source>found more than 4 MB, expected a file that people edit</source>
        <translation>超過 4 MB，應為人工編輯的檔案</translation>
    </message>
    <message>
        <source>Tc is a temperature, &quot;{0}&quot; is none</source>
        <translation>Tc 是溫度，「{0}」不是</translation>
    </message>
    <message>
        <source>Tc binds the bodies of parts, but &quot;applies_to&quot; leaves them out</source>
        <translation>Tc 適用於零件本體，但「applies_to」未包含本體</translation>
    </message>
    <message>
        <source>found Tc for &quot;{0}&quot;, but the window has no &quot;classification&quot; to take it from</source>
        <translation>「{0}」為 Tc，但製程窗口沒有可據以取值的「classification」</translation>
    </message>
    <message>
        <source>limits crossed: lower {0}, upper {1}</source>
        <translation>界限顛倒：下限 {0}，上限 {1}</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; an upper limit but no target</source>
        <translation>製程窗口「{0}」為「{1}」設了上限但沒有目標</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; a lower limit but no target</source>
        <translation>製程窗口「{0}」為「{1}」設了下限但沒有目標</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no limit, expected &quot;lower&quot;, &quot;upper&quot; or both</source>
        <translation>「{0}」沒有界限，應有「lower」、「upper」或兩者</translation>
    </message>
    <message>
        <source>has no limit</source>
        <translation>沒有界限</translation>
    </message>
    <message>
        <source>found no channel in &quot;applies_to&quot;</source>
        <translation>「applies_to」中沒有通道</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on the board as a whole</source>
        <translation>「applies_to」為 {0}，應為{1}：「{2}」是對整塊電路板量測的</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on each trace</source>
        <translation>「applies_to」為 {0}，應為{1}：「{2}」是對每條曲線量測的</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; in a window for reflow, expected process = &quot;wave&quot;</source>
        <translation>回焊製程窗口中有「{0}」，應為 process = &quot;wave&quot;</translation>
    </message>
    <message>
        <source>found &quot;tolerance_C&quot; beside &quot;thermocouple&quot;, expected one of the two</source>
        <translation>「tolerance_C」與「thermocouple」並存，只應有其一</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, expected {1}</source>
        <translation>熱電偶為「{0}」，應為{1}</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, whose tolerances begin at 600 °C, expected {1}</source>
        <translation>熱電偶為「{0}」，其公差從 600 °C 起，應為{1}</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, a class that ends at 40 °C, expected {1}</source>
        <translation>熱電偶為「{0}」，此等級只到 40 °C，應為{1}</translation>
    </message>
    <message>
        <source>a type (K, J, T, E, N, R or S) with &quot;class 1&quot; or &quot;class 2&quot; (IEC 60584-1) or &quot;special&quot; or &quot;standard&quot; (ASTM E230), such as &quot;K class 1&quot;</source>
        <translation>類型（K、J、T、E、N、R 或 S）加上「class 1」或「class 2」（IEC 60584-1），或「special」或「standard」（ASTM E230），例如「K class 1」</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no parameter &quot;{1}&quot;</source>
        <translation>「{0}」沒有參數「{1}」</translation>
    </message>
    <message>
        <source>{0}: found {1}, expected {2}</source>
        <translation>{0}：為 {1}，應為{2}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs {1}</source>
        <translation>「{0}」需要 {1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs level, or the window a &quot;liquidus_C&quot;</source>
        <translation>「{0}」需要 level，或製程窗口需有「liquidus_C」</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; was given a parameter that it does not know</source>
        <translation>「{0}」收到不認得的參數</translation>
    </message>
    <message>
        <source>over must be more than 0 s</source>
        <translation>over 必須大於 0 s</translation>
    </message>
    <message>
        <source>offset must not be negative</source>
        <translation>offset 不可為負</translation>
    </message>
    <message>
        <source>&quot;temperature at&quot; needs one of time, position_mm or zone</source>
        <translation>「temperature at」需要 time、position_mm、zone 其中之一</translation>
    </message>
    <message>
        <source>T1 must be above T2</source>
        <translation>T1 必須高於 T2</translation>
    </message>
    <message>
        <source>T1 must be below T2</source>
        <translation>T1 必須低於 T2</translation>
    </message>
    <message>
        <source>found an empty &quot;channel&quot;, expected its name in the log</source>
        <translation>「channel」是空的，應為其在記錄中的名稱</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>通道「{0}」重複出現，第一次在第 {1} 行</translation>
    </message>
    <message>
        <source>found the part &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>零件「{0}」重複出現，第一次在第 {1} 行</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, did you mean &quot;{2}&quot;?</source>
        <translation>板檔用到通道「{0}」，但「{1}」中沒有，是否為「{2}」？</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, expected {2}</source>
        <translation>板檔用到通道「{0}」，但「{1}」中沒有，應為{2}</translation>
    </message>
    <message>
        <source>found {0} in &quot;{1}&quot;, expected {2}</source>
        <translation>「{1}」中有 {0}，應為 {2}</translation>
    </message>
    <message>
        <source>found {0} setpoints in &quot;top_C&quot; but {1} in &quot;bottom_C&quot;, expected one for each heating zone in both</source>
        <translation>「top_C」中有 {0} 個設定值，「bottom_C」中卻有 {1} 個，兩者都應為每個加熱區一個</translation>
    </message>
    <message>
        <source>1 setpoint</source>
        <translation>1 個設定值</translation>
    </message>
    <message>
        <source>{0} setpoints</source>
        <translation>{0} 個設定值</translation>
    </message>
    <message>
        <source>{0}, one for each heating zone of &quot;{1}&quot;</source>
        <translation>{0} 個，「{1}」每個加熱溫區一個</translation>
    </message>
    <message>
        <source>{0}, one for each cooling zone of &quot;{1}&quot;</source>
        <translation>{0} 個，「{1}」每個冷卻溫區一個</translation>
    </message>
    <message>
        <source>found the zone &quot;{0}&quot; a second time</source>
        <translation>溫區「{0}」重複出現</translation>
    </message>
    <message>
        <source>the revision has no name</source>
        <translation>修訂沒有名稱</translation>
    </message>
    <message>
        <source>the window is at revision &quot;{0}&quot; already</source>
        <translation>製程窗口已是修訂「{0}」</translation>
    </message>
    <message>
        <source>a whole number of at least {0}</source>
        <translation>不小於 {0} 的整數</translation>
    </message>
    <message>
        <source>a whole number from {0} to {1}</source>
        <translation>{0} 到 {1} 的整數</translation>
    </message>
    <message>
        <source>a whole number from 1</source>
        <translation>從 1 起的整數</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>數字</translation>
    </message>
    <message>
        <source>two numbers, the lower one first</source>
        <translation>兩個數字，較小者在前</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>大於 0 的數字</translation>
    </message>
    <message>
        <source>a number of at least 0</source>
        <translation>不小於 0 的數字</translation>
    </message>
    <message>
        <source>a temperature in °C</source>
        <translation>以 °C 表示的溫度</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;</source>
        <translation>以 °C 表示的溫度，或「peak」</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;Tc&quot;</source>
        <translation>以 °C 表示的溫度，或「Tc」</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;, &quot;Tc&quot;</source>
        <translation>以 °C 表示的溫度，或「peak」、「Tc」</translation>
    </message>
    <message>
        <source>a number of seconds</source>
        <translation>秒數</translation>
    </message>
    <message>
        <source>a number of millimetres</source>
        <translation>毫米數</translation>
    </message>
    <message>
        <source>the name of a zone</source>
        <translation>溫區名稱</translation>
    </message>
    <message>
        <source>a length above 0</source>
        <translation>大於 0 的長度</translation>
    </message>
    <message>
        <source>a length of at least 0</source>
        <translation>不小於 0 的長度</translation>
    </message>
    <message>
        <source>a mass above 0</source>
        <translation>大於 0 的質量</translation>
    </message>
    <message>
        <source>a position in mm</source>
        <translation>以 mm 表示的位置</translation>
    </message>
    <message>
        <source>a speed above 0</source>
        <translation>大於 0 的速度</translation>
    </message>
    <message>
        <source>a volume above 0</source>
        <translation>大於 0 的體積</translation>
    </message>
    <message>
        <source>an area above 0</source>
        <translation>大於 0 的面積</translation>
    </message>
    <message>
        <source>length and width</source>
        <translation>長與寬</translation>
    </message>
    <message>
        <source>the channel&apos;s name in the log, or its number from 1</source>
        <translation>通道在記錄中的名稱，或從 1 起的編號</translation>
    </message>
    <message>
        <source>its name in the log</source>
        <translation>其在記錄中的名稱</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>名稱</translation>
    </message>
    <message>
        <source>the zone&apos;s name in quotes</source>
        <translation>以引號括住的溫區名稱</translation>
    </message>
    <message>
        <source>at least one [[zone]] of kind &quot;heat&quot;</source>
        <translation>至少一個「heat」類的 [[zone]]</translation>
    </message>
    <message>
        <source>one setpoint for each heating zone</source>
        <translation>每個加熱溫區一個設定值</translation>
    </message>
    <message>
        <source>at least one [[requirement]]</source>
        <translation>至少一個 [[requirement]]</translation>
    </message>
    <message>
        <source>a number, &quot;Tc&quot; or &quot;Tc-5&quot;</source>
        <translation>數字、「Tc」或「Tc-5」</translation>
    </message>
    <message>
        <source>&quot;body&quot;, &quot;all&quot; or a list of channels</source>
        <translation>「body」、「all」或通道清單</translation>
    </message>
    <message>
        <source>&quot;all&quot;, &quot;joint&quot;, &quot;body&quot; or a list of channels</source>
        <translation>「all」、「joint」、「body」或通道清單</translation>
    </message>
    <message>
        <source>classification = &quot;Pb-free&quot; or &quot;SnPb&quot;</source>
        <translation>classification = &quot;Pb-free&quot; 或 &quot;SnPb&quot;</translation>
    </message>
    <message>
        <source>an upper limit above the lower one</source>
        <translation>高於下限的上限</translation>
    </message>
    <message>
        <source>a limit above 0 or a target</source>
        <translation>大於 0 的界限，或目標</translation>
    </message>
    <message>
        <source>a target</source>
        <translation>目標</translation>
    </message>
    <message>
        <source>a target strictly between {0} and {1}</source>
        <translation>嚴格介於 {0} 與 {1} 之間的目標</translation>
    </message>
    <message>
        <source>a target above {0}</source>
        <translation>高於 {0} 的目標</translation>
    </message>
    <message>
        <source>a target below {0}</source>
        <translation>低於 {0} 的目標</translation>
    </message>
    <message>
        <source>at least one channel</source>
        <translation>至少一個通道</translation>
    </message>
    <message>
        <source>at most the liquidus, {0}</source>
        <translation>不高於液相線 {0}</translation>
    </message>
    <message>
        <source> or </source>
        <translation>或</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>檔案已存在</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>檔名過長</translation>
    </message>
    <message>
        <source>Too many open files</source>
        <translation>開啟的檔案過多</translation>
    </message>
    <message>
        <source>Operation not permitted</source>
        <translation>不允許此操作</translation>
    </message>
    <message>
        <source>a pipe</source>
        <translation>管道</translation>
    </message>
    <message>
        <source>a device</source>
        <translation>裝置</translation>
    </message>
    <message>
        <source>found {0}, expected {1} as in the other rows</source>
        <translation>找到{0}，應如其他各列為{1}</translation>
    </message>
    <message>
        <source>found {0}, expected as many fields as names: the comma is the delimiter and seems to be the decimal sign as well, and {1}</source>
        <translation>找到{0}，欄位數應與名稱數相同：逗號是分隔符號，似乎也是小數點，而且{1}</translation>
    </message>
    <message>
        <source>as many fields as names</source>
        <translation>與名稱數相同的欄位數</translation>
    </message>
    <message>
        <source>no encoding named &quot;{0}&quot; is known</source>
        <translation>沒有名為「{0}」的字元編碼</translation>
    </message>
    <message>
        <source>the name of a character encoding</source>
        <translation>字元編碼的名稱</translation>
    </message>
    <message>
        <source>found {0}, expected text in that encoding</source>
        <translation>找到{0}，應為該編碼的文字</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; places a cell out of range, expected {1}</source>
        <translation>工作表「{0}」有儲存格超出範圍，應為{1}</translation>
    </message>
    <message>
        <source>a cell out of range</source>
        <translation>超出範圍的儲存格</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; spreads {1} cells over millions of empty or repeated ones, expected a table</source>
        <translation>工作表「{0}」的 {1} 個儲存格散布在數百萬個空白或重複的儲存格中，應為表格</translation>
    </message>
    <message>
        <source>cells too far apart</source>
        <translation>相距過遠的儲存格</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>表格</translation>
    </message>
    <message>
        <source>found a gzip file that is {0}, expected a whole one</source>
        <translation>gzip 檔{0}，應為完整的檔案</translation>
    </message>
    <message>
        <source>found an OpenDocument file without a table, expected a spreadsheet</source>
        <translation>找到沒有表格的 OpenDocument 檔，應為試算表</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>沒有表格</translation>
    </message>
    <message>
        <source>a spreadsheet</source>
        <translation>試算表</translation>
    </message>
    <message>
        <source>found no sheet &quot;{0}&quot;, expected one of: {1}</source>
        <translation>沒有工作表「{0}」，應為其中之一：{1}</translation>
    </message>
    <message>
        <source>found {0} and no rows of numbers, expected {1}</source>
        <translation>找到{0}但沒有數字列，應為{1}</translation>
    </message>
    <message>
        <source>found the unit {0} and no column of temperatures, expected °C, °F, K or mV</source>
        <translation>單位為 {0} 且沒有溫度欄，應為 °C、°F、K 或 mV</translation>
    </message>
    <message>
        <source>found the unit {0}, expected °C, °F, K or mV</source>
        <translation>單位為 {0}，應為 °C、°F、K 或 mV</translation>
    </message>
    <message>
        <source>found no columns of channel names and values, expected time, channel and value</source>
        <translation>沒有通道名稱與數值的欄位，應有時間、通道與數值</translation>
    </message>
    <message>
        <source>found more than {0} readings, expected a log below the cap on its size</source>
        <translation>讀數超過 {0} 個，記錄大小應在上限之內</translation>
    </message>
    <message>
        <source>more than {0} readings</source>
        <translation>超過 {0} 個讀數</translation>
    </message>
    <message>
        <source>a log below the cap on its size</source>
        <translation>大小在上限之內的記錄</translation>
    </message>
    <message>
        <source>found more than {0} names of channels</source>
        <translation>通道名稱超過 {0} 個</translation>
    </message>
    <message>
        <source>the name of a channel</source>
        <translation>通道名稱</translation>
    </message>
    <message>
        <source>reading was stopped</source>
        <translation>讀取已停止</translation>
    </message>
    <message>
        <source>the interval between rows is not above 0</source>
        <translation>各列的間隔不大於 0</translation>
    </message>
    <message>
        <source>found the kind of time &quot;{0}&quot;, expected a known one</source>
        <translation>時間種類為「{0}」，應為已知的種類</translation>
    </message>
    <message>
        <source>a kind of time</source>
        <translation>時間種類</translation>
    </message>
    <message>
        <source>column {0} holds no clock times or dates, expected {1}</source>
        <translation>第 {0} 欄沒有時刻或日期，應為{1}</translation>
    </message>
    <message>
        <source>column {0} holds no plain numbers, expected {1}</source>
        <translation>第 {0} 欄沒有純數字，應為{1}</translation>
    </message>
    <message>
        <source>{0} unpacks to too much, expected {1}</source>
        <translation>{0} 解開後過大，應為{1}</translation>
    </message>
    <message>
        <source>too many unpacked bytes</source>
        <translation>解開後的位元組過多</translation>
    </message>
    <message>
        <source>found a workbook without its part {0}, expected a whole .xlsx workbook</source>
        <translation>活頁簿缺少其部分 {0}，應為完整的 .xlsx 活頁簿</translation>
    </message>
    <message>
        <source>found a document type definition, expected the XML of a workbook</source>
        <translation>找到文件類型定義，應為活頁簿的 XML</translation>
    </message>
    <message>
        <source>a document type definition</source>
        <translation>文件類型定義</translation>
    </message>
    <message>
        <source>the XML of a workbook</source>
        <translation>活頁簿的 XML</translation>
    </message>
    <message>
        <source>{0} cannot be unpacked: {1}</source>
        <translation>{0} 無法解開：{1}</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到製程窗口「{0}」，是否為「{1}」？</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, neither as a file nor as a name; `ovenwright windows` lists the names</source>
        <translation>找不到製程窗口「{0}」，既非檔案也非名稱；`ovenwright windows` 可列出名稱</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到爐「{0}」，是否為「{1}」？</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, neither as a file nor as a name; `ovenwright ovens` lists the names</source>
        <translation>找不到爐「{0}」，既非檔案也非名稱；`ovenwright ovens` 可列出名稱</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到配方「{0}」，是否為「{1}」？</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, neither as a file nor as a name; `ovenwright recipes` lists the names</source>
        <translation>找不到配方「{0}」，既非檔案也非名稱；`ovenwright recipes` 可列出名稱</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到板檔「{0}」，是否為「{1}」？</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, neither as a file nor as a name; `ovenwright boards` lists the names</source>
        <translation>找不到板檔「{0}」，既非檔案也非名稱；`ovenwright boards` 可列出名稱</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>找不到格式「{0}」，是否為「{1}」？</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, neither as a file nor as a name; `ovenwright layouts` lists the names</source>
        <translation>找不到格式「{0}」，既非檔案也非名稱；`ovenwright layouts` 可列出名稱</translation>
    </message>
    <message>
        <source>&quot;{0}&quot;</source>
        <translation>「{0}」</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, did you mean &quot;{2}&quot;?</source>
        <translation>「{1}」為 {0}，是否為「{2}」？</translation>
    </message>
    <message>
        <source>a table: [{0}]</source>
        <translation>表格：[{0}]</translation>
    </message>
    <message>
        <source>tables: [[{0}]]</source>
        <translation>表格陣列：[[{0}]]</translation>
    </message>
    <message>
        <source>found 1 run, expected at least {0}</source>
        <translation>有 1 次過爐，應至少有 {0} 次</translation>
    </message>
    <message>
        <source>found {0} runs, expected at least {1}</source>
        <translation>有 {0} 次過爐，應至少有 {1} 次</translation>
    </message>
    <message>
        <source>{0} fields under {1} names</source>
        <translation>{1} 個名稱下有 {0} 個欄位</translation>
    </message>
    <message>
        <source>no way to join them fits</source>
        <translation>沒有任何合併方式相符</translation>
    </message>
    <message>
        <source>the counts allow more than one way to join them</source>
        <translation>數目容許不只一種合併方式</translation>
    </message>
    <message>
        <source>{0} fields of whole numbers, every second one a single digit</source>
        <translation>{0} 個整數欄位，每隔一個只有一位數</translation>
    </message>
    <message>
        <source>found {0}, expected numbers: the comma seems to be the delimiter and the decimal sign as well, and no header tells how many columns there are</source>
        <translation>找到{0}，應為數字：逗號似乎既是分隔符號又是小數點，且沒有標題說明有幾欄</translation>
    </message>
    <message>
        <source>at most {0} MiB for a file of this size</source>
        <translation>此大小的檔案最多 {0} MiB</translation>
    </message>
    <message>
        <source>one sample, {0} °C</source>
        <translation>1 個取樣，{0} °C</translation>
    </message>
    <message>
        <source>{0} samples</source>
        <translation>{0} 個取樣</translation>
    </message>
    <message>
        <source>open</source>
        <translation>開路</translation>
    </message>
    <message>
        <source>over-range</source>
        <translation>超出量程</translation>
    </message>
    <message>
        <source>dropout</source>
        <translation>掉訊</translation>
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
        <translation>極性接反</translation>
    </message>
    <message>
        <source>detached</source>
        <translation>脫落</translation>
    </message>
    <message>
        <source>swapped placement</source>
        <translation>測點接錯</translation>
    </message>
    <message>
        <source>cold-junction step</source>
        <translation>冷接點階躍</translation>
    </message>
    <message>
        <source>clock gap</source>
        <translation>時間間隙</translation>
    </message>
    <message>
        <source>time going back</source>
        <translation>時間倒退</translation>
    </message>
    <message>
        <source>the log</source>
        <translation>記錄</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed</source>
        <translation>{0}：{1}，於 {2} s，已移除</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed: {3}</source>
        <translation>{0}：{1}，於 {2} s，已移除：{3}</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in</source>
        <translation>{0}：{1}，於 {2} s，已保留</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in: {3}</source>
        <translation>{0}：{1}，於 {2} s，已保留：{3}</translation>
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
        <translation>出自「{0}」</translation>
    </message>
    <message>
        <source>tabs between cells</source>
        <translation>以 Tab 分隔</translation>
    </message>
    <message>
        <source>blanks between cells</source>
        <translation>以空白分隔</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; between cells</source>
        <translation>以「{0}」分隔</translation>
    </message>
    <message>
        <source>fixed width</source>
        <translation>固定欄寬</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>小數點為逗號</translation>
    </message>
    <message>
        <source>time as {0}</source>
        <translation>時間為{0}</translation>
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
        <translation>分鐘</translation>
    </message>
    <message>
        <source>clock m:s</source>
        <translation>時刻 m:s</translation>
    </message>
    <message>
        <source>clock h:m</source>
        <translation>時刻 h:m</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>時刻 h:m:s</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>日期與時間</translation>
    </message>
    <message>
        <source>serial days</source>
        <translation>序列天數</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>自 1970 年起的秒數</translation>
    </message>
    <message>
        <source>index</source>
        <translation>列號</translation>
    </message>
    <message>
        <source>header in line {0}</source>
        <translation>標題在第 {0} 行</translation>
    </message>
    <message>
        <source>no header</source>
        <translation>無標題</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 列</translation>
    </message>
    <message>
        <source>{0} rows</source>
        <translation>{0} 列</translation>
    </message>
    <message>
        <source>{0} skipped</source>
        <translation>略過 {0} 列</translation>
    </message>
    <message>
        <source>one every {0} s</source>
        <translation>每 {0} s 一列</translation>
    </message>
    <message>
        <source>found {0}, expected a drawing alone: a logo runs nothing and fetches nothing</source>
        <translation>找到{0}，應只有圖形：標誌不得執行或下載任何東西</translation>
    </message>
    <message>
        <source>the element &lt;{0}&gt;</source>
        <translation>元素 &lt;{0}&gt;</translation>
    </message>
    <message>
        <source>the handler {0}</source>
        <translation>處理程序 {0}</translation>
    </message>
    <message>
        <source>a link to {0}</source>
        <translation>指向 {0} 的連結</translation>
    </message>
    <message>
        <source>entities of its own</source>
        <translation>自訂實體</translation>
    </message>
    <message>
        <source>a processing instruction</source>
        <translation>處理指令</translation>
    </message>
    <message>
        <source>a style that fetches</source>
        <translation>會下載的樣式</translation>
    </message>
    <message>
        <source>is a damaged SVG drawing: {0}</source>
        <translation>是損壞的 SVG 圖形：{0}</translation>
    </message>
    <message>
        <source>is a drawing without a size</source>
        <translation>是沒有尺寸的圖形</translation>
    </message>
    <message>
        <source>is no picture that a sheet can show, expected an SVG drawing, a PNG or a JPEG picture</source>
        <translation>不是報告可顯示的圖片，應為 SVG 圖形、PNG 或 JPEG 圖片</translation>
    </message>
    <message>
        <source>has {0} × {1} points: no logo is that large</source>
        <translation>有 {0} × {1} 點：標誌不會這麼大</translation>
    </message>
    <message>
        <source>is a damaged picture: {0}</source>
        <translation>是損壞的圖片：{0}</translation>
    </message>
    <message>
        <source>is larger than 4 MB: no logo is</source>
        <translation>大於 4 MB：標誌不會這麼大</translation>
    </message>
    <message>
        <source>the record&apos;s body is damaged</source>
        <translation>紀錄內容已損壞</translation>
    </message>
    <message>
        <source>packed bytes are damaged</source>
        <translation>壓縮資料已損壞</translation>
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
        <translation>為「{0}」，應為正規表示式（{1}）</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>磁碟已滿</translation>
    </message>
    <message>
        <source>it cannot be written</source>
        <translation>無法寫入</translation>
    </message>
    <message>
        <source>it is damaged, or no database</source>
        <translation>已損壞，或不是資料庫</translation>
    </message>
    <message>
        <source>the database reports an error</source>
        <translation>資料庫回報錯誤</translation>
    </message>
    <message>
        <source>1 row ends before the last column: what is missing there counts as no reading.</source>
        <translation>1 列在最後一欄之前結束：缺少的部分視為沒有讀數。</translation>
    </message>
    <message>
        <source>1 cell that is no number is left empty: &quot;{0}&quot; in line {1}.</source>
        <translation>1 個非數字的儲存格視為空白：第 {1} 行的「{0}」。</translation>
    </message>
    <message>
        <source>{0} cells that are no numbers are left empty: the first is &quot;{1}&quot; in line {2}.</source>
        <translation>{0} 個非數字的儲存格視為空白：第一個是第 {2} 行的「{1}」。</translation>
    </message>
    <message>
        <source>1 row without a time is left out: line {0}.</source>
        <translation>1 列沒有時間，已略去：第 {0} 行。</translation>
    </message>
    <message>
        <source>{0} rows without a time are left out: the first is line {1}.</source>
        <translation>{0} 列沒有時間，已略去：第一個是第 {1} 行。</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot;</source>
        <translation>工作表「{1}」的儲存格 {0}</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot;</source>
        <translation>工作表「{1}」的第 {0} 列</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;</source>
        <translation>工作表「{0}」</translation>
    </message>
    <message>
        <source>row {0} of table {1}</source>
        <translation>表格 {1} 的第 {0} 列</translation>
    </message>
    <message>
        <source>in &quot;{0}&quot;</source>
        <translation>於「{0}」中</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>「{2}」中工作表「{1}」的儲存格 {0}</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>「{2}」中工作表「{1}」的第 {0} 列</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; in &quot;{1}&quot;</source>
        <translation>「{1}」中的工作表「{0}」</translation>
    </message>
    <message>
        <source>row {0} of table {1} in &quot;{2}&quot;</source>
        <translation>「{2}」中表格 {1} 的第 {0} 列</translation>
    </message>
    <message>
        <source>an empty zip archive</source>
        <translation>空的 zip 壓縮檔</translation>
    </message>
    <message>
        <source>a zip archive of other files ({0})</source>
        <translation>內含其他檔案的 zip 壓縮檔（{0}）</translation>
    </message>
    <message>
        <source>found no file &quot;{0}&quot; in the archive, expected one of: {1}</source>
        <translation>壓縮檔中找不到檔案「{0}」，應為下列之一：{1}</translation>
    </message>
    <message>
        <source>found no table &quot;{0}&quot;, expected one of: {1}</source>
        <translation>找不到表格「{0}」，應為下列之一：{1}</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls)</source>
        <translation>舊式二進位活頁簿（.xls）</translation>
    </message>
    <message>
        <source>a word processor's document of the old binary kind</source>
        <translation>舊式二進位文書檔</translation>
    </message>
    <message>
        <source>a presentation of the old binary kind</source>
        <translation>舊式二進位簡報檔</translation>
    </message>
    <message>
        <source>a tar archive, which is not unpacked here</source>
        <translation>tar 封存檔，此處不解開</translation>
    </message>
    <message>
        <source>a workbook without its texts (sharedStrings.xml)</source>
        <translation>缺少文字部分（sharedStrings.xml）的活頁簿</translation>
    </message>
    <message>
        <source>a text that the workbook does not hold</source>
        <translation>活頁簿中沒有的文字</translation>
    </message>
    <message>
        <source>{0} formulas without a stored result</source>
        <translation>{0} 個沒有儲存結果的公式</translation>
    </message>
    <message>
        <source>readings, which a spreadsheet program stores when it saves the workbook</source>
        <translation>讀數（試算表程式儲存活頁簿時會一併存入）</translation>
    </message>
    <message>
        <source>it is cut short or damaged, the list of its files is missing</source>
        <translation>檔案被截斷或損壞，缺少檔案清單</translation>
    </message>
    <message>
        <source>the zip archive</source>
        <translation>zip 檔</translation>
    </message>
    <message>
        <source>Not a zip archive</source>
        <translation>不是 zip 檔</translation>
    </message>
    <message>
        <source>Zip archive inconsistent</source>
        <translation>zip 檔內容不一致</translation>
    </message>
    <message>
        <source>Premature end of file</source>
        <translation>檔案提前結束</translation>
    </message>
    <message>
        <source>CRC error</source>
        <translation>校驗和錯誤</translation>
    </message>
    <message>
        <source>Compression method not supported</source>
        <translation>不支援的壓縮方式</translation>
    </message>
    <message>
        <source>Encryption method not supported</source>
        <translation>不支援的加密方式</translation>
    </message>
    <message>
        <source>No password provided</source>
        <translation>未提供密碼</translation>
    </message>
    <message>
        <source>The file says {0}, which makes the top {1} °C: no run. As {2} it would be {3} °C.</source>
        <translation>檔案註明 {0}，最高為 {1} °C：不像過爐。若為 {2}，則為 {3} °C。</translation>
    </message>
    <message>
        <source>falls far below its start and never rises above it</source>
        <translation>遠低於起始溫度，從未升到其上</translation>
    </message>
    <message>
        <source>the server does not answer: none runs there</source>
        <translation>伺服器沒有回應：該處沒有執行中的伺服器</translation>
    </message>
    <message>
        <source>the server&apos;s name is not known in the network</source>
        <translation>網路中沒有這個伺服器名稱</translation>
    </message>
    <message>
        <source>the server is starting or stopping</source>
        <translation>伺服器正在啟動或停止</translation>
    </message>
    <message>
        <source>the server has no connection free</source>
        <translation>伺服器沒有可用的連線</translation>
    </message>
    <message>
        <source>the server takes too long to answer</source>
        <translation>伺服器回應太慢</translation>
    </message>
    <message>
        <source>the server has no room left on its disk</source>
        <translation>伺服器的磁碟沒有空間了</translation>
    </message>
    <message>
        <source>the server was left</source>
        <translation>已離開伺服器</translation>
    </message>
    <message>
        <source>the server refuses: it wants a password, and the password file has none for it</source>
        <translation>伺服器拒絕：它需要密碼，而密碼檔裡沒有它的密碼</translation>
    </message>
    <message>
        <source>the server refuses: the password of {0} is wrong</source>
        <translation>伺服器拒絕：{0} 的密碼不正確</translation>
    </message>
    <message>
        <source>the server refuses: it knows no user {0}</source>
        <translation>伺服器拒絕：沒有使用者 {0}</translation>
    </message>
    <message>
        <source>the server refuses: it has no database {0}</source>
        <translation>伺服器拒絕：沒有資料庫 {0}</translation>
    </message>
    <message>
        <source>the server refuses: {0} may not connect from this computer</source>
        <translation>伺服器拒絕：{0} 不可從這台電腦連線</translation>
    </message>
    <message>
        <source>the server refuses: it can only be read at present</source>
        <translation>伺服器拒絕：目前只能讀取</translation>
    </message>
    <message>
        <source>the server refuses: this user may not do this ({0})</source>
        <translation>伺服器拒絕：這個使用者不可這樣做（{0}）</translation>
    </message>
    <message>
        <source>another transaction was in the way</source>
        <translation>另一筆交易佔用中</translation>
    </message>
    <message>
        <source>another program holds the archive</source>
        <translation>存檔正被另一個程式佔用</translation>
    </message>
    <message>
        <source>the disk does not read or write</source>
        <translation>磁碟無法讀寫</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>無法開啟檔案</translation>
    </message>
    <message>
        <source>the server&apos;s archive has version {0}, this program needs version {1}: the owner of its tables brings it forward with the command ovenwright archive list</source>
        <translation>伺服器上的存檔是第 {0} 版，這個程式需要第 {1} 版：由資料表的擁有者以指令 ovenwright archive list 升級</translation>
    </message>
    <message>
        <source>the backup {0} cannot be named</source>
        <translation>無法為備份 {0} 命名</translation>
    </message>
    <message>
        <source>there are no bytes {0}</source>
        <translation>沒有位元組 {0}</translation>
    </message>
    <message>
        <source>{0} does not hold: verify the archive</source>
        <translation>{0} 不完整：請以 archive verify 檢查存檔</translation>
    </message>
    <message>
        <source>{0} names bytes that are missing: {1}</source>
        <translation>{0} 所指的位元組不存在：{1}</translation>
    </message>
    <message>
        <source>it has {0} records of the chain {1}, but {2} were moved to it: it has lost records</source>
        <translation>它有鏈 {1} 的 {0} 筆紀錄，但曾移入 {2} 筆：它遺失了紀錄</translation>
    </message>
    <message>
        <source>it has another record {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>它的紀錄 {0} 與 {1} 的不同：其中一個被更改過，或由副本繼續寫入</translation>
    </message>
    <message>
        <source>it has another note of the printed sheet of {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>它對 {0} 列印表單的註記與 {1} 的不同：其中一個被更改過，或由副本繼續寫入</translation>
    </message>
    <message>
        <source>it has lost notes of printed sheets that were moved to it, of the chain {0}</source>
        <translation>它遺失了曾移入的列印註記，屬於鏈 {0}</translation>
    </message>
    <message>
        <source>an id of the archive</source>
        <translation>存檔的識別碼</translation>
    </message>
    <message>
        <source>an id of the archive, or the digest of a log or a record from a sheet</source>
        <translation>存檔的識別碼，或表單上日誌或紀錄的摘要</translation>
    </message>
    <message>
        <source>found {0}, expected a closing ]</source>
        <translation>找到{0}，應為右括號 ]</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing ]</source>
        <translation>找到{0}，應為逗號或右括號 ]</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing }</source>
        <translation>找到{0}，應為逗號或右括號 }</translation>
    </message>
    <message>
        <source>found {0}, expected a closing quote</source>
        <translation>找到{0}，應為右引號</translation>
    </message>
    <message>
        <source>found {0}, expected \\ or / in place of \</source>
        <translation>找到{0}，\ 應寫成 \\ 或 /</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; behind the key</source>
        <translation>找到{0}，鍵後應為「=」</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; and a value</source>
        <translation>找到{0}，應為「=」和值</translation>
    </message>
    <message>
        <source>found {0}, expected a value</source>
        <translation>找到{0}，應為值</translation>
    </message>
    <message>
        <source>found {0}, expected the end of the line</source>
        <translation>找到{0}，應為行尾</translation>
    </message>
    <message>
        <source>found {0}, expected a number, true, false, or a text in quotes</source>
        <translation>找到{0}，應為數字、true、false 或引號內的文字</translation>
    </message>
    <message>
        <source>found {0}, expected a key, &quot;=&quot; and a value</source>
        <translation>找到{0}，應為鍵、「=」和值</translation>
    </message>
    <message>
        <source>the end of the line</source>
        <translation>行尾</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>檔案結尾</translation>
    </message>
    <message>
        <source>a control character</source>
        <translation>控制字元</translation>
    </message>
    <message>
        <source>a position on the board, 0 to {0} mm</source>
        <translation>板上的位置，0 到 {0} mm</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot;, the name of one and the number of another, expected {1}</source>
        <translation>通道「{0}」既是一個通道的名稱，又是另一個的編號，應{1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; placed by its name as well</source>
        <translation>也按名稱標出「{0}」</translation>
    </message>
    <message>
        <source>a number from {0} to {1}</source>
        <translation>{0} 到 {1} 的數字</translation>
    </message>
    <message>
        <source>a factor above 0</source>
        <translation>大於 0 的係數</translation>
    </message>
    <message>
        <source>a column from 1</source>
        <translation>從 1 起的欄號</translation>
    </message>
    <message>
        <source>one character, or &quot;fixed width&quot;</source>
        <translation>一個字元，或「fixed width」</translation>
    </message>
    <message>
        <source>found no log &quot;{0}&quot;, expected a file</source>
        <translation>找不到記錄「{0}」，應為檔案</translation>
    </message>
    <message>
        <source>{0}: cannot be read: {1}</source>
        <translation>{0}：無法讀取：{1}</translation>
    </message>
    <message>
        <source>does not show when the board entered the oven: {0}</source>
        <translation>未顯示電路板何時入爐：{0}</translation>
    </message>
    <message>
        <source>it begins at {0}, when the board is in the oven already. Log from before the entry, or give the entry with --entry, on the log&apos;s clock</source>
        <translation>它從 {0} 開始，此時電路板已在爐內。請在入爐前開始記錄，或按記錄的時鐘給出入爐時刻</translation>
    </message>
    <message>
        <source>no thermocouple rises by more than {0}. Check that it is the log of a pass through the oven, and that the thermocouples are attached</source>
        <translation>沒有熱電偶升溫超過 {0}。請確認這是過爐的記錄，且熱電偶已固定</translation>
    </message>
    <message>
        <source>no thermocouple bends upward where the first heated zone would begin. Check that the log, oven and recipe belong together, or give the entry with --entry</source>
        <translation>在第一加熱區應開始之處，沒有熱電偶曲線上揚。請確認記錄、爐子與配方相符，或給出入爐時刻</translation>
    </message>
    <message>
        <source>has no thermocouple on the board with a trace: all are faulty, or placed in the air by the board&apos;s file</source>
        <translation>板上沒有帶曲線的熱電偶：全部有故障，或板檔標為在空氣中</translation>
    </message>
    <message>
        <source>a temperature from {0} to {1}</source>
        <translation>{0} 到 {1} 的溫度</translation>
    </message>
    <message>
        <source>found {0} columns, expected column {1} that the layout names</source>
        <translation>有 {0} 欄，應有格式所指的第 {1} 欄</translation>
    </message>
</context>
</TS>
