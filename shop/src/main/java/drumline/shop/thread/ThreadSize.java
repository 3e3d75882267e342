package drumline.shop.thread;

public record ThreadSize(String designation, double majorMm, double pitchMm) {}
