package org.glintery.api;

/** Text or JSON that is not what it should be. The message names the place and is fit to be shown. */
@Stable
public final class MalformedException extends GlinteryException {
    private static final long serialVersionUID = 1L;

    public MalformedException(String message) {
        super(message);
    }

    public MalformedException(String message, Throwable cause) {
        super(message, cause);
    }
}
