package plumbrow.documents.binder;

import java.nio.file.Path;
import java.util.List;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.documents.WholeFile;

/** A field plan on one page of paper. */
public final class FieldPlanPaper {
    private FieldPlanPaper() {}

    /** Writes the plan as PDF, in place of an older one of that name. */
    public static void write(FieldPlan plan, Path pdf) {
        byte[] file = pdf(plan);
        WholeFile.write(pdf, out -> out.write(file));
    }

    /** The plan as PDF. */
    public static byte[] pdf(FieldPlan plan) {
        FieldPlanSheet sheet = new FieldPlanSheet(plan);
        return Packet.print(
                sheet.name(),
                "What to do on " + plan.field().name() + " in the " + plan.year() + " season",
                plan.adviser(),
                List.of(sheet),
                plan.asOf());
    }
}
