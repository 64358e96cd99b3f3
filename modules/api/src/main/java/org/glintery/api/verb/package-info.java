/**
 * Verbs: what the command line can do. How to add one:
 *
 * <ol>
 * <li>Write a class that implements {@link org.glintery.api.verb.Verb}.
 * <li>Annotate it with {@code @ServiceProvider(service = Verb.class)}.
 * <li>Return {@link org.glintery.api.verb.VerbResult#said} with a record (its JSON form is what {@code --json} prints) and
 * a text for people.
 * </ol>
 */
package org.glintery.api.verb;
