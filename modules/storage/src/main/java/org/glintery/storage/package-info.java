/**
 * The service {@link org.glintery.api.storage.Storage}: holders, kit up, kit down and find, each computed from a view.
 * Nothing here reads the disk or knows of screens.
 */
package org.glintery.storage;
