package org.bellowscribe.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against trying every set of a few items. */
class ClosureTest {

    private static final int ITEMS = 9;
    private static final int TRIES = 60;

    /** Asks by item and other; two that ask for each other may be told as joined. */
    private static int heaviest(long[] weight, List<int[]> asks, boolean joined) {
        Closure closure = new Closure(weight);
        for (int[] ask : asks) {
            boolean mutual = asks.stream().anyMatch(other -> other[0] == ask[1] && other[1] == ask[0]);
            if (joined && mutual) {
                closure.join(ask[0], ask[1]);
            } else {
                closure.ask(ask[0], ask[1]);
            }
        }
        boolean[] in = closure.heaviest();
        int set = 0;
        for (int i = 0; i < in.length; i++) {
            set |= in[i] ? 1 << i : 0;
        }
        return set;
    }

    private static int byTrying(long[] weight, List<int[]> asks) {
        int best = 0;
        for (int set = 0; set < 1 << weight.length; set++) {
            int tried = set;
            boolean closed = asks.stream().noneMatch(ask -> (tried >> ask[0] & 1) == 1 && (tried >> ask[1] & 1) == 0);
            long more = sum(weight, set) - sum(weight, best);
            if (closed && (more > 0 || (more == 0 && Integer.bitCount(set) < Integer.bitCount(best)))) {
                best = set;
            }
        }
        return best;
    }

    private static long sum(long[] weight, int set) {
        long sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += (set >> i & 1) * weight[i];
        }
        return sum;
    }

    @ParameterizedTest(name = "joined {0}")
    @ValueSource(booleans = {false, true})
    void noClosedSetIsHeavierNorAsHeavyAndSmaller(boolean joined) {
        for (int seed = 0; seed < TRIES; seed++) {
            Random random = new Random(seed);
            long[] weight = random.longs(ITEMS, -8, 9).toArray();
            List<int[]> asks = new ArrayList<>();
            for (int k = random.nextInt(2 * ITEMS); k > 0; k--) {
                int[] ask = {random.nextInt(ITEMS), random.nextInt(ITEMS)};
                asks.add(ask);
                if (random.nextInt(3) == 0) {
                    asks.add(new int[] {ask[1], ask[0]});
                }
            }
            assertEquals(byTrying(weight, asks), heaviest(weight, asks, joined), "seed " + seed);
        }
    }

    @Test
    void whatIsImpossibleStaysSoHoweverMuchOfItIsJoined() {
        long[] weight = new long[20_000];
        Arrays.fill(weight, -Integer.MAX_VALUE * 1_000_000L);
        weight[0] = 7;
        Closure closure = new Closure(weight);
        for (int i = 1; i < weight.length; i++) {
            closure.join(0, i);
        }
        assertFalse(closure.heaviest()[0]);
    }
}
