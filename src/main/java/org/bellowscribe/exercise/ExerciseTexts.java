package org.bellowscribe.exercise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.PartSyllable;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.mark.OpeningText;
import org.bellowscribe.annotation.style.Template;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Step;
import org.jspecify.annotations.Nullable;

/** What stands above and below the notes of exercises: the marks of the tune at these notes, with counts. */
final class ExerciseTexts {

    private static final List<String> LINES = List.of("buttons", "also-buttons", "left-hand", "counts");
    private static final String COUNTS = "counts";
    private static final String AIR = "air-on-count";

    private final Arrangement arrangement;
    private final boolean fingers;
    private final Whereabouts places;
    private final Set<String> lines = new LinkedHashSet<>();
    private final Map<Integer, Map<String, String>> below = new HashMap<>();
    private final Map<Integer, String> air = new TreeMap<>();
    private final Map<Integer, String> hand = new HashMap<>();
    /** The row that bare numbers belong to, in force at each event; without entries on one row. */
    private final Map<Integer, String> row = new HashMap<>();

    /**
     * Collects the marks.
     *
     * @param marks ids of the marks of the tune's sheet
     */
    ExerciseTexts(Arrangement arrangement, List<String> marks) throws DiagnosedException {
        this.arrangement = arrangement;
        fingers = marks.contains("fingers");
        places = new Whereabouts(arrangement.tune());
        List<String> ids = LINES.stream()
                .filter(id -> marks.contains(id) || id.equals(COUNTS))
                .toList();
        for (Annotator annotator : Annotators.find(ids)) {
            for (Mark mark : annotator.marks(arrangement)) {
                if (mark instanceof Mark.Syllable syllable) {
                    lines.add(syllable.line());
                    below.computeIfAbsent(syllable.event(), any -> new HashMap<>())
                            .putIfAbsent(syllable.line(), syllable.text());
                }
                if (mark instanceof Mark.Words words && words.topic() == Topic.ROW) {
                    row.put(words.event(), words.text());
                }
            }
        }
        collectWords();
    }

    private void collectWords() throws DiagnosedException {
        WordLabels labels = arrangement.style().words();
        Map<Integer, String> directions = new HashMap<>();
        for (Mark mark : Annotators.find(List.of(AIR)).get(0).marks(arrangement)) {
            if (mark instanceof Mark.Words words) {
                if (words.topic() == Topic.DIRECTION) {
                    directions.put(words.event(), words.text());
                } else {
                    String way = directions.get(words.event());
                    air.put(words.event(), way == null ? words.text() : labels.directionAndAir(way, words.text()));
                }
            }
        }
        inForce(row);
        Map<Integer, String> places = new TreeMap<>();
        for (Mark mark : Annotators.find(List.of("hand")).get(0).marks(arrangement)) {
            places.put(mark.event(), ((Mark.Words) mark).text());
        }
        hand.putAll(places);
        inForce(hand);
    }

    // What holds until something else is told.
    private void inForce(Map<Integer, String> told) {
        String last = "";
        for (Step step : arrangement.solution().steps()) {
            last = told.getOrDefault(step.event().index(), last);
            told.put(step.event().index(), last);
        }
    }

    /** Returns the texts below a note, a filler in every line that has nothing to say there. */
    List<PartSyllable> below(int event) {
        Map<String, String> own = below.getOrDefault(event, Map.of());
        List<PartSyllable> all = new ArrayList<>();
        for (String line : lines) {
            all.add(new PartSyllable(
                    line,
                    all.size() + 1,
                    own.getOrDefault(line, arrangement.style().filler())));
        }
        return all;
    }

    /** Returns the fingers at a note; none if they are not printed. */
    List<Integer> fingers(int event) {
        return fingers ? arrangement.step(event).fingers() : List.of();
    }

    /**
     * Returns the words above a note of an exercise; empty for none.
     *
     * @param number which exercise it is, from 1
     */
    String above(Exercise exercise, int event, int number) {
        List<String> words = new ArrayList<>();
        String pressed = exercise instanceof Exercise.LeftHandRun ? null : air.get(event);
        int place = exercise.events().indexOf(event);
        if (place == 0) {
            start(exercise, number, pressed, words);
        } else {
            add(words, pressed);
            add(words, row(exercise, place));
            add(words, hand(exercise, place));
        }
        if (exercise instanceof Exercise.AirMeasure
                && place > 0
                && place == exercise.events().size() - 1) {
            words.add(OpeningText.after(arrangement.step(event), arrangement));
        }
        return String.join(arrangement.style().words().between(), words);
    }

    // At the second note, where there is room for it.
    private @Nullable String row(Exercise exercise, int place) {
        boolean here = place == Math.min(1, exercise.events().size() - 1);
        return here && !(exercise instanceof Exercise.LeftHandRun)
                ? row.get(exercise.events().get(place))
                : null;
    }

    // At the second note, where there is room for it, and wherever it is another; at the first if it is another at
    // once.
    private String hand(Exercise exercise, int place) {
        if (exercise instanceof Exercise.LeftHandRun || exercise.events().size() < 2) {
            return "";
        }
        String here = hand.getOrDefault(exercise.events().get(place), "");
        if (place == 0) {
            String next = hand.getOrDefault(exercise.events().get(1), "");
            return next.equals(here) ? "" : here;
        }
        String before = hand.getOrDefault(exercise.events().get(place - 1), "");
        return place == 1 || !before.equals(here) ? here : "";
    }

    private void start(Exercise exercise, int number, @Nullable String pressed, List<String> words) {
        Step step = arrangement.step(exercise.events().get(0));
        String measure = places.measures().get(step.event().measure());
        Template label = new Template(arrangement.style().practice().exercise().with("number", number));
        words.add(label.with("measure", measure));
        String way = arrangement.style().words().direction(step.direction());
        if (pressed == null || !pressed.startsWith(way)) {
            words.add(way);
        }
        add(words, pressed);
        add(words, row(exercise, 0));
        add(words, hand(exercise, 0));
        if (exercise instanceof Exercise.Chunk chunk) {
            Template tempo = chunk.estimated()
                    ? arrangement.style().practice().estimatedTempo()
                    : arrangement.style().practice().tempo();
            words.add(tempo.with("percent", chunk.percent()));
        } else if (exercise instanceof Exercise.AirMeasure) {
            words.add(OpeningText.before(step, arrangement));
        }
    }

    private static void add(List<String> words, @Nullable String text) {
        if (text != null && !text.isEmpty()) {
            words.add(text);
        }
    }
}
