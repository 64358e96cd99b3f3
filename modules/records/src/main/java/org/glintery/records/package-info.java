/**
 * The workshop on disk. Found by {@code Lookup} as {@link org.glintery.api.workshop.Workshops} and
 * {@link org.glintery.api.JsonCodec}; nothing here is exported.
 *
 * <p>One thread, the {@link org.glintery.records.WriterThread}, owns the database. It works a change out on a
 * {@link org.glintery.records.Draft}, writes it, makes it durable by the {@link org.glintery.records.Journal} and then
 * publishes the new
 * {@link org.glintery.records.State}, which readers see through a {@link org.glintery.records.RecordsView}.
 */
package org.glintery.records;
