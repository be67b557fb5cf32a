package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * How much each pitch class is heard in a stretch of melody: its time, in quarters, more where it begins on a beat, and more
 * where no step leads on from it: what is left by a leap or before a rest belongs to the harmony, what is left by a step may
 * be passing (common practice, no source).
 *
 * @param weights one weight for each semitone above C, 0 or more
 */
record MelodyTones(List<Double> weights) {

    private static final int OCTAVE = 12;
    private static final double AT_START = 2;
    private static final double ON_PULSE = 1.5;
    private static final double NOT_LEFT_BY_STEP = 1.3;
    private static final int STEP = 2;

    /** Copies the list. */
    MelodyTones {
        weights = List.copyOf(weights);
    }

    /** Returns the tones of each span, in the same order. */
    static List<MelodyTones> of(Tune tune, List<HarmonySpan> spans) {
        return new Collector(tune).of(spans);
    }

    /** Returns the weight of a pitch class. */
    double of(PitchClass tone) {
        return weights.get(tone.semitone());
    }

    /** Returns the sum of all weights; 0 in a silent stretch. */
    double sum() {
        return weights.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Walks once over the events; times count in quarters from the start of the first written measure. */
    private static final class Collector {

        private final Tune tune;
        private final double[] starts;

        Collector(Tune tune) {
            this.tune = tune;
            starts = new double[tune.measures().size()];
            for (int m = 1; m < starts.length; m++) {
                starts[m] = starts[m - 1] + tune.measures().get(m - 1).length().toDouble();
            }
        }

        List<MelodyTones> of(List<HarmonySpan> spans) {
            List<Event> events = tune.events();
            List<MelodyTones> tones = new ArrayList<>();
            int from = 0;
            for (HarmonySpan span : spans) {
                double begin = starts[span.measure()] + span.onset().toDouble();
                double end = begin + span.length().toDouble();
                while (from < events.size() && end(events.get(from)) <= begin) {
                    from++;
                }
                double[] weights = new double[OCTAVE];
                for (int e = from; e < events.size() && start(events.get(e)) < end; e++) {
                    add(weights, events.get(e), begin, end);
                }
                List<Double> heard = new ArrayList<>();
                for (double weight : weights) {
                    heard.add(weight);
                }
                tones.add(new MelodyTones(heard));
            }
            return tones;
        }

        private void add(double[] weights, Event event, double begin, double end) {
            double start = start(event);
            double heard = Math.min(end, end(event)) - Math.max(begin, start);
            double beat = start <= begin ? AT_START : isOnPulse(event) ? ON_PULSE : 1;
            double accent = isLeftByStep(event) ? beat : beat * NOT_LEFT_BY_STEP;
            for (Pitch pitch : event.pitches()) {
                weights[pitch.pitchClass().semitone()] +=
                        accent * heard / event.pitches().size();
            }
        }

        // A note that is struck again is left by no leap either. Of notes struck together the lowest counts.
        private boolean isLeftByStep(Event event) {
            int next = event.index() + 1;
            if (event.isRest()
                    || next == tune.events().size()
                    || tune.events().get(next).isRest()) {
                return false;
            }
            int here = event.pitches().get(0).midiNumber();
            return Math.abs(tune.events().get(next).pitches().get(0).midiNumber() - here) <= STEP;
        }

        private boolean isOnPulse(Event event) {
            Measure measure = tune.measureOf(event);
            double pulses = event.onset().plus(measure.beatOffset()).toDouble()
                    / measure.time().pulse().toDouble();
            return Math.abs(pulses - Math.rint(pulses)) < 1e-9;
        }

        private double start(Event event) {
            return starts[event.measure()] + event.onset().toDouble();
        }

        private double end(Event event) {
            return start(event) + event.duration().toDouble();
        }
    }
}
