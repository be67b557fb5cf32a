package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.read.WrittenNote.Sort;

/**
 * Chooses the melody: the part by {@link MelodyPart}, and of the voices of its staff that have a decent share of the notes
 * the one that is the highest on average.
 */
final class MelodyChooser {

    /** A voice with less than this share of the notes of the fullest voice is no melody. */
    private static final double LEAST_VOICE = 0.25;

    private final List<PartContent> parts;
    private final ReadingOptions options;
    private final PartNames names;
    private final MelodyPart best;
    private String why = "";

    MelodyChooser(List<PartContent> parts, ReadingOptions options) {
        this.parts = parts;
        this.options = options;
        names = new PartNames(parts);
        best = new MelodyPart(parts, this::wanted);
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
        int staff = best.homeStaff(part);
        Map<String, List<WrittenNote>> voices = voices(notes, staff);
        String voice = highest(voices);
        Integer only = isOnTwoStaves(parts.get(part), voice, staff) ? Integer.valueOf(staff) : options.staff();
        MelodyLine line = new MelodyLine(part, voice, staff, only, options.voice() != null);
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
        boolean none = parts.stream().allMatch(part -> part.notes().noneMatch(this::wanted));
        if (none) {
            boolean notes =
                    parts.stream().anyMatch(part -> part.notes().findAny().isPresent());
            throw notes
                    ? names.unknownLine("The score", parts, options)
                    : new DiagnosedException(Diagnostic.error(
                            DiagnosticCode.NO_NOTES, Place.FILE, "The score has no melody: " + whyEmpty(parts)));
        }
        MelodyPart.Chosen chosen = best.choose();
        why = chosen.why();
        return chosen.part();
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

    // Some programs count the voices of each staff anew: what sounds on two staves at once is not one voice.
    private static boolean isOnTwoStaves(PartContent part, String voice, int staff) {
        for (MeasureContent measure : part.measures()) {
            List<WrittenNote> notes = measure.notes().stream()
                    .filter(note -> note.isNote() && note.voice().equals(voice))
                    .toList();
            for (WrittenNote here : notes) {
                if (here.staff() == staff
                        && notes.stream().anyMatch(there -> there.staff() != staff && overlap(here, there))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean overlap(WrittenNote one, WrittenNote other) {
        return one.onset().compareTo(other.end()) < 0 && other.onset().compareTo(one.end()) < 0;
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
                    "The melody is read from part %s, staff %d, voice %s, %s; %s."
                            .formatted(
                                    names.of(line.part()),
                                    line.homeStaff(),
                                    line.voice(),
                                    severalParts ? why : "the highest of its staff",
                                    severalParts
                                            ? "the score has %d parts with notes".formatted(withNotes)
                                            : "the staff has %d voices".formatted(voices)),
                    "Maybe name another with --part, --staff or --voice. "
                            + (severalParts ? names.list() : PartNames.lines(parts.get(line.part())))));
        }
    }
}
