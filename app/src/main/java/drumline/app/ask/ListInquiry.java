package drumline.app.ask;

import drumline.app.listing.RouteListing;
import drumline.app.listing.TriageListing;
import drumline.economics.triage.Triage;
import drumline.route.RouteDerivation;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.operation.Route;

/** An inquiry's triage and route as text. */
public final class ListInquiry {
  private ListInquiry() {}

  /** Whether the piece belongs on a multi-spindle, rule by rule, and on which machine. */
  public static String triage(Inquiry inquiry) {
    return TriageListing.text(inquiry, Triage.of(inquiry, RouteDerivation.derive(inquiry)));
  }

  /** The operations that the print asks for. */
  public static Route route(Inquiry inquiry) {
    return RouteDerivation.derive(inquiry);
  }

  /** Operations with tool, data, time and loads; with their reasons if asked. */
  public static String text(Route route, boolean reasons) {
    return RouteListing.text(route, reasons);
  }
}
