package org.bellowscribe.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bellowscribe.batch.PathPattern;
import org.bellowscribe.batch.Selection;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;

/** What settings files say of tunes that are not there; told only where all scores below the file were asked about. */
final class StrayExceptions {

    private StrayExceptions() {}

    /** Returns the folders that a line asks for as a whole; none if it chooses among their scores. */
    static List<Path> folders(CommandWords words) {
        if (words.has(FileOptions.INCLUDE) || words.has(FileOptions.EXCLUDE) || words.has(FileOptions.SHARD)) {
            return List.of();
        }
        return words.rest().stream()
                .filter(word -> !PathPattern.isOne(word) && !word.startsWith("@"))
                .map(Path::of)
                .filter(Files::isDirectory)
                .map(folder -> folder.toAbsolutePath().normalize())
                .toList();
    }

    /**
     * Returns a note about each.
     *
     * @param unused what holds for none of the scores, by the file that says it
     * @param asked the folders that were asked for as a whole
     * @param scores all scores
     */
    static List<Sources.Problem> remarks(
            Map<SettingsFile, List<SettingsFile.Exceptions>> unused, List<Path> asked, Collection<Path> scores) {
        List<Sources.Problem> remarks = new ArrayList<>();
        unused.forEach((file, exceptions) -> {
            if (asked.stream().anyMatch(file.folder()::startsWith)) {
                exceptions.forEach(each ->
                        remarks.add(new Sources.Problem(file.path().toString(), remark(each, below(file, scores)))));
            }
        });
        return remarks;
    }

    private static List<String> below(SettingsFile file, Collection<Path> scores) {
        return scores.stream()
                .filter(score -> score.toAbsolutePath().normalize().startsWith(file.folder()))
                .map(score -> Selection.withSlashes(file.below(score)))
                .toList();
    }

    private static Diagnostic remark(SettingsFile.Exceptions stray, List<String> scores) {
        List<String> near = PathPattern.isOne(stray.file()) ? List.of() : near(stray.file(), scores);
        return Diagnostic.note(
                DiagnosticCode.UNKNOWN_NAME,
                stray.place(),
                "<tune file=\"%s\"> holds for no score.".formatted(stray.file()),
                near.isEmpty()
                        ? "Maybe the score has another name now, or its path is not seen from the folder of this file."
                        : "Maybe %s.".formatted(String.join(" or ", near)));
    }

    /** Returns the nearest names: of a name without its ending or without its folder that score. */
    private static List<String> near(String file, List<String> scores) {
        List<String> same = scores.stream()
                .filter(score -> score.endsWith("/" + nameOf(file))
                        || Source.stem(score).equals(file)
                        || Source.stem(nameOf(score)).equals(file))
                .limit(2)
                .toList();
        if (!same.isEmpty()) {
            return same;
        }
        Stream<String> known =
                file.contains("/") ? scores.stream() : scores.stream().map(StrayExceptions::nameOf);
        return NearestNames.of(file, known.distinct().toList());
    }

    private static String nameOf(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
