package io.ovenmark.publish.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

/**
 * A story as pictures for a video, {@value #WIDTH} × {@value #HEIGHT}: a title, one for each step
 * with before and after (two when it has many words), the ways of the key figures, and at last the
 * macros of a piece with allergens and cautions. What must be read stays clear of the outer
 * twentieth of each edge. Each is a PNG file that carries its description; the same story gives the
 * same files.
 *
 * <pre>{@code
 * StoryPictures.of(story).get(0).name()    → 01-title.png
 * StoryPictures.count(story)               → 15
 * }</pre>
 */
public final class StoryPictures {
  /** Width of a picture, in pixels. */
  public static final int WIDTH = PictureCanvas.WIDTH;

  /** Height of a picture, in pixels. */
  public static final int HEIGHT = PictureCanvas.HEIGHT;

  private static final int TWO_DIGITS = 99;

  private StoryPictures() {}

  /** A picture before it is drawn. */
  private record Planned(String kind, String alternative, Consumer<PictureCanvas> drawing) {}

  /**
   * All of them.
   *
   * @param story a story with at least one step
   * @return in the order in which they are shown
   */
  public static List<StoryFile> of(Story story) {
    return of(story, drawn -> {});
  }

  /**
   * All of them, for somebody who watches.
   *
   * @param story a story with at least one step
   * @param watching told before each picture how many are drawn
   * @return in the order in which they are shown
   */
  public static List<StoryFile> of(Story story, IntConsumer watching) {
    List<Planned> planned = planned(story, new PicturePhotos());
    List<StoryFile> files = new ArrayList<>();
    for (int at = 0; at < planned.size(); at++) {
      watching.accept(at);
      files.add(file(planned, at, drawn(planned.get(at)).png(planned.get(at).alternative)));
    }
    return List.copyOf(files);
  }

  /**
   * How many there are; none is drawn.
   *
   * @param story as in {@link #outline}
   * @return the number
   */
  public static int count(Story story) {
    return planned(story, new PicturePhotos()).size();
  }

  /**
   * Their names and what they show; none is drawn.
   *
   * @param story a story with at least one step, and with its photos, though their bytes are not
   *     looked at: a photo without bytes will do
   * @return files without content, in the order in which they are shown
   */
  public static List<StoryFile> outline(Story story) {
    List<Planned> planned = planned(story, new PicturePhotos());
    List<StoryFile> files = new ArrayList<>();
    for (int at = 0; at < planned.size(); at++) {
      files.add(file(planned, at, new byte[0]));
    }
    return List.copyOf(files);
  }

  /**
   * One of them; only this one is drawn.
   *
   * @param story a story with at least one step
   * @param index from 0
   * @return the same as in {@link #of}
   * @throws IndexOutOfBoundsException when there is none of that number
   */
  public static StoryFile one(Story story, int index) {
    List<Planned> planned = planned(story, new PicturePhotos());
    Planned picture = planned.get(index);
    return file(planned, index, drawn(picture).png(picture.alternative));
  }

  /** One of them as it is drawn, with the words on it. */
  static PictureCanvas canvas(Story story, int index) {
    return drawn(planned(story, new PicturePhotos()).get(index));
  }

  private static PictureCanvas drawn(Planned picture) {
    PictureCanvas canvas = new PictureCanvas();
    picture.drawing.accept(canvas);
    return canvas;
  }

  private static StoryFile file(List<Planned> planned, int index, byte[] content) {
    String digits = planned.size() > TWO_DIGITS ? "%03d-%s.png" : "%02d-%s.png";
    Planned picture = planned.get(index);
    String name = String.format(Locale.ROOT, digits, index + 1, picture.kind);
    return new StoryFile(name, content, picture.alternative);
  }

  private static List<Planned> planned(Story story, PicturePhotos photos) {
    List<Planned> planned = new ArrayList<>();
    planned.add(
        new Planned(
            "title",
            TitlePicture.alternative(story),
            canvas -> TitlePicture.draw(canvas, story, photos)));
    for (Story.Step step : story.steps()) {
      StepPicture picture = new StepPicture(story, step, photos);
      int parts = picture.parts();
      boolean seenFirst = parts > 1 && picture.seenFirst();
      for (int part = 1; part <= parts; part++) {
        int number = part;
        planned.add(
            new Planned(
                "step",
                StepWords.alternative(story, step, part, parts, seenFirst),
                canvas -> picture.draw(canvas, number, parts)));
      }
    }
    for (ArcPicture arcs : ArcPicture.of(story)) {
      planned.add(new Planned("figures", arcs.alternative(), arcs::draw));
    }
    for (CardPicture card : CardPicture.of(story)) {
      planned.add(new Planned("card", card.alternative(), card::draw));
    }
    return planned;
  }
}
