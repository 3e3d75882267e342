package drumline.workbench.log;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.JsonEncoder;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.rolling.FixedWindowRollingPolicy;
import ch.qos.logback.core.rolling.RollingFileAppender;
import ch.qos.logback.core.rolling.SizeBasedTriggeringPolicy;
import ch.qos.logback.core.util.FileSize;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The log: one JSON object a line, in the data folder; four older files are kept. */
public final class LogFile {
  private static final String NAME = "workbench.log.jsonl";
  private static final long MOST_BYTES = 10L * 1024 * 1024;
  private static final int OLDER_COUNT = 4;

  private LogFile() {}

  /** Writes the log into a folder from now on. */
  public static void write(Path folder) {
    LoggerContext context = (LoggerContext) LoggerFactory.getILoggerFactory();
    context.reset();
    RollingFileAppender<ILoggingEvent> file = new RollingFileAppender<>();
    file.setContext(context);
    file.setFile(folder.resolve(NAME).toString());
    FixedWindowRollingPolicy older = new FixedWindowRollingPolicy();
    older.setContext(context);
    older.setParent(file);
    older.setMinIndex(1);
    older.setMaxIndex(OLDER_COUNT);
    older.setFileNamePattern(folder.resolve(NAME + ".%i").toString());
    older.start();
    SizeBasedTriggeringPolicy<ILoggingEvent> size = new SizeBasedTriggeringPolicy<>();
    size.setContext(context);
    size.setMaxFileSize(new FileSize(MOST_BYTES));
    size.start();
    JsonEncoder encoder = new JsonEncoder();
    encoder.setContext(context);
    encoder.setWithContext(false);
    encoder.setWithNanoseconds(false);
    encoder.setWithSequenceNumber(false);
    encoder.start();
    file.setRollingPolicy(older);
    file.setTriggeringPolicy(size);
    file.setEncoder(encoder);
    file.start();
    ch.qos.logback.classic.Logger root = context.getLogger(Logger.ROOT_LOGGER_NAME);
    root.setLevel(Level.WARN);
    root.addAppender(file);
    context.getLogger("drumline").setLevel(Level.INFO);
  }
}
