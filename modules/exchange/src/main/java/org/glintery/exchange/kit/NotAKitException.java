package org.glintery.exchange.kit;

import org.glintery.api.Refusal;

/** Why a kit file is not taken in; caught where the file is read. */
final class NotAKitException extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Refusal refusal;

    NotAKitException(String code, String text) {
        super(text);
        this.refusal = new Refusal(code, text);
    }

    Refusal refusal() {
        return refusal;
    }
}
