package plumbrow.app.command;

import java.util.function.Function;
import java.util.function.IntConsumer;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** How many files are read: on standard error, and only where a person looks on. */
final class FilesBar {
    private FilesBar() {}

    static <T> T show(Screen screen, int files, Function<IntConsumer, T> reading) {
        if (!screen.terminal() || files < 2) {
            return reading.apply(done -> {});
        }
        try (ProgressBar bar = new ProgressBarBuilder()
                .setTaskName("Reading")
                .setUnit(" files", 1)
                .setInitialMax(files)
                .setStyle(ProgressBarStyle.ASCII)
                .setConsumer(new ConsoleProgressBarConsumer(System.err))
                .build()) {
            return reading.apply(bar::stepTo);
        }
    }
}
