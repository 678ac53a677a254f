package io.ovenmark.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.ovenmark.bake.Photo;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.KeptPhoto;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Stories;
import io.ovenmark.publish.card.Card;
import io.ovenmark.publish.story.Lesson;
import io.ovenmark.publish.story.Story;
import io.ovenmark.publish.story.StoryFile;
import io.ovenmark.publish.story.StoryHtml;
import io.ovenmark.publish.story.StoryMarkdown;
import io.ovenmark.publish.story.StoryPhoto;
import io.ovenmark.publish.story.StoryPictures;
import io.ovenmark.story.StoryPlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Tells how a formula came to be: revisions that somebody chose, or every bake that taught
 * something, with photos, what changed, what was seen and the figure that moved, and the card at
 * the end.
 *
 * <pre>{@code
 * TellStory tell = new TellStory(desk);
 * String page = tell.page(tell.plan(Address.parse("seeded-lupin-bun")));
 * }</pre>
 */
public final class TellStory {
  private static final int KEPT_PHOTOS = 60;
  private static final String ALTERNATIVES = "what-they-show.txt";

  private final Desk desk;
  private final Map<String, byte[]> photos;

  private record Made(
      StoryLine line,
      StoryParts parts,
      List<Lesson> lessons,
      List<StoryParts.Told> told,
      Story story) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public TellStory(Desk desk) {
    this(desk, photoShelf());
  }

  private TellStory(Desk desk, Map<String, byte[]> photos) {
    this.desk = desk;
    this.photos = photos;
  }

  /**
   * The same for a desk of other units; photos that were made smaller are shared.
   *
   * @param other a desk on the same notebook
   * @return what tells on it
   */
  public TellStory shownOn(Desk other) {
    return new TellStory(other, photos);
  }

  /**
   * How sentences state masses and temperatures.
   *
   * @return the units
   */
  public ShownUnits units() {
    return desk.units();
  }

  /**
   * The story that the notebook keeps of a line, or one in which nothing was chosen yet.
   *
   * @param address a formula or variant; a revision stands for its line
   * @return the plan
   * @throws Refusal when there is no such line
   */
  public StoryPlan plan(Address address) {
    Address line = StoryLine.of(desk, address).line();
    return new Stories(desk.notebook())
        .find(line)
        .map(Stories.Kept::plan)
        .orElseGet(() -> StoryPlan.untold(line.formula(), line.variant()));
  }

  /**
   * What somebody chose, as a plan for a line.
   *
   * @param address a formula or variant; a revision stands for its line
   * @param order what was chosen
   * @return the plan; fields of a kept story that this program does not know stay in it
   * @throws Refusal when there is no such line, a text is too long or steps are out of order
   */
  public StoryPlan plan(Address address, StoryOrder order) {
    Address line = StoryLine.of(desk, address).line();
    Extras extras =
        new Stories(desk.notebook())
            .find(line)
            .map(kept -> kept.plan().extras())
            .orElse(Extras.NONE);
    return order.plan(line, extras);
  }

  /**
   * The story in words and data.
   *
   * @param plan what was chosen
   * @return the story, and what else could be chosen
   * @throws Refusal when a revision, photo or figure is not there, or there is nothing to tell
   */
  public StoryViews.StorySheet call(StoryPlan plan) {
    Made made = make(plan, false);
    Optional<Stories.Kept> kept = new Stories(desk.notebook()).find(made.line().line());
    return StorySheetMaker.of(
        made.line(),
        made.parts(),
        made.lessons(),
        made.told(),
        made.story(),
        plan,
        kept,
        StoryPictures.outline(made.story()));
  }

  /**
   * As a page of its own, with its pictures.
   *
   * @param plan what was chosen
   * @return HTML that needs nothing else
   * @throws Refusal as {@link #call} does
   */
  public String page(StoryPlan plan) {
    return StoryHtml.of(make(plan, true).story());
  }

  /**
   * As Markdown with its pictures beside it.
   *
   * @param plan what was chosen
   * @return the text first, then the pictures that it shows
   * @throws Refusal as {@link #call} does
   */
  public List<StoryFile> markdown(StoryPlan plan) {
    return StoryMarkdown.of(make(plan, true).story());
  }

  /**
   * As pictures for a video, 1920 × 1080.
   *
   * @param plan what was chosen
   * @param progress told how many pictures are drawn
   * @return the pictures in their order, and a text that says what each shows
   * @throws Refusal as {@link #call} does
   */
  public List<StoryFile> pictures(StoryPlan plan, Progress progress) {
    Story story = make(plan, true).story();
    int count = StoryPictures.count(story);
    List<StoryFile> files =
        new ArrayList<>(StoryPictures.of(story, drawn -> progress.at(drawn, count)));
    files.add(alternatives(files));
    return List.copyOf(files);
  }

  private static StoryFile alternatives(List<StoryFile> pictures) {
    StringBuilder text = new StringBuilder();
    for (StoryFile picture : pictures) {
      text.append(picture.name()).append('\n').append(picture.alternative()).append("\n\n");
    }
    return new StoryFile(
        ALTERNATIVES, text.toString().stripTrailing().concat("\n").getBytes(UTF_8), "");
  }

  /**
   * One of the pictures for a video.
   *
   * @param plan what was chosen
   * @param number which, from 1
   * @return the picture
   * @throws Refusal as {@link #call} does, and when there are fewer
   */
  public StoryFile picture(StoryPlan plan, int number) {
    try {
      return StoryPictures.one(make(plan, true).story(), number - 1);
    } catch (IndexOutOfBoundsException e) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          "picture " + number,
          "The story has no picture " + number + ".",
          "Reload its page: it lists them.");
    }
  }

  /**
   * Keeps a story in the notebook.
   *
   * @param plan what was chosen
   * @param base what it was changed from, as {@link StoryViews.StorySheet#base} says; null when no
   *     story was kept
   * @param by who commits it, and when
   * @return the story as it is kept
   * @throws Refusal as {@link #call} does, and when somebody changed the kept story meanwhile
   */
  public StoryViews.StorySheet keep(StoryPlan plan, String base, By by) {
    make(plan, false);
    Stories stories = new Stories(desk.notebook());
    Address line = Address.latest(plan.formula(), plan.variant());
    Optional<Stories.Kept> kept = stories.find(line);
    boolean same =
        kept.filter(k -> k.plan().equals(plan) && Objects.equals(k.content(), base)).isPresent();
    if (!same) {
      String note = (kept.isPresent() ? "Story changed: " : "Story: ") + line.line();
      stories.put(plan, Optional.ofNullable(base), note, by);
    }
    return call(plan);
  }

  private Made make(StoryPlan plan, boolean withPictures) {
    Address address = Address.latest(plan.formula(), plan.variant());
    StoryLine line = StoryLine.of(desk, address);
    StoryParts parts = new StoryParts(desk, line);
    List<Lesson> lessons = parts.lessons();
    List<StoryParts.Told> told = parts.tell(parts.steps(plan, lessons));
    if (told.isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          line.line().line(),
          "There is nothing to tell: no revision of " + line.line().line() + " can be read.",
          "See what is wrong with: ovenmark check");
    }
    StoryLine.Stop last = told.get(told.size() - 1).stop();
    Card card = new MakeCard(desk).card(last.address());
    List<Story.Step> steps = new ArrayList<>();
    for (StoryParts.Told each : told) {
      steps.add(step(steps.size() + 1, each, withPictures));
    }
    Optional<StoryPhoto> cover =
        steps.stream().flatMap(step -> step.photo().stream()).reduce((one, later) -> later);
    Story story =
        new Story(
            plan.title().orElse(card.name()),
            card.name(),
            plan.by(),
            span(line, told),
            plan.opening(),
            plan.closing(),
            cover,
            steps,
            parts.arcs(plan, told),
            card);
    return new Made(line, parts, lessons, told, story);
  }

  /** How long it took, counted over what lies between the first step and the last. */
  private static String span(StoryLine line, List<StoryParts.Told> told) {
    StoryLine.Stop first = told.get(0).stop();
    StoryLine.Stop last = told.get(told.size() - 1).stop();
    List<StoryLine.Stop> between =
        line.stops().stream()
            .filter(stop -> stop.number() >= first.number() && stop.number() <= last.number())
            .toList();
    int bakes = between.stream().mapToInt(stop -> stop.bakes().size()).sum();
    String counted =
        counted(between.size(), "revision") + (bakes == 0 ? "" : " and " + counted(bakes, "bake"));
    return first.date().equals(last.date())
        ? counted + ", " + first.date()
        : counted + ", " + first.date() + " to " + last.date();
  }

  private static String counted(int count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  private Story.Step step(int number, StoryParts.Told told, boolean withPictures) {
    return new Story.Step(
        number,
        told.stop().address().toString(),
        told.stop().date(),
        told.heading(),
        told.chosen().words(),
        told.changed(),
        told.credit(),
        told.seen(),
        told.moves().stream().findFirst(),
        told.photo()
            .flatMap(photo -> withPictures ? picture(told, photo) : Optional.of(named(photo))));
  }

  /** What is said of a photo, for a story that is told without its bytes. */
  private static StoryPhoto named(Photo photo) {
    return new StoryPhoto(new byte[0], PublishedPhotos.alternative(photo), photo.caption());
  }

  /** A picture that nobody chose and that cannot be read is left out. */
  private Optional<StoryPhoto> picture(StoryParts.Told told, Photo photo) {
    String formula = told.stop().address().formula();
    try {
      KeptPhoto kept = PublishedPhotos.kept(desk.notebook(), formula, photo);
      byte[] smaller =
          photos.computeIfAbsent(
              kept.id().hex(), id -> PublishedPhotos.smaller(photo, kept));
      return Optional.of(new StoryPhoto(smaller, PublishedPhotos.alternative(photo), photo.caption()));
    } catch (Refusal refusal) {
      if (told.chosen().photo().isEmpty()) {
        return Optional.empty();
      }
      throw refusal;
    }
  }

  private static Map<String, byte[]> photoShelf() {
    return Collections.synchronizedMap(
        new LinkedHashMap<>(64, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<String, byte[]> eldest) {
            return size() > KEPT_PHOTOS;
          }
        });
  }
}
