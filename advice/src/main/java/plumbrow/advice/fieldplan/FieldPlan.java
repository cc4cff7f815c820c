package plumbrow.advice.fieldplan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.land.Zone;
import plumbrow.advice.program.PassKind;

/**
 * What to do on one field, in date order. It lists what matters: what is clear is not in it.
 *
 * @param program whose passes these are; null where none may be made yet, then there are no steps
 * @param sentence what to do, or why nothing yet
 * @param steps trips and other passes, in the order of their days, those without a day last
 * @param keeps distances to keep that take something of the field
 * @param zones where those lie
 * @param unseen what lies around and how far the labels keep from it is not all known
 * @param money what it costs and brings; null where the field can't be weighed
 * @param moneySays three lines of money, or why there are none
 * @param doubts what is doubtful
 * @param first what bars it, what must be looked up or done first; what bars comes first, then what settles most
 * @param annex what is left to the annex, in words; empty where nothing is
 */
public record FieldPlan(
        int year,
        LocalDate asOf,
        String adviser,
        Field field,
        String grower,
        @Nullable String program,
        Basis basis,
        Standing standing,
        String sentence,
        List<Step> steps,
        List<Keep> keeps,
        List<Feature> around,
        List<Zone> zones,
        boolean unseen,
        @Nullable Money money,
        List<String> moneySays,
        List<String> doubts,
        List<First> first,
        String annex) {
    /** What is said where what lies around, or a label's distance from it, is not all known. */
    public static final String UNSEEN =
            "Not all is known of what lies around the field, or how far the labels keep from it: look before you spray.";

    public FieldPlan {
        steps = List.copyOf(steps);
        keeps = List.copyOf(keeps);
        around = List.copyOf(around);
        zones = List.copyOf(zones);
        moneySays = List.copyOf(moneySays);
        doubts = List.copyOf(doubts);
        first = List.copyOf(first);
    }

    /** What comes first of one kind. */
    public List<String> first(MatterKind kind) {
        return first.stream().filter(one -> one.kind() == kind).map(First::says).toList();
    }

    /** Why this program. */
    public enum Basis {
        CHOSEN("chosen"),
        ADVISED("advised, not decided yet"),
        NONE("none may be advised yet");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * One trip over the field, or one pass that puts nothing out.
     *
     * @param passes numbers of the passes in it
     * @param what "Spray Ironweir 4L + Stillmeadow K", "Harvest"
     * @param date planned day; null where none is planned
     * @param may days on which it may be made; null without a planned day, or where that is not looked at
     * @param lines products and what goes into the tank with them, with their rates
     * @param acres acres that it covers
     * @param machine the sprayer or planter; null where none is on file, or several could
     * @param hours that it takes, with filling where that is on file [h]; null where no machine is known
     * @param waitsFor what scouting must find first; empty where it is made in any case
     * @param put how a product goes out; null where none does
     * @param done day on which the log says it was done; null where it was not
     */
    public record Step(
            List<Integer> passes,
            PassKind kind,
            String what,
            @Nullable LocalDate date,
            @Nullable Window may,
            List<Line> lines,
            double acres,
            @Nullable String machine,
            @Nullable Double hours,
            String waitsFor,
            @Nullable Put put,
            @Nullable LocalDate done) {
        public Step {
            passes = List.copyOf(passes);
            lines = List.copyOf(lines);
        }

        /** The pass by which its load card and hours are asked for. */
        public int number() {
            return passes.get(0);
        }

        /** "Sat, May 2"; "done Sat, May 2"; "no day planned". */
        public String when() {
            return done != null ? "done " + PlanWords.day(done) : date == null ? "no day planned" : PlanWords.day(date);
        }

        /** Days on which it may be made and what ends them; empty where that is not looked at. */
        public String window() {
            return may == null ? "" : may.words();
        }
    }

    /** A product or addition with its rate, such as "40 fl oz/ac". */
    public record Line(String product, String rate) {}

    /**
     * Days on which a pass may be made, all others left where they are.
     *
     * @param from first such day; null where it lies farther back than was looked
     * @param to last such day; null likewise
     * @param ends what ends it; empty where nothing was found that does
     * @param other what must be looked up before it is made on another day than the planned one; empty for nothing
     */
    public record Window(@Nullable LocalDate from, @Nullable LocalDate to, String ends, String other) {
        /** "May 1 to May 23, then barred: …"; "before it goes on another day: …". */
        public String words() {
            return PlanWords.window(this);
        }
    }

    /**
     * How a product goes out and who stays out afterwards. Null is not on file or not read.
     *
     * @param carrierGpa spray volume [gal/ac]; null for what takes none, too
     * @param droplets planned droplet class and those that the labels allow, in words; empty for what is not sprayed
     * @param nozzle a nozzle of the farm that meets it, with its pressure
     * @param wear what handlers must wear, of all partners
     * @param reentryHours restricted-entry interval, the longest of all partners [h]
     * @param entryFrom when it is over at the latest, by the planned day
     * @param preHarvestDays days before harvest, the most of all partners; 0 where the labels ask for none
     * @param harvestFrom first day on which may be harvested, by the planned day
     * @param sprayed whether it goes through the air
     * @param loads how the tank is filled, in one sentence
     */
    public record Put(
            @Nullable Double carrierGpa,
            String droplets,
            @Nullable String nozzle,
            @Nullable List<String> wear,
            @Nullable Integer reentryHours,
            @Nullable LocalDateTime entryFrom,
            @Nullable Integer preHarvestDays,
            @Nullable LocalDate harvestFrom,
            boolean sprayed,
            String loads,
            @Nullable String applicator) {
        public Put {
            wear = wear == null ? null : List.copyOf(wear);
        }

        /** Who stays out, how long. */
        public String entry() {
            return PlanWords.entry(this);
        }

        /** From when may be harvested; empty where the labels ask for no days. */
        public String harvest() {
            return PlanWords.harvest(this);
        }

        /** What handlers wear. */
        public String gear() {
            return wear == null
                    ? "protective equipment unknown: read every label"
                    : wear.isEmpty() ? "the labels ask for nothing to wear" : "wear " + String.join(", ", wear);
        }

        /** Gallons, droplets and nozzle; empty for what is not sprayed. */
        public String spray() {
            return PlanWords.spray(this);
        }
    }

    /**
     * A distance to keep.
     *
     * @param from what from, with its name
     * @param feet [ft]
     * @param downwindOnly whether only while the wind blows towards it
     * @param lies how far it lies from the field's edge [ft]; null where that is not known
     * @param acres what it takes of the field [ac]; null where that is not drawn
     * @param products for which products
     */
    public record Keep(
            String from,
            @Nullable Double lies,
            double feet,
            boolean downwindOnly,
            @Nullable Double acres,
            List<String> products) {
        public Keep {
            products = List.copyOf(products);
        }

        /** "30 ft from ditch County ditch 12: 1.2 ac unsprayed (Ironweir 4L)". */
        public String words() {
            return PlanWords.keep(this);
        }
    }

    /**
     * The money of the program, the operator's.
     *
     * @param costUsdPerAcre [$/ac], {@code costUsd} of the field [$]
     * @param meanMarginUsdPerAcre over these inputs [$/ac]
     * @param meanGainUsdPerAcre over the baseline [$/ac], {@code chanceAhead} in what share of draws
     * @param shortfallUsdPerAcre expected shortfall: mean of the worst tenth of draws [$/ac]
     */
    public record Money(
            double costUsdPerAcre,
            double costUsd,
            double meanMarginUsdPerAcre,
            double meanGainUsdPerAcre,
            double chanceAhead,
            double shortfallUsdPerAcre) {}

    /** Something to look up or to do first. */
    public record First(MatterKind kind, String says) {}
}
