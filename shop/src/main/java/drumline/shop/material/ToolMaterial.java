package drumline.shop.material;

/** What a cutting edge is made of. */
public enum ToolMaterial {
  /** High-speed steel, coated or not. */
  HSS,
  /** Coated cemented carbide. */
  CARBIDE_COATED,
  /** Uncoated, sharp cemented carbide. */
  CARBIDE_UNCOATED,
  /** Titanium-based cermet. */
  CERMET,
  /** Polycrystalline diamond. */
  PCD,
  /** Hardened steel that forms instead of cutting: rolls, knurls. */
  HARDENED_STEEL
}
