package org.glintery.planning;

import org.glintery.api.Preview;

/**
 * The opening to cut into a mount, in the middle of it.
 *
 * @param widthUm of the opening; the mount lies over the edge of the piece
 * @param heightUm of the opening
 * @param sideBorderUm what stays of the mount at the left and at the right, rounded down to a micrometre
 * @param topBorderUm what stays above and below
 */
@Preview(since = "1.0")
public record MountWindow(long widthUm, long heightUm, long sideBorderUm, long topBorderUm) {}
