package org.bellowscribe.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class HtmlTest {

    @Test
    void whatATitleHoldsIsText() {
        assertEquals("&lt;b onclick=&quot;x&quot;&gt; &amp; &#39;y&#39;", Html.text("<b onclick=\"x\"> & 'y'"));
    }

    @Test
    void whatTurnsTheDirectionOfWritingIsShown() {
        assertEquals("a\uFFFDb", Html.text("a\u202Eb"));
    }

    @Test
    void aLinkIsAPathWhateverTheNameHolds() {
        assertEquals("a/50%25%20%231%3F%20%C3%A9%22.html", Html.link("a/50% #1? é\".html"));
    }
}
