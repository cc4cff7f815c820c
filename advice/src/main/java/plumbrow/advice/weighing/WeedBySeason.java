package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.science.years.WeedResponse;

/** A weed followed day by day through the season: what becomes of a seedling comes from there, and its seed by day of emergence. */
@SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
record WeedBySeason(ProgramSeason season, int place, double[] densityM2, double mostLossPct, double[][] columns)
        implements WeedOn {

    @Override
    public String weed() {
        return season.weeds().get(place);
    }

    @Override
    public double[] seedlingsM2() {
        double each = season.seedlingsPerPlant(place);
        return Arrays.stream(densityM2).map(plants -> plants * each).toArray();
    }

    @Override
    public List<Set<String>> sites() {
        return season.sites(place);
    }

    @Override
    public boolean touched() {
        return season.touches(place);
    }

    @Override
    public boolean ratedOnSusceptible() {
        return true;
    }

    @Override
    public double[] untreatedLoad() {
        return season.untreatedLoad(place, columns, densityM2.length);
    }

    @Override
    public WeedResponse response(List<String> groups, double[] seedsPerPlant, double crowdingM2) {
        return season.response(place, groups, columns, densityM2.length);
    }
}
