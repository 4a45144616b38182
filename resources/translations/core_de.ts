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
        <source>The solder is slow to reach its peak: more time above the liquidus, flux spent.</source>
        <translation>Das Lot braucht lange bis zur Spitze: mehr Zeit über Liquidus, Flussmittel verbraucht.</translation>
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
        <source>a zip archive without any</source>
        <translation>ein zip-Archiv ohne ein solches</translation>
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
        <source>No such file or directory</source>
        <translation>Datei oder Ordner nicht vorhanden</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>keine Berechtigung</translation>
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
        <source>the server does not answer ({0})</source>
        <translation>der Server antwortet nicht ({0})</translation>
    </message>
    <message>
        <source>the server refuses ({0})</source>
        <translation>der Server lehnt ab ({0})</translation>
    </message>
    <message>
        <source>another transaction was in the way ({0})</source>
        <translation>eine andere Transaktion war im Weg ({0})</translation>
    </message>
    <message>
        <source>another program holds the archive ({0})</source>
        <translation>ein anderes Programm hält das Archiv ({0})</translation>
    </message>
    <message>
        <source>the disk is full ({0})</source>
        <translation>der Datenträger ist voll ({0})</translation>
    </message>
    <message>
        <source>it cannot be written ({0})</source>
        <translation>es lässt sich nicht schreiben ({0})</translation>
    </message>
    <message>
        <source>it is damaged, or no database ({0})</source>
        <translation>es ist beschädigt oder keine Datenbank ({0})</translation>
    </message>
    <message>
        <source>the database reports an error ({0})</source>
        <translation>die Datenbank meldet einen Fehler ({0})</translation>
    </message>
    <message>
        <source>the file cannot be opened ({0})</source>
        <translation>die Datei lässt sich nicht öffnen ({0})</translation>
    </message>
    <message>
        <source>the disk does not read or write ({0})</source>
        <translation>der Datenträger liest oder schreibt nicht ({0})</translation>
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
</context>
</TS>
