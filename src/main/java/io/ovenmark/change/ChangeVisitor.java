package io.ovenmark.change;

/**
 * Answers something for every kind of change. A kind that is added to {@link Change} needs a method
 * here, so that no reader of changes can forget it.
 *
 * @param <R> what is answered
 */
public interface ChangeVisitor<R> {
  /**
   * Answers for {@link Change.NameChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R nameChanged(Change.NameChanged change);

  /**
   * Answers for {@link Change.DescriptionChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R descriptionChanged(Change.DescriptionChanged change);

  /**
   * Answers for {@link Change.GoalChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R goalChanged(Change.GoalChanged change);

  /**
   * Answers for {@link Change.ReferenceChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R referenceChanged(Change.ReferenceChanged change);

  /**
   * Answers for {@link Change.LineAdded}.
   *
   * @param change the change
   * @return the answer
   */
  R lineAdded(Change.LineAdded change);

  /**
   * Answers for {@link Change.LineRemoved}.
   *
   * @param change the change
   * @return the answer
   */
  R lineRemoved(Change.LineRemoved change);

  /**
   * Answers for {@link Change.FoodReplaced}.
   *
   * @param change the change
   * @return the answer
   */
  R foodReplaced(Change.FoodReplaced change);

  /**
   * Answers for {@link Change.AmountChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R amountChanged(Change.AmountChanged change);

  /**
   * Answers for {@link Change.AmountRewritten}.
   *
   * @param change the change
   * @return the answer
   */
  R amountRewritten(Change.AmountRewritten change);

  /**
   * Answers for {@link Change.FlourMarkChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R flourMarkChanged(Change.FlourMarkChanged change);

  /**
   * Answers for {@link Change.LineNoteChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R lineNoteChanged(Change.LineNoteChanged change);

  /**
   * Answers for {@link Change.LinesReordered}.
   *
   * @param change the change
   * @return the answer
   */
  R linesReordered(Change.LinesReordered change);

  /**
   * Answers for {@link Change.MethodChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R methodChanged(Change.MethodChanged change);

  /**
   * Answers for {@link Change.BakeSettingAdded}.
   *
   * @param change the change
   * @return the answer
   */
  R bakeSettingAdded(Change.BakeSettingAdded change);

  /**
   * Answers for {@link Change.BakeSettingRemoved}.
   *
   * @param change the change
   * @return the answer
   */
  R bakeSettingRemoved(Change.BakeSettingRemoved change);

  /**
   * Answers for {@link Change.BakeSettingChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R bakeSettingChanged(Change.BakeSettingChanged change);

  /**
   * Answers for {@link Change.TemperatureRewritten}.
   *
   * @param change the change
   * @return the answer
   */
  R temperatureRewritten(Change.TemperatureRewritten change);

  /**
   * Answers for {@link Change.BakeSettingsReordered}.
   *
   * @param change the change
   * @return the answer
   */
  R bakeSettingsReordered(Change.BakeSettingsReordered change);

  /**
   * Answers for {@link Change.YieldChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R yieldChanged(Change.YieldChanged change);

  /**
   * Answers for {@link Change.StorageChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R storageChanged(Change.StorageChanged change);

  /**
   * Answers for {@link Change.ExtraChanged}.
   *
   * @param change the change
   * @return the answer
   */
  R extraChanged(Change.ExtraChanged change);
}
