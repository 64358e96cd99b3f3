/**
 * A whole workshop as tables. What documents look like is learnt from the documents themselves, so that those of add-ons
 * come along: {@code Form} learns, {@code TablePlan} says which tables and columns that makes, {@code Cells} writes one value
 * so that it reads back exactly. Coming in, {@code TableReading} puts documents together again and hands them to the
 * workshop in its own JSON form.
 */
package org.glintery.exchange.tables;
