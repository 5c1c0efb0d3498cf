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
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
)

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
func corner(t require.TestingT, p pieces.Piece, edge string) float64 {
	for i, e := range p.Edges {
		if e.Name != edge {
			continue
		}
		next := p.Edges[(i+1)%len(p.Edges)].Path
		in, out := e.Path[len(e.Path)-1].Tangent(1), next[0].Tangent(0)
		turn := math.Atan2(in[0]*out[1]-in[1]*out[0], in[0]*out[0]+in[1]*out[1])
		return 180 - turn*180/math.Pi
	}
	require.Fail(t, "no edge "+edge)
	return 0
}

// last is the last edge of a seam.
func last(p pieces.Piece, seam string) string {
	name := ""
	for _, e := range p.Edges {
		if construct.SeamOf(e.Name) == seam && !strings.Contains(e.Name, "mouth") {
			name = e.Name
		}
	}
	return name
}

// checkSound checks a garment by every rule of a sound draft (common
// practice), measured on the finished pieces.
func checkSound(t require.TestingT, r Result) {
	for _, p := range r.Pieces {
		require.NoError(t, p.Check(), p.Name)
		checkDarts(t, p)
		checkSmooth(t, p)
	}
	for _, row := range r.Truing.Rows {
		assert.True(t, row.Sound, "%s: %s %.1f, %s %.1f: %s", row.Seam, row.Of, row.OfLength, row.Against, row.AgainstLength, row.Verdict)
	}
	checkJoins(t, r)
}

// checkDarts: every dart has a width, legs of equal length and a point inside
// its piece; no two darts of a piece cross.
func checkDarts(t require.TestingT, p pieces.Piece) {
	for i, d := range p.Darts {
		assert.Greater(t, construct.Distance(d.Start, d.End), 2.0, "%s: %s", p.Name, d.Name)
		assert.InDelta(t, construct.Distance(d.Start, d.Apex), construct.Distance(d.End, d.Apex), 0.01, "%s: the legs of %s", p.Name, d.Name)
		for _, e := range p.Darts[:i] {
			if d.Mouth == "" && e.Mouth == "" {
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
		if strings.Contains(e.Name, "mouth") {
			continue
		}
		for i := 1; i < len(e.Path); i++ {
			assert.InDelta(t, 0, construct.Distance(e.Path[i-1].Tangent(1), e.Path[i].Tangent(0)), 1e-6, "%s: %s has a corner in it", p.Name, e.Name)
		}
	}
}

// checkJoins lays neighbours edge to edge: the outline must run on smoothly,
// and leave a centre line at a right angle.
func checkJoins(t require.TestingT, r Result) {
	const near = 0.01
	front, back := pieceNamed(t, r, "front bodice"), pieceNamed(t, r, "back bodice")
	for p, centre := range map[*pieces.Piece]string{&front: "centre front", &back: "centre back"} {
		if _, ok := p.Edge(centre); !ok {
			// An opening: neck and lower edge run on beyond the centre.
			assert.InDelta(t, 180, corner(t, *p, "neck"), near, "%s: neck at the centre", p.Name)
			continue
		}
		assert.InDelta(t, 90, corner(t, *p, "neck"), near, "%s: neck at the centre", p.Name)
		assert.InDelta(t, 90, corner(t, *p, centre), near, "%s: lower edge at the centre", p.Name)
	}
	join := func(at, frontEdge, backEdge string) {
		assert.InDelta(t, 180, corner(t, front, frontEdge)+corner(t, back, backEdge), near, at)
	}
	join("neck at the shoulder", last(front, "shoulder"), last(back, "shoulder"))
	join("armhole at the shoulder", last(front, "armhole"), "armhole")
	join("armhole at the side", last(front, "side"), last(back, "side"))
	lower := "waist"
	if _, hemmed := front.Edge("body hem"); hemmed {
		lower = "body hem"
	}
	join("lower edge at the side", last(front, lower), last(back, lower))
	for _, p := range []pieces.Piece{front, back} {
		for _, d := range p.Darts {
			if d.Mouth == "" {
				continue
			}
			// A bust dart ends before the bust point that it was turned about
			// (common practice), which bends the seam by a fifth of its angle.
			allowed := near
			if !strings.HasPrefix(d.Name, "waist") {
				allowed = 6
			}
			if d.Name == "armhole dart" {
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
		assert.InDelta(t, 180, corner(t, p, "front underarm")+corner(t, p, "sleeve head"), near, "sleeve head under the arm")
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
