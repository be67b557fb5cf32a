package org.bellowscribe.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.manner.MannerLibrary;

/**
 * What a third reader found wrong with the program's sheets, each with what a player does instead (facts/teachers/README.md
 * beside the project; judgement, no published source).
 *
 * @param where the tune and the measure
 * @param player what a player does
 * @param met true if the program does so
 */
record Remark(String where, String player, boolean met) {

    private static final String SOLDIERS_JOY = "rjl20-oldtime__SlowerThanDirt-34-Soldier_s_Joy";
    private static final String TEMPLEHOUSE = "oneills-1850__0732_0758_bs-756-The_Templehouse_Jig";
    private static final String CONNAUGHTMAN = "fiddle-tunes-musescore__The_Connaughtmans_Rambles";
    private static final double LOWEST = 0.1;

    /** Looks at everything the reader remarked on that can be looked at by a program. */
    static List<Remark> all(Manner usual, List<MarkedTune> tunes) throws DiagnosedException {
        List<Remark> remarks = new ArrayList<>();
        ReadTune soldier = ReadTune.of(SOLDIERS_JOY, usual);
        for (String measure : List.of("3", "5", "7")) {
            boolean outer = soldier.measure(measure).stream().allMatch(Remark::isOnOuterRow);
            remarks.add(new Remark("Soldier's Joy, measure " + measure, "all of it on the D row", outer));
        }
        remarks.add(mostlyOuter("Soldier's Joy", soldier));
        ReadTune connaughtman = ReadTune.of(CONNAUGHTMAN, usual);
        remarks.add(mostlyOuter("The Connaughtman's Rambles", connaughtman));
        remarks.add(new Remark(
                "The Connaughtman's Rambles, measure 2",
                "no single note of the run turned",
                singleTurns(connaughtman.measure("2")) == 0));
        remarks.add(new Remark(
                "The Templehouse, measure 1",
                "no single note of the run turned",
                singleTurns(ReadTune.of(TEMPLEHOUSE, usual).measure("1")) == 0));
        for (MarkedTune tune : tunes) {
            remarks.addAll(ofWhole(tune, usual));
        }
        return remarks;
    }

    private static List<Remark> ofWhole(MarkedTune tune, Manner usual) throws DiagnosedException {
        Solution solution = tune.played(usual);
        double capacity =
                InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID).bellows().capacity() * 1000;
        boolean inside = solution.steps().stream()
                .allMatch(step ->
                        step.openingAfter() >= LOWEST * capacity && step.openingAfter() <= (1 - LOWEST) * capacity);
        Solution learner = tune.played(MannerLibrary.of("learner"));
        return List.of(
                new Remark(tune.name(), "the bellows between 10 and 90 % open", inside),
                new Remark(tune.name(), "no two full presses in neighboring measures", fullInARow(solution) == 0),
                new Remark(tune.name(), "the index not idle while the little finger plays", !isIndexIdle(solution)),
                new Remark(
                        tune.name(),
                        "a learner plays equal measures alike",
                        learner.unlike().isEmpty()));
    }

    private static Remark mostlyOuter(String tune, ReadTune read) {
        List<Step> notes = notes(read.solution());
        long outer = notes.stream().filter(Remark::isOnOuterRow).count();
        return new Remark(tune + ", in D", "most of it on the D row", 2 * outer > notes.size());
    }

    private static boolean isOnOuterRow(Step step) {
        return step.buttons().stream().map(Button::row).allMatch(Predicate.isEqual(1));
    }

    private static List<Step> notes(Solution solution) {
        return solution.steps().stream().filter(step -> !step.event().isRest()).toList();
    }

    private static int singleTurns(List<Step> steps) {
        int turns = 0;
        for (int i = 1; i + 1 < steps.size(); i++) {
            turns += steps.get(i - 1).direction() != steps.get(i).direction()
                            && steps.get(i).direction() != steps.get(i + 1).direction()
                    ? 1
                    : 0;
        }
        return turns;
    }

    private static int fullInARow(Solution solution) {
        int count = 0;
        int last = -2;
        for (Step step : solution.steps()) {
            if (step.air() == AirUse.FULL) {
                count += step.event().measure() - last <= 1 ? 1 : 0;
                last = step.event().measure();
            }
        }
        return count;
    }

    private static boolean isIndexIdle(Solution solution) {
        List<Step> notes = notes(solution);
        boolean little = notes.stream().anyMatch(step -> step.fingers().contains(4));
        return little && notes.stream().noneMatch(step -> step.fingers().contains(1));
    }

    @Override
    public String toString() {
        return (met ? "met      " : "NOT MET  ") + where + ": " + player;
    }
}
