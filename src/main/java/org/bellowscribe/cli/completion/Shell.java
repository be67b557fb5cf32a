package org.bellowscribe.cli.completion;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** A shell that completes words. */
public enum Shell {
    /** GNU bash. */
    BASH(BashScript::of),
    /** zsh. */
    ZSH(ZshScript::of),
    /** fish. */
    FISH(FishScript::of),
    /** PowerShell. */
    POWERSHELL(PowerShellScript::of);

    private final Function<List<DescribedCommand>, String> script;

    Shell(Function<List<DescribedCommand>, String> script) {
        this.script = script;
    }

    /** Returns its name on the command line. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns the script that completes the words of a line. */
    public String script(List<DescribedCommand> commands) {
        return script.apply(commands);
    }
}
