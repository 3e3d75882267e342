package drumline.workbench.log;

import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.core.spi.ContextAwareBase;

/** Nothing is logged until somebody says where to. */
public final class QuietLog extends ContextAwareBase implements Configurator {
  @Override
  public ExecutionStatus configure(LoggerContext context) {
    return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
  }
}
