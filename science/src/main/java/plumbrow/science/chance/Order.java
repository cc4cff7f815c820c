package plumbrow.science.chance;

/** The places of values from the lowest to the highest; equal values stay in their order. */
final class Order {
    private Order() {}

    /** Merge sort of places, which needs no boxed number for ten thousand draws. */
    static int[] of(double[] values) {
        int[] from = new int[values.length];
        for (int i = 0; i < from.length; i++) {
            from[i] = i;
        }
        int[] to = new int[values.length];
        for (int width = 1; width < values.length; width *= 2) {
            for (int start = 0; start < values.length; start += 2 * width) {
                merge(values, from, to, start, width);
            }
            int[] swap = from;
            from = to;
            to = swap;
        }
        return from;
    }

    private static void merge(double[] values, int[] from, int[] to, int start, int width) {
        int left = start;
        int middle = Math.min(start + width, from.length);
        int right = middle;
        int end = Math.min(start + 2 * width, from.length);
        for (int k = start; k < end; k++) {
            boolean takeLeft = right >= end || (left < middle && values[from[left]] <= values[from[right]]);
            to[k] = takeLeft ? from[left++] : from[right++];
        }
    }
}
