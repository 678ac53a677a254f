package io.ovenmark.speed;

import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.CardOrder;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.LabelChoices;
import io.ovenmark.desk.MakeCard;
import io.ovenmark.desk.ShowLabel;
import io.ovenmark.desk.ShowMattered;
import io.ovenmark.desk.TellStory;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.story.StoryPlan;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;

/** What is published of the demo's bun: label, card, story with its pictures; what mattered. */
final class PublishRun {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

  private PublishRun() {}

  static long measure(SpeedTable table, Path base) throws Exception {
    Path folder = Files.createTempDirectory(base, "published");
    DemoNotebook.create(folder.resolve("bench"), (done, total) -> {});
    long[] sink = new long[1];
    try (Desk desk = new Desk(Notebook.open(folder.resolve("bench")))) {
      Sample label = new Sample();
      Sample card = new Sample();
      Sample story = new Sample();
      Sample page = new Sample();
      Sample mattered = new Sample();
      TellStory tell = new TellStory(desk);
      StoryPlan plan = tell.plan(BUN);
      for (int i = 0; i < 60; i++) {
        boolean counts = i >= 20;
        (counts ? label : new Sample())
            .time(
                () ->
                    sink[0] +=
                        Json.compact(new ShowLabel(desk).call(BUN, LabelChoices.USUAL)).length());
        (counts ? card : new Sample())
            .time(() -> sink[0] += new MakeCard(desk).page(BUN, CardOrder.USUAL).length());
        (counts ? story : new Sample())
            .time(() -> sink[0] += Json.compact(tell.call(plan)).length());
        (counts ? page : new Sample()).time(() -> sink[0] += tell.page(plan).length());
      }
      for (int i = 0; i < 8; i++) {
        (i >= 3 ? mattered : new Sample())
            .time(
                () ->
                    sink[0] +=
                        Json.compact(new ShowMattered(desk).call(BUN, false, Optional.empty()))
                            .length());
      }
      table.alone("demo: label figures with their JSON, warm", label, "under 50 ms");
      table.alone("demo: the page of a card with its photo, warm", card, "under 100 ms");
      table.alone(
          "demo: a story of 9 steps with what else could be chosen, warm", story, "under 200 ms");
      table.alone("demo: its page with 8 photos, warm", page, "under 200 ms");
      table.alone("demo: what mattered over 38 pieces, warm", mattered, "under 1000 ms");
      pictures(table, tell, plan, sink);
    }
    return sink[0];
  }

  private static void pictures(SpeedTable table, TellStory tell, StoryPlan plan, long[] sink)
      throws Exception {
    byte[] drawn = tell.picture(plan, 4).content();
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(drawn));
    Sample picture = new Sample();
    Sample written = new Sample();
    for (int i = 0; i < 16; i++) {
      boolean counts = i >= 6;
      (counts ? picture : new Sample())
          .time(() -> sink[0] += tell.picture(plan, 4).content().length);
      (counts ? written : new Sample())
          .time(
              () -> {
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                ImageIO.write(image, "png", bytes);
                sink[0] += bytes.size();
              });
    }
    table.compared(
        "demo: one picture of the story, 1920 × 1080, warm",
        picture, "writing the drawn picture as a PNG file alone", written, 5);
  }
}
