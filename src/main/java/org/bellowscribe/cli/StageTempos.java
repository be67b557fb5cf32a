package org.bellowscribe.cli;

import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.stage.Stage;

/** Reads the tempos of stages. */
record StageTempos() implements ValueReader<SortedMap<Stage, Integer>> {

    private static final int LEAST = 25;
    private static final int MOST = 200;
    private static final WholeNumber PERCENT = new WholeNumber(LEAST, MOST, "percent");

    @Override
    public String takes() {
        return "%d to %d percent, or stages with = and a number".formatted(LEAST, MOST);
    }

    @Override
    public String limits() {
        return PERCENT.limits();
    }

    @Override
    public SortedMap<Stage, Integer> read(String option, String text) throws UsageException {
        SortedMap<Stage, Integer> tempos = new TreeMap<>();
        for (String word : WordList.split(text)) {
            int equals = word.indexOf('=');
            int percent = PERCENT.read(option, word.substring(equals + 1));
            Stage stage = equals < 0 ? null : Stage.of(word.substring(0, equals));
            if (equals >= 0 && stage == null) {
                throw UsageException.notTaken(option, takes(), text);
            }
            if (stage != null) {
                tempos.put(stage, percent);
                continue;
            }
            for (Stage each : Stage.values()) {
                if (each != Stage.AS_PLAYED) {
                    tempos.putIfAbsent(each, percent);
                }
            }
        }
        return tempos;
    }
}
