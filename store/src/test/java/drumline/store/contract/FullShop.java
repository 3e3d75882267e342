package drumline.store.contract;

import drumline.shop.quantity.Money;
import drumline.store.api.StaleRevisionException;
import drumline.store.api.Store;
import drumline.store.entry.Account;
import drumline.store.entry.LibraryKind;
import drumline.store.entry.PlanHead;
import drumline.store.measure.Measurement;
import drumline.store.measure.RunoffHead;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

/** A store with something of everything in it. */
public final class FullShop {
  private FullShop() {}

  /** Fills an empty store. */
  public static void fill(Store store) throws StaleRevisionException {
    for (int number = 1; number <= 12; number++) {
      long id = store.inquiries().create("Hülse " + number, "n: " + number + "\r\n", "Ana").id();
      store.inquiries().save(id, 1, "n: " + number + " # Ø ½\n", "Ben", "note");
    }
    store.inquiries().undo(3, 2, "Ana");
    store.inquiries().undo(4, 2, "Ana");
    store.inquiries().redo(4, 3, "Ana");
    store.inquiries().rename(5, 2, "Sleeve \"5\"", "Ana");
    store.inquiries().duplicate(5, "Sleeve 6", "Ben");
    store.inquiries().archive(6, "Ben");
    store.inquiries().summary(7, 2, "{\"cycleS\": 13.100, \"b\": null, \"a\": \"<svg>½</svg>\"}");
    for (LibraryKind kind : LibraryKind.values()) {
      store.libraries().create(kind, "our " + kind, "", "Ana");
    }
    store.libraries().save(2, 1, "d: 5 mm\n", "Ana", "first drill");
    store.libraries().duplicate(2, "their tools", "Ana");
    store.libraries().archive(1, "Ana");
    plansAndRunoffs(store);
    store.accounts().create("Zoë", "$argon2id$v=19$x", Account.Role.KEEPER, "first start");
    store.accounts().create("ana", "$argon2id$v=19$y", Account.Role.READER, "Zoë");
    store.accounts().changeAccess("ana", Account.Access.DISABLED, "Zoë");
    store.auditTrail().write("Zoë", "logged in", "account/Zoë", "from 10.0.0.5");
  }

  private static void plansAndRunoffs(Store store) {
    Money cost = new Money(new BigDecimal("0.18400"), Currency.getInstance("CHF"));
    PlanHead head = new PlanHead(2, 2, "six", -42, 19.95, "feasible", 13.1, 1.0 / 3, cost);
    store.plans().add(head, "{ \"positions\" : [1, 2,\t3] }", "Study of Ø 12\n", "Ana");
    PlanHead none = new PlanHead(2, 1, "eight", Long.MAX_VALUE, 1e-7, "none", null, null, null);
    store.plans().add(none, "", null, "Ben");
    long id = store.runoffs().begin(new RunoffHead(2, 2, "six", "first"), "Ana").entry().id();
    store.runoffs().begin(new RunoffHead(2, 2, "six", "second"), "Ana");
    for (int spindle = 1; spindle <= 6; spindle++) {
      Measurement diameter =
          new Measurement("Ø12 h9", spindle, 1, new BigDecimal("11.98" + spindle + "0"), "mm");
      Measurement roughness = new Measurement("Ra", spindle, 1, new BigDecimal("0.8"), "µm");
      store.runoffs().add(id, List.of(diameter, roughness), "Ana");
    }
    store.runoffs().archive(id, "Ana", "wrong collet");
  }
}
