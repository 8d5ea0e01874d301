package org.sawfly.cli.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

class AnswerTest {
    private record Glider(double mass, double cg, double lead) {}

    private static final Quantity<Glider> MASS = new Quantity<>("mass_g", "mass", Unit.GRAM, 1, Glider::mass);
    private static final Quantity<Glider> CG =
            new Quantity<>("cg_mm", "CG behind leading edge", Unit.MILLIMETRE, 1, Glider::cg);
    private static final Quantity<Glider> LEAD = new Quantity<>("nose_lead_g", "nose lead", Unit.GRAM, 1, Glider::lead);

    private static Answer compared() {
        Glider today = new Glider(0.2314, 0.069, 0.0139);
        Glider cut = new Glider(0.2304, 0.0669, Double.NaN);
        Answer answer = new Answer("compare");
        answer.inputs().put("glider", "plover");
        String millimetres = answer.inputs().put("boom.cut_mm", 40, 0);
        Fields left = answer.results().section("versions").section("today");
        Fields right = answer.results().section("versions").section("cut 40");
        Fields changes = answer.results().section("changes").section("cut 40");
        answer.sayFlush("plover: today, and with " + millimetres + " mm off");
        answer.gap();
        Table table =
                new Table().left("").right("today").right("cut 40").left("").left("change (9 times in 10)");
        Direction[] directions = {Direction.WEIGHT, Direction.PLACE, Direction.LEAD};
        List<Quantity<Glider>> rows = List.of(MASS, CG, LEAD);
        for (int i = 0; i < rows.size(); i++) {
            Quantity<Glider> row = rows.get(i);
            Difference difference = changes.difference(row.key(), Difference.of(row, today, cut));
            String range = i > 0 ? "" : " (" + changes.band(row, new Band(0.9, 1.2)) + ")";
            table.row(
                    row.words(),
                    row.text(today),
                    row.text(cut),
                    row.unit().words(),
                    difference.words(directions[i]) + range);
            left.put(row, today);
            right.put(row, cut);
        }
        return answer.table(table)
                .caution(
                        "cut carbon wet or with extraction; glasses, dust mask, gloves. What is off stays off: cut less "
                                + "first.")
                .verdict("Cut it if you want it shorter.")
                .verdict("Not if you want it higher.");
    }

    @Test
    void textPutsTheCautionBeforeTheVerdict() {
        assertThat(TextWriter.write(compared())).isEqualTo("""
                plover: today, and with 40 mm off

                                          today  cut 40      change (9 times in 10)
                  mass                    231.4   230.4  g   1.0 g lighter (0.9-1.2)
                  CG behind leading edge   69.0    66.9  mm  2.1 mm forward
                  nose lead                13.9       -  g   -

                Caution: cut carbon wet or with extraction; glasses, dust mask, gloves. What is
                  off stays off: cut less first.
                Cut it if you want it shorter. Not if you want it higher.
                """);
    }

    @Test
    void jsonHasEverythingInOrder() {
        assertThat(JsonWriter.write(compared(), "0.1.0")).isEqualTo("""
                {
                  "command": "compare",
                  "version": "0.1.0",
                  "inputs": {
                    "glider": "plover",
                    "boom.cut_mm": 40
                  },
                  "results": {
                    "versions": {
                      "today": {
                        "mass_g": 231.4,
                        "cg_mm": 69,
                        "nose_lead_g": 13.9
                      },
                      "cut 40": {
                        "mass_g": 230.4,
                        "cg_mm": 66.9,
                        "nose_lead_g": null
                      }
                    },
                    "changes": {
                      "cut 40": {
                        "mass_g": -1,
                        "bands": {
                          "mass_g": [0.9, 1.2]
                        },
                        "cg_mm": -2.1,
                        "nose_lead_g": null
                      }
                    }
                  },
                  "warnings": [],
                  "cautions": [
                    "cut carbon wet or with extraction; glasses, dust mask, gloves. What is off stays off: cut less first."
                  ],
                  "verdict": "Cut it if you want it shorter. Not if you want it higher."
                }
                """);
    }

    @Test
    void everyNumberOfTheTextIsInTheJson() {
        TextNumbers.assertAllInJson(compared());
        assertThat(TextNumbers.missing(compared().say("and 17.5 m more, 2:15 aloft")))
                .containsExactly("17.5", "2:15");
    }

    @Test
    void clockTimesCountAsSeconds() {
        Answer answer = new Answer("fly");
        answer.results().put("still_air_time_s", 135.2, 0);
        TextNumbers.assertAllInJson(answer.say("2:15 aloft, in words 2 min 15 s"));
    }

    @Test
    void aNumberCannotBeTwoThings() {
        Fields fields = new Fields();
        assertThat(fields.put("cut_mm", 40, 0)).isEqualTo("40");
        assertThat(fields.put("cut_mm", 40, 0)).isEqualTo("40");
        assertThatThrownBy(() -> fields.put("cut_mm", 41, 0)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> fields.section("cut_mm")).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void namesAreEscapedInJsonAndPlainInText() {
        Answer answer = new Answer("fly");
        answer.inputs().put("glider", "M\u00f6we \"2\"\n\u2192");
        answer.sayFlush("M\u00f6we \u2192");
        assertThat(JsonWriter.write(answer, "1")).contains("\"M\\u00f6we \\\"2\\\"\\n\\u2192\"");
        assertThat(TextWriter.write(answer)).isEqualTo("Mowe ?\n");
    }

    @Test
    void longWordsAreBrokenAndWideTablesShortened() {
        String sentence = "word ".repeat(40).trim();
        Table table = new Table().left("version").right("m");
        table.row("a name that is far too long ".repeat(5), "41.2");
        String text = TextWriter.write(new Answer("x").say("  " + sentence).table(table));
        assertThat(text.lines()).allMatch(line -> line.length() <= TextWriter.WIDTH);
        assertThat(text.lines().skip(1).findFirst())
                .hasValueSatisfying(second -> assertThat(second).startsWith("    word"));
        assertThat(text).endsWith("..  41.2\n");
    }

    @Test
    void rowsBecomeCsvAndJson() {
        Rows rows =
                Rows.of(List.of(MASS, CG), List.of(new Glider(0.2314, 0.1 / 3, 0), new Glider(0.23, Double.NaN, 0)));
        assertThat(rows.csv()).isEqualTo("mass_g,cg_mm\n231.4,33.3333333333\n230,\n");
        Rows named = new Rows(List.of("name", "x_m")).add(List.of("a \"b\", c", 0.5));
        assertThat(named.csv()).isEqualTo("name,x_m\n\"a \"\"b\"\", c\",0.5\n");
        assertThatIllegalArgumentException().isThrownBy(() -> named.add(List.of("short")));
        assertThatIllegalArgumentException().isThrownBy(() -> new Rows(List.of("x", "x")));
        Answer answer = new Answer("vary").rows(rows);
        assertThat(JsonWriter.write(answer, "1")).contains("\"cg_mm\": null");
        assertThat(answer.rows()).contains(rows);
    }
}
