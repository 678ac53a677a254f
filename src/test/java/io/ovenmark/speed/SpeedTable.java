package io.ovenmark.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The answer as a Markdown table: numbers, the machine, and no opinion. */
final class SpeedTable {
  private final List<String> rows = new ArrayList<>();

  /** A row with something to compare with and how much of it is aimed at. */
  void compared(String what, Sample ours, String beside, Sample other, double share) {
    double part = ours.median() / other.median();
    rows.add(
        String.format(
            Locale.ROOT,
            "| %s | %s | %s ms | %s: %s | %.3f | at most %s |",
            what,
            ours,
            Sample.text(ours.processor()),
            beside,
            other,
            part,
            share == 1 ? "1" : String.valueOf(share)));
  }

  /** A row without anything to compare with. */
  void alone(String what, Sample ours, String aim) {
    String processor = Sample.text(ours.processor()) + " ms";
    rows.add("| " + what + " | " + ours + " | " + processor + " | | | " + aim + " |");
  }

  /** A row for what other threads or programs do, whose processor time is not known here. */
  void elsewhere(String what, Sample ours) {
    rows.add("| " + what + " | " + ours + " | | | | |");
  }

  void print(Appendable out, String facts) throws IOException {
    out.append(facts).append("\n\n");
    out.append("| what | median (10 % to 90 %) | processor | beside it | share | aim |\n");
    out.append("|---|---|---|---|---|---|\n");
    for (String row : rows) {
      out.append(row).append('\n');
    }
  }

  /** Processors, runtime and Git. */
  static String machine(NativeGit git, Path folder) throws IOException {
    return Runtime.getRuntime().availableProcessors()
        + " processors, Java "
        + Runtime.version()
        + ", "
        + git.ask(folder, "--version").replace("git version", "Git");
  }

  /** How many programs wanted a processor during the last minute; a dash where nobody tells. */
  static String load() throws IOException {
    Path load = Path.of("/proc/loadavg");
    return Files.exists(load) ? Files.readString(load).split(" ")[0] : "-";
  }
}
