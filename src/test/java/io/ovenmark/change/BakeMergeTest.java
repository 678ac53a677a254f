package io.ovenmark.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.bake.BakeForm;
import io.ovenmark.bake.BakeFormReader;
import io.ovenmark.bake.BakeFormText;
import io.ovenmark.bake.Piece;
import io.ovenmark.bake.PieceText;
import io.ovenmark.bake.TypedUnits;
import io.ovenmark.json.Extras;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BakeMergeTest {
  private static final OffsetDateTime MORNING = OffsetDateTime.parse("2026-03-02T08:30:00+01:00");

  private static Bake bake(String note, List<String> findings, String... pieces) {
    return new Bake(
        "seeded-lupin-bun",
        "2026-03-02-1",
        "seeded-lupin-bun@2",
        "0123456789abcdef0123456789abcdef01234567",
        MORNING,
        Optional.of("Ines"),
        Optional.empty(),
        Optional.of(note).filter(text -> !text.isEmpty()),
        PieceText.read(List.of(), List.of(pieces)),
        findings,
        List.of(),
        Extras.NONE);
  }

  private static Bake bake(String... pieces) {
    return bake("", List.of(), pieces);
  }

  private static BakeMerge.Outcome merge(Bake base, Bake ours, Bake theirs) {
    return BakeMerge.merge(base, ours, theirs, Map.of());
  }

  @Test
  void whatEachSideMeasuredIsKept() {
    BakeMerge.Outcome merged =
        merge(
            bake("a 190C dough=95g", "b 190C dough=95g"),
            bake("a 190C dough=95g baked=82g", "b 190C dough=95g"),
            bake("a 190C dough=95g height=46mm", "b 190C dough=95g liking=7"));

    assertThat(merged.isSettled()).isTrue();
    assertThat(merged.bake())
        .isEqualTo(bake("a 190C dough=95g baked=82g height=46mm", "b 190C dough=95g liking=7"));
  }

  @Test
  void twoMeasuresOfTheSameAreAConflictWithBothInWords() {
    BakeMerge.Outcome merged =
        merge(bake("a dough=95g"), bake("a dough=95g baked=82g"), bake("a dough=95g baked=83g"));

    assertThat(merged.conflicts())
        .containsExactly(
            new Conflict(
                "pieces.a.baked_g",
                "The baked mass, in grams, of piece a was added on both sides, as \"82\" and as"
                    + " \"83\".",
                Optional.empty(),
                Optional.of("82"),
                Optional.of("83")));
    assertThat(merged.bake().pieces().get(0).bakedGrams()).hasValue(82);
  }

  @Test
  void aChoiceSettlesAConflict() {
    Bake base = bake("a dough=95g baked=80g");
    Bake ours = bake("a dough=95g baked=82g");
    Bake theirs = bake("a dough=95g baked=83g");
    String path = "pieces.a.baked_g";

    assertThat(BakeMerge.merge(base, ours, theirs, Map.of(path, Choice.THEIRS)))
        .isEqualTo(new BakeMerge.Outcome(theirs, List.of()));
    assertThat(BakeMerge.merge(base, ours, theirs, Map.of(path, Choice.BASE)))
        .isEqualTo(new BakeMerge.Outcome(base, List.of()));
  }

  @Test
  void aPieceTakenAwayHereAndMeasuredThereIsAChoice() {
    BakeMerge.Outcome merged =
        merge(bake("a 190C", "b 190C"), bake("a 190C"), bake("a 190C", "b 190C baked=82g"));

    assertThat(merged.conflicts()).extracting(Conflict::path).containsExactly("pieces.b");
    assertThat(merged.conflicts().get(0).ours()).isEmpty();
    assertThat(merged.conflicts().get(0).theirs()).hasValueSatisfying(
        text -> assertThat(text).contains("baked_g: 82"));
  }

  @Test
  void twoDifferentPiecesOfOneLetterAreAChoiceAndNeverJoined() {
    BakeMerge.Outcome merged =
        merge(bake("a 190C"), bake("a 190C", "b dough=95g"), bake("a 190C", "b baked=82g"));

    assertThat(merged.conflicts()).extracting(Conflict::path).containsExactly("pieces.b");
  }

  @Test
  void bothSidesAddAndRemoveFindings() {
    BakeMerge.Outcome merged =
        merge(
            bake("", List.of("pale", "flat"), "a finding=dense"),
            bake("", List.of("pale", "even crumb"), "a 190C"),
            bake("", List.of("pale", "flat", "dry"), "a finding=dense,eggy"));

    assertThat(merged.isSettled()).isTrue();
    assertThat(merged.bake().findings()).containsExactlyInAnyOrder("pale", "even crumb", "dry");
    assertThat(merged.bake().pieces().get(0).findings()).containsExactly("eggy");
  }

  @Test
  void theScoresOfTwoTastersWhoWroteAtOnceAreBothKept() {
    BakeMerge.Outcome merged =
        merge(bake("a liking=7"), bake("a liking=7,8"), bake("a liking=7,5"));

    assertThat(merged.isSettled()).isTrue();
    assertThat(merged.bake().pieces().get(0).liking()).containsExactly(7.0, 5.0, 8.0);
  }

  @Test
  void theSameOrderSentTwiceCountsOnce() {
    Bake ours = bake("note", List.of("dry"), "a liking=7,8 baked=82g");

    assertThat(merge(bake("a liking=7"), ours, ours))
        .isEqualTo(new BakeMerge.Outcome(ours, List.of()));
  }

  @Test
  void marksOfAPieceThatWasTakenAwayGoWithIt() {
    String photo =
        """
        {"file": "photos/x/tray.jpg", "marks": [
          {"piece": "a", "x": 0.2, "y": 0.3}, {"piece": "b", "x": 0.7, "y": 0.3}]}
        """;
    Bake base = withPhoto(bake("a 190C", "b 190C"), photo);
    Bake ours = base.withPieces(base.pieces().subList(0, 1));

    BakeMerge.Outcome merged = merge(base, ours, base);

    assertThat(merged.bake().photos().get(0).marks())
        .extracting(mark -> mark.piece())
        .containsExactly("a");
  }

  @Test
  void twoCaptionsOfOnePhotoAreAChoiceThatNamesThePhoto() {
    Bake base = bake("a 190C");
    BakeMerge.Outcome merged =
        merge(
            withPhoto(base, "{\"file\": \"photos/x/tray.jpg\"}"),
            withPhoto(base, "{\"file\": \"photos/x/tray.jpg\", \"caption\": \"Tray\"}"),
            withPhoto(base, "{\"file\": \"photos/x/tray.jpg\", \"caption\": \"Cut\"}"));

    assertThat(merged.conflicts())
        .extracting(Conflict::sentence)
        .containsExactly(
            "The caption of the photo photos/x/tray.jpg was added on both sides, as \"Tray\" and as"
                + " \"Cut\".");
  }

  private static Bake withPhoto(Bake bake, String photo) {
    String json =
        new String(BakeCodec.write(bake), StandardCharsets.UTF_8)
            .replaceFirst("\"photos\": \\[]", "\"photos\": [" + photo + "]");
    return BakeCodec.read(
        bake.path(), bake.formula(), bake.id(), json.getBytes(StandardCharsets.UTF_8));
  }

  /** Bakes that differ a little, and so do what two sides make of them. */
  static List<Three<Bake>> triples() {
    return IntStream.range(0, 300)
        .mapToObj(
            seed -> {
              Random random = new Random(seed);
              Bake base = random(random, bake("a 190C", "b 200C dough=95g", "c liking=5,6"));
              return new Three<>(base, random(random, base), random(random, base));
            })
        .toList();
  }

  private static Bake random(Random random, Bake bake) {
    List<Piece> pieces = new ArrayList<>(bake.pieces());
    List<String> findings = new ArrayList<>(bake.findings());
    String note = bake.note().orElse("");
    for (int i = 0; i < random.nextInt(4); i++) {
      String letter = String.valueOf((char) ('a' + random.nextInt(5)));
      String field =
          List.of(
                  "dough=9", "baked=8", "height=4", "crust=", "liking=", "finding=x", "score.sweet=")
              .get(random.nextInt(7));
      int number = random.nextInt(3);
      String unit = field.startsWith("h") ? "mm" : field.matches("[db].*") ? "g" : "";
      String value = field.equals("liking=") ? "" + (5 + number) : number + unit;
      switch (random.nextInt(6)) {
        case 0 -> pieces.removeIf(piece -> piece.id().equals(letter));
        case 1 -> findings.add(0, "seen " + random.nextInt(1000));
        case 2 -> note = "note " + number;
        case 3 -> Collections.shuffle(pieces, random);
        default ->
            pieces = new ArrayList<>(PieceText.read(pieces, List.of(letter + " " + field + value)));
      }
    }
    Set<String> once = new HashSet<>();
    findings.removeIf(word -> !once.add(word));
    return new Bake(
        bake.formula(), bake.id(), bake.address(), bake.blob(), bake.time(), bake.baker(),
        bake.ambient(), Optional.of(note).filter(text -> !text.isEmpty()), pieces, findings,
        bake.photos(), bake.extras());
  }

  @ParameterizedTest
  @MethodSource("triples")
  void aSideThatChangedNothingGivesWayAndBothAlikeCountOnce(Three<Bake> sides) {
    Bake base = sides.base();
    Bake ours = sides.ours();

    assertThat(merge(base, ours, base)).isEqualTo(new BakeMerge.Outcome(ours, List.of()));
    assertThat(merge(base, base, ours)).isEqualTo(new BakeMerge.Outcome(ours, List.of()));
    assertThat(merge(base, ours, ours)).isEqualTo(new BakeMerge.Outcome(ours, List.of()));
  }

  @ParameterizedTest
  @MethodSource("triples")
  void withTheSidesSwappedTheSameIsOpenAndTheRestSettledAlike(Three<Bake> sides) {
    BakeMerge.Outcome one = merge(sides.base(), sides.ours(), sides.theirs());
    BakeMerge.Outcome other = merge(sides.base(), sides.theirs(), sides.ours());

    assertThat(other.conflicts())
        .extracting(Conflict::path, Conflict::ours, Conflict::theirs)
        .containsExactlyInAnyOrderElementsOf(
            one.conflicts().stream()
                .map(
                    each ->
                        tuple(
                            each.path(), each.theirs(), each.ours()))
                .toList());
    if (one.isSettled()) {
      assertThat(unordered(other.bake())).isEqualTo(unordered(one.bake()));
    }
  }

  @ParameterizedTest
  @MethodSource("triples")
  void choosingOneSideEverywhereLosesNothingOfIt(Three<Bake> sides) {
    BakeMerge.Outcome open = merge(sides.base(), sides.ours(), sides.theirs());
    Map<String, Choice> theirs = new HashMap<>();
    open.conflicts().forEach(conflict -> theirs.put(conflict.path(), Choice.THEIRS));

    BakeMerge.Outcome settled =
        BakeMerge.merge(sides.base(), sides.ours(), sides.theirs(), theirs);

    assertThat(settled.isSettled()).isTrue();
    for (Piece piece : sides.theirs().pieces()) {
      boolean changed = !sides.base().pieces().contains(piece);
      if (changed) {
        Piece kept =
            settled.bake().pieces().stream()
                .filter(each -> each.id().equals(piece.id()))
                .findFirst()
                .orElseThrow();
        assertThat(kept.findings()).containsAll(added(piece, sides.base()));
        assertThat(kept.liking().size()).isGreaterThanOrEqualTo(piece.liking().size());
      }
    }
  }

  private static List<String> added(Piece piece, Bake base) {
    List<String> added = new ArrayList<>(piece.findings());
    base.pieces().stream()
        .filter(each -> each.id().equals(piece.id()))
        .forEach(each -> added.removeAll(each.findings()));
    return added;
  }

  private static Set<Object> unordered(Bake bake) {
    Set<Object> parts = new HashSet<>(bake.pieces());
    parts.add(new HashSet<>(bake.findings()));
    parts.add(bake.note());
    return parts;
  }

  @ParameterizedTest
  @MethodSource("triples")
  void aFormThatNobodyTouchedIsTheBakeItselfInAnyUnits(Three<Bake> sides) {
    Clock clock = Clock.fixed(Instant.parse("2026-03-03T08:00:00Z"), ZoneOffset.ofHours(2));
    for (TypedUnits units : List.of(TypedUnits.METRIC, new TypedUnits("oz", "F"))) {
      Bake bake = sides.ours();
      BakeForm form = BakeFormText.of(bake, units);

      BakeFormReader.Reading read = BakeFormReader.read(form, Optional.of(bake), clock);

      assertThat(read.faults()).isEmpty();
      assertThat(read.pieces()).isEqualTo(bake.pieces());
      assertThat(read.findings()).isEqualTo(bake.findings());
      assertThat(read.time()).contains(bake.time());
      assertThat(read.note()).isEqualTo(bake.note());
    }
  }

  @Test
  void whatWasTypedIntoTwoCopiesOfAFormIsJoinedByPieceAndField() {
    BakeMerge.MergedText merged =
        BakeMerge.mergeForms(
            "{\"pieces\": [{\"key\": \"a\", \"dough\": \"\", \"baked\": \"\"}]}",
            "{\"pieces\": [{\"key\": \"a\", \"dough\": \"95\", \"baked\": \"\"}]}",
            "{\"pieces\": [{\"key\": \"a\", \"dough\": \"\", \"baked\": \"82\"},"
                + " {\"key\": \"b\"}]}",
            Map.of());

    assertThat(merged.conflicts()).isEmpty();
    assertThat(merged.json())
        .isEqualToIgnoringWhitespace(
            "{\"pieces\": [{\"key\": \"a\", \"dough\": \"95\", \"baked\": \"82\"},"
                + " {\"key\": \"b\"}]}");
  }

  @Test
  void aTimerIsTakenWholeFromTheSideThatTouchedItLast() {
    BakeMerge.MergedText merged =
        BakeMerge.mergeForms(
            "{\"timers\": {\"a\": {\"since\": 1, \"done\": 0, \"touched\": 1}}}",
            "{\"timers\": {\"a\": {\"since\": 1, \"done\": 60, \"touched\": 5}}}",
            "{\"timers\": {\"a\": {\"since\": 9, \"done\": 7, \"touched\": 9}}}",
            Map.of());

    assertThat(merged.conflicts()).isEmpty();
    assertThat(merged.json())
        .isEqualToIgnoringWhitespace(
            "{\"timers\": {\"a\": {\"since\": 9, \"done\": 7, \"touched\": 9}}}");
  }
}
