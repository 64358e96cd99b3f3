/**
 * The bench: sittings, progress, when a piece will be done, and completing it.
 * {@link org.glintery.api.activework.ActiveWork} is the service.
 */
package org.glintery.api.activework;
