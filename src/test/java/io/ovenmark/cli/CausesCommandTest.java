package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.desk.CauseOrder;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindCauses;
import io.ovenmark.desk.Json;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Revision 3 was baked and had an even crumb; a day later revision 2, and was dry. */
class CausesCommandTest {
  private static final String BUN = "seeded-lupin-bun";

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
    bench.must(
        "bake", "add", BUN, "--date", "2026-03-01 12:00", "--piece",
        "a 205C 21min dough=67g baked=58g core=97C finding='even crumb'");
  }

  @Test
  void theOverviewListsEveryFinding() {
    assertThat(bench.must("causes", BUN).out())
        .startsWith("Seeded lupin bun\nseeded-lupin-bun@3\n\nfinding ")
        .contains("dry         present         1 of 2")
        .contains("For one of them: ovenmark causes seeded-lupin-bun@3 \"dry\"")
        .contains("To mind");
  }

  @Test
  void aFindingIsToldWithCausesChangesAndPlans() {
    String out = bench.must("causes", BUN, "dry").out();

    assertThat(out)
        .contains("Dry is on the newest judged bake. It came with the bake 2026-03-02-1")
        .contains("What changed\n  ● came: 2026-03-01-1 (seeded-lupin-bun@3) → 2026-03-02-1")
        .contains("Common causes, those first whose figure moved with it\n  1. ")
        .contains("oven time 24 min, up 3 min since the last bake without this finding")
        .contains("  Plan 1. ")
        .contains("    All of it: ")
        .contains("common practice, no source");
    assertThat(out.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThan(89));
  }

  @Test
  void jsonIsTheAnswerOfTheDesk() {
    try (Desk desk = new Desk(Notebook.open(folder))) {
      assertThat(bench.must("causes", BUN, "dry", "--pieces", "3", "--json").out())
          .isEqualTo(
              Json.readable(
                  new FindCauses(desk)
                      .call(Address.parse(BUN), new CauseOrder("dry", "3", null))));
    }
  }

  @Test
  void aSettingOrWhatHelpsBecomesADraft() {
    assertThat(bench.must("causes", BUN, "dry", "--draft", "1").out())
        .startsWith("The draft ")
        .contains("/drafts/");
    assertThat(bench.must("causes", BUN, "hollow", "--against", "1").out())
        .startsWith("The draft ");
  }

  @Test
  void wrongUseAndWhatIsNotThereHaveTheirOwnCodes() {
    assertThat(bench.run("causes", BUN, "--draft", "1").code()).isEqualTo(2);
    assertThat(bench.run("causes", BUN, "dry", "--draft", "1", "--against", "1").code())
        .isEqualTo(2);
    assertThat(bench.run("causes", BUN, "dry", "--plan", "1").code()).isEqualTo(2);
    Bench.Result result = bench.run("causes", BUN, "dry", "--pieces", "many");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.err()).contains("The number of pieces \"many\" is not understood.");
    assertThat(bench.run("causes", BUN, "dry", "--against", "99").code()).isEqualTo(1);
  }
}
