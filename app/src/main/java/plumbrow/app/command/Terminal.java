package plumbrow.app.command;

import java.util.regex.Pattern;
import picocli.CommandLine.Help.Ansi;
import plumbrow.advice.text.TextRule;

/** Keeps names and papers from giving orders to the terminal they are shown on. */
final class Terminal {
    /** ECMA-48: CSI with its parameters, the strings that end in ST or BEL, other escapes; broken off ones too. */
    private static final Pattern ORDER = Pattern.compile("(?:\u001B\\[|\u009B)[0-?]*[ -/]*[@-~]?"
            + "|(?:\u001B[PX^_\\]]|[\u0090\u0098\u009D-\u009F])[^\u0007\u001B\u009C]*(?:\u0007|\u001B\\\\|\u009C)?"
            + "|\u001B[ -/]*[0-~]?");

    private static final Pattern STRONG = Pattern.compile("\u001B\\[[01]m");

    private Terminal() {}

    /** The text without orders. Only our own strong type is left, where there is any. */
    static String plain(String text) {
        return ORDER.matcher(text)
                .replaceAll(order -> own(order.group()) ? "$0" : "")
                .codePoints()
                .filter(c -> c == '\n' || c == '\t' || c == '\u001B' || !TextRule.hidden(c))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean own(String order) {
        return Ansi.AUTO.enabled() && STRONG.matcher(order).matches();
    }
}
