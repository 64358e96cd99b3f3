/**
 * What tests share. {@link org.glintery.testkit.PlainLedger} is a second, slow ledger to hold the real one
 * against; {@link org.glintery.testkit.LedgerWork} makes seeded work for both.
 */
package org.glintery.testkit;
