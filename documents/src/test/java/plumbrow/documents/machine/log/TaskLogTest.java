package plumbrow.documents.machine.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.ratemap.Metering;
import plumbrow.documents.machine.FileBundle;

@SuppressWarnings("NullAway.Init")
class TaskLogTest {
    private static final double ACRES = WorkedField.squareMetres() / 4046.8564224;

    @TempDir
    Path folder;

    private MachineWork work(String task) throws IOException {
        Path zip = Files.write(folder.resolve("log.zip"), WorkedField.zip(task));
        List<MachineWork> works = TaskLog.read(zip).works();
        assertThat(works).hasSize(1);
        return works.get(0);
    }

    /** A record of ISO 11783-10, computed apart from this code. */
    @Test
    void aRecordByteByByte() {
        Element header = Element.read(
                "TLG00001.XML",
                WorkedField.utf8(
                        "<TIM A=\"\" D=\"4\"><PTN A=\"\" B=\"\" D=\"\"/><DLV A=\"0001\" B=\"\" C=\"DET1\"/></TIM>"));
        List<String> found = new ArrayList<>();
        TimeLog.read(
                "TLG00001.BIN",
                header,
                HexFormat.of().parseHex("000b01034e3f30080e19c0b832c8020100d2681500"),
                (at, longitude, latitude, placed, values) -> {
                    assertThat(at).isEqualTo(LocalDateTime.of(2024, 5, 15, 14, 0));
                    assertThat(latitude).isCloseTo(42.035, within(1e-9));
                    assertThat(longitude).isCloseTo(-93.62, within(1e-9));
                    assertThat(values).containsExactly(1_403_090);
                    found.add("once");
                });
        assertThat(found).hasSize(1);
    }

    /** Six runs of 99 steps of 4 m, 12 m wide, at 15 gal/ac, by hand; places are kept to a centimetre in the log. */
    @Test
    void groundAndAmountOutOfTheLog() throws IOException {
        MachineWork work = work("<PAN A=\"PDT1\"/>");
        assertThat(work.task()).isEqualTo("May spray");
        assertThat(work.field()).isEqualTo("South Slough");
        assertThat(work.worker()).isEqualTo("J. Halvorsrud");
        assertThat(work.acres()).isCloseTo(ACRES, within(ACRES * 1e-3));
        assertThat(work.acresFrom()).contains("way times working width");
        assertThat(work.start()).isEqualTo(MachineWork.Moment.of(LocalDateTime.of(2026, 5, 15, 8, 0, 1)));
        assertThat(work.end()).isEqualTo(MachineWork.Moment.of(LocalDateTime.of(2026, 5, 15, 8, 11, 39)));
        assertThat(work.totals()).singleElement().satisfies(total -> {
            assertThat(total.product()).isEqualTo("Twinfold");
            assertThat(total.metering()).isEqualTo(Metering.VOLUME);
            assertThat(total.amount()).isCloseTo(15 * ACRES, within(15 * ACRES * 1e-3));
        });
        assertThat(work.spots()).hasSize(WorkedField.RUNS * (WorkedField.STEPS - 1));
        assertThat(work.notes()).isEmpty();
    }

    /** Totals that the machine kept go before the log; a far difference is told. */
    @Test
    void totalsOfTheMachineGoFirst() throws IOException {
        MachineWork near = work("""
                <PAN A="PDT1"/><TIM A="2026-05-15T07:58:00" B="2026-05-15T08:12:00" D="4">
                <DLV A="0074" B="28400" C="DET-1"/><DLV A="50" B="399" C="DET-1"/></TIM>""");
        assertThat(near.acres()).isCloseTo(28_400 / 4046.8564224, within(1e-9));
        assertThat(near.acresFrom()).isEqualTo("the machine's total");
        assertThat(near.totals())
                .singleElement()
                .satisfies(total -> assertThat(total.amount()).isCloseTo(399 / 3.785411784, within(1e-9)));
        assertThat(near.start()).isEqualTo(MachineWork.Moment.of(LocalDateTime.of(2026, 5, 15, 7, 58)));
        assertThat(near.notes()).isEmpty();
        MachineWork far = work("""
                <PAN A="PDT1"/><TIM A="2026-05-15T07:58:00Z" C="840" D="4">
                <DLV A="0074" B="14000" C="DET-1"/><DLV A="0050" B="900" C="DET-1"/></TIM>""");
        assertThat(far.end()).isEqualTo(MachineWork.Moment.of(LocalDateTime.of(2026, 5, 15, 8, 12)));
        assertThat(far.notes()).hasSize(2).allMatch(note -> note.contains("ask which is right"));
    }

    @Test
    void totalsThatFallAreAddedUp() throws IOException {
        String two = """
                <PAN A="PDT1"/><TIM A="2026-05-15T07:00:00" B="2026-05-15T07:30:00" D="4"><DLV A="0050" B="%d"/></TIM>
                <TIM A="2026-05-15T08:00:00" B="2026-05-15T08:30:00" D="4"><DLV A="0050" B="%d"/></TIM>""";
        assertThat(work(two.formatted(200, 400)).totals().get(0).amount()).isCloseTo(400 / 3.785411784, within(1e-9));
        MachineWork falls = work(two.formatted(250, 150));
        assertThat(falls.totals().get(0).amount()).isCloseTo(400 / 3.785411784, within(1e-9));
        assertThat(falls.notes()).anyMatch(note -> note.contains("each stretch counts for itself"));
    }

    @Test
    void anAmountOfNoKnownProductIsSaidSo() throws IOException {
        MachineWork work = work("<PAN A=\"PDT1\"/><PAN A=\"PDT2\"/>");
        assertThat(work.totals().get(0).product()).isEmpty();
        assertThat(work.notes()).anyMatch(note -> note.contains("the task names Twinfold, Stillmeadow K"));
    }

    @Test
    void aFolderIsReadLikeItsZip() throws IOException {
        for (Map.Entry<String, byte[]> file : WorkedField.files("").entrySet()) {
            Path at = folder.resolve("stick").resolve(file.getKey());
            Files.createDirectories(at.getParent());
            Files.write(at, file.getValue());
        }
        assertThat(TaskLog.read(folder.resolve("stick")).works().get(0).acres()).isEqualTo(work("").acres());
        assertThat(TaskLog.read(folder.resolve("stick/TASKDATA")).works()).hasSize(1);
    }

    // ---- files that mean no good, and broken ones ----

    private void refused(Map<String, byte[]> files, String sentence) throws IOException {
        Path zip = Files.write(folder.resolve("bad.zip"), FileBundle.zip(files));
        assertThatThrownBy(() -> TaskLog.read(zip))
                .isInstanceOf(LogTrouble.class)
                .hasMessageContaining(sentence);
    }

    private static Map<String, byte[]> with(String path, byte[] content) {
        Map<String, byte[]> files = new TreeMap<>(WorkedField.files(""));
        files.put(path, content);
        return files;
    }

    @Test
    void entitiesAreNeverLookedAt() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
        String evil = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri()
                + "\">]><ISO11783_TaskData><PDT A=\"PDT1\" B=\"&e;\"/></ISO11783_TaskData>";
        refused(with("TASKDATA/TASKDATA.XML", WorkedField.utf8(evil)), "declares a document type");
        String laughs = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;\">]><x>&b;</x>";
        refused(with("TASKDATA/TASKDATA.XML", WorkedField.utf8(laughs)), "declares a document type");
        refused(with("TASKDATA/TLG00001.XML", WorkedField.utf8(evil)), "declares a document type");
    }

    @Test
    void aBombIsNotUnpacked() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("TASKDATA/GRD00001.BIN"));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 80; i++) {
                zip.write(zeros);
            }
            zip.closeEntry();
        }
        Path zip = Files.write(folder.resolve("bomb.zip"), out.toByteArray());
        assertThat(Files.size(zip)).isLessThan(200_000);
        assertThatThrownBy(() -> TaskLog.read(zip)).hasMessageContaining("unpacks to more than 64 MB");
    }

    /** A name that leads out of the set leads nowhere: the set lacks that file. */
    @Test
    void pathsLeadNowhere() throws IOException {
        Map<String, byte[]> files = new TreeMap<>(WorkedField.files(""));
        byte[] log = files.remove("TASKDATA/TLG00001.BIN");
        files.put("../../TLG00001.BIN", log == null ? new byte[0] : log);
        refused(files, "lack their file TLG00001.BIN");
        String outside =
                "<ISO11783_TaskData><TSK A=\"TSK1\" G=\"4\"><TLG A=\"../../../etc/passwd\"/></TSK></ISO11783_TaskData>";
        refused(with("TASKDATA/TASKDATA.XML", WorkedField.utf8(outside)), "lack their file ../../../etc/passwd");
        try (var left = Files.walk(folder)) {
            assertThat(left.map(Path::toString)).noneMatch(path -> path.endsWith(".BIN"));
        }
    }

    @Test
    void brokenOnesGetASentence() throws IOException {
        refused(Map.of("readme.txt", new byte[] {1}), "holds no TASKDATA.XML");
        refused(with("TASKDATA/TASKDATA.XML", WorkedField.utf8("<ISO11783_TaskData>")), "is broken XML");
        refused(with("TASKDATA/TASKDATA.XML", new byte[0]), "is broken XML");
        refused(with("TASKDATA/TASKDATA.XML", WorkedField.utf8("<kml/>")), "begins with kml");
        refused(
                with(
                        "TASKDATA/TASKDATA.XML",
                        WorkedField.utf8("<ISO11783_TaskData><TSK A=\"TSK1\" G=\"1\"/></ISO11783_TaskData>")),
                "holds one task, and nothing that was done");
        byte[] log = WorkedField.files("").get("TASKDATA/TLG00001.BIN");
        refused(
                with("TASKDATA/TLG00001.BIN", Arrays.copyOf(log == null ? new byte[0] : log, 1001)),
                "is cut off within record");
        refused(with("OTHER/TASKDATA.XML", WorkedField.utf8("<ISO11783_TaskData/>")), "holds 2 sets of task data");
        Path text = Files.writeString(folder.resolve("a.zip"), "no zip");
        assertThatThrownBy(() -> TaskLog.read(text)).hasMessageContaining("no sound zip file");
    }

    /** Bytes changed by chance: read, or refused with a sentence; nothing else comes out. */
    @Test
    void bytesChangedByChance() throws IOException {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 300; i++) {
            Map<String, byte[]> files = new TreeMap<>(WorkedField.files("<PAN A=\"PDT1\"/>"));
            String name = List.copyOf(files.keySet()).get(random.nextInt(3));
            byte[] content = files.getOrDefault(name, new byte[1]).clone();
            for (int k = 0; k < 1 + random.nextInt(4); k++) {
                content[random.nextInt(content.length)] = (byte) random.nextInt(256);
            }
            files.put(name, content);
            Path zip = Files.write(folder.resolve("chance.zip"), FileBundle.zip(files));
            try {
                assertThat(TaskLog.read(zip).works()).isNotEmpty();
            } catch (LogTrouble said) {
                assertThat(said.getMessage()).endsWith(".").doesNotContain("Exception", "\n");
            }
        }
    }

    // ---- tables ----

    private MachineWork table(String text, Map<String, String> columns) throws IOException {
        Path csv = Files.writeString(folder.resolve("log.csv"), text);
        return AppliedTable.read(csv, columns).works().get(0);
    }

    @Test
    void aTableWithItsOwnAreas() throws IOException {
        MachineWork work = table("""
                Time,Latitude,Longitude,area_ac,gal_ac,product
                2026-05-20 08:00:00,42.1,-93.6,0.5,15,Twinfold
                2026-05-20 08:00:10,42.1,-93.601,0.25,14,Twinfold
                2026-05-20 08:00:20,42.1,-93.602,0.25,0,Twinfold
                5/20/2026 8:01:00 AM,42.1,-93.603,0.25,15,"Stillmeadow K"
                """, Map.of());
        assertThat(work.acres()).isCloseTo(1.0, within(1e-9));
        assertThat(work.totals()).extracting(MachineWork.Total::product).containsExactly("Twinfold", "Stillmeadow K");
        assertThat(work.totals().get(0).amount()).isCloseTo(11.0, within(1e-9));
        assertThat(work.end()).isEqualTo(MachineWork.Moment.of(LocalDateTime.of(2026, 5, 20, 8, 1)));
        assertThat(work.spots()).hasSize(3);
    }

    /** 100 kg/ha on 1,000 m of 12.192 m (40 ft): 1.2192 ha, 268.8 lb. */
    @Test
    void aTableWithMappedHeadings() throws IOException {
        MachineWork work = table(
                "WAY,SWATH,DOSE\n1000,40,100\n", Map.of("distance_m", "way", "width_ft", "SWATH", "kg_ha", "dose"));
        assertThat(work.acres()).isCloseTo(12_192 / 4046.8564224, within(1e-9));
        assertThat(work.totals().get(0).amount()).isCloseTo(121.92 / 0.45359237, within(1e-6));
        assertThat(work.start()).isNull();
    }

    @Test
    void tablesThatCannotBeReadGetASentence() {
        says("a,b\n1,2\n", "does not tell the ground that was worked");
        says("area_ac\n1\n", "has no rate");
        says("area_ac,gal_ac\n1,\"14,5\"\n", "line 2: gal_ac is “14,5”; expected a number with a point for decimals");
        says("area_ac,gal_ac\n1,-4\n", "from 0 to 10000000");
        says("area_ac,gal_ac,time\n1,4,yesterday\n", "line 2: time is “yesterday”");
        says("area_ac,gal_ac\n1,0\n", "holds no line on which anything was worked");
        says("", "holds no line");
        assertThatThrownBy(() -> table("area_ac,gal_ac\n1,4\n", Map.of("acreage", "x")))
                .hasMessageContaining("There is no 'acreage'");
        assertThatThrownBy(() -> table("area_ac,x\n1,4\n", Map.of("gal_ac", "rate")))
                .hasMessageContaining("no heading 'rate'");
        assertThatThrownBy(() -> AppliedTable.read(
                        Files.write(folder.resolve("w.csv"), new byte[] {'a', (byte) 0xE9, '\n'}), Map.of()))
                .hasMessageContaining("is not in UTF-8");
    }

    private void says(String text, String sentence) {
        assertThatThrownBy(() -> table(text, Map.of()))
                .isInstanceOf(LogTrouble.class)
                .hasMessageContaining(sentence);
    }
}
