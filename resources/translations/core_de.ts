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
</TS>
