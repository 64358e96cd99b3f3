package org.glintery.records;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.AnnotatedParameter;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.ledger.Spot;

/**
 * What annotations would say if the API had any: enum constants are lower case with hyphens, every component
 * that is not optional is required, and a record of a sealed interface carries its name as {@code kind}.
 */
final class RecordIntrospector extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public String[] findEnumValues(MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
        for (int i = 0; i < constants.length; i++) {
            names[i] = constants[i].name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
        return names;
    }

    @Override
    public Boolean hasRequiredMarker(AnnotatedMember member) {
        if (member instanceof AnnotatedParameter && member.getDeclaringClass().isRecord()) {
            return !member.getRawType().getName().startsWith("java.util.Optional");
        }
        return super.hasRequiredMarker(member); // may be null: not said
    }

    @Override
    public JsonTypeInfo.Value findPolymorphicTypeInfo(MapperConfig<?> config, Annotated annotated) {
        if (annotated instanceof AnnotatedClass
                && family(annotated.getRawType()).isPresent()) {
            return JsonTypeInfo.Value.construct(
                    JsonTypeInfo.Id.NAME, JsonTypeInfo.As.PROPERTY, "kind", null, false, null);
        }
        return super.findPolymorphicTypeInfo(config, annotated);
    }

    @Override
    public List<NamedType> findSubtypes(Annotated annotated) {
        return annotated instanceof AnnotatedClass
                ? family(annotated.getRawType())
                        .map(base -> members(base)
                                .map(member -> new NamedType(member, kind(member)))
                                .toList())
                        .orElseGet(() -> super.findSubtypes(annotated))
                : super.findSubtypes(annotated);
    }

    @Override
    public String findTypeName(AnnotatedClass type) {
        return type.getRawType().isRecord() && family(type.getRawType()).isPresent()
                ? kind(type.getRawType())
                : super.findTypeName(type);
    }

    /** The sealed interface of records that a type is or belongs to. A spot has a text form instead. */
    private static Optional<Class<?>> family(Class<?> type) {
        return Stream.concat(Stream.of(type), Arrays.stream(type.getInterfaces()))
                .filter(base -> base.isInterface() && base.isSealed() && base != Spot.class)
                .filter(base -> members(base).allMatch(Class::isRecord))
                .<Class<?>>map(base -> base)
                .findFirst();
    }

    private static Stream<Class<?>> members(Class<?> base) {
        return Arrays.stream(base.getPermittedSubclasses());
    }

    private static String kind(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
