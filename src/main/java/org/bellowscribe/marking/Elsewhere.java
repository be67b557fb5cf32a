package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.fit.FitOptions;
import org.bellowscribe.fit.Fitting;
import org.bellowscribe.fit.Trial;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.theory.Key;
import org.jspecify.annotations.Nullable;

/**
 * Where else a tune could be played that cannot be played as asked: in another key, found just as if it had been asked
 * for, or on another instrument of the library. What is named was tried, with reach, left hand and air; the trials are few.
 */
final class Elsewhere {

    private static final Set<DiagnosticCode> NOTES = EnumSet.of(DiagnosticCode.NO_BUTTON, DiagnosticCode.NO_REACH);
    private static final int TRIED = 4;
    private static final int OCTAVE = 12;

    private final MarkSettings settings;
    private final Tune tune;
    private final IntPredicate possible;
    private final KeySearch search;

    /**
     * Begins with a tune.
     *
     * @param tune the tune as it is written
     * @param possible tells whether it can be played so many semitones higher
     * @param search plays it in other keys
     */
    Elsewhere(MarkSettings settings, Tune tune, IntPredicate possible, KeySearch search) {
        this.settings = settings;
        this.tune = tune;
        this.possible = possible;
        this.search = search;
    }

    /**
     * Returns why a tune cannot be played, and where else it can.
     *
     * @param why the reasons in the key that was asked for, or as written if all keys were tried
     */
    List<Diagnostic> advise(List<Diagnostic> why) {
        boolean missing = why.stream().anyMatch(each -> NOTES.contains(each.code()));
        boolean air = why.stream().anyMatch(each -> each.code() == DiagnosticCode.NO_AIR);
        boolean anyKey = settings.key().isAnyKey();
        if (!missing && !(air && anyKey)) {
            return why;
        }
        if (anyKey) {
            List<Diagnostic> all = new ArrayList<>();
            why.forEach(each -> all.add(missing ? each.withoutAdvice() : each));
            all.add(Diagnostic.error(
                    why.get(0).code(),
                    Place.FILE,
                    "No transposition within an octave can be played either.",
                    instrument()));
            return all;
        }
        Integer nearest = search.nearest(possible);
        return withAdvice(why, nearest == null ? instrument() : key(nearest));
    }

    private String key(int semitones) {
        if (semitones == 0) {
            return "Maybe leave out --transpose or --key: as written the tune can be played.";
        }
        Key key = Transposition.of(tune, semitones).measures().get(0).key();
        return "Maybe --transpose %d: there the tune can be played%s."
                .formatted(semitones, key.hasManySigns() ? ", in a key of " + key.signs() : "");
    }

    // The advice stands once, at the end of the list.
    private static List<Diagnostic> withAdvice(List<Diagnostic> why, String advice) {
        List<Diagnostic> all = new ArrayList<>(why);
        Diagnostic last = all.remove(all.size() - 1);
        List<String> both = new ArrayList<>(last.advice());
        both.add(advice);
        all.add(new Diagnostic(last.severity(), last.code(), last.place(), last.text(), both));
        return all;
    }

    private String instrument() {
        Trial found = best(List.of(0));
        if (found == null) {
            found = best(IntStream.rangeClosed(-OCTAVE, OCTAVE).boxed().toList());
        }
        if (found == null) {
            return "No instrument of the library was found to play it; the command fit tries them all.";
        }
        String where = found.semitones() == 0 ? "as written" : "with --transpose %d".formatted(found.semitones());
        return "Maybe another instrument: %s (%s) can play it %s."
                .formatted(found.instrument().id(), found.instrument().name(), where);
    }

    private @Nullable Trial best(List<Integer> semitones) {
        List<Instrument> others = InstrumentLibrary.all().stream()
                .map(LibraryEntry::instrument)
                .filter(each -> !each.id().equals(settings.instrument().id()))
                .toList();
        long cells = Math.min(TuneDecider.ADVICE_CELLS, settings.solver().cellLimit());
        FitOptions options = new FitOptions(
                semitones, TRIED, settings.solver().withPins(Pins.NONE).withCellLimit(cells));
        return Fitting.easiest(tune, others, options);
    }
}
