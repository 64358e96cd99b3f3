package org.glintery.charts;

import org.glintery.colour.Srgb;

/** A colour of a card that a chart may use. */
record CardColour(String code, Srgb colour) {}
