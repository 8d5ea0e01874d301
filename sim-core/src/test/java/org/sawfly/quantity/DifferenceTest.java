package org.sawfly.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DifferenceTest {
    private static Difference grams(double before, double after) {
        return new Difference(before, after, Unit.GRAM, 1);
    }

    @Test
    void equalsTheNumbersPrintedBesideIt() {
        // 0.08 apart, yet the printed numbers differ by 0.1
        assertThat(grams(13.96, 13.88).words(Direction.LEAD)).isEqualTo("take out 0.1 g");
        assertThat(grams(231.44, 230.36).words(Direction.WEIGHT)).isEqualTo("1.0 g lighter");
        Random random = new Random(5);
        for (int i = 0; i < 1000; i++) {
            Difference difference = grams(250 * random.nextDouble(), 250 * random.nextDouble());
            double printed = Double.parseDouble(Numbers.fixed(difference.after(), 1))
                    - Double.parseDouble(Numbers.fixed(difference.before(), 1));
            assertThat(Numbers.fixed(difference.amount(), 1)).isEqualTo(Numbers.fixed(printed, 1));
        }
    }

    @Test
    void wordsForBothWays() {
        assertThat(grams(1, 2.5).words(Direction.LEAD)).isEqualTo("put in 1.5 g");
        assertThat(grams(1, 2.5).words(Direction.WEIGHT)).isEqualTo("1.5 g heavier");
        assertThat(grams(1, 1.04).words(Direction.WEIGHT)).isEqualTo("same");
        assertThat(new Difference(41.2, 41.1, Unit.METRE, 1).wordsWithoutUnit(Direction.HEIGHT))
                .isEqualTo("0.1 lower");
        assertThat(new Difference(69, 66.9, Unit.MILLIMETRE, 1).words(Direction.PLACE))
                .isEqualTo("2.1 mm forward");
        assertThat(grams(Double.NaN, 1).words(Direction.WEIGHT)).isEqualTo("-");
    }

    @Test
    void rangesAndWhatCannotBeSeen() {
        Difference height = new Difference(41.2, 41.1, Unit.METRE, 1);
        assertThat(height.words(Direction.HEIGHT, new Band(-0.3, -0.02), 0)).isEqualTo("0.1 m lower (0.0-0.3)");
        assertThat(height.words(Direction.HEIGHT, new Band(-0.3, 0.1), 0)).isEqualTo("no clear difference");
        assertThat(height.words(Direction.HEIGHT, new Band(-0.3, 0.1), 0.5)).isEqualTo("too small to see");
        assertThat(new Difference(14, 15, Unit.DEGREE, 0).words(Direction.AMOUNT, 2))
                .isEqualTo("too small to see");
        assertThat(grams(1, 1).words(Direction.WEIGHT, new Band(-0.2, 0), 0)).isEqualTo("same (0.0-0.2)");
        assertThat(height.words(Direction.HEIGHT, new Band(0.1, 0.3), 0)).isEqualTo("no clear difference");
        assertThat(height.words(Direction.HEIGHT, new Band(-0.11, -0.09), 0)).isEqualTo("0.1 m lower");
        assertThat(height.words(Direction.HEIGHT, new Band(-0.21, -0.19), 0)).isEqualTo("0.1 m lower");
    }

    @Test
    void rangesInWords() {
        assertThat(Direction.HEIGHT.range(new Band(-0.2, 0.31), Unit.METRE, 1))
                .isEqualTo("0.2 m lower to 0.3 m higher");
        assertThat(Direction.HEIGHT.range(new Band(-0.3, -0.1), Unit.METRE, 1)).isEqualTo("0.1 to 0.3 m lower");
        assertThat(Direction.HEIGHT.range(new Band(0.02, 0.3), Unit.METRE, 1)).isEqualTo("0.0 to 0.3 m higher");
        assertThat(Direction.HEIGHT.range(new Band(-0.02, 0.3), Unit.METRE, 1)).isEqualTo("same to 0.3 m higher");
        assertThat(Direction.HEIGHT.range(new Band(-0.11, -0.09), Unit.METRE, 1))
                .isEqualTo("0.1 m lower");
        assertThat(Direction.LEAD.range(new Band(-0.6, -0.1), Unit.GRAM, 1)).isEqualTo("take out 0.1 to 0.6 g");
        assertThat(Direction.HEIGHT.range(new Band(-0.04, 0.04), Unit.METRE, 1)).isEqualTo("same");
        assertThat(Direction.HEIGHT.range(new Band(Double.NaN, Double.NaN), Unit.METRE, 1))
                .isEqualTo("-");
    }

    @Test
    void percentOfThePrintedNumbers() {
        assertThat(new Difference(0.369, 0.345, Unit.NUMBER, 3).percentWords()).isEqualTo("7 % less");
        assertThat(new Difference(10, 11, Unit.NUMBER, 0).percentWords()).isEqualTo("10 % more");
        assertThat(new Difference(0, 0, Unit.NUMBER, 0).percentWords()).isEqualTo("-");
    }

    @Test
    void aBandHasAnOrder() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Band(2, 1));
        assertThat(Band.around(5, 2)).isEqualTo(new Band(3, 7));
        assertThat(new Band(0.03, 0.05).fromSi(Unit.MILLIMETRE)).isEqualTo(new Band(30, 50));
        assertThat(new Band(3, 7).contains(7)).isTrue();
    }
}
