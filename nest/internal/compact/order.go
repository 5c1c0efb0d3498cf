package compact

import (
	"sort"

	"ellwand/nest/internal/model"
)

// leftToRight is the order of the spots by x: numbering variables in it keeps
// the matrix of the linear program narrow.
func leftToRight(spots []model.Spot) []int {
	order := make([]int, len(spots))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return spots[order[a]].X < spots[order[b]].X })
	return order
}
