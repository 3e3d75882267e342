package drumline.intake.head;

import drumline.intake.form.Block;
import drumline.intake.form.Form;

/**
 * Who asks for what.
 *
 * @param title what the inquiry is called
 * @param customer who asks
 * @param number print or inquiry number
 */
public record Title(String title, String customer, String number) {

  /** Keys of the block. */
  public static final Form FORM = Form.of("inquiry", "title", "customer", "number");

  /** Reads the block. */
  public static Title read(Block block) {
    return new Title(block.text("title"), block.text("customer", ""), block.text("number", ""));
  }
}
