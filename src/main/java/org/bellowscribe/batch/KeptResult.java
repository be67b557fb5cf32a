package org.bellowscribe.batch;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.batch.ledger.Entry;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;

/** What was told of a tune, kept to be told again. */
final class KeptResult {

    private KeptResult() {}

    /** Returns a result as text. */
    static String text(Result result) {
        return RunLine.object(json -> RunLine.body(json, result));
    }

    /** Returns the result of a tune whose files stand: that of a refused one is its refusal. */
    static Result of(Source source, Entry entry) {
        Result result = RunLineReader.read(entry.result(), source);
        List<Diagnostic> remarks = new ArrayList<>(result.diagnostics());
        // What else stands there is not of this tune's making, so it is looked for again.
        remarks.removeIf(remark -> remark.code() == DiagnosticCode.OLDER_RESULT);
        if (result.done()) {
            long ways = entry.files().stream()
                    .filter(file -> isOtherWay(file, source))
                    .count();
            remarks.addAll(OtherWays.remarks(source, (int) ways));
        }
        Result told = new Result(source, result.outcome(), result.summary(), remarks, result.told(), result.title());
        return told.done() ? told.as(Result.Outcome.UNCHANGED) : told;
    }

    private static boolean isOtherWay(Entry.File file, Source source) {
        for (int way = 2; way <= OtherWays.LAST; way++) {
            String name = String.valueOf(source.alternativeTarget(way).getFileName());
            if (file.place().equals(name) || file.place().endsWith("/" + name)) {
                return true;
            }
        }
        return false;
    }
}
