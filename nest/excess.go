package nest

import (
	"sort"

	"ellwand/nest/internal/search"
)

// excess lists the placements that overlap others, worst first.
func (q *prepared) excess(found search.Outcome) []Excess {
	var out []Excess
	for i, depth := range found.Depths {
		if depth > 0 {
			out = append(out, Excess{Placement: len(q.locked) + i, Depth: depth})
		}
	}
	sort.SliceStable(out, func(a, b int) bool { return out[a].Depth > out[b].Depth })
	return out
}
