package drumline.step.piece;

import drumline.step.contour.Recess;
import drumline.step.feature.Scene;
import drumline.step.turned.Near;
import drumline.step.turned.Strand;
import java.util.ArrayList;
import java.util.List;

/** Finds grooves in the end faces: two cylinders one within the other with a floor between. */
final class FaceGrooves {

  private FaceGrooves() {}

  static List<Recess> find(List<Strand> strands, Scene scene, double length) {
    List<Strand> left =
        strands.stream().filter(s -> !scene.isExplained(s.face()) && isWall(s)).toList();
    List<Recess> found = new ArrayList<>();
    for (Strand inner : left) {
      for (Strand outer : left) {
        boolean isPair =
            inner.outR() > 0
                && outer.outR() < 0
                && outer.r0() > inner.r0()
                && Near.isSame(inner.z0(), outer.z0())
                && Near.isSame(inner.z1(), outer.z1());
        boolean isOpen = inner.z0() < Near.MM || inner.z1() > length - Near.MM;
        if (isPair && isOpen && isNew(found, inner)) {
          found.add(new Recess(Recess.Place.FACE, inner.z0(), inner.z1(), inner.r0(), outer.r0()));
          explain(strands, scene, found.get(found.size() - 1));
        }
      }
    }
    return found;
  }

  private static boolean isNew(List<Recess> found, Strand inner) {
    return found.stream()
        .noneMatch(r -> Near.isSame(r.z0(), inner.z0()) && Near.isSame(r.r(), inner.r0()));
  }

  private static boolean isWall(Strand s) {
    return !s.isSquare() && s.arc() == null && Near.isSame(s.r0(), s.r1());
  }

  private static void explain(List<Strand> strands, Scene scene, Recess groove) {
    for (Strand s : strands) {
      boolean isIn =
          s.z0() > groove.z0() - Near.MM
              && s.z1() < groove.z1() + Near.MM
              && Math.min(s.r0(), s.r1()) > groove.r() - Near.MM
              && Math.max(s.r0(), s.r1()) < groove.outerR() + Near.MM;
      if (isIn) {
        scene.explain(s.face());
      }
    }
  }
}
