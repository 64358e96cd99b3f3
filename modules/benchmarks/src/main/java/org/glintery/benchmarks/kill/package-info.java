/** Whether what was printed is kept when the process that books is killed at a random moment. */
package org.glintery.benchmarks.kill;
