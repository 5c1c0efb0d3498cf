package compact

// linear is the program: minimise the variable `least` subject to rows
// a . z >= b, where rows with one positive term bound a variable from below.
type linear struct {
	variables int
	least     int
	rows      []row
	terms     []term
}

type row struct {
	first, end int // into terms
	b          float64
}

type term struct {
	variable int
	factor   float64
}

func (l *linear) addRow(b float64, terms ...term) {
	first := len(l.terms)
	l.terms = append(l.terms, terms...)
	l.rows = append(l.rows, row{first, len(l.terms), b})
}

func (l *linear) of(r row) []term { return l.terms[r.first:r.end] }

// dot returns a . z of a row.
func (l *linear) dot(r row, z []float64) float64 {
	var sum float64
	for _, t := range l.of(r) {
		sum += float64(t.factor * z[t.variable])
	}
	return sum
}
