package org.bellowscribe.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.solver.Step;

/** The marks of a stage at the notes of the score. */
final class StageMarks {

    private static final Set<String> OF_LEFT_HAND = Set.of("left-hand", "left-hand-fingers", "chord-symbols");

    private static final String OPENING = "opening";

    private StageMarks() {}

    /**
     * Returns the marks of a stage in which the right hand plays.
     *
     * @param ids ids of the marks to print
     */
    static List<Annotation> of(StageTune tune, Style style, List<String> ids) throws DiagnosedException {
        Arrangement arrangement = Arrangement.of(tune.tune(), style);
        List<String> printed = tune.stage().leftHand()
                ? ids
                : ids.stream().filter(id -> !OF_LEFT_HAND.contains(id)).toList();
        Fading fading = fades(tune.stage()) ? new Fading(tune, arrangement) : null;
        return Annotators.annotate(
                arrangement,
                printed,
                mark -> fading == null || fading.keeps(mark),
                List.copyOf(tempo(tune, arrangement)));
    }

    private static boolean fades(Stage stage) {
        return stage == Stage.FADING || stage == Stage.AS_PLAYED;
    }

    /**
     * Returns the words for the opening at the start; none if they are not printed.
     *
     * @param ids ids of the marks to print
     */
    static List<Mark> opening(Arrangement arrangement, List<String> ids) throws DiagnosedException {
        List<Mark> marks = new ArrayList<>();
        for (Annotator annotator : Annotators.find(List.of(OPENING))) {
            marks.addAll(ids.contains(OPENING) ? annotator.marks(arrangement) : List.of());
        }
        return marks;
    }

    /** Returns the words for the tempo of a stage; none if it is that of the tune. */
    static List<Mark.Words> tempo(StageTune tune, Arrangement arrangement) {
        List<Mark.Words> marks = new ArrayList<>();
        if (tune.hasOwnTempo()) {
            String text = arrangement.style().practice().tempo().with("percent", tune.percent());
            arrangement.notes().stream()
                    .map(Step::event)
                    .findFirst()
                    .ifPresent(event -> marks.add(new Mark.Words(event.index(), Topic.TEMPO, text)));
        }
        return marks;
    }
}
