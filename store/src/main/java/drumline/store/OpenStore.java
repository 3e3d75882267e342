package drumline.store;

import drumline.store.api.AccountShelf;
import drumline.store.api.AuditTrail;
import drumline.store.api.InquiryShelf;
import drumline.store.api.LibraryShelf;
import drumline.store.api.PlanShelf;
import drumline.store.api.Store;
import drumline.store.api.StoreCount;
import drumline.store.backup.BackupWriter;
import drumline.store.database.Database;
import drumline.store.files.FolderReader;
import drumline.store.files.FolderWriter;
import drumline.store.files.RowCounts;
import drumline.store.measure.RunoffShelf;
import drumline.store.sql.AccountTable;
import drumline.store.sql.AuditLines;
import drumline.store.sql.InquiryTable;
import drumline.store.sql.LibraryTable;
import drumline.store.sql.PlanTable;
import drumline.store.sql.RunoffTable;
import java.nio.file.Path;
import java.time.Clock;

/** All shelves over one database. */
final class OpenStore implements Store {
  private final Database database;
  private final InquiryShelf inquiries;
  private final LibraryShelf libraries;
  private final PlanShelf plans;
  private final RunoffShelf runoffs;
  private final AccountShelf accounts;
  private final AuditTrail auditTrail;

  OpenStore(Database database, Clock clock) {
    this.database = database;
    this.inquiries = new InquiryTable(database, clock);
    this.libraries = new LibraryTable(database, clock);
    this.plans = new PlanTable(database, clock);
    this.runoffs = new RunoffTable(database, clock);
    this.accounts = new AccountTable(database, clock);
    this.auditTrail = new AuditLines(database, clock);
  }

  @Override
  public InquiryShelf inquiries() {
    return inquiries;
  }

  @Override
  public LibraryShelf libraries() {
    return libraries;
  }

  @Override
  public PlanShelf plans() {
    return plans;
  }

  @Override
  public RunoffShelf runoffs() {
    return runoffs;
  }

  @Override
  public AccountShelf accounts() {
    return accounts;
  }

  @Override
  public AuditTrail auditTrail() {
    return auditTrail;
  }

  @Override
  public StoreCount count() {
    return StoreCount.ofRows(RowCounts.of(database));
  }

  @Override
  public void backUpTo(Path file) {
    BackupWriter.write(database, file);
  }

  @Override
  public void exportTo(Path folder) {
    FolderWriter.write(database, folder);
  }

  @Override
  public void importFrom(Path folder) {
    FolderReader.read(database, folder);
  }

  @Override
  public String place() {
    return database.place();
  }

  @Override
  public void close() {
    database.close();
  }
}
