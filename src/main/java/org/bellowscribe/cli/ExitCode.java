package org.bellowscribe.cli;

/** What the process tells its caller. */
enum ExitCode {
    /** Every tune was done. */
    ALL_DONE(0),
    /** Some tune was not. */
    SOME_FAILED(1),
    /** The command line is wrong; nothing was done. */
    WRONG_USE(2),
    /** The tool itself broke. */
    BROKEN(3);

    private final int code;

    ExitCode(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }
}
