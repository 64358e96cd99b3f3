package org.glintery.api;

/** The one unchecked root of what goes wrong without the user's doing. A refusal is not an exception. */
@Stable
public class GlinteryException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public GlinteryException(String message) {
        super(message);
    }

    public GlinteryException(String message, Throwable cause) {
        super(message, cause);
    }
}
