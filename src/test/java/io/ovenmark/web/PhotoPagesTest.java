package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.JSHandle;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import io.ovenmark.bake.Photo;
import io.ovenmark.desk.ChangePhotos;
import io.ovenmark.desk.NewPhoto;
import io.ovenmark.desk.PhotoState;
import io.ovenmark.desk.ReadyPhoto;
import io.ovenmark.desk.ShowBake;
import io.ovenmark.desk.Views;
import io.ovenmark.desk.WaitingPhotos;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.photo.Pictures;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos in the pages: sent, marked, taken away, beside each other. */
@ExtendWith(Chromium.class)
class PhotoPagesTest {
  private static final String BUN = "seeded-lupin-bun";
  private static final String WITH_PHOTO = "2026-03-04-1";
  private static final String WITHOUT = "2026-03-09-1";
  private static final String PAGE = "/bakes/" + BUN + "/";

  private OwnBench bench;

  @BeforeEach
  void open() {
    bench = OwnBench.with(BenchNotebook::create);
  }

  @AfterEach
  void close() {
    assertThat(bench.faults()).isEmpty();
    bench.close();
  }

  private Visit visit(Browser browser, int width) {
    ColorScheme colours = width == Visit.PHONE ? ColorScheme.DARK : ColorScheme.LIGHT;
    return Visit.on(bench.viewer(), browser, width, colours);
  }

  private List<Views.PhotoView> photos(String bake) {
    return new ShowBake(bench.desk()).call(BUN, bake).photos();
  }

  private static FilePayload file(String name, byte[] bytes) {
    return new FilePayload(name, "image/jpeg", bytes);
  }

  private static byte[] picture(int width) {
    return Pictures.jpeg(Pictures.corners(width, 300));
  }

  private static byte[] text() {
    return "Bake at 190".getBytes(StandardCharsets.UTF_8);
  }

  private static Locator chooser(Visit visit) {
    return visit.at(".file-button:not(.camera) input");
  }

  private String head() {
    return bench.desk().notebook().latest().commit().hex();
  }

  /** The commit that the newest one stands on. */
  private String commitBefore() {
    try (GitStore store = GitStore.open(bench.folder())) {
      return store.facts(store.head("main").orElseThrow()).parents().get(0).hex();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void severalPhotosAreAddedTogetherAndABadOneIsTold(int width, Browser browser) {
    String before = head();
    try (Visit visit = visit(browser, width).to(PAGE + WITHOUT)) {
      assertThat(visit.at(".photo-section .tray").count()).isEqualTo(1);
      assertThat(visit.at(".file-button.camera").isVisible()).isEqualTo(width == Visit.PHONE);
      chooser(visit)
          .setInputFiles(
              new FilePayload[] {
                file("one.jpg", picture(400)),
                file("../../notes.jpg", text()),
                file("two.webp", Pictures.webp("lossy")),
                file("three.png", Pictures.png(Pictures.corners(410, 300)))
              });

      visit.at("figure.photo").nth(2).waitFor();
      visit.at(".uploads li.failed").waitFor();
      visit.expectRefusal();
      assertThat(visit.at(".uploads li").allInnerTexts())
          .singleElement()
          .asString()
          .contains("../../notes.jpg", "is a text file, not JPEG, PNG or WebP.", "Try again");
      assertThat(visit.at(".photo-section [role=status]").innerText())
          .isEqualTo("3 photos added, 1 not added.");
      visit.assertFits();
      visit.assertAccessible();
      visit.at(".uploads button:text('Dismiss')").click();
      assertThat(visit.at(".uploads").count()).isZero();
    }
    assertThat(photos(WITHOUT)).hasSize(3);
    assertThat(commitBefore()).isEqualTo(before);
  }

  @Test
  void photosCanBeDropped(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK).to(PAGE + WITHOUT)) {
      JSHandle dropped =
          visit
              .page()
              .evaluateHandle(
                  """
                  async () => {
                    const canvas = document.createElement("canvas");
                    canvas.width = 300;
                    canvas.height = 200;
                    canvas.getContext("2d").fillRect(10, 10, 50, 50);
                    const blob = await new Promise((done) => canvas.toBlob(done, "image/webp"));
                    const carried = new DataTransfer();
                    carried.items.add(new File([blob], "tray.webp", {type: "image/webp"}));
                    return carried;
                  }
                  """);
      visit.at(".photo-section").dispatchEvent("dragover", Map.of("dataTransfer", dropped));
      assertThat(visit.at(".photo-section.dropping").count()).isEqualTo(1);
      visit.at(".photo-section").dispatchEvent("drop", Map.of("dataTransfer", dropped));
      visit.at("figure.photo").waitFor();
      assertThat(visit.at(".photo-section.dropping").count()).isZero();
    }
    assertThat(photos(WITHOUT)).hasSize(1);
  }

  @Test
  void anUploadCanBeCancelledAndTriedAgain(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK).to(PAGE + WITHOUT)) {
      visit.page().route("**/api/photo/add*", route -> {});
      chooser(visit).setInputFiles(file("slow.jpg", picture(400)));
      visit.at(".uploads progress").waitFor();
      visit.at("button:text('Cancel')").click();
      visit.at(".uploads li.cancelled").waitFor();
      visit.assertAccessible();
      visit.page().unroute("**/api/photo/add*");
      visit.at("button:text('Try again')").click();
      visit.at("figure.photo").waitFor();
    }
    assertThat(photos(WITHOUT)).hasSize(1);
  }

  @Test
  void whatWasSentAndNeverAddedIsOffered(Browser browser) {
    WaitingPhotos waiting = new WaitingPhotos(bench.desk());
    for (int width : new int[] {400, 410}) {
      NewPhoto photo = new NewPhoto(picture(width), "x.jpg", Optional.empty(), List.of());
      waiting.put(BUN, WITHOUT, "left " + width + ".jpg", ReadyPhoto.of(photo));
    }
    try (Visit visit = visit(browser, Visit.PHONE).to(PAGE + WITHOUT)) {
      visit.at(".leftover").waitFor();
      assertThat(visit.at(".leftover").innerText()).contains("left 400.jpg, left 410.jpg");
      visit.assertAccessible();
      visit.at("button:text('Add them')").click();
      visit.at("figure.photo").nth(1).waitFor();
      assertThat(visit.at(".leftover").count()).isZero();
    }
    assertThat(photos(WITHOUT)).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void marksArePutByTappingDraggingAndKeys(int width, Browser browser) {
    try (Visit visit = visit(browser, width).to(PAGE + WITH_PHOTO)) {
      visit.at(".edit-photo").click();
      Locator stage = visit.at(".mark-stage");
      visit.at(".mark-stage img").evaluate("image => image.decode()");
      assertThat(visit.at(".photo-editor h2").evaluate("h => h === document.activeElement"))
          .isEqualTo(true);

      BoundingBox box = stage.boundingBox();
      stage.click(
          new Locator.ClickOptions().setPosition(0.1 * box.width, 0.2 * box.height));
      assertThat(place(visit, "a")).isEqualTo("left: 10%; top: 20%;");

      drag(visit, "b", 0.1 * box.width, 0.25 * box.height);
      assertThat(mark(visit, "b").getAttribute("aria-label"))
          .startsWith("Piece b: 85 % from the left, 75 % from above.");

      mark(visit, "a").focus();
      visit.page().keyboard().press("ArrowRight");
      visit.page().keyboard().press("Shift+ArrowDown");
      assertThat(place(visit, "a")).isEqualTo("left: 11%; top: 25%;");
      assertThat(visit.at(".photo-editor [role=status]").innerText())
          .isEqualTo(mark(visit, "a").getAttribute("aria-label"));
      visit.page().keyboard().press("Tab");
      visit.page().keyboard().press("Delete");
      assertThat(visit.at(".mark").count()).isEqualTo(1);

      visit.at("label:text-is('Caption') + .control input").fill("Before cutting");
      visit.page().reload();
      visit.settled();
      assertThat(visit.at(".mark").count()).isEqualTo(1);
      assertThat(visit.at("label:text-is('Caption') + .control input").inputValue())
          .isEqualTo("Before cutting");
      visit.at("summary:text('Marks as numbers')").click();
      visit.assertFits();
      visit.assertAccessible();

      visit.at(".photo-editor button.main").click();
      visit.at("#notices .notice").waitFor();
      assertThat(visit.at(".edit-photo").evaluate("b => b === document.activeElement"))
          .isEqualTo(true);
    }
    assertThat(photos(WITH_PHOTO).get(0).caption()).isEqualTo("Before cutting");
    Views.MarkView kept = photos(WITH_PHOTO).get(0).marks().get(0);
    assertThat(photos(WITH_PHOTO).get(0).marks()).hasSize(1);
    assertThat(kept.x()).isCloseTo(0.11, within(0.006));
    assertThat(kept.y()).isCloseTo(0.25, within(0.006));
  }

  private static Locator mark(Visit visit, String piece) {
    return visit.at(".mark[data-piece=" + piece + "]");
  }

  private static String place(Visit visit, String piece) {
    Object style =
        mark(visit, piece)
            .evaluate(
                "m => `left: ${Math.round(parseFloat(m.style.left))}%;"
                    + " top: ${Math.round(parseFloat(m.style.top))}%;`");
    return style.toString();
  }

  private static void drag(Visit visit, String piece, double x, double y) {
    mark(visit, piece).scrollIntoViewIfNeeded();
    BoundingBox at = mark(visit, piece).boundingBox();
    double fromX = at.x + at.width / 2;
    double fromY = at.y + at.height / 2;
    visit.page().mouse().move(fromX, fromY);
    visit.page().mouse().down();
    visit.page().mouse().move(fromX + x / 2, fromY + y / 2);
    visit.page().mouse().move(fromX + x, fromY + y);
    visit.page().mouse().up();
  }

  @Test
  void twoTabsThatMoveTheSameMarkAreAskedAndLoseNothing(Browser browser) {
    try (Visit mine = visit(browser, Visit.DESK).to(PAGE + WITH_PHOTO);
        Visit theirs = visit(browser, Visit.PHONE).to(PAGE + WITH_PHOTO)) {
      for (Visit visit : List.of(mine, theirs)) {
        visit.at(".edit-photo").click();
        mark(visit, "a").focus();
      }
      theirs.page().keyboard().press("ArrowUp");
      theirs.at("label:text-is('Caption') + .control input").fill("Their tray");
      theirs.at(".photo-editor button.main").click();
      theirs.at("#notices .notice").waitFor();

      mine.page().keyboard().press("ArrowDown");
      mark(mine, "b").focus();
      mine.page().keyboard().press("ArrowLeft");
      mine.at(".photo-editor button.main").click();
      mine.at(".photo-conflicts").waitFor();

      assertThat(mine.at(".photo-conflicts fieldset").allInnerTexts())
          .singleElement()
          .asString()
          .contains("Piece a", "25 % from the left, 51 % from above", "49 % from above");
      mine.assertFits();
      mine.assertAccessible();
      mine.at("label:has-text('Mine:') input").check();
      mine.at("button:text('Save what I chose')").click();
      mine.at("#notices .notice").waitFor();
      assertThat(mine.at("#notices").innerText()).contains("with what somebody else changed");
    }
    assertThat(photos(WITH_PHOTO).get(0).caption()).isEqualTo("Their tray");
    assertThat(photos(WITH_PHOTO).get(0).marks())
        .containsExactly(
            new Views.MarkView("a", 0.25, 0.51), new Views.MarkView("b", 0.74, 0.5));
  }

  @Test
  void aPhotoIsTakenAwayAndPutBack(Browser browser) {
    try (Visit visit = visit(browser, Visit.PHONE).to(PAGE + WITH_PHOTO)) {
      visit.at("button:text('Remove')").click();
      visit.at("#notices button:text('Put it back')").waitFor();
      assertThat(visit.at("figure.photo").count()).isZero();
      assertThat(photos(WITH_PHOTO)).isEmpty();
      visit.assertAccessible();
      visit.at("#notices button:text('Put it back')").click();
      visit.at("figure.photo").waitFor();
    }
    assertThat(photos(WITH_PHOTO).get(0).marks()).hasSize(2);
  }

  private void second() {
    new WaitingPhotos(bench.desk())
        .addAtOnce(
            BUN,
            WITHOUT,
            ReadyPhoto.of(
                new NewPhoto(picture(500), "x.jpg", Optional.of("Second tray"), List.of())),
            RunningBench.by());
    String file = photos(WITHOUT).get(0).file();
    PhotoState seen = new PhotoState(Optional.of("Second tray"), Optional.empty(), List.of());
    PhotoState marked =
        new PhotoState(seen.caption(), Optional.empty(), List.of(new Photo.Mark("a", 0.9, 0.9)));
    new ChangePhotos(bench.desk())
        .change(BUN, WITHOUT, file, seen, seen, marked, RunningBench.by());
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void twoPhotosAreZoomedAndMovedTogether(int width, Browser browser) {
    second();
    try (Visit visit = visit(browser, width).to(PAGE + WITHOUT)) {
      visit.at("a:text('Compare')").click();
      visit.settled();
      loaded(visit);
      assertThat(visit.at(".layer img").first().getAttribute("alt")).isEqualTo("Two buns");
      assertThat(visit.text()).contains("Bake of 4 Mar 2026", "205\u00a0°C, 18\u00a0min", "Second tray");
      visit.assertFits();
      visit.assertAccessible();

      visit.at(".beside-stage").focus();
      visit.page().keyboard().press("+");
      visit.page().keyboard().press("+");
      assertThat(visit.at(".zooms output").innerText()).isEqualTo("196 %");
      double left = shift(visit, 0);
      double right = shift(visit, 1);
      visit.page().keyboard().press("ArrowLeft");
      assertThat(shift(visit, 0) - left).isEqualTo(60);
      assertThat(shift(visit, 1) - right).isEqualTo(60);
      visit.at("button:text('Whole photos')").click();
      assertThat(visit.at(".zooms output").innerText()).isEqualTo("100 %");

      visit.at("[aria-label='Look at piece a on photo B']").click();
      assertThat(visit.at(".zooms output").innerText()).isEqualTo("300 %");

      BoundingBox box = visit.at(".frame").nth(1).boundingBox();
      assertThat(box.y).isGreaterThanOrEqualTo(-1);
      visit.at(".beside-stage").focus();
      visit.page().mouse().move(box.x + box.width / 2, box.y + box.height / 2);
      visit.page().mouse().wheel(0, -100);
      visit.page().waitForCondition(() -> percent(visit) > 300);
      visit.at("button:text('Swap A and B')").click();
      visit.settled();
      assertThat(visit.address()).contains("right=seeded-lupin-bun/2026-03-04-1-tray.jpg");
    }
  }

  private static void loaded(Visit visit) {
    visit
        .page()
        .waitForFunction(
            "[...document.querySelectorAll('.layer img')].every(i => i.complete && i.style.width)");
  }

  private static int percent(Visit visit) {
    return Integer.parseInt(visit.at(".zooms output").innerText().replace(" %", ""));
  }

  private static double shift(Visit visit, int side) {
    Object x =
        visit
            .at(".layer img")
            .nth(side)
            .evaluate("image => Math.round(new DOMMatrix(image.style.transform).e * 100) / 100");
    return ((Number) x).doubleValue();
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void theSliderShowsMoreOfOneAndTheChooserAnother(int width, Browser browser) {
    second();
    try (Visit visit = visit(browser, width).to("/beside?formula=" + BUN)) {
      visit.at("a:text('With a slider')").click();
      visit.settled();
      loaded(visit);
      Locator range = visit.at("#divide");
      range.focus();
      for (int i = 0; i < 5; i++) {
        visit.page().keyboard().press("ArrowRight");
      }
      assertThat(range.getAttribute("aria-valuetext")).isEqualTo("A 55 %, B 45 %");
      assertThat(visit.at(".over").evaluate("o => o.style.clipPath"))
          .isEqualTo("inset(0px 0px 0px 55%)");
      BoundingBox divider = visit.at(".divider").boundingBox();
      visit.page().mouse().move(divider.x + divider.width / 2, divider.y + 20);
      visit.page().mouse().down();
      visit.page().mouse().move(divider.x - 30, divider.y + 25);
      visit.page().mouse().up();
      assertThat(Integer.parseInt(range.inputValue())).isLessThan(55);
      visit.assertFits();
      visit.assertAccessible();

      visit.at("button:text('Choose another photo')").first().click();
      visit.at(".shelf button").nth(1).waitFor();
      visit.assertAccessible();
      visit.at(".shelf button:has-text('Second tray')").click();
      visit.settled();
      visit.page().waitForCondition(() -> visit.address().contains("left=" + BUN + "/2026-03-09"));
      assertThat(visit.address()).contains("as=slider");
    }
  }

  @Test
  void aPhotoThatIsNotThereIsSaidAndAnotherCanBeChosen(Browser browser) {
    try (Visit visit = visit(browser, Visit.PHONE)) {
      visit.to("/beside?left=" + BUN + "/gone.jpg&right=" + BUN + "/2026-03-04-1-tray.jpg");
      assertThat(visit.text()).contains("This photo is not there any more.");
      visit.assertAccessible();
      visit.to("/beside");
      assertThat(visit.text()).contains("No photo is chosen.");
      visit.assertAccessible();
    }
  }

  @Test
  void theComparisonLeadsToThePhotosOfBothSides(Browser browser) {
    second();
    try (Visit visit = visit(browser, Visit.DESK)) {
      String left = new ShowBake(bench.desk()).call(BUN, WITH_PHOTO).address();
      String right = new ShowBake(bench.desk()).call(BUN, WITHOUT).address();
      visit.to(
          "/formulas/" + BUN + "?a=" + left.split("@")[1] + "&b=" + right.split("@")[1]);
      visit.at("a:text('Photos side by side')").click();
      visit.settled();
      assertThat(visit.address()).startsWith("/beside?left=" + BUN + "/2026-03-04-1-tray.jpg");
    }
  }
}
