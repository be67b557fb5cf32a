package org.bellowscribe.cli.completion;

import java.util.List;
import java.util.Locale;

/** A shell that completes words. */
public enum Shell {
    /** GNU bash. */
    BASH,
    /** zsh. */
    ZSH,
    /** fish. */
    FISH,
    /** PowerShell. */
    POWERSHELL;

    /** Returns its name on the command line. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns the script that completes the words of a line. */
    public String script(List<DescribedCommand> commands) {
        return switch (this) {
            case BASH -> BashScript.of(commands);
            case ZSH -> ZshScript.of(commands);
            case FISH -> FishScript.of(commands);
            case POWERSHELL -> PowerShellScript.of(commands);
        };
    }
}
