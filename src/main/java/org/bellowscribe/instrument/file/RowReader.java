package org.bellowscribe.instrument.file;

import java.util.List;
import java.util.Locale;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Reads the melody buttons. */
final class RowReader extends GridReader<Button> {

    RowReader(List<Diagnostic> problems) {
        super("row", problems);
    }

    @Override
    @Nullable
    Button button(GridPlace place, DefinitionElement element, @Nullable Button before) {
        Pitch push = pitch(place, element, "push");
        Pitch pull = pitch(place, element, "pull");
        if (element.attribute("push") == null && element.attribute("pull") == null) {
            report(
                    element,
                    "%s sounds neither on the push nor on the pull.".formatted(name(place)),
                    "Maybe give it push, pull or both, or write <remove> for a button that is not there.");
            return null;
        }
        return new Button(place.line(), place.number(), push, pull, hand(element, before));
    }

    @Override
    Button reversed(Button button) {
        return new Button(button.row(), button.number(), button.pull(), button.push(), button.hand());
    }

    private @Nullable Pitch pitch(GridPlace place, DefinitionElement element, String direction) {
        String name = element.attribute(direction);
        if (name == null) {
            return null;
        }
        try {
            return Pitch.parse(name);
        } catch (IllegalArgumentException e) {
            report(
                    element,
                    "%s sounds %s on the %s, which is too high or too low.".formatted(name(place), name, direction),
                    "Maybe choose another octave: C4 is middle C.");
            return null;
        }
    }

    private static Hand hand(DefinitionElement element, @Nullable Button before) {
        String hand = element.attribute("hand");
        if (hand != null) {
            return Hand.valueOf(hand.toUpperCase(Locale.ROOT));
        }
        return before == null ? Hand.RIGHT : before.hand();
    }
}
