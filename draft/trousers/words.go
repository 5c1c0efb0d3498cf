package trousers

// Words for the openings, in the order of the constants; the first is the usual one.
var openings = [...]string{Fly: "fly", SideZip: "side zip", ElasticWaist: "elastic waist"}

// Words that a job file has for it.
func (Opening) Words() []string { return openings[:] }

// Words for the pockets, in the order of the constants; the first is the usual one.
var pockets = [...]string{NoPocket: "none", SidePocket: "side", PatchPocket: "patch"}

// Words that a job file has for it.
func (Pocket) Words() []string { return pockets[:] }
