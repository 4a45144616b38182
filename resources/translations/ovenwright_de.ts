<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>Archive</name>
    <message>
        <source>this computer</source>
        <translation>dieser Rechner</translation>
    </message>
    <message>
        <source>Open a log, check it, and keep the run under its lot; ovenwright archive add and ovenwright watch do the same for many logs.</source>
        <translation>Ein Log öffnen, prüfen und den Lauf unter seinem Los aufbewahren; ovenwright archive add und ovenwright watch tun dasselbe für viele Logs.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Erneut versuchen</translation>
    </message>
    <message>
        <source>No run is kept yet.</source>
        <translation>Noch ist kein Lauf aufbewahrt.</translation>
    </message>
    <message>
        <source>The archive&apos;s server does not answer.</source>
        <translation>Der Server des Archivs antwortet nicht.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) wait on this computer and are sent when it is back.</source>
        <translation>
            <numerusform>%n Lauf wartet auf diesem Rechner und wird gesendet, sobald er wieder da ist.</numerusform>
            <numerusform>%n Läufe warten auf diesem Rechner und werden gesendet, sobald er wieder da ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>Runs that are kept meanwhile wait on this computer.</source>
        <translation>Läufe, die inzwischen aufbewahrt werden, warten auf diesem Rechner.</translation>
    </message>
    <message>
        <source>The archive cannot be read.</source>
        <translation>Das Archiv kann nicht gelesen werden.</translation>
    </message>
    <message>
        <source>No run passes the filter.</source>
        <translation>Kein Lauf passt zum Filter.</translation>
    </message>
    <message>
        <source>Show all runs</source>
        <translation>Alle Läufe zeigen</translation>
    </message>
    <message>
        <source>Archive: %1</source>
        <translation>Archiv: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1, %2</source>
        <translation>Archiv: %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n waiting to be sent</source>
        <translation>
            <numerusform>%n wartet auf das Senden</numerusform>
            <numerusform>%n warten auf das Senden</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 away</source>
        <translation>Archiv: %1 nicht erreichbar</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 away, %n record(s) wait here</source>
        <translation>
            <numerusform>Archiv: %1 nicht erreichbar, %n Datensatz wartet hier</numerusform>
            <numerusform>Archiv: %1 nicht erreichbar, %n Datensätze warten hier</numerusform>
        </translation>
    </message>
    <message>
        <source>The archive&apos;s server is slow to answer.</source>
        <translation>Der Server des Archivs antwortet langsam.</translation>
    </message>
    <message>
        <source>The list comes as soon as it does; the other pages work meanwhile.</source>
        <translation>Die Liste kommt, sobald er antwortet; die anderen Seiten arbeiten inzwischen weiter.</translation>
    </message>
    <message>
        <source>Archive: %1 is slow to answer</source>
        <translation>Archiv: %1 antwortet langsam</translation>
    </message>
    <message>
        <source>Archive: %1 refuses</source>
        <translation>Archiv: %1 lehnt ab</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 refuses, %n record(s) wait here</source>
        <translation>
            <numerusform>Archiv: %1 lehnt ab, %n Datensatz wartet hier</numerusform>
            <numerusform>Archiv: %1 lehnt ab, %n Datensätze warten hier</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 cannot be read</source>
        <translation>Archiv: %1 kann nicht gelesen werden</translation>
    </message>
    <message numerus="yes">
        <source>%n refused by the server and kept here</source>
        <translation>
            <numerusform>%n vom Server abgelehnt und hier aufbewahrt</numerusform>
            <numerusform>%n vom Server abgelehnt und hier aufbewahrt</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3 in lot %4: the lists show that one.</source>
        <translation>%1 gehört zu einem Log, das %2 schon aufbewahrt hatte, als %3 in Los %4: Die Listen zeigen jenes.</translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3: the lists show that one.</source>
        <translation>%1 gehört zu einem Log, das %2 schon aufbewahrt hatte, als %3: Die Listen zeigen jenes.</translation>
    </message>
    <message numerus="yes">
        <source>So are %n more.</source>
        <translation>
            <numerusform>Das gilt auch für %n weiteren.</numerusform>
            <numerusform>Das gilt auch für %n weitere.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ChangeNote</name>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>Zone %1, top and bottom</source>
        <translation>Zone %1, oben und unten</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>Zone %1, oben</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>Zone %1, unten</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Predicted: %1</source>
        <translation>Vorhergesagt: %1</translation>
    </message>
    <message>
        <source>smallest margin %1</source>
        <translation>kleinste Reserve %1</translation>
    </message>
    <message>
        <source>Tightest: %1.</source>
        <translation>Am knappsten: %1.</translation>
    </message>
    <message>
        <source>Changed on the oven by</source>
        <translation>Am Ofen geändert von</translation>
    </message>
    <message>
        <source>Confirmed with an instrumented run by</source>
        <translation>Mit einem Messlauf bestätigt von</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>Freigegeben von</translation>
    </message>
    <message>
        <source>Written %1 by Ovenwright %2.</source>
        <translation>Geschrieben %1 von Ovenwright %2.</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, Rev. %2</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>Recipe that was run</source>
        <translation>Gefahrenes Rezept</translation>
    </message>
    <message>
        <source>Learned from the run</source>
        <translation>Gelernt aus dem Lauf</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Process window</source>
        <translation>Prozessfenster</translation>
    </message>
    <message>
        <source>Change note</source>
        <translation>Änderungszettel</translation>
    </message>
    <message>
        <source>This recipe is not predicted to pass. It is for a test run only, not for production.</source>
        <translation>Für dieses Rezept ist kein Bestehen vorhergesagt. Es ist nur für einen Testlauf, nicht für die Fertigung.</translation>
    </message>
    <message>
        <source>Setpoint</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Gemessen: %1</translation>
    </message>
    <message>
        <source>Before it is used</source>
        <translation>Bevor es benutzt wird</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>The model follows these logs with a misfit of %1 (root mean square).</source>
        <translation>Das Modell folgt diesen Logs mit einer Abweichung von %1 (quadratisches Mittel).</translation>
    </message>
    <message>
        <source>To check first: %1</source>
        <translation>Zuerst zu prüfen: %1</translation>
    </message>
    <message>
        <source>New recipe</source>
        <translation>Neues Rezept</translation>
    </message>
    <message>
        <source>Top and bottom are set apart, and no run that was learned from had them apart: what each side does alone is not known.</source>
        <translation>Oben und unten sind verschieden eingestellt, und kein Lauf, aus dem gelernt wurde, hatte sie verschieden: Was jede Seite allein bewirkt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>It is not known how sure it is to pass. Make a test run of it first.</source>
        <translation>Wie sicher es besteht, ist nicht bekannt. Zuerst einen Testlauf damit machen.</translation>
    </message>
    <message>
        <source>It is not sure to pass: %1. Make a test run of it first.</source>
        <translation>Es ist nicht sicher, dass es besteht: %1. Zuerst einen Testlauf damit machen.</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>a list</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Compare</name>
    <message>
        <source>s, not lined up</source>
        <translation>s, nicht ausgerichtet</translation>
    </message>
    <message>
        <source>s from %1</source>
        <comment>a temperature</comment>
        <translation>s ab %1</translation>
    </message>
    <message>
        <source>s from oven entry</source>
        <translation>s ab Ofeneintritt</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1, Rev. %2</translation>
    </message>
    <message>
        <source>A solid, B dashed</source>
        <translation>A durchgezogen, B gestrichelt</translation>
    </message>
    <message>
        <source>No run is open.</source>
        <translation>Kein Lauf ist geöffnet.</translation>
    </message>
    <message>
        <source>Compare holds two runs against each other.</source>
        <translation>Vergleichen hält zwei Läufe gegeneinander.</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>Logs öffnen …</translation>
    </message>
    <message>
        <source>Look at two demo runs</source>
        <translation>Zwei Demo-Läufe ansehen</translation>
    </message>
    <message>
        <source>One run is open: %1.</source>
        <translation>Ein Lauf ist geöffnet: %1.</translation>
    </message>
    <message>
        <source>Compare needs a second one.</source>
        <translation>Zum Vergleichen fehlt ein zweiter.</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>Ein anderes Log öffnen …</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>Lauf hinzufügen …</translation>
    </message>
    <message>
        <source>Comparing.</source>
        <translation>Es wird verglichen.</translation>
    </message>
    <message>
        <source>These runs cannot be compared.</source>
        <translation>Diese Läufe lassen sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>Gegen das Prozessfenster von A vergleichen</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thermocouple(s) in common</source>
        <translation>
            <numerusform>%n gemeinsames Thermoelement</numerusform>
            <numerusform>%n gemeinsame Thermoelemente</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>runs, thermocouples in common</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>CurvePlot</name>
    <message>
        <source>Hottest to coldest, peak %1</source>
        <translation>Von heiß nach kalt, Spitze in %1</translation>
    </message>
    <message>
        <source>At %1 s</source>
        <translation>Bei %1 s</translation>
    </message>
    <message>
        <source>At %1 s, zone %2, %3 mm</source>
        <translation>Bei %1 s, Zone %2, %3 mm</translation>
    </message>
    <message>
        <source>At %1 s, %2 mm</source>
        <translation>Bei %1 s, %2 mm</translation>
    </message>
    <message>
        <source>Predicted peak, %1</source>
        <translation>Vorhergesagte Spitze, %1</translation>
    </message>
    <message>
        <source>error band, 95 %</source>
        <translation>Fehlerband, 95 %</translation>
    </message>
</context>
<context>
    <name>DropFrame</name>
    <message numerus="yes">
        <source>Drop to read %n log(s)</source>
        <translation>
            <numerusform>Loslassen, um %n Log zu lesen</numerusform>
            <numerusform>Loslassen, um %n Logs zu lesen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LotLane</name>
    <message>
        <source>lower limit</source>
        <translation>untere Grenze</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>obere Grenze</translation>
    </message>
    <message numerus="yes">
        <source>each of the %n run(s)</source>
        <translation>
            <numerusform>der eine Lauf</numerusform>
            <numerusform>jeder der %n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>mean and ± 3 s</source>
        <translation>Mittel und ± 3 s</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>95 % of runs, with 95 % confidence</source>
        <translation>95 % der Läufe, mit 95 % Vertrauen</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % der Läufe</translation>
    </message>
</context>
<context>
    <name>LotWords</name>
    <message>
        <source>d MMMM</source>
        <comment>date of this year</comment>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date</comment>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMM yyyy HH:mm</source>
        <comment>date and time</comment>
        <translation>d. MMM yyyy HH:mm</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>day on an axis</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>when, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>lot, when, value</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Moving range</source>
        <translation>Gleitende Spannweite</translation>
    </message>
    <message>
        <source>Range in the subgroup</source>
        <translation>Spannweite in der Stichprobe</translation>
    </message>
    <message>
        <source>Standard deviation in the subgroup</source>
        <translation>Standardabweichung in der Stichprobe</translation>
    </message>
    <message>
        <source>Mean of the subgroup</source>
        <translation>Mittel der Stichprobe</translation>
    </message>
    <message>
        <source>Weighted moving average (EWMA)</source>
        <translation>Gewichtetes gleitendes Mittel (EWMA)</translation>
    </message>
    <message>
        <source>beyond the limits</source>
        <translation>außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>%1 upper</source>
        <translation>%1 oben</translation>
    </message>
    <message>
        <source>%1 centre</source>
        <translation>%1 Mitte</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 unten</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>requirement, placement</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>All %1 runs</source>
        <translation>Alle %1 Läufe</translation>
    </message>
    <message>
        <source>no board</source>
        <translation>ohne Baugruppe</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>board, revision of the window</comment>
        <translation>%1, Rev. %2</translation>
    </message>
    <message>
        <source>Western Electric rules</source>
        <translation>Western-Electric-Regeln</translation>
    </message>
    <message>
        <source>Nelson rules</source>
        <translation>Nelson-Regeln</translation>
    </message>
    <message numerus="yes">
        <source>%1: such a chart takes two subgroups of %n runs.</source>
        <translation>
            <numerusform>%1: Eine solche Karte braucht zwei Stichproben von %n Lauf.</numerusform>
            <numerusform>%1: Eine solche Karte braucht zwei Stichproben von %n Läufen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: a control chart takes two runs with a value.</source>
        <translation>%1: Eine Regelkarte braucht zwei Läufe mit einem Wert.</translation>
    </message>
    <message numerus="yes">
        <source>%1: the weighted average stays within its limits over %n runs.</source>
        <translation>
            <numerusform>%1: Das gewichtete Mittel bleibt über %n Lauf in seinen Grenzen.</numerusform>
            <numerusform>%1: Das gewichtete Mittel bleibt über %n Läufe in seinen Grenzen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no signal in %n runs by the %2.</source>
        <translation>
            <numerusform>%1: kein Signal in %n Lauf nach den %2.</numerusform>
            <numerusform>%1: kein Signal in %n Läufen nach den %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 liegt seit %n Stichprobe, seit dem %2, über der Mittellinie.</numerusform>
            <numerusform>%1 liegt seit %n Stichproben, seit dem %2, über der Mittellinie.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 liegt seit %n Stichprobe, seit dem %2, unter der Mittellinie.</numerusform>
            <numerusform>%1 liegt seit %n Stichproben, seit dem %2, unter der Mittellinie.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 liegt seit %n Lauf, seit dem %2, über der Mittellinie.</numerusform>
            <numerusform>%1 liegt seit %n Läufen, seit dem %2, über der Mittellinie.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 liegt seit %n Lauf, seit dem %2, unter der Mittellinie.</numerusform>
            <numerusform>%1 liegt seit %n Läufen, seit dem %2, unter der Mittellinie.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 signals on %2: %3.</source>
        <translation>%1 gibt am %2 ein Signal: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1 signals, last on %2: %3; %n signals in all.</source>
        <translation>
            <numerusform>%1 gibt Signale, zuletzt am %2: %3; insgesamt %n Signal.</numerusform>
            <numerusform>%1 gibt Signale, zuletzt am %2: %3; insgesamt %n Signale.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are few: whether the values are normal does not show, and the limits of the index are wide.</source>
        <translation>
            <numerusform>%n Lauf ist wenig: Ob die Werte normalverteilt sind, zeigt sich nicht, und die Grenzen des Index sind weit.</numerusform>
            <numerusform>%n Läufe sind wenige: Ob die Werte normalverteilt sind, zeigt sich nicht, und die Grenzen des Index sind weit.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) without a value</source>
        <translation>
            <numerusform>%n Lauf ohne Wert</numerusform>
            <numerusform>%n Läufe ohne Wert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) with a bound only</source>
        <translation>
            <numerusform>%n Lauf nur mit einer Schranke</numerusform>
            <numerusform>%n Läufe nur mit einer Schranke</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>an index takes %n runs</source>
        <translation>
            <numerusform>ein Index braucht %n Lauf</numerusform>
            <numerusform>ein Index braucht %n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>a count is not normally distributed</source>
        <translation>eine Anzahl ist nicht normalverteilt</translation>
    </message>
    <message>
        <source>no limit is known, or the limits changed</source>
        <translation>keine Grenze ist bekannt, oder die Grenzen haben sich geändert</translation>
    </message>
    <message>
        <source>all values are equal</source>
        <translation>alle Werte sind gleich</translation>
    </message>
    <message>
        <source>No index: %1.</source>
        <translation>Kein Index: %1.</translation>
    </message>
    <message>
        <source>%1 (95 %: %2 to %3)</source>
        <comment>index and its interval</comment>
        <translation>%1 (95 %: %2 bis %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>smallest, largest</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittelwert</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <source>Smallest, largest</source>
        <translation>Kleinster, größter</translation>
    </message>
    <message>
        <source>Ppk</source>
        <translation>Ppk</translation>
    </message>
    <message>
        <source>Cpk, short term</source>
        <translation>Cpk, kurzfristig</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>lower limit %1</source>
        <translation>untere Grenze %1</translation>
    </message>
    <message>
        <source>upper limit %1</source>
        <translation>obere Grenze %1</translation>
    </message>
    <message>
        <source>Signal by the %1, at the run that completes it</source>
        <translation>Signal nach den %1, bei dem Lauf, der es vollendet</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) measured by another definition, which has an entry of its own.</source>
        <translation>
            <numerusform>%n Lauf nach anderer Definition gemessen, die einen eigenen Eintrag hat.</numerusform>
            <numerusform>%n Läufe nach anderer Definition gemessen, die einen eigenen Eintrag hat.</numerusform>
        </translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <comment>tolerance interval</comment>
        <translation>95 % der Läufe</translation>
    </message>
    <message>
        <source>Pp</source>
        <translation>Pp</translation>
    </message>
    <message>
        <source>Cp, short term</source>
        <translation>Cp, kurzfristig</translation>
    </message>
</context>
<context>
    <name>Model</name>
    <message>
        <source>no model fits this log</source>
        <translation>kein Modell passt zu diesem Log</translation>
    </message>
    <message>
        <source>the log does not follow this oven and recipe (misfit %1 °C): check that recipe, speed, oven and entry belong to this log</source>
        <translation>das Log folgt diesem Ofen und Rezept nicht (Abweichung %1 °C): prüfen, ob Rezept, Geschwindigkeit, Ofen und Eintritt zu diesem Log gehören</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C hotter than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>Zone %1 scheint %2 °C heißer als ihr Sollwert: Rezept, Zone und ihr Thermoelement prüfen</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C colder than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>Zone %1 scheint %2 °C kälter als ihr Sollwert: Rezept, Zone und ihr Thermoelement prüfen</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zone %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>das Log folgt diesem Rezept in Zone %1 nicht: prüfen, ob Rezept und Ofen zu diesem Log gehören und keine Sollwerte vertauscht sind</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zones %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>das Log folgt diesem Rezept in den Zonen %1 nicht: prüfen, ob Rezept und Ofen zu diesem Log gehören und keine Sollwerte vertauscht sind</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s later than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>zu den Kurven passt ein Eintritt, der %1 s ± %2 s später ist als der angegebene: Eintritt, Geschwindigkeit und Einlauf des Ofens prüfen</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s earlier than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>zu den Kurven passt ein Eintritt, der %1 s ± %2 s früher ist als der angegebene: Eintritt, Geschwindigkeit und Einlauf des Ofens prüfen</translation>
    </message>
    <message>
        <source>no thermocouple rises above %1 °C: the log does not show a board going through an oven</source>
        <translation>kein Thermoelement steigt über %1 °C: das Log zeigt keine Baugruppe, die durch einen Ofen läuft</translation>
    </message>
    <message>
        <source>the log ends %1 s before the board has left zone %2 by this recipe&apos;s speed: check the speed, the entry and the oven, or log until the board has cooled</source>
        <translation>das Log endet %1 s bevor die Baugruppe bei der Geschwindigkeit dieses Rezepts Zone %2 verlassen hat: Geschwindigkeit, Eintritt und Ofen prüfen, oder aufzeichnen, bis die Baugruppe abgekühlt ist</translation>
    </message>
    <message>
        <source>the log ends at %1 °C: how the board cools is little known; log until it has cooled</source>
        <translation>das Log endet bei %1 °C: wie die Baugruppe abkühlt, ist wenig bekannt; aufzeichnen, bis sie abgekühlt ist</translation>
    </message>
    <message>
        <source>%1 follows the air: its bead may be detached, or it belongs to kind &quot;air&quot;</source>
        <translation>%1 folgt der Luft: die Perle ist vielleicht abgelöst, oder die Messstelle ist von der Art „Luft“</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows it down is not known from this log</source>
        <translation>%1 blieb unter %2 °C: wie das Schmelzen es bremst, ist aus diesem Log nicht bekannt</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows them down is not known from this log</source>
        <translation>%1 blieben unter %2 °C: wie das Schmelzen sie bremst, ist aus diesem Log nicht bekannt</translation>
    </message>
    <message>
        <source>every thermocouple follows the air, so nothing is known of a board: check that the beads are attached</source>
        <translation>alle Thermoelemente folgen der Luft, von einer Baugruppe ist also nichts bekannt: prüfen, ob die Perlen befestigt sind</translation>
    </message>
    <message>
        <source>one thermocouple only: what is predicted holds for its place, not for the hottest and coldest of the board</source>
        <translation>nur ein Thermoelement: was vorhergesagt wird, gilt für seine Stelle, nicht für die heißeste und die kälteste der Baugruppe</translation>
    </message>
    <message>
        <source>%1 is %2 mm long, so it lies in several zones at once (zone %3 has %4 mm): each of its places is predicted by itself, and the confirming run has to show them all</source>
        <translation>%1 ist %2 mm lang und liegt also in mehreren Zonen zugleich (Zone %3 hat %4 mm): jede Stelle wird für sich vorhergesagt, und der bestätigende Lauf muss sie alle zeigen</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % faster than the recipe&apos;s %3 mm/min, or zones so much shorter: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>zu den Kurven passt ein Band, das %1 % ± %2 % schneller ist als die %3 mm/min des Rezepts, oder um so viel kürzere Zonen: Geschwindigkeit, Band und Zonenlängen in der Datei des Ofens prüfen</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % slower than the recipe&apos;s %3 mm/min, or zones so much longer: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>zu den Kurven passt ein Band, das %1 % ± %2 % langsamer ist als die %3 mm/min des Rezepts, oder um so viel längere Zonen: Geschwindigkeit, Band und Zonenlängen in der Datei des Ofens prüfen</translation>
    </message>
    <message>
        <source>No suggestion: the window requires nothing that can be predicted for this board.</source>
        <translation>Kein Vorschlag: das Fenster verlangt nichts, was sich für diese Baugruppe vorhersagen lässt.</translation>
    </message>
    <message>
        <source>No recipe was found that passes by the guarded rule of the window: what is suggested is inside the limits, and within its uncertainty of one.</source>
        <translation>Es wurde kein Rezept gefunden, das nach der Regel mit Sicherheitsabstand besteht: was vorgeschlagen wird, liegt innerhalb der Grenzen und innerhalb seiner Unsicherheit an einer.</translation>
    </message>
    <message>
        <source>Fastest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>Am schnellsten: nahe dem jetzigen wurde kein Rezept gefunden, das eine Reserve von %1 % behält.</translation>
    </message>
    <message>
        <source>Coolest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>Am kühlsten: nahe dem jetzigen wurde kein Rezept gefunden, das eine Reserve von %1 % behält.</translation>
    </message>
    <message>
        <source>Fastest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>Am schnellsten: es wurde kein Rezept gefunden, das eine Reserve von %1 % behält; die größte ist %2 %.</translation>
    </message>
    <message>
        <source>Coolest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>Am kühlsten: es wurde kein Rezept gefunden, das eine Reserve von %1 % behält; die größte ist %2 %.</translation>
    </message>
    <message>
        <source>Least change: no recipe closer to the present one was found that passes.</source>
        <translation>Kleinste Änderung: es wurde kein Rezept näher am jetzigen gefunden, das besteht.</translation>
    </message>
    <message>
        <source>Fastest: none was found that passes about as likely as the other suggestions.</source>
        <translation>Am schnellsten: keines wurde gefunden, das etwa so wahrscheinlich besteht wie die anderen Vorschläge.</translation>
    </message>
    <message>
        <source>Coolest: none was found that passes about as likely as the other suggestions.</source>
        <translation>Am kühlsten: keines wurde gefunden, das etwa so wahrscheinlich besteht wie die anderen Vorschläge.</translation>
    </message>
    <message>
        <source>Fastest: the present recipe is that already.</source>
        <translation>Am schnellsten: das jetzige Rezept ist es schon.</translation>
    </message>
    <message>
        <source>Coolest: the present recipe is that already.</source>
        <translation>Am kühlsten: das jetzige Rezept ist es schon.</translation>
    </message>
    <message>
        <source>No next run is named: of the changes of recipe that were tried none is known to keep every body inside its limits and every peak below its upper limit.</source>
        <translation>Kein nächster Lauf wird genannt: von keiner der versuchten Änderungen des Rezepts ist bekannt, dass jedes Bauteil innerhalb seiner Grenzen und jede Spitze unter ihrer Obergrenze bleibt.</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Line %1, column %2: </source>
        <translation>Zeile %1, Spalte %2: </translation>
    </message>
    <message>
        <source>Line %1: </source>
        <translation>Zeile %1: </translation>
    </message>
    <message>
        <source>found “%1”, expected %2</source>
        <translation>gefunden „%1“, erwartet %2</translation>
    </message>
    <message>
        <source>found %1, expected %2</source>
        <translation>gefunden: %1, erwartet: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>Datei öffnen</translation>
    </message>
    <message>
        <source>Open its folder</source>
        <translation>Ordner öffnen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>ReadingChoices</name>
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
        <translation>Uhr m:s</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>Uhr h:m:s</translation>
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
        <source>number of the row</source>
        <translation>Nummer der Zeile</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Senkrechter Strich</translation>
    </message>
    <message>
        <source>Blanks</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>mV</source>
        <translation>mV</translation>
    </message>
    <message>
        <source>Day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>Month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>Year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Columns %1</source>
        <translation>Spalten %1</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>As they stand</source>
        <translation>Wie sie dastehen</translation>
    </message>
    <message>
        <source>Tenths</source>
        <translation>Zehntel</translation>
    </message>
    <message>
        <source>Hundredths</source>
        <translation>Hundertstel</translation>
    </message>
    <message>
        <source>Type %1</source>
        <translation>Typ %1</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Table %1</source>
        <translation>Tabelle %1</translation>
    </message>
    <message>
        <source>%1, %2 rows</source>
        <translation>%1, %2 Zeilen</translation>
    </message>
</context>
<context>
    <name>RecipeFile</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, Rev. %2</translation>
    </message>
    <message>
        <source>changed from %1; a prediction, to be confirmed with an instrumented run</source>
        <translation>geändert aus %1; eine Vorhersage, mit einem Messlauf zu bestätigen</translation>
    </message>
</context>
<context>
    <name>RecipeLimits</name>
    <message>
        <source>The speed stays at %1: the oven goes no faster.</source>
        <translation>Die Geschwindigkeit bleibt bei %1: Schneller läuft der Ofen nicht.</translation>
    </message>
    <message>
        <source>The speed stays at %1: the oven goes no slower.</source>
        <translation>Die Geschwindigkeit bleibt bei %1: Langsamer läuft der Ofen nicht.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows a step of %3 to zone %4.</source>
        <translation>Zone %1 bleibt bei %2: Der Ofen erlaubt einen Schritt von %3 zu Zone %4.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows %3 between top and bottom.</source>
        <translation>Zone %1 bleibt bei %2: Der Ofen erlaubt %3 zwischen oben und unten.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no more.</source>
        <translation>Zone %1 bleibt bei %2: Mehr erlaubt der Ofen nicht.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no less.</source>
        <translation>Zone %1 bleibt bei %2: Weniger erlaubt der Ofen nicht.</translation>
    </message>
</context>
<context>
    <name>Scene</name>
    <message>
        <source>%1 (TL)</source>
        <comment>temperature of the liquidus</comment>
        <translation>%1 (TL)</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 %2 %3, limit %4</source>
        <translation>%1 %2 %3, Grenze %4</translation>
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
        <translation>Kein Lauf ist offen. Hier steht das Ergebnis als ein Satz.</translation>
    </message>
    <message>
        <source>Each part of it leads to the place on the curve, the limit and the oven zones it came from.</source>
        <translation>Jeder Teil davon führt zu der Stelle der Kurve, der Grenze und den Ofenzonen, aus denen er kommt.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n Warnung</numerusform>
            <numerusform>%n Warnungen</numerusform>
        </translation>
    </message>
    <message>
        <source>The numbers are no run in the unit that the file states.</source>
        <translation>In der Einheit, die die Datei nennt, sind die Zahlen kein Lauf.</translation>
    </message>
    <message>
        <source>The file holds several tables: one was chosen.</source>
        <translation>Die Datei enthält mehrere Tabellen: eine wurde gewählt.</translation>
    </message>
    <message>
        <source>The unit was assumed in reading the log.</source>
        <translation>Die Einheit wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>The time was assumed in reading the log.</source>
        <translation>Die Zeit wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>The order of the date was assumed in reading the log.</source>
        <translation>Die Reihenfolge im Datum wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>The decimal sign was assumed in reading the log.</source>
        <translation>Das Dezimalzeichen wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>The type of thermocouple was assumed in reading the log.</source>
        <translation>Der Typ der Thermoelemente wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>The cold junction was assumed in reading the log.</source>
        <translation>Die Vergleichsstelle wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>Something was assumed in reading the log.</source>
        <translation>Etwas wurde beim Lesen angenommen.</translation>
    </message>
    <message numerus="yes">
        <source>%1 rows in %n channel(s).</source>
        <translation>
            <numerusform>%1 Zeilen in %n Kanal.</numerusform>
            <numerusform>%1 Zeilen in %n Kanälen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Times count from oven entry, %1 s after the first row.</source>
        <translation>Zeiten zählen ab Ofeneintritt, %1 s nach der ersten Zeile.</translation>
    </message>
    <message>
        <source>Nothing has been changed in the file. Corrections take effect at once and can be undone.</source>
        <translation>In der Datei wurde nichts geändert. Berichtigungen wirken sofort und lassen sich zurücknehmen.</translation>
    </message>
    <message>
        <source>A thermocouple was turned round in reading the log.</source>
        <translation>Ein Thermoelement wurde beim Lesen umgekehrt.</translation>
    </message>
    <message>
        <source>The encoding was assumed in reading the log.</source>
        <translation>Die Zeichenkodierung wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>The scale of the numbers was assumed in reading the log.</source>
        <translation>Der Maßstab der Zahlen wurde beim Lesen angenommen.</translation>
    </message>
    <message>
        <source>Reading %1: %2 rows so far.</source>
        <translation>%1 wird gelesen: bisher %2 Zeilen.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>s from oven entry</source>
        <translation>s ab Ofeneintritt</translation>
    </message>
    <message>
        <source>s on the log&apos;s clock</source>
        <translation>s auf der Uhr des Logs</translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation>%1, Revision %2</translation>
    </message>
    <message>
        <source>thermocouple %1</source>
        <translation>Thermoelement %1</translation>
    </message>
    <message>
        <source>%1, instrument %2, U = 2u</source>
        <translation>%1, Messgerät %2, U = 2u</translation>
    </message>
    <message>
        <source>found from the curves</source>
        <translation>aus den Kurven gefunden</translation>
    </message>
    <message>
        <source>given</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>%1 ± %2 s on the log&apos;s clock, %3</source>
        <translation>%1 ± %2 s auf der Uhr des Logs, %3</translation>
    </message>
    <message>
        <source>lower limit by part</source>
        <translation>untere Grenze je Teil</translation>
    </message>
    <message>
        <source>upper limit by part</source>
        <translation>obere Grenze je Teil</translation>
    </message>
    <message>
        <source>Guarded, w = U (ILAC-G8:09/2019)</source>
        <translation>Mit Schutzband, w = U (ILAC-G8:09/2019)</translation>
    </message>
    <message>
        <source>Simple: inside the limits, limits included</source>
        <translation>Einfach: innerhalb der Grenzen, Grenzen eingeschlossen</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>A suggested or changed recipe is a prediction: a qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>Ein vorgeschlagenes oder geändertes Rezept ist eine Vorhersage: Eine sachkundige Person bestätigt es vor der Fertigung mit einem Messlauf, innerhalb der Grenzwerte von Paste, Bauteilen, Leiterplatte und Ofen.</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>Heiße Flächen, laufendes Band, Flussmitteldämpfe: Sicherheitsregeln des Betriebs, örtliche Vorschriften und die Datenblätter der Hersteller gehen allem vor, was hier steht.</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>Mitgelieferte Prozessfenster sind allgemein; maßgeblich ist das Datenblatt der Paste.</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Prozessfenster</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1, angenommen</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Entscheidungsregel</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Operator</source>
        <translation>Bediener</translation>
    </message>
    <message>
        <source>Run at</source>
        <translation>Gemessen am</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>Ofeneintritt</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Datensatz</translation>
    </message>
    <message>
        <source>%1, number %2 of its chain</source>
        <translation>%1, Nummer %2 seiner Kette</translation>
    </message>
    <message>
        <source>Chain</source>
        <translation>Kette</translation>
    </message>
    <message>
        <source>%1; %2 bytes</source>
        <translation>%1; %2 Bytes</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Los %1</translation>
    </message>
    <message>
        <source>Thermal profile</source>
        <translation>Temperaturprofil</translation>
    </message>
    <message>
        <source>Thermal profile, %1</source>
        <translation>Temperaturprofil, %1</translation>
    </message>
    <message>
        <source>Run %1 of %2 in the log</source>
        <translation>Lauf %1 von %2 im Log</translation>
    </message>
    <message>
        <source>behind ± stands the expanded uncertainty U = 2u (about 95 %), from thermocouple, instrument, noise and sampling (JCGM 100). How a bead is attached, and how runs of the oven differ, is not in it.</source>
        <translation>hinter ± steht die erweiterte Unsicherheit U = 2u (etwa 95 %) aus Thermoelement, Messgerät, Rauschen und Abtastung (JCGM 100). Wie eine Perle befestigt ist und wie sich Läufe des Ofens unterscheiden, ist nicht darin.</translation>
    </message>
    <message>
        <source>Guarded</source>
        <translation>Mit Schutzband</translation>
    </message>
    <message>
        <source>pass: clear of the limits by U or more; conditional: within U of a limit, inside (pass) or outside (fail); fail: outside by more than U.</source>
        <translation>bestanden: um U oder mehr von den Grenzen entfernt; bedingt: näher als U an einer Grenze, innerhalb (bestanden) oder außerhalb (nicht bestanden); nicht bestanden: um mehr als U außerhalb.</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Gelesen als</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Faults, on the log’s clock</source>
        <translation>Fehler, auf der Uhr des Logs</translation>
    </message>
    <message>
        <source>%1 may be wrong: %2</source>
        <translation>%1 ist vielleicht falsch: %2</translation>
    </message>
    <message>
        <source>To note</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Log</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>Geprüft von, Datum</translation>
    </message>
    <message>
        <source>Released by, date</source>
        <translation>Freigegeben von, Datum</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>Temperatur über der Zeit</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>Grenzbahnen</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>Thermoelement</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>Kleinste</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>On the next page</source>
        <translation>Auf der nächsten Seite</translation>
    </message>
    <message>
        <source>Made %1 from the archive</source>
        <translation>Erstellt %1 aus dem Archiv</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>Erstellt %1</translation>
    </message>
    <message>
        <source>limit lanes</source>
        <translation>Grenzbahnen</translation>
    </message>
    <message>
        <source>results by thermocouple</source>
        <translation>Ergebnisse je Thermoelement</translation>
    </message>
    <message>
        <source>limits, sources and how the log was read</source>
        <translation>Grenzen, Quellen und wie das Log gelesen wurde</translation>
    </message>
    <message>
        <source>%1, continued from page 1: %2</source>
        <translation>%1, Fortsetzung von Seite 1: %2</translation>
    </message>
    <message>
        <source>Limits, sources and how the log was read</source>
        <translation>Grenzen, Quellen und wie das Log gelesen wurde</translation>
    </message>
    <message>
        <source>%1 upper</source>
        <translation>%1 obere</translation>
    </message>
    <message>
        <source>%1 centre</source>
        <translation>%1 Mitte</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 untere</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation>Aufgezeichnet von</translation>
    </message>
    <message>
        <source>Recorded verdict</source>
        <translation>Aufgezeichnetes Urteil</translation>
    </message>
    <message>
        <source>%1; this sheet was judged anew</source>
        <translation>%1; dieses Blatt wurde neu beurteilt</translation>
    </message>
    <message numerus="yes">
        <source>%n different</source>
        <translation>
            <numerusform>%n verschiedener</numerusform>
            <numerusform>%n verschiedene</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>Der Lauf besteht.</numerusform>
            <numerusform>Alle %n Läufe bestehen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>%1 von %n Lauf besteht.</numerusform>
            <numerusform>%1 von %n Läufen bestehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Smallest margin %1</source>
        <translation>Kleinste Reserve %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: run by run, the least capable of all</source>
        <translation>%1: Lauf für Lauf, das am wenigsten fähige von allen</translation>
    </message>
    <message>
        <source>Statistics</source>
        <translation>Statistik</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Statistics by requirement and placement</source>
        <translation>Statistik nach Anforderung und Messstelle</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Protokolle</translation>
    </message>
    <message>
        <source>Limits, sources and how the first log was read</source>
        <translation>Grenzen, Quellen und wie das erste Protokoll gelesen wurde</translation>
    </message>
    <message>
        <source>%1, run %2</source>
        <translation>%1, Lauf %2</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>Kleinste Reserve bei</translation>
    </message>
    <message>
        <source>SHA-256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Anforderung</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittelwert</translation>
    </message>
    <message>
        <source>St. dev.</source>
        <translation>Std.-Abw.</translation>
    </message>
    <message>
        <source>Smallest, largest</source>
        <translation>Kleinster, größter</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % der Läufe</translation>
    </message>
    <message>
        <source>95 % confidence</source>
        <translation>95 % Vertrauen</translation>
    </message>
    <message>
        <source>Signals</source>
        <translation>Signale</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1, Zeit der Logdatei</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1, wie angegeben</translation>
    </message>
    <message>
        <source>Least capable: %1, Ppk %2 (95 % limits %3 to %4) over %5 runs.</source>
        <translation>Am wenigsten fähig: %1, Ppk %2 (95-%-Grenzen %3 bis %4) über %5 Läufe.</translation>
    </message>
    <message>
        <source>The runs are few: what they show is uncertain.</source>
        <translation>Es sind wenige Läufe: Was sie zeigen, ist unsicher.</translation>
    </message>
    <message numerus="yes">
        <source>%n signals of the control charts.</source>
        <translation>
            <numerusform>%n Signal der Regelkarten.</numerusform>
            <numerusform>%n Signale der Regelkarten.</numerusform>
        </translation>
    </message>
    <message>
        <source>No index: it takes %1 runs at least.</source>
        <translation>Kein Index: Dafür braucht es mindestens %1 Läufe.</translation>
    </message>
    <message>
        <source>%1 of %2 results have no index, as a value or a limit is missing or all values are equal.</source>
        <translation>%1 von %2 Ergebnissen haben keinen Index, weil ein Wert oder eine Grenze fehlt oder alle Werte gleich sind.</translation>
    </message>
    <message>
        <source>Not measured alike in all runs, with a row for each definition: %1.</source>
        <translation>Nicht in allen Läufen gleich gemessen, mit einer Zeile für jede Definition: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n records, head %2</source>
        <translation>
            <numerusform>%1: %n Datensatz, Kopf %2</numerusform>
            <numerusform>%1: %n Datensätze, Kopf %2</numerusform>
        </translation>
    </message>
    <message>
        <source>On</source>
        <translation>An</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Recipe, %1</source>
        <translation>Rezept, %1</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>%1 top</source>
        <comment>letter of a run, side of the zones</comment>
        <translation>%1 oben</translation>
    </message>
    <message>
        <source>%1 bottom</source>
        <comment>letter of a run, side of the zones</comment>
        <translation>%1 unten</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty U = 2u of the difference (about 95 %). Both runs are taken to be on the same thermocouples and instrument (channels and board of the same names), whose errors cancel in it. How runs of the oven differ is not in it.</source>
        <translation>± ist die erweiterte Unsicherheit U = 2u des Unterschieds (etwa 95 %). Beide Läufe gelten als mit denselben Thermoelementen und demselben Gerät gemessen (Kanäle und Baugruppe gleichen Namens); deren Fehler heben sich darin auf. Wie sich Läufe des Ofens unterscheiden, ist nicht darin.</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty U = 2u of the difference (about 95 %), with the errors of the thermocouples and the instrument of both runs. How runs of the oven differ is not in it.</source>
        <translation>± ist die erweiterte Unsicherheit U = 2u des Unterschieds (etwa 95 %), mit den Fehlern der Thermoelemente und des Geräts beider Läufe. Wie sich Läufe des Ofens unterscheiden, ist nicht darin.</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>Mehr Reserve</translation>
    </message>
    <message>
        <source>neither, where the margins differ by less than their uncertainty.</source>
        <translation>keiner, wo sich die Reserven um weniger als ihre Unsicherheit unterscheiden.</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1, nach der Uhr im Log</translation>
    </message>
    <message>
        <source>of the means of the runs. ± is the half width of the 95 % interval of two samples (Welch), from the scatter of the runs; n says how many values stand behind each side. Errors that all runs of a group share, such as those of its thermocouples, are not in it. In the lanes a mark is a mean, a thin tick a run, a longer one a run that is out.</source>
        <translation>der Mittel der Läufe. ± ist die halbe Breite des 95-%-Intervalls zweier Stichproben (Welch), aus der Streuung der Läufe; n sagt, wie viele Werte hinter jeder Seite stehen. Fehler, die alle Läufe einer Gruppe teilen, etwa die ihrer Thermoelemente, sind nicht darin. In den Bahnen ist eine Marke ein Mittel, ein dünner Strich ein Lauf, ein längerer ein Lauf außerhalb der Grenzen.</translation>
    </message>
    <message>
        <source>Runs of A</source>
        <translation>Läufe von A</translation>
    </message>
    <message>
        <source>Runs of B</source>
        <translation>Läufe von B</translation>
    </message>
    <message>
        <source>Logs of A</source>
        <translation>Protokolle von A</translation>
    </message>
    <message>
        <source>Logs of B</source>
        <translation>Protokolle von B</translation>
    </message>
    <message>
        <source>by the means of the runs’ smallest margins; neither, where they differ by less than their interval.</source>
        <translation>nach den Mitteln der kleinsten Reserven der Läufe; keine, wo sie sich um weniger als ihr Intervall unterscheiden.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <comment>letter of a group</comment>
        <translation>%1 Lauf %2</translation>
    </message>
    <message>
        <source>what the differences hold</source>
        <translation>was die Unterschiede enthalten</translation>
    </message>
    <message>
        <source>runs and logs of both groups</source>
        <translation>Läufe und Protokolle beider Gruppen</translation>
    </message>
    <message>
        <source>margin, %1</source>
        <comment>of a run</comment>
        <translation>Reserve, %1</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>Lauf %1</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>Lauf %1</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>a verdict</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Sparkline</name>
    <message>
        <source>Course of %1</source>
        <translation>Verlauf von %1</translation>
    </message>
</context>
<context>
    <name>Thermocouple</name>
    <message>
        <source>%1 class 1</source>
        <translation>%1 Klasse 1</translation>
    </message>
    <message>
        <source>%1 class 2</source>
        <translation>%1 Klasse 2</translation>
    </message>
    <message>
        <source>%1 special</source>
        <comment>tolerance</comment>
        <translation>%1 mit enger Toleranz</translation>
    </message>
    <message>
        <source>%1 standard</source>
        <comment>tolerance</comment>
        <translation>%1 mit Standardtoleranz</translation>
    </message>
</context>
<context>
    <name>Tune</name>
    <message>
        <source>Smallest margin</source>
        <translation>Kleinste Reserve</translation>
    </message>
    <message>
        <source>, now %1</source>
        <translation>, jetzt %1</translation>
    </message>
    <message>
        <source>The recipe is the one that was run.</source>
        <translation>Das Rezept ist das gefahrene.</translation>
    </message>
    <message>
        <source>Tune needs the oven and the recipe of this run.</source>
        <translation>Abstimmen braucht Ofen und Rezept dieses Laufs.</translation>
    </message>
    <message>
        <source>From them and the curves it learns how this board heats.</source>
        <translation>Aus ihnen und den Kurven lernt es, wie diese Baugruppe warm wird.</translation>
    </message>
    <message>
        <source>Choose an oven and recipe</source>
        <translation>Ofen und Rezept wählen</translation>
    </message>
    <message>
        <source>Tune needs the moment when the board entered the oven.</source>
        <translation>Abstimmen braucht den Moment, in dem die Baugruppe in den Ofen kam.</translation>
    </message>
    <message>
        <source>The curves do not show it.</source>
        <translation>Die Kurven zeigen ihn nicht.</translation>
    </message>
    <message>
        <source>Say when the board entered</source>
        <translation>Angeben, wann die Baugruppe hineinkam</translation>
    </message>
    <message>
        <source>Choose another oven and recipe</source>
        <translation>Anderen Ofen und anderes Rezept wählen</translation>
    </message>
    <message>
        <source>Learning how this board heats in this oven.</source>
        <translation>Es wird gelernt, wie diese Baugruppe in diesem Ofen warm wird.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Learning was stopped.</source>
        <translation>Das Lernen wurde angehalten.</translation>
    </message>
    <message>
        <source>Learn again</source>
        <translation>Neu lernen</translation>
    </message>
    <message>
        <source>This run cannot be learned from.</source>
        <translation>Aus diesem Lauf lässt sich nicht lernen.</translation>
    </message>
    <message>
        <source>The model does not fit this run, so nothing is predicted or suggested.</source>
        <translation>Das Modell passt nicht zu diesem Lauf, also wird nichts vorhergesagt oder vorgeschlagen.</translation>
    </message>
    <message>
        <source>Predicting.</source>
        <translation>Vorhersage läuft.</translation>
    </message>
    <message>
        <source>Least change</source>
        <translation>Kleinste Änderung</translation>
    </message>
    <message>
        <source>Most margin</source>
        <translation>Größte Reserve</translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation>Am schnellsten</translation>
    </message>
    <message>
        <source>Coolest</source>
        <translation>Am kühlsten</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>two aims that come to one recipe</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Zone %1  %2</source>
        <translation>Zone %1  %2</translation>
    </message>
    <message>
        <source>Zone %1 top  %2</source>
        <translation>Zone %1 oben  %2</translation>
    </message>
    <message>
        <source>Zone %1 bottom  %2</source>
        <translation>Zone %1 unten  %2</translation>
    </message>
    <message>
        <source>Zones %1–%2  %3</source>
        <translation>Zonen %1–%2  %3</translation>
    </message>
    <message numerus="yes">
        <source>%n zones</source>
        <translation>
            <numerusform>%n Zone</numerusform>
            <numerusform>%n Zonen</numerusform>
        </translation>
    </message>
    <message>
        <source>zone %1 %2</source>
        <translation>Zone %1 %2</translation>
    </message>
    <message>
        <source>speed %1</source>
        <translation>Geschwindigkeit %1</translation>
    </message>
    <message>
        <source>cooling</source>
        <translation>Kühlung</translation>
    </message>
    <message>
        <source>as it was run</source>
        <translation>wie gefahren</translation>
    </message>
    <message>
        <source>%1 more boards an hour</source>
        <translation>%1 Baugruppen mehr je Stunde</translation>
    </message>
    <message>
        <source>%1 fewer boards an hour</source>
        <translation>%1 Baugruppen weniger je Stunde</translation>
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
        <translation>Chance zu bestehen %1</translation>
    </message>
    <message>
        <source>A qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>Eine sachkundige Person bestätigt es vor der Fertigung mit einem Messlauf, innerhalb der Grenzwerte von Paste, Bauteilen, Leiterplatte und Ofen.</translation>
    </message>
    <message>
        <source>Suggested setpoints are predictions: a qualified person confirms them with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>Vorgeschlagene Sollwerte sind Vorhersagen: Eine sachkundige Person bestätigt sie vor der Fertigung mit einem Messlauf, innerhalb der Grenzwerte von Paste, Bauteilen, Leiterplatte und Ofen.</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>Heiße Flächen, laufendes Band, Flussmitteldämpfe: Sicherheitsregeln des Betriebs, örtliche Vorschriften und die Datenblätter der Hersteller gehen allem vor, was hier steht.</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>Mitgelieferte Prozessfenster sind allgemein; maßgeblich ist das Datenblatt der Paste.</translation>
    </message>
    <message>
        <source>The errors of one board’s traces are mostly one error: if one reads high, all may.</source>
        <translation>Die Fehler der Kurven einer Baugruppe sind meist ein Fehler: Liegt eine zu hoch, vielleicht alle.</translation>
    </message>
    <message>
        <source>the board</source>
        <translation>die Baugruppe</translation>
    </message>
    <message>
        <source>%1 at %2: its upper limit alone would have to give %3</source>
        <translation>%1 an %2: Allein die obere Grenze müsste um %3 nachgeben</translation>
    </message>
    <message>
        <source>%1 at %2: its lower limit alone would have to give %3</source>
        <translation>%1 an %2: Allein die untere Grenze müsste um %3 nachgeben</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>requirement, placement</comment>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>Speed  %1 %2</source>
        <comment>from and to, unit</comment>
        <translation>Geschwindigkeit  %1 %2</translation>
    </message>
    <message>
        <source>Another run of this recipe is expected to narrow the doubt about %1 from ± %2 to ± %3.</source>
        <translation>Ein weiterer Lauf mit diesem Rezept dürfte die Unsicherheit über %1 von ± %2 auf ± %3 verringern.</translation>
    </message>
    <message>
        <source>A run with %1 is expected to narrow the doubt about %2 from ± %3 to ± %4.</source>
        <translation>Ein Lauf mit %1 dürfte die Unsicherheit über %2 von ± %3 auf ± %4 verringern.</translation>
    </message>
    <message>
        <source>The peaks of %1 and %2 are %3 apart at the best recipe, and the window leaves %4: that is more than setpoints and speed can bring together.</source>
        <translation>Die Spitzen von %1 und %2 liegen beim besten Rezept %3 auseinander, das Fenster lässt %4 zu: mehr, als Sollwerte und Geschwindigkeit zusammenbringen.</translation>
    </message>
    <message>
        <source>chance unknown: the log ends hot</source>
        <translation>Chance unbekannt: das Log endet heiß</translation>
    </message>
    <message>
        <source>No recipe of this oven is predicted to hold every requirement: the best margin that the model finds is %1, and its error does not rule a pass out.</source>
        <translation>Für kein Rezept dieses Ofens wird vorhergesagt, dass es alle Anforderungen hält: Die beste Reserve, die das Modell findet, ist %1, und ihr Fehler schließt ein Bestehen nicht aus.</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>chance of passing %1, of staying inside the limits %2</source>
        <translation>Chance zu bestehen %1, innerhalb der Grenzen zu bleiben %2</translation>
    </message>
    <message>
        <source>chance %1</source>
        <translation>Chance %1</translation>
    </message>
    <message>
        <source>chance %1, inside limits %2</source>
        <translation>Chance %1, in Grenzen %2</translation>
    </message>
    <message>
        <source>It is not sure to pass: of those found it is the likeliest.</source>
        <translation>Es ist nicht sicher, dass es besteht: Von den gefundenen ist es das wahrscheinlichste.</translation>
    </message>
    <message>
        <source>The next run worth making stands below.</source>
        <translation>Der nächste Lauf, der sich lohnt, steht unten.</translation>
    </message>
    <message>
        <source>No recipe of this oven holds every requirement: the best margin that the model finds is %1, and its error leaves no room for a pass.</source>
        <translation>Kein Rezept dieses Ofens erfüllt alle Anforderungen: die beste Reserve, die das Modell findet, ist %1, und ihr Fehler lässt keinen Raum für ein Bestehen.</translation>
    </message>
    <message>
        <source>zones %1 cooler on average</source>
        <translation>Zonen im Mittel %1 kühler</translation>
    </message>
    <message>
        <source>This recipe was not predicted.</source>
        <translation>Für dieses Rezept gibt es keine Vorhersage.</translation>
    </message>
</context>
<context>
    <name>TypedNumber</name>
    <message>
        <source>“%1” is no number</source>
        <translation>„%1“ ist keine Zahl</translation>
    </message>
</context>
<context>
    <name>WindowEditor</name>
    <message>
        <source>“%1” is no limit: expected a number, or Tc, Tc-5</source>
        <translation>„%1“ ist keine Grenze: erwartet wird eine Zahl oder Tc, Tc-5</translation>
    </message>
    <message>
        <source>“%1” is no parameter: expected a name, = and a value</source>
        <translation>„%1“ ist kein Parameter: erwartet wird Name, = und Wert</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Anforderung</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>Parameters</source>
        <translation>Parameter</translation>
    </message>
    <message>
        <source>Applies to</source>
        <translation>Gilt für</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>Required</source>
        <translation>Verlangt</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>“%1” is no measure</source>
        <translation>„%1“ ist keine Messgröße</translation>
    </message>
</context>
<context>
    <name>Wording</name>
    <message>
        <source>Top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>no setpoint</source>
        <translation>kein Sollwert</translation>
    </message>
    <message>
        <source>result %1 traces here</source>
        <translation>Ergebnis %1 geht hierauf zurück</translation>
    </message>
    <message>
        <source>a result that is out traces here</source>
        <translation>ein verletztes Ergebnis geht hierauf zurück</translation>
    </message>
    <message>
        <source>into the oven</source>
        <translation>in den Ofen</translation>
    </message>
    <message>
        <source>%1 × %2 mm</source>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>front rail</source>
        <translation>vordere Schiene</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>je Teil</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>part and its upper limit</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <comment>part and its lower limit</comment>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>Tc</source>
        <translation>Tc</translation>
    </message>
    <message>
        <source>lower limit %1</source>
        <translation>untere Grenze %1</translation>
    </message>
    <message>
        <source>upper limit %1</source>
        <translation>obere Grenze %1</translation>
    </message>
    <message>
        <source>informative</source>
        <translation>nur informativ</translation>
    </message>
    <message>
        <source>cannot pass as guarded</source>
        <translation>mit Schutzband nie bestanden</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Anforderung</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>untere Grenze</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>obere Grenze</translation>
    </message>
    <message>
        <source>margin %1</source>
        <comment>scale above the lanes</comment>
        <translation>Reserve %1</translation>
    </message>
    <message>
        <source>Smallest margin</source>
        <translation>Kleinste Reserve</translation>
    </message>
    <message numerus="yes">
        <source>%n pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n bestanden</numerusform>
            <numerusform>%n bestanden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n bedingt bestanden</numerusform>
            <numerusform>%n bedingt bestanden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n bedingt nicht bestanden</numerusform>
            <numerusform>%n bedingt nicht bestanden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n nicht bestanden</numerusform>
            <numerusform>%n nicht bestanden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n undetermined</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n unbestimmt</numerusform>
            <numerusform>%n unbestimmt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Smallest margin of the other %n</source>
        <comment>results that have a value</comment>
        <translation>
            <numerusform>Kleinste Reserve der anderen %n</numerusform>
            <numerusform>Kleinste Reserve der anderen %n</numerusform>
        </translation>
    </message>
    <message>
        <source>1 informative result over its limit</source>
        <translation>1 informatives Ergebnis außerhalb seiner Grenze</translation>
    </message>
    <message numerus="yes">
        <source>%n informative results over their limits</source>
        <translation>
            <numerusform>%n informatives Ergebnis außerhalb seiner Grenze</numerusform>
            <numerusform>%n informative Ergebnisse außerhalb ihrer Grenzen</numerusform>
        </translation>
    </message>
    <message>
        <source>Result %1: </source>
        <comment>read aloud before a problem</comment>
        <translation>Ergebnis %1: </translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>nicht erreicht</translation>
    </message>
    <message>
        <source>undetermined</source>
        <translation>unbestimmt</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 zu wenig</translation>
    </message>
    <message>
        <source>%1 too hot</source>
        <translation>%1 zu heiß</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>%1 zu kalt</translation>
    </message>
    <message>
        <source>%1 too long</source>
        <translation>%1 zu lang</translation>
    </message>
    <message>
        <source>%1 too slow</source>
        <translation>%1 zu langsam</translation>
    </message>
    <message>
        <source>%1 too steep</source>
        <translation>%1 zu steil</translation>
    </message>
    <message>
        <source>%1 too small</source>
        <translation>%1 zu klein</translation>
    </message>
    <message>
        <source>%1 too large</source>
        <translation>%1 zu groß</translation>
    </message>
    <message>
        <source>%1 too much</source>
        <translation>%1 zu viel</translation>
    </message>
    <message>
        <source>%1 too few</source>
        <translation>%1 zu wenig</translation>
    </message>
    <message>
        <source>%1 too many</source>
        <translation>%1 zu viel</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>conditional pass</source>
        <translation>bedingt bestanden</translation>
    </message>
    <message>
        <source>conditional fail</source>
        <translation>bedingt nicht bestanden</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Bestanden</translation>
    </message>
    <message>
        <source>Conditional pass</source>
        <translation>Bedingt bestanden</translation>
    </message>
    <message>
        <source>Undetermined</source>
        <translation>Unbestimmt</translation>
    </message>
    <message>
        <source>Conditional fail</source>
        <translation>Bedingt nicht bestanden</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>Nicht bestanden</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <comment>a span of temperatures</comment>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>from %1</source>
        <comment>a temperature</comment>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>within %1 of %2</source>
        <translation>nicht weiter als %1 von %2</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>bis %1 darunter</translation>
    </message>
    <message>
        <source>over %1 s</source>
        <translation>über %1 s</translation>
    </message>
    <message>
        <source>at %1 s</source>
        <translation>bei %1 s</translation>
    </message>
    <message>
        <source>at %1 mm</source>
        <translation>bei %1 mm</translation>
    </message>
    <message>
        <source>end of zone %1</source>
        <translation>Ende der Zone %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>requirement, placement: value</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>Reserve %1</translation>
    </message>
    <message>
        <source>minus </source>
        <comment>read aloud before a number</comment>
        <translation>minus </translation>
    </message>
    <message>
        <source>limits %1 to %2</source>
        <translation>Grenzen %1 bis %2</translation>
    </message>
    <message>
        <source>at least %1 allowed</source>
        <translation>mindestens %1 erlaubt</translation>
    </message>
    <message>
        <source>at most %1 allowed</source>
        <translation>höchstens %1 erlaubt</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>%1 plus or minus %2</source>
        <translation>%1 plus oder minus %2</translation>
    </message>
    <message>
        <source>%1 percent</source>
        <translation>%1 Prozent</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Choose an oven and recipe to see the zones</source>
        <translation>Ofen und Rezept wählen, um die Zonen zu sehen</translation>
    </message>
    <message>
        <source>Say when the board entered the oven to see the zones</source>
        <translation>Angeben, wann die Baugruppe in den Ofen kam, um die Zonen zu sehen</translation>
    </message>
    <message>
        <source>Times as met</source>
        <translation>Zeiten gesehen</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>the placement that meets the zones</comment>
        <translation>von %1</translation>
    </message>
    <message>
        <source>the board’s middle</source>
        <translation>der Mitte der Baugruppe</translation>
    </message>
    <message>
        <source>the leading edge</source>
        <translation>der Vorderkante</translation>
    </message>
    <message>
        <source>now</source>
        <comment>the recipe that was run</comment>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <translation>gemessen: %1</translation>
    </message>
    <message>
        <source>Top and bottom</source>
        <translation>Oben und unten</translation>
    </message>
    <message>
        <source>B is %1 higher</source>
        <translation>B ist %1 höher</translation>
    </message>
    <message>
        <source>B is %1 lower</source>
        <translation>B ist %1 niedriger</translation>
    </message>
    <message>
        <source>B less A %1</source>
        <comment>read aloud</comment>
        <translation>B minus A %1</translation>
    </message>
    <message>
        <source>same</source>
        <comment>neither of two has more margin</comment>
        <translation>gleich</translation>
    </message>
    <message>
        <source>more margin</source>
        <translation>mehr Reserve</translation>
    </message>
    <message>
        <source>A, smallest margin</source>
        <translation>A, kleinste Reserve</translation>
    </message>
    <message>
        <source>B, smallest margin</source>
        <translation>B, kleinste Reserve</translation>
    </message>
    <message>
        <source>Largest change, A to B</source>
        <translation>Größte Änderung, A zu B</translation>
    </message>
    <message>
        <source>Set, %1</source>
        <comment>setpoints, with their unit</comment>
        <translation>Soll, %1</translation>
    </message>
    <message>
        <source>no run has a value</source>
        <translation>kein Lauf hat einen Wert</translation>
    </message>
    <message numerus="yes">
        <source>%1 in the mean of %n runs</source>
        <translation>
            <numerusform>%1 im Mittel von %n Lauf</numerusform>
            <numerusform>%1 im Mittel von %n Läufen</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>%1 of %2 out</source>
        <translation>%1 von %2 außerhalb</translation>
    </message>
    <message>
        <source>A, mean margin</source>
        <translation>A, mittlere Reserve</translation>
    </message>
    <message>
        <source>B, mean margin</source>
        <translation>B, mittlere Reserve</translation>
    </message>
    <message>
        <source>Not all of these runs had the same recipe, so no zones stand here</source>
        <translation>Nicht alle diese Läufe hatten dasselbe Rezept, daher stehen hier keine Zonen</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A, Reserve</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B, Reserve</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Shows a thermocouple log and whether it stayed inside its process window.</source>
        <translation>Zeigt ein Thermoelement-Log und ob es in seinem Prozessfenster blieb.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ArchivePicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <source>Runs of the archive</source>
        <translation>Läufe des Archivs</translation>
    </message>
    <message>
        <source>Lot, board or words</source>
        <translation>Los, Baugruppe oder Wörter</translation>
    </message>
    <message>
        <source>Find runs by lot, board or words</source>
        <translation>Läufe nach Los, Baugruppe oder Wörtern finden</translation>
    </message>
    <message>
        <source>No run of the archive has these words.</source>
        <translation>Kein Lauf des Archivs hat diese Wörter.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are marked: %1 at most.</source>
        <translation>
            <numerusform>%n Lauf ist markiert: höchstens %1.</numerusform>
            <numerusform>%n Läufe sind markiert: höchstens %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The chosen run becomes B. Space marks: of two marked runs the older becomes A; more are put into two groups.</source>
        <translation>Der gewählte Lauf wird B. Die Leertaste markiert: von zwei markierten Läufen wird der ältere A; mehr werden in zwei Gruppen geteilt.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChannelsPanel</name>
    <message>
        <source>Joint</source>
        <translation>Lötstelle</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Gehäuse</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Over range</source>
        <translation>Außer Bereich</translation>
    </message>
    <message>
        <source>Dropout</source>
        <translation>Aussetzer</translation>
    </message>
    <message>
        <source>Spike</source>
        <translation>Ausreißer</translation>
    </message>
    <message>
        <source>Stuck</source>
        <translation>Hängt</translation>
    </message>
    <message>
        <source>Reversed polarity</source>
        <translation>Verpolt</translation>
    </message>
    <message>
        <source>Detached, suspected</source>
        <translation>Gelöst, Verdacht</translation>
    </message>
    <message>
        <source>Swapped placement, suspected</source>
        <translation>Vertauschte Messstelle, Verdacht</translation>
    </message>
    <message>
        <source>Cold-junction step</source>
        <translation>Sprung der Vergleichsstelle</translation>
    </message>
    <message>
        <source>Gap in time</source>
        <translation>Lücke in der Zeit</translation>
    </message>
    <message>
        <source>Time going back</source>
        <translation>Zeit läuft zurück</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Kanäle</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Nutzen</translation>
    </message>
    <message>
        <source>In the log</source>
        <translation>Im Log</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>Messstelle</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Course (dotted: oven entry)</source>
        <translation>Verlauf (gepunktet: Ofeneintritt)</translation>
    </message>
    <message>
        <source>Range, %1</source>
        <translation>Bereich, %1</translation>
    </message>
    <message>
        <source>Fault found, and what was done</source>
        <translation>Gefundener Fehler, und was geschah</translation>
    </message>
    <message>
        <source>Use %1</source>
        <translation>%1 nutzen</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht genutzt</translation>
    </message>
    <message>
        <source>Placement of %1</source>
        <translation>Messstelle von %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Choose a board</source>
        <translation>Baugruppe wählen</translation>
    </message>
    <message>
        <source>Choose a board for %1</source>
        <translation>Baugruppe für %1 wählen</translation>
    </message>
    <message>
        <source>Kind of %1</source>
        <translation>Art von %1</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 at %2 s</source>
        <translation>%1 bei %2 s</translation>
    </message>
    <message>
        <source>%1 from %2 to %3 s</source>
        <translation>%1 von %2 bis %3 s</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Entfernt</translation>
    </message>
    <message>
        <source>Flagged, values as in the file</source>
        <translation>Markiert, Werte wie in der Datei</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n weiterer</numerusform>
            <numerusform>%n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove spikes again</source>
        <translation>Ausreißer wieder entfernen</translation>
    </message>
    <message>
        <source>Use a channel</source>
        <translation>Kanal nutzen</translation>
    </message>
    <message>
        <source>Leave a channel out</source>
        <translation>Kanal weglassen</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>%1 zuordnen</translation>
    </message>
    <message>
        <source>Placements of this log</source>
        <translation>Messstellen dieses Logs</translation>
    </message>
    <message>
        <source>Keep spikes</source>
        <translation>Ausreißer behalten</translation>
    </message>
    <message>
        <source>Remove spikes</source>
        <translation>Ausreißer entfernen</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s)</source>
        <translation>
            <numerusform>%n Messwert</numerusform>
            <numerusform>%n Messwerte</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Turn its sign</source>
        <translation>Vorzeichen umkehren</translation>
    </message>
    <message>
        <source>Its sign is turned</source>
        <translation>Vorzeichen umgekehrt</translation>
    </message>
    <message>
        <source>As in the file</source>
        <translation>Wie in der Datei</translation>
    </message>
    <message>
        <source>Turn the sign of %1</source>
        <translation>Vorzeichen von %1 umkehren</translation>
    </message>
    <message>
        <source>%1 as in the file</source>
        <translation>%1 wie in der Datei</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CheckPage</name>
    <message>
        <source>Each mark is a thermocouple, hottest on top. Whisker: ± U. Dotted: guard band.</source>
        <translation>Jede Marke ist ein Thermoelement, das heißeste oben. Strich: ± U. Gepunktet: Schutzband.</translation>
    </message>
    <message>
        <source>&amp;Limit lanes</source>
        <translation>&amp;Grenzbahnen</translation>
    </message>
    <message>
        <source>&amp;Table</source>
        <translation>&amp;Tabelle</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>&amp;Baugruppe</translation>
    </message>
    <message>
        <source>Limit lanes, table, board</source>
        <translation>Grenzbahnen, Tabelle, Baugruppe</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Filter the table</source>
        <translation>Tabelle filtern</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>Wie diese Zahl zustande kam</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <source>Requirement shown on the board</source>
        <translation>Anforderung, die auf der Baugruppe gezeigt wird</translation>
    </message>
    <message numerus="yes">
        <source>Temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>Temperatur über der Zeit, %n Thermoelement</numerusform>
            <numerusform>Temperatur über der Zeit, %n Thermoelemente</numerusform>
        </translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>Temperatur über der Zeit</translation>
    </message>
    <message>
        <source>C&amp;urves</source>
        <translation>&amp;Kurven</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChooserBar</name>
    <message>
        <source>%1, run %2 of %3</source>
        <translation>%1, Lauf %2 von %3</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Lauf</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Prozessfenster</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>Ofen und Rezept</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>Log ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>&amp;Close %1</source>
        <translation>%1 &amp;schließen</translation>
    </message>
    <message>
        <source>None open</source>
        <translation>Keiner offen</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChooserButton</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CloseUp</name>
    <message>
        <source>Where on the curve</source>
        <translation>Wo auf der Kurve</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareBar</name>
    <message>
        <source>S&amp;wap</source>
        <translation>&amp;Tauschen</translation>
    </message>
    <message>
        <source>&amp;Add a run…</source>
        <translation>Lauf &amp;hinzufügen …</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>D&amp;rucken …</translation>
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
        <translation>Prozessfenster</translation>
    </message>
    <message>
        <source>Line up at</source>
        <translation>Ausrichten an</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>Level to line up at</source>
        <translation>Schwelle, an der ausgerichtet wird</translation>
    </message>
    <message>
        <source>A becomes B, and B becomes A</source>
        <translation>A wird B, und B wird A</translation>
    </message>
    <message>
        <source>The sheet of this comparison</source>
        <translation>Das Blatt dieses Vergleichs</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a run and its verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>those of A</source>
        <translation>die von A</translation>
    </message>
    <message>
        <source>Compare against %1</source>
        <translation>Gegen %1 vergleichen</translation>
    </message>
    <message>
        <source>As A was judged: %1</source>
        <translation>Wie A geprüft wurde: %1</translation>
    </message>
    <message>
        <source>Line up at the oven entry</source>
        <translation>Am Ofeneintritt ausrichten</translation>
    </message>
    <message>
        <source>Line up at a level</source>
        <translation>An einer Schwelle ausrichten</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>Ofeneintritt</translation>
    </message>
    <message>
        <source>A level on the rise</source>
        <translation>Eine Schwelle im Anstieg</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Curves side by side</source>
        <translation>Kurven nebeneinander</translation>
    </message>
    <message>
        <source>Overlaid</source>
        <translation>Übereinander</translation>
    </message>
    <message>
        <source>Curves overlaid</source>
        <translation>Kurven übereinander</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no run</comment>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no window</comment>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>Level on the rise</source>
        <translation>Schwelle im Anstieg</translation>
    </message>
    <message>
        <source>%1 on the rise, no entry</source>
        <translation>%1 im Anstieg, kein Eintritt</translation>
    </message>
    <message>
        <source>&amp;Several runs…</source>
        <translation>&amp;Mehrere Läufe…</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1, Rev. %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ComparePage</name>
    <message>
        <source>Zone strip of %1</source>
        <translation>Zonenstreifen von %1</translation>
    </message>
    <message>
        <source>Limit lanes, A over B</source>
        <translation>Grenzbahnen, A über B</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple of each run.</source>
        <translation>Eine Zeile für jede Anforderung, eine Zelle für jedes Thermoelement jedes Laufs.</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>Logs öffnen …</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>Lauf hinzufügen …</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>Zwei &amp;Demo-Läufe ansehen</translation>
    </message>
    <message>
        <source>Compare needs two runs</source>
        <translation>Zum Vergleichen braucht es zwei Läufe</translation>
    </message>
    <message numerus="yes">
        <source>%1: temperature over time, %n thermocouples</source>
        <comment>letter of a run</comment>
        <translation>
            <numerusform>%1: Temperatur über der Zeit, %n Thermoelement</numerusform>
            <numerusform>%1: Temperatur über der Zeit, %n Thermoelemente</numerusform>
        </translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>Gegen das Prozessfenster von A vergleichen</translation>
    </message>
    <message>
        <source>Nothing is compared yet</source>
        <translation>Noch wird nichts verglichen</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Anforderung</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>A, smallest margin at</source>
        <translation>A, kleinste Reserve an</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A, Reserve</translation>
    </message>
    <message>
        <source>A, verdict</source>
        <translation>A, Urteil</translation>
    </message>
    <message>
        <source>B, smallest margin at</source>
        <translation>B, kleinste Reserve an</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B, Reserve</translation>
    </message>
    <message>
        <source>B, verdict</source>
        <translation>B, Urteil</translation>
    </message>
    <message>
        <source>Largest change at</source>
        <translation>Größte Änderung an</translation>
    </message>
    <message>
        <source>B − A</source>
        <translation>B − A</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>Mehr Reserve</translation>
    </message>
    <message>
        <source>Open two logs, or drop them here: the first is A, the second B. A log with several passes is several runs. Curves, recipes and every requirement then stand side by side, with the uncertainty of each difference. Of more logs, or of runs marked in Lots, A and B may be groups.</source>
        <translation>Zwei Logs öffnen oder hier ablegen: das erste ist A, das zweite B. Ein Log mit mehreren Durchläufen sind mehrere Läufe. Kurven, Rezepte und jede Anforderung stehen dann nebeneinander, mit der Unsicherheit jedes Unterschieds. Aus mehr Logs, oder aus Läufen, die in Lose markiert sind, können A und B Gruppen sein.</translation>
    </message>
    <message>
        <source>Values of A</source>
        <translation>Werte von A</translation>
    </message>
    <message>
        <source>Values of B</source>
        <translation>Werte von B</translation>
    </message>
    <message>
        <source>Compare: %1 and %2</source>
        <translation>Vergleichen: %1 und %2</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareSession</name>
    <message>
        <source>Compare %1 as A</source>
        <translation>%1 als A vergleichen</translation>
    </message>
    <message>
        <source>Compare %1 as B</source>
        <translation>%1 als B vergleichen</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>A und B tauschen</translation>
    </message>
    <message>
        <source>Compare with %1</source>
        <translation>Mit %1 vergleichen</translation>
    </message>
    <message>
        <source>Compare two groups</source>
        <translation>Zwei Gruppen vergleichen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CurvePlot</name>
    <message>
        <source>s from oven entry</source>
        <translation>s ab Ofeneintritt</translation>
    </message>
    <message>
        <source>s on the log’s clock</source>
        <translation>s auf der Uhr des Logs</translation>
    </message>
    <message>
        <source>%1: %2 %3 at %4 s (%5 s on the log’s clock)</source>
        <translation>%1: %2 %3 bei %4 s (%5 s auf der Uhr des Logs)</translation>
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
        <translation>beliebig</translation>
    </message>
    <message>
        <source>A date, as 2026-01-05; Down opens a calendar. Left open, every date counts.</source>
        <translation>Ein Datum, etwa 2026-01-05; Pfeil ab öffnet einen Kalender. Bleibt es leer, zählt jedes Datum.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::DerivationPanel</name>
    <message>
        <source>no limit on this side of the target %1</source>
        <translation>keine Grenze auf dieser Seite des Ziels %1</translation>
    </message>
    <message>
        <source>inside: %1</source>
        <translation>innerhalb: %1</translation>
    </message>
    <message>
        <source>outside: %1</source>
        <translation>außerhalb: %1</translation>
    </message>
    <message>
        <source>at %1 s</source>
        <translation>bei %1 s</translation>
    </message>
    <message>
        <source>from %1 to %2 s</source>
        <translation>von %1 bis %2 s</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>Wie diese Zahl zustande kam</translation>
    </message>
    <message>
        <source>Previous result</source>
        <translation>Voriges Ergebnis</translation>
    </message>
    <message>
        <source>Next result</source>
        <translation>Nächstes Ergebnis</translation>
    </message>
    <message>
        <source>Choose a mark in the limit lanes, a part of the sentence or a row of the table: its place on the curve, its limits and its arithmetic stand here.</source>
        <translation>Wählen Sie eine Marke in den Grenzbahnen, einen Teil des Satzes oder eine Zeile der Tabelle: Hier stehen dann die Stelle auf der Kurve, die Grenzen und die Rechnung.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>%1, board</source>
        <translation>%1, Baugruppe</translation>
    </message>
    <message>
        <source>Definition</source>
        <translation>Definition</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, Rev. %2</translation>
    </message>
    <message>
        <source>Informative: it does not decide the verdict.</source>
        <translation>Nur informativ: entscheidet nicht über das Urteil.</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Uncertainty, %1</source>
        <translation>Unsicherheit, %1</translation>
    </message>
    <message>
        <source>Thermocouple %1</source>
        <translation>Thermoelement %1</translation>
    </message>
    <message>
        <source>Instrument %1</source>
        <translation>Messgerät %1</translation>
    </message>
    <message>
        <source>Noise of this trace</source>
        <translation>Rauschen dieser Kurve</translation>
    </message>
    <message>
        <source>Sampling</source>
        <translation>Abtastung</translation>
    </message>
    <message>
        <source>Combined, then U = 2u</source>
        <translation>Zusammen, dann U = 2u</translation>
    </message>
    <message>
        <source>under 0.1 %</source>
        <translation>unter 0,1 %</translation>
    </message>
    <message>
        <source>over 99.9 %</source>
        <translation>über 99,9 %</translation>
    </message>
    <message>
        <source>What being outside risks</source>
        <translation>Was eine Verletzung riskiert</translation>
    </message>
    <message>
        <source>Which zones set this result</source>
        <translation>Welche Zonen dieses Ergebnis bestimmen</translation>
    </message>
    <message>
        <source>Other zones together</source>
        <translation>Andere Zonen zusammen</translation>
    </message>
    <message>
        <source>Try a change in Tune</source>
        <translation>Eine Änderung in Abstimmen versuchen</translation>
    </message>
    <message>
        <source>Inside with probability</source>
        <translation>Innerhalb mit Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Rule: guarded, w = U</source>
        <translation>Regel: mit Schutzband, w = U</translation>
    </message>
    <message>
        <source>Rule: simple</source>
        <translation>Regel: einfach</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Document</name>
    <message>
        <source>pasted text</source>
        <translation>eingefügter Text</translation>
    </message>
    <message>
        <source>Close %1</source>
        <translation>%1 schließen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::EmptyPage</name>
    <message>
        <source>Sketch of the result</source>
        <translation>Skizze des Ergebnisses</translation>
    </message>
    <message>
        <source>Curves, zone strip and limit lanes stand here once a log is read.</source>
        <translation>Kurven, Zonenleiste und Grenzbahnen stehen hier, sobald ein Log gelesen ist.</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>The window’s bands stand behind them; stretches that are out are marked.</source>
        <translation>Dahinter stehen die Bänder des Prozessfensters; verletzte Stücke sind markiert.</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>Zonenleiste</translation>
    </message>
    <message>
        <source>Where the board was at each moment.</source>
        <translation>Wo die Baugruppe in jedem Moment war.</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>Grenzbahnen</translation>
    </message>
    <message>
        <source>Every requirement, every thermocouple, with both limits always in the same place.</source>
        <translation>Jede Anforderung, jedes Thermoelement, beide Grenzen immer an derselben Stelle.</translation>
    </message>
    <message>
        <source>The verdict rests on the thermocouples, the window and the placement you give it: a qualified person confirms it before production. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>Das Urteil beruht auf den Thermoelementen, dem Prozessfenster und den Messstellen, die Sie angeben: Eine sachkundige Person bestätigt es vor der Fertigung. Heiße Flächen, laufendes Band, Flussmitteldämpfe: Sicherheitsregeln des Betriebs, örtliche Vorschriften und die Datenblätter der Hersteller gehen allem vor, was hier steht.</translation>
    </message>
    <message>
        <source>Drop a thermocouple log here</source>
        <translation>Thermoelement-Log hier ablegen</translation>
    </message>
    <message>
        <source>Any text log, workbook or HTML table: comma, semicolon, tab or fixed columns; °C or °F; decimal point or comma. The file is read as it is and never changed.</source>
        <translation>Jedes Text-Log, jede Arbeitsmappe oder HTML-Tabelle: Komma, Semikolon, Tabulator oder feste Spalten; °C oder °F; Dezimalpunkt oder -komma. Die Datei wird gelesen, wie sie ist, und nie geändert.</translation>
    </message>
    <message>
        <source>Open a log…</source>
        <translation>Log öffnen …</translation>
    </message>
    <message>
        <source>Paste a log</source>
        <translation>Log einfügen</translation>
    </message>
    <message>
        <source>Look at the demo run</source>
        <translation>Demo-Lauf ansehen</translation>
    </message>
    <message>
        <source>It will be judged against</source>
        <translation>Geprüft wird gegen</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Prozessfenster</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general. The paste’s own data sheet is the authority.</source>
        <translation>Mitgelieferte Prozessfenster sind allgemein. Maßgeblich ist das Datenblatt der Paste.</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>Ofen und Rezept</translation>
    </message>
    <message>
        <source>Optional. Needed for the zone strip and for the zones behind a result.</source>
        <translation>Optional. Nötig für die Zonenleiste und für die Zonen hinter einem Ergebnis.</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Optional. Says what each thermocouple sits on.</source>
        <translation>Optional. Sagt, worauf jedes Thermoelement sitzt.</translation>
    </message>
    <message>
        <source>None chosen</source>
        <translation>Nichts gewählt</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FiguresPane</name>
    <message>
        <source>Runs of</source>
        <translation>Läufe von</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>No limit to hold the runs against</source>
        <translation>Keine Grenze, an der die Läufe zu messen wären</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Control chart</source>
        <translation>Regelkarte</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Statistics of the runs</source>
        <translation>Statistik der Läufe</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Kind of chart and rules</source>
        <translation>Art der Karte und Regeln</translation>
    </message>
    <message>
        <source>Loading the runs</source>
        <translation>Läufe werden geladen</translation>
    </message>
    <message>
        <source>&amp;Individuals and moving range</source>
        <translation>&amp;Einzelwerte und gleitende Spannweite</translation>
    </message>
    <message>
        <source>X-bar and &amp;R</source>
        <translation>X-quer und &amp;R</translation>
    </message>
    <message>
        <source>X-bar and &amp;S</source>
        <translation>X-quer und &amp;S</translation>
    </message>
    <message>
        <source>&amp;EWMA</source>
        <translation>E&amp;WMA</translation>
    </message>
    <message>
        <source>Runs in a s&amp;ubgroup</source>
        <translation>Läufe in einer S&amp;tichprobe</translation>
    </message>
    <message>
        <source>%1 of %2 runs</source>
        <translation>%1 von %2 Läufen</translation>
    </message>
    <message>
        <source>The statistics cannot be worked out. %1</source>
        <translation>Die Statistik kann nicht berechnet werden. %1</translation>
    </message>
    <message>
        <source>No run is listed to work statistics out from.</source>
        <translation>Kein Lauf ist aufgeführt, aus dem sich eine Statistik ergäbe.</translation>
    </message>
    <message>
        <source>Only the newest %1 runs of the list count.</source>
        <translation>Nur die neuesten %1 Läufe der Liste zählen.</translation>
    </message>
    <message>
        <source>Trend of %1</source>
        <translation>Verlauf von %1</translation>
    </message>
    <message>
        <source>Control chart of %1</source>
        <translation>Regelkarte von %1</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>Trend of %1.</source>
        <translation>Verlauf von %1.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileModel</name>
    <message numerus="yes">
        <source>%n row(s) more</source>
        <translation>
            <numerusform>%n weitere Zeile</numerusform>
            <numerusform>%n weitere Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>kept as such</source>
        <translation>nur aufbewahrt</translation>
    </message>
    <message>
        <source>Channel %1</source>
        <translation>Kanal %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileTable</name>
    <message>
        <source>What stands in the file</source>
        <translation>Was in der Datei steht</translation>
    </message>
    <message>
        <source>Press a heading to take its column for something else</source>
        <translation>Auf eine Überschrift drücken, um ihre Spalte anders zu verwenden</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FilterBar</name>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>C&amp;lear</source>
        <translation>&amp;Leeren</translation>
    </message>
    <message>
        <source>E&amp;xport table…</source>
        <translation>Tabelle e&amp;xportieren…</translation>
    </message>
    <message>
        <source>any</source>
        <comment>lot</comment>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>serial, log, operator…</source>
        <translation>Seriennr., Log, Bediener…</translation>
    </message>
    <message>
        <source>Words that stand anywhere in lot, serial number, board, oven, recipe, window, operator, log or record (Ctrl+F)</source>
        <translation>Wörter, die irgendwo in Los, Seriennummer, Baugruppe, Ofen, Rezept, Prozessfenster, Bediener, Log oder Datensatz stehen (Strg+F)</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>All</source>
        <comment>verdicts</comment>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Out of the window</source>
        <translation>Außerhalb des Prozessfensters</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>to</source>
        <comment>a date</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>Every run of the archive</source>
        <translation>Jeder Lauf des Archivs</translation>
    </message>
    <message>
        <source>All runs of the list as a CSV file</source>
        <translation>Alle Läufe der Liste als CSV-Datei</translation>
    </message>
    <message>
        <source>All boards</source>
        <translation>Alle Baugruppen</translation>
    </message>
    <message>
        <source>All ovens</source>
        <translation>Alle Öfen</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>46 runs in 31 lots</comment>
        <translation>%1 in %2</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n Los</numerusform>
            <numerusform>%n Losen</numerusform>
        </translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>Losblatt</translation>
    </message>
    <message>
        <source>The panel at the right (F9)</source>
        <translation>Das Feld rechts (F9)</translation>
    </message>
    <message>
        <source>Co&amp;mpare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::GroupPicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <source>Two groups of runs</source>
        <translation>Zwei Gruppen von Läufen</translation>
    </message>
    <message>
        <source>&amp;Divide by</source>
        <translation>&amp;Teilen nach</translation>
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
        <translation>Nach A kommen die Läufe von</translation>
    </message>
    <message>
        <source>Into B go the runs of</source>
        <translation>Nach B kommen die Läufe von</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
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
        <translation>Läufe und die Gruppe eines jeden</translation>
    </message>
    <message>
        <source>%1 in A</source>
        <translation>%1 in A</translation>
    </message>
    <message>
        <source>%1 in B</source>
        <translation>%1 in B</translation>
    </message>
    <message>
        <source>The marks below</source>
        <translation>Den Häkchen unten</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n runs</source>
        <comment>a recipe, lot, oven or board</comment>
        <translation>
            <numerusform>%1: %n Lauf</numerusform>
            <numerusform>%1: %n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht genannt</translation>
    </message>
    <message numerus="yes">
        <source>A has %n runs</source>
        <translation>
            <numerusform>A hat %n Lauf</numerusform>
            <numerusform>A hat %n Läufe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>B has %n runs.</source>
        <translation>
            <numerusform>B hat %n Lauf.</numerusform>
            <numerusform>B hat %n Läufe.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each needs one at least.</source>
        <translation>Jede braucht mindestens einen.</translation>
    </message>
    <message>
        <source>An interval for the differences needs two on each side.</source>
        <translation>Ein Intervall der Unterschiede braucht zwei auf jeder Seite.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what A has, what B has</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::HelpWindow</name>
    <message>
        <source>Getting a log in</source>
        <translation>Ein Log hereinholen</translation>
    </message>
    <message>
        <source>Drop a file anywhere in the window, open it (Ctrl+O), or paste its text (Ctrl+Shift+V). It is read by its content; what was assumed stands in the status line and under Run, How the log was read, where it can be put right. The file itself is never changed.</source>
        <translation>Eine Datei irgendwo im Fenster ablegen, öffnen (Strg+O) oder ihren Text einfügen (Strg+Umschalt+V). Sie wird nach ihrem Inhalt gelesen; was angenommen wurde, steht in der Statuszeile und unter Lauf, Wie das Log gelesen wurde, und lässt sich dort berichtigen. Die Datei selbst wird nie geändert.</translation>
    </message>
    <message>
        <source>Sentence</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>The verdict first. Each underlined part leads to where it comes from: Tab goes through the parts, Enter follows one. F8 and Shift+F8 go to the next and previous result that is not a pass; Esc chooses nothing.</source>
        <translation>Zuerst das Urteil. Jeder unterstrichene Teil führt dorthin, wo er herkommt: Tab geht durch die Teile, Eingabe folgt einem. F8 und Umschalt+F8 gehen zum nächsten und vorigen Ergebnis, das nicht bestanden ist; Esc wählt nichts.</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Kurven</translation>
    </message>
    <message>
        <source>Bands are the window’s; a stretch with a halo and barbs went out of it. The cursor reads all curves at a time and the place in the oven. Wheel zooms time, Ctrl+wheel temperature, drag moves, double click shows the whole run. Keys: left and right one sample, with Ctrl one zone, with Shift the view; up and down another thermocouple; + − 0 zoom and whole run; Alt+1 to 9 show or hide a curve, hottest first.</source>
        <translation>Die Bänder sind die des Prozessfensters; ein Stück mit Hof und Querstrichen hat es verlassen. Der Zeiger liest alle Kurven zu einer Zeit und den Ort im Ofen. Rad zoomt die Zeit, Strg+Rad die Temperatur, Ziehen verschiebt, Doppelklick zeigt den ganzen Lauf. Tasten: links und rechts ein Messwert, mit Strg eine Zone, mit Umschalt die Ansicht; auf und ab ein anderes Thermoelement; + − 0 Zoom und ganzer Lauf; Alt+1 bis 9 zeigt oder verbirgt eine Kurve, die heißeste zuerst.</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>Zonenleiste</translation>
    </message>
    <message>
        <source>Where the board was at each moment, with top and bottom setpoints. Hatched: a result outside its limits traces back here with 10 % or more.</source>
        <translation>Wo die Baugruppe in jedem Moment war, mit Sollwerten oben und unten. Schraffiert: Ein verletztes Ergebnis geht zu 10 % oder mehr hierauf zurück.</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>Grenzbahnen</translation>
    </message>
    <message>
        <source>One lane for each requirement, both limits at the same places in all of them, so that the same distance is the same margin. A mark is a thermocouple, the whisker its ± U, dots the guard band. Up and down another lane, left and right another thermocouple, Home and End hottest and coldest, Enter how the number came about, Ctrl+C the row as text, Ctrl+Shift+C the picture.</source>
        <translation>Eine Bahn für jede Anforderung, beide Grenzen überall an denselben Stellen, sodass gleicher Abstand gleiche Reserve ist. Eine Marke ist ein Thermoelement, der Strich sein ± U, Punkte das Schutzband. Auf und ab andere Bahn, links und rechts anderes Thermoelement, Pos1 und Ende heißestes und kältestes, Eingabe wie die Zahl zustande kam, Strg+C die Zeile als Text, Strg+Umschalt+C das Bild.</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>A click on a heading sorts. Ctrl+F filters. Ctrl+C copies the chosen rows, or all, with headings for a spreadsheet.</source>
        <translation>Ein Klick auf eine Überschrift sortiert. Strg+F filtert. Strg+C kopiert die gewählten Zeilen oder alle mit Überschriften für eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>How the log was read</source>
        <translation>Wie das Log gelesen wurde</translation>
    </message>
    <message>
        <source>Each line at the right was found in the file or assumed. Choose another reading and everything follows at once; Ctrl+Z takes it back. A reading can be kept for logs of the same shape.</source>
        <translation>Jede Zeile rechts wurde in der Datei gefunden oder angenommen. Wählen Sie eine andere Lesart, und alles folgt sofort; Strg+Z nimmt es zurück. Eine Lesart kann für Logs derselben Form behalten werden.</translation>
    </message>
    <message>
        <source>Editing a window</source>
        <translation>Ein Prozessfenster bearbeiten</translation>
    </message>
    <message>
        <source>Limits are checked while they are typed and the run is judged anew. Saving makes a new revision in a new file; nothing is overwritten.</source>
        <translation>Grenzen werden beim Tippen geprüft und der Lauf neu beurteilt. Speichern macht eine neue Revision in einer neuen Datei; nichts wird überschrieben.</translation>
    </message>
    <message>
        <source>Keys everywhere</source>
        <translation>Tasten überall</translation>
    </message>
    <message>
        <source>F6, Shift+F6 next and previous part · F9 panel at the right · Ctrl+Z, Ctrl+Shift+Z undo and redo · Ctrl+O open · Ctrl+Shift+V paste a log · Ctrl+W close the log · Ctrl+PgUp, Ctrl+PgDown previous and next run · F1 this help.</source>
        <translation>F6, Umschalt+F6 nächster und voriger Teil · F9 Bereich rechts · Strg+Z, Strg+Umschalt+Z rückgängig und wiederholen · Strg+O öffnen · Strg+Umschalt+V Log einfügen · Strg+W Log schließen · Strg+Bild auf, Strg+Bild ab voriger und nächster Lauf · F1 diese Hilfe.</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;Analyser for reflow thermal profiles. Free software under the GNU General Public License, version 3 or later; it comes without any warranty.&lt;/p&gt;&lt;p&gt;What it shows is computed from the log, the window and the placement you give it. A qualified person confirms every change of setpoints with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here. Windows shipped with the program are general; the paste’s own data sheet is the authority.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;Auswertung von Temperaturprofilen beim Reflow-Löten. Freie Software unter der GNU General Public License, Version 3 oder später; ohne jede Gewährleistung.&lt;/p&gt;&lt;p&gt;Was es zeigt, ist aus dem Log, dem Prozessfenster und den Messstellen berechnet, die Sie angeben. Eine sachkundige Person bestätigt jede Änderung von Sollwerten vor der Fertigung mit einem Messlauf, innerhalb der Grenzwerte von Paste, Bauteilen, Leiterplatte und Ofen. Heiße Flächen, laufendes Band, Flussmitteldämpfe: Sicherheitsregeln des Betriebs, örtliche Vorschriften und die Datenblätter der Hersteller gehen allem vor, was hier steht. Mitgelieferte Prozessfenster sind allgemein; maßgeblich ist das Datenblatt der Paste.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>Abstimmen</translation>
    </message>
    <message>
        <source>The recipe that was run, to be changed: what the curves and lanes then show is predicted from how this board heats in this oven, with its error band. Type into a field, step with up and down (PgUp, PgDn by 5), turn the wheel, or drag up and down; Tab, left and right go from field to field, Del goes back to what was run, L parts top and bottom or ties them, Ctrl+L keeps a zone as it is in a search. Every edit can be undone. A suggestion is a prediction: a qualified person confirms it with an instrumented run.</source>
        <translation>Das gefahrene Rezept zum Ändern: Was Kurven und Bahnen dann zeigen, ist aus dem Verhalten dieser Baugruppe in diesem Ofen vorhergesagt, mit Fehlerband. In ein Feld tippen, mit auf und ab schrittweise ändern (Bild auf, Bild ab um 5), das Rad drehen oder auf und ab ziehen; Tab, links und rechts gehen von Feld zu Feld, Entf geht zurück zum Gefahrenen, L trennt oben und unten oder koppelt sie, Strg+L hält eine Zone bei einer Suche fest. Jede Änderung lässt sich zurücknehmen. Ein Vorschlag ist eine Vorhersage: Eine sachkundige Person bestätigt ihn mit einem Messlauf.</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lose</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Where each thermocouple sits, with its result of the requirement that is chosen beside Show. Left and right, or up and down, go to another thermocouple, Enter shows how its number came about.</source>
        <translation>Wo jedes Thermoelement sitzt, mit seinem Ergebnis zu der Anforderung, die neben „Zeigen“ gewählt ist. Links und rechts oder auf und ab gehen zu einem anderen Thermoelement, Eingabe zeigt, wie seine Zahl zustande kam.</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>Wie diese Zahl zustande kam</translation>
    </message>
    <message>
        <source>The chosen result step by step: definition, limits with their source, margin, uncertainty by cause, the decision, and the zones that it traces back to. The arrows at the top go to the result before and after.</source>
        <translation>Das gewählte Ergebnis Schritt für Schritt: Definition, Grenzen mit ihrer Quelle, Reserve, Unsicherheit nach Ursachen, die Entscheidung und die Zonen, auf die es zurückgeht. Die Pfeile oben gehen zum Ergebnis davor und danach.</translation>
    </message>
    <message>
        <source>Keeping a run</source>
        <translation>Einen Lauf aufbewahren</translation>
    </message>
    <message>
        <source>Run, Keep in the record (Ctrl+K) keeps the run that is shown, or all open logs, for good: the raw log, window, oven, recipe and board as they are, and the result. A record stands in a lot; a pass of a log is kept once. The status line says at its right where records go, a press on it chooses another archive.</source>
        <translation>Lauf, Im Archiv aufbewahren (Strg+K) bewahrt den gezeigten Lauf oder alle offenen Logs auf Dauer auf: das rohe Log, Prozessfenster, Ofen, Rezept und Baugruppe, wie sie sind, und das Ergebnis. Ein Datensatz gehört zu einem Los; ein Durchlauf eines Logs wird einmal aufbewahrt. Rechts in der Statuszeile steht, wohin Datensätze gehen; ein Druck darauf wählt ein anderes Archiv.</translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>Losblatt</translation>
    </message>
    <message>
        <source>The sheet of the marked runs as it will be printed, one for each lot; Page Up and Page Down turn its pages. What was printed or saved as PDF can be marked as printed beside its records. Several lots writes a file for each lot into a folder and replaces none without asking.</source>
        <translation>Das Blatt der angekreuzten Läufe, wie es gedruckt wird, eines je Los; Bild auf und Bild ab blättern. Was gedruckt oder als PDF gespeichert wurde, kann neben seinen Datensätzen als gedruckt vermerkt werden. „Mehrere Lose“ schreibt je Los eine Datei in einen Ordner und ersetzt keine, ohne zu fragen.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Two runs on one clock, lined up at the oven entry or where the first thermocouple rises through a level. A log that is dropped here becomes B. Setpoints that differ are framed in B, the differences stand under them. Each lane has both runs, A over B; its last columns say the smallest margin of each, the largest change with its uncertainty, and which has more margin: neither, where they differ by less than their uncertainty. Enter on a mark leads to the run’s own page.</source>
        <translation>Zwei Läufe auf einer Uhr, ausgerichtet am Ofeneintritt oder dort, wo das erste Thermoelement durch eine Schwelle steigt. Ein Log, das hier abgelegt wird, wird B. Sollwerte, die sich unterscheiden, sind bei B gerahmt, die Unterschiede stehen darunter. Jede Bahn hat beide Läufe, A über B; die letzten Spalten nennen die kleinste Reserve von jedem, die größte Änderung mit ihrer Unsicherheit und wer mehr Reserve hat: keiner, wo sie sich um weniger als ihre Unsicherheit unterscheiden. Die Eingabetaste auf einer Marke führt zur eigenen Seite des Laufs.</translation>
    </message>
    <message>
        <source>Every run that was kept, the newest first; a click on a heading sorts by it, a second one the other way round, and so does View, Sort the runs by, or the menu key. The fields above say which runs are listed, Ctrl+F finds words. Space marks the chosen runs for the sheet, Ctrl+A takes all, Ctrl+C copies with headings, Enter opens a run on Check with everything it was judged with. Below, a measure over the runs of one board and window revision: left and right go from run to run, a square is a run that completes a signal.</source>
        <translation>Jeder aufbewahrte Lauf, der neueste zuerst; ein Klick auf eine Überschrift sortiert danach, ein zweiter andersherum, ebenso Ansicht, Läufe sortieren nach, oder die Menütaste. Die Felder darüber sagen, welche Läufe aufgeführt sind, Strg+F findet Wörter. Leertaste markiert die gewählten Läufe für das Blatt, Strg+A nimmt alle, Strg+C kopiert mit Überschriften, Eingabe öffnet einen Lauf unter Prüfen mit allem, womit er beurteilt wurde. Darunter eine Messgröße über die Läufe einer Baugruppe und einer Revision des Fensters: links und rechts gehen von Lauf zu Lauf, ein Quadrat ist ein Lauf, der ein Signal vollendet.</translation>
    </message>
    <message>
        <source>Editing an oven</source>
        <translation>Einen Ofen bearbeiten</translation>
    </message>
    <message>
        <source>Where the zones lie and what the oven allows, checked while it is typed; the zone strip and the oven entry follow at once, and Tune learns anew. Two ends of a limit stand together or not at all. Saving makes a new revision in a new file with the comments of the old one; nothing is overwritten. Zones come and go in the file itself.</source>
        <translation>Wo die Zonen liegen und was der Ofen zulässt, beim Tippen geprüft; Zonenleiste und Ofeneintritt folgen sofort, und Abstimmen lernt neu. Beide Enden einer Grenze stehen zusammen oder gar nicht. Speichern macht eine neue Revision in einer neuen Datei mit den Kommentaren der alten; nichts wird überschrieben. Zonen kommen und gehen in der Datei selbst.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ImportPage</name>
    <message>
        <source>What stands in the file</source>
        <translation>Was in der Datei steht</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Kanäle</translation>
    </message>
    <message>
        <source>Known once the log can be read</source>
        <translation>Bekannt, sobald das Log gelesen werden kann</translation>
    </message>
    <message>
        <source>%1, %2 bytes, SHA-256 %3…%4</source>
        <translation>%1, %2 Bytes, SHA-256 %3…%4</translation>
    </message>
    <message>
        <source>Placements come from the board %1</source>
        <translation>Messstellen kommen von der Baugruppe %1</translation>
    </message>
    <message>
        <source>Take column %1 for the time</source>
        <translation>Spalte %1 als Zeit nehmen</translation>
    </message>
    <message>
        <source>Take column %1 for a thermocouple</source>
        <translation>Spalte %1 als Thermoelement nehmen</translation>
    </message>
    <message>
        <source>Do not judge column %1</source>
        <translation>Spalte %1 nicht beurteilen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::KeepForm</name>
    <message>
        <source>Keep</source>
        <translation>Aufbewahren</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Keep in the record</source>
        <translation>Im Archiv aufbewahren</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>Board serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>O&amp;perator</source>
        <translation>&amp;Bediener</translation>
    </message>
    <message>
        <source>Time of run</source>
        <translation>Zeit des Laufs</translation>
    </message>
    <message>
        <source>Wh&amp;at</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>this run</source>
        <translation>diesen Lauf</translation>
    </message>
    <message numerus="yes">
        <source>all %n runs of this log</source>
        <translation>
            <numerusform>%n Lauf dieses Logs</numerusform>
            <numerusform>alle %n Läufe dieses Logs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all %n open logs</source>
        <translation>
            <numerusform>%n offenes Log</numerusform>
            <numerusform>alle %n offenen Logs</numerusform>
        </translation>
    </message>
    <message>
        <source>each log’s own</source>
        <translation>von jedem Log die eigene</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>from the log’s clock</source>
        <translation>von der Uhr des Logs</translation>
    </message>
    <message>
        <source>from its file: no date stands in the log</source>
        <translation>von der Datei: im Log steht kein Datum</translation>
    </message>
    <message>
        <source>now: no date stands in the text</source>
        <translation>jetzt: im Text steht kein Datum</translation>
    </message>
    <message>
        <source>Into %1</source>
        <translation>In %1</translation>
    </message>
    <message>
        <source>There is no result for the present setup</source>
        <translation>Für die jetzige Einstellung gibt es kein Ergebnis</translation>
    </message>
    <message>
        <source>Which lot is it? A record stands in a lot.</source>
        <translation>Welches Los ist es? Jeder Datensatz gehört zu einem Los.</translation>
    </message>
    <message>
        <source>Keeping…</source>
        <translation>Wird aufbewahrt …</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, as %2.</source>
        <translation>Dieser Durchlauf von %1 ist schon aufbewahrt, als %2.</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, in lot %2, as %3.</source>
        <translation>Dieser Durchlauf von %1 ist schon aufbewahrt, in Los %2, als %3.</translation>
    </message>
    <message>
        <source>Kept as %1 in lot %2.</source>
        <translation>Aufbewahrt als %1 in Los %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are kept in lot %1, as %2 to %3.</source>
        <translation>
            <numerusform>%n Lauf ist in Los %1 aufbewahrt, als %2 bis %3.</numerusform>
            <numerusform>%n Läufe sind in Los %1 aufbewahrt, als %2 bis %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are kept already.</source>
        <translation>
            <numerusform>%n weiterer ist schon aufbewahrt.</numerusform>
            <numerusform>%n weitere sind schon aufbewahrt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was kept: %1</source>
        <translation>Nichts wurde aufbewahrt: %1</translation>
    </message>
    <message>
        <source>Keeping… The archive’s server is slow to answer.</source>
        <translation>Wird aufbewahrt… Der Server des Archivs antwortet langsam.</translation>
    </message>
    <message>
        <source>The server does not have it yet: it waits on this computer.</source>
        <translation>Der Server hat es noch nicht: Es wartet auf diesem Computer.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LearnedFrom</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, Rev. %2</translation>
    </message>
    <message>
        <source>Model fitted to</source>
        <translation>Modell angepasst an</translation>
    </message>
    <message>
        <source>Largest misfit</source>
        <translation>Größte Abweichung</translation>
    </message>
    <message>
        <source>Learn from other runs too</source>
        <translation>Auch aus anderen Läufen lernen</translation>
    </message>
    <message>
        <source>run with %1</source>
        <comment>name of a recipe</comment>
        <translation>gelaufen mit %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotSheetPanel</name>
    <message>
        <source>Lot sheet</source>
        <translation>Losblatt</translation>
    </message>
    <message>
        <source>Mark runs in the list to put them on a sheet.</source>
        <translation>Läufe in der Liste markieren, um sie auf ein Blatt zu bringen.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern …</translation>
    </message>
    <message>
        <source>HTML…</source>
        <translation>HTML …</translation>
    </message>
    <message>
        <source>Several lots…</source>
        <translation>Mehrere Lose …</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>Im Archiv als gedruckt vermerken</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>Eine Seite je Lauf</translation>
    </message>
    <message>
        <source>The sheet could not be made.</source>
        <translation>Das Blatt konnte nicht erstellt werden.</translation>
    </message>
    <message>
        <source>The sheet was not written.</source>
        <translation>Das Blatt wurde nicht geschrieben.</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>Das Blatt steht in %1</translation>
    </message>
    <message>
        <source>The sheet is not marked as printed.</source>
        <translation>Das Blatt ist nicht als gedruckt vermerkt.</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>After printing and saving as PDF, by %1</source>
        <translation>Nach dem Drucken und Speichern als PDF, von %1</translation>
    </message>
    <message>
        <source>The sheet could not be made: %1</source>
        <translation>Das Blatt konnte nicht erstellt werden: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n lots</source>
        <translation>
            <numerusform>%n Los</numerusform>
            <numerusform>%n Lose</numerusform>
        </translation>
    </message>
    <message>
        <source>No lot</source>
        <translation>Ohne Los</translation>
    </message>
    <message>
        <source>The sheet is made…</source>
        <translation>Das Blatt wird erstellt …</translation>
    </message>
    <message>
        <source>%1 of %2 runs are judged</source>
        <translation>%1 von %2 Läufen sind beurteilt</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>lot, runs, pages</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n Seite</numerusform>
            <numerusform>%n Seiten</numerusform>
        </translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>Das Blatt konnte nicht gedruckt werden</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>Das Blatt wurde an den Drucker geschickt</translation>
    </message>
    <message>
        <source>Save the lot sheet</source>
        <translation>Losblatt speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>One HTML file (*.html)</source>
        <translation>Eine HTML-Datei (*.html)</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 ist ein offenes Log: ein Blatt tritt nie an die Stelle eines Logs</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotsPage</name>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>Die Tabelle ist in der Zwischenablage, mit Überschriften.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) in the list</source>
        <translation>
            <numerusform>%n Lauf in der Liste</numerusform>
            <numerusform>%n Läufe in der Liste</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n marked</source>
        <translation>
            <numerusform>%n markiert</numerusform>
            <numerusform>%n markiert</numerusform>
        </translation>
    </message>
    <message>
        <source>Export the table</source>
        <translation>Tabelle exportieren</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>The table was not exported.</source>
        <translation>Die Tabelle wurde nicht exportiert.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) exported as %1.</source>
        <translation>
            <numerusform>%n Lauf als %1 exportiert.</numerusform>
            <numerusform>%n Läufe als %1 exportiert.</numerusform>
        </translation>
    </message>
    <message>
        <source>Mark two runs, or more for two groups</source>
        <translation>Markieren Sie zwei Läufe oder mehr für zwei Gruppen</translation>
    </message>
    <message>
        <source>%1 runs at most can be compared</source>
        <translation>Höchstens %1 Läufe lassen sich vergleichen</translation>
    </message>
    <message>
        <source>Hold the two marked runs against each other, the older as A</source>
        <translation>Die zwei markierten Läufe gegeneinander halten, den älteren als A</translation>
    </message>
    <message>
        <source>Put the marked runs into two groups and hold these against each other</source>
        <translation>Die markierten Läufe in zwei Gruppen teilen und diese gegeneinander halten</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>Log ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>&amp;Paste a log</source>
        <translation>Log ein&amp;fügen</translation>
    </message>
    <message>
        <source>&amp;Recent logs</source>
        <translation>&amp;Letzte Logs</translation>
    </message>
    <message>
        <source>Look at the &amp;demo run</source>
        <translation>&amp;Demo-Lauf ansehen</translation>
    </message>
    <message>
        <source>&amp;Close this log</source>
        <translation>Dieses Log &amp;schließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>Copy the &amp;table</source>
        <translation>&amp;Tabelle kopieren</translation>
    </message>
    <message>
        <source>Copy the &amp;picture</source>
        <translation>B&amp;ild kopieren</translation>
    </message>
    <message>
        <source>&amp;Find in the table</source>
        <translation>In der Tabelle &amp;suchen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>&amp;Whole run</source>
        <translation>&amp;Ganzer Lauf</translation>
    </message>
    <message>
        <source>&amp;Raw samples</source>
        <translation>&amp;Rohwerte</translation>
    </message>
    <message>
        <source>&amp;Next result that is not a pass</source>
        <translation>&amp;Nächstes Ergebnis, das nicht bestanden ist</translation>
    </message>
    <message>
        <source>&amp;Previous result that is not a pass</source>
        <translation>&amp;Voriges Ergebnis, das nicht bestanden ist</translation>
    </message>
    <message>
        <source>Choose nothin&amp;g</source>
        <translation>Nichts &amp;wählen</translation>
    </message>
    <message>
        <source>Next pa&amp;rt</source>
        <translation>Nä&amp;chster Teil</translation>
    </message>
    <message>
        <source>Previous p&amp;art</source>
        <translation>V&amp;origer Teil</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>&amp;Temperatur in</translation>
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
        <translation>Geschwin&amp;digkeit in</translation>
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
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>As the &amp;system says</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Lauf</translation>
    </message>
    <message>
        <source>&amp;Next run</source>
        <translation>&amp;Nächster Lauf</translation>
    </message>
    <message>
        <source>&amp;Previous run</source>
        <translation>&amp;Voriger Lauf</translation>
    </message>
    <message>
        <source>&amp;How the log was read</source>
        <translation>&amp;Wie das Log gelesen wurde</translation>
    </message>
    <message>
        <source>&amp;Edit the window</source>
        <translation>Prozessfenster &amp;bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Oven</source>
        <translation>&amp;Ofen</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Help on what has the focus</source>
        <translation>&amp;Hilfe zu dem, was den Fokus hat</translation>
    </message>
    <message>
        <source>&amp;About Ovenwright</source>
        <translation>Ü&amp;ber Ovenwright</translation>
    </message>
    <message>
        <source>About Ovenwright</source>
        <translation>Über Ovenwright</translation>
    </message>
    <message>
        <source>&amp;Forget these</source>
        <translation>Diese &amp;vergessen</translation>
    </message>
    <message>
        <source>Open logs</source>
        <translation>Logs öffnen</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>Nichts wurde eingefügt.</translation>
    </message>
    <message>
        <source>The clipboard holds no text and no file.</source>
        <translation>Die Zwischenablage enthält weder Text noch Datei.</translation>
    </message>
    <message>
        <source>The demo run cannot be opened.</source>
        <translation>Der Demo-Lauf kann nicht geöffnet werden.</translation>
    </message>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>Die Tabelle ist mit Überschriften in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The picture is on the clipboard.</source>
        <translation>Das Bild ist in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Ovenwright</source>
        <translation>Ovenwright</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Bereit</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 rows, every %3 s, %n channel(s)</source>
        <translation>
            <numerusform>%1: %2 Zeilen, alle %3 s, %n Kanal</numerusform>
            <numerusform>%1: %2 Zeilen, alle %3 s, %n Kanäle</numerusform>
        </translation>
    </message>
    <message>
        <source>oven entry found at %1 s</source>
        <translation>Ofeneintritt gefunden bei %1 s</translation>
    </message>
    <message>
        <source>oven entry given at %1 s</source>
        <translation>Ofeneintritt angegeben bei %1 s</translation>
    </message>
    <message>
        <source>decimal %1</source>
        <translation>Dezimalzeichen %1</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Gelesen als: %1</translation>
    </message>
    <message>
        <source>Decision rule: guarded, w = U</source>
        <translation>Entscheidungsregel: mit Schutzband, w = U</translation>
    </message>
    <message>
        <source>Decision rule: simple</source>
        <translation>Entscheidungsregel: einfach</translation>
    </message>
    <message>
        <source>Please note.</source>
        <comment>before warnings</comment>
        <translation>Bitte beachten.</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>%1 was not read.</source>
        <translation>%1 wurde nicht gelesen.</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be read: %1.</source>
        <translation>
            <numerusform>%n weiteres konnte nicht gelesen werden: %1.</numerusform>
            <numerusform>%n weitere konnten nicht gelesen werden: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Read it without the board</source>
        <translation>Ohne die Baugruppe lesen</translation>
    </message>
    <message>
        <source>Read it without the oven</source>
        <translation>Ohne den Ofen lesen</translation>
    </message>
    <message>
        <source>Show the line</source>
        <translation>Zeile zeigen</translation>
    </message>
    <message>
        <source>Read it another way</source>
        <translation>Anders lesen</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>Anderes Log öffnen …</translation>
    </message>
    <message>
        <source>Not judged.</source>
        <translation>Nicht beurteilt.</translation>
    </message>
    <message>
        <source>Undo this change</source>
        <translation>Diese Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation>&amp;Prüfen</translation>
    </message>
    <message>
        <source>T&amp;une</source>
        <translation>&amp;Abstimmen</translation>
    </message>
    <message>
        <source>Panel at the rig&amp;ht</source>
        <translation>Bereich &amp;rechts</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>Abstimmen</translation>
    </message>
    <message>
        <source>Prediction follows each edit</source>
        <translation>Vorhersage folgt jeder Änderung</translation>
    </message>
    <message>
        <source>Nothing is predicted yet</source>
        <translation>Noch nichts vorhergesagt</translation>
    </message>
    <message>
        <source>&amp;Lots</source>
        <translation>&amp;Lose</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lose</translation>
    </message>
    <message>
        <source>The run was not opened.</source>
        <translation>Der Lauf wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>Se&amp;ttings…</source>
        <translation>&amp;Einstellungen …</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>&amp;Ordner überwachen …</translation>
    </message>
    <message>
        <source>&amp;Keep in the record…</source>
        <translation>Im Archiv auf&amp;bewahren …</translation>
    </message>
    <message>
        <source>Keep…</source>
        <translation>Aufbewahren …</translation>
    </message>
    <message>
        <source>%1: choose where runs are kept</source>
        <translation>%1: wählen, wo Läufe aufbewahrt werden</translation>
    </message>
    <message numerus="yes">
        <source>Watching %1: %n kept</source>
        <translation>
            <numerusform>%1 wird überwacht: %n aufbewahrt</numerusform>
            <numerusform>%1 wird überwacht: %n aufbewahrt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n nicht beurteilt</numerusform>
            <numerusform>%n nicht beurteilt</numerusform>
        </translation>
    </message>
    <message>
        <source>C&amp;ompare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>From the &amp;archive…</source>
        <translation>Aus dem &amp;Archiv …</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>Zwei &amp;Demo-Läufe ansehen</translation>
    </message>
    <message>
        <source>The runs were not opened.</source>
        <translation>Die Läufe wurden nicht geöffnet.</translation>
    </message>
    <message>
        <source>Leave these cells empty</source>
        <translation>Diese Zellen leer lassen</translation>
    </message>
    <message>
        <source>Leave these rows out</source>
        <translation>Diese Zeilen auslassen</translation>
    </message>
    <message numerus="yes">
        <source>%n assumed</source>
        <comment>things about the reading</comment>
        <translation>
            <numerusform>%n Annahme</numerusform>
            <numerusform>%n Annahmen</numerusform>
        </translation>
    </message>
    <message>
        <source>Guarded, w = U</source>
        <translation>Mit Schutzband, w = U</translation>
    </message>
    <message>
        <source>Simple rule</source>
        <translation>Einfache Regel</translation>
    </message>
    <message>
        <source>&amp;Edit the oven</source>
        <translation>Ofen &amp;bearbeiten</translation>
    </message>
    <message>
        <source>The row is on the clipboard.</source>
        <translation>Die Zeile ist in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The rows are on the clipboard, with headings.</source>
        <translation>Die Zeilen sind mit Überschriften in der Zwischenablage.</translation>
    </message>
    <message>
        <source>No oven is chosen: there is none to edit.</source>
        <translation>Es ist kein Ofen gewählt: Es gibt keinen zu bearbeiten.</translation>
    </message>
    <message>
        <source>the window %1</source>
        <translation>das Prozessfenster %1</translation>
    </message>
    <message>
        <source>the oven %1</source>
        <translation>der Ofen %1</translation>
    </message>
    <message>
        <source>the recipe %1 in Tune</source>
        <translation>das Rezept %1 unter Abstimmen</translation>
    </message>
    <message>
        <source>Not closed yet.</source>
        <translation>Noch nicht geschlossen.</translation>
    </message>
    <message>
        <source>Changes that are not saved: %1.</source>
        <translation>Änderungen, die nicht gespeichert sind: %1.</translation>
    </message>
    <message>
        <source>Show the changes</source>
        <translation>Die Änderungen zeigen</translation>
    </message>
    <message>
        <source>Close without saving</source>
        <translation>Schließen, ohne zu speichern</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenModel</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Ambient, °C</source>
        <translation>Umgebung, °C</translation>
    </message>
    <message>
        <source>Mouth to first zone, mm</source>
        <translation>Einlauf bis erste Zone, mm</translation>
    </message>
    <message>
        <source>Last zone to end, mm</source>
        <translation>Letzte Zone bis Ende, mm</translation>
    </message>
    <message>
        <source>Setpoints from, °C</source>
        <translation>Sollwerte von, °C</translation>
    </message>
    <message>
        <source>Setpoints to, °C</source>
        <translation>Sollwerte bis, °C</translation>
    </message>
    <message>
        <source>Speed from, mm/min</source>
        <translation>Geschwindigkeit von, mm/min</translation>
    </message>
    <message>
        <source>Speed to, mm/min</source>
        <translation>Geschwindigkeit bis, mm/min</translation>
    </message>
    <message>
        <source>Step to next zone, °C</source>
        <translation>Sprung zur nächsten Zone, °C</translation>
    </message>
    <message>
        <source>Top to bottom, °C</source>
        <translation>Oben zu unten, °C</translation>
    </message>
    <message>
        <source>%1: its other end is missing</source>
        <translation>%1: Das andere Ende fehlt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>heats</source>
        <translation>heizt</translation>
    </message>
    <message>
        <source>cools</source>
        <translation>kühlt</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Begins at, mm</source>
        <translation>Beginnt bei, mm</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Länge, mm</translation>
    </message>
    <message>
        <source>Gap after it, mm</source>
        <translation>Lücke danach, mm</translation>
    </message>
    <message>
        <source>Board there, s</source>
        <translation>Baugruppe dort, s</translation>
    </message>
    <message>
        <source>From the oven’s mouth, out of the lengths and gaps before it</source>
        <translation>Vom Einlauf des Ofens, aus den Längen und Lücken davor</translation>
    </message>
    <message>
        <source>From the oven entry, at the speed of the recipe</source>
        <translation>Ab Ofeneintritt, bei der Geschwindigkeit des Rezepts</translation>
    </message>
    <message>
        <source>“%1” can mean thousands or decimals: type thousands without a sign, decimals with one or two digits</source>
        <translation>„%1“ kann Tausender oder Dezimalstellen meinen: Tausender ohne Trennzeichen eingeben, Dezimalstellen mit einer oder zwei Ziffern</translation>
    </message>
    <message>
        <source>Zone %1: name %2</source>
        <translation>Zone %1: Name %2</translation>
    </message>
    <message>
        <source>Zone %1: length %2 mm</source>
        <translation>Zone %1: Länge %2 mm</translation>
    </message>
    <message>
        <source>Zone %1: gap after it %2 mm</source>
        <translation>Zone %1: Lücke danach %2 mm</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenPage</name>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Ambient, °C</source>
        <translation>&amp;Umgebung, °C</translation>
    </message>
    <message>
        <source>&amp;Mouth to first zone, mm</source>
        <translation>&amp;Einlauf bis erste Zone, mm</translation>
    </message>
    <message>
        <source>Last &amp;zone to end, mm</source>
        <translation>Letzte &amp;Zone bis Ende, mm</translation>
    </message>
    <message>
        <source>Set&amp;points, °C</source>
        <translation>Sollwer&amp;te, °C</translation>
    </message>
    <message>
        <source>&amp;Speed, mm/min</source>
        <translation>&amp;Geschwindigkeit, mm/min</translation>
    </message>
    <message>
        <source>S&amp;tep to next zone, °C</source>
        <translation>&amp;Sprung zur nächsten Zone, °C</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>Neue Revision</translation>
    </message>
    <message>
        <source>The curves begin at %1 to %2 %3.</source>
        <translation>Die Kurven beginnen bei %1 bis %2 %3.</translation>
    </message>
    <message>
        <source>They do not show when the board entered.</source>
        <translation>Sie zeigen nicht, wann die Baugruppe in den Ofen kam.</translation>
    </message>
    <message>
        <source>With these lengths they put the oven entry at %1 ± %2 s on the log’s clock.</source>
        <translation>Mit diesen Längen legen sie den Ofeneintritt auf %1 ± %2 s der Uhr des Logs.</translation>
    </message>
    <message>
        <source>The oven entry was given: %1 s on the log’s clock.</source>
        <translation>Der Ofeneintritt ist angegeben: %1 s der Uhr des Logs.</translation>
    </message>
    <message>
        <source>A new revision needs a name.</source>
        <translation>Eine neue Revision braucht einen Namen.</translation>
    </message>
    <message>
        <source>The oven is at revision %1 already.</source>
        <translation>Der Ofen hat schon Revision %1.</translation>
    </message>
    <message>
        <source>Every rule for ovens is met.</source>
        <translation>Alle Regeln für Öfen sind erfüllt.</translation>
    </message>
    <message>
        <source>Oven, %1</source>
        <translation>Ofen, %1</translation>
    </message>
    <message>
        <source>Save the oven</source>
        <translation>Den Ofen speichern</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML-Dateien (*.toml)</translation>
    </message>
    <message>
        <source>The oven was not saved.</source>
        <translation>Der Ofen wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>Gespeichert als Revision %1: %2</translation>
    </message>
    <message>
        <source>Save the oven’s revision %1</source>
        <translation>Revision %1 des Ofens speichern</translation>
    </message>
    <message>
        <source>Save as a new revision</source>
        <translation>Als neue Revision speichern</translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation>Woanders speichern…</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>Zurück zum Ergebnis</translation>
    </message>
    <message>
        <source>Top to &amp;bottom, °C</source>
        <translation>Oben zu u&amp;nten, °C</translation>
    </message>
    <message>
        <source>Rev&amp;ision</source>
        <translation>Rev&amp;ision</translation>
    </message>
    <message>
        <source>The curves begin at %1 %2.</source>
        <translation>Die Kurven beginnen bei %1 %2.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OverlayList</name>
    <message>
        <source>Laid over the prediction</source>
        <translation>Über die Vorhersage gelegt</translation>
    </message>
    <message>
        <source>The run as it was measured</source>
        <translation>Der Lauf, wie gemessen</translation>
    </message>
    <message>
        <source>%1; margin %2</source>
        <translation>%1; Reserve %2</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>Vorhersage %1 verwerfen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::PageView</name>
    <message>
        <source>Preview of the sheet</source>
        <translation>Vorschau des Blattes</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ProfileMenus</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, Rev. %2</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, geändert</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>&amp;Window</source>
        <translation>&amp;Prozessfenster</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>&amp;Baugruppe</translation>
    </message>
    <message>
        <source>&amp;Oven and recipe</source>
        <translation>&amp;Ofen und Rezept</translation>
    </message>
    <message>
        <source>Judge &amp;also against</source>
        <translation>A&amp;uch prüfen gegen</translation>
    </message>
    <message>
        <source>No longer against %1</source>
        <translation>Nicht mehr gegen %1</translation>
    </message>
    <message>
        <source>&amp;Edit this window</source>
        <translation>Dieses Prozessfenster &amp;bearbeiten</translation>
    </message>
    <message>
        <source>Open a window &amp;file…</source>
        <translation>Prozessfenster-&amp;Datei öffnen …</translation>
    </message>
    <message>
        <source>Open a window</source>
        <translation>Prozessfenster öffnen</translation>
    </message>
    <message>
        <source>Open a board &amp;file…</source>
        <translation>Baugruppen-&amp;Datei öffnen …</translation>
    </message>
    <message>
        <source>Open a board</source>
        <translation>Baugruppe öffnen</translation>
    </message>
    <message>
        <source>Open a recipe &amp;file…</source>
        <translation>Rezept-&amp;Datei öffnen …</translation>
    </message>
    <message>
        <source>Open a recipe</source>
        <translation>Rezept öffnen</translation>
    </message>
    <message>
        <source>Open an oven &amp;file and a recipe…</source>
        <translation>Ofen-Datei &amp;und Rezept öffnen …</translation>
    </message>
    <message>
        <source>Open an oven</source>
        <translation>Ofen öffnen</translation>
    </message>
    <message>
        <source>Open a recipe of this oven</source>
        <translation>Rezept dieses Ofens öffnen</translation>
    </message>
    <message>
        <source>TOML files (*.toml);;All files (*)</source>
        <translation>TOML-Dateien (*.toml);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1, line %2: </source>
        <translation>%1, Zeile %2: </translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>Datei öffnen</translation>
    </message>
    <message>
        <source>Not judged anew: this window cannot be used.</source>
        <translation>Nicht neu beurteilt: Dieses Prozessfenster kann nicht verwendet werden.</translation>
    </message>
    <message>
        <source>Judge also against %1</source>
        <translation>Auch gegen %1 prüfen</translation>
    </message>
    <message>
        <source>Choose the window %1</source>
        <translation>Prozessfenster %1 wählen</translation>
    </message>
    <message>
        <source>No longer judge against %1</source>
        <translation>Nicht mehr gegen %1 prüfen</translation>
    </message>
    <message>
        <source>Choose no board</source>
        <translation>Keine Baugruppe wählen</translation>
    </message>
    <message>
        <source>This board cannot be used.</source>
        <translation>Diese Baugruppe kann nicht verwendet werden.</translation>
    </message>
    <message>
        <source>Choose the board %1</source>
        <translation>Baugruppe %1 wählen</translation>
    </message>
    <message>
        <source>Choose no oven</source>
        <translation>Keinen Ofen wählen</translation>
    </message>
    <message>
        <source>This oven cannot be used.</source>
        <translation>Dieser Ofen kann nicht verwendet werden.</translation>
    </message>
    <message>
        <source>This recipe cannot be used.</source>
        <translation>Dieses Rezept kann nicht verwendet werden.</translation>
    </message>
    <message>
        <source>This recipe does not fit the oven.</source>
        <translation>Dieses Rezept passt nicht zum Ofen.</translation>
    </message>
    <message>
        <source>Choose the recipe %1</source>
        <translation>Rezept %1 wählen</translation>
    </message>
    <message>
        <source>&amp;Edit this oven</source>
        <translation>Diesen Ofen &amp;bearbeiten</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingPanel</name>
    <message>
        <source>How the log was read</source>
        <translation>Wie das Log gelesen wurde</translation>
    </message>
    <message>
        <source>Read logs laid out like this the same way</source>
        <translation>Logs dieser Form genauso lesen</translation>
    </message>
    <message>
        <source>Use this reading</source>
        <translation>So lesen</translation>
    </message>
    <message>
        <source>Back to what was found</source>
        <translation>Zurück zum Gefundenen</translation>
    </message>
    <message>
        <source>Export the layout…</source>
        <translation>Layout exportieren …</translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>Zeichensatz</translation>
    </message>
    <message>
        <source>Separator</source>
        <translation>Trennzeichen</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Header</source>
        <translation>Kopfzeile</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Order of the date</source>
        <translation>Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>Ofeneintritt</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Oven entry, seconds on the log’s clock</source>
        <translation>Ofeneintritt, Sekunden auf der Uhr des Logs</translation>
    </message>
    <message>
        <source>What was found and assumed</source>
        <translation>Was gefunden und angenommen wurde</translation>
    </message>
    <message>
        <source>Layout &amp;name</source>
        <translation>&amp;Name des Layouts</translation>
    </message>
    <message>
        <source>Layout name</source>
        <translation>Name des Layouts</translation>
    </message>
    <message numerus="yes">
        <source>The %n line(s) before it are kept as notes.</source>
        <translation>
            <numerusform>Die Zeile davor ist als Notiz aufbewahrt.</numerusform>
            <numerusform>Die %n Zeilen davor sind als Notizen aufbewahrt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 s a row.</source>
        <translation>%1 s je Zeile.</translation>
    </message>
    <message>
        <source>Not found. Without an oven, times stay on the log’s own clock.</source>
        <translation>Nicht gefunden. Ohne Ofen bleiben die Zeiten auf der Uhr des Logs.</translation>
    </message>
    <message>
        <source>Not found in this log: it can be given.</source>
        <translation>In diesem Log nicht gefunden: Er kann angegeben werden.</translation>
    </message>
    <message>
        <source>Given. The plot and the zone strip count from it.</source>
        <translation>Angegeben. Kurven und Zonenleiste zählen ab hier.</translation>
    </message>
    <message>
        <source>Found from the curves, ± %1 s. The plot and the zone strip count from it.</source>
        <translation>Aus den Kurven gefunden, ± %1 s. Kurven und Zonenleiste zählen ab hier.</translation>
    </message>
    <message>
        <source>Found from the log</source>
        <translation>Im Log gefunden</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Angegeben</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n cell(s) without a reading</source>
        <translation>
            <numerusform>%1: %n Zelle ohne Messwert</numerusform>
            <numerusform>%1: %n Zellen ohne Messwert</numerusform>
        </translation>
    </message>
    <message>
        <source>changed by you</source>
        <translation>von Ihnen geändert</translation>
    </message>
    <message>
        <source>Found from the content</source>
        <translation>Aus dem Inhalt gefunden</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>noch nicht gelesen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The layout was not kept.</source>
        <translation>Das Layout wurde nicht behalten.</translation>
    </message>
    <message>
        <source>Logs of this shape are read by the layout %1.</source>
        <translation>Logs dieser Form werden mit dem Layout %1 gelesen.</translation>
    </message>
    <message>
        <source>Export the layout</source>
        <translation>Layout exportieren</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML-Dateien (*.toml)</translation>
    </message>
    <message>
        <source>The layout was not exported.</source>
        <translation>Das Layout wurde nicht exportiert.</translation>
    </message>
    <message>
        <source>The layout is in %1.</source>
        <translation>Das Layout ist in %1.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>Thermoelement</translation>
    </message>
    <message>
        <source>Cold junction</source>
        <translation>Vergleichsstelle</translation>
    </message>
    <message>
        <source>No byte contradicts it.</source>
        <translation>Kein Byte widerspricht.</translation>
    </message>
    <message numerus="yes">
        <source>Every row that is shown has %n cell(s).</source>
        <translation>
            <numerusform>Jede gezeigte Zeile hat %n Zelle.</numerusform>
            <numerusform>Jede gezeigte Zeile hat %n Zellen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>Nicht angegeben</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Angenommen: %1</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message numerus="yes">
        <source>%n other(s) in the file may be a log as well.</source>
        <translation>
            <numerusform>%n andere in der Datei kann auch ein Log sein.</numerusform>
            <numerusform>%n andere in der Datei können auch Logs sein.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingRow</name>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>assumed; %1</source>
        <translation>angenommen; %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RecipeStrip</name>
    <message>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>Type a number, or step with the up and down arrows; Delete goes back to what was run.</source>
        <translation>Zahl tippen oder mit auf und ab schrittweise ändern; Entf geht zurück zum Gefahrenen.</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>top and bottom together</source>
        <translation>oben und unten gemeinsam</translation>
    </message>
    <message>
        <source>stays in a search</source>
        <translation>bleibt bei einer Suche</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is. Press to let it move.</source>
        <translation>Eine Suche lässt Zone %1, wie sie ist. Drücken, damit sie sich bewegen darf.</translation>
    </message>
    <message>
        <source>Press to keep zone %1 as it is in a search.</source>
        <translation>Drücken, damit Zone %1 bei einer Suche bleibt.</translation>
    </message>
    <message>
        <source>Type, step with the arrows or drag up and down.</source>
        <translation>Tippen, mit den Pfeilen ändern oder auf und ab ziehen.</translation>
    </message>
    <message>
        <source>Top and bottom move together</source>
        <translation>Oben und unten bewegen sich gemeinsam</translation>
    </message>
    <message>
        <source>&amp;Type a number</source>
        <translation>&amp;Zahl tippen</translation>
    </message>
    <message>
        <source>&amp;Back to what was run: %1</source>
        <translation>Zurück zum &amp;Gefahrenen: %1</translation>
    </message>
    <message>
        <source>&amp;Keep zone %1 as it is in a search</source>
        <translation>Zone %1 bei einer Suche &amp;halten</translation>
    </message>
    <message>
        <source>Top and bottom &amp;together</source>
        <translation>Oben und unten &amp;gemeinsam</translation>
    </message>
    <message>
        <source>was %1</source>
        <comment>a setpoint or the speed</comment>
        <translation>war %1</translation>
    </message>
    <message>
        <source>Top and bottom move apart</source>
        <translation>Oben und unten bewegen sich getrennt</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ResultsModel</name>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Anforderung</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>Messstelle</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Probability inside</source>
        <translation>Wahrscheinlichkeit innerhalb</translation>
    </message>
    <message>
        <source>From, s</source>
        <translation>Von, s</translation>
    </message>
    <message>
        <source>To, s</source>
        <translation>Bis, s</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>Source of the limit</source>
        <translation>Quelle der Grenze</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Baugruppe</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ResultsTable</name>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsModel</name>
    <message>
        <source>Mark</source>
        <translation>Markieren</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Window rev</source>
        <translation>Fenster-Rev.</translation>
    </message>
    <message>
        <source>Recipe rev</source>
        <translation>Rezept-Rev.</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>Kleinste Reserve bei</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>%1 has no value</source>
        <comment>placement and requirement</comment>
        <translation>%1 ohne Wert</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <comment>date and time of a run of this year</comment>
        <translation>d. MMM HH:mm</translation>
    </message>
    <message>
        <source>d MMM yyyy HH:mm</source>
        <comment>date and time of a run</comment>
        <translation>d. MMM yyyy HH:mm</translation>
    </message>
    <message>
        <source>to print</source>
        <comment>a marked run</comment>
        <translation>zu drucken</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>markiert</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>nicht markiert</translation>
    </message>
    <message>
        <source>printed</source>
        <comment>the sheet of a run</comment>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>Printed on %1</source>
        <translation>Gedruckt am %1</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this: it is read from each record once its row is seen.</source>
        <translation>Danach lässt sich die Liste nicht sortieren: es wird aus jedem Datensatz gelesen, sobald seine Zeile zu sehen ist.</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this.</source>
        <translation>Danach lässt sich die Liste nicht sortieren.</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1, wie angegeben</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1, nach der Uhr im Log</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1, Zeit der Logdatei</translation>
    </message>
    <message>
        <source>%1, of the chosen zone</source>
        <comment>time of a run</comment>
        <translation>%1, zur gewählten Zone</translation>
    </message>
    <message>
        <source>The result that decides the margin of the run, as it was judged when it was kept.</source>
        <translation>Das Ergebnis, das die Reserve des Laufs bestimmt, so wie es beim Aufbewahren beurteilt war.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsTable</name>
    <message>
        <source>Runs of the archive</source>
        <translation>Läufe des Archivs</translation>
    </message>
    <message>
        <source>So&amp;rt the runs by</source>
        <translation>Läufe s&amp;ortieren nach</translation>
    </message>
    <message>
        <source>The other way &amp;round</source>
        <translation>&amp;Andersherum</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Mark, or take the mark off</source>
        <translation>&amp;Markieren oder Marke entfernen</translation>
    </message>
    <message>
        <source>&amp;Copy with headings</source>
        <translation>Mit Überschriften &amp;kopieren</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Screenshot</name>
    <message>
        <source>a large log</source>
        <translation>ein großes Log</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SearchSettings</name>
    <message>
        <source>Keep the s&amp;peed</source>
        <translation>&amp;Geschwindigkeit halten</translation>
    </message>
    <message>
        <source>&amp;Margin to keep, %</source>
        <translation>&amp;Reserve, die bleiben muss, %</translation>
    </message>
    <message>
        <source>Margin to keep, %</source>
        <translation>Reserve, die bleiben muss, %</translation>
    </message>
    <message>
        <source>What the fastest and the coolest must keep; else half of the best, at most 20 %</source>
        <translation>Was das schnellste und das kühlste behalten müssen; sonst die Hälfte des besten, höchstens 20 %</translation>
    </message>
    <message>
        <source>S&amp;uggest recipes</source>
        <translation>Rezepte &amp;vorschlagen</translation>
    </message>
    <message>
        <source>Keep the speed in a search</source>
        <translation>Geschwindigkeit bei einer Suche halten</translation>
    </message>
    <message>
        <source>Let a search change the speed</source>
        <translation>Suche darf die Geschwindigkeit ändern</translation>
    </message>
    <message>
        <source>Least speed of a search</source>
        <translation>Mindestgeschwindigkeit einer Suche</translation>
    </message>
    <message>
        <source>Margin that a search keeps</source>
        <translation>Reserve, die eine Suche einhält</translation>
    </message>
    <message>
        <source>Lea&amp;st speed, %1</source>
        <translation>&amp;Mindestgeschwindigkeit, %1</translation>
    </message>
    <message>
        <source>Least speed, %1</source>
        <translation>Mindestgeschwindigkeit, %1</translation>
    </message>
    <message>
        <source>Every zone may move; press a zone’s name in the strip to keep it.</source>
        <translation>Jede Zone darf sich bewegen; auf ihren Namen in der Leiste drücken, um sie zu halten.</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is.</source>
        <translation>Eine Suche lässt Zone %1, wie sie ist.</translation>
    </message>
    <message>
        <source>A search leaves zones %1 as they are.</source>
        <translation>Eine Suche lässt die Zonen %1, wie sie sind.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SettingsWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Wählen …</translation>
    </message>
    <message>
        <source>&amp;Use this archive</source>
        <translation>Dieses Archiv &amp;verwenden</translation>
    </message>
    <message>
        <source>No password: it would be shown and kept in plain text here. It belongs into the password file or a service file of the server’s library (.pgpass).</source>
        <translation>Kein Passwort: es wäre hier zu sehen und stünde im Klartext. Es gehört in die Passwort- oder eine Service-Datei der Bibliothek des Servers (.pgpass).</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Archive: where runs are kept</source>
        <translation>Archiv: wo Läufe aufbewahrt werden</translation>
    </message>
    <message>
        <source>File of the archive</source>
        <translation>Datei des Archivs</translation>
    </message>
    <message>
        <source>Address of the server</source>
        <translation>Adresse des Servers</translation>
    </message>
    <message>
        <source>This c&amp;omputer</source>
        <translation>Dieser &amp;Rechner</translation>
    </message>
    <message>
        <source>A &amp;file</source>
        <translation>Eine &amp;Datei</translation>
    </message>
    <message>
        <source>A PostgreSQL &amp;server</source>
        <translation>Ein PostgreSQL-&amp;Server</translation>
    </message>
    <message>
        <source>Sheets and records</source>
        <translation>Blätter und Datensätze</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>Wä&amp;hlen …</translation>
    </message>
    <message>
        <source>Choose a logo</source>
        <translation>Logo wählen</translation>
    </message>
    <message>
        <source>Choose the archive’s file</source>
        <translation>Datei des Archivs wählen</translation>
    </message>
    <message>
        <source>Com&amp;pany, at the head of each sheet</source>
        <translation>&amp;Firma, am Kopf jedes Blattes</translation>
    </message>
    <message>
        <source>&amp;Logo beside it</source>
        <translation>&amp;Logo daneben</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>P&amp;apier</translation>
    </message>
    <message>
        <source>Op&amp;erator, who keeps and prints here</source>
        <translation>&amp;Bediener, der hier aufbewahrt und druckt</translation>
    </message>
    <message>
        <source>Which file? It is made when the first run is kept.</source>
        <translation>Welche Datei? Sie entsteht, wenn der erste Lauf aufbewahrt wird.</translation>
    </message>
    <message>
        <source>This is the address of a server.</source>
        <translation>Das ist die Adresse eines Servers.</translation>
    </message>
    <message>
        <source>Say the whole path, so that it is the same file wherever the program starts.</source>
        <translation>Den ganzen Pfad angeben, damit es dieselbe Datei ist, wo auch immer das Programm startet.</translation>
    </message>
    <message>
        <source>%1 is a folder: an archive is a file.</source>
        <translation>%1 ist ein Ordner: ein Archiv ist eine Datei.</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>Es gibt keinen Ordner %1.</translation>
    </message>
    <message>
        <source>Which server? As in postgresql://user@host:5432/database.</source>
        <translation>Welcher Server? Wie in postgresql://user@host:5432/database.</translation>
    </message>
    <message>
        <source>Found %1, expected an address such as postgresql://user@host:5432/database.</source>
        <translation>%1 gefunden, eine Adresse wie postgresql://user@host:5432/database erwartet.</translation>
    </message>
    <message>
        <source>The address holds a password, which would be shown and kept in plain text: it belongs into the password file or a service file of the server’s library.</source>
        <translation>Die Adresse enthält ein Passwort, das zu sehen wäre und im Klartext stünde: es gehört in die Passwort- oder eine Service-Datei der Bibliothek des Servers.</translation>
    </message>
    <message>
        <source>In use. %1</source>
        <translation>In Gebrauch. %1</translation>
    </message>
    <message>
        <source>In use. It is made when the first run is kept.</source>
        <translation>In Gebrauch. Es entsteht, wenn der erste Lauf aufbewahrt wird.</translation>
    </message>
    <message>
        <source>In use, but: %1</source>
        <translation>In Gebrauch, aber: %1</translation>
    </message>
    <message>
        <source>Not in use yet.</source>
        <translation>Noch nicht in Gebrauch.</translation>
    </message>
    <message>
        <source>Archives (*.sqlite);;All files (*)</source>
        <translation>Archive (*.sqlite);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Logo at the head of each sheet</source>
        <translation>Logo am Kopf jedes Blattes</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png *.jpg *.jpeg)</source>
        <translation>Bilder (*.svg *.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>Not on the sheets: %1</source>
        <translation>Nicht auf den Blättern: %1</translation>
    </message>
    <message>
        <source>The program was started with it: next time it is %1 again, unless you use this one.</source>
        <translation>Das Programm wurde damit gestartet: beim nächsten Mal ist es wieder %1, wenn Sie dieses nicht verwenden.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SeveralLots</name>
    <message>
        <source>&amp;All shown</source>
        <translation>&amp;Alle gezeigten</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>&amp;Keine</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Wählen …</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>&amp;Replace them</source>
        <translation>&amp;Ersetzen</translation>
    </message>
    <message>
        <source>&amp;Leave them out</source>
        <translation>Aus&amp;lassen</translation>
    </message>
    <message>
        <source>Change the folder</source>
        <translation>Ordner ändern</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>Eine Seite je Lauf</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>Im Archiv als gedruckt vermerken</translation>
    </message>
    <message>
        <source>Sheets of several lots</source>
        <translation>Blätter mehrerer Lose</translation>
    </message>
    <message>
        <source>%1 of %2: lot %3</source>
        <translation>%1 von %2: Los %3</translation>
    </message>
    <message>
        <source>Lot %1 is not marked as printed: %2</source>
        <translation>Los %1 ist nicht als gedruckt vermerkt: %2</translation>
    </message>
    <message>
        <source>The lots are listed…</source>
        <translation>Die Lose werden aufgelistet …</translation>
    </message>
    <message>
        <source>Find a lot</source>
        <translation>Los suchen</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lose</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Last run</source>
        <translation>Letzter Lauf</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>One HTML file</source>
        <translation>Eine HTML-Datei</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>Tabelle (CSV)</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Von %1</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>In the &amp;folder</source>
        <translation>Im &amp;Ordner</translation>
    </message>
    <message>
        <source>A file for each lot, as</source>
        <translation>Eine Datei je Los, als</translation>
    </message>
    <message>
        <source>The archive has no lot yet.</source>
        <translation>Das Archiv hat noch kein Los.</translation>
    </message>
    <message>
        <source>Folder of the sheets</source>
        <translation>Ordner der Blätter</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>Es gibt keinen Ordner %1.</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 ist ein offenes Log: ein Blatt tritt nie an die Stelle eines Logs</translation>
    </message>
    <message numerus="yes">
        <source>%n of these files are in the folder already.</source>
        <translation>
            <numerusform>%n dieser Dateien ist schon im Ordner.</numerusform>
            <numerusform>%n dieser Dateien sind schon im Ordner.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheets are written.</source>
        <translation>
            <numerusform>%1 von %n Blatt ist geschrieben.</numerusform>
            <numerusform>%1 von %n Blättern sind geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be made.</source>
        <translation>
            <numerusform>%n weiteres konnte nicht erstellt werden.</numerusform>
            <numerusform>%n weitere konnten nicht erstellt werden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Write %n sheet(s)</source>
        <translation>
            <numerusform>%n Blatt &amp;schreiben</numerusform>
            <numerusform>%n Blätter &amp;schreiben</numerusform>
        </translation>
    </message>
    <message>
        <source>Write sheets</source>
        <translation>Blätter schreiben</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ShareBars</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Shares of the zones</source>
        <translation>Anteile der Zonen</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>Zone %1, oben</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>Zone %1, unten</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SheetFilesJob</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SheetMenu</name>
    <message>
        <source>Pr&amp;int the sheet…</source>
        <translation>Blatt &amp;drucken…</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Druck&amp;vorschau…</translation>
    </message>
    <message>
        <source>&amp;Export the sheet…</source>
        <translation>Blatt &amp;exportieren…</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>Das Blatt wurde an den Drucker gesendet</translation>
    </message>
    <message>
        <source>Export the sheet</source>
        <translation>Blatt exportieren</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;One HTML file (*.html);;Table (*.csv);;JSON (*.json)</source>
        <translation>PDF (*.pdf);;Eine HTML-Datei (*.html);;Tabelle (*.csv);;JSON (*.json)</translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .html, .csv or .json</source>
        <translation>%1: ein Blatt wird als .pdf, .html, .csv oder .json geschrieben</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>Das Blatt steht in %1</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>Das Blatt konnte nicht gedruckt werden</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 ist ein geöffnetes Log: ein Blatt tritt nie an die Stelle eines Logs</translation>
    </message>
    <message>
        <source>The sheet has no logo. %1</source>
        <translation>Das Blatt hat kein Logo. %1</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>Blatt…</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionCard</name>
    <message>
        <source>The recipe that was run stays.</source>
        <translation>Das gefahrene Rezept bleibt.</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>Reserve %1</translation>
    </message>
    <message>
        <source>Tightest: %1</source>
        <translation>Am knappsten: %1</translation>
    </message>
    <message>
        <source>Takes its recipe over into the strip</source>
        <translation>Übernimmt sein Rezept in die Leiste</translation>
    </message>
    <message>
        <source>%1, shown</source>
        <translation>%1, gezeigt</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 zeigen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionsPanel</name>
    <message>
        <source>Suggestions</source>
        <translation>Vorschläge</translation>
    </message>
    <message>
        <source>Search again…</source>
        <translation>Neu suchen …</translation>
    </message>
    <message>
        <source>Suggestions can be asked for once it is known how this board heats in this oven.</source>
        <translation>Vorschläge gibt es, sobald bekannt ist, wie diese Baugruppe in diesem Ofen warm wird.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop the search</source>
        <translation>Suche anhalten</translation>
    </message>
    <message>
        <source>Progress of the search</source>
        <translation>Fortschritt der Suche</translation>
    </message>
    <message>
        <source>Undetermined: the search was stopped before it had looked everywhere.</source>
        <translation>Unbestimmt: Die Suche wurde angehalten, bevor sie überall gesucht hatte.</translation>
    </message>
    <message>
        <source>No recipe passes</source>
        <translation>Kein Rezept besteht</translation>
    </message>
    <message>
        <source>What stands against each other:</source>
        <translation>Was einander entgegensteht:</translation>
    </message>
    <message>
        <source>Show the best there is</source>
        <translation>Das beste zeigen</translation>
    </message>
    <message>
        <source>Nothing better was found: the recipe that was run can stay.</source>
        <translation>Nichts Besseres gefunden: Das gefahrene Rezept kann bleiben.</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Zeigen: %1</translation>
    </message>
    <message>
        <source>The next run worth making</source>
        <translation>Der nächste lohnende Lauf</translation>
    </message>
    <message>
        <source>Show its recipe</source>
        <translation>Sein Rezept zeigen</translation>
    </message>
    <message>
        <source>Show the next run worth making</source>
        <translation>Den nächsten lohnenden Lauf zeigen</translation>
    </message>
    <message>
        <source>These are predictions.</source>
        <translation>Dies sind Vorhersagen.</translation>
    </message>
    <message>
        <source>Nothing is suggested from a model that does not fit.</source>
        <translation>Aus einem Modell, das nicht passt, wird nichts vorgeschlagen.</translation>
    </message>
    <message>
        <source>To check first</source>
        <translation>Zuerst zu prüfen</translation>
    </message>
    <message>
        <source>No chance of passing is stated while the log contradicts the files.</source>
        <translation>Solange das Log den Dateien widerspricht, wird keine Chance zu bestehen genannt.</translation>
    </message>
    <message>
        <source>Not known: a recipe that passes may exist</source>
        <translation>Nicht bekannt: ein Rezept, das besteht, kann es geben</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TaskRail</name>
    <message>
        <source>Drop a log anywhere in this window</source>
        <translation>Ein Log irgendwo in diesem Fenster ablegen</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Aufgaben</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TunePage</name>
    <message>
        <source>Top and bottom &amp;together</source>
        <translation>Oben und unten &amp;gemeinsam</translation>
    </message>
    <message>
        <source>&amp;All curves</source>
        <translation>&amp;Alle Kurven</translation>
    </message>
    <message>
        <source>a split needs a run that splits them</source>
        <translation>Trennen braucht einen Lauf, der sie trennt</translation>
    </message>
    <message>
        <source>&amp;Keep this prediction</source>
        <translation>Diese Vorhersage &amp;behalten</translation>
    </message>
    <message>
        <source>&amp;Back to what was run</source>
        <translation>Zurück zum &amp;Gefahrenen</translation>
    </message>
    <message>
        <source>Change &amp;note…</source>
        <translation>Änderungs&amp;zettel …</translation>
    </message>
    <message>
        <source>&amp;Save as a recipe…</source>
        <translation>Als Rezept &amp;speichern …</translation>
    </message>
    <message>
        <source>Suggestions</source>
        <translation>Vorschläge</translation>
    </message>
    <message>
        <source>Its curves stay, to be laid over others</source>
        <translation>Ihre Kurven bleiben, um sie über andere zu legen</translation>
    </message>
    <message>
        <source>Save as &amp;PDF…</source>
        <translation>Als &amp;PDF speichern …</translation>
    </message>
    <message>
        <source>Save as &amp;text…</source>
        <translation>Als &amp;Text speichern …</translation>
    </message>
    <message>
        <source>Top and bottom together</source>
        <translation>Oben und unten gemeinsam</translation>
    </message>
    <message>
        <source>Top and bottom apart</source>
        <translation>Oben und unten getrennt</translation>
    </message>
    <message>
        <source>Let a search move zone %1</source>
        <translation>Suche darf Zone %1 bewegen</translation>
    </message>
    <message>
        <source>Keep zone %1 in a search</source>
        <translation>Zone %1 bei einer Suche halten</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>letter of a prediction, what it changes</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>Predicted and measured temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>Vorhergesagte und gemessene Temperatur über der Zeit, %n Thermoelement</numerusform>
            <numerusform>Vorhergesagte und gemessene Temperatur über der Zeit, %n Thermoelemente</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Back to rev %1</source>
        <translation>&amp;Zurück zu Rev. %1</translation>
    </message>
    <message>
        <source>Save as a recipe</source>
        <translation>Als Rezept speichern</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>TOML-Dateien (*.toml)</translation>
    </message>
    <message>
        <source>The recipe was not saved.</source>
        <translation>Das Rezept wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>Saved as %1. It is a prediction: confirm it with an instrumented run.</source>
        <translation>Gespeichert als %1. Es ist eine Vorhersage: mit einem Messlauf bestätigen.</translation>
    </message>
    <message>
        <source>Save the change note</source>
        <translation>Änderungszettel speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>The change note was not saved.</source>
        <translation>Der Änderungszettel wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>The change note is saved as %1.</source>
        <translation>Der Änderungszettel ist gespeichert als %1.</translation>
    </message>
    <message>
        <source>the run had both sides alike: what each does alone is not known</source>
        <translation>Im Lauf waren beide Seiten gleich: Was jede allein bewirkt, ist nicht bekannt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Top and bottom together, checked</source>
        <translation>Oben und unten gemeinsam, angekreuzt</translation>
    </message>
    <message>
        <source>Top and bottom together, not checked</source>
        <translation>Oben und unten gemeinsam, nicht angekreuzt</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TuneSession</name>
    <message>
        <source>Back to the recipe that was run</source>
        <translation>Zurück zum gefahrenen Rezept</translation>
    </message>
    <message>
        <source>Keep the prediction %1</source>
        <translation>Vorhersage %1 behalten</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>Vorhersage %1 verwerfen</translation>
    </message>
    <message>
        <source>Speed to %1</source>
        <translation>Geschwindigkeit auf %1</translation>
    </message>
    <message>
        <source>Zone %1 to %2</source>
        <translation>Zone %1 auf %2</translation>
    </message>
    <message>
        <source>Learn from %1 too</source>
        <translation>Auch aus %1 lernen</translation>
    </message>
    <message>
        <source>Do not learn from %1</source>
        <translation>Nicht aus %1 lernen</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WatchWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Wählen …</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>Wä&amp;hlen …</translation>
    </message>
    <message>
        <source>&amp;Watch</source>
        <translation>&amp;Überwachen</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Each log that appears in the folder is judged and kept by the first rule that matches its name. Files stay where they are; one that is still being written is waited for. Nothing is watched before you say so, and watching goes on when this window is closed.</source>
        <translation>Jedes Log, das im Ordner erscheint, wird nach der ersten Regel beurteilt und aufbewahrt, die zu seinem Namen passt. Dateien bleiben, wo sie sind; auf eine, die noch geschrieben wird, wird gewartet. Nichts wird überwacht, bevor Sie es sagen, und es geht weiter, wenn dieses Fenster geschlossen ist.</translation>
    </message>
    <message>
        <source>Watch a folder</source>
        <translation>Ordner überwachen</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Wählen: %1</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>&amp;Ordner</translation>
    </message>
    <message>
        <source>&amp;Rules</source>
        <translation>&amp;Regeln</translation>
    </message>
    <message>
        <source>rules.toml: which lot, window, board, oven and recipe belong to which file names</source>
        <translation>rules.toml: welches Los, welches Prozessfenster, welche Baugruppe, welcher Ofen und welches Rezept zu welchen Dateinamen gehören</translation>
    </message>
    <message>
        <source>Logs that came</source>
        <translation>Eingegangene Logs</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Zu überwachender Ordner</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Rules (*.toml);;All files (*)</source>
        <translation>Regeln (*.toml);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>kept already, as %1</source>
        <translation>schon aufbewahrt, als %1</translation>
    </message>
    <message>
        <source>kept as %1</source>
        <translation>aufbewahrt als %1</translation>
    </message>
    <message>
        <source>Watching %1.</source>
        <translation>%1 wird überwacht.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) kept</source>
        <translation>
            <numerusform>%n Lauf aufbewahrt</numerusform>
            <numerusform>%n Läufe aufbewahrt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) not judged.</source>
        <translation>
            <numerusform>%n Datei nicht beurteilt.</numerusform>
            <numerusform>%n Dateien nicht beurteilt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Some files wait until the archive can take them.</source>
        <translation>Einige Dateien warten, bis das Archiv sie aufnehmen kann.</translation>
    </message>
    <message>
        <source>Some files are still being written.</source>
        <translation>Einige Dateien werden noch geschrieben.</translation>
    </message>
    <message>
        <source>The server is away: what is kept waits on this computer.</source>
        <translation>Der Server ist nicht erreichbar: was aufbewahrt wird, wartet auf diesem Rechner.</translation>
    </message>
    <message>
        <source>Nothing is watched: %1</source>
        <translation>Nichts wird überwacht: %1</translation>
    </message>
    <message>
        <source>Nothing is watched.</source>
        <translation>Nichts wird überwacht.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WindowModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Remove a requirement</source>
        <translation>Anforderung entfernen</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Add a requirement</source>
        <translation>Anforderung hinzufügen</translation>
    </message>
    <message>
        <source>Liquidus</source>
        <translation>Liquidus</translation>
    </message>
    <message>
        <source>Solidus</source>
        <translation>Solidus</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WindowPage</name>
    <message>
        <source>Add a requirement</source>
        <translation>Anforderung hinzufügen</translation>
    </message>
    <message>
        <source>Remove this requirement</source>
        <translation>Diese Anforderung entfernen</translation>
    </message>
    <message>
        <source>Save as a new revision</source>
        <translation>Als neue Revision speichern</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>Zurück zum Ergebnis</translation>
    </message>
    <message>
        <source>Requirements</source>
        <translation>Anforderungen</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>Neue Revision</translation>
    </message>
    <message>
        <source>Re&amp;vision</source>
        <translation>Re&amp;vision</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>einfach</translation>
    </message>
    <message>
        <source>guarded, w = U</source>
        <translation>mit Schutzband, w = U</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Window being edited</source>
        <translation>Prozessfenster in Bearbeitung</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Alloy</source>
        <translation>&amp;Legierung</translation>
    </message>
    <message>
        <source>&amp;Liquidus, °C</source>
        <translation>L&amp;iquidus, °C</translation>
    </message>
    <message>
        <source>&amp;Solidus, °C</source>
        <translation>&amp;Solidus, °C</translation>
    </message>
    <message>
        <source>&amp;Decision rule</source>
        <translation>&amp;Entscheidungsregel</translation>
    </message>
    <message>
        <source>&amp;Classification for Tc</source>
        <translation>&amp;Klassifizierung für Tc</translation>
    </message>
    <message>
        <source>&amp;Thermocouple</source>
        <translation>&amp;Thermoelement</translation>
    </message>
    <message>
        <source>&amp;Instrument, ± °C</source>
        <translation>&amp;Messgerät, ± °C</translation>
    </message>
    <message>
        <source>Name of the window</source>
        <translation>Name des Prozessfensters</translation>
    </message>
    <message>
        <source>Alloy</source>
        <translation>Legierung</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>Thermoelement</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Entscheidungsregel</translation>
    </message>
    <message>
        <source>Classification for Tc</source>
        <translation>Klassifizierung für Tc</translation>
    </message>
    <message>
        <source>±%1 °C</source>
        <translation>±%1 °C</translation>
    </message>
    <message>
        <source>Every rule for windows is met.</source>
        <translation>Alle Regeln für Prozessfenster sind eingehalten.</translation>
    </message>
    <message>
        <source>The window was not saved.</source>
        <translation>Das Prozessfenster wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>Gespeichert als Revision %1: %2</translation>
    </message>
    <message>
        <source>Save revision %1</source>
        <translation>Revision %1 speichern</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ZonesPane</name>
    <message>
        <source>Results outside by zone</source>
        <translation>Ergebnisse außerhalb nach Zonen</translation>
    </message>
    <message numerus="yes">
        <source>Runs of %n ovens are listed: choose one above, so that each zone is one zone.</source>
        <translation>
            <numerusform>Läufe von %n Ofen sind aufgeführt: oben einen wählen, damit jede Zone eine Zone ist.</numerusform>
            <numerusform>Läufe von %n Öfen sind aufgeführt: oben einen wählen, damit jede Zone eine Zone ist.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No required result of the %n run(s) listed is outside its limits.</source>
        <translation>
            <numerusform>Kein gefordertes Ergebnis des aufgeführten Laufs ist außerhalb seiner Grenzen.</numerusform>
            <numerusform>Kein gefordertes Ergebnis der %n aufgeführten Läufe ist außerhalb seiner Grenzen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n required result(s) are outside, and none traces to a zone: the runs have no oven and recipe, or no zone moves what is outside.</source>
        <translation>
            <numerusform>%n gefordertes Ergebnis ist außerhalb und führt auf keine Zone zurück: der Lauf hat weder Ofen noch Rezept, oder keine Zone bewegt, was außerhalb ist.</numerusform>
            <numerusform>%n geforderte Ergebnisse sind außerhalb, und keines führt auf eine Zone zurück: die Läufe haben weder Ofen noch Rezept, oder keine Zone bewegt, was außerhalb ist.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Zone %1 leads: %2 of the %n result(s) outside trace to it, in %3 of %4 runs, the last on %5.</source>
        <translation>
            <numerusform>Zone %1 führt: %2 von %n Ergebnis außerhalb geht auf sie zurück, in %3 von %4 Läufen, zuletzt am %5.</numerusform>
            <numerusform>Zone %1 führt: %2 von %n Ergebnissen außerhalb gehen auf sie zurück, in %3 von %4 Läufen, zuletzt am %5.</numerusform>
        </translation>
    </message>
    <message>
        <source>Results outside</source>
        <translation>Ergebnisse außerhalb</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Last on</source>
        <translation>Zuletzt am</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>A result traces to the zones that move it most, whatever moved it: these are counts of what was judged, no measure of drift.</source>
        <translation>Ein Ergebnis geht auf die Zonen zurück, die es am stärksten bewegen, was auch immer es bewegt hat: hier ist gezählt, was beurteilt wurde, keine Drift gemessen.</translation>
    </message>
    <message numerus="yes">
        <source>The %n run(s) of zone %1 have a bar at their left in the list.</source>
        <translation>
            <numerusform>Der Lauf zu Zone %1 hat in der Liste links einen Balken.</numerusform>
            <numerusform>Die %n Läufe zu Zone %1 haben in der Liste links einen Balken.</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a zone to find its runs in the list.</source>
        <translation>Eine Zone wählen, um ihre Läufe in der Liste zu finden.</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>zone, row, number</comment>
        <translation>%1, %2: %3</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::BoardPicture</name>
    <message>
        <source>Board</source>
        <translation>Baugruppe</translation>
    </message>
    <message>
        <source>Choose a board to see where each thermocouple sits</source>
        <translation>Baugruppe wählen, um zu sehen, wo jedes Thermoelement sitzt</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::LimitLanes</name>
    <message>
        <source>Limit lanes</source>
        <translation>Grenzbahnen</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple.</source>
        <translation>Eine Zeile für jede Anforderung, eine Zelle für jedes Thermoelement.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>requirement and its note</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::LotLane</name>
    <message>
        <source>Lane of the lot</source>
        <translation>Bahn des Loses</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::ZoneStrip</name>
    <message>
        <source>Zone strip</source>
        <translation>Zonenleiste</translation>
    </message>
    <message>
        <source>no setpoint</source>
        <translation>kein Sollwert</translation>
    </message>
    <message>
        <source>top %1, bottom %2</source>
        <translation>oben %1, unten %2</translation>
    </message>
    <message>
        <source>Zone %1: %2</source>
        <translation>Zone %1: %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3 s from oven entry, %4 to %5 s on the log</source>
        <comment>a placement in a zone</comment>
        <translation>%1 von %2 bis %3 s ab Ofeneintritt, %4 bis %5 s im Log</translation>
    </message>
    <message>
        <source>B less A: %1</source>
        <comment>the difference of two setpoints</comment>
        <translation>B minus A: %1</translation>
    </message>
    <message>
        <source>B less A: top %1, bottom %2</source>
        <translation>B minus A: oben %1, unten %2</translation>
    </message>
</context>
</TS>
