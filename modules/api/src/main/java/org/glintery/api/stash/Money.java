package org.glintery.api.stash;

import java.math.BigDecimal;
import org.glintery.api.Stable;

/** An amount in the workshop's one currency. */
@Stable
public record Money(BigDecimal amount) {}
