package drumline.planner.model;

import static drumline.planner.range.Checks.notBlank;

import java.util.List;

/**
 * An operation to be given a place.
 *
 * @param id unique name
 * @param name what a person calls it
 * @param slideIds slides that can do it, any order, no repeats
 * @param modes ways of doing it; the list index is the mode's number
 */
public record Task(String id, String name, List<String> slideIds, List<Mode> modes) {
  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if the id is blank or a slide is named twice
   */
  public Task {
    notBlank("id", id);
    slideIds = List.copyOf(slideIds);
    modes = List.copyOf(modes);
    if (slideIds.stream().distinct().count() != slideIds.size()) {
      throw new IllegalArgumentException(
          "slideIds of task " + id + " is " + slideIds + ", allowed: no repeats");
    }
  }

  /** The same with other modes. */
  public Task withModes(List<Mode> newModes) {
    return new Task(id, name, slideIds, newModes);
  }

  /** The same on other slides. */
  public Task withSlideIds(List<String> newSlideIds) {
    return new Task(id, name, newSlideIds, modes);
  }
}
