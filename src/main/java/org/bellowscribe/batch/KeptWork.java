package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import org.bellowscribe.batch.ledger.ContentHash;
import org.bellowscribe.batch.ledger.Entry;
import org.bellowscribe.batch.ledger.Keys;
import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Severity;
import org.jspecify.annotations.Nullable;

/** Marks a score, unless its files stand already as they would be written. */
final class KeptWork implements SafeJob.Work {

    /** Errors that another run need not meet again, though nothing of the tune has changed. */
    private static final Set<DiagnosticCode> PASSING = Set.of(
            DiagnosticCode.UNREADABLE, DiagnosticCode.UNWRITABLE, DiagnosticCode.REPLAY, DiagnosticCode.INTERNAL);

    private final Function<Source, MarkPlan> plans;
    private final Keeping keeping;
    private final Runnable warming;
    private final AtomicBoolean warm = new AtomicBoolean();

    /**
     * Creates the work.
     *
     * @param plans how each source is marked
     * @param warming what makes ready what all tunes share, and is not needed where none is marked
     */
    KeptWork(Function<Source, MarkPlan> plans, Keeping keeping, Runnable warming) {
        this.plans = plans;
        this.keeping = keeping;
        this.warming = warming;
    }

    @Override
    public Result run(Source source, byte[] bytes) throws DiagnosedException {
        MarkPlan plan = plans.apply(source);
        Standing standing = Standing.of(source, keys(plan, source, bytes), keeping);
        Entry kept = standing.kept();
        if (kept != null) {
            return KeptResult.of(source, kept);
        }
        if (keeping.mode() == Keeping.Mode.FORETELL) {
            String files = String.join(
                    ", ",
                    source.targets(plan.beside()).stream().map(Path::toString).toList());
            return new Result(source, true, null, List.of(), List.of("%s: %s".formatted(files, standing.reason())))
                    .as(Result.Outcome.TO_DO);
        }
        if (!warm.getAndSet(true)) {
            warming.run();
        }
        return work(plan, source, bytes, standing);
    }

    private Result work(MarkPlan plan, Source source, byte[] bytes, Standing standing) throws DiagnosedException {
        byte[] before = keeping.tellsChanges() ? standingSheet(source) : null;
        WrittenFiles files = new WrittenFiles(keeping.writes());
        Result result = plan.run(source.with(files), bytes).of(source);
        if (result.done()) {
            result = result.telling(changes(before, files.content(source.target()), source));
        }
        if (keeping.mode() == Keeping.Mode.COMPARE) {
            return compared(result, files, standing);
        }
        Ledger ledger = keeping.ledger();
        if (ledger != null && isKept(result)) {
            List<Entry.File> written = new ArrayList<>();
            files.hashes().forEach((path, hash) -> written.add(new Entry.File(ledger.place(path), hash)));
            ledger.note(new Entry(ledger.place(source.target()), standing.keys(), written, KeptResult.text(result)));
        }
        return result;
    }

    private static boolean isKept(Result result) {
        return result.diagnostics().stream()
                .noneMatch(remark -> remark.severity() == Severity.ERROR && PASSING.contains(remark.code()));
    }

    private static Result compared(Result result, WrittenFiles files, Standing standing) {
        List<String> differing = files.differing().stream().map(Path::toString).toList();
        if (differing.isEmpty()) {
            return result.done() ? result.as(Result.Outcome.UNCHANGED) : result;
        }
        List<String> told = new ArrayList<>();
        told.add("%s: out of date, because %s".formatted(String.join(", ", differing), standing.difference()));
        told.addAll(result.told());
        return result.done() ? result.as(Result.Outcome.OUT_OF_DATE).tellingOnly(told) : result;
    }

    private static byte @Nullable [] standingSheet(Source source) {
        try {
            return source.isPiped() || !Files.isRegularFile(source.target()) ? null : Source.bytes(source.target());
        } catch (IOException | DiagnosedException e) {
            return null;
        }
    }

    private static List<String> changes(byte @Nullable [] before, byte @Nullable [] after, Source source) {
        return before == null || after == null ? List.of() : MarkChanges.between(before, after, source.stem());
    }

    private static Keys keys(MarkPlan plan, Source source, byte[] bytes) {
        Path pins = plan.outputs().pins() == null
                ? source.pinsFile()
                : plan.outputs().pins();
        String pinsHash = plan.keepsPins() && pins != null ? Ledger.hash(pins) : ContentHash.NONE;
        MarkPlan.Fingerprint fingerprint = plan.fingerprint();
        String settings = fingerprint.settings() + "\n" + source.name() + "\n" + source.wholeName();
        return new Keys(
                ContentHash.of(bytes),
                pinsHash,
                ContentHash.of(settings),
                fingerprint.definitions(),
                fingerprint.tool());
    }
}
