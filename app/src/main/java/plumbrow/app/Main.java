package plumbrow.app;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import plumbrow.app.command.Commands;
import plumbrow.app.command.Screen;

/** Where every run of Plumbrow begins. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        int code = Commands.run(arguments, new Screen(out, err, personLooksOn()));
        out.flush();
        err.flush();
        System.exit(code);
    }

    /**
     * One command, without ending the process.
     *
     * @return 0 good, 1 nothing can be advised or something is barred, 2 bad input
     */
    public static int run(String[] arguments, PrintWriter out, PrintWriter err) {
        return Commands.run(arguments, new Screen(out, err, false));
    }

    /** Java 17 has a console only on a terminal; from Java 22 on there is always one, which has to be asked. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean personLooksOn() {
        Console console = System.console();
        if (console == null || Runtime.version().feature() < 22) {
            return console != null;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException unknown) {
            return false;
        }
    }

    /** Always UTF-8: units, signs and names need it, and pipes keep it. */
    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), false);
    }
}
