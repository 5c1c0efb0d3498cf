package straightcut

// Words for the shapes, in the order of the constants; the first is the usual one.
var shapes = [...]string{Kaftan: "kaftan", Kimono: "kimono", Wrapper: "wrapper", Apron: "apron", Bag: "bag"}

// Words that a job file has for it.
func (Shape) Words() []string { return shapes[:] }
