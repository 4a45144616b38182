<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Archive</name>
    <message>
        <source>this computer</source>
        <translation>este equipo</translation>
    </message>
    <message>
        <source>Open a log, check it, and keep the run under its lot; ovenwright archive add and ovenwright watch do the same for many logs.</source>
        <translation>Abra un registro, compruébelo y guarde la pasada en su lote; ovenwright archive add y ovenwright watch hacen lo mismo con muchos registros.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Reintentar</translation>
    </message>
    <message>
        <source>No run is kept yet.</source>
        <translation>Todavía no hay ninguna pasada guardada.</translation>
    </message>
    <message>
        <source>The archive&apos;s server does not answer.</source>
        <translation>El servidor del archivo no responde.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) wait on this computer and are sent when it is back.</source>
        <translation>
            <numerusform>%n pasada espera en este equipo y se enviará cuando vuelva.</numerusform>
            <numerusform>%n pasadas esperan en este equipo y se enviarán cuando vuelva.</numerusform>
        </translation>
    </message>
    <message>
        <source>Runs that are kept meanwhile wait on this computer.</source>
        <translation>Las pasadas que se guarden mientras tanto esperan en este equipo.</translation>
    </message>
    <message>
        <source>The archive cannot be read.</source>
        <translation>El archivo no se puede leer.</translation>
    </message>
    <message>
        <source>No run passes the filter.</source>
        <translation>Ninguna pasada cumple el filtro.</translation>
    </message>
    <message>
        <source>Show all runs</source>
        <translation>Mostrar todas las pasadas</translation>
    </message>
    <message>
        <source>Archive: %1</source>
        <translation>Archivo: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n pasada</numerusform>
            <numerusform>%n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1, %2</source>
        <translation>Archivo: %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n waiting to be sent</source>
        <translation>
            <numerusform>%n en espera de envío</numerusform>
            <numerusform>%n en espera de envío</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 away</source>
        <translation>Archivo: %1 no responde</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 away, %n record(s) wait here</source>
        <translation>
            <numerusform>Archivo: %1 no responde, %n registro espera aquí</numerusform>
            <numerusform>Archivo: %1 no responde, %n registros esperan aquí</numerusform>
        </translation>
    </message>
    <message>
        <source>The archive&apos;s server is slow to answer.</source>
        <translation>El servidor del archivo tarda en responder.</translation>
    </message>
    <message>
        <source>The list comes as soon as it does; the other pages work meanwhile.</source>
        <translation>La lista aparecerá en cuanto responda; las demás páginas siguen funcionando.</translation>
    </message>
    <message>
        <source>Archive: %1 is slow to answer</source>
        <translation>Archivo: %1 tarda en responder</translation>
    </message>
    <message>
        <source>Archive: %1 refuses</source>
        <translation>Archivo: %1 rechaza la conexión</translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 refuses, %n record(s) wait here</source>
        <translation>
            <numerusform>Archivo: %1 rechaza la conexión, %n registro espera aquí</numerusform>
            <numerusform>Archivo: %1 rechaza la conexión, %n registros esperan aquí</numerusform>
        </translation>
    </message>
    <message>
        <source>Archive: %1 cannot be read</source>
        <translation>Archivo: %1 no se puede leer</translation>
    </message>
    <message numerus="yes">
        <source>%n refused by the server and kept here</source>
        <translation>
            <numerusform>%n rechazado por el servidor y guardado aquí</numerusform>
            <numerusform>%n rechazados por el servidor y guardados aquí</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3 in lot %4: the lists show that one.</source>
        <translation>%1 es de un registro que %2 ya había guardado, como %3 en el lote %4: las listas muestran ese.</translation>
    </message>
    <message>
        <source>%1 is of a log that %2 had kept already, as %3: the lists show that one.</source>
        <translation>%1 es de un registro que %2 ya había guardado, como %3: las listas muestran ese.</translation>
    </message>
    <message numerus="yes">
        <source>So are %n more.</source>
        <translation>
            <numerusform>Lo mismo vale para %n más.</numerusform>
            <numerusform>Lo mismo vale para %n más.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ChangeNote</name>
    <message>
        <source>Zone %1</source>
        <translation>Zona %1</translation>
    </message>
    <message>
        <source>Zone %1, top and bottom</source>
        <translation>Zona %1, superior e inferior</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>Zona %1, superior</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>Zona %1, inferior</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Predicted: %1</source>
        <translation>Previsto: %1</translation>
    </message>
    <message>
        <source>smallest margin %1</source>
        <translation>margen mínimo %1</translation>
    </message>
    <message>
        <source>Tightest: %1.</source>
        <translation>Lo más justo: %1.</translation>
    </message>
    <message>
        <source>Changed on the oven by</source>
        <translation>Cambiado en el horno por</translation>
    </message>
    <message>
        <source>Confirmed with an instrumented run by</source>
        <translation>Confirmado con una pasada instrumentada por</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>Aprobado por</translation>
    </message>
    <message>
        <source>Written %1 by Ovenwright %2.</source>
        <translation>Escrito %1 por Ovenwright %2.</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Recipe that was run</source>
        <translation>Receta utilizada</translation>
    </message>
    <message>
        <source>Learned from the run</source>
        <translation>Aprendido de la pasada</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Process window</source>
        <translation>Ventana de proceso</translation>
    </message>
    <message>
        <source>Change note</source>
        <translation>Nota de cambio</translation>
    </message>
    <message>
        <source>This recipe is not predicted to pass. It is for a test run only, not for production.</source>
        <translation>No se prevé que esta receta cumpla. Es solo para una pasada de prueba, no para producción.</translation>
    </message>
    <message>
        <source>Setpoint</source>
        <translation>Consigna</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Medido: %1</translation>
    </message>
    <message>
        <source>Before it is used</source>
        <translation>Antes de usarla</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>The model follows these logs with a misfit of %1 (root mean square).</source>
        <translation>El modelo sigue estos registros con un desajuste de %1 (media cuadrática).</translation>
    </message>
    <message>
        <source>To check first: %1</source>
        <translation>Comprobar primero: %1</translation>
    </message>
    <message>
        <source>New recipe</source>
        <translation>Receta nueva</translation>
    </message>
    <message>
        <source>Top and bottom are set apart, and no run that was learned from had them apart: what each side does alone is not known.</source>
        <translation>Superior e inferior tienen consignas distintas, y ninguna pasada de la que se aprendió las tenía distintas: no se sabe qué hace cada lado por sí solo.</translation>
    </message>
    <message>
        <source>It is not known how sure it is to pass. Make a test run of it first.</source>
        <translation>No se sabe con qué seguridad cumple. Haga primero una pasada de prueba.</translation>
    </message>
    <message>
        <source>It is not sure to pass: %1. Make a test run of it first.</source>
        <translation>No es seguro que cumpla: %1. Haga primero una pasada de prueba.</translation>
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
        <translation>s, sin alinear</translation>
    </message>
    <message>
        <source>s from %1</source>
        <comment>a temperature</comment>
        <translation>s desde %1</translation>
    </message>
    <message>
        <source>s from oven entry</source>
        <translation>s desde la entrada</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>A solid, B dashed</source>
        <translation>A continua, B discontinua</translation>
    </message>
    <message>
        <source>No run is open.</source>
        <translation>No hay ninguna pasada abierta.</translation>
    </message>
    <message>
        <source>Compare holds two runs against each other.</source>
        <translation>Comparar contrapone dos pasadas.</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>Abrir registros…</translation>
    </message>
    <message>
        <source>Look at two demo runs</source>
        <translation>Ver dos pasadas de ejemplo</translation>
    </message>
    <message>
        <source>One run is open: %1.</source>
        <translation>Hay una pasada abierta: %1.</translation>
    </message>
    <message>
        <source>Compare needs a second one.</source>
        <translation>Para comparar hace falta otra.</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>Abrir otro registro…</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>Añadir una pasada…</translation>
    </message>
    <message>
        <source>Comparing.</source>
        <translation>Comparando.</translation>
    </message>
    <message>
        <source>These runs cannot be compared.</source>
        <translation>Estas pasadas no se pueden comparar.</translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>Comparar con la ventana de A</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n pasada</numerusform>
            <numerusform>%n pasadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thermocouple(s) in common</source>
        <translation>
            <numerusform>%n termopar en común</numerusform>
            <numerusform>%n termopares en común</numerusform>
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
        <translation>De más caliente a más frío, pico en %1</translation>
    </message>
    <message>
        <source>At %1 s</source>
        <translation>A los %1 s</translation>
    </message>
    <message>
        <source>At %1 s, zone %2, %3 mm</source>
        <translation>A los %1 s, zona %2, %3 mm</translation>
    </message>
    <message>
        <source>At %1 s, %2 mm</source>
        <translation>A los %1 s, %2 mm</translation>
    </message>
    <message>
        <source>Predicted peak, %1</source>
        <translation>Pico previsto, %1</translation>
    </message>
    <message>
        <source>error band, 95 %</source>
        <translation>banda de error, 95 %</translation>
    </message>
</context>
<context>
    <name>DropFrame</name>
    <message numerus="yes">
        <source>Drop to read %n log(s)</source>
        <translation>
            <numerusform>Soltar para leer %n registro</numerusform>
            <numerusform>Soltar para leer %n registros</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LotLane</name>
    <message>
        <source>lower limit</source>
        <translation>límite inferior</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>límite superior</translation>
    </message>
    <message numerus="yes">
        <source>each of the %n run(s)</source>
        <translation>
            <numerusform>la única pasada</numerusform>
            <numerusform>cada una de las %n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>mean and ± 3 s</source>
        <translation>media y ± 3 s</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>95 % of runs, with 95 % confidence</source>
        <translation>95 % de las pasadas, con 95 % de confianza</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % de las pasadas</translation>
    </message>
</context>
<context>
    <name>LotWords</name>
    <message>
        <source>d MMMM</source>
        <comment>date of this year</comment>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date</comment>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>d MMM yyyy HH:mm</source>
        <comment>date and time</comment>
        <translation>d MMM yyyy HH:mm</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>day on an axis</comment>
        <translation>d MMM</translation>
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
        <translation>Rango móvil</translation>
    </message>
    <message>
        <source>Range in the subgroup</source>
        <translation>Rango en el subgrupo</translation>
    </message>
    <message>
        <source>Standard deviation in the subgroup</source>
        <translation>Desviación típica en el subgrupo</translation>
    </message>
    <message>
        <source>Mean of the subgroup</source>
        <translation>Media del subgrupo</translation>
    </message>
    <message>
        <source>Weighted moving average (EWMA)</source>
        <translation>Media móvil ponderada (EWMA)</translation>
    </message>
    <message>
        <source>beyond the limits</source>
        <translation>fuera de los límites</translation>
    </message>
    <message>
        <source>%1 upper</source>
        <translation>%1 superior</translation>
    </message>
    <message>
        <source>%1 centre</source>
        <translation>%1 centro</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 inferior</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>límite %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>requirement, placement</comment>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>All %1 runs</source>
        <translation>Las %1 pasadas</translation>
    </message>
    <message>
        <source>no board</source>
        <translation>sin placa</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>board, revision of the window</comment>
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>Western Electric rules</source>
        <translation>reglas de Western Electric</translation>
    </message>
    <message>
        <source>Nelson rules</source>
        <translation>reglas de Nelson</translation>
    </message>
    <message numerus="yes">
        <source>%1: such a chart takes two subgroups of %n runs.</source>
        <translation>
            <numerusform>%1: esta carta requiere dos subgrupos de %n pasada.</numerusform>
            <numerusform>%1: esta carta requiere dos subgrupos de %n pasadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: a control chart takes two runs with a value.</source>
        <translation>%1: una carta de control requiere dos pasadas con valor.</translation>
    </message>
    <message numerus="yes">
        <source>%1: the weighted average stays within its limits over %n runs.</source>
        <translation>
            <numerusform>%1: la media ponderada se mantiene dentro de sus límites en %n pasada.</numerusform>
            <numerusform>%1: la media ponderada se mantiene dentro de sus límites en %n pasadas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no signal in %n runs by the %2.</source>
        <translation>
            <numerusform>%1: ninguna señal en %n pasada según las %2.</numerusform>
            <numerusform>%1: ninguna señal en %n pasadas según las %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 está por encima de su línea central desde hace %n subgrupo, desde el %2.</numerusform>
            <numerusform>%1 está por encima de su línea central desde hace %n subgrupos, desde el %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 está por debajo de su línea central desde hace %n subgrupo, desde el %2.</numerusform>
            <numerusform>%1 está por debajo de su línea central desde hace %n subgrupos, desde el %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 está por encima de su línea central desde hace %n pasada, desde el %2.</numerusform>
            <numerusform>%1 está por encima de su línea central desde hace %n pasadas, desde el %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 está por debajo de su línea central desde hace %n pasada, desde el %2.</numerusform>
            <numerusform>%1 está por debajo de su línea central desde hace %n pasadas, desde el %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 signals on %2: %3.</source>
        <translation>%1 da una señal el %2: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1 signals, last on %2: %3; %n signals in all.</source>
        <translation>
            <numerusform>%1 da señales, la última el %2: %3; %n señal en total.</numerusform>
            <numerusform>%1 da señales, la última el %2: %3; %n señales en total.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are few: whether the values are normal does not show, and the limits of the index are wide.</source>
        <translation>
            <numerusform>%n pasada es poco: no se ve si los valores son normales y los límites del índice son amplios.</numerusform>
            <numerusform>%n pasadas son pocas: no se ve si los valores son normales y los límites del índice son amplios.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) without a value</source>
        <translation>
            <numerusform>%n pasada sin valor</numerusform>
            <numerusform>%n pasadas sin valor</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) with a bound only</source>
        <translation>
            <numerusform>%n pasada solo con una cota</numerusform>
            <numerusform>%n pasadas solo con una cota</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>an index takes %n runs</source>
        <translation>
            <numerusform>un índice requiere %n pasada</numerusform>
            <numerusform>un índice requiere %n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>a count is not normally distributed</source>
        <translation>un recuento no tiene distribución normal</translation>
    </message>
    <message>
        <source>no limit is known, or the limits changed</source>
        <translation>no se conoce ningún límite o los límites cambiaron</translation>
    </message>
    <message>
        <source>all values are equal</source>
        <translation>todos los valores son iguales</translation>
    </message>
    <message>
        <source>No index: %1.</source>
        <translation>Sin índice: %1.</translation>
    </message>
    <message>
        <source>%1 (95 %: %2 to %3)</source>
        <comment>index and its interval</comment>
        <translation>%1 (95 %: de %2 a %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>smallest, largest</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>Desviación típica</translation>
    </message>
    <message>
        <source>Smallest, largest</source>
        <translation>Menor, mayor</translation>
    </message>
    <message>
        <source>Ppk</source>
        <translation>Ppk</translation>
    </message>
    <message>
        <source>Cpk, short term</source>
        <translation>Cpk, a corto plazo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>lower limit %1</source>
        <translation>límite inferior %1</translation>
    </message>
    <message>
        <source>upper limit %1</source>
        <translation>límite superior %1</translation>
    </message>
    <message>
        <source>Signal by the %1, at the run that completes it</source>
        <translation>Señal según las %1, en la pasada que la completa</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) measured by another definition, which has an entry of its own.</source>
        <translation>
            <numerusform>%n pasada medida con otra definición, que tiene su propia entrada.</numerusform>
            <numerusform>%n pasadas medidas con otra definición, que tiene su propia entrada.</numerusform>
        </translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <comment>tolerance interval</comment>
        <translation>95 % de las pasadas</translation>
    </message>
    <message>
        <source>Pp</source>
        <translation>Pp</translation>
    </message>
    <message>
        <source>Cp, short term</source>
        <translation>Cp, corto plazo</translation>
    </message>
</context>
<context>
    <name>Model</name>
    <message>
        <source>no model fits this log</source>
        <translation>ningún modelo se ajusta a este registro</translation>
    </message>
    <message>
        <source>the log does not follow this oven and recipe (misfit %1 °C): check that recipe, speed, oven and entry belong to this log</source>
        <translation>el registro no sigue este horno ni esta receta (desajuste de %1 °C): compruebe que receta, velocidad, horno y entrada son los de este registro</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C hotter than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>la zona %1 parece estar %2 °C más caliente que su consigna: compruebe la receta, la zona y su termopar</translation>
    </message>
    <message>
        <source>zone %1 seems %2 °C colder than its setpoint: check the recipe, the zone and its thermocouple</source>
        <translation>la zona %1 parece estar %2 °C más fría que su consigna: compruebe la receta, la zona y su termopar</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zone %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>el registro no sigue esta receta en la zona %1: compruebe que receta y horno son los de este registro y que no hay consignas intercambiadas</translation>
    </message>
    <message>
        <source>the log does not follow this recipe in zones %1: check that recipe and oven belong to this log, and that no setpoints are swapped</source>
        <translation>el registro no sigue esta receta en las zonas %1: compruebe que receta y horno son los de este registro y que no hay consignas intercambiadas</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s later than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>las curvas indican una entrada %1 s ± %2 s más tarde que la indicada: compruebe la entrada, la velocidad y el túnel de entrada del horno</translation>
    </message>
    <message>
        <source>the curves fit an entry %1 s ± %2 s earlier than the one given: check the entry, the speed and the oven&apos;s entrance</source>
        <translation>las curvas indican una entrada %1 s ± %2 s antes que la indicada: compruebe la entrada, la velocidad y el túnel de entrada del horno</translation>
    </message>
    <message>
        <source>no thermocouple rises above %1 °C: the log does not show a board going through an oven</source>
        <translation>ningún termopar pasa de %1 °C: el registro no muestra una placa que atraviese un horno</translation>
    </message>
    <message>
        <source>the log ends %1 s before the board has left zone %2 by this recipe&apos;s speed: check the speed, the entry and the oven, or log until the board has cooled</source>
        <translation>el registro termina %1 s antes de que la placa salga de la zona %2 a la velocidad de esta receta: compruebe la velocidad, la entrada y el horno, o registre hasta que la placa se haya enfriado</translation>
    </message>
    <message>
        <source>the log ends at %1 °C: how the board cools is little known; log until it has cooled</source>
        <translation>el registro termina a %1 °C: se sabe poco de cómo se enfría la placa; registre hasta que se haya enfriado</translation>
    </message>
    <message>
        <source>%1 follows the air: its bead may be detached, or it belongs to kind &quot;air&quot;</source>
        <translation>%1 sigue al aire: su unión puede haberse soltado, o es de tipo «aire»</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows it down is not known from this log</source>
        <translation>%1 no pasó de %2 °C: este registro no muestra cuánto lo frena la fusión</translation>
    </message>
    <message>
        <source>%1 stayed below %2 °C: how melting slows them down is not known from this log</source>
        <translation>%1 no pasaron de %2 °C: este registro no muestra cuánto los frena la fusión</translation>
    </message>
    <message>
        <source>every thermocouple follows the air, so nothing is known of a board: check that the beads are attached</source>
        <translation>todos los termopares siguen al aire, así que no se sabe nada de una placa: compruebe que las uniones están fijadas</translation>
    </message>
    <message>
        <source>one thermocouple only: what is predicted holds for its place, not for the hottest and coldest of the board</source>
        <translation>un solo termopar: lo previsto vale para su punto, no para el más caliente y el más frío de la placa</translation>
    </message>
    <message>
        <source>%1 is %2 mm long, so it lies in several zones at once (zone %3 has %4 mm): each of its places is predicted by itself, and the confirming run has to show them all</source>
        <translation>%1 mide %2 mm, así que está en varias zonas a la vez (la zona %3 tiene %4 mm): cada punto se prevé por separado, y la pasada de confirmación tiene que mostrarlos todos</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % faster than the recipe&apos;s %3 mm/min, or zones so much shorter: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>las curvas indican una cinta un %1 % ± %2 % más rápida que los %3 mm/min de la receta, o zonas más cortas en esa medida: compruebe la velocidad, la cinta y las longitudes de zona en el archivo del horno</translation>
    </message>
    <message>
        <source>the curves fit a belt %1 % ± %2 % slower than the recipe&apos;s %3 mm/min, or zones so much longer: check the speed, the belt and the zone lengths in the oven&apos;s file</source>
        <translation>las curvas indican una cinta un %1 % ± %2 % más lenta que los %3 mm/min de la receta, o zonas más largas en esa medida: compruebe la velocidad, la cinta y las longitudes de zona en el archivo del horno</translation>
    </message>
    <message>
        <source>No suggestion: the window requires nothing that can be predicted for this board.</source>
        <translation>Sin propuesta: la ventana no exige nada que se pueda prever para esta placa.</translation>
    </message>
    <message>
        <source>No recipe was found that passes by the guarded rule of the window: what is suggested is inside the limits, and within its uncertainty of one.</source>
        <translation>No se encontró ninguna receta que cumpla según la regla con banda de guarda: lo propuesto está dentro de los límites y a menos de su incertidumbre de uno.</translation>
    </message>
    <message>
        <source>Fastest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>Más rápida: cerca de la actual no se encontró ninguna receta que conserve un margen del %1 %.</translation>
    </message>
    <message>
        <source>Coolest: no recipe near the present one was found that keeps a margin of %1 %.</source>
        <translation>Más fría: cerca de la actual no se encontró ninguna receta que conserve un margen del %1 %.</translation>
    </message>
    <message>
        <source>Fastest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>Más rápida: no se encontró ninguna receta que conserve un margen del %1 %; el mayor es del %2 %.</translation>
    </message>
    <message>
        <source>Coolest: no recipe was found that keeps a margin of %1 %; the most is %2 %.</source>
        <translation>Más fría: no se encontró ninguna receta que conserve un margen del %1 %; el mayor es del %2 %.</translation>
    </message>
    <message>
        <source>Least change: no recipe closer to the present one was found that passes.</source>
        <translation>Menor cambio: no se encontró ninguna receta más cercana a la actual que cumpla.</translation>
    </message>
    <message>
        <source>Fastest: none was found that passes about as likely as the other suggestions.</source>
        <translation>Más rápida: no se encontró ninguna que pase con probabilidad parecida a la de las otras propuestas.</translation>
    </message>
    <message>
        <source>Coolest: none was found that passes about as likely as the other suggestions.</source>
        <translation>Más fría: no se encontró ninguna que pase con probabilidad parecida a la de las otras propuestas.</translation>
    </message>
    <message>
        <source>Fastest: the present recipe is that already.</source>
        <translation>Más rápida: la receta actual ya lo es.</translation>
    </message>
    <message>
        <source>Coolest: the present recipe is that already.</source>
        <translation>Más fría: la receta actual ya lo es.</translation>
    </message>
    <message>
        <source>No next run is named: of the changes of recipe that were tried none is known to keep every body inside its limits and every peak below its upper limit.</source>
        <translation>No se propone ninguna pasada siguiente: de los cambios de receta probados, de ninguno se sabe que mantenga cada cuerpo dentro de sus límites y cada pico por debajo de su límite superior.</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Line %1, column %2: </source>
        <translation>Línea %1, columna %2: </translation>
    </message>
    <message>
        <source>Line %1: </source>
        <translation>Línea %1: </translation>
    </message>
    <message>
        <source>found “%1”, expected %2</source>
        <translation>se encontró «%1», se esperaba %2</translation>
    </message>
    <message>
        <source>found %1, expected %2</source>
        <translation>se encontró %1, se esperaba %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>Abrir el archivo</translation>
    </message>
    <message>
        <source>Open its folder</source>
        <translation>Abrir su carpeta</translation>
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
        <translation>reloj m:s</translation>
    </message>
    <message>
        <source>clock h:m:s</source>
        <translation>reloj h:m:s</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>fecha y hora</translation>
    </message>
    <message>
        <source>serial days</source>
        <translation>días de serie</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>segundos desde 1970</translation>
    </message>
    <message>
        <source>number of the row</source>
        <translation>número de fila</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Coma</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>Punto y coma</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tabulador</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barra vertical</translation>
    </message>
    <message>
        <source>Blanks</source>
        <translation>Espacios</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>mV</source>
        <translation>mV</translation>
    </message>
    <message>
        <source>Day, month, year</source>
        <translation>Día, mes, año</translation>
    </message>
    <message>
        <source>Month, day, year</source>
        <translation>Mes, día, año</translation>
    </message>
    <message>
        <source>Year, month, day</source>
        <translation>Año, mes, día</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Columns %1</source>
        <translation>Columnas %1</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Columna %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>As they stand</source>
        <translation>Tal como están</translation>
    </message>
    <message>
        <source>Tenths</source>
        <translation>Décimas</translation>
    </message>
    <message>
        <source>Hundredths</source>
        <translation>Centésimas</translation>
    </message>
    <message>
        <source>Type %1</source>
        <translation>Tipo %1</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrada</translation>
    </message>
    <message>
        <source>Table %1</source>
        <translation>Tabla %1</translation>
    </message>
    <message>
        <source>%1, %2 rows</source>
        <translation>%1, %2 filas</translation>
    </message>
</context>
<context>
    <name>RecipeFile</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>changed from %1; a prediction, to be confirmed with an instrumented run</source>
        <translation>modificada a partir de %1; una predicción, por confirmar con una pasada instrumentada</translation>
    </message>
</context>
<context>
    <name>RecipeLimits</name>
    <message>
        <source>The speed stays at %1: the oven goes no faster.</source>
        <translation>La velocidad se queda en %1: el horno no va más rápido.</translation>
    </message>
    <message>
        <source>The speed stays at %1: the oven goes no slower.</source>
        <translation>La velocidad se queda en %1: el horno no va más lento.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows a step of %3 to zone %4.</source>
        <translation>La zona %1 se queda en %2: el horno admite un salto de %3 a la zona %4.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows %3 between top and bottom.</source>
        <translation>La zona %1 se queda en %2: el horno admite %3 entre superior e inferior.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no more.</source>
        <translation>La zona %1 se queda en %2: el horno no admite más.</translation>
    </message>
    <message>
        <source>Zone %1 stays at %2: the oven allows no less.</source>
        <translation>La zona %1 se queda en %2: el horno no admite menos.</translation>
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
        <translation>%1 %2 %3, límite %4</translation>
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
        <translation>No hay ninguna pasada abierta. El resultado aparecerá aquí en una frase.</translation>
    </message>
    <message>
        <source>Each part of it leads to the place on the curve, the limit and the oven zones it came from.</source>
        <translation>Cada parte lleva al punto de la curva, al límite y a las zonas del horno de donde procede.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n aviso</numerusform>
            <numerusform>%n avisos</numerusform>
        </translation>
    </message>
    <message>
        <source>The numbers are no run in the unit that the file states.</source>
        <translation>En la unidad que indica el archivo, los números no son una pasada.</translation>
    </message>
    <message>
        <source>The file holds several tables: one was chosen.</source>
        <translation>El archivo contiene varias tablas: se eligió una.</translation>
    </message>
    <message>
        <source>The unit was assumed in reading the log.</source>
        <translation>La unidad se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>The time was assumed in reading the log.</source>
        <translation>El tiempo se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>The order of the date was assumed in reading the log.</source>
        <translation>El orden de la fecha se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>The decimal sign was assumed in reading the log.</source>
        <translation>El signo decimal se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>The type of thermocouple was assumed in reading the log.</source>
        <translation>El tipo de termopar se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>The cold junction was assumed in reading the log.</source>
        <translation>La unión fría se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>Something was assumed in reading the log.</source>
        <translation>Algo se supuso al leer el registro.</translation>
    </message>
    <message numerus="yes">
        <source>%1 rows in %n channel(s).</source>
        <translation>
            <numerusform>%1 filas en %n canal.</numerusform>
            <numerusform>%1 filas en %n canales.</numerusform>
        </translation>
    </message>
    <message>
        <source>Times count from oven entry, %1 s after the first row.</source>
        <translation>Los tiempos cuentan desde la entrada al horno, %1 s tras la primera fila.</translation>
    </message>
    <message>
        <source>Nothing has been changed in the file. Corrections take effect at once and can be undone.</source>
        <translation>Nada se ha cambiado en el archivo. Las correcciones surten efecto al instante y pueden deshacerse.</translation>
    </message>
    <message>
        <source>A thermocouple was turned round in reading the log.</source>
        <translation>Un termopar se invirtió al leer el registro.</translation>
    </message>
    <message>
        <source>The encoding was assumed in reading the log.</source>
        <translation>La codificación se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>The scale of the numbers was assumed in reading the log.</source>
        <translation>La escala de los números se supuso al leer el registro.</translation>
    </message>
    <message>
        <source>Reading %1: %2 rows so far.</source>
        <translation>Leyendo %1: %2 filas hasta ahora.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>s from oven entry</source>
        <translation>s desde la entrada</translation>
    </message>
    <message>
        <source>s on the log&apos;s clock</source>
        <translation>s en el reloj del registro</translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation>%1, revisión %2</translation>
    </message>
    <message>
        <source>thermocouple %1</source>
        <translation>termopar %1</translation>
    </message>
    <message>
        <source>%1, instrument %2, U = 2u</source>
        <translation>%1, instrumento %2, U = 2u</translation>
    </message>
    <message>
        <source>found from the curves</source>
        <translation>hallada en las curvas</translation>
    </message>
    <message>
        <source>given</source>
        <translation>indicada</translation>
    </message>
    <message>
        <source>%1 ± %2 s on the log&apos;s clock, %3</source>
        <translation>%1 ± %2 s en el reloj del registro, %3</translation>
    </message>
    <message>
        <source>lower limit by part</source>
        <translation>límite inferior por pieza</translation>
    </message>
    <message>
        <source>upper limit by part</source>
        <translation>límite superior por pieza</translation>
    </message>
    <message>
        <source>Guarded, w = U (ILAC-G8:09/2019)</source>
        <translation>Con banda de guarda, w = U (ILAC-G8:09/2019)</translation>
    </message>
    <message>
        <source>Simple: inside the limits, limits included</source>
        <translation>Simple: dentro de los límites, límites incluidos</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>A suggested or changed recipe is a prediction: a qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>Una receta sugerida o modificada es una predicción: una persona cualificada la confirma con una pasada instrumentada antes de producir, dentro de los valores admisibles de la pasta, los componentes, la placa y el horno.</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>Superficies calientes, transportador en marcha, humos de fundente: las normas de seguridad del lugar, los códigos locales y las hojas de datos de los fabricantes prevalecen sobre todo lo que se muestra aquí.</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>Las ventanas incluidas son generales; la hoja de datos de la pasta es la autoridad.</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Ventana</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1, supuesta</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Regla de decisión</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertidumbre</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Número de serie</translation>
    </message>
    <message>
        <source>Operator</source>
        <translation>Operador</translation>
    </message>
    <message>
        <source>Run at</source>
        <translation>Fecha de la pasada</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>Entrada al horno</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro archivado</translation>
    </message>
    <message>
        <source>%1, number %2 of its chain</source>
        <translation>%1, número %2 de su cadena</translation>
    </message>
    <message>
        <source>Chain</source>
        <translation>Cadena</translation>
    </message>
    <message>
        <source>%1; %2 bytes</source>
        <translation>%1; %2 bytes</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>Thermal profile</source>
        <translation>Perfil térmico</translation>
    </message>
    <message>
        <source>Thermal profile, %1</source>
        <translation>Perfil térmico, %1</translation>
    </message>
    <message>
        <source>Run %1 of %2 in the log</source>
        <translation>Pasada %1 de %2 del registro</translation>
    </message>
    <message>
        <source>behind ± stands the expanded uncertainty U = 2u (about 95 %), from thermocouple, instrument, noise and sampling (JCGM 100). How a bead is attached, and how runs of the oven differ, is not in it.</source>
        <translation>tras ± figura la incertidumbre expandida U = 2u (aprox. 95 %), de termopar, instrumento, ruido y muestreo (JCGM 100). No incluye la fijación de la perla ni la variación entre pasadas del horno.</translation>
    </message>
    <message>
        <source>Guarded</source>
        <translation>Con banda de guarda</translation>
    </message>
    <message>
        <source>pass: clear of the limits by U or more; conditional: within U of a limit, inside (pass) or outside (fail); fail: outside by more than U.</source>
        <translation>cumple: a U o más de los límites; con reserva: a menos de U de un límite, dentro (cumple) o fuera (no cumple); no cumple: fuera por más de U.</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Leído como</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>Faults, on the log’s clock</source>
        <translation>Fallos, en el reloj del registro</translation>
    </message>
    <message>
        <source>%1 may be wrong: %2</source>
        <translation>%1 puede ser erróneo: %2</translation>
    </message>
    <message>
        <source>To note</source>
        <translation>A tener en cuenta</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>Comprobado por, fecha</translation>
    </message>
    <message>
        <source>Released by, date</source>
        <translation>Aprobado por, fecha</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>Temperatura en el tiempo</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>Carriles de límites</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>Termopar</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>On the next page</source>
        <translation>En la página siguiente</translation>
    </message>
    <message>
        <source>Made %1 from the archive</source>
        <translation>Generado %1 desde el archivo</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>Generado %1</translation>
    </message>
    <message>
        <source>limit lanes</source>
        <translation>carriles de límites</translation>
    </message>
    <message>
        <source>results by thermocouple</source>
        <translation>resultados por termopar</translation>
    </message>
    <message>
        <source>limits, sources and how the log was read</source>
        <translation>límites, fuentes y cómo se leyó el registro</translation>
    </message>
    <message>
        <source>%1, continued from page 1: %2</source>
        <translation>%1, continuación de la página 1: %2</translation>
    </message>
    <message>
        <source>Limits, sources and how the log was read</source>
        <translation>Límites, fuentes y cómo se leyó el registro</translation>
    </message>
    <message>
        <source>%1 upper</source>
        <translation>%1 superior</translation>
    </message>
    <message>
        <source>%1 centre</source>
        <translation>%1 central</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 inferior</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>límite %1</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation>Registrado por</translation>
    </message>
    <message>
        <source>Recorded verdict</source>
        <translation>Veredicto registrado</translation>
    </message>
    <message>
        <source>%1; this sheet was judged anew</source>
        <translation>%1; esta hoja se ha juzgado de nuevo</translation>
    </message>
    <message numerus="yes">
        <source>%n different</source>
        <translation>
            <numerusform>%n distinto</numerusform>
            <numerusform>%n distintos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>La pasada cumple.</numerusform>
            <numerusform>Las %n pasadas cumplen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>%1 de %n pasada cumple.</numerusform>
            <numerusform>%1 de %n pasadas cumplen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Smallest margin %1</source>
        <translation>Margen mínimo %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n pasada</numerusform>
            <numerusform>%n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: run by run, the least capable of all</source>
        <translation>%1: pasada a pasada, lo menos capaz de todo</translation>
    </message>
    <message>
        <source>Statistics</source>
        <translation>Estadística</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Statistics by requirement and placement</source>
        <translation>Estadística por requisito y punto de medida</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Limits, sources and how the first log was read</source>
        <translation>Límites, fuentes y cómo se leyó el primer registro</translation>
    </message>
    <message>
        <source>%1, run %2</source>
        <translation>%1, pasada %2</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Pasada</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>Margen mínimo en</translation>
    </message>
    <message>
        <source>SHA-256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>como mínimo %1</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Requisito</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>St. dev.</source>
        <translation>Desv. est.</translation>
    </message>
    <message>
        <source>Smallest, largest</source>
        <translation>Menor, mayor</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>intervalo del 95 %</translation>
    </message>
    <message>
        <source>95 % of runs</source>
        <translation>95 % de las pasadas</translation>
    </message>
    <message>
        <source>95 % confidence</source>
        <translation>95 % de confianza</translation>
    </message>
    <message>
        <source>Signals</source>
        <translation>Señales</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1, hora del archivo del registro</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1, según lo indicado</translation>
    </message>
    <message>
        <source>Least capable: %1, Ppk %2 (95 % limits %3 to %4) over %5 runs.</source>
        <translation>El menos capaz: %1, Ppk %2 (límites del 95 %: %3 a %4) en %5 pasadas.</translation>
    </message>
    <message>
        <source>The runs are few: what they show is uncertain.</source>
        <translation>Las pasadas son pocas: lo que muestran es incierto.</translation>
    </message>
    <message numerus="yes">
        <source>%n signals of the control charts.</source>
        <translation>
            <numerusform>%n señal de los gráficos de control.</numerusform>
            <numerusform>%n señales de los gráficos de control.</numerusform>
        </translation>
    </message>
    <message>
        <source>No index: it takes %1 runs at least.</source>
        <translation>Sin índice: hacen falta al menos %1 pasadas.</translation>
    </message>
    <message>
        <source>%1 of %2 results have no index, as a value or a limit is missing or all values are equal.</source>
        <translation>%1 de %2 resultados no tienen índice, porque falta un valor o un límite o todos los valores son iguales.</translation>
    </message>
    <message>
        <source>Not measured alike in all runs, with a row for each definition: %1.</source>
        <translation>No se midió igual en todas las pasadas, con una fila por definición: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n records, head %2</source>
        <translation>
            <numerusform>%1: %n registro, cabeza %2</numerusform>
            <numerusform>%1: %n registros, cabeza %2</numerusform>
        </translation>
    </message>
    <message>
        <source>On</source>
        <translation>En</translation>
    </message>
    <message>
        <source>board</source>
        <translation>placa</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparación</translation>
    </message>
    <message>
        <source>Recipe, %1</source>
        <translation>Receta, %1</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>%1 top</source>
        <comment>letter of a run, side of the zones</comment>
        <translation>%1 superior</translation>
    </message>
    <message>
        <source>%1 bottom</source>
        <comment>letter of a run, side of the zones</comment>
        <translation>%1 inferior</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty U = 2u of the difference (about 95 %). Both runs are taken to be on the same thermocouples and instrument (channels and board of the same names), whose errors cancel in it. How runs of the oven differ is not in it.</source>
        <translation>± es la incertidumbre expandida U = 2u de la diferencia (aprox. 95 %). Se entiende que ambas pasadas usan los mismos termopares e instrumento (canales y placa de igual nombre), cuyos errores se anulan en ella. No incluye cómo difieren las pasadas del horno.</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty U = 2u of the difference (about 95 %), with the errors of the thermocouples and the instrument of both runs. How runs of the oven differ is not in it.</source>
        <translation>± es la incertidumbre expandida U = 2u de la diferencia (aprox. 95 %), con los errores de los termopares y del instrumento de ambas pasadas. No incluye cómo difieren las pasadas del horno.</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Diferencias</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>Más margen</translation>
    </message>
    <message>
        <source>neither, where the margins differ by less than their uncertainty.</source>
        <translation>ninguna, donde los márgenes difieren en menos que su incertidumbre.</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1, según el reloj del registro</translation>
    </message>
    <message>
        <source>of the means of the runs. ± is the half width of the 95 % interval of two samples (Welch), from the scatter of the runs; n says how many values stand behind each side. Errors that all runs of a group share, such as those of its thermocouples, are not in it. In the lanes a mark is a mean, a thin tick a run, a longer one a run that is out.</source>
        <translation>de las medias de las pasadas. ± es la semianchura del intervalo del 95 % de dos muestras (Welch), por la dispersión de las pasadas; n dice cuántos valores hay detrás de cada lado. Los errores que comparten todas las pasadas de un grupo, como los de sus termopares, no están incluidos. En los carriles una marca es una media, un trazo fino una pasada y uno más largo una pasada fuera de límites.</translation>
    </message>
    <message>
        <source>Runs of A</source>
        <translation>Pasadas de A</translation>
    </message>
    <message>
        <source>Runs of B</source>
        <translation>Pasadas de B</translation>
    </message>
    <message>
        <source>Logs of A</source>
        <translation>Registros de A</translation>
    </message>
    <message>
        <source>Logs of B</source>
        <translation>Registros de B</translation>
    </message>
    <message>
        <source>by the means of the runs’ smallest margins; neither, where they differ by less than their interval.</source>
        <translation>por las medias de los menores márgenes de las pasadas; ninguno, donde se diferencian en menos que su intervalo.</translation>
    </message>
    <message>
        <source>%1 run %2</source>
        <comment>letter of a group</comment>
        <translation>%1 pasada %2</translation>
    </message>
    <message>
        <source>what the differences hold</source>
        <translation>qué contienen las diferencias</translation>
    </message>
    <message>
        <source>runs and logs of both groups</source>
        <translation>pasadas y registros de ambos grupos</translation>
    </message>
    <message>
        <source>margin, %1</source>
        <comment>of a run</comment>
        <translation>margen, %1</translation>
    </message>
    <message>
        <source>run %1</source>
        <translation>pasada %1</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>Pasada %1</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Entradas</translation>
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
        <translation>Curso de %1</translation>
    </message>
</context>
<context>
    <name>Thermocouple</name>
    <message>
        <source>%1 class 1</source>
        <translation>%1 clase 1</translation>
    </message>
    <message>
        <source>%1 class 2</source>
        <translation>%1 clase 2</translation>
    </message>
    <message>
        <source>%1 special</source>
        <comment>tolerance</comment>
        <translation>%1 de tolerancia especial</translation>
    </message>
    <message>
        <source>%1 standard</source>
        <comment>tolerance</comment>
        <translation>%1 de tolerancia estándar</translation>
    </message>
</context>
<context>
    <name>Tune</name>
    <message>
        <source>Smallest margin</source>
        <translation>Margen mínimo</translation>
    </message>
    <message>
        <source>, now %1</source>
        <translation>, ahora %1</translation>
    </message>
    <message>
        <source>The recipe is the one that was run.</source>
        <translation>La receta es la utilizada.</translation>
    </message>
    <message>
        <source>Tune needs the oven and the recipe of this run.</source>
        <translation>Ajustar necesita el horno y la receta de esta pasada.</translation>
    </message>
    <message>
        <source>From them and the curves it learns how this board heats.</source>
        <translation>De ellos y de las curvas aprende cómo se calienta esta placa.</translation>
    </message>
    <message>
        <source>Choose an oven and recipe</source>
        <translation>Elegir un horno y una receta</translation>
    </message>
    <message>
        <source>Tune needs the moment when the board entered the oven.</source>
        <translation>Ajustar necesita el momento en que la placa entró en el horno.</translation>
    </message>
    <message>
        <source>The curves do not show it.</source>
        <translation>Las curvas no lo muestran.</translation>
    </message>
    <message>
        <source>Say when the board entered</source>
        <translation>Indicar cuándo entró la placa</translation>
    </message>
    <message>
        <source>Choose another oven and recipe</source>
        <translation>Elegir otro horno y otra receta</translation>
    </message>
    <message>
        <source>Learning how this board heats in this oven.</source>
        <translation>Aprendiendo cómo se calienta esta placa en este horno.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Learning was stopped.</source>
        <translation>Se detuvo el aprendizaje.</translation>
    </message>
    <message>
        <source>Learn again</source>
        <translation>Aprender de nuevo</translation>
    </message>
    <message>
        <source>This run cannot be learned from.</source>
        <translation>No se puede aprender de esta pasada.</translation>
    </message>
    <message>
        <source>The model does not fit this run, so nothing is predicted or suggested.</source>
        <translation>El modelo no se ajusta a esta pasada, así que no se predice ni sugiere nada.</translation>
    </message>
    <message>
        <source>Predicting.</source>
        <translation>Prediciendo.</translation>
    </message>
    <message>
        <source>Least change</source>
        <translation>Menor cambio</translation>
    </message>
    <message>
        <source>Most margin</source>
        <translation>Mayor margen</translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation>Más rápida</translation>
    </message>
    <message>
        <source>Coolest</source>
        <translation>Más fría</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>two aims that come to one recipe</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Zone %1  %2</source>
        <translation>Zona %1  %2</translation>
    </message>
    <message>
        <source>Zone %1 top  %2</source>
        <translation>Zona %1 superior  %2</translation>
    </message>
    <message>
        <source>Zone %1 bottom  %2</source>
        <translation>Zona %1 inferior  %2</translation>
    </message>
    <message>
        <source>Zones %1–%2  %3</source>
        <translation>Zonas %1–%2  %3</translation>
    </message>
    <message numerus="yes">
        <source>%n zones</source>
        <translation>
            <numerusform>%n zona</numerusform>
            <numerusform>%n zonas</numerusform>
        </translation>
    </message>
    <message>
        <source>zone %1 %2</source>
        <translation>zona %1 %2</translation>
    </message>
    <message>
        <source>speed %1</source>
        <translation>velocidad %1</translation>
    </message>
    <message>
        <source>cooling</source>
        <translation>enfriamiento</translation>
    </message>
    <message>
        <source>as it was run</source>
        <translation>como se usó</translation>
    </message>
    <message>
        <source>%1 more boards an hour</source>
        <translation>%1 placas más por hora</translation>
    </message>
    <message>
        <source>%1 fewer boards an hour</source>
        <translation>%1 placas menos por hora</translation>
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
        <translation>probabilidad de cumplir %1</translation>
    </message>
    <message>
        <source>A qualified person confirms it with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>Una persona cualificada lo confirma con una pasada instrumentada antes de producir, dentro de los valores admisibles de la pasta, los componentes, la placa y el horno.</translation>
    </message>
    <message>
        <source>Suggested setpoints are predictions: a qualified person confirms them with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven.</source>
        <translation>Las consignas sugeridas son predicciones: una persona cualificada las confirma con una pasada instrumentada antes de producir, dentro de los valores admisibles de la pasta, los componentes, la placa y el horno.</translation>
    </message>
    <message>
        <source>Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>Superficies calientes, transportador en marcha, humos de fundente: las normas de seguridad del lugar, los códigos locales y las hojas de datos de los fabricantes prevalecen sobre todo lo que se muestra aquí.</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general; the paste’s own data sheet is the authority.</source>
        <translation>Las ventanas incluidas son generales; la hoja de datos de la pasta es la autoridad.</translation>
    </message>
    <message>
        <source>The errors of one board’s traces are mostly one error: if one reads high, all may.</source>
        <translation>Los errores de las curvas de una placa suelen ser un mismo error: si una marca alto, quizá todas.</translation>
    </message>
    <message>
        <source>the board</source>
        <translation>la placa</translation>
    </message>
    <message>
        <source>%1 at %2: its upper limit alone would have to give %3</source>
        <translation>%1 en %2: solo su límite superior tendría que ceder %3</translation>
    </message>
    <message>
        <source>%1 at %2: its lower limit alone would have to give %3</source>
        <translation>%1 en %2: solo su límite inferior tendría que ceder %3</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>requirement, placement</comment>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Speed  %1 %2</source>
        <comment>from and to, unit</comment>
        <translation>Velocidad  %1 %2</translation>
    </message>
    <message>
        <source>Another run of this recipe is expected to narrow the doubt about %1 from ± %2 to ± %3.</source>
        <translation>Otra pasada con esta receta debería reducir la duda sobre %1 de ± %2 a ± %3.</translation>
    </message>
    <message>
        <source>A run with %1 is expected to narrow the doubt about %2 from ± %3 to ± %4.</source>
        <translation>Una pasada con %1 debería reducir la duda sobre %2 de ± %3 a ± %4.</translation>
    </message>
    <message>
        <source>The peaks of %1 and %2 are %3 apart at the best recipe, and the window leaves %4: that is more than setpoints and speed can bring together.</source>
        <translation>Los picos de %1 y %2 distan %3 con la mejor receta, y la ventana deja %4: más de lo que consignas y velocidad pueden acercar.</translation>
    </message>
    <message>
        <source>chance unknown: the log ends hot</source>
        <translation>probabilidad desconocida: el registro termina en caliente</translation>
    </message>
    <message>
        <source>No recipe of this oven is predicted to hold every requirement: the best margin that the model finds is %1, and its error does not rule a pass out.</source>
        <translation>De ninguna receta de este horno se predice que cumpla todos los requisitos: el mejor margen que halla el modelo es %1, y su error no excluye que cumpla.</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>más del 99 %</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>menos del 1 %</translation>
    </message>
    <message>
        <source>chance of passing %1, of staying inside the limits %2</source>
        <translation>probabilidad de cumplir %1, de quedar dentro de los límites %2</translation>
    </message>
    <message>
        <source>chance %1</source>
        <translation>probabilidad %1</translation>
    </message>
    <message>
        <source>chance %1, inside limits %2</source>
        <translation>prob. %1, en límites %2</translation>
    </message>
    <message>
        <source>It is not sure to pass: of those found it is the likeliest.</source>
        <translation>No es seguro que cumpla: de las halladas es la más probable.</translation>
    </message>
    <message>
        <source>The next run worth making stands below.</source>
        <translation>Abajo está la siguiente pasada que conviene.</translation>
    </message>
    <message>
        <source>No recipe of this oven holds every requirement: the best margin that the model finds is %1, and its error leaves no room for a pass.</source>
        <translation>Ninguna receta de este horno cumple todos los requisitos: el mejor margen que encuentra el modelo es %1, y su error no deja lugar a que cumpla.</translation>
    </message>
    <message>
        <source>zones %1 cooler on average</source>
        <translation>zonas %1 más frías en promedio</translation>
    </message>
    <message>
        <source>This recipe was not predicted.</source>
        <translation>No hay predicción para esta receta.</translation>
    </message>
</context>
<context>
    <name>TypedNumber</name>
    <message>
        <source>“%1” is no number</source>
        <translation>«%1» no es un número</translation>
    </message>
</context>
<context>
    <name>WindowEditor</name>
    <message>
        <source>“%1” is no limit: expected a number, or Tc, Tc-5</source>
        <translation>«%1» no es un límite: se espera un número, o Tc, Tc-5</translation>
    </message>
    <message>
        <source>“%1” is no parameter: expected a name, = and a value</source>
        <translation>«%1» no es un parámetro: se espera nombre, = y valor</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Requisito</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Magnitud</translation>
    </message>
    <message>
        <source>Parameters</source>
        <translation>Parámetros</translation>
    </message>
    <message>
        <source>Applies to</source>
        <translation>Se aplica a</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Cara</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Límite superior</translation>
    </message>
    <message>
        <source>Required</source>
        <translation>Obligatorio</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>“%1” is no measure</source>
        <translation>«%1» no es una magnitud</translation>
    </message>
</context>
<context>
    <name>Wording</name>
    <message>
        <source>Top</source>
        <translation>Superior</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Inferior</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zona %1</translation>
    </message>
    <message>
        <source>top</source>
        <translation>superior</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>inferior</translation>
    </message>
    <message>
        <source>no setpoint</source>
        <translation>sin consigna</translation>
    </message>
    <message>
        <source>result %1 traces here</source>
        <translation>el resultado %1 procede de aquí</translation>
    </message>
    <message>
        <source>a result that is out traces here</source>
        <translation>un resultado fuera de límites procede de aquí</translation>
    </message>
    <message>
        <source>into the oven</source>
        <translation>hacia el horno</translation>
    </message>
    <message>
        <source>%1 × %2 mm</source>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>front rail</source>
        <translation>raíl frontal</translation>
    </message>
    <message>
        <source>by part</source>
        <translation>por pieza</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>part and its upper limit</comment>
        <translation>%1 hasta %2</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <comment>part and its lower limit</comment>
        <translation>%1 desde %2</translation>
    </message>
    <message>
        <source>Tc</source>
        <translation>Tc</translation>
    </message>
    <message>
        <source>lower limit %1</source>
        <translation>límite inferior %1</translation>
    </message>
    <message>
        <source>upper limit %1</source>
        <translation>límite superior %1</translation>
    </message>
    <message>
        <source>informative</source>
        <translation>informativo</translation>
    </message>
    <message>
        <source>cannot pass as guarded</source>
        <translation>no puede cumplir con banda de guarda</translation>
    </message>
    <message>
        <source>board</source>
        <translation>placa</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Requisito</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>límite inferior</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>límite superior</translation>
    </message>
    <message>
        <source>margin %1</source>
        <comment>scale above the lanes</comment>
        <translation>margen %1</translation>
    </message>
    <message>
        <source>Smallest margin</source>
        <translation>Margen mínimo</translation>
    </message>
    <message numerus="yes">
        <source>%n pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n cumple</numerusform>
            <numerusform>%n cumplen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n cumple con reserva</numerusform>
            <numerusform>%n cumplen con reserva</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n incumple con reserva</numerusform>
            <numerusform>%n incumplen con reserva</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n no cumple</numerusform>
            <numerusform>%n no cumplen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n undetermined</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n indeterminado</numerusform>
            <numerusform>%n indeterminados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Smallest margin of the other %n</source>
        <comment>results that have a value</comment>
        <translation>
            <numerusform>Margen mínimo del otro %n</numerusform>
            <numerusform>Margen mínimo de los otros %n</numerusform>
        </translation>
    </message>
    <message>
        <source>1 informative result over its limit</source>
        <translation>1 resultado informativo fuera de su límite</translation>
    </message>
    <message numerus="yes">
        <source>%n informative results over their limits</source>
        <translation>
            <numerusform>%n resultado informativo fuera de su límite</numerusform>
            <numerusform>%n resultados informativos fuera de sus límites</numerusform>
        </translation>
    </message>
    <message>
        <source>Result %1: </source>
        <comment>read aloud before a problem</comment>
        <translation>Resultado %1: </translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no alcanzado</translation>
    </message>
    <message>
        <source>undetermined</source>
        <translation>indeterminado</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 de menos</translation>
    </message>
    <message>
        <source>%1 too hot</source>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>%1 demasiado frío</translation>
    </message>
    <message>
        <source>%1 too long</source>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>%1 too slow</source>
        <translation>%1 demasiado lento</translation>
    </message>
    <message>
        <source>%1 too steep</source>
        <translation>%1 demasiado rápido</translation>
    </message>
    <message>
        <source>%1 too small</source>
        <translation>%1 demasiado pequeño</translation>
    </message>
    <message>
        <source>%1 too large</source>
        <translation>%1 demasiado grande</translation>
    </message>
    <message>
        <source>%1 too much</source>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>%1 too few</source>
        <translation>%1 de menos</translation>
    </message>
    <message>
        <source>%1 too many</source>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>cumple</translation>
    </message>
    <message>
        <source>conditional pass</source>
        <translation>cumple con reserva</translation>
    </message>
    <message>
        <source>conditional fail</source>
        <translation>incumple con reserva</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>no cumple</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Cumple</translation>
    </message>
    <message>
        <source>Conditional pass</source>
        <translation>Cumple con reserva</translation>
    </message>
    <message>
        <source>Undetermined</source>
        <translation>Indeterminado</translation>
    </message>
    <message>
        <source>Conditional fail</source>
        <translation>Incumple con reserva</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>No cumple</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>pico</translation>
    </message>
    <message>
        <source>%1–%2 %3</source>
        <comment>a span of temperatures</comment>
        <translation>%1–%2 %3</translation>
    </message>
    <message>
        <source>from %1</source>
        <comment>a temperature</comment>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>within %1 of %2</source>
        <translation>a menos de %1 de %2</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>a menos de %1</translation>
    </message>
    <message>
        <source>over %1 s</source>
        <translation>en %1 s</translation>
    </message>
    <message>
        <source>at %1 s</source>
        <translation>a los %1 s</translation>
    </message>
    <message>
        <source>at %1 mm</source>
        <translation>a %1 mm</translation>
    </message>
    <message>
        <source>end of zone %1</source>
        <translation>fin de la zona %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>requirement, placement: value</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>margen %1</translation>
    </message>
    <message>
        <source>minus </source>
        <comment>read aloud before a number</comment>
        <translation>menos </translation>
    </message>
    <message>
        <source>limits %1 to %2</source>
        <translation>límites %1 a %2</translation>
    </message>
    <message>
        <source>at least %1 allowed</source>
        <translation>se permite al menos %1</translation>
    </message>
    <message>
        <source>at most %1 allowed</source>
        <translation>se permite como máximo %1</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>sin límite</translation>
    </message>
    <message>
        <source>%1 plus or minus %2</source>
        <translation>%1 más o menos %2</translation>
    </message>
    <message>
        <source>%1 percent</source>
        <translation>%1 por ciento</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Choose an oven and recipe to see the zones</source>
        <translation>Elija un horno y una receta para ver las zonas</translation>
    </message>
    <message>
        <source>Say when the board entered the oven to see the zones</source>
        <translation>Indique cuándo entró la placa en el horno para ver las zonas</translation>
    </message>
    <message>
        <source>Times as met</source>
        <translation>Tiempos vistos</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>the placement that meets the zones</comment>
        <translation>por %1</translation>
    </message>
    <message>
        <source>the board’s middle</source>
        <translation>el centro de la placa</translation>
    </message>
    <message>
        <source>the leading edge</source>
        <translation>el borde delantero</translation>
    </message>
    <message>
        <source>now</source>
        <comment>the recipe that was run</comment>
        <translation>ahora</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>ahora %1</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <translation>medido: %1</translation>
    </message>
    <message>
        <source>Top and bottom</source>
        <translation>Superior e inferior</translation>
    </message>
    <message>
        <source>B is %1 higher</source>
        <translation>B es %1 mayor</translation>
    </message>
    <message>
        <source>B is %1 lower</source>
        <translation>B es %1 menor</translation>
    </message>
    <message>
        <source>B less A %1</source>
        <comment>read aloud</comment>
        <translation>B menos A %1</translation>
    </message>
    <message>
        <source>same</source>
        <comment>neither of two has more margin</comment>
        <translation>igual</translation>
    </message>
    <message>
        <source>more margin</source>
        <translation>más margen</translation>
    </message>
    <message>
        <source>A, smallest margin</source>
        <translation>A, margen mínimo</translation>
    </message>
    <message>
        <source>B, smallest margin</source>
        <translation>B, margen mínimo</translation>
    </message>
    <message>
        <source>Largest change, A to B</source>
        <translation>Mayor cambio, de A a B</translation>
    </message>
    <message>
        <source>Set, %1</source>
        <comment>setpoints, with their unit</comment>
        <translation>Consigna, %1</translation>
    </message>
    <message>
        <source>no run has a value</source>
        <translation>ninguna pasada tiene valor</translation>
    </message>
    <message numerus="yes">
        <source>%1 in the mean of %n runs</source>
        <translation>
            <numerusform>%1 en la media de %n pasada</numerusform>
            <numerusform>%1 en la media de %n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>%1 of %2 out</source>
        <translation>%1 de %2 fuera de límites</translation>
    </message>
    <message>
        <source>A, mean margin</source>
        <translation>A, margen medio</translation>
    </message>
    <message>
        <source>B, mean margin</source>
        <translation>B, margen medio</translation>
    </message>
    <message>
        <source>Not all of these runs had the same recipe, so no zones stand here</source>
        <translation>No todas estas pasadas tuvieron la misma receta; por eso aquí no hay zonas</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A, margen</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B, margen</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Shows a thermocouple log and whether it stayed inside its process window.</source>
        <translation>Muestra un registro de termopares y si se mantuvo dentro de su ventana de proceso.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ArchivePicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Comparar</translation>
    </message>
    <message>
        <source>Runs of the archive</source>
        <translation>Pasadas del archivo</translation>
    </message>
    <message>
        <source>Lot, board or words</source>
        <translation>Lote, placa o palabras</translation>
    </message>
    <message>
        <source>Find runs by lot, board or words</source>
        <translation>Buscar pasadas por lote, placa o palabras</translation>
    </message>
    <message>
        <source>No run of the archive has these words.</source>
        <translation>Ninguna pasada del archivo tiene estas palabras.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are marked: %1 at most.</source>
        <translation>
            <numerusform>%n pasada marcada: %1 como máximo.</numerusform>
            <numerusform>%n pasadas marcadas: %1 como máximo.</numerusform>
        </translation>
    </message>
    <message>
        <source>The chosen run becomes B. Space marks: of two marked runs the older becomes A; more are put into two groups.</source>
        <translation>La pasada elegida pasa a ser B. Espacio marca: de dos marcadas, la más antigua es A; con más se forman dos grupos.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChannelsPanel</name>
    <message>
        <source>Joint</source>
        <translation>Unión</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Cuerpo</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abierto</translation>
    </message>
    <message>
        <source>Over range</source>
        <translation>Fuera de rango</translation>
    </message>
    <message>
        <source>Dropout</source>
        <translation>Pérdida de señal</translation>
    </message>
    <message>
        <source>Spike</source>
        <translation>Pico espurio</translation>
    </message>
    <message>
        <source>Stuck</source>
        <translation>Atascado</translation>
    </message>
    <message>
        <source>Reversed polarity</source>
        <translation>Polaridad invertida</translation>
    </message>
    <message>
        <source>Detached, suspected</source>
        <translation>Desprendido, sospecha</translation>
    </message>
    <message>
        <source>Swapped placement, suspected</source>
        <translation>Posición cambiada, sospecha</translation>
    </message>
    <message>
        <source>Cold-junction step</source>
        <translation>Salto de la unión fría</translation>
    </message>
    <message>
        <source>Gap in time</source>
        <translation>Hueco en el tiempo</translation>
    </message>
    <message>
        <source>Time going back</source>
        <translation>El tiempo retrocede</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Canales</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>In the log</source>
        <translation>En el registro</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Course (dotted: oven entry)</source>
        <translation>Curso (punteado: entrada al horno)</translation>
    </message>
    <message>
        <source>Range, %1</source>
        <translation>Rango, %1</translation>
    </message>
    <message>
        <source>Fault found, and what was done</source>
        <translation>Fallo hallado y qué se hizo</translation>
    </message>
    <message>
        <source>Use %1</source>
        <translation>Usar %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>no se usa</translation>
    </message>
    <message>
        <source>Placement of %1</source>
        <translation>Posición de %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Choose a board</source>
        <translation>Elegir una placa</translation>
    </message>
    <message>
        <source>Choose a board for %1</source>
        <translation>Elegir una placa para %1</translation>
    </message>
    <message>
        <source>Kind of %1</source>
        <translation>Tipo de %1</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>sin lectura</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 at %2 s</source>
        <translation>%1 a los %2 s</translation>
    </message>
    <message>
        <source>%1 from %2 to %3 s</source>
        <translation>%1 de %2 a %3 s</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Eliminado</translation>
    </message>
    <message>
        <source>Flagged, values as in the file</source>
        <translation>Marcado, valores como en el archivo</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Conservarlo</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n más</numerusform>
            <numerusform>%n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove spikes again</source>
        <translation>Eliminar de nuevo los picos espurios</translation>
    </message>
    <message>
        <source>Use a channel</source>
        <translation>Usar un canal</translation>
    </message>
    <message>
        <source>Leave a channel out</source>
        <translation>Omitir un canal</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>Asignar %1</translation>
    </message>
    <message>
        <source>Placements of this log</source>
        <translation>Posiciones de este registro</translation>
    </message>
    <message>
        <source>Keep spikes</source>
        <translation>Conservar los picos espurios</translation>
    </message>
    <message>
        <source>Remove spikes</source>
        <translation>Eliminar los picos espurios</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s)</source>
        <translation>
            <numerusform>%n muestra</numerusform>
            <numerusform>%n muestras</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Turn its sign</source>
        <translation>Invertir su signo</translation>
    </message>
    <message>
        <source>Its sign is turned</source>
        <translation>Su signo está invertido</translation>
    </message>
    <message>
        <source>As in the file</source>
        <translation>Como en el archivo</translation>
    </message>
    <message>
        <source>Turn the sign of %1</source>
        <translation>Invertir el signo de %1</translation>
    </message>
    <message>
        <source>%1 as in the file</source>
        <translation>%1 como en el archivo</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CheckPage</name>
    <message>
        <source>Each mark is a thermocouple, hottest on top. Whisker: ± U. Dotted: guard band.</source>
        <translation>Cada marca es un termopar, el más caliente arriba. Línea: ± U. Punteado: banda de guarda.</translation>
    </message>
    <message>
        <source>&amp;Limit lanes</source>
        <translation>&amp;Carriles de límites</translation>
    </message>
    <message>
        <source>&amp;Table</source>
        <translation>&amp;Tabla</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>&amp;Placa</translation>
    </message>
    <message>
        <source>Limit lanes, table, board</source>
        <translation>Carriles de límites, tabla, placa</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtro</translation>
    </message>
    <message>
        <source>Filter the table</source>
        <translation>Filtrar la tabla</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>Cómo se obtuvo este número</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Mostrar</translation>
    </message>
    <message>
        <source>Requirement shown on the board</source>
        <translation>Requisito que se muestra en la placa</translation>
    </message>
    <message numerus="yes">
        <source>Temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>Temperatura en el tiempo, %n termopar</numerusform>
            <numerusform>Temperatura en el tiempo, %n termopares</numerusform>
        </translation>
    </message>
    <message>
        <source>Temperature over time</source>
        <translation>Temperatura en el tiempo</translation>
    </message>
    <message>
        <source>C&amp;urves</source>
        <translation>C&amp;urvas</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChooserBar</name>
    <message>
        <source>%1, run %2 of %3</source>
        <translation>%1, pasada %2 de %3</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Pasada</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Pasada</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Ventana</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>Horno y receta</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>&amp;Abrir un registro…</translation>
    </message>
    <message>
        <source>&amp;Close %1</source>
        <translation>&amp;Cerrar %1</translation>
    </message>
    <message>
        <source>None open</source>
        <translation>Ninguna abierta</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
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
        <translation>Dónde en la curva</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareBar</name>
    <message>
        <source>S&amp;wap</source>
        <translation>Inter&amp;cambiar</translation>
    </message>
    <message>
        <source>&amp;Add a run…</source>
        <translation>&amp;Añadir una pasada…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>Im&amp;primir…</translation>
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
        <translation>Ventana</translation>
    </message>
    <message>
        <source>Line up at</source>
        <translation>Alinear en</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Curvas</translation>
    </message>
    <message>
        <source>Level to line up at</source>
        <translation>Nivel en el que se alinea</translation>
    </message>
    <message>
        <source>A becomes B, and B becomes A</source>
        <translation>A pasa a ser B, y B, A</translation>
    </message>
    <message>
        <source>The sheet of this comparison</source>
        <translation>La hoja de esta comparación</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a run and its verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>those of A</source>
        <translation>las de A</translation>
    </message>
    <message>
        <source>Compare against %1</source>
        <translation>Comparar con %1</translation>
    </message>
    <message>
        <source>As A was judged: %1</source>
        <translation>Como se juzgó A: %1</translation>
    </message>
    <message>
        <source>Line up at the oven entry</source>
        <translation>Alinear en la entrada al horno</translation>
    </message>
    <message>
        <source>Line up at a level</source>
        <translation>Alinear en un nivel</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>Entrada al horno</translation>
    </message>
    <message>
        <source>A level on the rise</source>
        <translation>Un nivel en la subida</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Una junto a otra</translation>
    </message>
    <message>
        <source>Curves side by side</source>
        <translation>Curvas una junto a otra</translation>
    </message>
    <message>
        <source>Overlaid</source>
        <translation>Superpuestas</translation>
    </message>
    <message>
        <source>Curves overlaid</source>
        <translation>Curvas superpuestas</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no run</comment>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>None</source>
        <comment>no window</comment>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Level on the rise</source>
        <translation>Nivel en la subida</translation>
    </message>
    <message>
        <source>%1 on the rise, no entry</source>
        <translation>%1 en la subida, sin entrada</translation>
    </message>
    <message>
        <source>&amp;Several runs…</source>
        <translation>&amp;Varias pasadas…</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n pasada</numerusform>
            <numerusform>%n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <comment>a run and its recipe</comment>
        <translation>%1, rev. %2</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ComparePage</name>
    <message>
        <source>Zone strip of %1</source>
        <translation>Franja de zonas de %1</translation>
    </message>
    <message>
        <source>Limit lanes, A over B</source>
        <translation>Carriles de límites, A sobre B</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple of each run.</source>
        <translation>Una fila por requisito, una celda por termopar de cada pasada.</translation>
    </message>
    <message>
        <source>Open logs…</source>
        <translation>Abrir registros…</translation>
    </message>
    <message>
        <source>Add a run…</source>
        <translation>Añadir una pasada…</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>Ver dos pasadas de &amp;ejemplo</translation>
    </message>
    <message>
        <source>Compare needs two runs</source>
        <translation>Para comparar hacen falta dos pasadas</translation>
    </message>
    <message numerus="yes">
        <source>%1: temperature over time, %n thermocouples</source>
        <comment>letter of a run</comment>
        <translation>
            <numerusform>%1: temperatura en el tiempo, %n termopar</numerusform>
            <numerusform>%1: temperatura en el tiempo, %n termopares</numerusform>
        </translation>
    </message>
    <message>
        <source>Compare against the window of A</source>
        <translation>Comparar con la ventana de A</translation>
    </message>
    <message>
        <source>Nothing is compared yet</source>
        <translation>Aún no se compara nada</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Requisito</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Límite superior</translation>
    </message>
    <message>
        <source>A, smallest margin at</source>
        <translation>A, margen mínimo en</translation>
    </message>
    <message>
        <source>A, margin</source>
        <translation>A, margen</translation>
    </message>
    <message>
        <source>A, verdict</source>
        <translation>A, veredicto</translation>
    </message>
    <message>
        <source>B, smallest margin at</source>
        <translation>B, margen mínimo en</translation>
    </message>
    <message>
        <source>B, margin</source>
        <translation>B, margen</translation>
    </message>
    <message>
        <source>B, verdict</source>
        <translation>B, veredicto</translation>
    </message>
    <message>
        <source>Largest change at</source>
        <translation>Mayor cambio en</translation>
    </message>
    <message>
        <source>B − A</source>
        <translation>B − A</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>More margin</source>
        <translation>Más margen</translation>
    </message>
    <message>
        <source>Open two logs, or drop them here: the first is A, the second B. A log with several passes is several runs. Curves, recipes and every requirement then stand side by side, with the uncertainty of each difference. Of more logs, or of runs marked in Lots, A and B may be groups.</source>
        <translation>Abra dos registros o suéltelos aquí: el primero es A, el segundo B. Un registro con varias pasadas vale por varias. Curvas, recetas y cada requisito quedan entonces uno junto a otro, con la incertidumbre de cada diferencia. Con más registros, o con pasadas marcadas en Lotes, A y B pueden ser grupos.</translation>
    </message>
    <message>
        <source>Values of A</source>
        <translation>Valores de A</translation>
    </message>
    <message>
        <source>Values of B</source>
        <translation>Valores de B</translation>
    </message>
    <message>
        <source>Compare: %1 and %2</source>
        <translation>Comparar: %1 y %2</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareSession</name>
    <message>
        <source>Compare %1 as A</source>
        <translation>Comparar %1 como A</translation>
    </message>
    <message>
        <source>Compare %1 as B</source>
        <translation>Comparar %1 como B</translation>
    </message>
    <message>
        <source>Swap A and B</source>
        <translation>Intercambiar A y B</translation>
    </message>
    <message>
        <source>Compare with %1</source>
        <translation>Comparar con %1</translation>
    </message>
    <message>
        <source>Compare two groups</source>
        <translation>Comparar dos grupos</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CurvePlot</name>
    <message>
        <source>s from oven entry</source>
        <translation>s desde la entrada</translation>
    </message>
    <message>
        <source>s on the log’s clock</source>
        <translation>s en el reloj del registro</translation>
    </message>
    <message>
        <source>%1: %2 %3 at %4 s (%5 s on the log’s clock)</source>
        <translation>%1: %2 %3 a los %4 s (%5 s en el reloj del registro)</translation>
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
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>A date, as 2026-01-05; Down opens a calendar. Left open, every date counts.</source>
        <translation>Una fecha, como 2026-01-05; la flecha abajo abre un calendario. Si se deja vacía, vale cualquier fecha.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendario</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::DerivationPanel</name>
    <message>
        <source>no limit on this side of the target %1</source>
        <translation>sin límite a este lado del objetivo %1</translation>
    </message>
    <message>
        <source>inside: %1</source>
        <translation>dentro: %1</translation>
    </message>
    <message>
        <source>outside: %1</source>
        <translation>fuera: %1</translation>
    </message>
    <message>
        <source>at %1 s</source>
        <translation>a los %1 s</translation>
    </message>
    <message>
        <source>from %1 to %2 s</source>
        <translation>de %1 a %2 s</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>Cómo se obtuvo este número</translation>
    </message>
    <message>
        <source>Previous result</source>
        <translation>Resultado anterior</translation>
    </message>
    <message>
        <source>Next result</source>
        <translation>Resultado siguiente</translation>
    </message>
    <message>
        <source>Choose a mark in the limit lanes, a part of the sentence or a row of the table: its place on the curve, its limits and its arithmetic stand here.</source>
        <translation>Elija una marca en los carriles, una parte de la frase o una fila de la tabla: aquí aparecerán su lugar en la curva, sus límites y su cálculo.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1, board</source>
        <translation>%1, placa</translation>
    </message>
    <message>
        <source>Definition</source>
        <translation>Definición</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>Informative: it does not decide the verdict.</source>
        <translation>Informativo: no decide el veredicto.</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Uncertainty, %1</source>
        <translation>Incertidumbre, %1</translation>
    </message>
    <message>
        <source>Thermocouple %1</source>
        <translation>Termopar %1</translation>
    </message>
    <message>
        <source>Instrument %1</source>
        <translation>Instrumento %1</translation>
    </message>
    <message>
        <source>Noise of this trace</source>
        <translation>Ruido de esta curva</translation>
    </message>
    <message>
        <source>Sampling</source>
        <translation>Muestreo</translation>
    </message>
    <message>
        <source>Combined, then U = 2u</source>
        <translation>Combinada, luego U = 2u</translation>
    </message>
    <message>
        <source>under 0.1 %</source>
        <translation>menos de 0,1 %</translation>
    </message>
    <message>
        <source>over 99.9 %</source>
        <translation>más de 99,9 %</translation>
    </message>
    <message>
        <source>What being outside risks</source>
        <translation>Qué se arriesga fuera de límites</translation>
    </message>
    <message>
        <source>Which zones set this result</source>
        <translation>Qué zonas determinan este resultado</translation>
    </message>
    <message>
        <source>Other zones together</source>
        <translation>Las demás zonas juntas</translation>
    </message>
    <message>
        <source>Try a change in Tune</source>
        <translation>Probar un cambio en Ajustar</translation>
    </message>
    <message>
        <source>Inside with probability</source>
        <translation>Dentro con probabilidad</translation>
    </message>
    <message>
        <source>Rule: guarded, w = U</source>
        <translation>Regla: con banda de guarda, w = U</translation>
    </message>
    <message>
        <source>Rule: simple</source>
        <translation>Regla: simple</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Document</name>
    <message>
        <source>pasted text</source>
        <translation>texto pegado</translation>
    </message>
    <message>
        <source>Close %1</source>
        <translation>Cerrar %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::EmptyPage</name>
    <message>
        <source>Sketch of the result</source>
        <translation>Boceto del resultado</translation>
    </message>
    <message>
        <source>Curves, zone strip and limit lanes stand here once a log is read.</source>
        <translation>Aquí aparecen las curvas, la banda de zonas y los carriles de límites al leer un registro.</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Curvas</translation>
    </message>
    <message>
        <source>The window’s bands stand behind them; stretches that are out are marked.</source>
        <translation>Detrás están las bandas de la ventana; los tramos fuera de límites se marcan.</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>Banda de zonas</translation>
    </message>
    <message>
        <source>Where the board was at each moment.</source>
        <translation>Dónde estaba la placa en cada momento.</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>Carriles de límites</translation>
    </message>
    <message>
        <source>Every requirement, every thermocouple, with both limits always in the same place.</source>
        <translation>Cada requisito, cada termopar, con ambos límites siempre en el mismo lugar.</translation>
    </message>
    <message>
        <source>The verdict rests on the thermocouples, the window and the placement you give it: a qualified person confirms it before production. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here.</source>
        <translation>El veredicto depende de los termopares, la ventana y las posiciones que usted indique: una persona cualificada lo confirma antes de producir. Superficies calientes, transportador en marcha, humos de fundente: las normas de seguridad del lugar, los códigos locales y las hojas de datos de los fabricantes prevalecen sobre todo lo que se muestra aquí.</translation>
    </message>
    <message>
        <source>Drop a thermocouple log here</source>
        <translation>Suelte aquí un registro de termopares</translation>
    </message>
    <message>
        <source>Any text log, workbook or HTML table: comma, semicolon, tab or fixed columns; °C or °F; decimal point or comma. The file is read as it is and never changed.</source>
        <translation>Cualquier registro de texto, libro de cálculo o tabla HTML: coma, punto y coma, tabulador o columnas fijas; °C o °F; punto o coma decimal. El archivo se lee tal cual y nunca se cambia.</translation>
    </message>
    <message>
        <source>Open a log…</source>
        <translation>Abrir un registro…</translation>
    </message>
    <message>
        <source>Paste a log</source>
        <translation>Pegar un registro</translation>
    </message>
    <message>
        <source>Look at the demo run</source>
        <translation>Ver la pasada de ejemplo</translation>
    </message>
    <message>
        <source>It will be judged against</source>
        <translation>Se juzgará según</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Ventana</translation>
    </message>
    <message>
        <source>Windows shipped with the program are general. The paste’s own data sheet is the authority.</source>
        <translation>Las ventanas incluidas son generales. La hoja de datos de la pasta es la autoridad.</translation>
    </message>
    <message>
        <source>Oven and recipe</source>
        <translation>Horno y receta</translation>
    </message>
    <message>
        <source>Optional. Needed for the zone strip and for the zones behind a result.</source>
        <translation>Opcional. Necesario para la banda de zonas y para las zonas tras un resultado.</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Optional. Says what each thermocouple sits on.</source>
        <translation>Opcional. Indica dónde está cada termopar.</translation>
    </message>
    <message>
        <source>None chosen</source>
        <translation>Nada elegido</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FiguresPane</name>
    <message>
        <source>Runs of</source>
        <translation>Pasadas de</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>No limit to hold the runs against</source>
        <translation>Sin límite con el que comparar las pasadas</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Control chart</source>
        <translation>Carta de control</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Tendencia</translation>
    </message>
    <message>
        <source>Statistics of the runs</source>
        <translation>Estadística de las pasadas</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Kind of chart and rules</source>
        <translation>Tipo de carta y reglas</translation>
    </message>
    <message>
        <source>Loading the runs</source>
        <translation>Cargando las pasadas</translation>
    </message>
    <message>
        <source>&amp;Individuals and moving range</source>
        <translation>&amp;Individuales y rango móvil</translation>
    </message>
    <message>
        <source>X-bar and &amp;R</source>
        <translation>X-barra y &amp;R</translation>
    </message>
    <message>
        <source>X-bar and &amp;S</source>
        <translation>X-barra y &amp;S</translation>
    </message>
    <message>
        <source>&amp;EWMA</source>
        <translation>&amp;EWMA</translation>
    </message>
    <message>
        <source>Runs in a s&amp;ubgroup</source>
        <translation>Pasadas por s&amp;ubgrupo</translation>
    </message>
    <message>
        <source>%1 of %2 runs</source>
        <translation>%1 de %2 pasadas</translation>
    </message>
    <message>
        <source>The statistics cannot be worked out. %1</source>
        <translation>No se puede calcular la estadística. %1</translation>
    </message>
    <message>
        <source>No run is listed to work statistics out from.</source>
        <translation>No hay pasadas en la lista para calcular la estadística.</translation>
    </message>
    <message>
        <source>Only the newest %1 runs of the list count.</source>
        <translation>Solo cuentan las %1 pasadas más recientes de la lista.</translation>
    </message>
    <message>
        <source>Trend of %1</source>
        <translation>Tendencia de %1</translation>
    </message>
    <message>
        <source>Control chart of %1</source>
        <translation>Carta de control de %1</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>Trend of %1.</source>
        <translation>Tendencia de %1.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileModel</name>
    <message numerus="yes">
        <source>%n row(s) more</source>
        <translation>
            <numerusform>%n fila más</numerusform>
            <numerusform>%n filas más</numerusform>
        </translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>kept as such</source>
        <translation>se conserva</translation>
    </message>
    <message>
        <source>Channel %1</source>
        <translation>Canal %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileTable</name>
    <message>
        <source>What stands in the file</source>
        <translation>Qué hay en el archivo</translation>
    </message>
    <message>
        <source>Press a heading to take its column for something else</source>
        <translation>Pulse un encabezado para usar su columna de otro modo</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FilterBar</name>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>C&amp;lear</source>
        <translation>&amp;Borrar</translation>
    </message>
    <message>
        <source>E&amp;xport table…</source>
        <translation>E&amp;xportar tabla…</translation>
    </message>
    <message>
        <source>any</source>
        <comment>lot</comment>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>serial, log, operator…</source>
        <translation>serie, registro, operador…</translation>
    </message>
    <message>
        <source>Words that stand anywhere in lot, serial number, board, oven, recipe, window, operator, log or record (Ctrl+F)</source>
        <translation>Palabras en cualquier lugar del lote, número de serie, placa, horno, receta, ventana, operador, registro o número de archivo (Ctrl+F)</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>All</source>
        <comment>verdicts</comment>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Out of the window</source>
        <translation>Fuera de la ventana</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>to</source>
        <comment>a date</comment>
        <translation>hasta</translation>
    </message>
    <message>
        <source>Every run of the archive</source>
        <translation>Todas las pasadas del archivo</translation>
    </message>
    <message>
        <source>All runs of the list as a CSV file</source>
        <translation>Todas las pasadas de la lista en un archivo CSV</translation>
    </message>
    <message>
        <source>All boards</source>
        <translation>Todas las placas</translation>
    </message>
    <message>
        <source>All ovens</source>
        <translation>Todos los hornos</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n pasada</numerusform>
            <numerusform>%n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>46 runs in 31 lots</comment>
        <translation>%1 en %2</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n lote</numerusform>
            <numerusform>%n lotes</numerusform>
        </translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>Hoja del lote</translation>
    </message>
    <message>
        <source>The panel at the right (F9)</source>
        <translation>El panel de la derecha (F9)</translation>
    </message>
    <message>
        <source>Co&amp;mpare</source>
        <translation>Co&amp;mparar</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::GroupPicker</name>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Comparar</translation>
    </message>
    <message>
        <source>Two groups of runs</source>
        <translation>Dos grupos de pasadas</translation>
    </message>
    <message>
        <source>&amp;Divide by</source>
        <translation>&amp;Dividir por</translation>
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
        <translation>A A van las pasadas de</translation>
    </message>
    <message>
        <source>Into B go the runs of</source>
        <translation>A B van las pasadas de</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Pasada</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
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
        <translation>Pasadas y el grupo de cada una</translation>
    </message>
    <message>
        <source>%1 in A</source>
        <translation>%1 en A</translation>
    </message>
    <message>
        <source>%1 in B</source>
        <translation>%1 en B</translation>
    </message>
    <message>
        <source>The marks below</source>
        <translation>Las marcas de abajo</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n runs</source>
        <comment>a recipe, lot, oven or board</comment>
        <translation>
            <numerusform>%1: %n pasada</numerusform>
            <numerusform>%1: %n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message numerus="yes">
        <source>A has %n runs</source>
        <translation>
            <numerusform>A tiene %n pasada</numerusform>
            <numerusform>A tiene %n pasadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>B has %n runs.</source>
        <translation>
            <numerusform>B tiene %n pasada.</numerusform>
            <numerusform>B tiene %n pasadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each needs one at least.</source>
        <translation>Cada uno necesita al menos una.</translation>
    </message>
    <message>
        <source>An interval for the differences needs two on each side.</source>
        <translation>Un intervalo de las diferencias necesita dos en cada lado.</translation>
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
        <translation>Cargar un registro</translation>
    </message>
    <message>
        <source>Drop a file anywhere in the window, open it (Ctrl+O), or paste its text (Ctrl+Shift+V). It is read by its content; what was assumed stands in the status line and under Run, How the log was read, where it can be put right. The file itself is never changed.</source>
        <translation>Suelte un archivo en cualquier parte de la ventana, ábralo (Ctrl+O) o pegue su texto (Ctrl+Mayús+V). Se lee por su contenido; lo supuesto consta en la línea de estado y en Pasada, Cómo se leyó el registro, donde puede corregirse. El archivo nunca se cambia.</translation>
    </message>
    <message>
        <source>Sentence</source>
        <translation>Frase</translation>
    </message>
    <message>
        <source>The verdict first. Each underlined part leads to where it comes from: Tab goes through the parts, Enter follows one. F8 and Shift+F8 go to the next and previous result that is not a pass; Esc chooses nothing.</source>
        <translation>Primero el veredicto. Cada parte subrayada lleva a su origen: Tab recorre las partes, Intro sigue una. F8 y Mayús+F8 van al resultado siguiente y anterior que no cumple; Esc no elige nada.</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Curvas</translation>
    </message>
    <message>
        <source>Bands are the window’s; a stretch with a halo and barbs went out of it. The cursor reads all curves at a time and the place in the oven. Wheel zooms time, Ctrl+wheel temperature, drag moves, double click shows the whole run. Keys: left and right one sample, with Ctrl one zone, with Shift the view; up and down another thermocouple; + − 0 zoom and whole run; Alt+1 to 9 show or hide a curve, hottest first.</source>
        <translation>Las bandas son las de la ventana; un tramo con halo y trazos salió de ella. El cursor lee todas las curvas en un instante y el lugar en el horno. La rueda amplía el tiempo, Ctrl+rueda la temperatura, arrastrar desplaza, doble clic muestra toda la pasada. Teclas: izquierda y derecha una muestra, con Ctrl una zona, con Mayús la vista; arriba y abajo otro termopar; + − 0 ampliar, reducir y toda la pasada; Alt+1 a 9 muestra u oculta una curva, la más caliente primero.</translation>
    </message>
    <message>
        <source>Zone strip</source>
        <translation>Banda de zonas</translation>
    </message>
    <message>
        <source>Where the board was at each moment, with top and bottom setpoints. Hatched: a result outside its limits traces back here with 10 % or more.</source>
        <translation>Dónde estaba la placa en cada momento, con consignas superior e inferior. Rayado: un resultado fuera de límites procede de aquí en un 10 % o más.</translation>
    </message>
    <message>
        <source>Limit lanes</source>
        <translation>Carriles de límites</translation>
    </message>
    <message>
        <source>One lane for each requirement, both limits at the same places in all of them, so that the same distance is the same margin. A mark is a thermocouple, the whisker its ± U, dots the guard band. Up and down another lane, left and right another thermocouple, Home and End hottest and coldest, Enter how the number came about, Ctrl+C the row as text, Ctrl+Shift+C the picture.</source>
        <translation>Un carril por requisito, con ambos límites en los mismos lugares en todos, de modo que igual distancia es igual margen. Una marca es un termopar, la línea su ± U, los puntos la banda de guarda. Arriba y abajo otro carril, izquierda y derecha otro termopar, Inicio y Fin el más caliente y el más frío, Intro cómo se obtuvo el número, Ctrl+C la fila como texto, Ctrl+Mayús+C la imagen.</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>A click on a heading sorts. Ctrl+F filters. Ctrl+C copies the chosen rows, or all, with headings for a spreadsheet.</source>
        <translation>Un clic en un encabezado ordena. Ctrl+F filtra. Ctrl+C copia las filas elegidas, o todas, con encabezados para una hoja de cálculo.</translation>
    </message>
    <message>
        <source>How the log was read</source>
        <translation>Cómo se leyó el registro</translation>
    </message>
    <message>
        <source>Each line at the right was found in the file or assumed. Choose another reading and everything follows at once; Ctrl+Z takes it back. A reading can be kept for logs of the same shape.</source>
        <translation>Cada línea a la derecha se encontró en el archivo o se supuso. Elija otra lectura y todo la sigue al instante; Ctrl+Z la deshace. Una lectura puede conservarse para registros de la misma forma.</translation>
    </message>
    <message>
        <source>Editing a window</source>
        <translation>Editar una ventana</translation>
    </message>
    <message>
        <source>Limits are checked while they are typed and the run is judged anew. Saving makes a new revision in a new file; nothing is overwritten.</source>
        <translation>Los límites se comprueban al escribirlos y la pasada se juzga de nuevo. Guardar crea una revisión nueva en un archivo nuevo; nada se sobrescribe.</translation>
    </message>
    <message>
        <source>Keys everywhere</source>
        <translation>Teclas en todas partes</translation>
    </message>
    <message>
        <source>F6, Shift+F6 next and previous part · F9 panel at the right · Ctrl+Z, Ctrl+Shift+Z undo and redo · Ctrl+O open · Ctrl+Shift+V paste a log · Ctrl+W close the log · Ctrl+PgUp, Ctrl+PgDown previous and next run · F1 this help.</source>
        <translation>F6, Mayús+F6 parte siguiente y anterior · F9 panel derecho · Ctrl+Z, Ctrl+Mayús+Z deshacer y rehacer · Ctrl+O abrir · Ctrl+Mayús+V pegar un registro · Ctrl+W cerrar el registro · Ctrl+RePág, Ctrl+AvPág pasada anterior y siguiente · F1 esta ayuda.</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;Analyser for reflow thermal profiles. Free software under the GNU General Public License, version 3 or later; it comes without any warranty.&lt;/p&gt;&lt;p&gt;What it shows is computed from the log, the window and the placement you give it. A qualified person confirms every change of setpoints with an instrumented run before production, inside the ratings of the paste, the parts, the board and the oven. Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets stand above anything shown here. Windows shipped with the program are general; the paste’s own data sheet is the authority.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Ovenwright %1&lt;/h3&gt;&lt;p&gt;Analizador de perfiles térmicos de refusión. Software libre bajo la Licencia Pública General de GNU, versión 3 o posterior; sin ninguna garantía.&lt;/p&gt;&lt;p&gt;Lo que muestra se calcula a partir del registro, la ventana y las posiciones que usted indica. Una persona cualificada confirma cada cambio de consignas con una pasada instrumentada antes de producir, dentro de los valores admisibles de la pasta, los componentes, la placa y el horno. Superficies calientes, transportador en marcha, humos de fundente: las normas de seguridad del lugar, los códigos locales y las hojas de datos de los fabricantes prevalecen sobre todo lo que se muestra aquí. Las ventanas incluidas son generales; la hoja de datos de la pasta es la autoridad.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>Ajustar</translation>
    </message>
    <message>
        <source>The recipe that was run, to be changed: what the curves and lanes then show is predicted from how this board heats in this oven, with its error band. Type into a field, step with up and down (PgUp, PgDn by 5), turn the wheel, or drag up and down; Tab, left and right go from field to field, Del goes back to what was run, L parts top and bottom or ties them, Ctrl+L keeps a zone as it is in a search. Every edit can be undone. A suggestion is a prediction: a qualified person confirms it with an instrumented run.</source>
        <translation>La receta utilizada, para cambiarla: lo que muestran curvas y carriles se predice según cómo se calienta esta placa en este horno, con su banda de error. Escriba en un campo, avance con arriba y abajo (RePág, AvPág de 5 en 5), gire la rueda o arrastre; Tab, izquierda y derecha van de campo en campo, Supr vuelve a lo utilizado, L separa o une superior e inferior, Ctrl+L deja una zona fija en una búsqueda. Todo cambio puede deshacerse. Una sugerencia es una predicción: una persona cualificada la confirma con una pasada instrumentada.</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Where each thermocouple sits, with its result of the requirement that is chosen beside Show. Left and right, or up and down, go to another thermocouple, Enter shows how its number came about.</source>
        <translation>Dónde está cada termopar, con su resultado del requisito elegido junto a «Mostrar». Izquierda y derecha, o arriba y abajo, van a otro termopar; Intro muestra cómo se obtuvo su número.</translation>
    </message>
    <message>
        <source>How this number came about</source>
        <translation>Cómo se obtuvo este número</translation>
    </message>
    <message>
        <source>The chosen result step by step: definition, limits with their source, margin, uncertainty by cause, the decision, and the zones that it traces back to. The arrows at the top go to the result before and after.</source>
        <translation>El resultado elegido paso a paso: definición, límites con su fuente, margen, incertidumbre por causas, la decisión y las zonas de las que procede. Las flechas de arriba van al resultado anterior y al siguiente.</translation>
    </message>
    <message>
        <source>Keeping a run</source>
        <translation>Guardar una pasada</translation>
    </message>
    <message>
        <source>Run, Keep in the record (Ctrl+K) keeps the run that is shown, or all open logs, for good: the raw log, window, oven, recipe and board as they are, and the result. A record stands in a lot; a pass of a log is kept once. The status line says at its right where records go, a press on it chooses another archive.</source>
        <translation>Pasada, Guardar en el archivo (Ctrl+K) guarda para siempre la pasada que se ve, o todos los registros abiertos: el registro original, la ventana, el horno, la receta y la placa tal como están, y el resultado. Cada registro archivado pertenece a un lote; una pasada de un registro se guarda una vez. A la derecha de la línea de estado se ve adónde van; al pulsarla se elige otro archivo.</translation>
    </message>
    <message>
        <source>Lot sheet</source>
        <translation>Hoja del lote</translation>
    </message>
    <message>
        <source>The sheet of the marked runs as it will be printed, one for each lot; Page Up and Page Down turn its pages. What was printed or saved as PDF can be marked as printed beside its records. Several lots writes a file for each lot into a folder and replaces none without asking.</source>
        <translation>La hoja de las pasadas marcadas tal como se imprimirá, una por lote; Re Pág y Av Pág pasan las páginas. Lo que se imprime o se guarda como PDF puede anotarse como impreso junto a sus registros. «Varios lotes» escribe un fichero por lote en una carpeta y no reemplaza ninguno sin preguntar.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Two runs on one clock, lined up at the oven entry or where the first thermocouple rises through a level. A log that is dropped here becomes B. Setpoints that differ are framed in B, the differences stand under them. Each lane has both runs, A over B; its last columns say the smallest margin of each, the largest change with its uncertainty, and which has more margin: neither, where they differ by less than their uncertainty. Enter on a mark leads to the run’s own page.</source>
        <translation>Dos pasadas en un mismo reloj, alineadas en la entrada al horno o donde el primer termopar sube por un nivel. Un registro que se suelta aquí pasa a ser B. Las consignas distintas están enmarcadas en B, con las diferencias debajo. Cada carril tiene las dos pasadas, A sobre B; las últimas columnas dicen el margen mínimo de cada una, el mayor cambio con su incertidumbre y cuál tiene más margen: ninguna, donde difieren en menos que su incertidumbre. Intro sobre una marca lleva a la página propia de la pasada.</translation>
    </message>
    <message>
        <source>Every run that was kept, the newest first; a click on a heading sorts by it, a second one the other way round, and so does View, Sort the runs by, or the menu key. The fields above say which runs are listed, Ctrl+F finds words. Space marks the chosen runs for the sheet, Ctrl+A takes all, Ctrl+C copies with headings, Enter opens a run on Check with everything it was judged with. Below, a measure over the runs of one board and window revision: left and right go from run to run, a square is a run that completes a signal.</source>
        <translation>Todas las pasadas guardadas, las más recientes primero; un clic en un encabezado ordena por él, otro clic lo invierte, igual que Ver, Ordenar las pasadas por, o la tecla de menú. Los campos de arriba dicen qué pasadas se muestran y Ctrl+F busca palabras. Espacio marca las pasadas elegidas para la hoja, Ctrl+A las toma todas, Ctrl+C copia con encabezados y Entrar abre una pasada en Comprobar con todo lo que sirvió para juzgarla. Debajo, una medida a lo largo de las pasadas de una placa y una revisión de la ventana: izquierda y derecha van de pasada en pasada; un cuadrado es una pasada que completa una señal.</translation>
    </message>
    <message>
        <source>Editing an oven</source>
        <translation>Editar un horno</translation>
    </message>
    <message>
        <source>Where the zones lie and what the oven allows, checked while it is typed; the zone strip and the oven entry follow at once, and Tune learns anew. Two ends of a limit stand together or not at all. Saving makes a new revision in a new file with the comments of the old one; nothing is overwritten. Zones come and go in the file itself.</source>
        <translation>Dónde están las zonas y qué permite el horno, comprobado mientras se escribe; la banda de zonas y la entrada al horno siguen al momento, y Ajustar aprende de nuevo. Los dos extremos de un límite van juntos o no están. Guardar crea una revisión nueva en un archivo nuevo con los comentarios del anterior; nada se sobrescribe. Las zonas se añaden y se quitan en el propio archivo.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ImportPage</name>
    <message>
        <source>What stands in the file</source>
        <translation>Qué hay en el archivo</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Canales</translation>
    </message>
    <message>
        <source>Known once the log can be read</source>
        <translation>Se sabrá cuando el registro pueda leerse</translation>
    </message>
    <message>
        <source>%1, %2 bytes, SHA-256 %3…%4</source>
        <translation>%1, %2 bytes, SHA-256 %3…%4</translation>
    </message>
    <message>
        <source>Placements come from the board %1</source>
        <translation>Las posiciones vienen de la placa %1</translation>
    </message>
    <message>
        <source>Take column %1 for the time</source>
        <translation>Usar la columna %1 como tiempo</translation>
    </message>
    <message>
        <source>Take column %1 for a thermocouple</source>
        <translation>Usar la columna %1 como termopar</translation>
    </message>
    <message>
        <source>Do not judge column %1</source>
        <translation>No juzgar la columna %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::KeepForm</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Keep in the record</source>
        <translation>Guardar en el archivo</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Board serial</source>
        <translation>Número de serie</translation>
    </message>
    <message>
        <source>O&amp;perator</source>
        <translation>O&amp;perador</translation>
    </message>
    <message>
        <source>Time of run</source>
        <translation>Hora de la pasada</translation>
    </message>
    <message>
        <source>Wh&amp;at</source>
        <translation>&amp;Qué</translation>
    </message>
    <message>
        <source>this run</source>
        <translation>esta pasada</translation>
    </message>
    <message numerus="yes">
        <source>all %n runs of this log</source>
        <translation>
            <numerusform>%n pasada de este registro</numerusform>
            <numerusform>las %n pasadas de este registro</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all %n open logs</source>
        <translation>
            <numerusform>%n registro abierto</numerusform>
            <numerusform>los %n registros abiertos</numerusform>
        </translation>
    </message>
    <message>
        <source>each log’s own</source>
        <translation>la de cada registro</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>como se escribió</translation>
    </message>
    <message>
        <source>from the log’s clock</source>
        <translation>del reloj del registro</translation>
    </message>
    <message>
        <source>from its file: no date stands in the log</source>
        <translation>de su archivo: en el registro no hay fecha</translation>
    </message>
    <message>
        <source>now: no date stands in the text</source>
        <translation>ahora: en el texto no hay fecha</translation>
    </message>
    <message>
        <source>Into %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>There is no result for the present setup</source>
        <translation>No hay resultado para la configuración actual</translation>
    </message>
    <message>
        <source>Which lot is it? A record stands in a lot.</source>
        <translation>¿Qué lote es? Cada registro archivado pertenece a un lote.</translation>
    </message>
    <message>
        <source>Keeping…</source>
        <translation>Guardando…</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, as %2.</source>
        <translation>Esta pasada de %1 ya está guardada, como %2.</translation>
    </message>
    <message>
        <source>This pass of %1 is kept already, in lot %2, as %3.</source>
        <translation>Esta pasada de %1 ya está guardada, en el lote %2, como %3.</translation>
    </message>
    <message>
        <source>Kept as %1 in lot %2.</source>
        <translation>Guardada como %1 en el lote %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs are kept in lot %1, as %2 to %3.</source>
        <translation>
            <numerusform>%n pasada está guardada en el lote %1, de %2 a %3.</numerusform>
            <numerusform>%n pasadas están guardadas en el lote %1, de %2 a %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are kept already.</source>
        <translation>
            <numerusform>%n más ya está guardada.</numerusform>
            <numerusform>%n más ya están guardadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was kept: %1</source>
        <translation>No se ha guardado nada: %1</translation>
    </message>
    <message>
        <source>Keeping… The archive’s server is slow to answer.</source>
        <translation>Guardando… El servidor del archivo tarda en responder.</translation>
    </message>
    <message>
        <source>The server does not have it yet: it waits on this computer.</source>
        <translation>El servidor aún no lo tiene: espera en este ordenador.</translation>
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
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>Model fitted to</source>
        <translation>Modelo ajustado a</translation>
    </message>
    <message>
        <source>Largest misfit</source>
        <translation>Mayor desajuste</translation>
    </message>
    <message>
        <source>Learn from other runs too</source>
        <translation>Aprender también de otras pasadas</translation>
    </message>
    <message>
        <source>run with %1</source>
        <comment>name of a recipe</comment>
        <translation>pasada con %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotSheetPanel</name>
    <message>
        <source>Lot sheet</source>
        <translation>Hoja del lote</translation>
    </message>
    <message>
        <source>Mark runs in the list to put them on a sheet.</source>
        <translation>Marque pasadas en la lista para ponerlas en una hoja.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n pasada</numerusform>
            <numerusform>%n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>HTML…</source>
        <translation>HTML…</translation>
    </message>
    <message>
        <source>Several lots…</source>
        <translation>Varios lotes…</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>Anotar como impresa en el archivo</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>Una página por pasada</translation>
    </message>
    <message>
        <source>The sheet could not be made.</source>
        <translation>No se ha podido generar la hoja.</translation>
    </message>
    <message>
        <source>The sheet was not written.</source>
        <translation>No se ha escrito la hoja.</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>La hoja está en %1</translation>
    </message>
    <message>
        <source>The sheet is not marked as printed.</source>
        <translation>La hoja no está anotada como impresa.</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>After printing and saving as PDF, by %1</source>
        <translation>Después de imprimir y guardar como PDF, por %1</translation>
    </message>
    <message>
        <source>The sheet could not be made: %1</source>
        <translation>No se ha podido generar la hoja: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n lots</source>
        <translation>
            <numerusform>%n lote</numerusform>
            <numerusform>%n lotes</numerusform>
        </translation>
    </message>
    <message>
        <source>No lot</source>
        <translation>Sin lote</translation>
    </message>
    <message>
        <source>The sheet is made…</source>
        <translation>Se está generando la hoja…</translation>
    </message>
    <message>
        <source>%1 of %2 runs are judged</source>
        <translation>%1 de %2 pasadas están evaluadas</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>lot, runs, pages</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n página</numerusform>
            <numerusform>%n páginas</numerusform>
        </translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>No se ha podido imprimir la hoja</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>La hoja se ha enviado a la impresora</translation>
    </message>
    <message>
        <source>Save the lot sheet</source>
        <translation>Guardar la hoja del lote</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>One HTML file (*.html)</source>
        <translation>Un archivo HTML (*.html)</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 es un registro abierto: una hoja nunca ocupa el lugar de un registro</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotsPage</name>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>La tabla está en el portapapeles, con encabezados.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) in the list</source>
        <translation>
            <numerusform>%n pasada en la lista</numerusform>
            <numerusform>%n pasadas en la lista</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n marked</source>
        <translation>
            <numerusform>%n marcada</numerusform>
            <numerusform>%n marcadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Export the table</source>
        <translation>Exportar la tabla</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>The table was not exported.</source>
        <translation>La tabla no se exportó.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) exported as %1.</source>
        <translation>
            <numerusform>%n pasada exportada como %1.</numerusform>
            <numerusform>%n pasadas exportadas como %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Mark two runs, or more for two groups</source>
        <translation>Marque dos pasadas, o más para dos grupos</translation>
    </message>
    <message>
        <source>%1 runs at most can be compared</source>
        <translation>Se pueden comparar como máximo %1 pasadas</translation>
    </message>
    <message>
        <source>Hold the two marked runs against each other, the older as A</source>
        <translation>Contraponer las dos pasadas marcadas, la más antigua como A</translation>
    </message>
    <message>
        <source>Put the marked runs into two groups and hold these against each other</source>
        <translation>Dividir las pasadas marcadas en dos grupos y contraponerlos</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>&amp;Abrir un registro…</translation>
    </message>
    <message>
        <source>&amp;Paste a log</source>
        <translation>&amp;Pegar un registro</translation>
    </message>
    <message>
        <source>&amp;Recent logs</source>
        <translation>Registros &amp;recientes</translation>
    </message>
    <message>
        <source>Look at the &amp;demo run</source>
        <translation>Ver la pasada de &amp;ejemplo</translation>
    </message>
    <message>
        <source>&amp;Close this log</source>
        <translation>&amp;Cerrar este registro</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>Copy the &amp;table</source>
        <translation>Copiar la &amp;tabla</translation>
    </message>
    <message>
        <source>Copy the &amp;picture</source>
        <translation>Copiar la &amp;imagen</translation>
    </message>
    <message>
        <source>&amp;Find in the table</source>
        <translation>&amp;Buscar en la tabla</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Ampliar</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>&amp;Reducir</translation>
    </message>
    <message>
        <source>&amp;Whole run</source>
        <translation>&amp;Toda la pasada</translation>
    </message>
    <message>
        <source>&amp;Raw samples</source>
        <translation>Muestras &amp;originales</translation>
    </message>
    <message>
        <source>&amp;Next result that is not a pass</source>
        <translation>Resultado &amp;siguiente que no cumple</translation>
    </message>
    <message>
        <source>&amp;Previous result that is not a pass</source>
        <translation>Resultado &amp;anterior que no cumple</translation>
    </message>
    <message>
        <source>Choose nothin&amp;g</source>
        <translation>No elegir &amp;nada</translation>
    </message>
    <message>
        <source>Next pa&amp;rt</source>
        <translation>Parte s&amp;iguiente</translation>
    </message>
    <message>
        <source>Previous p&amp;art</source>
        <translation>Parte an&amp;terior</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>&amp;Temperatura en</translation>
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
        <translation>&amp;Velocidad en</translation>
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
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>As the &amp;system says</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Run</source>
        <translation>&amp;Pasada</translation>
    </message>
    <message>
        <source>&amp;Next run</source>
        <translation>Pasada &amp;siguiente</translation>
    </message>
    <message>
        <source>&amp;Previous run</source>
        <translation>Pasada a&amp;nterior</translation>
    </message>
    <message>
        <source>&amp;How the log was read</source>
        <translation>&amp;Cómo se leyó el registro</translation>
    </message>
    <message>
        <source>&amp;Edit the window</source>
        <translation>&amp;Editar la ventana</translation>
    </message>
    <message>
        <source>&amp;Oven</source>
        <translation>&amp;Horno</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ay&amp;uda</translation>
    </message>
    <message>
        <source>&amp;Help on what has the focus</source>
        <translation>&amp;Ayuda sobre lo que tiene el foco</translation>
    </message>
    <message>
        <source>&amp;About Ovenwright</source>
        <translation>A&amp;cerca de Ovenwright</translation>
    </message>
    <message>
        <source>About Ovenwright</source>
        <translation>Acerca de Ovenwright</translation>
    </message>
    <message>
        <source>&amp;Forget these</source>
        <translation>&amp;Olvidar estos</translation>
    </message>
    <message>
        <source>Open logs</source>
        <translation>Abrir registros</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Nothing was pasted.</source>
        <translation>No se pegó nada.</translation>
    </message>
    <message>
        <source>The clipboard holds no text and no file.</source>
        <translation>El portapapeles no contiene texto ni archivos.</translation>
    </message>
    <message>
        <source>The demo run cannot be opened.</source>
        <translation>La pasada de ejemplo no puede abrirse.</translation>
    </message>
    <message>
        <source>The table is on the clipboard, with headings.</source>
        <translation>La tabla está en el portapapeles, con encabezados.</translation>
    </message>
    <message>
        <source>The picture is on the clipboard.</source>
        <translation>La imagen está en el portapapeles.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Comprobar</translation>
    </message>
    <message>
        <source>Ovenwright</source>
        <translation>Ovenwright</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 rows, every %3 s, %n channel(s)</source>
        <translation>
            <numerusform>%1: %2 filas, cada %3 s, %n canal</numerusform>
            <numerusform>%1: %2 filas, cada %3 s, %n canales</numerusform>
        </translation>
    </message>
    <message>
        <source>oven entry found at %1 s</source>
        <translation>entrada al horno hallada a los %1 s</translation>
    </message>
    <message>
        <source>oven entry given at %1 s</source>
        <translation>entrada al horno indicada a los %1 s</translation>
    </message>
    <message>
        <source>decimal %1</source>
        <translation>signo decimal: %1</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>Leído como: %1</translation>
    </message>
    <message>
        <source>Decision rule: guarded, w = U</source>
        <translation>Regla de decisión: con banda de guarda, w = U</translation>
    </message>
    <message>
        <source>Decision rule: simple</source>
        <translation>Regla de decisión: simple</translation>
    </message>
    <message>
        <source>Please note.</source>
        <comment>before warnings</comment>
        <translation>Tenga en cuenta.</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>%1 was not read.</source>
        <translation>%1 no se leyó.</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be read: %1.</source>
        <translation>
            <numerusform>%n más no pudo leerse: %1.</numerusform>
            <numerusform>%n más no pudieron leerse: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Read it without the board</source>
        <translation>Leerlo sin la placa</translation>
    </message>
    <message>
        <source>Read it without the oven</source>
        <translation>Leerlo sin el horno</translation>
    </message>
    <message>
        <source>Show the line</source>
        <translation>Mostrar la línea</translation>
    </message>
    <message>
        <source>Read it another way</source>
        <translation>Leerlo de otro modo</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Reintentar</translation>
    </message>
    <message>
        <source>Open another log…</source>
        <translation>Abrir otro registro…</translation>
    </message>
    <message>
        <source>Not judged.</source>
        <translation>No juzgado.</translation>
    </message>
    <message>
        <source>Undo this change</source>
        <translation>Deshacer este cambio</translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation>&amp;Comprobar</translation>
    </message>
    <message>
        <source>T&amp;une</source>
        <translation>&amp;Ajustar</translation>
    </message>
    <message>
        <source>Panel at the rig&amp;ht</source>
        <translation>Panel &amp;derecho</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>Ajustar</translation>
    </message>
    <message>
        <source>Prediction follows each edit</source>
        <translation>La predicción sigue cada cambio</translation>
    </message>
    <message>
        <source>Nothing is predicted yet</source>
        <translation>Aún no se predice nada</translation>
    </message>
    <message>
        <source>&amp;Lots</source>
        <translation>&amp;Lotes</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>The run was not opened.</source>
        <translation>La pasada no se abrió.</translation>
    </message>
    <message>
        <source>Se&amp;ttings…</source>
        <translation>A&amp;justes…</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>&amp;Vigilar una carpeta…</translation>
    </message>
    <message>
        <source>&amp;Keep in the record…</source>
        <translation>&amp;Guardar en el archivo…</translation>
    </message>
    <message>
        <source>Keep…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>%1: choose where runs are kept</source>
        <translation>%1: elegir dónde se guardan las pasadas</translation>
    </message>
    <message numerus="yes">
        <source>Watching %1: %n kept</source>
        <translation>
            <numerusform>Vigilando %1: %n guardada</numerusform>
            <numerusform>Vigilando %1: %n guardadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n sin evaluar</numerusform>
            <numerusform>%n sin evaluar</numerusform>
        </translation>
    </message>
    <message>
        <source>C&amp;ompare</source>
        <translation>C&amp;omparar</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>From the &amp;archive…</source>
        <translation>Del &amp;archivo…</translation>
    </message>
    <message>
        <source>Look at two &amp;demo runs</source>
        <translation>Ver dos pasadas de &amp;ejemplo</translation>
    </message>
    <message>
        <source>The runs were not opened.</source>
        <translation>Las pasadas no se abrieron.</translation>
    </message>
    <message>
        <source>Leave these cells empty</source>
        <translation>Dejar vacías estas celdas</translation>
    </message>
    <message>
        <source>Leave these rows out</source>
        <translation>Omitir estas filas</translation>
    </message>
    <message numerus="yes">
        <source>%n assumed</source>
        <comment>things about the reading</comment>
        <translation>
            <numerusform>%n supuesto</numerusform>
            <numerusform>%n supuestos</numerusform>
        </translation>
    </message>
    <message>
        <source>Guarded, w = U</source>
        <translation>Con banda de guarda, w = U</translation>
    </message>
    <message>
        <source>Simple rule</source>
        <translation>Regla simple</translation>
    </message>
    <message>
        <source>&amp;Edit the oven</source>
        <translation>&amp;Editar el horno</translation>
    </message>
    <message>
        <source>The row is on the clipboard.</source>
        <translation>La fila está en el portapapeles.</translation>
    </message>
    <message>
        <source>The rows are on the clipboard, with headings.</source>
        <translation>Las filas están en el portapapeles, con encabezados.</translation>
    </message>
    <message>
        <source>No oven is chosen: there is none to edit.</source>
        <translation>No hay ningún horno elegido: no hay nada que editar.</translation>
    </message>
    <message>
        <source>the window %1</source>
        <translation>la ventana %1</translation>
    </message>
    <message>
        <source>the oven %1</source>
        <translation>el horno %1</translation>
    </message>
    <message>
        <source>the recipe %1 in Tune</source>
        <translation>la receta %1 en Ajustar</translation>
    </message>
    <message>
        <source>Not closed yet.</source>
        <translation>Todavía no se ha cerrado.</translation>
    </message>
    <message>
        <source>Changes that are not saved: %1.</source>
        <translation>Cambios sin guardar: %1.</translation>
    </message>
    <message>
        <source>Show the changes</source>
        <translation>Mostrar los cambios</translation>
    </message>
    <message>
        <source>Close without saving</source>
        <translation>Cerrar sin guardar</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenModel</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Ambient, °C</source>
        <translation>Ambiente, °C</translation>
    </message>
    <message>
        <source>Mouth to first zone, mm</source>
        <translation>Boca a primera zona, mm</translation>
    </message>
    <message>
        <source>Last zone to end, mm</source>
        <translation>Última zona a salida, mm</translation>
    </message>
    <message>
        <source>Setpoints from, °C</source>
        <translation>Consignas desde, °C</translation>
    </message>
    <message>
        <source>Setpoints to, °C</source>
        <translation>Consignas hasta, °C</translation>
    </message>
    <message>
        <source>Speed from, mm/min</source>
        <translation>Velocidad desde, mm/min</translation>
    </message>
    <message>
        <source>Speed to, mm/min</source>
        <translation>Velocidad hasta, mm/min</translation>
    </message>
    <message>
        <source>Step to next zone, °C</source>
        <translation>Salto a la zona siguiente, °C</translation>
    </message>
    <message>
        <source>Top to bottom, °C</source>
        <translation>Arriba a abajo, °C</translation>
    </message>
    <message>
        <source>%1: its other end is missing</source>
        <translation>%1: falta el otro extremo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>heats</source>
        <translation>calienta</translation>
    </message>
    <message>
        <source>cools</source>
        <translation>enfría</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Begins at, mm</source>
        <translation>Empieza en, mm</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Longitud, mm</translation>
    </message>
    <message>
        <source>Gap after it, mm</source>
        <translation>Hueco después, mm</translation>
    </message>
    <message>
        <source>Board there, s</source>
        <translation>Placa allí, s</translation>
    </message>
    <message>
        <source>From the oven’s mouth, out of the lengths and gaps before it</source>
        <translation>Desde la boca del horno, según las longitudes y huecos anteriores</translation>
    </message>
    <message>
        <source>From the oven entry, at the speed of the recipe</source>
        <translation>Desde la entrada al horno, a la velocidad de la receta</translation>
    </message>
    <message>
        <source>“%1” can mean thousands or decimals: type thousands without a sign, decimals with one or two digits</source>
        <translation>«%1» puede significar millares o decimales: escriba los millares sin separador y los decimales con una o dos cifras</translation>
    </message>
    <message>
        <source>Zone %1: name %2</source>
        <translation>Zona %1: nombre %2</translation>
    </message>
    <message>
        <source>Zone %1: length %2 mm</source>
        <translation>Zona %1: longitud %2 mm</translation>
    </message>
    <message>
        <source>Zone %1: gap after it %2 mm</source>
        <translation>Zona %1: hueco después %2 mm</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OvenPage</name>
    <message>
        <source>Zones</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Ambient, °C</source>
        <translation>&amp;Ambiente, °C</translation>
    </message>
    <message>
        <source>&amp;Mouth to first zone, mm</source>
        <translation>&amp;Boca a primera zona, mm</translation>
    </message>
    <message>
        <source>Last &amp;zone to end, mm</source>
        <translation>Última &amp;zona a salida, mm</translation>
    </message>
    <message>
        <source>Set&amp;points, °C</source>
        <translation>&amp;Consignas, °C</translation>
    </message>
    <message>
        <source>&amp;Speed, mm/min</source>
        <translation>&amp;Velocidad, mm/min</translation>
    </message>
    <message>
        <source>S&amp;tep to next zone, °C</source>
        <translation>&amp;Salto a la zona siguiente, °C</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>Revisión nueva</translation>
    </message>
    <message>
        <source>The curves begin at %1 to %2 %3.</source>
        <translation>Las curvas empiezan entre %1 y %2 %3.</translation>
    </message>
    <message>
        <source>They do not show when the board entered.</source>
        <translation>No muestran cuándo entró la placa.</translation>
    </message>
    <message>
        <source>With these lengths they put the oven entry at %1 ± %2 s on the log’s clock.</source>
        <translation>Con estas longitudes sitúan la entrada al horno en %1 ± %2 s en el reloj del registro.</translation>
    </message>
    <message>
        <source>The oven entry was given: %1 s on the log’s clock.</source>
        <translation>La entrada al horno está dada: %1 s en el reloj del registro.</translation>
    </message>
    <message>
        <source>A new revision needs a name.</source>
        <translation>Una revisión nueva necesita un nombre.</translation>
    </message>
    <message>
        <source>The oven is at revision %1 already.</source>
        <translation>El horno ya está en la revisión %1.</translation>
    </message>
    <message>
        <source>Every rule for ovens is met.</source>
        <translation>Se cumplen todas las reglas para hornos.</translation>
    </message>
    <message>
        <source>Oven, %1</source>
        <translation>Horno, %1</translation>
    </message>
    <message>
        <source>Save the oven</source>
        <translation>Guardar el horno</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>Archivos TOML (*.toml)</translation>
    </message>
    <message>
        <source>The oven was not saved.</source>
        <translation>El horno no se guardó.</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>Guardado como revisión %1: %2</translation>
    </message>
    <message>
        <source>Save the oven’s revision %1</source>
        <translation>Guardar la revisión %1 del horno</translation>
    </message>
    <message>
        <source>Save as a new revision</source>
        <translation>Guardar como revisión nueva</translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation>Guardar en otro sitio…</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>Volver al resultado</translation>
    </message>
    <message>
        <source>Top to &amp;bottom, °C</source>
        <translation>Arriba a aba&amp;jo, °C</translation>
    </message>
    <message>
        <source>Rev&amp;ision</source>
        <translation>Rev&amp;isión</translation>
    </message>
    <message>
        <source>The curves begin at %1 %2.</source>
        <translation>Las curvas empiezan a %1 %2.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::OverlayList</name>
    <message>
        <source>Laid over the prediction</source>
        <translation>Superpuesto a la predicción</translation>
    </message>
    <message>
        <source>The run as it was measured</source>
        <translation>La pasada tal como se midió</translation>
    </message>
    <message>
        <source>%1; margin %2</source>
        <translation>%1; margen %2</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>Descartar la predicción %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::PageView</name>
    <message>
        <source>Preview of the sheet</source>
        <translation>Vista previa de la hoja</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ProfileMenus</name>
    <message>
        <source>%1, rev %2</source>
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, modificada</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>&amp;Window</source>
        <translation>&amp;Ventana</translation>
    </message>
    <message>
        <source>&amp;Board</source>
        <translation>&amp;Placa</translation>
    </message>
    <message>
        <source>&amp;Oven and recipe</source>
        <translation>&amp;Horno y receta</translation>
    </message>
    <message>
        <source>Judge &amp;also against</source>
        <translation>Juzgar &amp;también según</translation>
    </message>
    <message>
        <source>No longer against %1</source>
        <translation>Ya no según %1</translation>
    </message>
    <message>
        <source>&amp;Edit this window</source>
        <translation>&amp;Editar esta ventana</translation>
    </message>
    <message>
        <source>Open a window &amp;file…</source>
        <translation>Abrir un &amp;archivo de ventana…</translation>
    </message>
    <message>
        <source>Open a window</source>
        <translation>Abrir una ventana</translation>
    </message>
    <message>
        <source>Open a board &amp;file…</source>
        <translation>Abrir un &amp;archivo de placa…</translation>
    </message>
    <message>
        <source>Open a board</source>
        <translation>Abrir una placa</translation>
    </message>
    <message>
        <source>Open a recipe &amp;file…</source>
        <translation>Abrir un &amp;archivo de receta…</translation>
    </message>
    <message>
        <source>Open a recipe</source>
        <translation>Abrir una receta</translation>
    </message>
    <message>
        <source>Open an oven &amp;file and a recipe…</source>
        <translation>Abrir un archivo de &amp;horno y una receta…</translation>
    </message>
    <message>
        <source>Open an oven</source>
        <translation>Abrir un horno</translation>
    </message>
    <message>
        <source>Open a recipe of this oven</source>
        <translation>Abrir una receta de este horno</translation>
    </message>
    <message>
        <source>TOML files (*.toml);;All files (*)</source>
        <translation>Archivos TOML (*.toml);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>%1, line %2: </source>
        <translation>%1, línea %2: </translation>
    </message>
    <message>
        <source>Open the file</source>
        <translation>Abrir el archivo</translation>
    </message>
    <message>
        <source>Not judged anew: this window cannot be used.</source>
        <translation>No se juzgó de nuevo: esta ventana no puede usarse.</translation>
    </message>
    <message>
        <source>Judge also against %1</source>
        <translation>Juzgar también según %1</translation>
    </message>
    <message>
        <source>Choose the window %1</source>
        <translation>Elegir la ventana %1</translation>
    </message>
    <message>
        <source>No longer judge against %1</source>
        <translation>Dejar de juzgar según %1</translation>
    </message>
    <message>
        <source>Choose no board</source>
        <translation>No elegir placa</translation>
    </message>
    <message>
        <source>This board cannot be used.</source>
        <translation>Esta placa no puede usarse.</translation>
    </message>
    <message>
        <source>Choose the board %1</source>
        <translation>Elegir la placa %1</translation>
    </message>
    <message>
        <source>Choose no oven</source>
        <translation>No elegir horno</translation>
    </message>
    <message>
        <source>This oven cannot be used.</source>
        <translation>Este horno no puede usarse.</translation>
    </message>
    <message>
        <source>This recipe cannot be used.</source>
        <translation>Esta receta no puede usarse.</translation>
    </message>
    <message>
        <source>This recipe does not fit the oven.</source>
        <translation>Esta receta no encaja con el horno.</translation>
    </message>
    <message>
        <source>Choose the recipe %1</source>
        <translation>Elegir la receta %1</translation>
    </message>
    <message>
        <source>&amp;Edit this oven</source>
        <translation>&amp;Editar este horno</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingPanel</name>
    <message>
        <source>How the log was read</source>
        <translation>Cómo se leyó el registro</translation>
    </message>
    <message>
        <source>Read logs laid out like this the same way</source>
        <translation>Leer igual los registros con esta forma</translation>
    </message>
    <message>
        <source>Use this reading</source>
        <translation>Usar esta lectura</translation>
    </message>
    <message>
        <source>Back to what was found</source>
        <translation>Volver a lo hallado</translation>
    </message>
    <message>
        <source>Export the layout…</source>
        <translation>Exportar la disposición…</translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>Codificación</translation>
    </message>
    <message>
        <source>Separator</source>
        <translation>Separador</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>Header</source>
        <translation>Encabezado</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Order of the date</source>
        <translation>Orden de la fecha</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Oven entry</source>
        <translation>Entrada al horno</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Oven entry, seconds on the log’s clock</source>
        <translation>Entrada al horno, segundos en el reloj del registro</translation>
    </message>
    <message>
        <source>What was found and assumed</source>
        <translation>Lo hallado y lo supuesto</translation>
    </message>
    <message>
        <source>Layout &amp;name</source>
        <translation>&amp;Nombre de la disposición</translation>
    </message>
    <message>
        <source>Layout name</source>
        <translation>Nombre de la disposición</translation>
    </message>
    <message numerus="yes">
        <source>The %n line(s) before it are kept as notes.</source>
        <translation>
            <numerusform>La línea anterior se conserva como nota.</numerusform>
            <numerusform>Las %n líneas anteriores se conservan como notas.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 s a row.</source>
        <translation>%1 s por fila.</translation>
    </message>
    <message>
        <source>Not found. Without an oven, times stay on the log’s own clock.</source>
        <translation>No hallada. Sin horno, los tiempos siguen el reloj del registro.</translation>
    </message>
    <message>
        <source>Not found in this log: it can be given.</source>
        <translation>No hallada en este registro: puede indicarse.</translation>
    </message>
    <message>
        <source>Given. The plot and the zone strip count from it.</source>
        <translation>Indicada. Las curvas y la banda de zonas cuentan desde ella.</translation>
    </message>
    <message>
        <source>Found from the curves, ± %1 s. The plot and the zone strip count from it.</source>
        <translation>Hallada en las curvas, ± %1 s. Las curvas y la banda de zonas cuentan desde ella.</translation>
    </message>
    <message>
        <source>Found from the log</source>
        <translation>Hallada en el registro</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Indicada</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n cell(s) without a reading</source>
        <translation>
            <numerusform>%1: %n celda sin lectura</numerusform>
            <numerusform>%1: %n celdas sin lectura</numerusform>
        </translation>
    </message>
    <message>
        <source>changed by you</source>
        <translation>modificado por usted</translation>
    </message>
    <message>
        <source>Found from the content</source>
        <translation>Hallado en el contenido</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>aún no leído</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The layout was not kept.</source>
        <translation>La disposición no se conservó.</translation>
    </message>
    <message>
        <source>Logs of this shape are read by the layout %1.</source>
        <translation>Los registros de esta forma se leen con la disposición %1.</translation>
    </message>
    <message>
        <source>Export the layout</source>
        <translation>Exportar la disposición</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>Archivos TOML (*.toml)</translation>
    </message>
    <message>
        <source>The layout was not exported.</source>
        <translation>La disposición no se exportó.</translation>
    </message>
    <message>
        <source>The layout is in %1.</source>
        <translation>La disposición está en %1.</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>Termopar</translation>
    </message>
    <message>
        <source>Cold junction</source>
        <translation>Unión fría</translation>
    </message>
    <message>
        <source>No byte contradicts it.</source>
        <translation>Ningún byte lo contradice.</translation>
    </message>
    <message numerus="yes">
        <source>Every row that is shown has %n cell(s).</source>
        <translation>
            <numerusform>Cada fila mostrada tiene %n celda.</numerusform>
            <numerusform>Cada fila mostrada tiene %n celdas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>No indicado</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Supuesto: %1</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message numerus="yes">
        <source>%n other(s) in the file may be a log as well.</source>
        <translation>
            <numerusform>%n más del fichero puede ser también un registro.</numerusform>
            <numerusform>%n más del fichero pueden ser también registros.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingRow</name>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>assumed; %1</source>
        <translation>supuesto; %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RecipeStrip</name>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Type a number, or step with the up and down arrows; Delete goes back to what was run.</source>
        <translation>Escriba un número o avance con las flechas; Supr vuelve a lo utilizado.</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>top and bottom together</source>
        <translation>superior e inferior juntos</translation>
    </message>
    <message>
        <source>stays in a search</source>
        <translation>fija en una búsqueda</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is. Press to let it move.</source>
        <translation>Una búsqueda deja la zona %1 como está. Pulse para que pueda moverse.</translation>
    </message>
    <message>
        <source>Press to keep zone %1 as it is in a search.</source>
        <translation>Pulse para dejar fija la zona %1 en una búsqueda.</translation>
    </message>
    <message>
        <source>Type, step with the arrows or drag up and down.</source>
        <translation>Escriba, use las flechas o arrastre arriba y abajo.</translation>
    </message>
    <message>
        <source>Top and bottom move together</source>
        <translation>Superior e inferior se mueven juntos</translation>
    </message>
    <message>
        <source>&amp;Type a number</source>
        <translation>&amp;Escribir un número</translation>
    </message>
    <message>
        <source>&amp;Back to what was run: %1</source>
        <translation>&amp;Volver a lo utilizado: %1</translation>
    </message>
    <message>
        <source>&amp;Keep zone %1 as it is in a search</source>
        <translation>Dejar &amp;fija la zona %1 en una búsqueda</translation>
    </message>
    <message>
        <source>Top and bottom &amp;together</source>
        <translation>Superior e inferior &amp;juntos</translation>
    </message>
    <message>
        <source>was %1</source>
        <comment>a setpoint or the speed</comment>
        <translation>era %1</translation>
    </message>
    <message>
        <source>Top and bottom move apart</source>
        <translation>Superior e inferior se mueven por separado</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ResultsModel</name>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation>Requisito</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Límite inferior</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Límite superior</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Probability inside</source>
        <translation>Probabilidad dentro</translation>
    </message>
    <message>
        <source>From, s</source>
        <translation>Desde, s</translation>
    </message>
    <message>
        <source>To, s</source>
        <translation>Hasta, s</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>Source of the limit</source>
        <translation>Fuente del límite</translation>
    </message>
    <message>
        <source>board</source>
        <translation>placa</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ResultsTable</name>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsModel</name>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Pasada</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Window rev</source>
        <translation>Rev. ventana</translation>
    </message>
    <message>
        <source>Recipe rev</source>
        <translation>Rev. receta</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Smallest margin at</source>
        <translation>Margen mínimo en</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>%1 has no value</source>
        <comment>placement and requirement</comment>
        <translation>%1 sin valor</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <comment>date and time of a run of this year</comment>
        <translation>d MMM HH:mm</translation>
    </message>
    <message>
        <source>d MMM yyyy HH:mm</source>
        <comment>date and time of a run</comment>
        <translation>d MMM yyyy HH:mm</translation>
    </message>
    <message>
        <source>to print</source>
        <comment>a marked run</comment>
        <translation>por imprimir</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marcada</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>sin marcar</translation>
    </message>
    <message>
        <source>printed</source>
        <comment>the sheet of a run</comment>
        <translation>impresa</translation>
    </message>
    <message>
        <source>Printed on %1</source>
        <translation>Impresa el %1</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this: it is read from each record once its row is seen.</source>
        <translation>La lista no se puede ordenar por esto: se lee de cada registro archivado cuando su fila está a la vista.</translation>
    </message>
    <message>
        <source>The list cannot be sorted by this.</source>
        <translation>La lista no se puede ordenar por esto.</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1, como se indicó</translation>
    </message>
    <message>
        <source>%1, by the log’s own clock</source>
        <translation>%1, según el reloj del registro</translation>
    </message>
    <message>
        <source>%1, time of the log’s file</source>
        <translation>%1, hora del archivo del registro</translation>
    </message>
    <message>
        <source>%1, of the chosen zone</source>
        <comment>time of a run</comment>
        <translation>%1, de la zona elegida</translation>
    </message>
    <message>
        <source>The result that decides the margin of the run, as it was judged when it was kept.</source>
        <translation>El resultado que decide el margen de la pasada, tal como se juzgó al guardarla.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::RunsTable</name>
    <message>
        <source>Runs of the archive</source>
        <translation>Pasadas del archivo</translation>
    </message>
    <message>
        <source>So&amp;rt the runs by</source>
        <translation>O&amp;rdenar las pasadas por</translation>
    </message>
    <message>
        <source>The other way &amp;round</source>
        <translation>Al &amp;revés</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Abrir</translation>
    </message>
    <message>
        <source>&amp;Mark, or take the mark off</source>
        <translation>&amp;Marcar o quitar la marca</translation>
    </message>
    <message>
        <source>&amp;Copy with headings</source>
        <translation>&amp;Copiar con encabezados</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::Screenshot</name>
    <message>
        <source>a large log</source>
        <translation>un registro grande</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SearchSettings</name>
    <message>
        <source>Keep the s&amp;peed</source>
        <translation>Mantener la &amp;velocidad</translation>
    </message>
    <message>
        <source>&amp;Margin to keep, %</source>
        <translation>&amp;Margen que conservar, %</translation>
    </message>
    <message>
        <source>Margin to keep, %</source>
        <translation>Margen que conservar, %</translation>
    </message>
    <message>
        <source>What the fastest and the coolest must keep; else half of the best, at most 20 %</source>
        <translation>Lo que deben conservar la más rápida y la más fría; si no, la mitad de la mejor, como máximo 20 %</translation>
    </message>
    <message>
        <source>S&amp;uggest recipes</source>
        <translation>&amp;Sugerir recetas</translation>
    </message>
    <message>
        <source>Keep the speed in a search</source>
        <translation>Mantener la velocidad en una búsqueda</translation>
    </message>
    <message>
        <source>Let a search change the speed</source>
        <translation>Dejar que una búsqueda cambie la velocidad</translation>
    </message>
    <message>
        <source>Least speed of a search</source>
        <translation>Velocidad mínima de una búsqueda</translation>
    </message>
    <message>
        <source>Margin that a search keeps</source>
        <translation>Margen que conserva una búsqueda</translation>
    </message>
    <message>
        <source>Lea&amp;st speed, %1</source>
        <translation>Velocidad mí&amp;nima, %1</translation>
    </message>
    <message>
        <source>Least speed, %1</source>
        <translation>Velocidad mínima, %1</translation>
    </message>
    <message>
        <source>Every zone may move; press a zone’s name in the strip to keep it.</source>
        <translation>Toda zona puede moverse; pulse su nombre en la banda para dejarla fija.</translation>
    </message>
    <message>
        <source>A search leaves zone %1 as it is.</source>
        <translation>Una búsqueda deja la zona %1 como está.</translation>
    </message>
    <message>
        <source>A search leaves zones %1 as they are.</source>
        <translation>Una búsqueda deja las zonas %1 como están.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SettingsWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Elegir…</translation>
    </message>
    <message>
        <source>&amp;Use this archive</source>
        <translation>&amp;Usar este archivo</translation>
    </message>
    <message>
        <source>No password: it would be shown and kept in plain text here. It belongs into the password file or a service file of the server’s library (.pgpass).</source>
        <translation>Sin contraseña: aquí se vería y se guardaría en texto claro. Su sitio es el archivo de contraseñas o un archivo de servicio de la biblioteca del servidor (.pgpass).</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Archive: where runs are kept</source>
        <translation>Archivo: dónde se guardan las pasadas</translation>
    </message>
    <message>
        <source>File of the archive</source>
        <translation>Fichero del archivo</translation>
    </message>
    <message>
        <source>Address of the server</source>
        <translation>Dirección del servidor</translation>
    </message>
    <message>
        <source>This c&amp;omputer</source>
        <translation>Este &amp;ordenador</translation>
    </message>
    <message>
        <source>A &amp;file</source>
        <translation>Un &amp;fichero</translation>
    </message>
    <message>
        <source>A PostgreSQL &amp;server</source>
        <translation>Un &amp;servidor PostgreSQL</translation>
    </message>
    <message>
        <source>Sheets and records</source>
        <translation>Hojas y registros archivados</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>El&amp;egir…</translation>
    </message>
    <message>
        <source>Choose a logo</source>
        <translation>Elegir un logotipo</translation>
    </message>
    <message>
        <source>Choose the archive’s file</source>
        <translation>Elegir el fichero del archivo</translation>
    </message>
    <message>
        <source>Com&amp;pany, at the head of each sheet</source>
        <translation>Em&amp;presa, en la cabecera de cada hoja</translation>
    </message>
    <message>
        <source>&amp;Logo beside it</source>
        <translation>&amp;Logotipo al lado</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>P&amp;apel</translation>
    </message>
    <message>
        <source>Op&amp;erator, who keeps and prints here</source>
        <translation>Op&amp;erador que guarda e imprime aquí</translation>
    </message>
    <message>
        <source>Which file? It is made when the first run is kept.</source>
        <translation>¿Qué fichero? Se crea al guardar la primera pasada.</translation>
    </message>
    <message>
        <source>This is the address of a server.</source>
        <translation>Esto es la dirección de un servidor.</translation>
    </message>
    <message>
        <source>Say the whole path, so that it is the same file wherever the program starts.</source>
        <translation>Indique la ruta completa, para que sea el mismo fichero dondequiera que se inicie el programa.</translation>
    </message>
    <message>
        <source>%1 is a folder: an archive is a file.</source>
        <translation>%1 es una carpeta: un archivo es un fichero.</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>No existe la carpeta %1.</translation>
    </message>
    <message>
        <source>Which server? As in postgresql://user@host:5432/database.</source>
        <translation>¿Qué servidor? Como en postgresql://user@host:5432/database.</translation>
    </message>
    <message>
        <source>Found %1, expected an address such as postgresql://user@host:5432/database.</source>
        <translation>Se encontró %1, se esperaba una dirección como postgresql://user@host:5432/database.</translation>
    </message>
    <message>
        <source>The address holds a password, which would be shown and kept in plain text: it belongs into the password file or a service file of the server’s library.</source>
        <translation>La dirección contiene una contraseña, que se vería y se guardaría en texto claro: su sitio es el archivo de contraseñas o un archivo de servicio de la biblioteca del servidor.</translation>
    </message>
    <message>
        <source>In use. %1</source>
        <translation>En uso. %1</translation>
    </message>
    <message>
        <source>In use. It is made when the first run is kept.</source>
        <translation>En uso. Se crea al guardar la primera pasada.</translation>
    </message>
    <message>
        <source>In use, but: %1</source>
        <translation>En uso, pero: %1</translation>
    </message>
    <message>
        <source>Not in use yet.</source>
        <translation>Todavía sin usar.</translation>
    </message>
    <message>
        <source>Archives (*.sqlite);;All files (*)</source>
        <translation>Archivos (*.sqlite);;Todos los ficheros (*)</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Logo at the head of each sheet</source>
        <translation>Logotipo en la cabecera de cada hoja</translation>
    </message>
    <message>
        <source>Pictures (*.svg *.png *.jpg *.jpeg)</source>
        <translation>Imágenes (*.svg *.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>Not on the sheets: %1</source>
        <translation>No va en las hojas: %1</translation>
    </message>
    <message>
        <source>The program was started with it: next time it is %1 again, unless you use this one.</source>
        <translation>El programa se inició con él: la próxima vez será de nuevo %1, salvo que use este.</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SeveralLots</name>
    <message>
        <source>&amp;All shown</source>
        <translation>&amp;Todos los visibles</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>&amp;Ninguno</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Elegir…</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>&amp;Replace them</source>
        <translation>&amp;Reemplazarlos</translation>
    </message>
    <message>
        <source>&amp;Leave them out</source>
        <translation>&amp;Omitirlos</translation>
    </message>
    <message>
        <source>Change the folder</source>
        <translation>Cambiar la carpeta</translation>
    </message>
    <message>
        <source>One page for each run</source>
        <translation>Una página por pasada</translation>
    </message>
    <message>
        <source>Mark as printed in the record</source>
        <translation>Anotar como impresa en el archivo</translation>
    </message>
    <message>
        <source>Sheets of several lots</source>
        <translation>Hojas de varios lotes</translation>
    </message>
    <message>
        <source>%1 of %2: lot %3</source>
        <translation>%1 de %2: lote %3</translation>
    </message>
    <message>
        <source>Lot %1 is not marked as printed: %2</source>
        <translation>El lote %1 no está anotado como impreso: %2</translation>
    </message>
    <message>
        <source>The lots are listed…</source>
        <translation>Se están listando los lotes…</translation>
    </message>
    <message>
        <source>Find a lot</source>
        <translation>Buscar un lote</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Last run</source>
        <translation>Última pasada</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>One HTML file</source>
        <translation>Un archivo HTML</translation>
    </message>
    <message>
        <source>Table (CSV)</source>
        <translation>Tabla (CSV)</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Por %1</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>In the &amp;folder</source>
        <translation>En la &amp;carpeta</translation>
    </message>
    <message>
        <source>A file for each lot, as</source>
        <translation>Un fichero por lote, como</translation>
    </message>
    <message>
        <source>The archive has no lot yet.</source>
        <translation>El archivo todavía no tiene ningún lote.</translation>
    </message>
    <message>
        <source>Folder of the sheets</source>
        <translation>Carpeta de las hojas</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>No existe la carpeta %1.</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 es un registro abierto: una hoja nunca ocupa el lugar de un registro</translation>
    </message>
    <message numerus="yes">
        <source>%n of these files are in the folder already.</source>
        <translation>
            <numerusform>%n de estos ficheros ya está en la carpeta.</numerusform>
            <numerusform>%n de estos ficheros ya están en la carpeta.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheets are written.</source>
        <translation>
            <numerusform>%1 de %n hoja escrita.</numerusform>
            <numerusform>%1 de %n hojas escritas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Detenido.</translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be made.</source>
        <translation>
            <numerusform>No se ha podido generar %n más.</numerusform>
            <numerusform>No se han podido generar %n más.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Write %n sheet(s)</source>
        <translation>
            <numerusform>&amp;Escribir %n hoja</numerusform>
            <numerusform>&amp;Escribir %n hojas</numerusform>
        </translation>
    </message>
    <message>
        <source>Write sheets</source>
        <translation>Escribir hojas</translation>
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
        <translation>Cuotas de las zonas</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zona %1</translation>
    </message>
    <message>
        <source>Zone %1, top</source>
        <translation>Zona %1, superior</translation>
    </message>
    <message>
        <source>Zone %1, bottom</source>
        <translation>Zona %1, inferior</translation>
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
        <translation>&amp;Imprimir la hoja…</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>&amp;Vista previa de impresión…</translation>
    </message>
    <message>
        <source>&amp;Export the sheet…</source>
        <translation>&amp;Exportar la hoja…</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer</source>
        <translation>La hoja se ha enviado a la impresora</translation>
    </message>
    <message>
        <source>Export the sheet</source>
        <translation>Exportar la hoja</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;One HTML file (*.html);;Table (*.csv);;JSON (*.json)</source>
        <translation>PDF (*.pdf);;Un archivo HTML (*.html);;Tabla (*.csv);;JSON (*.json)</translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .html, .csv or .json</source>
        <translation>%1: una hoja se escribe como .pdf, .html, .csv o .json</translation>
    </message>
    <message>
        <source>The sheet stands in %1</source>
        <translation>La hoja está en %1</translation>
    </message>
    <message>
        <source>The sheet could not be printed</source>
        <translation>No se ha podido imprimir la hoja</translation>
    </message>
    <message>
        <source>%1 is an open log: a sheet never takes a log’s place</source>
        <translation>%1 es un registro abierto: una hoja nunca ocupa el lugar de un registro</translation>
    </message>
    <message>
        <source>The sheet has no logo. %1</source>
        <translation>La hoja no tiene logotipo. %1</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>Hoja…</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionCard</name>
    <message>
        <source>The recipe that was run stays.</source>
        <translation>La receta utilizada se queda.</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Mostrada</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>margen %1</translation>
    </message>
    <message>
        <source>Tightest: %1</source>
        <translation>Lo más justo: %1</translation>
    </message>
    <message>
        <source>Takes its recipe over into the strip</source>
        <translation>Lleva su receta a la banda</translation>
    </message>
    <message>
        <source>%1, shown</source>
        <translation>%1, mostrada</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Mostrar %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SuggestionsPanel</name>
    <message>
        <source>Suggestions</source>
        <translation>Sugerencias</translation>
    </message>
    <message>
        <source>Search again…</source>
        <translation>Buscar de nuevo…</translation>
    </message>
    <message>
        <source>Suggestions can be asked for once it is known how this board heats in this oven.</source>
        <translation>Se podrán pedir sugerencias cuando se sepa cómo se calienta esta placa en este horno.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Stop the search</source>
        <translation>Detener la búsqueda</translation>
    </message>
    <message>
        <source>Progress of the search</source>
        <translation>Progreso de la búsqueda</translation>
    </message>
    <message>
        <source>Undetermined: the search was stopped before it had looked everywhere.</source>
        <translation>Indeterminado: la búsqueda se detuvo antes de mirar en todas partes.</translation>
    </message>
    <message>
        <source>No recipe passes</source>
        <translation>Ninguna receta cumple</translation>
    </message>
    <message>
        <source>What stands against each other:</source>
        <translation>Qué se opone entre sí:</translation>
    </message>
    <message>
        <source>Show the best there is</source>
        <translation>Mostrar la mejor que hay</translation>
    </message>
    <message>
        <source>Nothing better was found: the recipe that was run can stay.</source>
        <translation>No se halló nada mejor: la receta utilizada puede quedarse.</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Mostrar: %1</translation>
    </message>
    <message>
        <source>The next run worth making</source>
        <translation>La siguiente pasada que conviene</translation>
    </message>
    <message>
        <source>Show its recipe</source>
        <translation>Mostrar su receta</translation>
    </message>
    <message>
        <source>Show the next run worth making</source>
        <translation>Mostrar la siguiente pasada que conviene</translation>
    </message>
    <message>
        <source>These are predictions.</source>
        <translation>Son predicciones.</translation>
    </message>
    <message>
        <source>Nothing is suggested from a model that does not fit.</source>
        <translation>De un modelo que no se ajusta no se sugiere nada.</translation>
    </message>
    <message>
        <source>To check first</source>
        <translation>Comprobar primero</translation>
    </message>
    <message>
        <source>No chance of passing is stated while the log contradicts the files.</source>
        <translation>No se indica ninguna probabilidad de cumplir mientras el registro contradiga los archivos.</translation>
    </message>
    <message>
        <source>Not known: a recipe that passes may exist</source>
        <translation>No se sabe: puede existir una receta que cumpla</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TaskRail</name>
    <message>
        <source>Drop a log anywhere in this window</source>
        <translation>Suelte un registro en cualquier parte de esta ventana</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Tareas</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TunePage</name>
    <message>
        <source>Top and bottom &amp;together</source>
        <translation>Superior e inferior &amp;juntos</translation>
    </message>
    <message>
        <source>&amp;All curves</source>
        <translation>&amp;Todas las curvas</translation>
    </message>
    <message>
        <source>a split needs a run that splits them</source>
        <translation>separarlos requiere una pasada que los separe</translation>
    </message>
    <message>
        <source>&amp;Keep this prediction</source>
        <translation>&amp;Conservar esta predicción</translation>
    </message>
    <message>
        <source>&amp;Back to what was run</source>
        <translation>&amp;Volver a lo utilizado</translation>
    </message>
    <message>
        <source>Change &amp;note…</source>
        <translation>&amp;Nota de cambio…</translation>
    </message>
    <message>
        <source>&amp;Save as a recipe…</source>
        <translation>&amp;Guardar como receta…</translation>
    </message>
    <message>
        <source>Suggestions</source>
        <translation>Sugerencias</translation>
    </message>
    <message>
        <source>Its curves stay, to be laid over others</source>
        <translation>Sus curvas quedan para superponerlas a otras</translation>
    </message>
    <message>
        <source>Save as &amp;PDF…</source>
        <translation>Guardar como &amp;PDF…</translation>
    </message>
    <message>
        <source>Save as &amp;text…</source>
        <translation>Guardar como &amp;texto…</translation>
    </message>
    <message>
        <source>Top and bottom together</source>
        <translation>Superior e inferior juntos</translation>
    </message>
    <message>
        <source>Top and bottom apart</source>
        <translation>Superior e inferior por separado</translation>
    </message>
    <message>
        <source>Let a search move zone %1</source>
        <translation>Dejar que una búsqueda mueva la zona %1</translation>
    </message>
    <message>
        <source>Keep zone %1 in a search</source>
        <translation>Dejar fija la zona %1 en una búsqueda</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>letter of a prediction, what it changes</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>Predicted and measured temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>Temperatura prevista y medida en el tiempo, %n termopar</numerusform>
            <numerusform>Temperatura prevista y medida en el tiempo, %n termopares</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Back to rev %1</source>
        <translation>&amp;Volver a la rev. %1</translation>
    </message>
    <message>
        <source>Save as a recipe</source>
        <translation>Guardar como receta</translation>
    </message>
    <message>
        <source>TOML files (*.toml)</source>
        <translation>Archivos TOML (*.toml)</translation>
    </message>
    <message>
        <source>The recipe was not saved.</source>
        <translation>La receta no se guardó.</translation>
    </message>
    <message>
        <source>Saved as %1. It is a prediction: confirm it with an instrumented run.</source>
        <translation>Guardada como %1. Es una predicción: confírmela con una pasada instrumentada.</translation>
    </message>
    <message>
        <source>Save the change note</source>
        <translation>Guardar la nota de cambio</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Texto (*.txt)</translation>
    </message>
    <message>
        <source>The change note was not saved.</source>
        <translation>La nota de cambio no se guardó.</translation>
    </message>
    <message>
        <source>The change note is saved as %1.</source>
        <translation>La nota de cambio está guardada como %1.</translation>
    </message>
    <message>
        <source>the run had both sides alike: what each does alone is not known</source>
        <translation>la pasada tenía ambos lados iguales: no se sabe qué hace cada uno por separado</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Top and bottom together, checked</source>
        <translation>Superior e inferior juntos, marcado</translation>
    </message>
    <message>
        <source>Top and bottom together, not checked</source>
        <translation>Superior e inferior juntos, sin marcar</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TuneSession</name>
    <message>
        <source>Back to the recipe that was run</source>
        <translation>Volver a la receta utilizada</translation>
    </message>
    <message>
        <source>Keep the prediction %1</source>
        <translation>Conservar la predicción %1</translation>
    </message>
    <message>
        <source>Drop the prediction %1</source>
        <translation>Descartar la predicción %1</translation>
    </message>
    <message>
        <source>Speed to %1</source>
        <translation>Velocidad a %1</translation>
    </message>
    <message>
        <source>Zone %1 to %2</source>
        <translation>Zona %1 a %2</translation>
    </message>
    <message>
        <source>Learn from %1 too</source>
        <translation>Aprender también de %1</translation>
    </message>
    <message>
        <source>Do not learn from %1</source>
        <translation>No aprender de %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WatchWindow</name>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Elegir…</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>El&amp;egir…</translation>
    </message>
    <message>
        <source>&amp;Watch</source>
        <translation>&amp;Vigilar</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Each log that appears in the folder is judged and kept by the first rule that matches its name. Files stay where they are; one that is still being written is waited for. Nothing is watched before you say so, and watching goes on when this window is closed.</source>
        <translation>Cada registro que aparece en la carpeta se evalúa y se guarda según la primera regla que coincide con su nombre. Los ficheros se quedan donde están; si uno aún se está escribiendo, se espera. Nada se vigila antes de que usted lo diga, y se sigue vigilando con esta ventana cerrada.</translation>
    </message>
    <message>
        <source>Watch a folder</source>
        <translation>Vigilar una carpeta</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Elegir: %1</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>&amp;Carpeta</translation>
    </message>
    <message>
        <source>&amp;Rules</source>
        <translation>&amp;Reglas</translation>
    </message>
    <message>
        <source>rules.toml: which lot, window, board, oven and recipe belong to which file names</source>
        <translation>rules.toml: qué lote, ventana, placa, horno y receta corresponden a qué nombres de fichero</translation>
    </message>
    <message>
        <source>Logs that came</source>
        <translation>Registros recibidos</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichero</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Carpeta que se vigila</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Rules (*.toml);;All files (*)</source>
        <translation>Reglas (*.toml);;Todos los ficheros (*)</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin evaluar</translation>
    </message>
    <message>
        <source>kept already, as %1</source>
        <translation>ya guardada, como %1</translation>
    </message>
    <message>
        <source>kept as %1</source>
        <translation>guardada como %1</translation>
    </message>
    <message>
        <source>Watching %1.</source>
        <translation>Vigilando %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) kept</source>
        <translation>
            <numerusform>%n pasada guardada</numerusform>
            <numerusform>%n pasadas guardadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) not judged.</source>
        <translation>
            <numerusform>%n fichero sin evaluar.</numerusform>
            <numerusform>%n ficheros sin evaluar.</numerusform>
        </translation>
    </message>
    <message>
        <source>Some files wait until the archive can take them.</source>
        <translation>Algunos ficheros esperan hasta que el archivo pueda admitirlos.</translation>
    </message>
    <message>
        <source>Some files are still being written.</source>
        <translation>Algunos ficheros aún se están escribiendo.</translation>
    </message>
    <message>
        <source>The server is away: what is kept waits on this computer.</source>
        <translation>El servidor no responde: lo que se guarda espera en este ordenador.</translation>
    </message>
    <message>
        <source>Nothing is watched: %1</source>
        <translation>No se vigila nada: %1</translation>
    </message>
    <message>
        <source>Nothing is watched.</source>
        <translation>No se vigila nada.</translation>
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
        <translation>Quitar un requisito</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Add a requirement</source>
        <translation>Añadir un requisito</translation>
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
        <translation>Instrumento</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WindowPage</name>
    <message>
        <source>Add a requirement</source>
        <translation>Añadir un requisito</translation>
    </message>
    <message>
        <source>Remove this requirement</source>
        <translation>Quitar este requisito</translation>
    </message>
    <message>
        <source>Save as a new revision</source>
        <translation>Guardar como revisión nueva</translation>
    </message>
    <message>
        <source>Back to the result</source>
        <translation>Volver al resultado</translation>
    </message>
    <message>
        <source>Requirements</source>
        <translation>Requisitos</translation>
    </message>
    <message>
        <source>New revision</source>
        <translation>Revisión nueva</translation>
    </message>
    <message>
        <source>Re&amp;vision</source>
        <translation>Re&amp;visión</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>simple</translation>
    </message>
    <message>
        <source>guarded, w = U</source>
        <translation>con banda de guarda, w = U</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Window being edited</source>
        <translation>Ventana en edición</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Alloy</source>
        <translation>&amp;Aleación</translation>
    </message>
    <message>
        <source>&amp;Liquidus, °C</source>
        <translation>&amp;Liquidus, °C</translation>
    </message>
    <message>
        <source>&amp;Solidus, °C</source>
        <translation>&amp;Solidus, °C</translation>
    </message>
    <message>
        <source>&amp;Decision rule</source>
        <translation>Regla de &amp;decisión</translation>
    </message>
    <message>
        <source>&amp;Classification for Tc</source>
        <translation>&amp;Clasificación para Tc</translation>
    </message>
    <message>
        <source>&amp;Thermocouple</source>
        <translation>&amp;Termopar</translation>
    </message>
    <message>
        <source>&amp;Instrument, ± °C</source>
        <translation>&amp;Instrumento, ± °C</translation>
    </message>
    <message>
        <source>Name of the window</source>
        <translation>Nombre de la ventana</translation>
    </message>
    <message>
        <source>Alloy</source>
        <translation>Aleación</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>Termopar</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Regla de decisión</translation>
    </message>
    <message>
        <source>Classification for Tc</source>
        <translation>Clasificación para Tc</translation>
    </message>
    <message>
        <source>±%1 °C</source>
        <translation>±%1 °C</translation>
    </message>
    <message>
        <source>Every rule for windows is met.</source>
        <translation>Se cumplen todas las reglas para ventanas.</translation>
    </message>
    <message>
        <source>The window was not saved.</source>
        <translation>La ventana no se guardó.</translation>
    </message>
    <message>
        <source>Saved as revision %1: %2</source>
        <translation>Guardada como revisión %1: %2</translation>
    </message>
    <message>
        <source>Save revision %1</source>
        <translation>Guardar la revisión %1</translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ZonesPane</name>
    <message>
        <source>Results outside by zone</source>
        <translation>Resultados fuera por zona</translation>
    </message>
    <message numerus="yes">
        <source>Runs of %n ovens are listed: choose one above, so that each zone is one zone.</source>
        <translation>
            <numerusform>Se muestran pasadas de %n horno: elija uno arriba para que cada zona sea una sola.</numerusform>
            <numerusform>Se muestran pasadas de %n hornos: elija uno arriba para que cada zona sea una sola.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No required result of the %n run(s) listed is outside its limits.</source>
        <translation>
            <numerusform>Ningún resultado exigido de la pasada mostrada está fuera de sus límites.</numerusform>
            <numerusform>Ningún resultado exigido de las %n pasadas mostradas está fuera de sus límites.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n required result(s) are outside, and none traces to a zone: the runs have no oven and recipe, or no zone moves what is outside.</source>
        <translation>
            <numerusform>%n resultado exigido está fuera y no se debe a ninguna zona: la pasada no tiene horno ni receta, o ninguna zona mueve lo que está fuera.</numerusform>
            <numerusform>%n resultados exigidos están fuera y ninguno se debe a una zona: las pasadas no tienen horno ni receta, o ninguna zona mueve lo que está fuera.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Zone %1 leads: %2 of the %n result(s) outside trace to it, in %3 of %4 runs, the last on %5.</source>
        <translation>
            <numerusform>La zona %1 va en cabeza: %2 de %n resultado fuera se debe a ella, en %3 de %4 pasadas, la última el %5.</numerusform>
            <numerusform>La zona %1 va en cabeza: %2 de %n resultados fuera se deben a ella, en %3 de %4 pasadas, la última el %5.</numerusform>
        </translation>
    </message>
    <message>
        <source>Results outside</source>
        <translation>Resultados fuera</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Last on</source>
        <translation>Última vez</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zona %1</translation>
    </message>
    <message>
        <source>A result traces to the zones that move it most, whatever moved it: these are counts of what was judged, no measure of drift.</source>
        <translation>Un resultado se debe a las zonas que más lo mueven, sea lo que sea lo que lo movió: aquí se cuenta lo juzgado, no se mide ninguna deriva.</translation>
    </message>
    <message numerus="yes">
        <source>The %n run(s) of zone %1 have a bar at their left in the list.</source>
        <translation>
            <numerusform>La pasada de la zona %1 tiene una barra a la izquierda en la lista.</numerusform>
            <numerusform>Las %n pasadas de la zona %1 tienen una barra a la izquierda en la lista.</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a zone to find its runs in the list.</source>
        <translation>Elija una zona para encontrar sus pasadas en la lista.</translation>
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
        <translation>Placa</translation>
    </message>
    <message>
        <source>Choose a board to see where each thermocouple sits</source>
        <translation>Elija una placa para ver dónde está cada termopar</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::LimitLanes</name>
    <message>
        <source>Limit lanes</source>
        <translation>Carriles de límites</translation>
    </message>
    <message>
        <source>One row for each requirement, one cell for each thermocouple.</source>
        <translation>Una fila por requisito, una celda por termopar.</translation>
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
        <translation>Carril del lote</translation>
    </message>
</context>
<context>
    <name>ovenwright::widgets::ZoneStrip</name>
    <message>
        <source>Zone strip</source>
        <translation>Banda de zonas</translation>
    </message>
    <message>
        <source>no setpoint</source>
        <translation>sin consigna</translation>
    </message>
    <message>
        <source>top %1, bottom %2</source>
        <translation>superior %1, inferior %2</translation>
    </message>
    <message>
        <source>Zone %1: %2</source>
        <translation>Zona %1: %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3 s from oven entry, %4 to %5 s on the log</source>
        <comment>a placement in a zone</comment>
        <translation>%1 de %2 a %3 s desde la entrada al horno, %4 a %5 s en el registro</translation>
    </message>
    <message>
        <source>B less A: %1</source>
        <comment>the difference of two setpoints</comment>
        <translation>B menos A: %1</translation>
    </message>
    <message>
        <source>B less A: top %1, bottom %2</source>
        <translation>B menos A: superior %1, inferior %2</translation>
    </message>
</context>
</TS>
