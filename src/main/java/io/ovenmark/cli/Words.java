package io.ovenmark.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The words of the command line as they were typed. Where the locale is plain ASCII, as in many
 * scripts, Java turns every other byte of a word into U+FFFD; Linux still knows the bytes.
 */
final class Words {
  private static final char LOST = '\uFFFD';

  private Words() {}

  /** Whether a word lost its letters on the way. */
  static boolean isLost(String[] words) {
    for (String word : words) {
      if (word.indexOf(LOST) >= 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * The same words with their letters, read as UTF-8, as far as the system still knows them.
   *
   * @param words as Java gives them
   * @param record file in which Linux keeps the command line of this process
   */
  static String[] recovered(String[] words, Path record) {
    if (!isLost(words)) {
      return words;
    }
    List<String> all;
    try {
      all = split(Files.readAllBytes(record));
    } catch (IOException e) {
      return words;
    }
    return all.size() < words.length
        ? words
        : all.subList(all.size() - words.length, all.size()).toArray(String[]::new);
  }

  /** Words that each end with a zero byte. */
  private static List<String> split(byte[] bytes) {
    List<String> words = new ArrayList<>();
    ByteArrayOutputStream word = new ByteArrayOutputStream();
    for (byte b : bytes) {
      if (b == 0) {
        words.add(word.toString(StandardCharsets.UTF_8));
        word.reset();
      } else {
        word.write(b);
      }
    }
    return words;
  }
}
