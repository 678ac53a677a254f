package io.ovenmark.desk;

import static io.ovenmark.desk.LupinBench.BUN;
import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Refusal.Reason;
import io.ovenmark.search.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindInHistoryTest {
  @TempDir Path temporary;
  private LupinBench bench;
  private Desk desk;

  @BeforeEach
  void setUpABench() {
    bench = new LupinBench(temporary);
    desk = bench.desk();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  /** A question as it stands in an address: {@code finding=dense&kinds=baked}. */
  private Search search(String query) {
    String[] texts = new String[7];
    List<String> names =
        List.of("words", "finding", "ingredient", "person", "since", "until", "formula");
    List<String> kinds = List.of();
    for (String part : query.split("&")) {
      String[] pair = part.split("=", 2);
      if (pair[0].equals("kinds")) {
        kinds = List.of(pair[1].split(","));
      } else {
        texts[names.indexOf(pair[0])] = pair[1];
      }
    }
    return Search.read(
        desk,
        new Search.Texts(
            texts[0], texts[1], texts[2], texts[3], texts[4], texts[5], texts[6], kinds));
  }

  private SearchViews.Found find(String query) {
    FindInHistory verb = new FindInHistory(desk);
    verb.read((done, total) -> assertThat(total).isPositive());
    return verb.call(search(query), 50);
  }

  private static String hits(SearchViews.Found found) {
    return found.formulas().stream()
        .flatMap(formula -> formula.hits().stream())
        .map(hit -> hit.bake() == null ? hit.address() : "bake " + hit.bake())
        .collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "words=rest 10 | seeded-lupin-bun@1",
        "words=rest 15 | seeded-lupin-bun@3",
        "words=TOASTED | seeded-lupin-bun@3",
        "words=tore | seeded-lupin-bun@2",
        "words=psyllium | sesame-crispbread@1, seeded-lupin-bun@1",
        "words=oven spr | bake 2026-03-01-2, bake 2026-03-01-1",
        "words=tray jpg | bake 2026-03-01-1",
        "finding=good oven spring | bake 2026-03-01-2, bake 2026-03-01-1",
        "finding=dense | bake 2026-03-01-1",
        "finding=dark | bake 2026-03-01-1",
        "ingredient=water | seeded-lupin-bun/egg-free@5, seeded-lupin-bun@2, seeded-lupin-bun@1",
        "ingredient=sesame | sesame-crispbread@1, seeded-lupin-bun@3",
        "ingredient=egg-whole | seeded-lupin-bun/egg-free@5, seeded-lupin-bun@3, seeded-lupin-bun@1",
        "finding=good oven spring&ingredient=sesame | bake 2026-03-01-2",
        "kinds=published | seeded-lupin-bun@3",
        "kinds=baked | seeded-lupin-bun@3, seeded-lupin-bun@2",
        "kinds=oven | seeded-lupin-bun@3",
        "kinds=method,baked | seeded-lupin-bun@3",
        "words=begin&formula=seeded-lupin-bun | seeded-lupin-bun@1",
        "ingredient=water&formula=seeded-lupin-bun/egg-free | seeded-lupin-bun/egg-free@5",
        "finding=dense&formula=seeded-lupin-bun/egg-free | ''",
        "words=begin&person=nobody | ''",
        "words=begin&since=2030-01-01 | ''",
        "words=begin&until=2020-01-01 | ''"
      })
  void whatIsAskedForIsFoundNewestFirst(String query, String expected) {
    assertThat(hits(find(query))).isEqualTo(expected);
  }

  @Test
  void anOldMethodStepIsFoundWhereItCameInAndItsWordsAreMarked() {
    SearchViews.Hit hit = find("words=rest 10").formulas().get(0).hits().get(0);
    assertThat(hit.passages()).hasSize(1);
    assertThat(hit.passages().get(0).place()).isEqualTo("method step");
    assertThat(hit.passages().get(0).runs())
        .containsExactly(
            new Words.Run("Stir in the wet part and ", false),
            new Words.Run("rest", true),
            new Words.Run(" ", false),
            new Words.Run("10", true),
            new Words.Run(" min.", false));
  }

  @Test
  void aHitForAnIngredientSaysWhatChanged() {
    SearchViews.Found found = find("ingredient=water&formula=" + BUN);
    assertThat(found.formulas().get(0).hits().get(1).changes())
        .singleElement()
        .asString()
        .contains("180 g → 188 g");
    assertThat(found.asked().formula()).isEqualTo(BUN);
    assertThat(found.asked().ingredient()).isEqualTo("water");
    assertThat(found.asked().words()).isNull();
  }

  @Test
  void aBakeNamesItsRevisionAndFindings() {
    SearchViews.Hit hit = find("finding=dense").formulas().get(0).hits().get(0);
    assertThat(hit.kind()).isEqualTo("bake");
    assertThat(hit.address()).isEqualTo("seeded-lupin-bun@2");
    assertThat(hit.revision()).isEqualTo(2);
    assertThat(hit.findings())
        .contains(
            new SearchViews.FoundFinding("dense", false, List.of(new Words.Run("dense", true))),
            new SearchViews.FoundFinding(
                "good oven spring", true, List.of(new Words.Run("good oven spring", false))));
  }

  @Test
  void whatWasFoundCanBeNarrowed() {
    SearchViews.Narrow narrow = find("words=bun").narrow();
    assertThat(narrow.ingredients())
        .extracting(SearchViews.Choice::value)
        .contains("water", "lupin-flour");
    assertThat(find("finding=good oven spring").narrow().findings().get(0))
        .isEqualTo(new SearchViews.Choice("good oven spring", "good oven spring", 2));
  }

  @Test
  void formulasInWhichWholeWordsStandComeFirst() {
    bench.fixture().formula("later").line("water", "1 g").revise("Begins anew");
    assertThat(find("words=begin").formulas())
        .extracting(SearchViews.FoundFormula::formula)
        .containsExactly("sesame-crispbread", BUN, "later");
  }

  @Test
  void onlySoManyHitsOfAFormulaAreTold() {
    find("words=bun");
    SearchViews.FoundFormula formula =
        new FindInHistory(desk).call(search("ingredient=water"), 1).formulas().get(0);
    assertThat(formula.hits()).hasSize(1);
    assertThat(formula.count()).isEqualTo(3);
    assertThat(formula.name()).isEqualTo("Seeded lupin bun");
  }

  @Test
  void whatIsWrittenLaterIsFoundAtOnce() {
    assertThat(find("words=softer").count()).isZero();
    bench.bun().set("water=200 g").revise("Softer still");
    assertThat(hits(find("words=softer"))).isEqualTo("seeded-lupin-bun@4");
    bench.fixture().bake(bench.bun().at(4), List.of(LupinBench.gummy()));
    assertThat(find("finding=gummy crumb").count()).isEqualTo(1);
  }

  @Test
  void aDamagedFormulaAndBakeAreLeftOut() {
    bench.fixture().edit("formulas/" + BUN + ".json", "{\"name\": ");
    bench.fixture().edit("bakes/" + BUN + "/2026-03-01-2.json", "{");
    bench.fixture().git("commit", "-aqm", "Broken by an editor");
    assertThat(hits(find("words=broken"))).isEqualTo("seeded-lupin-bun@4");
    assertThat(hits(find("words=oven spr"))).isEqualTo("bake 2026-03-01-1");
    assertThat(find("words=broken").unread()).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "since=yesterday | INVALID | since | \"yesterday\" is not a day.",
        "until=2026-02-30 | INVALID | until | \"2026-02-30\" is not a day.",
        "kinds=wet | INVALID | kind | There is no kind of revision \"wet\".",
        "formula=no-bun | NOT_FOUND | no-bun | There is no formula \"no-bun\" in this notebook."
      })
  void whatCannotBeAskedIsRefused(String query, Reason reason, String where, String sentence) {
    Refusal refusal = refuses(reason, () -> search(query));
    assertThat(refusal.where()).isEqualTo(where);
    assertThat(refusal.getMessage()).isEqualTo(sentence);
  }

  @Test
  void aTimeThatEndsBeforeItBeginsIsRefused() {
    assertThat(catchThrowable(() -> search("since=2026-03-02&until=2026-03-01")))
        .hasMessageContaining("before it begins");
  }

  @Test
  void aTimelineIsFilteredByRevisionsWithTheirBakes() {
    Address bun = Address.parse(BUN);
    assertThat(filtered(bun, "finding=dense")).containsExactly("seeded-lupin-bun@2");
    assertThat(filtered(bun, "words=oven spring hotter")).containsExactly("seeded-lupin-bun@3");
    assertThat(filtered(bun, "ingredient=psyllium")).containsExactly("seeded-lupin-bun@1");
    assertThat(filtered(bun, "kinds=published")).containsExactly("seeded-lupin-bun@3");
    assertThat(filtered(Address.parse(BUN + "/egg-free"), "ingredient=water"))
        .containsExactly(
            "seeded-lupin-bun/egg-free@5",
            "seeded-lupin-bun/egg-free@2",
            "seeded-lupin-bun/egg-free@1");
    SearchViews.Filtered all = new FilterTimeline(desk).call(bun, Search.forWords(""));
    assertThat(all.revisions()).isEqualTo(5);
    assertThat(all.addresses()).hasSize(5);
    assertThat(all.narrow().findings()).extracting(SearchViews.Choice::value).contains("dense");
  }

  private List<String> filtered(Address line, String query) {
    return new FilterTimeline(desk).call(line, search(query)).addresses();
  }

  @Test
  void theLightTimelineAndItsRowsAreTheWholeOne() {
    Address bun = Address.parse(BUN);
    ShowTimeline verb = new ShowTimeline(desk);
    Views.TimelineView whole = verb.call(bun);
    TimelineViews.SpineView spine = verb.spine(bun);
    assertThat(spine.revisions())
        .extracting(TimelineViews.SpineEntry::address)
        .containsExactlyElementsOf(
            whole.revisions().stream().map(Views.TimelineEntry::address).toList());
    assertThat(spine.revisions())
        .extracting(TimelineViews.SpineEntry::bakeCount)
        .containsExactlyElementsOf(whole.revisions().stream().map(e -> e.bakes().size()).toList());
    List<Address> all =
        spine.revisions().stream().map(entry -> Address.parse(entry.address())).toList();
    assertThat(Json.compact(verb.rows(all).rows())).isEqualTo(Json.compact(whole.revisions()));
    assertThat(spine.goal()).isEqualTo(whole.goal());
    assertThat(spine.variants()).isEqualTo(whole.variants());
  }
}
