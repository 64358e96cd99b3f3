package org.glintery.api.framing;

import org.glintery.api.PlainText;
import org.glintery.api.Stable;

/**
 * A frame profile, in millimetres.
 *
 * @param widthMm the face, from outer edge to sight edge
 * @param lipMm how far the rebate's lip covers the artwork
 * @param rebateDepthMm the depth that glazing, spacer, piece and backing share
 */
@Stable
public record Moulding(String name, double widthMm, double lipMm, double rebateDepthMm) {
    public Moulding {
        name = PlainText.line(name);
    }
}
