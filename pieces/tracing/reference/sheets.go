package reference

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/tracing/camera"
	"ellwand/pieces/tracing/fitting"
)

// Few numbers that sheets are found by [source.OwnChoice].
const (
	sizeOff   = 0.25 // how unlike its size a sheet may look before the lens is known
	sheetOff  = 1.5  // pixels that the sides of a sheet may lie off at most
	clearly   = 1.5  // times better
	moreSheet = 0.02 // how unlike its size a sheet may look when the lens is known
)

// OfSheets fits the camera to those of the rims that are sheets of a known size, which
// lie anywhere on the plane. The errors are ErrNoSheet and ErrSheetBulged.
func OfSheets(width, height int, rims [][]orb.Point, known Known, look fitting.Look) (Found, error) {
	var all []candidate
	for i, rim := range rims {
		if q, ok := quadrangleOf(rim, look); ok {
			all = append(all, candidate{i, q})
		}
	}
	var best group
	for first := range all {
		for _, turn := range [2]int{0, 1} {
			g := begin(camera.Of(width, height), all, first, turn, known)
			if g.better(best) {
				best = g
			}
		}
	}
	if len(best.sheets) == 0 || best.square > mostUnsquare { // any quadrangle is some sheet, seen at a slant
		return Found{}, ErrNoSheet
	}
	if best.fit.Sigma > sheetOff {
		return Found{}, ErrSheetBulged
	}
	return best.found(), nil
}

// better than another: more sheets, or as many that fit clearly better. Sheets that all
// lie upright fit across alike; then pixels that are square decide.
func (g group) better(than group) bool {
	switch {
	case len(g.sheets) != len(than.sheets):
		return len(g.sheets) > len(than.sheets)
	case clearly*g.fit.Sigma < than.fit.Sigma:
		return true
	case clearly*than.fit.Sigma < g.fit.Sigma:
		return false
	}
	return g.square < than.square
}

// begin with one sheet, its corners turned, and add the others, the nearest first.
func begin(c camera.Camera, all []candidate, first, turn int, known Known) group {
	one := sheet{candidate: candidate{all[first].rim, all[first].turned(turn)}}
	g := group{known: known}
	var err error
	if c, err = c.Perspective(one.corners[:], known.corners()); err != nil {
		return g
	}
	g.camera, g.sheets = c, []sheet{one}
	if !g.solve() {
		return group{}
	}
	rest := slices.Delete(slices.Clone(all), first, first+1)
	centre := one.corners[0]
	slices.SortStableFunc(rest, func(a, b candidate) int {
		da, db := geometry.Distance(a.corners[0], centre), geometry.Distance(b.corners[0], centre)
		switch {
		case da < db:
			return -1
		case da > db:
			return 1
		}
		return 0
	})
	for _, next := range rest {
		if added, ok := g.with(next); ok {
			g = added
		}
	}
	g.square = unsquare(g.camera)
	return g
}

// with one more sheet, where it fits.
func (g group) with(next candidate) (group, bool) {
	for turn := range 2 {
		s, ok := g.placed(candidate{next.rim, next.turned(turn)})
		if !ok {
			continue
		}
		more := g
		more.sheets = append(slices.Clone(g.sheets), s)
		if more.solve() && more.fit.Sigma < sheetOff && more.fits(len(more.sheets)-1) {
			return more, true
		}
	}
	return g, false
}

// placed is where a quadrangle lies, if it looks about as large as a sheet.
func (g group) placed(c candidate) (sheet, bool) {
	var plane [4]orb.Point
	for k, p := range c.corners {
		plane[k] = g.camera.ToPlane(p)
	}
	wide, high := size(plane)
	if math.Abs(wide/g.known.Width-1) > sizeOff || math.Abs(high/g.known.Height-1) > sizeOff {
		return sheet{}, false
	}
	d := geometry.Add(geometry.Sub(plane[1], plane[0]), geometry.Sub(plane[2], plane[3]))
	return sheet{candidate: c, at: plane[0], angle: math.Atan2(d[1], d[0])}, true
}

// fits says whether a sheet has its size by the camera that was fitted to all.
func (g group) fits(k int) bool {
	var plane [4]orb.Point
	for i, p := range g.sheets[k].corners {
		plane[i] = g.camera.ToPlane(p)
	}
	wide, high := size(plane)
	return math.Abs(wide/g.known.Width-1) < moreSheet && math.Abs(high/g.known.Height-1) < moreSheet
}

func (g group) found() Found {
	out := Found{
		Kind: Sheets, Camera: g.camera, Sigma: g.fit.Sigma, Covariance: cameraOf(g.fit.Covariance),
		Count: [2]int{len(g.sheets), 0},
	}
	if len(g.sheets) == 1 {
		out.Kind = OneSheet
	}
	for _, s := range g.sheets {
		out.Sheets = append(out.Sheets, s.rim)
		for _, side := range s.sides {
			out.Marks = append(out.Marks, side...)
		}
	}
	return out
}
