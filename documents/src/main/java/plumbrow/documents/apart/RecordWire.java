package plumbrow.documents.apart;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A record as bytes between the two processes, part by part in the order of its components. Both ends know the type: no name
 * of a class goes over the wire, so whatever comes in can only become what was asked for. Of a sealed type the place in the
 * list of its records is sent.
 */
final class RecordWire {
    private static final int MOST = 1_000_000;
    private static final int DEEPEST = 40;
    private static final int LONGEST_TEXT = 1 << 21;

    private RecordWire() {}

    static void write(Object value, Type type, DataOutputStream out) throws IOException {
        if (type instanceof ParameterizedType list) {
            List<?> parts = (List<?>) value;
            out.writeInt(parts.size());
            for (Object part : parts) {
                write(part, list.getActualTypeArguments()[0], out);
            }
            return;
        }
        Class<?> kind = (Class<?>) type;
        if (kind == String.class) {
            text((String) value, out);
        } else if (kind == int.class || kind == Integer.class) {
            out.writeInt((Integer) value);
        } else if (kind == double.class || kind == Double.class) {
            out.writeDouble((Double) value);
        } else if (kind == boolean.class || kind == Boolean.class) {
            out.writeBoolean((Boolean) value);
        } else if (kind == LocalDate.class) {
            out.writeLong(((LocalDate) value).toEpochDay());
        } else if (value instanceof Enum<?> one) {
            text(one.name(), out);
        } else if (kind.isSealed()) {
            List<Class<?>> records = records(kind);
            out.writeInt(records.indexOf(value.getClass()));
            write(value, value.getClass(), out);
        } else {
            for (RecordComponent part : parts(kind)) {
                Object content = content(value, part);
                out.writeBoolean(content != null);
                if (content != null) {
                    write(content, part.getGenericType(), out);
                }
            }
        }
    }

    static <R> R read(Class<R> type, DataInputStream in) throws IOException {
        return type.cast(read(type, in, 0));
    }

    private static Object read(Type type, DataInputStream in, int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new IOException("an answer nested too deep");
        }
        if (type instanceof ParameterizedType list) {
            int count = below(in.readInt(), MOST);
            List<Object> parts = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                parts.add(read(list.getActualTypeArguments()[0], in, depth + 1));
            }
            return parts;
        }
        Class<?> kind = (Class<?>) type;
        if (kind == String.class) {
            return text(in);
        }
        if (kind == int.class || kind == Integer.class) {
            return in.readInt();
        }
        if (kind == double.class || kind == Double.class) {
            return in.readDouble();
        }
        if (kind == boolean.class || kind == Boolean.class) {
            return in.readBoolean();
        }
        if (kind == LocalDate.class) {
            return day(in.readLong());
        }
        if (kind.isEnum()) {
            String name = text(in);
            for (Object constant : kind.getEnumConstants()) {
                if (((Enum<?>) constant).name().equals(name)) {
                    return constant;
                }
            }
            throw new IOException("no " + kind.getSimpleName() + " of that name");
        }
        if (kind.isSealed()) {
            List<Class<?>> records = records(kind);
            return read(records.get(below(in.readInt(), records.size())), in, depth + 1);
        }
        return made(kind, in, depth);
    }

    private static Object made(Class<?> kind, DataInputStream in, int depth) throws IOException {
        RecordComponent[] parts = parts(kind);
        @Nullable Object[] contents = new @Nullable Object[parts.length];
        for (int i = 0; i < parts.length; i++) {
            contents[i] = in.readBoolean() ? read(parts[i].getGenericType(), in, depth + 1) : null;
        }
        try {
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> whole = kind.getDeclaredConstructor(types);
            whole.setAccessible(true);
            return whole.newInstance(contents);
        } catch (ReflectiveOperationException | IllegalArgumentException refused) {
            throw new IOException("a part that makes no " + kind.getSimpleName(), refused);
        }
    }

    private static LocalDate day(long epoch) throws IOException {
        try {
            return LocalDate.ofEpochDay(epoch);
        } catch (java.time.DateTimeException outOfTime) {
            throw new IOException("a day out of time", outOfTime);
        }
    }

    private static RecordComponent[] parts(Class<?> kind) {
        RecordComponent[] parts = kind.getRecordComponents();
        if (parts == null) {
            throw new IllegalArgumentException(kind + " is no record");
        }
        return parts;
    }

    private static @Nullable Object content(Object value, RecordComponent part) {
        try {
            part.getAccessor().setAccessible(true);
            return part.getAccessor().invoke(value);
        } catch (IllegalAccessException | InvocationTargetException closed) {
            throw new IllegalStateException("a record that can't be read", closed);
        }
    }

    /** The records that a sealed type may be, by name, so that both ends count alike. */
    private static List<Class<?>> records(Class<?> sealed) {
        List<Class<?>> records = new ArrayList<>();
        for (Class<?> each : sealed.getPermittedSubclasses()) {
            records.addAll(each.isSealed() ? records(each) : List.of(each));
        }
        return records.stream()
                .distinct()
                .sorted(Comparator.comparing(Class::getName))
                .toList();
    }

    static void text(String text, DataOutputStream out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String text(DataInputStream in) throws IOException {
        byte[] bytes = bytes(in, LONGEST_TEXT);
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** So many bytes as are announced, and no more than are allowed. */
    static byte[] bytes(DataInputStream in, int most) throws IOException {
        int length = below(in.readInt(), most);
        byte[] bytes = in.readNBytes(length);
        if (bytes.length < length) {
            throw new java.io.EOFException("an answer that breaks off");
        }
        return bytes;
    }

    private static int below(int count, int most) throws IOException {
        if (count < 0 || count >= most) {
            throw new IOException("a count of " + count);
        }
        return count;
    }
}
