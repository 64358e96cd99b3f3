/**
 * The workshop that is measured: {@link org.glintery.benchmarks.large.LargeWorkshop} makes it as a maker would over
 * the years, kit by kit and sitting by sitting, through the services.
 */
package org.glintery.benchmarks.large;
