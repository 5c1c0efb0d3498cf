package draft

// allowances are the usual seam allowances in mm by the name of a seam
// (common practice). "seams" is every seam that has no name here.
var allowances = []struct {
	name string
	mm   float64
}{
	{"seams", 15},
	{"armhole", 10},
	{"sleeve head", 10},
	{"neck", 10},
	{"collar edge", 8},
	{"facing edge", 8},
	{"wrist hem", 30},
	{"skirt hem", 45},
	{"centre back", 20},
}

// AllowanceNames lists the names that Request.Allowances may hold.
func AllowanceNames() []string {
	names := make([]string, len(allowances))
	for i, a := range allowances {
		names[i] = a.name
	}
	return names
}
