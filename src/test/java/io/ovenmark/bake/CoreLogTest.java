package io.ovenmark.bake;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Extras;
import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Temperature;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoreLogTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-10-05T07:30:00Z"), ZoneOffset.UTC);
  private static final String FILE = "bakes/bun/2026-10-05-1.json";

  private static Bake bake(String piece) {
    String json =
        """
        {"address": "bun@1", "blob": "0123456789abcdef0123456789abcdef01234567",
         "time": "2026-10-05T09:30Z", "pieces": [{"id": "a", %s}]}
        """
            .formatted(piece);
    return BakeCodec.read(FILE, "bun", "2026-10-05-1", json.getBytes(UTF_8));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4 min 45 °C, 8 min 78 °C, 12 min 96 °C | 4 min 45 °C, 8 min 78 °C, 12 min 96 °C",
        "4min 45C; 8 min: 172 °F | 4 min 45 °C, 8 min 172 °F",
        "0 min 21.5 °C,  2.5 minutes at 30 °C, | 0 min 21.5 °C, 2.5 min 30 °C",
        "4' 45 °C | 4 min 45 °C"
      })
  void isReadAsPeopleWriteIt(String text, String written) {
    assertThat(CoreLog.text(CoreLog.read(text))).isEqualTo(written);
    assertThat(CoreLog.read(written)).isEqualTo(CoreLog.read(text));
  }

  @Test
  void nothingIsNoLog() {
    assertThat(CoreLog.read(" ")).isEmpty();
    assertThat(CoreLog.text(List.of())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "45 °C", "4 min", "4 min 45", "4 45 °C", "8 min 78 °C, 4 min 45 °C",
        "4 min 45 °C, 4 min 46 °C", "4 min 999 °C", "3000 min 45 °C", "warm"
      })
  void isRefusedWithARemedy(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CoreLog.read(text))
        .withMessageContaining("\n");
  }

  @Test
  void isKeptInItsFileWithWhatOthersWroteThere() {
    Bake bake =
        bake(
            "\"core\": \"97 °C\", \"core_log\": [{\"minutes\": 4, \"temperature\": \"45 °C\","
                + " \"probe\": 2}, {\"minutes\": 8.5, \"temperature\": \"172 °F\"}]");
    byte[] written = BakeCodec.write(bake);

    assertThat(bake.pieces().get(0).coreLog()).hasSize(2);
    assertThat(new String(written, UTF_8)).contains("\"probe\": 2", "\"temperature\": \"172 °F\"");
    assertThat(BakeCodec.read(FILE, "bun", "2026-10-05-1", written)).isEqualTo(bake);
    assertThat(SchemaCheck.errors("bake", written)).isEmpty();
  }

  @Test
  void aFileWithoutOneStaysAsItIs() {
    Bake bake = bake("\"core\": \"97 °C\"");

    assertThat(bake.pieces().get(0).coreLog()).isEmpty();
    assertThat(new String(BakeCodec.write(bake), UTF_8)).doesNotContain("core_log");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[{\"minutes\": 8, \"temperature\": \"78 °C\"},"
            + " {\"minutes\": 4, \"temperature\": \"45 °C\"}] | go back in time",
        "[{\"minutes\": 8}] | Add the temperature in the centre.",
        "[{\"temperature\": \"78 °C\"}] | Add the minutes since it went in.",
        "[{\"minutes\": -1, \"temperature\": \"78 °C\"}] | out of range"
      })
  void aDamagedFileSaysWhere(String log, String expected) {
    assertThatThrownBy(() -> bake("\"core_log\": " + log))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining(expected);
  }

  @Test
  void isWrittenOnTheCommandLineAndTakenBack() {
    Piece a = Piece.named("a");
    List<Piece> logged =
        PieceText.read(List.of(a), List.of("a 190C 24min log='4 min 45 °C, 8 min 78 °C'"));

    assertThat(logged.get(0).coreLog())
        .containsExactly(
            new CorePoint(4, Temperature.celsius(45)), new CorePoint(8, Temperature.celsius(78)));
    assertThat(PieceText.read(logged, List.of("a core=96C")).get(0).coreLog()).hasSize(2);
    assertThat(PieceText.read(logged, List.of("a log=")).get(0).coreLog()).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PieceText.read(List.of(a), List.of("a log='8 min'")))
        .withMessageContaining("in the piece");
  }

  @Test
  void aFormShowsItAndChangesItOnlyWhenItIsTyped() {
    CorePoint marked =
        new CorePoint(
            4, Temperature.celsius(45), bake("\"x\": 1").pieces().get(0).extras());
    Piece was =
        PieceText.read(List.of(), List.of("a 190C 24min log='4 min 45 °C'")).get(0);
    Bake before =
        bake("\"core\": \"97 °C\"")
            .withPieces(
                List.of(
                    new Piece(
                        "a", was.temperature(), was.minutes(), was.rack(), was.doughGrams(),
                        was.bakedGrams(), was.widthMillimetres(), was.heightMillimetres(),
                        was.core(), List.of(marked), was.crustShade(), List.of(), List.of(),
                        List.of(), Optional.empty(), Optional.empty(), Extras.NONE)));
    BakeForm form = BakeFormText.of(before, TypedUnits.METRIC);
    assertThat(form.pieces().get(0).coreLog()).isEqualTo("4 min 45 °C");

    assertThat(read(form, before).pieces()).isEqualTo(before.pieces());
    assertThat(read(with(form, "4 min 45 °C, 9 min 80 °C"), before).pieces().get(0).coreLog())
        .hasSize(2);
    BakeFormReader.Reading wrong = read(with(form, "4 min 45"), before);
    assertThat(wrong.pieces().get(0).coreLog()).isEmpty();
    assertThat(wrong.faults())
        .extracting(BakeFormReader.Fault::field)
        .containsExactly("pieces.0.core_log");
  }

  private static BakeFormReader.Reading read(BakeForm form, Bake before) {
    return BakeFormReader.read(form, Optional.of(before), CLOCK);
  }

  private static BakeForm with(BakeForm form, String log) {
    PieceForm a = form.pieces().get(0);
    PieceForm next =
        new PieceForm(
            a.id(), a.temperature(), a.minutes(), a.rack(), a.dough(), a.baked(), a.width(),
            a.height(), a.core(), log, a.crust(), a.findings(), a.tasters(), a.verdict(), a.note());
    return new BakeForm(
        form.units(), form.time(), form.baker(), form.ambient(), form.note(), form.findings(),
        List.of(next));
  }
}
