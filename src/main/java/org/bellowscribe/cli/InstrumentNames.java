package org.bellowscribe.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;

/** Reads instruments, ids or files with commas between, or {@code all} of the library. */
record InstrumentNames() implements ValueReader<List<LibraryEntry>> {

    private static final String ALL = "all";
    private static final LibraryName<LibraryEntry> NAME = new LibraryName<>(InstrumentLibrary.library());

    @Override
    public List<String> words() {
        return Stream.concat(Stream.of(ALL), NAME.words().stream()).toList();
    }

    @Override
    public List<LibraryEntry> read(String option, String list) throws UsageException {
        if (list.equals(ALL)) {
            return all();
        }
        Map<String, LibraryEntry> found = new LinkedHashMap<>();
        for (String name : WordList.split(list)) {
            LibraryEntry entry = NAME.read(option, name);
            String id = entry.instrument().id();
            if (found.put(id, entry) != null) {
                throw new UsageException("--%s names %s twice.".formatted(option, id));
            }
        }
        return List.copyOf(found.values());
    }

    /** Returns the whole library. */
    static List<LibraryEntry> all() {
        return InstrumentLibrary.all();
    }
}
