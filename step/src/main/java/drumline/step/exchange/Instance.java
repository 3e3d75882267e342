package drumline.step.exchange;

import java.util.List;
import java.util.Optional;

/**
 * An instance of an exchange file: simple, or complex with several entities.
 *
 * @param id number after the hash
 * @param place file, line and name, for messages
 * @param entities one for a simple instance
 */
public record Instance(int id, String place, List<Entity> entities) {

  /** Copies the list. */
  public Instance {
    entities = List.copyOf(entities);
  }

  /** Whether it is, among others, an entity of this name. */
  public boolean is(String name) {
    return find(name).isPresent();
  }

  /** The entity of this name, if it is one. */
  public Optional<Entity> find(String name) {
    return entities.stream().filter(entity -> entity.name().equals(name)).findFirst();
  }

  /**
   * The entity of this name.
   *
   * @throws ExchangeFault if the instance is none
   */
  public Entity entity(String name) {
    return find(name)
        .orElseThrow(() -> first().fault("entity-kind", "#" + id + " is " + names(), name));
  }

  /** The first entity: the only one of a simple instance. */
  public Entity first() {
    return entities.get(0);
  }

  /** Names of all its entities. */
  public String names() {
    return String.join("+", entities.stream().map(Entity::name).toList());
  }
}
