package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.BakeForm;
import io.ovenmark.bake.PieceForm;
import io.ovenmark.bake.TypedUnits;
import io.ovenmark.change.Choice;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TypedBakeTest {
  private static final Address BUN = Address.parse(Kitchen.BUN + "@1");
  private static final TypedUnits OUNCES = new TypedUnits("oz", "F");

  @TempDir Path folder;
  private Kitchen kitchen;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private static PieceForm piece(String id, String dough, String baked, String core) {
    return new PieceForm(
        id, "190", "24", "", dough, baked, "", "", core, "", List.of(), List.of(), "", "");
  }

  private static BakeForm form(TypedUnits units, PieceForm... pieces) {
    return new BakeForm(
        units, "2026-01-05 08:30", "Ines", "", "", List.of(), List.of(pieces));
  }

  private BakeFormViews.BakeFigures figures(BakeForm form) {
    return new WorkOutBake(kitchen.desk()).call(BUN, form, kitchen.by());
  }

  @Test
  void whatIsNotMeasuredIsUnknownAndSaidInWords() {
    BakeFormViews.BakeFigures figures =
        figures(form(TypedUnits.METRIC, piece("a", "95", "", ""), piece("b", "", "", "")));

    assertThat(figures.pieces()).extracting(Views.PieceView::lossPercent).containsOnlyNulls();
    assertThat(figures.missing())
        .containsExactly(
            new BakeFormViews.Missing("no baked mass", "not measured"),
            new BakeFormViews.Missing("not weighed", "not measured"));
    assertThat(figures.bakedPercent()).isNull();
    assertThat(figures.bakedUnknown()).contains("No piece");
    assertThat(figures.per100GBaked().json().get("protein_g")).isNull();
    assertThat(figures.weighedPieces().get(0).json().get("protein_g")).isNotNull();
    assertThat(figures.weighedPieces().get(0).json().get("water_g")).isNull();
    assertThat(figures.weighedPieces().get(1).json().get("protein_g")).isNull();
  }

  @Test
  void lossSpreadAndCompositionFollowTheMeasures() {
    PieceForm a =
        new PieceForm(
            "a", "190", "24", "", "100", "80", "90", "30", "96", "", List.of(), List.of(), "", "");

    BakeFormViews.BakeFigures figures = figures(form(TypedUnits.METRIC, a));

    assertThat(figures.pieces().get(0).lossPercent()).isEqualTo(20, within(1e-9));
    // Width divided by height, as AACC International 10-50 has it for cookies (from memory).
    assertThat(figures.pieces().get(0).spreadFactor()).isEqualTo(3, within(1e-9));
    assertThat(figures.bakedPercent()).isEqualTo(80, within(1e-9));
    double inPiece = (Double) figures.weighedPieces().get(0).json().get("protein_g");
    double in100Baked = (Double) figures.per100GBaked().json().get("protein_g");
    assertThat(in100Baked).isEqualTo(inPiece / 0.8, within(1e-9));
    // The flour's water is not stated, so the water is known from below only.
    double waterInPiece = figures.weighedPieces().get(0).figures().get("water_g").low();
    double waterIn100Baked = figures.per100GBaked().figures().get("water_g").low();
    assertThat(waterIn100Baked).isEqualTo(waterInPiece / 0.8, within(1e-9));
  }

  @Test
  void eggThatStayedCoolIsTold() {
    BakeFormViews.BakeFigures figures =
        figures(form(OUNCES, piece("a", "", "", "150"), piece("b", "", "", "205")));

    assertThat(figures.remarks()).hasSize(1);
    assertThat(figures.remarks().get(0))
        .contains("Below 71 °C (160 °F)", "a (150 °F)", "follow local food codes")
        .doesNotContain("b (");
    assertThat(figures.cautions()).anyMatch(each -> each.contains("Contains egg"));
  }

  @Test
  void aGridIsShownWithItsLettersOrWithWhatIsWrong() {
    assertThat(WorkOutBake.grid("375, 400 x 14", OUNCES).pieces())
        .containsExactly(
            new BakeFormViews.GridPiece("a", "375 °F", 14.0),
            new BakeFormViews.GridPiece("b", "400 °F", 14.0));
    assertThat(WorkOutBake.grid("190-200 C x 14 min", OUNCES).problem().sentence())
        .contains("which values lie between");
  }

  private RecordTypedBake.Request request(BakeForm form, BakeFormViews.BakeDraft draft) {
    return new RecordTypedBake.Request(
        BUN,
        Optional.of(kitchen.desk().notebook().revision(BUN).blob().hex()),
        form,
        Optional.ofNullable(draft)
            .map(each -> new RecordTypedBake.DraftState(each.id(), each.version())));
  }

  @Test
  void recordingEndsTheDraftAndSendingTheSameAgainRecordsNothingTwice() {
    BakeDrafts drafts = new BakeDrafts(kitchen.desk());
    BakeFormViews.BakeDraft draft =
        drafts.begin("{\"formula\": \"seeded-lupin-bun\"}", kitchen.by());
    RecordTypedBake verb = new RecordTypedBake(kitchen.desk());
    BakeForm form = form(OUNCES, piece("a", "3.4", "", "205"));

    Views.BakeView first = verb.call(request(form, draft), kitchen.by()).bake();
    Views.BakeView again = verb.call(request(form, draft), kitchen.by()).bake();

    assertThat(again).isEqualTo(first);
    assertThat(first.address()).isEqualTo("seeded-lupin-bun@1");
    assertThat(first.pieces().get(0).doughG()).isEqualTo(3.4 * 28.349523125, within(1e-9));
    assertThat(first.pieces().get(0).core()).isEqualTo("205 °F");
    assertThat(first.pieces().get(0).bakedG()).isNull();
    assertThat(drafts.of(Kitchen.BUN)).isEmpty();
    assertThat(new ListBakes(kitchen.desk()).call(Kitchen.BUN).bakes()).hasSize(1);
    kitchen.assertSound();
  }

  @Test
  void aFormThatIsNotUnderstoodWritesNothing() {
    Refusal refusal =
        catchThrowableOfType(
            Refusal.class,
            () ->
                new RecordTypedBake(kitchen.desk())
                    .call(
                        request(form(TypedUnits.METRIC, piece("a", "much", "", "hot")), null),
                        kitchen.by()));

    assertThat(refusal.where()).isEqualTo("pieces.0.dough");
    assertThat(refusal.hint()).contains("1 more");
    assertThat(new ListBakes(kitchen.desk()).call(Kitchen.BUN).bakes()).isEmpty();
  }

  @Test
  void anotherContentThanThatOfTheBeginningIsRefused() {
    RecordTypedBake.Request request =
        new RecordTypedBake.Request(
            BUN,
            Optional.of("0123456789abcdef0123456789abcdef01234567"),
            form(TypedUnits.METRIC, piece("a", "95", "", "")),
            Optional.empty());

    Refusal refusal =
        catchThrowableOfType(
            Refusal.class,
            () -> new RecordTypedBake(kitchen.desk()).call(request, kitchen.by()));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT);
  }

  @Test
  void aDraftThatWasTypedIntoElsewhereIsNotRecordedUnseen() {
    BakeDrafts drafts = new BakeDrafts(kitchen.desk());
    BakeFormViews.BakeDraft draft = drafts.begin("{}", kitchen.by());
    drafts.keep(typed(draft, "{}", "{\"grid\": \"190 C\"}"), kitchen.by());

    Refusal refusal =
        catchThrowableOfType(
            Refusal.class,
            () ->
                new RecordTypedBake(kitchen.desk())
                    .call(
                        request(form(TypedUnits.METRIC, piece("a", "95", "", "")), draft),
                        kitchen.by()));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT);
    assertThat(new ListBakes(kitchen.desk()).call(Kitchen.BUN).bakes()).isEmpty();
  }

  private static BakeDrafts.Typed typed(
      BakeFormViews.BakeDraft draft, String base, String document) {
    return new BakeDrafts.Typed(draft.id(), draft.version(), base, document, Map.of(), 0);
  }

  @Test
  void whatTwoDevicesTypedIntoADraftIsJoined() {
    BakeDrafts drafts = new BakeDrafts(kitchen.desk());
    String base =
        "{\"formula\": \"seeded-lupin-bun\", \"form\": {\"note\": \"\", \"pieces\": []}}";
    BakeFormViews.BakeDraft draft = drafts.begin(base, kitchen.by());
    drafts.keep(typed(draft, base, base.replace("\"\"", "\"from the phone\"")), kitchen.by());

    BakeFormViews.BakeDraft merged =
        drafts.keep(
            typed(draft, base, base.replace("[]", "[{\"key\": \"a\"}]")), kitchen.by());

    assertThat(merged.outcome()).isEqualTo("merged");
    assertThat(merged.document()).contains("from the phone", "\"key\": \"a\"");
    assertThat(drafts.of(Kitchen.BUN)).extracting(each -> each.pieces()).containsExactly(1);
  }

  @Test
  void theSameFieldOfADraftTypedTwiceIsAChoiceAndNothingIsKeptBefore() {
    BakeDrafts drafts = new BakeDrafts(kitchen.desk());
    String base = "{\"form\": {\"note\": \"\"}}";
    BakeFormViews.BakeDraft draft = drafts.begin(base, kitchen.by());
    BakeFormViews.BakeDraft phone =
        drafts.keep(typed(draft, base, base.replace("\"\"", "\"phone\"")), kitchen.by());
    BakeDrafts.Typed desk = typed(draft, base, base.replace("\"\"", "\"desk\""));

    BakeFormViews.BakeDraft open = drafts.keep(desk, kitchen.by());
    assertThat(open.outcome()).isEqualTo("conflict");
    assertThat(open.conflicts())
        .extracting(WriteViews.ConflictView::field)
        .containsExactly("form.note");
    assertThat(drafts.show(draft.id()).document()).isEqualTo(phone.document());

    BakeFormViews.BakeDraft settled =
        drafts.keep(
            new BakeDrafts.Typed(
                desk.id(),
                desk.version(),
                desk.base(),
                desk.document(),
                Map.of("form.note", Choice.OURS),
                open.version()),
            kitchen.by());
    assertThat(settled.outcome()).isEqualTo("merged");
    assertThat(settled.document()).contains("desk").doesNotContain("phone");
  }

  private Views.BakeView recorded(PieceForm... pieces) {
    return new RecordTypedBake(kitchen.desk())
        .call(request(form(TypedUnits.METRIC, pieces), null), kitchen.by())
        .bake();
  }

  private BakeFormViews.BakeChanged change(
      BakeFormViews.FilledForm filled, BakeForm form, Map<String, Choice> choices, String against) {
    return new ChangeBake(kitchen.desk())
        .call(
            Kitchen.BUN,
            "2026-01-05-1",
            new ChangeBake.Typed(filled.base(), form, choices, Optional.ofNullable(against)),
            kitchen.by());
  }

  @Test
  void fieldsAndPiecesAreChangedClearedAddedAndTakenAway() {
    Views.BakeView bake = recorded(piece("a", "95", "82", "96"), piece("b", "95", "", ""));
    BakeFormViews.FilledForm filled =
        new StartBake(kitchen.desk()).filled(Kitchen.BUN, bake.id(), OUNCES);
    PieceForm a = filled.form().pieces().get(0);
    BakeForm form =
        new BakeForm(
            OUNCES, filled.form().time(), "", "23 °C, 60 % humidity", "soft", List.of("even crumb"),
            List.of(
                new PieceForm(
                    "a", a.temperature(), a.minutes(), "", a.dough(), "", "", "", "200", "",
                    List.of(), List.of(), "", ""),
                piece("c", "", "", "")));

    BakeFormViews.BakeChanged changed = change(filled, form, Map.of(), null);

    assertThat(changed.outcome()).isEqualTo("changed");
    assertThat(changed.bake().pieces()).extracting(Views.PieceView::id).containsExactly("a", "c");
    Views.PieceView kept = changed.bake().pieces().get(0);
    assertThat(kept.doughG()).isEqualTo(95);
    assertThat(kept.bakedG()).isNull();
    assertThat(kept.core()).isEqualTo("200 °F");
    assertThat(changed.bake().baker()).isNull();
    assertThat(changed.bake().ambient()).isEqualTo("23 °C, 60 % humidity");
    assertThat(change(filled, form, Map.of(), null).outcome()).isEqualTo("unchanged");
    kitchen.assertSound();
  }

  @Test
  void changesOfTwoPeopleAreJoinedOrShownToChooseFrom() {
    Views.BakeView bake = recorded(piece("a", "95", "", ""));
    StartBake start = new StartBake(kitchen.desk());
    BakeFormViews.FilledForm filled = start.filled(Kitchen.BUN, bake.id(), TypedUnits.METRIC);
    change(filled, form(TypedUnits.METRIC, piece("a", "95", "83", "")), Map.of(), null);

    BakeFormViews.BakeChanged joined =
        change(filled, form(TypedUnits.METRIC, piece("a", "95", "", "96")), Map.of(), null);
    assertThat(joined.outcome()).isEqualTo("changed");
    assertThat(joined.merged()).isTrue();
    assertThat(joined.bake().pieces().get(0).bakedG()).isEqualTo(83);
    assertThat(joined.bake().pieces().get(0).coreC()).isEqualTo(96);

    BakeForm mine = form(TypedUnits.METRIC, piece("a", "95", "82", ""));
    BakeFormViews.BakeChanged open = change(filled, mine, Map.of(), null);
    assertThat(open.outcome()).isEqualTo("conflict");
    assertThat(open.conflicts())
        .extracting(WriteViews.ConflictView::field)
        .containsExactly("pieces.a.baked_g");

    Map<String, Choice> ours = Map.of("pieces.a.baked_g", Choice.OURS);
    assertThat(change(filled, mine, ours, "{}").outcome())
        .as("choices made against another state do not count")
        .isEqualTo("conflict");
    BakeFormViews.BakeChanged settled = change(filled, mine, ours, open.against());
    assertThat(settled.outcome()).isEqualTo("changed");
    assertThat(settled.bake().pieces().get(0).bakedG()).isEqualTo(82);
    assertThat(settled.bake().pieces().get(0).coreC()).isEqualTo(96);
    kitchen.assertSound();
  }

  @Test
  void aBakeBeginsWithEverythingToChooseFrom() {
    recorded(piece("a", "95", "82", "96"));
    kitchen.variant("egg-free");

    BakeFormViews.BakeStart start =
        new StartBake(kitchen.desk()).call(Address.parse(Kitchen.BUN), kitchen.by());

    assertThat(start.revision().address()).isEqualTo("seeded-lupin-bun@2");
    assertThat(start.revisions())
        .extracting(WriteViews.RevisionView::address)
        .containsExactly("seeded-lupin-bun@2", "seeded-lupin-bun@1");
    assertThat(start.setting())
        .isEqualTo(new BakeFormViews.OvenSetting("190 °C", 24.0, null));
    assertThat(start.lastBake().pieces())
        .containsExactly(
            new BakeFormViews.LastPiece(
                "a", new BakeFormViews.OvenSetting("190 °C", 24.0, null)));
    assertThat(start.words().liking()).hasSize(9);
    assertThat(start.words().attributes()).allMatch(each -> each.steps().size() == 5);
    assertThat(start.words().crust()).hasSize(5);
  }
}
