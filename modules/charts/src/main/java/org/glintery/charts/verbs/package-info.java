/** The verbs of charts: {@code colour} and {@code chart}. They work on files alone. */
package org.glintery.charts.verbs;
