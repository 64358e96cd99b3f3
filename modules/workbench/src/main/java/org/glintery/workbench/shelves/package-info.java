/** The shelves: all pieces by standing, found as you type. */
package org.glintery.workbench.shelves;
