/**
 * Tests that run inside the packaged application. {@code -J-Dglintery.selftest=DIR} runs them once the window has come
 * up, writes {@code DIR/results.xml} and screenshots, and ends with 0 or 1.
 */
package org.glintery.selftest;
