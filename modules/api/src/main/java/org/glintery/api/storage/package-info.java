/**
 * Holders, pockets, bags and keeping places; kit up, kit down, find.
 * {@link org.glintery.api.storage.Storage} is the service.
 */
package org.glintery.api.storage;
