/** Rows of CSV files, read with the line each begins on and written so that spreadsheets and we read them alike. */
package org.glintery.exchange.csv;
