/**
 * Watchers over tests, each an extension of JUnit: no warning is logged, nothing is left open, Swing is touched on its own
 * thread only. {@link org.glintery.testkit.guard.Guarded} puts all three on a test class.
 */
package org.glintery.testkit.guard;
