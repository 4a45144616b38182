<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>Measures</name>
    <message>
        <source>The largest temperature in the trace.</source>
        <translation>Die größte Temperatur der Kurve.</translation>
    </message>
    <message>
        <source>Time from the last rise through the level to the peak; idle time before the oven does not count.</source>
        <translation>Zeit vom letzten Anstieg durch die Schwelle bis zur Spitze; Wartezeit vor dem Ofen zählt nicht.</translation>
    </message>
    <message>
        <source>Total time with the temperature above the level.</source>
        <translation>Gesamte Zeit mit einer Temperatur über der Schwelle.</translation>
    </message>
    <message>
        <source>Number of stretches of more than 1 s above the level; stretches that are not parted by a fall to 2 °C under the level or lower count as one.</source>
        <translation>Zahl der Abschnitte von mehr als 1 s über der Schwelle; Abschnitte, zwischen denen die Temperatur nicht mindestens 2 °C unter die Schwelle fällt, zählen als einer.</translation>
    </message>
    <message>
        <source>Area between the curve and the level while the curve is above it (heating factor).</source>
        <translation>Fläche zwischen Kurve und Schwelle, solange die Kurve darüber liegt (Heizfaktor).</translation>
    </message>
    <message>
        <source>Total time between the two temperatures up to the peak.</source>
        <translation>Gesamte Zeit zwischen den beiden Temperaturen bis zur Spitze.</translation>
    </message>
    <message>
        <source>Total time at or above the reference (the trace&apos;s own peak, or a temperature) less the offset.</source>
        <translation>Gesamte Zeit auf oder über dem Bezug (der eigenen Spitze oder einer Temperatur) minus dem Abstand.</translation>
    </message>
    <message>
        <source>Largest slope of a straight line fitted to the samples of a window of the stated length, up to the peak.</source>
        <translation>Größte Steigung einer Ausgleichsgeraden durch die Messwerte eines Fensters der genannten Länge, bis zur Spitze.</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them up to the peak.</source>
        <translation>Differenz der beiden Temperaturen geteilt durch die gesamte Zeit zwischen ihnen bis zur Spitze.</translation>
    </message>
    <message>
        <source>Largest downward slope of a straight line fitted to the samples of a window of the stated length, after the peak, as a positive number.</source>
        <translation>Größtes Gefälle einer Ausgleichsgeraden durch die Messwerte eines Fensters der genannten Länge, nach der Spitze, als positive Zahl.</translation>
    </message>
    <message>
        <source>Difference of the two temperatures divided by the total time between them after the peak.</source>
        <translation>Differenz der beiden Temperaturen geteilt durch die gesamte Zeit zwischen ihnen nach der Spitze.</translation>
    </message>
    <message>
        <source>Temperature at a time of the log, at a position in the oven, or at the end of a zone.</source>
        <translation>Temperatur zu einer Zeit des Logs, an einer Stelle im Ofen oder am Ende einer Zone.</translation>
    </message>
    <message>
        <source>Temperature when the placement leaves the last zone; where no oven is given, of the last sample.</source>
        <translation>Temperatur, wenn die Messstelle die letzte Zone verlässt; ohne Ofen die des letzten Messwerts.</translation>
    </message>
    <message>
        <source>Largest minus smallest peak over the board.</source>
        <translation>Größte minus kleinste Spitze auf der Baugruppe.</translation>
    </message>
    <message>
        <source>Largest minus smallest temperature over the board when the first trace rises through the level.</source>
        <translation>Größte minus kleinste Temperatur auf der Baugruppe, wenn die erste Kurve durch die Schwelle steigt.</translation>
    </message>
    <message>
        <source>Largest difference over the board at one moment, while the coldest trace is not past its own peak.</source>
        <translation>Größter Unterschied auf der Baugruppe in einem Moment, solange die kälteste Kurve ihre Spitze nicht hinter sich hat.</translation>
    </message>
    <message>
        <source>Time between the first and the last trace&apos;s first rise through the level.</source>
        <translation>Zeit zwischen dem ersten Anstieg der ersten und dem der letzten Kurve durch die Schwelle.</translation>
    </message>
    <message>
        <source>Temperature where the wave starts.</source>
        <translation>Temperatur, wo die Welle beginnt.</translation>
    </message>
    <message>
        <source>First peak in the wave minus the preheat temperature (thermal shock).</source>
        <translation>Erste Spitze in der Welle minus Vorwärmtemperatur (Temperaturschock).</translation>
    </message>
    <message>
        <source>Total time of all contacts with the solder.</source>
        <translation>Gesamte Zeit aller Berührungen mit dem Lot.</translation>
    </message>
    <message>
        <source>Time of the longest single contact with the solder.</source>
        <translation>Zeit der längsten einzelnen Berührung mit dem Lot.</translation>
    </message>
</context>
<context>
    <name>requirement</name>
    <message>
        <source>peak</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>steepest rise</source>
        <translation>steilster Anstieg</translation>
    </message>
    <message>
        <source>steepest fall</source>
        <translation>steilster Abfall</translation>
    </message>
    <message>
        <source>spread of peaks</source>
        <translation>Unterschied der Spitzen</translation>
    </message>
    <message>
        <source>soak time</source>
        <translation>Durchwärmzeit</translation>
    </message>
    <message>
        <source>time above liquidus</source>
        <translation>Haltezeit über Liquidus</translation>
    </message>
    <message>
        <source>ramp to soak</source>
        <translation>Anstieg zum Durchwärmen</translation>
    </message>
    <message>
        <source>excursions above liquidus</source>
        <translation>Anstiege über Liquidus</translation>
    </message>
    <message>
        <source>cooling from liquidus</source>
        <translation>Abkühlen ab Liquidus</translation>
    </message>
    <message>
        <source>top side joints stay solid</source>
        <translation>Lötstellen oben bleiben fest</translation>
    </message>
    <message>
        <source>step into the wave</source>
        <translation>Sprung in die Welle</translation>
    </message>
    <message>
        <source>preheat temperature</source>
        <translation>Vorwärmtemperatur</translation>
    </message>
    <message>
        <source>preheat rise</source>
        <translation>Anstieg im Vorwärmen</translation>
    </message>
    <message>
        <source>main wave contact</source>
        <translation>Kontakt der Hauptwelle</translation>
    </message>
    <message>
        <source>longest contact</source>
        <translation>längster Kontakt</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>Kontaktzeit</translation>
    </message>
    <message>
        <source>25 °C to peak</source>
        <translation>25 °C bis Spitze</translation>
    </message>
    <message>
        <source>body time near Tc</source>
        <translation>Gehäuse: Zeit nahe Tc</translation>
    </message>
    <message>
        <source>body time above liquidus</source>
        <translation>Gehäuse: Zeit über Liquidus</translation>
    </message>
    <message>
        <source>body soak time</source>
        <translation>Gehäuse: Durchwärmzeit</translation>
    </message>
    <message>
        <source>body ramp-up</source>
        <translation>Gehäuse: Anstieg</translation>
    </message>
    <message>
        <source>body ramp-down</source>
        <translation>Gehäuse: Abfall</translation>
    </message>
    <message>
        <source>body peak</source>
        <translation>Gehäuse: Spitze</translation>
    </message>
    <message>
        <source>body 25 °C to peak</source>
        <translation>Gehäuse: 25 °C bis Spitze</translation>
    </message>
    <message>
        <source>time near peak</source>
        <translation>Zeit nahe der Spitze</translation>
    </message>
    <message>
        <source>time above 217</source>
        <translation>Zeit über 217</translation>
    </message>
    <message>
        <source>spread at 217</source>
        <translation>Unterschied bei 217</translation>
    </message>
    <message>
        <source>peak of bodies</source>
        <translation>Spitze der Gehäuse</translation>
    </message>
    <message>
        <source>largest spread in soak</source>
        <translation>größter Unterschied beim Durchwärmen</translation>
    </message>
    <message>
        <source>lag at 217</source>
        <translation>Nachlauf bei 217</translation>
    </message>
</context>
<context>
    <name>risk</name>
    <message>
        <source>The solder may melt only in part: balls and paste that do not run together, poor wetting, a joint that looks dull or grainy and breaks early.</source>
        <translation>Das Lot schmilzt vielleicht nur zum Teil: Kugeln und Paste, die nicht zusammenlaufen, schlechte Benetzung, eine matte oder körnige Lötstelle, die früh bricht.</translation>
    </message>
    <message>
        <source>Laminate, connectors and parts see more heat than they are made for: warping, discolouring, delamination, and a thicker brittle layer in the joint.</source>
        <translation>Leiterplatte, Stecker und Bauteile bekommen mehr Wärme, als sie vertragen: Verzug, Verfärbung, Delamination und eine dickere spröde Schicht in der Lötstelle.</translation>
    </message>
    <message>
        <source>The board heats faster than its heavy parts can follow: large differences over the board at the peak.</source>
        <translation>Die Baugruppe wird schneller heiß, als ihre schweren Teile folgen: große Unterschiede auf der Baugruppe an der Spitze.</translation>
    </message>
    <message>
        <source>Flux is spent and surfaces oxidise before the solder melts, and parts stay hot longer than they were classified for.</source>
        <translation>Flussmittel ist verbraucht und Flächen oxidieren, bevor das Lot schmilzt, und Bauteile bleiben länger heiß, als sie klassifiziert sind.</translation>
    </message>
    <message>
        <source>Too little time for the solder to wet and to run together: weak or open joints, mostly under heavy parts; wetting and voids change with this time.</source>
        <translation>Zu wenig Zeit, damit das Lot benetzt und zusammenläuft: schwache oder offene Lötstellen, meist unter schweren Bauteilen; Benetzung und Poren ändern sich mit dieser Zeit.</translation>
    </message>
    <message>
        <source>The intermetallic layer grows fast while the solder is liquid, and a thick one is brittle; parts and laminate are stressed by heat.</source>
        <translation>Die intermetallische Schicht wächst schnell, solange das Lot flüssig ist, und eine dicke ist spröde; Bauteile und Leiterplatte werden durch Wärme belastet.</translation>
    </message>
    <message>
        <source>The solder does not melt as often as the process means it to.</source>
        <translation>Das Lot schmilzt nicht so oft, wie es der Prozess vorsieht.</translation>
    </message>
    <message>
        <source>The solder melts, freezes and melts again in one pass: disturbed joints, and parts that move.</source>
        <translation>Das Lot schmilzt, erstarrt und schmilzt noch einmal in einem Durchgang: gestörte Lötstellen und Bauteile, die sich bewegen.</translation>
    </message>
    <message>
        <source>Too little heat above the liquidus: incomplete wetting and early failure under vibration.</source>
        <translation>Zu wenig Wärme über Liquidus: unvollständige Benetzung und frühes Versagen bei Vibration.</translation>
    </message>
    <message>
        <source>Too much heat above the liquidus: a thick intermetallic layer and early failure under vibration.</source>
        <translation>Zu viel Wärme über Liquidus: eine dicke intermetallische Schicht und frühes Versagen bei Vibration.</translation>
    </message>
    <message>
        <source>Solvent is still in the paste when it melts and heavy parts lag behind: spatter, voids, large differences over the board.</source>
        <translation>Beim Schmelzen ist noch Lösemittel in der Paste, und schwere Bauteile hängen nach: Spritzer, Poren, große Unterschiede auf der Baugruppe.</translation>
    </message>
    <message>
        <source>Flux is spent and powder and pads oxidise before the solder melts: poor wetting, balls that do not run together.</source>
        <translation>Flussmittel ist verbraucht, Pulver und Pads oxidieren, bevor das Lot schmilzt: schlechte Benetzung, Kugeln, die nicht zusammenlaufen.</translation>
    </message>
    <message>
        <source>The coldest joints have little time at full temperature: incomplete wetting.</source>
        <translation>Die kältesten Lötstellen haben wenig Zeit bei voller Temperatur: unvollständige Benetzung.</translation>
    </message>
    <message>
        <source>Parts stay near their highest temperature longer than they were classified for.</source>
        <translation>Bauteile bleiben länger nahe ihrer höchsten Temperatur, als sie klassifiziert sind.</translation>
    </message>
    <message>
        <source>The board heats slowly: the time is lacking later, or the belt must be slower.</source>
        <translation>Die Baugruppe wird langsam heiß: Die Zeit fehlt später, oder das Band muss langsamer laufen.</translation>
    </message>
    <message>
        <source>Paste slumps and spatters, solder balls form, and ceramic parts can crack; parts are classified up to 3 °C/s.</source>
        <translation>Paste verläuft und spritzt, Lotkugeln entstehen, Keramikbauteile können reißen; Bauteile sind bis 3 °C/s klassifiziert.</translation>
    </message>
    <message>
        <source>Slow heating: below the melting point flux is spent and surfaces oxidise, above it the solder stays liquid longer.</source>
        <translation>Langsames Erwärmen: unter dem Schmelzpunkt ist das Flussmittel verbraucht und die Oberflächen oxidieren, darüber bleibt das Lot länger flüssig.</translation>
    </message>
    <message>
        <source>Joints that were made before melt again: parts shift or drop off, and the joints are disturbed.</source>
        <translation>Bereits gefertigte Lötstellen schmelzen erneut: Bauteile verrutschen oder fallen ab, und die Lötstellen sind gestört.</translation>
    </message>
    <message>
        <source>The joint took up too little heat: solder does not wet it or does not rise in the hole.</source>
        <translation>Die Lötstelle hat zu wenig Wärme aufgenommen: Das Lot benetzt sie nicht oder steigt nicht im Loch auf.</translation>
    </message>
    <message>
        <source>Ceramic parts can crack, the board bends, and the solvent of the flux boils and spatters.</source>
        <translation>Keramische Bauteile können reißen, die Leiterplatte verbiegt sich, und das Lösungsmittel des Flussmittels kocht und spritzt.</translation>
    </message>
    <message>
        <source>Parts follow unevenly and are bent or cracked by heat; parts are classified up to 3 °C/s.</source>
        <translation>Bauteile folgen ungleich und werden durch Wärme verbogen oder rissig; sie sind bis 3 °C/s klassifiziert.</translation>
    </message>
    <message>
        <source>The solder freezes slowly: coarse grain, a thicker intermetallic layer, parts that can still move.</source>
        <translation>Das Lot erstarrt langsam: grobes Korn, eine dickere intermetallische Schicht, Bauteile, die sich noch bewegen können.</translation>
    </message>
    <message>
        <source>Thermal shock: cracks in ceramic parts and joints, warped boards; parts are classified up to 6 °C/s.</source>
        <translation>Temperaturschock: Risse in Keramikbauteilen und Lötstellen, verzogene Baugruppen; Bauteile sind bis 6 °C/s klassifiziert.</translation>
    </message>
    <message>
        <source>The board is colder here than the process means it to be; what follows starts late.</source>
        <translation>Die Baugruppe ist hier kälter, als der Prozess vorsieht; was folgt, beginnt spät.</translation>
    </message>
    <message>
        <source>The board is hotter here than the process means it to be; what follows starts early.</source>
        <translation>Die Baugruppe ist hier heißer, als der Prozess vorsieht; was folgt, beginnt früh.</translation>
    </message>
    <message>
        <source>The board cools further inside the oven than it needs to.</source>
        <translation>Die Baugruppe kühlt im Ofen weiter ab als nötig.</translation>
    </message>
    <message>
        <source>The board leaves hot: solder can still be soft when it is handled, and people can be burnt.</source>
        <translation>Die Baugruppe kommt heiß heraus: Das Lot kann noch weich sein, wenn sie angefasst wird, und Menschen können sich verbrennen.</translation>
    </message>
    <message>
        <source>The peaks lie closer together than the process means them to.</source>
        <translation>Die Spitzen liegen näher beieinander, als der Prozess vorsieht.</translation>
    </message>
    <message>
        <source>One recipe can hardly serve both ends: the coldest joint is too cold or the hottest part too hot. 10 °C is a usual target.</source>
        <translation>Ein Rezept kann kaum beiden Enden genügen: Die kälteste Lötstelle ist zu kalt oder das heißeste Bauteil zu heiß. 10 °C sind ein übliches Ziel.</translation>
    </message>
    <message>
        <source>The board is more even here than the process means it to be.</source>
        <translation>Die Baugruppe ist hier gleichmäßiger, als der Prozess vorsieht.</translation>
    </message>
    <message>
        <source>The solder melts at one end of a part or board while the other is still solid: chip parts stand up, large parts tilt.</source>
        <translation>Das Lot schmilzt an einem Ende eines Bauteils oder der Baugruppe, während das andere noch fest ist: Chip-Bauteile stellen sich auf, große kippen.</translation>
    </message>
    <message>
        <source>The board is more even than the process means it to be.</source>
        <translation>Die Baugruppe ist gleichmäßiger, als der Prozess vorsieht.</translation>
    </message>
    <message>
        <source>Uneven heat bends the board and leaves heavy parts behind at the peak.</source>
        <translation>Ungleiche Wärme verbiegt die Baugruppe und lässt schwere Bauteile an der Spitze zurück.</translation>
    </message>
    <message>
        <source>The traces melt closer together than the process means them to.</source>
        <translation>Die Kurven schmelzen näher beieinander, als der Prozess vorsieht.</translation>
    </message>
    <message>
        <source>The last joints melt long after the first: the first are too long liquid when the last have had enough.</source>
        <translation>Die letzten Lötstellen schmelzen lange nach den ersten: Die ersten sind zu lange flüssig, wenn die letzten genug haben.</translation>
    </message>
    <message>
        <source>Flux is not active and the step into the solder is large: poor hole fill, bridges, cracked ceramics.</source>
        <translation>Flussmittel ist nicht aktiv und der Sprung ins Lot ist groß: schlechter Lochdurchstieg, Brücken, gerissene Keramik.</translation>
    </message>
    <message>
        <source>Flux is spent before the wave, and joints on the top side come near their melting point.</source>
        <translation>Flussmittel ist vor der Welle verbraucht, und Lötstellen der Oberseite kommen ihrem Schmelzpunkt nahe.</translation>
    </message>
    <message>
        <source>The step into the solder is smaller than the process means it to be: flux may be spent by a hot preheat.</source>
        <translation>Der Sprung ins Lot ist kleiner, als der Prozess vorsieht: Flussmittel kann durch heißes Vorwärmen verbraucht sein.</translation>
    </message>
    <message>
        <source>Thermal shock: ceramic capacitors crack when they enter the solder too cold.</source>
        <translation>Temperaturschock: Keramikkondensatoren reißen, wenn sie zu kalt ins Lot kommen.</translation>
    </message>
    <message>
        <source>Too little contact: holes are not filled, pads not wetted.</source>
        <translation>Zu wenig Kontakt: Löcher füllen sich nicht, Pads werden nicht benetzt.</translation>
    </message>
    <message>
        <source>Too much contact: copper and pads dissolve, solder bridges, parts take damage.</source>
        <translation>Zu viel Kontakt: Kupfer und Pads lösen sich, Lötbrücken, beschädigte Bauteile.</translation>
    </message>
    <message>
        <source>Too much contact in one wave: copper and pads dissolve, parts take damage.</source>
        <translation>Zu viel Kontakt in einer Welle: Kupfer und Pads lösen sich, beschädigte Bauteile.</translation>
    </message>
    <message>
        <source>The package is hotter than it was classified for: moisture inside can lift its layers apart or crack it.</source>
        <translation>Das Gehäuse ist heißer, als es klassifiziert ist: Feuchte darin kann seine Schichten abheben oder es sprengen.</translation>
    </message>
</context>
<context>
    <name>source</name>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
</context>
<context>
    <name>LotRules</name>
    <message>
        <source>1 point beyond 3 sigma</source>
        <translation>1 Punkt jenseits von 3 Sigma</translation>
    </message>
    <message>
        <source>2 of 3 points in a row beyond 2 sigma on one side</source>
        <translation>2 von 3 aufeinanderfolgenden Punkten jenseits von 2 Sigma auf einer Seite</translation>
    </message>
    <message>
        <source>4 of 5 points in a row beyond 1 sigma on one side</source>
        <translation>4 von 5 aufeinanderfolgenden Punkten jenseits von 1 Sigma auf einer Seite</translation>
    </message>
    <message>
        <source>8 points in a row on one side of the centre</source>
        <translation>8 Punkte in Folge auf einer Seite der Mittellinie</translation>
    </message>
    <message>
        <source>9 points in a row on one side of the centre</source>
        <translation>9 Punkte in Folge auf einer Seite der Mittellinie</translation>
    </message>
    <message>
        <source>6 points in a row rising or falling</source>
        <translation>6 Punkte in Folge steigend oder fallend</translation>
    </message>
    <message>
        <source>14 points in a row alternating up and down</source>
        <translation>14 Punkte in Folge abwechselnd auf und ab</translation>
    </message>
    <message>
        <source>15 points in a row within 1 sigma of the centre</source>
        <translation>15 Punkte in Folge innerhalb von 1 Sigma um die Mitte</translation>
    </message>
    <message>
        <source>8 points in a row beyond 1 sigma, on both sides</source>
        <translation>8 Punkte in Folge jenseits von 1 Sigma, auf beiden Seiten</translation>
    </message>
</context>
<context>
    <name>phrase</name>
    <message>
        <source>No unit in the file: read as °C. As °F the top would be {0} °C.</source>
        <translation>Keine Einheit in der Datei: als °C gelesen. Als °F läge der höchste Wert bei {0} °C.</translation>
    </message>
    <message>
        <source>No unit in the file: read as thermocouple voltage in mV. As °C the top would be {0} °C.</source>
        <translation>Keine Einheit in der Datei: als Thermospannung in mV gelesen. Als °C läge der höchste Wert bei {0} °C.</translation>
    </message>
    <message>
        <source>No unit in the file: read as °F, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>Keine Einheit in der Datei: als °F gelesen, damit liegt der höchste Wert bei {0} °C. Als °C wären es {1} °C.</translation>
    </message>
    <message>
        <source>No unit in the file: read as K, which makes the top {0} °C. As °C it would be {1} °C.</source>
        <translation>Keine Einheit in der Datei: als K gelesen, damit liegt der höchste Wert bei {0} °C. Als °C wären es {1} °C.</translation>
    </message>
    <message>
        <source>Whole numbers up to {0} are no temperatures of a board: read as tenths of a degree, though no scale is stated.</source>
        <translation>Ganze Zahlen bis {0} sind keine Temperaturen einer Baugruppe: als Zehntelgrad gelesen, obwohl kein Maßstab angegeben ist.</translation>
    </message>
    <message>
        <source>A factor of {0} is stated, but the numbers are temperatures as they stand: taken as the resolution.</source>
        <translation>Ein Faktor {0} ist angegeben, die Zahlen sind aber schon so Temperaturen: als Auflösung verstanden.</translation>
    </message>
    <message>
        <source>No type of thermocouple is stated: taken as K, the most common one.</source>
        <translation>Kein Thermoelementtyp angegeben: Typ K angenommen, der häufigste.</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts near 0 mV: taken as 25 °C.</source>
        <translation>Keine Vergleichsstelle angegeben, und das Log beginnt nahe 0 mV: 25 °C angenommen.</translation>
    </message>
    <message>
        <source>No cold junction is stated, and the log starts at the voltage of a room&apos;s temperature: taken as 0 °C.</source>
        <translation>Keine Vergleichsstelle angegeben, und das Log beginnt bei der Spannung einer Raumtemperatur: 0 °C angenommen.</translation>
    </message>
    <message>
        <source>The unit of the interval is not stated: read as {0} s.</source>
        <translation>Die Einheit des Abstands ist nicht angegeben: als {0} s gelesen.</translation>
    </message>
    <message>
        <source>No unit of time is stated: the numbers are read as fractions of a day, which makes the run last {0}.</source>
        <translation>Keine Zeiteinheit angegeben: die Zahlen sind als Bruchteile eines Tages gelesen, der Lauf dauert damit {0}.</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as milliseconds, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>Keine Zeiteinheit angegeben: als Millisekunden gelesen, der Lauf dauert damit {0}; als Sekunden wären es {1}.</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as minutes, which makes the run last {0}; as seconds it would last {1}.</source>
        <translation>Keine Zeiteinheit angegeben: als Minuten gelesen, der Lauf dauert damit {0}; als Sekunden wären es {1}.</translation>
    </message>
    <message>
        <source>Nothing says what the first column counts: read as seconds.</source>
        <translation>Nichts sagt, was die erste Spalte zählt: als Sekunden gelesen.</translation>
    </message>
    <message>
        <source>Times of two parts are read as hours and minutes, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>Zeiten aus zwei Teilen sind als Stunden und Minuten gelesen, der Lauf dauert damit {0}; andernfalls wären es {1}.</translation>
    </message>
    <message>
        <source>Times of two parts are read as minutes and seconds, which makes the run last {0}; the other way it would last {1}.</source>
        <translation>Zeiten aus zwei Teilen sind als Minuten und Sekunden gelesen, der Lauf dauert damit {0}; andernfalls wären es {1}.</translation>
    </message>
    <message>
        <source>The date may be read in more than one order, and nothing in the file settles it: read as {0}. Durations do not depend on it.</source>
        <translation>Das Datum lässt mehr als eine Reihenfolge zu, und nichts in der Datei entscheidet: gelesen als {0}. Dauern hängen nicht davon ab.</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: the rows are spread evenly, {1} s apart.</source>
        <translation>Zeiten sind auf {0} s gerundet, und mehrere Zeilen tragen dieselbe: die Zeilen sind gleichmäßig verteilt, {1} s auseinander.</translation>
    </message>
    <message>
        <source>Times are rounded to {0} s and several rows carry the same: they are not evenly apart, so those of one time are spread over it.</source>
        <translation>Zeiten sind auf {0} s gerundet, und mehrere Zeilen tragen dieselbe: sie liegen nicht gleichmäßig, daher sind die einer Zeit über diese verteilt.</translation>
    </message>
    <message>
        <source>Numbers such as {0} may have a decimal sign or thousands in them, and nothing in the file settles it: read with &apos;{1}&apos; as the decimal sign.</source>
        <translation>Zahlen wie {0} können ein Dezimalzeichen oder Tausender enthalten, und nichts in der Datei entscheidet: mit „{1}“ als Dezimalzeichen gelesen.</translation>
    </message>
    <message>
        <source>More than one encoding is plausible: read as {0}. Numbers do not depend on it.</source>
        <translation>Mehr als eine Zeichenkodierung ist denkbar: gelesen als {0}. Zahlen hängen nicht davon ab.</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its voltage, type {1}, is turned about a reference junction at {2} °C. The result is off by twice what the junction differs from that.</source>
        <translation>Die Drähte von {0} sind vertauscht: seine Spannung, Typ {1}, ist um eine Vergleichsstelle bei {2} °C umgekehrt. Das Ergebnis weicht um das Doppelte dessen ab, was die Vergleichsstelle davon abweicht.</translation>
    </message>
    <message>
        <source>The wires of {0} are exchanged: its readings are mirrored at {1} °C. The result is off by twice what the reference junction differs from that.</source>
        <translation>Die Drähte von {0} sind vertauscht: seine Messwerte sind an {1} °C gespiegelt. Das Ergebnis weicht um das Doppelte dessen ab, was die Vergleichsstelle davon abweicht.</translation>
    </message>
    <message>
        <source>No unit of time is stated: read as seconds, which makes the run last {0}.</source>
        <translation>Keine Zeiteinheit angegeben: als Sekunden gelesen, der Lauf dauert damit {0}.</translation>
    </message>
    <message>
        <source>The date goes on from day to day only if read in the order {0}.</source>
        <translation>Das Datum läuft nur in der Reihenfolge {0} von Tag zu Tag weiter.</translation>
    </message>
    <message>
        <source>{0} states no unit; read in that of the other channels.</source>
        <translation>{0} nennt keine Einheit; in der der anderen Kanäle gelesen.</translation>
    </message>
    <message>
        <source>{0} channels state no unit; read in that of the other channels.</source>
        <translation>{0} Kanäle nennen keine Einheit; in der der anderen Kanäle gelesen.</translation>
    </message>
    <message>
        <source>No unit is stated and no channel has a reading.</source>
        <translation>Keine Einheit angegeben, und kein Kanal hat einen Messwert.</translation>
    </message>
    <message>
        <source>Units differ between channels: {0}.</source>
        <translation>Die Kanäle haben verschiedene Einheiten: {0}.</translation>
    </message>
    <message>
        <source>Rows are {0} s apart by &quot;{1}&quot;.</source>
        <translation>Zeilen liegen {0} s auseinander, nach „{1}“.</translation>
    </message>
    <message>
        <source>The clock passes midnight: times go on.</source>
        <translation>Die Uhr läuft über Mitternacht: die Zeiten laufen weiter.</translation>
    </message>
    <message>
        <source>The clock passes twelve: times go on.</source>
        <translation>Die Uhr läuft über zwölf: die Zeiten laufen weiter.</translation>
    </message>
    <message>
        <source>{0} is read with the sign of its voltage turned: its wires are exchanged.</source>
        <translation>{0} ist mit umgekehrtem Vorzeichen der Spannung gelesen: seine Drähte sind vertauscht.</translation>
    </message>
    <message>
        <source>Read from sheet {0}; also in the file: {1}.</source>
        <translation>Aus dem Blatt {0} gelesen; außerdem in der Datei: {1}.</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log; also in the file: {0}.</source>
        <translation>Aus der Tabelle gelesen, die einem Log am ähnlichsten ist; außerdem in der Datei: {0}.</translation>
    </message>
    <message>
        <source>Read from the table that looks most like a log of {0}.</source>
        <translation>Aus der von {0} Tabellen gelesen, die einem Log am ähnlichsten ist.</translation>
    </message>
    <message>
        <source>the archive holds {0} and also {1}, not read</source>
        <translation>das Archiv enthält {0} und außerdem {1}, nicht gelesen</translation>
    </message>
    <message>
        <source>of more than {0} files in the archive only the first {1} were looked at</source>
        <translation>von mehr als {0} Dateien im Archiv sind nur die ersten {1} betrachtet</translation>
    </message>
    <message>
        <source>{0} bytes behind the gzip data were not read</source>
        <translation>{0} Bytes hinter den gzip-Daten sind nicht gelesen</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;: {1} formulas have no stored result and count as empty; a spreadsheet program stores them when it saves the workbook</source>
        <translation>Blatt „{0}“: {1} Formeln haben kein gespeichertes Ergebnis und gelten als leer; ein Tabellenprogramm speichert sie, wenn es die Arbeitsmappe speichert</translation>
    </message>
    <message>
        <source>The last row is cut off and was left out.</source>
        <translation>Die letzte Zeile ist abgeschnitten und wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{0} rows end before the last column: what is missing there counts as no reading.</source>
        <translation>{0} Zeilen enden vor der letzten Spalte: was dort fehlt, gilt als kein Messwert.</translation>
    </message>
    <message>
        <source>1 header or text line in or behind the table was left out.</source>
        <translation>1 Kopf- oder Textzeile in oder hinter der Tabelle wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{0} header or text lines in or behind the table were left out.</source>
        <translation>{0} Kopf- oder Textzeilen in oder hinter der Tabelle wurden ausgelassen.</translation>
    </message>
    <message>
        <source>1 labelled line in or behind the table was left out.</source>
        <translation>1 beschriftete Zeile in oder hinter der Tabelle wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{0} labelled lines in or behind the table were left out.</source>
        <translation>{0} beschriftete Zeilen in oder hinter der Tabelle wurden ausgelassen.</translation>
    </message>
    <message>
        <source>1 comment or event line in or behind the table was left out.</source>
        <translation>1 Kommentar- oder Ereigniszeile in oder hinter der Tabelle wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{0} comment or event lines in or behind the table were left out.</source>
        <translation>{0} Kommentar- oder Ereigniszeilen in oder hinter der Tabelle wurden ausgelassen.</translation>
    </message>
    <message>
        <source>{0} rows of numbers behind the table go back in time and were left out.</source>
        <translation>{0} Zeilen mit Zahlen hinter der Tabelle laufen in der Zeit zurück und wurden ausgelassen.</translation>
    </message>
    <message>
        <source>Decimals are written with a point in {0} and with a comma in {1} columns: each is read by its own.</source>
        <translation>Dezimalzahlen haben in {0} Spalten einen Punkt und in {1} ein Komma: jede ist nach ihrem Zeichen gelesen.</translation>
    </message>
    <message>
        <source>Decimal commas stand without quotes between the commas of the delimiter; the counts of fields allow one reading.</source>
        <translation>Dezimalkommas stehen ohne Anführungszeichen zwischen den Kommas des Trennzeichens; die Zahl der Felder lässt eine Lesart zu.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone and stands at its temperature throughout.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es heißt wie eine Zone und steht durchgehend auf deren Temperatur.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its unit is &quot;{1}&quot;, none of temperature.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: seine Einheit ist „{1}“, keine der Temperatur.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: its values are no temperatures.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: seine Werte sind keine Temperaturen.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: no unit of temperature stands there and it never changes.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: dort steht keine Temperatureinheit, und es ändert sich nie.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it stays far below the others.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es bleibt weit unter den anderen.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is a statistic of {1}.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es ist ein Kennwert von {1}.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it holds a few small whole numbers, as flags do.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es enthält wenige kleine ganze Zahlen, wie Kennzeichen.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a zone, though it moves as the board does.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es heißt wie eine Zone, verläuft aber wie die Baugruppe.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it is named like a statistic, and is the highest, lowest or mean of the channels.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es heißt wie ein Kennwert und ist das Höchste, Tiefste oder Mittel der Kanäle.</translation>
    </message>
    <message>
        <source>zones are by the oven model, which follows this log within {0} °C (root mean square)</source>
        <translation>Zonen nach dem Ofenmodell, das diesem Log auf {0} °C folgt (quadratisches Mittel)</translation>
    </message>
    <message>
        <source>zones are a first estimate from setpoints and curves: the oven model does not fit ({0})</source>
        <translation>Zonen sind eine erste Schätzung aus Sollwerten und Kurven: das Ofenmodell passt nicht ({0})</translation>
    </message>
    <message>
        <source>stands at {0} °C</source>
        <translation>steht auf {0} °C</translation>
    </message>
    <message>
        <source>suspected: follows the air more than the other traces do</source>
        <translation>Verdacht: folgt der Luft mehr als die anderen Kurven</translation>
    </message>
    <message>
        <source>suspected: swapped with {0}</source>
        <translation>Verdacht: mit {0} vertauscht</translation>
    </message>
    <message>
        <source>all traces step by {0} °C</source>
        <translation>alle Kurven springen um {0} °C</translation>
    </message>
    <message>
        <source>{0} samples, fewer than the 3 of a trace</source>
        <translation>{0} Messwerte, weniger als die 3 einer Kurve</translation>
    </message>
    <message>
        <source>no row with a usable time</source>
        <translation>keine Zeile mit einer brauchbaren Zeit</translation>
    </message>
    <message>
        <source>1 row without a time later than the row before</source>
        <translation>1 Zeile ohne spätere Zeit als die Zeile davor</translation>
    </message>
    <message>
        <source>{0} rows without a time later than the row before</source>
        <translation>{0} Zeilen ohne spätere Zeit als die Zeile davor</translation>
    </message>
    <message>
        <source>falls as the others rise</source>
        <translation>fällt, während die anderen steigen</translation>
    </message>
    <message>
        <source>a log</source>
        <translation>ein Log</translation>
    </message>
    <message>
        <source>a log of many samples</source>
        <translation>ein Log mit vielen Messwerten</translation>
    </message>
    <message>
        <source>a table of times and temperatures</source>
        <translation>eine Tabelle aus Zeiten und Temperaturen</translation>
    </message>
    <message>
        <source>a column of temperatures</source>
        <translation>eine Spalte mit Temperaturen</translation>
    </message>
    <message>
        <source>a column of times, or an interval</source>
        <translation>eine Spalte mit Zeiten oder ein Abstand</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>eine Zeit</translation>
    </message>
    <message>
        <source>a time with a decimal point</source>
        <translation>eine Zeit mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a time with a decimal comma</source>
        <translation>eine Zeit mit Dezimalkomma</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>times</source>
        <translation>Zeiten</translation>
    </message>
    <message>
        <source>times that go on</source>
        <translation>Zeiten, die weiterlaufen</translation>
    </message>
    <message>
        <source>time, channel and value</source>
        <translation>Zeit, Kanal und Wert</translation>
    </message>
    <message>
        <source>seconds above 0</source>
        <translation>Sekunden über 0</translation>
    </message>
    <message>
        <source>°C, °F, K or mV</source>
        <translation>°C, °F, K oder mV</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>eine Datei</translation>
    </message>
    <message>
        <source>a whole gzip file</source>
        <translation>eine vollständige gzip-Datei</translation>
    </message>
    <message>
        <source>a whole zip archive</source>
        <translation>ein vollständiges zip-Archiv</translation>
    </message>
    <message>
        <source>a whole .xlsx workbook</source>
        <translation>eine vollständige .xlsx-Arbeitsmappe</translation>
    </message>
    <message>
        <source>a zip archive with a log in it</source>
        <translation>ein zip-Archiv mit einem Log darin</translation>
    </message>
    <message>
        <source>a text log, a workbook or an HTML table</source>
        <translation>ein Text-Log, eine Arbeitsmappe oder eine HTML-Tabelle</translation>
    </message>
    <message>
        <source>a workbook (.xlsx, .ods), an HTML table or a text log</source>
        <translation>eine Arbeitsmappe (.xlsx, .ods), eine HTML-Tabelle oder ein Text-Log</translation>
    </message>
    <message>
        <source>one with a table of readings</source>
        <translation>eines mit einer Tabelle von Messwerten</translation>
    </message>
    <message>
        <source>one that can be read without</source>
        <translation>eine, die sich ohne lesen lässt</translation>
    </message>
    <message>
        <source>numbers with a decimal point, or another delimiter</source>
        <translation>Zahlen mit Dezimalpunkt oder ein anderes Trennzeichen</translation>
    </message>
    <message>
        <source>1 cell</source>
        <translation>1 Zelle</translation>
    </message>
    <message>
        <source>{0} cells</source>
        <translation>{0} Zellen</translation>
    </message>
    <message>
        <source>binary data (byte {0} at offset {1})</source>
        <translation>Binärdaten (Byte {0} an Stelle {1})</translation>
    </message>
    <message>
        <source>bytes that {0} does not allow</source>
        <translation>Bytes, die {0} nicht erlaubt</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls) or one with a password</source>
        <translation>eine Arbeitsmappe der alten binären Art (.xls) oder eine mit Kennwort</translation>
    </message>
    <message>
        <source>a PDF document</source>
        <translation>ein PDF-Dokument</translation>
    </message>
    <message>
        <source>about {0} rows of {1} numbers</source>
        <translation>etwa {0} Zeilen mit je {1} Zahlen</translation>
    </message>
    <message>
        <source>at most {0} channels</source>
        <translation>höchstens {0} Kanäle</translation>
    </message>
    <message>
        <source>at most {0} numbers in a log</source>
        <translation>höchstens {0} Zahlen in einem Log</translation>
    </message>
    <message>
        <source>text in {0}</source>
        <translation>Text in {0}</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>eine leere Datei</translation>
    </message>
    <message>
        <source>a header and no rows behind it</source>
        <translation>eine Kopfzeile ohne Zeilen dahinter</translation>
    </message>
    <message>
        <source>one sample</source>
        <translation>ein Messwert</translation>
    </message>
    <message>
        <source>no sample</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>the same time in every row</source>
        <translation>dieselbe Zeit in jeder Zeile</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>ein Ordner</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation>abgeschnitten</translation>
    </message>
    <message>
        <source>an HTML document without a table</source>
        <translation>ein HTML-Dokument ohne Tabelle</translation>
    </message>
    <message>
        <source>a workbook with a password</source>
        <translation>eine Arbeitsmappe mit Kennwort</translation>
    </message>
    <message>
        <source>{0} channels</source>
        <translation>{0} Kanäle</translation>
    </message>
    <message>
        <source>found nothing but blanks, expected a log</source>
        <translation>nur Leerzeichen gefunden, ein Log erwartet</translation>
    </message>
    <message>
        <source>found no table, expected one of times and temperatures</source>
        <translation>keine Tabelle gefunden, eine aus Zeiten und Temperaturen erwartet</translation>
    </message>
    <message>
        <source>found no column of temperatures, expected one at least</source>
        <translation>keine Spalte mit Temperaturen gefunden, mindestens eine erwartet</translation>
    </message>
    <message>
        <source>found no column of times and no stated interval, expected times, or an interval in seconds between rows</source>
        <translation>weder eine Spalte mit Zeiten noch ein angegebener Abstand gefunden; Zeiten oder ein Abstand der Zeilen in Sekunden erwartet</translation>
    </message>
    <message>
        <source>found no times in column {0}</source>
        <translation>keine Zeiten in Spalte {0} gefunden</translation>
    </message>
    <message>
        <source>the log has no temperature channel</source>
        <translation>das Log hat keinen Temperaturkanal</translation>
    </message>
    <message>
        <source>no row has a usable time</source>
        <translation>keine Zeile hat eine brauchbare Zeit</translation>
    </message>
    <message>
        <source>cannot be read: {0}</source>
        <translation>lässt sich nicht lesen: {0}</translation>
    </message>
    <message>
        <source>there is not enough memory for it</source>
        <translation>dafür reicht der Arbeitsspeicher nicht</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>Datei oder Ordner nicht vorhanden</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>keine Berechtigung</translation>
    </message>
    <message>
        <source>The counter of times starts anew at {0}: the rows go on.</source>
        <translation>Der Zähler der Zeiten beginnt bei {0} von vorn: die Zeilen laufen weiter.</translation>
    </message>
    <message>
        <source>At line {0} another table begins, of other channels: {1}, {2} rows. It was not read.</source>
        <translation>In Zeile {0} beginnt eine andere Tabelle mit anderen Kanälen: {1}, {2} Zeilen. Sie wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it counts runs, channels or the like.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es zählt Läufe, Kanäle oder Ähnliches.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it says how sure the column before it is.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es sagt, wie sicher die Spalte davor ist.</translation>
    </message>
    <message>
        <source>The table at line {0} has the same times: its channels are read beside those before.</source>
        <translation>Die Tabelle in Zeile {0} hat dieselben Zeiten: ihre Kanäle werden neben den vorigen gelesen.</translation>
    </message>
    <message>
        <source>What stands behind ± is no part of the readings and was left out.</source>
        <translation>Was hinter ± steht, gehört nicht zu den Messwerten und wurde weggelassen.</translation>
    </message>
    <message>
        <source>times that start anew in {0} places</source>
        <translation>Zeiten, die an {0} Stellen von vorn beginnen</translation>
    </message>
    <message>
        <source>The clock jumps forward an hour at {0}:00 at night, as where summer time begins: the rows go on without the jump.</source>
        <translation>Die Uhr springt nachts um {0}:00 eine Stunde vor, wie beim Beginn der Sommerzeit: die Zeilen laufen ohne den Sprung weiter.</translation>
    </message>
    <message>
        <source>The clock jumps back an hour to {0}:00 at night, as where summer time ends: the rows go on without the jump.</source>
        <translation>Die Uhr springt nachts eine Stunde auf {0}:00 zurück, wie beim Ende der Sommerzeit: die Zeilen laufen ohne den Sprung weiter.</translation>
    </message>
    <message>
        <source>{0} is kept but not judged: it ends after a few rows, as a table beside the log does.</source>
        <translation>{0} bleibt erhalten, wird aber nicht beurteilt: es endet nach wenigen Zeilen, wie eine Tabelle neben dem Log.</translation>
    </message>
    <message>
        <source>The header names {0} columns and the rows have {1}: the names are taken from the left.</source>
        <translation>Die Kopfzeile benennt {0} Spalten, die Zeilen haben {1}: die Namen sind von links genommen.</translation>
    </message>
    <message>
        <source>The rows stand with the newest first: read from the last to the first.</source>
        <translation>Die Zeilen stehen mit der neuesten zuerst: von der letzten zur ersten gelesen.</translation>
    </message>
    <message>
        <source>The rows do not stand in the order of their times: put in order channel by channel.</source>
        <translation>Die Zeilen stehen nicht in der Reihenfolge ihrer Zeiten: Kanal für Kanal geordnet.</translation>
    </message>
    <message>
        <source>{0} has a reading in one row of {1}: it keeps the times of these.</source>
        <translation>{0} hat in einer von {1} Zeilen einen Messwert: es behält deren Zeiten.</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; stands in {1} cells for readings: taken as no reading.</source>
        <translation>„{0}“ steht in {1} Zellen für Messwerte: als kein Messwert verstanden.</translation>
    </message>
    <message>
        <source>a whole JSON document</source>
        <translation>ein vollständiges JSON-Dokument</translation>
    </message>
    <message>
        <source>a JSON document of readings</source>
        <translation>ein JSON-Dokument mit Messwerten</translation>
    </message>
    <message>
        <source>records, rows or columns of readings</source>
        <translation>Datensätze, Zeilen oder Spalten mit Messwerten</translation>
    </message>
    <message>
        <source>one record a line</source>
        <translation>ein Datensatz je Zeile</translation>
    </message>
    <message>
        <source>the column &quot;{0}&quot; of the header</source>
        <translation>die Spalte „{0}“ der Kopfzeile</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>höchstens {0}</translation>
    </message>
    <message>
        <source>{0} cells in a row</source>
        <translation>{0} Zellen in einer Zeile</translation>
    </message>
    <message>
        <source>a JSON document without a table</source>
        <translation>ein JSON-Dokument ohne Tabelle</translation>
    </message>
    <message>
        <source>JSON that is damaged or cut off</source>
        <translation>JSON, das beschädigt oder abgeschnitten ist</translation>
    </message>
    <message>
        <source>dmy</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>mdy</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>ymd</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>there is no archive</source>
        <translation>es gibt dort kein Archiv</translation>
    </message>
    <message>
        <source>the file is empty, no archive</source>
        <translation>die Datei ist leer, kein Archiv</translation>
    </message>
    <message>
        <source>it is a database of another program, no archive</source>
        <translation>es ist die Datenbank eines anderen Programms, kein Archiv</translation>
    </message>
    <message>
        <source>the archive has version {0}, this program knows up to {1}: it takes a newer program</source>
        <translation>das Archiv hat Version {0}, dieses Programm kennt sie bis {1}: es braucht ein neueres Programm</translation>
    </message>
    <message>
        <source>the archive is open for reading only</source>
        <translation>das Archiv ist nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>there is no archive in the database yet</source>
        <translation>in der Datenbank ist noch kein Archiv</translation>
    </message>
    <message>
        <source>the server refuses: this user may only read the archive</source>
        <translation>der Server lehnt ab: dieser Benutzer darf das Archiv nur lesen</translation>
    </message>
    <message>
        <source>the server does not answer</source>
        <translation>der Server antwortet nicht</translation>
    </message>
    <message>
        <source>the server refuses ({0})</source>
        <translation>der Server lehnt ab ({0})</translation>
    </message>
    <message>
        <source>the database reports an error ({0})</source>
        <translation>die Datenbank meldet einen Fehler ({0})</translation>
    </message>
    <message>
        <source>the file&apos;s disk does not serve a write-ahead log</source>
        <translation>der Datenträger der Datei taugt nicht für ein Vorausprotokoll (WAL)</translation>
    </message>
    <message>
        <source>the PostgreSQL driver of Qt is not installed</source>
        <translation>der PostgreSQL-Treiber von Qt ist nicht installiert</translation>
    </message>
    <message>
        <source>there is no record {0}</source>
        <translation>es gibt keinen Datensatz {0}</translation>
    </message>
    <message>
        <source>{0} is damaged</source>
        <translation>{0} ist beschädigt</translation>
    </message>
    <message>
        <source>{0} is missing</source>
        <translation>{0} fehlt</translation>
    </message>
    <message>
        <source>the bytes kept as {0} are damaged</source>
        <translation>die als {0} aufbewahrten Bytes sind beschädigt</translation>
    </message>
    <message>
        <source>has changed since it was read: judge again</source>
        <translation>hat sich geändert, seit es gelesen wurde: noch einmal beurteilen</translation>
    </message>
    <message>
        <source>has changed while it was judged</source>
        <translation>hat sich geändert, während es beurteilt wurde</translation>
    </message>
    <message>
        <source>the log is no longer read as one run</source>
        <translation>das Log wird nicht mehr als ein Lauf gelesen</translation>
    </message>
    <message>
        <source>no run of the lot is in the archive</source>
        <translation>kein Lauf des Loses ist im Archiv</translation>
    </message>
    <message>
        <source>its name does not match the rule&apos;s expression for lot, serial or operator</source>
        <translation>sein Name passt nicht zum Ausdruck der Regel für Los, Seriennummer oder Bediener</translation>
    </message>
    <message>
        <source>cannot be written: {0}</source>
        <translation>lässt sich nicht schreiben: {0}</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>kein Ordner</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>ist ein Ordner</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>kein Platz mehr auf dem Datenträger</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>Dateisystem nur lesbar</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Ein-/Ausgabefehler</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>einen Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>a number or a text in quotes</source>
        <translation>eine Zahl oder einen Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>an array of numbers</source>
        <translation>eine Liste von Zahlen</translation>
    </message>
    <message>
        <source>an array of texts</source>
        <translation>eine Liste von Texten</translation>
    </message>
    <message>
        <source>tables: {0}</source>
        <translation>Tabellen: {0}</translation>
    </message>
    <message>
        <source>a [[rule]]</source>
        <translation>eine Regel [[rule]]</translation>
    </message>
    <message>
        <source>a regular expression</source>
        <translation>einen regulären Ausdruck</translation>
    </message>
    <message>
        <source>the recipe that the oven ran</source>
        <translation>das Rezept, das der Ofen fuhr</translation>
    </message>
    <message>
        <source>the oven that the recipe ran on</source>
        <translation>den Ofen, auf dem das Rezept lief</translation>
    </message>
    <message>
        <source>a file that people edit</source>
        <translation>eine Datei, die Menschen bearbeiten</translation>
    </message>
    <message>
        <source>a file or the name of a window</source>
        <translation>eine Datei oder den Namen eines Prozessfensters</translation>
    </message>
    <message>
        <source>a file or the name of an oven</source>
        <translation>eine Datei oder den Namen eines Ofens</translation>
    </message>
    <message>
        <source>a file or the name of a recipe</source>
        <translation>eine Datei oder den Namen eines Rezepts</translation>
    </message>
    <message>
        <source>a file or the name of a board</source>
        <translation>eine Datei oder den Namen einer Baugruppe</translation>
    </message>
    <message>
        <source>a file or the name of a layout</source>
        <translation>eine Datei oder den Namen eines Layouts</translation>
    </message>
    <message>
        <source>the log ends while the temperature still rises</source>
        <translation>das Log endet, während die Temperatur noch steigt</translation>
    </message>
    <message>
        <source>the log starts at its highest temperature</source>
        <translation>das Log beginnt bei seiner höchsten Temperatur</translation>
    </message>
    <message>
        <source>for a trace the log ends while the temperature still rises</source>
        <translation>bei einer Kurve endet das Log, während die Temperatur noch steigt</translation>
    </message>
    <message>
        <source>for a trace the log starts at its highest temperature</source>
        <translation>bei einer Kurve beginnt das Log bei ihrer höchsten Temperatur</translation>
    </message>
    <message>
        <source>the log starts above {0}</source>
        <translation>das Log beginnt über {0}</translation>
    </message>
    <message>
        <source>the log ends above {0}</source>
        <translation>das Log endet über {0}</translation>
    </message>
    <message>
        <source>the log starts at {0}</source>
        <translation>das Log beginnt bei {0}</translation>
    </message>
    <message>
        <source>the log starts at {0} or above</source>
        <translation>das Log beginnt bei {0} oder darüber</translation>
    </message>
    <message>
        <source>the log ends at {0} or above</source>
        <translation>das Log endet bei {0} oder darüber</translation>
    </message>
    <message>
        <source>the peak is {0}, not above {1}</source>
        <translation>die Spitze ist {0}, nicht über {1}</translation>
    </message>
    <message>
        <source>the peak is {0}, it does not reach {1}</source>
        <translation>die Spitze ist {0}, sie erreicht {1} nicht</translation>
    </message>
    <message>
        <source>no time was spent between the two temperatures</source>
        <translation>zwischen den beiden Temperaturen verging keine Zeit</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise; the sample interval is {1}</source>
        <translation>kein Fenster von {0} mit mindestens 3 Messwerten liegt im Anstieg; der Abstand der Messwerte ist {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall; the sample interval is {1}</source>
        <translation>kein Fenster von {0} mit mindestens 3 Messwerten liegt im Abfall; der Abstand der Messwerte ist {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the rise within the range of temperatures; the sample interval is {1}</source>
        <translation>kein Fenster von {0} mit mindestens 3 Messwerten liegt im Anstieg innerhalb des Temperaturbereichs; der Abstand der Messwerte ist {1}</translation>
    </message>
    <message>
        <source>no window of {0} with at least 3 samples lies on the fall within the range of temperatures; the sample interval is {1}</source>
        <translation>kein Fenster von {0} mit mindestens 3 Messwerten liegt im Abfall innerhalb des Temperaturbereichs; der Abstand der Messwerte ist {1}</translation>
    </message>
    <message>
        <source>never reaches {0}, counts to the peak</source>
        <translation>erreicht {0} nie, gezählt bis zur Spitze</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace starts at {2}</source>
        <translation>{0} liegt bei {1}, die Kurve beginnt bei {2}</translation>
    </message>
    <message>
        <source>{0} is at {1}, the trace ends at {2}</source>
        <translation>{0} liegt bei {1}, die Kurve endet bei {2}</translation>
    </message>
    <message>
        <source>the time asked for</source>
        <translation>die gefragte Zeit</translation>
    </message>
    <message>
        <source>the end of zone {0}</source>
        <translation>das Ende von Zone {0}</translation>
    </message>
    <message>
        <source>the end of the last zone</source>
        <translation>das Ende der letzten Zone</translation>
    </message>
    <message>
        <source>needs the oven and its recipe</source>
        <translation>braucht den Ofen und sein Rezept</translation>
    </message>
    <message>
        <source>the log does not show when the board entered the oven</source>
        <translation>das Log zeigt nicht, wann die Baugruppe in den Ofen kam</translation>
    </message>
    <message>
        <source>the oven has no zone {0}</source>
        <translation>der Ofen hat keine Zone {0}</translation>
    </message>
    <message>
        <source>the oven has no zones</source>
        <translation>der Ofen hat keine Zonen</translation>
    </message>
    <message>
        <source>no wave seen: no slope of 5 °C/s over 1 s</source>
        <translation>keine Welle zu sehen: keine Steigung von 5 °C/s über 1 s</translation>
    </message>
    <message>
        <source>the log does not show the start of the wave</source>
        <translation>das Log zeigt den Beginn der Welle nicht</translation>
    </message>
    <message>
        <source>no peak of 10 °C or more follows the start of the wave</source>
        <translation>auf den Beginn der Welle folgt keine Spitze von 10 °C oder mehr</translation>
    </message>
    <message>
        <source>the log ends before the joint has left the solder</source>
        <translation>das Log endet, bevor die Lötstelle das Lot verlassen hat</translation>
    </message>
    <message>
        <source>there is no time that all traces cover</source>
        <translation>es gibt keine Zeit, die alle Kurven abdecken</translation>
    </message>
    <message>
        <source>the log starts with a trace above {0}</source>
        <translation>das Log beginnt mit einer Kurve über {0}</translation>
    </message>
    <message>
        <source>no trace rises above {0}</source>
        <translation>keine Kurve steigt über {0}</translation>
    </message>
    <message>
        <source>the log does not show a trace that rises above {0}</source>
        <translation>das Log zeigt keine Kurve, die über {0} steigt</translation>
    </message>
    <message>
        <source>not all traces have data at {0}, when the first one reaches {1}</source>
        <translation>nicht alle Kurven haben Werte bei {0}, wo die erste {1} erreicht</translation>
    </message>
    <message>
        <source>a trace starts above {0}</source>
        <translation>eine Kurve beginnt über {0}</translation>
    </message>
    <message>
        <source>the coldest trace does not reach {0}</source>
        <translation>die kälteste Kurve erreicht {0} nicht</translation>
    </message>
    <message>
        <source>no sample has the coldest trace in the range of temperatures</source>
        <translation>bei keinem Messwert liegt die kälteste Kurve im Temperaturbereich</translation>
    </message>
    <message>
        <source>not every trace rises above {0}</source>
        <translation>nicht jede Kurve steigt über {0}</translation>
    </message>
    <message>
        <source>the log does not show every trace rise above {0}</source>
        <translation>das Log zeigt nicht, dass jede Kurve über {0} steigt</translation>
    </message>
    <message>
        <source>no trace to compare</source>
        <translation>keine Kurve zum Vergleichen</translation>
    </message>
    <message>
        <source>one trace only</source>
        <translation>nur eine Kurve</translation>
    </message>
    <message>
        <source>a gap in the trace hides it</source>
        <translation>eine Lücke in der Kurve verdeckt es</translation>
    </message>
    <message>
        <source>fewer than 3 samples</source>
        <translation>weniger als 3 Messwerte</translation>
    </message>
    <message>
        <source>fewer than 3 good samples: {0}</source>
        <translation>weniger als 3 gute Messwerte: {0}</translation>
    </message>
    <message>
        <source>Tc is not known: enter the part&apos;s thickness and volume</source>
        <translation>Tc ist nicht bekannt: Dicke und Volumen des Bauteils eintragen</translation>
    </message>
    <message>
        <source>Tc is a limit of bodies</source>
        <translation>Tc ist eine Grenze für Gehäuse</translation>
    </message>
    <message>
        <source>the log does not show it</source>
        <translation>das Log zeigt es nicht</translation>
    </message>
    <message>
        <source>the log does not show them</source>
        <translation>das Log zeigt sie nicht</translation>
    </message>
    <message>
        <source>enter which part {0} is on in the board file</source>
        <translation>in der Baugruppendatei eintragen, auf welchem Bauteil {0} sitzt</translation>
    </message>
    <message>
        <source>enter the part {0} in the board file</source>
        <translation>das Bauteil {0} in die Baugruppendatei eintragen</translation>
    </message>
    <message>
        <source>enter the package thickness and volume of {0} in the board file</source>
        <translation>Gehäusedicke und -volumen von {0} in die Baugruppendatei eintragen</translation>
    </message>
    <message>
        <source>enter the package thickness of {0} in the board file</source>
        <translation>die Gehäusedicke von {0} in die Baugruppendatei eintragen</translation>
    </message>
    <message>
        <source>enter the package volume of {0} in the board file</source>
        <translation>das Gehäusevolumen von {0} in die Baugruppendatei eintragen</translation>
    </message>
    <message>
        <source>enter the classification, Pb-free or SnPb, in the window {0}</source>
        <translation>die Klassifizierung, Pb-free oder SnPb, in das Fenster {0} eintragen</translation>
    </message>
    <message>
        <source>the board has no placement that these bind: {0}</source>
        <translation>die Baugruppe hat keine Messstelle, für die dies gilt: {0}</translation>
    </message>
    <message>
        <source>{0} is not judged for {1}: enter its side in the board file</source>
        <translation>{0} wird für {1} nicht geprüft: die Seite in die Baugruppendatei eintragen</translation>
    </message>
    <message>
        <source>{0}: {1}, {2}, needs Tc (J-STD-020)</source>
        <translation>{0}: {1} von {2} braucht Tc (J-STD-020)</translation>
    </message>
    <message>
        <source>{0}, {1}: its lower limit is not below its upper limit, which is Tc: nothing can pass</source>
        <translation>{0} von {1}: die untere Grenze liegt nicht unter der oberen, die Tc ist: nichts kann bestehen</translation>
    </message>
    <message>
        <source>{0}, {1}: its target does not lie inside its limits once Tc is put in, and is not used</source>
        <translation>{0} von {1}: mit eingesetztem Tc liegt das Ziel nicht innerhalb der Grenzen und wird nicht verwendet</translation>
    </message>
    <message>
        <source>the log has no channel {0}</source>
        <translation>das Log hat keinen Kanal {0}</translation>
    </message>
    <message>
        <source>{0}: the log has no channel {1}</source>
        <translation>{0}: das Log hat keinen Kanal {1}</translation>
    </message>
    <message>
        <source>{0}: its limits are narrower than 2 U, so nothing can pass under the guarded rule</source>
        <translation>{0}: die Grenzen liegen enger als 2 U, daher kann mit Schutzband nichts bestehen</translation>
    </message>
    <message>
        <source>{0}: K class 1 is taken for {1}</source>
        <translation>{0}: für {1} wird K class 1 angenommen</translation>
    </message>
    <message>
        <source>it knows ovens, not waves</source>
        <translation>es kennt Öfen, keine Wellen</translation>
    </message>
    <message>
        <source>{0} of zone {1} is {2} °C, outside the oven&apos;s {3} to {4} °C</source>
        <translation>{0} von Zone {1} ist {2} °C, außerhalb der {3} bis {4} °C des Ofens</translation>
    </message>
    <message>
        <source>{0} steps by {1} °C from zone {2} to {3}, more than the oven&apos;s {4} °C</source>
        <translation>{0} springt von Zone {2} zu {3} um {1} °C, mehr als die {4} °C des Ofens</translation>
    </message>
    <message>
        <source>the recipe is for the oven &quot;{0}&quot;, not for &quot;{1}&quot;</source>
        <translation>das Rezept ist für den Ofen „{0}“, nicht für „{1}“</translation>
    </message>
    <message>
        <source>the speed is {0} mm/min, outside the oven&apos;s {1} to {2} mm/min</source>
        <translation>die Geschwindigkeit ist {0} mm/min, außerhalb der {1} bis {2} mm/min des Ofens</translation>
    </message>
    <message>
        <source>top and bottom of zone {0} differ by {1} °C, more than the oven&apos;s {2} °C</source>
        <translation>oben und unten in Zone {0} unterscheiden sich um {1} °C, mehr als die {2} °C des Ofens</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, expected {2}</source>
        <translation>{0} bei „{1}“ gefunden, {2} erwartet</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot;, expected {1}</source>
        <translation>„{0}“ fehlt, {1} erwartet</translation>
    </message>
    <message>
        <source>missing &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>„{0}“ fehlt in {1}, {2} erwartet</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>unbekannter Schlüssel „{0}“, gemeint ist „{1}“?</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot;, expected {1}</source>
        <translation>unbekannter Schlüssel „{0}“, {1} erwartet</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, did you mean &quot;{2}&quot;?</source>
        <translation>unbekannter Schlüssel „{0}“ in {1}, gemeint ist „{2}“?</translation>
    </message>
    <message>
        <source>found the unknown key &quot;{0}&quot; in {1}, expected {2}</source>
        <translation>unbekannter Schlüssel „{0}“ in {1}, {2} erwartet</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>unbekannte Messgröße „{0}“, gemeint ist „{1}“?</translation>
    </message>
    <message>
        <source>found the unknown measure &quot;{0}&quot;, expected {1}</source>
        <translation>unbekannte Messgröße „{0}“, {1} erwartet</translation>
    </message>
    <message>
        <source>no valid TOML: {0}</source>
        <translation>kein gültiges TOML: {0}</translation>
    </message>
    <message>
        <source>the clock was set back by {0} s: later times are moved on</source>
        <translation>die Uhr wurde um {0} s zurückgestellt: spätere Zeiten sind entsprechend weitergezählt</translation>
    </message>
    <message>
        <source>found [{0}] and [[{1}]], expected [[{2}]] each time</source>
        <translation>[{0}] und [[{1}]] gefunden, jedes Mal [[{2}]] erwartet</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; a second time, expected each key once</source>
        <translation>„{0}“ steht ein zweites Mal da, jeder Schlüssel einmal erwartet</translation>
    </message>
    <message>
        <source>found a text without quotes, expected a number, true, false, or a text in quotes</source>
        <translation>Text ohne Anführungszeichen gefunden, eine Zahl, true, false oder ein Text in Anführungszeichen erwartet</translation>
    </message>
    <message>
        <source>found a comma behind a value, expected a decimal point, or the end of the line</source>
        <translation>Komma hinter einem Wert gefunden, ein Dezimalpunkt oder das Zeilenende erwartet</translation>
    </message>
    <message>
        <source>found bytes that are no UTF-8, expected a text in UTF-8</source>
        <translation>Bytes gefunden, die kein UTF-8 sind, ein Text in UTF-8 erwartet</translation>
    </message>
    <message>
        <source>cannot be parsed: {0}</source>
        <translation>lässt sich nicht auswerten: {0}</translation>
    </message>
    <message>
        <source>is kept as it is: {0}</source>
        <translation>bleibt, wie es ist: {0}</translation>
    </message>
    <message>
        <source>found {0}, expected a file</source>
        <translation>{0} gefunden, eine Datei erwartet</translation>
    </message>
    <message>
        <source>found more than 4 MB, expected a file that people edit</source>
        <translation>mehr als 4 MB gefunden, eine von Hand bearbeitete Datei erwartet</translation>
    </message>
    <message>
        <source>Tc is a temperature, &quot;{0}&quot; is none</source>
        <translation>Tc ist eine Temperatur, „{0}“ ist keine</translation>
    </message>
    <message>
        <source>Tc binds the bodies of parts, but &quot;applies_to&quot; leaves them out</source>
        <translation>Tc gilt für Gehäuse von Bauteilen, aber „applies_to“ lässt sie aus</translation>
    </message>
    <message>
        <source>found Tc for &quot;{0}&quot;, but the window has no &quot;classification&quot; to take it from</source>
        <translation>Tc bei „{0}“ gefunden, aber das Fenster hat keine „classification“, aus der es folgt</translation>
    </message>
    <message>
        <source>limits crossed: lower {0}, upper {1}</source>
        <translation>Grenzen vertauscht: untere {0}, obere {1}</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; an upper limit but no target</source>
        <translation>Das Fenster „{0}“ gibt „{1}“ eine obere Grenze, aber kein Ziel</translation>
    </message>
    <message>
        <source>The window &quot;{0}&quot; gives &quot;{1}&quot; a lower limit but no target</source>
        <translation>Das Fenster „{0}“ gibt „{1}“ eine untere Grenze, aber kein Ziel</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no limit, expected &quot;lower&quot;, &quot;upper&quot; or both</source>
        <translation>„{0}“ hat keine Grenze, „lower“, „upper“ oder beides erwartet</translation>
    </message>
    <message>
        <source>has no limit</source>
        <translation>hat keine Grenze</translation>
    </message>
    <message>
        <source>found no channel in &quot;applies_to&quot;</source>
        <translation>kein Kanal in „applies_to“ gefunden</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on the board as a whole</source>
        <translation>{0} bei „applies_to“ gefunden, {1} erwartet: „{2}“ wird an der ganzen Baugruppe gemessen</translation>
    </message>
    <message>
        <source>found {0} for &quot;applies_to&quot;, expected {1}: &quot;{2}&quot; is measured on each trace</source>
        <translation>{0} bei „applies_to“ gefunden, {1} erwartet: „{2}“ wird an jeder Kurve gemessen</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot; in a window for reflow, expected process = &quot;wave&quot;</source>
        <translation>„{0}“ in einem Fenster für Reflow gefunden, process = &quot;wave&quot; erwartet</translation>
    </message>
    <message>
        <source>found &quot;tolerance_C&quot; beside &quot;thermocouple&quot;, expected one of the two</source>
        <translation>„tolerance_C“ neben „thermocouple“ gefunden, eines von beiden erwartet</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, expected {1}</source>
        <translation>Thermoelement „{0}“ gefunden, {1} erwartet</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, whose tolerances begin at 600 °C, expected {1}</source>
        <translation>Thermoelement „{0}“ gefunden, dessen Toleranzen erst bei 600 °C beginnen, {1} erwartet</translation>
    </message>
    <message>
        <source>found thermocouple &quot;{0}&quot;, a class that ends at 40 °C, expected {1}</source>
        <translation>Thermoelement „{0}“ gefunden, eine Klasse, die bei 40 °C endet, {1} erwartet</translation>
    </message>
    <message>
        <source>a type (K, J, T, E, N, R or S) with &quot;class 1&quot; or &quot;class 2&quot; (IEC 60584-1) or &quot;special&quot; or &quot;standard&quot; (ASTM E230), such as &quot;K class 1&quot;</source>
        <translation>ein Typ (K, J, T, E, N, R oder S) mit „class 1“ oder „class 2“ (IEC 60584-1) oder „special“ oder „standard“ (ASTM E230), etwa „K class 1“</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; has no parameter &quot;{1}&quot;</source>
        <translation>„{0}“ hat keinen Parameter „{1}“</translation>
    </message>
    <message>
        <source>{0}: found {1}, expected {2}</source>
        <translation>{0}: {1} gefunden, {2} erwartet</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs {1}</source>
        <translation>„{0}“ braucht {1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; needs level, or the window a &quot;liquidus_C&quot;</source>
        <translation>„{0}“ braucht level, oder das Fenster ein „liquidus_C“</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; was given a parameter that it does not know</source>
        <translation>„{0}“ hat einen Parameter erhalten, den es nicht kennt</translation>
    </message>
    <message>
        <source>over must be more than 0 s</source>
        <translation>over muss größer als 0 s sein</translation>
    </message>
    <message>
        <source>offset must not be negative</source>
        <translation>offset darf nicht negativ sein</translation>
    </message>
    <message>
        <source>&quot;temperature at&quot; needs one of time, position_mm or zone</source>
        <translation>„temperature at“ braucht genau eines von time, position_mm oder zone</translation>
    </message>
    <message>
        <source>T1 must be above T2</source>
        <translation>T1 muss über T2 liegen</translation>
    </message>
    <message>
        <source>T1 must be below T2</source>
        <translation>T1 muss unter T2 liegen</translation>
    </message>
    <message>
        <source>found an empty &quot;channel&quot;, expected its name in the log</source>
        <translation>leeres „channel“ gefunden, sein Name im Log erwartet</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>der Kanal „{0}“ steht ein zweites Mal da, zuerst in Zeile {1}</translation>
    </message>
    <message>
        <source>found the part &quot;{0}&quot; a second time, first in line {1}</source>
        <translation>das Bauteil „{0}“ steht ein zweites Mal da, zuerst in Zeile {1}</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, did you mean &quot;{2}&quot;?</source>
        <translation>die Baugruppe nennt den Kanal „{0}“, den „{1}“ nicht hat, gemeint ist „{2}“?</translation>
    </message>
    <message>
        <source>the board places the channel &quot;{0}&quot;, which &quot;{1}&quot; lacks, expected {2}</source>
        <translation>die Baugruppe nennt den Kanal „{0}“, den „{1}“ nicht hat, {2} erwartet</translation>
    </message>
    <message>
        <source>found {0} in &quot;{1}&quot;, expected {2}</source>
        <translation>{0} in „{1}“ gefunden, {2} erwartet</translation>
    </message>
    <message>
        <source>found {0} setpoints in &quot;top_C&quot; but {1} in &quot;bottom_C&quot;, expected one for each heating zone in both</source>
        <translation>{0} Sollwerte in „top_C“, aber {1} in „bottom_C“ gefunden, in beiden einer für jede Heizzone erwartet</translation>
    </message>
    <message>
        <source>1 setpoint</source>
        <translation>1 Sollwert</translation>
    </message>
    <message>
        <source>{0} setpoints</source>
        <translation>{0} Sollwerte</translation>
    </message>
    <message>
        <source>{0}, one for each heating zone of &quot;{1}&quot;</source>
        <translation>{0}, einer je Heizzone von „{1}“</translation>
    </message>
    <message>
        <source>{0}, one for each cooling zone of &quot;{1}&quot;</source>
        <translation>{0}, einer je Kühlzone von „{1}“</translation>
    </message>
    <message>
        <source>found the zone &quot;{0}&quot; a second time</source>
        <translation>die Zone „{0}“ steht ein zweites Mal da</translation>
    </message>
    <message>
        <source>the revision has no name</source>
        <translation>die Revision hat keinen Namen</translation>
    </message>
    <message>
        <source>the window is at revision &quot;{0}&quot; already</source>
        <translation>das Fenster hat schon Revision „{0}“</translation>
    </message>
    <message>
        <source>a whole number of at least {0}</source>
        <translation>eine ganze Zahl von mindestens {0}</translation>
    </message>
    <message>
        <source>a whole number from {0} to {1}</source>
        <translation>eine ganze Zahl von {0} bis {1}</translation>
    </message>
    <message>
        <source>a whole number from 1</source>
        <translation>eine ganze Zahl ab 1</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>two numbers, the lower one first</source>
        <translation>zwei Zahlen, die kleinere zuerst</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>eine Zahl über 0</translation>
    </message>
    <message>
        <source>a number of at least 0</source>
        <translation>eine Zahl von mindestens 0</translation>
    </message>
    <message>
        <source>a temperature in °C</source>
        <translation>eine Temperatur in °C</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;</source>
        <translation>eine Temperatur in °C oder „peak“</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;Tc&quot;</source>
        <translation>eine Temperatur in °C oder „Tc“</translation>
    </message>
    <message>
        <source>a temperature in °C, &quot;peak&quot;, &quot;Tc&quot;</source>
        <translation>eine Temperatur in °C, „peak“ oder „Tc“</translation>
    </message>
    <message>
        <source>a number of seconds</source>
        <translation>eine Zahl von Sekunden</translation>
    </message>
    <message>
        <source>a number of millimetres</source>
        <translation>eine Zahl von Millimetern</translation>
    </message>
    <message>
        <source>the name of a zone</source>
        <translation>der Name einer Zone</translation>
    </message>
    <message>
        <source>a length above 0</source>
        <translation>eine Länge über 0</translation>
    </message>
    <message>
        <source>a length of at least 0</source>
        <translation>eine Länge von mindestens 0</translation>
    </message>
    <message>
        <source>a mass above 0</source>
        <translation>eine Masse über 0</translation>
    </message>
    <message>
        <source>a position in mm</source>
        <translation>eine Position in mm</translation>
    </message>
    <message>
        <source>a speed above 0</source>
        <translation>eine Geschwindigkeit über 0</translation>
    </message>
    <message>
        <source>a volume above 0</source>
        <translation>ein Volumen über 0</translation>
    </message>
    <message>
        <source>an area above 0</source>
        <translation>eine Fläche über 0</translation>
    </message>
    <message>
        <source>length and width</source>
        <translation>Länge und Breite</translation>
    </message>
    <message>
        <source>the channel&apos;s name in the log, or its number from 1</source>
        <translation>der Name des Kanals im Log oder seine Nummer ab 1</translation>
    </message>
    <message>
        <source>its name in the log</source>
        <translation>sein Name im Log</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>ein Name</translation>
    </message>
    <message>
        <source>the zone&apos;s name in quotes</source>
        <translation>der Name der Zone in Anführungszeichen</translation>
    </message>
    <message>
        <source>at least one [[zone]] of kind &quot;heat&quot;</source>
        <translation>mindestens eine [[zone]] der Art „heat“</translation>
    </message>
    <message>
        <source>one setpoint for each heating zone</source>
        <translation>ein Sollwert je Heizzone</translation>
    </message>
    <message>
        <source>at least one [[requirement]]</source>
        <translation>mindestens ein [[requirement]]</translation>
    </message>
    <message>
        <source>a number, &quot;Tc&quot; or &quot;Tc-5&quot;</source>
        <translation>eine Zahl, „Tc“ oder „Tc-5“</translation>
    </message>
    <message>
        <source>&quot;body&quot;, &quot;all&quot; or a list of channels</source>
        <translation>„body“, „all“ oder eine Liste von Kanälen</translation>
    </message>
    <message>
        <source>&quot;all&quot;, &quot;joint&quot;, &quot;body&quot; or a list of channels</source>
        <translation>„all“, „joint“, „body“ oder eine Liste von Kanälen</translation>
    </message>
    <message>
        <source>classification = &quot;Pb-free&quot; or &quot;SnPb&quot;</source>
        <translation>classification = &quot;Pb-free&quot; oder &quot;SnPb&quot;</translation>
    </message>
    <message>
        <source>an upper limit above the lower one</source>
        <translation>eine obere Grenze über der unteren</translation>
    </message>
    <message>
        <source>a limit above 0 or a target</source>
        <translation>eine Grenze über 0 oder ein Ziel</translation>
    </message>
    <message>
        <source>a target</source>
        <translation>ein Ziel</translation>
    </message>
    <message>
        <source>a target strictly between {0} and {1}</source>
        <translation>ein Ziel zwischen {0} und {1}</translation>
    </message>
    <message>
        <source>a target above {0}</source>
        <translation>ein Ziel über {0}</translation>
    </message>
    <message>
        <source>a target below {0}</source>
        <translation>ein Ziel unter {0}</translation>
    </message>
    <message>
        <source>at least one channel</source>
        <translation>mindestens ein Kanal</translation>
    </message>
    <message>
        <source>at most the liquidus, {0}</source>
        <translation>höchstens der Liquidus, {0}</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>Datei gibt es schon</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>Dateiname zu lang</translation>
    </message>
    <message>
        <source>Too many open files</source>
        <translation>zu viele offene Dateien</translation>
    </message>
    <message>
        <source>Operation not permitted</source>
        <translation>nicht erlaubt</translation>
    </message>
    <message>
        <source>a pipe</source>
        <translation>eine Pipe</translation>
    </message>
    <message>
        <source>a device</source>
        <translation>ein Gerät</translation>
    </message>
    <message>
        <source>found {0}, expected {1} as in the other rows</source>
        <translation>{0} gefunden, {1} wie in den anderen Zeilen erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected as many fields as names: the comma is the delimiter and seems to be the decimal sign as well, and {1}</source>
        <translation>{0} gefunden, so viele Felder wie Namen erwartet: das Komma ist das Trennzeichen und anscheinend auch das Dezimalzeichen, und {1}</translation>
    </message>
    <message>
        <source>as many fields as names</source>
        <translation>so viele Felder wie Namen</translation>
    </message>
    <message>
        <source>no encoding named &quot;{0}&quot; is known</source>
        <translation>keine Zeichenkodierung namens „{0}“ bekannt</translation>
    </message>
    <message>
        <source>the name of a character encoding</source>
        <translation>der Name einer Zeichenkodierung</translation>
    </message>
    <message>
        <source>found {0}, expected text in that encoding</source>
        <translation>{0} gefunden, Text in dieser Kodierung erwartet</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; places a cell out of range, expected {1}</source>
        <translation>Blatt „{0}“ setzt eine Zelle außerhalb des Bereichs, {1} erwartet</translation>
    </message>
    <message>
        <source>a cell out of range</source>
        <translation>eine Zelle außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; spreads {1} cells over millions of empty or repeated ones, expected a table</source>
        <translation>Blatt „{0}“ verteilt {1} Zellen über Millionen leerer oder wiederholter, eine Tabelle erwartet</translation>
    </message>
    <message>
        <source>cells too far apart</source>
        <translation>Zellen zu weit auseinander</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>eine Tabelle</translation>
    </message>
    <message>
        <source>found a gzip file that is {0}, expected a whole one</source>
        <translation>eine gzip-Datei gefunden, die {0} ist, eine vollständige erwartet</translation>
    </message>
    <message>
        <source>found an OpenDocument file without a table, expected a spreadsheet</source>
        <translation>eine OpenDocument-Datei ohne Tabelle gefunden, eine Tabellenkalkulation erwartet</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>keine Tabelle</translation>
    </message>
    <message>
        <source>a spreadsheet</source>
        <translation>eine Tabellenkalkulation</translation>
    </message>
    <message>
        <source>found no sheet &quot;{0}&quot;, expected one of: {1}</source>
        <translation>kein Blatt „{0}“ gefunden, eines davon erwartet: {1}</translation>
    </message>
    <message>
        <source>found {0} and no rows of numbers, expected {1}</source>
        <translation>{0} und keine Zeilen mit Zahlen gefunden, {1} erwartet</translation>
    </message>
    <message>
        <source>found the unit {0} and no column of temperatures, expected °C, °F, K or mV</source>
        <translation>die Einheit {0} und keine Spalte mit Temperaturen gefunden, °C, °F, K oder mV erwartet</translation>
    </message>
    <message>
        <source>found the unit {0}, expected °C, °F, K or mV</source>
        <translation>die Einheit {0} gefunden, °C, °F, K oder mV erwartet</translation>
    </message>
    <message>
        <source>found no columns of channel names and values, expected time, channel and value</source>
        <translation>keine Spalten mit Kanalnamen und Werten gefunden; Zeit, Kanal und Wert erwartet</translation>
    </message>
    <message>
        <source>found more than {0} readings, expected a log below the cap on its size</source>
        <translation>mehr als {0} Messwerte gefunden, ein Log unter der Obergrenze erwartet</translation>
    </message>
    <message>
        <source>more than {0} readings</source>
        <translation>mehr als {0} Messwerte</translation>
    </message>
    <message>
        <source>a log below the cap on its size</source>
        <translation>ein Log unter der Obergrenze</translation>
    </message>
    <message>
        <source>found more than {0} names of channels</source>
        <translation>mehr als {0} Kanalnamen gefunden</translation>
    </message>
    <message>
        <source>the name of a channel</source>
        <translation>der Name eines Kanals</translation>
    </message>
    <message>
        <source>reading was stopped</source>
        <translation>das Lesen wurde angehalten</translation>
    </message>
    <message>
        <source>the interval between rows is not above 0</source>
        <translation>der Abstand der Zeilen ist nicht über 0</translation>
    </message>
    <message>
        <source>found the kind of time &quot;{0}&quot;, expected a known one</source>
        <translation>Art der Zeit „{0}“ gefunden, eine bekannte erwartet</translation>
    </message>
    <message>
        <source>a kind of time</source>
        <translation>eine Art der Zeit</translation>
    </message>
    <message>
        <source>column {0} holds no clock times or dates, expected {1}</source>
        <translation>Spalte {0} enthält keine Uhrzeiten oder Daten, {1} erwartet</translation>
    </message>
    <message>
        <source>column {0} holds no plain numbers, expected {1}</source>
        <translation>Spalte {0} enthält keine bloßen Zahlen, {1} erwartet</translation>
    </message>
    <message>
        <source>{0} unpacks to too much, expected {1}</source>
        <translation>{0} wird ausgepackt zu groß, {1} erwartet</translation>
    </message>
    <message>
        <source>too many unpacked bytes</source>
        <translation>zu viele ausgepackte Bytes</translation>
    </message>
    <message>
        <source>found a workbook without its part {0}, expected a whole .xlsx workbook</source>
        <translation>eine Arbeitsmappe ohne ihren Teil {0} gefunden, eine vollständige .xlsx-Arbeitsmappe erwartet</translation>
    </message>
    <message>
        <source>found a document type definition, expected the XML of a workbook</source>
        <translation>eine Dokumenttypdefinition gefunden, das XML einer Arbeitsmappe erwartet</translation>
    </message>
    <message>
        <source>a document type definition</source>
        <translation>eine Dokumenttypdefinition</translation>
    </message>
    <message>
        <source>the XML of a workbook</source>
        <translation>das XML einer Arbeitsmappe</translation>
    </message>
    <message>
        <source>{0} cannot be unpacked: {1}</source>
        <translation>{0} lässt sich nicht auspacken: {1}</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>kein Prozessfenster „{0}“ gefunden, gemeint ist „{1}“?</translation>
    </message>
    <message>
        <source>found no window &quot;{0}&quot;, neither as a file nor as a name; `ovenwright windows` lists the names</source>
        <translation>kein Prozessfenster „{0}“ gefunden, weder als Datei noch als Name; `ovenwright windows` listet die Namen</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>kein Ofen „{0}“ gefunden, gemeint ist „{1}“?</translation>
    </message>
    <message>
        <source>found no oven &quot;{0}&quot;, neither as a file nor as a name; `ovenwright ovens` lists the names</source>
        <translation>kein Ofen „{0}“ gefunden, weder als Datei noch als Name; `ovenwright ovens` listet die Namen</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>kein Rezept „{0}“ gefunden, gemeint ist „{1}“?</translation>
    </message>
    <message>
        <source>found no recipe &quot;{0}&quot;, neither as a file nor as a name; `ovenwright recipes` lists the names</source>
        <translation>kein Rezept „{0}“ gefunden, weder als Datei noch als Name; `ovenwright recipes` listet die Namen</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>keine Baugruppe „{0}“ gefunden, gemeint ist „{1}“?</translation>
    </message>
    <message>
        <source>found no board &quot;{0}&quot;, neither as a file nor as a name; `ovenwright boards` lists the names</source>
        <translation>keine Baugruppe „{0}“ gefunden, weder als Datei noch als Name; `ovenwright boards` listet die Namen</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, did you mean &quot;{1}&quot;?</source>
        <translation>kein Layout „{0}“ gefunden, gemeint ist „{1}“?</translation>
    </message>
    <message>
        <source>found no layout &quot;{0}&quot;, neither as a file nor as a name; `ovenwright layouts` lists the names</source>
        <translation>kein Layout „{0}“ gefunden, weder als Datei noch als Name; `ovenwright layouts` listet die Namen</translation>
    </message>
    <message>
        <source>&quot;{0}&quot;</source>
        <translation>„{0}“</translation>
    </message>
    <message>
        <source>found {0} for &quot;{1}&quot;, did you mean &quot;{2}&quot;?</source>
        <translation>{0} bei „{1}“ gefunden, gemeint ist „{2}“?</translation>
    </message>
    <message>
        <source>a table: [{0}]</source>
        <translation>eine Tabelle: [{0}]</translation>
    </message>
    <message>
        <source>tables: [[{0}]]</source>
        <translation>Tabellen: [[{0}]]</translation>
    </message>
    <message>
        <source>found 1 run, expected at least {0}</source>
        <translation>1 Lauf gefunden, mindestens {0} erwartet</translation>
    </message>
    <message>
        <source>found {0} runs, expected at least {1}</source>
        <translation>{0} Läufe gefunden, mindestens {1} erwartet</translation>
    </message>
    <message>
        <source>{0} fields under {1} names</source>
        <translation>{0} Felder unter {1} Namen</translation>
    </message>
    <message>
        <source>no way to join them fits</source>
        <translation>keine Art, sie zu verbinden, passt</translation>
    </message>
    <message>
        <source>the counts allow more than one way to join them</source>
        <translation>die Anzahlen lassen mehr als eine Art zu, sie zu verbinden</translation>
    </message>
    <message>
        <source>{0} fields of whole numbers, every second one a single digit</source>
        <translation>{0} Felder mit ganzen Zahlen, jedes zweite eine einzelne Ziffer</translation>
    </message>
    <message>
        <source>found {0}, expected numbers: the comma seems to be the delimiter and the decimal sign as well, and no header tells how many columns there are</source>
        <translation>{0} gefunden, Zahlen erwartet: das Komma ist anscheinend Trennzeichen und Dezimalzeichen zugleich, und keine Kopfzeile sagt, wie viele Spalten es gibt</translation>
    </message>
    <message>
        <source>at most {0} MiB for a file of this size</source>
        <translation>höchstens {0} MiB bei einer Datei dieser Größe</translation>
    </message>
    <message>
        <source>one sample, {0} °C</source>
        <translation>ein Messwert, {0} °C</translation>
    </message>
    <message>
        <source>{0} samples</source>
        <translation>{0} Messwerte</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>over-range</source>
        <translation>außer Bereich</translation>
    </message>
    <message>
        <source>dropout</source>
        <translation>Ausfall</translation>
    </message>
    <message>
        <source>spike</source>
        <translation>Ausreißer</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>hängt</translation>
    </message>
    <message>
        <source>reversed polarity</source>
        <translation>verpolt</translation>
    </message>
    <message>
        <source>detached</source>
        <translation>gelöst</translation>
    </message>
    <message>
        <source>swapped placement</source>
        <translation>vertauschte Messstelle</translation>
    </message>
    <message>
        <source>cold-junction step</source>
        <translation>Sprung der Vergleichsstelle</translation>
    </message>
    <message>
        <source>clock gap</source>
        <translation>Lücke in der Zeit</translation>
    </message>
    <message>
        <source>time going back</source>
        <translation>Zeit läuft zurück</translation>
    </message>
    <message>
        <source>the log</source>
        <translation>das Log</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed</source>
        <translation>{0}: {1} bei {2} s, entfernt</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, removed: {3}</source>
        <translation>{0}: {1} bei {2} s, entfernt: {3}</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in</source>
        <translation>{0}: {1} bei {2} s, belassen</translation>
    </message>
    <message>
        <source>{0}: {1} at {2} s, left in: {3}</source>
        <translation>{0}: {1} bei {2} s, belassen: {3}</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, removed</source>
        <translation>{0}: {1} von {2} bis {3} s, entfernt</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, removed: {4}</source>
        <translation>{0}: {1} von {2} bis {3} s, entfernt: {4}</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, left in</source>
        <translation>{0}: {1} von {2} bis {3} s, belassen</translation>
    </message>
    <message>
        <source>{0}: {1} from {2} to {3} s, left in: {4}</source>
        <translation>{0}: {1} von {2} bis {3} s, belassen: {4}</translation>
    </message>
    <message>
        <source>from &quot;{0}&quot;</source>
        <translation>aus „{0}“</translation>
    </message>
    <message>
        <source>tabs between cells</source>
        <translation>Tabulatoren zwischen den Zellen</translation>
    </message>
    <message>
        <source>blanks between cells</source>
        <translation>Leerzeichen zwischen den Zellen</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; between cells</source>
        <translation>„{0}“ zwischen den Zellen</translation>
    </message>
    <message>
        <source>fixed width</source>
        <translation>feste Spaltenbreite</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>Dezimalkomma</translation>
    </message>
    <message>
        <source>time as {0}</source>
        <translation>Zeit als {0}</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>Millisekunden</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>clock m:s</source>
        <translation>Uhrzeit m:s</translation>
    </message>
    <message>
        <source>clock h:m</source>
        <translation>Uhrzeit h:m</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>Uhrzeit h:m:s</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>serial days</source>
        <translation>fortlaufende Tage</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>Sekunden seit 1970</translation>
    </message>
    <message>
        <source>index</source>
        <translation>Nummer der Zeile</translation>
    </message>
    <message>
        <source>header in line {0}</source>
        <translation>Kopf in Zeile {0}</translation>
    </message>
    <message>
        <source>no header</source>
        <translation>kein Kopf</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>{0} rows</source>
        <translation>{0} Zeilen</translation>
    </message>
    <message>
        <source>{0} skipped</source>
        <translation>{0} ausgelassen</translation>
    </message>
    <message>
        <source>one every {0} s</source>
        <translation>eine alle {0} s</translation>
    </message>
    <message>
        <source>found {0}, expected a drawing alone: a logo runs nothing and fetches nothing</source>
        <translation>{0} gefunden, eine bloße Zeichnung erwartet: ein Logo führt nichts aus und holt nichts</translation>
    </message>
    <message>
        <source>the element &lt;{0}&gt;</source>
        <translation>das Element &lt;{0}&gt;</translation>
    </message>
    <message>
        <source>the handler {0}</source>
        <translation>die Behandlung {0}</translation>
    </message>
    <message>
        <source>a link to {0}</source>
        <translation>ein Verweis auf {0}</translation>
    </message>
    <message>
        <source>entities of its own</source>
        <translation>eigene Entitäten</translation>
    </message>
    <message>
        <source>a processing instruction</source>
        <translation>eine Verarbeitungsanweisung</translation>
    </message>
    <message>
        <source>a style that fetches</source>
        <translation>ein Stil, der etwas holt</translation>
    </message>
    <message>
        <source>is a damaged SVG drawing: {0}</source>
        <translation>ist eine beschädigte SVG-Zeichnung: {0}</translation>
    </message>
    <message>
        <source>is a drawing without a size</source>
        <translation>ist eine Zeichnung ohne Größe</translation>
    </message>
    <message>
        <source>is no picture that a sheet can show, expected an SVG drawing, a PNG or a JPEG picture</source>
        <translation>ist kein Bild, das ein Blatt zeigen kann; eine SVG-Zeichnung, ein PNG- oder JPEG-Bild erwartet</translation>
    </message>
    <message>
        <source>has {0} × {1} points: no logo is that large</source>
        <translation>hat {0} × {1} Punkte: so groß ist kein Logo</translation>
    </message>
    <message>
        <source>is a damaged picture: {0}</source>
        <translation>ist ein beschädigtes Bild: {0}</translation>
    </message>
    <message>
        <source>is larger than 4 MB: no logo is</source>
        <translation>ist größer als 4 MB: das ist kein Logo</translation>
    </message>
    <message>
        <source>the record&apos;s body is damaged</source>
        <translation>der Inhalt des Datensatzes ist beschädigt</translation>
    </message>
    <message>
        <source>packed bytes are damaged</source>
        <translation>gepackte Bytes sind beschädigt</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>was stopped</source>
        <translation>wurde angehalten</translation>
    </message>
    <message>
        <source>found &quot;{0}&quot;, expected a regular expression ({1})</source>
        <translation>„{0}“ gefunden, ein regulärer Ausdruck erwartet ({1})</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>it cannot be written</source>
        <translation>es lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>it is damaged, or no database</source>
        <translation>es ist beschädigt oder keine Datenbank</translation>
    </message>
    <message>
        <source>the database reports an error</source>
        <translation>die Datenbank meldet einen Fehler</translation>
    </message>
    <message>
        <source>1 row ends before the last column: what is missing there counts as no reading.</source>
        <translation>1 Zeile endet vor der letzten Spalte: was dort fehlt, gilt als kein Messwert.</translation>
    </message>
    <message>
        <source>1 cell that is no number is left empty: &quot;{0}&quot; in line {1}.</source>
        <translation>1 Zelle, die keine Zahl ist, bleibt leer: „{0}“ in Zeile {1}.</translation>
    </message>
    <message>
        <source>{0} cells that are no numbers are left empty: the first is &quot;{1}&quot; in line {2}.</source>
        <translation>{0} Zellen, die keine Zahlen sind, bleiben leer: die erste ist „{1}“ in Zeile {2}.</translation>
    </message>
    <message>
        <source>1 row without a time is left out: line {0}.</source>
        <translation>1 Zeile ohne Zeit ist ausgelassen: Zeile {0}.</translation>
    </message>
    <message>
        <source>{0} rows without a time are left out: the first is line {1}.</source>
        <translation>{0} Zeilen ohne Zeit sind ausgelassen: die erste ist Zeile {1}.</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot;</source>
        <translation>Zelle {0} von Blatt „{1}“</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot;</source>
        <translation>Zeile {0} von Blatt „{1}“</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot;</source>
        <translation>Blatt „{0}“</translation>
    </message>
    <message>
        <source>row {0} of table {1}</source>
        <translation>Zeile {0} von Tabelle {1}</translation>
    </message>
    <message>
        <source>in &quot;{0}&quot;</source>
        <translation>in „{0}“</translation>
    </message>
    <message>
        <source>cell {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>Zelle {0} von Blatt „{1}“ in „{2}“</translation>
    </message>
    <message>
        <source>row {0} of sheet &quot;{1}&quot; in &quot;{2}&quot;</source>
        <translation>Zeile {0} von Blatt „{1}“ in „{2}“</translation>
    </message>
    <message>
        <source>sheet &quot;{0}&quot; in &quot;{1}&quot;</source>
        <translation>Blatt „{0}“ in „{1}“</translation>
    </message>
    <message>
        <source>row {0} of table {1} in &quot;{2}&quot;</source>
        <translation>Zeile {0} von Tabelle {1} in „{2}“</translation>
    </message>
    <message>
        <source>an empty zip archive</source>
        <translation>ein leeres zip-Archiv</translation>
    </message>
    <message>
        <source>a zip archive of other files ({0})</source>
        <translation>ein zip-Archiv mit anderen Dateien ({0})</translation>
    </message>
    <message>
        <source>found no file &quot;{0}&quot; in the archive, expected one of: {1}</source>
        <translation>keine Datei „{0}“ im Archiv gefunden, erwartet wird eine von: {1}</translation>
    </message>
    <message>
        <source>found no table &quot;{0}&quot;, expected one of: {1}</source>
        <translation>keine Tabelle „{0}“ gefunden, erwartet wird eine von: {1}</translation>
    </message>
    <message>
        <source>a workbook of the old binary kind (.xls)</source>
        <translation>eine Arbeitsmappe der alten binären Art (.xls)</translation>
    </message>
    <message>
        <source>a word processor's document of the old binary kind</source>
        <translation>ein Textdokument der alten binären Art</translation>
    </message>
    <message>
        <source>a presentation of the old binary kind</source>
        <translation>eine Präsentation der alten binären Art</translation>
    </message>
    <message>
        <source>a tar archive, which is not unpacked here</source>
        <translation>ein tar-Archiv, das hier nicht entpackt wird</translation>
    </message>
    <message>
        <source>a workbook without its texts (sharedStrings.xml)</source>
        <translation>eine Arbeitsmappe ohne ihre Texte (sharedStrings.xml)</translation>
    </message>
    <message>
        <source>a text that the workbook does not hold</source>
        <translation>ein Text, den die Arbeitsmappe nicht enthält</translation>
    </message>
    <message>
        <source>{0} formulas without a stored result</source>
        <translation>{0} Formeln ohne gespeichertes Ergebnis</translation>
    </message>
    <message>
        <source>readings, which a spreadsheet program stores when it saves the workbook</source>
        <translation>Messwerte, die ein Tabellenprogramm beim Speichern der Arbeitsmappe ablegt</translation>
    </message>
    <message>
        <source>it is cut short or damaged, the list of its files is missing</source>
        <translation>es ist abgeschnitten oder beschädigt, die Liste seiner Dateien fehlt</translation>
    </message>
    <message>
        <source>the zip archive</source>
        <translation>das zip-Archiv</translation>
    </message>
    <message>
        <source>Not a zip archive</source>
        <translation>kein zip-Archiv</translation>
    </message>
    <message>
        <source>Zip archive inconsistent</source>
        <translation>das zip-Archiv ist in sich widersprüchlich</translation>
    </message>
    <message>
        <source>Premature end of file</source>
        <translation>vorzeitiges Ende der Datei</translation>
    </message>
    <message>
        <source>CRC error</source>
        <translation>Prüfsumme stimmt nicht</translation>
    </message>
    <message>
        <source>Compression method not supported</source>
        <translation>Packverfahren nicht unterstützt</translation>
    </message>
    <message>
        <source>Encryption method not supported</source>
        <translation>Verschlüsselung nicht unterstützt</translation>
    </message>
    <message>
        <source>No password provided</source>
        <translation>kein Kennwort angegeben</translation>
    </message>
    <message>
        <source>The file says {0}, which makes the top {1} °C: no run. As {2} it would be {3} °C.</source>
        <translation>Die Datei sagt {0}, damit liegt der höchste Wert bei {1} °C: das ist kein Lauf. Als {2} wären es {3} °C.</translation>
    </message>
    <message>
        <source>falls far below its start and never rises above it</source>
        <translation>fällt weit unter seinen Anfang und steigt nie darüber</translation>
    </message>
    <message>
        <source>the server does not answer: none runs there</source>
        <translation>der Server antwortet nicht: Dort läuft keiner</translation>
    </message>
    <message>
        <source>the server&apos;s name is not known in the network</source>
        <translation>der Name des Servers ist im Netz nicht bekannt</translation>
    </message>
    <message>
        <source>the server is starting or stopping</source>
        <translation>der Server startet gerade oder wird beendet</translation>
    </message>
    <message>
        <source>the server has no connection free</source>
        <translation>der Server hat keine Verbindung frei</translation>
    </message>
    <message>
        <source>the server takes too long to answer</source>
        <translation>der Server braucht zu lange für eine Antwort</translation>
    </message>
    <message>
        <source>the server has no room left on its disk</source>
        <translation>der Server hat keinen Platz mehr auf seinem Datenträger</translation>
    </message>
    <message>
        <source>the server was left</source>
        <translation>der Server wurde verlassen</translation>
    </message>
    <message>
        <source>the server refuses: it wants a password, and the password file has none for it</source>
        <translation>der Server lehnt ab: Er verlangt ein Passwort, und in der Passwortdatei steht keines für ihn</translation>
    </message>
    <message>
        <source>the server refuses: the password of {0} is wrong</source>
        <translation>der Server lehnt ab: Das Passwort von {0} ist falsch</translation>
    </message>
    <message>
        <source>the server refuses: it knows no user {0}</source>
        <translation>der Server lehnt ab: Er kennt keinen Benutzer {0}</translation>
    </message>
    <message>
        <source>the server refuses: it has no database {0}</source>
        <translation>der Server lehnt ab: Er hat keine Datenbank {0}</translation>
    </message>
    <message>
        <source>the server refuses: {0} may not connect from this computer</source>
        <translation>der Server lehnt ab: {0} darf sich von diesem Computer aus nicht verbinden</translation>
    </message>
    <message>
        <source>the server refuses: it can only be read at present</source>
        <translation>der Server lehnt ab: Er kann zurzeit nur gelesen werden</translation>
    </message>
    <message>
        <source>the server refuses: this user may not do this ({0})</source>
        <translation>der Server lehnt ab: Dieser Benutzer darf das nicht ({0})</translation>
    </message>
    <message>
        <source>another transaction was in the way</source>
        <translation>eine andere Transaktion war im Weg</translation>
    </message>
    <message>
        <source>another program holds the archive</source>
        <translation>ein anderes Programm hält das Archiv fest</translation>
    </message>
    <message>
        <source>the disk does not read or write</source>
        <translation>der Datenträger liest oder schreibt nicht</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>die Datei kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>the server&apos;s archive has version {0}, this program needs version {1}: the owner of its tables brings it forward with the command ovenwright archive list</source>
        <translation>das Archiv auf dem Server hat Version {0}, dieses Programm braucht Version {1}: Der Eigentümer seiner Tabellen bringt es mit dem Befehl ovenwright archive list auf den Stand</translation>
    </message>
    <message>
        <source>the backup {0} cannot be named</source>
        <translation>die Sicherung {0} kann nicht benannt werden</translation>
    </message>
    <message>
        <source>there are no bytes {0}</source>
        <translation>es gibt keine Bytes {0}</translation>
    </message>
    <message>
        <source>{0} does not hold: verify the archive</source>
        <translation>{0} hält der Prüfung nicht stand: Das Archiv ist mit archive verify zu prüfen</translation>
    </message>
    <message>
        <source>{0} names bytes that are missing: {1}</source>
        <translation>{0} nennt Bytes, die fehlen: {1}</translation>
    </message>
    <message>
        <source>it has {0} records of the chain {1}, but {2} were moved to it: it has lost records</source>
        <translation>es hat {0} Datensätze der Kette {1}, aber {2} wurden dorthin gebracht: Es hat Datensätze verloren</translation>
    </message>
    <message>
        <source>it has another record {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>es hat einen anderen Datensatz {0} als {1}: Eines der beiden wurde geändert oder aus einer Kopie fortgesetzt</translation>
    </message>
    <message>
        <source>it has another note of the printed sheet of {0} than {1}: one of the two was changed or continued from a copy</source>
        <translation>es hat einen anderen Vermerk zum gedruckten Blatt von {0} als {1}: Eines der beiden wurde geändert oder aus einer Kopie fortgesetzt</translation>
    </message>
    <message>
        <source>it has lost notes of printed sheets that were moved to it, of the chain {0}</source>
        <translation>es hat Vermerke zu gedruckten Blättern der Kette {0} verloren, die dorthin gebracht wurden</translation>
    </message>
    <message>
        <source>an id of the archive</source>
        <translation>eine Kennung des Archivs</translation>
    </message>
    <message>
        <source>an id of the archive, or the digest of a log or a record from a sheet</source>
        <translation>eine Kennung des Archivs oder die Prüfsumme eines Logs oder Datensatzes von einem Blatt</translation>
    </message>
    <message>
        <source>found {0}, expected a closing ]</source>
        <translation>{0} gefunden, eine schließende ] erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing ]</source>
        <translation>{0} gefunden, ein Komma oder eine schließende ] erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected a comma or a closing }</source>
        <translation>{0} gefunden, ein Komma oder eine schließende } erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected a closing quote</source>
        <translation>{0} gefunden, ein schließendes Anführungszeichen erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected \\ or / in place of \</source>
        <translation>{0} gefunden, \\ oder / anstelle von \ erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; behind the key</source>
        <translation>{0} gefunden, „=“ hinter dem Schlüssel erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected &quot;=&quot; and a value</source>
        <translation>{0} gefunden, „=“ und ein Wert erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected a value</source>
        <translation>{0} gefunden, ein Wert erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected the end of the line</source>
        <translation>{0} gefunden, das Zeilenende erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected a number, true, false, or a text in quotes</source>
        <translation>{0} gefunden, eine Zahl, true, false oder ein Text in Anführungszeichen erwartet</translation>
    </message>
    <message>
        <source>found {0}, expected a key, &quot;=&quot; and a value</source>
        <translation>{0} gefunden, ein Schlüssel, „=“ und ein Wert erwartet</translation>
    </message>
    <message>
        <source>the end of the line</source>
        <translation>das Zeilenende</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>das Dateiende</translation>
    </message>
    <message>
        <source>a control character</source>
        <translation>ein Steuerzeichen</translation>
    </message>
    <message>
        <source>a position on the board, 0 to {0} mm</source>
        <translation>eine Stelle auf der Baugruppe, 0 bis {0} mm</translation>
    </message>
    <message>
        <source>found the channel &quot;{0}&quot;, the name of one and the number of another, expected {1}</source>
        <translation>Kanal „{0}“ gefunden, der Name des einen und die Nummer eines anderen, {1} erwartet</translation>
    </message>
    <message>
        <source>&quot;{0}&quot; placed by its name as well</source>
        <translation>auch „{0}“ mit Namen genannt</translation>
    </message>
    <message>
        <source>a number from {0} to {1}</source>
        <translation>eine Zahl von {0} bis {1}</translation>
    </message>
    <message>
        <source>a factor above 0</source>
        <translation>ein Faktor über 0</translation>
    </message>
    <message>
        <source>a column from 1</source>
        <translation>eine Spalte ab 1</translation>
    </message>
    <message>
        <source>one character, or &quot;fixed width&quot;</source>
        <translation>ein Zeichen oder „fixed width“</translation>
    </message>
    <message>
        <source>found no log &quot;{0}&quot;, expected a file</source>
        <translation>kein Log „{0}“ gefunden, eine Datei erwartet</translation>
    </message>
    <message>
        <source>{0}: cannot be read: {1}</source>
        <translation>{0}: lässt sich nicht lesen: {1}</translation>
    </message>
    <message>
        <source>does not show when the board entered the oven: {0}</source>
        <translation>zeigt nicht, wann die Baugruppe in den Ofen kam: {0}</translation>
    </message>
    <message>
        <source>it begins at {0}, when the board is in the oven already. Log from before the entry, or give the entry with --entry, on the log&apos;s clock</source>
        <translation>es beginnt bei {0}, wenn die Baugruppe schon im Ofen ist. Vor dem Eintritt mit dem Aufzeichnen beginnen oder den Eintritt auf der Uhr des Logs angeben</translation>
    </message>
    <message>
        <source>no thermocouple rises by more than {0}. Check that it is the log of a pass through the oven, and that the thermocouples are attached</source>
        <translation>kein Thermoelement steigt um mehr als {0}. Prüfen, ob es das Log eines Durchlaufs durch den Ofen ist und ob die Thermoelemente befestigt sind</translation>
    </message>
    <message>
        <source>no thermocouple bends upward where the first heated zone would begin. Check that the log, oven and recipe belong together, or give the entry with --entry</source>
        <translation>kein Thermoelement knickt dort nach oben, wo die erste Heizzone beginnen müsste. Prüfen, ob Log, Ofen und Rezept zusammengehören, oder den Eintritt angeben</translation>
    </message>
    <message>
        <source>has no thermocouple on the board with a trace: all are faulty, or placed in the air by the board&apos;s file</source>
        <translation>hat kein Thermoelement mit Kurve auf der Baugruppe: alle sind gestört oder laut Baugruppendatei in der Luft</translation>
    </message>
    <message>
        <source>a temperature from {0} to {1}</source>
        <translation>eine Temperatur von {0} bis {1}</translation>
    </message>
    <message>
        <source>found {0} columns, expected column {1} that the layout names</source>
        <translation>{0} Spalten gefunden, Spalte {1} erwartet, die das Layout nennt</translation>
    </message>
</context>
</TS>
