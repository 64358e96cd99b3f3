package org.glintery.colour;

/**
 * A colour that a published set gives a name.
 *
 * @param name as published, such as "Light Grayish Olive" or "rebeccapurple"
 */
public record NamedColour(String name, Srgb colour) {}
