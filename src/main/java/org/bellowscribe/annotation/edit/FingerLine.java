package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.annotation.style.LeftHandLabels;

/** Tells fingers of the left hand by the letters that they stand below: there are as many, with the same signs between. */
final class FingerLine {

    private static final Pattern DIGIT = Pattern.compile("[2-5]");

    private final Pattern between;

    FingerLine(LeftHandLabels labels) {
        between = Pattern.compile(Pattern.quote(labels.then()) + "|" + Pattern.quote(labels.together()));
    }

    /** Returns true if digits can be the fingers of letters. */
    boolean belongTo(String digits, String letters) {
        String unsigned = SignedMarks.unsigned(letters);
        boolean alike = signs(digits).equals(signs(unsigned));
        for (String digit : between.split(digits)) {
            alike &= digit.isEmpty() || DIGIT.matcher(digit).matches();
        }
        return alike && !digits.isBlank() && digits.startsWith(lead(unsigned));
    }

    private String lead(String text) {
        Matcher sign = between.matcher(text);
        return sign.lookingAt() ? sign.group() : "";
    }

    private List<String> signs(String text) {
        List<String> signs = new ArrayList<>();
        Matcher sign = between.matcher(text);
        while (sign.find()) {
            signs.add(sign.group());
        }
        return signs;
    }
}
