package plumbrow.documents.confirm;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Rows of the shelf by the names of their properties, and each property as text. */
final class Rows {
    private static final String PRODUCT = "product";
    private static final String SOURCE = "source";

    private Rows() {}

    /** A property as a person writes it; empty where it is unknown. */
    static String text(Record row, String property) {
        return CellText.show(value(row, property));
    }

    static @Nullable Object value(Record row, String property) {
        try {
            return component(row.getClass(), property).getAccessor().invoke(row);
        } catch (IllegalAccessException | InvocationTargetException closed) {
            throw new IllegalStateException("a row of the shelf can't be read", closed);
        }
    }

    static String product(Record row) {
        return String.valueOf(value(row, PRODUCT));
    }

    static String source(Record row) {
        return declares(row.getClass(), SOURCE) ? String.valueOf(value(row, SOURCE)) : "";
    }

    /** What kind of value a property takes. */
    static CellText kind(ShelfTable table, String property) {
        return CellText.of(component(table.row(), property).getGenericType());
    }

    /** Whether a row can't be without the property. */
    static boolean needed(ShelfTable table, String property) {
        return component(table.row(), property).getType() == double.class || property.equals("word");
    }

    /** A row of which nothing is known but its name. */
    static Record blank(RowName name, String product) {
        return made(name.table().row(), component -> {
            String property = component.getName();
            if (property.equals(PRODUCT)) {
                return product;
            }
            CellText kind = CellText.of(component.getGenericType());
            String text = name.key().get(property);
            if (text == null) {
                return component.getType() == double.class ? Double.valueOf(0) : kind.unknown();
            }
            return kind.read(text);
        });
    }

    /** The row with other values; the others stay. */
    static Record with(Record row, Map<String, Object> changed, String source) {
        return made(
                row.getClass(),
                component -> changed.containsKey(component.getName())
                        ? changed.get(component.getName())
                        : component.getName().equals(SOURCE) ? source : value(row, component.getName()));
    }

    private interface Part {
        @Nullable
        Object of(RecordComponent component);
    }

    private static Record made(Class<? extends Record> kind, Part part) {
        RecordComponent[] components = kind.getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        @Nullable Object[] parts = new @Nullable Object[components.length];
        for (int i = 0; i < components.length; i++) {
            parts[i] = part.of(components[i]);
        }
        try {
            Constructor<? extends Record> whole = kind.getDeclaredConstructor(types);
            return whole.newInstance(parts);
        } catch (ReflectiveOperationException refused) {
            throw new IllegalStateException("a row of the shelf can't be made", refused);
        }
    }

    private static boolean declares(Class<?> kind, String property) {
        return Arrays.stream(kind.getRecordComponents())
                .anyMatch(one -> one.getName().equals(property));
    }

    private static RecordComponent component(Class<?> kind, String property) {
        return Arrays.stream(kind.getRecordComponents())
                .filter(one -> one.getName().equals(property))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(kind.getSimpleName() + " has no property " + property));
    }
}
