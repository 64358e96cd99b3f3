package org.glintery.api.workshop;

import java.util.UUID;
import org.glintery.api.Stable;

/**
 * A document as it stands in a view.
 *
 * @param version counts the times it was put, from 1
 * @param readOnly whether it was written by a newer version of its owner
 */
@Stable
public record Stored<T extends Record>(UUID id, int version, T value, boolean readOnly) {}
