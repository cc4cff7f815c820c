package plumbrow.science.safety;

import java.util.List;
import plumbrow.science.figure.Figure;

/** The figures of this subject, in the order of the docs page. */
public final class SafetyFigures {
    public static final List<Figure> ALL = List.of(
            EpaToxicity.FIGURE,
            GhsAcute.FIGURE,
            GhsAcute.ESTIMATE,
            MixtureAte.FIGURE,
            InhalationFourHours.FIGURE,
            HalfLethalRatio.FIGURE,
            AcidEquivalent.FIGURE,
            AcidEquivalent.SALT_AMOUNT,
            IngredientPerGallon.FIGURE,
            Spill.FIGURE,
            Spill.DRY,
            Spill.MIXTURE,
            Spill.TANK_LEAK,
            Strength.UNITS,
            Strength.CONTAINER,
            Strength.DOSE,
            Strength.DRY,
            Strength.VOLUME,
            Strength.CAP,
            VapourPressure.FIGURE,
            Rinsing.AIR,
            CasCheck.FIGURE,
            Haul.STORED,
            Haul.FARM,
            Haul.PLACARD,
            Haul.MARK,
            PeopleNearby.REENTRY,
            PeopleNearby.DEFAULT_INTERVAL,
            PeopleNearby.ZONE,
            HandlerEquipment.FIGURE,
            Rinsing.RINSE,
            StoreAndContainers.EMPTY,
            StoreAndContainers.CONTAINMENT,
            Rinsing.WASH);

    private SafetyFigures() {}
}
