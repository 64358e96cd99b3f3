package org.glintery.api.workshop;

import java.util.UUID;
import org.glintery.api.Stable;

/**
 * A change that is durable: on disk, and fsynced.
 *
 * @param revision the workshop's revision after it
 */
@Stable
public record Applied(UUID change, long revision) {}
