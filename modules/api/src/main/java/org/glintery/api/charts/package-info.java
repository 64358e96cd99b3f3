/**
 * Charts: what is laid where. {@link org.glintery.api.charts.Charts} makes one from a picture, a colour card and a
 * {@link org.glintery.api.charts.Grid}; {@link org.glintery.api.charts.Designs} keeps it in the workshop as a
 * {@link org.glintery.api.charts.Design}, to be changed, laid and printed.
 */
package org.glintery.api.charts;
