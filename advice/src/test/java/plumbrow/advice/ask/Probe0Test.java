package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;

class Probe0Test {
    @Test
    void show() {
        for (Question q : Questions.all()) {
            long t = System.nanoTime();
            AskAnswer a = Asking.answer(q, Map.of("state", "IA"), LocalDate.of(2026, 3, 1), 10000);
            long ms = (System.nanoTime() - t) / 1_000_000;
            System.out.println("=== " + q.asks() + " boxes " + q.boxes().size() + "  " + ms + " ms");
            System.out.println(a.sentence());
            a.advice().programs().forEach(p -> System.out.printf("   %-30s %s cost %.0f margin %.1f gain %.2f beats %.2f%n", p.name(), p.standing(), p.costUsdPerAcre(), p.meanMarginUsdPerAcre(), p.meanGainUsdPerAcre(), p.chanceBeatsBaseline()));
            System.out.println(a.onTypical());
            System.out.println(a.notLookedUp());
            System.out.println("NEXT " + a.next().says());
            a.next().inputs().forEach(n -> System.out.println("   - " + n.says() + " [" + n.input() + " -> " + a.boxes().get(n.input()) + "] " + n.programs()));
            a.advice().cautions().forEach(c -> System.out.println("   ! " + c));
        }
    }
}
