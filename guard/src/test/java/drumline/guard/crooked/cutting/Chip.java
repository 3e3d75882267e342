package drumline.guard.crooked.cutting;

import drumline.guard.crooked.shop.Bolt;
import java.sql.Connection;

/** Breaks a rule: a formula that opens a database. Its use of the noun is allowed. */
public record Chip(Bolt from, Connection database) {}
