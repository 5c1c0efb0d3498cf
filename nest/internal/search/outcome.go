package search

// Outcome is a layout found by a search.
type Outcome struct {
	Spots  []Spot
	Length float64
	// Loss is 0 when nothing overlaps.
	Loss float64
	// Depths by which each piece overlaps others, when Loss is positive.
	Depths []float64
}

// Better reports whether an outcome beats another: less overlap, then
// shorter.
func (o Outcome) Better(than Outcome) bool {
	if o.Spots == nil || than.Spots == nil {
		return o.Spots != nil
	}
	if o.Loss != than.Loss {
		return o.Loss < than.Loss
	}
	return o.Length < than.Length
}

// Begin is the layout as a start for Searcher.Begin; nil when there is none.
func (o Outcome) Begin() []*Spot {
	if o.Spots == nil {
		return nil
	}
	begin := make([]*Spot, len(o.Spots))
	for i := range o.Spots {
		begin[i] = &o.Spots[i]
	}
	return begin
}
