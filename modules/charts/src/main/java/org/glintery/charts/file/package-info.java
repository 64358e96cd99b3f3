/** Charts in files: as JSON and as a picture with one pixel a cell. */
package org.glintery.charts.file;
