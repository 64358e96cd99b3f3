/** How good a chart is: {@link org.glintery.charts.measure.ChartMeasures}. */
package org.glintery.charts.measure;
