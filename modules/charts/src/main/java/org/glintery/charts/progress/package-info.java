/** How far long work is and whether it is to end: parts and steps of a {@link org.glintery.api.charts.Watch}. */
package org.glintery.charts.progress;
