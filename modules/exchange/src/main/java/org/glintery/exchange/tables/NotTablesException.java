package org.glintery.exchange.tables;

import org.glintery.api.Refusal;

/** Why tables are not taken in or written; caught where the file is read or made. */
final class NotTablesException extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Refusal refusal;

    NotTablesException(String code, String text) {
        super(text);
        this.refusal = new Refusal(code, text);
    }

    Refusal refusal() {
        return refusal;
    }
}
