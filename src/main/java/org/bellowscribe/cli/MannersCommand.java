package org.bellowscribe.cli;

import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Shows manners of playing. */
final class MannersCommand extends LibraryCommand<Manner> {

    MannersCommand() {
        super(MannerLibrary.library());
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the manners of playing; show tells what each rule charges in one of them, or"
                + " in a manner file; check looks for what is wrong in a file.";
    }

    @Override
    String list() {
        return MannerTable.list();
    }

    @Override
    String show(Manner shown) {
        return MannerTable.show(shown);
    }

    @Override
    String title(Manner shown) {
        return shown.id();
    }
}
