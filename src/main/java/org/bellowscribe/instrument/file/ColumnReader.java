package org.bellowscribe.instrument.file;

import java.util.List;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Reads the left-hand buttons. */
final class ColumnReader extends GridReader<LeftHandButton> {

    ColumnReader(List<Diagnostic> problems) {
        super("column", problems);
    }

    @Override
    @Nullable
    LeftHandButton button(GridPlace place, DefinitionElement element, @Nullable LeftHandButton before) {
        LeftHandSound push = sound(place, element, "push");
        LeftHandSound pull = sound(place, element, "pull");
        if (element.attribute("push") == null && element.attribute("pull") == null) {
            report(
                    element,
                    "%s sounds neither on the push nor on the pull.".formatted(name(place)),
                    "Maybe give it push, pull or both, or write <remove> for a button that is not there.");
            return null;
        }
        return new LeftHandButton(place.line(), place.number(), push, pull);
    }

    @Override
    LeftHandButton reversed(LeftHandButton button) {
        return new LeftHandButton(button.column(), button.number(), button.pull(), button.push());
    }

    private @Nullable LeftHandSound sound(GridPlace place, DefinitionElement element, String direction) {
        String name = element.attribute(direction);
        if (name == null) {
            return null;
        }
        boolean minor = name.endsWith("m");
        PitchClass root = PitchClass.parse(minor ? name.substring(0, name.length() - 1) : name);
        if (element.required("kind").equals("chord")) {
            Third third = minor ? Third.MINOR : Third.MAJOR;
            return LeftHandSound.chord(root, element.required("thirds").equals("none") ? Third.NONE : third);
        }
        if (minor) {
            report(
                    element,
                    "%s is a bass and cannot sound the minor chord %s.".formatted(name(place), name),
                    "Maybe write %s, or kind=\"chord\".".formatted(root));
        }
        return LeftHandSound.bass(root);
    }
}
