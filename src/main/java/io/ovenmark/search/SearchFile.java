package io.ovenmark.search;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rows of a {@link SearchIndex} on disk. */
final class SearchFile {
  private static final long MARK = 0x315243524145534fL;
  private static final String NAME = "search";
  private static final int ID_BYTES = 20;
  private static final HexFormat HEX = HexFormat.of();
  private static final Passage.Place[] PLACES = Passage.Place.values();

  private final CheckedFile file;

  /** All rows by their keys. */
  record Rows(Map<String, StepFacts> steps, Map<String, BakeFacts> bakes) {}

  SearchFile(Path folder) {
    file = new CheckedFile(folder, NAME, MARK);
  }

  Path path() {
    return file.path();
  }

  /** The rows; empty if there is no file that can be used. */
  Optional<Rows> read() {
    return file.read(SearchFile::rows);
  }

  private static Rows rows(DataInputStream in) throws IOException {
    Map<String, String> same = new HashMap<>();
    Map<String, StepFacts> steps = new HashMap<>();
    for (int i = in.readInt(); i > 0; i--) {
      String key = id(in) + id(in);
      List<String> foods = new ArrayList<>();
      for (String food : texts(in)) {
        foods.add(same.computeIfAbsent(food, each -> each));
      }
      int flags = in.readByte();
      steps.put(key, new StepFacts(foods, (flags & 1) != 0, (flags & 2) != 0, passages(in)));
    }
    Map<String, BakeFacts> bakes = new HashMap<>();
    for (int i = in.readInt(); i > 0; i--) {
      String key = id(in);
      String address = text(in);
      String blob = id(in);
      OffsetDateTime time = OffsetDateTime.parse(text(in));
      List<String> baker = texts(in);
      bakes.put(
          key,
          new BakeFacts(
              address, blob, time, baker.stream().findFirst(), texts(in), passages(in)));
    }
    return new Rows(steps, bakes);
  }

  /** Writes the file anew; somebody who reads meanwhile sees the old one or the new one. */
  void write(Rows rows) throws IOException {
    file.write(out -> put(out, rows));
  }

  private static void put(DataOutputStream out, Rows rows) throws IOException {
    out.writeInt(rows.steps().size());
    for (Map.Entry<String, StepFacts> row : rows.steps().entrySet()) {
      StepFacts facts = row.getValue();
      out.write(HEX.parseHex(row.getKey()));
      put(out, facts.foods());
      out.writeByte((facts.method() ? 1 : 0) | (facts.oven() ? 2 : 0));
      putPassages(out, facts.passages());
    }
    out.writeInt(rows.bakes().size());
    for (Map.Entry<String, BakeFacts> row : rows.bakes().entrySet()) {
      BakeFacts facts = row.getValue();
      out.write(HEX.parseHex(row.getKey()));
      put(out, facts.address());
      out.write(HEX.parseHex(facts.blob()));
      put(out, facts.time().toString());
      put(out, facts.baker().stream().toList());
      put(out, facts.findings());
      putPassages(out, facts.passages());
    }
  }

  private static void put(DataOutputStream out, List<String> texts) throws IOException {
    out.writeInt(texts.size());
    for (String text : texts) {
      put(out, text);
    }
  }

  private static void put(DataOutputStream out, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  private static void putPassages(DataOutputStream out, List<Passage> passages)
      throws IOException {
    out.writeInt(passages.size());
    for (Passage passage : passages) {
      out.writeByte(Arrays.asList(PLACES).indexOf(passage.place()));
      put(out, passage.text());
    }
  }

  private static List<Passage> passages(DataInputStream in) throws IOException {
    List<Passage> passages = new ArrayList<>();
    for (int i = in.readInt(); i > 0; i--) {
      Passage.Place place = PLACES[in.readByte()];
      passages.add(new Passage(place, text(in)));
    }
    return passages;
  }

  private static List<String> texts(DataInputStream in) throws IOException {
    List<String> texts = new ArrayList<>();
    for (int i = in.readInt(); i > 0; i--) {
      texts.add(text(in));
    }
    return texts;
  }

  private static String text(DataInputStream in) throws IOException {
    return new String(exactly(in, in.readInt()), StandardCharsets.UTF_8);
  }

  private static String id(DataInputStream in) throws IOException {
    return HEX.formatHex(exactly(in, ID_BYTES));
  }

  private static byte[] exactly(DataInputStream in, int length) throws IOException {
    byte[] bytes = in.readNBytes(length);
    if (bytes.length != length) {
      throw new IOException("A row is cut off");
    }
    return bytes;
  }
}
