package drumline.route.rule;

import java.util.Set;

/**
 * How a shop works: its allowances, what its operations reach, and the rules it does without.
 *
 * @param allowances stock allowances, standard times and limits
 * @param capability what operations reach
 * @param off ids of rules that are switched off
 */
public record Practice(Allowances allowances, CapabilityTable capability, Set<String> off) {
  private static final Practice SHIPPED =
      new Practice(Allowances.shipped(), CapabilityTable.shipped(), Set.of());

  /** Copies the set. */
  public Practice {
    off = Set.copyOf(off);
  }

  /** What ships with the program. */
  public static Practice shipped() {
    return SHIPPED;
  }

  /** The same practice with other allowances. */
  public Practice withAllowances(Allowances newAllowances) {
    return new Practice(newAllowances, capability, off);
  }

  /** Whether a rule is used. */
  public boolean uses(String ruleId) {
    return !off.contains(ruleId);
  }
}
