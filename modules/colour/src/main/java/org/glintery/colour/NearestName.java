package org.glintery.colour;

import org.glintery.api.Stable;

/**
 * The name that comes nearest to a colour.
 *
 * @param difference CIEDE2000 between the colour and the named one; 0 when they are the same
 */
@Stable
public record NearestName(NamedColour named, double difference) {}
