/**
 * Charts that are kept: {@link org.glintery.charts.design.KeptDesigns} works out what a stroke, a mark or a new legend changes.
 * Nothing here reads the disk.
 */
package org.glintery.charts.design;
