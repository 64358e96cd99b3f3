package org.glintery.api;

/**
 * Why something a user asked for was not done.
 *
 * @param code a short stable word for scripts, such as {@code not-enough}
 * @param text what happened, what was kept and what to do, in plain words
 */
@Stable
public record Refusal(String code, String text) {}
