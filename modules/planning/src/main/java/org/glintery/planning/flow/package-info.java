/**
 * Flows of whole packets through networks: {@link org.glintery.planning.flow.NetworkSimplex} finds cheapest ones,
 * {@link org.glintery.planning.flow.Residual} changes one step by step. No other module sees this package. Nothing here is
 * safe for use by several threads at once, except what is immutable.
 */
package org.glintery.planning.flow;
