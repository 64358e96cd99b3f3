package org.glintery.testkit;

/** Ends a change in the making. Never leaves this package: a refusal is a returned value. */
final class RefusedException extends Exception {
    private static final long serialVersionUID = 1L;
    private final String code;

    RefusedException(String code) {
        super(code, null, false, false);
        this.code = code;
    }

    String code() {
        return code;
    }
}
