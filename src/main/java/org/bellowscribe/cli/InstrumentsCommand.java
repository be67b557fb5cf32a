package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.KeyRangeTable;
import org.bellowscribe.instrument.KeyRanges;
import org.bellowscribe.instrument.KeyboardDrawing;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;
import org.bellowscribe.theory.Mode;

/** Shows and checks instruments. */
final class InstrumentsCommand extends LibraryCommand<LibraryEntry> {

    private static final CommandOption<Path> SVG = new CommandOption<>(
            "svg",
            "FILE",
            "With show: write the drawing as an A4 page into this file, such as my-box.svg, instead.",
            new FilePath());

    InstrumentsCommand() {
        super(InstrumentLibrary.library());
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the library. show draws the buttons with both their notes; check looks for"
                + " what is wrong in an instrument file; ranges lists the keys that an instrument plays, with their"
                + " basses.";
    }

    @Override
    public String usage() {
        return "[list | show ID|FILE [--svg FILE] | check FILE | ranges ID|FILE]";
    }

    @Override
    public List<CommandOption<?>> options() {
        return List.of(SVG);
    }

    @Override
    Map<String, Action> actions() {
        Map<String, Action> actions = super.actions();
        actions.put("ranges", InstrumentsCommand::ranges);
        return actions;
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        String action = words.rest().isEmpty() ? "list" : words.rest().get(0);
        if (words.has(SVG) && !action.equals("show")) {
            throw new UsageException("--svg goes with show, not with %s.".formatted(action));
        }
        return super.run(words, terminal);
    }

    @Override
    String list() {
        return InstrumentList.text(InstrumentLibrary.all());
    }

    @Override
    String show(LibraryEntry shown) {
        String drawing = KeyboardDrawing.text(shown.instrument());
        return shown.manner() == null ? drawing : drawing + "Usual manner of playing: " + shown.manner() + ".\n";
    }

    @Override
    String title(LibraryEntry shown) {
        return shown.instrument().name();
    }

    @Override
    ExitCode showOne(String name, CommandWords words, Terminal terminal) throws DiagnosedException, UsageException {
        Path page = words.get(SVG);
        if (page == null) {
            return super.showOne(name, words, terminal);
        }
        String drawing = KeyboardDrawing.svg(InstrumentLibrary.find(name));
        AtomicFile.write(page, drawing.getBytes(StandardCharsets.UTF_8));
        terminal.out().println(page + " written.");
        return ExitCode.ALL_DONE;
    }

    @Override
    List<Diagnostic> faults(String name) throws DiagnosedException {
        return InstrumentLibrary.check(name);
    }

    private static ExitCode ranges(String name, CommandWords words, Terminal terminal) throws DiagnosedException {
        List<Mode> modes = List.copyOf(EnumSet.allOf(Mode.class));
        terminal.out().print(KeyRangeTable.text(KeyRanges.of(InstrumentLibrary.find(name), modes)));
        return ExitCode.ALL_DONE;
    }
}
