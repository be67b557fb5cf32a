package org.bellowscribe.batch;

import java.nio.file.Files;
import java.util.List;
import org.bellowscribe.batch.ledger.Entry;
import org.bellowscribe.batch.ledger.Keys;
import org.bellowscribe.batch.ledger.Ledger;
import org.jspecify.annotations.Nullable;

/**
 * How the results of a tune stand to what they would be today.
 *
 * @param keys what they would be made from
 * @param kept what is remembered, if it was made from the very same and its files are as they were written; else null
 * @param reason why nothing is kept, in words that stand alone
 * @param known true if the reason is something that has changed since; false if nothing was compared
 */
record Standing(Keys keys, @Nullable Entry kept, String reason, boolean known) {

    /** Returns why results differ from what they would be today. */
    String difference() {
        return known ? reason : "it would come out otherwise today";
    }

    static Standing of(Source source, Keys keys, Keeping keeping) {
        Ledger ledger = keeping.ledger();
        if (keeping.anew()) {
            return new Standing(keys, null, "everything is done anew", false);
        }
        if (ledger == null) {
            return new Standing(keys, null, "nothing is remembered of results in place of their scores", false);
        }
        boolean stands = Files.exists(source.target());
        String reason = stands ? "nothing is remembered of how it was made" : "it is new";
        List<Entry> entries = ledger.of(ledger.place(source.target()));
        for (Entry entry : entries) {
            reason = keys.differenceTo(entry.keys());
            Entry.File changed = reason.isEmpty() ? ledger.changed(entry) : null;
            if (reason.isEmpty() && changed == null) {
                return new Standing(keys, entry, "", true);
            }
            if (changed != null) {
                reason = "%s is missing, or not as it was written".formatted(changed.place());
            }
        }
        return new Standing(keys, null, reason, !stands || !entries.isEmpty());
    }
}
