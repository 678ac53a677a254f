package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"water,5", "Ψωμί,4", "豆腐パン,8", "Mu\u0301esli,6", "a\u200Bb,2", "한국,4", "'',0"})
  void widthIsCountedInColumns(String text, int columns) {
    assertThat(TextWidth.of(text)).isEqualTo(columns);
  }

  @Test
  void columnsOfATableAlignInEveryScript() {
    Table table = new Table("name", ">g").row("Ψωμί λούπινου", "120").row("豆腐パン", "9");
    assertThat(table.lines())
        .containsExactly("name             g", "Ψωμί λούπινου  120", "豆腐パン         9");
  }

  @Test
  void aTableWithoutHeadsHasNoHeadLine() {
    assertThat(new Table("", ">").row("a", "1").indent(2).lines()).containsExactly("  a  1");
    assertThat(new Table("", "").isEmpty()).isTrue();
  }

  @Test
  void linesBreakBetweenWordsAndKeepTheirIndent() {
    assertThat(TextWidth.wrap("  one two three", 9, "    "))
        .containsExactly("  one two", "    three");
    assertThat(TextWidth.wrap("unbreakable word", 5, "")).containsExactly("unbreakable", "word");
    assertThat(TextWidth.wrap("", 5, "")).containsExactly("");
  }

  @Test
  void aNumberStaysWithItsUnit() {
    StringWriter out = new StringWriter();
    new Output(new PrintWriter(out)).wrapped("x".repeat(83) + " 188 g of water", "");
    assertThat(out.toString()).isEqualTo("x".repeat(83) + "\n188 g of water\n");
  }

  @Test
  void partsStayWholeWhereTheyFit() {
    StringWriter out = new StringWriter();
    new Output(new PrintWriter(out)).parts("", List.of("x".repeat(70), "liquid ratio 1.49"), "  ");
    assertThat(out.toString()).isEqualTo("x".repeat(70) + " ·\n  liquid ratio 1.49\n");
  }

  @Test
  void jsonKeepsItsMeaningWhenItIsMadeSafe() {
    assertThat(Printable.json("\"a\u009Bb\u202Ec é ☃\"")).isEqualTo("\"a\\u009bb\\u202ec é ☃\"");
    assertThat(Printable.of("a\tb\nc\u001Bd\u0085\uD800")).isEqualTo("a b c␛d\uFFFD\uFFFD");
  }

  @ParameterizedTest
  @CsvSource({
    "120 g lupin-flour,lupin-flour=120 g",
    "120g lupin-flour,lupin-flour=120g",
    "1 large egg-whole after water,egg-whole=1 large after water",
    "1 1/2 tsp second:salt,second:salt=1 1/2 tsp",
    "lupin-flour=120 g,lupin-flour=120 g",
    "lupin-flour=120 g after salt,lupin-flour=120 g after salt",
    "lupin-flour,lupin-flour"
  })
  void anAdditionMayBeSaidAmountFirst(String said, String kept) {
    assertThat(EditOptions.addition(said)).isEqualTo(kept);
  }

  @Test
  void lettersThatJavaLostAreFoundAgain() throws IOException {
    Path record = folder.resolve("cmdline");
    byte[] line = "java\0-jar\0x.jar\0new\0Ψωμί\0--note\0\0".getBytes(StandardCharsets.UTF_8);
    Files.write(record, line);
    String[] lost = {"new", "\uFFFD\uFFFD", "--note", ""};
    assertThat(Words.recovered(lost, record)).containsExactly("new", "Ψωμί", "--note", "");
    String[] whole = {"new", "Bun"};
    assertThat(Words.recovered(whole, record)).isSameAs(whole);
    assertThat(Words.recovered(lost, folder.resolve("none"))).isSameAs(lost);
  }

  @Test
  void lettersThatAreLostForGoodAreNeverCommitted() {
    Bench bench = Saltmarsh.empty(folder);
    Bench.Result result = bench.run("new", "\uFFFD\uFFFD");
    assertThat(result.code()).isEqualTo(2);
    assertThat(result.err()).contains("LC_ALL=C.UTF-8");
  }
}
