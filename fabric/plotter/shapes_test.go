package plotter

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/paper"
	"ellwand/pieces/seams"
)

// sleeve has a curved head.
func sleeve(width, height float64) pieces.Piece {
	p := pieces.Rectangle("sleeve", width, height)
	p.Edges[2].Path = pieces.Path{pieces.Bezier{P0: orb.Point{width, height}, P1: orb.Point{width * 0.8, height * 1.3},
		P2: orb.Point{width * 0.2, height * 1.3}, P3: orb.Point{0, height}}}
	for i := range p.Edges {
		p.Edges[i].Allowance = 5
	}
	p.Garment = "smock"
	p.Notches = []pieces.Notch{{Edge: seams.Top, At: 40, Count: 2}}
	return p
}

// longPlan is an open lay of so many sleeves, each way up in turn.
func longPlan(t testing.TB, count int) lay.Plan {
	t.Helper()
	piece := sleeve(140, 130)
	outline, err := piece.CuttingOutline(0.05)
	require.NoError(t, err)
	problem := layout.Problem{Items: []layout.Item{{Outline: outline,
		Turns: []layout.Turn{{Degrees: 270}, {Degrees: 90}, {Degrees: 90, Mirrored: true}}}}}
	plan := lay.Plan{Cloth: cloth.Cloth{Name: "linen", Width: 1500, Selvedge: 10}, Lay: lay.Open, Plies: 1, Width: 1480,
		Density: 0.7}
	const across, step = 9, 290.0
	for i := range count {
		at := layout.Placement{Turn: i % 3}
		turn := problem.Items[0].Turns[at.Turn]
		box := problem.Placed(at).Bound()
		at.X, at.Y = float64(i/across)*step-box.Min[0], float64(i%across)*160-box.Min[1]
		plan.Pieces = append(plan.Pieces, lay.Laid{Piece: piece, Name: piece.Name, Garment: "smock", Copy: i + 1, Yields: 1,
			Mirrored: turn.Mirrored, Turn: turn.Degrees, X: at.X, Y: at.Y, Outline: problem.Placed(at)})
	}
	for _, l := range plan.Pieces {
		plan.Length = max(plan.Length, l.Outline.Bound().Max[0])
	}
	plan.Buy = plan.Length
	return plan
}

func roll(height float64) paper.Paper { return paper.Paper{Height: height, Margin: 10, Overlap: 12} }

// plotted reads HP-GL/2 back: every chain of places that the pen draws, in
// mm. It knows the commands IN, SP, PA, PU and PD, and no others.
func plotted(t *testing.T, text string) (lines [][]orb.Point) {
	t.Helper()
	var current []orb.Point
	var at orb.Point
	finish := func() {
		if len(current) > 1 {
			lines = append(lines, current)
		}
		current = nil
	}
	for _, command := range strings.Split(strings.ReplaceAll(text, "\n", ""), ";") {
		if command == "" {
			continue
		}
		name, rest := command[:2], command[2:]
		var numbers []float64
		for _, figure := range strings.FieldsFunc(rest, func(r rune) bool { return r == ',' }) {
			n, err := strconv.Atoi(figure)
			require.NoError(t, err, command)
			numbers = append(numbers, float64(n))
		}
		switch name {
		case "IN", "SP", "PA":
			continue
		case "PU":
			finish()
		case "PD":
			if current == nil {
				current = []orb.Point{at}
			}
		default:
			require.Fail(t, "unknown command", command)
		}
		require.Zero(t, len(numbers)%2, command)
		for i := 0; i < len(numbers); i += 2 {
			at = orb.Point{numbers[i] * 25.4 / 1016, numbers[i+1] * 25.4 / 1016}
			if name == "PD" {
				current = append(current, at)
			}
		}
	}
	finish()
	return lines
}

func anyFollows(lines [][]orb.Point, ring orb.Ring, by orb.Point, tolerance float64) bool {
	for _, line := range lines {
		if len(line) < 4 {
			continue
		}
		missing := false
		for _, p := range ring {
			found := false
			for i := 1; i < len(line) && !found; i++ {
				found = segmentDistance(orb.Point{p[0] + by[0], p[1] + by[1]}, line[i-1], line[i]) <= tolerance
			}
			if !found {
				missing = true
				break
			}
		}
		if !missing {
			return true
		}
	}
	return false
}

func segmentDistance(p, a, b orb.Point) float64 {
	dx, dy := b[0]-a[0], b[1]-a[1]
	k := 0.0
	if square := dx*dx + dy*dy; square > 0 {
		k = math.Max(0, math.Min(1, ((p[0]-a[0])*dx+(p[1]-a[1])*dy)/square))
	}
	return math.Hypot(p[0]-a[0]-k*dx, p[1]-a[1]-k*dy)
}
