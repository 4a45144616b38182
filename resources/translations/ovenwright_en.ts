<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US">
<context>
    <name>Archive</name>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) wait on this computer and are sent when it is back.</source>
        <translation>
            <numerusform>%n run waits on this computer and is sent when it is back.</numerusform>
            <numerusform>%n runs wait on this computer and are sent when it is back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n waiting to be sent</source>
        <translation>
            <numerusform>%n waiting to be sent</numerusform>
            <numerusform>%n waiting to be sent</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 away, %n record(s) wait here</source>
        <translation>
            <numerusform>Archive: %1 away, %n record waits here</numerusform>
            <numerusform>Archive: %1 away, %n records wait here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Archive: %1 refuses, %n record(s) wait here</source>
        <translation>
            <numerusform>Archive: %1 refuses, %n record waits here</numerusform>
            <numerusform>Archive: %1 refuses, %n records wait here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n refused by the server and kept here</source>
        <translation>
            <numerusform>%n refused by the server and kept here</numerusform>
            <numerusform>%n refused by the server and kept here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>So are %n more.</source>
        <translation>
            <numerusform>So is %n more.</numerusform>
            <numerusform>So are %n more.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Compare</name>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thermocouple(s) in common</source>
        <translation>
            <numerusform>%n thermocouple in common</numerusform>
            <numerusform>%n thermocouples in common</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DropFrame</name>
    <message numerus="yes">
        <source>Drop to read %n log(s)</source>
        <translation>
            <numerusform>Drop to read %n log</numerusform>
            <numerusform>Drop to read %n logs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LotLane</name>
    <message numerus="yes">
        <source>each of the %n run(s)</source>
        <translation>
            <numerusform>the one run</numerusform>
            <numerusform>each of the %n runs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LotWords</name>
    <message numerus="yes">
        <source>%1: such a chart takes two subgroups of %n runs.</source>
        <translation>
            <numerusform>%1: such a chart takes two subgroups of %n run.</numerusform>
            <numerusform>%1: such a chart takes two subgroups of %n runs.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: the weighted average stays within its limits over %n runs.</source>
        <translation>
            <numerusform>%1: the weighted average stays within its limits over %n run.</numerusform>
            <numerusform>%1: the weighted average stays within its limits over %n runs.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no signal in %n runs by the %2.</source>
        <translation>
            <numerusform>%1: no signal in %n run by the %2.</numerusform>
            <numerusform>%1: no signal in %n runs by the %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 has been above its centre line for %n subgroup, since %2.</numerusform>
            <numerusform>%1 has been above its centre line for %n subgroups, since %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n subgroups, since %2.</source>
        <translation>
            <numerusform>%1 has been below its centre line for %n subgroup, since %2.</numerusform>
            <numerusform>%1 has been below its centre line for %n subgroups, since %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been above its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 has been above its centre line for %n run, since %2.</numerusform>
            <numerusform>%1 has been above its centre line for %n runs, since %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has been below its centre line for %n runs, since %2.</source>
        <translation>
            <numerusform>%1 has been below its centre line for %n run, since %2.</numerusform>
            <numerusform>%1 has been below its centre line for %n runs, since %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 signals, last on %2: %3; %n signals in all.</source>
        <translation>
            <numerusform>%1 signals, last on %2: %3; %n signal in all.</numerusform>
            <numerusform>%1 signals, last on %2: %3; %n signals in all.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are few: whether the values are normal does not show, and the limits of the index are wide.</source>
        <translation>
            <numerusform>%n run is few: whether the values are normal does not show, and the limits of the index are wide.</numerusform>
            <numerusform>%n runs are few: whether the values are normal does not show, and the limits of the index are wide.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) without a value</source>
        <translation>
            <numerusform>%n run without a value</numerusform>
            <numerusform>%n runs without a value</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) with a bound only</source>
        <translation>
            <numerusform>%n run with a bound only</numerusform>
            <numerusform>%n runs with a bound only</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>an index takes %n runs</source>
        <translation>
            <numerusform>an index takes %n run</numerusform>
            <numerusform>an index takes %n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) measured by another definition, which has an entry of its own.</source>
        <translation>
            <numerusform>%n run measured by another definition, which has an entry of its own.</numerusform>
            <numerusform>%n runs measured by another definition, which has an entry of its own.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SentenceStates</name>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n warning</numerusform>
            <numerusform>%n warnings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 rows in %n channel(s).</source>
        <translation>
            <numerusform>%1 rows in %n channel.</numerusform>
            <numerusform>%1 rows in %n channels.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message numerus="yes">
        <source>%n different</source>
        <translation>
            <numerusform>%n different</numerusform>
            <numerusform>%n different</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>The run passes.</numerusform>
            <numerusform>All %n runs pass.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n runs pass.</source>
        <comment>of a lot</comment>
        <translation>
            <numerusform>%1 of %n run passes.</numerusform>
            <numerusform>%1 of %n runs pass.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n signals of the control charts.</source>
        <translation>
            <numerusform>%n signal of the control charts.</numerusform>
            <numerusform>%n signals of the control charts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n records, head %2</source>
        <translation>
            <numerusform>%1: %n record, head %2</numerusform>
            <numerusform>%1: %n records, head %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Tune</name>
    <message numerus="yes">
        <source>%n zones</source>
        <translation>
            <numerusform>%n zone</numerusform>
            <numerusform>%n zones</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Wording</name>
    <message numerus="yes">
        <source>%n pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n pass</numerusform>
            <numerusform>%n pass</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional pass</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n conditional pass</numerusform>
            <numerusform>%n conditional pass</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n conditional fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n conditional fail</numerusform>
            <numerusform>%n conditional fail</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fail</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n fail</numerusform>
            <numerusform>%n fail</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n undetermined</source>
        <comment>results</comment>
        <translation>
            <numerusform>%n undetermined</numerusform>
            <numerusform>%n undetermined</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Smallest margin of the other %n</source>
        <comment>results that have a value</comment>
        <translation>
            <numerusform>Smallest margin of the other %n</numerusform>
            <numerusform>Smallest margin of the other %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n informative results over their limits</source>
        <translation>
            <numerusform>%n informative result over its limit</numerusform>
            <numerusform>%n informative results over their limits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in the mean of %n runs</source>
        <translation>
            <numerusform>%1 in %n run</numerusform>
            <numerusform>%1 in the mean of %n runs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ArchivePicker</name>
    <message numerus="yes">
        <source>%n runs are marked: %1 at most.</source>
        <translation>
            <numerusform>%n run is marked: %1 at most.</numerusform>
            <numerusform>%n runs are marked: %1 at most.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ChannelsPanel</name>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s)</source>
        <translation>
            <numerusform>%n sample</numerusform>
            <numerusform>%n samples</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CheckPage</name>
    <message numerus="yes">
        <source>Temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>Temperature over time, %n thermocouple</numerusform>
            <numerusform>Temperature over time, %n thermocouples</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::CompareBar</name>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ComparePage</name>
    <message numerus="yes">
        <source>%1: temperature over time, %n thermocouples</source>
        <comment>letter of a run</comment>
        <translation>
            <numerusform>%1: temperature over time, %n thermocouple</numerusform>
            <numerusform>%1: temperature over time, %n thermocouples</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FileModel</name>
    <message numerus="yes">
        <source>%n row(s) more</source>
        <translation>
            <numerusform>%n row more</numerusform>
            <numerusform>%n rows more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::FilterBar</name>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::GroupPicker</name>
    <message numerus="yes">
        <source>%1: %n runs</source>
        <comment>a recipe, lot, oven or board</comment>
        <translation>
            <numerusform>%1: %n run</numerusform>
            <numerusform>%1: %n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A has %n runs</source>
        <translation>
            <numerusform>A has %n run</numerusform>
            <numerusform>A has %n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>B has %n runs.</source>
        <translation>
            <numerusform>B has %n run.</numerusform>
            <numerusform>B has %n runs.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::KeepForm</name>
    <message numerus="yes">
        <source>all %n runs of this log</source>
        <translation>
            <numerusform>the %n run of this log</numerusform>
            <numerusform>all %n runs of this log</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all %n open logs</source>
        <translation>
            <numerusform>the %n open log</numerusform>
            <numerusform>all %n open logs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs are kept in lot %1, as %2 to %3.</source>
        <translation>
            <numerusform>%n run is kept in lot %1, as %2 to %3.</numerusform>
            <numerusform>%n runs are kept in lot %1, as %2 to %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more are kept already.</source>
        <translation>
            <numerusform>%n more is kept already.</numerusform>
            <numerusform>%n more are kept already.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotSheetPanel</name>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n page</numerusform>
            <numerusform>%n pages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::LotsPage</name>
    <message numerus="yes">
        <source>%n run(s) in the list</source>
        <translation>
            <numerusform>%n run in the list</numerusform>
            <numerusform>%n runs in the list</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n marked</source>
        <translation>
            <numerusform>%n marked</numerusform>
            <numerusform>%n marked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) exported as %1.</source>
        <translation>
            <numerusform>%n run exported as %1.</numerusform>
            <numerusform>%n runs exported as %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::MainWindow</name>
    <message numerus="yes">
        <source>%1: %2 rows, every %3 s, %n channel(s)</source>
        <translation>
            <numerusform>%1: %2 rows, every %3 s, %n channel</numerusform>
            <numerusform>%1: %2 rows, every %3 s, %n channels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be read: %1.</source>
        <translation>
            <numerusform>%n more could not be read: %1.</numerusform>
            <numerusform>%n more could not be read: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Watching %1: %n kept</source>
        <translation>
            <numerusform>Watching %1: %n kept</numerusform>
            <numerusform>Watching %1: %n kept</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n not judged</numerusform>
            <numerusform>%n not judged</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n assumed</source>
        <comment>things about the reading</comment>
        <translation>
            <numerusform>%n assumed</numerusform>
            <numerusform>%n assumed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ReadingPanel</name>
    <message numerus="yes">
        <source>The %n line(s) before it are kept as notes.</source>
        <translation>
            <numerusform>The line before it is kept as a note.</numerusform>
            <numerusform>The %n lines before it are kept as notes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n cell(s) without a reading</source>
        <translation>
            <numerusform>%1: %n cell without a reading</numerusform>
            <numerusform>%1: %n cells without a reading</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Every row that is shown has %n cell(s).</source>
        <translation>
            <numerusform>Every row that is shown has %n cell.</numerusform>
            <numerusform>Every row that is shown has %n cells.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other(s) in the file may be a log as well.</source>
        <translation>
            <numerusform>%n other in the file may be a log as well.</numerusform>
            <numerusform>%n others in the file may be a log as well.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::SeveralLots</name>
    <message numerus="yes">
        <source>%n of these files are in the folder already.</source>
        <translation>
            <numerusform>%n of these files is in the folder already.</numerusform>
            <numerusform>%n of these files are in the folder already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheets are written.</source>
        <translation>
            <numerusform>%1 of %n sheet is written.</numerusform>
            <numerusform>%1 of %n sheets are written.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more could not be made.</source>
        <translation>
            <numerusform>%n more could not be made.</numerusform>
            <numerusform>%n more could not be made.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Write %n sheet(s)</source>
        <translation>
            <numerusform>&amp;Write %n sheet</numerusform>
            <numerusform>&amp;Write %n sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::TunePage</name>
    <message numerus="yes">
        <source>Predicted and measured temperature over time, %n thermocouples</source>
        <translation>
            <numerusform>Predicted and measured temperature over time, %n thermocouple</numerusform>
            <numerusform>Predicted and measured temperature over time, %n thermocouples</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::WatchWindow</name>
    <message numerus="yes">
        <source>%n run(s) kept</source>
        <translation>
            <numerusform>%n run kept</numerusform>
            <numerusform>%n runs kept</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) not judged.</source>
        <translation>
            <numerusform>%n file not judged.</numerusform>
            <numerusform>%n files not judged.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ovenwright::desktop::ZonesPane</name>
    <message numerus="yes">
        <source>Runs of %n ovens are listed: choose one above, so that each zone is one zone.</source>
        <translation>
            <numerusform>Runs of %n oven are listed: choose one above, so that each zone is one zone.</numerusform>
            <numerusform>Runs of %n ovens are listed: choose one above, so that each zone is one zone.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No required result of the %n run(s) listed is outside its limits.</source>
        <translation>
            <numerusform>No required result of the run listed is outside its limits.</numerusform>
            <numerusform>No required result of the %n runs listed is outside its limits.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n required result(s) are outside, and none traces to a zone: the runs have no oven and recipe, or no zone moves what is outside.</source>
        <translation>
            <numerusform>%n required result is outside and traces to no zone: the run has no oven and recipe, or no zone moves what is outside.</numerusform>
            <numerusform>%n required results are outside, and none traces to a zone: the runs have no oven and recipe, or no zone moves what is outside.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Zone %1 leads: %2 of the %n result(s) outside trace to it, in %3 of %4 runs, the last on %5.</source>
        <translation>
            <numerusform>Zone %1 leads: %2 of %n result outside traces to it, in %3 of %4 runs, the last on %5.</numerusform>
            <numerusform>Zone %1 leads: %2 of the %n results outside trace to it, in %3 of %4 runs, the last on %5.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n run(s) of zone %1 have a bar at their left in the list.</source>
        <translation>
            <numerusform>The run of zone %1 has a bar at its left in the list.</numerusform>
            <numerusform>The %n runs of zone %1 have a bar at their left in the list.</numerusform>
        </translation>
    </message>
</context>
</TS>
