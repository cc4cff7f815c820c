package plumbrow.advice.trip;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.MachineKind;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;

/**
 * Passes of a program that go out together: those of one tank on one day, or one spray or granule by itself.
 *
 * @param passes in the order of the program, one at least
 * @param plan how they are put on; null where nobody planned it
 */
public record SprayTrip(
        Field field,
        Program program,
        List<Pass> passes,
        @Nullable SprayPlan plan) {
    public SprayTrip {
        passes = List.copyOf(passes);
    }

    /** The trips of a program in its order. */
    public static List<SprayTrip> of(Season season, Field field, Program program) {
        List<SprayTrip> trips = new ArrayList<>();
        List<Integer> taken = new ArrayList<>();
        for (Pass pass : program.passes()) {
            boolean goesOut = pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE;
            if (!goesOut || pass.product() == null || taken.contains(pass.number())) {
                continue;
            }
            SprayPlan plan = season.work().sprayPlan(program, pass).orElse(null);
            String tank = plan == null ? null : plan.tank();
            List<Pass> together = tank == null
                    ? List.of(pass)
                    : program.passes().stream()
                            .filter(other -> other.product() != null
                                    && Objects.equals(other.date(), pass.date())
                                    && season.work()
                                            .sprayPlan(program, other)
                                            .filter(its -> tank.equals(its.tank()))
                                            .isPresent())
                            .toList();
            together.forEach(one -> taken.add(one.number()));
            trips.add(new SprayTrip(field, program, together, plan));
        }
        return trips;
    }

    public @Nullable LocalDate date() {
        return passes.get(0).date();
    }

    /** Number of its first pass, by which it is asked for. */
    public int number() {
        return passes.get(0).number();
    }

    public List<String> products() {
        return passes.stream()
                .flatMap(pass -> Optional.ofNullable(pass.product()).stream())
                .distinct()
                .toList();
    }

    public boolean granules() {
        return passes.get(0).kind() == PassKind.GRANULE;
    }

    /** Whether it goes through the air, so that wind and droplets matter; not known counts as yes. */
    public boolean sprayed() {
        SprayPlan how = plan;
        return !granules()
                && (how == null || how.method() == null || how.method().sprayed());
    }

    /** Whether it goes on leaves: not where the plan says that no weed stands and the crop is not up. */
    public boolean leaves() {
        SprayPlan how = plan;
        return how == null
                || !Double.valueOf(0).equals(how.weedHeightIn())
                || !Double.valueOf(0).equals(how.cropHeightIn());
    }

    /** Acres that it covers, the widest of its passes. */
    public double acres() {
        return field.acres() * passes.stream().mapToDouble(Pass::sharePct).max().orElse(100) / 100;
    }

    /** "Ironweir 4L + Stillmeadow K". */
    public String words() {
        return products().stream().collect(Collectors.joining(" + "));
    }

    /** The sprayers or planters of the farm that can do it. */
    public List<Machine> machines(Season season) {
        MachineKind kind = sprayed() ? MachineKind.SPRAYER : MachineKind.PLANTER;
        return season.work().means().machines().stream()
                .filter(machine -> machine.farm().equals(field.farm()) && machine.kind() == kind)
                .toList();
    }
}
