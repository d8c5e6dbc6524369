package org.shutoffbench.controller.conformance;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.InaccessibleObjectException;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Command;

/**
 * Size of an object as the C struct that firmware would declare for it, bytes, on a 32-bit machine.
 *
 * <p>Fields go by falling alignment, so the order of declaration does not matter; owned objects and arrays are laid out in place;
 * an enum or a {@link Command} takes one byte; a reference to something met before, or to nothing, takes a pointer of
 * four; a whole struct is padded to its alignment. Static fields are program memory and not counted.
 */
public final class StateSize {

    private static final int POINTER = 4;

    private final Set<Object> met = Collections.newSetFromMap(new IdentityHashMap<>());

    private StateSize() {}

    /** The parts of a struct: size and alignment in bytes. */
    private record Layout(int size, int alignment) {}

    /**
     * Counts the state of a strategy, parameters derived from its settings included.
     *
     * @throws IllegalArgumentException where it holds an object of the Java library, which no struct can hold
     */
    public static int of(Object owner) {
        return new StateSize().layout(owner).size;
    }

    private Layout layout(@Nullable Object value) {
        if (value == null || !met.add(value)) {
            return new Layout(POINTER, POINTER);
        }
        Class<?> type = value.getClass();
        if (value instanceof Enum<?> || value instanceof Command) {
            met.remove(value);
            return new Layout(1, 1);
        }
        if (type.isArray()) {
            return array(value, type.getComponentType());
        }
        if (type.getClassLoader() == null) {
            throw new IllegalArgumentException("its state holds a " + type.getName());
        }
        List<Layout> parts = new ArrayList<>();
        for (Class<?> part = type; part != null && part.getClassLoader() != null; part = part.getSuperclass()) {
            for (Field field : part.getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers())) {
                    parts.add(field(value, field));
                }
            }
        }
        return struct(parts);
    }

    private Layout field(Object owner, Field field) {
        Class<?> type = field.getType();
        if (type.isPrimitive()) {
            return primitive(type);
        }
        try {
            field.setAccessible(true);
            return layout(field.get(owner));
        } catch (IllegalAccessException | InaccessibleObjectException e) {
            throw new IllegalArgumentException("its field " + field.getName() + " cannot be read: " + e, e);
        }
    }

    private Layout array(Object value, Class<?> component) {
        int length = Array.getLength(value);
        if (component.isPrimitive()) {
            Layout element = primitive(component);
            return new Layout(length * element.size, element.alignment);
        }
        List<Layout> parts = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            parts.add(layout(Array.get(value, i)));
        }
        return struct(parts);
    }

    private static Layout primitive(Class<?> type) {
        int size;
        if (type == long.class || type == double.class) {
            size = 8;
        } else if (type == int.class || type == float.class) {
            size = 4;
        } else if (type == short.class || type == char.class) {
            size = 2;
        } else {
            size = 1;
        }
        return new Layout(size, size);
    }

    /** Sizes of parts sorted by falling alignment leave no gap between them, only padding at the end. */
    private static Layout struct(List<Layout> parts) {
        int size = 0;
        int alignment = 1;
        for (Layout part : parts) {
            size += part.size;
            alignment = Math.max(alignment, part.alignment);
        }
        return new Layout((size + alignment - 1) / alignment * alignment, alignment);
    }
}
