package org.bellowscribe.learning;
import java.lang.management.ManagementFactory;
import java.util.*;
import org.bellowscribe.solver.*;
import org.bellowscribe.solver.manner.MannerLibrary;
class Clock {
    static long cpu() { return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime(); }
    public static void main(String[] a) throws Exception {
        Manner goal = MannerLibrary.of("across-the-rows"), base = MannerLibrary.of("along-the-row"), chords = MannerLibrary.of("chords-first");
        List<Task> ts = Probe.tasks(9, 0, 12);
        for (int rep = 0; rep < 2; rep++) {
          for (long lim : new long[]{500_000, 60_000, 20_000, 5_000}) {
            long tf = 0, tm = 0, tr = 0, tc = 0; int nr = 0; int pts = 0;
            for (Task t : ts) {
                Pins pins = WholeSheet.of(Solver.attempt(t.with(t.options().with(goal))));
                Task b = t.with(t.options().with(base).withCellLimit(lim));
                long x = cpu(); Solution free = Solver.attempt(b); tf += cpu() - x; pts += free.cost().total();
                x = cpu(); Solution meant = Solver.attempt(b.with(pins)); tm += cpu() - x;
                x = cpu(); CaseCounts.of(b, free); tc += cpu() - x;
                for (int m : Agreement.measuresThatDiffer(pins, free)) {
                    Pins p = new Pins(pins.list().stream().filter(q -> t.tune().events().get(q.event()).measure() != m).toList());
                    x = cpu(); Solver.attempt(b.with(p)); tr += cpu() - x; nr++;
                }
            }
            System.out.printf("limit %d: free %.1f ms meant %.1f counts %.1f rival %.1f x %d, points %d%n", lim, tf/1e6/ts.size(), tm/1e6/ts.size(), tc/1e6/ts.size(), tr/1e6/nr, nr, pts);
          }
        }
    }
}
