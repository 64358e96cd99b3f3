package org.glintery.colour;

import org.glintery.api.Stable;

/**
 * A colour that a published set gives a name.
 *
 * @param name as published, such as "Light Grayish Olive" or "rebeccapurple"
 */
@Stable
public record NamedColour(String name, Srgb colour) {}
