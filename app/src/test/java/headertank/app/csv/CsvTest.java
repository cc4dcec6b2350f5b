package headertank.app.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTest {

    private static List<List<String>> cells(String text) {
        return Csv.read(text).stream().map(Csv.Line::cells).toList();
    }

    @Test
    void quotesHoldCommasQuotesAndLineEnds() {
        assertThat(cells("a,\"b,\"\"c\"\"\",\"d\r\ne\"\r\n1,,3"))
                .containsExactly(List.of("a", "b,\"c\"", "d\ne"), List.of("1", "", "3"));
    }

    @Test
    void linesAreCountedThroughQuotesAndBlankOnesLeftOut() {
        assertThat(Csv.read("\ufeffa,b\n\n\"x\ny\",1\nz,2\n"))
                .extracting(Csv.Line::number)
                .containsExactly(1, 3, 5);
    }

    @Test
    void semicolonsSeparateWhereTheHeaderSaysSo() {
        assertThat(cells("kind;name\nCAP;\"1,3 bar\"")).contains(List.of("CAP", "1,3 bar"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a,\"b", "a\n\"b\"c,d", "\"a\"\"\n"})
    void aQuoteThatDoesNotEndIsTold(String text) {
        assertThatThrownBy(() -> Csv.read(text)).isInstanceOf(Csv.BrokenException.class);
    }

    @Test
    void theLineIsNamedInWhichTheBrokenCellStands() {
        assertThatThrownBy(() -> Csv.read("a\n\"b\nc\",d\n\ne,\"f\ng,h\n"))
                .isInstanceOfSatisfying(
                        Csv.BrokenException.class, e -> assertThat(e.line()).isEqualTo(5));
        assertThatThrownBy(() -> Csv.read("a\n\"b\nc\",d\n\ne,\"f\"g\nh\n"))
                .isInstanceOfSatisfying(
                        Csv.BrokenException.class, e -> assertThat(e.line()).isEqualTo(5));
    }

    @Test
    void aLineOfAnotherProgramIsReadAsFarAsItGoes() {
        assertThat(Csv.cells("\"Speed; GPS\" ; 12,5;\"a\"b;\"c", ';')).containsExactly("Speed; GPS", "12,5", "ab", "c");
        assertThat(Csv.cells(";".repeat(20_000), ';')).hasSize(1);
        assertThat(Csv.cells("", ',')).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "\t=1", "'=1", "''-x", "＝1+1", "－1"})
    void nothingIsWrittenThatASpreadsheetTakesForAFormula(String text) {
        String written = Csv.write(List.of(text)).strip();
        assertThat(written.replaceFirst("^\"", "")).startsWith("'");
        assertThat(cells(Csv.write(List.of(text)))).containsExactly(List.of(text));
    }

    /** However the spreadsheet separates: each piece between separators, without blanks and quotes, is what it may take for a cell. */
    @Test
    void noSeparatorOfAnyLocaleUncoversAFormula() {
        assertThat(Csv.write(List.of("x;=1+1;y"))).isEqualTo("\"x;'=1+1;y\"\r\n");
        assertThat(Csv.write(List.of("x\ty", "x|y", "x y"))).isEqualTo("\"x\ty\",\"x|y\",x y\r\n");
        long seed = 20260102;
        Random random = new Random(seed);
        String letters = "ab,;|\"\n\r\t '=+-@＝＋－＠\u00a0";
        for (int i = 0; i < 5000; i++) {
            StringBuilder cell = new StringBuilder();
            for (int n = random.nextInt(8); n > 0; n--) {
                cell.append(letters.charAt(random.nextInt(letters.length())));
            }
            String written = Csv.write(List.of("first", cell.toString(), "last"));
            for (String piece : written.split("[,;|\\t\\r\\n]")) {
                String bare = piece.replaceAll("[\\s\"\u00a0]", "");
                assertThat(bare).as("seed %d, cell %d: %s", seed, i, written).doesNotContainPattern("^[=+\\-@＝＋－＠]");
            }
        }
    }

    @Test
    void whateverIsWrittenReadsBack() {
        long seed = 20260101;
        Random random = new Random(seed);
        String letters = "ab,;\"\n'=+-@\t é°＝＠|";
        for (int i = 0; i < 2000; i++) {
            List<String> row = new ArrayList<>(List.of("first", "second"));
            for (int c = 0; c < 3; c++) {
                StringBuilder cell = new StringBuilder();
                for (int n = random.nextInt(6); n > 0; n--) {
                    cell.append(letters.charAt(random.nextInt(letters.length())));
                }
                row.add(cell.toString());
            }
            assertThat(cells(Csv.write(row))).as("seed %d, row %d", seed, i).containsExactly(row);
        }
    }
}
