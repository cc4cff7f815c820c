package plumbrow.documents.sheet.part;

import plumbrow.documents.paper.Passage;

/** Running text as a person reads it. */
final class Prose {
    private static final String BULLETS = "(?:^|(?<=[\\s]))[•·▪■●‣](?=\\s|$)";

    private Prose() {}

    static String of(Passage passage) {
        return of(passage.text());
    }

    static String of(String text) {
        return text.replaceAll(BULLETS, " ").replaceAll("[\\s\\u00a0]+", " ").strip();
    }
}
