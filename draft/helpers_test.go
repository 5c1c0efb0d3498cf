package draft

import (
	"math"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// grown are the tables of grown bodies.
var grown = []string{"women", "misses", "men"}

// blouse asks for everything that a blouse can have.
func blouse(body Body) Request {
	return Request{
		Garment: "blouse", Cloth: "shell", Body: body,
		Bodice: &bodice.Options{}, Sleeve: &sleeve.Options{},
		Parts: []part.Options{{Kind: part.Collar}, {Kind: part.NeckFacing}, {Kind: part.Cuff}},
	}
}

func size(t testing.TB, table, name string) Body {
	body, err := Size(table, name)
	require.NoError(t, err)
	return body
}

func pieceNamed(t require.TestingT, r Result, name string) pieces.Piece {
	for _, p := range r.Pieces {
		if p.Name == name {
			return p
		}
	}
	require.Fail(t, "no piece "+name)
	return pieces.Piece{}
}

// warnings of a result, a line each.
func warnings(r Result) string {
	lines := make([]string, len(r.Warnings))
	for i, w := range r.Warnings {
		lines[i] = w.String()
	}
	return strings.Join(lines, "\n")
}

// corner is the inner angle in degrees at the end of an edge.
var corner = drafttest.Corner

// checkSound checks a garment by every rule of a sound draft (common
// practice), measured on the finished pieces.
func checkSound(t require.TestingT, r Result) {
	for _, p := range r.Pieces {
		require.NoError(t, p.Check(), p.Name)
		_, err := p.CuttingOutline(0.1)
		assert.NoError(t, err, p.Name)
		checkDarts(t, p)
		checkSmooth(t, p)
	}
	for _, row := range r.Truing.Rows {
		assert.True(t, row.InRange, "%s: %s %.1f, %s %.1f: %s", row.Seam, row.Of, row.OfLength, row.Against,
			row.AgainstLength, row.Verdict)
	}
	checkJoins(t, r)
}

// namesMeasurement checks that a refusal names the measurement that cannot be.
func namesMeasurement(t require.TestingT, err error) {
	for _, name := range Measurements() {
		if strings.Contains(err.Error(), string(name)) {
			return
		}
	}
	require.Fail(t, "the refusal names no measurement", err.Error())
}

// checkDarts: every dart has a width, legs of equal length and a point inside
// its piece; no two darts of a piece cross.
func checkDarts(t require.TestingT, p pieces.Piece) {
	for i, d := range p.Darts {
		assert.Greater(t, construct.Distance(d.Start, d.End), 2.0, "%s: %s", p.Name, d.Name)
		assert.InDelta(t, construct.Distance(d.Start, d.Apex), construct.Distance(d.End, d.Apex), 0.01,
			"%s: the legs of %s", p.Name, d.Name)
		for _, e := range p.Darts[:i] {
			if d.Mouth == seams.None && e.Mouth == seams.None {
				continue
			}
			for _, leg := range legs(d) {
				for _, other := range legs(e) {
					assert.False(t, cross(leg, other), "%s: %s crosses %s", p.Name, d.Name, e.Name)
				}
			}
		}
	}
}

func legs(d pieces.Dart) [2]pieces.Line {
	return [2]pieces.Line{{From: d.Start, To: d.Apex}, {From: d.Apex, To: d.End}}
}

func cross(a, b pieces.Line) bool {
	side := func(l pieces.Line, p orb.Point) bool {
		return (l.To[0]-l.From[0])*(p[1]-l.From[1]) > (l.To[1]-l.From[1])*(p[0]-l.From[0])
	}
	return side(a, b.From) != side(a, b.To) && side(b, a.From) != side(b, a.To)
}

// checkSmooth: within an edge the curves run on in one direction, except at
// the peak of a dart's mouth.
func checkSmooth(t require.TestingT, p pieces.Piece) {
	for _, e := range p.Edges {
		if e.Name.IsMouth() {
			continue
		}
		for i := 1; i < len(e.Path); i++ {
			assert.InDelta(t, 0, construct.Distance(e.Path[i-1].Tangent(1), e.Path[i].Tangent(0)), 1e-6,
				"%s: %s has a corner in it", p.Name, e.Name)
		}
	}
}

// joint is the inner angle in degrees where one seam of a piece runs into
// another, on whichever of the pieces has both in that order.
func joint(list []pieces.Piece, before, after seams.Name) (float64, bool) {
	for _, p := range list {
		for i, e := range p.Edges {
			next := p.Edges[(i+1)%len(p.Edges)]
			if e.Name.Seam() != before || next.Name.Seam() != after || e.Name.IsMouth() || next.Name.IsMouth() {
				continue
			}
			in, out := e.Path[len(e.Path)-1].Tangent(1), next.Path[0].Tangent(0)
			turn := math.Atan2(in[0]*out[1]-in[1]*out[0], in[0]*out[0]+in[1]*out[1])
			return 180 - turn*180/math.Pi, true
		}
	}
	return 0, false
}

// joins checks that two corners, laid edge to edge, make a straight outline.
func joins(t require.TestingT, a, b []pieces.Piece, before, after, then, last seams.Name) {
	first, ok := joint(a, before, after)
	require.True(t, ok, "no %s before %s", before, after)
	second, ok := joint(b, then, last)
	require.True(t, ok, "no %s before %s", then, last)
	assert.InDelta(t, 180, first+second, 0.01, "%s at the %s", before, after)
}

// checkJoins lays neighbours edge to edge: the outline must run on smoothly,
// and leave a centre line at a right angle.
func checkJoins(t require.TestingT, r Result) {
	const near = 0.01
	front, back := group(r, role.FrontBodice, role.SideFrontBodice), group(r, role.BackBodice, role.SideBackBodice,
		role.Yoke)
	lower := seams.Waist
	if _, hemmed := front[0].Edge(seams.BodyHem); hemmed {
		lower = seams.BodyHem
	}
	for centre, list := range map[seams.Name][]pieces.Piece{seams.CentreFront: front, seams.CentreBack: back} {
		if _, ok := joint(list, seams.Neck, seams.ExtensionNeck); ok {
			// An opening: neck and lower edge run on beyond the centre.
			assert.InDelta(t, 180, corner(t, list[0], seams.Neck), near, "neck at the opening")
			continue
		}
		for _, at := range [][2]seams.Name{{seams.Neck, centre}, {centre, lower}} {
			angle, ok := joint(list, at[0], at[1])
			require.True(t, ok, at)
			assert.InDelta(t, 90, angle, near, at)
		}
	}
	for _, at := range [][2]seams.Name{{seams.Shoulder, seams.Neck}, {seams.Armhole, seams.Shoulder},
		{seams.SideSeam, seams.Armhole}, {lower, seams.SideSeam}} {
		joins(t, front, back, at[0], at[1], at[0], at[1])
	}
	for _, list := range [][]pieces.Piece{front, back} {
		checkPanels(t, list, lower)
	}
	for _, p := range []pieces.Piece{front[0], back[0]} {
		for _, d := range p.Darts {
			if d.Mouth == seams.None {
				continue
			}
			// A bust dart ends before the bust point that it was turned about
			// (common practice), which bends the seam by a fifth of its angle.
			allowed := near
			if d.Name.Seam() != seams.Waist {
				allowed = 6
			}
			if d.Name == seams.Armhole.Dart(0) {
				// Its legs are shorter, so that this bends it more.
				allowed = 9
			}
			assert.InDelta(t, 180, besideDart(p, d), allowed, "%s: the seam across the closed %s", p.Name, d.Name)
		}
	}
	for _, p := range r.Pieces {
		if p.Name != "sleeve" {
			continue
		}
		if _, cap := p.Edge(seams.NarrowHem); !cap {
			assert.InDelta(t, 180, corner(t, p, seams.FrontUnderarm)+corner(t, p, seams.SleeveHead), near,
				"sleeve head under the arm")
		}
	}
	if two := group(r, role.TopSleeve, role.UnderSleeve); len(two) == 2 {
		// The under sleeve is drawn as it lies under the top sleeve: at the head
		// its corner is the other's supplement, at the lower edge its equal.
		joins(t, two[:1], two[1:], seams.FrontSeam, seams.SleeveHead, seams.FrontSeam, seams.SleeveHead)
		joins(t, two[:1], two[1:], seams.SleeveHead, seams.BackSeam, seams.SleeveHead, seams.BackSeam)
		assert.InDelta(t, 180, corner(t, two[0], seams.WristHem)+corner(t, two[1], seams.WristHem), near,
			"lower edge at the front seam")
	}
}

// besideDart is the sum of the angles that the seam makes with both legs of a
// dart: 180 degrees when it runs on smoothly once the dart is closed.
func besideDart(p pieces.Piece, d pieces.Dart) float64 {
	for i, e := range p.Edges {
		if e.Name != d.Mouth {
			continue
		}
		before := p.Edges[(i+len(p.Edges)-1)%len(p.Edges)].Path
		after := p.Edges[(i+1)%len(p.Edges)].Path
		return between(construct.Back(before[len(before)-1].Tangent(1)), construct.Direction(d.Start, d.Apex)) +
			between(after[0].Tangent(0), construct.Direction(d.End, d.Apex))
	}
	return 0
}

func between(a, b orb.Point) float64 {
	return math.Acos(max(-1, min(1, a[0]*b[0]+a[1]*b[1]))) * 180 / math.Pi
}

// group is the pieces of a result that have one of the roles.
func group(r Result, roles ...role.Role) []pieces.Piece {
	var list []pieces.Piece
	for _, as := range roles {
		if p, ok := pieceOf(r.Pieces, as); ok {
			list = append(list, p)
		}
	}
	return list
}

// checkPanels: the edges on both sides of a princess seam run on across it.
func checkPanels(t require.TestingT, list []pieces.Piece, lower seams.Name) {
	panel := seams.PrincessSeam
	if _, cut := list[0].Edge(panel); !cut {
		return
	}
	joins(t, list[:1], list[1:], lower, panel, panel, lower)
	upper := seams.Shoulder
	if _, ok := joint(list[1:], seams.Armhole, panel); ok {
		upper = seams.Armhole
	}
	joins(t, list[:1], list[1:], panel, upper, upper, panel)
}
