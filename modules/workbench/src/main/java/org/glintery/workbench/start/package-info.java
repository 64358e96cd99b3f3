/** How a workshop comes into the window and leaves it. */
package org.glintery.workbench.start;
