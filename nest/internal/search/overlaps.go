package search

import "slices"

// overlaps keeps the pairs of bodies that overlap or have done so lately. Any
// other pair has no severity and the weight 1: few pairs of a layout ever meet,
// and a table of them all took 1.8 GB for 10,000 pieces.
type overlaps struct {
	// rows of each body: what it meets, in the order of their indices.
	rows   [][]contact
	pairs  []overlap
	unused []int32 // of pairs
	// weights of every body against the body of the row; 1 but for those filled.
	weights []float32
	of      int // body of the row, or noRow
	filled  []int32
}

// contact is a body that another meets, and where in pairs.
type contact struct{ other, at int32 }

// overlap is how deeply a pair overlaps, and what that costs.
type overlap struct{ severity, weight float32 }

const noRow = -1

func newOverlaps(bodies int) overlaps {
	o := overlaps{rows: make([][]contact, bodies), weights: make([]float32, bodies), of: noRow}
	for i := range o.weights {
		o.weights[i] = 1
	}
	return o
}

// between is the overlap of two bodies, made where there is none. It is to be used
// before the next is made.
func (o *overlaps) between(i, j int32) *overlap {
	at, found := o.place(i, j)
	if found {
		return &o.pairs[o.rows[i][at].at]
	}
	made := int32(len(o.pairs))
	if last := len(o.unused) - 1; last >= 0 {
		made, o.unused = o.unused[last], o.unused[:last]
	} else {
		o.pairs = append(o.pairs, overlap{})
	}
	o.pairs[made] = overlap{weight: 1}
	o.rows[i] = slices.Insert(o.rows[i], at, contact{j, made})
	at, _ = o.place(j, i)
	o.rows[j] = slices.Insert(o.rows[j], at, contact{i, made})
	return &o.pairs[made]
}

// place of body j in the row of body i. Rows are short: a search by halves takes no
// less.
func (o *overlaps) place(i, j int32) (at int, found bool) {
	row := o.rows[i]
	for at < len(row) && row[at].other < j {
		at++
	}
	return at, at < len(row) && row[at].other == j
}

// weightsOf returns the weights of every body against body i, until they change or
// another's are asked for.
func (o *overlaps) weightsOf(i int) []float32 {
	if o.of == i {
		return o.weights
	}
	o.forgetRow()
	for _, c := range o.rows[i] {
		o.weights[c.other] = o.pairs[c.at].weight
		o.filled = append(o.filled, c.other)
	}
	o.of = i
	return o.weights
}

// forgetRow must come before any weight changes.
func (o *overlaps) forgetRow() {
	for _, j := range o.filled {
		o.weights[j] = 1
	}
	o.filled, o.of = o.filled[:0], noRow
}

// sweep drops the pairs that neither overlap nor weigh more than others.
func (o *overlaps) sweep() {
	for i, row := range o.rows {
		kept := row[:0]
		for _, c := range row {
			switch m := &o.pairs[c.at]; {
			case m.severity > 0 || m.weight > 1:
				kept = append(kept, c)
			case int(c.other) > i: // each pair stands in two rows
				o.unused = append(o.unused, c.at)
			}
		}
		o.rows[i] = kept
	}
}
