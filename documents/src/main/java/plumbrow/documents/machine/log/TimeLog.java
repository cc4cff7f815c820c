package plumbrow.documents.machine.log;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads a time log: an XML header with one TIM that says what each record holds, and the records little-endian.
 *
 * <p>A record is the time of day [ms, 32 bits], the day since 1980-01-01 [16 bits], what of the position is left empty in the header, the
 * number of values that follow, and each as its place in the header's list and 32 bits. Values that are not sent are still as
 * they were.
 *
 * <p>Source: ISO 11783-10, binary log files, by a public library that reads them.
 */
final class TimeLog {
    private static final LocalDate FIRST_DAY = LocalDate.of(1980, 1, 1);
    private static final double DEGREES = 1e-7;
    private static final int MOST_RECORDS = 1_000_000;

    private TimeLog() {}

    /** One entry of the header's list: dictionary entry and device element. */
    record Kind(String ddi, String element) {}

    /** What reads the records. */
    interface Reader {
        /**
         * One record.
         *
         * @param values of each entry of the list, as last sent; null before the first
         */
        void record(LocalDateTime at, double longitude, double latitude, boolean placed, @Nullable Integer[] values);
    }

    /** The list of entries that the header declares. */
    static List<Kind> kinds(Element header) {
        return tim(header)
                .all("DLV")
                .map(value -> new Kind(ddi(value.at("A")), value.at("C")))
                .toList();
    }

    /** A dictionary entry as four capital hexadecimal digits. */
    static String ddi(String written) {
        String digits = written.toUpperCase(java.util.Locale.ROOT);
        return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    }

    private static Element tim(Element header) {
        return header.tag().equals("TIM")
                ? header
                : header.all("TIM")
                        .findFirst()
                        .orElseThrow(() -> new LogTrouble("A time log has no TIM in its header; expected one."));
    }

    static void read(String name, Element header, byte[] records, Reader reader) {
        Element tim = tim(header);
        Element position = tim.all("PTN").findFirst().orElse(null);
        int kinds = (int) tim.all("DLV").count();
        @Nullable Integer[] values = new @Nullable Integer[kinds];
        ByteBuffer in = ByteBuffer.wrap(records).order(ByteOrder.LITTLE_ENDIAN);
        int count = 0;
        try {
            while (in.hasRemaining()) {
                if (++count > MOST_RECORDS) {
                    throw new LogTrouble(name + " holds more than a million records; it was not read.");
                }
                LocalDateTime at = time(name, in);
                double north = place(position, "A", in);
                double east = place(position, "B", in);
                if (position != null) {
                    skip(position, in);
                }
                int sent = in.get() & 0xFF;
                for (int i = 0; i < sent; i++) {
                    int index = in.get() & 0xFF;
                    int value = in.getInt();
                    if (index >= kinds) {
                        throw new LogTrouble(name + ", record " + count + ": value number " + index
                                + " stands there, and its header declares " + kinds + "; it was not read.");
                    }
                    values[index] = value;
                }
                boolean placed = position != null
                        && Math.abs(north) <= 90
                        && Math.abs(east) <= 180
                        && !(north == 0 && east == 0);
                reader.record(at, east, north, placed, values);
            }
        } catch (BufferUnderflowException cutOff) {
            throw new LogTrouble(name + " is cut off within record " + count + "; copy it from the machine again.");
        }
    }

    private static LocalDateTime time(String name, ByteBuffer in) {
        long millis = in.getInt() & 0xFFFFFFFFL;
        int days = in.getShort() & 0xFFFF;
        if (millis >= 86_400_000L) {
            throw new LogTrouble(
                    name + " has a time of day of " + millis + " ms; expected less than a day. It was not read.");
        }
        return FIRST_DAY.plusDays(days).atStartOfDay().plusNanos(millis * 1_000_000);
    }

    /** North or east: in the record where the header leaves it empty. */
    private static double place(@Nullable Element position, String attribute, ByteBuffer in) {
        if (position == null || !position.has(attribute)) {
            return 0;
        }
        String fixed = position.at(attribute);
        if (fixed.isEmpty()) {
            return in.getInt() * DEGREES;
        }
        try {
            return Double.parseDouble(fixed);
        } catch (NumberFormatException none) {
            return 0;
        }
    }

    /** Height, status, dilution, satellites and time of the position: C to I, where they are in the record. */
    private static void skip(Element position, ByteBuffer in) {
        String attributes = "CDEFGHI";
        int[] bytes = {4, 1, 2, 2, 1, 4, 2};
        for (int i = 0; i < bytes.length; i++) {
            String name = attributes.substring(i, i + 1);
            if (position.has(name) && position.at(name).isEmpty()) {
                for (int skipped = 0; skipped < bytes[i]; skipped++) {
                    in.get();
                }
            }
        }
    }
}
