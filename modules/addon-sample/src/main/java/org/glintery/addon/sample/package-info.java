/**
 * The sample add-on, care notes: what was done for a finished piece (dusted, a loose drill pressed back), and which
 * pieces want a look again. {@link org.glintery.addon.sample.CareTab}, {@link org.glintery.addon.sample.CareCard} and
 * {@link org.glintery.addon.sample.CareNoteVerb} are one file each; they share a kind of document, {@link
 * org.glintery.addon.sample.CareNote}, and a service, {@link org.glintery.addon.sample.CareBook}.
 */
package org.glintery.addon.sample;
