package draft

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// kind of sleeve, on the fit of a bodice that it is usually sewn to.
type kind struct {
	name  string
	fit   bodice.Fit
	style sleeve.Style
	// least and most ease as a share of the armhole: 2 to 4.5 cm on 42 to 54 cm of
	// a set-in woven sleeve, 0 to 3 % of a shirt's (common practice).
	least, most float64
	// widest is the most that the bicep line is of the arm (our own choice).
	widest float64
	// hug is how high the head lies on the armhole, as a share of its depth (our own
	// choice): a shirt's, which is low, leaves it sooner.
	hug float64
}

var kinds = []kind{
	{"close", bodice.Close, sleeve.SetIn, 0.048, 0.083, 1.45, 1. / 3},
	{"easy", bodice.Easy, sleeve.SetIn, 0.048, 0.083, 1.45, 1. / 3},
	{"shirt", bodice.Shirt, sleeve.Shirt, 0, 0.03, 1.6, 1. / 5},
	{"two-piece", bodice.Easy, sleeve.TwoPiece, 0.048, 0.083, 1.45, 1. / 3},
}

// withSleeve asks for a bodice and a sleeve of a body of a table.
func withSleeve(table string, body Body, fit bodice.Fit, style sleeve.Style) Request {
	o := bodice.Options{Fit: fit}
	if table == "men" || table == "children" {
		o.Shaping, o.StraightWaist = bodice.NoDart, true
	}
	return Request{Garment: "blouse", Cloth: "shell", Body: body, Table: table, Bodice: &o,
		Sleeve: &sleeve.Options{Style: style}}
}

// The default sleeve of every size of every table has the ease of its kind, goes
// round the arm and is not too wide for it, and is sound in every row.
func TestSleeveOfEverySize(t *testing.T) {
	t.Parallel()
	for _, table := range Tables() {
		for _, name := range Sizes(table) {
			for _, k := range kinds {
				result, err := Draft(withSleeve(table, size(t, table, name), k.fit, k.style))
				require.NoError(t, err)
				checkSleeve(t, fmt.Sprintf("%s %s %s", table, name, k.name), result, k)
				assert.NotContains(t, warnings(result), "the armhole is", "%s %s %s: no armhole gives way", table, name,
					k.name)
				assert.NotContains(t, warnings(result), "narrower ones", "%s %s %s", table, name, k.name)
				assert.NotContains(t, warnings(result), "sleeve head lies", "%s %s %s", table, name, k.name)
			}
		}
	}
}

// As plain check values of the trade (common practice): a close set-in head is a
// quarter to two fifths of the whole armhole high, and the straight line from the
// crown to the end of the bicep line is about as long as its half of the armhole.
func TestCloseHeadsHaveTheMeasuresOfTheTrade(t *testing.T) {
	for _, table := range Tables() {
		for _, name := range Sizes(table) {
			result, err := Draft(withSleeve(table, size(t, table, name), bodice.Close, sleeve.SetIn))
			require.NoError(t, err)
			f := figuresOf(result)
			armhole := f["front armhole"] + f["back armhole"]
			assert.Greater(t, f["sleeve head height"], armhole/4, "%s %s", table, name)
			assert.Less(t, f["sleeve head height"], armhole*2/5, "%s %s", table, name)
			head := drafttest.Path(t, pieceNamed(t, result, "sleeve"), seams.SleeveHead)
			crown := head.At(f["front armhole"] + f["ease of the sleeve head, front"])
			assert.InEpsilon(t, f["front armhole"], construct.Distance(crown, head.Start()), 0.06, "%s %s, front",
				table, name)
			assert.InEpsilon(t, f["back armhole"], construct.Distance(crown, head.End()), 0.06, "%s %s, back", table,
				name)
		}
	}
}

// Random bodies around the sizes of all tables, 500 in the long run, each measurement up to a tenth more
// or less on its own: a smooth head with the ease of its kind, or a refusal that
// names a measurement.
func TestSleeveOfRandomBodies(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(20, 1))
	refused, wide, beside, bodies := 0, 0, 0, sample.Of(60, 500)
	for i := range bodies {
		table := Tables()[random.IntN(len(Tables()))]
		sizes := Sizes(table)
		body := size(t, table, sizes[random.IntN(len(sizes))])
		for _, name := range Measurements() {
			if value, ok := body[name]; ok {
				body[name] = value * (0.9 + 0.2*random.Float64())
			}
		}
		k := kinds[random.IntN(len(kinds))]
		result, err := Draft(withSleeve(table, body, k.fit, k.style))
		if err != nil {
			namesMeasurement(t, err)
			refused++
			continue
		}
		if strings.Contains(warnings(result), "narrower ones") {
			wide++
		}
		if strings.Contains(warnings(result), "sleeve head lies") {
			beside++
		}
		checkSleeve(t, fmt.Sprintf("body %d, %s, %s", i, table, k.name), result, k)
	}
	t.Logf("of %d bodies %d refused, %d with a wide sleeve, %d beside the armhole", bodies, refused, wide, beside)
	assert.Less(t, refused+wide, bodies/10)
	assert.LessOrEqual(t, beside, bodies/100, "of heads that do not lie on the armhole")
}

func figuresOf(r Result) map[string]float64 {
	all := map[string]float64{}
	for _, f := range r.Figures {
		all[f.Name] = f.Value
	}
	return all
}

// checkSleeve checks a sleeve by what it must satisfy, measured on the finished
// pieces.
func checkSleeve(t *testing.T, name string, r Result, k kind) {
	f := figuresOf(r)
	armhole := f["front armhole"] + f["back armhole"]
	ease, arm := f["sleeve head"]-armhole, r.Body[UpperArmGirth]
	assert.GreaterOrEqual(t, ease, k.least*armhole-0.1, "%s: ease", name)
	assert.LessOrEqual(t, ease, k.most*armhole+0.1, "%s: ease", name)
	assert.GreaterOrEqual(t, f["bicep line"], arm+40-0.01, "%s: bicep line", name)
	if f["bicep line"] > max(k.widest*arm, arm+40.2) {
		assert.Contains(t, warnings(r), "narrower ones do not go into this armhole", name)
	}
	for _, row := range r.Truing.Rows {
		assert.True(t, row.InRange, "%s: %s %s", name, row.Of, row.Verdict)
	}
	if piece, ok := pieceOf(r.Pieces, role.Sleeve); ok {
		checkHead(t, name, r, piece, k.hug)
	}
}

// checkHead: level at the crown, square to the underarm seams, smooth in direction
// and bend, one hollow and one round in each half; and up to a share of the armhole's
// depth it lies on the armhole, or is said not to.
func checkHead(t *testing.T, name string, r Result, p pieces.Piece, hug float64) {
	head := drafttest.Path(t, p, seams.SleeveHead)
	f := figuresOf(r)
	toCrown := f["front armhole"] + f["ease of the sleeve head, front"]
	assert.InDelta(t, 0, head.Tangent(toCrown)[1], 1e-4, "%s: level at the crown", name)
	assert.InDelta(t, 90, corner(t, p, seams.FrontUnderarm), 0.1, "%s: square in front", name)
	assert.InDelta(t, 90, corner(t, p, seams.SleeveHead), 0.1, "%s: square at the back", name)
	front, back := drafttest.Path(t, p, seams.FrontUnderarm), drafttest.Path(t, p, seams.BackUnderarm)
	assert.InDelta(t, front.Length(), back.Length(), 0.01, "%s: underarm seams", name)

	done := 0.0
	bends := [2]int{}
	for i, curve := range head {
		if i > 0 {
			assert.InDelta(t, 0, construct.Distance(head[i-1].Tangent(1), curve.Tangent(0)), 1e-6, "%s: direction",
				name)
			assert.InDelta(t, bendAt(head[i-1], 1), bendAt(curve, 0), 1e-4, "%s: bend at joint %d", name, i)
		}
		which := 0
		if done > toCrown-1 {
			which = 1
		}
		for k := range 40 {
			if bendAt(curve, float64(k)/40)*bendAt(curve, float64(k+1)/40) < 0 {
				bends[which]++
			}
		}
		done += curve.Length()
	}
	assert.Equal(t, [2]int{1, 1}, bends, "%s: turns from hollow to round", name)

	checkHug(t, name, r, p, hug)
}

// laidOut lays a seam with its start at the origin, setting off to the right, and
// turning upwards: mirrored is one that turns the other way as drawn.
func laidOut(path pieces.Path, mirrored bool) pieces.Path {
	from, way := path.Start(), path.Tangent(0)
	motion := pieces.Move(-from[0], -from[1])
	if mirrored {
		motion, way = motion.Then(pieces.MirrorX()), orb.Point{-way[0], way[1]}
	}
	return path.Map(motion.Then(pieces.Turn(-math.Atan2(way[1], way[0]) * 180 / math.Pi)))
}

// bendAt is one over the radius of a cubic at a parameter, by its derivatives.
func bendAt(curve pieces.Curve, at float64) float64 {
	b := curve.(pieces.Bezier)
	var first, second orb.Point
	for k := range 2 {
		d0, d1, d2 := b.P1[k]-b.P0[k], b.P2[k]-b.P1[k], b.P3[k]-b.P2[k]
		first[k] = 3 * ((1-at)*(1-at)*d0 + 2*(1-at)*at*d1 + at*at*d2)
		second[k] = 6 * ((1-at)*(d1-d0) + at*(d2-d1))
	}
	return (first[0]*second[1] - first[1]*second[0]) / math.Pow(math.Hypot(first[0], first[1]), 3)
}
