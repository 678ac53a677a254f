package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.ShowTasting;
import io.ovenmark.desk.TastingViews;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TastingCommandsTest {
  private static final String BUN = "seeded-lupin-bun";

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  private TastingViews.TastingSheet only() {
    try (Desk desk = new Desk(Notebook.open(folder))) {
      ShowTasting show = new ShowTasting(desk);
      return show.call(BUN, show.all().tastings().get(0).id());
    }
  }

  @Test
  void aTastingIsSetUpServedAnsweredAndRead() {
    String planned =
        bench.must(
                "tasting", "new", "triangle", BUN + "@2", BUN + "@3", "--tasters", "6", "--seed",
                "5")
            .out();
    assertThat(planned)
        .contains(": Triangle, 6 sheets.")
        .contains("Before anything is served\n  Ask each taster about allergies");
    String id = only().id();

    String sheet = bench.must("tasting", "sheet", BUN, id, "--sheet", "1").out();
    assertThat(sheet).contains("405      366      177").doesNotContain("@2", "@3");
    assertThat(bench.must("tasting", "show", BUN, id, "--key").out())
        .contains("1      405=1  366=2  177=1");
    assertThat(bench.must("tasting", "show", BUN, id).out()).doesNotContain("405=1");

    assertThat(bench.must("tasting", "enter", BUN, id, "1", "366", "--initials", "MK").out())
        .isEqualTo("The answer of sheet 1 is in; 1 of 6 are.\n");
    assertThat(bench.must("tasting", "show", BUN, id).out())
        .contains("No difference is shown. 1 of 1 found the odd sample")
        .contains("1 answer is too few to show any difference");
    assertThat(bench.must("tasting", "list").out()).startsWith(BUN + " " + id);
    assertThat(bench.must("tasting", "more", BUN, id, "6").out()).contains("12 sheets.");
  }

  @Test
  void anAnswerIsReplacedOnlyWhenThatIsSaid() {
    bench.must(
        "tasting", "new", "just-about-right", BUN, "--tasters", "2", "--seed", "1", "--attribute",
        "sweet,very moist");
    String id = only().id();
    String code = only().sheets().get(0).codes().get(0);
    bench.must("tasting", "enter", BUN, id, "1", code + "=7,sweet=-1,very_moist=0");

    Bench.Result again = bench.run("tasting", "enter", BUN, id, "1", code + "=5");
    assertThat(again.code()).isEqualTo(1);
    assertThat(again.err()).contains("The answer of sheet 1 is in already.");
    bench.must("tasting", "enter", BUN, id, "1", code + "=5", "--correct");
    assertThat(only().sheets().get(0).answer().scores().get(0).liking()).isEqualTo(5);
  }

  @Test
  void jsonIsTheAnswerOfTheDesk() {
    bench.must("tasting", "new", "preference", BUN + "@2", BUN + "@3", "--tasters", "2");
    String id = only().id();
    try (Desk desk = new Desk(Notebook.open(folder))) {
      ShowTasting show = new ShowTasting(desk);
      assertThat(bench.must("tasting", "show", BUN, id, "--json").out())
          .isEqualTo(Json.readable(show.call(BUN, id)));
      assertThat(bench.must("tasting", "sheet", BUN, id, "--json").out())
          .isEqualTo(Json.readable(show.sheets(BUN, id)));
      assertThat(bench.must("tasting", "show", BUN, id, "--key", "--json").out())
          .isEqualTo(Json.readable(show.key(BUN, id)));
    }
  }

  @Test
  void whatIsNotUnderstoodIsRefusedInOneSentence() {
    Bench.Result kind = bench.run("tasting", "new", "smelling", BUN, "--tasters", "3");
    assertThat(kind.code()).isEqualTo(1);
    assertThat(kind.err()).contains("\"smelling\" is not a kind of tasting.");
    Bench.Result tasters = bench.run("tasting", "new", "liking", BUN);
    assertThat(tasters.code()).isEqualTo(2);
    Bench.Result missing = bench.run("tasting", "show", BUN, "2026-01-01-1");
    assertThat(missing.err()).contains("There is no tasting \"2026-01-01-1\" of " + BUN + ".");
  }
}
