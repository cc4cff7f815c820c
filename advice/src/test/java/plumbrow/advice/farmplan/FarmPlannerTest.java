package plumbrow.advice.farmplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.farmplan.FarmPlan.Buy;
import plumbrow.advice.farmplan.FarmPlan.Shared;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

@DisplayName("A farm plan's shed and its fields without a program that may be advised, held against sums by hand")
class FarmPlannerTest {
    private static final double SEED = 100 * 80;
    private static final double TRIP = 100 * 8;

    private static SmallFarm two() {
        return new SmallFarm()
                .field("East", 1)
                .withBare("East")
                .field("West", 1)
                .withBare("West");
    }

    private static Shared limit(FarmPlan plan, String name) {
        return plan.limits().stream()
                .filter(one -> one.name().startsWith(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName("what lies in the shed takes no money, with no price break entered either")
    void shed() {
        FarmPlan plan =
                two().onHand(new Amount(150, FarmUnit.QT)).money(100_000).plan();
        assertThat(plan.buys()).singleElement().satisfies(buy -> {
            assertThat(buy.used()).isCloseTo(200, within(1e-6));
            assertThat(buy.own()).isCloseTo(150, within(1e-6));
            assertThat(buy.ownWorthUsd()).isCloseTo(1_500, within(1e-5));
            assertThat(buy.bought()).isCloseTo(50, within(1e-6));
            assertThat(buy.priceUsd()).isEqualTo(10);
        });
        assertThat(limit(plan, "money").used()).isCloseTo(2 * (SEED + TRIP) + 50 * 10, within(1e-3));
        FarmPlan without = two().money(100_000).plan();
        assertThat(plan.meanUsd())
                .as("the margin counts the shed at what it would cost to replace")
                .isCloseTo(without.meanUsd(), within(1e-3));
        assertThat(limit(without, "money").used()).isCloseTo(2 * (SEED + TRIP) + 200 * 10, within(1e-3));
    }

    @Test
    @DisplayName("with so little money that only the shed lets both fields be sprayed, both are")
    void shedUnderMoney() {
        double enough = 2 * (SEED + TRIP) + 50 * 10 + 1;
        assertThat(two().money(enough).plan().fields())
                .extracting(FarmPlan.Taken::program)
                .containsExactlyInAnyOrder("sprayed", "bare");
        assertThat(two().onHand(new Amount(150, FarmUnit.QT))
                        .money(enough)
                        .plan()
                        .fields())
                .extracting(FarmPlan.Taken::program)
                .containsOnly("sprayed");
    }

    @Test
    @DisplayName("nothing is bought while enough lies in the shed, however cheap it is by the truckload")
    void shedFirst() {
        FarmPlan plan =
                two().onHand(new Amount(250, FarmUnit.QT)).priceBreak(100, 5).plan();
        Buy buy = plan.buys().get(0);
        assertThat(buy.own()).isCloseTo(200, within(1e-6));
        assertThat(buy.bought()).isZero();
    }

    @Test
    @DisplayName(
            "where the shed falls short the rest is bought at the step it reaches, or at the next where that is cheaper")
    void rest() {
        FarmPlan plan =
                two().onHand(new Amount(20, FarmUnit.QT)).priceBreak(100, 8).plan();
        assertThat(plan.buys().get(0).bought()).isCloseTo(180, within(1e-6));
        assertThat(plan.buys().get(0).priceUsd()).isEqualTo(8);
        FarmPlan next =
                two().onHand(new Amount(20, FarmUnit.QT)).priceBreak(190, 8).plan();
        assertThat(next.buys().get(0).own()).isCloseTo(20, within(1e-6));
        assertThat(next.buys().get(0).bought())
                .as("190 at $8 cost less than 180 at $10")
                .isCloseTo(190, within(1e-6));
    }

    @Test
    @DisplayName("what one farm takes out of the shed is not there for the next, whichever is asked for")
    void oneShed() {
        SmallFarm farms = two().fieldOf(SmallFarm.OTHER, "North", 1).onHand(new Amount(250, FarmUnit.QT));
        FarmPlan second = farms.plans().get(1);
        assertThat(second.buys().get(0).own()).isCloseTo(50, within(1e-6));
        assertThat(second.buys().get(0).bought()).isCloseTo(50, within(1e-6));
        assertThat(second.cautions()).anyMatch(caution -> caution.contains("200 qt are planned for farms"));
        assertThat(farms.plans(SmallFarm.OTHER)).containsExactly(second);
    }

    @Test
    @DisplayName("a shed that can't be counted in the unit of the price is said, never a silent nothing")
    void otherUnit() {
        FarmPlan plan = two().onHand(new Amount(300, FarmUnit.LB)).plan();
        assertThat(plan.cautions()).anyMatch(caution -> caution.contains("in the shed are not counted"));
    }

    @Test
    @DisplayName("a field of which no program may be advised takes its hours, money and goods all the same")
    void setAside() {
        SmallFarm farm = two().field("Barred", 3).onHand(new Amount(150, FarmUnit.QT));
        FarmPlan plan = farm.money(100_000).sprayerHours(100).plan();
        assertThat(plan.fields()).extracting(FarmPlan.Taken::field).containsExactly("East", "West");
        assertThat(plan.setAside()).singleElement().satisfies(aside -> {
            assertThat(aside.field()).isEqualTo("Barred");
            assertThat(aside.program()).isEqualTo("sprayed");
            assertThat(aside.costUsd()).isCloseTo(SEED + TRIP + 300 * 10, within(1e-6));
            assertThat(aside.says()).contains("not counted");
        });
        assertThat(limit(plan, "sprayer hours").used()).isCloseTo(3 * 100 / 20.0, within(1e-6));
        assertThat(limit(plan, "money").used()).isCloseTo(3 * (SEED + TRIP) + 350 * 10, within(1e-3));
        assertThat(plan.meanUsd())
                .as("what it brings is not counted")
                .isCloseTo(two().plan().meanUsd(), within(1e-3));
    }

    @Test
    @DisplayName("so hours that would do for the others alone may not do for all")
    void setAsideBinds() {
        assertThat(two().sprayerHours(10.5).plan().fields())
                .extracting(FarmPlan.Taken::program)
                .containsOnly("sprayed");
        assertThat(two().field("Barred", 3).sprayerHours(10.5).plan().fields())
                .extracting(FarmPlan.Taken::program)
                .containsExactlyInAnyOrder("sprayed", "bare");
        assertThat(two().field("Barred", 3).sprayerHours(4).plan().says()).contains("Barred");
    }

    @Test
    @DisplayName("what is sprayed already needs no hours and no product any more")
    void doneNeedsNoHours() {
        double one = 100 / 20.0;
        assertThat(limit(two().sprayerHours(100).plan(), "sprayer hours").used())
                .isCloseTo(2 * one, within(1e-6));
        FarmPlan plan = two().done("East", 1).sprayerHours(100).plan();
        assertThat(limit(plan, "sprayer hours").used()).isCloseTo(one, within(1e-6));
        assertThat(two().done("East", 1)
                        .onHand(new Amount(150, FarmUnit.QT))
                        .plan()
                        .buys())
                .singleElement()
                .satisfies(buy -> assertThat(buy.used()).isCloseTo(100, within(1e-6)));
        assertThat(two().done("East", 1).sprayerHours(one * 1.01).plan().fields())
                .extracting(FarmPlan.Taken::program)
                .containsOnly("sprayed");
    }

    @Test
    @DisplayName("what is sprayed already is paid for: no limit of money counts it once more, nor what waits behind it")
    void doneIsSpent() {
        double sprayed = TRIP + 100 * 10;
        FarmPlan before = two().money(100_000).plan();
        FarmPlan after = two().done("East", 1).money(100_000).plan();
        assertThat(limit(before, "money").used()).isCloseTo(2 * (SEED + sprayed), within(1e-3));
        assertThat(limit(after, "money").used()).isCloseTo(2 * SEED + sprayed, within(1e-3));
        assertThat(after.meanUsd()).as("the margin knows that it was spent").isCloseTo(before.meanUsd(), within(1e-3));
        assertThat(after.fields())
                .filteredOn(taken -> taken.field().equals("East"))
                .singleElement()
                .satisfies(east -> {
                    assertThat(east.costUsd()).isCloseTo(SEED, within(1e-6));
                    assertThat(east.spentUsd()).isCloseTo(sprayed, within(1e-6));
                });
        assertThat(two().done("East", 1).money(2 * SEED + sprayed + 1).plan().fields())
                .as("money for one spray is enough once the other is done")
                .extracting(FarmPlan.Taken::program)
                .contains("sprayed");
        assertThat(two().field("Barred", 3)
                        .done("Barred", 3)
                        .money(100_000)
                        .plan()
                        .setAside())
                .singleElement()
                .satisfies(aside -> assertThat(aside.costUsd()).isCloseTo(SEED, within(1e-6)));
        assertThat(limit(
                                two().done("East", 1)
                                        .onHand(new Amount(150, FarmUnit.QT))
                                        .money(100_000)
                                        .plan(),
                                "money")
                        .used())
                .as("of the shed the other field alone takes")
                .isCloseTo(2 * SEED + TRIP, within(1e-3));
    }

    @Test
    @DisplayName("a plan that is known holds while nothing it came out of changes, and no longer")
    void known() {
        SmallFarm farm = two().onHand(new Amount(150, FarmUnit.QT)).fieldOf(SmallFarm.OTHER, "Far", 1);
        Map<String, KnownPlan> known = new HashMap<>();
        List<FarmPlan> first = farm.plans(known);
        assertThat(farm.plans(known))
                .isEqualTo(first)
                .zipSatisfy(first, (plan, before) -> assertThat(plan).isSameAs(before));
        SmallFarm later = two().onHand(new Amount(150, FarmUnit.QT))
                .fieldOf(SmallFarm.OTHER, "Far", 1)
                .fieldOf(SmallFarm.OTHER, "Farther", 1);
        List<FarmPlan> then = later.plans(known);
        assertThat(then.get(0)).isSameAs(first.get(0));
        assertThat(then).isEqualTo(later.plans());
        SmallFarm sooner =
                two().field("South", 1).onHand(new Amount(150, FarmUnit.QT)).fieldOf(SmallFarm.OTHER, "Far", 1);
        assertThat(sooner.plans(known))
                .as("the first farm takes more of the shed")
                .isEqualTo(sooner.plans());
    }

    @Test
    @DisplayName("a field without any program is said to be left out of the limits")
    void nothing() {
        FarmPlan plan = two().bareField("Empty").plan();
        assertThat(plan.cautions()).anyMatch(caution -> caution.contains("Empty is left out, of the limits too"));
    }
}
