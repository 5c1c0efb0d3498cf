package sleeve

// Words for the reaches, in the order of the constants; the first is the usual one.
var reaches = [...]string{Full: "full", Elbow: "elbow", Short: "short"}

// Words that a job file has for it.
func (Reach) Words() []string { return reaches[:] }
