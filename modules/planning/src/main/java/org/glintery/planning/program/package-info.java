/**
 * Linear programs over columns between finite bounds, with cuts for columns that are 0 or 1, and exact bounds from inexact
 * prices. No other module sees this package. Nothing here is safe for use by several threads at once, except what is
 * immutable.
 */
package org.glintery.planning.program;
