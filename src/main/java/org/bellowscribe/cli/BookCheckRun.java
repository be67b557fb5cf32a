package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Says what is wrong with a book file, or that it can be used. */
final class BookCheckRun {

    static final CommandOption<Boolean> JSON = CommandOption.flag(
            FileOptions.JSON.name(),
            "With check: print one object a line about each thing that is wrong, then one about the file, in place of"
                    + " text.");

    private static final BookLines LINES = new BookLines("book");

    private final String file;
    private final boolean asLines;
    private final Terminal terminal;

    BookCheckRun(String file, CommandWords words, Terminal given) {
        this.file = file;
        asLines = words.has(JSON);
        terminal = words.has(FileOptions.QUIET) && !asLines ? given.quiet() : given;
    }

    /** Checks. */
    ExitCode run() throws UsageException {
        try {
            LoadedBook loaded = LoadedBook.checked(FilePath.of(file));
            if (asLines) {
                LINES.end(List.of(), loaded.editions(), terminal);
            } else {
                tell(loaded);
            }
            return ExitCode.ALL_DONE;
        } catch (DiagnosedException e) {
            List<Sources.Problem> problems = e.diagnostics().stream()
                    .map(remark -> new Sources.Problem(file, remark))
                    .toList();
            if (asLines) {
                LINES.wrong(problems, terminal);
            } else {
                problems.forEach(problem -> terminal.remark(problem.input(), problem.diagnostic()));
            }
            return ExitCode.SOME_FAILED;
        }
    }

    private void tell(LoadedBook loaded) {
        terminal.out()
                .printf(
                        "%s: %s can be used; %d tunes.%n",
                        file, loaded.book().title(), loaded.book().tunes().size());
        loaded.editions()
                .forEach(edition -> terminal.out()
                        .printf(
                                "  %s: %s, %d tunes%n",
                                edition.entry().folder(),
                                edition.instrument().name(),
                                edition.tunes().size()));
    }
}
