package part

// Words that a job file has for the kinds.
func (Kind) Words() []string { return words(Kinds()) }

// Words that a job file has for the shapes; the first is the usual one.
func (Shape) Words() []string { return words(Shapes()) }

// Words that a job file has for the grain of strips.
func (Grain) Words() []string { return words(Grains()) }

func words[T ~string](constants []T) []string {
	out := make([]string, len(constants))
	for i, c := range constants {
		out[i] = string(c)
	}
	return out
}
