package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.glintery.api.charts.Chart;
import org.glintery.api.charts.ChartRequest;
import org.glintery.api.charts.Crop;
import org.glintery.api.charts.Grid;
import org.glintery.api.charts.MadeChart;
import org.glintery.api.workshop.DocumentType;
import org.glintery.testkit.FilledRecords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Records of the API hold copies of the lists, sets and maps that they are given, and give them out unchangeable. */
class ImmutableValuesTest {
    private static final int LEAST_RECORDS = 18;

    static Stream<Class<?>> recordsWithCollections() {
        return ExportedTypes.of("api").stream()
                .filter(type -> type.isRecord() && type != DocumentType.class) // its lists hold functions
                .filter(type -> Arrays.stream(type.getRecordComponents()).anyMatch(ImmutableValuesTest::isCollection));
    }

    private static boolean isCollection(RecordComponent component) {
        return Collection.class.isAssignableFrom(component.getType())
                || Map.class.isAssignableFrom(component.getType());
    }

    @Test
    void seesTheRecordsOfTheApi() {
        assertThat(recordsWithCollections()).hasSizeGreaterThanOrEqualTo(LEAST_RECORDS);
    }

    @ParameterizedTest
    @MethodSource("recordsWithCollections")
    void keepsNoCollectionOfItsMaker(Class<? extends Record> type) throws Exception {
        RecordComponent[] components = type.getRecordComponents();
        Object[] given = new Object[components.length];
        Record filled = filled(type);
        for (int i = 0; i < components.length; i++) {
            components[i].getAccessor().setAccessible(true);
            given[i] = changeable(components[i].getAccessor().invoke(filled));
        }
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Constructor<? extends Record> constructor = type.getDeclaredConstructor(types);
        Record made = constructor.newInstance(given);
        String before = made.toString();
        Arrays.stream(given).forEach(ImmutableValuesTest::clear);
        assertThat(made.toString()).isEqualTo(before);
        for (RecordComponent component : components) {
            Object held = component.getAccessor().invoke(made);
            if (isCollection(component)) {
                assertThatThrownBy(() -> clear(held))
                        .as(component.getName())
                        .isInstanceOf(UnsupportedOperationException.class);
            }
        }
    }

    private static Record filled(Class<? extends Record> type) {
        return new FilledRecords()
                .with(MadeChart.class, "chart", new Chart(new Grid(1, 1, 2.5), List.of(), new int[] {Chart.NO_DRILL}))
                .with(ChartRequest.class, "picture", new byte[] {1})
                .with(ChartRequest.class, "crop", new Crop(0.1, 0.2, 0.5, 0.5))
                .of(type);
    }

    private static Object changeable(Object value) {
        if (value instanceof List<?> list) {
            List<Object> copy = new ArrayList<>();
            list.forEach(item -> copy.add(changeable(item)));
            return copy;
        }
        if (value instanceof Set<?> set) {
            return new LinkedHashSet<>(set);
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((key, item) -> copy.put(key, changeable(item)));
            return copy;
        }
        return value;
    }

    /** Empties it, and what is in it first. */
    private static void clear(Object value) {
        if (value instanceof Collection<?> collection) {
            collection.forEach(ImmutableValuesTest::clear);
            collection.clear();
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(ImmutableValuesTest::clear);
            map.clear();
        }
    }
}
