package io.ovenmark;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which package may use which: the arrows of the architecture, and what stays at the edges. */
@AnalyzeClasses(packages = "io.ovenmark", importOptions = ImportOption.DoNotIncludeTests.class)
class ArrowsTest {
  private static final Set<String> BOTTOM = Set.of("measure", "json");
  private static final Set<String> RECORDS = with(BOTTOM, "formula", "bake", "pantry");
  private static final Set<String> CHANGE = with(RECORDS, "change");
  private static final Set<String> FIGURES = with(CHANGE, "worksheet", "goal");
  private static final Set<String> DESK =
      with(
          FIGURES,
          "cause",
          "compare",
          "effect",
          "lever",
          "notebook",
          "paste",
          "photo",
          "publish",
          "search",
          "story",
          "tasting",
          "window",
          "desk");

  /** For each package those that it may use besides itself. */
  private static final Map<String, Set<String>> MAY_USE =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("measure", Set.of()),
              Map.entry("json", Set.of("measure")),
              Map.entry("formula", with(BOTTOM)),
              Map.entry("bake", with(BOTTOM)),
              Map.entry("pantry", with(BOTTOM)),
              Map.entry("change", RECORDS),
              Map.entry("worksheet", CHANGE),
              Map.entry("goal", with(CHANGE, "worksheet")),
              Map.entry("compare", FIGURES),
              Map.entry("lever", FIGURES),
              Map.entry("window", FIGURES),
              Map.entry("cause", with(FIGURES, "compare")),
              Map.entry("effect", with(FIGURES, "compare")),
              Map.entry("tasting", RECORDS),
              Map.entry("story", BOTTOM),
              Map.entry("publish", with(FIGURES, "story")),
              Map.entry("notebook", with(FIGURES, "story", "tasting")),
              Map.entry("paste", with(BOTTOM, "formula", "pantry")),
              Map.entry("photo", RECORDS),
              Map.entry("search", CHANGE),
              Map.entry("desk", DESK),
              Map.entry("demo", DESK),
              Map.entry("web", DESK),
              Map.entry("cli", with(DESK, "demo", "web"))));

  private static Set<String> with(Set<String> packages, String... more) {
    Set<String> all = new TreeSet<>(packages);
    all.addAll(List.of(more));
    return Set.copyOf(all);
  }

  /** The package of a class within the project, without sub-packages. */
  private static String part(JavaClass type) {
    return type.getPackageName().replaceFirst("^io\\.ovenmark\\.?", "").split("\\.", 2)[0];
  }

  @ArchTest
  static void everyPackageUsesOnlyThoseBelowIt(JavaClasses classes) {
    TreeSet<String> wrong = new TreeSet<>();
    for (JavaClass type : classes) {
      Set<String> allowed = MAY_USE.get(part(type));
      assertThat(allowed).as("a place for the package " + type.getPackageName()).isNotNull();
      type.getDirectDependenciesFromSelf().stream()
          .filter(each -> each.getTargetClass().getPackageName().startsWith("io.ovenmark"))
          .filter(each -> !part(each.getTargetClass()).equals(part(type)))
          .filter(each -> !allowed.contains(part(each.getTargetClass())))
          .forEach(each -> wrong.add(type.getName() + " -> " + each.getTargetClass().getName()));
    }
    assertThat(wrong).isEmpty();
  }

  @ArchTest
  static final ArchRule noCycles =
      slices().matching("io.ovenmark.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule onlyTheStoreSeesGit =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "io.ovenmark.notebook.store..", "io.ovenmark.notebook.index..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.eclipse.jgit..");

  @ArchTest
  static final ArchRule onlyTheWebSeesTheServer =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.ovenmark.web..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..");

  @ArchTest
  static final ArchRule onlyTheCommandLineSeesItsParser =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.ovenmark.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule onlyWhoWritesAnswersSeesTheJsonLibrary =
      noClasses()
          .that()
          .resideOutsideOfPackages("io.ovenmark.json..", "io.ovenmark.desk..", "io.ovenmark.web..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.fasterxml.jackson..");

  @ArchTest
  static final ArchRule unitsStayInMeasure =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.ovenmark.measure..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javax.measure..", "tech.units..");

  @ArchTest
  static final ArchRule textDiffStaysInChange =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.ovenmark.change..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.github.difflib..");

  @ArchTest
  static final ArchRule onlyWhatWorksOutTheNextChangeSeesTheSolver =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "io.ovenmark.lever..", "io.ovenmark.window..", "io.ovenmark.effect..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.ojalgo..");

  /** What the machine, its user and its clock say comes in from the top. */
  private static final Set<String> SURROUNDINGS =
      Set.of(
          "java.lang.System.exit",
          "java.lang.System.getenv",
          "java.lang.System.console",
          "java.lang.System.currentTimeMillis",
          "java.lang.Runtime.exit",
          "java.lang.Runtime.halt",
          "java.lang.Thread.sleep",
          "java.lang.Throwable.printStackTrace",
          "java.time.Instant.now",
          "java.time.LocalDate.now",
          "java.time.LocalTime.now",
          "java.time.LocalDateTime.now",
          "java.time.OffsetDateTime.now",
          "java.time.ZonedDateTime.now",
          "java.time.Year.now",
          "java.time.Clock.systemDefaultZone",
          "java.time.Clock.systemUTC",
          "java.time.ZoneId.systemDefault",
          "java.util.Locale.getDefault",
          "java.util.Locale.setDefault",
          "java.util.TimeZone.getDefault",
          "java.nio.charset.Charset.defaultCharset",
          "java.lang.System.out",
          "java.lang.System.err",
          "java.lang.System.in");

  private static final DescribedPredicate<JavaAccess<?>> ASKS_THE_SURROUNDINGS =
      DescribedPredicate.describe(
          "ask the surroundings",
          access ->
              SURROUNDINGS.contains(
                      access.getTargetOwner().getName() + "." + access.getTarget().getName())
                  && !access.getTarget().getFullName().endsWith("(java.time.Clock)"));

  @ArchTest
  static final ArchRule onlyTheCommandLineAsksTheSurroundings =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.ovenmark.cli..")
          .should()
          .accessTargetWhere(ASKS_THE_SURROUNDINGS);

  /** Methods that speak the language of the machine unless a locale is given. */
  private static final Set<String> IN_THE_DEFAULT_LANGUAGE =
      Set.of(
          "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
          "java.lang.String.formatted([Ljava.lang.Object;)",
          "java.lang.String.toLowerCase()",
          "java.lang.String.toUpperCase()");

  @ArchTest
  static final ArchRule wordsAndNumbersDoNotDependOnTheLanguageOfTheMachine =
      noClasses()
          .should()
          .accessTargetWhere(
              DescribedPredicate.describe(
                  "use the default locale",
                  access -> IN_THE_DEFAULT_LANGUAGE.contains(access.getTarget().getFullName())));

  @ArchTest
  static final ArchRule everyPackageSaysWhatItIs =
      classes()
          .should(
              new ArchCondition<>("be in a package with a package-info") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                  String info =
                      "src/main/java/" + type.getPackageName().replace('.', '/')
                          + "/package-info.java";
                  boolean there = Files.exists(Path.of(info));
                  events.add(new SimpleConditionEvent(type, there, info));
                }
              });
}
