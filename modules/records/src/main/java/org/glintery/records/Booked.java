package org.glintery.records;

/** What of a state the ledger and the reservations make. Immutable; any thread. */
record Booked(BalanceMap balances, ReservedDrills reserved) {
    static final Booked NOTHING = new Booked(BalanceMap.EMPTY, ReservedDrills.NONE);
}
