package org.glintery.api.time;

import java.util.Optional;

/** From one date to another, all of it meant. Either end may be open or not known, not both unknown. */
record EdtfInterval(Edtf start, Edtf end) implements Edtf {

    /** Empty when the end lies before the start. */
    static Optional<EdtfInterval> of(Edtf start, Edtf end) {
        boolean saysNothing = start == OpenEnd.UNKNOWN && end == OpenEnd.UNKNOWN;
        return saysNothing || !Edtf.inOrder(start, end) ? Optional.empty() : Optional.of(new EdtfInterval(start, end));
    }

    @Override
    public Span span() {
        return new Span(start.span().first(), end.span().last());
    }

    @Override
    public Edtf doubted(Doubt doubt) {
        return new EdtfInterval(start.doubted(doubt), end.doubted(doubt));
    }

    @Override
    public String text() {
        return start.text() + "/" + end.text();
    }

    @Override
    public String words() {
        if (start == OpenEnd.OPEN && end == OpenEnd.OPEN) {
            return "always";
        }
        if (start == OpenEnd.OPEN) {
            return "until " + end.words();
        }
        return end == OpenEnd.OPEN ? "since " + start.words() : "from " + start.words() + " to " + end.words();
    }
}
