/**
 * The service {@link org.glintery.api.activework.ActiveWork}: each class here computes one kind of change, or one answer,
 * from a view. Nothing here reads the disk or knows of screens.
 */
package org.glintery.activework;
