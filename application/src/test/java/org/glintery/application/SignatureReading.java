package org.glintery.application;

import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.ExtensionPoint;
import org.glintery.api.Preview;
import org.glintery.api.Stable;

/** Reads what others see of a public type out of its class. */
final class SignatureReading {
    private final Class<?> type;

    private SignatureReading(Class<?> type) {
        this.type = type;
    }

    /** @throws IllegalArgumentException when neither the type nor one around it says how stable it is */
    static TypeSignature of(Class<?> type) {
        var reading = new SignatureReading(type);
        String status = status(type)
                .orElseThrow(() -> new IllegalArgumentException(type.getName() + " is neither stable nor a preview"));
        boolean extension = type.isAnnotationPresent(ExtensionPoint.class);
        return new TypeSignature(type.getName(), status, extension, reading.shape(), reading.members());
    }

    /** Its own, else that of the type around it; empty too when both are said. */
    static Optional<String> status(Class<?> type) {
        Preview preview = type.getAnnotation(Preview.class);
        boolean stable = type.isAnnotationPresent(Stable.class);
        if (preview != null) {
            return stable ? Optional.empty() : Optional.of("preview " + preview.since());
        }
        if (stable) {
            return Optional.of("stable");
        }
        return Optional.ofNullable(type.getEnclosingClass()).flatMap(SignatureReading::status);
    }

    private String shape() {
        String shape =
                (type.isSealed() ? "sealed " : "") + modifiers() + kind() + typeParameters(type.getTypeParameters());
        if (type.isRecord()) {
            shape += Arrays.stream(type.getRecordComponents())
                    .map(part -> name(part.getGenericType()) + " " + part.getName())
                    .collect(Collectors.joining(", ", "(", ")"));
        }
        Type parent = type.getGenericSuperclass();
        boolean said = parent != null && parent != Object.class && !type.isRecord() && !type.isEnum();
        shape += said ? " extends " + name(parent) : "";
        return type.isSealed() ? shape + " permits " + names(type.getPermittedSubclasses()) : shape;
    }

    private String kind() {
        if (type.isAnnotation()) {
            return "annotation";
        }
        if (type.isInterface()) {
            return "interface";
        }
        if (type.isRecord()) {
            return "record";
        }
        return type.isEnum() ? "enum" : "class";
    }

    private String modifiers() {
        return kind().equals("class") ? modifiers(type.getModifiers()) : "";
    }

    private static String modifiers(int of) {
        int said = of & (Modifier.PROTECTED | Modifier.ABSTRACT | Modifier.STATIC | Modifier.FINAL);
        return said == 0 ? "" : Modifier.toString(said) + " ";
    }

    private SortedSet<String> members() {
        SortedSet<String> members = new TreeSet<>();
        Stream.of(type.getGenericInterfaces()).forEach(one -> members.add("implements " + name(one)));
        Stream.of(type.getDeclaredFields()).filter(this::seen).forEach(field -> members.add(field(field)));
        Stream.of(type.getDeclaredConstructors())
                .filter(one -> seen(one.getModifiers(), one.isSynthetic()) && !isCanonical(one))
                .forEach(one -> members.add(
                        modifiers(one.getModifiers()) + "new(" + names(one.getGenericParameterTypes()) + ")"));
        Stream.of(type.getDeclaredMethods()).filter(this::seen).forEach(method -> members.add(method(method)));
        return members;
    }

    private boolean seen(Field field) {
        return seen(field.getModifiers(), field.isSynthetic());
    }

    private boolean seen(Method method) {
        boolean madeByCompiler = type.isEnum() && List.of("values", "valueOf").contains(method.getName());
        return seen(method.getModifiers(), method.isSynthetic())
                && !madeByCompiler
                && !isComponent(method)
                && !isInherited(method);
    }

    /** Protected members are seen by those who extend: nobody extends a final class. */
    private boolean seen(int modifiers, boolean synthetic) {
        boolean extended = !Modifier.isFinal(type.getModifiers()) && !type.isSealed();
        return !synthetic && (Modifier.isPublic(modifiers) || extended && Modifier.isProtected(modifiers));
    }

    private boolean isCanonical(Constructor<?> constructor) {
        return type.isRecord()
                && Arrays.equals(
                        constructor.getParameterTypes(),
                        Arrays.stream(type.getRecordComponents())
                                .map(RecordComponent::getType)
                                .toArray());
    }

    private boolean isComponent(Method method) {
        return type.isRecord()
                && method.getParameterCount() == 0
                && Arrays.stream(type.getRecordComponents())
                        .anyMatch(part -> part.getName().equals(method.getName()));
    }

    private boolean isInherited(Method method) {
        return !Modifier.isStatic(method.getModifiers())
                && above(type).stream()
                        .flatMap(parent -> Stream.of(parent.getDeclaredMethods()))
                        .anyMatch(other -> other.getName().equals(method.getName())
                                && other.getReturnType().equals(method.getReturnType())
                                && Arrays.equals(other.getParameterTypes(), method.getParameterTypes()));
    }

    private static List<Class<?>> above(Class<?> type) {
        List<Class<?>> above = new ArrayList<>();
        Stream<Class<?>> parents = Stream.concat(
                Stream.ofNullable(type.isInterface() ? Object.class : type.getSuperclass()),
                Stream.of(type.getInterfaces()));
        parents.forEach(parent -> {
            above.add(parent);
            above.addAll(parent == Object.class ? List.of() : above(parent));
        });
        return above;
    }

    private static String field(Field field) {
        return field.isEnumConstant()
                ? "constant " + field.getName()
                : modifiers(field.getModifiers()) + name(field.getGenericType()) + " " + field.getName();
    }

    private String method(Method method) {
        String how = method.isDefault() ? "default " : modifiers(method.getModifiers());
        String parameters = typeParameters(method.getTypeParameters());
        Type[] thrown = method.getGenericExceptionTypes();
        return (type.isInterface() ? how.replace("abstract ", "") : how)
                + (parameters.isEmpty() ? "" : parameters + " ")
                + name(method.getGenericReturnType())
                + " "
                + method.getName()
                + "("
                + names(method.getGenericParameterTypes())
                + ")"
                + (thrown.length == 0 ? "" : " throws " + names(thrown));
    }

    private static String typeParameters(TypeVariable<?>[] variables) {
        return variables.length == 0
                ? ""
                : Arrays.stream(variables)
                        .map(one -> name(one)
                                + (one.getBounds()[0] == Object.class ? "" : " extends " + names(one.getBounds())))
                        .collect(Collectors.joining(", ", "<", ">"));
    }

    private static String names(Type... types) {
        return Arrays.stream(types).map(SignatureReading::name).collect(Collectors.joining(", "));
    }

    private static String name(Type type) {
        return type.getTypeName().replaceAll("\\bjava\\.(lang|util)\\.(?=[A-Z])", "");
    }
}
