package org.bellowscribe.batch;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** Files of pins whose name is that of no score beside them. */
final class StrayPins {

    private StrayPins() {}

    /**
     * Says that a file of pins belongs to no score.
     *
     * @param pins the file
     * @param sources all scores
     */
    static Sources.Problem remark(Path pins, Collection<Source> sources) {
        String name = String.valueOf(pins.getFileName());
        String stem = name.substring(0, name.length() - Source.PINS.length());
        Path folder = folder(pins);
        List<String> beside = sources.stream()
                .filter(source -> Objects.equals(folder(source.file()), folder))
                .map(Source::stem)
                .distinct()
                .toList();
        List<String> near = NearestNames.of(stem, beside);
        String advice = near.isEmpty()
                ? "call it like its score, which stands beside it: NAME%s for NAME.musicxml".formatted(Source.PINS)
                : "call it "
                        + String.join(
                                " or ",
                                near.stream().map(each -> each + Source.PINS).toList());
        return new Sources.Problem(
                pins.toString(),
                Diagnostic.warning(
                        DiagnosticCode.UNKNOWN_NAME,
                        Place.FILE,
                        "No score beside these pins is called %s, so they fix nothing.".formatted(stem),
                        "Maybe %s.".formatted(advice)));
    }

    private static @Nullable Path folder(Path file) {
        return file.toAbsolutePath().normalize().getParent();
    }
}
