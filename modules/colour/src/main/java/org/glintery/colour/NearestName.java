package org.glintery.colour;

/**
 * The name that comes nearest to a colour.
 *
 * @param difference CIEDE2000 between the colour and the named one; 0 when they are the same
 */
public record NearestName(NamedColour named, double difference) {}
