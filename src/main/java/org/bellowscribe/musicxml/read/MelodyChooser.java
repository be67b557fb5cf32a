package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.read.WrittenNote.Sort;
import org.jspecify.annotations.Nullable;

/**
 * Chooses the melody. The part: the first whose notes mostly sound one at a time, else the first with notes; parts with
 * few notes are passed over. In it the voice: of the first staff, and there of the voices with a decent share of the
 * notes the highest on average.
 */
final class MelodyChooser {

    /** A part with less than this share of the notes of the fullest part is no melody. */
    private static final double LEAST_PART = 0.1;
    /** A voice with less than this share of the notes of the fullest voice is no melody. */
    private static final double LEAST_VOICE = 0.25;
    /** A part is a single line if at least this share of its notes sounds alone. */
    private static final double SINGLE_LINE = 0.8;

    private final List<PartContent> parts;
    private final ReadingOptions options;

    MelodyChooser(List<PartContent> parts, ReadingOptions options) {
        this.parts = parts;
        this.options = options;
    }

    MelodyLine choose() throws DiagnosedException {
        int part = part();
        List<WrittenNote> notes = parts.get(part).notes().filter(this::wanted).toList();
        if (notes.isEmpty()) {
            throw refusal("Part %s has no notes in the staff or voice that was asked for.".formatted(name(part)));
        }
        int staff = options.staff() != null
                ? options.staff()
                : notes.stream().mapToInt(WrittenNote::staff).min().orElse(1);
        return new MelodyLine(part, voice(notes, staff), options.staff());
    }

    private boolean wanted(WrittenNote note) {
        return (options.staff() == null || note.staff() == options.staff())
                && (options.voice() == null || note.voice().equals(options.voice()));
    }

    private int part() throws DiagnosedException {
        if (options.part() != null) {
            for (int i = 0; i < parts.size(); i++) {
                if (parts.get(i).id().equals(options.part())) {
                    return i;
                }
            }
            throw refusal("The score has no part %s.".formatted(options.part()));
        }
        List<Long> counts = parts.stream()
                .map(part -> part.notes().filter(this::wanted).count())
                .toList();
        long most = counts.stream().mapToLong(Long::longValue).max().orElse(0);
        if (most == 0) {
            throw refusal(whyEmpty());
        }
        List<Integer> full = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (counts.get(i) >= Math.max(1, LEAST_PART * most)) {
                full.add(i);
            }
        }
        return full.stream()
                .filter(i -> aloneShare(parts.get(i)) >= SINGLE_LINE)
                .findFirst()
                .orElse(full.get(0));
    }

    private String whyEmpty() {
        List<WrittenNote> all = parts.stream()
                .flatMap(part -> part.measures().stream())
                .flatMap(measure -> measure.notes().stream())
                .toList();
        if (all.isEmpty()) {
            return "The score has no notes.";
        }
        boolean silent = all.stream().anyMatch(note -> note.sort() == Sort.SILENT);
        if (all.stream().anyMatch(WrittenNote::isNote)) {
            return "The score has no notes in the staff or voice that was asked for.";
        }
        return silent
                ? "The score has no pitched notes, only percussion, cue, slashed or hidden ones."
                : "The score has only rests.";
    }

    private static double aloneShare(PartContent part) {
        long all = 0;
        long alone = 0;
        for (MeasureContent measure : part.measures()) {
            Map<Object, Integer> together = new HashMap<>();
            measure.notes().stream()
                    .filter(WrittenNote::isNote)
                    .forEach(n -> together.merge(n.onset(), 1, Integer::sum));
            all += together.size();
            alone += together.values().stream().filter(count -> count == 1).count();
        }
        return all == 0 ? 0 : (double) alone / all;
    }

    private static String voice(List<WrittenNote> notes, int staff) {
        Map<String, List<WrittenNote>> voices = new LinkedHashMap<>();
        notes.stream()
                .filter(note -> note.staff() == staff)
                .forEach(note -> voices.computeIfAbsent(note.voice(), v -> new ArrayList<>())
                        .add(note));
        int most = voices.values().stream().mapToInt(List::size).max().orElse(0);
        String best = "";
        double highest = -1;
        for (Map.Entry<String, List<WrittenNote>> voice : voices.entrySet()) {
            double height = height(voice.getValue());
            if (voice.getValue().size() >= LEAST_VOICE * most && height > highest) {
                best = voice.getKey();
                highest = height;
            }
        }
        return best;
    }

    private static double height(List<WrittenNote> notes) {
        return notes.stream()
                .map(WrittenNote::pitch)
                .filter(Objects::nonNull)
                .mapToInt(pitch -> pitch.midiNumber())
                .average()
                .orElse(0);
    }

    private String name(int part) {
        PartContent content = parts.get(part);
        return content.name().isEmpty() ? content.id() : "%s (%s)".formatted(content.id(), content.name());
    }

    private DiagnosedException refusal(String text) {
        String all = String.join(
                ", ",
                parts.stream().map(part -> name(parts.indexOf(part))).limit(12).toList());
        @Nullable String advice = parts.isEmpty() ? null : "The score has these parts: %s.".formatted(all);
        return new DiagnosedException(
                advice == null
                        ? Diagnostic.error(DiagnosticCode.NO_NOTES, Place.FILE, text)
                        : Diagnostic.error(DiagnosticCode.NO_NOTES, Place.FILE, text, advice));
    }
}
