package org.glintery.api.time;

/** An end of an interval that has no date: open, or there but not known. */
enum OpenEnd implements Edtf {
    OPEN(".."),
    UNKNOWN("");

    private final String text;

    OpenEnd(String text) {
        this.text = text;
    }

    @Override
    public Span span() {
        return Span.ALL_TIME;
    }

    @Override
    public String text() {
        return text;
    }

    @Override
    public String words() {
        return this == OPEN ? "any time" : "a time not known";
    }

    @Override
    public boolean leavesDigitsOpen() {
        return true;
    }
}
