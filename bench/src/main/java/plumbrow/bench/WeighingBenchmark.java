package plumbrow.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.Progress;
import plumbrow.advice.weighing.WeighingOptions;

/** A whole weighing: draws, gates, margins, break-evens, what knowing and sampling are worth, sentences. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WeighingBenchmark {
    /** Number of fields of the season. */
    @Param("14")
    public int fields;

    /** Number of draws. */
    @Param("10000")
    public int draws;

    /** Number of fields weighed at once. */
    @Param("2")
    public int threads;

    private Season season = BenchSeason.of(1);

    @Setup
    public void season() {
        season = BenchSeason.of(fields);
    }

    @Benchmark
    public Advice weigh() {
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(draws).withThreads(threads);
        return Adviser.advise(season, options, Progress.SILENT);
    }
}
