package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import plumbrow.app.Main;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What came back when a command was typed. */
record Typed(int code, String out, String err) {
    static Typed plumbrow(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] arguments = Arrays.stream(words).map(String::valueOf).toArray(String[]::new);
        int code = Main.run(arguments, new PrintWriter(out), new PrintWriter(err));
        assertThat(out + "\n" + err).as("no stack trace reaches a person").doesNotContain("\tat ", "Exception");
        return new Typed(code, out.toString(), err.toString());
    }

    Typed good() {
        assertThat(err).isEmpty();
        assertThat(code).isZero();
        return this;
    }

    /** Bad input: code 2, nothing on standard output, one line on standard error. */
    Typed refused(String sentence) {
        assertThat(code).isEqualTo(2);
        assertThat(out).isEmpty();
        assertThat(err.lines()).hasSize(1);
        assertThat(err.strip()).contains(sentence);
        return this;
    }

    /** Bad usage: code 2, one line with what is wrong, one with where to look. */
    Typed misused(String sentence) {
        assertThat(code).isEqualTo(2);
        assertThat(out).isEmpty();
        assertThat(err.lines())
                .hasSize(2)
                .last()
                .asString()
                .startsWith("See: plumbrow")
                .endsWith("--help");
        assertThat(err.lines().findFirst())
                .hasValueSatisfying(line -> assertThat(line).contains(sentence));
        return this;
    }

    JsonNode json() {
        return new JsonMapper().readTree(out);
    }
}
