package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.cause.AirCause;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Whereabouts;

/** The bellows through one playing of the tune, drawn and in words. */
final class BellowsSection {

    private final Openings openings;
    private final List<AirCause> causes;
    private final List<PlayedMeasure> played;
    private final Whereabouts places;

    BellowsSection(DecidedTune tune) {
        openings = Openings.of(tune);
        causes = tune.airCauses();
        played = PlayedMeasure.of(tune.tune());
        places = new Whereabouts(tune.tune());
    }

    /** Returns the section's content. */
    String html() {
        StringBuilder html = new StringBuilder();
        html.append("<p>").append(nearest()).append(' ').append(without()).append("</p>\n<div id=\"strips\">\n");
        Strip.of(played).forEach(strip -> html.append(StripDrawing.of(openings, strip)));
        return html.append("</div>\n<p class=\"key\">")
                .append(key())
                .append("</p>\n")
                .append(why())
                .toString();
    }

    private String why() {
        StringBuilder list = new StringBuilder();
        for (AirCause cause : causes) {
            list.append("<li data-step=\"%d\"><a href=\"#s%d\">%s</a>: %s</li>\n"
                    .formatted(
                            cause.event(),
                            cause.event(),
                            Html.capital(Html.text(places.name(cause.event()))),
                            Html.text(cause.text())));
        }
        return list.isEmpty()
                ? ""
                : "<h3>Why the air button is pressed</h3>\n<ul class=\"about\">\n" + list + "</ul>\n";
    }

    private String nearest() {
        int low = openings.mostClosed();
        int high = openings.mostOpen();
        return "Nearest to closed: %d&nbsp;%% open after %s. Nearest to fully open: %d&nbsp;%% after %s."
                .formatted(
                        Math.round(openings.moments().get(low).after()),
                        place(low),
                        Math.round(openings.moments().get(high).after()),
                        place(high));
    }

    private String without() {
        if (!openings.usesAir()) {
            return "The air button is never pressed.";
        }
        int out = openings.runsOut();
        if (out < 0) {
            List<Openings.Moment> all = openings.moments();
            double off = all.get(all.size() - 1).withoutAfter() - all.get(0).before();
            return "Without the air button one playing would end %d&nbsp;%% %s open than it began, and the next would begin so."
                    .formatted(Math.round(Math.abs(off)), off < 0 ? "less" : "more");
        }
        boolean closed = openings.moments().get(out).withoutAfter() < 50;
        return "Without the air button they would be %s in %s.".formatted(closed ? "closed" : "fully open", place(out));
    }

    /** Returns the place of a moment of the performance as a link to its row. */
    private String place(int moment) {
        int step = openings.moments().get(moment).step();
        PlayedMeasure in = played.stream()
                .filter(measure -> moment >= measure.first() && moment < measure.end())
                .findFirst()
                .orElseThrow();
        String time = in.time().isEmpty() ? "" : " (" + in.time() + ")";
        return "<a href=\"#s%d\" data-play=\"%d\">%s</a>%s"
                .formatted(step, moment, Html.text(places.name(step)), Html.text(time));
    }

    private String key() {
        String steps =
                "Falling: push. Rising: pull. The even band is the comfortable middle; beyond the thin lines is reserve.";
        String air = " An upright step is air through the button; the broken line is the same playing without it"
                + (openings.runsOut() < 0 ? "." : ", up to the cross where it would come to its end.");
        return openings.usesAir() ? steps + air : steps;
    }
}
