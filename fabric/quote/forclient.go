package quote

// ForClient is the quote as its client reads it: without the maker's own reckoning.
// The margin is in the price of each cloth, whose metre is then left unpriced; work has
// neither hours nor rate; and nothing is said of the lay, or of what laying together
// saves. Every sum is as it was.
func (q Quote) ForClient() Quote {
	out := q
	out.Lines, out.Together = nil, nil
	margins := q.margins()
	cloth := 0
	for _, line := range q.Lines {
		line.Notes = nil
		switch {
		case line.Group == Cloth && cloth == len(q.Cloths):
			continue // the margin itself
		case line.Group == Cloth:
			if q.Margin > 0 {
				line.Cost, line.Each = line.Cost+margins[cloth], ""
			}
			cloth++
		case line.Group == Making:
			line.Amount, line.Each = "", ""
		}
		out.Lines = append(out.Lines, line)
	}
	return out
}

// margins are the parts of the margin, by the cost of each cloth.
func (q Quote) margins() []Money {
	if q.Margin == 0 || len(q.Cloths) == 0 {
		return nil
	}
	costs := make([]int64, len(q.Cloths))
	for i := range costs {
		costs[i] = int64(q.Lines[i].Cost)
	}
	return q.Lines[len(q.Cloths)].Cost.Split(costs)
}
