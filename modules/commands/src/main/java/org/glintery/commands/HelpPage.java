package org.glintery.commands;

/** A page of help: a record for {@code --json}, a text for people. */
sealed interface HelpPage permits VerbList, VerbHelp {

    String text();
}
