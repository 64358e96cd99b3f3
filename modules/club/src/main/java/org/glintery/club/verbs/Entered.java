package org.glintery.club.verbs;

/**
 * What starting or joining a club answers.
 *
 * @param club its code, for others to join by
 * @param member the own id
 */
public record Entered(String club, String member, String as, boolean organiser) {}
