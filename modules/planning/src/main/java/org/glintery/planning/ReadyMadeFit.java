package org.glintery.planning;

import java.util.Optional;
import org.glintery.api.Preview;

/**
 * A ready-made frame that a piece fits.
 *
 * @param landscape whether the longer side of the frame lies across
 * @param mount the window of the mount that fills the room round the piece; empty when the piece fills the frame
 */
@Preview(since = "1.0")
public record ReadyMadeFit(FrameSize size, boolean landscape, Optional<MountWindow> mount) {

    public long widthUm() {
        return landscape ? size.longUm() : size.shortUm();
    }

    public long heightUm() {
        return landscape ? size.shortUm() : size.longUm();
    }
}
