package drumline.shop.inquiry;

import drumline.shop.machine.Machine;
import drumline.shop.material.Material;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tooling.ToolFamily;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A customer's question with everything it refers to.
 *
 * @param title what it is called
 * @param customer who asks
 * @param number print or inquiry number
 * @param units units that the print is written in
 * @param part the piece
 * @param bar the stock
 * @param material what it is made of
 * @param volumes how many
 * @param shifts when the plant works
 * @param today how it is made now, or null
 * @param rates the plant's rates
 * @param wishes what the user decides
 * @param overrides rules and figures of the process that the shop does otherwise
 * @param tools tool library
 * @param machines machine library
 */
public record Inquiry(
    String title,
    String customer,
    String number,
    UnitSystem units,
    Part part,
    Bar bar,
    Material material,
    Volumes volumes,
    Shifts shifts,
    @Nullable Today today,
    Rates rates,
    Wishes wishes,
    Overrides overrides,
    List<ToolFamily> tools,
    List<Machine> machines) {

  /** Copies the lists. */
  public Inquiry {
    tools = List.copyOf(tools);
    machines = List.copyOf(machines);
  }

  /** The same question with another material. */
  public Inquiry withMaterial(Material newMaterial) {
    return with(newMaterial, overrides);
  }

  /** The same question in a shop that does other things otherwise. */
  public Inquiry withOverrides(Overrides newOverrides) {
    return with(material, newOverrides);
  }

  private Inquiry with(Material newMaterial, Overrides newOverrides) {
    return new Inquiry(
        title,
        customer,
        number,
        units,
        part,
        bar,
        newMaterial,
        volumes,
        shifts,
        today,
        rates,
        wishes,
        newOverrides,
        tools,
        machines);
  }
}
