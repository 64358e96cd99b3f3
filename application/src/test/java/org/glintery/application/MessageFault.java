package org.glintery.application;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is wrong with a message of a bundle. A message with a place for a value is formatted, any other taken as it stands;
 * but api, which is without the platform, formats all of its messages.
 */
final class MessageFault {

    private static final Pattern PLACE = Pattern.compile("\\{\\d");
    private static final Pattern CHOICE = Pattern.compile("\\{(\\d+),choice,((?:[^{}]|\\{[^{}]*\\})*)\\}");

    private MessageFault() {}

    static Optional<String> of(String message) {
        return of(message, PLACE.matcher(message).find());
    }

    static Optional<String> of(String message, boolean formatted) {
        if (formatted && message.replace("''", "").contains("'")) {
            return Optional.of("an apostrophe is lost; write it twice");
        }
        if (!formatted && message.contains("''")) {
            return Optional.of("an apostrophe is shown twice; write it once");
        }
        Matcher choice = CHOICE.matcher(message);
        while (choice.find()) {
            String cases = choice.group(2);
            // a case with a place is formatted once more
            if (cases.contains("{") && cases.contains("'")) {
                return Optional.of("an apostrophe is lost in a case; write it outside");
            }
            if (cases.contains("{" + choice.group(1) + "}")) {
                return Optional.of("a number is written as the machine writes it; give it as text too");
            }
        }
        return Optional.empty();
    }
}
