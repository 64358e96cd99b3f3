package org.glintery.commands;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Which workshop a call is about.
 *
 * @param named whether the user said so; only a folder that nobody named is made into a workshop unasked
 */
record WorkshopChoice(Path folder, boolean named) {

    static final String VARIABLE = "GLINTERY_WORKSHOP";
    static final String USUAL_FOLDER = "Glintery";

    /** What {@code --workshop} says, else the environment, else the usual folder in the user's home. */
    static WorkshopChoice of(Optional<String> option, Surroundings around) {
        return option.or(() -> Optional.ofNullable(around.environment().get(VARIABLE)))
                .filter(text -> !text.isBlank())
                .map(text -> new WorkshopChoice(around.path(text), true))
                .orElseGet(() -> new WorkshopChoice(around.home().resolve(USUAL_FOLDER), false));
    }
}
