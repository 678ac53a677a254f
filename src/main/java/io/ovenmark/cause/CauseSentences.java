package io.ovenmark.cause;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.cause.Evidence.Place;
import io.ovenmark.cause.Evidence.Speech;
import io.ovenmark.compare.Confounding;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What an inquiry found, in plain words. */
public final class CauseSentences {
  private final Inquiry inquiry;
  private final ShownUnits units;

  /**
   * Sentences about an inquiry.
   *
   * @param inquiry what was found
   * @param units how masses and temperatures are stated
   */
  public CauseSentences(Inquiry inquiry, ShownUnits units) {
    this.inquiry = inquiry;
    this.units = units;
  }

  /**
   * How the finding stands and what is most likely.
   *
   * @return one to three sentences
   */
  public String summary() {
    return stands() + " " + suspicion();
  }

  private String stands() {
    History history = inquiry.history();
    String word =
        FindingVocabulary.of(inquiry.finding()).isPresent()
            ? capital(inquiry.finding())
            : "“" + inquiry.finding() + "”";
    int bakes = history.bakes().size();
    return switch (history.standing()) {
      case NOT_BAKED -> "No bake of this line of history was judged yet.";
      case NEVER ->
          word + " was found on none of " + counted(bakes, "judged bake")
              + " up to this revision.";
      case ALWAYS ->
          word + " was found on every judged bake (" + bakes
              + "), so there is none without it to compare with.";
      case PRESENT -> {
        Turn turn = history.last(true).orElseThrow();
        yield word + " is on the newest judged bake. It came with " + name(turn.later())
            + "; " + name(turn.earlier()) + " was without it.";
      }
      case GONE -> {
        Turn turn = history.last(false).orElseThrow();
        yield word + " is gone: it was last on " + name(turn.earlier()) + ", and "
            + name(turn.later()) + " was without it.";
      }
    };
  }

  private static String name(Baked baked) {
    return "the bake " + baked.bake().id() + " (" + baked.side().address() + ")";
  }

  private String suspicion() {
    Optional<FindingVocabulary> known = FindingVocabulary.of(inquiry.finding());
    if (known.isEmpty()) {
      return "These are words of your own, for which no common causes are kept.";
    }
    if (known.get().merit()) {
      return "It is a merit: what changed when it came is worth keeping.";
    }
    List<Suspect> likely =
        inquiry.suspects().stream()
            .filter(suspect -> suspect.standing() == Suspect.Standing.LIKELY)
            .toList();
    if (likely.isEmpty()) {
      return inquiry.history().turns().isEmpty()
          ? "The causes below are the common ones, in the order of how common they are."
          : "None of the common causes has a figure that moved with it.";
    }
    String first = likely.get(0).cause().words();
    return likely.size() == 1
        ? "One common cause has a figure that moved with it: " + first + "."
        : capital(number(likely.size())) + " common causes have figures that moved with it; the"
            + " most common of them: " + first + ".";
  }

  /**
   * A suspect's figure in one line.
   *
   * @param suspect the suspect
   * @return such as {@code liquid ratio 1.33, up 0.35 since the last bake without this finding}
   */
  public String figure(Suspect suspect) {
    Gauge gauge = suspect.cause().gauge();
    Optional<Evidence> newest =
        inquiry.turn().flatMap(turn -> suspect.at(turn.came() ? Place.CAME : Place.WENT));
    Optional<Evidence> telling =
        newest
            .filter(evidence -> evidence.speech() == Speech.FOR)
            .or(
                () ->
                    suspect.evidence().stream()
                        .filter(evidence -> evidence.speech() == Speech.FOR)
                        .findFirst())
            .or(() -> newest);
    if (telling.isEmpty()) {
      return named(gauge) + shown(gauge, suspect.now());
    }
    Evidence evidence = telling.get();
    if (evidence.place() == Place.WITHIN_A_BAKE) {
      return named(gauge) + shown(gauge, evidence.with()) + " on pieces with it, "
          + shown(gauge, evidence.without()) + " on those without";
    }
    String since =
        newest.filter(evidence::equals).isEmpty()
            ? evidence.place() == Place.CAME ? " when it last came" : " when it last went"
            : evidence.place() == Place.CAME
                ? " since the last bake without this finding"
                : " since the last bake with it";
    return named(gauge) + moved(gauge, evidence) + since;
  }

  private static String named(Gauge gauge) {
    return gauge.label() + (gauge.isWords() ? ": " : " ");
  }

  /** The later value and how far it is from the earlier. */
  private String moved(Gauge gauge, Evidence evidence) {
    boolean came = evidence.place() == Place.CAME;
    Reading later = came ? evidence.with() : evidence.without();
    Reading earlier = came ? evidence.without() : evidence.with();
    if (gauge.isWords()) {
      return evidence.speech() == Speech.FOR
          ? shown(gauge, later) + ", was " + shown(gauge, earlier)
          : shown(gauge, later) + ", "
              + (isKnown(gauge, earlier) ? "the same" : "not known before");
    }
    if (evidence.speech() == Speech.UNKNOWN) {
      return shown(gauge, later) + ", change not known (" + shown(gauge, earlier) + " before)";
    }
    return shown(gauge, later) + ", " + delta(gauge, earlier, later, evidence.speech());
  }

  private static boolean isKnown(Gauge gauge, Reading reading) {
    return gauge.isWords() ? reading.words().isPresent() : reading.number().isKnown();
  }

  private String delta(Gauge gauge, Reading earlier, Reading later, Speech speech) {
    if (speech == Speech.STAYED) {
      return "the same";
    }
    Quantity delta = later.number().minus(earlier.number());
    boolean up = delta.low() > 0;
    return (up ? "up " : "down ") + amount(gauge, up ? delta : delta.times(-1));
  }

  /** A difference of a gauge without its sign. */
  private String amount(Gauge gauge, Quantity size) {
    if (gauge == Gauge.DOUGH_PER_PIECE) {
      return units.mass(size);
    }
    boolean heat = gauge.unit().equals("°C");
    if (heat) {
      double zero = units.inDegrees(0);
      return FigureText.of(size.times(units.inDegrees(1) - zero), units.degreeUnit());
    }
    return FigureText.of(size, gauge.unit().equals("%") ? "points" : gauge.unit());
  }

  /**
   * What a gauge shows.
   *
   * @param gauge the gauge
   * @param reading what it shows
   * @return such as {@code 1.06}, {@code 97 °C} or {@code not noted}
   */
  public String shown(Gauge gauge, Reading reading) {
    if (gauge.isWords()) {
      return reading.words().orElse("not noted");
    }
    Quantity number = reading.number();
    if (gauge == Gauge.DOUGH_PER_PIECE) {
      return units.mass(number);
    }
    return gauge.unit().equals("°C") && number.isKnown()
        ? FigureText.number(units.inDegrees(number.low())) + " " + units.degreeUnit()
        : FigureText.of(number, gauge.unit());
  }

  /**
   * What the history says about a suspect, place by place.
   *
   * @param suspect the suspect
   * @return a sentence for each place, then one for a low value
   */
  public List<String> details(Suspect suspect) {
    Gauge gauge = suspect.cause().gauge();
    List<String> details = new ArrayList<>();
    for (Evidence evidence : suspect.evidence()) {
      details.add(detail(gauge, evidence));
    }
    suspect.cause().least().ifPresent(least -> low(suspect, least).ifPresent(details::add));
    if (suspect.standing() == Suspect.Standing.ABSENT) {
      details.add("There is none of it in the formula, so it cannot be this.");
    }
    return List.copyOf(details);
  }

  private String detail(Gauge gauge, Evidence evidence) {
    String without = shown(gauge, evidence.without());
    String with = shown(gauge, evidence.with());
    String figures =
        switch (evidence.place()) {
          case CAME -> "When it came: " + without + FigureText.ARROW + with;
          case WENT -> "When it went: " + with + FigureText.ARROW + without;
          case WITHIN_A_BAKE ->
              "In one bake: " + without + " on pieces without it, " + with + " on pieces with it";
        };
    return figures
        + switch (evidence.speech()) {
          case FOR -> ", which speaks for it.";
          case STAYED -> ", no difference.";
          case AGAINST -> ", which speaks against it.";
          case UNKNOWN -> "; that says nothing either way.";
        };
  }

  private Optional<String> low(Suspect suspect, double least) {
    Gauge gauge = suspect.cause().gauge();
    return suspect.evidence().stream()
        .map(evidence -> evidence.with().number())
        .filter(number -> number.isKnown() && number.low() < least)
        .findFirst()
        .map(
            number ->
                "Below " + shown(gauge, new Reading(Quantity.known(least), Optional.empty()))
                    + " a crumb is often not set (common practice, no source).");
  }

  /**
   * What to do about a suspect.
   *
   * @param suspect the suspect
   * @return such as {@code Less liquid; liquid ratio back to 0.98.}
   */
  public String advice(Suspect suspect) {
    Gauge gauge = suspect.cause().gauge();
    Remedy remedy = suspect.remedy();
    boolean gone = inquiry.history().standing() == History.Standing.GONE;
    String words =
        gone
            ? "If it comes back: " + suspect.cause().against()
            : capital(suspect.cause().against());
    if (!remedy.target().isKnown()) {
      return words + ".";
    }
    String value = shown(gauge, new Reading(remedy.target(), Optional.empty()));
    return words + "; " + gauge.label() + " "
        + (remedy.back() ? "back to " + value + "." : "to " + value + " as a first step.");
  }

  /**
   * What changed at a turn and what may be concluded.
   *
   * @param turn the turn
   * @return one or two sentences
   */
  public static String changed(Turn turn) {
    Confounding confounding = turn.comparison().confounding();
    return confounding.sentence() + bothSides(confounding);
  }

  /** Says it when dough and oven changed together. */
  private static String bothSides(Confounding confounding) {
    if (confounding.verdict() != Confounding.Verdict.CONFOUNDED) {
      return "";
    }
    boolean dough = confounding.influences().stream().anyMatch(each -> !isOven(each.kind()));
    boolean oven = confounding.influences().stream().anyMatch(each -> isOven(each.kind()));
    boolean room =
        confounding.influences().stream()
            .allMatch(each -> each.kind() == Confounding.Kind.ROOM || !isOven(each.kind()));
    return dough && oven && !room ? " Dough and oven changed together." : "";
  }

  private static boolean isOven(Confounding.Kind kind) {
    return switch (kind) {
      case OVEN_TEMPERATURE, OVEN_TIME, OVEN, ROOM -> true;
      default -> false;
    };
  }

  private static String counted(int number, String word) {
    return number == 1 ? "one " + word : number(number) + " " + word + "s";
  }

  private static String number(int number) {
    List<String> words =
        List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
            "eleven", "twelve");
    return number < words.size() ? words.get(number) : Integer.toString(number);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
