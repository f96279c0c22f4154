<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message numerus="yes">
        <source>%n place(s) in the tables must be mended first. Each line names the file, the row and the column.</source>
        <translation>
            <numerusform>%n place in the tables must be mended first. Each line names the file, the row and the column.</numerusform>
            <numerusform>%n places in the tables must be mended first. Each line names the file, the row and the column.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::AdvicePanel</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::CloseRoundPanel</name>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is closed.</source>
        <translation>
            <numerusform>%n item needs a reading or a reason before round %1 is closed.</numerusform>
            <numerusform>%n items need a reading or a reason before round %1 is closed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Round %1 can be closed; %n reading(s) do not fit the others.</source>
        <translation>
            <numerusform>Round %1 can be closed; %n reading does not fit the others.</numerusform>
            <numerusform>Round %1 can be closed; %n readings do not fit the others.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mark %n as Not Turned</source>
        <translation>
            <numerusform>Mark %n as Not Turned</numerusform>
            <numerusform>Mark %n as Not Turned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is sent.</source>
        <translation>
            <numerusform>%n item needs a reading or a reason before round %1 is sent.</numerusform>
            <numerusform>%n items need a reading or a reason before round %1 is sent.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::CommentPanel</name>
    <message numerus="yes">
        <source>Comments (%n open)</source>
        <translation>
            <numerusform>Comments (%n open)</numerusform>
            <numerusform>Comments (%n open)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::ImportDialog</name>
    <message numerus="yes">
        <source>&amp;Import %n Row(s)</source>
        <translation>
            <numerusform>&amp;Import %n Row</numerusform>
            <numerusform>&amp;Import %n Rows</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) must be mended or left out.</source>
        <translation>
            <numerusform>%n row must be mended or left out.</numerusform>
            <numerusform>%n rows must be mended or left out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::JobStrip</name>
    <message numerus="yes">
        <source>%n to decide</source>
        <translation>
            <numerusform>%n to decide</numerusform>
            <numerusform>%n to decide</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::MainWindow</name>
    <message numerus="yes">
        <source>%n open comment(s)</source>
        <translation>
            <numerusform>%n open comment</numerusform>
            <numerusform>%n open comments</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::MergeDialog</name>
    <message numerus="yes">
        <source>%n action(s) will be taken over as one step for undo.</source>
        <translation>
            <numerusform>%n action will be taken over as one step for undo.</numerusform>
            <numerusform>%n actions will be taken over as one step for undo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) only there will be added.</source>
        <translation>
            <numerusform>%n reading only there will be added.</numerusform>
            <numerusform>%n readings only there will be added.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) read alike on both: nothing to do.</source>
        <translation>
            <numerusform>%n place reads alike on both: nothing to do.</numerusform>
            <numerusform>%n places read alike on both: nothing to do.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ: pick now or later, none is picked yet.</source>
        <translation>
            <numerusform>%n value differs: pick now or later, it is not picked yet.</numerusform>
            <numerusform>%n values differ: pick now or later, none is picked yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ between the laptops. What you do not pick stays open.</source>
        <translation>
            <numerusform>%n value differs between the laptops. What you do not pick stays open.</numerusform>
            <numerusform>%n values differ between the laptops. What you do not pick stays open.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::OpenRoundPanel</name>
    <message numerus="yes">
        <source>%n mandatory line(s) of readiness are open, the first: %1. A supervisor may let the survey begin and say why.</source>
        <translation>
            <numerusform>%n mandatory line of readiness is open: %1. A supervisor may let the survey begin and say why.</numerusform>
            <numerusform>%n mandatory lines of readiness are open, the first: %1. A supervisor may let the survey begin and say why.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::ReviewPlace</name>
    <message numerus="yes">
        <source>%n doubtful</source>
        <translation>
            <numerusform>%n doubtful</numerusform>
            <numerusform>%n doubtful</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n corrected</source>
        <translation>
            <numerusform>%n corrected</numerusform>
            <numerusform>%n corrected</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::SystemPlace</name>
    <message numerus="yes">
        <source>%n terminal(s)</source>
        <translation>
            <numerusform>%n terminal</numerusform>
            <numerusform>%n terminals</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n terminal(s) without a valve table</source>
        <translation>
            <numerusform>%n terminal without a valve table</numerusform>
            <numerusform>%n terminals without a valve table</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::schematic::SchematicView</name>
    <message numerus="yes">
        <source>%n branch(es). Arrow keys follow the pipe, Enter opens the valve.</source>
        <translation>
            <numerusform>%n branch. Arrow keys follow the pipe, Enter opens the valve.</numerusform>
            <numerusform>%n branches. Arrow keys follow the pipe, Enter opens the valve.</numerusform>
        </translation>
    </message>
</context>
</TS>
