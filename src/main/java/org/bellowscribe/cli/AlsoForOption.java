package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.instrument.BellowsMargin;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.OtherBox;
import org.bellowscribe.instrument.SharedBox;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;

/** Further boxes for which one sheet is. */
final class AlsoForOption {

    /** The marks with the numbers of the further boxes. */
    static final String MARKS = "also-buttons";

    static final CommandOption<List<LibraryEntry>> ALSO_FOR = new CommandOption<>(
                    "also-for",
                    "LIST",
                    "Further instruments, ids or files with commas between, that the sheet is for too: their numbers stand in a line"
                            + " each. Only what all have in the same place is played.",
                    new Boxes())
            .in(OptionGroup.PLAYED);

    private record Boxes() implements ValueReader<List<LibraryEntry>> {

        private static final LibraryName<LibraryEntry> ONE = new LibraryName<>(InstrumentLibrary.library());

        @Override
        public String takes() {
            return ONE.takes();
        }

        @Override
        public List<String> words() {
            return ONE.words();
        }

        @Override
        public List<LibraryEntry> read(String option, String text) throws UsageException {
            List<LibraryEntry> entries = new ArrayList<>();
            for (String name : WordList.split(text)) {
                entries.add(ONE.read(option, name));
            }
            return entries;
        }
    }

    private AlsoForOption() {}

    /**
     * Returns the box that the boxes of a line have in common: the first one if no further ones are named.
     *
     * @param own the instrument for which the tunes are decided
     * @param margin percent by which the bellows of all are taken smaller
     */
    static Instrument shared(CommandWords words, Instrument own, int margin) throws UsageException {
        List<OtherBox> others = new ArrayList<>();
        for (LibraryEntry entry : words.get(ALSO_FOR, List.of())) {
            OtherBox box = OtherBox.of(own, BellowsMargin.on(entry.instrument(), margin));
            if (box == null) {
                throw new UsageException(
                        "--%s %s: it cannot be played like %s, with the same fingers and air.%n  Maybe a sheet of its own."
                                .formatted(ALSO_FOR.name(), entry.instrument().id(), own.id()));
            }
            others.add(box);
        }
        return others.isEmpty() ? own : SharedBox.of(own, others);
    }
}
