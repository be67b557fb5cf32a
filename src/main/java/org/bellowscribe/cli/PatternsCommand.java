package org.bellowscribe.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.accompaniment.Pattern;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;

/** Shows patterns of the left hand. */
final class PatternsCommand extends LibraryCommand<Pattern> {

    private static final List<TimeSignature> TIMES =
            List.of(new TimeSignature(2, 4), new TimeSignature(3, 4), new TimeSignature(4, 4), new TimeSignature(6, 8));

    PatternsCommand() {
        super(PatternLibrary.library());
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the patterns of the left hand; show tells what one of them, or a pattern"
                + " file, plays in the usual times; check looks for what is wrong in a file.";
    }

    @Override
    String title(Pattern shown) {
        return shown.id();
    }

    @Override
    String list() {
        StringBuilder text = new StringBuilder();
        for (Pattern pattern : PatternLibrary.all()) {
            text.append("  %-20s %s%n".formatted(pattern.id(), pattern.summary()));
        }
        return text.toString();
    }

    @Override
    String show(Pattern pattern) {
        StringBuilder text = new StringBuilder("%s%n  %s%n".formatted(pattern.id(), pattern.summary()));
        for (TimeSignature time : TIMES) {
            String strokes = pattern.strokes(time).stream()
                    .map(stroke -> sound(stroke) + " " + quarters(stroke.onset().plus(Fraction.QUARTER)))
                    .collect(Collectors.joining(", "));
            text.append("  %s: %s%n".formatted(time, strokes));
        }
        return text.append("  Numbers count quarters from 1 at the bar line.%n".formatted())
                .toString();
    }

    private static String sound(Pattern.Stroke stroke) {
        String kind = stroke.kind().label();
        return switch (stroke.tone()) {
            case ROOT -> kind;
            case THIRD -> kind + " on the third";
            case FIFTH -> kind + " on the fifth";
        };
    }

    private static String quarters(Fraction time) {
        return time.denominator() == 1 ? String.valueOf(time.numerator()) : time.toString();
    }
}
