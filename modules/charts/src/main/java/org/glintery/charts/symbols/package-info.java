/** The symbols of a chart: {@link org.glintery.charts.symbols.SymbolDealing}. */
package org.glintery.charts.symbols;
