/** The verbs that are about the workshop as a whole. */
package org.glintery.commands.workshop;
