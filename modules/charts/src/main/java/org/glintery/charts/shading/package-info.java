/**
 * From what a grid should look like to a drill for each cell. {@link org.glintery.charts.shading.Shaders} gives the way for
 * each {@link org.glintery.api.charts.Shading}.
 */
package org.glintery.charts.shading;
