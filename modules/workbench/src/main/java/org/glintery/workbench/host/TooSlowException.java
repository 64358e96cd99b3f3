package org.glintery.workbench.host;

import org.glintery.api.GlinteryException;

/** Code of an add-on came back later than it may. */
public final class TooSlowException extends GlinteryException {
    private static final long serialVersionUID = 1L;

    TooSlowException() {
        super("came back too late");
    }
}
