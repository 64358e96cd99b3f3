/** Which colours of a card a chart is made of: {@link org.glintery.charts.palette.PaletteChoice}. */
package org.glintery.charts.palette;
