package plumbrow.documents.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.documents.picture.StripPictureTest.all;
import static plumbrow.documents.picture.StripPictureTest.parse;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.documents.card.EverydayScale;
import plumbrow.documents.card.EverydayScale.Entry;

class EverydayPictureTest {
    private static final EverydayScale SCALE = new EverydayScale(List.of(
            new Entry("nicotine", 50, false, false, "", ""),
            new Entry("caffeine", 200, false, false, "", ""),
            new Entry("Larkwick <4L>", 2000, true, true, "", ""),
            new Entry("sugar", 30_000, false, false, "", "")));

    @Test
    void equalFactorsAreEqualSteps() throws Exception {
        for (int width : new int[] {300, 620}) {
            var dots = all(parse(EverydayPicture.svg(SCALE, width)), "circle");
            double nicotine = Double.parseDouble(dots.get(0).getAttribute("cx"));
            double caffeine = Double.parseDouble(dots.get(1).getAttribute("cx"));
            double sugar = Double.parseDouble(dots.get(2).getAttribute("cx"));
            double perFactor = (sugar - nicotine) / Math.log10(30_000. / 50);
            assertThat(caffeine).isCloseTo(nicotine + perFactor * Math.log10(4), within(.02));
            assertThat(sugar).isLessThan(width);
        }
    }

    @Test
    void itSaysWhatItShowsAndItsCaution() {
        assertThat(EverydayPicture.svg(SCALE, 500)).contains("more than 2,000", "one dose swallowed", "&lt;4L&gt;");
        assertThat(EverydayPicture.svg(new EverydayScale(List.of()), 500)).isEmpty();
    }
}
