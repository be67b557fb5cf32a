package org.bellowscribe.solver.search;

import java.util.Arrays;

/**
 * A function from an opening to a cost that is constant on intervals: disjoint, in ascending order. Outside all of them
 * there is no way to go on.
 */
final class StepFunction {

    // Room for the rounding of bounds that are not integers.
    private static final double SLACK = 1e-3;

    int size;
    int[] from;
    int[] to;
    int[] value;
    /** Least value of a copy that nobody changes; below 0 where it is not known. */
    private int least = -1;

    StepFunction(int capacity) {
        from = new int[capacity];
        to = new int[capacity];
        value = new int[capacity];
    }

    /** Returns the function that has one value on one interval. */
    static StepFunction constant(int from, int to, int value) {
        StepFunction function = new StepFunction(1);
        if (from <= to) {
            function.append(from, to, value);
        }
        return function;
    }

    void clear() {
        size = 0;
    }

    boolean isEmpty() {
        return size == 0;
    }

    /** Returns a copy without spare room. */
    StepFunction trimmed() {
        StepFunction copy = new StepFunction(0);
        copy.size = size;
        copy.from = Arrays.copyOf(from, size);
        copy.to = Arrays.copyOf(to, size);
        copy.value = Arrays.copyOf(value, size);
        copy.least = least();
        return copy;
    }

    /** Appends an interval that lies after all others; joins it to the last one where it can. */
    void append(int start, int end, int cost) {
        if (size == from.length) {
            int capacity = Math.max(8, 2 * size);
            from = Arrays.copyOf(from, capacity);
            to = Arrays.copyOf(to, capacity);
            value = Arrays.copyOf(value, capacity);
        }
        join(start, end, cost);
    }

    // Like append, where there is room.
    private void join(int start, int end, int cost) {
        if (size > 0 && value[size - 1] == cost && to[size - 1] + 1 == start) {
            to[size - 1] = end;
        } else {
            from[size] = start;
            to[size] = end;
            value[size++] = cost;
        }
    }

    /** Appends an interval whose start and end are not before those of the last one; keeps the lower value. */
    void appendLowest(int start, int end, int cost) {
        int begin = start;
        while (size > 0 && to[size - 1] >= begin) {
            if (value[size - 1] <= cost) {
                begin = to[size - 1] + 1;
                break;
            }
            if (from[size - 1] < begin) {
                to[size - 1] = begin - 1;
                break;
            }
            size--;
        }
        if (begin <= end) {
            append(begin, end, cost);
        }
    }

    /** Returns the cost at an opening, or {@link Problem#NEVER}. */
    int at(int opening) {
        int low = 0;
        int high = size - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (opening < from[middle]) {
                high = middle - 1;
            } else if (opening > to[middle]) {
                low = middle + 1;
            } else {
                return value[middle];
            }
        }
        return Problem.NEVER;
    }

    /** Makes this the pointwise minimum of a function and another one that is raised by some points. */
    void setLowest(StepFunction a, StepFunction b, int raise) {
        clear();
        reserve(2 * (a.size + b.size) + 1);
        int i = 0;
        int j = 0;
        int x = Integer.MIN_VALUE;
        while (i < a.size && j < b.size) {
            int startA = Math.max(a.from[i], x);
            int startB = Math.max(b.from[j], x);
            if (startA < startB) {
                x = Math.min(a.to[i], startB - 1);
                join(startA, x, a.value[i]);
            } else if (startB < startA) {
                x = Math.min(b.to[j], startA - 1);
                join(startB, x, b.value[j] + raise);
            } else {
                x = Math.min(a.to[i], b.to[j]);
                join(startA, x, Math.min(a.value[i], b.value[j] + raise));
            }
            i += a.to[i] <= x ? 1 : 0;
            j += b.to[j] <= x ? 1 : 0;
            x++;
        }
        for (; i < a.size; i++) {
            join(Math.max(a.from[i], x), a.to[i], a.value[i]);
        }
        for (; j < b.size; j++) {
            join(Math.max(b.from[j], x), b.to[j], b.value[j] + raise);
        }
    }

    private void reserve(int capacity) {
        if (capacity > from.length) {
            from = new int[capacity];
            to = new int[capacity];
            value = new int[capacity];
        }
    }

    /** Makes this a copy of a function that is raised by some points. */
    void setRaised(StepFunction a, int raise) {
        reserve(a.size);
        size = a.size;
        System.arraycopy(a.from, 0, from, 0, size);
        System.arraycopy(a.to, 0, to, 0, size);
        for (int i = 0; i < size; i++) {
            value[i] = a.value[i] + raise;
        }
    }

    /**
     * Keeps only what can still be part of an answer within a limit: where {@code value + base - price * opening} is at
     * most the limit. The price makes the test a slanted line that cuts into each interval.
     */
    void clip(double base, double price, double limit) {
        int kept = 0;
        least = -1;
        for (int i = 0; i < size; i++) {
            double spare = limit - base - value[i] + SLACK;
            int start = from[i];
            int end = to[i];
            if (price > 0) {
                start = (int) Math.max(start, Math.ceil(-spare / price));
            } else if (price < 0) {
                end = (int) Math.min(end, Math.floor(spare / -price));
            } else if (spare < 0) {
                continue;
            }
            if (start <= end) {
                from[kept] = start;
                to[kept] = end;
                value[kept++] = value[i];
            }
        }
        size = kept;
    }

    /** Returns a copy that is raised by some points. */
    StepFunction raised(int points) {
        StepFunction copy = trimmed();
        copy.raise(points);
        return copy;
    }

    /** Raises all values. */
    void raise(int points) {
        for (int i = 0; i < size && points != 0; i++) {
            value[i] += points;
        }
        least = least < 0 || size == 0 ? -1 : least + points;
    }

    /** Keeps only openings between two. */
    void keep(int low, int high) {
        int kept = 0;
        least = -1;
        for (int i = 0; i < size; i++) {
            int start = Math.max(from[i], low);
            int end = Math.min(to[i], high);
            if (start <= end) {
                from[kept] = start;
                to[kept] = end;
                value[kept++] = value[i];
            }
        }
        size = kept;
    }

    /** Returns the least value; {@link Problem#NEVER} if there is none. */
    int least() {
        if (least >= 0) {
            return least;
        }
        int smallest = Problem.NEVER;
        for (int i = 0; i < size; i++) {
            smallest = Math.min(smallest, value[i]);
        }
        return smallest;
    }

    /** Returns an opening in the middle of the first interval that has the least value. */
    int middleOfLeast() {
        int lowest = least();
        for (int i = 0; i < size; i++) {
            if (value[i] == lowest) {
                return from[i] + (to[i] - from[i]) / 2;
            }
        }
        throw new IllegalStateException("The function must not be empty.");
    }

    /** Returns the largest value; 0 if there is none. */
    int most() {
        int largest = 0;
        for (int i = 0; i < size; i++) {
            largest = Math.max(largest, value[i]);
        }
        return largest;
    }

    /** Makes this a function whose openings are moved by an amount between two, and that is raised by some points. */
    void setMoved(StepFunction a, int least, int most, int raise) {
        clear();
        for (int i = 0; i < a.size; i++) {
            appendLowest(a.from[i] + least, a.to[i] + most, a.value[i] + raise);
        }
    }

    /** Makes this the part of a function that keeps a limit together with another one. */
    void setWithin(StepFunction a, StepFunction b, int limit) {
        clear();
        int i = 0;
        int j = 0;
        while (i < a.size && j < b.size) {
            int start = Math.max(a.from[i], b.from[j]);
            int end = Math.min(a.to[i], b.to[j]);
            if (start <= end && a.value[i] + b.value[j] <= limit) {
                append(start, end, a.value[i]);
            }
            if (a.to[i] < b.to[j]) {
                i++;
            } else {
                j++;
            }
        }
    }

    /** Returns the pointwise sum; it exists where both do. */
    static StepFunction sum(StepFunction a, StepFunction b) {
        StepFunction result = new StepFunction(a.size + b.size);
        int i = 0;
        int j = 0;
        while (i < a.size && j < b.size) {
            int start = Math.max(a.from[i], b.from[j]);
            int end = Math.min(a.to[i], b.to[j]);
            if (start <= end) {
                result.append(start, end, a.value[i] + b.value[j]);
            }
            if (a.to[i] < b.to[j]) {
                i++;
            } else {
                j++;
            }
        }
        return result;
    }
}
