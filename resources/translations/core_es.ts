<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Measures</name>
    <message>
        <source>The largest temperature in the trace.</source>
        <translation>La mayor temperatura de la curva.</translation>
    </message>
    <message>
        <source>Time from the last rise through the level to the peak; idle time before the oven does not count.</source>
        <translation>Tiempo desde la última subida por el nivel hasta el pico; la espera antes del horno no cuenta.</translation>
    </message>
    <message>
        <source>Total time with the temperature above the level.</source>
        <translation>Tiempo total con la temperatura por encima del nivel.</translation>
    </message>
    <message>
        <source>Number of stretches of more than 1 s above the level; stretches that are not parted by a fall to 2 °C under the level or lower count as one.</source>
        <translation>Número de tramos de más de 1 s por encima del nivel; los tramos no separados por una caída a 2 °C bajo el nivel o menos cuentan como uno.</translation>
    </message>
    <message>
        <source>Area between the curve and the level while the curve is above it (heating factor).</source>
        <translation>Área entre la curva y el nivel mientras la curva está por encima (factor de calentamiento).</translation>
    </message>
    <message>
        <source>Total time between the two temperatures up to the peak.</source>
        <translation>Tiempo total entre las dos temperaturas hasta el pico.</translation>
    </message>
    <message>
        <source>Total time at or above the reference (the trace&apos;s own peak, or a temperature) less the offset.</source>
        <translation>Tiempo total a la referencia (el propio pico o una temperatura) menos el margen indicado, o por encima.</translation>
    </message>
    <message>
        <source>Largest slope of a straight line fitted to the samples of a window of the stated length, up to the peak.</source>
        <translation>Mayor pendiente de una recta ajustada a las muestras de una ventana de la longitud indicada, hasta el pico.</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them up to the peak.</source>
        <translation>Diferencia de las dos temperaturas dividida por el tiempo total entre ellas hasta el pico.</translation>
    </message>
    <message>
        <source>Largest downward slope of a straight line fitted to the samples of a window of the stated length, after the peak, as a positive number.</source>
        <translation>Mayor pendiente descendente de una recta ajustada a las muestras de una ventana de la longitud indicada, después del pico, como número positivo.</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them after the peak.</source>
        <translation>Diferencia de las dos temperaturas dividida por el tiempo total entre ellas después del pico.</translation>
    </message>
    <message>
        <source>Temperature at a time of the log, at a position in the oven, or at the end of a zone.</source>
        <translation>Temperatura en un instante del registro, en una posición del horno o al final de una zona.</translation>
    </message>
    <message>
        <source>Temperature when the placement leaves the last zone; where no oven is given, of the last sample.</source>
        <translation>Temperatura cuando la posición sale de la última zona; sin horno, la de la última muestra.</translation>
    </message>
    <message>
        <source>Largest minus smallest peak over the board.</source>
        <translation>Pico mayor menos pico menor en la placa.</translation>
    </message>
    <message>
        <source>Largest minus smallest temperature over the board when the first trace rises through the level.</source>
        <translation>Temperatura mayor menos menor en la placa cuando la primera curva sube por el nivel.</translation>
    </message>
    <message>
        <source>Largest difference over the board at one moment, while the coldest trace is not past its own peak.</source>
        <translation>Mayor diferencia en la placa en un mismo instante, mientras la curva más fría no ha pasado su pico.</translation>
    </message>
    <message>
        <source>Time between the first and the last trace&apos;s first rise through the level.</source>
        <translation>Tiempo entre la primera subida por el nivel de la primera curva y la de la última.</translation>
    </message>
    <message>
        <source>Temperature where the wave starts.</source>
        <translation>Temperatura donde empieza la ola.</translation>
    </message>
    <message>
        <source>First peak in the wave minus the preheat temperature (thermal shock).</source>
        <translation>Primer pico en la ola menos la temperatura de precalentamiento (choque térmico).</translation>
    </message>
    <message>
        <source>Total time of all contacts with the solder.</source>
        <translation>Tiempo total de todos los contactos con la soldadura.</translation>
    </message>
    <message>
        <source>Time of the longest single contact with the solder.</source>
        <translation>Tiempo del contacto único más largo con la soldadura.</translation>
    </message>
</context>
<context>
    <name>requirement</name>
    <message>
        <source>peak</source>
        <translation>pico</translation>
    </message>
    <message>
        <source>steepest rise</source>
        <translation>subida más rápida</translation>
    </message>
    <message>
        <source>steepest fall</source>
        <translation>enfriamiento más rápido</translation>
    </message>
    <message>
        <source>spread of peaks</source>
        <translation>diferencia entre picos</translation>
    </message>
    <message>
        <source>soak time</source>
        <translation>tiempo de meseta</translation>
    </message>
    <message>
        <source>time above liquidus</source>
        <translation>tiempo sobre liquidus</translation>
    </message>
    <message>
        <source>ramp to soak</source>
        <translation>rampa hasta la meseta</translation>
    </message>
    <message>
        <source>excursions above liquidus</source>
        <translation>veces sobre liquidus</translation>
    </message>
    <message>
        <source>cooling from liquidus</source>
        <translation>enfriamiento desde liquidus</translation>
    </message>
    <message>
        <source>top side joints stay solid</source>
        <translation>uniones superiores sin fundir</translation>
    </message>
    <message>
        <source>step into the wave</source>
        <translation>salto en la ola</translation>
    </message>
    <message>
        <source>preheat temperature</source>
        <translation>temperatura de precalentamiento</translation>
    </message>
    <message>
        <source>preheat rise</source>
        <translation>subida del precalentamiento</translation>
    </message>
    <message>
        <source>main wave contact</source>
        <translation>contacto con la ola principal</translation>
    </message>
    <message>
        <source>longest contact</source>
        <translation>contacto más largo</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>tiempo de contacto</translation>
    </message>
    <message>
        <source>25 °C to peak</source>
        <translation>de 25 °C al pico</translation>
    </message>
    <message>
        <source>body time near Tc</source>
        <translation>cuerpo: tiempo cerca de Tc</translation>
    </message>
    <message>
        <source>body time above liquidus</source>
        <translation>cuerpo: tiempo sobre liquidus</translation>
    </message>
    <message>
        <source>body soak time</source>
        <translation>cuerpo: tiempo de meseta</translation>
    </message>
    <message>
        <source>body ramp-up</source>
        <translation>cuerpo: subida</translation>
    </message>
    <message>
        <source>body ramp-down</source>
        <translation>cuerpo: bajada</translation>
    </message>
    <message>
        <source>body peak</source>
        <translation>cuerpo: pico</translation>
    </message>
    <message>
        <source>body 25 °C to peak</source>
        <translation>cuerpo: de 25 °C al pico</translation>
    </message>
    <message>
        <source>time near peak</source>
        <translation>tiempo cerca del pico</translation>
    </message>
    <message>
        <source>time above 217</source>
        <translation>tiempo sobre 217</translation>
    </message>
    <message>
        <source>spread at 217</source>
        <translation>diferencia a 217</translation>
    </message>
    <message>
        <source>peak of bodies</source>
        <translation>pico de los cuerpos</translation>
    </message>
    <message>
        <source>largest spread in soak</source>
        <translation>mayor diferencia en meseta</translation>
    </message>
    <message>
        <source>lag at 217</source>
        <translation>retraso a 217</translation>
    </message>
</context>
<context>
    <name>risk</name>
    <message>
        <source>The solder may melt only in part: balls and paste that do not run together, poor wetting, a joint that looks dull or grainy and breaks early.</source>
        <translation>La soldadura puede fundirse solo en parte: bolas y pasta que no se unen, mala humectación, una unión mate o granulada que rompe pronto.</translation>
    </message>
    <message>
        <source>Laminate, connectors and parts see more heat than they are made for: warping, discolouring, delamination, and a thicker brittle layer in the joint.</source>
        <translation>El laminado, los conectores y los componentes reciben más calor del admisible: alabeo, decoloración, delaminación y una capa frágil más gruesa en la unión.</translation>
    </message>
    <message>
        <source>The board heats faster than its heavy parts can follow: large differences over the board at the peak.</source>
        <translation>La placa se calienta más deprisa de lo que siguen sus piezas pesadas: grandes diferencias en el pico.</translation>
    </message>
    <message>
        <source>Flux is spent and surfaces oxidise before the solder melts, and parts stay hot longer than they were classified for.</source>
        <translation>El fundente se agota y las superficies se oxidan antes de fundir, y los componentes siguen calientes más tiempo del clasificado.</translation>
    </message>
    <message>
        <source>Too little time for the solder to wet and to run together: weak or open joints, mostly under heavy parts; wetting and voids change with this time.</source>
        <translation>Muy poco tiempo para que la soldadura moje y se una: uniones débiles o abiertas, sobre todo bajo piezas pesadas; la humectación y los huecos cambian con este tiempo.</translation>
    </message>
    <message>
        <source>The intermetallic layer grows fast while the solder is liquid, and a thick one is brittle; parts and laminate are stressed by heat.</source>
        <translation>La capa intermetálica crece deprisa mientras la soldadura es líquida, y una gruesa es frágil; los componentes y el laminado sufren por el calor.</translation>
    </message>
    <message>
        <source>The solder does not melt as often as the process means it to.</source>
        <translation>La soldadura no se funde tantas veces como prevé el proceso.</translation>
    </message>
    <message>
        <source>The solder melts, freezes and melts again in one pass: disturbed joints, and parts that move.</source>
        <translation>La soldadura se funde, solidifica y vuelve a fundirse en una pasada: uniones perturbadas y piezas que se mueven.</translation>
    </message>
    <message>
        <source>Too little heat above the liquidus: incomplete wetting and early failure under vibration.</source>
        <translation>Muy poco calor por encima del liquidus: humectación incompleta y fallo temprano por vibración.</translation>
    </message>
    <message>
        <source>Too much heat above the liquidus: a thick intermetallic layer and early failure under vibration.</source>
        <translation>Demasiado calor por encima del liquidus: capa intermetálica gruesa y fallo temprano por vibración.</translation>
    </message>
    <message>
        <source>Solvent is still in the paste when it melts and heavy parts lag behind: spatter, voids, large differences over the board.</source>
        <translation>Aún hay disolvente en la pasta al fundirse y las piezas pesadas van retrasadas: salpicaduras, huecos, grandes diferencias en la placa.</translation>
    </message>
    <message>
        <source>Flux is spent and powder and pads oxidise before the solder melts: poor wetting, balls that do not run together.</source>
        <translation>El fundente se agota y el polvo y los pads se oxidan antes de fundir: mala humectación, bolas que no se unen.</translation>
    </message>
    <message>
        <source>The coldest joints have little time at full temperature: incomplete wetting.</source>
        <translation>Las uniones más frías pasan poco tiempo a plena temperatura: humectación incompleta.</translation>
    </message>
    <message>
        <source>Parts stay near their highest temperature longer than they were classified for.</source>
        <translation>Los componentes siguen cerca de su temperatura máxima más tiempo del clasificado.</translation>
    </message>
    <message>
        <source>The board heats slowly: the time is lacking later, or the belt must be slower.</source>
        <translation>La placa se calienta despacio: el tiempo falta después, o el transportador debe ir más lento.</translation>
    </message>
    <message>
        <source>Paste slumps and spatters, solder balls form, and ceramic parts can crack; parts are classified up to 3 °C/s.</source>
        <translation>La pasta se descuelga y salpica, se forman bolas de soldadura y los componentes cerámicos pueden agrietarse; se clasifican hasta 3 °C/s.</translation>
    </message>
    <message>
        <source>Slow heating: below the melting point flux is spent and surfaces oxidise, above it the solder stays liquid longer.</source>
        <translation>Calentamiento lento: por debajo del punto de fusión se agota el fundente y se oxidan las superficies; por encima, la soldadura queda líquida más tiempo.</translation>
    </message>
    <message>
        <source>Joints that were made before melt again: parts shift or drop off, and the joints are disturbed.</source>
        <translation>Las uniones ya hechas vuelven a fundirse: los componentes se desplazan o se desprenden y las uniones quedan alteradas.</translation>
    </message>
    <message>
        <source>The joint took up too little heat: solder does not wet it or does not rise in the hole.</source>
        <translation>La unión recibió poco calor: la soldadura no la moja o no sube por el agujero.</translation>
    </message>
    <message>
        <source>Ceramic parts can crack, the board bends, and the solvent of the flux boils and spatters.</source>
        <translation>Los componentes cerámicos pueden agrietarse, la placa se deforma y el disolvente del fundente hierve y salpica.</translation>
    </message>
    <message>
        <source>Parts follow unevenly and are bent or cracked by heat; parts are classified up to 3 °C/s.</source>
        <translation>Los componentes siguen de forma desigual y el calor los dobla o agrieta; se clasifican hasta 3 °C/s.</translation>
    </message>
    <message>
        <source>The solder freezes slowly: coarse grain, a thicker intermetallic layer, parts that can still move.</source>
        <translation>La soldadura solidifica despacio: grano grueso, capa intermetálica más gruesa, piezas que aún pueden moverse.</translation>
    </message>
    <message>
        <source>Thermal shock: cracks in ceramic parts and joints, warped boards; parts are classified up to 6 °C/s.</source>
        <translation>Choque térmico: grietas en componentes cerámicos y uniones, placas alabeadas; se clasifican hasta 6 °C/s.</translation>
    </message>
    <message>
        <source>The board is colder here than the process means it to be; what follows starts late.</source>
        <translation>La placa está aquí más fría de lo previsto; lo que sigue empieza tarde.</translation>
    </message>
    <message>
        <source>The board is hotter here than the process means it to be; what follows starts early.</source>
        <translation>La placa está aquí más caliente de lo previsto; lo que sigue empieza pronto.</translation>
    </message>
    <message>
        <source>The board cools further inside the oven than it needs to.</source>
        <translation>La placa se enfría en el horno más de lo necesario.</translation>
    </message>
    <message>
        <source>The board leaves hot: solder can still be soft when it is handled, and people can be burnt.</source>
        <translation>La placa sale caliente: la soldadura puede seguir blanda al manipularla y las personas pueden quemarse.</translation>
    </message>
    <message>
        <source>The peaks lie closer together than the process means them to.</source>
        <translation>Los picos están más juntos de lo previsto.</translation>
    </message>
    <message>
        <source>One recipe can hardly serve both ends: the coldest joint is too cold or the hottest part too hot. 10 °C is a usual target.</source>
        <translation>Una receta difícilmente sirve a ambos extremos: la unión más fría queda fría o el componente más caliente, demasiado caliente. 10 °C es un objetivo habitual.</translation>
    </message>
    <message>
        <source>The board is more even here than the process means it to be.</source>
        <translation>La placa es aquí más uniforme de lo previsto.</translation>
    </message>
    <message>
        <source>The solder melts at one end of a part or board while the other is still solid: chip parts stand up, large parts tilt.</source>
        <translation>La soldadura se funde en un extremo mientras el otro sigue sólido: los chips se levantan, las piezas grandes se inclinan.</translation>
    </message>
    <message>
        <source>The board is more even than the process means it to be.</source>
        <translation>La placa es más uniforme de lo previsto.</translation>
    </message>
    <message>
        <source>Uneven heat bends the board and leaves heavy parts behind at the peak.</source>
        <translation>El calor desigual dobla la placa y deja atrás las piezas pesadas en el pico.</translation>
    </message>
    <message>
        <source>The traces melt closer together than the process means them to.</source>
        <translation>Las curvas funden más juntas de lo previsto.</translation>
    </message>
    <message>
        <source>The last joints melt long after the first: the first are too long liquid when the last have had enough.</source>
        <translation>Las últimas uniones funden mucho después de las primeras: estas quedan líquidas demasiado tiempo.</translation>
    </message>
    <message>
        <source>Flux is not active and the step into the solder is large: poor hole fill, bridges, cracked ceramics.</source>
        <translation>El fundente no está activo y el salto a la soldadura es grande: mal llenado de agujeros, puentes, cerámicas agrietadas.</translation>
    </message>
    <message>
        <source>Flux is spent before the wave, and joints on the top side come near their melting point.</source>
        <translation>El fundente se agota antes de la ola y las uniones de la cara superior se acercan a su fusión.</translation>
    </message>
    <message>
        <source>The step into the solder is smaller than the process means it to be: flux may be spent by a hot preheat.</source>
        <translation>El salto a la soldadura es menor de lo previsto: un precalentamiento caliente puede agotar el fundente.</translation>
    </message>
    <message>
        <source>Thermal shock: ceramic capacitors crack when they enter the solder too cold.</source>
        <translation>Choque térmico: los condensadores cerámicos se agrietan si entran demasiado fríos en la soldadura.</translation>
    </message>
    <message>
        <source>Too little contact: holes are not filled, pads not wetted.</source>
        <translation>Contacto insuficiente: los agujeros no se llenan, los pads no se mojan.</translation>
    </message>
    <message>
        <source>Too much contact: copper and pads dissolve, solder bridges, parts take damage.</source>
        <translation>Contacto excesivo: el cobre y los pads se disuelven, puentes de soldadura, componentes dañados.</translation>
    </message>
    <message>
        <source>Too much contact in one wave: copper and pads dissolve, parts take damage.</source>
        <translation>Contacto excesivo en una ola: el cobre y los pads se disuelven, componentes dañados.</translation>
    </message>
    <message>
        <source>The package is hotter than it was classified for: moisture inside can lift its layers apart or crack it.</source>
        <translation>El encapsulado está más caliente de lo clasificado: la humedad interior puede separar sus capas o agrietarlo.</translation>
    </message>
</context>
<context>
    <name>source</name>
    <message>
        <source>common practice, no source</source>
        <translation>práctica habitual, sin fuente</translation>
    </message>
</context>
<context>
    <name>LotRules</name>
    <message>
        <source>1 point beyond 3 sigma</source>
        <translation>1 punto más allá de 3 sigma</translation>
    </message>
    <message>
        <source>2 of 3 points in a row beyond 2 sigma on one side</source>
        <translation>2 de 3 puntos seguidos más allá de 2 sigma en un mismo lado</translation>
    </message>
    <message>
        <source>4 of 5 points in a row beyond 1 sigma on one side</source>
        <translation>4 de 5 puntos seguidos más allá de 1 sigma en un mismo lado</translation>
    </message>
    <message>
        <source>8 points in a row on one side of the centre</source>
        <translation>8 puntos seguidos en un mismo lado de la línea central</translation>
    </message>
    <message>
        <source>9 points in a row on one side of the centre</source>
        <translation>9 puntos seguidos en un mismo lado de la línea central</translation>
    </message>
    <message>
        <source>6 points in a row rising or falling</source>
        <translation>6 puntos seguidos en aumento o en descenso</translation>
    </message>
    <message>
        <source>14 points in a row alternating up and down</source>
        <translation>14 puntos seguidos que suben y bajan alternadamente</translation>
    </message>
    <message>
        <source>15 points in a row within 1 sigma of the centre</source>
        <translation>15 puntos seguidos a menos de 1 sigma del centro</translation>
    </message>
    <message>
        <source>8 points in a row beyond 1 sigma, on both sides</source>
        <translation>8 puntos seguidos más allá de 1 sigma, a ambos lados</translation>
    </message>
</context>
<context>
    <name>phrase</name>
    <message>
        <source>No unit in the file: read as °C. As °F the top would be {0} °C.</source>
        <translation>El archivo no indica la unidad: leído como °C. Como °F el máximo sería {0} °C.</translation>
    </message>
    <message>
        <source>No unit in the file: read as thermocouple voltage in mV. As °C the top would be {0} °C.</source>
        <translation>El archivo no indica la unidad: leído como tensión de termopar en mV. Como °C el máximo sería {0} °C.</translation>
    </message>
    <message>
        <source>No unit in the file: read as °F, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>El archivo no indica la unidad: leído como °F, con lo que el máximo es {0} °C. Como °C sería {1} °C.</translation>
    </message>
    <message>
        <source>No unit in the file: read as K, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>El archivo no indica la unidad: leído como K, con lo que el máximo es {0} °C. Como °C sería {1} °C.</translation>
    </message>
    <message>
        <source>Whole numbers up to {0} are no temperatures of a board: read as tenths of a degree, though no scale is stated.</source>
        <translation>Números enteros de hasta {0} no son temperaturas de una placa: leídos como décimas de grado, aunque no se indica ninguna escala.</translation>
    </message>
    <message>
        <source>A factor of {0} is stated, but the numbers are temperatures as they stand: taken as the resolution.</source>
        <translation>Se indica un factor {0}, pero los números ya son temperaturas tal como están: se toma como la resolución.</translation>
    </message>
    <message>
        <source>No type of thermocouple is stated: taken as K, the most common one.</source>
        <translation>No se indica el tipo de termopar: se toma K, el más común.</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts near 0 mV: taken as 25 °C.</source>
        <translation>No se indica la unión fría y el registro empieza cerca de 0 mV: se toma 25 °C.</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts at the voltage of a room&apos;s temperature: taken as 0 °C.</source>
        <translation>No se indica la unión fría y el registro empieza en la tensión de una temperatura ambiente: se toma 0 °C.</translation>
    </message>
    <message>
        <source>The unit of the interval is not stated: read as {0} s.</source>
        <translation>No se indica la unidad del intervalo: leído como {0} s.</translation>
    </message>
    <message>
        <source>No unit of time is stated: the numbers are read as fractions of a day, which makes the run last {0}.</source>
        <translation>No se indica la unidad de tiempo: los números se leen como fracciones de un día, con lo que la pasada dura {0}.</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as milliseconds, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>No se indica la unidad de tiempo: leído como milisegundos, con lo que la pasada dura {0}; como segundos duraría {1}.</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as minutes, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>No se indica la unidad de tiempo: leído como minutos, con lo que la pasada dura {0}; como segundos duraría {1}.</translation>
    </message>
    <message>
        <source>Nothing says what the first column counts: read as seconds.</source>
        <translation>Nada indica qué cuenta la primera columna: leída como segundos.</translation>
    </message>
    <message>
        <source>Times of two parts are read as hours and minutes, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>Las horas de dos partes se leen como horas y minutos, con lo que la pasada dura {0}; de la otra forma duraría {1}.</translation>
    </message>
    <message>
        <source>Times of two parts are read as minutes and seconds, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>Las horas de dos partes se leen como minutos y segundos, con lo que la pasada dura {0}; de la otra forma duraría {1}.</translation>
    </message>
    <message>
        <source>The date may be read in more than one order, and nothing in the file settles it: read as {0}. Durations do not depend on it.</source>
        <translation>La fecha admite más de un orden y nada en el archivo lo decide: leída como {0}. Las duraciones no dependen de ello.</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: the rows are spread evenly, {1} s apart.</source>
        <translation>Los tiempos están redondeados a {0} s y varias filas llevan el mismo: las filas se reparten por igual, cada {1} s.</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: they are not evenly apart, so those of one time are spread over it.</source>
        <translation>Los tiempos están redondeados a {0} s y varias filas llevan el mismo: no están a intervalos iguales, así que las de un mismo tiempo se reparten en él.</translation>
    </message>
    <message>
        <source>Numbers such as {0} may have a decimal sign or thousands in them, and nothing in the file settles it: read with &apos;{1}&apos; as the decimal sign.</source>
        <translation>Números como {0} pueden llevar un signo decimal o millares y nada en el archivo lo decide: leídos con «{1}» como signo decimal.</translation>
    </message>
    <message>
        <source>More than one encoding is plausible: read as {0}. Numbers do not depend on it.</source>
        <translation>Es posible más de una codificación: leído como {0}. Los números no dependen de ello.</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its voltage, type {1}, is turned about a reference junction at {2} °C. The result is off by twice what the junction differs from that.</source>
        <translation>Los hilos de {0} están intercambiados: su tensión, tipo {1}, se invierte respecto a una unión de referencia a {2} °C. El resultado se desvía el doble de lo que la unión difiere de eso.</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its readings are mirrored at {1} °C. The result is off by twice what the reference junction differs from that.</source>
        <translation>Los hilos de {0} están intercambiados: sus lecturas se reflejan en {1} °C. El resultado se desvía el doble de lo que la unión de referencia difiere de eso.</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as seconds, which makes the run last {0}.</source>
        <translation>No se indica la unidad de tiempo: leído como segundos, con lo que la pasada dura {0}.</translation>
    </message>
    <message>
        <source>The date goes on from day to day only if read in the order {0}.</source>
        <translation>La fecha avanza de un día al siguiente solo leída en el orden {0}.</translation>
    </message>
    <message>
        <source>{0} states no unit; read in that of the other channels.</source>
        <translation>{0} no indica unidad; leído en la de los demás canales.</translation>
    </message>
    <message>
        <source>{0} channels state no unit; read in that of the other channels.</source>
        <translation>{0} canales no indican unidad; leídos en la de los demás canales.</translation>
    </message>
    <message>
        <source>No unit is stated and no channel has a reading.</source>
        <translation>No se indica la unidad y ningún canal tiene lecturas.</translation>
    </message>
    <message>
        <source>Units differ between channels: {0}.</source>
        <translation>Las unidades difieren entre canales: {0}.</translation>
    </message>
    <message>
        <source>Rows are {0} s apart by &quot;{1}&quot;.</source>
        <translation>Las filas están a {0} s según «{1}».</translation>
    </message>
    <message>
        <source>The clock passes midnight: times go on.</source>
        <translation>El reloj pasa de medianoche: los tiempos continúan.</translation>
    </message>
    <message>
        <source>The clock passes twelve: times go on.</source>
        <translation>El reloj pasa de las doce: los tiempos continúan.</translation>
    </message>
    <message>
        <source>{0} is read with the sign of its voltage turned: its wires are exchanged.</source>
        <translation>{0} se lee con el signo de su tensión invertido: sus hilos están intercambiados.</translation>
    </message>
    <message>
        <source>Read from sheet {0}; also in the file: {1}.</source>
        <translation>Leído de la hoja {0}; también en el archivo: {1}.</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log; also in the file: {0}.</source>
        <translation>Leído de la tabla que más se parece a un registro; también en el archivo: {0}.</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log of {0}.</source>
        <translation>Leído de la tabla que más se parece a un registro, de {0}.</translation>
    </message>
    <message>
        <source>the archive holds {0} and also {1}, not read</source>
        <translation>el archivo comprimido contiene {0} y también {1}, sin leer</translation>
    </message>
    <message>
        <source>of more than {0} files in the archive only the first {1} were looked at</source>
        <translation>de más de {0} archivos comprimidos solo se miraron los primeros {1}</translation>
    </message>
    <message>
        <source>{0} bytes behind the gzip data were not read</source>
        <translation>no se leyeron {0} bytes tras los datos gzip</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;: {1} formulas have no stored result and count as empty; a spreadsheet program stores them when it saves the workbook</source>
        <translation>hoja «{0}»: {1} fórmulas no tienen resultado guardado y cuentan como vacías; un programa de hojas de cálculo los guarda al guardar el libro</translation>
    </message>
    <message>
        <source>The last row is cut off and was left out.</source>
        <translation>La última fila está cortada y se dejó fuera.</translation>
    </message>
    <message>
        <source>{0} rows end before the last column: what is missing there counts as no reading.</source>
        <translation>{0} filas terminan antes de la última columna: lo que falta cuenta como sin lectura.</translation>
    </message>
    <message>
        <source>1 header or text line in or behind the table was left out.</source>
        <translation>Se dejó fuera 1 línea de cabecera o de texto en la tabla o tras ella.</translation>
    </message>
    <message>
        <source>{0} header or text lines in or behind the table were left out.</source>
        <translation>Se dejaron fuera {0} líneas de cabecera o de texto en la tabla o tras ella.</translation>
    </message>
    <message>
        <source>1 labelled line in or behind the table was left out.</source>
        <translation>Se dejó fuera 1 línea rotulada en la tabla o tras ella.</translation>
    </message>
    <message>
        <source>{0} labelled lines in or behind the table were left out.</source>
        <translation>Se dejaron fuera {0} líneas rotuladas en la tabla o tras ella.</translation>
    </message>
    <message>
        <source>1 comment or event line in or behind the table was left out.</source>
        <translation>Se dejó fuera 1 línea de comentario o de suceso en la tabla o tras ella.</translation>
    </message>
    <message>
        <source>{0} comment or event lines in or behind the table were left out.</source>
        <translation>Se dejaron fuera {0} líneas de comentario o de suceso en la tabla o tras ella.</translation>
    </message>
    <message>
        <source>{0} rows of numbers behind the table go back in time and were left out.</source>
        <translation>{0} filas de números tras la tabla retroceden en el tiempo y se dejaron fuera.</translation>
    </message>
    <message>
        <source>Decimals are written with a point in {0} and with a comma in {1} columns: each is read by its own.</source>
        <translation>Los decimales llevan punto en {0} columnas y coma en {1}: cada una se lee con el suyo.</translation>
    </message>
    <message>
        <source>Decimal commas stand without quotes between the commas of the delimiter; the counts of fields allow one reading.</source>
        <translation>Las comas decimales están sin comillas entre las comas separadoras; el número de campos admite una sola lectura.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone and stands at its temperature throughout.</source>
        <translation>{0} se conserva pero no se juzga: se llama como una zona y se mantiene a su temperatura.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its unit is &quot;{1}&quot;, none of temperature.</source>
        <translation>{0} se conserva pero no se juzga: su unidad es «{1}», que no es de temperatura.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its values are no temperatures.</source>
        <translation>{0} se conserva pero no se juzga: sus valores no son temperaturas.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: no unit of temperature stands there and it never changes.</source>
        <translation>{0} se conserva pero no se juzga: no lleva unidad de temperatura y nunca cambia.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it stays far below the others.</source>
        <translation>{0} se conserva pero no se juzga: queda muy por debajo de los demás.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is a statistic of {1}.</source>
        <translation>{0} se conserva pero no se juzga: es un valor estadístico de {1}.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it holds a few small whole numbers, as flags do.</source>
        <translation>{0} se conserva pero no se juzga: contiene unos pocos números enteros pequeños, como los indicadores.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone, though it moves as the board does.</source>
        <translation>{0} se conserva pero no se juzga: se llama como una zona, aunque se mueve como la placa.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a statistic, and is the highest, lowest or mean of the channels.</source>
        <translation>{0} se conserva pero no se juzga: se llama como un valor estadístico y es el más alto, el más bajo o la media de los canales.</translation>
    </message>
    <message>
        <source>zones are by the oven model, which follows this log within {0} °C (root mean square)</source>
        <translation>zonas según el modelo del horno, que sigue este registro con {0} °C (media cuadrática)</translation>
    </message>
    <message>
        <source>zones are a first estimate from setpoints and curves: the oven model does not fit ({0})</source>
        <translation>zonas como primera estimación a partir de consignas y curvas: el modelo del horno no se ajusta ({0})</translation>
    </message>
    <message>
        <source>stands at {0} °C</source>
        <translation>se queda en {0} °C</translation>
    </message>
    <message>
        <source>suspected: follows the air more than the other traces do</source>
        <translation>sospecha: sigue el aire más que las demás curvas</translation>
    </message>
    <message>
        <source>suspected: swapped with {0}</source>
        <translation>sospecha: intercambiado con {0}</translation>
    </message>
    <message>
        <source>all traces step by {0} °C</source>
        <translation>todas las curvas saltan {0} °C</translation>
    </message>
    <message>
        <source>{0} samples, fewer than the 3 of a trace</source>
        <translation>{0} muestras, menos de las 3 de una curva</translation>
    </message>
    <message>
        <source>no row with a usable time</source>
        <translation>ninguna fila con un tiempo utilizable</translation>
    </message>
    <message>
        <source>1 row without a time later than the row before</source>
        <translation>1 fila sin un tiempo posterior al de la fila anterior</translation>
    </message>
    <message>
        <source>{0} rows without a time later than the row before</source>
        <translation>{0} filas sin un tiempo posterior al de la fila anterior</translation>
    </message>
    <message>
        <source>falls as the others rise</source>
        <translation>baja cuando los demás suben</translation>
    </message>
    <message>
        <source>a log</source>
        <translation>un registro</translation>
    </message>
    <message>
        <source>a log of many samples</source>
        <translation>un registro de muchas muestras</translation>
    </message>
    <message>
        <source>a table of times and temperatures</source>
        <translation>una tabla de tiempos y temperaturas</translation>
    </message>
    <message>
        <source>a column of temperatures</source>
        <translation>una columna de temperaturas</translation>
    </message>
    <message>
        <source>a column of times, or an interval</source>
        <translation>una columna de tiempos o un intervalo</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>un tiempo</translation>
    </message>
    <message>
        <source>a time with a decimal point</source>
        <translation>un tiempo con punto decimal</translation>
    </message>
    <message>
        <source>a time with a decimal comma</source>
        <translation>un tiempo con coma decimal</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>una temperatura</translation>
    </message>
    <message>
        <source>times</source>
        <translation>tiempos</translation>
    </message>
    <message>
        <source>times that go on</source>
        <translation>tiempos que avancen</translation>
    </message>
    <message>
        <source>time, channel and value</source>
        <translation>tiempo, canal y valor</translation>
    </message>
    <message>
        <source>seconds above 0</source>
        <translation>segundos por encima de 0</translation>
    </message>
    <message>
        <source>°C, °F, K or mV</source>
        <translation>°C, °F, K o mV</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>un archivo</translation>
    </message>
    <message>
        <source>a whole gzip file</source>
        <translation>un archivo gzip completo</translation>
    </message>
    <message>
        <source>a whole zip archive</source>
        <translation>un archivo zip completo</translation>
    </message>
    <message>
        <source>a whole .xlsx workbook</source>
        <translation>un libro .xlsx completo</translation>
    </message>
    <message>
        <source>a zip archive with a log in it</source>
        <translation>un archivo zip con un registro dentro</translation>
    </message>
    <message>
        <source>a text log, a workbook or an HTML table</source>
        <translation>un registro de texto, un libro o una tabla HTML</translation>
    </message>
    <message>
        <source>a workbook (.xlsx, .ods), an HTML table or a text log</source>
        <translation>un libro (.xlsx, .ods), una tabla HTML o un registro de texto</translation>
    </message>
    <message>
        <source>one with a table of readings</source>
        <translation>uno con una tabla de lecturas</translation>
    </message>
    <message>
        <source>one that can be read without</source>
        <translation>uno que se pueda leer sin ella</translation>
    </message>
    <message>
        <source>numbers with a decimal point, or another delimiter</source>
        <translation>números con punto decimal u otro separador</translation>
    </message>
    <message>
        <source>1 cell</source>
        <translation>1 celda</translation>
    </message>
    <message>
        <source>{0} cells</source>
        <translation>{0} celdas</translation>
    </message>
    <message>
        <source>binary data (byte {0} at offset {1})</source>
        <translation>datos binarios (byte {0} en la posición {1})</translation>
    </message>
    <message>
        <source>bytes that {0} does not allow</source>
        <translation>bytes que {0} no admite</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls) or one with a password</source>
        <translation>un libro del antiguo formato binario (.xls) o uno con contraseña</translation>
    </message>
    <message>
        <source>a PDF document</source>
        <translation>un documento PDF</translation>
    </message>
    <message>
        <source>about {0} rows of {1} numbers</source>
        <translation>unas {0} filas de {1} números</translation>
    </message>
    <message>
        <source>at most {0} channels</source>
        <translation>como máximo {0} canales</translation>
    </message>
    <message>
        <source>at most {0} numbers in a log</source>
        <translation>como máximo {0} números en un registro</translation>
    </message>
    <message>
        <source>text in {0}</source>
        <translation>texto en {0}</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>un archivo vacío</translation>
    </message>
    <message>
        <source>a header and no rows behind it</source>
        <translation>una cabecera sin filas detrás</translation>
    </message>
    <message>
        <source>one sample</source>
        <translation>una muestra</translation>
    </message>
    <message>
        <source>no sample</source>
        <translation>ninguna muestra</translation>
    </message>
    <message>
        <source>the same time in every row</source>
        <translation>el mismo tiempo en todas las filas</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>una carpeta</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>dañado</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation>cortado</translation>
    </message>
    <message>
        <source>an HTML document without a table</source>
        <translation>un documento HTML sin tabla</translation>
    </message>
    <message>
        <source>a workbook with a password</source>
        <translation>un libro con contraseña</translation>
    </message>
    <message>
        <source>{0} channels</source>
        <translation>{0} canales</translation>
    </message>
    <message>
        <source>found nothing but blanks, expected a log</source>
        <translation>solo se encontraron espacios en blanco, se esperaba un registro</translation>
    </message>
    <message>
        <source>found no table, expected one of times and temperatures</source>
        <translation>no se encontró ninguna tabla, se esperaba una de tiempos y temperaturas</translation>
    </message>
    <message>
        <source>found no column of temperatures, expected one at least</source>
        <translation>no se encontró ninguna columna de temperaturas, se esperaba al menos una</translation>
    </message>
    <message>
        <source>found no column of times and no stated interval, expected times, or an interval in seconds between rows</source>
        <translation>no se encontró ninguna columna de tiempos ni un intervalo indicado; se esperaban tiempos o un intervalo en segundos entre filas</translation>
    </message>
    <message>
        <source>found no times in column {0}</source>
        <translation>no se encontraron tiempos en la columna {0}</translation>
    </message>
    <message>
        <source>the log has no temperature channel</source>
        <translation>el registro no tiene ningún canal de temperatura</translation>
    </message>
    <message>
        <source>no row has a usable time</source>
        <translation>ninguna fila tiene un tiempo utilizable</translation>
    </message>
    <message>
        <source>cannot be read: {0}</source>
        <translation>no se puede leer: {0}</translation>
    </message>
    <message>
        <source>there is not enough memory for it</source>
        <translation>no hay memoria suficiente para ello</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>no existe el archivo o la carpeta</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>permiso denegado</translation>
    </message>
    <message>
        <source>The counter of times starts anew at {0}: the rows go on.</source>
        <translation>El contador de tiempos vuelve a empezar en {0}: las filas continúan.</translation>
    </message>
    <message>
        <source>At line {0} another table begins, of other channels: {1}, {2} rows. It was not read.</source>
        <translation>En la línea {0} empieza otra tabla, de otros canales: {1}, {2} filas. No se ha leído.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it counts runs, channels or the like.</source>
        <translation>{0} se conserva pero no se juzga: cuenta pasadas, canales o algo parecido.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it says how sure the column before it is.</source>
        <translation>{0} se conserva pero no se juzga: indica lo segura que es la columna anterior.</translation>
    </message>
    <message>
        <source>The table at line {0} has the same times: its channels are read beside those before.</source>
        <translation>La tabla de la línea {0} tiene los mismos tiempos: sus canales se leen junto a los anteriores.</translation>
    </message>
    <message>
        <source>What stands behind ± is no part of the readings and was left out.</source>
        <translation>Lo que sigue a ± no forma parte de las lecturas y se ha dejado fuera.</translation>
    </message>
    <message>
        <source>times that start anew in {0} places</source>
        <translation>tiempos que vuelven a empezar en {0} lugares</translation>
    </message>
    <message>
        <source>The clock jumps forward an hour at {0}:00 at night, as where summer time begins: the rows go on without the jump.</source>
        <translation>El reloj salta una hora hacia delante a las {0}:00 de la noche, como al empezar el horario de verano: las filas continúan sin el salto.</translation>
    </message>
    <message>
        <source>The clock jumps back an hour to {0}:00 at night, as where summer time ends: the rows go on without the jump.</source>
        <translation>El reloj salta una hora hacia atrás a las {0}:00 de la noche, como al terminar el horario de verano: las filas continúan sin el salto.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it ends after a few rows, as a table beside the log does.</source>
        <translation>{0} se conserva pero no se juzga: termina tras unas pocas filas, como una tabla junto al registro.</translation>
    </message>
    <message>
        <source>The header names {0} columns and the rows have {1}: the names are taken from the left.</source>
        <translation>La cabecera nombra {0} columnas y las filas tienen {1}: los nombres se toman desde la izquierda.</translation>
    </message>
    <message>
        <source>The rows stand with the newest first: read from the last to the first.</source>
        <translation>Las filas están con la más reciente primero: leídas de la última a la primera.</translation>
    </message>
    <message>
        <source>The rows do not stand in the order of their times: put in order channel by channel.</source>
        <translation>Las filas no siguen el orden de sus tiempos: ordenadas canal por canal.</translation>
    </message>
    <message>
        <source>{0} has a reading in one row of {1}: it keeps the times of these.</source>
        <translation>{0} tiene lectura en una de cada {1} filas: conserva los tiempos de estas.</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; stands in {1} cells for readings: taken as no reading.</source>
        <translation>«{0}» aparece en {1} celdas de lecturas: se toma como sin lectura.</translation>
    </message>
    <message>
        <source>a whole JSON document</source>
        <translation>un documento JSON completo</translation>
    </message>
    <message>
        <source>a JSON document of readings</source>
        <translation>un documento JSON de lecturas</translation>
    </message>
    <message>
        <source>records, rows or columns of readings</source>
        <translation>registros, filas o columnas de lecturas</translation>
    </message>
    <message>
        <source>one record a line</source>
        <translation>un registro por línea</translation>
    </message>
    <message>
        <source>the column &quot;{0}&quot; of the header</source>
        <translation>la columna «{0}» de la cabecera</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>como máximo {0}</translation>
    </message>
    <message>
        <source>{0} cells in a row</source>
        <translation>{0} celdas en una fila</translation>
    </message>
    <message>
        <source>a JSON document without a table</source>
        <translation>un documento JSON sin tabla</translation>
    </message>
    <message>
        <source>JSON that is damaged or cut off</source>
        <translation>JSON dañado o cortado</translation>
    </message>
    <message>
        <source>dmy</source>
        <translation>día, mes, año</translation>
    </message>
    <message>
        <source>mdy</source>
        <translation>mes, día, año</translation>
    </message>
    <message>
        <source>ymd</source>
        <translation>año, mes, día</translation>
    </message>
    <message>
        <source>there is no archive</source>
        <translation>no hay ningún archivo allí</translation>
    </message>
    <message>
        <source>the file is empty, no archive</source>
        <translation>el archivo está vacío: no contiene un archivo de pasadas</translation>
    </message>
    <message>
        <source>it is a database of another program, no archive</source>
        <translation>es la base de datos de otro programa, no un archivo</translation>
    </message>
    <message>
        <source>the archive has version {0}, this program knows up to {1}: it takes a newer program</source>
        <translation>el archivo tiene la versión {0} y este programa conoce hasta la {1}: hace falta un programa más nuevo</translation>
    </message>
    <message>
        <source>the archive is open for reading only</source>
        <translation>el archivo está abierto solo para leer</translation>
    </message>
    <message>
        <source>there is no archive in the database yet</source>
        <translation>en la base de datos todavía no hay ningún archivo</translation>
    </message>
    <message>
        <source>the server refuses: this user may only read the archive</source>
        <translation>el servidor lo rechaza: este usuario solo puede leer el archivo</translation>
    </message>
    <message>
        <source>the server does not answer</source>
        <translation>el servidor no responde</translation>
    </message>
    <message>
        <source>the server refuses ({0})</source>
        <translation>el servidor lo rechaza ({0})</translation>
    </message>
    <message>
        <source>the database reports an error ({0})</source>
        <translation>la base de datos comunica un error ({0})</translation>
    </message>
    <message>
        <source>the file&apos;s disk does not serve a write-ahead log</source>
        <translation>el disco del archivo no admite un registro de escritura anticipada (WAL)</translation>
    </message>
    <message>
        <source>the PostgreSQL driver of Qt is not installed</source>
        <translation>el controlador PostgreSQL de Qt no está instalado</translation>
    </message>
    <message>
        <source>there is no record {0}</source>
        <translation>no existe el registro archivado {0}</translation>
    </message>
    <message>
        <source>{0} is damaged</source>
        <translation>{0} está dañado</translation>
    </message>
    <message>
        <source>{0} is missing</source>
        <translation>falta {0}</translation>
    </message>
    <message>
        <source>the bytes kept as {0} are damaged</source>
        <translation>los bytes guardados como {0} están dañados</translation>
    </message>
    <message>
        <source>has changed since it was read: judge again</source>
        <translation>ha cambiado desde que se leyó: evalúe de nuevo</translation>
    </message>
    <message>
        <source>has changed while it was judged</source>
        <translation>ha cambiado mientras se evaluaba</translation>
    </message>
    <message>
        <source>the log is no longer read as one run</source>
        <translation>el registro ya no se lee como una sola pasada</translation>
    </message>
    <message>
        <source>no run of the lot is in the archive</source>
        <translation>ninguna pasada del lote está en el archivo</translation>
    </message>
    <message>
        <source>its name does not match the rule&apos;s expression for lot, serial or operator</source>
        <translation>su nombre no coincide con la expresión de la regla para lote, número de serie u operario</translation>
    </message>
    <message>
        <source>cannot be written: {0}</source>
        <translation>no se puede escribir: {0}</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>no es una carpeta</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>es una carpeta</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>no queda espacio en el disco</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>sistema de archivos de solo lectura</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>error de entrada o salida</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>un texto entre comillas</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true o false</translation>
    </message>
    <message>
        <source>a number or a text in quotes</source>
        <translation>un número o un texto entre comillas</translation>
    </message>
    <message>
        <source>an array of numbers</source>
        <translation>una lista de números</translation>
    </message>
    <message>
        <source>an array of texts</source>
        <translation>una lista de textos</translation>
    </message>
    <message>
        <source>tables: {0}</source>
        <translation>tablas: {0}</translation>
    </message>
    <message>
        <source>a [[rule]]</source>
        <translation>una regla [[rule]]</translation>
    </message>
    <message>
        <source>a regular expression</source>
        <translation>una expresión regular</translation>
    </message>
    <message>
        <source>the recipe that the oven ran</source>
        <translation>la receta con la que funcionó el horno</translation>
    </message>
    <message>
        <source>the oven that the recipe ran on</source>
        <translation>el horno en el que se usó la receta</translation>
    </message>
    <message>
        <source>a file that people edit</source>
        <translation>un archivo que editan las personas</translation>
    </message>
    <message>
        <source>a file or the name of a window</source>
        <translation>un archivo o el nombre de una ventana</translation>
    </message>
    <message>
        <source>a file or the name of an oven</source>
        <translation>un archivo o el nombre de un horno</translation>
    </message>
    <message>
        <source>a file or the name of a recipe</source>
        <translation>un archivo o el nombre de una receta</translation>
    </message>
    <message>
        <source>a file or the name of a board</source>
        <translation>un archivo o el nombre de una placa</translation>
    </message>
    <message>
        <source>a file or the name of a layout</source>
        <translation>un archivo o el nombre de un formato</translation>
    </message>
    <message>
        <source>the log ends while the temperature still rises</source>
        <translation>el registro termina mientras la temperatura aún sube</translation>
    </message>
    <message>
        <source>the log starts at its highest temperature</source>
        <translation>el registro empieza en su temperatura más alta</translation>
    </message>
    <message>
        <source>for a trace the log ends while the temperature still rises</source>
        <translation>en una curva el registro termina mientras la temperatura aún sube</translation>
    </message>
    <message>
        <source>for a trace the log starts at its highest temperature</source>
        <translation>en una curva el registro empieza en su temperatura más alta</translation>
    </message>
    <message>
        <source>the log starts above {0}</source>
        <translation>el registro empieza por encima de {0}</translation>
    </message>
    <message>
        <source>the log ends above {0}</source>
        <translation>el registro termina por encima de {0}</translation>
    </message>
    <message>
        <source>the log starts at {0}</source>
        <translation>el registro empieza a {0}</translation>
    </message>
    <message>
        <source>the log starts at {0} or above</source>
        <translation>el registro empieza a {0} o más</translation>
    </message>
    <message>
        <source>the log ends at {0} or above</source>
        <translation>el registro termina a {0} o más</translation>
    </message>
    <message>
        <source>the peak is {0}, not above {1}</source>
        <translation>el pico es de {0}, no por encima de {1}</translation>
    </message>
    <message>
        <source>the peak is {0}, it does not reach {1}</source>
        <translation>el pico es de {0}, no llega a {1}</translation>
    </message>
    <message>
        <source>no time was spent between the two temperatures</source>
        <translation>no transcurrió tiempo entre las dos temperaturas</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise; the sample interval is {1}</source>
        <translation>ninguna ventana de {0} con al menos 3 muestras cae en la subida; el intervalo de muestreo es de {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall; the sample interval is {1}</source>
        <translation>ninguna ventana de {0} con al menos 3 muestras cae en la bajada; el intervalo de muestreo es de {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise within the range of temperatures; the sample interval is {1}</source>
        <translation>ninguna ventana de {0} con al menos 3 muestras cae en la subida dentro del intervalo de temperaturas; el intervalo de muestreo es de {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall within the range of temperatures; the sample interval is {1}</source>
        <translation>ninguna ventana de {0} con al menos 3 muestras cae en la bajada dentro del intervalo de temperaturas; el intervalo de muestreo es de {1}</translation>
    </message>
    <message>
        <source>never reaches {0}, counts to the peak</source>
        <translation>nunca llega a {0}, se cuenta hasta el pico</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace starts at {2}</source>
        <translation>{0} está a los {1}, la curva empieza a los {2}</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace ends at {2}</source>
        <translation>{0} está a los {1}, la curva termina a los {2}</translation>
    </message>
    <message>
        <source>the time asked for</source>
        <translation>el tiempo pedido</translation>
    </message>
    <message>
        <source>the end of zone {0}</source>
        <translation>el final de la zona {0}</translation>
    </message>
    <message>
        <source>the end of the last zone</source>
        <translation>el final de la última zona</translation>
    </message>
    <message>
        <source>needs the oven and its recipe</source>
        <translation>necesita el horno y su receta</translation>
    </message>
    <message>
        <source>the log does not show when the board entered the oven</source>
        <translation>el registro no muestra cuándo entró la placa en el horno</translation>
    </message>
    <message>
        <source>the oven has no zone {0}</source>
        <translation>el horno no tiene la zona {0}</translation>
    </message>
    <message>
        <source>the oven has no zones</source>
        <translation>el horno no tiene zonas</translation>
    </message>
    <message>
        <source>no wave seen: no slope of 5 °C/s over 1 s</source>
        <translation>no se ve ninguna ola: no hay pendiente de 5 °C/s durante 1 s</translation>
    </message>
    <message>
        <source>the log does not show the start of the wave</source>
        <translation>el registro no muestra el comienzo de la ola</translation>
    </message>
    <message>
        <source>no peak of 10 °C or more follows the start of the wave</source>
        <translation>tras el comienzo de la ola no hay ningún pico de 10 °C o más</translation>
    </message>
    <message>
        <source>the log ends before the joint has left the solder</source>
        <translation>el registro termina antes de que la unión salga de la soldadura</translation>
    </message>
    <message>
        <source>there is no time that all traces cover</source>
        <translation>no hay ningún tiempo que cubran todas las curvas</translation>
    </message>
    <message>
        <source>the log starts with a trace above {0}</source>
        <translation>el registro empieza con una curva por encima de {0}</translation>
    </message>
    <message>
        <source>no trace rises above {0}</source>
        <translation>ninguna curva sube por encima de {0}</translation>
    </message>
    <message>
        <source>the log does not show a trace that rises above {0}</source>
        <translation>el registro no muestra ninguna curva que suba por encima de {0}</translation>
    </message>
    <message>
        <source>not all traces have data at {0}, when the first one reaches {1}</source>
        <translation>no todas las curvas tienen datos a los {0}, cuando la primera llega a {1}</translation>
    </message>
    <message>
        <source>a trace starts above {0}</source>
        <translation>una curva empieza por encima de {0}</translation>
    </message>
    <message>
        <source>the coldest trace does not reach {0}</source>
        <translation>la curva más fría no llega a {0}</translation>
    </message>
    <message>
        <source>no sample has the coldest trace in the range of temperatures</source>
        <translation>en ninguna muestra está la curva más fría en el intervalo de temperaturas</translation>
    </message>
    <message>
        <source>not every trace rises above {0}</source>
        <translation>no todas las curvas suben por encima de {0}</translation>
    </message>
    <message>
        <source>the log does not show every trace rise above {0}</source>
        <translation>el registro no muestra que todas las curvas suban por encima de {0}</translation>
    </message>
    <message>
        <source>no trace to compare</source>
        <translation>ninguna curva que comparar</translation>
    </message>
    <message>
        <source>one trace only</source>
        <translation>una sola curva</translation>
    </message>
    <message>
        <source>a gap in the trace hides it</source>
        <translation>un hueco en la curva lo oculta</translation>
    </message>
    <message>
        <source>fewer than 3 samples</source>
        <translation>menos de 3 muestras</translation>
    </message>
    <message>
        <source>fewer than 3 good samples: {0}</source>
        <translation>menos de 3 muestras válidas: {0}</translation>
    </message>
    <message>
        <source>Tc is not known: enter the part&apos;s thickness and volume</source>
        <translation>Tc no se conoce: indique el espesor y el volumen del componente</translation>
    </message>
    <message>
        <source>Tc is a limit of bodies</source>
        <translation>Tc es un límite de cuerpos</translation>
    </message>
    <message>
        <source>the log does not show it</source>
        <translation>el registro no lo muestra</translation>
    </message>
    <message>
        <source>the log does not show them</source>
        <translation>el registro no los muestra</translation>
    </message>
    <message>
        <source>enter which part {0} is on in the board file</source>
        <translation>indique en el archivo de la placa en qué componente está {0}</translation>
    </message>
    <message>
        <source>enter the part {0} in the board file</source>
        <translation>indique el componente {0} en el archivo de la placa</translation>
    </message>
    <message>
        <source>enter the package thickness and volume of {0} in the board file</source>
        <translation>indique el espesor y el volumen del encapsulado de {0} en el archivo de la placa</translation>
    </message>
    <message>
        <source>enter the package thickness of {0} in the board file</source>
        <translation>indique el espesor del encapsulado de {0} en el archivo de la placa</translation>
    </message>
    <message>
        <source>enter the package volume of {0} in the board file</source>
        <translation>indique el volumen del encapsulado de {0} en el archivo de la placa</translation>
    </message>
    <message>
        <source>enter the classification, Pb-free or SnPb, in the window {0}</source>
        <translation>indique la clasificación, Pb-free o SnPb, en la ventana {0}</translation>
    </message>
    <message>
        <source>the board has no placement that these bind: {0}</source>
        <translation>la placa no tiene ninguna posición a la que se apliquen: {0}</translation>
    </message>
    <message>
        <source>{0} is not judged for {1}: enter its side in the board file</source>
        <translation>{0} no se juzga para {1}: indique su cara en el archivo de la placa</translation>
    </message>
    <message>
        <source>{0}: {1}, {2}, needs Tc (J-STD-020)</source>
        <translation>{0}: {1} de {2} necesita Tc (J-STD-020)</translation>
    </message>
    <message>
        <source>{0}, {1}: its lower limit is not below its upper limit, which is Tc: nothing can pass</source>
        <translation>{0} de {1}: el límite inferior no está por debajo del superior, que es Tc: nada puede pasar</translation>
    </message>
    <message>
        <source>{0}, {1}: its target does not lie inside its limits once Tc is put in, and is not used</source>
        <translation>{0} de {1}: con Tc el objetivo no queda dentro de los límites y no se usa</translation>
    </message>
    <message>
        <source>the log has no channel {0}</source>
        <translation>el registro no tiene el canal {0}</translation>
    </message>
    <message>
        <source>{0}: the log has no channel {1}</source>
        <translation>{0}: el registro no tiene el canal {1}</translation>
    </message>
    <message>
        <source>{0}: its limits are narrower than 2 U, so nothing can pass under the guarded rule</source>
        <translation>{0}: sus límites distan menos de 2 U, así que nada puede pasar con la regla con banda de guarda</translation>
    </message>
    <message>
        <source>{0}: K class 1 is taken for {1}</source>
        <translation>{0}: para {1} se toma K class 1</translation>
    </message>
    <message>
        <source>it knows ovens, not waves</source>
        <translation>conoce hornos, no olas</translation>
    </message>
    <message>
        <source>{0} of zone {1} is {2} °C, outside the oven&apos;s {3} to {4} °C</source>
        <translation>{0} de la zona {1} es {2} °C, fuera de los {3} a {4} °C del horno</translation>
    </message>
    <message>
        <source>{0} steps by {1} °C from zone {2} to {3}, more than the oven&apos;s {4} °C</source>
        <translation>{0} salta {1} °C de la zona {2} a la {3}, más que los {4} °C del horno</translation>
    </message>
    <message>
        <source>the recipe is for the oven &quot;{0}&quot;, not for &quot;{1}&quot;</source>
        <translation>la receta es para el horno «{0}», no para «{1}»</translation>
    </message>
    <message>
        <source>the speed is {0} mm/min, outside the oven&apos;s {1} to {2} mm/min</source>
        <translation>la velocidad es de {0} mm/min, fuera de los {1} a {2} mm/min del horno</translation>
    </message>
    <message>
        <source>top and bottom of zone {0} differ by {1} °C, more than the oven&apos;s {2} °C</source>
        <translation>la parte superior y la inferior de la zona {0} difieren en {1} °C, más que los {2} °C del horno</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, expected {2}</source>
        <translation>se encontró {0} en «{1}», se esperaba {2}</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot;, expected {1}</source>
        <translation>falta «{0}», se esperaba {1}</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>falta «{0}» en {1}, se esperaba {2}</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>clave desconocida «{0}», ¿quiso decir «{1}»?</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, expected {1}</source>
        <translation>clave desconocida «{0}», se esperaba {1}</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, did you mean &quot;{2}&quot;?</source>
        <translation>clave desconocida «{0}» en {1}, ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>clave desconocida «{0}» en {1}, se esperaba {2}</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>medida desconocida «{0}», ¿quiso decir «{1}»?</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, expected {1}</source>
        <translation>medida desconocida «{0}», se esperaba {1}</translation>
    </message>
    <message>
        <source>no valid TOML: {0}</source>
        <translation>TOML no válido: {0}</translation>
    </message>
    <message>
        <source>the clock was set back by {0} s: later times are moved on</source>
        <translation>el reloj se atrasó {0} s: los tiempos posteriores se adelantan otro tanto</translation>
    </message>
    <message>
        <source>found [{0}] and [[{1}]], expected [[{2}]] each time</source>
        <translation>se encontraron [{0}] y [[{1}]], se esperaba siempre [[{2}]]</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; a second time, expected each key once</source>
        <translation>«{0}» aparece por segunda vez, se esperaba cada clave una sola vez</translation>
    </message>
    <message>
        <source>found a text without quotes, expected a number, true, false, or a text in quotes</source>
        <translation>se encontró un texto sin comillas, se esperaba un número, true, false o un texto entre comillas</translation>
    </message>
    <message>
        <source>found a comma behind a value, expected a decimal point, or the end of the line</source>
        <translation>se encontró una coma tras un valor, se esperaba un punto decimal o el fin de la línea</translation>
    </message>
    <message>
        <source>found bytes that are no UTF-8, expected a text in UTF-8</source>
        <translation>se encontraron bytes que no son UTF-8, se esperaba un texto en UTF-8</translation>
    </message>
    <message>
        <source>cannot be parsed: {0}</source>
        <translation>no se puede analizar: {0}</translation>
    </message>
    <message>
        <source>is kept as it is: {0}</source>
        <translation>se conserva como está: {0}</translation>
    </message>
    <message>
        <source>found {0}, expected a file</source>
        <translation>se encontró {0}, se esperaba un archivo</translation>
    </message>
    <message>
        <source>found more than 4 MB, expected a file that people edit</source>
        <translation>más de 4 MB, se esperaba un archivo que se edita a mano</translation>
    </message>
    <message>
        <source>Tc is a temperature, &quot;{0}&quot; is none</source>
        <translation>Tc es una temperatura, «{0}» no lo es</translation>
    </message>
    <message>
        <source>Tc binds the bodies of parts, but &quot;applies_to&quot; leaves them out</source>
        <translation>Tc se aplica a los cuerpos de los componentes, pero «applies_to» los deja fuera</translation>
    </message>
    <message>
        <source>found Tc for &quot;{0}&quot;, but the window has no &quot;classification&quot; to take it from</source>
        <translation>se encontró Tc en «{0}», pero la ventana no tiene «classification» de donde tomarlo</translation>
    </message>
    <message>
        <source>limits crossed: lower {0}, upper {1}</source>
        <translation>límites cruzados: inferior {0}, superior {1}</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; an upper limit but no target</source>
        <translation>La ventana «{0}» da a «{1}» un límite superior pero ningún objetivo</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; a lower limit but no target</source>
        <translation>La ventana «{0}» da a «{1}» un límite inferior pero ningún objetivo</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no limit, expected &quot;lower&quot;, &quot;upper&quot; or both</source>
        <translation>«{0}» no tiene límite, se esperaba «lower», «upper» o ambos</translation>
    </message>
    <message>
        <source>has no limit</source>
        <translation>no tiene límite</translation>
    </message>
    <message>
        <source>found no channel in &quot;applies_to&quot;</source>
        <translation>no hay ningún canal en «applies_to»</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on the board as a whole</source>
        <translation>se encontró {0} en «applies_to», se esperaba {1}: «{2}» se mide en la placa entera</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on each trace</source>
        <translation>se encontró {0} en «applies_to», se esperaba {1}: «{2}» se mide en cada curva</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; in a window for reflow, expected process = &quot;wave&quot;</source>
        <translation>se encontró «{0}» en una ventana de refusión, se esperaba process = &quot;wave&quot;</translation>
    </message>
    <message>
        <source>found &quot;tolerance_C&quot; beside &quot;thermocouple&quot;, expected one of the two</source>
        <translation>se encontró «tolerance_C» junto a «thermocouple», se esperaba uno de los dos</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, expected {1}</source>
        <translation>se encontró el termopar «{0}», se esperaba {1}</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, whose tolerances begin at 600 °C, expected {1}</source>
        <translation>se encontró el termopar «{0}», cuyas tolerancias empiezan en 600 °C, se esperaba {1}</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, a class that ends at 40 °C, expected {1}</source>
        <translation>se encontró el termopar «{0}», una clase que termina en 40 °C, se esperaba {1}</translation>
    </message>
    <message>
        <source>a type (K, J, T, E, N, R or S) with &quot;class 1&quot; or &quot;class 2&quot; (IEC 60584-1) or &quot;special&quot; or &quot;standard&quot; (ASTM E230), such as &quot;K class 1&quot;</source>
        <translation>un tipo (K, J, T, E, N, R o S) con «class 1» o «class 2» (IEC 60584-1) o «special» o «standard» (ASTM E230), por ejemplo «K class 1»</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no parameter &quot;{1}&quot;</source>
        <translation>«{0}» no tiene el parámetro «{1}»</translation>
    </message>
    <message>
        <source>{0}: found {1}, expected {2}</source>
        <translation>{0}: se encontró {1}, se esperaba {2}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs {1}</source>
        <translation>«{0}» necesita {1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs level, or the window a &quot;liquidus_C&quot;</source>
        <translation>«{0}» necesita level, o la ventana un «liquidus_C»</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; was given a parameter that it does not know</source>
        <translation>«{0}» recibió un parámetro que no conoce</translation>
    </message>
    <message>
        <source>over must be more than 0 s</source>
        <translation>over debe ser mayor que 0 s</translation>
    </message>
    <message>
        <source>offset must not be negative</source>
        <translation>offset no debe ser negativo</translation>
    </message>
    <message>
        <source>&quot;temperature at&quot; needs one of time, position_mm or zone</source>
        <translation>«temperature at» necesita uno de time, position_mm o zone</translation>
    </message>
    <message>
        <source>T1 must be above T2</source>
        <translation>T1 debe ser mayor que T2</translation>
    </message>
    <message>
        <source>T1 must be below T2</source>
        <translation>T1 debe ser menor que T2</translation>
    </message>
    <message>
        <source>found an empty &quot;channel&quot;, expected its name in the log</source>
        <translation>«channel» está vacío, se esperaba su nombre en el registro</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>el canal «{0}» aparece por segunda vez, la primera en la línea {1}</translation>
    </message>
    <message>
        <source>found the part &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>el componente «{0}» aparece por segunda vez, la primera en la línea {1}</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, did you mean &quot;{2}&quot;?</source>
        <translation>la placa coloca el canal «{0}», que «{1}» no tiene, ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, expected {2}</source>
        <translation>la placa coloca el canal «{0}», que «{1}» no tiene, se esperaba {2}</translation>
    </message>
    <message>
        <source>found {0} in &quot;{1}&quot;, expected {2}</source>
        <translation>se encontraron {0} en «{1}», se esperaban {2}</translation>
    </message>
    <message>
        <source>found {0} setpoints in &quot;top_C&quot; but {1} in &quot;bottom_C&quot;, expected one for each heating zone in both</source>
        <translation>se encontraron {0} consignas en «top_C» pero {1} en «bottom_C», se esperaba en cada una una por zona de calentamiento</translation>
    </message>
    <message>
        <source>1 setpoint</source>
        <translation>1 consigna</translation>
    </message>
    <message>
        <source>{0} setpoints</source>
        <translation>{0} consignas</translation>
    </message>
    <message>
        <source>{0}, one for each heating zone of &quot;{1}&quot;</source>
        <translation>{0}, una por cada zona de calentamiento de «{1}»</translation>
    </message>
    <message>
        <source>{0}, one for each cooling zone of &quot;{1}&quot;</source>
        <translation>{0}, una por cada zona de enfriamiento de «{1}»</translation>
    </message>
    <message>
        <source>found the zone &quot;{0}&quot; a second time</source>
        <translation>la zona «{0}» aparece por segunda vez</translation>
    </message>
    <message>
        <source>the revision has no name</source>
        <translation>la revisión no tiene nombre</translation>
    </message>
    <message>
        <source>the window is at revision &quot;{0}&quot; already</source>
        <translation>la ventana ya está en la revisión «{0}»</translation>
    </message>
    <message>
        <source>a whole number of at least {0}</source>
        <translation>un número entero de al menos {0}</translation>
    </message>
    <message>
        <source>a whole number from {0} to {1}</source>
        <translation>un número entero de {0} a {1}</translation>
    </message>
    <message>
        <source>a whole number from 1</source>
        <translation>un número entero desde 1</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>two numbers, the lower one first</source>
        <translation>dos números, primero el menor</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>un número mayor que 0</translation>
    </message>
    <message>
        <source>a number of at least 0</source>
        <translation>un número de al menos 0</translation>
    </message>
    <message>
        <source>a temperature in °C</source>
        <translation>una temperatura en °C</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;</source>
        <translation>una temperatura en °C o «peak»</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;Tc&quot;</source>
        <translation>una temperatura en °C o «Tc»</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;, &quot;Tc&quot;</source>
        <translation>una temperatura en °C, «peak» o «Tc»</translation>
    </message>
    <message>
        <source>a number of seconds</source>
        <translation>un número de segundos</translation>
    </message>
    <message>
        <source>a number of millimetres</source>
        <translation>un número de milímetros</translation>
    </message>
    <message>
        <source>the name of a zone</source>
        <translation>el nombre de una zona</translation>
    </message>
    <message>
        <source>a length above 0</source>
        <translation>una longitud mayor que 0</translation>
    </message>
    <message>
        <source>a length of at least 0</source>
        <translation>una longitud de al menos 0</translation>
    </message>
    <message>
        <source>a mass above 0</source>
        <translation>una masa mayor que 0</translation>
    </message>
    <message>
        <source>a position in mm</source>
        <translation>una posición en mm</translation>
    </message>
    <message>
        <source>a speed above 0</source>
        <translation>una velocidad mayor que 0</translation>
    </message>
    <message>
        <source>a volume above 0</source>
        <translation>un volumen mayor que 0</translation>
    </message>
    <message>
        <source>an area above 0</source>
        <translation>un área mayor que 0</translation>
    </message>
    <message>
        <source>length and width</source>
        <translation>largo y ancho</translation>
    </message>
    <message>
        <source>the channel&apos;s name in the log, or its number from 1</source>
        <translation>el nombre del canal en el registro, o su número desde 1</translation>
    </message>
    <message>
        <source>its name in the log</source>
        <translation>su nombre en el registro</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>the zone&apos;s name in quotes</source>
        <translation>el nombre de la zona entre comillas</translation>
    </message>
    <message>
        <source>at least one [[zone]] of kind &quot;heat&quot;</source>
        <translation>al menos una [[zone]] de tipo «heat»</translation>
    </message>
    <message>
        <source>one setpoint for each heating zone</source>
        <translation>una consigna por cada zona de calentamiento</translation>
    </message>
    <message>
        <source>at least one [[requirement]]</source>
        <translation>al menos un [[requirement]]</translation>
    </message>
    <message>
        <source>a number, &quot;Tc&quot; or &quot;Tc-5&quot;</source>
        <translation>un número, «Tc» o «Tc-5»</translation>
    </message>
    <message>
        <source>&quot;body&quot;, &quot;all&quot; or a list of channels</source>
        <translation>«body», «all» o una lista de canales</translation>
    </message>
    <message>
        <source>&quot;all&quot;, &quot;joint&quot;, &quot;body&quot; or a list of channels</source>
        <translation>«all», «joint», «body» o una lista de canales</translation>
    </message>
    <message>
        <source>classification = &quot;Pb-free&quot; or &quot;SnPb&quot;</source>
        <translation>classification = &quot;Pb-free&quot; o &quot;SnPb&quot;</translation>
    </message>
    <message>
        <source>an upper limit above the lower one</source>
        <translation>un límite superior mayor que el inferior</translation>
    </message>
    <message>
        <source>a limit above 0 or a target</source>
        <translation>un límite mayor que 0 o un objetivo</translation>
    </message>
    <message>
        <source>a target</source>
        <translation>un objetivo</translation>
    </message>
    <message>
        <source>a target strictly between {0} and {1}</source>
        <translation>un objetivo entre {0} y {1}, sin incluirlos</translation>
    </message>
    <message>
        <source>a target above {0}</source>
        <translation>un objetivo por encima de {0}</translation>
    </message>
    <message>
        <source>a target below {0}</source>
        <translation>un objetivo por debajo de {0}</translation>
    </message>
    <message>
        <source>at least one channel</source>
        <translation>al menos un canal</translation>
    </message>
    <message>
        <source>at most the liquidus, {0}</source>
        <translation>como máximo el líquidus, {0}</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>el archivo ya existe</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>nombre de archivo demasiado largo</translation>
    </message>
    <message>
        <source>Too many open files</source>
        <translation>demasiados archivos abiertos</translation>
    </message>
    <message>
        <source>Operation not permitted</source>
        <translation>operación no permitida</translation>
    </message>
    <message>
        <source>a pipe</source>
        <translation>una tubería</translation>
    </message>
    <message>
        <source>a device</source>
        <translation>un dispositivo</translation>
    </message>
    <message>
        <source>found {0}, expected {1} as in the other rows</source>
        <translation>se encontró {0}, se esperaba {1} como en las demás filas</translation>
    </message>
    <message>
        <source>found {0}, expected as many fields as names: the comma is the delimiter and seems to be the decimal sign as well, and {1}</source>
        <translation>se encontró {0}, se esperaban tantos campos como nombres: la coma es el separador y parece ser también el signo decimal, y {1}</translation>
    </message>
    <message>
        <source>as many fields as names</source>
        <translation>tantos campos como nombres</translation>
    </message>
    <message>
        <source>no encoding named &quot;{0}&quot; is known</source>
        <translation>no se conoce ninguna codificación llamada «{0}»</translation>
    </message>
    <message>
        <source>the name of a character encoding</source>
        <translation>el nombre de una codificación de caracteres</translation>
    </message>
    <message>
        <source>found {0}, expected text in that encoding</source>
        <translation>se encontraron {0}, se esperaba texto en esa codificación</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; places a cell out of range, expected {1}</source>
        <translation>la hoja «{0}» coloca una celda fuera de rango, se esperaba {1}</translation>
    </message>
    <message>
        <source>a cell out of range</source>
        <translation>una celda fuera de rango</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; spreads {1} cells over millions of empty or repeated ones, expected a table</source>
        <translation>la hoja «{0}» reparte {1} celdas entre millones vacías o repetidas, se esperaba una tabla</translation>
    </message>
    <message>
        <source>cells too far apart</source>
        <translation>celdas demasiado separadas</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>una tabla</translation>
    </message>
    <message>
        <source>found a gzip file that is {0}, expected a whole one</source>
        <translation>se encontró un archivo gzip {0}, se esperaba uno completo</translation>
    </message>
    <message>
        <source>found an OpenDocument file without a table, expected a spreadsheet</source>
        <translation>se encontró un archivo OpenDocument sin tabla, se esperaba una hoja de cálculo</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>ninguna tabla</translation>
    </message>
    <message>
        <source>a spreadsheet</source>
        <translation>una hoja de cálculo</translation>
    </message>
    <message>
        <source>found no sheet &quot;{0}&quot;, expected one of: {1}</source>
        <translation>no se encontró la hoja «{0}», se esperaba una de: {1}</translation>
    </message>
    <message>
        <source>found {0} and no rows of numbers, expected {1}</source>
        <translation>se encontró {0} y ninguna fila de números, se esperaba {1}</translation>
    </message>
    <message>
        <source>found the unit {0} and no column of temperatures, expected °C, °F, K or mV</source>
        <translation>se encontró la unidad {0} y ninguna columna de temperaturas, se esperaba °C, °F, K o mV</translation>
    </message>
    <message>
        <source>found the unit {0}, expected °C, °F, K or mV</source>
        <translation>se encontró la unidad {0}, se esperaba °C, °F, K o mV</translation>
    </message>
    <message>
        <source>found no columns of channel names and values, expected time, channel and value</source>
        <translation>no se encontraron columnas con nombres de canal y valores, se esperaba tiempo, canal y valor</translation>
    </message>
    <message>
        <source>found more than {0} readings, expected a log below the cap on its size</source>
        <translation>se encontraron más de {0} lecturas, se esperaba un registro por debajo del tope de tamaño</translation>
    </message>
    <message>
        <source>more than {0} readings</source>
        <translation>más de {0} lecturas</translation>
    </message>
    <message>
        <source>a log below the cap on its size</source>
        <translation>un registro por debajo del tope de tamaño</translation>
    </message>
    <message>
        <source>found more than {0} names of channels</source>
        <translation>se encontraron más de {0} nombres de canal</translation>
    </message>
    <message>
        <source>the name of a channel</source>
        <translation>el nombre de un canal</translation>
    </message>
    <message>
        <source>reading was stopped</source>
        <translation>se detuvo la lectura</translation>
    </message>
    <message>
        <source>the interval between rows is not above 0</source>
        <translation>el intervalo entre filas no es mayor que 0</translation>
    </message>
    <message>
        <source>found the kind of time &quot;{0}&quot;, expected a known one</source>
        <translation>se encontró el tipo de tiempo «{0}», se esperaba uno conocido</translation>
    </message>
    <message>
        <source>a kind of time</source>
        <translation>un tipo de tiempo</translation>
    </message>
    <message>
        <source>column {0} holds no clock times or dates, expected {1}</source>
        <translation>la columna {0} no contiene horas ni fechas, se esperaba {1}</translation>
    </message>
    <message>
        <source>column {0} holds no plain numbers, expected {1}</source>
        <translation>la columna {0} no contiene números simples, se esperaba {1}</translation>
    </message>
    <message>
        <source>{0} unpacks to too much, expected {1}</source>
        <translation>{0} se desempaqueta en demasiado, se esperaba {1}</translation>
    </message>
    <message>
        <source>too many unpacked bytes</source>
        <translation>demasiados bytes desempaquetados</translation>
    </message>
    <message>
        <source>found a workbook without its part {0}, expected a whole .xlsx workbook</source>
        <translation>se encontró un libro sin su parte {0}, se esperaba un libro .xlsx completo</translation>
    </message>
    <message>
        <source>found a document type definition, expected the XML of a workbook</source>
        <translation>se encontró una definición de tipo de documento, se esperaba el XML de un libro</translation>
    </message>
    <message>
        <source>a document type definition</source>
        <translation>una definición de tipo de documento</translation>
    </message>
    <message>
        <source>the XML of a workbook</source>
        <translation>el XML de un libro</translation>
    </message>
    <message>
        <source>{0} cannot be unpacked: {1}</source>
        <translation>{0} no se puede desempaquetar: {1}</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>no se encontró ventana «{0}», ¿quiso decir «{1}»?</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, neither as a file nor as a name; `ovenwright windows` lists the names</source>
        <translation>no se encontró ventana «{0}», ni como archivo ni como nombre; `ovenwright windows` lista los nombres</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>no se encontró horno «{0}», ¿quiso decir «{1}»?</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, neither as a file nor as a name; `ovenwright ovens` lists the names</source>
        <translation>no se encontró horno «{0}», ni como archivo ni como nombre; `ovenwright ovens` lista los nombres</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>no se encontró receta «{0}», ¿quiso decir «{1}»?</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, neither as a file nor as a name; `ovenwright recipes` lists the names</source>
        <translation>no se encontró receta «{0}», ni como archivo ni como nombre; `ovenwright recipes` lista los nombres</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>no se encontró placa «{0}», ¿quiso decir «{1}»?</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, neither as a file nor as a name; `ovenwright boards` lists the names</source>
        <translation>no se encontró placa «{0}», ni como archivo ni como nombre; `ovenwright boards` lista los nombres</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>no se encontró formato «{0}», ¿quiso decir «{1}»?</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, neither as a file nor as a name; `ovenwright layouts` lists the names</source>
        <translation>no se encontró formato «{0}», ni como archivo ni como nombre; `ovenwright layouts` lista los nombres</translation>
    </message>
    <message>
        <source>&quot;{0}&quot;</source>
        <translation>«{0}»</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, did you mean &quot;{2}&quot;?</source>
        <translation>se encontró {0} en «{1}», ¿quiso decir «{2}»?</translation>
    </message>
    <message>
        <source>a table: [{0}]</source>
        <translation>una tabla: [{0}]</translation>
    </message>
    <message>
        <source>tables: [[{0}]]</source>
        <translation>tablas: [[{0}]]</translation>
    </message>
    <message>
        <source>found 1 run, expected at least {0}</source>
        <translation>se encontró 1 pasada, se esperaban al menos {0}</translation>
    </message>
    <message>
        <source>found {0} runs, expected at least {1}</source>
        <translation>se encontraron {0} pasadas, se esperaban al menos {1}</translation>
    </message>
    <message>
        <source>{0} fields under {1} names</source>
        <translation>{0} campos bajo {1} nombres</translation>
    </message>
    <message>
        <source>no way to join them fits</source>
        <translation>no hay forma de unirlos que encaje</translation>
    </message>
    <message>
        <source>the counts allow more than one way to join them</source>
        <translation>los recuentos permiten unirlos de más de una forma</translation>
    </message>
    <message>
        <source>{0} fields of whole numbers, every second one a single digit</source>
        <translation>{0} campos de números enteros, uno de cada dos de una sola cifra</translation>
    </message>
    <message>
        <source>found {0}, expected numbers: the comma seems to be the delimiter and the decimal sign as well, and no header tells how many columns there are</source>
        <translation>se encontraron {0}, se esperaban números: la coma parece ser a la vez separador y signo decimal, y ninguna cabecera dice cuántas columnas hay</translation>
    </message>
    <message>
        <source>at most {0} MiB for a file of this size</source>
        <translation>como máximo {0} MiB para un archivo de este tamaño</translation>
    </message>
    <message>
        <source>one sample, {0} °C</source>
        <translation>una muestra, {0} °C</translation>
    </message>
    <message>
        <source>{0} samples</source>
        <translation>{0} muestras</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>over-range</source>
        <translation>fuera de rango</translation>
    </message>
    <message>
        <source>dropout</source>
        <translation>pérdida de señal</translation>
    </message>
    <message>
        <source>spike</source>
        <translation>punta</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>atascado</translation>
    </message>
    <message>
        <source>reversed polarity</source>
        <translation>polaridad invertida</translation>
    </message>
    <message>
        <source>detached</source>
        <translation>despegado</translation>
    </message>
    <message>
        <source>swapped placement</source>
        <translation>posición intercambiada</translation>
    </message>
    <message>
        <source>cold-junction step</source>
        <translation>salto de la unión fría</translation>
    </message>
    <message>
        <source>clock gap</source>
        <translation>hueco en el tiempo</translation>
    </message>
    <message>
        <source>time going back</source>
        <translation>tiempo que retrocede</translation>
    </message>
    <message>
        <source>the log</source>
        <translation>el registro</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed</source>
        <translation>{0}: {1} a los {2} s, eliminado</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed: {3}</source>
        <translation>{0}: {1} a los {2} s, eliminado: {3}</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in</source>
        <translation>{0}: {1} a los {2} s, conservado</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in: {3}</source>
        <translation>{0}: {1} a los {2} s, conservado: {3}</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, removed</source>
        <translation>{0}: {1} de {2} a {3} s, eliminado</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, removed: {4}</source>
        <translation>{0}: {1} de {2} a {3} s, eliminado: {4}</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, left in</source>
        <translation>{0}: {1} de {2} a {3} s, conservado</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, left in: {4}</source>
        <translation>{0}: {1} de {2} a {3} s, conservado: {4}</translation>
    </message>
    <message>
        <source>from &quot;{0}&quot;</source>
        <translation>de «{0}»</translation>
    </message>
    <message>
        <source>tabs between cells</source>
        <translation>tabuladores entre celdas</translation>
    </message>
    <message>
        <source>blanks between cells</source>
        <translation>espacios entre celdas</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; between cells</source>
        <translation>«{0}» entre celdas</translation>
    </message>
    <message>
        <source>fixed width</source>
        <translation>ancho fijo</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>coma decimal</translation>
    </message>
    <message>
        <source>time as {0}</source>
        <translation>tiempo como {0}</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>milisegundos</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutos</translation>
    </message>
    <message>
        <source>clock m:s</source>
        <translation>hora m:s</translation>
    </message>
    <message>
        <source>clock h:m</source>
        <translation>hora h:m</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>hora h:m:s</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>fecha y hora</translation>
    </message>
    <message>
        <source>serial days</source>
        <translation>días en serie</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>segundos desde 1970</translation>
    </message>
    <message>
        <source>index</source>
        <translation>número de la fila</translation>
    </message>
    <message>
        <source>header in line {0}</source>
        <translation>cabecera en la línea {0}</translation>
    </message>
    <message>
        <source>no header</source>
        <translation>sin cabecera</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 fila</translation>
    </message>
    <message>
        <source>{0} rows</source>
        <translation>{0} filas</translation>
    </message>
    <message>
        <source>{0} skipped</source>
        <translation>{0} omitidas</translation>
    </message>
    <message>
        <source>one every {0} s</source>
        <translation>una cada {0} s</translation>
    </message>
    <message>
        <source>found {0}, expected a drawing alone: a logo runs nothing and fetches nothing</source>
        <translation>se encontró {0}, se esperaba solo un dibujo: un logotipo no ejecuta ni descarga nada</translation>
    </message>
    <message>
        <source>the element &lt;{0}&gt;</source>
        <translation>el elemento &lt;{0}&gt;</translation>
    </message>
    <message>
        <source>the handler {0}</source>
        <translation>el manejador {0}</translation>
    </message>
    <message>
        <source>a link to {0}</source>
        <translation>un enlace a {0}</translation>
    </message>
    <message>
        <source>entities of its own</source>
        <translation>entidades propias</translation>
    </message>
    <message>
        <source>a processing instruction</source>
        <translation>una instrucción de procesamiento</translation>
    </message>
    <message>
        <source>a style that fetches</source>
        <translation>un estilo que descarga</translation>
    </message>
    <message>
        <source>is a damaged SVG drawing: {0}</source>
        <translation>es un dibujo SVG dañado: {0}</translation>
    </message>
    <message>
        <source>is a drawing without a size</source>
        <translation>es un dibujo sin tamaño</translation>
    </message>
    <message>
        <source>is no picture that a sheet can show, expected an SVG drawing, a PNG or a JPEG picture</source>
        <translation>no es una imagen que la hoja pueda mostrar; se esperaba un dibujo SVG, una imagen PNG o JPEG</translation>
    </message>
    <message>
        <source>has {0} × {1} points: no logo is that large</source>
        <translation>tiene {0} × {1} puntos: ningún logotipo es tan grande</translation>
    </message>
    <message>
        <source>is a damaged picture: {0}</source>
        <translation>es una imagen dañada: {0}</translation>
    </message>
    <message>
        <source>is larger than 4 MB: no logo is</source>
        <translation>ocupa más de 4 MB: ningún logotipo lo hace</translation>
    </message>
    <message>
        <source>the record&apos;s body is damaged</source>
        <translation>el contenido del registro está dañado</translation>
    </message>
    <message>
        <source>packed bytes are damaged</source>
        <translation>los bytes comprimidos están dañados</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>detenido</translation>
    </message>
    <message>
        <source>was stopped</source>
        <translation>se detuvo</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot;, expected a regular expression ({1})</source>
        <translation>se encontró «{0}», se esperaba una expresión regular ({1})</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>el disco está lleno</translation>
    </message>
    <message>
        <source>it cannot be written</source>
        <translation>no se puede escribir</translation>
    </message>
    <message>
        <source>it is damaged, or no database</source>
        <translation>está dañado o no es una base de datos</translation>
    </message>
    <message>
        <source>the database reports an error</source>
        <translation>la base de datos informa de un error</translation>
    </message>
    <message>
        <source>1 row ends before the last column: what is missing there counts as no reading.</source>
        <translation>1 fila termina antes de la última columna: lo que falta cuenta como sin lectura.</translation>
    </message>
    <message>
        <source>1 cell that is no number is left empty: &quot;{0}&quot; in line {1}.</source>
        <translation>1 celda que no es un número queda vacía: «{0}» en la línea {1}.</translation>
    </message>
    <message>
        <source>{0} cells that are no numbers are left empty: the first is &quot;{1}&quot; in line {2}.</source>
        <translation>{0} celdas que no son números quedan vacías: la primera es «{1}» en la línea {2}.</translation>
    </message>
    <message>
        <source>1 row without a time is left out: line {0}.</source>
        <translation>1 fila sin tiempo queda fuera: la línea {0}.</translation>
    </message>
    <message>
        <source>{0} rows without a time are left out: the first is line {1}.</source>
        <translation>{0} filas sin tiempo quedan fuera: la primera es la línea {1}.</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot;</source>
        <translation>celda {0} de la hoja «{1}»</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot;</source>
        <translation>fila {0} de la hoja «{1}»</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;</source>
        <translation>hoja «{0}»</translation>
    </message>
    <message>
        <source>row {0} of table {1}</source>
        <translation>fila {0} de la tabla {1}</translation>
    </message>
    <message>
        <source>in &quot;{0}&quot;</source>
        <translation>en «{0}»</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>celda {0} de la hoja «{1}» de «{2}»</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>fila {0} de la hoja «{1}» de «{2}»</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; in &quot;{1}&quot;</source>
        <translation>hoja «{0}» de «{1}»</translation>
    </message>
    <message>
        <source>row {0} of table {1} in &quot;{2}&quot;</source>
        <translation>fila {0} de la tabla {1} de «{2}»</translation>
    </message>
    <message>
        <source>an empty zip archive</source>
        <translation>un archivo zip vacío</translation>
    </message>
    <message>
        <source>a zip archive of other files ({0})</source>
        <translation>un archivo zip con otros archivos ({0})</translation>
    </message>
    <message>
        <source>found no file &quot;{0}&quot; in the archive, expected one of: {1}</source>
        <translation>no se encontró el archivo «{0}» en el archivo comprimido; se esperaba uno de: {1}</translation>
    </message>
    <message>
        <source>found no table &quot;{0}&quot;, expected one of: {1}</source>
        <translation>no se encontró la tabla «{0}»; se esperaba una de: {1}</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls)</source>
        <translation>un libro del antiguo tipo binario (.xls)</translation>
    </message>
    <message>
        <source>a word processor's document of the old binary kind</source>
        <translation>un documento de texto del antiguo tipo binario</translation>
    </message>
    <message>
        <source>a presentation of the old binary kind</source>
        <translation>una presentación del antiguo tipo binario</translation>
    </message>
    <message>
        <source>a tar archive, which is not unpacked here</source>
        <translation>un archivo tar, que aquí no se descomprime</translation>
    </message>
    <message>
        <source>a workbook without its texts (sharedStrings.xml)</source>
        <translation>un libro sin sus textos (sharedStrings.xml)</translation>
    </message>
    <message>
        <source>a text that the workbook does not hold</source>
        <translation>un texto que el libro no contiene</translation>
    </message>
    <message>
        <source>{0} formulas without a stored result</source>
        <translation>{0} fórmulas sin resultado guardado</translation>
    </message>
    <message>
        <source>readings, which a spreadsheet program stores when it saves the workbook</source>
        <translation>lecturas, que un programa de hojas de cálculo guarda al guardar el libro</translation>
    </message>
    <message>
        <source>it is cut short or damaged, the list of its files is missing</source>
        <translation>está truncado o dañado: falta la lista de sus archivos</translation>
    </message>
    <message>
        <source>the zip archive</source>
        <translation>el archivo zip</translation>
    </message>
    <message>
        <source>Not a zip archive</source>
        <translation>no es un archivo zip</translation>
    </message>
    <message>
        <source>Zip archive inconsistent</source>
        <translation>el archivo zip es incoherente</translation>
    </message>
    <message>
        <source>Premature end of file</source>
        <translation>fin de archivo prematuro</translation>
    </message>
    <message>
        <source>CRC error</source>
        <translation>error de suma de verificación</translation>
    </message>
    <message>
        <source>Compression method not supported</source>
        <translation>método de compresión no admitido</translation>
    </message>
    <message>
        <source>Encryption method not supported</source>
        <translation>método de cifrado no admitido</translation>
    </message>
    <message>
        <source>No password provided</source>
        <translation>no se dio ninguna contraseña</translation>
    </message>
    <message>
        <source>The file says {0}, which makes the top {1} °C: no run. As {2} it would be {3} °C.</source>
        <translation>El archivo dice {0}, con lo que el máximo es {1} °C: no es una pasada. Como {2} sería {3} °C.</translation>
    </message>
    <message>
        <source>falls far below its start and never rises above it</source>
        <translation>baja muy por debajo de su comienzo y nunca lo supera</translation>
    </message>
    <message>
        <source>the server does not answer: none runs there</source>
        <translation>el servidor no responde: allí no hay ninguno en marcha</translation>
    </message>
    <message>
        <source>the server&apos;s name is not known in the network</source>
        <translation>la red no conoce el nombre del servidor</translation>
    </message>
    <message>
        <source>the server is starting or stopping</source>
        <translation>el servidor está arrancando o parando</translation>
    </message>
    <message>
        <source>the server has no connection free</source>
        <translation>el servidor no tiene ninguna conexión libre</translation>
    </message>
    <message>
        <source>the server takes too long to answer</source>
        <translation>el servidor tarda demasiado en responder</translation>
    </message>
    <message>
        <source>the server has no room left on its disk</source>
        <translation>al servidor no le queda espacio en el disco</translation>
    </message>
    <message>
        <source>the server was left</source>
        <translation>se dejó el servidor</translation>
    </message>
    <message>
        <source>the server refuses: it wants a password, and the password file has none for it</source>
        <translation>el servidor rechaza la conexión: pide una contraseña y el archivo de contraseñas no tiene ninguna para él</translation>
    </message>
    <message>
        <source>the server refuses: the password of {0} is wrong</source>
        <translation>el servidor rechaza la conexión: la contraseña de {0} no es correcta</translation>
    </message>
    <message>
        <source>the server refuses: it knows no user {0}</source>
        <translation>el servidor rechaza la conexión: no conoce al usuario {0}</translation>
    </message>
    <message>
        <source>the server refuses: it has no database {0}</source>
        <translation>el servidor rechaza la conexión: no tiene la base de datos {0}</translation>
    </message>
    <message>
        <source>the server refuses: {0} may not connect from this computer</source>
        <translation>el servidor rechaza la conexión: {0} no puede conectarse desde este ordenador</translation>
    </message>
    <message>
        <source>the server refuses: it can only be read at present</source>
        <translation>el servidor lo rechaza: por ahora solo se puede leer</translation>
    </message>
    <message>
        <source>the server refuses: this user may not do this ({0})</source>
        <translation>el servidor lo rechaza: este usuario no puede hacerlo ({0})</translation>
    </message>
    <message>
        <source>another transaction was in the way</source>
        <translation>otra transacción lo impidió</translation>
    </message>
    <message>
        <source>another program holds the archive</source>
        <translation>otro programa tiene ocupado el archivo</translation>
    </message>
    <message>
        <source>the disk does not read or write</source>
        <translation>el disco no lee o no escribe</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>no se puede abrir el archivo</translation>
    </message>
    <message>
        <source>the server&apos;s archive has version {0}, this program needs version {1}: the owner of its tables brings it forward with the command ovenwright archive list</source>
        <translation>el archivo del servidor tiene la versión {0} y este programa necesita la {1}: el propietario de sus tablas lo actualiza con la orden ovenwright archive list</translation>
    </message>
    <message>
        <source>the backup {0} cannot be named</source>
        <translation>no se puede dar nombre a la copia de seguridad {0}</translation>
    </message>
    <message>
        <source>there are no bytes {0}</source>
        <translation>no hay bytes {0}</translation>
    </message>
    <message>
        <source>{0} does not hold: verify the archive</source>
        <translation>{0} no es íntegro: hay que comprobar el archivo con archive verify</translation>
    </message>
    <message>
        <source>{0} names bytes that are missing: {1}</source>
        <translation>{0} nombra bytes que faltan: {1}</translation>
    </message>
    <message>
        <source>it has {0} records of the chain {1}, but {2} were moved to it: it has lost records</source>
        <translation>tiene {0} registros de la cadena {1}, pero se le llevaron {2}: ha perdido registros</translation>
    </message>
    <message>
        <source>it has another record {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>tiene un registro {0} distinto del de {1}: uno de los dos se cambió o se continuó desde una copia</translation>
    </message>
    <message>
        <source>it has another note of the printed sheet of {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>tiene una nota de la hoja impresa de {0} distinta de la de {1}: una de las dos se cambió o se continuó desde una copia</translation>
    </message>
    <message>
        <source>it has lost notes of printed sheets that were moved to it, of the chain {0}</source>
        <translation>ha perdido notas de hojas impresas de la cadena {0} que se le llevaron</translation>
    </message>
    <message>
        <source>an id of the archive</source>
        <translation>un identificador del archivo</translation>
    </message>
    <message>
        <source>an id of the archive, or the digest of a log or a record from a sheet</source>
        <translation>un identificador del archivo, o el resumen de un registro o de una medición que está en una hoja</translation>
    </message>
    <message>
        <source>found {0}, expected a closing ]</source>
        <translation>se encontró {0}, se esperaba un ] de cierre</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing ]</source>
        <translation>se encontró {0}, se esperaba una coma o un ] de cierre</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing }</source>
        <translation>se encontró {0}, se esperaba una coma o un } de cierre</translation>
    </message>
    <message>
        <source>found {0}, expected a closing quote</source>
        <translation>se encontró {0}, se esperaban las comillas de cierre</translation>
    </message>
    <message>
        <source>found {0}, expected \\ or / in place of \</source>
        <translation>se encontró {0}, se esperaba \\ o / en lugar de \</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; behind the key</source>
        <translation>se encontró {0}, se esperaba «=» tras la clave</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; and a value</source>
        <translation>se encontró {0}, se esperaba «=» y un valor</translation>
    </message>
    <message>
        <source>found {0}, expected a value</source>
        <translation>se encontró {0}, se esperaba un valor</translation>
    </message>
    <message>
        <source>found {0}, expected the end of the line</source>
        <translation>se encontró {0}, se esperaba el fin de la línea</translation>
    </message>
    <message>
        <source>found {0}, expected a number, true, false, or a text in quotes</source>
        <translation>se encontró {0}, se esperaba un número, true, false o un texto entre comillas</translation>
    </message>
    <message>
        <source>found {0}, expected a key, &quot;=&quot; and a value</source>
        <translation>se encontró {0}, se esperaba una clave, «=» y un valor</translation>
    </message>
    <message>
        <source>the end of the line</source>
        <translation>el fin de la línea</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>el fin del archivo</translation>
    </message>
    <message>
        <source>a control character</source>
        <translation>un carácter de control</translation>
    </message>
    <message>
        <source>a position on the board, 0 to {0} mm</source>
        <translation>una posición en la placa, de 0 a {0} mm</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot;, the name of one and the number of another, expected {1}</source>
        <translation>se encontró el canal «{0}», nombre de uno y número de otro, se esperaba {1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; placed by its name as well</source>
        <translation>también «{0}» colocado por su nombre</translation>
    </message>
    <message>
        <source>a number from {0} to {1}</source>
        <translation>un número de {0} a {1}</translation>
    </message>
    <message>
        <source>a factor above 0</source>
        <translation>un factor mayor que 0</translation>
    </message>
    <message>
        <source>a column from 1</source>
        <translation>una columna desde 1</translation>
    </message>
    <message>
        <source>one character, or &quot;fixed width&quot;</source>
        <translation>un carácter, o «fixed width»</translation>
    </message>
    <message>
        <source>found no log &quot;{0}&quot;, expected a file</source>
        <translation>no se encontró el registro «{0}», se esperaba un archivo</translation>
    </message>
    <message>
        <source>{0}: cannot be read: {1}</source>
        <translation>{0}: no se puede leer: {1}</translation>
    </message>
    <message>
        <source>does not show when the board entered the oven: {0}</source>
        <translation>no muestra cuándo entró la placa en el horno: {0}</translation>
    </message>
    <message>
        <source>it begins at {0}, when the board is in the oven already. Log from before the entry, or give the entry with --entry, on the log&apos;s clock</source>
        <translation>empieza a {0}, cuando la placa ya está en el horno. Registre desde antes de la entrada, o indique la entrada en el reloj del registro</translation>
    </message>
    <message>
        <source>no thermocouple rises by more than {0}. Check that it is the log of a pass through the oven, and that the thermocouples are attached</source>
        <translation>ningún termopar sube más de {0}. Compruebe que es el registro de una pasada por el horno y que los termopares están sujetos</translation>
    </message>
    <message>
        <source>no thermocouple bends upward where the first heated zone would begin. Check that the log, oven and recipe belong together, or give the entry with --entry</source>
        <translation>ningún termopar se curva hacia arriba donde empezaría la primera zona caliente. Compruebe que registro, horno y receta se corresponden, o indique la entrada</translation>
    </message>
    <message>
        <source>has no thermocouple on the board with a trace: all are faulty, or placed in the air by the board&apos;s file</source>
        <translation>no tiene ningún termopar con curva en la placa: todos fallan o están en el aire según el archivo de la placa</translation>
    </message>
    <message>
        <source>a temperature from {0} to {1}</source>
        <translation>una temperatura de {0} a {1}</translation>
    </message>
    <message>
        <source>found {0} columns, expected column {1} that the layout names</source>
        <translation>se encontraron {0} columnas, se esperaba la columna {1} que indica el formato</translation>
    </message>
</context>
</TS>
