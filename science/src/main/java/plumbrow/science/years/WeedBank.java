package plumbrow.science.years;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import plumbrow.science.weeds.Seedbank;

/**
 * The seed of one weed in one field, genotype by genotype, from spring to spring.
 *
 *   up_g = S_g·(1 − winter)·g;  plants_g = up_g·survive_g;  shed_g = up_g·seeds_g·Π(1 − cost)/(1 + a·plants)
 *   survive_g, seeds_g, load_g: those of the biotypes, mixed by how much of its resistance the genotype shows
 *   eggs cross with the pollen of all that shed seed, some of it from outside; the rest is by own pollen
 *
 * For one thread; nothing is made from year to year, so that it can be run a hundred thousand times over.
 *
 * Source: {@link Seedbank}; crossing and whole fields: Diggle, Neve & Smith 2003, Weed Res. 43:371.
 */
public final class WeedBank {
    private final Genotypes genotypes;
    private final List<ResistanceGene> genes;
    private final WeedLife life;
    private final Inflow inflow;
    private final double areaM2;
    private final double[] mutation;
    private final double[] seedKept;
    private final double[] incoming;
    private final double[] incomingGametes;
    private final double[][] selfed;

    private final double[] bank;
    private final double[] next;
    private final double[] shed;
    private final double[] eggs;
    private final double[] pollen;
    private final double[][] shown;
    private double upM2;
    private double diedM2;
    private double plantsM2;
    private double shedM2;
    private double loadPct;

    /** @param areaM2 of the field [m²], for whole seeds and plants; +∞ takes every fraction as there */
    public WeedBank(List<ResistanceGene> genes, WeedLife life, Inflow inflow, double areaM2) {
        this.genes = List.copyOf(genes);
        this.genotypes = Genotypes.of(genes.size());
        this.life = life;
        this.inflow = inflow;
        this.areaM2 = areaM2;
        int count = genotypes.count();
        int kinds = genotypes.kinds();
        mutation = this.genes.stream().mapToDouble(ResistanceGene::mutation).toArray();
        seedKept = new double[count];
        incoming = new double[count];
        incomingGametes = new double[kinds];
        selfed = new double[count][count];
        bank = new double[count];
        next = new double[count];
        shed = new double[count];
        eggs = new double[kinds];
        pollen = new double[kinds];
        shown = new double[genes.size()][3];
        prepare();
    }

    private void prepare() {
        double[] outside = genes.stream().mapToDouble(ResistanceGene::outside).toArray();
        genotypes.shares(outside, life.inbreeding(), incoming);
        double[] own = new double[genotypes.kinds()];
        for (int g = 0; g < seedKept.length; g++) {
            seedKept[g] = 1;
            for (int l = 0; l < genes.size(); l++) {
                seedKept[g] *= genes.get(l).seedKept(genotypes.copies(g, l));
            }
            System.arraycopy(genotypes.gametes(g), 0, own, 0, own.length);
            genotypes.mutate(own, mutation);
            for (int x = 0; x < own.length; x++) {
                incomingGametes[x] += incoming[g] * genotypes.gametes(g)[x];
                for (int y = 0; y < own.length; y++) {
                    selfed[g][genotypes.zygote(x, y)] += own[x] * own[y];
                }
            }
        }
    }

    /** Fills the soil with so much seed [1/m²], genes at their frequencies. */
    public void start(double seedsM2, SplittableRandom random) {
        genotypes.shares(genes.stream().mapToDouble(ResistanceGene::frequency).toArray(), life.inbreeding(), bank);
        for (int g = 0; g < bank.length; g++) {
            bank[g] = WholeCounts.perM2(bank[g] * seedsM2, areaM2, random);
        }
    }

    /** One year, under a program whose response to draw {@code row} is known. */
    public void year(WeedResponse response, int row, SplittableRandom random) {
        show(response, row);
        grow(response, row, random);
        cross();
        Arrays.setAll(next, g -> next[g] * life.seedKept() + inflow.seedsM2() * incoming[g]);
        diedM2 = 0;
        for (int g = 0; g < bank.length; g++) {
            double spring = bank[g] * (1 - life.winterLoss());
            double old = Seedbank.kept(spring, life.germination(), life.mortality());
            diedM2 += bank[g] - spring * life.germination() - old;
            bank[g] = WholeCounts.perM2(old + next[g], areaM2, random);
        }
    }

    /** How much of its resistance each number of copies shows at the dose that this season's passes gave. */
    private void show(WeedResponse response, int row) {
        double susceptible = response.survive()[0][row];
        for (int l = 0; l < shown.length; l++) {
            double spared = response.survive()[1 << l][row];
            double control = spared > 0 ? Math.max(0, 1 - susceptible / spared) : 0;
            for (int copies = 1; copies <= 2; copies++) {
                shown[l][copies] = Expression.at(control, genes.get(l).fold(copies));
            }
        }
    }

    private void grow(WeedResponse response, int row, SplittableRandom random) {
        upM2 = 0;
        plantsM2 = 0;
        shedM2 = 0;
        loadPct = 0;
        for (int g = 0; g < bank.length; g++) {
            double up = bank[g] * (1 - life.winterLoss()) * life.germination();
            double survive = 0;
            double seeds = 0;
            double load = 0;
            for (int b = 0; up > 0 && b < response.biotypes(); b++) {
                double part = part(g, b);
                survive += part * response.survive()[b][row];
                seeds += part * response.seeds()[b][row];
                load += part * response.load()[b][row];
            }
            double expected = up * survive;
            double plants = WholeCounts.perM2(expected, areaM2, random);
            shed[g] = expected == 0 ? 0 : plants / expected * up * seeds * seedKept[g];
            upM2 += up;
            plantsM2 += plants;
            loadPct += up * load;
        }
        double crowded = Seedbank.crowded(1, plantsM2, response.crowdingM2());
        for (int g = 0; g < bank.length; g++) {
            shed[g] *= crowded;
            shedM2 += shed[g];
        }
    }

    /** The part of a genotype that behaves as a biotype. */
    private double part(int genotype, int biotype) {
        double part = 1;
        for (int l = 0; l < shown.length; l++) {
            double resists = shown[l][genotypes.copies(genotype, l)];
            part *= (biotype >> l & 1) == 1 ? resists : 1 - resists;
        }
        return part;
    }

    private void cross() {
        Arrays.fill(next, 0);
        if (shedM2 == 0) {
            return;
        }
        Arrays.fill(pollen, 0);
        for (int g = 0; g < shed.length; g++) {
            double[] gametes = genotypes.gametes(g);
            for (int x = 0; x < pollen.length; x++) {
                pollen[x] += shed[g] * gametes[x];
            }
            if (life.selfing() > 0) {
                double own = shed[g] * life.selfing();
                for (int z = 0; z < next.length; z++) {
                    next[z] += own * selfed[g][z];
                }
            }
        }
        genotypes.mutate(pollen, mutation);
        for (int x = 0; x < pollen.length; x++) {
            eggs[x] = pollen[x] * (1 - life.selfing());
            pollen[x] = (1 - inflow.pollenShare()) * pollen[x] / shedM2 + inflow.pollenShare() * incomingGametes[x];
        }
        for (int x = 0; x < eggs.length; x++) {
            for (int y = 0; y < pollen.length; y++) {
                next[genotypes.zygote(x, y)] += eggs[x] * pollen[y];
            }
        }
    }

    /** Seed in the soil now, of all genotypes [1/m²]. */
    public double seedsM2() {
        return Arrays.stream(bank).sum();
    }

    /** Frequency of the resistant copy of a gene in the seed now. */
    public double frequency(int gene) {
        return genotypes.frequency(bank, gene);
    }

    /** Share of the seed now that has a resistant copy of a gene, one or two; 0 where no seed is left. */
    public double resistantShare(int gene) {
        double resistant = 0;
        double all = 0;
        for (int g = 0; g < bank.length; g++) {
            resistant += genotypes.copies(g, gene) > 0 ? bank[g] : 0;
            all += bank[g];
        }
        return all == 0 ? 0 : resistant / all;
    }

    /** Share of the seed now that has a resistant copy of every gene; 0 where no seed is left. */
    public double resistantToAllShare() {
        double resistant = 0;
        double all = 0;
        for (int g = 0; g < bank.length; g++) {
            boolean each = true;
            for (int l = 0; l < genes.size(); l++) {
                each &= genotypes.copies(g, l) > 0;
            }
            resistant += each ? bank[g] : 0;
            all += bank[g];
        }
        return all == 0 ? 0 : resistant / all;
    }

    /** Seedlings of last year [1/m²]. */
    public double upM2() {
        return upM2;
    }

    /** Seed that died last year without coming up [1/m²], winter and summer. */
    public double diedM2() {
        return diedM2;
    }

    /** Plants left at the end of last year [1/m²]. */
    public double plantsM2() {
        return plantsM2;
    }

    /** Seed shed last year [1/m²], before what does not reach the next spring. */
    public double shedM2() {
        return shedM2;
    }

    /** Competitive load of last year's stand [%]. */
    public double loadPct() {
        return loadPct;
    }
}
