package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepSettingsTest {
  private static final Map<String, String> ALL =
      Map.of("fibre", "1", "polyols", "1", "allulose", "1");

  @TempDir Path folder;
  private Kitchen kitchen;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private KitchenWork.NotebookPage page() {
    return new KeepSettings(kitchen.desk()).show();
  }

  private SettingsForm form(String seen, String title, String energy, Map<String, String> net) {
    return new SettingsForm(seen, title, "°C", "g", energy, net, true, null, null);
  }

  private KitchenWork.Saved save(SettingsForm form) {
    return new KeepSettings(kitchen.desk()).call(form, kitchen.by());
  }

  @Test
  void theSettingsAreShownWithWhatTheNotebookHolds() {
    kitchen.variant("egg-free");

    KitchenWork.NotebookPage page = page();

    assertThat(page.title()).isEqualTo("Saltmarsh bench");
    assertThat(page.energyRule()).isEqualTo("foods");
    assertThat(page.netCarbohydrateRule())
        .isEqualTo("carbohydrate − fibre − polyols − allulose");
    assertThat(page.formulas()).isEqualTo(1);
    assertThat(page.variants()).isEqualTo(1);
    assertThat(page.foods()).isEqualTo(3);
    assertThat(page.apart()).isEmpty();
  }

  @Test
  void anotherRuleForEnergyMovesEnergyAlone() {
    KitchenWork.SettingsTried tried =
        new KeepSettings(kitchen.desk()).look(form(page().seen(), "Saltmarsh bench", "EU factors", ALL));

    assertThat(tried.changed()).containsExactly("energy by");
    assertThat(tried.moves().formulas().get(0).figures())
        .extracting(KitchenWork.FigureMove::figure)
        .containsExactly("energy_kcal");
  }

  @Test
  void aTitleMovesNothing() {
    KitchenWork.SettingsTried tried =
        new KeepSettings(kitchen.desk()).look(form(page().seen(), "By the sea", "foods", ALL));

    assertThat(tried.changed()).containsExactly("title");
    assertThat(tried.moves().formulas()).isEmpty();
  }

  @Test
  void variantsWithTheSameSettingsFollow() {
    Address variant = kitchen.variant("egg-free");
    Map<String, String> half = Map.of("fibre", "1", "polyols", "0,5", "allulose", "1");

    KitchenWork.Saved saved = save(form(page().seen(), "By the sea", "US factors", half));

    assertThat(saved.outcome()).isEqualTo("saved");
    assertThat(saved.alsoIn()).containsExactly("seeded-lupin-bun/egg-free");
    assertThat(page().netCarbohydrateRule())
        .isEqualTo("carbohydrate − fibre − 50 % of polyols − allulose");
    assertThat(kitchen.desk().notebook().latest(variant).settings())
        .isEqualTo(kitchen.desk().notebook().latest().settings());
    kitchen.assertSound();
  }

  @Test
  void twoWhoChangeDifferentSettingsBothKeepTheirs() {
    String seen = page().seen();
    save(form(seen, "By the sea", "foods", ALL));

    KitchenWork.Saved second = save(form(seen, "Saltmarsh bench", "EU factors", ALL));

    assertThat(second.outcome()).isEqualTo("saved");
    assertThat(second.taken()).containsExactly("title");
    assertThat(page().title()).isEqualTo("By the sea");
    assertThat(page().energyRule()).isEqualTo("EU factors");
  }

  @Test
  void twoWhoChangeTheSameSettingAreShownBothSides() {
    String seen = page().seen();
    save(form(seen, "By the sea", "foods", ALL));

    KitchenWork.Saved refused = save(form(seen, "On the hill", "foods", ALL));
    SettingsForm picked =
        new SettingsForm(
            seen, "On the hill", "°C", "g", "foods", ALL, true, Map.of("title", "mine"),
            refused.answered());

    assertThat(refused.outcome()).isEqualTo("conflict");
    assertThat(refused.clashes().get(0).theirs()).isEqualTo("By the sea");
    assertThat(page().title()).isEqualTo("By the sea");
    assertThat(save(picked).outcome()).isEqualTo("saved");
    assertThat(page().title()).isEqualTo("On the hill");
  }

  @Test
  void aTitleIsNeeded() {
    assertThat(save(form(page().seen(), " ", "foods", ALL)).problems().get(0).field())
        .isEqualTo("title");
    assertThat(save(form(page().seen(), "x".repeat(121), "foods", ALL)).outcome())
        .isEqualTo("invalid");
  }

  @Test
  void settingsThatMovedAreNotOverwritten() {
    Address main = Address.latest("any", Optional.empty());
    RecordWriter writer = new RecordWriter(kitchen.desk().notebook());
    NotebookSettings before = kitchen.desk().notebook().latest().settings();
    writer.saveSettings(main, NotebookSettings.titled("Second"), before, "Title", kitchen.by());

    assertThatThrownBy(
            () ->
                writer.saveSettings(
                    main, NotebookSettings.titled("Third"), before, "Title", kitchen.by()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("meanwhile");
    assertThat(page().title()).isEqualTo("Second");
  }
}
