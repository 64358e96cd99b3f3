/**
 * The chart sheet: a chart to look at, from the whole picture to single drills, and to select and paint on.
 *
 * <p>Give {@link org.glintery.workbench.sheet.ChartSheet} the {@link org.glintery.workbench.sheet.SheetCells} and a
 * {@link org.glintery.workbench.sheet.LineLook} for each line; it reports selections and strokes to a
 * {@link org.glintery.workbench.sheet.SheetListener} and changes nothing by itself.
 */
package org.glintery.workbench.sheet;
