package plumbrow.science.pages;

import static plumbrow.science.pages.Markdown.code;
import static plumbrow.science.pages.Markdown.head;
import static plumbrow.science.pages.Markdown.row;
import static plumbrow.science.pages.Markdown.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.science.Figures;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Status;
import plumbrow.science.reference.Source;
import plumbrow.science.reference.Sources;

/** The manual's page of every printed source, and of the figures that rest on it. */
final class SourcesPage {
    private SourcesPage() {}

    static String markdown() {
        List<Source> all = Sources.all();
        long seen = all.stream()
                .filter(source -> source.status() == Status.VERIFIED)
                .count();
        StringBuilder page = new StringBuilder("""
                # Sources

                Every paper, bulletin, regulation and page that a figure or a check cites: %d, of which %d were seen, whole or in
                the part or abstract that is used, and %d are cited from memory. A figure’s own page says of each value whether it
                was seen there. Where a title is not known to us, what the source is about stands in round brackets.

                The reference data name their sources row by row, with the address; see [reference data](reference-data.md).
                What has no source says “common practice” or “value from memory”. The list itself is `sources.csv`
                beside the reference data; a figure cites by the key.

                """.formatted(all.size(), seen, all.size() - seen));
        Map<String, List<String>> used = used();
        page.append(head("key", "source", "status", "figures that name it"));
        for (Source source : all) {
            page.append(row(List.of(
                    code(source.key()),
                    words(source.full()),
                    source.status() == Status.VERIFIED ? "verified" : "cited from memory",
                    String.join(", ", used.getOrDefault(source.key(), List.of("a check"))))));
        }
        return page.toString();
    }

    /** Figures that name a source for their formula, by key. */
    private static Map<String, List<String>> used() {
        Map<String, List<String>> used = new LinkedHashMap<>();
        for (Figure figure : Figures.all()) {
            String link =
                    "[" + figure.id() + "](figures/" + SubjectPage.file(figure.subject()) + ".md#" + figure.id() + ")";
            Sources.in(figure.cited()).stream()
                    .map(Source::key)
                    .distinct()
                    .forEach(key -> used.computeIfAbsent(key, first -> new ArrayList<>())
                            .add(link));
        }
        return used;
    }
}
