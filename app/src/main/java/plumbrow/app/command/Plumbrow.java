package plumbrow.app.command;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** What is said when no command is given: what commands there are. */
@Command(
        name = "plumbrow",
        description = "A decision desk for crop inputs.",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = Plumbrow.Version.class,
        sortOptions = false,
        footer = {"", "Exit: 0 good, 1 nothing can be advised or something is barred, 2 bad input."})
final class Plumbrow implements Runnable {
    private final Screen screen;

    @Spec
    private @Nullable CommandSpec spec;

    Plumbrow(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        if (spec != null) {
            spec.commandLine().usage(screen.out());
        }
    }

    /** The version of the file it runs from. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Optional.ofNullable(Plumbrow.class.getPackage().getImplementationVersion())
                    .orElse("(from source)");
            return new String[] {"Plumbrow " + version};
        }
    }
}
