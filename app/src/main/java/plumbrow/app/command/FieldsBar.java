package plumbrow.app.command;

import java.util.function.Function;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import plumbrow.advice.weighing.Progress;

/** How far a long weighing has come: on standard error, and only where a person looks on. */
final class FieldsBar {
    /** Fewer fields are done before a bar could be read. */
    private static final int WORTH_A_BAR = 8;

    private FieldsBar() {}

    static <T> T show(Screen screen, int fields, Function<Progress, T> weighing) {
        if (!screen.terminal() || fields < WORTH_A_BAR) {
            return weighing.apply(Progress.SILENT);
        }
        try (ProgressBar bar = new ProgressBarBuilder()
                .setTaskName("Weighing")
                .setUnit(" fields", 1)
                .setInitialMax(fields)
                .setStyle(ProgressBarStyle.ASCII)
                .setConsumer(new ConsoleProgressBarConsumer(System.err))
                .build()) {
            return weighing.apply((done, of) -> bar.stepTo(done));
        }
    }
}
