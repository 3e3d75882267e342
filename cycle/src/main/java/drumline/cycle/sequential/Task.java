package drumline.cycle.sequential;

import drumline.cycle.spindle.SpindleState;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;

/**
 * An operation with the slide and the spindle state it is done with.
 *
 * @param operation what is done
 * @param slide slide that carries the tool
 * @param state what it asks of the spindle
 */
record Task(Operation operation, ToolSlide slide, SpindleState state) {
  boolean sameTool(Task other) {
    return slide.id().equals(other.slide.id()) && operation.tool().equals(other.operation.tool());
  }
}
