/**
 * The service {@link org.glintery.api.framing.Framing}: framing decisions and what they come to, each computed from a
 * view. Lengths in millimetres. Nothing here reads the disk or knows of screens.
 */
package org.glintery.framing;
