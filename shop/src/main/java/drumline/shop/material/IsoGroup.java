package drumline.shop.material;

/** Main groups of work materials by the tool material they ask for, ISO 513. */
public enum IsoGroup {
  /** Steel. */
  P,
  /** Stainless steel. */
  M,
  /** Cast iron. */
  K,
  /** Non-ferrous metals and plastics. */
  N,
  /** Heat-resistant alloys and titanium. */
  S,
  /** Hardened material. */
  H
}
