package plumbrow.app.desk.pests;

import java.util.stream.Collectors;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.Threshold;
import plumbrow.app.desk.shown.Shown;

/** What the page of a pest shows. */
public record PestView(PestPage page) {
    /** The figure's own page, filled in as it was asked here. */
    public String opened(Threshold threshold) {
        return "/figures/" + threshold.figure() + "?"
                + threshold.asked().entrySet().stream()
                        .map(one -> one.getKey() + "=" + Shown.part(one.getValue()))
                        .collect(Collectors.joining("&"));
    }
}
