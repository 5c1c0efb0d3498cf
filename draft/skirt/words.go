package skirt

// Words for the shapes, in the order of the constants; the first is the usual one.
var shapes = [...]string{Straight: "straight", ALine: "a-line", Gored: "gored", FullCircle: "full circle",
	ThreeQuarterCircle: "three-quarter circle", HalfCircle: "half circle", QuarterCircle: "quarter circle",
	Tiered: "tiered", KnifePleated: "knife pleated", BoxPleated: "box pleated"}

// Words that a job file has for it.
func (Shape) Words() []string { return shapes[:] }
