/**
 * The command line: {@link org.glintery.commands.VerbOption} takes the words of one call, {@link
 * org.glintery.commands.VerbRun} carries the verb out and says how it ended. The verbs themselves come from the features.
 */
package org.glintery.commands;
