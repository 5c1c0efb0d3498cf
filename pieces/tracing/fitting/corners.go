package fitting

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// Look is how corners are looked for, in points of the row.
type Look struct {
	// Gap to each side of a corner that the blur of the photo rounds.
	Gap int
	// Window beyond the gap that shows the direction of its sides.
	Window int
	// Turn of the direction that makes a corner, radians; what turns less is drawn as a
	// smooth curve.
	Turn float64
}

// Corners of a closed row of points: where the direction before differs from that
// after, both drawn on to the corner as parabolas so that a curve is none. The numbers
// of the points, in order.
func Corners(points []orb.Point, look Look) []int {
	n := len(points)
	if n < 4*(look.Gap+look.Window) {
		return nil
	}
	r := ringOf(points)
	all := make([]bend, n)
	for i := range points {
		all[i] = r.bend(i, look)
	}
	slices.SortStableFunc(all, func(a, b bend) int {
		switch {
		case a.clean != b.clean:
			if a.clean {
				return -1
			}
			return 1
		case a.turn > b.turn:
			return -1
		case a.turn < b.turn:
			return 1
		}
		return 0
	})
	var out []int
	apart := look.Gap + look.Window // nearer, the window of one holds the other
	for _, b := range all {
		if b.turn < look.Turn || !b.clean && b.turn < leastUnclean {
			continue
		}
		if !slices.ContainsFunc(out, func(k int) bool { return around(b.at, k, n) <= apart }) {
			out = append(out, b.at)
		}
	}
	slices.Sort(out)
	return out
}

// bend of the direction at a point.
type bend struct {
	at   int
	turn float64 // radians
	// clean says that the points of both sides lie on lines or parabolas, so that no
	// other corner lies among them.
	clean bool
}

// leastUnclean is what a corner turns at least, radians, beside which the sides are not
// clean; cleanOff how far their points may lie off, as a share of the way between two
// [source.OwnChoice].
const (
	leastUnclean = 50 * math.Pi / 180
	cleanOff     = 0.5
)

// around is how far apart two numbers of a closed row are.
func around(i, k, n int) int {
	d := (i - k + n) % n
	return min(d, n-d)
}

// bend at a point. Its turn is the least of what lines and parabolas say: lines see a
// bend in a curve, and parabolas see one in noise.
func (r ring) bend(i int, look Look) bend {
	_, zero := r.at(i)
	out := bend{at: i, turn: math.Inf(1)}
	most := cleanOff * r.length / float64(len(r.points))
	for _, straight := range [2]bool{true, false} {
		from, to := i-look.Gap-look.Window, i+look.Gap+look.Window
		before, ok := r.through(from, i-look.Gap, zero, straight)
		after, fits := r.through(i+look.Gap, to, zero, straight)
		if !ok || !fits {
			return bend{at: i}
		}
		u, v := before.direction(0), after.direction(0)
		out.turn = math.Min(out.turn, math.Abs(math.Atan2(geometry.Cross(u, v), geometry.Dot(u, v))))
		out.clean = r.off(before, from, i-look.Gap, zero) < most && r.off(after, i+look.Gap, to, zero) < most
	}
	return out
}

// off is how far points lie off a parabola, the root of the mean square.
func (r ring) off(p parabola, from, to int, zero float64) float64 {
	sum := 0.0
	for i := from; i <= to; i++ {
		q, along := r.at(i)
		d := geometry.Sub(q, p.place(along-zero))
		sum += geometry.Dot(d, d)
	}
	return math.Sqrt(sum / float64(to-from+1))
}
