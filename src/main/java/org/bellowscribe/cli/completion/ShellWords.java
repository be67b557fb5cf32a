package org.bellowscribe.cli.completion;

/** Texts as words of a shell. */
final class ShellWords {

    private ShellWords() {}

    /** Returns a text in single quotes, as bash and zsh read it. */
    static String quoted(String text) {
        return "'" + text.replace("'", "'\\''") + "'";
    }

    /** Returns the first sentence of a help text, which is all that there is room for beside a name. */
    static String brief(String help) {
        int end = help.indexOf(". ");
        String sentence = end < 0 ? help : help.substring(0, end);
        int part = sentence.indexOf(';');
        String brief = part < 0 ? sentence : sentence.substring(0, part);
        return brief.endsWith(".") ? brief.substring(0, brief.length() - 1) : brief;
    }
}
