package org.glintery.api.activework;

import java.time.LocalDate;
import java.util.Optional;
import org.glintery.api.Stable;

/**
 * When a piece will be done.
 *
 * @param early one in ten futures is done by then
 * @param likely half of them
 * @param late nine in ten
 * @param rough whether too little is known for more than a guess
 * @param words "between late May and mid June", or why nothing can be said
 * @param howWeKnow the reasoning, for who asks
 */
@Stable
public record Forecast(
        Optional<LocalDate> early,
        Optional<LocalDate> likely,
        Optional<LocalDate> late,
        boolean rough,
        String words,
        String howWeKnow) {}
