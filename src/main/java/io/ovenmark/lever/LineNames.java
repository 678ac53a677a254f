package io.ovenmark.lever;

import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.List;

/** Short names of lines for people, no two the same. */
public final class LineNames {
  private LineNames() {}

  /**
   * The names of a worksheet's lines: the food's up to the first comma; the whole name where two
   * begin alike, the line's id where they are the same.
   *
   * @param sheet the worksheet
   * @return one for each line
   */
  public static List<String> of(Worksheet sheet) {
    List<String> brief =
        sheet.lines().stream().map(line -> line.name().split(",", 2)[0].strip()).toList();
    List<String> whole = sheet.lines().stream().map(WorksheetLine::name).toList();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < brief.size(); i++) {
      String name = brief.get(i);
      if (name.isEmpty() || count(brief, name) > 1) {
        name = whole.get(i);
      }
      names.add(count(whole, name) > 1 ? sheet.lines().get(i).line().id() : name);
    }
    return List.copyOf(names);
  }

  private static long count(List<String> all, String one) {
    return all.stream().filter(one::equals).count();
  }
}
