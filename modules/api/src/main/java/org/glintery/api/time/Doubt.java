package org.glintery.api.time;

/** What the marks ?, ~ and % say of a part of a date. */
enum Doubt {
    NONE("", ""),
    UNCERTAIN("?", "perhaps "),
    APPROXIMATE("~", "about "),
    BOTH("%", "perhaps about ");

    private final String mark;
    private final String lead;

    Doubt(String mark, String lead) {
        this.mark = mark;
        this.lead = lead;
    }

    String mark() {
        return mark;
    }

    /** The words before a date that is doubted as a whole. */
    String lead() {
        return lead;
    }

    static Doubt of(String mark) {
        for (Doubt doubt : values()) {
            if (doubt.mark.equals(mark)) {
                return doubt;
            }
        }
        throw new IllegalArgumentException("no such mark: " + mark);
    }

    Doubt and(Doubt other) {
        if (this == other || other == NONE) {
            return this;
        }
        return this == NONE ? other : BOTH;
    }
}
