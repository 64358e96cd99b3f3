package org.glintery.testkit;

import org.glintery.api.Json;
import org.glintery.api.JsonCodec;

/**
 * JSON by our own plain code, sharing nothing with the real codec: for workshops in memory, and to hold the real one
 * against. Any thread.
 */
public final class PlainCodec implements JsonCodec {

    @Override
    public Json parse(String text) {
        return new PlainJsonReading(text).whole();
    }

    @Override
    public String compact(Json json) {
        return PlainJsonWriting.compact(json);
    }

    @Override
    public String pretty(Json json) {
        return PlainJsonWriting.pretty(json);
    }

    @Override
    public Json toJson(Object value) {
        return PlainRecordWriting.json(value);
    }

    @Override
    public <T> T fromJson(Json json, Class<T> type) {
        return PlainRecordReading.read(json, type);
    }
}
