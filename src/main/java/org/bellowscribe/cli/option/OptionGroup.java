package org.bellowscribe.cli.option;

/** What an option is about: the headings under which a command with many options lists them, in their order. */
public enum OptionGroup {
    /** Which scores, and what in them. */
    MARKED("What is marked"),
    /** What decides how a tune is played. */
    PLAYED("How it is played"),
    /** What stands on the sheet. */
    PRINTED("What is printed"),
    /** What is told of a tune, or written for it, besides the sheet. */
    BESIDES("What is told and written besides"),
    /** Where results are put. */
    PLACE("Where it goes"),
    /** How the run goes on and what it prints. */
    RUN("The run"),
    /** What belongs to one command only. */
    OTHER("Options");

    private final String heading;

    OptionGroup(String heading) {
        this.heading = heading;
    }

    /** Returns the words that stand above its options. */
    public String heading() {
        return heading;
    }
}
