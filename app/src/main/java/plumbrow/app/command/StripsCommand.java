package plumbrow.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.field.Crop;
import plumbrow.advice.strips.Strip;
import plumbrow.advice.strips.StripAnalysis;
import plumbrow.advice.strips.StripAnswer;
import plumbrow.advice.strips.StripLayout;
import plumbrow.advice.strips.StripTrial;
import plumbrow.app.command.said.StripWords;
import plumbrow.app.json.Json;
import plumbrow.documents.strips.StripFile;
import plumbrow.documents.strips.StripTrouble;

/** Strip trials on the farm: drawn beforehand, analysed after harvest. */
@Command(
        name = "strips",
        description =
                "Draws the order of strips for a trial, and says after harvest what it shows and whether it pays.")
final class StripsCommand implements Runnable {
    private final Screen screen;

    StripsCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException("Say what to do with strips: layout TREATMENT TREATMENT, or analyse FILE.csv.");
    }

    @Command(
            name = "layout",
            description = "Draws by lot where each treatment goes, block by block; says what the trial can show.",
            footer = {"", "Name the treatment that the others are held against first.", "Exit: 0 good, 2 bad input."})
    int layout(
            @Parameters(arity = "1..*", paramLabel = "TREATMENT", description = "The treatments, the check first.")
                    List<String> treatments,
            @Option(
                            names = "--blocks",
                            paramLabel = "N",
                            defaultValue = "6",
                            description = "Blocks side by side; else 6.")
                    int blocks,
            @Option(
                            names = "--seed",
                            paramLabel = "N",
                            defaultValue = "1",
                            description = "The lot: another number draws another order.")
                    long seed,
            @Option(names = "--gain", paramLabel = "BU", description = "The gain that matters, bu/ac.") @Nullable
                    Double gain,
            @Option(
                            names = "--spread",
                            paramLabel = "BU",
                            description = "What strips side by side vary, standard deviation, bu/ac.")
                    @Nullable
                    Double spread,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        StripLayout layout = sentence(() -> StripLayout.drawn(treatments, blocks, seed, gain, spread));
        screen.say(json ? Json.of(layout) : StripWords.of(layout));
        return Exit.GOOD;
    }

    @Command(
            name = "analyse",
            description = "Says what the strips of a file show against the check, and the chance that it pays.",
            footer = {
                "",
                "Headings: treatment, block, yield_bu_ac; or weight_lb, moisture_pct, length_ft, width_ft; place if known.",
                "Exit: 0 good, 2 bad input."
            })
    int analyse(
            @Parameters(paramLabel = "FILE.csv", description = "A line a strip, as harvested.") Path file,
            @Option(
                            names = "--check",
                            paramLabel = "NAME",
                            required = true,
                            description = "The treatment that the others are held against.")
                    String check,
            @Option(names = "--crop", paramLabel = "CROP", required = true, description = "corn, soybean or wheat.")
                    String crop,
            @Option(names = "--price", paramLabel = "USD", description = "Price of the grain, $/bu.") @Nullable
                    Double price,
            @Option(
                            names = "--cost",
                            paramLabel = "NAME=USD",
                            description = "What a treatment costs more than the check, $/ac; for each treatment.")
                    @Nullable
                    Map<String, Double> cost,
            @Option(
                            names = "--column",
                            paramLabel = "KEY=HEADING",
                            description = "A heading of the file that is none of the keys.")
                    @Nullable
                    Map<String, String> columns,
            @Option(
                            names = "--confidence",
                            paramLabel = "SHARE",
                            defaultValue = "0.95",
                            description = "Of the intervals; else 0.95.")
                    double confidence,
            @Option(names = "--json", description = "Answer as JSON.") boolean json) {
        if (!(confidence >= .5 && confidence <= .999)) {
            throw new BadInputException("The confidence is " + confidence + "; expected 0.5 to 0.999.");
        }
        StripAnswer answer = sentence(() -> {
            List<Strip> strips = StripFile.read(bytes(file), crop(crop), columns == null ? Map.of() : columns);
            StripAnalysis.Stakes stakes = new StripAnalysis.Stakes(
                    price == null ? OptionalDouble.empty() : OptionalDouble.of(price),
                    cost == null ? Map.of() : new LinkedHashMap<>(cost));
            return StripAnalysis.of(new StripTrial(check, strips), stakes, confidence);
        });
        screen.say(json ? Json.of(answer) : StripWords.of(answer));
        return Exit.GOOD;
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException fault) {
            throw new BadInputException("The file " + file + " could not be read; expected a CSV with a line a strip.");
        }
    }

    private static Crop crop(String word) {
        return Arrays.stream(Crop.values())
                .filter(crop -> crop.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new BadInputException("The crop is '" + word + "'; expected one of "
                        + Arrays.stream(Crop.values()).map(Crop::word).collect(Collectors.joining(", ")) + "."));
    }

    private static <T> T sentence(java.util.function.Supplier<T> of) {
        try {
            return of.get();
        } catch (IllegalArgumentException | StripTrouble fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
    }
}
