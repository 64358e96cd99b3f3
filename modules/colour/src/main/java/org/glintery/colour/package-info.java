/**
 * Colour science: immutable values and pure functions, safe for any thread. {@link org.glintery.colour.Srgb} is where a
 * colour enters; it leads to linear light, {@link org.glintery.colour.Xyz}, {@link org.glintery.colour.Lab} and
 * {@link org.glintery.colour.Oklab}. {@link org.glintery.colour.Ciede2000} measures differences,
 * {@link org.glintery.colour.ColourNames} names, {@link org.glintery.colour.ColourVision} shows what others see.
 */
package org.glintery.colour;
