package understorey.plan;

public enum Orientation { LANDSCAPE, PORTRAIT }
