/**
 * Kits, pieces, legends, colour cards and the drills a maker has. {@link org.glintery.api.stash.Stash} is the service.
 */
package org.glintery.api.stash;
