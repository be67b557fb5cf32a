package org.bellowscribe.solver.search;

import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * The pass over the root: the least cost when stretches need not agree on the anchors' openings. Found within a limit that
 * is raised from the bounds, and where that does not do, from what each stretch costs by itself.
 */
final class RootPass {

    // In points. A limit raised beyond this is raised to the end.
    private static final int LARGE = 20_000;
    // Where so little may be added to the bound, one pass tells more than the stretches do.
    private static final int NEAR = 32;
    // How much dearer than the least the ways into a stretch are known: what is missed adds up over the stretches.
    private static final int LEAST_ROOM = 4;
    private static final int MOST_ROOM = 24;

    private final Setting setting;
    private final Work work;
    private final Node root;
    private final RootBounds bounds;
    private final int unit;

    RootPass(Setting setting, Work work, Node root, RootBounds bounds) {
        this.setting = setting;
        this.work = work;
        this.root = root;
        this.bounds = bounds;
        unit = setting.problem().unit();
    }

    /** Returns the pass; null if the root has no answer that is cheap enough, or if the work limit strikes. */
    @Nullable
    AirPass run() {
        int bound = bounds.bound();
        Ceiling ceiling = bounds.ceiling();
        // The least is seldom less than a point above the bound.
        int first = Math.min(work.best() - 1, bound + unit - 1);
        AirPass pass = bound < work.best() ? work.pass(root, ceiling, first) : null;
        if (pass != null || first + 1 >= work.best()) {
            return pass;
        }
        boolean far = work.best() - bound > NEAR * unit;
        if (far && setting.graph().firsts.size() > 1 && !proveStretches()) {
            return null;
        }
        int next = Math.min(work.best() - 1, Math.max(first + unit, bounds.bound()));
        return raise(next, work.best(), limit -> work.pass(root, ceiling, limit));
    }

    /**
     * Returns the pass that takes openings as they are; null if the root has no answer that is cheap enough, or if the
     * work limit strikes.
     *
     * @param bound the least that is known of the root
     */
    @Nullable
    AirPass asTheyAre(int bound) {
        Frame frame = Frame.asTheyAre(setting, root);
        Ceiling ceiling = bounds.ceiling(frame);
        return raise(bound, work.best(), limit -> work.pass(frame, ceiling, limit));
    }

    // From the last stretch to the first; false if one of them has no answer.
    private boolean proveStretches() {
        Stretches stretches = bounds.stretches();
        int count = setting.graph().firsts.size();
        int room = unit * Math.min(MOST_ROOM, LEAST_ROOM + count);
        Ceiling ceiling =
                new PricedCeiling(setting.problem(), bounds.prices, stretches, Frame.fromAnchors(setting, root));
        for (int s = count - 1; s >= 0; s--) {
            int stretch = s;
            IntFunction<@Nullable AirPass> passWithin =
                    limit -> work.ran(AirPass.alone(setting, root, ceiling, stretch, stretches.beyond(), limit));
            AirPass pass = raise(stretches.look(stretch) + room, Problem.NEVER, passWithin);
            if (pass == null) {
                return false;
            }
            stretches.settle(stretch, pass);
        }
        bounds.prove(stretches);
        return true;
    }

    // Raises the limit until a pass finds something: the first that does is exact, and the cheapest passes come first.
    private @Nullable AirPass raise(int bound, int below, IntFunction<@Nullable AirPass> passWithin) {
        int raise = 0;
        while (bound < below) {
            int limit = Math.min(bound + raise, below - 1);
            AirPass pass = passWithin.apply(limit);
            if (pass != null || limit >= below - 1 || work.isSpent()) {
                return pass;
            }
            raise = raise > LARGE * unit ? Problem.NEVER : 2 * raise + unit;
        }
        return null;
    }
}
