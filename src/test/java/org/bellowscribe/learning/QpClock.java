package org.bellowscribe.learning;
import java.lang.management.ManagementFactory;
import java.util.*;
import org.ojalgo.optimisation.*;
class QpClock {
    static long cpu() { return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime(); }
    public static void main(String[] a) {
        for (double q : new double[]{0, 1e-6, 1e-3}) for (int rep = 0; rep < 3; rep++) for (int cuts : new int[]{20, 80}) {
            Random r = new Random(3);
            ExpressionsBasedModel m = new ExpressionsBasedModel();
            Expression ch = m.addExpression("c").weight(1);
            int n = 50;
            for (int i = 0; i < n; i++) { Variable v = m.addVariable("z" + i).lower(-2 - r.nextDouble()).upper(100); ch.set(v, v, 0.5); }
            Variable s = m.addVariable("s").lower(0).weight(500);
            if (q > 0) ch.set(s, s, q);
            for (int k = 0; k < cuts; k++) { Expression e = m.addExpression("k" + k).lower(r.nextDouble() * 5); for (int i = 0; i < n; i++) e.set(i, r.nextGaussian() + 0.3*Math.sin(i)); e.set(s, 1); }
            long t = System.nanoTime(), c = cpu();
            Optimisation.Result res = m.minimise();
            System.out.printf("q %g cuts %d: %.1f ms cpu %.1f %s %.4f%n", q, cuts, (System.nanoTime() - t) / 1e6, (cpu() - c) / 1e6, res.getState(), res.getValue());
        }
    }
}
