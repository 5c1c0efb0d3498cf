package bodice

// Words for the fits, in the order of the constants; the first is the usual one.
var fits = [...]string{Close: "close", Easy: "easy", Shirt: "shirt"}

// Words that a job file has for it.
func (Fit) Words() []string { return fits[:] }

// Words for the places of the bust dart, in the order of the constants; the first is the usual one.
var shapings = [...]string{SideDart: "side", ShoulderDart: "shoulder", ArmholeDart: "armhole", NoDart: "none"}

// Words that a job file has for it.
func (Shaping) Words() []string { return shapings[:] }

// Words for the princess seams, in the order of the constants; the first is the usual one.
var princesses = [...]string{NoPrincess: "none", FromShoulder: "shoulder", FromArmhole: "armhole"}

// Words that a job file has for it.
func (Princess) Words() []string { return princesses[:] }

// Words for the methods, in the order of the constants; the first is the usual one.
var methods = [...]string{Measured: "measured", Proportional: "proportional"}

// Words that a job file has for it.
func (Method) Words() []string { return methods[:] }
