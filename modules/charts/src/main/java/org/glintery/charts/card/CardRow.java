package org.glintery.charts.card;

/**
 * What a file says of one colour; blank where it says nothing.
 *
 * @param place which line or entry it is, from 1
 */
record CardRow(int place, String code, String name, String hex) {}
