package org.bellowscribe.solver;

import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.solver.manner.MannerLibrary;

/** The usual manner without the price of equal measures that differ: then the search proves what it finds. */
final class UnlikeManner {

    private UnlikeManner() {}

    static Manner usual() {
        return of(MannerLibrary.of(MannerLibrary.DEFAULT_ID));
    }

    static Manner of(Manner manner) {
        Map<String, Points> byRule = new TreeMap<>(manner.byRule());
        byRule.remove("unlike-measure");
        return new Manner(manner.id(), manner.summary(), manner.remarks(), byRule, manner.patterns());
    }
}
