package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.score.RoadSigns;
import org.bellowscribe.score.RoadWords;
import org.jspecify.annotations.Nullable;

/** Finds where a part can be added to a score, and what its measures must have in common with those of the melody. */
final class PartFrames implements XmlVisitor {

    private static final Pattern ID = Pattern.compile("\\s(?:xml:)?id\\s*=\\s*(\"[^\"]*\"|'[^']*')");
    private static final Pattern NUMBER = Pattern.compile("\\snumber\\s*=\\s*(\"[^\"]*\"|'[^']*')");
    private static final Pattern SPACE = Pattern.compile(">\\s+<");
    private static final Pattern SIGN =
            Pattern.compile("<(segno|coda|metronome)[\\s/>]|\\s(dacapo|dalsegno|segno|coda|tocoda|fine|tempo)\\s*=");
    private static final Pattern WORDS = Pattern.compile("<words[^>]*>([^<]*)</words>");

    private final String text;
    private final String melody;
    private final List<PartFrame> frames = new ArrayList<>();
    private final List<Anchor> measureEnds = new ArrayList<>();
    private final List<String> barline = new ArrayList<>();
    private Anchor partEnd = new Anchor(0, "");
    private Anchor listEnd = partEnd;
    private boolean inMelody;
    private @Nullable XmlElement melodyMeasure;

    private PartFrames(String text, String melody) {
        this.text = text;
        this.melody = melody;
    }

    /**
     * Looks at a score.
     *
     * @param melody id of the part with the melody
     */
    static PartFrames of(String text, String melody) throws DiagnosedException {
        PartFrames frames = new PartFrames(text, melody);
        XmlWalk.over(text, frames);
        return frames;
    }

    /** Returns the measures of the melody in score order. */
    List<PartFrame> frames() {
        return frames;
    }

    /** Returns the place behind the last part of a partwise score. */
    Anchor partEnd() {
        return partEnd;
    }

    /** Returns, for each measure of the melody in a timewise score, the place behind the last part. */
    List<Anchor> measureEnds() {
        return measureEnds;
    }

    /** Returns the place at the end of the list of parts. */
    Anchor listEnd() {
        return listEnd;
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        if (id != null) {
            inMelody = id.equals(melody);
            if (inMelody && element.depth() == 3 && element.parent() != null) {
                frames.add(new PartFrame(element.parent()));
            }
        } else if (inMelody && element.depth() == 3 && element.name().equals("measure") && element.isIn("part")) {
            frames.add(new PartFrame(element));
        }
    }

    @Override
    public void end(XmlElement element) {
        if (element.depth() == 3 && element.isIn("part-list")) {
            listEnd = new Anchor(element.end(), element.indentation());
        } else if (element.depth() == 2 && element.name().equals("part")) {
            partEnd = new Anchor(element.end(), element.indentation());
        } else if (element.depth() == 3 && element.name().equals("part")) {
            timewisePart(element);
        }
        PartFrame frame = inMelody && !frames.isEmpty() ? frames.get(frames.size() - 1) : null;
        if (frame != null) {
            inside(element, frame);
        }
    }

    /** A part that comes after the melody moves the place of their measure. */
    private void timewisePart(XmlElement part) {
        Anchor end = new Anchor(part.end(), part.indentation());
        if (inMelody) {
            measureEnds.add(end);
            melodyMeasure = part.parent();
        } else if (melodyMeasure != null && part.parent() == melodyMeasure) {
            measureEnds.set(measureEnds.size() - 1, end);
        }
    }

    private void inside(XmlElement element, PartFrame frame) {
        boolean direct = element.depth() == 4;
        switch (element.name()) {
            case "note" -> frame.note();
            case "time" -> {
                if (element.isIn("attributes")) {
                    frame.time(NUMBER.matcher(copy(element)).replaceAll(""));
                }
            }
            case "bar-style", "ending", "repeat" -> {
                if (element.isIn("barline")) {
                    barline.add(copy(element));
                }
            }
            case "barline" -> barline(element, frame);
            case "direction", "sound" -> {
                if (direct && isSign(copy(element))) {
                    frame.sign(copy(element));
                }
            }
            default -> {}
        }
    }

    private void barline(XmlElement element, PartFrame frame) {
        String location = element.attribute("location");
        String side = location == null ? "right" : location;
        if (!barline.isEmpty()) {
            frame.barline(side, "<barline location=\"" + side + "\">" + String.join("", barline) + "</barline>");
        }
        barline.clear();
    }

    /** Tells whether an element says something of tempo or the order of play. */
    static boolean isSign(String element) {
        return SIGN.matcher(element).find()
                || WORDS.matcher(element).results().anyMatch(words -> isRoadWord(XmlText.unescape(words.group(1))));
    }

    private static boolean isRoadWord(String words) {
        return RoadWords.goal(words) != null
                || !RoadWords.read(words, RoadSigns.NONE).equals(RoadSigns.NONE);
    }

    /** Returns an element as it stands, without ids and without white space between tags. */
    private String copy(XmlElement element) {
        String raw = text.substring(element.start(), element.end());
        return SPACE.matcher(ID.matcher(raw).replaceAll("")).replaceAll("><");
    }
}
