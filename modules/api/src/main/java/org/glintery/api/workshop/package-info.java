/**
 * The workshop on disk as everyone sees it: {@link org.glintery.api.workshop.Workshop} is the handle,
 * {@link org.glintery.api.workshop.View} what it holds at one moment,
 * {@link org.glintery.api.workshop.ChangeSet} the only way to change it.
 */
package org.glintery.api.workshop;
