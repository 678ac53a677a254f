package io.ovenmark.publish.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.ovenmark.publish.card.Card;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class StoryPicturesTest {
  private static final Card CARD =
      StoryByHand.card(List.of("lupin"), List.of(), StoryByHand.CAUTIONS);

  private static String words(Story story, int index) {
    return StoryPictures.canvas(story, index).placed().stream()
        .map(placed -> PictureText.plain(placed.words()).strip())
        .collect(Collectors.joining(" "));
  }

  private static String wordsOfCards(Story story) {
    List<StoryFile> outline = StoryPictures.outline(story);
    return IntStream.range(0, outline.size())
        .filter(at -> outline.get(at).name().endsWith("-card.png"))
        .mapToObj(at -> words(story, at))
        .collect(Collectors.joining(" "));
  }

  private static Story ofSteps(Story.Step... steps) {
    return StoryByHand.of(List.of(steps), List.of(), CARD);
  }

  private static Story.Step bare(int number) {
    return StoryByHand.step(number, Optional.empty(), Optional.empty());
  }

  @Test
  void thereIsATitleAPictureForEachStepTheFiguresAndTheCard() {
    Story story = StoryByHand.usual();

    assertThat(StoryPictures.outline(story))
        .extracting(StoryFile::name)
        .containsExactly(
            "01-title.png",
            "02-step.png",
            "03-step.png",
            "04-step.png",
            "05-figures.png",
            "06-card.png");
    assertThat(StoryPictures.count(story)).isEqualTo(6);
  }

  @Test
  void theOutlineDoesNotLookAtThePhotosBytes() {
    List<StoryFile> withBytes = StoryPictures.outline(ofPhotos(StoryByHand.jpeg(400, 300)));
    List<StoryFile> without = StoryPictures.outline(ofPhotos(new byte[0]));

    assertThat(without).extracting(StoryFile::name, StoryFile::alternative).isEqualTo(
        withBytes.stream().map(file -> tuple(file.name(), file.alternative())).toList());
  }

  private static Story ofPhotos(byte[] jpeg) {
    Optional<StoryPhoto> photo =
        Optional.of(new StoryPhoto(jpeg, "Two buns", Optional.of("Pieces a and b")));
    return ofSteps(
        StoryByHand.step(1, Optional.empty(), photo),
        StoryByHand.step(2, Optional.of(StoryByHand.HEIGHT), photo));
  }

  @Test
  void aWayThatIsKnownAtOneRevisionIsNotDrawn() {
    Story story =
        StoryByHand.of(
            List.of(bare(1)), List.of(StoryByHand.arc("height", 31.0, null, null)), CARD);

    assertThat(StoryPictures.outline(story))
        .extracting(StoryFile::name)
        .containsExactly("01-title.png", "02-step.png", "03-card.png");
  }

  @Test
  void aWayThatIsNotDrawnIsNamedBesideThoseThatAre() {
    Story story =
        StoryByHand.of(
            List.of(bare(1)),
            List.of(
                StoryByHand.arc("protein", 12.0, 14.0),
                StoryByHand.arc("height", 31.0, null)),
            CARD);

    assertThat(words(story, 2)).contains("Known at fewer than two revisions: height.");
  }

  @Test
  void moreThanSixWaysTakeTwoPictures() {
    Story story = StoryByHand.full();

    assertThat(StoryPictures.outline(story))
        .extracting(file -> file.name().substring(3))
        .startsWith("title.png", "step.png", "step.png", "step.png", "step.png", "step.png")
        .contains("figures.png", "card.png")
        .filteredOn("figures.png"::equals)
        .hasSize(2);
  }

  @Test
  void moreThanAHundredPicturesAreNumberedWithThreeDigits() {
    Story story =
        StoryByHand.of(
            IntStream.rangeClosed(1, 98).mapToObj(StoryPicturesTest::bare).toList(),
            List.of(),
            CARD);

    assertThat(StoryPictures.outline(story).get(0).name()).isEqualTo("001-title.png");
    assertThat(StoryPictures.outline(story).get(99).name()).isEqualTo("100-card.png");
  }

  @Test
  void eachPictureIsOfFullSizeAndCarriesWhatItShows() throws IOException {
    for (StoryFile file : StoryPictures.of(StoryByHand.usual())) {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(file.content()));

      assertThat(image.getWidth()).isEqualTo(1920);
      assertThat(image.getHeight()).isEqualTo(1080);
      assertThat(file.alternative()).isNotBlank();
      assertThat(description(file.content())).isEqualTo(file.alternative());
    }
  }

  /** Signs beyond ASCII survive: an iTXt chunk is UTF-8 (PNG specification, 11.3.3.4). */
  @Test
  void theDescriptionKeepsEverySign() throws IOException {
    StoryFile file = StoryPictures.one(StoryByHand.full(), 1);

    assertThat(description(file.content())).contains(StoryByHand.ARABIC, StoryByHand.GREEK);
  }

  @Test
  void aPictureCarriesNoTime() {
    String file =
        new String(
            StoryPictures.one(StoryByHand.usual(), 5).content(), StandardCharsets.ISO_8859_1);

    assertThat(file).contains("iTXtDescription").doesNotContain("tIME");
  }

  private static String description(byte[] png) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
    try (ImageInputStream in =
        ImageIO.createImageInputStream(new ByteArrayInputStream(png))) {
      reader.setInput(in);
      Element tree = (Element) reader.getImageMetadata(0).getAsTree(PictureFile.TREE);
      Element text = (Element) tree.getElementsByTagName("iTXtEntry").item(0);
      assertThat(text.getAttribute("keyword")).isEqualTo("Description");
      return text.getAttribute("text");
    } finally {
      reader.dispose();
    }
  }

  @Test
  void theSameStoryGivesTheSameFiles() {
    List<StoryFile> once = StoryPictures.of(StoryByHand.usual());
    List<StoryFile> again = StoryPictures.of(StoryByHand.usual());

    for (int at = 0; at < once.size(); at++) {
      StoryFile alone = StoryPictures.one(StoryByHand.usual(), at);
      assertThat(again.get(at).content()).isEqualTo(once.get(at).content());
      assertThat(alone.content()).isEqualTo(once.get(at).content());
      assertThat(alone.name()).isEqualTo(once.get(at).name());
      assertThat(alone.alternative()).isEqualTo(once.get(at).alternative());
    }
  }

  @Test
  void aPictureThatThereIsNotIsNotDrawn() {
    assertThatThrownBy(() -> StoryPictures.one(StoryByHand.usual(), 6))
        .isInstanceOf(IndexOutOfBoundsException.class);
  }

  @Test
  void nothingStandsInTheMargins() {
    for (Story story : List.of(StoryByHand.usual(), StoryByHand.full())) {
      boolean bleeds = story.cover().isPresent();
      for (int at = bleeds ? 1 : 0; at < StoryPictures.count(story); at++) {
        assertThat(ink(StoryPictures.canvas(story, at).image()))
            .as("picture " + at)
            .satisfies(
                ink -> assertThat(new Rectangle(95, 53, 1730, 974).contains(ink)).isTrue());
      }
    }
  }

  /** Where anything is drawn. */
  private static Rectangle ink(BufferedImage image) {
    int paper = Palette.PAPER.getRGB();
    Rectangle ink = new Rectangle(-1, -1);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (image.getRGB(x, y) != paper) {
          ink.add(new Rectangle(x, y, 1, 1));
        }
      }
    }
    return ink;
  }

  @Test
  void noWordsStandOnOthers() {
    for (Story story : List.of(StoryByHand.usual(), StoryByHand.full())) {
      for (int at = 0; at < StoryPictures.count(story); at++) {
        List<PictureCanvas.Placed> placed = StoryPictures.canvas(story, at).placed();
        assertThat(placed).isNotEmpty();
        for (int one = 0; one < placed.size(); one++) {
          for (int other = one + 1; other < placed.size(); other++) {
            assertThat(placed.get(one).box().intersects(placed.get(other).box()))
                .as(at + ": " + placed.get(one) + " and " + placed.get(other))
                .isFalse();
          }
        }
      }
    }
  }

  @Test
  void noWordsAreSmallerThanCanBeRead() {
    for (int at = 0; at < StoryPictures.count(StoryByHand.full()); at++) {
      assertThat(StoryPictures.canvas(StoryByHand.full(), at).placed())
          .allSatisfy(
              placed -> assertThat(placed.box().getHeight()).isGreaterThanOrEqualTo(34));
    }
  }

  @Test
  void noCautionAndNoAllergenIsEverLeftOut() {
    for (Story story : List.of(StoryByHand.usual(), StoryByHand.full())) {
      Card card = story.card();
      String words = wordsOfCards(story);

      assertThat(words).contains(card.cautions());
      assertThat(words).contains(card.contains());
      for (String food : card.allergensUnknownIn()) {
        assertThat(words.replace(" Allergens unknown in, continued", "")).contains(food);
      }
      assertThat(words).contains("Two days in a box.", "seeded-lupin-bun@13", card.yield());
    }
  }

  @Test
  void cautionsThatNeedMoreRoomGoOnUnderTheirHeading() {
    assertThat(wordsOfCards(StoryByHand.full())).contains("To mind, continued", "1 of ");
    assertThat(wordsOfCards(StoryByHand.usual())).doesNotContain("continued", "1 of 1");
  }

  @Test
  void whatIsNotKnownOfAPieceSaysSo() {
    assertThat(wordsOfCards(StoryByHand.usual()))
        .contains("Protein at least 14.4 g", "Fibre unknown", "Energy 206 kcal");
  }

  @Test
  void aFormulaWithoutStatedAllergensSaysThatNoneAreStated() {
    Story story =
        StoryByHand.of(
            List.of(bare(1)),
            List.of(),
            StoryByHand.card(List.of(), List.of(), StoryByHand.CAUTIONS));

    assertThat(wordsOfCards(story)).contains("None are stated of its foods.");
  }

  @Test
  void aStepShowsBeforeAndAfterTheFigureAndWhatWasSeen() {
    assertThat(words(StoryByHand.usual(), 2))
        .contains(
            "Before · revision 1",
            "After · revision 2",
            "2026-07-11",
            "Best height",
            "31 mm",
            "38 mm",
            "+7 mm",
            "What changed",
            "Water 210 g → 180 g (−30 g).",
            "Water and heat changed together.",
            "What was seen",
            "Gummy crumb, wet line.",
            "The wet line had to go.");
  }

  @Test
  void aVariantIsNamedAtItsMark() {
    Story.Step one = bare(1);
    Story.Step step =
        new Story.Step(
            1, "bun/egg-free@10", one.date(), "x", one.words(), List.of(), one.credit(),
            one.seen(), one.move(), one.photo());

    assertThat(words(ofSteps(step), 1)).contains("The start · egg-free, revision 10");
  }

  @Test
  void aStepWithoutPhotoSaysSo() {
    Optional<StoryPhoto> photo = Optional.of(StoryByHand.photo("Two buns"));

    assertThat(words(ofSteps(bare(1)), 1)).contains("No photo of this bake.");
    assertThat(words(ofSteps(bare(1), bare(2)), 2)).contains("No photo of either bake.");
    assertThat(
            words(ofSteps(bare(1), StoryByHand.step(2, Optional.empty(), photo)), 2))
        .contains("No photo of this bake")
        .contains("No figure is known both before and after.");
  }

  @Test
  void aPhotoThatCannotBeReadIsToldAsSuch() {
    StoryPhoto broken = new StoryPhoto(new byte[] {1, 2, 3}, "Two buns", Optional.empty());
    Story.Step first = StoryByHand.step(1, Optional.empty(), Optional.of(broken));
    Story.Step second =
        StoryByHand.step(2, Optional.empty(), Optional.of(StoryByHand.photo("Two buns")));

    assertThat(words(ofSteps(first), 1)).contains("This photo cannot be read");
    assertThat(words(ofSteps(first, second), 2)).contains("This photo cannot be read");
  }

  @Test
  void aStepOfManyWordsTellsThemOnASecondPicture() {
    Story.Step first = StoryByHand.step(1, Optional.empty(), Optional.empty());
    List<String> changed =
        IntStream.rangeClosed(1, 12).mapToObj(n -> "Seed " + n + " 12 g → 14 g.").toList();
    Story.Step second =
        StoryByHand.step(
            2,
            "Everything at once",
            Optional.of("We should not have."),
            changed,
            Optional.of(StoryByHand.HEIGHT),
            Optional.of(StoryByHand.photo("Two buns")));
    Story story = ofSteps(first, second);

    assertThat(StoryPictures.outline(story))
        .extracting(StoryFile::name)
        .containsExactly(
            "01-title.png", "02-step.png", "03-step.png", "04-step.png", "05-card.png");
    assertThat(words(story, 2))
        .contains("Step 2 of 2 · 1 of 2", "+7 mm", "We should not have.")
        .contains("What was seen", "Gummy crumb, wet line.")
        .doesNotContain("What changed");
    assertThat(words(story, 3))
        .contains(changed)
        .contains("Step 2 of 2 · 2 of 2", "Before · revision 1")
        .doesNotContain("Gummy crumb", TextColumn.GOES_ON);
    assertThat(StoryPictures.outline(story).get(2).alternative())
        .startsWith("Step 2 of 2, 1 of 2: Everything at once.")
        .contains("Two buns.", "Gummy crumb, wet line.");
    assertThat(StoryPictures.outline(story).get(3).alternative())
        .contains(changed)
        .doesNotContain("Gummy crumb");
  }

  @Test
  void whatDoesNotFitSaysThatItGoesOn() {
    assertThat(words(StoryByHand.full(), 3)).contains(TextColumn.GOES_ON);
    assertThat(StoryPictures.outline(StoryByHand.full()).get(3).alternative())
        .contains("Seed number 30 12 g → 14 g.")
        .doesNotContain(TextColumn.GOES_ON);
  }

  @Test
  void wordsFromRightToLeftEndAtTheRight() {
    PictureCanvas.Placed heading =
        StoryPictures.canvas(StoryByHand.full(), 1).placed().stream()
            .filter(placed -> placed.words().contains(StoryByHand.ARABIC))
            .findFirst()
            .orElseThrow();

    assertThat(heading.box().getMaxX()).isBetween(1823.0, 1824.5);
  }

  @Test
  void theTitleSaysWhoTellsItAndWhen() {
    assertThat(words(StoryByHand.usual(), 0))
        .contains("Seeded lupin bun", "Told by Ines", "2026-06-02", "count every gram.");
    assertThat(StoryPictures.outline(StoryByHand.usual()).get(0).alternative())
        .contains("The photo shows: Two brown buns.");
  }

  @Test
  void aPhotoIsCutAroundItsMiddleAndNotStretched() {
    PicturePhotos photos = new PicturePhotos();
    StoryPhoto wide = new StoryPhoto(StoryByHand.jpeg(800, 200), "", Optional.empty());

    BufferedImage cut = photos.in(wide, 300, 300).orElseThrow();

    assertThat(cut.getWidth()).isEqualTo(300);
    assertThat(cut.getHeight()).isEqualTo(300);
    assertThat(cut.getRGB(135, 150) & 0xff0000).isGreaterThan(0xd00000);
    assertThat(cut.getRGB(165, 150) & 0xff).isGreaterThan(0xd0);
  }

  /** 20 before and 40 after: the filled bar is twice as long as the hollow one. */
  @Test
  void theBarsAreInProportionFromZero() {
    Move move = new Move("k", "height", "mm", 20, 40, "20 mm", "40 mm", "+20 mm", false);
    PictureCanvas canvas = new PictureCanvas();
    MoveFigure.fitted(move, 700, 500).draw(canvas, 100, 100);

    int after = longestRun(canvas.image(), Palette.AFTER.getRGB());
    int before = longestRun(canvas.image(), Palette.BEFORE.getRGB());

    assertThat(after).isGreaterThan(300);
    assertThat((double) before / after).isBetween(0.48, 0.52);
  }

  private static int longestRun(BufferedImage image, int colour) {
    int longest = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      int run = 0;
      for (int x = 0; x < image.getWidth(); x++) {
        run = image.getRGB(x, y) == colour ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
    }
    return longest;
  }
}
