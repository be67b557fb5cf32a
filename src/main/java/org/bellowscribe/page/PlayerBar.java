package org.bellowscribe.page;

/** What one plays and listens with; the script takes it into use. */
final class PlayerBar {

    /** The bar. */
    static final String HTML = """
            <form id="player" aria-label="Listen" hidden>
            <p id="line"></p>
            <div class="main"><button type="button" id="back" aria-label="Note before">&#9664;</button>
            <button type="button" id="play">Play</button><button type="button" id="stop">Stop</button>
            <button type="button" id="next" aria-label="Next note">&#9654;</button>
            <label class="place"><span class="vh">Place in the tune</span><input type="range" id="place" min="0" value="0"></label></div>
            <details id="how"><summary>Tempo, measures, hands</summary><div>
            <label>Tempo <input type="range" id="tempo" min="40" max="120" step="5" value="100"> <output id="percent" for="tempo">100 %</output></label>
            <fieldset><legend>Measures</legend><label>from <select id="from"></select></label> <label>to <select id="to"></select></label>
            <button type="button" id="this">this measure</button> <button type="button" id="all">all</button>
            <label class="tick"><input type="checkbox" id="loop"> again and again</label></fieldset>
            <label>Hands <select id="hands"><option value="3">both</option><option value="1">right</option><option value="2">left</option></select></label>
            <label class="tick"><input type="checkbox" id="count" checked> count in</label>
            </div></details>
            </form>
            """;

    private PlayerBar() {}
}
