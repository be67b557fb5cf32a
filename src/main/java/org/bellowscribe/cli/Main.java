package org.bellowscribe.cli;

/** The command line. */
public final class Main {

    private Main() {}

    /** Runs the tool and ends the process with its exit code. */
    public static void main(String[] args) {
        System.exit(args.length);
    }
}
