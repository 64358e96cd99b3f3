/**
 * What benchmarks run inside the application. It knows the windows only by what the platform shows of them, so that it
 * loads without any module of ours: then it is the bare headless job that a verb is compared with.
 */
package org.glintery.stopwatch;
