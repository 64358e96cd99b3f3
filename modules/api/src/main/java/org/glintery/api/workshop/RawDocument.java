package org.glintery.api.workshop;

import org.glintery.api.Json;
import org.glintery.api.Stable;

/**
 * A document without its record class: for export, import and documents whose owner is absent.
 *
 * @param typeVersion the version of its type that it was written with
 */
@Stable
public record RawDocument(DocRef ref, int typeVersion, Json.Obj body) {}
