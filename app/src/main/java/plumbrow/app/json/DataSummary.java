package plumbrow.app.json;

import java.util.List;
import plumbrow.science.figure.Status;
import plumbrow.science.reference.DataReport;
import plumbrow.science.reference.Trouble;

/** What a look through the reference data found, as it is answered to programs. */
public record DataSummary(
        boolean clean, List<SetSummary> sets, List<DataReport.Contested> contested, List<Trouble> troubles) {

    /** Sound rows of one set by status. */
    public record SetSummary(
            String set,
            String file,
            int rows,
            int verified,
            int verifiedWithReserve,
            int computed,
            int practice,
            int memory) {}

    public static DataSummary of(DataReport report) {
        return new DataSummary(
                report.clean(),
                report.sets().stream().map(DataSummary::summary).toList(),
                report.contested(),
                report.troubles());
    }

    private static SetSummary summary(DataReport.SetCount set) {
        return new SetSummary(
                set.set(),
                set.file(),
                set.rows(),
                count(set, Status.VERIFIED) - set.withReserve(),
                set.withReserve(),
                count(set, Status.COMPUTED),
                count(set, Status.PRACTICE),
                count(set, Status.MEMORY));
    }

    private static int count(DataReport.SetCount set, Status status) {
        return set.byStatus().getOrDefault(status, 0);
    }
}
