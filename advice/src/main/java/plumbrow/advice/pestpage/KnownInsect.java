package plumbrow.advice.pestpage;

import java.util.List;
import java.util.Optional;
import plumbrow.science.figure.Figure;
import plumbrow.science.insects.AphidDays;
import plumbrow.science.insects.AphidSampling;
import plumbrow.science.insects.AphidThreshold;
import plumbrow.science.insects.Armyworm;
import plumbrow.science.insects.BeanLeafBeetle;
import plumbrow.science.insects.BeanLeafBeetleCounts;
import plumbrow.science.insects.BeetleCounts;
import plumbrow.science.insects.BlackCutwormRescue;
import plumbrow.science.insects.BorerWorksheet;
import plumbrow.science.insects.HessianFly;
import plumbrow.science.insects.InsectCalendars;
import plumbrow.science.insects.RootwormBreakEven;
import plumbrow.science.insects.RootwormScores;
import plumbrow.science.insects.StinkBug;
import plumbrow.science.insects.WesternBeanCutwormCounts;
import plumbrow.science.insects.WheatAphid;
import plumbrow.science.insects.WheatAphidThreshold;

/**
 * An insect and the figures by which it is scouted.
 *
 * @param below whether it feeds below ground, out of reach of anything over the crop
 */
record KnownInsect(String name, boolean below, List<Figure> figures) {
    private static final List<KnownInsect> ALL = List.of(
            new KnownInsect(
                    "corn rootworm",
                    true,
                    List.of(RootwormScores.DUG, BeetleCounts.TRAPS, BeetleCounts.PLANTS, RootwormBreakEven.FIGURE)),
            new KnownInsect("European corn borer", false, List.of(BorerWorksheet.FIRST, BorerWorksheet.SECOND)),
            new KnownInsect("black cutworm", false, List.of(InsectCalendars.BLACK_CUTWORM, BlackCutwormRescue.FIGURE)),
            new KnownInsect("western bean cutworm", false, List.of(WesternBeanCutwormCounts.THRESHOLD)),
            new KnownInsect(
                    "bean leaf beetle",
                    false,
                    List.of(BeanLeafBeetle.FIGURE, BeanLeafBeetleCounts.COTYLEDON, BeanLeafBeetleCounts.COUNTED)),
            new KnownInsect(
                    "soybean aphid", false, List.of(AphidThreshold.FIGURE, AphidSampling.FIGURE, AphidDays.FIGURE)),
            new KnownInsect("true armyworm", false, List.of(Armyworm.CORN, Armyworm.WHEAT)),
            new KnownInsect("stink bugs", false, List.of(StinkBug.SOYBEAN, StinkBug.CORN)),
            new KnownInsect("cereal aphids", false, List.of(WheatAphidThreshold.FIGURE, WheatAphid.FIGURE)),
            new KnownInsect("Hessian fly", false, List.of(HessianFly.FIGURE)),
            new KnownInsect("seedcorn maggot", true, List.of()));

    static List<KnownInsect> all() {
        return ALL;
    }

    static Optional<KnownInsect> find(String name) {
        return ALL.stream().filter(one -> one.name.equalsIgnoreCase(name)).findFirst();
    }
}
