package org.bellowscribe.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.BellowsScribe;
import org.bellowscribe.annotation.LeftHandScribe;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.OwnPart;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.OwnScore;
import org.bellowscribe.musicxml.PartAddition;
import org.bellowscribe.musicxml.ScoreDocument;

/** Prints stages. */
public final class StageSheets {

    private static final String LEFT_HAND_FINGERS = "left-hand-fingers";

    private final ScoreDocument sheet;
    private final Style style;
    private final List<String> marks;
    private final Map<Stage, List<String>> lines;

    /**
     * Creates a printer for the stages of one tune.
     *
     * @param sheet the score in the key of the tune's sheet
     * @param style labels and signs
     * @param marks ids of the marks to print
     * @param lines lines of words for the sheets of stages, to stand below the beginning; that of the bellows alone has none
     */
    public StageSheets(ScoreDocument sheet, Style style, List<String> marks, Map<Stage, List<String>> lines) {
        this.sheet = sheet.withoutMarks();
        this.style = style;
        this.marks = List.copyOf(marks);
        this.lines = Map.copyOf(lines);
    }

    /**
     * Returns a stage as a score of its own. Taking our marks out of it gives the score back for the stages of {@link
     * Stage#isScoreWithMarks()}; of the left hand alone the melody in small notes is left.
     */
    public ScoreDocument score(StageTune tune) throws DiagnosedException {
        return switch (tune.stage()) {
            case LEFT_HAND -> leftHand(tune);
            case BELLOWS -> bellows(tune);
            default -> sheet.withMarks(marks(tune));
        };
    }

    /**
     * Returns stages as parts of one score: the first of {@link Stage#isScoreWithMarks()} is the score itself, the others
     * are added behind it. Taking our marks out of it gives the score back.
     *
     * @param stages the stages, none twice
     */
    public ScoreDocument parts(List<StageTune> stages) throws DiagnosedException {
        List<Annotation> first = List.of();
        boolean begun = false;
        List<PartAddition> parts = new ArrayList<>();
        for (StageTune tune : stages) {
            String melody = tune.tune().onSheet().part();
            Stage stage = tune.stage();
            if (stage == Stage.BELLOWS) {
                parts.add(new PartAddition.Own(bellowsPart(tune)));
            } else if (stage == Stage.LEFT_HAND) {
                parts.add(new PartAddition.Own(leftHandPart(tune)));
            } else if (begun) {
                parts.add(new PartAddition.Copy(stage.id(), stage.title(), score(tune), melody));
            } else {
                first = marks(tune);
                begun = true;
            }
        }
        String melody = stages.isEmpty() ? "" : stages.get(0).tune().onSheet().part();
        return sheet.withParts(first, melody, parts);
    }

    private List<Annotation> marks(StageTune tune) throws DiagnosedException {
        List<Annotation> all = new ArrayList<>(StageMarks.of(tune, style, marks));
        all.addAll(lines(tune));
        return all;
    }

    // Sheets of one tune have one title, so each says which stage it is.
    private List<Annotation> lines(StageTune tune) {
        int first = tune.tune().onSheet().events().stream()
                .filter(event -> !event.isGap())
                .findFirst()
                .orElseThrow()
                .firstNoteIndex();
        String name = style.book().say(BookText.valueOf("STAGE_" + tune.stage().name()));
        return Stream.concat(Stream.of(name), lines.getOrDefault(tune.stage(), List.of()).stream())
                .map(line -> (Annotation) new Annotation.Line(first, line))
                .toList();
    }

    private ScoreDocument bellows(StageTune tune) throws DiagnosedException {
        String title =
                "%s: %s".formatted(tune.tune().onSheet().title(), style.book().say(BookText.STAGE_BELLOWS));
        return OwnScore.write(sheet, bellowsPart(tune), title);
    }

    private OwnPart bellowsPart(StageTune tune) throws DiagnosedException {
        Arrangement arrangement = Arrangement.of(tune.tune(), style);
        List<Mark> start = new ArrayList<>(StageMarks.opening(arrangement, marks));
        int first = start.isEmpty()
                ? tune.tune().tune().eventOrder().get(0)
                : start.get(0).event();
        start.add(new Mark.Words(first, Topic.OTHER, style.practice().airHeld()));
        start.addAll(StageMarks.tempo(tune, arrangement));
        return BellowsScribe.part(arrangement, tune.tune().onSheet(), start);
    }

    private ScoreDocument leftHand(StageTune tune) throws DiagnosedException {
        return sheet.withCueNotes(tune.tune().onSheet().part()).withMarks(lines(tune), leftHandPart(tune));
    }

    private OwnPart leftHandPart(StageTune tune) throws DiagnosedException {
        Arrangement arrangement = Arrangement.of(tune.tune(), style);
        List<Mark> start = new ArrayList<>(StageMarks.opening(arrangement, marks));
        start.addAll(StageMarks.tempo(tune, arrangement));
        return LeftHandScribe.alone(arrangement, tune.tune().onSheet(), marks.contains(LEFT_HAND_FINGERS), start);
    }
}
