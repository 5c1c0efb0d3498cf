package draft

import (
	"fmt"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/lining"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// shirt asks for a shirt blouse with every part that one can have.
func shirt(body Body) Request {
	reduce := 5.
	return Request{
		Garment: "shirt", Cloth: "shell", Body: body,
		Bodice: &bodice.Options{Fit: bodice.Easy, FrontOpening: true, BackOnFold: true, BelowWaist: 260},
		Sleeve: &sleeve.Options{Style: sleeve.Shirt},
		Parts: []part.Options{
			{Kind: part.ShirtCollar}, {Kind: part.ButtonedCuff}, {Kind: part.SleevePlacket}, {Kind: part.ArmholeFacing},
			{Kind: part.FlatCollar}, {Kind: part.MandarinCollar}, {Kind: part.Belt}, {Kind: part.Tie},
			{Kind: part.PatchPocket, Shape: part.Round}, {Kind: part.BiasStrip, Length: 4000, Depth: 30},
		},
		Linings: []Lining{{Of: []string{"front bodice", "back bodice", "sleeve"}, Cloth: "lining",
			Options: lining.Options{Shorter: 20, BackPleat: 20}}},
		Interfacings: []Interfacing{
			{Of: []string{"shirt collar"}, Cloth: "interfacing", Interfacing: lining.Interfacing{Cut: 1}},
			{Of: []string{"buttoned cuff"}, Cloth: "interfacing",
				Interfacing: lining.Interfacing{Reduce: &reduce, Cut: 2}},
		},
	}
}

// dress asks for the parts that a skirt has.
func dress(body Body) Request {
	return Request{
		Garment: "dress", Cloth: "shell", Body: body, Bodice: &bodice.Options{Shaping: bodice.ArmholeDart},
		Skirt: &skirt.Options{Shape: skirt.ALine},
		Parts: []part.Options{
			{Kind: part.ArmholeFacing}, {Kind: part.PocketBag}, {Kind: part.FlatCollar},
			{Kind: part.Facing, Of: "front skirt", FacedEdge: seams.Waist},
			{Kind: part.Facing, Of: "back skirt", FacedEdge: seams.Waist},
		},
		Linings: []Lining{{Of: []string{"front skirt", "back skirt", "front bodice"}, Cloth: "lining",
			Options: lining.Options{Shorter: 20}}},
	}
}

// smock asks for what a bodice that buttons at the back can have.
func smock(body Body) Request {
	return Request{
		Garment: "smock", Cloth: "shell", Body: body,
		Bodice: &bodice.Options{Fit: bodice.Easy, BackOpening: true, BelowWaist: 300, Shaping: bodice.ShoulderDart},
		Sleeve: &sleeve.Options{Style: sleeve.Shirt},
		Parts: []part.Options{
			{Kind: part.NeckFacing}, {Kind: part.ShirtCollar}, {Kind: part.MandarinCollar}, {Kind: part.FlatCollar},
			{Kind: part.ButtonedCuff},
		},
		Linings: []Lining{{Of: []string{"front bodice", "back bodice"}, Cloth: "lining",
			Options: lining.Options{Shorter: 20}}},
	}
}

// shift asks for a dress without sleeves, faced in one.
func shift(body Body) Request {
	return Request{
		Garment: "shift", Cloth: "shell", Body: body,
		Bodice: &bodice.Options{Princess: bodice.FromArmhole, BelowWaist: 600, NeckWiden: 15, FrontNeckDrop: 20},
		Parts:  []part.Options{{Kind: part.CombinedFacing}},
	}
}

// checkParts checks every piece, its cutting outline and every row of the
// report; facings and collars match their edges to 0.1 mm.
func checkParts(t require.TestingT, r Result) {
	for _, p := range r.Pieces {
		require.NoError(t, p.Check(), p.Name)
		_, err := p.CuttingOutline(0.1)
		require.NoError(t, err, p.Name)
		checkSmooth(t, p)
	}
	for _, row := range r.Truing.Rows {
		if row.Seam == "bust line" || row.Seam == "bicep line" || row.Seam == "waist" || row.Seam == "hip line" {
			continue
		}
		assert.True(t, row.InRange, "%s: %s %.1f, %s %.1f: %s", row.Seam, row.Of, row.OfLength, row.Against,
			row.AgainstLength, row.Verdict)
		if row.Seam == "facing to armhole" || row.Seam == "facing to waist" || row.Seam == "collar to neck" ||
			row.Seam == "collar to stand" || row.Seam == "lining to shell" {
			assert.InDelta(t, row.AgainstLength, row.OfLength, 0.1, "%s: %s", row.Seam, row.Of)
		}
	}
}

func TestPartsAtEverySize(t *testing.T) {
	t.Parallel()
	for _, table := range grown {
		for _, name := range sample.Spread(Sizes(table)) {
			for garment, ask := range map[string]func(Body) Request{"shirt": shirt, "dress": dress, "smock": smock,
				"shift": shift} {
				t.Run(fmt.Sprintf("%s %s %s", garment, table, name), func(t *testing.T) {
					result, err := Draft(ask(size(t, table, name)))
					require.NoError(t, err)
					checkParts(t, result)
					assert.Empty(t, result.Warnings)
				})
			}
		}
	}
}

func TestPartsOnAnyBody(t *testing.T) {
	t.Parallel()
	body := size(t, "women", "14")
	rapid.Check(t, func(t *rapid.T) {
		varied := body.With(nil)
		for _, name := range []Measurement{BustGirth, WaistGirth, HipGirth, NeckBaseGirth, BackNeckPointToWaist,
			ShoulderLength, WristGirth} {
			if value, ok := varied[name]; ok {
				varied[name] = value * rapid.Float64Range(0.9, 1.1).Draw(t, string(name))
			}
		}
		ask := rapid.SampledFrom([]func(Body) Request{shirt, dress, smock, shift}).Draw(t, "garment")
		result, err := Draft(ask(varied))
		if err != nil {
			t.Skip(err)
		}
		checkParts(t, result)
	})
}

// A stand rises from its neck edge to its upper edge, which is shorter by its
// depth times the angle it bends through (geometry: concentric arcs).
func TestStandAndFall(t *testing.T) {
	result, err := Draft(shirt(size(t, "women", "12")))
	require.NoError(t, err)
	stand, fall := pieceNamed(t, result, "shirt collar stand"), pieceNamed(t, result, "shirt collar fall")
	front := pieceNamed(t, result, "front bodice")
	assert.InDelta(t, 20, seam(stand, seams.ExtensionNeck), 1e-9)
	angle := 2 * 12 / seam(front, seams.Neck)
	assert.InDelta(t, seam(stand, seams.Neck)-30*angle, seam(stand, seams.UpperCollarEdge), 1e-6)
	assert.InDelta(t, seam(stand, seams.UpperCollarEdge), seam(fall, seams.LowerCollarEdge), 1e-6)
	assert.InDelta(t, 90, corner(t, fall, seams.OuterCollarEdge), 0.01, "square to the centre back")
	for _, p := range []pieces.Piece{stand, fall} {
		assert.Equal(t, "2 centre back", fmt.Sprint(p.Cut, " ", p.Fold))
	}
	assert.InDelta(t, 45, seam(fall, seams.CentreBack), 1e-9)
}

// The outer edge of a flat collar lies its depth from the neck everywhere, is
// square to both centre lines, and is shorter than the bodice would have it by
// what the overlap takes out at the shoulder (common practice).
func TestFlatCollar(t *testing.T) {
	for _, opening := range []bool{true, false} {
		request := shirt(size(t, "women", "12"))
		request.Bodice.FrontOpening, request.Bodice.BackOnFold = opening, opening
		request.Parts = []part.Options{{Kind: part.FlatCollar, Depth: 70}}
		request.Linings, request.Interfacings = nil, nil
		result, err := Draft(request)
		require.NoError(t, err)
		collar := pieceNamed(t, result, "flat collar")
		assert.Equal(t, map[bool]seams.Name{true: seams.CentreBack, false: seams.CentreFront}[opening], collar.Fold)
		assert.InDelta(t, 90, corner(t, collar, seams.OuterCollarEdge), 0.5)
		assert.InDelta(t, 90, corner(t, collar, collar.Fold), 0.5)
		outer, _ := collar.Edge(seams.OuterCollarEdge)
		for _, p := range outer.Path.Flatten(0.1) {
			front, _ := collar.Edge(seams.Neck.Stretch(1))
			back, _ := collar.Edge(seams.Neck.Stretch(2))
			assert.InDelta(t, 70, min(fromPath(p, front.Path), fromPath(p, back.Path)), 2)
		}
		request.Parts[0].Overlap = 30
		rolled, err := Draft(request)
		require.NoError(t, err)
		assert.Less(t, seam(pieceNamed(t, rolled, "flat collar"), seams.OuterCollarEdge),
			seam(collar, seams.OuterCollarEdge)-5)
	}
}

// A facing beside the fold lies on it, one away from it is one of a pair; each
// is as deep as asked everywhere.
func TestFacings(t *testing.T) {
	request := dress(size(t, "women", "12"))
	request.Bodice.BackOnFold = true
	request.Parts[0].Depth = 40
	result, err := Draft(request)
	require.NoError(t, err)
	for name, want := range map[string]string{
		"armhole facing front": "2 true ", "armhole facing back": "2 true ",
		"front skirt waist facing": "1 false centre front", "back skirt waist facing": "2 true ",
	} {
		p := pieceNamed(t, result, name)
		assert.Equal(t, want, fmt.Sprint(p.Cut, p.Pair, " ", p.Fold), name)
	}
	back := pieceNamed(t, result, "armhole facing back")
	outer, _ := back.Edge(seams.FacingEdge)
	armhole, _ := back.Edge(seams.Armhole)
	for _, p := range outer.Path.Flatten(0.1) {
		assert.InDelta(t, 40, fromPath(p, armhole.Path), 1.5)
	}
}

// fromPath is how far a point lies from a path.
func fromPath(p orb.Point, path pieces.Path) float64 {
	nearest := math.Inf(1)
	for _, q := range path.Flatten(0.01) {
		nearest = min(nearest, construct.Distance(p, q))
	}
	return nearest
}

// Strips joined make the length; none is wider on the bias than the cloth; a
// square of side s gives s²/w (geometry, less the seams).
func TestBiasStrips(t *testing.T) {
	for _, c := range []struct{ length, width, cloth float64 }{{4000, 30, 1120}, {800, 40, 1480}, {12000, 25, 880}} {
		made, err := part.Draft(part.Measures{},
			part.Options{Kind: part.BiasStrip, Length: c.length, Depth: c.width, ClothWidth: c.cloth})
		require.NoError(t, err)
		strip := made.Pieces[0]
		assert.InDelta(t, c.length, float64(strip.Cut)*seam(strip, seams.LeftRawEdge), 1e-6)
		assert.LessOrEqual(t, (seam(strip, seams.LeftRawEdge)+20+c.width)/math.Sqrt2, c.cloth+1e-6)
		assert.Equal(t, pieces.Bias, strip.Grain.Lie)
		side := made.Figures[0].Value
		assert.InDelta(t, c.length, side*side/c.width, 1e-6)
	}
}

// On children too a facing's ends match: both halves are as deep as the one with
// less room. Beside a shoulder dart a neck facing may be as deep as the whole
// shoulder, the dart sewn.
func TestEndsOfFacingsMatch(t *testing.T) {
	t.Parallel()
	for _, table := range Tables() {
		for _, name := range Sizes(table) {
			for _, shaping := range []bodice.Shaping{bodice.SideDart, bodice.ShoulderDart, bodice.ArmholeDart,
				bodice.NoDart} {
				request := Request{Garment: "top", Body: size(t, table, name),
					Bodice: &bodice.Options{Shaping: shaping}}
				request.Parts = []part.Options{{Kind: part.ArmholeFacing}, {Kind: part.NeckFacing}}
				result, err := Draft(request)
				require.NoError(t, err)
				checkParts(t, result)
				front, back := pieceNamed(t, result, "armhole facing front"), pieceNamed(t, result,
					"armhole facing back")
				for _, end := range []seams.Name{seams.Shoulder, seams.SideSeam} {
					assert.InDelta(t, seam(front, end), seam(back, end), 0.01, "%s %s %s", table, name, end)
				}
			}
		}
	}
	request := blouse(size(t, "women", "12"))
	request.Bodice, request.Parts = &bodice.Options{Shaping: bodice.ShoulderDart}, []part.Options{{Kind: part.NeckFacing,
		Depth: 100}}
	result, err := Draft(request)
	require.NoError(t, err)
	assert.InDelta(t, 100, seam(pieceNamed(t, result, "neck facing front"), seams.Shoulder), 1e-6)
	assert.InDelta(t, 100, seam(pieceNamed(t, result, "neck facing back"), seams.Shoulder), 1e-6)
}

// What a piece is to its garment is said by the piece, not by its name.
func TestKindsOfPieces(t *testing.T) {
	request := shirt(size(t, "women", "12"))
	request.Parts = append(request.Parts, part.Options{Kind: part.NeckFacing, Name: "neck band"},
		part.Options{Kind: part.Facing, Name: "hem band", Of: "back bodice", FacedEdge: seams.BodyHem})
	result, err := Draft(request)
	require.NoError(t, err)
	faced, err := Draft(shift(request.Body))
	require.NoError(t, err)
	kinds := map[pieces.Kind][]string{}
	for _, p := range append(result.Pieces, faced.Pieces...) {
		kinds[p.Kind] = append(kinds[p.Kind], p.Name)
	}
	assert.ElementsMatch(t, []string{"armhole facing front", "armhole facing back", "neck band front", "neck band back",
		"hem band", "neck and armhole facing front", "neck and armhole facing back"}, kinds[pieces.Facing])
	assert.ElementsMatch(t, []string{"front bodice lining", "back bodice lining", "sleeve lining"},
		kinds[pieces.Lining])
	assert.ElementsMatch(t, []string{"shirt collar stand interfacing", "shirt collar fall interfacing",
		"buttoned cuff interfacing"}, kinds[pieces.Interfacing])
	assert.Contains(t, kinds[pieces.Shell], "sleeve")
}
