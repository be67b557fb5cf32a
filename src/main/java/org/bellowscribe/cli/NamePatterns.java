package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.PatternSyntaxException;
import org.bellowscribe.batch.PathPattern;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;

/** Reads patterns of file names with commas between. */
record NamePatterns() implements ValueReader<List<PathPattern>> {

    @Override
    public List<PathPattern> read(String option, String list) throws UsageException {
        List<PathPattern> patterns = new ArrayList<>();
        for (String text : PathPattern.split(list)) {
            if (text.isEmpty()) {
                throw UsageException.notTaken(option, "patterns of file names with commas between", list);
            }
            try {
                patterns.add(PathPattern.of(text));
            } catch (PatternSyntaxException e) {
                throw new UsageException("--%s takes patterns of file names, and %s is none (%s)."
                        .formatted(option, text, e.getDescription()));
            }
        }
        return patterns;
    }
}
