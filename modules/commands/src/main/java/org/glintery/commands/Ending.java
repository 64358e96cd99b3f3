package org.glintery.commands;

/** How a call ended, and the exit code that says so. */
enum Ending {
    DONE(0),
    /** Nothing was changed; of a stream, that some of its lines were refused or not reached. */
    REFUSED(1),
    WRONG_USAGE(2),
    /** A fault of ours. */
    FAULT(3);

    private final int code;

    Ending(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }
}
