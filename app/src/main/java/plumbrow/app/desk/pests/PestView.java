package plumbrow.app.desk.pests;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.advice.pestpage.Coming;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.Threshold;
import plumbrow.app.desk.shown.Shown;

/** What the page of a pest shows. */
public record PestView(PestPage page) {
    /** Fields whose days are known. */
    public List<Coming> known() {
        return page.coming().stream().filter(one -> one.lookUp() == null).toList();
    }

    /** What is missing, with the fields that miss it. */
    public Map<String, List<String>> missing() {
        Map<String, List<String>> missing = new LinkedHashMap<>();
        for (Coming one : page.coming()) {
            String lookUp = one.lookUp();
            if (lookUp != null) {
                missing.computeIfAbsent(lookUp, key -> new ArrayList<>()).add(one.field());
            }
        }
        return missing;
    }

    /** The figure's own page, filled in as it was asked here. */
    public String opened(Threshold threshold) {
        return "/figures/" + threshold.figure() + "?"
                + threshold.asked().entrySet().stream()
                        .map(one -> one.getKey() + "=" + Shown.part(one.getValue()))
                        .collect(Collectors.joining("&"));
    }
}
