package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/sleeve"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// checkVariant drafts a request at every size of both tables and checks each
// by the rules of a sound draft (common practice).
func checkVariant(t *testing.T, change func(*Request), more func(t *testing.T, r Result)) {
	for _, table := range grown {
		for _, name := range sample.Spread(Sizes(table)) {
			t.Run(fmt.Sprintf("%s %s", table, name), func(t *testing.T) {
				request := blouse(size(t, table, name))
				change(&request)
				result, err := Draft(request)
				require.NoError(t, err)
				checkSound(t, result)
				if more != nil {
					more(t, result)
				}
			})
		}
	}
}

func TestArmholeDart(t *testing.T) {
	t.Parallel()
	for _, fit := range []bodice.Fit{bodice.Close, bodice.Easy, bodice.Shirt} {
		checkVariant(t, func(r *Request) { r.Bodice = &bodice.Options{Fit: fit, Shaping: bodice.ArmholeDart} },
			func(t *testing.T, r Result) {
				// Turning the dart changes no seam.
				side := blouse(r.Body)
				side.Bodice = &bodice.Options{Fit: fit}
				other, err := Draft(side)
				require.NoError(t, err)
				for _, name := range []seams.Name{seams.Armhole, seams.SideSeam, seams.Shoulder, seams.Neck,
					seams.Waist} {
					assert.InDelta(t, seam(pieceNamed(t, other, "front bodice"), name),
						seam(pieceNamed(t, r, "front bodice"), name), 0.01, name)
				}
			})
	}
}

func TestNeckWidenedAndLowered(t *testing.T) {
	t.Parallel()
	for _, o := range []bodice.Options{
		{NeckWiden: 20}, {FrontNeckDrop: 60}, {NeckWiden: 40, FrontNeckDrop: 30, BackNeckDrop: 40},
		{NeckWiden: 60, BackNeckDrop: 120}, {FrontNeckDrop: 110, Shaping: bodice.ArmholeDart},
		{NeckWiden: 25, FrontNeckDrop: 10, Shaping: bodice.ShoulderDart},
	} {
		checkVariant(t, func(r *Request) { r.Bodice = &o }, func(t *testing.T, r Result) {
			plain, err := Draft(blouse(r.Body))
			require.NoError(t, err)
			for _, name := range []string{"front bodice", "back bodice"} {
				assert.InDelta(t, seam(pieceNamed(t, plain, name), seams.Shoulder)-o.NeckWiden,
					seam(pieceNamed(t, r, name), seams.Shoulder), 0.01)
			}
			assert.InDelta(t, seam(pieceNamed(t, plain, "front bodice"), seams.CentreFront)-o.FrontNeckDrop,
				seam(pieceNamed(t, r, "front bodice"), seams.CentreFront), 1e-6)
			assert.InDelta(t, seam(pieceNamed(t, plain, "back bodice"), seams.CentreBack)-o.BackNeckDrop,
				seam(pieceNamed(t, r, "back bodice"), seams.CentreBack), 1e-6)
		})
	}
	for want, o := range map[string]bodice.Options{
		"leaves too little of a shoulder length of 12.5 cm; ask for 9.5 cm or less": {NeckWiden: 100},
		"a front neck lower by 40 cm ends below the bust line":                      {FrontNeckDrop: 400},
		"a back neck lower by 40 cm ends below the bust line":                       {BackNeckDrop: 400},
		"the neck width is -1 cm; it cannot be negative":                            {NeckWiden: -10},
	} {
		request := blouse(size(t, "women", "12"))
		request.Bodice = &o
		_, err := Draft(request)
		assert.ErrorContains(t, err, want)
	}
}

func TestOpening(t *testing.T) {
	t.Parallel()
	for _, o := range []bodice.Options{
		{FrontOpening: true}, {FrontOpening: true, Extension: 15, Fit: bodice.Shirt,
			FrontNeckDrop: 40}, {FrontOpening: true, BackOnFold: true, BelowWaist: 250, Fit: bodice.Easy},
		{BackOpening: true}, {BackOpening: true, Extension: 15, Fit: bodice.Shirt, BackNeckDrop: 40},
		{BackOpening: true, BelowWaist: 250, Shaping: bodice.ShoulderDart},
	} {
		which, centre, folded := "front", "centre front", "centre back"
		if o.BackOpening {
			which, centre, folded = "back", folded, centre
		}
		checkVariant(t, func(r *Request) { r.Bodice = &o }, func(t *testing.T, r Result) {
			plain, err := Draft(func() Request {
				q, c := blouse(r.Body), o
				c.FrontOpening, c.BackOpening, q.Bodice = false, false, &c
				return q
			}())
			require.NoError(t, err)
			front, closed := pieceNamed(t, r, which+" bodice"), pieceNamed(t, plain, which+" bodice")
			assert.Equal(t, "2 true ", fmt.Sprint(front.Cut, front.Pair, " ", front.Fold))
			lines := front.Marks[len(front.Marks)-2:]
			assert.Equal(t, centre+", fold line of the facing", lines[0].Name.String()+", "+lines[1].Name.String())
			for _, name := range []seams.Name{seams.Neck, seams.Waist, seams.SideSeam, seams.Armhole} {
				assert.InDelta(t, seam(closed, name), seam(front, name), 1e-6, name)
			}
			extension := seam(front, seams.ExtensionNeck)
			assert.InDelta(t, map[bool]float64{true: 15, false: 20}[o.Extension > 0], extension, 1e-9)
			// The collar fits the neck from centre line to centre line, and
			// folds at the other one.
			assert.Equal(t, folded, pieceNamed(t, r, "collar").Fold.String())
			// Facing and extension are mirror images about the front edge.
			facing := seam(front, seams.FacingNeck) - extension
			assert.Greater(t, facing, 30.0)
			neckFacing := pieceNamed(t, r, "neck facing "+which)
			assert.InDelta(t, seam(front, seams.Neck), seam(neckFacing, seams.Neck)+facing, 0.01)
		})
	}
	for want, o := range map[string]bodice.Options{
		"an extension of 8 cm beyond the centre front cannot be; ask for 0.5 cm to 4.5 cm": {FrontOpening: true,
			Extension: 80},
		"an extension of 8 cm beyond the centre back cannot be": {BackOpening: true, Extension: 80},
		"it opens at the front or at the back":                  {BackOpening: true, FrontOpening: true},
		"a back that opens does not lie on the fold":            {BackOpening: true, BackOnFold: true},
		"a back that opens has no yoke":                         {BackOpening: true, Yoke: 80},
	} {
		request := blouse(size(t, "women", "12"))
		request.Bodice = &o
		_, err := Draft(request)
		assert.ErrorContains(t, err, want)
	}
}

func TestBodiceToTheHip(t *testing.T) {
	t.Parallel()
	for _, fit := range []bodice.Fit{bodice.Close, bodice.Easy, bodice.Shirt} {
		for _, shaping := range []bodice.Shaping{bodice.SideDart, bodice.ShoulderDart, bodice.ArmholeDart} {
			o := bodice.Options{Fit: fit, Shaping: shaping, BelowWaist: 240}
			checkVariant(t, func(r *Request) { r.Bodice = &o }, func(t *testing.T, r Result) {
				front, back := pieceNamed(t, r, "front bodice"), pieceNamed(t, r, "back bodice")
				assert.InDelta(t, seam(front, seams.SideSeam), seam(back, seams.SideSeam), 0.01)
				assert.GreaterOrEqual(t, 2*(seam(front, seams.BodyHem)+seam(back, seams.BodyHem)), r.Body[HipGirth]+20)
				assert.InDelta(t, r.Body[BackNeckPointToWaist]+240, seam(back, seams.CentreBack), 1e-6)
			})
		}
	}
	request := blouse(size(t, "women", "12"))
	request.Bodice = &bodice.Options{BelowWaist: 100}
	_, err := Draft(request)
	assert.ErrorContains(t, err, "a length of 10 cm below the waist ends above the hip (waist to hip 20.9 cm)")
}

func TestSleeveVariants(t *testing.T) {
	t.Parallel()
	for name, o := range map[string]sleeve.Options{
		"shirt": {Style: sleeve.Shirt}, "short": {Reach: sleeve.Short}, "elbow": {Reach: sleeve.Elbow,
			Style: sleeve.Shirt},
		"gathered": {HeadFullness: 1.4, HemFullness: 1.5}, "puff": {HeadFullness: 1.6, Reach: sleeve.Short},
		"bishop": {HemFullness: 1.8},
	} {
		t.Run(name, func(t *testing.T) {
			checkVariant(t, func(r *Request) {
				r.Sleeve = &o
				if o.Reach != sleeve.Full {
					r.Parts = nil
				}
			}, func(t *testing.T, r Result) {
				piece := pieceNamed(t, r, "sleeve")
				armhole := seam(pieceNamed(t, r, "front bodice"), seams.Armhole) +
					seam(pieceNamed(t, r, "back bodice"), seams.Armhole)
				head := seam(piece, seams.SleeveHead)
				switch {
				case o.HeadFullness > 0:
					below := notch(pieceNamed(t, r, "front bodice"), marks.FrontArmhole) +
						notch(pieceNamed(t, r, "back bodice"), marks.BackArmhole)
					assert.InDelta(t, below+o.HeadFullness*(armhole-below), head, 0.1)
				case o.Style == sleeve.Shirt:
					assert.True(t, head >= armhole && head <= 1.03*armhole, "ease %g", head-armhole)
				}
			})
		})
	}
	for want, o := range map[string]sleeve.Options{
		"a head fullness of 4 cannot be gathered": {HeadFullness: 4},
		"the hem has a width or a fullness":       {HemFullness: 2, WristWidth: 300},
	} {
		request := blouse(size(t, "women", "12"))
		request.Sleeve = &o
		_, err := Draft(request)
		assert.ErrorContains(t, err, want)
	}
}
