/** The desk of the open workshop and how the window speaks. */
package org.glintery.workbench.desk;
