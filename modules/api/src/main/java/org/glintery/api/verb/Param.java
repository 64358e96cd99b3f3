package org.glintery.api.verb;

import org.glintery.api.Stable;

/**
 * A parameter of a verb. Every verb has {@code --workshop}, {@code --json} and {@code --help} besides.
 *
 * @param name without dashes
 * @param placeholder what stands for the value in the help, such as {@code FILE.csv}; empty for flags
 */
@Stable
public record Param(Kind kind, String name, String placeholder, boolean required, String help) {

    /** How it is written. */
    public enum Kind {
        /** By its place; the last one takes several words when its placeholder ends in three dots. */
        POSITIONAL,
        /** {@code --name VALUE}, may be repeated. */
        OPTION,
        /** {@code --name}. */
        FLAG
    }

    public static Param positional(String name, String placeholder, String help) {
        return new Param(Kind.POSITIONAL, name, placeholder, true, help);
    }

    public static Param optionalPositional(String name, String placeholder, String help) {
        return new Param(Kind.POSITIONAL, name, placeholder, false, help);
    }

    public static Param option(String name, String placeholder, String help) {
        return new Param(Kind.OPTION, name, placeholder, false, help);
    }

    public static Param required(String name, String placeholder, String help) {
        return new Param(Kind.OPTION, name, placeholder, true, help);
    }

    public static Param flag(String name, String help) {
        return new Param(Kind.FLAG, name, "", false, help);
    }
}
