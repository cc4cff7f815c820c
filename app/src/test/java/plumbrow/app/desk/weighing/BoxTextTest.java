package plumbrow.app.desk.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.SiteSpread;

class BoxTextTest {
    @Test
    void aSpreadThatWasWorkedOutHasThreeDigits() {
        Distribution perNode =
                SiteSpread.lossPerNode(new Distribution.Fixed(15)).distribution();
        assertThat(Shape.of(perNode).texts(perNode)).containsExactly("15", "55.6");
    }

    @Test
    void whatWasTypedKeepsItsDigits() {
        assertThat(BoxText.percent(0.19)).isEqualTo("19");
        assertThat(BoxText.percent(0.12345)).isEqualTo("12.345");
        assertThat(BoxText.percent(0)).isEqualTo("0");
        assertThat(BoxText.percent(2)).isEqualTo("200");
    }
}
