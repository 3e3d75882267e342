package drumline.shop.feature;

/** Something on the contours that is more than a step of them. */
public sealed interface Feature
    permits Groove,
        ScrewThread,
        Knurl,
        CrossHole,
        FaceHoles,
        Flats,
        SlottedForm,
        MilledSlot,
        Engraving,
        Deburring {

  /** Name of the feature, unique within the part. */
  String id();
}
