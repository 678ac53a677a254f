package io.ovenmark.notebook;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What comes in.
 *
 * @param name the formula's name
 * @param as its short name here
 * @param taken whether there is, or was, a formula of that name here already
 * @param revisions for each line of history how many revisions it has, the main line first
 * @param bakes how many bakes
 * @param photos how many photos
 * @param newFoods short names of foods that are not here yet
 * @param differingFoods foods that are here with other contents, with the names that theirs would
 *     get
 * @param newGoals short names of goals that are not here yet
 * @param differingGoals goals that are here with other contents, likewise
 * @param newReferences formulas that it was rebuilt from and that come in too
 * @param ownReferences such formulas that are here already and stay as they are
 * @param policyDiffers whether the other notebook works figures out by another rule
 * @param photosLeftOut paths of pictures that cannot be read
 * @param photosStripped paths of pictures that told something beside what they show
 * @param people who wrote
 * @param seen names everything that a choice rests on
 */
public record ArrivingFormula(
    String name,
    String as,
    boolean taken,
    Map<String, Integer> revisions,
    int bakes,
    int photos,
    List<String> newFoods,
    SortedMap<String, String> differingFoods,
    List<String> newGoals,
    SortedMap<String, String> differingGoals,
    List<String> newReferences,
    List<String> ownReferences,
    boolean policyDiffers,
    List<String> photosLeftOut,
    List<String> photosStripped,
    List<String> people,
    String seen) {
  /** Copies the collections. */
  public ArrivingFormula {
    newFoods = List.copyOf(newFoods);
    newGoals = List.copyOf(newGoals);
    newReferences = List.copyOf(newReferences);
    ownReferences = List.copyOf(ownReferences);
    photosLeftOut = List.copyOf(photosLeftOut);
    photosStripped = List.copyOf(photosStripped);
    people = List.copyOf(people);
  }
}
