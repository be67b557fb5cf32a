package org.bellowscribe.page;

import org.bellowscribe.report.TuneSummary;
import org.jspecify.annotations.Nullable;

/**
 * A tune in the index.
 *
 * @param title its title, or the name of its file if it could not be read
 * @param page place of its page below the folder of the index, with slashes; null if it was not marked
 * @param summary its figures; null if it was not marked
 * @param grade number of its grade; 0 if it was not marked
 * @param why why it was not marked; empty if it was
 */
public record IndexLine(
        String title, @Nullable String page, @Nullable TuneSummary summary, int grade, String why) {}
