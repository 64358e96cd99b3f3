/**
 * What every implementation has to keep, as test classes to extend: say how to make one, and the tests run against it.
 * {@link org.glintery.testkit.contract.WorkshopContract} and {@link org.glintery.testkit.contract.JsonCodecContract} are kept
 * by our own and by those in memory; the others are for add-ons.
 */
package org.glintery.testkit.contract;
