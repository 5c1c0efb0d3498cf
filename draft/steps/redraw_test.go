package steps

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/measure"
)

// From the text of the sheet alone every point comes out within the roundings
// that lead to it, and the outline runs where it was drafted.
func TestPiecesCanBeRedrawnFromTheText(t *testing.T) {
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		for name, garment := range everything(t) {
			t.Run(fmt.Sprintf("%s in %s", name, unit), func(t *testing.T) {
				var text bytes.Buffer
				require.NoError(t, WriteText(&text,
					Document{Title: "Redrawn", Unit: unit, Garments: []Garment{garment}}))
				sheets := readSheet(t, text.String(), unit)
				for _, c := range garment.contents(unit) {
					require.Contains(t, sheets, c.head)
					checkRedrawn(t, c, sheets[c.head])
				}
			})
		}
	}
}

func checkRedrawn(t *testing.T, c content, r *redrawn) {
	require.Len(t, r.at, len(c.sheet.Points), c.head)
	origin := c.sheet.Points[0].At
	for _, p := range c.sheet.Points {
		at := orb.Point{r.at[p.Number][0] + origin[0], r.at[p.Number][1] + origin[1]}
		assert.LessOrEqual(t, construct.Distance(p.At, at), r.slack[p.Number]+0.1, "%s: point %d", c.head, p.Number)
		r.at[p.Number] = at
	}
	line := c.piece.SeamOutline(0.02)
	for _, s := range r.outline {
		if strings.HasSuffix(s.name, "dart") {
			continue
		}
		for _, mark := range r.marks(s) {
			// A straight edge may lie straightEnough off its line.
			allowed := max(r.slack[s.from], r.slack[s.to]) + r.step + straightEnough
			assert.LessOrEqual(t, offLine(line, mark), allowed, "%s: %s %d-%d", c.head, s.name, s.from, s.to)
		}
	}
}

// offLine is how far a point lies from a closed line.
func offLine(line orb.Ring, p orb.Point) float64 {
	least := math.Inf(1)
	for i := range line {
		a, b := line[i], line[(i+1)%len(line)]
		length := construct.Distance(a, b)
		if length == 0 {
			continue
		}
		way := construct.Direction(a, b)
		along := max(0, min(length, (p[0]-a[0])*way[0]+(p[1]-a[1])*way[1]))
		least = min(least, construct.Distance(p, construct.Go(a, way, along)))
	}
	return least
}

// Both ends of every edge of every piece have a numbered point, and of every
// curve on the way.
func TestEveryEndHasANumber(t *testing.T) {
	for name, garment := range everything(t) {
		for _, c := range garment.contents(measure.Centimetre) {
			paths := map[string]pieces.Path{}
			for _, guide := range c.sheet.Guides {
				paths[guide.Line()+" as first drawn"] = guide.Path
			}
			for _, edge := range c.piece.Edges {
				paths[edge.Name.String()] = edge.Path
			}
			for line, path := range paths {
				ends := []orb.Point{path.Start(), path.End()}
				for _, curve := range path {
					if _, straight := curve.(pieces.Line); !straight {
						ends = append(ends, curve.Start(), curve.End())
					}
				}
				for _, at := range ends {
					_, numbered := c.sheet.PointAt(at)
					assert.True(t, numbered, "%s: %s: an end of %s at %.1f", name, c.head, line, at)
				}
			}
		}
	}
}
