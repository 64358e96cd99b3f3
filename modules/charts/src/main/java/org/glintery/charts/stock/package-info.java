/**
 * Charts from what is in the house: {@link org.glintery.charts.stock.StockedCells} shares the drills that are there out to the
 * cells, {@link org.glintery.charts.stock.FewestToBuy} tells what little more would do.
 */
package org.glintery.charts.stock;
