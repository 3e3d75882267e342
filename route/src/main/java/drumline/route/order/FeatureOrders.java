package drumline.route.order;

import static drumline.shop.operation.OperationKind.*;

import drumline.route.draft.RouteDraft;
import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.feature.SlottedForm;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;
import java.util.List;
import java.util.Set;

/** What must come before the operations on features. */
final class FeatureOrders {
  private static final Set<OperationKind> TURNING = Set.of(ROUGH_TURN, FINISH_TURN, FORM_TURN);
  private static final Set<OperationKind> HOLE =
      Set.of(SPOT, DRILL, COUNTERBORE, ROUGH_BORE, FINISH_BORE, REAM);

  private final RouteDraft draft;
  private final Part part;
  private final Hosts hosts;

  FeatureOrders(RouteDraft draft) {
    this.draft = draft;
    this.part = draft.inquiry().part();
    this.hosts = new Hosts(part);
  }

  void write() {
    for (Feature feature : part.features()) {
      if (feature instanceof Groove groove) {
        groove(groove);
      } else if (feature instanceof ScrewThread thread) {
        thread(thread);
      } else if (feature instanceof Knurl knurl) {
        onOutside(knurl.id(), knurl.fromZMm(), knurl.toZMm(), "knurl");
      } else if (feature instanceof CrossHole hole) {
        crossHole(hole);
      } else if (feature instanceof FaceHoles holes) {
        draft.orderAll(
            draft.of(holes.id(), FACE_DRILL), draft.of(holes.id(), FACE_TAP), "face-holes");
      } else if (feature instanceof Flats flats) {
        milled(flats.id(), flats.fromZMm(), flats.toZMm());
      } else if (feature instanceof MilledSlot slot) {
        milled(slot.id(), slot.zMm(), slot.zMm() + slot.lengthMm());
      } else if (feature instanceof SlottedForm form) {
        slotted(form);
      } else if (feature instanceof Engraving engraving) {
        engraving(engraving);
      } else if (feature instanceof Deburring demand) {
        deburr(demand);
      }
    }
  }

  private void groove(Groove groove) {
    List<Operation> own = draft.of(groove.id());
    switch (groove.place()) {
      case OUTSIDE ->
          onOutside(groove.id(), groove.atMm(), groove.atMm() + groove.widthMm(), "groove");
      case INSIDE ->
          draft.orderAll(
              on(hosts.bores(groove.end(), groove.atMm(), groove.atMm() + groove.widthMm()), HOLE),
              own,
              "groove");
      case FACE -> {}
    }
  }

  private void thread(ScrewThread thread) {
    List<Operation> own = draft.of(thread.id());
    Set<String> host = Set.of(thread.onElement());
    draft.orderAll(on(host, TURNING), own, "thread-after-groove");
    draft.orderAll(on(host, HOLE), own, "thread-after-groove");
    for (Groove groove : part.features(Groove.class)) {
      boolean beside =
          switch (groove.place()) {
            case OUTSIDE ->
                hosts.near(thread.onElement(), groove.atMm(), groove.atMm() + groove.widthMm());
            case INSIDE ->
                hosts
                    .bores(groove.end(), groove.atMm(), groove.atMm() + groove.widthMm())
                    .contains(thread.onElement());
            case FACE -> false;
          };
      if (beside) {
        draft.orderAll(draft.of(groove.id()), own, "thread-after-groove");
      }
    }
  }

  private void crossHole(CrossHole hole) {
    double radius = hole.diameterMm() / 2;
    milled(hole.id(), hole.zMm() - radius, hole.zMm() + radius);
    draft.orderAll(draft.of(hole.id(), CROSS_DRILL), draft.of(hole.id(), CROSS_TAP), "cross-hole");
    Set<String> bores = hosts.boresAtZ(hole.zMm());
    List<Operation> drill = draft.of(hole.id(), CROSS_DRILL);
    draft.orderAll(
        on(bores, Set.of(SPOT, DRILL)).stream().filter(o -> o.end() == WorkEnd.FRONT).toList(),
        drill,
        "mill-after-turn");
    draft.orderAll(
        drill,
        on(bores, Set.of(REAM, FINISH_BORE)).stream()
            .filter(o -> o.end() == WorkEnd.FRONT)
            .toList(),
        "finish-bore-after-cross");
  }

  private void milled(String id, double fromZMm, double toZMm) {
    onOutside(id, fromZMm, toZMm, "mill-after-turn");
    Set<String> steps = hosts.outside(fromZMm, toZMm);
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      if (steps.contains(thread.onElement())) {
        draft.orderAll(draft.of(thread.id()), draft.of(id), "mill-after-turn");
      }
    }
    for (Knurl knurl : part.features(Knurl.class)) {
      if (steps.contains(knurl.onElement())) {
        draft.orderAll(draft.of(knurl.id()), draft.of(id), "knurl");
      }
    }
  }

  private void slotted(SlottedForm form) {
    draft.orderAll(
        on(hosts.bores(form.end(), 0, form.lengthMm()), HOLE), draft.of(form.id()), "slot-strokes");
    for (Groove groove : part.features(Groove.class)) {
      if (groove.place() == Groove.Place.INSIDE && groove.end() == form.end()) {
        draft.orderAll(draft.of(groove.id()), draft.of(form.id()), "slot-strokes");
      }
    }
  }

  private void engraving(Engraving engraving) {
    if (engraving.place() == Engraving.Place.OUTSIDE) {
      double half = engraving.heightMm() / 2;
      onOutside(engraving.id(), engraving.atMm() - half, engraving.atMm() + half, "engrave");
    } else {
      draft.orderAll(
          draft.where(o -> o.kind() == FACE && sameFace(o, engraving)),
          draft.of(engraving.id()),
          "engrave");
    }
  }

  private static boolean sameFace(Operation face, Engraving engraving) {
    End end = engraving.place() == Engraving.Place.BACK_FACE ? End.BACK : End.FRONT;
    return face.featureId().equals(end == End.FRONT ? "front-face" : "back-face");
  }

  private void deburr(Deburring demand) {
    draft.orderAll(draft.of(demand.ofFeature()), draft.of(demand.id()), "deburr-last");
  }

  private void onOutside(String id, double fromZMm, double toZMm, String ruleId) {
    draft.orderAll(on(hosts.outside(fromZMm, toZMm), TURNING), draft.of(id), ruleId);
  }

  private List<Operation> on(Set<String> elements, Set<OperationKind> kinds) {
    return draft.where(o -> elements.contains(o.featureId()) && kinds.contains(o.kind()));
  }
}
