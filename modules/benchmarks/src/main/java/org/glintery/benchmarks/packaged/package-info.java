/** The packaged application as a shell or a user would start it. */
package org.glintery.benchmarks.packaged;
