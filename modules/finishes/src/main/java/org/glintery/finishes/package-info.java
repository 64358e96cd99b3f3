/**
 * The service {@link org.glintery.api.finishes.Finishes}: the record of made pieces, each change computed from a view.
 * Nothing here reads the disk or knows of screens.
 */
package org.glintery.finishes;
