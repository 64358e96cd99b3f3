/**
 * Framing decisions and their sums. {@link org.glintery.api.framing.Framing} is the service. Lengths in millimetres.
 */
package org.glintery.api.framing;
