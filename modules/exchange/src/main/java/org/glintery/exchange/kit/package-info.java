/**
 * Kits as JSON. The format is {@code kit.schema.json} beside the packages; its records here have the same names as its
 * properties, so that the codec maps one to the other.
 */
package org.glintery.exchange.kit;
