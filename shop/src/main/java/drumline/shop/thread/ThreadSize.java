package drumline.shop.thread;

public record ThreadSize(
    String designation,
    double majorMm,
    double pitchMm,
    double taperRatio,
    double tapDrillMm,
    double formTapDrillMm,
    double rollBlankMm) {}
