package org.bellowscribe.cli;

import java.io.IOException;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.batch.Keeping;
import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;

/** The end of a run that remembers what it did. */
final class KeptRuns {

    private KeptRuns() {}

    /** Puts what is remembered in order, and tells if something could not be. */
    static void tidy(Keeping keeping, Terminal terminal) {
        Ledger ledger = keeping.ledger();
        byte[] tidied = ledger == null || !keeping.writes() ? null : ledger.tidied();
        if (ledger == null || tidied == null) {
            return;
        }
        IOException trouble = ledger.trouble();
        String why = trouble == null ? "" : Obstacle.of(trouble);
        try {
            if (!ledger.isTidy(tidied)) {
                AtomicFile.write(ledger.file(), tidied);
                why = "";
            }
        } catch (DiagnosedException e) {
            why = e.diagnostics().get(0).text();
        }
        if (!why.isEmpty()) {
            terminal.remark(
                    ledger.file().toString(),
                    Diagnostic.warning(
                            DiagnosticCode.UNWRITABLE,
                            Place.FILE,
                            "What was done cannot be remembered (%s).".formatted(why),
                            "The results stand; the next run marks these tunes once more."));
        }
    }
}
