package org.bellowscribe.diagnostic;

import java.util.Locale;

/** How much a remark matters. */
public enum Severity {
    /** The tune is not marked. */
    ERROR,
    /** The tune is marked; please look. */
    WARNING,
    /** The tune is marked; for your information. */
    NOTE;

    /** Returns the name in small letters, as it is printed. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
