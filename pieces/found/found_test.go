package found_test

import (
	"math"
	"slices"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

var most = func() (l found.Limits) {
	for i := range l {
		l[i] = 1000
	}
	return l
}()

func line(points ...orb.Point) (out pieces.Path) {
	for i := 1; i < len(points); i++ {
		out = append(out, pieces.Line{From: points[i-1], To: points[i]})
	}
	return out
}

func steps(points ...orb.Point) (out []found.Step) {
	for _, c := range line(append(points, points[0])...) {
		out = append(out, found.Step{Curve: c})
	}
	return out
}

func area(p found.Piece) float64 {
	var all orb.Ring
	for _, s := range p.Outline {
		all = append(all, s.Flatten(0.001)...)
	}
	return geometry.Area(append(all, all[0]))
}

// A sheet of two pieces drawn badly: lines in any order and direction, a gap, a line
// twice, a line that ends on the outline, one that sticks out, a hole, a window, words.
func TestDrawingOfLooseLines(t *testing.T) {
	sheet := found.LooseLines{Strokes: []found.Stroke{
		{Path: line(orb.Point{0, 0}, orb.Point{300, 0})},
		{Path: line(orb.Point{300, 400}, orb.Point{300, 0})},
		{Path: line(orb.Point{300, 0}, orb.Point{300, 400})},
		{Path: line(orb.Point{0, 400.2}, orb.Point{300, 400})},
		{Path: line(orb.Point{0, 0}, orb.Point{0, 400})},
		{Path: line(orb.Point{0, 0}, orb.Point{-50, -50})},
		{Path: line(orb.Point{0, 0}, orb.Point{300, 400})},
		{Path: line(orb.Point{100, 50}, orb.Point{100, 350}), Name: "grain", Group: "marks"},
		{Path: line(orb.Point{120, 50}, orb.Point{120, 90})},
		{Path: pieces.Path{pieces.Arc{Centre: orb.Point{50, 200}, Radius: 2, Sweep: 2 * math.Pi}}},
		{Path: line(orb.Point{20, 20}, orb.Point{40, 20}, orb.Point{40, 60}, orb.Point{20, 20}), Name: "window"},
		{Path: line(orb.Point{500, 0}, orb.Point{600, 0}, orb.Point{600, 100}, orb.Point{500, 0}), Name: "godet"},
		{Path: line(orb.Point{900, 0}, orb.Point{950, 0})},
	}, Texts: []found.Text{{Words: " back ", At: orb.Point{150, 150}, Height: 5},
		{Words: "cut 2", At: orb.Point{150, 140}, Height: 3}}}
	got, err := sheet.Drawing(found.Options{Limits: most})
	require.NoError(t, err)
	require.Len(t, got.Pieces, 2)
	back := got.Pieces[0]
	assert.Equal(t, "back", back.Name)
	assert.Equal(t, "godet", got.Pieces[1].Name)
	assert.Equal(t, &found.Straight{From: orb.Point{100, 50}, To: orb.Point{100, 350}}, back.Grain)
	var kinds []found.InnerKind
	for _, in := range back.Inner {
		kinds = append(kinds, in.Kind)
	}
	assert.Equal(t, []found.InnerKind{found.DrillHole, found.Cutout, found.InternalLine, found.InternalLine}, kinds)
	var notes []found.NoteKind
	for _, n := range got.Notes {
		notes = append(notes, n.Kind)
	}
	assert.Equal(t, []found.NoteKind{found.LineTwice, found.ClosedGap, found.OpenLine}, notes)
	clean, _, err := found.Clean(back, found.Options{})
	require.NoError(t, err)
	assert.InDelta(t, 300*400.05, area(clean), 1)
}

// Two lines between the same two points are one only where they run alike all the way.
func TestLinesDrawnTwice(t *testing.T) {
	from, to := orb.Point{0, 0}, orb.Point{0, 300}
	bowed := func(x float64) pieces.Path {
		return pieces.Path{pieces.Bezier{P0: from, P1: orb.Point{x, 100}, P2: orb.Point{x, 200}, P3: to}}
	}
	by := func(x float64) pieces.Path {
		return line(from, orb.Point{0, 50}, orb.Point{x, 100}, orb.Point{x, 200}, orb.Point{0, 250}, to)
	}
	for name, c := range map[string]struct {
		a, b  pieces.Path
		twice bool
	}{
		"the same":          {by(50), by(50), true},
		"backwards":         {by(50), by(50).Reverse(), true},
		"a curve backwards": {bowed(50), bowed(50).Reverse(), true},
		"the other side":    {bowed(50), bowed(-50), false},
		"less bowed":        {bowed(50), bowed(20), false},
		"parted on the way": {by(50), by(20), false},
		"laid on its side":  {bowed(50).Map(pieces.Turn(90)), bowed(-50).Map(pieces.Turn(90)), false},
	} {
		sheet := found.LooseLines{Strokes: []found.Stroke{{Path: c.a}, {Path: c.b}}}
		got, err := sheet.Drawing(found.Options{Limits: most})
		require.NoError(t, err)
		isTwice := func(n found.Note) bool { return n.Kind == found.LineTwice }
		assert.Equal(t, c.twice, slices.ContainsFunc(got.Notes, isTwice), name)
	}
}

// A line inside that runs along the outline is the sew line.
func TestSewLine(t *testing.T) {
	sheet := found.LooseLines{Strokes: []found.Stroke{
		{Path: line(orb.Point{10, 10}, orb.Point{290, 10}, orb.Point{290, 390}, orb.Point{10, 390}, orb.Point{10, 10})},
		{Path: line(orb.Point{0, 0}, orb.Point{300, 0}, orb.Point{300, 400}, orb.Point{0, 400}, orb.Point{0, 0})},
	}}
	got, err := sheet.Drawing(found.Options{Limits: most})
	require.NoError(t, err)
	require.Len(t, got.Pieces, 1)
	assert.NotNil(t, got.Pieces[0].Sew)
	assert.Equal(t, found.CuttingLine, got.Pieces[0].Line)
}

func TestClean(t *testing.T) {
	o := orb.Point{0, 0}
	right, top, left := orb.Point{100, 0}, orb.Point{100, 100}, orb.Point{0, 100}
	for name, c := range map[string]struct {
		given []found.Step
		notes []found.Note
		area  float64
	}{
		"sound":     {steps(o, right, top, left), nil, 1e4},
		"repeated":  {steps(o, o, right, top, top, left), []found.Note{{Kind: found.RepeatedPoint, Count: 2}}, 1e4},
		"clockwise": {steps(o, left, top, right), []found.Note{{Kind: found.TurnedRound, Count: 1}}, 1e4},
		"spike": {steps(o, right, orb.Point{140, 0}, right, top, left),
			[]found.Note{{Kind: found.SpikeRemoved, Count: 1, At: orb.Point{140, 0}}}, 1e4},
		"touching": {steps(o, right, top, orb.Point{60, 100}, orb.Point{50, 0}, orb.Point{40, 100}, left),
			[]found.Note{{Kind: found.TouchParted, Count: 1, Size: 0.01, At: orb.Point{50, 0}}}, 9e3},
		"gap": {append(steps(o, right, top, left)[:3], found.Step{Curve: pieces.Line{From: orb.Point{0, 100.25}, To: o}}),
			[]found.Note{{Kind: found.ClosedGap, Count: 1, Size: 0.25, At: left}}, 1e4},
	} {
		t.Run(name, func(t *testing.T) {
			got, notes, err := found.Clean(found.Piece{Outline: c.given}, found.Options{})
			require.NoError(t, err)
			assert.Equal(t, c.notes, notes)
			assert.InDelta(t, c.area, area(got), 20)
			whole := pieces.Piece{Name: "p", Cut: 1, Edges: []pieces.Edge{{}}, Grain: pieces.Grain{To: top}}
			whole.Edges[0] = edgeOf(got)
			assert.NoError(t, whole.Check())
			again, notes, err := found.Clean(got, found.Options{})
			require.NoError(t, err)
			assert.Equal(t, got, again)
			assert.Empty(t, notes)
		})
	}
}

func TestCleanRefuses(t *testing.T) {
	o := orb.Point{0, 0}
	right, top, left := orb.Point{100, 0}, orb.Point{100, 100}, orb.Point{0, 100}
	crossed := []orb.Point{o, top, right, left}
	for begin := range crossed { // the segment that closes the outline is one of it
		given := steps(append(crossed[begin:len(crossed):len(crossed)], crossed[:begin]...)...)
		_, _, err := found.Clean(found.Piece{Outline: given}, found.Options{})
		var crossing *found.Crossing
		require.ErrorAs(t, err, &crossing, "%d", begin)
		assert.InDelta(t, 50, crossing.At[0], 1e-9)
		assert.InDelta(t, 50, crossing.At[1], 1e-9)
	}
	_, _, err := found.Clean(found.Piece{Outline: steps(o, right, top, left)[:3]}, found.Options{})
	var gap *found.Gap
	require.ErrorAs(t, err, &gap)
	assert.Equal(t, 100.0, gap.Size)
	var none *found.NoArea
	_, _, err = found.Clean(found.Piece{Outline: steps(o, right)}, found.Options{})
	require.ErrorAs(t, err, &none)
	_, _, err = found.Clean(found.Piece{}, found.Options{})
	require.ErrorAs(t, err, &none)
}

func edgeOf(p found.Piece) pieces.Edge {
	e := pieces.Edge{Name: seams.Edge, Unknown: true}
	for _, s := range p.Outline {
		e.Path = append(e.Path, s.Curve)
	}
	return e
}

// Slabs tell as geometry does what lies in a ring or on it.
func TestSlabs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var ring orb.Ring
		for range rapid.IntRange(3, 40).Draw(t, "points") {
			ring = append(ring, orb.Point{float64(rapid.IntRange(0, 9).Draw(t, "x")),
				float64(rapid.IntRange(0, 9).Draw(t, "y"))})
		}
		ring = append(ring, ring[0])
		p := orb.Point{float64(rapid.IntRange(-1, 10).Draw(t, "px")), float64(rapid.IntRange(-2, 20).Draw(t, "py")) / 2}
		want := geometry.Inside(ring, p) || geometry.IsOn(ring, p, 0.001)
		assert.Equal(t, want, found.Holds(ring, p))
	})
}

// A mere number of pieces that are not their own mirror images means right ones and left
// ones, unless somebody says otherwise or the file says it by sides.
func TestCutTwoIsAPair(t *testing.T) {
	askew := steps(orb.Point{0, 0}, orb.Point{100, 0}, orb.Point{80, 200}, orb.Point{0, 210})
	even := steps(orb.Point{0, 0}, orb.Point{100, 0}, orb.Point{100, 200}, orb.Point{0, 200})
	for name, c := range map[string]struct {
		piece found.Piece
		said  found.Said
		pair  bool
		told  bool
	}{
		"cut 2":              {found.Piece{Outline: askew, Cut: 2}, found.Said{}, true, true},
		"cut 4":              {found.Piece{Outline: askew, Cut: 4}, found.Said{}, true, true},
		"cut 3":              {found.Piece{Outline: askew, Cut: 3}, found.Said{}, false, false},
		"cut 1":              {found.Piece{Outline: askew, Cut: 1}, found.Said{}, false, false},
		"said to be cut 2":   {found.Piece{Outline: askew, Cut: 1}, found.Said{Cut: 2}, true, true},
		"no pair":            {found.Piece{Outline: askew, Cut: 2}, found.Said{Pair: found.No}, false, false},
		"said to be a pair":  {found.Piece{Outline: even, Cut: 2}, found.Said{Pair: found.Yes}, true, false},
		"its own image":      {found.Piece{Outline: even, Cut: 2}, found.Said{}, false, false},
		"two as drawn":       {found.Piece{Outline: askew, AsDrawn: 2}, found.Said{}, false, false},
		"one of either hand": {found.Piece{Outline: askew, AsDrawn: 1, Mirrored: 1}, found.Said{}, true, false},
		"on the fold":        {found.Piece{Outline: askew, Cut: 2}, found.Said{Fold: found.LeftSide}, false, false},
	} {
		t.Run(name, func(t *testing.T) {
			c.piece.Name, c.said.Grain, c.said.Allowance.How = "back", found.GrainUp, found.AllowanceUnknown
			got, notes, err := found.Complete(c.piece, c.said, found.Options{})
			require.NoError(t, err)
			assert.Equal(t, c.pair, got.Pair)
			told := false
			for _, note := range notes {
				told = told || note.Kind == found.PairTaken
			}
			assert.Equal(t, c.told, told)
		})
	}
}
