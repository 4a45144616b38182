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
        <source>The solder is slow to reach its peak: more time above the liquidus, flux spent.</source>
        <translation>La soldadura tarda en llegar al pico: más tiempo sobre el liquidus, fundente agotado.</translation>
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
</TS>
