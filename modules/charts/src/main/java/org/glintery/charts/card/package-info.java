/** Colour cards from files: {@link org.glintery.charts.card.CardFile} reads CSV, JSON and GIMP palettes. */
package org.glintery.charts.card;
