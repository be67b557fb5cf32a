package org.bellowscribe.cli;

import java.util.List;

/** What the files around the sheets of an edition are called, without their endings. */
final class EditionNames {

    static final String FRONT = "front-page";
    static final String INDEX = "index";
    static final String BUTTONS = "buttons";

    static final List<String> ALL = List.of(FRONT, INDEX, BUTTONS);

    private EditionNames() {}
}
