package plumbrow.science;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Output;

/**
 * Finds figures by a question as a person asks it.
 *
 * Each word of the question counts by where it stands in a figure and by how few figures hold it; the sum counts by the
 * share of the question's words that the figure holds. The last word may be unfinished, as it is while someone types.
 *
 * Common practice of word indexes, no source; the weights are ours.
 */
public final class FigureSearch {
    private static final double ASKED = 3;
    private static final double ANSWERED = 2;
    private static final double SUBJECT = 1.5;
    private static final double NEEDED = 1;

    /** What a word that is only begun counts, against a whole one. */
    private static final double BEGUN = .7;

    /** Figures below this share of the best one's count are left out. */
    private static final double LEAST_OF_BEST = .4;

    private static final List<Entry> INDEX =
            Figures.all().stream().map(Entry::of).toList();
    private static final Map<String, Integer> HOLDERS = holders();

    private FigureSearch() {}

    /** The figures that answer a question, nearest first; none where no word of it is known, all where it is blank. */
    public static List<Figure> find(String question) {
        if (question.isBlank()) {
            return Figures.all();
        }
        List<String> words = QuestionWords.of(question);
        List<Hit> hits = new ArrayList<>();
        for (Entry entry : INDEX) {
            double count = count(entry, words);
            if (count > 0) {
                hits.add(new Hit(entry.figure(), count));
            }
        }
        double best = hits.stream().mapToDouble(Hit::count).max().orElse(0);
        return hits.stream()
                .filter(hit -> hit.count() >= LEAST_OF_BEST * best)
                .sorted(Comparator.comparingDouble(Hit::count).reversed())
                .map(Hit::figure)
                .toList();
    }

    private static double count(Entry entry, List<String> words) {
        double sum = 0;
        int held = 0;
        for (int i = 0; i < words.size(); i++) {
            double word = entry.weight(words.get(i)) * rarity(words.get(i));
            if (word == 0 && i == words.size() - 1) {
                word = BEGUN * begun(entry, words.get(i));
            }
            sum += word;
            held += word > 0 ? 1 : 0;
        }
        return words.isEmpty() ? 0 : sum * held / words.size();
    }

    private static double begun(Entry entry, String start) {
        return entry.weights().entrySet().stream()
                .filter(known -> known.getKey().startsWith(start))
                .mapToDouble(known -> known.getValue() * rarity(known.getKey()))
                .max()
                .orElse(0);
    }

    private static double rarity(String word) {
        return Math.log1p((double) INDEX.size() / HOLDERS.getOrDefault(word, INDEX.size()));
    }

    private static Map<String, Integer> holders() {
        Map<String, Integer> holders = new HashMap<>();
        INDEX.forEach(entry -> entry.weights().keySet().forEach(word -> holders.merge(word, 1, Integer::sum)));
        return holders;
    }

    private record Hit(Figure figure, double count) {}

    /** The words of a figure, each with the weight of the best place it stands in. */
    private record Entry(Figure figure, Map<String, Double> weights) {
        static Entry of(Figure figure) {
            Map<String, Double> weights = new HashMap<>();
            add(weights, ASKED, figure.question());
            add(weights, ASKED, figure.id().replace('-', ' '));
            figure.alsoAsked().forEach(words -> add(weights, ASKED, words));
            figure.outputs().stream().map(Output::label).forEach(label -> add(weights, ANSWERED, label));
            add(weights, SUBJECT, figure.subject().title());
            figure.inputs().stream().map(Input::label).forEach(label -> add(weights, NEEDED, label));
            return new Entry(figure, Map.copyOf(weights));
        }

        double weight(String word) {
            return weights.getOrDefault(word, 0.0);
        }

        private static void add(Map<String, Double> weights, double weight, String text) {
            Set<String> words = new HashSet<>(QuestionWords.of(text));
            words.forEach(word -> weights.merge(word, weight, Math::max));
        }
    }
}
