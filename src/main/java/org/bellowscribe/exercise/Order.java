package org.bellowscribe.exercise;

import java.util.ArrayList;
import java.util.List;

/** In which order exercises are practiced. */
public enum Order {
    /** Each several times before the next. */
    BLOCKED("blocked"),
    /** One of each kind in turn, and again from the start. */
    MIXED("mixed");

    private final String id;

    Order(String id) {
        this.id = id;
    }

    /** Returns the id by which a user asks for it. */
    public String id() {
        return id;
    }

    /** Returns exercises in this order; they come kind by kind. */
    List<Exercise> of(List<Exercise> exercises) {
        if (this == BLOCKED) {
            return exercises;
        }
        List<List<Exercise>> kinds = new ArrayList<>();
        for (Exercise exercise : exercises) {
            List<Exercise> last = kinds.isEmpty() ? List.of() : kinds.get(kinds.size() - 1);
            if (last.isEmpty() || last.get(0).getClass() != exercise.getClass()) {
                kinds.add(new ArrayList<>());
            }
            kinds.get(kinds.size() - 1).add(exercise);
        }
        List<Exercise> mixed = new ArrayList<>();
        for (int round = 0; mixed.size() < exercises.size(); round++) {
            for (List<Exercise> kind : kinds) {
                if (round < kind.size()) {
                    mixed.add(kind.get(round));
                }
            }
        }
        return mixed;
    }
}
