package trial

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/layoutfile"
)

func encoded(t *testing.T, file layoutfile.File) []byte {
	t.Helper()
	text, err := json.Marshal(file)
	require.NoError(t, err)
	return text
}

func firstLaid(f *layoutfile.File, try func(int, layoutfile.Laid) bool) bool {
	for i, l := range f.Pieces {
		if try(i, l) {
			return true
		}
	}
	return false
}

func firstPart(f *layoutfile.File, try func(*layoutfile.Part) bool) bool {
	for i := range f.Parts {
		if try(&f.Parts[i]) {
			return true
		}
	}
	return false
}

// last piece by where it ends.
func last(f *layoutfile.File) int {
	end := 0
	for i, l := range f.Pieces {
		if l.Outline.Bound().Max[0] > f.Pieces[end].Outline.Bound().Max[0] {
			end = i
		}
	}
	return end
}

// twoAlike are two templates of one piece in one part; 0, 0 when there are
// none.
func twoAlike(f *layoutfile.File) (int, int) {
	for b := 1; b < len(f.Pieces); b++ {
		for a := range b {
			if f.Pieces[a].Part == f.Pieces[b].Part && f.Pieces[a].Piece == f.Pieces[b].Piece {
				return a, b
			}
		}
	}
	return 0, 0
}

func moved(f *layoutfile.File, i int, dx, dy float64) bool {
	l := &f.Pieces[i]
	l.X, l.Y = l.X+dx, l.Y+dy
	for k, p := range l.Outline {
		l.Outline[k] = orb.Point{p[0] + dx, p[1] + dy}
	}
	return true
}

// turned turns a piece about the middle of its outline, and says that it may.
func turned(f *layoutfile.File, i int, degrees float64) bool {
	l := &f.Pieces[i]
	centre := l.Outline.Bound().Center()
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	turn := func(p orb.Point) orb.Point {
		x, y := p[0]-centre[0], p[1]-centre[1]
		return orb.Point{centre[0] + cos*x - sin*y, centre[1] + sin*x + cos*y}
	}
	for k, p := range l.Outline {
		l.Outline[k] = turn(p)
	}
	at := turn(orb.Point{l.X, l.Y})
	l.X, l.Y, l.Turn = at[0], at[1], math.Mod(l.Turn+degrees, 360)
	l.Turnings = append(l.Turnings, layoutfile.Turning{Turn: l.Turn, Mirrored: l.Mirrored})
	return true
}

// turnedOver lays a piece on its other face where it is, and says that it may.
func turnedOver(f *layoutfile.File, i int) bool {
	l := &f.Pieces[i]
	centre := l.Outline.Bound().Center()
	for k, p := range l.Outline {
		l.Outline[k] = orb.Point{2*centre[0] - p[0], p[1]}
	}
	l.X, l.Turn, l.Mirrored = 2*centre[0]-l.X, math.Mod(360-l.Turn, 360), !l.Mirrored
	l.Turnings = append(l.Turnings, layoutfile.Turning{Turn: l.Turn, Mirrored: l.Mirrored})
	return true
}

// middleOf a piece is a small square about the mean of three of its corners
// that lies inside it.
func middleOf(l layoutfile.Laid) orb.Ring {
	n := len(l.Outline) - 1
	at := l.Outline.Bound().Center()
	for i := range n {
		a, b, c := l.Outline[i], l.Outline[(i+n/3)%n], l.Outline[(i+2*n/3)%n]
		mean := orb.Point{(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3}
		if contains(l.Outline, mean) {
			at = mean
			break
		}
	}
	x, y := at[0], at[1]
	return orb.Ring{{x - 1, y - 1}, {x + 1, y - 1}, {x + 1, y + 1}, {x - 1, y + 1}, {x - 1, y - 1}}
}

// contains reports whether a ring contains a point, by its winding.
func contains(ring orb.Ring, p orb.Point) bool {
	sum := 0.0
	for i := range len(ring) - 1 {
		a, b := math.Atan2(ring[i][1]-p[1], ring[i][0]-p[0]), math.Atan2(ring[i+1][1]-p[1], ring[i+1][0]-p[0])
		sum += math.Remainder(b-a, 2*math.Pi)
	}
	return math.Abs(sum) > math.Pi
}

// mismatched moves one of the points that match.
func mismatched(f *layoutfile.File, way string, by orb.Point) bool {
	if f.Repeat == nil {
		return false
	}
	for i, m := range f.Repeat.Matches {
		if m.Way != way || len(m.Points) < 2 || m.Name == "" {
			continue
		}
		first := &f.Repeat.Matches[i].Points[0]
		first.At = orb.Point{first.At[0] + by[0], first.At[1] + by[1]}
		return true
	}
	return false
}
