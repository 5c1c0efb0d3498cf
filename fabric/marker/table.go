package marker

import (
	"fmt"
	"math"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
)

// Headings of the laying table, with the unit of its distances.
func Headings(plan lay.Plan, options Options) []string {
	edge, unit := nearEdge(plan), options.unit()
	return []string{"No.", "Piece", "Garment", "Copy", "Gives", "Template",
		fmt.Sprintf("Near end from %s, %s", leftEnd(plan), unit),
		fmt.Sprintf("Near end from %s, %s", edge, unit),
		fmt.Sprintf("Far end from %s, %s", edge, unit),
		"Arrow points"}
}

// Rows of the laying table, in the order of laying: for each template the
// distance of the nearer end of its grainline from the cut end, and of both
// ends from the selvedge (its outer edge) or the fold. On the cross grain the
// near end is the one nearer to that edge.
func Rows(plan lay.Plan, options Options) [][]string {
	total := map[string]int{}
	for _, l := range plan.Pieces {
		total[keyOf(l)]++
	}
	var out [][]string
	for i, l := range plan.Pieces {
		near, far := grainEnds(l)
		part, origin := plan.BedOf(l), originOf(plan, l)
		out = append(out, []string{
			fmt.Sprint(i + 1), l.Name, on(garmentOf(l), origin.name),
			fmt.Sprintf("%d of %d", l.Copy, total[keyOf(l)]),
			gives(l), face(l),
			options.bare(near[0] - origin.from),
			options.bare(fromEdge(plan, part, near[1])),
			options.bare(fromEdge(plan, part, far[1])),
			arrowPoints(l, leftEnd(plan), edgeOf(plan, part)),
		})
	}
	return out
}

// on adds the remnant on which a piece lies.
func on(garment, remnant string) string {
	if garment == "" || remnant == "" {
		return garment + remnant
	}
	return garment + ", " + remnant
}

func keyOf(l lay.Laid) string { return l.Garment + "\x00" + l.Size + "\x00" + l.Name }

// levelTolerance, mm: a grainline whose ends differ by less lies level.
const levelTolerance = 1.0

func grainEnds(l lay.Laid) (near, far orb.Point) {
	near, far = l.Grain[0], l.Grain[1]
	rise := near[0] - far[0]
	if math.Abs(rise) < levelTolerance {
		rise = near[1] - far[1]
	}
	if rise > 0 {
		near, far = far, near
	}
	return near, far
}

func arrowPoints(l lay.Laid, end, edge string) string {
	dx, dy := l.Grain[1][0]-l.Grain[0][0], l.Grain[1][1]-l.Grain[0][1]
	along, across := "away from the "+end, "away from the "+edge
	if dx < 0 {
		along = "to the " + end
	}
	if dy < 0 {
		across = "to the " + edge
	}
	switch {
	case math.Abs(dx) < levelTolerance:
		return across
	case math.Abs(dy) < levelTolerance:
		return along
	}
	// Both at once must fit the column.
	return strings.ReplaceAll(along+", "+across, "the ", "")
}

func garmentOf(l lay.Laid) string {
	if l.Size == "" {
		return l.Garment
	}
	if l.Garment == "" {
		return "size " + l.Size
	}
	return l.Garment + ", size " + l.Size
}

func gives(l lay.Laid) string {
	switch {
	case l.OnFold:
		return "1, on the fold"
	case l.Yields == 2 && l.Piece.Pair:
		return "a pair"
	case l.Yields == 2:
		return "2 alike"
	case l.FromLower:
		return "1, lower layer"
	case l.Mirrored:
		return "1, mirrored"
	}
	return "1"
}

func face(l lay.Laid) string {
	if l.Mirrored {
		return "face down"
	}
	return "face up"
}
