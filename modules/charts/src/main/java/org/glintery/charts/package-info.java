/**
 * Pictures to charts: from a picture, a colour card and a grid to a chart of drills. Nothing here knows of screens;
 * everything works on files alone.
 */
package org.glintery.charts;
