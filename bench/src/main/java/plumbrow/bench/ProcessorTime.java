package plumbrow.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/** Processor time of the whole process in an iteration [ms]: what the work costs, however busy the machine is. */
public final class ProcessorTime implements InternalProfiler {
    static final String LABEL = "processor";

    private final OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private long before;

    @Override
    public String getDescription() {
        return "processor time of the process";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = system.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double ms = (system.getProcessCpuTime() - before) / 1e6;
        return List.of(new ScalarResult(LABEL, ms, "ms", AggregationPolicy.AVG));
    }
}
