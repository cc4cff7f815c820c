package plumbrow.app.command;

import java.util.List;
import picocli.CommandLine.ParameterException;
import plumbrow.advice.calendar.ProgramChangeException;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.app.book.BookException;
import plumbrow.app.faults.FaultFile;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.map.MapTrouble;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.weather.WeatherTrouble;
import plumbrow.documents.workbook.WorkbookFaults;
import plumbrow.science.figure.FigureInputException;

/** What went wrong, in one sentence on standard error. */
final class Faults {
    /** Their messages are written for the person at the desk. */
    private static final List<Class<? extends RuntimeException>> SPOKEN = List.of(
            BadInputException.class,
            BookException.class,
            ProgramChangeException.class,
            FigureInputException.class,
            FileTrouble.class,
            MapTrouble.class,
            PaperTrouble.class,
            SeasonGapException.class,
            WeatherTrouble.class,
            WorkbookFaults.class);

    private Faults() {}

    static int say(Screen screen, Exception fault) {
        if (SPOKEN.stream().noneMatch(kind -> kind.isInstance(fault))) {
            return unforeseen(screen, fault);
        }
        screen.complain(String.valueOf(fault.getMessage()));
        return Exit.BAD_INPUT;
    }

    static int sayUsage(Screen screen, ParameterException fault) {
        String command = fault.getCommandLine().getCommandSpec().qualifiedName();
        String message = String.valueOf(fault.getMessage()).replaceAll("\\s*\\R\\s*", " ");
        screen.complain(command + ": " + message);
        screen.err().println("See: " + command + " --help");
        return Exit.BAD_INPUT;
    }

    static int unforeseen(Screen screen, Throwable fault) {
        screen.err()
                .println(
                        FaultFile.add("A command failed.", fault)
                                .map(file -> "Plumbrow came upon a fault of its own and stopped; the details are in "
                                        + file + ".")
                                .orElse(
                                        "Plumbrow came upon a fault of its own and stopped; the details could not be written down."));
        return Exit.BAD_INPUT;
    }
}
