package org.bellowscribe.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.bellowscribe.compare.ComparedTune;
import org.bellowscribe.compare.Lots;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.marking.Way;
import org.bellowscribe.musicxml.NamedNotes;
import org.bellowscribe.page.NoteIds;
import org.jspecify.annotations.Nullable;

/** Plays tunes in two ways and writes the two sheets. */
public final class CompareJob implements Job {

    private final Job safely = SafeJob.of(this::compare);
    private final Way first;
    private final Way second;
    private final Path folder;
    private final @Nullable Lots lots;
    private final Map<Source, ComparedTune> tunes = new ConcurrentHashMap<>();

    /**
     * Creates the job.
     *
     * @param ways the two ways
     * @param folder where the page will be
     * @param lots to draw the order of the tunes, and which way is A; null for the order of the files, the first way being A
     */
    public CompareJob(List<Way> ways, Path folder, @Nullable Lots lots) {
        first = ways.get(0);
        second = ways.get(1);
        this.folder = folder;
        this.lots = lots;
    }

    @Override
    public Result run(Source source) {
        return safely.run(source);
    }

    private Result compare(Source source, byte[] bytes) throws DiagnosedException {
        Way.Played one = first.play(bytes, source.stem());
        Way.Played other = second.play(bytes, source.stem());
        boolean swapped = lots != null && lots.swaps(link(source.target()));
        ComparedTune.Side a = swapped ? side(source, "A", second, other) : side(source, "A", first, one);
        ComparedTune.Side b = swapped ? side(source, "B", first, one) : side(source, "B", second, other);
        tunes.put(source, new ComparedTune(link(source.target()), a, b));
        List<Diagnostic> remarks = new ArrayList<>(one.remarks());
        other.remarks().stream().filter(remark -> !remarks.contains(remark)).forEach(remarks::add);
        return new Result(source, true, null, remarks).titled(a.tune().tune().title());
    }

    private ComparedTune.Side side(Source source, String letter, Way way, Way.Played played) throws DiagnosedException {
        String name = source.name();
        Path score = source.beside("." + letter + name.substring(name.lastIndexOf('.')));
        AtomicFile.write(score, played.score().encode());
        String before = ComparedTune.before(link(source.target()), letter);
        byte[] engraved =
                NamedNotes.compressed(played.score(), NoteIds.of(played.tune().tune(), before));
        return new ComparedTune.Side(way.name(), played.tune(), link(score), engraved);
    }

    private String link(Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }

    /** Returns what came of the files, in the order of the page. */
    public List<ComparedTune> compared(List<Result> results) {
        List<ComparedTune> all = new ArrayList<>();
        for (Result result : results) {
            ComparedTune tune = tunes.get(result.source());
            if (tune != null) {
                all.add(tune);
            }
        }
        if (lots != null) {
            all.sort(Comparator.comparingLong(tune -> lots.place(tune.file())));
        }
        return all;
    }
}
