package org.glintery.api.time;

import java.util.Optional;

/** Within a set: every date from one to another; one of the ends may be open. */
record EdtfRange(Edtf from, Edtf to) implements Edtf {

    /** Empty when the end lies before the start, or when both are open. */
    static Optional<EdtfRange> of(Edtf from, Edtf to) {
        return from instanceof OpenEnd && to instanceof OpenEnd || !Edtf.inOrder(from, to)
                ? Optional.empty()
                : Optional.of(new EdtfRange(from, to));
    }

    boolean openAtStart() {
        return from == OpenEnd.OPEN;
    }

    boolean openAtEnd() {
        return to == OpenEnd.OPEN;
    }

    @Override
    public Span span() {
        return new Span(from.span().first(), to.span().last());
    }

    @Override
    public EdtfRange doubted(Doubt doubt) {
        return new EdtfRange(from.doubted(doubt), to.doubted(doubt));
    }

    @Override
    public String text() {
        return (openAtStart() ? "" : from.text()) + ".." + (openAtEnd() ? "" : to.text());
    }

    @Override
    public String words() {
        return RangeWords.of(this);
    }
}
