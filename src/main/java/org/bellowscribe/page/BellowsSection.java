package org.bellowscribe.page;

import java.util.List;
import org.bellowscribe.cause.AirCause;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.drawing.BellowsRow;
import org.bellowscribe.replay.AirLeftOut;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.PlayedMeasure;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.AirUse;

/** The bellows through one playing of the tune, drawn and in words. */
final class BellowsSection {

    private static final String KEY =
            "Falling: push. Rising: pull. Between the broken lines is comfortable; shaded at the ends is reserve.";
    private static final String KEY_OF_AIR =
            " A thick upright stroke is air through the button; the dotted line is how it"
                    + " would go on without the button, up to a cross where the bellows would be at their end.";

    private static final double WHOLE = 100;

    private final DecidedTune tune;
    private final List<Sounding> performance;
    private final List<PlayedMeasure> played;
    private final Whereabouts places;
    private final double percent;

    BellowsSection(DecidedTune tune) {
        this.tune = tune;
        performance = Performance.of(tune.tune(), tune.instrument(), tune.solution());
        played = PlayedMeasure.of(tune.tune(), performance);
        places = new Whereabouts(tune.tune());
        percent = WHOLE / tune.instrument().bellows().capacity();
    }

    /** Returns the section's content. */
    String html() {
        StringBuilder html = new StringBuilder();
        html.append("<p>").append(nearest()).append(' ').append(without()).append("</p>\n<div id=\"strips\">\n");
        BellowsRow.of(tune)
                .forEach(row -> html.append("<figure class=\"strip\" data-a=\"%d\" data-z=\"%d\">%s</figure>\n"
                        .formatted(row.first(), row.end(), row.svg())));
        return html.append("</div>\n<p class=\"key\">")
                .append(usesAir() ? KEY + KEY_OF_AIR : KEY)
                .append("</p>\n")
                .append(why())
                .toString();
    }

    private boolean usesAir() {
        return tune.solution().steps().stream().anyMatch(step -> step.air() != AirUse.NONE);
    }

    private String why() {
        StringBuilder list = new StringBuilder();
        for (AirCause cause : tune.airCauses()) {
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
        int low = 0;
        int high = 0;
        for (int i = 1; i < performance.size(); i++) {
            low = after(i) < after(low) ? i : low;
            high = after(i) > after(high) ? i : high;
        }
        if (performance.isEmpty()) {
            return "Nothing is played.";
        }
        boolean closing = after(low) <= WHOLE - after(high);
        String least = "least open after %s: %d&nbsp;%%".formatted(place(low), Math.round(after(low)));
        String most = "most open after %s: %d&nbsp;%%".formatted(place(high), Math.round(after(high)));
        return "<b>The bellows come nearest to their end</b> where they are %s. They are %s."
                .formatted(closing ? least : most, closing ? most : least);
    }

    private double after(int place) {
        return performance.get(place).openingAfter() * percent;
    }

    private String without() {
        if (!usesAir()) {
            return "The air button is never pressed.";
        }
        double start = performance.get(0).openingBefore();
        WithoutAir course = new AirLeftOut(performance, tune.instrument().bellows(), step -> true).follow(0, start);
        if (course.end() == WithoutAir.End.LASTS) {
            double off = (course.lastOpening() - start) * percent;
            return "Without the air button one playing would end %d&nbsp;%% %s open than it began, and the next would begin so."
                    .formatted(Math.round(Math.abs(off)), off < 0 ? "less" : "more");
        }
        return "Without the air button they would be %s in %s."
                .formatted(course.end() == WithoutAir.End.CLOSED ? "closed" : "wide open", place(course.last()));
    }

    /** Returns a place of the performance as a link to its row. */
    private String place(int place) {
        int step = performance.get(place).step();
        PlayedMeasure in = played.stream()
                .filter(measure -> place >= measure.first() && place < measure.end())
                .findFirst()
                .orElseThrow();
        String time = in.time().isEmpty() ? "" : " (" + in.time() + ")";
        return "<a href=\"#s%d\" data-play=\"%d\">%s</a>%s"
                .formatted(step, place, Html.text(places.name(step)), Html.text(time));
    }
}
