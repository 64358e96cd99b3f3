/**
 * Charts: what is laid where. {@link org.glintery.api.charts.Charts} makes one from a picture, a colour card and a
 * {@link org.glintery.api.charts.Grid}.
 */
package org.glintery.api.charts;
