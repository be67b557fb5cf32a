package org.bellowscribe.edition;

import java.util.List;

/**
 * General advice so that playing does not hurt; it takes nobody's place who can look at the player.
 *
 * @param text one or two sentences
 * @param source where it is published, or that it is common practice without a source
 */
public record Caution(String text, String source) {

    private static final String COMMON = "common practice, no source";

    /** Returns all cautions, in the order in which to print them. */
    public static List<Caution> all() {
        return List.of(
                new Caution(
                        "Never force the bellows open or closed without a sounding note or the air button: that damages"
                                + " the box and strains the arm. When they run out, stop or press the air button.",
                        "germanconcertina.blogspot.com, \"Thumb air valve\", 2014, on damage; on strain: " + COMMON),
                new Caution(
                        "Do not pull the bellows farther open than is comfortable.",
                        "Wikibooks, \"Accordion/Operating the Bellows\""),
                new Caution(
                        "Take breaks, and leave off before you are tired. Students of music felt more strained after 45"
                                + " minutes without a break.",
                        "Cruder, thesis, Queen Margaret University, 2022"),
                new Caution(
                        "Sit with both feet on the floor and the shoulders relaxed. Playing while standing strains"
                                + " shoulders and back.",
                        "Artist- och musikerhälsan, \"3.15 Accordion ergonomics\""),
                new Caution(
                        "Set the straps so that the box lies close and still, and the left hand has room under its strap"
                                + " without gripping. Pull against the strap, not with the fingers.",
                        "Artist- och musikerhälsan, \"3.15 Accordion ergonomics\", on the wrist strap; the rest: "
                                + COMMON),
                new Caution(
                        "If anything hurts or goes numb, stop, and ask a teacher; if it does not pass, a health"
                                + " professional. No marks on a sheet know your hands.",
                        COMMON));
    }
}
