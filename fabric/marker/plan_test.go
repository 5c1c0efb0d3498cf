package marker

import (
	"context"
	"fmt"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// placedPiece lays a rectangle drawn with its grain up the page, turned so
// that the grain points along the warp (or to the cut end, or across).
func placedPiece(name string, width, height, x, y, turn float64) lay.Laid {
	piece := pieces.Rectangle(name, width, height)
	piece.Garment = "smock"
	problem := layout.Problem{Items: []layout.Item{{Outline: orb.Ring{{0, 0}, {width, 0}, {width, height}, {0, height}},
		Turns: []layout.Turn{{Degrees: turn}}}}}
	at := layout.Placement{}
	box := problem.Placed(at).Bound()
	at.X, at.Y = x-box.Min[0], y-box.Min[1]
	outline := problem.Placed(at)
	middle, half := outline.Bound().Center(), height/4
	grain := map[float64][2]orb.Point{
		270: {{middle[0] - half, middle[1]}, {middle[0] + half, middle[1]}},
		90:  {{middle[0] + half, middle[1]}, {middle[0] - half, middle[1]}},
		0:   {{middle[0], middle[1] - half}, {middle[0], middle[1] + half}},
	}[turn]
	return lay.Laid{Piece: piece, Name: name, Garment: "smock", Copy: 1, Yields: 1, Turn: turn,
		X: at.X, Y: at.Y, Outline: outline, Seam: outline, Grain: grain}
}

// openPlan is a lay made by hand, so that every figure of its table can be
// reckoned by hand.
func openPlan() lay.Plan {
	plan := lay.Plan{
		Cloth: cloth.Cloth{Name: "linen", Width: 1020, Selvedge: 10, PurchaseStep: 100},
		Lay:   lay.Open, Plies: 1, Width: 1000, Length: 1160, Taken: 1160, Need: 1190, Buy: 1200, Bound: 1000, Density: 0.85,
		Pieces: []lay.Laid{
			placedPiece("front", 400, 600, 0, 0, 270),
			placedPiece("back", 400, 600, 0, 420, 90),
			placedPiece("belt", 60, 900, 620, 20, 0),
			placedPiece("loop", 20, 40, 700, 20, 270),
		},
	}
	left := placedPiece("sleeve", 350, 440, 720, 500, 270)
	left.Mirrored, left.Copy = true, 2
	return withPieces(plan, placedPiece("sleeve", 350, 440, 720, 100, 270), left)
}

func withPieces(plan lay.Plan, more ...lay.Laid) lay.Plan {
	plan.Pieces = append(plan.Pieces, more...)
	return plan
}

// foldedPlan has a half front on the fold and pairs above it.
func foldedPlan() lay.Plan {
	front := placedPiece("front", 200, 600, 0, 0, 270)
	front.OnFold = true
	front.Notches = []lay.Notch{{At: orb.Point{300, 200}, Out: orb.Point{300, 200}, Along: orb.Point{-1, 0}, Count: 2}}
	front.Darts = []lay.Dart{{Name: "waist dart", Line: orb.LineString{{0, 80}, {150, 100}, {0, 120}}}}
	front.Marks = []lay.Mark{{Name: marks.BustLine, Line: orb.LineString{{400, 0}, {400, 200}}},
		{Name: marks.Called("drill hole"), Line: orb.LineString{{140, 100}}}}
	sleeve := placedPiece("sleeve", 250, 550, 0, 220, 270)
	sleeve.Yields, sleeve.Piece.Pair = 2, true
	pocket := placedPiece("pocket", 120, 140, 620, 30, 90)
	pocket.Yields = 2
	return lay.Plan{
		Cloth: cloth.Cloth{Name: "velvet", Width: 1020, Selvedge: 10, PurchaseStep: 100, Nap: cloth.OneWay},
		Lay:   lay.FoldedAlong, Plies: 2, Width: 500, Length: 760, Taken: 760, Need: 760, Buy: 800, Bound: 700, Density: 0.7,
		Notes:  []lay.Note{{Text: "The length to buy is only 4 cm more than the lay takes."}},
		Pieces: []lay.Laid{front, sleeve, pocket},
	}
}

// longPlan is a lay of many small pieces over several pages, solved.
func longPlan(t testing.TB, count int) lay.Plan {
	t.Helper()
	plan := openPlan()
	plan.Pieces = nil
	for i := range count {
		l := placedPiece(fmt.Sprintf("patch %d", i+1), 95, 95, float64(i/10)*100, float64(i%10)*100, 270)
		plan.Pieces = append(plan.Pieces, l)
	}
	plan.Length = float64((count+9)/10) * 100
	plan.Buy = plan.Length
	return plan
}

// required is a real lay, with curves.
func required(t testing.TB) lay.Plan {
	t.Helper()
	sleeve := pieces.Rectangle("sleeve", 300, 500)
	sleeve.Edges[2].Path = pieces.Path{pieces.Bezier{P0: orb.Point{300, 500}, P1: orb.Point{250, 640},
		P2: orb.Point{50, 640}, P3: orb.Point{0, 500}}}
	for i := range sleeve.Edges {
		sleeve.Edges[i].Allowance = 15
	}
	sleeve.Cut, sleeve.Pair = 2, true
	tab := pieces.Rectangle("tab", 20, 30)
	tab.Cut = 8
	got, err := plan.Require(context.Background(), cloth.Cloth{Name: "shell", Width: 900, Selvedge: 10, PurchaseStep: 100},
		[]pieces.Piece{sleeve, tab}, plan.Options{Passes: 3, Lays: []lay.Kind{lay.Open}})
	require.NoError(t, err)
	return got.Lays[0]
}
