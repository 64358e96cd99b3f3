package org.glintery.api.charts;

import org.glintery.api.Preview;

/** A chart that was made, and how near it comes to its picture. */
@Preview(since = "1.0")
public record MadeChart(Chart chart, ChartFigures figures) {}
