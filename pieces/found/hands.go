package found

// HasHands reports whether a right one and a left one of a piece differ, as it would be cut
// off the fold with what was said of it.
func (p Piece) HasHands(s Said) bool {
	p.AsDrawn, p.Mirrored, p.Whole = 0, 0, nil
	s.Name, s.Cut, s.Pair, s.Fold, s.Allowance = "piece", 2, NotSaid, NoFold, Allowance{How: AllowanceUnknown}
	if s.Grain == GrainAsFound && p.Grain == nil {
		s.Grain = GrainUp
	}
	piece, _, err := Complete(p, s, Options{})
	return err == nil && piece.Pair
}
