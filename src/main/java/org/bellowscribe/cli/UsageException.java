package org.bellowscribe.cli;

/** The command line is wrong; the message says how, in lines for people. */
final class UsageException extends Exception {

    UsageException(String message) {
        super(message);
    }

    String lines() {
        return String.valueOf(getMessage());
    }
}
