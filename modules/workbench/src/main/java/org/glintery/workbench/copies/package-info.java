/** Copies that the window makes by itself: into which folder, when, and what came of it. */
package org.glintery.workbench.copies;
