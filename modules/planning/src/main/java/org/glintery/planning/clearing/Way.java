package org.glintery.planning.clearing;

import org.glintery.api.Preview;

/** From one trader to another: all that goes this way is one parcel. */
@Preview(since = "1.0")
public record Way(int from, int to) {}
