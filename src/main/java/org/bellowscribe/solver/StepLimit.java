package org.bellowscribe.solver;

/** A hard limit on what the right hand does at one event. Found through the service loader. */
public interface StepLimit {

    /** Returns the id in kebab-case. */
    String id();

    /** Returns one sentence for people, ending with a full stop. */
    String summary();

    /** Returns true if the choice keeps the limit. */
    boolean allows(Moment moment, Choice choice);
}
