package org.bellowscribe.cli;

import java.util.List;

/** Pieces of scores that are seldom met, or stand where they make little sense. */
final class OddMusic {

    /** Numbers for durations, octaves, keys, times and the like. */
    static final List<String> NUMBERS = List.of(
            "0",
            "1",
            "2",
            "3",
            "4",
            "5",
            "7",
            "9",
            "12",
            "16",
            "17",
            "-1",
            "-7",
            "0.5",
            "-0.5",
            "3+2",
            "100",
            "768",
            "10080",
            "65536",
            "2147483647",
            "99999999999",
            "1e3",
            " 2 ",
            "X1",
            "");

    /** What may stand between notes. */
    static final List<String> IN_MEASURE = List.of(
            "<note><grace/><pitch><step>E</step><octave>5</octave></pitch><voice>1</voice></note>",
            "<note><grace/><chord/><pitch><step>G</step><octave>5</octave></pitch><voice>1</voice></note>",
            "<note><chord/><pitch><step>D</step><octave>4</octave></pitch><duration>1</duration><voice>1</voice></note>",
            "<note><cue/><pitch><step>D</step><octave>6</octave></pitch><duration>1</duration><voice>1</voice></note>",
            "<note><rest measure=\"yes\"/><duration>4</duration><voice>2</voice></note>",
            "<note><unpitched/><duration>1</duration><voice>1</voice></note>",
            "<note print-object=\"no\"><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration></note>",
            "<note><pitch><step>B</step><octave>4</octave></pitch><duration>1</duration><voice>9</voice></note>",
            "<backup><duration>1</duration></backup>",
            "<backup><duration>1000</duration></backup>",
            "<forward><duration>1</duration></forward>",
            "<forward><duration>1000000</duration></forward>",
            "<attributes><divisions>7</divisions></attributes>",
            "<attributes><time><beats>5</beats><beat-type>16</beat-type></time></attributes>",
            "<attributes><time><senza-misura/></time></attributes>",
            "<attributes><transpose><chromatic>3</chromatic></transpose></attributes>",
            "<attributes><clef><sign>percussion</sign></clef></attributes>",
            "<attributes><measure-style><multiple-rest>4</multiple-rest></measure-style></attributes>",
            "<attributes><measure-style><measure-repeat type=\"start\">1</measure-repeat></measure-style></attributes>",
            "<direction><direction-type><words>D.C. al Fine</words></direction-type></direction>",
            "<direction><direction-type><words>Fine</words></direction-type><sound fine=\"yes\"/></direction>",
            "<direction><direction-type><segno/></direction-type></direction>",
            "<direction><direction-type><coda/></direction-type><sound tocoda=\"x\"/></direction>",
            "<direction><direction-type><words>push, open 1/2</words></direction-type></direction>",
            "<direction id=\"bellowscribe-w1\"><direction-type><words>air</words></direction-type></direction>",
            "<direction><direction-type><octave-shift type=\"down\" size=\"8\"/></direction-type></direction>",
            "<sound tempo=\"1000000\"/>",
            "<sound tempo=\"0.001\"/>",
            "<sound dalsegno=\"s\"/>",
            "<sound segno=\"s\" coda=\"s\" tocoda=\"s\" fine=\"yes\" dacapo=\"yes\"/>",
            "<harmony><root><root-step>F</root-step><root-alter>1</root-alter></root><kind>half-diminished</kind></harmony>",
            "<harmony><root><root-step>G</root-step></root><kind>other</kind>"
                    + "<degree><degree-value>9</degree-value><degree-alter>1</degree-alter>"
                    + "<degree-type>add</degree-type></degree></harmony>",
            "<harmony><function>V</function><kind>dominant</kind></harmony>",
            "<harmony><root><root-step>C</root-step></root><kind/><offset>-100</offset></harmony>",
            "<harmony><root><root-step>A</root-step></root><kind>minor</kind></harmony>",
            "<harmony id=\"bellowscribe-h1\"><root><root-step>A</root-step></root><kind>minor</kind></harmony>",
            "<barline><repeat direction=\"backward\"/></barline>",
            "<print new-system=\"yes\"/>",
            "<!-- <note><rest/></note> -->",
            "<?note <note>?>");

    /** What may stand in a note, not always at its end. */
    static final List<String> IN_NOTE = List.of(
            "<tie type=\"start\"/>",
            "<tie type=\"stop\"/>",
            "<notations><tied type=\"start\"/></notations>",
            "<notations><tied type=\"let-ring\"/><fermata/></notations>",
            "<notations><ornaments><tremolo>3</tremolo></ornaments></notations>",
            "<notations><technical><fingering>7</fingering></technical></notations>",
            "<notations><technical><fingering id=\"bellowscribe-f1\">2</fingering></technical></notations>",
            "<notations><tuplet type=\"start\" number=\"1\"/></notations>",
            "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>",
            "<time-modification><actual-notes>0</actual-notes><normal-notes>0</normal-notes></time-modification>",
            "<dot/>",
            "<accidental>quarter-flat</accidental>",
            "<notehead>slash</notehead>",
            "<lyric number=\"1\"><text>la</text></lyric>",
            "<lyric number=\"1\" name=\"bellowscribe-buttons\"><text>3!</text></lyric>",
            "<lyric name=\"bellowscribe-left-hand\"><text>zz!</text></lyric>",
            "<lyric number=\"verse\"><text>&#x202E;&#x85;</text><extend/></lyric>",
            "<lyric><humming/></lyric>",
            "<play><mute>on</mute></play>",
            "<voice>2</voice>",
            "<staff>2</staff>",
            "<chord/>",
            "<grace/>",
            "<rest/>",
            "<duration>3</duration>");

    /** What may stand at the start of a measure. */
    static final List<String> AT_BAR = List.of(
            "<barline location=\"left\"><repeat direction=\"forward\"/></barline>",
            "<barline location=\"right\"><repeat direction=\"backward\"/></barline>",
            "<barline location=\"right\"><repeat direction=\"backward\" times=\"7\"/></barline>",
            "<barline location=\"left\"><ending number=\"1\" type=\"start\"/></barline>",
            "<barline location=\"left\"><ending number=\"1,2-4\" type=\"start\"/></barline>",
            "<barline location=\"right\"><ending number=\"1\" type=\"stop\"/><repeat direction=\"backward\"/></barline>",
            "<barline location=\"right\"><ending number=\"2\" type=\"discontinue\"/></barline>",
            "<barline location=\"right\"><bar-style>light-heavy</bar-style></barline>",
            "<barline location=\"middle\"><bar-style>dashed</bar-style></barline>",
            "<attributes><key><fifths>-6</fifths></key></attributes>",
            "<attributes><key><key-step>F</key-step><key-alter>1</key-alter></key></attributes>",
            "<attributes><time symbol=\"single-number\"><beats>3+2</beats><beat-type>8</beat-type></time></attributes>",
            "<attributes><time><beats>2</beats><beat-type>4</beat-type><beats>3</beats><beat-type>8</beat-type>"
                    + "</time></attributes>",
            "<attributes><staves>3</staves><instruments>2</instruments></attributes>",
            "<attributes><divisions>0</divisions></attributes>");

    private OddMusic() {}
}
