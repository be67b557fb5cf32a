package org.bellowscribe.musicxml.read;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How much the printed name of a part says for or against it as the melody. Common practice, no source. */
final class NameClaim {

    /** Words that say something, and what: more than 0 for the melody. */
    private record Words(double points, Pattern pattern) {

        Words(double points, String pattern) {
            this(points, Pattern.compile(pattern));
        }
    }

    private static final List<Words> WORDS = List.of(
            new Words(
                    4,
                    "voice|vocal|\\bvox|voix|voce|stimme|gesang|singer|canto|chant|sopran|cantus|di[sz]kant|discant"
                            + "|treble|\\blead|\\bsolo|\\btune|\\bair\\b|right|\\br\\.? ?h\\b|rechte|droite"),
            new Words(
                    2,
                    "melodeon|violin|violon\\b|geige|fiddle|flute|fl\u00f6te|flauto|flauta|oboe|clarinet|klarinette|recorder|whistle"
                            + "|\\bpipe|trumpet|trompet|cornet|mandolin|accord[ei]on|akkordeon|concertina|harmonica|saxo"),
            new Words(-3, "\\balto?\\b|altus|contralto|tenor|viola|bratsche|descant|obbligato|counter"),
            new Words(-4, "second|backing|harmony|neben"),
            new Words(
                    -4,
                    "piano|klavier|cembalo|harpsichord|orgel|organ\\b|guitar|gitarre|ukulele|banjo|\\bharp\\b|harfe|chord"
                            + "|akkorde|accomp|begleit|drum|percussion|schlagzeug|timpani|rhythm|\\bcomp|left|\\bl\\.? ?h\\b"
                            + "|linke|gauche"),
            new Words(-6, "bass|ba\u00df|cello|tuba|fagott|trombone|posaune|bassi\\b"));

    /** What the part is, whatever plays it. */
    private static final Pattern MELODY =
            Pattern.compile("m[e\u00e9]lod(y|ie|ia)|\\blead|\\bsolo|\\btune|principal|haupt");

    private static final double IS_MELODY = 8;
    /** A part that is only counted has no name. */
    private static final Pattern UNNAMED = Pattern.compile("(musicxml |midi )?(part|staff|track|instrument)?[ .]*\\d*");

    private static final Pattern LATER = Pattern.compile("\\b(?:([2-9])(?:nd|rd|th)?|(i{2,3}|iv))\\b");
    private static final double PER_NUMBER = -1.5;

    private NameClaim() {}

    /** Returns points for a name; less than 0 if it is rather that of an accompaniment. */
    static double points(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        if (UNNAMED.matcher(plain).matches()) {
            return 0;
        }
        double points = MELODY.matcher(plain).find() ? IS_MELODY : 0;
        for (Words words : WORDS) {
            points += points < IS_MELODY && words.pattern().matcher(plain).find() ? words.points() : 0;
        }
        // The second violin is not the first; a third is hardly less than a second.
        Matcher later = LATER.matcher(plain);
        return later.find() ? points + PER_NUMBER : points;
    }
}
