package org.bellowscribe.batch;

import java.util.List;
import org.bellowscribe.annotation.edit.LostMarks;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.ScoreDocument;

/** Takes our marks out of one score and tells how many there were. */
final class StripJob implements SafeJob.Work {

    @Override
    public Result run(Source source, byte[] bytes) throws DiagnosedException {
        ScoreDocument score = ScoreDocument.decode(bytes);
        int marks = score.markCount();
        source.write(score.withoutMarks().encode());
        boolean lost = marks == 0 && LostMarks.mayBeAmong(score.otherTexts());
        String told = marks == 0 ? Jobs.NO_MARKS : marks == 1 ? "1 mark taken out" : marks + " marks taken out";
        return new Result(source, true, null, lost ? List.of(lost()) : List.of(), List.of(told));
    }

    private static Diagnostic lost() {
        return Diagnostic.warning(
                DiagnosticCode.LYRICS,
                Place.FILE,
                "Lyrics that look like marks have no names of ours, as if a notation program had dropped them: they stay.",
                "Maybe mark this file again with the same options, then strip the result.");
    }
}
