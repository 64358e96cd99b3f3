/**
 * Shares out what lies in rows to columns that hold only so much, at the least cost: a transportation problem.
 * {@link org.glintery.planning.transport.CheapestTransport} solves a
 * {@link org.glintery.planning.transport.TransportTask}; {@link org.glintery.planning.transport.TransportCheck} takes nothing
 * of its {@link org.glintery.planning.transport.TransportPlan} on trust. Rows and columns are numbers from 0.
 */
package org.glintery.planning.transport;
