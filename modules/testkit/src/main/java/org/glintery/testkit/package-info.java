/**
 * What tests share, those of add-ons too. Start with {@link org.glintery.testkit.MemoryWorkshop}, a workshop without a disk,
 * and {@link org.glintery.testkit.FakeCall}, a call of a verb at it; then extend what fits in {@link
 * org.glintery.testkit.contract}.
 *
 * <p>{@link org.glintery.testkit.PlainLedger} and {@link org.glintery.testkit.PlainCodec} do a second time, plainly and
 * slowly, what the real ones do: to hold these against. {@link org.glintery.testkit.LedgerWork} makes seeded work for
 * ledgers, {@link org.glintery.testkit.FilledRecords} records without a default in them.
 */
package org.glintery.testkit;
