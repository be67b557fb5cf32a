package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.sound.MidiFile;
import org.bellowscribe.stage.Stage;
import org.bellowscribe.stage.StageSheets;
import org.bellowscribe.stage.StageTune;

/** The stages of one tune, as far as they were asked for and can be played. */
final class StageOutput {

    private final List<BesideSheet> sheets = new ArrayList<>();
    private final List<Diagnostic> remarks = new ArrayList<>();

    private StageOutput() {}

    /**
     * Decides and prints the stages.
     *
     * @param tune the tune as it was decided, with both hands
     * @param printer what prints them
     * @throws DiagnosedException if marks cannot be written
     */
    static StageOutput of(StageChoice choice, DecidedTune tune, StageSheets printer) throws DiagnosedException {
        StageOutput output = new StageOutput();
        output.write(choice, tune, printer);
        return output;
    }

    private void write(StageChoice choice, DecidedTune tune, StageSheets printer) throws DiagnosedException {
        StageDecider decider = new StageDecider(tune);
        List<StageTune> stages = new ArrayList<>();
        for (Stage stage : choice.stages()) {
            StageDecider.Staged staged = decider.decide(stage, choice.percent(stage));
            remarks.addAll(staged.remarks());
            if (staged.tune() != null) {
                stages.add(staged.tune());
            }
        }
        for (StageTune stage : choice.scores() ? stages : List.<StageTune>of()) {
            sheets.add(new BesideSheet(
                    StageChoice.ending(stage.stage()), printer.score(stage).encode()));
        }
        if (choice.parts() && !stages.isEmpty()) {
            sheets.add(new BesideSheet(StageChoice.PARTS, printer.parts(stages).encode()));
        }
        stages.stream()
                .filter(stage -> choice.sounds(stage.stage()))
                .forEach(stage ->
                        sheets.add(new BesideSheet(StageChoice.soundEnding(stage.stage()), MidiFile.of(stage.tune()))));
    }

    /** Returns the files. */
    List<BesideSheet> sheets() {
        return sheets;
    }

    /** Returns what there is to say. */
    List<Diagnostic> remarks() {
        return remarks;
    }
}
