package org.bellowscribe.batch;

import java.io.File;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.PatternSyntaxException;

/**
 * A pattern of file names, as a shell has it: {@code *} and {@code ?} within a name, {@code **} over folders (none among
 * them), {@code [ab]} and <code>{a,b}</code> for a choice.
 */
public final class PathPattern {

    private static final String SIGNS = "*?[{";

    private final PathMatcher matcher;
    private final boolean ofNames;

    private PathPattern(PathMatcher matcher, boolean ofNames) {
        this.matcher = matcher;
        this.ofNames = ofNames;
    }

    /**
     * Reads a pattern. Without a slash it is one of names, wherever they stand; with a slash at its end one of all that is
     * in a folder.
     *
     * @throws PatternSyntaxException if it is none
     */
    public static PathPattern of(String text) {
        String pattern = text.replace(File.separatorChar, '/');
        String whole = pattern.endsWith("/") ? pattern + "**" : pattern;
        return new PathPattern(matcher(whole), !pattern.contains("/"));
    }

    /**
     * Reads a pattern of whole paths, though it has no slash.
     *
     * @throws PatternSyntaxException if it is none
     */
    static PathPattern ofPaths(String text) {
        return new PathPattern(matcher(text.replace(File.separatorChar, '/')), false);
    }

    private static PathMatcher matcher(String pattern) {
        // For Java two stars and a slash are one folder at the least.
        return FileSystems.getDefault().getPathMatcher("glob:" + pattern.replace("**/", "{**/,}"));
    }

    /** Tells whether a word has signs of a pattern in it. */
    public static boolean isOne(String word) {
        return word.chars().anyMatch(letter -> SIGNS.indexOf(letter) >= 0);
    }

    /** Returns the folder above the first sign of a pattern, as it was written; empty for the current one. */
    public static String folderOf(String word) {
        String pattern = word.replace(File.separatorChar, '/');
        int sign = 0;
        while (SIGNS.indexOf(pattern.charAt(sign)) < 0) {
            sign++;
        }
        return pattern.substring(0, pattern.lastIndexOf('/', sign) + 1);
    }

    /** Returns the patterns of a list with commas between; those within braces are of the pattern. */
    public static List<String> split(String list) {
        List<String> patterns = new ArrayList<>();
        int depth = 0;
        int begin = 0;
        for (int i = 0; i < list.length(); i++) {
            char letter = list.charAt(i);
            depth += letter == '{' ? 1 : letter == '}' ? -1 : 0;
            if (letter == ',' && depth == 0) {
                patterns.add(list.substring(begin, i).strip());
                begin = i + 1;
            }
        }
        patterns.add(list.substring(begin).strip());
        return patterns;
    }

    /**
     * Tells whether a file matches.
     *
     * @param relative its path below the folder that is searched
     */
    public boolean matches(Path relative) {
        return matcher.matches(ofNames ? relative.getFileName() : relative);
    }

    /** Tells whether a file or, for a pattern of names, a folder on the way to it matches. */
    boolean matchesOnTheWay(Path relative) {
        if (!ofNames) {
            return matcher.matches(relative);
        }
        for (Path name : relative) {
            if (matcher.matches(name)) {
                return true;
            }
        }
        return false;
    }
}
