package org.glintery.records;

import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.AccessorNamingStrategy;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedMethod;
import com.fasterxml.jackson.databind.introspect.DefaultAccessorNamingStrategy;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/** A record's fields are its components; methods such as {@code isZero} or {@code getName} are not fields. */
final class ComponentNaming extends DefaultAccessorNamingStrategy.Provider {
    private static final long serialVersionUID = 1L;

    @Override
    public AccessorNamingStrategy forRecord(MapperConfig<?> config, AnnotatedClass type) {
        Set<String> components = Arrays.stream(type.getRawType().getRecordComponents())
                .map(component -> component.getName())
                .collect(Collectors.toSet());
        return new DefaultAccessorNamingStrategy.RecordNaming(config, type) {
            @Override
            public String findNameForIsGetter(AnnotatedMethod method, String name) {
                return null;
            }

            @Override
            public String findNameForRegularGetter(AnnotatedMethod method, String name) {
                return components.contains(name) ? name : null;
            }
        };
    }
}
