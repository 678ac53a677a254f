package io.ovenmark.tasting;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.json.Problem;
import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TastingCodecTest {
  private static final String FILE = "tastings/seeded-lupin-bun/2026-10-01-1.json";
  static final String TRIANGLE =
      """
      {
        "kind": "triangle",
        "question": "Which is odd?",
        "time": "2026-10-01T10:00:00+02:00",
        "seed": 5,
        "samples": [
          {"address": "seeded-lupin-bun@8", "blob": "0123456789abcdef0123456789abcdef01234567",
           "bake": "2026-09-14-1", "piece": "b", "cut": "quarters"},
          {"address": "seeded-lupin-bun@9", "blob": "1123456789abcdef0123456789abcdef01234567"}],
        "sheets": [
          {"number": 1, "initials": "MK", "servings": [
            {"code": "417", "sample": 1}, {"code": "233", "sample": 2, "plate": "blue"},
            {"code": "871", "sample": 1}],
           "answer": {"choice": "233", "note": "sure", "given": "2026-10-01T10:10:00+02:00",
             "minutes": 3}, "seat": 4},
          {"number": 2, "servings": [
            {"code": "118", "sample": 2}, {"code": "902", "sample": 2},
            {"code": "555", "sample": 1}]}],
        "room": {"light": "red"}
      }
      """;
  static final String RIGHT =
      """
      {
        "kind": "just-about-right",
        "question": "How much do you like it?",
        "time": "2026-10-02T10:00:00+02:00",
        "seed": 0,
        "samples": [
          {"address": "bun@9", "blob": "1123456789abcdef0123456789abcdef01234567"}],
        "attributes": ["sweet", "moist"],
        "note": "small panel",
        "sheets": [
          {"number": 1, "servings": [{"code": "417", "sample": 1}],
           "answer": {"scores": [{"code": "417", "liking": 6.5,
             "attributes": [{"name": "sweet", "score": -1, "why": "x"}], "bite": 2}]}}]
      }
      """;

  static Tasting read(String text) {
    return TastingCodec.read(FILE, "seeded-lupin-bun", "2026-10-01-1", text.getBytes(UTF_8));
  }

  private static List<Problem> problems(String text) {
    return catchThrowableOfType(UnreadableException.class, () -> read(text)).problems();
  }

  @Test
  void readsEveryField() {
    Tasting tasting = read(TRIANGLE);

    assertThat(tasting.path()).isEqualTo(FILE);
    assertThat(tasting.kind()).isEqualTo(TastingKind.TRIANGLE);
    assertThat(tasting.samples().get(0).text()).isEqualTo("seeded-lupin-bun@8:2026-09-14-1/b");
    assertThat(tasting.samples().get(1).formula()).isEqualTo("seeded-lupin-bun");
    assertThat(tasting.sheets().get(0).initials()).contains("MK");
    assertThat(tasting.sheets().get(0).answer().orElseThrow().choice()).contains("233");
    assertThat(tasting.answered()).isEqualTo(1);
    Score score = read(RIGHT).sheets().get(0).answer().orElseThrow().scores().get(0);
    assertThat(score.liking()).hasValue(6.5);
    assertThat(score.attribute("sweet")).hasValue(-1);
    assertThat(score.attribute("moist")).isEmpty();
  }

  @Test
  void writesWhatItReadsAndKeepsUnknownFields() {
    for (String text : List.of(TRIANGLE, RIGHT)) {
      Tasting tasting = read(text);
      byte[] written = TastingCodec.write(tasting);
      assertThat(read(new String(written, UTF_8))).isEqualTo(tasting);
      assertThat(SchemaCheck.errors("tasting", written)).isEmpty();
      assertThat(SchemaCheck.errors("tasting", text)).isEmpty();
    }
    assertThat(new String(TastingCodec.write(read(TRIANGLE)), UTF_8))
        .contains("\"cut\": \"quarters\"", "\"plate\": \"blue\"", "\"minutes\": 3", "\"seat\": 4")
        .contains("\"light\": \"red\"")
        .endsWith("}\n");
    assertThat(new String(TastingCodec.write(read(RIGHT)), UTF_8))
        .contains("\"why\": \"x\"", "\"bite\": 2");
  }

  @Test
  void drawnSheetsAreValidForTheSchema() {
    Tasting more = read(TRIANGLE).withMore(10);

    assertThat(more.sheets()).hasSize(12);
    assertThat(SchemaCheck.errors("tasting", TastingCodec.write(more))).isEmpty();
  }

  /** What both the schema and the reading refuse: old text, new text, field of the message. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"triangle\" | \"square\" | kind",
        "\"seed\": 5 | \"seed\": -1 | seed",
        "\"seed\": 5 | \"seed\": 1.5 | seed",
        "\"seed\": 5, | '' | seed",
        "\"Which is odd?\" | \" \" | question",
        "2026-10-01T10:00:00+02:00\", | yesterday\", | time",
        "\"0123456789abcdef0123456789abcdef01234567\" | \"abc\" | samples[0].blob",
        "\"2026-09-14-1\" | \"monday\" | samples[0].bake",
        "\"417\" | \"017\" | sheets[0].servings[0].code",
        "{\"number\": 2, | { | sheets[1].number",
        "{\"choice\": \"233\" | {\"choice\": 233 | sheets[0].answer.choice",
      })
  void refusesWhatTheSchemaRefusesAndNamesTheField(String from, String to, String field) {
    String text = TRIANGLE.replace(from, to);

    assertThat(problems(text)).extracting(Problem::field).contains(field);
    assertThat(problems(text)).allMatch(problem -> problem.at().line() > 0);
    assertThat(SchemaCheck.errors("tasting", text)).isNotEmpty();
  }

  /** What only the reading can refuse. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"code\": \"871\" | \"code\": \"417\" | The code 417 stands twice",
        "\"choice\": \"233\" | \"choice\": \"999\" | which is not on it",
        "\"choice\": \"233\" | \"choice\": \"none\" | which is not on it",
        "\"choice\": \"233\" | \"ranking\": [\"233\"] | names no sample",
        "\"number\": 2 | \"number\": 3 | stands at place 2",
        "\"number\": 2 | \"number\": 1 | stands at place 2",
        "{\"code\": \"871\", \"sample\": 1} | {\"code\": \"871\", \"sample\": 3} | do not fit",
        "\"bake\": \"2026-09-14-1\", | '' | names a piece but no bake",
      })
  void refusesWhatDoesNotFitTogether(String from, String to, String message) {
    assertThat(problems(TRIANGLE.replace(from, to)))
        .anyMatch(problem -> problem.message().contains(message));
  }

  @Test
  void attributesBelongToJustAboutRightOnly() {
    assertThat(problems(RIGHT.replace("\"just-about-right\"", "\"liking\"")))
        .anyMatch(problem -> problem.message().contains("has attributes"));
    assertThat(problems(RIGHT.replace("\"name\": \"sweet\"", "\"name\": \"loud\"")))
        .anyMatch(problem -> problem.message().contains("scores loud, which is not asked"));
    assertThat(problems(RIGHT.replace("[\"sweet\", \"moist\"]", "[]")))
        .anyMatch(problem -> problem.message().contains("1 to 12 attributes"));
  }

  @Test
  void aNameThatIsNoDateIsRefused() {
    UnreadableException refused =
        catchThrowableOfType(
            UnreadableException.class,
            () ->
                TastingCodec.read(
                    FILE, "seeded-lupin-bun", "2026-13-01-1", TRIANGLE.getBytes(UTF_8)));

    assertThat(refused.problems().get(0).message()).contains("cannot name a tasting");
  }
}
