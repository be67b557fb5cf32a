package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.read.WrittenNote.Sort;
import org.bellowscribe.theory.Fraction;

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
    private final PartNames names;

    MelodyChooser(List<PartContent> parts, ReadingOptions options) {
        this.parts = parts;
        this.options = options;
        names = new PartNames(parts);
    }

    /**
     * Returns the melody.
     *
     * @param remarks takes a remark where there was a choice
     * @throws DiagnosedException if there are no notes, or none in the part, staff or voice that was asked for
     */
    MelodyLine choose(List<Diagnostic> remarks) throws DiagnosedException {
        int part = part();
        List<WrittenNote> notes = parts.get(part).notes().filter(this::wanted).toList();
        if (notes.isEmpty()) {
            boolean others = parts.get(part).notes().findAny().isPresent();
            throw others
                    ? names.unknownLine("Part %s".formatted(names.of(part)), List.of(parts.get(part)), options)
                    : new DiagnosedException(Diagnostic.error(
                            DiagnosticCode.NO_NOTES,
                            Place.FILE,
                            "Part %s has no melody: %s".formatted(names.of(part), whyEmpty(List.of(parts.get(part)))),
                            names.list()));
        }
        int staff = notes.stream().mapToInt(WrittenNote::staff).min().orElse(1);
        Map<String, List<WrittenNote>> voices = voices(notes, staff);
        MelodyLine line = new MelodyLine(part, highest(voices), staff, options.staff(), options.voice() != null);
        remarkChoice(line, voices.size(), remarks);
        return line;
    }

    private boolean wanted(WrittenNote note) {
        return (options.staff() == null || note.staff() == options.staff())
                && (options.voice() == null || note.voice().equals(options.voice()));
    }

    private int part() throws DiagnosedException {
        if (options.part() != null) {
            return names.find(options.part());
        }
        List<Integer> counts = parts.stream()
                .map(part -> (int) part.notes().filter(this::wanted).count())
                .toList();
        int most = counts.stream().mapToInt(Integer::intValue).max().orElse(0);
        if (most == 0) {
            boolean notes =
                    parts.stream().anyMatch(part -> part.notes().findAny().isPresent());
            throw notes
                    ? names.unknownLine("The score", parts, options)
                    : new DiagnosedException(Diagnostic.error(
                            DiagnosticCode.NO_NOTES, Place.FILE, "The score has no melody: " + whyEmpty(parts)));
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

    private static String whyEmpty(List<PartContent> parts) {
        List<Sort> sorts = parts.stream()
                .flatMap(part -> part.measures().stream())
                .flatMap(measure -> measure.notes().stream())
                .map(WrittenNote::sort)
                .distinct()
                .toList();
        if (sorts.isEmpty()) {
            return "it holds no notes at all.";
        }
        if (sorts.contains(Sort.SILENT) || sorts.contains(Sort.SLASHED)) {
            return "it holds only percussion, cue notes or slashes.";
        }
        return sorts.contains(Sort.HIDDEN) ? "all its notes are hidden." : "it holds only rests.";
    }

    private static double aloneShare(PartContent part) {
        long all = 0;
        long alone = 0;
        for (MeasureContent measure : part.measures()) {
            Map<Fraction, Integer> together = new HashMap<>();
            measure.notes().stream()
                    .filter(WrittenNote::isNote)
                    .forEach(note -> together.merge(note.onset(), 1, Integer::sum));
            all += together.size();
            alone += together.values().stream().filter(count -> count == 1).count();
        }
        return all == 0 ? 0 : (double) alone / all;
    }

    private static Map<String, List<WrittenNote>> voices(List<WrittenNote> notes, int staff) {
        Map<String, List<WrittenNote>> voices = new LinkedHashMap<>();
        for (WrittenNote note : notes) {
            if (note.staff() == staff) {
                voices.computeIfAbsent(note.voice(), voice -> new ArrayList<>()).add(note);
            }
        }
        return voices;
    }

    private static String highest(Map<String, List<WrittenNote>> voices) {
        int most = voices.values().stream().mapToInt(List::size).max().orElse(0);
        String best = "";
        double highest = -2;
        for (Map.Entry<String, List<WrittenNote>> voice : voices.entrySet()) {
            double height = MelodyLine.height(voice.getValue());
            if (voice.getValue().size() >= LEAST_VOICE * most && height > highest) {
                best = voice.getKey();
                highest = height;
            }
        }
        return best;
    }

    private void remarkChoice(MelodyLine line, int voices, List<Diagnostic> remarks) {
        long withNotes = parts.stream()
                .filter(each -> each.notes().findAny().isPresent())
                .count();
        boolean severalParts = withNotes > 1 && options.part() == null;
        boolean severalVoices = voices > 1 && options.voice() == null;
        if (severalParts || severalVoices) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "The melody is read from part %s, staff %d, voice %s; %s."
                            .formatted(
                                    names.of(line.part()),
                                    line.homeStaff(),
                                    line.voice(),
                                    severalParts
                                            ? "the score has %d parts with notes".formatted(withNotes)
                                            : "the staff has %d voices".formatted(voices)),
                    "Maybe name another with --part, --staff or --voice. "
                            + (severalParts ? names.list() : PartNames.lines(parts.get(line.part())))));
        }
    }
}
