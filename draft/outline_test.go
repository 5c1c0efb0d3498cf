package draft_test

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/draft/internal/variants"
	"ellwand/pieces"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// Every block in every variant and every size of the tables: where curves of an
// edge meet their tangents agree, and at a fold or a centre line the outline is
// square to it (common practice). No grown body of a table is refused.
func TestOutlinesAreSmoothAndSquare(t *testing.T) {
	for name, request := range variants.All() {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			for _, table := range draft.Tables() {
				for _, size := range sample.Spread(draft.Sizes(table)) {
					body, err := draft.Size(table, size)
					require.NoError(t, err)
					request.Body, request.Table = body, table
					result, err := draft.Draft(request)
					if err != nil && table == "children" {
						continue
					}
					require.NoError(t, err, "%s %s", table, size)
					for _, p := range result.Pieces {
						checkOutline(t, p)
					}
				}
			}
		})
	}
}

// checkOutline: no corner within an edge, no curve that turns back or on itself,
// and square ends at a fold and at a centre line.
func checkOutline(t require.TestingT, p pieces.Piece) {
	for i, edge := range p.Edges {
		for k := 1; k < len(edge.Path) && !edge.Name.IsMouth(); k++ {
			before, after := edge.Path[k-1].Tangent(1), edge.Path[k].Tangent(0)
			assert.InDelta(t, 0, construct.Distance(before, after), 1e-6, "%s: %s has a corner in it", p.Name,
				edge.Name)
		}
		for _, curve := range edge.Path {
			assert.Less(t, turning(curve), 200.0, "%s: a curve of the %s turns too far", p.Name, edge.Name)
		}
		if edge.Name != p.Fold && !edge.Name.IsCentre() {
			continue
		}
		last := len(p.Edges)
		before, after := p.Edges[(i+last-1)%last], p.Edges[(i+1)%last]
		if !isLeft(before) {
			assert.InDelta(t, 90, drafttest.Corner(t, p, before.Name), 0.01, "%s: %s at the %s", p.Name, before.Name,
				edge.Name)
		}
		if !isLeft(after) {
			assert.InDelta(t, 90, drafttest.Corner(t, p, edge.Name), 0.01, "%s: %s at the %s", p.Name, after.Name,
				edge.Name)
		}
	}
}

// isLeft says that an edge leaves a centre line on purpose at another angle:
// the top of a vent.
func isLeft(edge pieces.Edge) bool { return edge.Name == seams.VentTop }

// bend is the turn from one direction to another in degrees, to the left
// positive.
func bend(in, out orb.Point) float64 {
	return math.Atan2(in[0]*out[1]-in[1]*out[0], in[0]*out[0]+in[1]*out[1]) * 180 / math.Pi
}

// turning is how far a curve turns in all, in degrees, to either side.
func turning(c pieces.Curve) float64 {
	const steps = 24
	sum, last := 0.0, c.Tangent(0)
	for i := 1; i <= steps; i++ {
		next := c.Tangent(float64(i) / steps)
		sum += math.Abs(bend(last, next))
		last = next
	}
	return sum
}
