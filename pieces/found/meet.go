package found

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// touch, mm, is how near parts of an outline touch [source.OwnChoice].
const touch = 1e-4

// intersection is where a closed line comes to itself: between the segments from the
// points a and b of its ring, a the smaller.
type intersection struct {
	at      orb.Point
	a, b    int
	crosses bool
}

// intersections of a closed ring with itself, those first that cross; at most a few.
func intersections(ring orb.Ring) []intersection {
	const most = 50 // [source.OwnChoice]
	n := len(ring) - 1
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	left := func(i int) float64 { return math.Min(ring[i][0], ring[i+1][0]) }
	slices.SortFunc(order, func(i, j int) int { return cmp.Or(cmp.Compare(left(i), left(j)), cmp.Compare(i, j)) })
	var out []intersection
	for k, i := range order {
		right := math.Max(ring[i][0], ring[i+1][0]) + touch
		low, high := math.Min(ring[i][1], ring[i+1][1])-touch, math.Max(ring[i][1], ring[i+1][1])+touch
		for _, j := range order[k+1:] {
			if left(j) > right || len(out) >= most {
				break
			}
			if math.Max(ring[j][1], ring[j+1][1]) < low || math.Min(ring[j][1], ring[j+1][1]) > high {
				continue
			}
			if m, ok := meet(ring, min(i, j), max(i, j)); ok {
				out = append(out, m)
			}
		}
	}
	slices.SortFunc(out, func(a, b intersection) int {
		if a.crosses != b.crosses {
			if a.crosses {
				return -1
			}
			return 1
		}
		if a.a != b.a {
			return a.a - b.a
		}
		return a.b - b.b
	})
	return out
}

// meet of two segments that are not neighbours.
func meet(ring orb.Ring, i, j int) (intersection, bool) {
	n := len(ring) - 1
	if j == i+1 || i == 0 && j == n-1 {
		return intersection{}, false
	}
	a, b, c, d := ring[i], ring[i+1], ring[j], ring[j+1]
	if math.Min(c[0], d[0]) > math.Max(a[0], b[0])+touch || math.Max(c[0], d[0]) < math.Min(a[0], b[0])-touch {
		return intersection{}, false
	}
	ab, cd := geometry.Sub(b, a), geometry.Sub(d, c)
	sideC, sideD := geometry.Cross(ab, geometry.Sub(c, a)), geometry.Cross(ab, geometry.Sub(d, a))
	sideA, sideB := geometry.Cross(cd, geometry.Sub(a, c)), geometry.Cross(cd, geometry.Sub(b, c))
	byAB, byCD := touch*geometry.Norm(ab), touch*geometry.Norm(cd)
	if opposite(sideC, sideD, byAB) && opposite(sideA, sideB, byCD) {
		t := sideC / (sideC - sideD)
		return intersection{at: geometry.Between(c, d, t), a: i, b: j, crosses: true}, true
	}
	for _, end := range []struct{ p, from, to orb.Point }{{a, c, d}, {b, c, d}, {c, a, b}, {d, a, b}} {
		if geometry.SegmentDistance(end.p, end.from, end.to) <= touch {
			return intersection{at: end.p, a: i, b: j}, true
		}
	}
	return intersection{}, false
}

func opposite(p, q, by float64) bool { return p > by && q < -by || p < -by && q > by }
