package org.bellowscribe.solver.reason;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.UnlikePlay;

/** Says which equal measures are played differently, and what it would cost to play them the same. */
public final class UnlikeRemark {

    private UnlikeRemark() {}

    /** Returns one note for all of them. */
    public static Diagnostic of(Tune tune, List<UnlikePlay> unlike) {
        String list = unlike.stream().map(measure -> describe(tune, measure)).collect(Collectors.joining("; "));
        return Diagnostic.note(
                DiagnosticCode.UNLIKE_MEASURES, Place.FILE, "Not played as their equals: %s.".formatted(list));
    }

    private static String describe(Tune tune, UnlikePlay unlike) {
        Integer dearer = unlike.dearer();
        String price = dearer == null
                ? "no other marks were found"
                : "the same would cost %s more".formatted(dearer == 1 ? "1 point" : dearer + " points");
        return "measure %s as measure %s (%s)"
                .formatted(name(tune, unlike.measure()), name(tune, unlike.fellow()), price);
    }

    private static String name(Tune tune, int index) {
        Measure measure = tune.measures().get(index);
        return measure.number().isEmpty() ? String.valueOf(index + 1) : measure.number();
    }
}
