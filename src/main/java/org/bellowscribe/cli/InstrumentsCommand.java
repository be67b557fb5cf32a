package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.KeyRangeTable;
import org.bellowscribe.instrument.KeyRanges;
import org.bellowscribe.instrument.KeyboardDrawing;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.Mode;
import org.jspecify.annotations.Nullable;

/** Shows and checks instruments. */
final class InstrumentsCommand implements Command {

    private static final String SVG = "svg";
    private static final List<String> ACTIONS = List.of("show", "check", "ranges");

    @Override
    public String name() {
        return "instruments";
    }

    @Override
    public String summary() {
        return "Alone it lists the library. show draws the buttons with both their notes; check looks for what is wrong"
                + " in an instrument file; ranges lists the keys that an instrument plays, with their basses.";
    }

    @Override
    public String usage() {
        return "[show ID|FILE [--svg FILE.svg] | check FILE | ranges ID|FILE]";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Option.builder()
                        .longOpt(SVG)
                        .hasArg()
                        .argName("FILE")
                        .desc("With show: write the drawing as an A4 page into this file instead.")
                        .get());
    }

    @Override
    public ExitCode run(CommandLine line, Terminal terminal) throws UsageException {
        List<String> words = line.getArgList();
        String action = words.isEmpty() ? "list" : words.get(0);
        if (line.hasOption(SVG) && !action.equals("show")) {
            throw new UsageException("--svg goes with show, not with %s.".formatted(action));
        }
        if (words.isEmpty()) {
            terminal.out().print(InstrumentList.text(InstrumentLibrary.all()));
            return ExitCode.ALL_DONE;
        }
        if (!ACTIONS.contains(action)) {
            throw unknown(action);
        }
        if (words.size() != 2) {
            throw new UsageException("%s takes one %s, but %d are given."
                    .formatted(action, action.equals("check") ? "file" : "instrument", words.size() - 1));
        }
        try {
            return run(action, words.get(1), line.getOptionValue(SVG), terminal);
        } catch (DiagnosedException e) {
            print(e.diagnostics(), words.get(1), terminal);
            boolean unknown = e.diagnostics().get(0).code() == DiagnosticCode.UNKNOWN_NAME;
            return unknown ? ExitCode.WRONG_USE : ExitCode.SOME_FAILED;
        }
    }

    private static ExitCode run(String action, String name, @Nullable String svg, Terminal terminal)
            throws DiagnosedException {
        if (action.equals("check")) {
            return check(name, terminal);
        }
        Instrument instrument = InstrumentLibrary.find(name);
        switch (action) {
            case "ranges" ->
                terminal.out()
                        .print(KeyRangeTable.text(KeyRanges.of(instrument, List.copyOf(EnumSet.allOf(Mode.class)))));
            default -> show(instrument, svg, terminal);
        }
        return ExitCode.ALL_DONE;
    }

    private static void show(Instrument instrument, @Nullable String svg, Terminal terminal) throws DiagnosedException {
        if (svg == null) {
            terminal.out().print(KeyboardDrawing.text(instrument));
            return;
        }
        AtomicFile.write(Path.of(svg), KeyboardDrawing.svg(instrument).getBytes(StandardCharsets.UTF_8));
        terminal.out().println(svg + " written.");
    }

    private static ExitCode check(String name, Terminal terminal) throws DiagnosedException {
        List<Diagnostic> remarks = InstrumentLibrary.check(name);
        print(remarks, name, terminal);
        boolean wrong = remarks.stream().anyMatch(remark -> remark.severity() == Severity.ERROR);
        if (!wrong) {
            terminal.out()
                    .println("%s: %s can be used; %d doubt%s."
                            .formatted(
                                    name,
                                    InstrumentLibrary.find(name).name(),
                                    remarks.size(),
                                    remarks.size() == 1 ? "" : "s"));
        }
        return wrong ? ExitCode.SOME_FAILED : ExitCode.ALL_DONE;
    }

    private static void print(List<Diagnostic> remarks, String name, Terminal terminal) {
        remarks.forEach(remark -> terminal.err().println(remark.print(name)));
    }

    private static UsageException unknown(String action) {
        List<String> near = NearestNames.of(action, ACTIONS);
        return new UsageException("instruments does not know %s.%n  Maybe %s is meant."
                .formatted(action, String.join(" or ", near.isEmpty() ? ACTIONS : near)));
    }
}
