package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.marking.Way;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Reads two ways to play with a comma between. */
final class WayNames implements ValueReader<List<WayName>> {

    private static final String OTHER_WAY = "other-way";
    private static final String BY_HAND = "by-hand";

    @Override
    public List<String> words() {
        return Stream.concat(MannerLibrary.ids().stream(), Stream.of(OTHER_WAY, BY_HAND))
                .toList();
    }

    @Override
    public String takes() {
        return "two ways with a comma between";
    }

    @Override
    public String limits() {
        return "";
    }

    @Override
    public List<WayName> read(String option, String text) throws UsageException {
        List<String> words = WordList.split(text);
        if (words.size() != 2 || words.contains("")) {
            throw UsageException.notTaken(option, takes(), text);
        }
        if (words.get(0).equals(words.get(1))) {
            throw new UsageException(
                    "--%s %s names one way twice.%n  Maybe name another as the second.".formatted(option, text));
        }
        List<WayName> ways = new ArrayList<>();
        for (String word : words) {
            ways.add(way(option, word));
        }
        return ways;
    }

    private static WayName way(String option, String word) throws UsageException {
        if (word.equals(OTHER_WAY)) {
            return new WayName(word, Way.Kind.OTHER, null);
        }
        if (word.equals(BY_HAND)) {
            return new WayName(word, Way.Kind.BY_HAND, null);
        }
        Manner manner = LibraryName.find(MannerLibrary.library()::find, option, word);
        return new WayName(manner.id(), Way.Kind.CHEAPEST, manner);
    }
}
