package plumbrow.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import plumbrow.advice.ask.Asking;
import plumbrow.advice.ask.Box;
import plumbrow.advice.ask.Question;
import plumbrow.advice.ask.Questions;
import plumbrow.advice.weighing.NextInput;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.science.reference.TypicalValues;

/**
 * Random fields whose truth is hidden, asked box by box: in the order of what to tell next, in the order of the page, and in a random
 * one. Counted is after how many answers the choice is within $1/ac of that with everything told, and stays so.
 *
 * <p>A truth is drawn from the spread of what is typical, choices each as likely as the next: the same belief as the order of asking
 * rests on, so that the order is judged and not the belief. The draws of the fields' truth are others than those of the weighing.
 */
public final class NextRun {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final int DRAWS = 1_000;
    private static final double WITHIN_USD = 1;
    private static final Set<String> FIRST = Set.of("state", "crop", "pest", "weed");
    /** Score of the outer two of the three points by which a number is spread. */
    private static final double END = Math.sqrt(3);

    private static final Set<String> LEFT = Set.of("acres", "planted", "again");

    private NextRun() {}

    /**
     * What one field came to.
     *
     * @param asked boxes asked before nothing more is worth asking
     * @param typicalUsd what choosing on typical values alone leaves on the table [$/ac]
     * @param worthUsd the same after these were told, {@code pageUsd} after as many in the order of the page
     */
    private record Needed(
            int byWorth,
            int byPage,
            int byChance,
            boolean open,
            int asked,
            int boxes,
            double typicalUsd,
            double worthUsd,
            double pageUsd) {}

    public static void main(String[] arguments) {
        int fields = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 500;
        Random random = new Random(20_260_401L);
        List<Needed> all = new ArrayList<>();
        for (int i = 0; i < fields; i++) {
            Question question = Questions.all().get(i % Questions.all().size());
            all.add(field(question, random));
            if ((i + 1) % 50 == 0) {
                System.out.println(i + 1 + " fields");
            }
        }
        List<Needed> open = all.stream().filter(Needed::open).toList();
        System.out.println(all.size() + " fields; on " + open.size()
                + " the answer from typical values alone is more than $1/ac behind");
        say("all fields, by worth ", all.stream().mapToInt(Needed::byWorth).toArray());
        say("all fields, by page  ", all.stream().mapToInt(Needed::byPage).toArray());
        say("all fields, by chance", all.stream().mapToInt(Needed::byChance).toArray());
        say("the open, by worth   ", open.stream().mapToInt(Needed::byWorth).toArray());
        say("the open, by page    ", open.stream().mapToInt(Needed::byPage).toArray());
        say("the open, by chance  ", open.stream().mapToInt(Needed::byChance).toArray());
        System.out.printf(
                Locale.ROOT,
                "left on the table, mean $/ac: typical values alone %.2f, after the interview %.2f, after as many of the page"
                        + " %.2f; boxes there %.1f%n",
                all.stream().mapToDouble(Needed::typicalUsd).average().orElse(0),
                all.stream().mapToDouble(Needed::worthUsd).average().orElse(0),
                all.stream().mapToDouble(Needed::pageUsd).average().orElse(0),
                all.stream().mapToDouble(Needed::boxes).average().orElse(0));
        say("asked before it stops", all.stream().mapToInt(Needed::asked).toArray());
    }

    private static void say(String what, int[] counts) {
        Arrays.sort(counts);
        System.out.printf(
                Locale.ROOT,
                "%s  median %d, mean %.2f, 90 %% %d%n",
                what,
                counts.length == 0 ? 0 : counts[counts.length / 2],
                Arrays.stream(counts).average().orElse(0),
                counts.length == 0 ? 0 : counts[counts.length * 9 / 10]);
    }

    private static Needed field(Question question, Random random) {
        Map<String, String> known = new LinkedHashMap<>();
        Map<String, String> truth = new LinkedHashMap<>();
        List<String> states = TypicalValues.states();
        for (Box box : question.boxes()) {
            if (FIRST.contains(box.id())) {
                known.put(
                        box.id(),
                        box.id().equals("state")
                                ? states.get(random.nextInt(states.size()))
                                : box.options()
                                        .get(random.nextInt(box.options().size()))
                                        .word());
            }
        }
        for (Box box : question.boxes()) {
            if (!FIRST.contains(box.id()) && !LEFT.contains(box.id())) {
                String value = truth(question, box, known, random);
                if (!value.isEmpty()) {
                    truth.put(box.id(), value);
                }
            }
        }
        Map<String, String> told = new LinkedHashMap<>(known);
        told.putAll(truth);
        Map<String, Double> informed = Asking.means(question, told, DAY);
        List<String> byPage = new ArrayList<>(truth.keySet());
        List<String> byChance = new ArrayList<>(byPage);
        Collections.shuffle(byChance, random);
        List<String> byWorth = byWorth(question, known, truth);
        return new Needed(
                needed(question, known, truth, byWorth, informed),
                needed(question, known, truth, byPage, informed),
                needed(question, known, truth, byChance, informed),
                behind(informed, Asking.means(question, known, DAY)) > WITHIN_USD,
                byWorth.size(),
                truth.size(),
                behind(informed, Asking.means(question, known, DAY)),
                behind(informed, Asking.means(question, told(known, truth, byWorth), DAY)),
                behind(informed, Asking.means(question, told(known, truth, byPage.subList(0, byWorth.size())), DAY)));
    }

    /** A number between the three points of what is typical, by a normal score; a word of a choice by its chance. */
    private static String truth(Question question, Box box, Map<String, String> known, Random random) {
        List<Question.Likely> likely = question.likely(box, question.read(known, DAY), DAY);
        if (!box.options().isEmpty()) {
            return likely.get(random.nextInt(likely.size())).typed();
        }
        if (likely.size() < 3) {
            return "";
        }
        double score = Math.max(-END, Math.min(END, random.nextGaussian()));
        double low = Double.parseDouble(likely.get(score < 0 ? 0 : 1).typed());
        double high = Double.parseDouble(likely.get(score < 0 ? 1 : 2).typed());
        double share = score < 0 ? 1 + score / END : score / END;
        return String.format(Locale.ROOT, "%.4f", low + share * (high - low));
    }

    /** The boxes in the order in which they are asked for, until nothing more is. */
    private static List<String> byWorth(Question question, Map<String, String> known, Map<String, String> truth) {
        Map<String, String> told = new LinkedHashMap<>(known);
        List<String> order = new ArrayList<>();
        while (order.size() < truth.size()) {
            NextInputs next = Asking.next(question, told, DAY, DRAWS);
            Map<String, String> boxes = Asking.boxes(question, told, DAY);
            String box = next.inputs().stream()
                    .map(NextInput::input)
                    .map(input -> boxes.getOrDefault(input, ""))
                    .filter(one -> truth.containsKey(one) && !told.containsKey(one))
                    .findFirst()
                    .orElse("");
            if (box.isEmpty()) {
                return order;
            }
            told.put(box, truth.getOrDefault(box, ""));
            order.add(box);
        }
        return order;
    }

    private static Map<String, String> told(Map<String, String> known, Map<String, String> truth, List<String> boxes) {
        Map<String, String> told = new LinkedHashMap<>(known);
        boxes.forEach(box -> told.put(box, truth.getOrDefault(box, "")));
        return told;
    }

    /** After how many answers the choice is good and stays so; all boxes where it never is. */
    private static int needed(
            Question question,
            Map<String, String> known,
            Map<String, String> truth,
            List<String> order,
            Map<String, Double> informed) {
        Map<String, String> told = new LinkedHashMap<>(known);
        int needed = behind(informed, Asking.means(question, told, DAY)) <= WITHIN_USD ? 0 : -1;
        for (int i = 0; i < order.size(); i++) {
            told.put(order.get(i), truth.getOrDefault(order.get(i), ""));
            boolean good = behind(informed, Asking.means(question, told, DAY)) <= WITHIN_USD;
            needed = !good ? -1 : needed < 0 ? i + 1 : needed;
        }
        return needed < 0 ? truth.size() : needed;
    }

    /** How far the program that leads on what is told is behind the best informed one [$/ac]. */
    private static double behind(Map<String, Double> informed, Map<String, Double> told) {
        String leads = told.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
        double best = Collections.max(informed.values());
        return best - informed.getOrDefault(leads, Collections.min(informed.values()));
    }
}
