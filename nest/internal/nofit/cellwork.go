package nofit

// cellWork is scratch space for listCell.
type cellWork struct {
	local       []localSum
	planes      []plane
	pieces, cut []Segment
}

// outsideOthers takes out of a segment what lies inside the other sums of the
// cell. What it returns is overwritten by the next.
func (w *cellWork) outsideOthers(s Segment, self int, inset float64) []Segment {
	w.pieces = append(w.pieces[:0], s)
	for j := range w.local {
		if j == self {
			continue
		}
		w.cut = w.cut[:0]
		for _, piece := range w.pieces {
			w.cut = piece.minus(w.local[j].planes, inset, w.cut)
		}
		w.pieces, w.cut = w.cut, w.pieces
	}
	return w.pieces
}
