/**
 * The demo workshop: a club in a ferry town, its kits, sittings and finishes, and pictures drawn by code. All of it is
 * invented; nothing here is a fact of the trade.
 */
package org.glintery.demo;
