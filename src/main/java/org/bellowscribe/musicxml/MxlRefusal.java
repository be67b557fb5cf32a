package org.bellowscribe.musicxml;

import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/** Refuses a compressed score that cannot be unpacked. */
final class MxlRefusal {

    static final String DOWNLOAD_AGAIN = "Maybe fetch or export the file again.";

    private MxlRefusal() {}

    static DiagnosedException of(String sentence, String... advice) {
        return new DiagnosedException(Diagnostic.error(DiagnosticCode.UNREADABLE, Place.FILE, sentence, advice));
    }
}
