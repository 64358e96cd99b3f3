/**
 * Bringing kits in and taking everything out. Each part is a service of the workshop and has a package of its own:
 * {@code legend} reads legends from CSV, {@code kit} reads and writes kits as JSON by a published schema, {@code tables}
 * carries a whole workshop as CSV. {@code csv} and {@code picture} serve them.
 */
package org.glintery.exchange;
