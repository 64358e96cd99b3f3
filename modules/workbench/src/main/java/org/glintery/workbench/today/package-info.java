/** Today: what asks for attention now, on cards that features bring. */
package org.glintery.workbench.today;
