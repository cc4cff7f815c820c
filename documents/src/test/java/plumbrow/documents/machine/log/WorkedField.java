package plumbrow.documents.machine.log;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import plumbrow.documents.machine.FileBundle;

/** Task data as a sprayer would write them: runs north and south side by side, laid out by geodesics. */
final class WorkedField {
    static final double SOUTH = 42.0;
    static final double WEST = -93.6;
    static final int RUNS = 6;
    static final int STEPS = 100;
    static final double STEP_M = 4;
    static final double WIDTH_M = 12;
    /** 15 gal/ac in steps of the dictionary. */
    static final int RATE = 1_403_093;

    private static final String HEADER = """
            <?xml version="1.0" encoding="UTF-8"?>
            <TIM A="" D="4"><PTN A="" B="" D=""/>
            <DLV A="0002" B="" C="DET-1"/><DLV A="0043" B="" C="DET-1"/><DLV A="008D" B="" C="DET-1"/></TIM>
            """;

    private WorkedField() {}

    /** Ground worked [m²], by hand: each run is so many steps long, and the first point of a run has none behind it. */
    static double squareMetres() {
        return RUNS * (STEPS - 1) * STEP_M * WIDTH_M;
    }

    static byte[] zip(String task) {
        return FileBundle.zip(files(task));
    }

    /** The task's own children beside its log go in as text. */
    static Map<String, byte[]> files(String task) {
        Map<String, byte[]> files = new TreeMap<>();
        files.put("TASKDATA/TASKDATA.XML", utf8("""
                <?xml version="1.0" encoding="UTF-8"?>
                <ISO11783_TaskData VersionMajor="4" VersionMinor="3" DataTransferOrigin="2">
                <PFD A="PFD1" C="South Slough" D="28512"/><WKR A="WKR1" B="J. Halvorsrud"/>
                <PDT A="PDT1" B="Twinfold"/><PDT A="PDT2" B="Stillmeadow K"/>
                <TSK A="TSK1" B="May spray" E="PFD1" F="WKR1" G="4">%s<TLG A="TLG00001"/></TSK>
                <TSK A="TSK2" B="Never begun" G="1"><TIM A="2026-06-01T06:00:00" D="1"/></TSK>
                </ISO11783_TaskData>
                """.formatted(task)));
        files.put("TASKDATA/TLG00001.XML", utf8(HEADER));
        files.put("TASKDATA/TLG00001.BIN", records());
        return files;
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] records() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            int second = 8 * 3600;
            for (int run = 0; run < RUNS; run++) {
                GeodesicData start = Geodesic.WGS84.Direct(SOUTH, WEST, 90, run * WIDTH_M);
                for (int step = 0; step < STEPS; step++) {
                    int along = run % 2 == 0 ? step : STEPS - 1 - step;
                    GeodesicData at = Geodesic.WGS84.Direct(start.lat2, start.lon2, 0, along * STEP_M);
                    out.write(record(second++, at.lat2, at.lon2, step == 0 ? 0 : 1, run == 0 && step == 0));
                }
                second += 20;
            }
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        return out.toByteArray();
    }

    /** Rate and width are sent once; only the work state changes. */
    private static byte[] record(int second, double latitude, double longitude, int state, boolean first) {
        ByteBuffer out = ByteBuffer.allocate(100).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(second * 1000).putShort((short) 16936);
        out.putInt((int) Math.round(latitude * 1e7)).putInt((int) Math.round(longitude * 1e7));
        out.put((byte) 2).put((byte) (first ? 3 : 1));
        if (first) {
            out.put((byte) 0).putInt(RATE).put((byte) 1).putInt((int) (WIDTH_M * 1000));
        }
        out.put((byte) 2).putInt(state);
        byte[] record = new byte[out.position()];
        out.get(0, record);
        return record;
    }
}
