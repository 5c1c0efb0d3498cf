package verify

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/layout"
)

// within applies rules 7 and 9.
func (v *verifier) within(l layout.Layout) {
	longest := 0.0
	for _, piece := range v.pieces {
		longest = max(longest, piece.Bound().Max[0])
	}
	sheets := v.sheets(longest)
	zones := make([]*layout.Region, len(v.problem.Zones))
	for i, zone := range v.problem.Zones {
		zones[i] = layout.NewRegion(zone)
	}
	for _, piece := range v.pieces {
		v.onSheet(piece, sheets[piece.Sheet])
		if piece.Sheet > 0 {
			continue
		}
		for i, zone := range zones {
			v.clearOf(piece, zone, i)
		}
	}
	if len(v.problem.Sheets) > 0 {
		longest = 0
	}
	if !(math.Abs(l.Length-longest) <= v.reach) {
		v.fault("the layout says that it is %.9g long; its pieces reach to %.9g", l.Length, longest)
	}
}

// sheets returns the shapes that pieces must lie in. A strip of open length
// ends where its longest piece does.
func (v *verifier) sheets(longest float64) []*layout.Region {
	if len(v.problem.Sheets) == 0 {
		length := v.problem.Length
		if length == 0 {
			length = max(longest, v.problem.Width*layout.Tolerance)
		}
		end := orb.Point{length, v.problem.Width}
		return []*layout.Region{layout.NewRegion(orb.Ring{{0, 0}, {end[0], 0}, end, {0, end[1]}})}
	}
	sheets := make([]*layout.Region, len(v.problem.Sheets))
	for i, sheet := range v.problem.Sheets {
		sheets[i] = layout.NewRegion(sheet...)
	}
	return sheets
}

// onSheet tests a piece against the sheet it lies on: no point of its outline
// outside, no point of the sheet's edge inside it, and no area left over.
func (v *verifier) onSheet(piece laid, sheet *layout.Region) {
	if len(v.problem.Sheets) == 0 && encloses(sheet.Bound(), piece.Bound()) {
		return
	}
	at, depth, bad := piece.Strays(sheet, v.reach, false)
	if !bad {
		at, depth, bad = sheet.Strays(piece.Region, v.reach, true)
	}
	if bad {
		v.fault("%s hangs over the edge by %.4g at %s", v.name(piece.Placement), depth, spot(at))
		return
	}
	if over := piece.Area() - piece.Region.OverlapArea(sheet); over > layout.AreaTolerance*piece.Area() {
		v.fault("%s hangs over the edge with an area of %.4g", v.name(piece.Placement), over)
	}
}

func encloses(b, o orb.Bound) bool { return b.Contains(o.Min) && b.Contains(o.Max) }

func (v *verifier) clearOf(piece laid, zone *layout.Region, index int) {
	if !piece.Bound().Intersects(zone.Bound()) {
		return
	}
	if at, depth, bad := v.overlap(piece.Region, zone); bad {
		v.fault("%s lies %.4g over zone %d, which may not be used, at %s", v.name(piece.Placement), depth, index+1, spot(at))
		return
	}
	if area := piece.Region.OverlapArea(zone); area > layout.AreaTolerance*piece.Area() {
		v.fault("%s lies over zone %d, which may not be used, with an area of %.4g", v.name(piece.Placement), index+1, area)
	}
}

// apart applies rule 8. Pieces are sorted by their left ends, so each is
// compared only with those that it can reach along x.
func (v *verifier) apart() {
	order := slices.Clone(v.pieces)
	slices.SortFunc(order, func(a, b laid) int {
		if a.Bound().Min[0] != b.Bound().Min[0] {
			return cmp.Compare(a.Bound().Min[0], b.Bound().Min[0])
		}
		return cmp.Or(a.Item-b.Item, a.Copy-b.Copy)
	})
	for i, a := range order {
		reach := a.Bound().Pad(v.problem.Gap)
		for _, b := range order[i+1:] {
			if b.Bound().Min[0] > reach.Max[0] {
				break
			}
			if a.Sheet == b.Sheet && reach.Intersects(b.Bound()) {
				v.pair(a, b)
			}
		}
	}
}

// pair tests two pieces. It calls first the one that comes first in the
// problem.
func (v *verifier) pair(a, b laid) {
	if b.Item < a.Item || b.Item == a.Item && b.Copy < a.Copy {
		a, b = b, a
	}
	one, other := v.name(a.Placement), v.name(b.Placement)
	if at, depth, bad := v.overlap(a.Region, b.Region); bad {
		v.fault("%s and %s overlap by %.4g at %s", one, other, depth, spot(at))
		return
	}
	if area := a.Region.OverlapArea(b.Region); area > layout.AreaTolerance*min(a.Area(), b.Area()) {
		v.fault("%s and %s overlap with an area of %.4g", one, other, area)
		return
	}
	if v.problem.Gap <= v.reach {
		return
	}
	if at, away, bad := a.Nearest(b.Region, v.problem.Gap-v.reach); bad {
		v.fault("%s and %s are %.4g apart at %s; the gap is %.4g", one, other, away, spot(at), v.problem.Gap)
	}
}

// overlap looks for points of one outline that are deeper than the tolerance
// inside the other. Two shapes that lie on one another exactly have none;
// their area tells.
func (v *verifier) overlap(a, b *layout.Region) (orb.Point, float64, bool) {
	at, depth, bad := a.Strays(b, v.reach, true)
	if other, deeper, alsoBad := b.Strays(a, v.reach, true); alsoBad && deeper > depth {
		return other, deeper, true
	}
	return at, depth, bad
}
